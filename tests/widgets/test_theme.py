from itertools import pairwise

import pytest
from PySide6.QtGui import QFontInfo

from ultraplanner_gui.widgets.theme import DARK, FONT_FAMILY, LIGHT, theme


def lightness(colours, name):
    """Return CIE 1976 L* of "#rrggbb" in sRGB (IEC 61966-2-1)."""
    code = getattr(colours, name)
    parts = [int(code[k : k + 2], 16) / 255.0 for k in (1, 3, 5)]
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return 116.0 * (0.2126 * red + 0.7152 * green + 0.0722 * blue) ** (1 / 3) - 16.0


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_day_twilight_and_night_grow_darker_so_that_grey_tells_them_apart(colours):
    steps = pairwise(lightness(colours, name) for name in ("daylight", "twilight", "night"))

    assert min(brighter - darker for brighter, darker in steps) >= 5.0


@pytest.fixture
def look(qapp):
    yield theme()
    theme().choose("light", 100)


def test_there_is_one_theme(look):
    assert theme() is look


@pytest.mark.parametrize(("asked", "given"), [(10, 0.8), (80, 0.8), (130, 1.3), (500, 2.0)])
def test_text_size_stays_within_its_range(look, asked, given):
    look.choose("light", asked)

    assert look.scale == given
    assert look.px(10.0) == pytest.approx(10.0 * given)
    assert look.font(10.0).pointSizeF() == pytest.approx(10.0 * given)


def test_font_is_the_one_that_is_shipped(look):
    assert QFontInfo(look.font()).family() == FONT_FAMILY
    assert QFontInfo(look.font(bold=True)).bold()


def test_figures_are_all_of_one_width(look):
    widths = {look.metrics(8.5).horizontalAdvance(figure) for figure in "0123456789"}

    assert len(widths) == 1


def test_wish_is_followed_and_said(look):
    said = []
    look.changed.connect(lambda: said.append(look.is_dark))

    look.choose("dark", 100)
    look.choose("light", 100)

    assert said == [True, False]

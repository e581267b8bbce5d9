"""Legibility, reckoned by published formulae, in both themes."""

from itertools import combinations

import numpy as np
import pytest
from PySide6.QtGui import QFontInfo

from ultraplanner_gui.widgets.theme import DARK, FONT_FAMILY, LIGHT, theme

THEMES = pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])


def linear(name):
    """Return red, green and blue of "#rrggbb" without the gamma of sRGB (IEC 61966-2-1)."""
    value = np.array([int(name[k : k + 2], 16) for k in (1, 3, 5)]) / 255.0
    return np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def contrast(a, b):
    """Return the contrast ratio of WCAG 2.2: relative luminances L, (L1 + 0.05) / (L2 + 0.05)."""
    light, dark = sorted(float(linear(c) @ [0.2126, 0.7152, 0.0722]) for c in (a, b))[::-1]
    return (light + 0.05) / (dark + 0.05)


# WCAG 2.2, success criterion 1.4.3 (contrast, minimum): 4.5 to 1 for text of normal size.
TEXT = 4.5
GROUNDS = ("paper", "panel", "lane", "tile")
TINTS = ("pale_teal", "pale_ochre", "pale_sky", "pale_plum", "pale_clay", "pale_moss")


def test_black_on_white_has_the_contrast_wcag_gives():
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)


@THEMES
@pytest.mark.parametrize("ground", [*GROUNDS, *TINTS, "twilight", "daylight"])
def test_ink_is_legible_on_every_ground(colours, ground):
    assert contrast(colours.ink, getattr(colours, ground)) >= TEXT


@THEMES
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("ink", ["soft", "clay", "plum"])
def test_small_text_is_legible_on_every_ground(colours, ink, ground):
    assert contrast(getattr(colours, ink), getattr(colours, ground)) >= TEXT


@THEMES
def test_text_on_a_filled_step_and_on_the_night_is_legible(colours):
    assert contrast(colours.on_colour, colours.teal) >= TEXT
    assert contrast(colours.on_night, colours.night) >= TEXT


@THEMES
@pytest.mark.parametrize("hue", ["teal", "ochre", "sky", "plum", "clay", "moss", "soft"])
def test_marks_stand_out_from_the_lane(colours, hue):
    # WCAG 2.2, success criterion 1.4.11 (non-text contrast): 3 to 1.
    assert contrast(getattr(colours, hue), colours.lane) >= 3.0


# Machado, Oliveira and Fernandes 2009, IEEE TVCG 15:1291, severity 1.0; the figures from memory.
BLINDNESS = {
    "protanopia": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "deuteranopia": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "tritanopia": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}


def lab(rgb):
    """Return CIE 1976 L*a*b* (white D65) of linear sRGB; matrix of IEC 61966-2-1."""
    to_xyz = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
    x, y, z = np.array(to_xyz) @ np.clip(rgb, 0.0, 1.0) / np.array([0.9505, 1.0, 1.089])
    f = [t ** (1 / 3) if t > 0.008856 else 7.787 * t + 16 / 116 for t in (x, y, z)]
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def test_lab_of_white_is_as_defined():
    assert lab(linear("#ffffff")) == pytest.approx([100.0, 0.0, 0.0], abs=0.1)


#: Hues that stand beside each other in one lane.
NEIGHBOURS = (("ochre", "sky"), ("plum", "sky"), ("pale_ochre", "pale_sky"), ("teal", "clay"))


@THEMES
@pytest.mark.parametrize("kind", BLINDNESS)
@pytest.mark.parametrize("pair", NEIGHBOURS, ids="-".join)
def test_neighbours_stay_apart_for_colour_blind_eyes(colours, kind, pair):
    seen = [lab(np.array(BLINDNESS[kind]) @ linear(getattr(colours, hue))) for hue in pair]

    # A difference of 10 is seen at a glance (common practice, no source).
    assert float(np.linalg.norm(seen[0] - seen[1])) >= 10.0


@THEMES
def test_light_of_day_is_told_apart_without_colour(colours):
    lights = [lab(linear(getattr(colours, n)))[0] for n in ("daylight", "twilight", "night")]

    assert all(abs(a - b) >= 5.0 for a, b in combinations(lights, 2))


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

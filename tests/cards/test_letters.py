"""The shipped font tells apart what is easily confused; measured on its outlines."""

from itertools import combinations

import pytest
from fontTools.pens.boundsPen import BoundsPen
from fontTools.pens.statisticsPen import StatisticsPen
from fontTools.ttLib import TTFont

from tests.cards.font_widths import FONTS

LEAST_DIFFERENCE = 0.10
PAIRS = [*combinations("1lI", 2), ("0", "O"), ("6", "8"), ("5", "S"), ("2", "Z"), ("3", "8")]


def _shape(font, letter):
    """Return area, middle and spread of a letter, in em."""
    glyphs = font.getGlyphSet()
    glyph = glyphs[font.getBestCmap()[ord(letter)]]
    em = font["head"].unitsPerEm
    pen, bounds = StatisticsPen(glyphset=glyphs), BoundsPen(glyphs)
    glyph.draw(pen)
    glyph.draw(bounds)
    left, bottom, right, top = bounds.bounds
    return (
        abs(pen.area) / em**2 * 4.0,
        (pen.meanX - left) / (right - left),
        (pen.meanY - bottom) / (top - bottom),
        pen.stddevX / em * 4.0,
        pen.stddevY / em * 4.0,
        (right - left) / em,
        (top - bottom) / em,
    )


@pytest.mark.parametrize("bold", [False, True])
@pytest.mark.parametrize("pair", PAIRS)
def test_letters_and_figures_that_are_confused_differ(pair, bold):
    font = TTFont(FONTS / ("B612-Bold.otf" if bold else "B612-Regular.otf"))
    a, b = (_shape(font, letter) for letter in pair)
    difference = sum(abs(x - y) for x, y in zip(a, b, strict=True))
    assert difference >= LEAST_DIFFERENCE

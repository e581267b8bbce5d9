"""Widths of text from the tables of the shipped font, read by another library than Qt."""

from functools import cache
from pathlib import Path

from fontTools.ttLib import TTFont

FONTS = Path(__file__).resolve().parents[2] / "resources" / "fonts"
MM_PER_PT = 25.4 / 72


@cache
def _font(bold):
    font = TTFont(FONTS / ("B612-Bold.otf" if bold else "B612-Regular.otf"))
    return font.getBestCmap(), font["hmtx"], font["head"].unitsPerEm, font["OS/2"]


def measure(text, size_pt, bold):
    """Return the width of *text*, kerning left out, in millimetres."""
    return _width_em(text, bold) * size_pt * MM_PER_PT


@cache
def _width_em(text, bold):
    glyphs, widths, per_em, _ = _font(bold)
    return sum(widths[glyphs.get(ord(c), ".notdef")][0] for c in text) / per_em


def heights_em(bold):
    """Return the heights of small and capital letters."""
    *_, per_em, os2 = _font(bold)
    return os2.sxHeight / per_em, os2.sCapHeight / per_em

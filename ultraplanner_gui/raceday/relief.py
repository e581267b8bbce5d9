"""The picture of the ground: filled with its wash of gradient, hachured and outlined.

Filled and outlined column by column in arrays, which takes a third of what a painter takes for
one path of a thousand points; the eye sees no difference.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QLineF
from PySide6.QtGui import QColor, QImage, QPainter, QPen

from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

#: Gradients at which the wash is full, and from which hachures are drawn.
FULL_WASH = 0.20
FIRST_HACHURE = 0.03
WASH_STRENGTH = 0.85
#: Steps from the level to the full wash: finer than the colours of a screen.
SHADES = 256
OUTLINE_PX = 1.3
#: From one hachure to the next on the level, and by how much less where the wash is full.
HACHURE_GAP_PX, HACHURE_CLOSER_PX = 11.0, 8.0
FORMAT = QImage.Format.Format_ARGB32_Premultiplied

Pixels = npt.NDArray[np.uint32]
FloatArray32 = npt.NDArray[np.float32]


def relief(
    ys_px: FloatArray,
    gradient: FloatArray,
    height_px: int,
    ratio: float,
    used: QImage | None = None,
) -> QImage:
    """Return the ground below *ys_px*, the heights at the edges of all columns of the picture.

    Columns and rows are those of the screen, *ratio* of them to a pixel of the layout. The memory
    of a *used* picture is taken again if it has the size: new memory takes as long as filling it.
    """
    width = len(gradient)
    picture = used if used is not None else QImage()
    if (picture.width(), picture.height()) != (width, height_px):
        picture = QImage(width, height_px, FORMAT)
    # Rows of four bytes to a pixel follow on each other without a gap.
    pixels = np.frombuffer(picture.bits(), np.uint32)
    middle = (0.5 * (ys_px[:-1] + ys_px[1:])).astype(np.float32)
    ground, wash = pixels.reshape(height_px, width), _wash(gradient)
    top, bottom = (int(np.clip(y, 0, height_px)) for y in (middle.min(), middle.max() + 1.0))
    rows = np.arange(top, bottom, dtype=np.float32)[:, None]
    ground[:top], ground[bottom:] = 0, wash
    np.multiply(rows + np.float32(0.5) > middle, wash, out=ground[top:bottom])
    _outline(pixels, height_px, middle, np.abs(np.diff(ys_px)), OUTLINE_PX * ratio)
    picture.setDevicePixelRatio(ratio)
    with QPainter(picture) as painter:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        _hachures(painter, gradient, ys_px / ratio, height_px / ratio, ratio)
    return picture


def _outline(
    pixels: Pixels, height: int, middle: FloatArray32, rise: FloatArray, thick: float
) -> None:
    """Draw the edge of the ground, *rise* what it rises within each column, with soft sides."""
    width, soft = len(middle), np.maximum(rise, 1.0).astype(np.float32)
    reach = (0.5 * (thick * np.hypot(1.0, rise) + soft)).astype(np.float32)
    first = np.floor(np.clip(middle - reach, 0, height)).astype(np.int32)
    counts = np.ceil(np.clip(middle + reach, 0, height)).astype(np.int32) - first
    # All pixels it may touch in one row, column after column.
    row = np.arange(counts.sum(), dtype=np.int32)
    row -= np.repeat(np.cumsum(counts, dtype=np.int32) - counts - first, counts)
    away = np.abs(row + np.float32(0.5) - np.repeat(middle, counts))
    share = np.divide(np.repeat(reach, counts) - away, np.repeat(soft, counts), dtype=np.float32)
    at = row * width + np.repeat(np.arange(width, dtype=np.int32), counts)
    pixels[at] = _blended(pixels[at], QColor(theme().colours.ink).rgb(), share)


def _blended(under: Pixels, over: int, share: FloatArray32) -> Pixels:
    """Return the opaque colour *over*, of which there is *share*, on the pixels *under*."""
    much = (np.clip(share, 0.0, 1.0) * np.float32(256.0)).astype(np.uint32)
    less = np.uint32(256) - much
    # Two of the four bytes at a time, each with room for its product.
    odd, even = np.uint32(0x00FF00FF), np.uint32(0xFF00FF00)
    low = (under & odd) * less + np.uint32(over & 0x00FF00FF) * much >> np.uint32(8) & odd
    high = (under >> np.uint32(8) & odd) * less + np.uint32(over >> 8 & 0x00FF00FF) * much & even
    blended: Pixels = low | high
    return blended


def _wash(gradient: FloatArray) -> Pixels:
    """Return the colour of each column by its gradient.

    Diverging: descent sky, level stone, climb ochre; depth of the hue is steepness.
    """
    c = theme().colours
    shades = _shades(c.stone, c.pale_sky, c.pale_ochre)
    steep = np.clip(gradient * (SHADES / FULL_WASH), -SHADES, SHADES)
    return shades[(steep + (SHADES + 0.5)).astype(np.intp)]


@lru_cache(maxsize=2)
def _shades(level: str, descent: str, climb: str) -> Pixels:
    """Return the colours from the steepest descent to the steepest climb."""
    share = np.arange(-SHADES, SHADES + 1)[:, None] / SHADES
    tint = np.abs(share) * WASH_STRENGTH
    hue = np.where(share > 0.0, _rgb(climb), _rgb(descent))
    red, green, blue = ((1.0 - tint) * _rgb(level) + tint * hue).astype(np.uint32).T
    packed: Pixels = np.uint32(0xFF000000) | red << 16 | green << 8 | blue
    return packed


def _hachures(
    painter: QPainter, gradient: FloatArray, ys: FloatArray, height: float, ratio: float
) -> None:
    """Draw strokes down the slope, steeper = denser: they survive print in black."""
    smooth = np.convolve(gradient, np.ones(5) / 5.0, mode="same")
    steep = np.abs(smooth)
    gap = HACHURE_GAP_PX - HACHURE_CLOSER_PX * np.minimum(steep / FULL_WASH, 1.0)
    # One stroke wherever another gap is full.
    full = np.cumsum(1.0 / (gap * ratio))
    at = np.searchsorted(full, np.arange(0.5, full[-1] if len(full) else 0.0))
    at = at[steep[at] >= FIRST_HACHURE]
    top = ys[at] + 3.0
    bottom = np.minimum(top + np.minimum(7.0 + 60.0 * steep[at], 20.0), height - 1.0)
    is_climb, x = smooth[at] > 0.0, at / ratio
    ends = np.array((x, top, np.where(is_climb, x - 3.0, x + 3.0), bottom))
    for is_wanted, hue in ((is_climb, "ochre"), (~is_climb, "sky")):
        painter.setPen(QPen(theme().colours[hue], Stroke.HAIR))
        painter.drawLines(list(map(QLineF, *ends[:, is_wanted].tolist())))


def _rgb(colour: str) -> FloatArray:
    c = QColor(colour)
    return np.array([c.red(), c.green(), c.blue()], dtype=float)

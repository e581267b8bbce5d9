"""The picture of the ground: filled with its wash of gradient, hachured and outlined.

Filled and outlined column by column in arrays, which takes a third of what a painter takes for
one path of a thousand points; the eye sees no difference.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QByteArray, QDataStream
from PySide6.QtGui import QColor, QImage, QPainter, QPainterPath, QPen

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
#: A point of a path as Qt writes it: whether a line leads there, and where; then from which on the
#: last part of it runs, and the rule it is filled by.
_POINT = np.dtype([("is_line", ">i4"), ("x", ">f8"), ("y", ">f8")])
_REST = bytes(8)
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
    _fill(pixels.reshape(height_px, width), middle, _wash(gradient))
    _outline(pixels, height_px, middle, np.abs(np.diff(ys_px)), OUTLINE_PX * ratio)
    picture.setDevicePixelRatio(ratio)
    with QPainter(picture) as painter:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        _hachures(painter, gradient, ys_px / ratio, height_px / ratio, ratio)
    return picture


def _fill(ground: Pixels, middle: FloatArray32, wash: Pixels) -> None:
    """Give the pixels whose middle lies below the edge the colour of their column."""
    height = len(ground)
    last_clear = np.floor(np.clip(middle, 0.0, height) - np.float32(0.5)).astype(np.int16)
    top, bottom = int(last_clear.min()) + 1, min(int(last_clear.max()) + 1, height)
    ground[:top], ground[bottom:] = 0, wash
    # Short numbers: half the time is moving them.
    is_ground = np.arange(top, bottom, dtype=np.int16)[:, None] > last_clear
    np.multiply(is_ground, wash, out=ground[top:bottom])


def _outline(
    pixels: Pixels, height: int, middle: FloatArray32, rise: FloatArray, thick: float
) -> None:
    """Draw the edge of the ground, *rise* what it rises within each column, with soft sides."""
    width, rise, half = len(middle), rise.astype(np.float32), np.float32(0.5)
    soft = np.maximum(rise, np.float32(1.0))
    reach = half * (np.float32(thick) * np.sqrt(rise * rise + np.float32(1.0)) + soft)
    first = np.floor(np.clip(middle - reach, 0, height)).astype(np.int32)
    counts = np.ceil(np.clip(middle + reach, 0, height)).astype(np.int32) - first
    # All pixels it may touch in one row, column after column.
    ends, column = np.cumsum(counts, dtype=np.int32), np.repeat(np.arange(width), counts)
    row = np.arange(ends[-1], dtype=np.int32)
    row -= (ends - counts - first).take(column)
    away = np.abs(row + (half - middle).take(column))
    share = (reach.take(column) - away) / soft.take(column)
    at = row * width + column
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
    gap = HACHURE_GAP_PX - HACHURE_CLOSER_PX / FULL_WASH * np.abs(smooth)
    # One stroke wherever another gap is full.
    full = np.cumsum(1.0 / (ratio * np.maximum(gap, HACHURE_GAP_PX - HACHURE_CLOSER_PX)))
    at = np.searchsorted(full, np.arange(0.5, full[-1] if len(full) else 0.0))
    slope = smooth[at]
    climbs, descents = slope >= FIRST_HACHURE, slope <= -FIRST_HACHURE
    for is_wanted, lean, hue in ((climbs, -3.0, "ochre"), (descents, 3.0, "sky")):
        place = at[is_wanted]
        x, top = place / ratio, ys[place] + 3.0
        long = np.minimum(7.0 + 60.0 * np.abs(slope[is_wanted]), 20.0)
        strokes = _strokes(x, top, x + lean, np.minimum(top + long, height - 1.0))
        painter.strokePath(strokes, QPen(theme().colours[hue], Stroke.HAIR))


def _strokes(*ends: FloatArray) -> QPainterPath:
    """Return lines as one path; *ends* are x and y of where each begins, x and y of where it ends.

    Read from the bytes in which Qt itself keeps a path: a line at a time takes twice as long as
    drawing them.
    """
    points = np.zeros((len(ends[0]), 2), _POINT)
    points["is_line"][:, 1] = 1
    points["x"].T[:], points["y"].T[:] = ends[::2], ends[1::2]
    path = QPainterPath()
    QDataStream(QByteArray(points.size.to_bytes(4, "big") + points.tobytes() + _REST)) >> path
    return path


def _rgb(colour: str) -> FloatArray:
    c = QColor(colour)
    return np.array([c.red(), c.green(), c.blue()], dtype=float)

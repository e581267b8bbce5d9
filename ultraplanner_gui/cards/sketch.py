"""The small profile at the head of a pace card."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.cards.flow import Block, Frame
from ultraplanner_gui.cards.mirror import mirrored
from ultraplanner_gui.cards.pace_content import Shade, Sketch
from ultraplanner_gui.cards.page import (
    BLACK,
    CAP_HEIGHT_EM,
    HILL,
    RULE,
    Line,
    Op,
    Polygon,
    Rect,
    Strokes,
    Text,
)
from ultraplanner_gui.cards.setting import Setting, em_mm

SHARE_OF_PAGE, DENSE_SHARE_OF_PAGE = 0.12, 0.07
LEAST_MM, MOST_MM = 7.0, 36.0
BAND_MM, BAND_GAP_MM, SLANT_MM = 1.7, 0.5, 0.8
WIDEST_GUTTER_SHARE = 0.22


def sketch_block(sketch: Sketch, setting: Setting, frame: Frame) -> Block:
    """Return the profile with its scale at the left, station lines and the dark band under it."""
    size, width_mm = setting.label_pt, frame.inner_mm
    labels = [sketch.highest, sketch.lowest, sketch.dark if sketch.shades else ""]
    gutter = setting.widest_mm(labels, size) + setting.gap_mm
    if gutter > WIDEST_GUTTER_SHARE * width_mm or not any(labels):
        gutter = 0.0
    hill = _hill_mm(sketch, setting, frame.height_mm, has_scale=gutter > 0.0)
    lines: Sequence[str] = ()
    if not gutter and sketch.line:
        lines = setting.wrap(f"{sketch.lowest} – {sketch.highest}", width_mm, size)
    above = len(lines) * setting.line_mm(size)

    def draw() -> list[Op]:
        ops: list[Op] = list(setting.stacked(lines, 0.0, 0.0, size))
        if gutter:
            ops += _scale(sketch, setting, gutter - setting.gap_mm, hill)
        ops += [op.moved(gutter, above) for op in _drawing(sketch, width_mm - gutter, hill)]
        return list(mirrored(ops, width_mm)) if sketch.leftward else ops

    below = BAND_GAP_MM + BAND_MM if sketch.shades else 0.0
    return Block(above + hill + below + 0.7 * em_mm(setting.body_pt), draw)


def _hill_mm(sketch: Sketch, setting: Setting, page_mm: float, has_scale: bool) -> float:
    if not sketch.line:
        return 0.5 * LEAST_MM
    least = 2.2 * setting.line_mm(setting.label_pt) if has_scale else LEAST_MM
    share = DENSE_SHARE_OF_PAGE if setting.is_dense else SHARE_OF_PAGE
    return max(least, min(MOST_MM, share * page_mm))


def _scale(sketch: Sketch, setting: Setting, right_mm: float, hill_mm: float) -> list[Op]:
    size = setting.label_pt
    dark = hill_mm + BAND_GAP_MM + BAND_MM
    lowest = min(hill_mm, dark - 1.1 * em_mm(size)) if sketch.shades else hill_mm
    places = (
        (sketch.highest, CAP_HEIGHT_EM * em_mm(size)),
        (sketch.lowest, lowest),
        (sketch.dark if sketch.shades else "", dark),
    )
    return [Text(right_mm, y, t, size, align="right") for t, y in places if t]


def _drawing(sketch: Sketch, width_mm: float, hill_mm: float) -> list[Op]:
    ops: list[Op] = []
    if sketch.line:
        line = tuple((x * width_mm, hill_mm * (1.0 - y)) for x, y in sketch.line)
        ops.append(Polygon(((0.0, hill_mm), *line, (width_mm, hill_mm)), HILL))
        ops.append(Polygon(line, BLACK, outline_mm=0.25))
    ops.append(Line((0.0, hill_mm), (width_mm, hill_mm), 0.2, RULE))
    for share in sketch.stations:
        x = share * width_mm
        ops.append(Line((x, 0.0), (x, hill_mm), 0.2, BLACK, (0.7, 0.5)))
    return ops + light_band(sketch.shades, width_mm, hill_mm + BAND_GAP_MM)


def light_band(shades: Sequence[Shade], width_mm: float, top_mm: float) -> list[Op]:
    """Return the light along the way: black where it is dark, slanted lines in twilight."""
    ops: list[Op] = []
    for shade in shades:
        start, end = shade.start * width_mm, shade.end * width_mm
        if shade.kind == "dark":
            ops.append(Rect(start, top_mm, end - start, BAND_MM, BLACK))
            continue
        count = max(1, int((end - start) / SLANT_MM))
        slants = tuple(
            ((x, top_mm + BAND_MM), (min(x + 0.5 * BAND_MM, end), top_mm))
            for x in (start + (k + 0.25) * (end - start) / count for k in range(count))
        )
        ops.append(Strokes(slants, 0.25))
    return ops

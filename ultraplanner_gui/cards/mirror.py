"""Things on a page from the other side."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from msgspec.structs import replace

from ultraplanner_gui.cards.page import Align, Line, Op, Polygon, Rect, Strokes, Text

_OTHER_SIDE: dict[Align, Align] = {"left": "right", "right": "left", "centre": "centre"}


def mirrored(ops: Iterable[Op], width_mm: float) -> Iterator[Op]:
    """Yield *ops* from the other side of what is *width_mm* wide."""
    return (_mirrored(op, width_mm) for op in ops)


def _mirrored(op: Op, width_mm: float) -> Op:
    match op:
        case Text():
            return replace(op, x_mm=width_mm - op.x_mm, align=_OTHER_SIDE[op.align])
        case Rect():
            return replace(op, x_mm=width_mm - op.x_mm - op.width_mm)
        case Line():
            start, end = ((width_mm - x, y) for x, y in (op.start, op.end))
            return replace(op, start=start, end=end)
        case Polygon():
            return replace(op, points=tuple((width_mm - x, y) for x, y in op.points))
        case Strokes():
            return _with_strokes_mirrored(op, width_mm)


def _with_strokes_mirrored(op: Strokes, width_mm: float) -> Strokes:
    if all(a[1] == b[1] for a, b in op.lines):
        lines = (((width_mm - b[0], b[1]), (width_mm - a[0], a[1])) for a, b in op.lines)
        return replace(op, lines=tuple(lines))
    # A tick is a tick from either side.
    ends = [x for line in op.lines for x, _ in line]
    return op.moved(width_mm - max(ends) - min(ends), 0.0)

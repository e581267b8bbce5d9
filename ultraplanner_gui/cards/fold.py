"""Folding: the panels of a card side by side on sheets, in the order in which they are read."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.cards.page import BLACK, RULE, Line, Op, Page

FOLD_MM = 3.0
PANELS = 2


def folded(panels: Sequence[Page], name: str, leftward: bool = False) -> tuple[Page, ...]:
    """Return *panels* as sheets folded once in the middle, fronts and backs in turn.

    Up to two panels are one side. More make booklets of four: the last panel and the first on
    the outside, the second and the third inside, so that they read in order. What is read
    *leftward* has its back at the right.
    """
    sheets: list[Page] = []
    for start in range(0, len(panels), 2 * PANELS):
        part = panels[start : start + 2 * PANELS]
        if len(part) <= PANELS:
            sheets.append(_spread(part, name, leftward))
            continue
        last = part[3] if len(part) > 3 else None
        sheets.append(_spread((last, part[0]), name, leftward))
        sheets.append(_spread((part[1], part[2]), name, leftward))
    return tuple(sheets)


def _spread(panels: Sequence[Page | None], name: str, leftward: bool) -> Page:
    size = next(panel for panel in panels if panel is not None)
    ops: list[Op] = []
    panels = [*panels, *[None] * (PANELS - len(panels))]
    for place, panel in enumerate(reversed(panels) if leftward else panels):
        if panel is not None:
            ops += [op.moved(place * size.width_mm, 0.0) for op in panel.ops]
    fold, bottom = size.width_mm, size.height_mm
    ops += [
        Line((fold, 0.0), (fold, FOLD_MM), 0.25, BLACK),
        Line((fold, FOLD_MM), (fold, bottom - FOLD_MM), 0.15, RULE, (0.6, 1.4)),
        Line((fold, bottom - FOLD_MM), (fold, bottom), 0.25, BLACK),
    ]
    is_shrunk = any(panel is not None and panel.is_shrunk for panel in panels)
    return Page(PANELS * fold, bottom, tuple(ops), name, is_shrunk=is_shrunk)

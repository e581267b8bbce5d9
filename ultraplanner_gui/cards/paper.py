"""Sheets of paper: cards side by side with marks to cut along, backs behind fronts, tiles."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import groupby

from ultraplanner_gui.cards.impose import SLACK_MM, Placed, impose
from ultraplanner_gui.cards.page import Line, Op, Page
from ultraplanner_gui.plan.value import Value

CUT_MM, CUT_GREY = 0.1, 0.6
OVERLAP_MM = 10.0


class Paper(Value, frozen=True):
    """What is printed on. `unprintable_mm` is the edge the printer leaves white; on paper
    printed on both sides the back of a card lies behind its front.
    """

    width_mm: float
    height_mm: float
    unprintable_mm: float = 0.0
    both_sides: bool = False

    @property
    def turned(self) -> Paper:
        """The same paper lying on its other side."""
        return Paper(self.height_mm, self.width_mm, self.unprintable_mm, self.both_sides)

    def takes(self, page: Page) -> bool:
        """Whether *page* finds room."""
        return (
            page.width_mm <= self.width_mm + SLACK_MM
            and page.height_mm <= self.height_mm + SLACK_MM
        )


def sheets(pages: Sequence[Page], paper: Paper) -> tuple[Page, ...]:
    """Return the sheets of *paper* that take *pages*; PlanError if one is larger than the paper.

    Paper is turned for a page that fits it only so. A page that may be tiled is parted instead,
    its parts overlapping by a centimetre.
    """
    found: list[Page] = []
    for turned, run in groupby(pages, lambda page: _fitting(page, paper)):
        part = list(run)
        if turned is None:
            found += [tile for page in part for tile in tiles(page, paper)]
        elif turned.both_sides:
            found += _both_sides(part, turned)
        else:
            size = (turned.width_mm, turned.height_mm)
            placed = impose(part, *size, turned.unprintable_mm)
            found += [_sheet(sheet, turned) for sheet in placed]
    return tuple(found)


def _fitting(page: Page, paper: Paper) -> Paper | None:
    """Return *paper* as it has to lie for *page*, None if the page is parted."""
    if not paper.takes(page) and paper.turned.takes(page):
        return paper.turned
    return None if page.may_tile and not paper.takes(page) else paper


def tiles(page: Page, paper: Paper) -> Iterator[Page]:
    """Yield the parts of *page*, row by row, each on a sheet of its own with marks to cut along."""
    edge, overlap = paper.unprintable_mm, OVERLAP_MM
    wide, tall = paper.width_mm - 2.0 * edge, paper.height_mm - 2.0 * edge
    across, down = _count(page.width_mm, wide), _count(page.height_mm, tall)
    for row in range(down):
        for column in range(across):
            x, y = edge - column * (wide - overlap), edge - row * (tall - overlap)
            ops = [op.moved(x, y) for op in page.ops]
            if column:
                ops.append(_cut((edge + overlap, 0.0), (edge + overlap, paper.height_mm)))
            if row:
                ops.append(_cut((0.0, edge + overlap), (paper.width_mm, edge + overlap)))
            number = row * across + column + 1
            name = f"{page.name} ({number}/{across * down})"
            yield Page(paper.width_mm, paper.height_mm, tuple(ops), name)


def _count(length_mm: float, room_mm: float) -> int:
    return max(1, math.ceil((length_mm - OVERLAP_MM - SLACK_MM) / (room_mm - OVERLAP_MM)))


def _both_sides(pages: Sequence[Page], paper: Paper) -> Iterator[Page]:
    """Yield fronts and backs in turn, the backs mirrored as the paper turns on its long edge."""
    is_upright = paper.height_mm >= paper.width_mm
    fronts: list[Page] = []
    backs: list[Page | None] = []
    for _, run in groupby(pages, lambda page: page.card):
        part = list(run)
        fronts += part[::2]
        backs += [*part[1::2], *([None] if len(part) % 2 else [])]
    start = 0
    for sheet in impose(fronts, paper.width_mm, paper.height_mm, paper.unprintable_mm):
        behind = backs[start : start + len(sheet)]
        start += len(sheet)
        yield _sheet(sheet, paper)
        mirrored = [
            Placed(back, paper.width_mm - p.x_mm - p.page.width_mm, p.y_mm)
            if is_upright
            else Placed(back, p.x_mm, paper.height_mm - p.y_mm - p.page.height_mm)
            for p, back in zip(sheet, behind, strict=True)
            if back is not None
        ]
        yield _sheet(mirrored, paper, has_cuts=False)


def _sheet(placed: Sequence[Placed], paper: Paper, has_cuts: bool = True) -> Page:
    ops: list[Op] = [op.moved(p.x_mm, p.y_mm) for p in placed for op in p.page.ops]
    if has_cuts and not _fills(placed, paper):
        ops += [line for p in placed for line in _cuts(p)]
    names = dict.fromkeys(p.page.name for p in placed)
    is_shrunk = any(p.page.is_shrunk for p in placed)
    return Page(paper.width_mm, paper.height_mm, tuple(ops), " + ".join(names), is_shrunk=is_shrunk)


def _fills(placed: Sequence[Placed], paper: Paper) -> bool:
    page = placed[0].page
    across, down = abs(page.width_mm - paper.width_mm), abs(page.height_mm - paper.height_mm)
    return len(placed) == 1 and max(across, down) <= SLACK_MM


def _cuts(placed: Placed) -> list[Line]:
    left, top = placed.x_mm, placed.y_mm
    right, bottom = left + placed.page.width_mm, top + placed.page.height_mm
    return [
        _cut((left, top), (right, top)),
        _cut((right, top), (right, bottom)),
        _cut((right, bottom), (left, bottom)),
        _cut((left, bottom), (left, top)),
    ]


def _cut(start: tuple[float, float], end: tuple[float, float]) -> Line:
    return Line(start, end, CUT_MM, CUT_GREY)

"""Flowing the rows of a card onto as many pages as they need."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ultraplanner_gui.cards.card_words import Turning
from ultraplanner_gui.cards.page import BAND, SOFT, Op, Page, Rect, Text
from ultraplanner_gui.cards.setting import Setting, em_mm

LEAST_MARGIN_MM = 3.0
LARGEST_MARGIN_MM = 12.0
MOST_PAGES = 99
MOST_EASE = 0.45
"""The most white above and below a row, in lines of the body."""


@dataclass(frozen=True, slots=True)
class Block:
    """Things drawn together, from their own top left corner."""

    height_mm: float
    ops: tuple[Op, ...] = ()

    def at(self, x_mm: float, y_mm: float) -> list[Op]:
        """Return the things moved to a place."""
        return [op.moved(x_mm, y_mm) for op in self.ops]


@dataclass(frozen=True, slots=True)
class Frame:
    """The page and the part of it that is printed on."""

    width_mm: float
    height_mm: float

    @property
    def margin_mm(self) -> float:
        """White on every side."""
        least = min(self.width_mm, self.height_mm)
        return max(LEAST_MARGIN_MM, min(LARGEST_MARGIN_MM, 0.045 * least))

    @property
    def inner_mm(self) -> float:
        """Width between the margins."""
        return self.width_mm - 2.0 * self.margin_mm

    @property
    def bottom_mm(self) -> float:
        """Where the printed part ends."""
        return self.height_mm - self.margin_mm


@dataclass(frozen=True, slots=True)
class Sheet:
    """A card set at one size, ready to flow.

    `warnings` and `opening` follow the title on the first page only, `heads` on every page;
    `closing` follows the last row, `notes` stand at the foot of the last page and `running`
    ones at that of every page. `strain` counts what makes this setting a poor choice.
    """

    setting: Setting
    title: str
    subtitle: str
    rows: Sequence[Block]
    turning: Turning
    warnings: Sequence[str] = ()
    notes: Sequence[str] = ()
    running: Sequence[str] = ()
    opening: Block = Block(0.0)
    heads: Block = Block(0.0)
    closing: Block = Block(0.0)
    strain: int = 0


def flow(sheet: Sheet, frame: Frame) -> tuple[Page, ...] | None:
    """Return the pages of *sheet*, or None if a row alone is taller than a page."""
    for total in (1, *range(2, MOST_PAGES)):
        shares = _shares(sheet, frame, total)
        if shares is not None:
            return tuple(_page(sheet, frame, shares, k, total) for k in range(total))
        if total == 1 and not _fits_at_all(sheet, frame):
            return None
    return None


def _fits_at_all(sheet: Sheet, frame: Frame) -> bool:
    tallest = max((row.height_mm for row in sheet.rows), default=0.0) + 2.0 * sheet.setting.pad_mm
    return all(tallest <= _room(sheet, frame, k, 3) for k in range(3))


def _room(sheet: Sheet, frame: Frame, number: int, total: int) -> float:
    """Return the height left for rows on page *number* of *total*, from 0."""
    top = frame.margin_mm + _header(sheet, frame, number, total).height_mm
    return frame.bottom_mm - _foot(sheet, frame, number, total).height_mm - top


def _shares(sheet: Sheet, frame: Frame, total: int) -> list[Sequence[Block]] | None:
    """Return the rows of each page, evened out, or None if they need more pages."""
    rooms = [_room(sheet, frame, k, total) for k in range(total)]
    shares = _filled(sheet, rooms)
    if shares is None or total == 1:
        return shares
    low, high = 0.0, 1.0
    for _ in range(10):
        middle = 0.5 * (low + high)
        evened = _filled(sheet, [room * middle for room in rooms])
        low, high = (low, middle) if evened is not None else (middle, high)
        shares = evened or shares
    return shares


def _filled(sheet: Sheet, rooms: Sequence[float]) -> list[Sequence[Block]] | None:
    shares: list[list[Block]] = [[] for _ in rooms]
    number, left = 0, rooms[0]
    for row in sheet.rows:
        height = row.height_mm + 2.0 * sheet.setting.pad_mm
        while height > left:
            number += 1
            if number == len(rooms):
                return None
            left = rooms[number]
        shares[number].append(row)
        left -= height
    return list(shares) if min(rooms[number:]) >= 0.0 else None


def _page(
    sheet: Sheet, frame: Frame, shares: Sequence[Sequence[Block]], number: int, total: int
) -> Page:
    header = _header(sheet, frame, number, total)
    foot = _foot(sheet, frame, number, total)
    left, ops = frame.margin_mm, header.at(frame.margin_mm, frame.margin_mm)
    ops += foot.at(left, frame.bottom_mm - foot.height_mm)
    y = frame.margin_mm + header.height_mm
    pad = sheet.setting.pad_mm + _ease(sheet, frame, shares)
    index = sum(len(share) for share in shares[:number])
    for row in shares[number]:
        height = row.height_mm + 2.0 * pad
        if index % 2 == 0:
            bleed = 0.4 * left
            ops.append(Rect(left - bleed, y, frame.inner_mm + 2.0 * bleed, height, BAND))
        ops += row.at(left, y + pad)
        y += height
        index += 1
    if number == total - 1:
        ops += sheet.closing.at(left, y)
    # Bands first, so that no band covers what a neighbour draws.
    ops.sort(key=lambda op: not (isinstance(op, Rect) and op.grey == BAND))
    name = sheet.title if total == 1 else f"{sheet.title}, {_page_of(sheet, number, total)}"
    return Page(frame.width_mm, frame.height_mm, tuple(ops), name)


def _ease(sheet: Sheet, frame: Frame, shares: Sequence[Sequence[Block]]) -> float:
    """Return the padding that rows get of what is left over, the same on every page."""
    total = len(shares)
    spare = [
        (
            _room(sheet, frame, k, total)
            - sum(row.height_mm + 2.0 * sheet.setting.pad_mm for row in share)
        )
        / (2.0 * len(share))
        for k, share in enumerate(shares)
        if share
    ]
    return min([MOST_EASE * sheet.setting.line_mm(sheet.setting.body_pt), *spare])


def _header(sheet: Sheet, frame: Frame, number: int, total: int) -> Block:
    setting, width = sheet.setting, frame.inner_mm
    page_of = _page_of(sheet, number, total) if total > 1 else ""
    reserve = setting.width_mm(page_of, setting.body_pt) + 2.0 * setting.gap_mm if page_of else 0.0
    is_first = number == 0
    size = setting.title_pt if is_first else setting.name_pt
    titles = setting.wrap(sheet.title, width - reserve, size, bold=True)
    ops: list[Op] = list(setting.stacked(titles, 0.0, 0.0, size, bold=True))
    baseline = em_mm(size)
    if page_of:
        ops.append(Text(width, baseline, page_of, setting.body_pt, align="right", grey=SOFT))
    height = len(titles) * setting.line_mm(size)
    if is_first:
        beside = setting.width_mm(titles[-1], size, True) + 3.0 * setting.gap_mm
        if setting.width_mm(sheet.subtitle, setting.body_pt) <= width - beside - reserve:
            x = width - reserve
            last = baseline + (len(titles) - 1) * setting.line_mm(size)
            ops.append(Text(x, last, sheet.subtitle, setting.body_pt, align="right", grey=SOFT))
        else:
            lines = setting.wrap(sheet.subtitle, width, setting.body_pt)
            ops += setting.stacked(lines, 0.0, height, setting.body_pt, grey=SOFT)
            height += len(lines) * setting.line_mm(setting.body_pt)
        warnings = _wrapped(sheet.warnings, setting, width, setting.body_pt)
        ops += setting.stacked(warnings, 0.0, height, setting.body_pt, bold=True)
        height += len(warnings) * setting.line_mm(setting.body_pt)
        height += 0.5 * em_mm(setting.body_pt)
        ops += sheet.opening.at(0.0, height)
        height += sheet.opening.height_mm
    else:
        height += 0.3 * em_mm(setting.body_pt)
    ops += sheet.heads.at(0.0, height)
    return Block(height + sheet.heads.height_mm, tuple(ops))


def _foot(sheet: Sheet, frame: Frame, number: int, total: int) -> Block:
    setting = sheet.setting
    is_last = number == total - 1
    goes_on = () if is_last else (sheet.turning.goes_on.format(number + 2, total),)
    texts = (*sheet.running, *(sheet.notes if is_last else goes_on))
    lines = _wrapped(texts, setting, frame.inner_mm, setting.label_pt)
    gap = 0.5 * em_mm(setting.label_pt) if lines else 0.0
    closing = sheet.closing.height_mm if is_last else 0.0
    ops = setting.stacked(lines, 0.0, closing + gap, setting.label_pt, grey=SOFT)
    return Block(closing + gap + len(lines) * setting.line_mm(setting.label_pt), tuple(ops))


def _wrapped(texts: Sequence[str], setting: Setting, width_mm: float, size_pt: float) -> list[str]:
    is_bold = size_pt == setting.body_pt
    return [line for text in texts for line in setting.wrap(text, width_mm, size_pt, is_bold)]


def _page_of(sheet: Sheet, number: int, total: int) -> str:
    return sheet.turning.page.format(number + 1, total)

"""Flowing the rows of a card onto as many pages as they need."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from itertools import pairwise

from msgspec.structs import replace

from ultraplanner_gui.cards.card_words import Turning
from ultraplanner_gui.cards.page import BAND, LEAST_X_HEIGHT_MM, Op, Page, Rect, Text
from ultraplanner_gui.cards.setting import Setting, em_mm
from ultraplanner_gui.plan.value import Value

LEAST_MARGIN_MM = 3.0
LARGEST_MARGIN_MM = 12.0
MOST_PAGES = 98
MOST_EASE = 0.45
"""The most white above and below a row, in lines of the body."""


def _nothing() -> Sequence[Op]:
    return ()


class Block(Value, frozen=True):
    """Things drawn together, from their own top left corner.

    Their height is known at once, they themselves are made when *draw* is called: most settings
    of a card are only measured.
    """

    height_mm: float
    draw: Callable[[], Sequence[Op]] = _nothing
    joins: bool = False
    """Whether it goes on with the row above: same band, no white between."""

    def at(self, x_mm: float, y_mm: float) -> list[Op]:
        """Return the things moved to a place."""
        return [op.moved(x_mm, y_mm) for op in self.draw()]


class Frame(Value, frozen=True):
    """The page and the part of it that is printed on."""

    width_mm: float
    height_mm: float
    least_x_mm: float = LEAST_X_HEIGHT_MM
    """How high small letters must be at least."""

    @property
    def margin_mm(self) -> float:
        """White on every side."""
        least = min(self.width_mm, self.height_mm)
        return max(LEAST_MARGIN_MM, min(LARGEST_MARGIN_MM, 0.045 * least))

    @property
    def inner_mm(self) -> float:
        """Width between the margins."""
        return self.width_mm - 2.0 * self.margin_mm

    def column_mm(self, columns: int) -> float:
        """Return the width of one of so many columns."""
        return (self.inner_mm - (columns - 1) * self.gutter_mm) / columns

    @property
    def gutter_mm(self) -> float:
        """White between columns."""
        return max(6.0, 0.03 * self.width_mm)

    @property
    def bottom_mm(self) -> float:
        """Where the printed part ends."""
        return self.height_mm - self.margin_mm


class Sheet(Value, frozen=True):
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
    columns: int = 1
    has_bands: bool = True
    title_times: float = 1.0

    @property
    def title_pt(self) -> float:
        """Size of the title on the first page."""
        return self.title_times * self.setting.title_pt


class Flow:
    """A sheet on as many pages as it needs; the pages are made when they are asked for."""

    def __init__(self, sheet: Sheet, frame: Frame, most_pages: int) -> None:
        self.sheet = sheet
        self._frame = frame
        self._pad_mm = sheet.setting.pad_mm
        self._pads = _pads(sheet.rows)
        self._heights = [self._height(row, self._pad_mm) for row in range(len(sheet.rows))]
        self._known_rooms: dict[int, list[float]] = {}
        self.total = self._fewest(most_pages)
        """How many pages, 0 if they would be more than asked or a row is taller than a page."""

    def pages(self) -> tuple[Page, ...]:
        """Return the pages, the rows shared out evenly."""
        shares = self._shares()
        pad_mm = self._pad_mm + self._ease(shares)
        return tuple(self._page(shares, pad_mm, k) for k in range(self.total))

    @property
    def fill(self) -> float:
        """The share of the room that the rows take."""
        return max(sum(self._heights), 1.0) / sum(self._rooms(self.total))

    def _fewest(self, most: int) -> int:
        if self._filled(self._rooms(1)) is not None:
            return 1
        if most == 1:
            return 0
        tallest = max((row.height_mm for row in self.sheet.rows), default=0.0)
        if tallest + 2.0 * self._pad_mm > min(self._rooms(3)):
            return 0
        totals = range(2, most + 1)
        return next((n for n in totals if self._filled(self._rooms(n)) is not None), 0)

    def _rooms(self, total: int) -> list[float]:
        """Return the height left for rows in each column of *total* pages."""
        rooms = self._known_rooms.get(total)
        if rooms is None:
            height_mm = self._frame.bottom_mm - self._frame.margin_mm
            rooms = [
                height_mm - self._header(k, total).height_mm - self._foot(k, total).height_mm
                for k in range(total)
                for _ in range(self.sheet.columns)
            ]
            self._known_rooms[total] = rooms
        return rooms

    def _header(self, number: int, total: int) -> Block:
        """Return what stands above the rows of page *number* of *total*, from 0."""
        page_of = self._page_of(number, total)
        return (_first_header if number == 0 else _next_header)(self.sheet, self._frame, page_of)

    def _page_of(self, number: int, total: int) -> str:
        return self.sheet.turning.page.format(number + 1, total) if total > 1 else ""

    def _foot(self, number: int, total: int) -> Block:
        """Return what stands below the rows of page *number* of *total*, from 0."""
        sheet, setting = self.sheet, self.sheet.setting
        is_last = number == total - 1
        goes_on = sheet.turning.goes_on.format(number + 2, total)
        texts = (*sheet.running, *(sheet.notes if is_last else (goes_on,)))
        lines = _wrapped(texts, setting, self._frame.inner_mm, setting.label_pt)
        closing = sheet.closing.height_mm if is_last else 0.0
        top = closing + (0.5 * em_mm(setting.label_pt) if lines else 0.0)
        height = top + len(lines) * setting.line_mm(setting.label_pt)
        draw = partial(setting.stacked, lines, 0.0, top, setting.label_pt)
        return Block(height, draw)

    def _shares(self) -> list[Sequence[int]]:
        """Return the numbers of the rows in each column of each page, evened out."""
        rooms = self._rooms(self.total)
        shares = self._filled(rooms) or []
        if len(rooms) == 1:
            return shares
        low, high = 0.0, 1.0
        for _ in range(10):
            middle = 0.5 * (low + high)
            evened = self._filled([room * middle for room in rooms])
            low, high = (low, middle) if evened is not None else (middle, high)
            shares = evened or shares
        return shares

    def _height(self, row: int, pad_mm: float) -> float:
        above, below = self._pads[row]
        return self.sheet.rows[row].height_mm + (above + below) * pad_mm

    def _filled(self, rooms: Sequence[float]) -> list[Sequence[int]] | None:
        shares: list[list[int]] = [[] for _ in rooms]
        number, left = 0, rooms[0]
        for row, height in enumerate(self._heights):
            while height > left:
                number += 1
                if number == len(rooms):
                    return None
                left = rooms[number]
            shares[number].append(row)
            left -= height
        return list(shares) if min(rooms[number:]) >= 0.0 else None

    def _ease(self, shares: Sequence[Sequence[int]]) -> float:
        """Return the padding that rows get of what is left over, the same on every page."""
        setting = self.sheet.setting
        spare = [
            (room - sum(self._heights[row] for row in share)) / (2.0 * len(share))
            for room, share in zip(self._rooms(self.total), shares, strict=True)
            if share
        ]
        return min([MOST_EASE * setting.line_mm(setting.body_pt), *spare])

    def _page(self, shares: Sequence[Sequence[int]], pad_mm: float, number: int) -> Page:
        sheet, frame = self.sheet, self._frame
        header, foot = self._header(number, self.total), self._foot(number, self.total)
        left, top = frame.margin_mm, frame.margin_mm
        ops = header.at(left, top) + foot.at(left, frame.bottom_mm - foot.height_mm)
        wide, y = frame.column_mm(sheet.columns), top + header.height_mm
        for column in range(sheet.columns):
            share = shares[number * sheet.columns + column]
            at = (left + column * (wide + frame.gutter_mm), top + header.height_mm)
            drawn, y = self._column(share, pad_mm, at, wide)
            ops += drawn
        if number == self.total - 1:
            ops += sheet.closing.at(left, y)
        # Bands first, so that no band covers what a neighbour draws.
        ops.sort(key=lambda op: not (isinstance(op, Rect) and op.grey == BAND))
        page_of = self._page_of(number, self.total)
        name = f"{sheet.title}, {page_of}" if page_of else sheet.title
        is_shrunk = sheet.setting.body_pt <= sheet.setting.least_pt
        return Page(
            *(frame.width_mm, frame.height_mm, tuple(ops), name),
            is_shrunk=is_shrunk,
        )

    def _column(
        self, share: Sequence[int], pad_mm: float, at_mm: tuple[float, float], wide_mm: float
    ) -> tuple[list[Op], float]:
        """Return the rows of one column, and where they end."""
        ops: list[Op] = []
        x_mm, y = at_mm
        bleed = 0.4 * self._frame.margin_mm
        start: int | None = None
        for row in share:
            start = start if self.sheet.rows[row].joins else None
            above, _ = self._pads[row]
            height = self._height(row, pad_mm)
            band = ops[start] if start is not None else None
            if self.sheet.rows[row].joins and isinstance(band, Rect) and start is not None:
                ops[start] = replace(band, height_mm=band.height_mm + height)
            elif self.sheet.has_bands and self._band(row):
                start = len(ops)
                ops.append(Rect(x_mm - bleed, y, wide_mm + 2.0 * bleed, height, BAND))
            ops += self.sheet.rows[row].at(x_mm, y + above * pad_mm)
            y += height
        return ops, y

    def _band(self, row: int) -> bool:
        """Whether *row* lies on a band: every other one, with what goes on with it."""
        starts = sum(not block.joins for block in self.sheet.rows[: row + 1])
        return starts % 2 == 1


def _pads(rows: Sequence[Block]) -> list[tuple[int, int]]:
    """Return whether each row has white above and below it, 1 or 0 each."""
    ends = [*(row.joins for row in rows), False]
    return [(int(not a), int(not b)) for a, b in pairwise(ends)]


def _first_header(sheet: Sheet, frame: Frame, page_of: str) -> Block:
    """Return title, subtitle, warnings, opening and heads."""
    setting, width, size = sheet.setting, frame.inner_mm, sheet.setting.body_pt
    reserve = _reserve(page_of, setting)
    titles = setting.wrap(sheet.title, width - reserve, sheet.title_pt, bold=True)
    beside = setting.width_mm(titles[-1], sheet.title_pt, True) + 3.0 * setting.gap_mm
    is_beside = setting.width_mm(sheet.subtitle, size) <= width - beside - reserve
    lines = [] if is_beside else setting.wrap(sheet.subtitle, width, size)
    warnings = _wrapped(sheet.warnings, setting, width, size)
    below_title = len(titles) * setting.line_mm(sheet.title_pt)
    below_lines = below_title + len(lines) * setting.line_mm(size)
    opening = below_lines + len(warnings) * setting.line_mm(size) + 0.5 * em_mm(size)
    heads = opening + sheet.opening.height_mm

    def draw() -> list[Op]:
        ops: list[Op] = _titled(titles, page_of, setting, sheet.title_pt, width)
        if is_beside:
            pitch = (len(titles) - 1) * setting.line_mm(sheet.title_pt)
            last = em_mm(sheet.title_pt) + pitch
            ops.append(Text(width - reserve, last, sheet.subtitle, size, False, "right"))
        ops += setting.stacked(lines, 0.0, below_title, size)
        ops += setting.stacked(warnings, 0.0, below_lines, size, bold=True)
        return [*ops, *sheet.opening.at(0.0, opening), *sheet.heads.at(0.0, heads)]

    return Block(heads + sheet.heads.height_mm, draw)


def _next_header(sheet: Sheet, frame: Frame, page_of: str) -> Block:
    """Return title and heads."""
    setting, width, size = sheet.setting, frame.inner_mm, sheet.setting.name_pt
    titles = setting.wrap(sheet.title, width - _reserve(page_of, setting), size, bold=True)
    heads = len(titles) * setting.line_mm(size) + 0.3 * em_mm(setting.body_pt)

    def draw() -> list[Op]:
        return [*_titled(titles, page_of, setting, size, width), *sheet.heads.at(0.0, heads)]

    return Block(heads + sheet.heads.height_mm, draw)


def _reserve(page_of: str, setting: Setting) -> float:
    """Return the width that the number of the page takes beside the title."""
    if not page_of:
        return 0.0
    return setting.width_mm(page_of, setting.body_pt) + 2.0 * setting.gap_mm


def _titled(
    titles: Sequence[str], page_of: str, setting: Setting, size_pt: float, right_mm: float
) -> list[Op]:
    ops: list[Op] = list(setting.stacked(titles, 0.0, 0.0, size_pt, bold=True))
    if page_of:
        size = setting.body_pt
        ops.append(Text(right_mm, em_mm(size_pt), page_of, size, align="right"))
    return ops


def _wrapped(texts: Sequence[str], setting: Setting, width_mm: float, size_pt: float) -> list[str]:
    is_bold = size_pt == setting.body_pt
    return [line for text in texts for line in setting.wrap(text, width_mm, size_pt, is_bold)]

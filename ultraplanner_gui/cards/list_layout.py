"""Cards of headings and lines: boxes to tick, blanks to write on, one column or several."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache, partial
from typing import NamedTuple

from ultraplanner_gui.cards.flow import Block, Frame, Sheet
from ultraplanner_gui.cards.list_content import Blank, Entry, Item, ListCard
from ultraplanner_gui.cards.page import BLACK, Op, Rect, Strokes, Text
from ultraplanner_gui.cards.setting import Setting, em_mm

LEAST_COLUMN_MM = 60.0
LEAST_COLUMN_EM = 17.0
MOST_LABEL_SHARE = 0.4
LEAST_BLANK_MM = 9.5
LONG_TIMES = 3
WRITING_MM, DENSE_WRITING_MM = 6.5, 5.5
BOX_EM, BOX_LINE_MM = 0.78, 0.3
LOUD_TITLE = 2.2
STRAIN_BROKEN = 2


class _Word(NamedTuple):
    """A blank to write on with its label, from where on the line, and how long."""

    label: str
    is_box: bool
    label_mm: float
    from_mm: float
    to_mm: float
    line: int


def list_sheet(card: ListCard, columns: int, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the card in so many columns, None if they would be too narrow."""
    width = frame.column_mm(columns)
    least = max(LEAST_COLUMN_MM, LEAST_COLUMN_EM * em_mm(setting.body_pt))
    if columns > 1 and width < least:
        return None
    rows = [block for entry in card.entries for block in _blocks(entry, setting, width)]
    return Sheet(
        setting=setting,
        title=card.title,
        subtitle=card.subtitle,
        rows=rows,
        turning=card.turning,
        warnings=card.warnings,
        notes=card.notes,
        strain=_strain(card, setting, width),
        columns=columns,
        title_times=LOUD_TITLE if card.is_loud else 1.0,
    )


def _strain(card: ListCard, setting: Setting, width_mm: float) -> int:
    words = (word for entry in card.entries for word in entry.head.split())
    is_broken = setting.widest_mm(words, setting.name_pt, bold=True) > width_mm
    return STRAIN_BROKEN if is_broken else 0


def _blocks(entry: Entry, setting: Setting, width_mm: float) -> Iterator[Block]:
    """Yield the heading with its first line, then every other line by itself."""
    head = _head(entry, setting, width_mm)
    named = (item.label for item in entry.items if item.label)
    labels = [setting.width_mm(label, setting.small_pt, True) for label in named]
    most = MOST_LABEL_SHARE * width_mm - setting.gap_mm
    indent = max((mm for mm in labels if mm <= most), default=0.0)
    items = [_item(item, setting, width_mm, indent) for item in entry.items]
    yield _under(head, items[0]) if items else head
    yield from (Block(block.height_mm, block.draw, joins=True) for block in items[1:])


def _under(upper: Block, lower: Block) -> Block:
    def draw() -> list[Op]:
        return [*upper.draw(), *lower.at(0.0, upper.height_mm)]

    return Block(upper.height_mm + lower.height_mm, draw)


def _head(entry: Entry, setting: Setting, width_mm: float) -> Block:
    size = setting.name_pt
    left = _box_room(setting, size) if entry.has_box else 0.0
    right_mm = setting.width_mm(entry.right, setting.body_pt, True)
    room = width_mm - left
    natural = setting.width_mm(entry.head, size, True)
    # Where both find no room beside each other the figure goes below.
    is_beside = bool(entry.right) and (
        natural + setting.gap_mm + right_mm <= room or right_mm <= 0.45 * room
    )
    names = setting.wrap(
        entry.head, room - (right_mm + setting.gap_mm if is_beside else 0.0), size, bold=True
    )
    below = [] if is_beside else setting.wrap(entry.right, room, setting.body_pt, bold=True)
    pitch = setting.line_mm(size)

    def draw() -> list[Op]:
        ops: list[Op] = list(setting.stacked(names, left, 0.0, size, bold=True))
        if entry.has_box:
            ops.append(_box(0.0, em_mm(size), size))
        if is_beside:
            ops.append(
                Text(width_mm, em_mm(size), entry.right, setting.body_pt, bold=True, align="right")
            )
        ops += setting.stacked(below, left, len(names) * pitch, setting.body_pt, bold=True)
        return ops

    return Block(len(names) * pitch + len(below) * setting.line_mm(setting.body_pt), draw)


def _item(item: Item, setting: Setting, width_mm: float, indent_mm: float) -> Block:
    """Return one line; the texts of an entry begin below one another, behind their labels."""
    if item.blanks:
        return _blanks(item.blanks, setting, width_mm)
    size = setting.figure_pt if item.loud else setting.body_pt
    if not item.label and not item.has_box:
        plain = setting.wrap(item.text, width_mm, size, bold=item.loud)
        draw_plain = partial(setting.stacked, plain, 0.0, 0.0, size, bold=item.loud)
        return Block(max(len(plain), 1) * setting.line_mm(size), draw_plain)
    left = _box_room(setting, size) if item.has_box else 0.0
    label_mm = setting.width_mm(item.label, setting.small_pt, True)
    is_beside = label_mm <= indent_mm
    label_mm = indent_mm + setting.gap_mm if item.label and is_beside else 0.0
    is_above = bool(item.label) and not is_beside
    labels = (
        setting.wrap(item.label, width_mm - left, setting.small_pt, bold=True) if is_above else ()
    )
    indent = left + label_mm
    lines = setting.wrap(item.text, width_mm - indent, size, bold=item.loud)
    top = len(labels) * setting.line_mm(setting.small_pt)

    def draw() -> list[Op]:
        ops: list[Op] = list(setting.stacked(labels, left, 0.0, setting.small_pt, bold=True))
        ops += setting.stacked(lines, indent, top, size, bold=item.loud)
        if item.has_box:
            ops.append(_box(0.0, em_mm(size), size))
        if item.label and is_beside:
            ops.append(Text(left, em_mm(size), item.label, setting.small_pt, bold=True))
        return ops

    return Block(top + max(len(lines), 0 if is_above else 1) * setting.line_mm(size), draw)


def _box_room(setting: Setting, size_pt: float) -> float:
    return BOX_EM * em_mm(size_pt) + 0.6 * setting.gap_mm


def _box(x_mm: float, baseline_mm: float, size_pt: float) -> Rect:
    side = BOX_EM * em_mm(size_pt)
    return Rect(x_mm + 0.15, baseline_mm - side, side, side, BLACK, outline_mm=BOX_LINE_MM)


@lru_cache(maxsize=32)
def _blanks(blanks: tuple[Blank, ...], setting: Setting, width_mm: float) -> Block:
    """Return lines to write on and boxes, as many side by side as find room."""
    size, gap = setting.small_pt, setting.gap_mm
    rows: list[list[Blank]] = [[]]
    used = 0.0
    for blank in blanks:
        wide = _least_mm(blank, setting)
        if rows[-1] and used + gap + wide > width_mm:
            rows.append([])
            used = 0.0
        used += wide + (gap if rows[-1] else 0.0)
        rows[-1].append(blank)
    least = DENSE_WRITING_MM if setting.is_dense else WRITING_MM
    pitch = max(least, 1.4 * setting.line_mm(size))

    def draw() -> list[Op]:
        words = [w for k, row in enumerate(rows) for w in _shared(row, k, setting, width_mm)]
        return _blank_ops(words, pitch, size)

    return Block(len(rows) * pitch + 0.8, draw)


def _label_mm(blank: Blank, setting: Setting) -> float:
    wide = setting.width_mm(blank.label, setting.small_pt)
    if blank.is_box:
        return _box_room(setting, setting.small_pt) + wide
    return wide + 0.4 * setting.gap_mm


def _least_mm(blank: Blank, setting: Setting) -> float:
    return _label_mm(blank, setting) + (0.0 if blank.is_box else LEAST_BLANK_MM)


def _times(blank: Blank) -> int:
    """Return how much of the room for writing goes to *blank*."""
    return 0 if blank.is_box else LONG_TIMES if blank.is_long else 1


def _shared(
    blanks: Sequence[Blank], line: int, setting: Setting, width_mm: float
) -> Iterator[_Word]:
    """Yield the blanks of one line; the room that is left is shared among those for writing."""
    gap = setting.gap_mm
    natural = [_label_mm(blank, setting) for blank in blanks]
    lines = sum(_times(blank) for blank in blanks)
    spare = width_mm - sum(natural) - gap * (len(blanks) - 1)
    room = spare / lines if lines else 0.0
    x = 0.0
    for blank, ahead in zip(blanks, natural, strict=True):
        end = x + ahead + _times(blank) * room
        label = x + _box_room(setting, setting.small_pt) if blank.is_box else x
        yield _Word(blank.label, blank.is_box, label, x if blank.is_box else x + ahead, end, line)
        x = end + gap


def _blank_ops(words: Sequence[_Word], pitch_mm: float, size_pt: float) -> list[Op]:
    ops: list[Op] = []
    lines = []
    for word in words:
        y = (word.line + 1) * pitch_mm - 0.6
        ops.append(Text(word.label_mm, y, word.label, size_pt))
        if word.is_box:
            ops.append(_box(word.from_mm, y, size_pt))
        else:
            lines.append(((word.from_mm, y + 0.4), (word.to_mm, y + 0.4)))
    return [*ops, Strokes(tuple(lines))] if lines else ops


def forms_of(card: ListCard) -> Iterator[Callable[[Setting, Frame], Sheet | None]]:
    """Yield the ways to set *card*: one column, then more."""
    for columns in range(1, card.most_columns + 1):
        yield partial(list_sheet, card, columns)

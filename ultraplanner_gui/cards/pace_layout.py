"""The pace card's tables: one line to a place, two lines, or a list for a narrow strip."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import partial

from ultraplanner_gui.cards.flow import Block, Frame, Sheet
from ultraplanner_gui.cards.pace_content import Clock, PaceCard, PaceRow
from ultraplanner_gui.cards.page import Op, Text
from ultraplanner_gui.cards.setting import Setting, em_mm
from ultraplanner_gui.cards.sketch import sketch_block
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import NONE

MOST_NAME_LINES = 2
LEAST_NAME_SHARE = 0.16
STRAIN_STOP, STRAIN_NAME, STRAIN_LIST = 1, 2, 5


class _Column(Value, frozen=True):
    """Right-aligned cells of one or more lines; only the first line may be the big one."""

    head: str
    cells: tuple[tuple[str, ...], ...]
    is_figure: bool = False


class _Table(Value, frozen=True):
    """Columns with their right edges."""

    columns: tuple[_Column, ...]
    heads: tuple[list[str], ...]
    right_mm: tuple[float, ...]
    name_mm: float


def pace_wide(card: PaceCard, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the card with one line to each place, None if that is too wide."""
    columns = tuple(_wide_columns(card))
    natural = setting.widest_mm((r.name for r in card.rows), setting.name_pt, bold=True)
    table = _table(columns, setting, frame.inner_mm, 0.0, natural)
    if table is None:
        return None
    rows, most_lines = [], 1
    for index, row in enumerate(card.rows):
        names = setting.wrap(row.name, table.name_mm, setting.name_pt, bold=True)
        most_lines = max(most_lines, len(names))
        draw = partial(_row_ops, table, index, names, setting)
        block = Block(_row_mm(table, index, names, setting), draw)
        rows.append(_with_there(block, row, setting, frame.inner_mm))
    heads = _heads(table, card.heads.name, setting)
    strain = _strain(card, setting, table.name_mm, most_lines)
    return _sheet(card, setting, frame, rows, heads, strain)


def pace_two_lines(card: PaceCard, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the card with the ground of each section under its name, None if too wide."""
    ground = _Ground.of(card, setting)
    columns = tuple(_two_line_columns(card))
    natural = max(_with_stop_mm(row, setting) for row in card.rows)
    table = _table(columns, setting, frame.inner_mm, ground.width_mm, natural)
    if table is None:
        return None
    rows, most_lines, strain = [], 1, 0
    for index, row in enumerate(card.rows):
        named = _Named.of(row, setting, table.name_mm)
        most_lines = max(most_lines, len(named.names))
        strain = max(strain, STRAIN_STOP if named.stops else 0)
        draw = partial(_two_line_ops, table, index, named, ground, row, setting)
        height = _row_mm(table, index, named.names, setting, len(named.stops) + 1)
        rows.append(_with_there(Block(height, draw), row, setting, frame.inner_mm))
    heads = _heads(table, card.heads.name, setting, partial(ground.head_ops, card, setting))
    strain += _strain(card, setting, table.name_mm, most_lines)
    return _sheet(card, setting, frame, rows, heads, strain)


def pace_stacked(card: PaceCard, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the card as a list, for a strip too narrow for a table."""
    rows = [_listed(card, row, setting, frame.inner_mm) for row in card.rows]
    return _sheet(card, setting, frame, rows, Block(0.0), STRAIN_LIST)


def _sheet(
    card: PaceCard,
    setting: Setting,
    frame: Frame,
    rows: Sequence[Block],
    heads: Block,
    strain: int,
) -> Sheet:
    return Sheet(
        setting=setting,
        title=card.title,
        subtitle=card.subtitle,
        rows=rows,
        warnings=card.warnings,
        running=card.notes,
        turning=card.turning,
        opening=sketch_block(card.sketch, setting, frame),
        heads=heads,
        strain=strain,
    )


def _strain(card: PaceCard, setting: Setting, name_mm: float, most_lines: int) -> int:
    words = (word for row in card.rows for word in row.name.split())
    is_broken = setting.widest_mm(words, setting.name_pt, bold=True) > name_mm
    return STRAIN_NAME * ((most_lines > MOST_NAME_LINES) + is_broken)


# Columns


def _one_line(clock: Clock) -> tuple[str, ...]:
    return (f"{clock.day} {clock.time}" if clock.day else clock.time,)


def _words(word: str) -> tuple[str, ...]:
    return (word,) if word else ()


def _two_lines(clock: Clock) -> tuple[str, ...]:
    return (clock.time, clock.day) if clock.day else (clock.time,)


def _wide_columns(card: PaceCard) -> Iterator[_Column]:
    heads, rows = card.heads, card.rows
    yield _Column(heads.distance, tuple((r.distance,) for r in rows))
    if heads.climb_drop:
        yield _Column(heads.climb_drop, tuple((r.climb_drop,) for r in rows))
    if heads.pace:
        yield _Column(heads.pace, tuple((r.pace,) for r in rows))
    yield _Column(heads.on_plan, tuple((r.on_plan,) for r in rows), is_figure=True)
    if heads.stop:
        yield _Column(heads.stop, tuple((r.stop,) for r in rows))
    if heads.in_hand:
        yield _Column(heads.in_hand, tuple((r.in_hand,) for r in rows))
    if heads.late:
        yield _Column(heads.late, tuple(_one_line(r.late) for r in rows))
    if heads.last:
        yield _Column(heads.last, tuple(_one_line(r.last) for r in rows))
    if heads.cutoff:
        cells = tuple((*_one_line(r.cutoff), *_words(r.cutoff_word)) for r in rows)
        yield _Column(heads.cutoff, cells)


def _two_line_columns(card: PaceCard) -> Iterator[_Column]:
    heads, rows = card.heads, card.rows
    if heads.in_hand:
        plan = tuple((r.on_plan, r.in_hand) for r in rows)
        yield _Column(f"{heads.on_plan}\n{heads.in_hand}", plan, is_figure=True)
    else:
        yield _Column(heads.on_plan, tuple((r.on_plan,) for r in rows), is_figure=True)
    if heads.late:
        yield _Column(heads.late, tuple(_two_lines(r.late) for r in rows))
    if heads.last:
        yield _Column(heads.last, tuple(_two_lines(r.last) for r in rows))
    if heads.cutoff:
        cells = tuple((*_two_lines(r.cutoff), *_words(r.cutoff_word)) for r in rows)
        yield _Column(heads.cutoff, cells)


def _cells_mm(column: _Column, setting: Setting) -> float:
    size = setting.figure_pt if column.is_figure else setting.body_pt
    first = setting.widest_mm((c[0] for c in column.cells), size, column.is_figure)
    below = (line for cell in column.cells for line in cell[1:])
    return max(first, setting.widest_mm(below, setting.small_pt))


def _head_lines(column: _Column, setting: Setting, cells_mm: float) -> list[str]:
    size = setting.label_pt
    longest = setting.widest_mm(column.head.replace("\n", " ").split(" "), size)
    width = max(cells_mm, longest)
    return [line for part in column.head.split("\n") for line in setting.wrap(part, width, size)]


def _table(
    columns: tuple[_Column, ...],
    setting: Setting,
    inner_mm: float,
    least_name_mm: float,
    natural_name_mm: float,
) -> _Table | None:
    """Return the columns with what the page leaves for names, None if that is too little."""
    cells = [_cells_mm(c, setting) for c in columns]
    heads = tuple(_head_lines(c, setting, mm) for c, mm in zip(columns, cells, strict=True))
    widths = [
        max(mm, setting.widest_mm(head, setting.label_pt))
        for mm, head in zip(cells, heads, strict=True)
    ]
    gap = setting.gap_mm
    room = inner_mm - sum(widths) - gap * len(columns)
    if room < max(least_name_mm, min(natural_name_mm, LEAST_NAME_SHARE * inner_mm)):
        return None
    name = max(least_name_mm, min(natural_name_mm, room))
    slack = (room - name) / (len(columns) + 1)
    name += slack
    right, edges = name, []
    for width in widths:
        right += gap + slack + width
        edges.append(right)
    return _Table(columns, heads, tuple(edges), name)


# Rows and heads


def _with_there(block: Block, row: PaceRow, setting: Setting, width_mm: float) -> Block:
    """Return *block* with what to do there under it, over the whole width."""
    if not row.there:
        return block
    size = setting.small_pt
    lines = setting.wrap(row.there, width_mm, size)
    height = block.height_mm + len(lines) * setting.line_mm(size)

    def draw() -> list[Op]:
        return [*block.draw(), *setting.stacked(lines, 0.0, block.height_mm, size)]

    return Block(height, draw)


def _row_mm(
    table: _Table, index: int, names: Sequence[str], setting: Setting, under: int = 0
) -> float:
    """Return the height of one place with so many lines *under* its name."""
    first, below = setting.line_mm(setting.figure_pt), setting.line_mm(setting.small_pt)
    height = first + (len(names) - 1) * setting.line_mm(setting.name_pt) + under * below
    cells = (column.cells[index] for column in table.columns)
    return max([height, *(first + (len(cell) - 1) * below for cell in cells if cell[0])])


def _row_ops(
    table: _Table, index: int, names: Sequence[str], setting: Setting, under: Sequence[Op] = ()
) -> list[Op]:
    """Return one place: names and figures on one baseline, what is *under* a name behind it."""
    first, baseline = setting.line_mm(setting.figure_pt), em_mm(setting.figure_pt)
    pitch = setting.line_mm(setting.name_pt)
    ops: list[Op] = [
        Text(0.0, baseline + k * pitch, name, setting.name_pt, bold=True)
        for k, name in enumerate(names)
    ]
    ops += under
    for column, right in zip(table.columns, table.right_mm, strict=True):
        cell = column.cells[index]
        if not cell[0]:
            continue
        size = setting.figure_pt if column.is_figure else setting.body_pt
        ops.append(Text(right, baseline, cell[0], size, bold=column.is_figure, align="right"))
        ops += setting.stacked(cell[1:], right, first, setting.small_pt, align="right")
    return ops


def _two_line_ops(
    table: _Table, index: int, named: _Named, ground: _Ground, row: PaceRow, setting: Setting
) -> list[Op]:
    """Return one place with its stop and its ground below the name."""
    size = setting.small_pt
    pitch = (len(named.names) - 1) * setting.line_mm(setting.name_pt)
    top = setting.line_mm(setting.figure_pt) + pitch
    below = top + len(named.stops) * setting.line_mm(size)
    under: list[Op] = [
        *setting.stacked(named.stops, 0.0, top, size),
        *(op.moved(0.0, below) for op in ground.ops(row, setting)),
    ]
    ops = _row_ops(table, index, named.names, setting, under)
    if named.stop_from_mm is not None:
        baseline = em_mm(setting.figure_pt) + pitch
        ops.append(Text(named.stop_from_mm, baseline, row.stop_label, size))
    return ops


def _heads(
    table: _Table, name: str, setting: Setting, under: Callable[[], list[Op]] | None = None
) -> Block:
    """Return the heads, all on the lowest line that they share."""
    size = setting.label_pt
    pitch = setting.line_mm(size)
    most = max([len(head) for head in table.heads] + [2 if under else 1])

    def draw() -> list[Op]:
        baseline = (most - (2 if under else 1)) * pitch + em_mm(size)
        ops: list[Op] = [Text(0.0, baseline, name, size)]
        ops += [op.moved(0.0, (most - 1) * pitch) for op in (under() if under else [])]
        for head, right in zip(table.heads, table.right_mm, strict=True):
            top = (most - len(head)) * pitch
            ops += setting.stacked(head, right, top, size, align="right")
        return ops

    return Block(most * pitch + 0.15 * em_mm(size), draw)


def _with_stop_mm(row: PaceRow, setting: Setting) -> float:
    name = setting.width_mm(row.name, setting.name_pt, True)
    stop = setting.width_mm(row.stop_label, setting.small_pt)
    return name + _stop_gap_mm(setting) + stop if stop else name


def _stop_gap_mm(setting: Setting) -> float:
    return 0.8 * setting.gap_mm


class _Named(Value, frozen=True):
    """The lines of a name, and its stop: beside the last of them, or else on lines of its own."""

    names: Sequence[str]
    stop_from_mm: float | None = None
    stops: Sequence[str] = ()

    @classmethod
    def of(cls, row: PaceRow, setting: Setting, width_mm: float) -> _Named:
        """Return name and stop of *row* within *width_mm*."""
        names = setting.wrap(row.name, width_mm, setting.name_pt, bold=True)
        if not row.stop_label:
            return cls(names)
        size = setting.small_pt
        end = setting.width_mm(names[-1], setting.name_pt, True) + _stop_gap_mm(setting)
        if end + setting.width_mm(row.stop_label, size) <= width_mm + 1e-6:
            return cls(names, end)
        return cls(names, stops=setting.wrap(row.stop_label, width_mm, size))


class _Ground(Value, frozen=True):
    """The figures under a name: distance, climb and drop, pace; right edges within the column."""

    right_mm: tuple[float, float, float]
    has_pace: bool = True

    @classmethod
    def of(cls, card: PaceCard, setting: Setting) -> _Ground:
        """Return the ground of *card*, wide enough for its figures and for their heads."""
        heads, gap, label = card.heads, setting.gap_mm, setting.label_pt
        size = setting.small_pt
        first = max(
            setting.widest_mm((r.distance for r in card.rows), size),
            setting.width_mm(heads.distance, label),
        )
        climb = setting.widest_mm((r.climb_drop for r in card.rows), size)
        # The head of the distance stands at the left, so that the next head may reach over.
        head = setting.width_mm(heads.distance, label) + setting.width_mm(heads.climb_drop, label)
        second = max(first + gap + climb, head + gap) if heads.climb_drop else first
        pace = max(
            setting.widest_mm((r.pace for r in card.rows), size),
            setting.width_mm(heads.pace, label),
        )
        if not heads.pace:
            return cls((first, second, second), has_pace=False)
        return cls((first, second, second + gap + pace))

    @property
    def width_mm(self) -> float:
        """Width of all three."""
        return self.right_mm[-1]

    def ops(self, row: PaceRow, setting: Setting) -> list[Op]:
        """Return the figures of *row*."""
        size = setting.small_pt
        pace = row.pace if self.has_pace else ""
        texts = zip((row.distance, row.climb_drop, pace), self.right_mm, strict=True)
        return [Text(x, em_mm(size), text, size, align="right") for text, x in texts if text]

    def head_ops(self, card: PaceCard, setting: Setting) -> list[Op]:
        """Return the heads."""
        size, heads = setting.label_pt, card.heads
        ops: list[Op] = [Text(0.0, em_mm(size), heads.distance, size)]
        for text, x in ((heads.climb_drop, self.right_mm[1]), (heads.pace, self.right_mm[2])):
            if text:
                ops.append(Text(x, em_mm(size), text, size, align="right"))
        return ops


# The list


def _listed(card: PaceCard, row: PaceRow, setting: Setting, width_mm: float) -> Block:
    head = _listed_head(row, setting, width_mm)
    size, line = setting.small_pt, setting.line_mm(setting.small_pt)
    x, y = 0.0, head.height_mm
    space = 0.35 * em_mm(size)
    draws: list[Callable[[], Sequence[Op]]] = [head.draw]
    for label, text in _items(card, row):
        ahead = setting.width_mm(label, size) + space
        wide = ahead + setting.width_mm(text, size)
        if x > 0.0 and x + wide > width_mm:
            x, y = 0.0, y + line
        if wide <= width_mm:
            draws.append(partial(_item, label, text, x, x + ahead, y + em_mm(size), size))
            x += wide + 1.2 * setting.gap_mm
            continue
        labels, texts = setting.wrap(label, width_mm, size), setting.wrap(text, width_mm, size)
        draws.append(partial(setting.stacked, labels, 0.0, y, size))
        draws.append(partial(setting.stacked, texts, 0.0, y + len(labels) * line, size))
        y += (len(labels) + len(texts)) * line
    return Block(y + (line if x > 0.0 else 0.0), partial(_drawn, draws))


def _drawn(draws: Sequence[Callable[[], Sequence[Op]]]) -> list[Op]:
    return [op for draw in draws for op in draw()]


def _item(
    label: str, text: str, label_mm: float, text_mm: float, baseline_mm: float, size_pt: float
) -> Sequence[Op]:
    name = Text(label_mm, baseline_mm, label, size_pt)
    return name, Text(text_mm, baseline_mm, text, size_pt)


def _listed_head(row: PaceRow, setting: Setting, width_mm: float) -> Block:
    """Return the name and the planned arrival, on one line where both fit."""
    name_pt, plan_pt = setting.name_pt, setting.figure_pt
    plan_mm = setting.width_mm(row.on_plan, plan_pt, True)
    is_one_line = setting.width_mm(row.name, name_pt, True) + setting.gap_mm + plan_mm <= width_mm
    names = setting.wrap(row.name, width_mm, name_pt, bold=True)
    plans = setting.wrap(row.on_plan, width_mm, plan_pt, bold=True)
    below = len(names) * setting.line_mm(name_pt)

    def draw() -> Sequence[Op]:
        if is_one_line:
            baseline = em_mm(plan_pt)
            plan = Text(width_mm, baseline, row.on_plan, plan_pt, bold=True, align="right")
            return Text(0.0, baseline, row.name, name_pt, bold=True), plan
        return (
            *setting.stacked(names, 0.0, 0.0, name_pt, bold=True),
            *setting.stacked(plans, 0.0, below, plan_pt, bold=True),
        )

    plan_lines = 1 if is_one_line else len(plans)
    return Block((0.0 if is_one_line else below) + plan_lines * setting.line_mm(plan_pt), draw)


def _items(card: PaceCard, row: PaceRow) -> Iterator[tuple[str, str]]:
    heads = card.heads
    pairs = (
        (heads.in_hand, row.in_hand),
        (heads.last, *_one_line(row.last)),
        (row.cutoff_word or heads.cutoff, *_one_line(row.cutoff)),
        (heads.late, *_one_line(row.late)),
        (heads.distance, row.distance),
        (heads.climb_drop, row.climb_drop),
        (heads.pace, row.pace),
        (heads.stop, row.stop),
        (heads.there, row.there),
    )
    yield from ((label, text) for label, text in pairs if label and text not in ("", NONE))

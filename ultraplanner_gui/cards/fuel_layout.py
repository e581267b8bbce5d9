"""The fuel card's rows: foods with the sums beside them, or under them on a narrow strip."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import NamedTuple

from ultraplanner_gui.cards.flow import Block, Frame, Sheet
from ultraplanner_gui.cards.fuel_content import FuelCard, FuelRow
from ultraplanner_gui.cards.page import BLACK, Line, Op, Rect, Text
from ultraplanner_gui.cards.setting import Setting, em_mm
from ultraplanner_gui.plan.value import Value

MOST_NAME_LINES = 2
MOST_NAME_SHARE = 0.42
LEAST_FOOD_EM = 12.0
LEAST_FOOD_SHARE = 0.5
STRAIN_STACKED = 3
JOINT = " · "


def fuel_beside(card: FuelCard, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the card with the sums of each leg at the right, None if that leaves no room."""
    rows = [*card.rows, *([card.total] if card.total else [])]
    right = max(
        setting.widest_mm((r.carbs for r in rows), setting.sum_pt, bold=True),
        setting.widest_mm(map(_rate, rows), setting.small_pt),
    )
    left = frame.inner_mm - right - 1.5 * setting.gap_mm
    if left < LEAST_FOOD_SHARE * frame.inner_mm:
        return None
    blocks = [_beside(row, setting, left, frame.inner_mm) for row in card.rows]
    total = _beside(card.total, setting, left, frame.inner_mm) if card.total else None
    return _sheet(card, setting, frame, blocks, total, _strain(rows, setting, left))


def fuel_wide(card: FuelCard, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the card with a column each for place, foods and sums, None if they are too narrow."""
    rows = [*card.rows, *([card.total] if card.total else [])]
    gap = 1.5 * setting.gap_mm
    carbs = setting.widest_mm((r.carbs for r in rows), setting.sum_pt, bold=True)
    rates = setting.widest_mm(map(_rate, rows), setting.small_pt)
    times = setting.widest_mm((r.time for r in rows), setting.small_pt)
    room = frame.inner_mm - carbs - rates - times - 4.0 * gap
    names = setting.widest_mm((r.name for r in card.rows), setting.name_pt, bold=True)
    name = min(max(names, 0.25 * room), MOST_NAME_SHARE * room)
    rate_to = frame.inner_mm - carbs - gap
    columns = _Wide(name, room - name, name + gap, rate_to - rates - gap, rate_to, frame.inner_mm)
    if columns.food_mm < LEAST_FOOD_EM * em_mm(setting.body_pt):
        return None
    blocks = [_wide(row, setting, columns) for row in card.rows]
    total = _wide(card.total, setting, columns) if card.total else None
    return _sheet(card, setting, frame, blocks, total, _strain(rows, setting, name))


def fuel_stacked(card: FuelCard, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the card with everything under one another, for a narrow strip."""
    blocks = [_stacked(row, setting, frame.inner_mm) for row in card.rows]
    total = _stacked(card.total, setting, frame.inner_mm) if card.total else None
    return _sheet(card, setting, frame, blocks, total, STRAIN_STACKED)


def _sheet(
    card: FuelCard,
    setting: Setting,
    frame: Frame,
    rows: Sequence[Block],
    total: Block | None,
    strain: int,
) -> Sheet:
    return Sheet(
        setting=setting,
        title=card.title,
        subtitle=card.subtitle,
        rows=rows,
        notes=card.notes,
        turning=card.turning,
        closing=_ruled(total, frame) if total else Block(0.0),
        strain=strain,
    )


def _strain(rows: Sequence[FuelRow], setting: Setting, name_mm: float) -> int:
    words = (word for row in rows for word in row.name.split())
    is_broken = setting.widest_mm(words, setting.name_pt, bold=True) > name_mm
    lines = max(len(_names(row, setting, name_mm)) for row in rows)
    return (1 if is_broken else 0) + (1 if lines > MOST_NAME_LINES else 0)


def _rate(row: FuelRow) -> str:
    return JOINT.join(filter(None, (row.rate, row.fluid)))


def _extras(row: FuelRow) -> tuple[str, ...]:
    """Return the second line: sodium, caffeine, what to carry out, what to do there."""
    return tuple(filter(None, (*row.sums, row.carry, row.there)))


def _extra_lines(row: FuelRow, setting: Setting, width_mm: float) -> Sequence[str]:
    return setting.wrap_parts(_extras(row), width_mm, setting.small_pt, joint=JOINT)


def _ruled(block: Block, frame: Frame) -> Block:
    line = Line((0.0, 0.5), (frame.inner_mm, 0.5), 0.25, BLACK)
    return Block(block.height_mm + 1.6, lambda: (line, *block.at(0.0, 1.3)))


def _names(row: FuelRow, setting: Setting, width_mm: float) -> Sequence[str]:
    return setting.wrap(row.name, width_mm, setting.name_pt, bold=True)


def _named(
    row: FuelRow, setting: Setting, width_mm: float, marks: Sequence[str], time: str = ""
) -> Block:
    """Return the name with its time and what waits there."""
    names = _names(row, setting, width_mm)
    pitch, space = setting.line_mm(setting.name_pt), 0.9 * setting.gap_mm
    x = setting.width_mm(names[-1], setting.name_pt, True) + space
    y = (len(names) - 1) * pitch
    parts = [(time, setting.small_pt, False)] if time else []
    placed: list[_Placed] = []
    for part, size, is_mark in [*parts, *((mark, setting.label_pt, True) for mark in marks)]:
        wide = setting.width_mm(part, size, is_mark) + (0.8 * em_mm(size) if is_mark else 0.0)
        if x > 0.0 and x + wide > width_mm:
            x, y = 0.0, y + pitch
        placed.append(_Placed(part, size, is_mark, x, y, wide))
        x += wide + space
    return Block(y + pitch, partial(_named_ops, names, placed, setting))


class _Placed(NamedTuple):
    """The time or a mark behind a name, from its top left corner."""

    text: str
    size_pt: float
    is_mark: bool
    x_mm: float
    y_mm: float
    wide_mm: float


def _named_ops(names: Sequence[str], placed: Sequence[_Placed], setting: Setting) -> list[Op]:
    ops: list[Op] = list(setting.stacked(names, 0.0, 0.0, setting.name_pt, bold=True))
    for part in placed:
        if part.is_mark:
            ops += _mark(part.text, setting, part.x_mm, part.y_mm, part.wide_mm)
        else:
            baseline = part.y_mm + em_mm(setting.name_pt)
            ops.append(Text(part.x_mm, baseline, part.text, part.size_pt))
    return ops


def _mark(mark: str, setting: Setting, x: float, y: float, wide_mm: float) -> list[Op]:
    em = em_mm(setting.label_pt)
    baseline = y + em_mm(setting.name_pt)
    box = Rect(x, baseline - 0.95 * em, wide_mm, 1.13 * em, BLACK, outline_mm=0.25)
    text = Text(x + 0.5 * wide_mm, baseline, mark, setting.label_pt, bold=True, align="centre")
    return [box, text]


def _foods(row: FuelRow, setting: Setting, width_mm: float) -> Sequence[str]:
    return setting.wrap_parts(row.foods, width_mm, setting.body_pt, joint=JOINT)


def _beside(row: FuelRow, setting: Setting, left_mm: float, right_mm: float) -> Block:
    named = _named(row, setting, left_mm, row.marks, row.time)
    foods = _foods(row, setting, left_mm)
    extras = _extra_lines(row, setting, left_mm)
    small, large = setting.small_pt, setting.sum_pt
    baseline = em_mm(large)
    drop = baseline - em_mm(setting.name_pt)
    # On the line of the first foods, where the name takes one line.
    below = drop + setting.line_mm(setting.name_pt) + em_mm(setting.body_pt)
    food_top = drop + named.height_mm
    extra_top = food_top + len(foods) * setting.line_mm(setting.body_pt)

    def draw() -> list[Op]:
        return [
            *named.at(0.0, drop),
            *setting.stacked(foods, 0.0, food_top, setting.body_pt),
            *setting.stacked(extras, 0.0, extra_top, small),
            Text(right_mm, baseline, row.carbs, large, bold=True, align="right"),
            Text(right_mm, below, _rate(row), small, align="right"),
        ]

    height = extra_top + len(extras) * setting.line_mm(small)
    return Block(max(height, below + 0.25 * em_mm(small)), draw)


class _Wide(Value, frozen=True):
    """Widths of place and foods, where the foods begin, where times, rates and sums end."""

    name_mm: float
    food_mm: float
    foods_from_mm: float
    time_to_mm: float
    rate_to_mm: float
    carbs_to_mm: float


def _wide(row: FuelRow, setting: Setting, columns: _Wide) -> Block:
    baseline = em_mm(setting.sum_pt)
    named = _named(row, setting, columns.name_mm, row.marks)
    name_drop = baseline - em_mm(setting.name_pt)
    food_drop = baseline - em_mm(setting.body_pt)
    foods = _foods(row, setting, columns.food_mm)
    extras = _extra_lines(row, setting, columns.food_mm)
    extra_top = food_drop + len(foods) * setting.line_mm(setting.body_pt)

    def draw() -> list[Op]:
        return [
            *named.at(0.0, name_drop),
            *setting.stacked(foods, columns.foods_from_mm, food_drop, setting.body_pt),
            *setting.stacked(extras, columns.foods_from_mm, extra_top, setting.small_pt),
            Text(columns.time_to_mm, baseline, row.time, setting.small_pt, False, "right"),
            Text(columns.rate_to_mm, baseline, _rate(row), setting.small_pt, align="right"),
            Text(columns.carbs_to_mm, baseline, row.carbs, setting.sum_pt, True, "right"),
        ]

    food_height = extra_top + len(extras) * setting.line_mm(setting.small_pt)
    height = max(name_drop + named.height_mm, food_height, setting.line_mm(setting.sum_pt))
    return Block(height, draw)


def _stacked(row: FuelRow, setting: Setting, width_mm: float) -> Block:
    named = _named(row, setting, width_mm, row.marks, row.time)
    small, large = setting.small_pt, setting.sum_pt
    sums = (
        ([row.carbs], large, True),
        (list(filter(None, (row.rate, row.fluid))), small, False),
        (row.foods, setting.body_pt, False),
        (_extras(row), small, False),
    )
    runs = [
        (setting.wrap_parts(parts, width_mm, size, bold, JOINT), size, bold)
        for parts, size, bold in sums
    ]

    def draw() -> list[Op]:
        ops, y = list(named.draw()), named.height_mm
        for lines, size, bold in runs:
            ops += setting.stacked(lines, 0.0, y, size, bold=bold)
            y += len(lines) * setting.line_mm(size)
        return ops

    below = sum(len(lines) * setting.line_mm(size) for lines, size, _ in runs)
    return Block(named.height_mm + below, draw)

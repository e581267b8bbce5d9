"""The wall plan: a row to each week, a column to each day, a box to each session."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from ultraplanner_gui.cards.flow import Block, Frame, Sheet
from ultraplanner_gui.cards.page import BLACK, Op, Rect, Strokes, Text
from ultraplanner_gui.cards.setting import Setting, em_mm
from ultraplanner_gui.cards.week_content import WallCard, WallTile, WallWeek
from ultraplanner_gui.plan.value import Value

TILE_PAD_EM = 0.3
TILE_LINE_MM, HARD_LINE_MM, MARK_LINE_MM = 0.15, 0.5, 0.35
STRAIN_BROKEN = 1


class _Columns(Value, frozen=True):
    """Left edges of week, days and sums, and how wide a day is."""

    week_mm: float
    day_mm: float
    sums_from_mm: float

    def day_at(self, day: int) -> float:
        return self.week_mm + day * self.day_mm


def wall_sheet(card: WallCard, setting: Setting, frame: Frame) -> Sheet | None:
    """Return the plan set at one size, None if a day would be too narrow."""
    small, gap = setting.small_pt, setting.gap_mm
    week = max(
        setting.widest_mm((r.number for r in card.rows), setting.figure_pt, bold=True),
        setting.widest_mm((r.starts for r in card.rows), small),
        setting.widest_mm((r.role for r in card.rows), small),
        setting.width_mm(card.heads[0], setting.label_pt),
    )
    sums = max(
        setting.widest_mm((line for r in card.rows for line in r.sums), small, bold=True),
        setting.width_mm(card.heads[-1], setting.label_pt),
    )
    day = (frame.inner_mm - week - sums - 2.0 * gap) / 7.0
    widest = max(
        (
            max(setting.width_mm(tile.figure, setting.body_pt, True), _longest(tile, setting))
            for row in card.rows
            for tiles in row.days
            for tile in tiles
        ),
        default=0.0,
    )
    if widest + 2.0 * _pad(setting) > day:
        return None
    columns = _Columns(week + gap, day, frame.inner_mm)
    rows = [_week(row, setting, columns) for row in card.rows]
    return Sheet(
        setting=setting,
        title=card.title,
        subtitle=card.subtitle,
        rows=rows,
        turning=card.turning,
        notes=card.notes,
        heads=_heads(card, setting, columns),
    )


def _pad(setting: Setting) -> float:
    return TILE_PAD_EM * em_mm(setting.body_pt)


def _longest(tile: WallTile, setting: Setting) -> float:
    words = (word for text in (tile.kind, *tile.more) for word in text.split(" "))
    return setting.widest_mm(words, setting.small_pt, bold=tile.is_race)


def _heads(card: WallCard, setting: Setting, columns: _Columns) -> Block:
    size = setting.label_pt
    first, *days, last = card.heads

    def draw() -> list[Op]:
        y = em_mm(size)
        ops: list[Op] = [Text(0.0, y, first, size)]
        ops += [Text(columns.day_at(k) + _pad(setting), y, day, size) for k, day in enumerate(days)]
        return [*ops, Text(columns.sums_from_mm, y, last, size, align="right")]

    return Block(setting.line_mm(size) + 0.4, draw)


def _week(row: WallWeek, setting: Setting, columns: _Columns) -> Block:
    inside = columns.day_mm - 2.0 * _pad(setting)
    days = [[_tile(tile, setting, inside) for tile in tiles] for tiles in row.days]
    small = setting.line_mm(setting.small_pt)
    left = setting.line_mm(setting.figure_pt) + (2 if row.role else 1) * small
    height = max(
        left,
        setting.line_mm(setting.body_pt) + (len(row.sums) - 1) * small,
        *(sum(tile.height_mm for tile in tiles) for tiles in days),
    )
    return Block(height, partial(_week_ops, row, days, setting, columns, height))


def _week_ops(
    row: WallWeek,
    days: Sequence[Sequence[Block]],
    setting: Setting,
    columns: _Columns,
    height_mm: float,
) -> list[Op]:
    small, first = setting.small_pt, em_mm(setting.figure_pt)
    ops: list[Op] = [Text(0.0, first, row.number, setting.figure_pt, bold=True)]
    under = [row.starts, *([row.role] if row.role else [])]
    ops += setting.stacked(under, 0.0, setting.line_mm(setting.figure_pt), small)
    for number, tiles in enumerate(days):
        y = 0.0
        for tile, block in zip(row.days[number], tiles, strict=True):
            # Alone on its day a session fills the row, so that there is room to write.
            tall = height_mm if len(tiles) == 1 else block.height_mm
            ops += _edge(tile, columns.day_at(number), y, columns.day_mm, tall)
            ops += block.at(columns.day_at(number) + _pad(setting), y)
            y += block.height_mm
    for number, text in enumerate(row.sums):
        y = em_mm(setting.body_pt) + number * setting.line_mm(small)
        is_first = number == 0
        ops.append(Text(columns.sums_from_mm, y, text, small, bold=is_first, align="right"))
    return ops


def _edge(tile: WallTile, x: float, y: float, wide_mm: float, tall_mm: float) -> list[Op]:
    line = HARD_LINE_MM if tile.is_hard else TILE_LINE_MM
    inset = 0.5 * HARD_LINE_MM + 0.1
    left, top = x + inset, y + inset
    right, bottom = x + wide_mm - inset, y + tall_mm - inset
    ops: list[Op] = [Rect(left, top, right - left, bottom - top, 1.0)]
    ops.append(Rect(left, top, right - left, bottom - top, BLACK, outline_mm=line))
    side = min(2.2, 0.3 * wide_mm)
    x0, y0 = right - side - 0.5, top + 0.5
    if tile.is_done:
        foot = (x0 + 0.35 * side, y0 + side)
        tick = ((x0, y0 + 0.6 * side), foot), (foot, (x0 + side, y0 + 0.1 * side))
        ops.append(Strokes(tick, MARK_LINE_MM))
    elif tile.is_missed:
        far = (x0 + side, y0 + side)
        cross = ((x0, y0), far), ((x0, y0 + side), (x0 + side, y0))
        ops.append(Strokes(cross, MARK_LINE_MM))
    return ops


def _tile(tile: WallTile, setting: Setting, width_mm: float) -> Block:
    small, body = setting.small_pt, setting.body_pt
    kinds = setting.wrap(tile.kind, width_mm, small, bold=tile.is_race)
    more = setting.wrap_parts(tile.more, width_mm, small, joint=" · ")
    figure_at = len(kinds) * setting.line_mm(small)
    more_at = figure_at + setting.line_mm(body)
    pad = _pad(setting)

    def draw() -> list[Op]:
        return [
            *setting.stacked(kinds, 0.0, pad, small, bold=tile.is_race),
            Text(0.0, pad + figure_at + em_mm(body), tile.figure, body, bold=True),
            *setting.stacked(more, 0.0, pad + more_at, small),
        ]

    return Block(more_at + len(more) * setting.line_mm(small) + 2.0 * pad, draw)

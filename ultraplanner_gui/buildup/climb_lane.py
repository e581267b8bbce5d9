"""Climb and drop a week, up and down from one line."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup.weeklane import (
    Column,
    WeekLane,
    bar_rect,
    differs,
    paint_bar,
    paint_before,
)
from ultraplanner_gui.engine.weeks import WeekFigures
from ultraplanner_gui.widgets.lane import Scale, draw_level, nice_ticks
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 48.0
LEAST_M = 100.0


class ClimbLane(WeekLane):
    """Climb in ochre upward, drop in sky downward."""

    topic = "weekly climb"

    def __init__(
        self, axis: WeekAxis, words: Callable[[], Words], parent: QWidget | None = None
    ) -> None:
        super().__init__(axis, words, "", HEIGHT_PX, parent)
        self.rename(self.tr("Climb, drop"))

    def retitle(self) -> None:
        self.set_unit(self.tr("{0} a week").format(self._words().height_unit))

    def figures(self, week: WeekFigures) -> tuple[object, ...]:
        return (*super().figures(week), week.climb_m, week.drop_m)

    def sentence(self, week: WeekFigures) -> str:
        words, before = self._words(), self.before_of(week)
        text = self.tr("climb {0}, drop {1}").format(
            words.height(week.climb_m), words.height(week.drop_m)
        )
        if before is not None and (
            differs(week.climb_m, before.climb_m) or differs(week.drop_m, before.drop_m)
        ):
            text = self.tr("{0}, before {1} and {2}").format(
                text, words.height(before.climb_m), words.height(before.drop_m)
            )
        return text

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if not self.has_sessions:
            return
        scale = self._scale(body)
        self._paint_scale(painter, body, scale)
        for column in self.dirty_columns(body):
            self._paint_week(painter, column, scale)
        ends = (body.left(), body.right())
        draw_level(painter, ends, scale.y(0.0), theme().colours["soft"])

    def extent(self, weeks: Iterable[WeekFigures]) -> tuple[float, float]:
        up, down = LEAST_M, LEAST_M
        for week in weeks:
            up, down = max(up, week.climb_m), max(down, week.drop_m)
        return -down, up

    def _scale(self, body: QRectF) -> Scale:
        return Scale(*self.ends, body.top() + 3.0, body.bottom() - 3.0)

    def _paint_scale(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        unit, words = self.height_m_per_unit(), self._words()
        each = min(scale.high, -scale.low) / unit
        tick = nice_ticks(0.0, each, 2)[-1]
        labels = [(0.0, "0"), (tick * unit, words.number(tick)), (-tick * unit, words.number(tick))]
        # On a low lane the zero would run into its neighbours.
        if abs(scale.y(tick * unit) - scale.y(0.0)) < theme().px(10.0):
            labels = labels[1:]
        self.paint_ticks(painter, body, scale, labels)

    def _paint_week(self, painter: QPainter, column: Column, scale: Scale) -> None:
        week, before, is_done = column.now, column.before, self.is_done(column.now)
        up = bar_rect(column.rect, scale, 0.0, week.climb_m)
        down = bar_rect(column.rect, scale, -week.drop_m, 0.0)
        paint_bar(painter, up, "ochre", week.role, is_done)
        paint_bar(painter, down, "sky", week.role, is_done)
        if before is None:
            return
        if differs(week.climb_m, before.climb_m):
            paint_before(painter, bar_rect(column.rect, scale, 0.0, before.climb_m))
        if differs(week.drop_m, before.drop_m):
            paint_before(painter, bar_rect(column.rect, scale, -before.drop_m, 0.0))

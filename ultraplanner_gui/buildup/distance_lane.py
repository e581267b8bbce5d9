"""Distance a week, with the ceiling the last loading week sets."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable
from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup.weeklane import (
    TICK_EVERY_PX,
    Column,
    WeekLane,
    bar_rect,
    differs,
    paint_bar,
    paint_before,
    paint_label,
)
from ultraplanner_gui.engine.checks import Check
from ultraplanner_gui.engine.checks_weeks import CUTBACK, RAMP
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.lane import LABEL_PT, Scale, nice_ticks
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 60.0


class DistanceLane(WeekLane):
    """Bars of distance; a clay tick is the ceiling, a hatched top lies above it."""

    topic = "weekly distance"

    def __init__(
        self, axis: WeekAxis, words: Callable[[], Words], parent: QWidget | None = None
    ) -> None:
        super().__init__(axis, words, "", HEIGHT_PX, parent)
        self._off: dict[int, list[Check]] = {}
        self.rename(self.tr("Distance"))

    def retitle(self) -> None:
        self.set_unit(self.tr("{0} a week").format(self._words().distance_unit))

    def show_outlooks(self, before: Outlook, now: Outlook) -> None:
        self._off = defaultdict(list)
        for check in now.checks:
            if check.rule in (RAMP, CUTBACK) and check.state is not State.HOLDS:
                for to_go in check.weeks:
                    self._off[to_go].append(check)
        super().show_outlooks(before, now)

    def figures(self, week: WeekFigures) -> tuple[object, ...]:
        figures = (week.distance_m, week.planned_m, week.ceiling_m, self.is_off(week))
        return (*super().figures(week), *figures)

    def is_off(self, week: WeekFigures) -> bool:
        """Whether the week is above its ceiling, or no cutback although it should be one."""
        rule = CUTBACK if week.role is Role.CUTBACK else RAMP
        return any(check.rule == rule for check in self._off.get(week.to_go, ()))

    def sentence(self, week: WeekFigures) -> str:
        words, before = self._words(), self.before_of(week)
        text = words.distance(week.distance_m)
        if before is not None and differs(week.distance_m, before.distance_m):
            text = self.tr("{0}, before {1}").format(text, words.distance(before.distance_m))
        if differs(week.distance_m, week.planned_m):
            text = self.tr("{0}, planned {1}").format(text, words.distance(week.planned_m))
        if week.last_loading_m:
            share = words.percent(100.0 * week.distance_m / week.last_loading_m)
            text = self.tr("{0}; {1} of the last loading week").format(text, share)
        off = [words.say(check.text) for check in self._off.get(week.to_go, ())]
        return " ".join((f"{text}.", *off)) if off else text

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if not self.has_sessions:
            return
        scale = self._scale(body)
        self._paint_scale(painter, body, scale)
        named = self._named(body) if self.is_narrow else None
        for column in self.dirty_columns(body):
            foot = self._paint_week(painter, column, scale)
            if named is None or column.now.start in named:
                self._paint_number(painter, column, foot)

    def _named(self, body: QRectF) -> set[date]:
        """Return the weeks whose figure is written where there is no room for all.

        Changed weeks are, and those above their neighbours, unless a neighbour changed.
        """
        columns = list(self.columns(body))
        changed = [_is_changed(c) for c in columns]
        figures_m = [c.now.distance_m for c in columns]
        named = set()
        for k, column in enumerate(columns):
            beside = [j for j in (k - 1, k + 1) if 0 <= j < len(columns)]
            is_peak = all(figures_m[k] > figures_m[j] and not changed[j] for j in beside)
            if changed[k] or is_peak or (column.now.role is Role.RACE and not changed[k - 1]):
                named.add(column.now.start)
        return named

    def extent(self, weeks: Iterable[WeekFigures]) -> tuple[float, float]:
        high = 1.0
        for week in weeks:
            high = max(high, week.distance_m, week.planned_m)
            if week.role is Role.LOADING and week.ceiling_m is not None:
                high = max(high, min(week.ceiling_m, 1.5 * week.distance_m))
        return 0.0, high

    def _scale(self, body: QRectF) -> Scale:
        top = body.top() + theme().metrics(LABEL_PT, bold=True).ascent() + 4.0
        return Scale(*self.ends, top, body.bottom())

    def _paint_scale(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        words = self._words()
        unit = words.unit_m
        at_most = max(2, int((scale.bottom - scale.top) / theme().px(TICK_EVERY_PX)))
        ticks = nice_ticks(0.0, scale.high / unit, at_most)
        self.paint_ticks(painter, body, scale, [(t * unit, words.number(t)) for t in ticks])

    def _paint_week(self, painter: QPainter, column: Column, scale: Scale) -> float:
        """Draw a week but for its figure; return where the foot of that may stand."""
        week, before = column.now, column.before
        c = theme().colours
        bar = bar_rect(column.rect, scale, 0.0, week.distance_m)
        paint_bar(painter, bar, "teal", week.role, self.is_done(week))
        if differs(week.distance_m, week.planned_m):
            planned = bar_rect(column.rect, scale, 0.0, week.planned_m)
            painter.setPen(QPen(c["teal"], Stroke.HAIR))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(planned.adjusted(0.5, 0.5, -0.5, -0.5))
        if self.is_off(week):
            # Above the ceiling the top, a cutback week that is none all of it.
            is_top = week.role is not Role.CUTBACK and week.ceiling_m is not None
            _hatch(painter, bar, scale.y(week.ceiling_m or 0.0) if is_top else bar.bottom())
        if before is not None and _is_changed(column):
            paint_before(painter, bar_rect(column.rect, scale, 0.0, before.distance_m))
        foot = min(bar.top(), scale.y(week.planned_m))
        if before is not None and _is_changed(column):
            foot = min(foot, scale.y(before.distance_m))
        if week.ceiling_m is not None and week.role is Role.LOADING:
            foot = _paint_ceiling(painter, bar, foot, scale.y(week.ceiling_m), scale)
        return foot

    def _paint_number(self, painter: QPainter, column: Column, foot: float) -> None:
        week, look = column.now, theme()
        text = self._words().distance_bare(week.distance_m, 0)
        if week.role is Role.RACE and self._has_race():
            both = self.tr("{0} + race").format(text)
            width = look.metrics(LABEL_PT, bold=True).horizontalAdvance(both)
            text = both if width <= column.rect.width() + 8.0 else text
        colour: QColor = look.colours["clay" if self.is_off(week) else "ink"]
        x = min(
            column.rect.center().x(),
            self.width() - look.metrics(LABEL_PT, bold=True).horizontalAdvance(text) / 2 - 1.0,
        )
        paint_label(painter, QPointF(x, foot - 2.0), text, colour, bold=True)

    def _has_race(self) -> bool:
        assert self._outlook is not None
        return any(s.kind is Kind.RACE for s in self._outlook.project.block.sessions)


def _is_changed(column: Column) -> bool:
    before = column.before
    return before is not None and differs(column.now.distance_m, before.distance_m)


def _hatch(painter: QPainter, bar: QRectF, ceiling_y: float) -> None:
    """Hatch what lies above the ceiling, at least a visible strip."""
    c = theme().colours
    bottom = min(max(ceiling_y, bar.top() + 6.0), bar.bottom())
    rect = QRectF(bar.left(), bar.top(), bar.width(), bottom - bar.top())
    painter.fillRect(rect, c["lane"])
    # Filled, not drawn: smoothed hatches are dear.
    painter.fillRect(rect, QBrush(c["clay"], Qt.BrushStyle.BDiagPattern))
    painter.setPen(QPen(c["clay"], Stroke.THIN))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5))


def _paint_ceiling(painter: QPainter, bar: QRectF, foot: float, y: float, scale: Scale) -> float:
    """Draw the ceiling tick and return where a number may stand clear of *foot* and tick."""
    if y < scale.top - 1.0:
        return foot
    y = round(y)
    painter.setPen(QPen(theme().colours["clay"], Stroke.HEAVY))
    painter.drawLine(QPointF(bar.left() - 4.0, y), QPointF(bar.right() + 4.0, y))
    room = theme().metrics(LABEL_PT, bold=True).ascent() + 5.0
    between = foot - room <= y <= foot + 3.0
    return min(foot, y - 1.0) if between else foot

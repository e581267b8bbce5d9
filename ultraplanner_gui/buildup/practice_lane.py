"""Practice carbohydrate: the rate practised each week against the rate of the race."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from math import floor

from PySide6.QtCore import QRectF, Qt
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
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.widgets.lane import Align, Scale, draw_level, draw_text, nice_ticks
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 42.0
AMOUNT_PT = Pt.MARK
WIDEST_G = 888.0


class PracticeLane(WeekLane):
    """Bars of grams an hour beside the grams of the week; the dashed line is the race."""

    topic = "practice carbs"

    def __init__(
        self, axis: WeekAxis, words: Callable[[], Words], parent: QWidget | None = None
    ) -> None:
        super().__init__(axis, words, "", HEIGHT_PX, parent)
        self.rename(self.tr("Practice"))

    def retitle(self) -> None:
        self.set_unit(self.tr("carbs, g/h and g"))

    def figures(self, week: WeekFigures) -> tuple[object, ...]:
        return (*super().figures(week), week.carb_g, week.carb_g_per_h)

    def sentence(self, week: WeekFigures) -> str:
        words, before = self._words(), self.before_of(week)
        if week.carb_g <= 0.0:
            text = self.tr("no practice carbs")
        else:
            text = self.tr("practice carbs {0} at up to {1}").format(
                words.grams(week.carb_g), words.grams_per_hour(week.carb_g_per_h)
            )
        if before is not None and differs(week.carb_g, before.carb_g):
            text = self.tr("{0}, before {1}").format(text, words.grams(before.carb_g))
        rate = words.grams_per_hour(self._race_rate())
        return self.tr("{0}; the race is planned at {1}").format(text, rate)

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if not self.has_sessions:
            return
        rate, high = self._race_rate(), self.ends[1]
        scale = Scale(0.0, high, body.top() + 6.0, body.bottom())
        values = [rate, *nice_ticks(0.0, high, 2)]
        self.paint_ticks(painter, body, scale, [(v, self._words().number(v)) for v in values])
        for column in self.dirty_columns(body):
            self._paint_week(painter, column, scale)
        ends, plum = (body.left(), body.right()), theme().colours["plum"]
        draw_level(painter, ends, scale.y(rate), plum, 1.0, Qt.PenStyle.DashLine)

    def extent(self, weeks: Iterable[WeekFigures]) -> tuple[float, float]:
        return 0.0, max([self._race_rate(), 10.0, *(week.carb_g_per_h for week in weeks)])

    def _race_rate(self) -> float:
        assert self._outlook is not None
        return self._outlook.project.fuel.carb_g_per_h

    def _amount(self, week: WeekFigures, room: float) -> str:
        """Return the grams of the week, without the unit or not at all where there is no room."""
        if week.carb_g <= 0.0:
            return ""
        # By the widest there is, so that all weeks are written alike.
        words, metrics = self._words(), theme().metrics(AMOUNT_PT)
        for write in (words.grams, words.number):
            if metrics.horizontalAdvance(write(WIDEST_G)) <= room:
                return write(week.carb_g)
        return ""

    def _paint_week(self, painter: QPainter, column: Column, scale: Scale) -> None:
        week, before, look = column.now, column.before, theme()
        # As in the narrowest column: they differ by a pixel.
        narrowest = floor(self._axis.each(self.body().width()))
        slim = min(look.px(16.0), max(5.0, narrowest * 0.3))
        amount = self._amount(week, narrowest - slim - 8.0)
        width = look.metrics(AMOUNT_PT).horizontalAdvance(amount)
        beside = bool(amount)
        if not beside:
            slim = min(look.px(16.0), column.rect.width() * 0.5)
        area = column.rect
        if beside:
            left = area.center().x() - (slim + 4.0 + width) / 2
            area = QRectF(left, area.top(), slim, area.height())
        share = slim / area.width() if area.width() > 0.0 else 1.0
        role = Role.LOADING if week.role is Role.TAPER else week.role
        paint_bar(
            painter,
            bar_rect(area, scale, 0.0, week.carb_g_per_h, share),
            "plum",
            role,
            self.is_done(week),
        )
        if before is not None and differs(week.carb_g_per_h, before.carb_g_per_h):
            paint_before(painter, bar_rect(area, scale, 0.0, before.carb_g_per_h, share))
        if beside:
            changed = before is not None and differs(week.carb_g, before.carb_g)
            height = look.metrics(AMOUNT_PT).ascent() + 2.0
            rect = QRectF(area.right() + 4.0, area.bottom() - height - 1.0, width, height)
            draw_text(
                painter,
                rect,
                amount,
                look.colours["ink" if changed else "soft"],
                look.font(AMOUNT_PT, bold=changed),
                Align.AlignLeft | Align.AlignVCenter,
            )

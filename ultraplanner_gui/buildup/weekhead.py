"""The head of the build-up: weeks to go, the date each begins, cutback, taper and today."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.widgets.axis import WeekAxis
from ultraplanner_gui.widgets.lane import Align, Lane, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 44.0
NUMBER_PT = 9.5
DATE_PT = 7.0
ROLE_PT = 6.5


def today_edge(axis: WeekAxis, today: date, width: float) -> tuple[float, float, int] | None:
    """Return x of the edge above and below today's row, and that row; None out of the block."""
    column = axis.index_of(today)
    if column is None:
        return None
    row = (today - axis.weeks[column].start).days
    left, each = axis.column(column, width)
    return (round(left + each) if row else round(left)), round(left), row


class WeekHead(Lane):
    """Name the columns shared by everything below."""

    def __init__(
        self, axis: WeekAxis, words: Callable[[], Words], parent: QWidget | None = None
    ) -> None:
        super().__init__("", "", HEIGHT_PX, parent)
        self._axis = axis
        self._words = words
        self._today: date | None = None
        self.setAccessibleName(self.tr("Weeks to go"))

    def show_day(self, today: date) -> None:
        """Show *today* as the edge between done and ahead."""
        self._today = today
        self.update()

    def readout(self, at: QPointF) -> str:
        body = self.body()
        index = self._axis.index_at(at.x() - body.left(), body.width())
        return "" if index is None else kinds.week_name(self._axis.weeks[index], self._words())

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_head(self, painter: QPainter) -> None:
        look = theme()
        number, small = self._lines()[:2]
        left = look.px(12.0)
        rect = QRectF(left, number[0], self.body().left() - left, number[1])
        draw_text(
            painter, rect, self.tr("BUILD-UP"), look.colours["soft"], look.font(7.5, bold=True)
        )
        rect = QRectF(left, small[0], self.body().left() - left, small[1])
        draw_text(painter, rect, self.tr("weeks to go"), look.colours["soft"], look.font(DATE_PT))

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if not self._axis.weeks:
            return
        flag = self._paint_today(painter, body)
        self._paint_numbers(painter, body)
        self._paint_dates(painter, body)
        self._paint_roles(painter, body, flag)

    def _lines(self) -> tuple[tuple[float, float], tuple[float, float], tuple[float, float]]:
        """Return top and height of the lines of numbers, dates and roles, from the foot up."""
        look = theme()
        heights = [
            look.metrics(NUMBER_PT, bold=True).ascent() + 3.0,
            look.metrics(DATE_PT).ascent() + 3.0,
            look.metrics(ROLE_PT).ascent() + 4.0,
        ]
        top = max(0.0, self.height() - sum(heights))
        return (
            (top, heights[0]),
            (top + heights[0], heights[1]),
            (top + heights[0] + heights[1], heights[2]),
        )

    def _paint_numbers(self, painter: QPainter, body: QRectF) -> None:
        look = theme()
        top, height = self._lines()[0]
        for index, week in enumerate(self._axis.weeks):
            rect = self._across(body, index, index, top, height)
            is_race = week.role is Role.RACE
            text = (
                kinds.say(kinds.ROLES[Role.RACE]) if is_race else self._words().number(week.to_go)
            )
            size = NUMBER_PT if not is_race or rect.width() > look.px(34) else DATE_PT
            colour = look.colours["clay" if is_race else "ink"]
            draw_text(painter, rect, text, colour, look.font(size, bold=True), Align.AlignCenter)

    def _paint_dates(self, painter: QPainter, body: QRectF) -> None:
        """Write as many dates as fit, counted back from the race week."""
        look, words = theme(), self._words()
        top, height = self._lines()[1]
        texts = [words.short_day(w.start) for w in self._axis.weeks]
        widest = max(look.metrics(DATE_PT).horizontalAdvance(t) for t in texts) + look.px(6.0)
        each = body.width() / len(texts)
        every = max(1, -(-int(widest) // max(1, int(each))))
        for index in range(len(texts) - 1, -1, -every):
            rect = self._across(body, index, index, top, height)
            if every > 1 and index == len(texts) - 1:
                rect.setLeft(rect.right() - widest + look.px(6.0))
            draw_text(
                painter,
                rect,
                texts[index],
                look.colours["soft"],
                look.font(DATE_PT),
                Align.AlignCenter,
            )

    def _paint_roles(self, painter: QPainter, body: QRectF, flag: QRectF | None) -> None:
        look = theme()
        top, height = self._lines()[2]
        font, metrics = look.font(ROLE_PT), look.metrics(ROLE_PT)
        for first, last, role in runs(self._axis.weeks):
            text = kinds.say(kinds.ROLES[role])
            across = self._across(body, first, last, top, height)
            width = metrics.horizontalAdvance(text)
            rect = QRectF(across.center().x() - width / 2, top, width, height)
            if flag is not None and rect.adjusted(-3, 0, 3, 0).intersects(flag):
                right = across.center().x() >= flag.center().x()
                rect.moveLeft(flag.right() + 4.0 if right else flag.left() - 4.0 - width)
            if last > first:
                _paint_bracket(painter, across, rect)
            draw_text(painter, rect, text, look.colours["soft"], font, Align.AlignCenter)

    def _paint_today(self, painter: QPainter, body: QRectF) -> QRectF | None:
        edge = None if self._today is None else today_edge(self._axis, self._today, body.width())
        if edge is None:
            return None
        look, text = theme(), self.tr("today")
        top, height = self._lines()[2]
        width = look.metrics(ROLE_PT, bold=True).horizontalAdvance(text) + look.px(8.0)
        x = round(body.left()) + edge[0]
        rect = QRectF(x - width / 2, top, width, height)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(look.colours["ink"])
        painter.drawRoundedRect(rect, 3.0, 3.0)
        painter.drawRect(
            QRectF(x - 1.0, rect.bottom() - 3.0, 2.0, self.height() - rect.bottom() + 3.0)
        )
        font = look.font(ROLE_PT, bold=True)
        draw_text(painter, rect, text, look.colours["paper"], font, Align.AlignCenter)
        return rect

    def _across(self, body: QRectF, first: int, last: int, top: float, height: float) -> QRectF:
        left, _ = self._axis.column(first, body.width())
        start, each = self._axis.column(last, body.width())
        return QRectF(body.left() + left, top, start + each - left, height)


def runs(weeks: tuple[WeekFigures, ...]) -> Iterator[tuple[int, int, Role]]:
    """Yield first and last column of neighbouring cutback or taper weeks, with their role."""
    first = 0
    for index in range(1, len(weeks) + 1):
        if index < len(weeks) and weeks[index].role is weeks[first].role:
            continue
        if weeks[first].role in (Role.CUTBACK, Role.TAPER):
            yield first, index - 1, weeks[first].role
        first = index


def _paint_bracket(painter: QPainter, across: QRectF, text: QRectF) -> None:
    painter.setPen(QPen(theme().colours["strong_line"], 1.0))
    y = round(across.center().y()) + 0.5
    left, right = across.left() + 6.0, across.right() - 6.0
    if text.left() - 4.0 > left:
        painter.drawLine(QPointF(left, y), QPointF(text.left() - 4.0, y))
        painter.drawLine(QPointF(left, y), QPointF(left, y + 4.0))
    if right > text.right() + 4.0:
        painter.drawLine(QPointF(text.right() + 4.0, y), QPointF(right, y))
        painter.drawLine(QPointF(right, y), QPointF(right, y + 4.0))

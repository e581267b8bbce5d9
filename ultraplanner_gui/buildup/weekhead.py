"""The head of the build-up: weeks to go, the date each begins, cutback, taper and today."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from math import ceil

from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, Qt
from PySide6.QtGui import QHideEvent, QKeyEvent, QMouseEvent, QPainter, QPen
from PySide6.QtWidgets import QApplication, QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.carry import WeekCarry
from ultraplanner_gui.buildup.wheel import AxisLane
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 44.0
NUMBER_PT = Pt.LARGE
DATE_PT = Pt.SMALL
ROLE_PT = Pt.MARK
WIDEST_NUMBER = 48


def today_edge(axis: WeekAxis, today: date, width: float) -> tuple[float, float, int] | None:
    """Return x of the edge above and below today's row, and that row; None out of the block."""
    column = axis.index_of(today)
    if column is None or not axis.is_shown(column):
        return None
    row = (today - axis.weeks[column].start).days
    left, right = axis.edges(column, width)
    return (round(right) if row else round(left)), round(left), row


class WeekHead(AxisLane):
    """Name the columns shared by everything below."""

    topic = "weeks to go"

    def __init__(
        self,
        axis: WeekAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
        document: Document | None = None,
        selection: Selection | None = None,
    ) -> None:
        super().__init__(axis, "", HEIGHT_PX, parent)
        self._words = words
        self._document, self._selection = document, selection
        self._press: QPointF | None = None
        self._carry: WeekCarry | None = None
        self.setMouseTracking(True)
        self._today: date | None = None
        self.setAccessibleName(self.tr("Weeks to go"))
        axis.changed.connect(self.update)

    @property
    def title_middle(self) -> float:
        """The middle of the line the storey's name is written in."""
        top, height = self._lines()[0]
        return top + height / 2

    def show_day(self, today: date) -> None:
        """Show *today* as the edge between done and ahead."""
        if today != self._today:
            self._today = today
            self.update()

    # A week is selected by a click; dragged over another, the two change places.

    def mousePressEvent(self, event: QMouseEvent) -> None:
        start = self._start_at(event.position())
        if start is None or event.button() is not Qt.MouseButton.LeftButton:
            super().mousePressEvent(event)
            return
        self._press = event.position()
        if self._selection is not None:
            self._selection.choose("week", start.isoformat())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at, start = event.position(), self._start_at(event.position())
        if self._press is None:
            shape = Qt.CursorShape.ArrowCursor if start is None else Qt.CursorShape.OpenHandCursor
            self.setCursor(shape)
            super().mouseMoveEvent(event)
            return
        way = (at - self._press).manhattanLength()
        from_start = self._start_at(self._press)
        if self._carry is None and self._document is not None and from_start is not None:
            if way < QApplication.startDragDistance():
                return
            self._carry = WeekCarry(self._document, from_start)
            self.setCursor(Qt.CursorShape.ClosedHandCursor)
            # The focus stays where it is; Esc is for the week in the hand.
            self._listen(True)
        if self._carry is not None:
            self._carry.over(self._carry.start if start is None else start)
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        carry, self._carry, self._press = self._carry, None, None
        self._listen(False)
        if carry is None:
            super().mouseReleaseEvent(event)
            return
        if carry.is_valid and carry.put_down() and self._selection is not None:
            self._selection.choose("week", carry.over_week.isoformat())
        self.update()

    def _listen(self, is_on: bool) -> None:
        """Hear every key of the application, or none but its own."""
        app = QApplication.instance()
        if app is not None and is_on:
            app.installEventFilter(self)
        elif app is not None:
            app.removeEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        is_key = event.type() in (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride)
        if is_key and isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Escape:
            self._put_back()
            event.accept()
            return True
        return super().eventFilter(watched, event)

    def hideEvent(self, event: QHideEvent) -> None:
        self._put_back()
        super().hideEvent(event)

    def _put_back(self) -> None:
        if self._carry is not None:
            self._carry.put_back()
            self._listen(False)
        self._carry, self._press = None, None
        self.update()

    def _start_at(self, at: QPointF) -> date | None:
        body = self.body()
        index = self._axis.index_at(at.x() - body.left(), body.width())
        return None if index is None else self._axis.weeks[index].start

    def readout(self, at: QPointF) -> str:
        body = self.body()
        index = self._axis.index_at(at.x() - body.left(), body.width())
        tear = self._axis.tear(body.width())
        if tear is not None and tear[0] <= at.x() - body.left() < tear[1]:
            return self.tr("%n weeks are out of view here", "", self._axis.hidden_after)
        return "" if index is None else kinds.week_name(self._axis.weeks[index], self._words())

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_head(self, painter: QPainter) -> None:
        look = theme()
        number, small = self._lines()[:2]
        left = look.px(12.0)
        rect = QRectF(left, number[0], self.body().left() - left, number[1])
        draw_text(
            painter, rect, self.tr("BUILD-UP"), look.colours["soft"], look.font(Pt.LABEL, bold=True)
        )
        rect = QRectF(left, small[0], self.body().left() - left, small[1])
        draw_text(painter, rect, self.tr("weeks to go"), look.colours["soft"], look.font(DATE_PT))

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if not self._axis.weeks:
            return
        self._paint_carried(painter, body)
        flag = self._paint_today(painter, body)
        self._paint_numbers(painter, body)
        self._paint_dates(painter, body)
        self._paint_roles(painter, body, flag)

    def _paint_carried(self, painter: QPainter, body: QRectF) -> None:
        """Frame the week in the hand and the one it would change places with."""
        carry = self._carry
        if carry is None:
            return
        top, height = self._lines()[0][0], self.height() - self._lines()[0][0]
        weeks = ((carry.start, Qt.PenStyle.DashLine), (carry.over_week, Qt.PenStyle.SolidLine))
        for start, style in weeks:
            index = self._axis.index_of(start)
            if index is None or not self._axis.is_shown(index):
                continue
            rect = self._across(body, index, index, top, height)
            painter.setPen(QPen(theme().colours["clay"], Stroke.LINE, style))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(rect.adjusted(2.0, 1.0, -2.0, -2.0), 3.0, 3.0)

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
        """Write the weeks to go; where columns are narrow every second one, or fewer."""
        look, words, axis = theme(), self._words(), self._axis
        top, height = self._lines()[0]
        every = self._every_number(body)
        for index in axis.shown:
            week, rect = axis.weeks[index], self._across(body, index, index, top, height)
            is_race = week.role is Role.RACE
            if week.to_go % every and not is_race:
                continue
            text = kinds.say(kinds.ROLES[Role.RACE]) if is_race else words.number(week.to_go)
            size = NUMBER_PT if not is_race or rect.width() > look.px(34) else DATE_PT
            colour = look.colours["clay" if is_race else "ink"]
            draw_text(painter, rect, text, colour, look.font(size, bold=True), Align.AlignCenter)

    def _every_number(self, body: QRectF) -> int:
        """Return 1 if there is room for every number, 2 for every second, ..."""
        look = theme()
        text = self._words().number(WIDEST_NUMBER)
        widest = look.metrics(NUMBER_PT, bold=True).horizontalAdvance(text) + look.px(5.0)
        return ceil(widest / max(1.0, self._axis.each(body.width())))

    def _paint_dates(self, painter: QPainter, body: QRectF) -> None:
        """Write as many dates as fit, each under a number, counted back from the race week."""
        look, words, axis = theme(), self._words(), self._axis
        top, height = self._lines()[1]
        shown, font = axis.shown, look.font(DATE_PT)
        texts = {index: words.short_day(axis.weeks[index].start) for index in shown}
        widest = max(look.metrics(DATE_PT).horizontalAdvance(text) for text in texts.values())
        each, numbers = axis.each(body.width()), self._every_number(body)
        every = numbers * ceil((widest + look.px(6.0)) / max(1.0, each * numbers))
        reached = body.left()
        for index in shown:
            if axis.weeks[index].to_go % every:
                continue
            rect = self._across(body, index, index, top, height)
            if rect.width() < widest:
                rect = QRectF(rect.center().x() - widest / 2, top, widest, height)
                rect.moveRight(min(rect.right(), body.right()))
            if rect.left() >= reached - 0.5:
                reached = rect.right()
                draw_text(
                    painter, rect, texts[index], look.colours["soft"], font, Align.AlignCenter
                )

    def _paint_roles(self, painter: QPainter, body: QRectF, flag: QRectF | None) -> None:
        """Name cutback and taper weeks, with a bracket over several, or that alone."""
        look, axis = theme(), self._axis
        top, height = self._lines()[2]
        font, metrics = look.font(ROLE_PT), look.metrics(ROLE_PT)
        reached = 0.0
        for first, last, role in runs(axis.weeks):
            shown = [index for index in range(first, last + 1) if axis.is_shown(index)]
            if not shown:
                continue
            text = kinds.say(kinds.ROLES[role])
            across = self._across(body, shown[0], shown[-1], top, height)
            width = metrics.horizontalAdvance(text)
            rect = QRectF(across.center().x() - width / 2, top, width, height)
            if flag is not None and rect.adjusted(-3, 0, 3, 0).intersects(flag):
                right = across.center().x() >= flag.center().x()
                rect.moveLeft(flag.right() + 4.0 if right else flag.left() - 4.0 - width)
            is_named = rect.left() > reached and (flag is None or not rect.intersects(flag))
            if last > first or not is_named:
                _paint_bracket(painter, across, rect if is_named else None)
            if is_named:
                reached = rect.right() + look.px(4.0)
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
        left, _ = self._axis.edges(first, body.width())
        _, right = self._axis.edges(last, body.width())
        return QRectF(body.left() + left, top, right - left, height)


def runs(weeks: tuple[WeekFigures, ...]) -> Iterator[tuple[int, int, Role]]:
    """Yield first and last column of neighbouring cutback or taper weeks, with their role."""
    first = 0
    for index in range(1, len(weeks) + 1):
        if index < len(weeks) and weeks[index].role is weeks[first].role:
            continue
        if weeks[first].role in (Role.CUTBACK, Role.TAPER):
            yield first, index - 1, weeks[first].role
        first = index


def _paint_bracket(painter: QPainter, across: QRectF, text: QRectF | None) -> None:
    """Draw the bracket over neighbouring weeks, parted where the *text* stands."""
    painter.setPen(QPen(theme().colours["strong_line"], Stroke.HAIR))
    y, inset = round(across.center().y()) + 0.5, min(6.0, across.width() * 0.2)
    left, right = across.left() + inset, across.right() - inset
    ends = (right, left) if text is None else (text.left() - 4.0, text.right() + 4.0)
    if ends[0] > left:
        painter.drawLine(QPointF(left, y), QPointF(ends[0], y))
        painter.drawLine(QPointF(left, y), QPointF(left, y + 4.0))
    if right > ends[1]:
        painter.drawLine(QPointF(ends[1], y), QPointF(right, y))
        painter.drawLine(QPointF(right, y), QPointF(right, y + 4.0))

"""A column of titles, figures before and now, checks and sentences: what the ledger is made of."""

from __future__ import annotations

import math

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QFont, QHelpEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from ultraplanner_gui.desk.language import translated
from ultraplanner_gui.engine.state import STATES, State
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.cord import draw_cord
from ultraplanner_gui.widgets.help_topic import ask
from ultraplanner_gui.widgets.lane import BY_LETTERS, Align, draw_text
from ultraplanner_gui.widgets.motion import MARK_MS, moves
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt
from ultraplanner_gui.wording.reading import from_the_right

TITLE_PT = Pt.HEAD
TEXT_PT = Pt.TEXT
SMALL_PT = Pt.LABEL
MOST_WIDTHS = 8
#: Nothing of a figure stands nearer to the edges of its row, which fall between pixels.
EDGE_PX = 2
MOST_WRAPS = 500


class Title(Value, frozen=True):
    """A heading with a line of small text under it; `topic` is what the help says of that line."""

    text: str
    under: str = ""
    topic: str = ""


class Heads(Value, frozen=True):
    """Heads over the columns before and now; `topic` is what the help says of them."""

    title: str
    before: str = ""
    now: str = ""
    topic: str = ""


class Figure(Value, frozen=True):
    """A labelled figure.

    `before` is shown where it differs, `warns` marks it with clay and a sign, `topic` is what
    the help says of it.
    """

    label: str
    now: str
    before: str = ""
    warns: bool = False
    help_text: str = ""
    shows_both: bool = False
    topic: str = ""


class CheckRow(Value, frozen=True):
    """How a check stands, said in a sentence; `target` names what a click leads to, `topic`
    what the help says of it.
    """

    state: State
    text: str
    help_text: str = ""
    target: str = ""
    topic: str = ""


class Sentence(Value, frozen=True):
    """A paragraph of small text; `topic` is what the help says of it."""

    text: str
    topic: str = ""


class Rule(Value, frozen=True):
    """A hair line between groups."""


class Link(Value, frozen=True):
    """What can be done about the row above, in words; a click does it. `target` names it."""

    text: str
    target: str
    topic: str = ""


Row = Title | Heads | Figure | CheckRow | Sentence | Rule | Link


class Rows(QWidget):
    """Paints rows one under another; the words are also its accessible description.

    Keys: up and down go through the rows that lead somewhere or can be explained; Enter goes
    where the row leads, or has it explained, as a click does. `chosen` carries where to,
    `reached` the place of the row the keys have come to.
    """

    chosen = Signal(str)
    reached = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Row, ...] = ()
        self._name = name
        self._cursor = -1
        # Wrapping text is dear, and asked for by layout, painting and pointer alike.
        self._heights: dict[int, list[float]] = {}
        self._wraps: dict[tuple[str, int, float, bool], float] = {}
        self._fresh: frozenset[int] = frozenset()
        self._fading = QTimer(self)
        self._fading.setSingleShot(True)
        self._fading.timeout.connect(self._on_faded)
        self.setAccessibleName(name)
        self.setMouseTracking(True)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        theme().changed.connect(self._on_theme_changed)

    def show_rows(self, rows: tuple[Row, ...]) -> None:
        """Show *rows* instead of what is there."""
        if rows == self._rows:
            return
        stood, marked = self._heights_at(self.width()), self._fresh
        before, self._rows = self._rows, rows
        self._mark_changes(before, rows)
        self._heights.clear()
        if self._cursor >= 0:
            self._go_to(self._cursor if _alike(before, rows) else -1)
        self.setAccessibleDescription("\n".join(_spoken(row) for row in rows))
        can_stop = any(_stops(row) for row in rows)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus if can_stop else Qt.FocusPolicy.NoFocus)
        height = self.heightForWidth(self.width())
        if height != self.height():
            self.setFixedHeight(height)
        if self._heights_at(self.width()) != stood:
            self.update()
            return
        # Under a drag few rows change, and none moves: only those are painted anew.
        marked = marked ^ self._fresh
        for n, (was, row) in enumerate(zip(before, rows, strict=True)):
            if was != row or n in marked:
                self.update(self._place_of(n).adjusted(0, -1, 0, 1))

    def _mark_changes(self, before: tuple[Row, ...], now: tuple[Row, ...]) -> None:
        """Mark for a moment the figures that changed in what stays the same otherwise."""
        if not before or not _alike(before, now) or not moves():
            self._fresh = frozenset()
            return
        pairs = enumerate(zip(before, now, strict=True))
        self._fresh = frozenset(
            n
            for n, (was, row) in pairs
            if isinstance(was, Figure) and isinstance(row, Figure) and was.now != row.now
        )
        if self._fresh:
            self._fading.start(MARK_MS)

    @Slot()
    def _on_faded(self) -> None:
        self._fresh = frozenset()
        self.update()

    @property
    def rows(self) -> tuple[Row, ...]:
        """What is shown."""
        return self._rows

    def topic_at(self, at: QPoint | None) -> str:
        """Return what the row at a place is about, or the one the keys have come to."""
        if at is not None:
            return topic_of_row(self._row_at(QPointF(at)))
        if self._cursor >= 0:
            return topic_of_row(self._rows[self._cursor])
        return next((topic for topic in map(topic_of_row, self._rows) if topic), "")

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return math.ceil(sum(self._heights_at(width)))

    def sizeHint(self) -> QSize:
        width = max(self.width(), round(theme().px(220)))
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:
        return QSize(round(theme().px(180)), 0)

    def resizeEvent(self, event: object) -> None:
        height = self.heightForWidth(self.width())
        if height != self.height():
            self.setFixedHeight(height)

    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            top = 0.0
            heights, region = self._heights_at(self.width()), event.region()
            for n, (row, height) in enumerate(zip(self._rows, heights, strict=True)):
                rect = QRectF(0.0, top, self.width(), height)
                edge = EDGE_PX if isinstance(row, Figure) else 0
                if not region.intersects(rect.toAlignedRect().adjusted(0, edge, 0, -edge)):
                    top += height
                    continue
                if n in self._fresh and isinstance(row, Figure):
                    self._paint_mark(painter, row, rect)
                self._paint_row(painter, row, rect)
                top += height
            if self.hasFocus():
                around = self.rect() if self._cursor < 0 else self._place_of(self._cursor)
                painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
                painter.setPen(theme().colours["teal"])
                painter.drawRect(around.adjusted(0, 0, -1, -1))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        row = self._row_at(event.position())
        shape = Qt.CursorShape.WhatsThisCursor if topic_of_row(row) else Qt.CursorShape.ArrowCursor
        leads = isinstance(row, CheckRow | Link) and row.target
        self.setCursor(Qt.CursorShape.PointingHandCursor if leads else shape)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._follow(self._row_at(event.position()))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._step(-1 if key is Qt.Key.Key_Up else 1)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            first = next((r for r in self._rows if isinstance(r, CheckRow) and r.target), None)
            self._follow(first if self._cursor < 0 else self._rows[self._cursor])
        else:
            super().keyPressEvent(event)

    def event(self, event: object) -> bool:
        if isinstance(event, QHelpEvent):
            row = self._row_at(QPointF(event.pos()))
            text = row.help_text if isinstance(row, Figure | CheckRow) else ""
            QToolTip.showText(event.globalPos(), text, self)
            return True
        return super().event(event)  # type: ignore[arg-type]

    def _follow(self, row: Row | None) -> None:
        """Go where *row* leads, or have it explained."""
        if isinstance(row, CheckRow | Link) and row.target:
            self.chosen.emit(row.target)
        elif topic := topic_of_row(row):
            ask(self, topic)

    def _step(self, step: int) -> None:
        places = [n for n, row in enumerate(self._rows) if _stops(row)]
        further = [n for n in places if (n - self._cursor) * step > 0]
        if further:
            self._go_to(further[0] if step > 0 else further[-1])
            self.reached.emit(self._place_of(self._cursor))

    def _go_to(self, number: int) -> None:
        self._cursor = number
        said = "" if number < 0 else _spoken(self._rows[number])
        self.setAccessibleName(f"{self._name}: {said}" if said else self._name)
        self.update()

    def _place_of(self, number: int) -> QRect:
        heights = self._heights_at(self.width())
        return QRect(0, round(sum(heights[:number])), self.width(), round(heights[number]))

    def _row_at(self, at: QPointF) -> Row | None:
        top = 0.0
        for row, height in zip(self._rows, self._heights_at(self.width()), strict=True):
            top += height
            if at.y() < top:
                return row
        return None

    def _heights_at(self, width: int) -> list[float]:
        if width not in self._heights:
            if len(self._heights) > MOST_WIDTHS:
                self._heights.clear()
            self._heights[width] = [self._height(row, width) for row in self._rows]
        return self._heights[width]

    def _height(self, row: Row, width: int) -> float:
        look = theme()
        if isinstance(row, Title):
            height = self._wrapped(row.text, width, TITLE_PT, bold=True)
            return (
                height
                + (self._wrapped(row.under, width, SMALL_PT) if row.under else 0.0)
                + look.px(6)
            )
        if isinstance(row, Heads):
            return look.metrics(TEXT_PT, bold=True).height() + look.px(5)
        if isinstance(row, Figure):
            lines = 1 if self._is_one_line(row, width) else 2
            return look.metrics(TEXT_PT).height() * lines + look.px(5)
        if isinstance(row, CheckRow | Link):
            return self._wrapped(row.text, width - round(look.px(26)), SMALL_PT) + look.px(6)
        if isinstance(row, Sentence):
            return self._wrapped(row.text, width, SMALL_PT) + look.px(5)
        return look.px(13)

    def _is_one_line(self, row: Figure, width: int) -> bool:
        """Whether label and figure have room beside each other."""
        look, now = theme(), row.now + (" !" if row.warns else "")
        label, figure = look.width(row.label, TEXT_PT), look.width(now, TEXT_PT, bold=True)
        return label + figure + look.px(4) <= width

    def _across(self, rect: QRectF) -> QRectF:
        """Return *rect*, or its mirror image where rows are read from right to left."""
        if not self.isRightToLeft():
            return rect
        return QRectF(self.width() - rect.right(), rect.top(), rect.width(), rect.height())

    def _wrapped(self, text: str, width: int, size_pt: float, bold: bool = False) -> float:
        key = (text, width, size_pt, bold)
        height = self._wraps.get(key)
        if height is None:
            if len(self._wraps) > MOST_WRAPS:
                self._wraps.clear()
            room, flags = QRectF(0, 0, max(width, 20), 10_000), int(Qt.TextFlag.TextWordWrap)
            metrics = theme().metrics(size_pt, bold)
            height = self._wraps[key] = metrics.boundingRect(room, flags, text).height()
        return height

    def _paint_mark(self, painter: QPainter, row: Figure, rect: QRectF) -> None:
        """Draw the ground of a figure that has just changed."""
        look = theme()
        text = row.now + (" !" if row.warns else "")
        width = look.width(text, TEXT_PT, bold=True) + look.px(6)
        high = look.metrics(TEXT_PT).height() + look.px(3)
        ground = QRectF(rect.right() - width, rect.bottom() - high - 1.0, width, high)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(look.colours["pale_teal"])
        painter.drawRoundedRect(self._across(ground), 3.0, 3.0)

    def _paint_row(self, painter: QPainter, row: Row, rect: QRectF) -> None:
        look = theme()
        c = look.colours
        if isinstance(row, Title):
            height = self._wrapped(row.text, self.width(), TITLE_PT, bold=True)
            self._paragraph(
                painter,
                QRectF(rect.left(), rect.top(), rect.width(), height),
                row.text,
                TITLE_PT,
                "ink",
                True,
            )
            under = rect.adjusted(0, height + look.px(1), 0, 0)
            self._paragraph(painter, under, row.under, SMALL_PT, "soft")
        elif isinstance(row, Heads):
            self._columns(painter, rect, row.title, row.before, row.now, is_head=True)
        elif isinstance(row, Figure):
            before = row.before if row.shows_both or row.before != row.now else ""
            self._columns(painter, rect, row.label, before, row.now, warns=row.warns)
        elif isinstance(row, CheckRow):
            indent = look.px(26)
            draw_cord(
                painter,
                self._across(
                    QRectF(
                        rect.left(),
                        rect.top() + look.px(1),
                        look.px(18),
                        look.metrics(SMALL_PT).height(),
                    )
                ),
                row.state,
            )
            room = self._across(rect.adjusted(indent, 0, 0, 0))
            self._paragraph(painter, room, row.text, SMALL_PT, "ink")
        elif isinstance(row, Link):
            room = self._across(rect.adjusted(look.px(26), 0, 0, 0))
            self._paragraph(painter, room, row.text, SMALL_PT, "teal", underlined=True)
        elif isinstance(row, Sentence):
            self._paragraph(painter, rect, row.text, SMALL_PT, "soft")
        else:
            painter.setPen(c["line"])
            y = rect.center().y()
            painter.drawLine(QPointF(rect.left(), y), QPointF(rect.right(), y))

    def _paragraph(
        self,
        painter: QPainter,
        rect: QRectF,
        text: str,
        size_pt: float,
        colour: str,
        bold: bool = False,
        underlined: bool = False,
    ) -> None:
        font = theme().font(size_pt, bold)
        if underlined:
            font = QFont(font)
            font.setUnderline(True)
        painter.setFont(font)
        painter.setPen(theme().colours[colour])
        painter.setLayoutDirection(BY_LETTERS)
        side = Align.AlignRight if self.isRightToLeft() else Align.AlignLeft
        flags = Qt.TextFlag.TextWordWrap.value | (side | Align.AlignTop | Align.AlignAbsolute).value
        painter.drawText(rect, flags, text)

    def _columns(
        self,
        painter: QPainter,
        rect: QRectF,
        label: str,
        before: str,
        now: str,
        is_head: bool = False,
        warns: bool = False,
    ) -> None:
        look = theme()
        c = look.colours
        left, right = Align.AlignLeft, Align.AlignRight
        if self.isRightToLeft():
            left, right = right, left
        line = look.metrics(TEXT_PT).height() + look.px(5)
        upper = QRectF(rect.left(), rect.top(), rect.width(), line)
        lower = QRectF(rect.left(), rect.bottom() - line, rect.width(), line)
        label_font = look.font(TEXT_PT, bold=is_head)
        middle = Align.AlignVCenter
        draw_text(painter, upper, label, c["ink" if is_head else "soft"], label_font, left | middle)
        now_font = look.font(SMALL_PT) if is_head else look.font(TEXT_PT, bold=True)
        colour = "soft" if is_head else "clay" if warns else "ink"
        shown = now + (" !" if warns else "")
        if self.isRightToLeft():
            # "151, 921 m" of climb and drop has no letter to say which is the first.
            shown, before = from_the_right(shown), from_the_right(before)
        draw_text(painter, lower, shown, c[colour], now_font, right | middle)
        if before:
            gap = max(look.width(now, TEXT_PT, bold=True), look.px(52)) + look.px(14)
            free = rect.width() - gap
            if lower.top() == upper.top():
                free -= look.width(label, TEXT_PT)
            # Written over the label neither could be read.
            if look.width(before, SMALL_PT) + look.px(4) <= free:
                place = self._across(lower.adjusted(0, 0, -gap, 0))
                draw_text(painter, place, before, c["soft"], look.font(SMALL_PT), right | middle)

    def _on_theme_changed(self) -> None:
        self._heights.clear()
        self._wraps.clear()
        self.setFixedHeight(self.heightForWidth(self.width()))
        self.update()


def topic_of_row(row: Row | None) -> str:
    """Return what the help says of *row*, empty for nothing."""
    return "" if row is None or isinstance(row, Rule) else row.topic


def _stops(row: Row) -> bool:
    """Whether the keys stop at *row*."""
    return bool(topic_of_row(row)) or _leads(row)


def _leads(row: Row) -> bool:
    """Whether *row* leads somewhere, or does something."""
    return isinstance(row, CheckRow | Link) and bool(row.target)


def _alike(before: tuple[Row, ...], now: tuple[Row, ...]) -> bool:
    """Whether *now* has the rows of *before*, with other figures at most."""
    return [_lasting(row) for row in before] == [_lasting(row) for row in now]


def _lasting(row: Row) -> str:
    if isinstance(row, Figure):
        return row.label
    if isinstance(row, CheckRow | Link):
        return f"{row.topic} {row.target}"
    return type(row).__name__


def _spoken(row: Row) -> str:
    if isinstance(row, Title):
        return f"{row.text}. {row.under}"
    if isinstance(row, Heads):
        return row.title
    if isinstance(row, Figure):
        return f"{row.label}: {row.now}" + (f" ({row.before})" if row.before else "")
    if isinstance(row, CheckRow):
        return f"{translated(STATES[row.state])}: {row.text}"
    return row.text if isinstance(row, Sentence | Link) else ""

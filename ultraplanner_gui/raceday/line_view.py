"""The plan of the course: its line from above, and the place the cursor of the lanes is at."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.raceday import at_cursor
from ultraplanner_gui.raceday.plan_line import DrawnLine, GroundPlan, drawn_line, ground_plan
from ultraplanner_gui.raceday.plan_paint import Scene, paint_plan
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.wording.words import Words

MARGIN_PX = 14.0
REACH_PX = 30.0
SPOT_PX = 6.0
STATION_PX = 9.0
#: In less room there is no line.
LEAST_LINE_PX = 20.0
FOOT_LINES = 3
BETWEEN = "  ·  "
STEPS: dict[int, int] = {
    Qt.Key.Key_Left: -1,
    Qt.Key.Key_Right: 1,
    Qt.Key.Key_Down: -1,
    Qt.Key.Key_Up: 1,
}
LONG_STEP = 10
STEP = 0.01


class LineView(QWidget):
    """North is up. The pointer, or the arrow keys, walk the course; a click selects.

    The picture is kept until course, size, choice or theme change; only the mark of the cursor
    is drawn anew while it moves.
    """

    #: The user is at a place of the course, metres, or at none.
    pointed = Signal(object)

    def __init__(
        self,
        document: Document,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._selection, self._words = document, selection, words
        self._plan: GroundPlan | None = None
        self._plan_of: tuple[object, ...] = ()
        self._line: DrawnLine | None = None
        self._line_of: tuple[object, ...] = ()
        self._picture: QPixmap | None = None
        self._picture_of: tuple[object, ...] = ()
        self._at_m: float | None = None
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Plan view of the course"))
        selection.changed.connect(self.update)
        document.changed.connect(self._on_changed)
        theme().changed.connect(self._on_theme_changed)

    topic = "plan view"

    def topic_at(self, at: object) -> str:
        """Return what the help tells of it."""
        return self.topic

    def sizeHint(self) -> QSize:
        return QSize(round(theme().px(260)), round(theme().px(260)))

    @property
    def at_m(self) -> float | None:
        """The place marked, metres from the start."""
        return self._at_m

    def mark(self, at_m: float | None) -> None:
        """Mark a place of the course, or none."""
        if at_m != self._at_m:
            self._at_m = at_m
            self.update()

    def place_at(self, at: QPointF) -> float | None:
        """Return the place of the course near a point of the view, None if none is near."""
        line = self._drawn()
        if line is None:
            return None
        at_m, off_px = line.nearest(at.x(), at.y())
        return at_m if off_px <= theme().px(REACH_PX) else None

    def spot_of(self, at_m: float) -> QPointF | None:
        """Return where a place of the course is drawn."""
        line = self._drawn()
        return None if line is None else QPointF(*line.place_of(at_m))

    # Mouse and keys

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._point(self.place_at(event.position()))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at_m = self.place_at(event.position())
        if event.button() is Qt.MouseButton.LeftButton and at_m is not None:
            self._choose(at_m, event.position())

    def leaveEvent(self, event: QEvent) -> None:
        self._point(None)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._point(None)
        super().focusOutEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()
        super().focusInEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        profile, key = self._document.shown.profile, event.key()
        if profile is None or key not in (*STEPS, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)
            return
        if key in STEPS:
            by = STEPS[key] * STEP * profile.length_m
            by *= LONG_STEP if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
            start_m = self._at_m if self._at_m is not None else -by
            self._point(min(max(start_m + by, 0.0), profile.length_m))
        elif self._at_m is not None:
            self._choose(self._at_m, None)

    def _point(self, at_m: float | None) -> None:
        self.mark(at_m)
        self.setAccessibleDescription(", ".join(self._said()))
        self.pointed.emit(at_m)

    def _choose(self, at_m: float, at: QPointF | None) -> None:
        """Select the aid station under the pointer, else the section the place lies in."""
        course, line = self._document.outlook.project.course, self._drawn()
        if course is not None and at is not None and line is not None:
            for station in course.stations:
                x, y = line.place_of(station.at_m)
                if QPointF(x - at.x(), y - at.y()).manhattanLength() <= theme().px(STATION_PX):
                    self._selection.choose("station", station.key)
                    return
        sections = self._document.outlook.sections
        found = next((s for s in sections if at_m <= s.end_m), None)
        if found is not None:
            self._selection.choose("section", found.key)

    # What is kept

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        if before.project.course is not after.project.course or self._at_m is not None:
            self.update()

    @Slot()
    def _on_theme_changed(self) -> None:
        self._picture = None
        self.update()

    def _room(self) -> QRectF:
        """Return where the line goes: clear of the edges and of the figures at the foot."""
        margin = theme().px(MARGIN_PX)
        foot = FOOT_LINES * theme().metrics(Pt.LABEL).height() + margin / 2
        return QRectF(self.rect()).adjusted(margin, margin, -margin, -margin - foot)

    def _drawn(self) -> DrawnLine | None:
        """Return the line as it is drawn at this size."""
        course, room = self._document.shown.project.course, self._room()
        # The scale stands under the line, the north mark and names beside it.
        inner = room.adjusted(12.0, 8.0, -12.0, -theme().metrics(Pt.SMALL).height() - 8.0)
        if course is None or inner.width() < LEAST_LINE_PX or inner.height() < LEAST_LINE_PX:
            return None
        plan_of = (id(course.line), course.length_m, course.pins)
        if self._plan is None or self._plan_of != plan_of:
            self._plan, self._plan_of = ground_plan(course), plan_of
        line_of = (id(self._plan), room.getRect())
        if self._line is None or self._line_of != line_of:
            self._line = drawn_line(self._plan, inner.x(), inner.y(), inner.width(), inner.height())
            self._line_of = line_of
        return self._line

    def _scene(self, line: DrawnLine, course: Course) -> Scene | None:
        outlook = self._document.shown
        if outlook.profile is None:
            return None
        kind, key = self._selection.kind, self._selection.key
        chosen = next((s for s in outlook.sections if kind == "section" and s.key == key), None)
        span = (chosen.start_m, chosen.end_m) if chosen is not None else None
        return Scene(line, course, outlook.profile, self._words(), self._room(), span)

    # Painting

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme()
        with QPainter(self) as painter:
            line, course = self._drawn(), self._document.shown.project.course
            scene = self._scene(line, course) if line is not None and course is not None else None
            if scene is None:
                painter.fillRect(self.rect(), look.colours["paper"])
                if self._document.shown.profile is None:
                    self._paint_empty(painter)
                return
            painter.drawPixmap(0, 0, self._kept(scene))
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_mark(painter, scene.line)
            if self.hasFocus():
                painter.setPen(QPen(look.colours["teal"], Stroke.HAIR))
                painter.drawRect(QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5))

    def _kept(self, scene: Scene) -> QPixmap:
        ratio = self.devicePixelRatioF()
        course, look = scene.course, theme()
        of = (
            *(id(scene.line), id(scene.profile), course.stations, course.surfaces, course.length_m),
            *(scene.chosen_m, scene.words, look.colours, look.scale, ratio, self.size().toTuple()),
        )
        if self._picture is None or self._picture_of != of:
            picture = QPixmap(self.size() * ratio)
            picture.setDevicePixelRatio(ratio)
            picture.fill(look.colours["paper"])
            with QPainter(picture) as painter:
                paint_plan(painter, scene)
                painter.setPen(QPen(look.colours["line"], Stroke.HAIR))
                painter.drawLine(0, 0, 0, self.height())
            self._picture, self._picture_of = picture, of
        return self._picture

    def _paint_empty(self, painter: QPainter) -> None:
        look = theme()
        painter.setFont(look.font(Pt.NOTE))
        painter.setPen(look.colours["soft"])
        text = self.tr("The plan of the course appears with a course.")
        flags = int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap)
        painter.drawText(self._room(), flags, text)

    def _paint_mark(self, painter: QPainter, line: DrawnLine) -> None:
        """Draw where the cursor is, and at the foot what there is."""
        if self._at_m is None:
            return
        look = theme()
        x, y = line.place_of(self._at_m)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(look.colours["paper"], 2 * Stroke.HEAVY))
        painter.drawEllipse(QPointF(x, y), SPOT_PX, SPOT_PX)
        painter.setPen(QPen(look.colours["clay"], Stroke.HEAVY))
        painter.drawEllipse(QPointF(x, y), SPOT_PX, SPOT_PX)
        metrics, font = look.metrics(Pt.LABEL), look.font(Pt.LABEL)
        room = self._room()
        top = self.height() - FOOT_LINES * metrics.height() - look.px(MARGIN_PX) / 2
        for number, text in enumerate(_flowed(self._said(), room.width(), metrics)):
            place = QRectF(room.left(), top + number * metrics.height(), room.width(), 0.0)
            place.setHeight(metrics.height())
            draw_text(painter, place, text, look.colours["ink"], font, Align.AlignLeft)

    def _said(self) -> tuple[str, ...]:
        """Return the figures of the place marked."""
        outlook = self._document.shown
        if self._at_m is None or outlook.target is None:
            return ()
        moment_s = outlook.target.arrival_s(self._at_m)
        return at_cursor.figures(outlook, self._at_m, moment_s, self._words())


def _flowed(texts: tuple[str, ...], width: float, metrics: object) -> list[str]:
    """Return *texts* in at most `FOOT_LINES` lines that fit into *width*."""
    advance = metrics.horizontalAdvance  # type: ignore[attr-defined]
    lines: list[str] = []
    for text in texts:
        longer = f"{lines[-1]}{BETWEEN}{text}" if lines else text
        if lines and advance(longer) <= width:
            lines[-1] = longer
        elif len(lines) < FOOT_LINES and advance(text) <= width:
            lines.append(text)
    return lines

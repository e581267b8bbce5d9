"""What every lane of race day has: the shared axis, station lines, zoom and pan."""

from __future__ import annotations

import math
import time
from collections.abc import Callable

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QLineF, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen, QPixmap, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QMenu, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import AidStation, FloatArray
from ultraplanner_gui.raceday.snap import Snap
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.wording.words import Words

ZOOM_STEP = 1.25
PAN_STEP = 0.1
WHOLE_RACE_TURNS = 100.0
DASHED, DOTTED = Qt.PenStyle.DashLine, Qt.PenStyle.DotLine


def have_stations_changed(before: Outlook, after: Outlook) -> bool:
    """Whether a station came, went, or is no longer what it was."""
    was, now = before.project.course, after.project.course
    if was is now:
        return False
    return was is None or now is None or was.stations is not now.stations


def _stations_m(outlook: Outlook) -> set[float]:
    course = outlook.project.course
    return {station.at_m for station in course.stations} if course is not None else set()


def bends(ys: FloatArray) -> npt.NDArray[np.intp]:
    """Return the points of a line without those inside its level stretches."""
    steps = np.diff(ys) != 0.0
    return np.flatnonzero(np.append(steps, True) | np.append(True, steps))


class RaceLane(Lane):
    """A lane on the race axis. Ctrl and wheel zooms about the pointer, the wheel alone pans
    while zoomed in; so do the keys + and -, and 0 shows the whole race.

    What it painted last is kept, so that the cursor may pass over it for next to nothing.
    """

    #: Whether the lines of the aid stations go over what the lane shows, or under it.
    lines_over = True
    _painted: QPixmap | None = None
    #: Where it says why it is empty.
    _sentence: QRectF | None = None
    #: Whether it may show what was painted last while the hand moves: not what one drags by.
    may_wait = False
    #: Whether what was painted last is no longer what there is to show.
    is_stale = True
    #: Whether that is shown until the lane has its turn, and since when, of `time.perf_counter`.
    waits, waits_since_s = False, math.inf
    #: How long the last painting took.
    paint_s = 0.0

    def __init__(
        self,
        name: str,
        unit: str,
        height_px: float,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
        snap: Snap | None = None,
    ) -> None:
        super().__init__(name, unit, height_px, parent)
        self.document, self.selection, self.axis, self.words = document, selection, axis, words
        #: What things in the hand snap to; one for all lanes of a storey.
        self.snap = snap if snap is not None else Snap(document, axis, words, self)
        # The picture covers all of it: Qt need not paint what lies behind first.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        axis.changed.connect(self.on_view_changed)
        selection.changed.connect(self.update)

    @property
    def shown(self) -> Outlook:
        """The outlook in force, trial or kept."""
        return self.document.shown

    def x_of(self, at_m: float, body: QRectF) -> float:
        """Return x in the widget of a place on the course."""
        return body.left() + self.axis.x_of_distance(at_m, body.width())

    def x_of_time(self, elapsed_s: float, body: QRectF) -> float:
        """Return x in the widget of a moment of the race."""
        return body.left() + self.axis.x_of_time(elapsed_s, body.width())

    def clear_from(self, x: float, body: QRectF) -> float:
        """Return *x* in the widget, or where a pleat over it ends, so that a text can be read."""
        return body.left() + self.axis.past_pleat(x - body.left(), body.width())

    def station_xs(self, body: QRectF) -> list[float]:
        """Return where lines of stations run: as kept, so that texts stay still under a drag."""
        course = self.document.before.project.course
        stations = course.stations if course is not None else ()
        return sorted(body.left() + x for x in self.axis.xs_of_stations(stations, body.width()))

    def place_at(self, x: float) -> float:
        """Return the place at *x* in the widget, kept on the course, metres."""
        body = self.body()
        at_m = self.axis.distance_at(x - body.left(), body.width())
        length_m = self.shown.profile.length_m if self.shown.profile is not None else 0.0
        return min(max(at_m, 0.0), length_m)

    def place_without_stop(self, x: float, from_m: float) -> float:
        """Return the place at *x* if there were no stop at *from_m*, where something lies that is
        dragged to *x*: by the clock it would else not move before the stop is over.
        """
        target, body = self.document.before.target, self.body()
        if self.axis.measure != "clock" or target is None:
            return self.place_at(x)
        at_s = self.axis.time_at(x - body.left(), body.width())
        arrive_s = target.arrival_s(from_m)
        if at_s > arrive_s:
            at_s += target.departure_s(from_m) - arrive_s
        length_m = self.shown.profile.length_m if self.shown.profile is not None else 0.0
        return min(max(target.distance_at(at_s), 0.0), length_m)

    def renew(self, before: Outlook, after: Outlook) -> None:
        """Repaint if what this lane shows may have changed."""
        if before.sections is not after.sections:
            self.update()

    def has_ground_changed(self, before: Outlook, after: Outlook) -> bool:
        """Whether the course, the race or where they lie along x changed.

        Stations too where their lines lie under what the lane shows; else see `renew_lines`.
        """
        if before.profile is not after.profile or before.project.race is not after.project.race:
            return True
        if not self.lines_over and have_stations_changed(before, after):
            return True
        return self.axis.measure == "clock" and before.target is not after.target

    def renew_lines(self, before: Outlook, after: Outlook) -> None:
        """Draw the lines of the stations anew, over what was painted before: where some moved."""
        if not self.lines_over or not have_stations_changed(before, after):
            return
        if self.axis.measure == "clock":
            super().update()
            return
        body = self.body()
        for at_m in _stations_m(before) ^ _stations_m(after):
            x = round(self.x_of(at_m, body))
            super().update(QRect(x - 1, 0, 3, self.height()))

    def on_view_changed(self) -> None:
        """Repaint, as another stretch of the race is in view."""
        self.update()

    def update(self, *where: object) -> None:
        self.is_stale, self.waits = True, False
        super().update(*where)

    def wait(self) -> None:
        """Show what was painted last until the next `update`."""
        self.waits = True
        self.waits_since_s = min(self.waits_since_s, time.perf_counter())

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.is_stale, self.waits = True, False
        super().resizeEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        picture = self._kept_picture()
        if self.is_stale and not self.waits:
            self._paint_anew(picture)
        with QPainter(self) as painter:
            painter.drawPixmap(0, 0, picture)
            if self.lines_over:
                self.paint_station_lines(painter, self.body())
            if self.hasFocus():
                self.paint_focus(painter)

    def _kept_picture(self) -> QPixmap:
        ratio = self.devicePixelRatioF()
        size = self.size() * ratio
        picture = self._painted
        if picture is None or picture.size() != size or picture.devicePixelRatio() != ratio:
            picture = self._painted = QPixmap(size)
            picture.setDevicePixelRatio(ratio)
            self.is_stale, self.waits = True, False
        return picture

    def _paint_anew(self, picture: QPixmap) -> None:
        begun_s = time.perf_counter()
        self.paint_picture(picture)
        self.paint_s = time.perf_counter() - begun_s
        self.is_stale, self.waits_since_s = False, math.inf

    def paint_picture(self, picture: QPixmap) -> None:
        """Draw into *picture* what the lane shows, without the lines that go over it."""
        picture.fill(theme().colours["paper"])
        with QPainter(picture) as painter:
            self._paint_under_lines(painter)

    def paint_whole(self, painter: QPainter) -> None:
        """Draw the lane from its upper left corner on, on a screen or anything else."""
        self._paint_under_lines(painter)
        if self.lines_over:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
            self.paint_station_lines(painter, self.body())

    def _paint_under_lines(self, painter: QPainter) -> None:
        body, self._sentence = self.body(), None
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.paint_ground(painter, body)
        self.paint_head(painter)
        self.paint_body(painter, body)

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        super().paint_ground(painter, body)
        if not self.lines_over:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
            self.paint_station_lines(painter, body)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)

    def paint_station_lines(self, painter: QPainter, body: QRectF) -> None:
        """Draw the aid stations through the lane."""
        course = self.shown.project.course
        if course is None or self.shown.profile is None:
            return
        colours = theme().colours
        painter.setPen(QPen(colours["strong_line"], Stroke.HAIR, DASHED))
        self._paint_lines(painter, body, self.axis.xs_of_stations(course.stations, body.width()))
        was = self.document.before.project.course
        if was is None or was.stations is course.stations:
            return
        # Where stations in the hand are as the plan is kept.
        left_m = {station.at_m for station in was.stations}
        left_m.difference_update(station.at_m for station in course.stations)
        painter.setPen(QPen(colours["ink"], Stroke.HAIR, DOTTED))
        xs = [self.axis.x_of_distance(at_m, body.width()) for at_m in left_m]
        self._paint_lines(painter, body, xs)

    def _paint_lines(self, painter: QPainter, body: QRectF, xs: list[float]) -> None:
        left, right, foot = body.left(), body.right(), float(self.height())
        whole = [x for x in (round(left + x) for x in xs) if left <= x <= right]
        said = self._sentence
        if said is None:
            painter.drawLines([QLineF(x, 0.0, x, foot) for x in whole])
            return
        # Where the lane says why it is empty they run round the sentence.
        for x in whole:
            if said.left() <= x <= said.right():
                painter.drawLine(QLineF(x, 0.0, x, said.top()))
                painter.drawLine(QLineF(x, said.bottom(), x, foot))
            else:
                painter.drawLine(QLineF(x, 0.0, x, foot))

    @property
    def stations(self) -> tuple[AidStation, ...]:
        """The stations shown, on trial or kept."""
        course = self.shown.project.course
        return course.stations if course is not None else ()

    def paint_focus(self, painter: QPainter) -> None:
        # Unsmoothed and level: a smooth dotted frame costs more than the whole lane.
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(
            QPen(theme().colours["teal"], Stroke.HEAVY if self.is_carrying else Stroke.HAIR)
        )
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(self.body().adjusted(-1, -0.5, 1, 0.5))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)

    def add_deeds(self, menu: QMenu, at: QPointF | None) -> None:
        """Put into *menu* what can be done *at* a place, by keys with what is chosen."""

    @property
    def is_carrying(self) -> bool:
        """Whether something is being carried in this lane."""
        return False

    def paint_empty(self, painter: QPainter, body: QRectF, text: str) -> None:
        """Say why there is nothing in the lane."""
        look = theme()
        painter.setFont(look.font(Pt.NOTE))
        painter.setPen(look.colours["soft"])
        room = body.adjusted(8, 0, -8, 0)
        painter.drawText(room, int(Qt.AlignmentFlag.AlignVCenter), text)
        high = look.metrics(Pt.NOTE).height()
        self._sentence = QRectF(room.left(), 0.0, look.width(text, Pt.NOTE), high)
        self._sentence.moveTop(room.center().y() - high / 2)

    def wheelEvent(self, event: QWheelEvent) -> None:
        self.wheel(event)

    def wheel(self, event: QWheelEvent, left: float = 0.0) -> None:
        """Zoom or pan by a turn of the wheel over something that begins at *left*."""
        body, axis = self.body(), self.axis
        turns = (event.angleDelta().y() or event.angleDelta().x()) / 120.0
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._zoom(turns, (left + event.position().x() - body.left()) / body.width())
        else:
            axis.pan(-turns * PAN_STEP, body.width())
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        turns = {"+": 1.0, "=": 1.0, "-": -1.0, "0": -WHOLE_RACE_TURNS}.get(event.text())
        if turns is None:
            super().keyPressEvent(event)
        else:
            self._zoom(turns, self._share_of_choice())

    def place_of_choice(self) -> float | None:
        """Return where what is chosen in this lane lies, None if nothing is; metres."""
        return None

    def _share_of_choice(self) -> float:
        at_m, body = self.place_of_choice(), self.body()
        if at_m is None:
            return 0.5
        x = self.axis.x_of_distance(at_m, body.width()) / body.width()
        return x if 0.0 <= x <= 1.0 else 0.5

    def _zoom(self, turns: float, share: float) -> None:
        """Zoom by *turns* of the wheel about the point at *share* of the view."""
        wide = self.body().width()
        self.axis.zoom(ZOOM_STEP**turns, min(max(share, 0.0), 1.0) * wide, wide)

"""The real window at work: drags through it, and how long it stands still during an import."""

from __future__ import annotations

import gc
import time
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from datetime import timedelta
from itertools import pairwise
from pathlib import Path

from bench_files import GPX_POINTS, gpx_file
from bench_measure import Goal, Row, Work, by_turns, percentile, timed
from bench_plans import TODAY, course, crowded_project
from msgspec.structs import replace
from PySide6.QtCore import QEvent, QEventLoop, QObject, QPoint, QRectF, Qt, QTimer
from PySide6.QtGui import QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QGraphicsItem,
    QGraphicsRectItem,
    QGraphicsScene,
    QGraphicsSimpleTextItem,
    QGraphicsView,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.raceday.profile_lane import ProfileLane
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane import Lane, Scale
from ultraplanner_gui.widgets.rows import Rows
from ultraplanner_gui.window.course_deeds import read_for_plan
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.workplace import Workplace
from ultraplanner_gui.wording.words import Words

SIZE = (1920, 1080)
FRAME_MS = 16.0
EVENTS = 171
MOVES_A_TURN = 40
TICK_MS = 4
LEFT = Qt.MouseButton.LeftButton


class Paints(QObject):
    """Counts the paint events of some widgets."""

    def __init__(self, widgets: Sequence[QWidget]) -> None:
        super().__init__()
        self.of: Counter[str] = Counter()
        self._names = {id(widget): _name(widget) for widget in widgets}
        for widget in widgets:
            widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Paint:
            self.of[self._names[id(watched)]] += 1
        return False


class Stage:
    """The window with the large project in it, the mouse in our hand."""

    def __init__(self) -> None:
        self.window = MainWindow(Settings())
        self.window.show_document(Document(project=crowded_project(), today=lambda: TODAY))
        self.window.resize(*SIZE)
        self.window.show()
        settle()
        # As the program does once its window stands.
        gc.freeze()
        assert self.window.workplace is not None
        self.place: Workplace = self.window.workplace
        drawn = [w for w in self.window.findChildren(Lane) if w.isVisible()]
        rows = [w for w in self.window.findChildren(Rows) if w.isVisible()]
        self.paints = Paints([*drawn, *rows, self.place.header])
        self.unpainted = 0
        self.waiting: Counter[str] = Counter()

    def frame(self, work: Work, lead: str) -> Work:
        """Return *work* with everything it leads to painted, the widget *lead* at least once."""

        def run() -> None:
            before = self.paints.of[lead]
            work()
            until = time.perf_counter() + 0.25
            QApplication.processEvents()
            while self.paints.of[lead] == before and time.perf_counter() < until:
                QApplication.processEvents()
            self.unpainted += self.paints.of[lead] == before
            # What a new size or place of a widget asks to be painted once more.
            QApplication.processEvents()

        return run

    def drag(self, lead: Lane, path: Sequence[QPoint], floor: Work) -> tuple[list[float], ...]:
        """Drag along *path* in *lead*, *floor* by turns; return the times of both.

        A turn is many moves: after each the floor would paint what the drag left for later.
        """
        QTest.mousePress(lead, LEFT, pos=path[0])
        steps = iter(path[1:])
        move = self.frame(lambda: QTest.mouseMove(lead, next(steps)), _name(lead))
        for _ in range(10):
            move(), floor()
        self.paints.of.clear()
        self.unpainted = 0
        self.waiting.clear()
        ours: list[float] = []
        busy: list[float] = []
        floors: list[float] = []
        left = len(path) - 11
        while left > 0:
            turn = min(left, MOVES_A_TURN)
            left -= turn
            for _ in range(turn):
                begin = time.thread_time()
                ours.append(timed(move))
                busy.append((time.thread_time() - begin) * 1000.0)
                self.waiting.update(_name(lane) for lane in self.place.raceday.lanes if lane.waits)
            # Counted for the drag alone.
            counted = self.paints.of.copy()
            floors += [timed(floor) for _ in range(turn)]
            self.paints.of = counted
        QTest.mouseRelease(lead, LEFT, pos=path[-1])
        settle()
        return ours, floors, busy

    def painted(self, events: int) -> str:
        """Return how often each widget was painted per event."""
        if self.unpainted:
            return f"NOT PAINTED in {self.unpainted} events"

        def listed(counts: Counter[str]) -> str:
            return ", ".join(f"{name} {n / events:.2f}" for name, n in sorted(counts.items()))

        waiting = f"; left to a later move: {listed(self.waiting)}" if self.waiting else ""
        return f"{listed(self.paints.of)}{waiting}"


def rows(folder: Path) -> Iterator[Row]:
    """Measure the pauses of an import and three drags."""
    stage = Stage()
    yield _session_row(stage)
    yield from _race_rows(stage)
    yield _view_row()
    yield _pause_row(stage.window, gpx_file(folder))
    stage.window.close()


def settle() -> None:
    """Let everything be laid out and painted."""
    for _ in range(20):
        QApplication.processEvents()


# ---------------------------------------------------------------- drags


def _session_row(stage: Stage) -> Row:
    grid = stage.place.buildup.grid
    day = TODAY + timedelta(days=12)
    # A long run with practice carbs: all four lanes have to follow.
    session = next(s for s in crowded_project().block.sessions if s.day >= day and s.carb_g_per_h)
    tile = grid.cells.tile(session.key)
    start = tile.rect.center().toPoint()
    # Every move enters another week, so that grid and lanes all change.
    days = [day + timedelta(days=8 * k % 49) for k in range(EVENTS)]
    path = [start, *(grid.cells.cell(d).center().toPoint() for d in days)]
    view = _bare_view(stage.place.buildup.size().toTuple())
    ours, floor, busy = stage.drag(grid, path, view)
    return _drag_row(
        f"drag of a session, {len(crowded_project().block.sessions)} tiles",
        "bare QGraphicsView, 300 items, as large",
        (ours, floor, busy),
        stage.painted(len(ours)),
    )


def _race_rows(stage: Stage) -> Iterator[Row]:
    lanes = [lane for lane in stage.place.raceday.findChildren(RaceLane) if lane.isVisible()]
    rows = [rows for rows in stage.place.ledger.findChildren(Rows) if rows.isVisible()]
    target, fuel = stage.place.raceday.target, stage.place.raceday.fuel

    def repaint() -> None:
        for widget in (*lanes, *rows, stage.place.header):
            widget.update()

    floor = stage.frame(repaint, _name(target))
    middle = target.body().center().x()
    top = _grip(target, Qt.CursorShape.SizeVerCursor, middle - 60.0)
    path = [top + QPoint(0, 1 + k % 8) for k in range(EVENTS)]
    times = stage.drag(target, [top, *path], floor)
    name = "the same lanes repainted only"
    yield _drag_row("drag of a target", name, times, stage.painted(len(times[0])))
    token = _grip(fuel, Qt.CursorShape.SizeHorCursor, middle)
    path = [token + QPoint(5 + 3 * (k % 40), 0) for k in range(EVENTS)]
    floor = stage.frame(repaint, _name(fuel))
    times = stage.drag(fuel, [token, *path], floor)
    yield _drag_row("drag of a token", name, times, stage.painted(len(times[0])))
    yield from _head_rows(stage, repaint)


def _head_rows(stage: Stage, repaint: Work) -> Iterator[Row]:
    """Drag a station by its name, and a stop by its grip."""
    head, name = stage.place.raceday.head, "the same lanes repainted only"
    floor = stage.frame(repaint, _name(head))
    station = head.stations[len(head.stations) // 2]
    rect = next(rect for label, rect in head.placed(head.body()) if label.key == station.key)
    start = rect.center().toPoint()
    # Within its own leg, a new place on every move: out of reach of its old one, which holds it.
    path = [start + QPoint(9 + 7 * (k % 6), 0) for k in range(EVENTS)]
    times = stage.drag(head, [start, *path], floor)
    yield _drag_row("station drag", name, times, stage.painted(len(times[0])))
    spots = head.stop_spots(head.body())
    spot = next(s for s in spots if s.station.key == station.key)
    start = QPoint(round(spot.right), round(head.bar_top) + 6)
    path = [start + QPoint(5 + 8 * (k % 9), 0) for k in range(EVENTS)]
    times = stage.drag(head, [start, *path], floor)
    yield _drag_row("drag of a stop", name, times, stage.painted(len(times[0])))


def _drag_row(name: str, floor_name: str, times: tuple[list[float], ...], painted: str) -> Row:
    ours, floor, busy = times
    cpu = percentile(busy, 0.95)
    return Row(
        f"{name}, {SIZE[0]}x{SIZE[1]}",
        floor_name,
        ours,
        floor,
        (Goal("p95", FRAME_MS),),
        note=f"CPU p95 {cpu:.1f} ms; paints per event: {painted}",
        more={"cpu_p95": round(cpu, 3)},
    )


def _grip(lane: Lane, shape: Qt.CursorShape, from_x: float) -> QPoint:
    """Return where the pointer over *lane* says that something can be dragged."""
    body = lane.body()
    for x in range(round(from_x), round(body.right())):
        for y in range(round(body.top()), round(body.bottom()), 2):
            QTest.mouseMove(lane, QPoint(x, y))
            if lane.cursor().shape() is shape:
                return QPoint(x, y)
    raise RuntimeError(f"nothing to drag in {_name(lane)}")


def _bare_view(size: tuple[int, int]) -> Work:
    """Return a drag event of the simplest scene there is: 300 items, all of it repainted."""
    view = QGraphicsView()
    view.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
    view.setScene(QGraphicsScene(view))
    view.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.FullViewportUpdate)
    view.setRenderHint(QPainter.RenderHint.Antialiasing)
    view.resize(*size)
    view.setSceneRect(QRectF(0, 0, *size))
    items = []
    for k in range(300):
        item = QGraphicsRectItem(0, 0, 48, 24)
        item.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIsMovable)
        item.setPos(10 + k % 25 * (size[0] - 80) / 25, 10 + k // 25 * (size[1] - 60) / 12)
        QGraphicsSimpleTextItem(f"{k} km", item).setPos(4, 4)
        view.scene().addItem(item)
        items.append(item)
    view.show()
    settle()
    paints = Paints([view.viewport()])
    at = view.mapFromScene(items[0].sceneBoundingRect().center())
    QTest.mousePress(view.viewport(), LEFT, pos=at)
    turn = iter(range(10**9))

    def move() -> None:
        before = paints.of.total()
        QTest.mouseMove(view.viewport(), at + QPoint(7 * (next(turn) % 90), 5))
        until = time.perf_counter() + 0.25
        QApplication.processEvents()
        while paints.of.total() == before and time.perf_counter() < until:
            QApplication.processEvents()

    return move


# ---------------------------------------------------------------- zoom and pan


class _AxesOnly(RaceLane):
    """A lane of the race that paints its ground, head and scale and nothing else."""

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        scale = Scale(0.0, 1.0, body.top(), body.bottom())
        self.paint_ticks(painter, body, scale, [(v, f"{v:g}") for v in (0.25, 0.5, 0.75)])


def _view_row() -> Row:
    project = replace(crowded_project(), course=course(GPX_POINTS, 2.0))
    document = Document(project=project, today=lambda: TODAY)
    selection, axis, words = Selection(), RaceAxis(), Words()
    axis.show(document.shown)
    lanes = [
        of("Profile", "m", 110.0, document, selection, axis, lambda: words)
        for of in (ProfileLane, _AxesOnly)
    ]
    for lane in lanes:
        lane.resize(SIZE[0] - 300, 220)
        lane.show()
    settle()
    turn = iter(range(10**9))
    whole_m = document.shown.profile.length_m

    def show(lane: Lane) -> None:
        # In, out and along, another stretch each time.
        k = next(turn)
        wide_m = whole_m / (1.0 + k % 13)
        low_m = (whole_m - wide_m) * (k % 7) / 7.0
        axis.view(low_m, low_m + wide_m)
        lane.repaint()

    times = by_turns(lambda: show(lanes[0]), lambda: show(lanes[1]), 80)
    for lane in lanes:
        lane.close()
    return Row(
        f"zoom and pan of the profile, {GPX_POINTS:,} points",
        "a frame with axes only",
        *times,
        (Goal("ratio", 3.0),),
    )


# ---------------------------------------------------------------- pauses


def _pause_row(window: MainWindow, path: Path) -> Row:
    busy: list[float] = []
    for _ in range(3):
        busy += _gaps(lambda done: _import(window, path, done))
    idle = _gaps(lambda done: QTimer.singleShot(1000, done))
    return Row(
        "pause of the window while importing",
        f"the {TICK_MS} ms timer alone",
        busy,
        idle,
        (Goal("p95", 20.0), Goal("max", 50.0)),
        note=f"{len(busy)} ticks in three imports, longest {max(busy):.1f} ms",
    )


def _import(window: MainWindow, path: Path, done: Callable[[], None]) -> None:
    window.jobs.done.connect(lambda _ticket, _result: done())
    window.jobs.submit(read_for_plan, path)


def _gaps(start: Callable[[Callable[[], None]], None]) -> list[float]:
    """Return the times between ticks of a timer from *start* until it calls back, ms."""
    loop, ticks = QEventLoop(), [time.perf_counter()]
    timer = QTimer()
    timer.setTimerType(Qt.TimerType.PreciseTimer)
    timer.timeout.connect(lambda: ticks.append(time.perf_counter()))
    timer.start(TICK_MS)
    start(loop.quit)
    loop.exec()
    timer.stop()
    ticks.append(time.perf_counter())
    return [1000.0 * (b - a) for a, b in pairwise(ticks)]


def _name(widget: QWidget) -> str:
    return type(widget).__name__

"""The hand on the head of race day: it moves stations, stops and the start, and folds legs."""

from __future__ import annotations

from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QObject, QPointF, Qt, Slot
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QMenu

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.stations import MoveStart, MoveStation, SetStop
from ultraplanner_gui.engine.legs import Leg, leg_at, legs_of
from ultraplanner_gui.plan.course import AidStation
from ultraplanner_gui.raceday.leg_bar import BAR_PX, GRIP_PX, stop_px_per_s
from ultraplanner_gui.raceday.snap import SLACK_PX, is_free
from ultraplanner_gui.raceday.start_drag import STEP_S, shifted, started
from ultraplanner_gui.widgets.carry import Carry
from ultraplanner_gui.widgets.theme import theme

if TYPE_CHECKING:
    from ultraplanner_gui.raceday.station_head import StationHead

#: The key the start has among the stations, which none of them can have.
START = "\x00start"
NEAR_PX = 60.0
KEY_STEP_M = 100.0
KEY_STOP_S, LONG_STOP_S = 60.0, 300.0
LONG_START_S = 1800.0
PICKS = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)
WAYS: dict[int, tuple[int, int]] = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, 1),
    Qt.Key.Key_Down: (0, -1),
}


class Grip(NamedTuple):
    """What can be taken hold of: a "station", a "stop", the "start", a "fold", or "" nothing."""

    kind: str = ""
    key: str = ""


class HeadHand(QObject):
    """Picks up, moves and puts down what stands in *head*."""

    def __init__(self, head: StationHead) -> None:
        super().__init__(head)
        self._head = head
        self._carry = Carry(head.document)
        self._held = Grip()
        self._by_mouse, self._is_dragging = False, False
        self._from = QPointF()
        self._from_x = 0.0
        self._station: AidStation | None = None
        self._start: datetime | None = None
        self.hot = Grip()
        self.chosen: str | None = None
        head.selection.changed.connect(self._on_selected)

    @property
    def is_on(self) -> bool:
        """Whether something is being carried."""
        return self._carry.is_on

    @property
    def is_on_stop(self) -> bool:
        """Whether it is a stop that is being carried."""
        return self._carry.is_on and self._held.kind == "stop"

    # Mouse

    def press(self, event: QMouseEvent) -> None:
        """Take hold of what is under the pointer; a fold is folded at once."""
        if self._carry.is_on:
            self.put_back()
        grip = self.grip_at(event.position())
        if grip.kind == "fold":
            self._head.fold_wanted.emit(grip.key)
            return
        if not grip.kind:
            self._choose_nearest(event.position().x())
            return
        self.choose(grip.key)
        self._pick_up(grip)
        self._by_mouse, self._is_dragging = True, False
        self._from = event.position()

    def move(self, event: QMouseEvent) -> None:
        """Move what is held, or show what could be taken hold of."""
        if not (self._carry.is_on and self._by_mouse):
            self._warm(self.grip_at(event.position()))
            return
        by = event.position().x() - self._from.x()
        if self._is_dragging or abs(by) >= theme().px(SLACK_PX):
            self._is_dragging = True
            self._drag(by, is_free(event))

    def release(self) -> None:
        """Put down what the mouse holds."""
        if self._by_mouse:
            self._by_mouse = False
            self._put_down()

    def cool(self) -> None:
        """Show nothing that could be taken hold of: the pointer is elsewhere."""
        if not self._carry.is_on:
            self._warm(Grip())

    def grip_at(self, at: QPointF) -> Grip:
        """Return what can be taken hold of at a place."""
        head, body = self._head, self._head.body()
        if head.is_strip or head.shown.target is None:
            return Grip()
        top = head.bar_top
        if top <= at.y() <= top + theme().px(BAR_PX) + 1.0:
            return self._grip_in_bar(at)
        for label, rect in head.placed(body):
            if label.key is not None and rect.contains(at):
                return Grip("start" if label.key == START else "station", label.key)
        return Grip()

    def _grip_in_bar(self, at: QPointF) -> Grip:
        body, reach = self._head.body(), theme().px(GRIP_PX)
        stops = [
            (abs(at.x() - spot.right), spot.station.key)
            for spot in self._head.stop_spots(body)
            if spot.left - 1.0 <= at.x() <= spot.right + reach
        ]
        if stops:
            return Grip("stop", min(stops)[1])
        for leg in self._head.leg_spots(body):
            if leg.box is not None and leg.box.contains(at):
                return Grip("fold", leg.leg.key)
        return Grip()

    def _warm(self, grip: Grip) -> None:
        if grip != self.hot:
            self.hot = grip
            shapes = {"": Qt.CursorShape.ArrowCursor, "fold": Qt.CursorShape.PointingHandCursor}
            if not self._head.is_strip:
                self._head.setCursor(shapes.get(grip.kind, Qt.CursorShape.SizeHorCursor))
            self._head.update()

    def _drag(self, by: float, free: bool) -> None:
        head, body = self._head, self._head.body()
        if self._held.kind == "start" and self._start is not None:
            self._show(MoveStart(started(head, self._start, by, free), self._carry.gesture))
        elif self._station is not None and self._held.kind == "stop":
            px_per_s = stop_px_per_s(head.axis, body.width())
            was_s = self._station.stop_s
            stop_s = head.snap.stop(was_s + by / px_per_s, px_per_s, free, was_s)
            self._show(SetStop(self._held.key, stop_s, self._carry.gesture))
        elif self._station is not None:
            at_m = head.place_without_stop(self._from_x + by, self._station.at_m)
            others = {s.key for s in head.stations}
            at_m = head.snap.place(at_m, body.width(), free, self._station.at_m, others)
            self._show(MoveStation(self._held.key, at_m, self._carry.gesture))

    # Keys

    def key(self, event: QKeyEvent) -> bool:
        """Do what a key says; return whether it says anything here."""
        key, head = event.key(), self._head
        if head.shown.target is None:
            return False
        is_long = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key == Qt.Key.Key_Escape and self._carry.is_on:
            self.put_back()
        elif key in PICKS:
            self._pick_up_or_put_down()
        elif key in WAYS and self._carry.is_on:
            if not self._by_mouse:
                self._step(*WAYS[key], is_long)
        elif key in WAYS and WAYS[key][0]:
            self._choose_beside(WAYS[key][0])
        elif key == Qt.Key.Key_F and not self._carry.is_on:
            self._fold_beside(ahead=not is_long)
        else:
            return False
        return True

    def choose(self, key: str) -> None:
        """Choose a station, or the start, and bring it into view."""
        head = self._head
        if key == START:
            head.selection.clear()
            at_m: float | None = 0.0
        else:
            at_m = next((s.at_m for s in head.stations if s.key == key), None)
        self.chosen = key
        if at_m is not None:
            head.axis.reveal(at_m, at_m)
        if key != START:
            head.selection.choose("station", key)
        head.setAccessibleDescription(self._said(key))
        head.update()

    def fill(self, menu: QMenu, at: QPointF | None) -> None:
        """Put into *menu* what can be done with the station *at* a place, or the one chosen."""
        grip = self.grip_at(at) if at is not None else Grip()
        if grip.kind in ("station", "stop", "start"):
            self.choose(grip.key)
        elif at is not None:
            self._choose_nearest(at.x())
        if self.chosen in self._keys():
            menu.addAction(self.tr("Move with the arrow keys"), self._pick_up_for_keys)
        self._add_fold(menu, ahead=True)
        self._add_fold(menu, ahead=False)

    def _add_fold(self, menu: QMenu, ahead: bool) -> None:
        leg = self._leg_beside(ahead)
        if leg is None:
            return
        is_folded = leg.key in self._head.folded
        text = self.tr("Unfold {0}") if is_folded else self.tr("Fold away {0}")
        wanted = partial(self._head.fold_wanted.emit, leg.key)
        menu.addAction(text.format(self._leg_name(leg)), wanted)

    def _pick_up_for_keys(self) -> None:
        self._head.setFocus(Qt.FocusReason.OtherFocusReason)
        if not self._carry.is_on:
            self._pick_up_or_put_down()

    def choose_some(self) -> None:
        """Choose what was chosen last, or the start."""
        if self._head.shown.target is not None:
            self.choose(self.chosen if self.chosen in self._keys() else START)

    def forsake(self) -> None:
        """Put back what the keys carried, now that they go elsewhere."""
        if self._carry.is_on and not self._by_mouse:
            self.put_back()

    def put_back(self) -> None:
        """Forget the trial."""
        self._by_mouse = False
        self._carry.put_back()
        self._let_go()

    def _keys(self) -> list[str]:
        return [START, *(s.key for s in self._head.stations)]

    def _choose_beside(self, way: int) -> None:
        keys = self._keys()
        index = keys.index(self.chosen) + way if self.chosen in keys else 0
        self.choose(keys[min(max(index, 0), len(keys) - 1)])

    def _choose_nearest(self, x: float) -> None:
        """Choose the station whose line is nearest."""
        head, body = self._head, self._head.body()
        away = [(abs(head.x_of(s.at_m, body) - x), s.key) for s in head.stations]
        gap, key = min(away, default=(theme().px(NEAR_PX), ""))
        if gap < theme().px(NEAR_PX):
            self.choose(key)

    def _fold_beside(self, ahead: bool) -> None:
        leg = self._leg_beside(ahead)
        if leg is not None:
            self._head.fold_wanted.emit(leg.key)

    def _leg_beside(self, ahead: bool) -> Leg | None:
        """Return the leg that begins at what is chosen, or that ends there."""
        at_m = next((s.at_m for s in self._head.stations if s.key == self.chosen), 0.0)
        outlook = self._head.shown
        if ahead:
            return leg_at(outlook, at_m)
        return next((leg for leg in legs_of(outlook) if leg.end_m == at_m), None)

    def _pick_up_or_put_down(self) -> None:
        if self._carry.is_on:
            self._by_mouse = False
            self._put_down()
            return
        self.choose_some()
        is_start = self.chosen == START
        self._pick_up(Grip("start" if is_start else "station", self.chosen or ""))

    def _step(self, right: int, up: int, is_long: bool) -> None:
        head, held = self._head, self._held
        if held.kind == "start":
            step_s = LONG_START_S if is_long else STEP_S
            start = shifted(head.shown.project.race.start, right * step_s)
            if right:
                self._show(MoveStart(start, self._carry.gesture))
            return
        station = next((s for s in head.stations if s.key == held.key), None)
        if station is None:
            return
        if up:
            self._turn_to("stop")
            step_s = LONG_STOP_S if is_long else KEY_STOP_S
            stop_s = max(round(station.stop_s / step_s + up) * step_s, 0.0)
            edit: Edit = SetStop(station.key, stop_s, self._carry.gesture)
        else:
            self._turn_to("station")
            step_m = head.words().unit_m if is_long else KEY_STEP_M
            at_m = round(station.at_m / step_m + right) * step_m
            edit = MoveStation(station.key, at_m, self._carry.gesture)
        self._show(edit)

    # In the hand

    def said_in_hand(self) -> tuple[str | None, tuple[str, ...]]:
        """Return whose label says what is in the hand, and that, the fullest first: now and
        before, and now alone.
        """
        words, head = self._head.words(), self._head
        was, shown = head.document.before.project.race.start, head.shown.project.race.start
        if was != shown:
            now = words.clock(shown)
            return START, (self._was(now, words.clock(was)), now)
        if not self._carry.is_on or head.document.shown is head.document.before:
            return None, ()
        station = next((s for s in head.stations if s.key == self._held.key), None)
        if station is None or self._station is None:
            return None, ()
        if self._held.kind == "stop":
            bare, before = (words.duration(s.stop_s) for s in (station, self._station))
            now = self.tr("stop {0}").format(bare)
            return station.key, (self._was(now, before), self._was(bare, before), now)
        now, before = (words.distance(s.at_m, 1) for s in (station, self._station))
        return station.key, (self._was(now, before), now)

    def said_at(self, at: QPointF) -> str:
        """Return what can be taken hold of at a place, and how, in words; empty for nothing."""
        grip = self.grip_at(at)
        if grip.kind == "fold":
            return self._fold_said(grip.key)
        said = self._said(grip.key) if grip.kind else ""
        free = self.tr("It snaps to climbs and round figures; hold Alt to free it.")
        if grip.kind == "start":
            how = self.tr("Drag to start earlier or later.")
        elif grip.kind == "stop":
            how = self.tr("Drag to stop longer or shorter.")
        else:
            how = self.tr("Drag to move it along the course; its cutoff stays with it.")
        return f"{said}\n{how} {free}" if grip.kind else ""

    def _was(self, now: str, before: str) -> str:
        return self.tr("{0}, was {1}").format(now, before) if now != before else now

    def _fold_said(self, key: str) -> str:
        words, head = self._head.words(), self._head
        leg = next((leg for leg in legs_of(head.shown) if leg.key == key), None)
        if leg is None:
            return ""
        text = self.tr("Unfold {0}") if key in head.folded else self.tr("Fold away {0}")
        length, time = words.distance(leg.length_m, 1), words.duration(leg.running_s)
        return f"{text.format(self._leg_name(leg))}\n{length}, {time}"

    def _leg_name(self, leg: Leg) -> str:
        begins = leg.begins if leg.begins is not None else self.tr("Start")
        ends = leg.ends if leg.ends is not None else self.tr("Finish")
        return self.tr("{0} to {1}").format(begins, ends)

    def _said(self, key: str) -> str:
        head, words = self._head, self._head.words()
        race = head.shown.project.race
        if key == START:
            return self.tr("Start {0}").format(words.clock(race.start))
        station = next((s for s in head.stations if s.key == key), None)
        if station is None:
            return ""
        parts = [station.name, words.distance(station.at_m, 1)]
        if station.cutoff_s is not None:
            by = words.clock(race.clock(station.cutoff_s))
            parts.append(self.tr("cutoff {0}").format(by))
        parts.append(self.tr("stop {0}").format(words.duration(station.stop_s)))
        return ", ".join(parts)

    def _pick_up(self, grip: Grip) -> None:
        head = self._head
        project = head.document.project
        self._held, self._start = grip, project.race.start
        course = project.course
        stations = course.stations if course is not None else ()
        self._station = next((s for s in stations if s.key == grip.key), None)
        if self._station is not None:
            self._from_x = head.x_of(self._station.at_m, head.body())
        self._carry.pick_up()
        head.update()

    def _turn_to(self, kind: str) -> None:
        """Let the keys change something else of the same station; what they changed is kept."""
        if kind != self._held.kind:
            if self._head.document.shown is not self._head.document.before:
                self._carry.put_down()
            self._pick_up(Grip(kind, self._held.key))

    def _show(self, edit: Edit) -> None:
        self._carry.show(edit)

    def _put_down(self) -> None:
        self._carry.put_down()
        self._let_go()

    def _let_go(self) -> None:
        self._held, self._is_dragging = Grip(), False
        self._head.snap.let_go()
        self._head.update()

    @Slot()
    def _on_selected(self) -> None:
        selection = self._head.selection
        if selection.kind == "station":
            self.chosen = selection.key
            self._head.setAccessibleDescription(self._said(selection.key))
        elif selection.kind or self.chosen != START:
            self.chosen = None

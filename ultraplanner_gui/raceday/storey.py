"""Race day, the lower storey: one axis, by distance or clock, shared by every lane."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QPointF, QSize, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QSizePolicy, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.engine.legs import Leg, leg_at
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.raceday import at_cursor
from ultraplanner_gui.raceday.clock_lanes import FootLane, InHandLane
from ultraplanner_gui.raceday.fluid_lane import FluidLane
from ultraplanner_gui.raceday.folds import Folds
from ultraplanner_gui.raceday.fuel_lane import FuelLane
from ultraplanner_gui.raceday.glycogen_lane import GlycogenLane
from ultraplanner_gui.raceday.light_lane import LightLane
from ultraplanner_gui.raceday.line_view import LineView
from ultraplanner_gui.raceday.profile_lane import ProfileLane
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.raceday.snap import Snap
from ultraplanner_gui.raceday.snap_mark import SnapMark
from ultraplanner_gui.raceday.station_head import StationHead
from ultraplanner_gui.raceday.surface_lane import SurfaceLane
from ultraplanner_gui.raceday.target_lane import TargetLane
from ultraplanner_gui.raceday.title_row import TitleRow
from ultraplanner_gui.raceday.turns import Turns
from ultraplanner_gui.raceday.warmth_lane import WarmthLane
from ultraplanner_gui.widgets.axis import Measure, RaceAxis
from ultraplanner_gui.widgets.lane_cursor import Spot
from ultraplanner_gui.widgets.lane_stack import LaneStack, Place
from ultraplanner_gui.widgets.room import Wish
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

SECTIONS, CUTOFFS, FUEL = "Sections", "Cutoffs", "Fuel"
SURFACES = "Surfaces"
#: A step of the cursor, as a share of the view.
STEP = 0.01
#: The plan view is as wide as it is high, but takes no more than this share, and no less.
PLAN_SHARE, LEAST_PLAN_PX = 0.3, 190.0
#: Where lanes would become narrower than this beside it, the plan view stays out of sight.
LEAST_LANES_PX = 420.0


class RaceDay(QWidget):
    """Profile, targets, time in hand, light and fuel over one axis."""

    #: The user chose distance or clock.
    measure_chosen = Signal(str)
    #: The user wants every lane, and for that the whole window.
    alone_wanted = Signal()
    #: The user showed or hid the plan view.
    plan_chosen = Signal(bool)

    def __init__(
        self,
        document: Document,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._selection, self._words = document, selection, words
        self._base = document.before
        self._axis = RaceAxis(self)
        self.stack = LaneStack(self)
        self.snap = Snap(document, self._axis, words, self)
        units = words()
        shared = (document, selection, self._axis, words, self.stack, self.snap)

        def lane(of: type[RaceLane], name: str, unit: str) -> RaceLane:
            return of(name, unit, 40.0, *shared)

        self.title = self._titled()
        self.head = StationHead(*shared)
        self.profile = lane(ProfileLane, self.tr("Profile"), units.height_unit)
        self.surface = lane(SurfaceLane, self.tr("Surface"), "")
        self.target = TargetLane(*shared)
        self.in_hand = lane(InHandLane, self.tr("In hand"), self.tr("hours"))
        self.light = lane(LightLane, self.tr("Light"), "")
        self.warmth = lane(WarmthLane, self.tr("Warmth"), units.temperature_unit)
        self.fuel = FuelLane(*shared)
        self.glycogen = GlycogenLane(*shared[:-1])
        self.fluid = FluidLane(*shared[:-1])
        self.foot = lane(FootLane, "", units.distance_unit)
        self._fill_stack()
        self._cursor = self.stack.follow(
            self.title, self._spot_at, self._step_from, lambda: self.title.free_left
        )
        self._turns = Turns(self.lanes, self)
        self.folds = Folds(self.stack, document, self._axis, words, self.head, self.foot)
        self.folds.changed.connect(self._on_folded)
        self.head.fold_wanted.connect(self.folds.toggle)
        self._snap_mark = SnapMark(self.stack)
        self.snap.changed.connect(self._show_caught)
        self.plan = LineView(document, selection, words, self)
        self.plan.hide()
        self.plan.pointed.connect(self._on_plan_pointed)
        self._cursor.moved.connect(self._on_cursor_moved)
        self._is_plan_shown, self._is_strip, self._is_plan_leading = False, False, False
        box = QHBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(self.stack, 1)
        box.addWidget(self.plan)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Race day"))
        self._axis.changed.connect(self._cursor.renew_soon)
        theme().changed.connect(self._fit_plan)
        self._axis.show(document.shown)
        document.changed.connect(self._on_changed)

    def _titled(self) -> TitleRow:
        title = TitleRow(self.stack)
        title.chosen.connect(self._on_measure_chosen)
        title.plan_wanted.connect(self._on_plan_wanted)
        title.unfold_wanted.connect(self.unfold_all)
        title.room_wanted.connect(self._on_room_wanted)
        self.stack.laid_out.connect(self._show_crowded_out)
        return title

    @property
    def lanes(self) -> tuple[RaceLane, ...]:
        """Every part over the race axis, in the usual order."""
        ground = (self.profile, self.surface, self.target, self.in_hand, self.light, self.warmth)
        return (self.head, *ground, self.fuel, self.glycogen, self.fluid, self.foot)

    def choose_measure(self, measure: Measure) -> None:
        """Lay the race out by distance or by clock."""
        self._axis.choose(measure)
        self.head.fit()
        self.title.show_measure(measure)

    def leg_chosen(self) -> Leg | None:
        """Return the leg that what is selected lies in, else the one under the cursor."""
        outlook, place_m = self._document.shown, self._place_selected()
        if self._selection.kind == "section":
            found = (s for s in outlook.sections if s.key == self._selection.key)
            place_m = next(((s.start_m + s.end_m) / 2.0 for s in found), None)
        place_m = self.place_of_cursor() if place_m is None else place_m
        return None if place_m is None else leg_at(outlook, place_m)

    def unfold_all(self) -> None:
        """Unfold every leg."""
        self.folds.choose(())

    def set_strip(self, is_strip: bool) -> None:
        """Show no more than a strip, or what there is room for."""
        self._is_strip = is_strip
        self.head.set_strip(is_strip)
        self.stack.set_strip(is_strip)
        self._fit_plan()

    def show_plan(self, is_shown: bool) -> None:
        """Show the course from above beside the lanes, or hide it."""
        self._is_plan_shown = is_shown
        self.title.plan.setChecked(is_shown)
        self._fit_plan()

    @property
    def is_plan_shown(self) -> bool:
        """Whether the plan view is wanted; a strip has no room for it."""
        return self._is_plan_shown

    def place_of_cursor(self) -> float | None:
        """Return where on the course the cursor stands, None while it is nowhere."""
        if self.plan.at_m is not None:
            return self.plan.at_m
        return None if self._cursor.x is None else self.profile.place_at(self._cursor.x)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_plan()

    @Slot()
    def _fit_plan(self) -> None:
        most = max(theme().px(LEAST_PLAN_PX), PLAN_SHARE * self.width())
        self.plan.setFixedWidth(round(min(max(self.height(), theme().px(LEAST_PLAN_PX)), most)))
        has_room = self.width() - self.plan.width() >= theme().px(LEAST_LANES_PX)
        self.plan.setVisible(self._is_plan_shown and has_room and not self._is_strip)
        why = self.tr("No room for it now: make the window wider or the text smaller.")
        self.title.plan.setToolTip("" if has_room else why)

    def add_station(self) -> None:
        """Add an aid station in the middle of the chosen section, or of the longest."""
        sections = self._document.outlook.sections
        if not sections:
            return
        chosen = next((s for s in sections if s.key == self._selection.key), None)
        section = chosen or max(sections, key=lambda s: s.length_m)
        self._document.perform(
            AddStation(self.tr("New station"), round((section.start_m + section.end_m) / 2))
        )

    def minimumSizeHint(self) -> QSize:
        return self.stack.minimumSizeHint()

    def _fill_stack(self) -> None:
        own, store = Wish(0, 0, 0, 4), Wish(33, 46, 110, 9, is_spare=True)
        section = self._choose_section
        lanes = (
            self._place(self.profile, Wish(44, 110, 420, 1, fair=90), "profile", section, 2, True),
            self._place(self.surface, Wish(16, 16, 24, 10, is_spare=True), "surface", section),
            self._place(self.target, Wish(36, 58, 110, 2), "target", section, None, True),
            self._place(self.in_hand, Wish(30, 44, 90, 6), "in hand", section),
            self._place(self.light, Wish(17, 17, 22, 5), "light", section, 1),
            self._place(self.warmth, Wish(26, 34, 80, 8, is_spare=True), "warmth", section),
            self._place(self.fuel, Wish(60, 92, 150, 7), "fuel", self._choose_item),
            self._place(self.glycogen, store._replace(rank=8), "glycogen", self._choose_item),
            self._place(self.fluid, store, "fluid", self._choose_item),
        )
        self.stack.fill(
            above=(
                Place(self.title, own, gap_px=0.0),
                Place(self.head, Wish(0, 0, 0, 0), gap_px=2.0, strip_rank=0, is_core=True),
            ),
            lanes=lanes,
            below=(Place(self.foot, Wish(20, 20, 20, 3), gap_px=2.0),),
        )
        self.stack.name_strip(self.tr("Open race day"), lambda: self.head.title_middle)

    def _place(
        self,
        lane: RaceLane,
        wish: Wish,
        name: str,
        choose: Callable[[float | None], None],
        strip_rank: int | None = None,
        is_core: bool = False,
    ) -> Place:
        return Place(
            lane,
            wish,
            name,
            lane.name,
            self._table_of(lane),
            strip_rank=strip_rank,
            is_core=is_core,
            choose=choose,
            deeds=partial(self._add_deeds, lane),
        )

    def _add_deeds(self, lane: RaceLane, menu: QMenu, at: QPointF | None) -> None:
        """Put in what can be done in *lane*, and folding the leg at a place."""
        lane.add_deeds(menu, at)
        leg = (
            self.leg_chosen() if at is None else leg_at(self._document.shown, lane.place_at(at.x()))
        )
        if leg is not None:
            is_folded = leg.key in self.folds.keys
            text = self.tr("Unfold this leg") if is_folded else self.tr("Fold this leg away")
            menu.addAction(text, partial(self.folds.toggle, leg.key))

    def _table_of(self, lane: RaceLane) -> str:
        if lane in (self.fuel, self.glycogen, self.fluid):
            return FUEL
        if lane is self.surface:
            return SURFACES
        return CUTOFFS if lane is self.in_hand else SECTIONS

    # The cursor and the tables

    def _spot_at(self, x: float) -> Spot | None:
        body, outlook = self.profile.body(), self._document.shown
        if not body.left() <= x <= body.right() or outlook.target is None:
            return None
        moment_s = self._axis.time_at(x - body.left(), body.width())
        place_m = self.profile.place_at(x)
        said = at_cursor.figures(outlook, place_m, moment_s, self._words())
        return Spot(x, x, (*self._snap_said(), *said))

    def _snap_said(self) -> tuple[str, ...]:
        """Return what the thing in the hand has snapped to, and how to free it."""
        if not self.snap.is_on:
            return ()
        if self.snap.is_free:
            return (self.tr("free"),)
        caught = self.snap.caught
        if caught is None:
            return (self.tr("Alt frees"),)
        return (self.tr("at {0} (Alt frees)").format(caught.text),)

    @Slot()
    def _show_caught(self) -> None:
        """Mark through the lanes what the thing in the hand has snapped to."""
        caught, lane = self.snap.caught, self.profile
        body, x = lane.body(), None
        if caught is not None and caught.at_m is not None:
            x = lane.x_of(caught.at_m, body)
        elif caught is not None and caught.at_s is not None:
            x = lane.x_of_time(caught.at_s, body)
        is_seen = x is not None and body.left() - 1.0 <= x <= body.right() + 1.0
        top = self.head.geometry().bottom() + 1
        if caught is None or x is None or not is_seen:
            self._snap_mark.leave()
        else:
            foot = self.foot.geometry().top()
            self._snap_mark.stand_at(round(x), top, foot - top, caught.text)
        self._cursor.renew_soon()

    @Slot()
    def _on_folded(self) -> None:
        self.head.folded = self.folds.keys
        self.title.show_folds(len(self.folds.keys))
        self.head.update()
        self.head.fit()

    def _step_from(self, x: float | None, by: int) -> float:
        body = self.profile.body()
        wide = max(1.0, STEP * body.width())
        start = x if x is not None else body.center().x() - by * wide
        return min(max(start + by * wide, body.left()), body.right())

    def _choose_section(self, x: float | None) -> None:
        """Select the section at *x*; without one, that of what is selected."""
        sections = self._document.outlook.sections
        place_m = self.profile.place_at(x) if x is not None else self._place_selected()
        found = next((s for s in sections if place_m is not None and place_m <= s.end_m), None)
        if found is not None:
            self._selection.choose("section", found.key)

    def _choose_item(self, x: float | None) -> None:
        """Select the item nearest to *x*; without one, leave a selected item as it is."""
        items, body = self._document.outlook.items, self.fuel.body()
        if items and x is not None:
            at_s = self._axis.time_at(x - body.left(), body.width())
            nearest = min(items, key=lambda item: abs(item.at_s - at_s))
            self._selection.choose("item", nearest.key)

    def _place_selected(self) -> float | None:
        """Return where on the course what is selected lies, None if it does not."""
        outlook, kind, key = self._document.outlook, self._selection.kind, self._selection.key
        course, target = outlook.project.course, outlook.target
        if kind == "item" and target is not None:
            item = next((i for i in outlook.items if i.key == key), None)
            return target.distance_at(item.at_s) if item is not None else None
        if kind == "station" and course is not None:
            return next((s.at_m for s in course.stations if s.key == key), None)
        return None

    # What happens

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        self.folds.follow(after)
        # What was on trial and is kept now is the same outlook, but nothing is "before" any more.
        is_settled = self._document.before is not self._base
        self._base = self._document.before
        for lane in self.lanes:
            if is_settled:
                lane.update()
            lane.renew(before, after)
            lane.renew_lines(before, after)
        if self._document.trial_outlook is not None:
            self._turns.share_out(self._document.tried_s)
        else:
            self._turns.end()
        self._cursor.renew_soon()

    @Slot(object)
    def _on_plan_pointed(self, place_m: float | None) -> None:
        """Let the cursor of the lanes stand where the user is on the plan."""
        if place_m is None:
            self._cursor.leave()
            return
        body = self.profile.body()
        self._is_plan_leading = True
        self._cursor.point(self.profile.x_of(place_m, body))
        self._is_plan_leading = False

    @Slot(object)
    def _on_cursor_moved(self, spot: Spot | None) -> None:
        """Mark on the plan where the cursor of the lanes is."""
        if not self._is_plan_leading:
            self.plan.mark(self.profile.place_at(spot.left) if spot is not None else None)

    @Slot(bool)
    def _on_plan_wanted(self, is_wanted: bool) -> None:
        self.show_plan(is_wanted)
        self.plan_chosen.emit(is_wanted)

    @Slot()
    def _show_crowded_out(self) -> None:
        self.title.show_crowded_out(self.stack.crowded_out)

    @Slot(str)
    def _on_room_wanted(self, name: str) -> None:
        """Give the lane *name* room at the cost of others, or all of them the whole window."""
        if name:
            self.stack.make_room(name)
        else:
            self.alone_wanted.emit()

    @Slot(str)
    def _on_measure_chosen(self, measure: Measure) -> None:
        self.choose_measure(measure)
        self.measure_chosen.emit(measure)

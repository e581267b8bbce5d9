"""Race day, the lower storey: one axis, by distance or clock, shared by every lane."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.raceday.clock_lanes import FootLane, InHandLane, LightLane
from ultraplanner_gui.raceday.fuel_lane import FuelLane
from ultraplanner_gui.raceday.profile_lane import ProfileLane
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.raceday.station_head import StationHead
from ultraplanner_gui.raceday.target_lane import TargetLane
from ultraplanner_gui.widgets.axis import Measure, RaceAxis
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words


class RaceDay(QWidget):
    """Profile, targets, time in hand, light and fuel over one axis."""

    def __init__(
        self,
        document: Document,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._selection, self._words = document, selection, words
        self._axis = RaceAxis(self)
        units = words()

        def lane(of: type[RaceLane], name: str, unit: str, height_px: float) -> RaceLane:
            return of(name, unit, height_px, document, selection, self._axis, words, self)

        self._head = StationHead(document, selection, self._axis, words, self)
        self.profile = lane(ProfileLane, self.tr("Profile"), units.height_unit, 110.0)
        self.target = TargetLane(document, selection, self._axis, words, self)
        self._in_hand = lane(InHandLane, self.tr("In hand"), self.tr("hours"), 44.0)
        self._light = lane(LightLane, self.tr("Light"), "", 17.0)
        self.fuel = FuelLane(document, selection, self._axis, words, self)
        self._foot = lane(FootLane, "", units.distance_unit, 20.0)
        self._lanes = (
            self._head,
            self.profile,
            self.target,
            self._in_hand,
            self._light,
            self.fuel,
            self._foot,
        )
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 4, 0, 4)
        box.setSpacing(3)
        box.addLayout(self._title_row())
        for one, stretch in zip(self._lanes, (0, 10, 5, 4, 0, 7, 0), strict=True):
            box.addWidget(one, stretch)
        self._dress()
        theme().changed.connect(self._dress)
        self._axis.show(document.shown)
        document.changed.connect(self._on_changed)

    def choose_measure(self, measure: Measure) -> None:
        """Lay the race out by distance or by clock."""
        self._axis.choose(measure)
        self._head.fit()
        self._buttons[measure].setChecked(True)

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

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        self._axis.show(after)
        for lane in self._lanes:
            lane.renew(before, after)

    def _title_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setContentsMargins(14, 0, 14, 0)
        self._title = QLabel(self.tr("RACE DAY"), self)
        row.addWidget(self._title)
        row.addSpacing(16)
        self._group = QButtonGroup(self)
        self._buttons: dict[Measure, QPushButton] = {}
        texts: dict[Measure, str] = {
            "distance": self.tr("by distance"),
            "clock": self.tr("by clock"),
        }
        for measure, text in texts.items():
            button = QPushButton(text, self)
            button.setCheckable(True)
            button.setFlat(True)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            button.clicked.connect(partial(self.choose_measure, measure))
            self._group.addButton(button)
            self._buttons[measure] = button
            row.addWidget(button)
        self._buttons["distance"].setChecked(True)
        row.addStretch(1)
        return row

    @Slot()
    def _dress(self) -> None:
        look = theme()
        self._title.setFont(look.font(8.0, bold=True))
        self._title.setStyleSheet(f"color: {look.colours.soft}")
        self._light.setFixedHeight(round(look.px(17)))
        self._foot.setFixedHeight(round(look.px(20)))

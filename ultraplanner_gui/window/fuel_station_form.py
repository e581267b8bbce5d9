"""The form of what stands on the tables of the aid stations."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QPushButton, QWidget

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel_habits import SetStationFoods, SetTables
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.window.fuel_forms import FuelForm, TickList
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 620.0


class StationFoodsForm(FuelForm):
    """Stations on the left, foods to tick for the one chosen on the right."""

    def __init__(
        self,
        project: Project,
        words: Words,
        sent: Callable[[Edit], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(self.tr("Food at stations"), "food at stations", WIDTH_PX, parent)
        course = project.course
        self._stations = course.stations if course is not None else ()
        self._sent = sent
        self._foods = {s.key: s.foods for s in self._stations}
        self._shown = ""
        self.stations = QListWidget(self)
        self.stations.setAccessibleName(self.tr("Aid stations"))
        for station in self._stations:
            self.stations.addItem(f"{station.name}, {words.distance(station.at_m, 1)}")
        rows = ((food.key, food.name) for food in project.fuel.foods)
        self.foods = TickList(self.tr("Foods on its table"), rows, self)
        set_topics({self.stations: "aid station", self.foods: "food at stations"})
        self.everywhere = QPushButton(self.tr("The same at e&very station"), self)
        self.box.addWidget(
            self.line(self.tr("What the organiser offers, to be eaten there or taken along."))
        )
        row = QHBoxLayout()
        row.addWidget(self.stations, 2)
        row.addWidget(self.foods, 3)
        self.box.addLayout(row, 1)
        self.box.addWidget(self.everywhere)
        self.finish(self.tr("&Set"))
        self.foods.setMinimumHeight(self.foods.sizeHintForRow(0) * 12)
        self.stations.currentRowChanged.connect(self._on_row)
        self.everywhere.clicked.connect(self._on_everywhere)
        self.stations.setCurrentRow(0)

    def tables(self) -> dict[str, tuple[str, ...]]:
        """Return what is ticked for each station."""
        self._note()
        return dict(self._foods)

    def accept(self) -> None:
        tables = self.tables()
        edits = tuple(
            SetStationFoods(s.key, tables[s.key])
            for s in self._stations
            if tables[s.key] != s.foods
        )
        trouble = self._sent(SetTables(edits)) if edits else ""
        if trouble:
            self.say_trouble(trouble)
            return
        super().accept()

    def _note(self) -> None:
        if self._shown:
            self._foods[self._shown] = self.foods.ticked()

    @Slot(int)
    def _on_row(self, row: int) -> None:
        self._note()
        if 0 <= row < len(self._stations):
            self._shown = self._stations[row].key
            self.foods.tick(self._foods[self._shown])

    @Slot()
    def _on_everywhere(self) -> None:
        ticked = self.foods.ticked()
        self._foods = {s.key: ticked for s in self._stations}

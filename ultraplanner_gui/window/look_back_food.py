"""What was planned to be eaten and what was, item by item and by the hour."""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.review import ChangeReview
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.taken import by_hour, planned_of, until
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Review, Taken
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table_heads import align_heads
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.small_charts import Bar, BarChart, Scale, ticks_between
from ultraplanner_gui.wording.words import Words

TOPIC = "food taken"
_AT, _FOOD, _PLANNED, _TAKEN = range(4)
_SAME_S = 1.0


class FoodTaken(QWidget):
    """A line per item of the plan; the servings taken are typed over those planned."""

    def __init__(
        self,
        document: Document,
        kept: KeptRecording,
        outlook: Outlook,
        words: Words,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._kept, self._words = document, kept, words
        self._fuel = outlook.project.fuel
        sessions = outlook.project.block.sessions
        session = next((s for s in sessions if s.key == kept.session), None)
        planned = planned_of(outlook, session, kept.is_race)
        self._end_s = kept.elapsed_s
        self._planned = until(planned, self._end_s)
        self._is_filling = False
        self.hours = BarChart(self.tr("Carbs by hour, g; mark: planned"), TOPIC, self)
        self.table = QTableWidget(len(self._planned), 4, self)
        self.table.setHorizontalHeaderLabels(
            [self.tr("At"), self.tr("Food"), self.tr("Planned"), self.tr("Taken")]
        )
        align_heads(self.table, (_PLANNED, _TAKEN))
        self.table.setAccessibleName(self.tr("Food planned and taken"))
        self.table.verticalHeader().hide()
        self.table.setShowGrid(False)
        self.table.setTabKeyNavigation(False)
        header = self.table.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(_FOOD, QHeaderView.ResizeMode.Stretch)
        set_topic(self.table, TOPIC)
        self.trouble = QLabel("", self)
        self.trouble.setWordWrap(True)
        dress(self.trouble, Pt.TEXT, theme().colours.clay)
        self.all = QPushButton(self.tr("All as &planned"), self)
        self.none = QPushButton(self.tr("&Nothing"), self)
        for button in (self.all, self.none):
            button.setAutoDefault(False)
        self.all.clicked.connect(self._on_all)
        self.none.clicked.connect(self._on_none)
        buttons = QHBoxLayout()
        for widget in (self.all, self.none):
            buttons.addWidget(widget)
        buttons.addWidget(self.trouble, 1)
        box = QVBoxLayout(self)
        box.setSpacing(Space.NEAR)
        box.addWidget(self.hours, 2)
        box.addWidget(self.table, 3)
        box.addLayout(buttons)
        self.table.cellChanged.connect(self._on_typed)
        document.changed.connect(self._on_changed)
        self._fill()

    @property
    def review(self) -> Review:
        """What was said of this run so far."""
        reviews = self._document.project.reviews
        found = (r for r in reviews if r.recording == self._kept.key)
        return next(found, Review(self._kept.key))

    def _fill(self) -> None:
        """Show what is kept: as planned until something else was said."""
        self._is_filling = True
        words, said = self._words, self.review.taken
        foods = {food.key: food.name for food in self._fuel.foods}
        for row, item in enumerate(self._planned):
            servings = item.servings if said is None else _taken_of(said, item)
            texts = (
                words.duration(item.at_s),
                foods.get(item.food, item.food),
                words.servings(item.servings),
                words.servings(servings) if said is not None else "",
            )
            for column, text in enumerate(texts):
                cell = QTableWidgetItem(text)
                if column != _TAKEN:
                    cell.setFlags(cell.flags() & ~Qt.ItemFlag.ItemIsEditable)
                if column in (_PLANNED, _TAKEN):
                    side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
                    cell.setTextAlignment(side)
                self.table.setItem(row, column, cell)
        self._is_filling = False
        self._show_hours(said)

    def _show_hours(self, said: tuple[Taken, ...] | None) -> None:
        words = self._words
        rows = by_hour(self._fuel, self._planned, said or (), self._end_s)
        bars = [
            Bar(words.number(h.number + 1), h.taken_carb_g, h.planned_carb_g, "plum") for h in rows
        ]
        high = max([30.0, *(max(bar.value, bar.mark) for bar in bars)])
        ticks = tuple((t, words.number(t)) for t in ticks_between(0.0, high, 30.0))
        self.hours.show_bars(bars, Scale(0.0, high * 1.05, ticks))

    @Slot(int, int)
    def _on_typed(self, row: int, column: int) -> None:
        if self._is_filling or column != _TAKEN:
            return
        cell = self.table.item(row, column)
        text = cell.text().strip() if cell is not None else ""
        servings = 0.0 if not text else self._words.parse_number(text)
        if servings is None or servings < 0.0:
            self.trouble.setText(self.tr("Type how many servings, as 1 or 0.5; 0 for none."))
            self._fill()
            return
        item = self._planned[row]
        taken = self.review.taken
        others = [t for t in (taken or ()) if not _is_same(t, item)]
        if servings > 0.0:
            others.append(Taken(item.at_s, item.food, servings))
        self._keep(tuple(sorted(others, key=lambda t: (t.at_s, t.food))))

    @Slot()
    def _on_all(self) -> None:
        self._keep(self._planned)

    @Slot()
    def _on_none(self) -> None:
        self._keep(())

    def _keep(self, taken: tuple[Taken, ...]) -> None:
        self.trouble.setText("")
        self._document.perform(ChangeReview(replace(self.review, taken=taken)))
        self._fill()

    @Slot(object, object)
    def _on_changed(self, before: object, after: object) -> None:
        self._fill()


def _is_same(one: Taken, other: Taken) -> bool:
    return one.food == other.food and abs(one.at_s - other.at_s) < _SAME_S


def _taken_of(said: tuple[Taken, ...], item: Taken) -> float:
    return sum(t.servings for t in said if _is_same(t, item))

"""The title of race day, whether it runs by distance or by clock, and whether the plan is seen."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QLabel, QMenu, QPushButton, QWidget

from ultraplanner_gui.widgets.axis import Measure
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space


class TitleRow(QWidget):
    """Title and three buttons; the rest of the row is free for the figures at the cursor."""

    chosen = Signal(str)
    #: The user wants the plan view shown or hidden.
    plan_wanted = Signal(bool)
    #: Every leg is to be unfolded.
    unfold_wanted = Signal()
    #: A lane without room is to have some, by its name; or race day the whole window, by none.
    room_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._crowded_out: dict[str, str] = {}
        row = QHBoxLayout(self)
        row.setContentsMargins(Space.WIDE, Space.HAIR, Space.WIDE, 0)
        self._label = QLabel(self.tr("RACE DAY"), self)
        row.addWidget(self._label)
        row.addSpacing(16)
        group = QButtonGroup(self)
        self.buttons: dict[Measure, QPushButton] = {}
        texts: dict[Measure, str] = {
            "distance": self.tr("by distance"),
            "clock": self.tr("by clock"),
        }
        for measure, text in texts.items():
            button = QPushButton(text, self)
            button.setCheckable(True)
            button.setFlat(True)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            button.clicked.connect(partial(self.chosen.emit, measure))
            group.addButton(button)
            self.buttons[measure] = button
            row.addWidget(button)
        self.buttons["distance"].setChecked(True)
        row.addSpacing(Space.NEAR)
        self.plan, self.unfold, self.more = (QPushButton("", self) for _ in range(3))
        for button in (self.plan, self.unfold, self.more):
            button.setFlat(True)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            row.addWidget(button)
        self.plan.setText(self.tr("plan view"))
        self.plan.setCheckable(True)
        self.plan.clicked.connect(self.plan_wanted)
        self.unfold.clicked.connect(self.unfold_wanted)
        self.unfold.hide()
        self.more.setMenu(QMenu(self.more))
        set_topic(self.more, "lanes without room")
        self.more.hide()
        row.addStretch(1)
        self._dress()
        theme().changed.connect(self._dress)

    def show_measure(self, measure: Measure) -> None:
        """Mark the button of what the race runs by."""
        self.buttons[measure].setChecked(True)

    def show_folds(self, count: int) -> None:
        """Offer to unfold *count* legs, nothing where none is folded."""
        text = self.tr("unfold all") if count > 1 else self.tr("unfold the leg")
        self.unfold.setText(text)
        self.unfold.setVisible(count > 0)

    def show_crowded_out(self, lanes: dict[str, str]) -> None:
        """Offer room to *lanes* that have none, by their names with their titles."""
        if lanes == self._crowded_out:
            return
        self._crowded_out = lanes
        count, menu = len(lanes), self.more.menu()
        self.more.setText(
            self.tr("1 more lane") if count == 1 else self.tr("{0} more lanes").format(count)
        )
        self.more.setToolTip(self.tr("No room now for: {0}").format(", ".join(lanes.values())))
        self.more.setVisible(count > 0)
        menu.clear()
        for name, title in lanes.items():
            menu.addAction(self.tr("Show {0}").format(title), partial(self.room_wanted.emit, name))
        menu.addSeparator()
        menu.addAction(self.tr("Race day alone, with all lanes"), self._want_all)

    @Slot()
    def _want_all(self) -> None:
        self.room_wanted.emit("")

    @property
    def free_left(self) -> int:
        """Where, past title and buttons, the row is free."""
        seen = (b for b in (self.more, self.unfold) if b.isVisibleTo(self))
        last = next(seen, self.plan)
        return last.geometry().right() + round(theme().px(10.0))

    @Slot()
    def _dress(self) -> None:
        dress(self._label, Pt.NOTE, theme().colours.soft, bold=True)

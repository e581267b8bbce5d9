"""The title of race day, whether it runs by distance or by clock, and whether the plan is seen."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QLabel, QPushButton, QWidget

from ultraplanner_gui.widgets.axis import Measure
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space


class TitleRow(QWidget):
    """Title and three buttons; the rest of the row is free for the figures at the cursor."""

    chosen = Signal(str)
    #: The user wants the plan view shown or hidden.
    plan_wanted = Signal(bool)
    #: Every leg is to be unfolded.
    unfold_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
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
        self.plan = QPushButton(self.tr("plan view"), self)
        self.plan.setCheckable(True)
        self.plan.setFlat(True)
        self.plan.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.plan.clicked.connect(self.plan_wanted)
        row.addWidget(self.plan)
        self.unfold = QPushButton("", self)
        self.unfold.setFlat(True)
        self.unfold.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.unfold.clicked.connect(self.unfold_wanted)
        self.unfold.hide()
        row.addWidget(self.unfold)
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

    @property
    def free_left(self) -> int:
        """Where, past title and buttons, the row is free."""
        last = self.unfold if self.unfold.isVisibleTo(self) else self.plan
        return last.geometry().right() + round(theme().px(10.0))

    @Slot()
    def _dress(self) -> None:
        dress(self._label, Pt.NOTE, theme().colours.soft, bold=True)

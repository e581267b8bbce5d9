"""The panel of the cards' desk: the cards, the paper, the light, and what is done with them."""

from __future__ import annotations

from typing import Literal

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QComboBox,
    QFormLayout,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.cards.card_choice import CardChoice
from ultraplanner_gui.cards.paper import Paper
from ultraplanner_gui.cards.preview import Light
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space

PaperName = Literal["card", "A4", "A3", "Letter"]
PAPERS: dict[str, tuple[float, float]] = {
    "A4": (210.0, 297.0),
    "A3": (297.0, 420.0),
    "Letter": (215.9, 279.4),
}


class DeskPanel(QFrame):
    """Everything beside the preview."""

    def __init__(self, choice: CardChoice, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._choice = choice
        self.trouble = QLabel(self)
        self.trouble.setWordWrap(True)
        self.paper, self.light = QComboBox(self), QComboBox(self)
        self.both_sides = QCheckBox(self.tr("Backs behind fronts"), self)
        self.match = QPushButton(self.tr("Match…"), self)
        self.write = QPushButton(self.tr("Write PDF…"), self)
        self.print_out = QPushButton(self.tr("Print…"), self)
        self.picture = QPushButton(self.tr("For a lock screen…"), self)
        self.zooms = QButtonGroup(self)
        self._fill()
        self._arrange()

    @property
    def paper_name(self) -> PaperName:
        """The paper by its name in the settings."""
        name: PaperName = self.paper.currentData()
        return name

    @property
    def paper_chosen(self) -> Paper | None:
        """The paper the cards are laid on, None where each is a page by itself."""
        size = PAPERS.get(self.paper_name)
        return Paper(*size, both_sides=self.both_sides.isChecked()) if size else None

    @property
    def light_chosen(self) -> Light:
        """The light the cards are shown in."""
        light: Light = self.light.currentData()
        return light

    def choose(self, paper: str, light: str) -> None:
        """Show which paper and which light are chosen."""
        self.paper.setCurrentIndex(max(0, self.paper.findData(paper)))
        self.light.setCurrentIndex(max(0, self.light.findData(light)))

    def say(self, sentence: str, can_print: bool = True) -> None:
        """Say what is wrong or what was done, and whether anything can be printed."""
        self.trouble.setText(sentence)
        for button in (self.write, self.print_out, self.picture):
            button.setEnabled(can_print)

    def show_work(self, share: float | None) -> None:
        """Show how far the writing is, with the way out of it; None once it is over."""
        is_over = share is None
        self.write.setText(self.tr("Write PDF…") if is_over else self.tr("Cancel writing"))
        self.print_out.setEnabled(is_over)
        self.picture.setEnabled(is_over)
        if share is not None:
            self.trouble.setText(self.tr("Writing, {0} %").format(round(100.0 * share)))

    def _fill(self) -> None:
        self.paper.addItem(self.tr("Each card by itself"), "card")
        for name in PAPERS:
            self.paper.addItem(self.tr("Several on {0}").format(name), name)
        self.light.addItem(self.tr("By day"), "day")
        self.light.addItem(self.tr("In grey"), "grey")
        self.light.addItem(self.tr("Under a red lamp"), "red")
        self.paper.setAccessibleName(self.tr("Paper"))
        self.light.setAccessibleName(self.tr("Light"))
        self.match.setAccessibleDescription(
            self.tr("Lay a bank card on the screen so that true size is true")
        )
        set_topics(
            {
                self.trouble: "card size",
                self.paper: "card paper",
                self.both_sides: "card paper",
                self.light: "card light",
                self.match: "true size",
                self.picture: "phone picture",
            }
        )

    def _arrange(self) -> None:
        space = round(theme().px(Space.APART))
        box = QVBoxLayout(self)
        box.setContentsMargins(space, space, space, space)
        scroll = QScrollArea(self)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        inside = QWidget(scroll)
        rows = QVBoxLayout(inside)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.addWidget(self._choice)
        rows.addStretch(1)
        scroll.setWidget(inside)
        box.addWidget(scroll, 1)
        box.addWidget(self.trouble)
        form = QFormLayout()
        form.addRow(self.tr("Paper"), self.paper)
        form.addRow("", self.both_sides)
        form.addRow(self.tr("Light"), self.light)
        box.addLayout(form)
        box.addLayout(self._zoom_buttons())
        self.write.setDefault(True)
        box.addWidget(self.write)
        box.addWidget(self.print_out)
        box.addWidget(self.picture)

    def _zoom_buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        for number, text in enumerate((self.tr("Fit"), self.tr("True size"))):
            button = QPushButton(text, self)
            button.setCheckable(True)
            button.setChecked(number == 0)
            self.zooms.addButton(button, number)
            row.addWidget(button)
        row.addWidget(self.match)
        return row

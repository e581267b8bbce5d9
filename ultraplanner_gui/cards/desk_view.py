"""The cards' desk: choose cards and sizes, see them as they will be, write or print them."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.cards.card_choice import CardChoice
from ultraplanner_gui.cards.make import pages_of
from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.cards.paint import measure
from ultraplanner_gui.cards.pdf import card_pages, write_cards
from ultraplanner_gui.cards.preview import Preview
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.cards import ChooseCards
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.cards import Card
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrintDialog, QPrinter

PANEL_PX = 290.0


class Ask(Protocol):
    """The questions this desk puts to the user."""

    def where_to_write_pdf(self, proposed: Path, taken: Callable[[Path], None]) -> None:
        """Ask where a PDF is to be written."""

    def tell(self, title: str, sentence: str) -> None:
        """Say one sentence that must be read."""


class CardsDesk(QWidget):
    """The third place of the window."""

    def __init__(
        self,
        document: Document,
        words: Callable[[], Words],
        ask: Ask,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._words, self._ask = document, words, ask
        self._print_dialog: QPrintDialog | None = None
        self.choice = CardChoice(self)
        self.preview = Preview(self)
        self._panel = QFrame(self)
        self._trouble = QLabel(self._panel)
        self._trouble.setWordWrap(True)
        self._write = QPushButton(self.tr("Write PDF…"), self)
        self._print = QPushButton(self.tr("Print…"), self)
        self._zooms = QButtonGroup(self)
        self._arrange()
        self._on_theme_changed()
        theme().changed.connect(self._on_theme_changed)
        self.choice.chosen.connect(self._on_cards_chosen)
        self._write.clicked.connect(self.write_pdf)
        self._print.clicked.connect(self.print_cards)
        self._zooms.idToggled.connect(self._on_zoom)
        document.changed.connect(self._on_changed)

    @property
    def sentence(self) -> str:
        """What is wrong with the cards, or what was done last; empty if there is nothing to say."""
        return self._trouble.text()

    def showEvent(self, event: QShowEvent) -> None:
        # Units and language may have changed since; making the pages takes no time to speak of.
        self._renew()
        super().showEvent(event)

    @Slot()
    def write_pdf(self) -> None:
        """Ask where to, and write all cards there."""
        path = self._document.path
        folder = path.parent if path is not None else Path.home()
        name = self._document.shown.project.race.name if path is None else path.stem
        stem = "".join("-" if c in '/\\:*?"<>|' else c for c in name).strip(" .") or "race"
        proposed = folder / self.tr("{0} cards.pdf").format(stem)
        self._ask.where_to_write_pdf(proposed, self._on_path_chosen)

    @Slot()
    def print_cards(self) -> None:
        """Ask for a printer, and print all cards."""
        from PySide6.QtPrintSupport import QPrintDialog

        from ultraplanner_gui.cards.printing import card_printer

        printer = card_printer(self._document.shown.project.race.name)
        dialog = QPrintDialog(printer, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._print_dialog = dialog
        dialog.accepted.connect(self._on_printer_chosen)
        QDialog.open(dialog)

    def print_on(self, printer: QPrinter) -> None:
        """Print all cards on *printer*."""
        from ultraplanner_gui.cards.printing import print_pages

        try:
            print_pages(printer, card_pages(self._document.shown, self._words()))
        except PlanError as error:
            self._ask.tell(self.tr("Print cards"), self._words().say(error.message))

    def _arrange(self) -> None:
        space = round(theme().px(12))
        panel = self._panel
        box = QVBoxLayout(panel)
        box.setContentsMargins(space, space, space, space)
        scroll = QScrollArea(panel)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        inside = QWidget(scroll)
        rows = QVBoxLayout(inside)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.addWidget(self.choice)
        rows.addStretch(1)
        scroll.setWidget(inside)
        box.addWidget(scroll, 1)
        box.addWidget(self._trouble)
        box.addLayout(self._zoom_buttons())
        self._write.setDefault(True)
        box.addWidget(self._write)
        box.addWidget(self._print)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(panel)
        row.addWidget(self.preview, 1)

    def _zoom_buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        for number, text in enumerate((self.tr("Fit"), self.tr("True size"))):
            button = QPushButton(text, self)
            button.setCheckable(True)
            button.setChecked(number == 0)
            self._zooms.addButton(button, number)
            row.addWidget(button)
        return row

    def _renew(self) -> None:
        project = self._document.shown.project
        self.choice.show_cards(project.cards)
        pages: list[Page] = []
        topics: list[str] = []
        trouble = "" if project.cards else self.tr("Add a card to print.")
        for card in project.cards:
            try:
                pages += self._pages_of(card)
            except PlanError as error:
                trouble = self._words().say(error.message)
            topics += [card.kind.value] * (len(pages) - len(topics))
        self.preview.show_pages(tuple(pages), tuple(topics))
        self._trouble.setText(trouble)
        for button in (self._write, self._print):
            button.setEnabled(not trouble)

    def _pages_of(self, card: Card) -> tuple[Page, ...]:
        return pages_of(card, self._document.shown, self._words(), measure)

    @Slot()
    def _on_theme_changed(self) -> None:
        self._panel.setFixedWidth(round(theme().px(PANEL_PX)))

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        if self.isVisible():
            self._renew()

    @Slot(object)
    def _on_cards_chosen(self, cards: tuple[Card, ...]) -> None:
        # What is refused must not stay in the fields.
        if not self._document.perform(ChooseCards(cards)):
            self._renew()

    @Slot(int, bool)
    def _on_zoom(self, number: int, is_on: bool) -> None:
        if is_on:
            self.preview.choose_true_size(number == 1)

    @Slot()
    def _on_printer_chosen(self) -> None:
        if self._print_dialog is not None:
            self.print_on(self._print_dialog.printer())
            self._print_dialog = None

    def _on_path_chosen(self, path: Path) -> None:
        words = self._words()
        try:
            write_cards(self._document.shown, words, path)
        except PlanError as error:
            self._ask.tell(self.tr("Write cards"), words.say(error.message))
            return
        self._trouble.setText(self.tr("Written: {0}").format(path.name))

"""The cards' desk: choose cards and sizes, see them as they will be, write or print them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from contextlib import suppress
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QDialog, QHBoxLayout, QWidget

from ultraplanner_gui.cards import names
from ultraplanner_gui.cards.card_choice import CardChoice
from ultraplanner_gui.cards.desk_panel import DeskPanel
from ultraplanner_gui.cards.make import pages_of
from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.cards.paint import measure
from ultraplanner_gui.cards.paper import Paper, sheets
from ultraplanner_gui.cards.pdf import card_pages, write_cards
from ultraplanner_gui.cards.preview import Preview
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.jobs import JobBench, Token
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.cards import ChooseCards
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.cards import Card
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrintDialog, QPrinter

    from ultraplanner_gui.cards.picture import Screen

PANEL_PX = 310.0
LEAST_PX_PER_MM, MOST_PX_PER_MM = 1.0, 20.0


class Ask(Protocol):
    """The questions this desk puts to the user."""

    def where_to_write_pdf(self, proposed: Path, taken: Callable[[Path], None]) -> None:
        """Ask where a PDF is to be written."""

    def where_to_write_picture(self, proposed: Path, taken: Callable[[Path], None]) -> None:
        """Ask where a picture is to be written."""

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
        settings: Settings | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._words, self._ask = document, words, ask
        self._settings = settings
        self._print_dialog: QPrintDialog | None = None
        # Not the desk's own child: it must not go while a thread still works for it.
        self._jobs = JobBench(document)
        self._ticket: object = None
        self._name = ""
        document.destroyed.connect(self._jobs.close)
        self._jobs.done.connect(self._on_written)
        self._jobs.failed.connect(self._on_not_written)
        self._jobs.progressed.connect(self._on_progress)
        self.choice = CardChoice(self)
        self.preview = Preview(self)
        self.panel = DeskPanel(self.choice, self)
        self._arrange()
        self._on_theme_changed()
        self._restore()
        theme().changed.connect(self._on_theme_changed)
        self.choice.chosen.connect(self._on_cards_chosen)
        self.panel.write.clicked.connect(self.write_pdf)
        self.panel.print_out.clicked.connect(self.print_cards)
        self.panel.picture.clicked.connect(self.write_picture)
        self.panel.match.clicked.connect(self.match_screen)
        self.panel.zooms.idToggled.connect(self._on_zoom)
        self.panel.light.activated.connect(self._on_light)
        self.panel.paper.activated.connect(self._on_paper)
        self.panel.both_sides.toggled.connect(self._on_paper)
        document.changed.connect(self._on_changed)

    @property
    def sentence(self) -> str:
        """What is wrong with the cards, or what was done last; empty if there is nothing to say."""
        return self.panel.trouble.text()

    def showEvent(self, event: QShowEvent) -> None:
        # Units and language may have changed since; making the pages takes no time to speak of.
        self._renew()
        super().showEvent(event)

    @Slot()
    def write_pdf(self) -> None:
        """Ask where to, and write all cards there; while that goes on, leave it."""
        if self._ticket is not None:
            self._jobs.cancel(self._ticket)
            self._end_writing(self.tr("Not written."))
            return
        proposed = self._beside(self.tr("{0} cards.pdf"))
        self._ask.where_to_write_pdf(proposed, self._on_path_chosen)

    @Slot()
    def write_picture(self) -> None:
        """Ask for a card and a screen, and write it as a picture."""
        from ultraplanner_gui.cards.phone_form import PhoneForm

        form = PhoneForm(self._document.shown.project.cards, self._on_screen_chosen, self)
        form.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        form.open()

    @Slot()
    def match_screen(self) -> None:
        """Ask for a bank card to be laid on the screen."""
        from ultraplanner_gui.cards.calibrate import Calibration

        dialog = Calibration(self.preview.true_px_per_mm, self._on_measured, self)
        QDialog.open(dialog)

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
            pages = card_pages(self._document.shown, self._words())
            print_pages(printer, pages, self.panel.both_sides.isChecked())
        except PlanError as error:
            self._ask.tell(self.tr("Print cards"), self._words().say(error.message))

    def _beside(self, template: str) -> Path:
        path = self._document.path
        folder = path.parent if path is not None else Path.home()
        name = self._document.shown.project.race.name if path is None else path.stem
        stem = "".join("-" if c in '/\\:*?"<>|' else c for c in name).strip(" .") or "race"
        return folder / template.format(stem)

    def _arrange(self) -> None:
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.panel)
        row.addWidget(self.preview, 1)

    def _restore(self) -> None:
        if self._settings is None:
            return
        self.panel.choose(self._settings.card_paper, self._settings.card_light)
        self.panel.both_sides.setChecked(self._settings.card_both_sides)
        self.preview.choose_light(self.panel.light_chosen)
        self.preview.set_measured(measured(self._settings.card_screens, self.screen().name()))

    def _renew(self) -> None:
        project, words = self._document.shown.project, self._words()
        self.choice.show_cards(project.cards)
        pages: list[Page] = []
        topics: list[str] = []
        said: list[str] = []
        trouble = "" if project.cards else self.tr("Add a card to print.")
        for card in project.cards:
            try:
                made = pages_of(card, self._document.shown, words, measure)
            except PlanError as error:
                trouble = words.say(error.message)
                continue
            said += self._said_of(card, made)
            pages += made
            topics += [card.kind.value] * len(made)
        paper = self.panel.paper_chosen
        if paper is not None and not trouble:
            try:
                pages = list(sheets(card_pages(self._document.shown, words), paper))
                topics = ["cards"] * len(pages)
            except PlanError as error:
                trouble = words.say(error.message)
        self.preview.show_pages(tuple(pages), tuple(topics))
        self.panel.say(trouble or " ".join(said), can_print=not trouble)

    def _said_of(self, card: Card, pages: Sequence[Page]) -> list[str]:
        """Return what must be known of *card*: that it moved on, that its type is the least."""
        name = names.say(names.KINDS[card.kind])
        goes_on = len(pages) > 1 and len({page.card for page in pages}) < len(pages)
        if any(page.is_shrunk for page in pages):
            return [self.tr("{0}: the smallest legible type.").format(name)]
        if goes_on:
            return [self.tr("{0}: {1} pages.").format(name, len(pages))]
        return []

    @Slot()
    def _on_theme_changed(self) -> None:
        self.panel.setFixedWidth(round(theme().px(PANEL_PX)))

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
    def _on_light(self) -> None:
        self.preview.choose_light(self.panel.light_chosen)
        if self._settings is not None:
            self._settings.card_light = self.panel.light_chosen

    @Slot()
    def _on_paper(self) -> None:
        if self._settings is not None:
            self._settings.card_paper = self.panel.paper_name
            self._settings.card_both_sides = self.panel.both_sides.isChecked()
        self._renew()

    def _on_measured(self, px_per_mm: float) -> None:
        self.preview.set_measured(px_per_mm)
        self.panel.zooms.button(1).setChecked(True)
        if self._settings is not None:
            self._settings.card_screens = with_measured(
                self._settings.card_screens, self.screen().name(), px_per_mm
            )

    @Slot()
    def _on_printer_chosen(self) -> None:
        if self._print_dialog is not None:
            self.print_on(self._print_dialog.printer())
            self._print_dialog = None

    def _on_path_chosen(self, path: Path) -> None:
        shown, words, paper = self._document.shown, self._words(), self.panel.paper_chosen
        self._name = path.name
        self.panel.show_work(0.0)
        self._ticket = self._jobs.submit(write_job, shown, words, path, paper)

    @Slot(object, object)
    def _on_progress(self, ticket: object, share: float) -> None:
        if ticket == self._ticket:
            self.panel.show_work(share)

    @Slot(object, object)
    def _on_written(self, ticket: object, result: object) -> None:
        if ticket == self._ticket:
            self._end_writing(self.tr("Written: {0}").format(self._name))

    @Slot(object, object)
    def _on_not_written(self, ticket: object, message: Message) -> None:
        if ticket == self._ticket:
            self._end_writing("")
            self._ask.tell(self.tr("Write cards"), self._words().say(message))

    def _end_writing(self, sentence: str) -> None:
        self._ticket = None
        self.panel.show_work(None)
        self.panel.say(sentence)

    def _on_screen_chosen(self, card: Card, screen: Screen) -> None:
        proposed = self._beside(self.tr("{0} lock screen.png"))
        self._ask.where_to_write_picture(proposed, partial(self._write_picture, card, screen))

    def _write_picture(self, card: Card, screen: Screen, path: Path) -> None:
        from ultraplanner_gui.cards.picture import write_pictures

        words = self._words()
        try:
            paths = write_pictures(card, self._document.shown, words, screen, path)
        except PlanError as error:
            self._ask.tell(self.tr("Write a picture"), words.say(error.message))
            return
        self.panel.say(self.tr("Written: {0}").format(", ".join(p.name for p in paths)))


def write_job(
    token: Token, outlook: Outlook, words: Words, path: Path, paper: Paper | None
) -> None:
    """Write every card of the project to *path*, off the GUI thread."""
    write_cards(outlook, words, path, paper, token.progress)


def measured(screens: Sequence[str], name: str) -> float:
    """Return the pixels to a millimetre of the screen *name*, 0 if it was never measured."""
    for entry in screens:
        screen, _, value = entry.rpartition("=")
        if screen == name:
            with suppress(ValueError):
                px = float(value)
                return px if LEAST_PX_PER_MM <= px <= MOST_PX_PER_MM else 0.0
    return 0.0


def with_measured(screens: Sequence[str], name: str, px_per_mm: float) -> tuple[str, ...]:
    """Return *screens* with the screen *name* at so many pixels to a millimetre."""
    others = tuple(entry for entry in screens if entry.rpartition("=")[0] != name)
    return (*others, f"{name}={px_per_mm:.4f}")

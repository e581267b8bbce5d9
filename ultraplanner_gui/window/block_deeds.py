"""Building the block: by the rules at once, then the search for a better one, offered if found."""

from __future__ import annotations

from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.edits.block import ReplaceBlock
from ultraplanner_gui.window.job_deeds import JobDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.engine.block import BlockPlan
    from ultraplanner_gui.engine.block_exact import ExactPlan
    from ultraplanner_gui.engine.outlook import Outlook
    from ultraplanner_gui.plan.block import Block
    from ultraplanner_gui.plan.project import Project


def build_for_plan(token: Token, project: Project, outlook: Outlook, today: date) -> BlockPlan:
    """Build the block of *project* anew from *today* on."""
    from ultraplanner_gui.engine.first_plan import new_block

    return new_block(project, outlook, today)


def search_for_plan(token: Token, project: Project, outlook: Outlook, today: date) -> ExactPlan:
    """Search for the best block of *project* from *today* on, in a process of its own."""
    from ultraplanner_gui.desk.block_process import ExactBlock
    from ultraplanner_gui.engine.first_plan import joined, request_of

    exact = ExactBlock(request_of(project, outlook, today))(token)
    return joined(project, exact, today)


class BlockDeeds(JobDeeds):
    """Builds the block of one window's project."""

    @Slot()
    def build_block(self) -> None:
        document = self._window.document
        if document is None:
            return
        base = document.project
        then = partial(self._put_block_in, document, base)
        self._window.name_work(self.tr("Building the block"))
        self._start(then, build_for_plan, base, document.outlook, date.today())

    def _put_block_in(self, document: Document, base: Project, plan: BlockPlan) -> None:
        if document is not self._window.document:
            return
        text = self.tr("The new block is ready.")
        is_put_in = document.project is base
        outlook = document.outlook
        self._window.offer.deliver(document, base, ReplaceBlock(plan.block), text)
        self._notice(plan)
        if is_put_in:
            self._window.inform(
                self.tr("The block is built. At the right: where it had to give way.")
                if plan.notes
                else self.tr("The block is built; it had to give way nowhere.")
            )
            then = partial(self._offer_better, document, document.project.block)
            self._window.name_work(self.tr("Looking for a better block"))
            self._start(then, search_for_plan, base, outlook, date.today())

    def _offer_better(self, document: Document, built: Block, exact: ExactPlan) -> None:
        """Offer the block that was searched for, if it is better and still fits."""
        if document is not self._window.document:
            return
        from ultraplanner_gui.edits.better_block import TakeBetterBlock

        edit = TakeBetterBlock(built, exact.plan.block)
        if exact.is_better and edit.fits(document.project):
            self._window.offer.propose(document, edit, self._better_text(exact))
            self._notice(exact.plan)

    def _better_text(self, exact: ExactPlan) -> str:
        words = self._window.settings.words()
        text = self.tr("A better block is there: greatest week {0}, longest run {1}.").format(
            words.distance(exact.peak_m), words.distance(exact.longest_m)
        )
        if exact.is_braked:
            brake = self.tr("The search was stopped by its time limit.")
            text = f"{text} {brake}"
        gap = self.tr("By what the search counts, none is better by more than {0}.")
        return f"{text} {gap.format(words.percent(100.0 * exact.gap, 1))}"

    def _notice(self, plan: BlockPlan) -> None:
        """Have the ledger say what *plan* gives way in, as long as its block is the one shown."""
        place, words = self._window.workplace, self._window.settings.words()
        if place is not None:
            title = self.tr("Noticed while building it")
            place.ledger.notice(plan.block, title, tuple(words.say(note) for note in plan.notes))

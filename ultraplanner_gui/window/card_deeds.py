"""What the actions about crew, lists and week sheets do."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.window.view_deeds import ViewDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.edits.edit import Edit


class CardDeeds(ViewDeeds):
    """The slots for what stands on cards beside the plan itself."""

    @Slot()
    def crew_form(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.crew_form import CrewForm

            CrewForm(document.project, self._perform_or_say, self._window).open()

    @Slot()
    def type_week_back(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.type_back import TypeBack

            words = self._window.settings.words()
            TypeBack(document.outlook, words, self._perform_or_say, self._window).open()

    @Slot()
    def lock_screen(self) -> None:
        self._window.go("cards")
        if self._window.workplace is not None:
            self._window.workplace.cards.write_picture()

    def _perform_or_say(self, edit: Edit) -> str:
        """Perform *edit*; return what is wrong with it, nothing if it was done."""
        document = self._window.document
        if document is None:
            return ""
        try:
            edit.apply(document.project)
        except PlanError as error:
            return self._window.settings.words().say(error.message)
        document.perform(edit)
        return ""

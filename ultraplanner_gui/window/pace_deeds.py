"""What the actions about pace, conditions and the finish do."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.edits.course import SetSectionTarget
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.window.view_deeds import ViewDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.edits.edit import Edit


class PaceDeeds(ViewDeeds):
    """The slots for how the race is paced. Forms are imported where they are opened."""

    @Slot()
    def shape_form(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.pace_shape import ShapeForm

            words = self._window.settings.words()
            ShapeForm(document.project, words, self._take_pace, self._window).open()

    @Slot()
    def conditions_form(self) -> None:
        document = self._window.document
        if document is not None and document.outlook.race is not None:
            from ultraplanner_gui.window.pace_conditions import ConditionsForm

            words = self._window.settings.words()
            ConditionsForm(document.outlook, words, self._take_pace, self._window).open()

    @Slot()
    def beside_rules(self) -> None:
        document = self._window.document
        if document is not None and document.outlook.race is not None:
            from ultraplanner_gui.window.pace_beside import BesideTable

            BesideTable(document.outlook, self._window.settings.words(), self._window).open()

    @Slot()
    def lock_target(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is None or document is None or place.selection.kind != "section":
            return
        key = place.selection.key
        section = next((s for s in document.outlook.sections if s.key == key), None)
        if section is not None and not section.is_fixed:
            document.perform(SetSectionTarget(key, section.moving_s))

    def _take_pace(self, edit: Edit) -> str:
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

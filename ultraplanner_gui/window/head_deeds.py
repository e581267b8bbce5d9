"""What the actions for the head and the last days do."""

from __future__ import annotations

from PySide6.QtCore import Slot

from ultraplanner_gui.window.view_deeds import ViewDeeds


class HeadDeeds(ViewDeeds):
    """The slots of the head and of own lines of the countdown."""

    @Slot()
    def head_form(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.head_form import HeadForm

            HeadForm(document, self._window.settings.words(), self._window).open()

    @Slot()
    def own_days(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.own_days_form import OwnDaysForm

            OwnDaysForm(document, self._window.settings.words(), self._window).open()

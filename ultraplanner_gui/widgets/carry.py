"""Picking something up, moving it on trial and putting it down: one way for mouse and keys."""

from __future__ import annotations

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit


class Carry:
    """One thing being carried. Every move is a trial; only putting it down is an edit."""

    def __init__(self, document: Document) -> None:
        self._document = document
        self._edit: Edit | None = None
        self.is_on = False
        self.gesture = 0

    def pick_up(self) -> None:
        """Begin carrying."""
        self.is_on = True
        self._edit = None
        self.gesture = self._document.new_gesture()

    def show(self, edit: Edit) -> None:
        """Try *edit*: the sheet shows it, nothing is kept.

        A refused one leaves the last good one standing.
        """
        if self._document.try_edit(edit):
            self._edit = edit

    def put_down(self) -> bool:
        """Perform the last edit shown; return whether anything changed."""
        edit, self._edit = self._edit, None
        self.is_on = False
        self._document.drop_trial()
        return edit is not None and self._document.perform(edit)

    def put_back(self) -> None:
        """Forget the trial: everything is as it was."""
        self._edit = None
        self.is_on = False
        self._document.drop_trial()

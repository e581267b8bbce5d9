"""Picking something up, moving it on trial and putting it down: one way for mouse and keys."""

from __future__ import annotations

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.project import Project


class Carry:
    """One thing being carried. Every move is a trial; only putting it down is an edit.

    When the project changes otherwise, by undo say, the hand is empty.
    """

    def __init__(self, document: Document) -> None:
        self._document = document
        self._base: Project | None = None
        self._edit: Edit | None = None
        self.gesture = 0

    @property
    def is_on(self) -> bool:
        """Whether something is being carried."""
        return self._base is not None and self._base is self._document.project

    def pick_up(self) -> None:
        """Begin carrying."""
        self._base, self._edit = self._document.project, None
        self.gesture = self._document.new_gesture()

    def turn_to(self, kind: type[Edit]) -> None:
        """Perform what is on trial if it is not of this *kind*, and carry on."""
        if self._edit is not None and not isinstance(self._edit, kind):
            self.put_down()
            self.pick_up()

    def show(self, edit: Edit) -> None:
        """Try *edit*: the sheet shows it, nothing is kept.

        A refused one leaves the last good one standing.
        """
        if self.is_on and self._document.try_edit(edit):
            self._edit = edit

    def show_as_it_was(self) -> None:
        """Show it where it was picked up, still in the hand."""
        if self.is_on:
            self._edit = None
            self._document.drop_trial()

    def put_down(self) -> bool:
        """Perform the last edit shown; return whether there was one and it was done."""
        edit = self._edit if self.is_on else None
        self._base = self._edit = None
        if edit is not None:
            return self._document.perform(edit)
        self._document.drop_trial()
        return False

    def put_back(self) -> None:
        """Forget the trial: everything is as it was."""
        self._base = self._edit = None
        self._document.drop_trial()

"""What every edit has: a label, and a way to make a new project from an old one."""

from __future__ import annotations

from typing import ClassVar, Protocol

from ultraplanner_gui.plan.project import Project


class Edit(Protocol):
    """One thing the user did.

    `label` names the deed for the undo list. `gesture` is 0 for a deed of its own; edits of
    one type with the same other number (one drag, one spell of typing) melt into one step.
    """

    label: ClassVar[str]

    @property
    def gesture(self) -> int:
        """Number of the gesture this belongs to; 0 for none."""
        ...

    def apply(self, project: Project) -> Project:
        """Return the changed project; PlanError if it cannot be done."""
        ...

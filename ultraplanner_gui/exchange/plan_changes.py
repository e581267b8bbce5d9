"""What a file would change in a plan: each change in words with its edit, and what is left out."""

from __future__ import annotations

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.value import Value


class PlanChanges(Value, frozen=True):
    """Shown before anything is done. `untouched` counts what is the same in file and plan."""

    changes: tuple[tuple[Message, Edit], ...]
    left_out: tuple[Message, ...]
    untouched: int = 0

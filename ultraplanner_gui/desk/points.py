"""Which edits are so large that the state before them becomes a point of the history."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP

_BEFORE = "Before: "
_NAME = QT_TRANSLATE_NOOP("Edit", "Before: {0}")


@cache
def large() -> tuple[type[Edit], ...]:
    """Return the large kinds of edits, imported with the first edit."""
    from ultraplanner_gui.edits.block import ReplaceBlock
    from ultraplanner_gui.edits.block_moves import ShiftWithRace, TakeRepair
    from ultraplanner_gui.edits.compound import ImportSessions
    from ultraplanner_gui.edits.course import ReplaceCourse
    from ultraplanner_gui.edits.template import ApplyTemplate

    return ReplaceBlock, ReplaceCourse, ShiftWithRace, TakeRepair, ApplyTemplate, ImportSessions


def label_before(edit: Edit) -> str | None:
    """Return what the state before *edit* is called in the history; None if it gets no point."""
    return f"{_BEFORE}{edit.label}" if isinstance(edit, large()) else None


def shown_label(label: str, translate: Callable[[str], str]) -> str:
    """Return how the point *label* is called in the user's language."""
    if label.startswith(_BEFORE):
        return translate(_NAME).format(translate(label.removeprefix(_BEFORE)))
    return translate(label)

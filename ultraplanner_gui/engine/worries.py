"""Worries, each of which wants something done about it."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.head import Head
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, message

RULE = "worries"
_OWN = message(QT_TRANSLATE_NOOP("Checks", "Our own choice."))


def worry_check(head: Head) -> Iterator[Check]:
    """Yield how worries stand: each wants something done about it; nothing where there are none."""
    if not head.worries:
        return
    bare = sum(1 for worry in head.worries if not worry.remedy.strip())
    text = message(QT_TRANSLATE_NOOP("Checks", "Something is done about every worry."))
    if bare:
        text = message(
            QT_TRANSLATE_NOOP("Checks", "Worries with nothing done about them yet: {0}."), bare
        )
    yield Check(RULE, State.STRAINS if bare else State.HOLDS, text, _OWN)

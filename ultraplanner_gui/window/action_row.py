"""What a row of the action table says, and when its action can be used."""

from __future__ import annotations

from PySide6.QtGui import QKeySequence

from ultraplanner_gui.plan.value import Value

Standard = QKeySequence.StandardKey

#: When an action can be used.
ALWAYS, WITH_PROJECT, WITH_COURSE, WITH_SESSION, WITH_ITEM, WITH_SECTION = range(6)
#: When an action on a session can be used: by what was made of it, and the race stays.
NOT_DONE, NOT_MISSED, MARKED, NOT_RACE, TO_MOVE = range(6, 11)


class ActionRow(Value, frozen=True):
    """One action; `name` is also the slot of `window.deeds.Deeds` that does it.

    `contexts` name the context menus it stands in: "session", "weeks", or that of a lane. `keys`
    do the same where the day grid has the keyboard; menus show them.
    """

    name: str
    menu: str
    text: str
    shortcut: str | Standard = ""
    enabled: int = WITH_PROJECT
    is_checkable: bool = False
    contexts: tuple[str, ...] = ()
    keys: str = ""

"""How a check stands."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP


class State(StrEnum):
    """Holds, strains or breaks, in that order."""

    HOLDS = "holds"
    STRAINS = "strains"
    BREAKS = "breaks"


STATES = {
    State.HOLDS: QT_TRANSLATE_NOOP("Checks", "holds"),
    State.STRAINS: QT_TRANSLATE_NOOP("Checks", "strains"),
    State.BREAKS: QT_TRANSLATE_NOOP("Checks", "breaks"),
}
"""What the states are called."""

"""What the states of a check are called."""

from __future__ import annotations

from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP

STATES = {
    State.HOLDS: QT_TRANSLATE_NOOP("Checks", "holds"),
    State.STRAINS: QT_TRANSLATE_NOOP("Checks", "strains"),
    State.BREAKS: QT_TRANSLATE_NOOP("Checks", "breaks"),
}

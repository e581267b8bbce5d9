"""Whether the mandatory kit is packed, once it is time."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.fuel_before import DAYS
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, message
from ultraplanner_gui.plan.project import Project

RULE = "mandatory kit"
_SOURCE = message(QT_TRANSLATE_NOOP("Checks", "The rules of the race; the list is yours."))


def kit_check(project: Project, today: date) -> Iterator[Check]:
    """Yield how the mandatory kit stands in the last ten days, and before that once it is begun."""
    kit = project.race.mandatory_kit
    packed = {p.item for p in project.logistics.packed}
    left = [item for item in kit if item not in packed]
    days = (project.race.day - today).days
    if not kit or (not 0 <= days <= DAYS and len(left) == len(kit)):
        return
    text = message(QT_TRANSLATE_NOOP("Checks", "All mandatory kit is ticked."))
    if left:
        text = message(
            QT_TRANSLATE_NOOP("Checks", "Mandatory kit not ticked yet: {0} of {1}."),
            len(left),
            len(kit),
        )
    yield Check(RULE, State.STRAINS if left else State.HOLDS, text, _SOURCE)

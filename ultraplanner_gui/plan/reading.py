"""How a course was read from its file, and what was mended on the way."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.value import Kept


class RepairKind(StrEnum):
    """What can be mended in a file, and left unmended if the user says so."""

    JOINED = "joined"
    ORDER = "order"
    DOUBLED = "doubled"
    ROUTE = "route"
    BRIDGED = "bridged"
    BROKEN = "broken"
    STRAY = "stray"
    FILLERS = "fillers"
    SPIKES = "spikes"
    FEET = "feet"


class Repair(Message, frozen=True):
    """One thing the reader mended, as a sentence; a plain `Message` cannot be undone."""

    kind: RepairKind = RepairKind.JOINED


class Reading(Kept, frozen=True):
    """From which `file` (its name, no folder) a course was read and how.

    `choice` is the key of what was chosen among several lines, empty for the most likely;
    `without` are the repairs the user had undone.
    """

    file: str
    choice: str = ""
    without: tuple[RepairKind, ...] = ()

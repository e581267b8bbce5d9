"""Everything beside running: who the runner is, the crew, the way home, lists, words for later."""

from __future__ import annotations

from enum import StrEnum

from msgspec.structs import replace

from ultraplanner_gui.plan.station import IfStop
from ultraplanner_gui.plan.value import Kept, Number, Whole


class CrewMember(Kept, frozen=True):
    """One of the crew; `role` is what they do, such as who brings the bag."""

    name: str
    number: str = ""
    role: str = ""


class Visit(Kept, frozen=True):
    """What the crew does at the aid station `station`: who comes, what they hand over and ask."""

    station: str
    who: str = ""
    hand_over: tuple[str, ...] = ()
    ask: tuple[str, ...] = ()


class BagLine(Kept, frozen=True):
    """One thing for the bag that waits at `station`, or at the finish if that is empty."""

    station: str
    text: str


class PlaceNotes(Kept, frozen=True):
    """How the crew gets to a station, and what happens if the runner stops there."""

    station: str
    access: str
    if_stop: IfStop


class IfThen(Kept, frozen=True):
    """What to do when it gets hard, put down beforehand; `station` ends the stretch it is for.

    `tried` are the keys of the sessions it was tried in.
    """

    when: str
    then: str
    station: str = ""
    tried: tuple[str, ...] = ()


class KitPlace(StrEnum):
    """Where a piece of kit is on the way."""

    BODY = "on the body"
    VEST = "in the vest"
    BAG = "in a drop bag"


class PackedKit(Kept, frozen=True):
    """A piece of kit ticked: `item` as the list has it, where it is, `station` of the drop bag."""

    item: str
    place: KitPlace = KitPlace.VEST
    station: str = ""


class OwnDay(Kept, frozen=True):
    """The runner's own line of the countdown: so many days before the race, at a time of day."""

    days_before: Whole
    at_s: Number
    text: str


class Identity(Kept, frozen=True):
    """Who the runner is to a stranger who finds them; `call` is whom to ring, name and number.

    `medical` are lines such as allergies, medicines, blood group.
    """

    full_name: str = ""
    number: str = ""
    born: str = ""
    call: str = ""
    medical: tuple[str, ...] = ()


class Logistics(Kept, frozen=True):
    """All of it. `ask` is what the crew asks at every station, `packing` and `shopping` are lines
    beyond the mandatory kit and the foods of the plan, `cues` short words to say to oneself.
    `packed` is the kit that is ticked, `own_days` are lines for the countdown.
    """

    who: Identity = Identity()
    crew: tuple[CrewMember, ...] = ()
    visits: tuple[Visit, ...] = ()
    drives_home: str = ""
    ask: tuple[str, ...] = ()
    bag_lines: tuple[BagLine, ...] = ()
    packing: tuple[str, ...] = ()
    shopping: tuple[str, ...] = ()
    if_then: tuple[IfThen, ...] = ()
    cues: tuple[str, ...] = ()
    packed: tuple[PackedKit, ...] = ()
    own_days: tuple[OwnDay, ...] = ()

    def visit(self, station: str) -> Visit:
        """Return what the crew does at *station*, nothing if that was never said."""
        return next((v for v in self.visits if v.station == station), Visit(station))

    def with_visit(self, changed: Visit) -> Logistics:
        """Return a copy with the visit to one station replaced; an empty one is dropped."""
        others = tuple(v for v in self.visits if v.station != changed.station)
        keeps = changed != Visit(changed.station)
        return replace(self, visits=(*others, changed) if keeps else others)

    def bag(self, station: str) -> tuple[str, ...]:
        """Return what goes into the bag for *station*."""
        return tuple(line.text for line in self.bag_lines if line.station == station)

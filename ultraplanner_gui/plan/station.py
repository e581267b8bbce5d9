"""Aid stations: where one may stop, until when, what is there, and what one does there."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number


class Offer(StrEnum):
    """What there is at an aid station."""

    WATER = "water"
    FOOD = "food"
    DROP_BAG = "drop bag"
    CREW = "crew"
    MEDICAL = "medical"


class CutoffKind(StrEnum):
    """By when one must be in, or by when one must be out again."""

    ARRIVAL = "arrival"
    DEPARTURE = "departure"


class StopKind(StrEnum):
    """What a planned stop is for."""

    PASS = "pass"
    EAT = "eat"
    CHANGE = "change"
    SLEEP = "sleep"


class Kit(StrEnum):
    """What may be changed or taken up at an aid station."""

    SHOES = "shoes"
    SOCKS = "socks"
    TOP = "top"
    LAMP = "lamp"
    POLES = "poles"


class IfStop(Kept, frozen=True):
    """What happens if the runner ends the race here, in the runner's own words.

    `takes` is how long it is until one is fetched, `number` whom to call.
    """

    way_out: str = ""
    fetched_by: str = ""
    takes: str = ""
    number: str = ""


class AidStation(Kept, frozen=True):
    """A place on the course where one may stop, `at_m` metres from the start of the course.

    `cutoff_s` is the latest arrival or departure, as `cutoff_kind` says, in seconds of race
    time, None where there is none; `stop_s` the planned stop. `pacer_from` says that a pacer
    may come along from here on; `access` is how the crew gets there. `foods` are the keys of the
    foods of the fuel plan that stand on the table.
    """

    key: str
    name: str
    at_m: Number
    cutoff_s: Number | None = None
    stop_s: Number = 0.0
    offers: tuple[Offer, ...] = ()
    note: str = ""
    cutoff_kind: CutoffKind = CutoffKind.ARRIVAL
    stop_kind: StopKind = StopKind.PASS
    kit: tuple[Kit, ...] = ()
    pacer_from: bool = False
    if_stop: IfStop = IfStop()
    access: str = ""
    foods: tuple[str, ...] = ()

    @property
    def latest_arrival_s(self) -> float | None:
        """The race time by which one must arrive to leave in time, None without a cutoff."""
        if self.cutoff_s is None or self.cutoff_kind is CutoffKind.ARRIVAL:
            return self.cutoff_s
        return self.cutoff_s - self.stop_s

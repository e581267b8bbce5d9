"""The race: when it starts and what time it asks."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

from ultraplanner_gui.plan.value import Kept, Number

#: Years a race or session may lie in; outside them dates and zones cannot be trusted.
FIRST_YEAR, LAST_YEAR = 1900, 2200


class Race(Kept, frozen=True):
    """One race. `start` is aware; `goal_s` the finish time aimed for and `limit_s` the cutoff at
    the finish, both in seconds of race time. `mandatory_kit` is what the rules ask one to carry,
    `emergency` whom to call, as the handbook has it.
    """

    name: str
    start: datetime
    goal_s: Number
    limit_s: Number | None = None
    mandatory_kit: tuple[str, ...] = ()
    emergency: str = ""

    def __post_init__(self) -> None:
        if self.start.tzinfo is None:
            raise ValueError("Race.start must be aware")

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Race):
            return NotImplemented
        return self._parts() == other._parts()

    def __hash__(self) -> int:
        return hash(self._parts())

    @property
    def day(self) -> date:
        """The date of the start, where the race is."""
        return self.start.date()

    def clock(self, elapsed_s: float) -> datetime:
        """Return the wall clock at the race after *elapsed_s* seconds, daylight saving included."""
        return (self.start.astimezone(UTC) + timedelta(seconds=elapsed_s)).astimezone(
            self.start.tzinfo
        )

    def elapsed(self, clock: datetime) -> float:
        """Return the seconds of race time at the aware *clock*."""
        return (clock.astimezone(UTC) - self.start.astimezone(UTC)).total_seconds()

    def _parts(self) -> tuple[object, ...]:
        # Aware times are equal at one instant whatever their zones, and within one zone whichever
        # 01:30 they mean. To the user another zone, or the other 01:30, is another start.
        start = self.start
        clock = start.replace(tzinfo=None, fold=0)
        return (
            *(self.name, clock, start.utcoffset(), start.tzinfo, self.goal_s, self.limit_s),
            *(self.mandatory_kit, self.emergency),
        )

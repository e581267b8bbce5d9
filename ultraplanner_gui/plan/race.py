"""The race: when it starts and what time it asks."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta


@dataclass(frozen=True, slots=True)
class Race:
    """One race. `start` is aware; `goal_s` the finish time aimed for and `limit_s` the cutoff at
    the finish, both in seconds of race time."""

    name: str
    start: datetime
    goal_s: float
    limit_s: float | None = None

    def __post_init__(self) -> None:
        if self.start.tzinfo is None:
            raise ValueError("Race.start must be aware")

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

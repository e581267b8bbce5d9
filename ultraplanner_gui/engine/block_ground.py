"""What ground a session is run on, how hard and how fast, by its kind and the race."""

from __future__ import annotations

from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.block_weeks import Calendar, tune_up_s
from ultraplanner_gui.engine.runway import CLIMB_SHARE
from ultraplanner_gui.plan.block import Ground, Kind
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.training import reach_m, time_on_feet_s

HILLY_PER_M = 0.010
DOWNHILL_RACE_M = 1000.0
FIRST_CLIMB_SHARE = 0.5
STEEPEST_PER_M = 0.080
LEAST_DOWNHILL_PER_M = 0.025

# Own defaults, open to change by the user: effort on ten steps, speed against easy running and
# how much of the race's climb per kilometre the kind takes relative to the week as a whole.
EFFORT = {
    Kind.RECOVERY: 2,
    Kind.EASY: 3,
    Kind.LONG: 4,
    Kind.SECOND_LONG: 4,
    Kind.REHEARSAL: 4,
    Kind.HILLS: 7,
    Kind.DOWNHILL: 5,
    Kind.TEMPO: 6,
    Kind.INTERVALS: 8,
    Kind.TUNE_UP: 8,
    Kind.RACE: 8,
}
SPEED = {Kind.RECOVERY: 0.93, Kind.TEMPO: 1.08, Kind.INTERVALS: 1.05}
CLIMB = {
    Kind.RECOVERY: 0.10,
    Kind.EASY: 0.45,
    Kind.LONG: 1.25,
    Kind.SECOND_LONG: 1.25,
    Kind.REHEARSAL: 1.25,
    Kind.HILLS: 2.2,
    Kind.DOWNHILL: 2.2,
    Kind.TEMPO: 0.25,
    Kind.INTERVALS: 0.15,
}
LIMIT_S = {
    Kind.RECOVERY: 45 * 60.0,
    Kind.EASY: 130 * 60.0,
    Kind.HILLS: 110 * 60.0,
    Kind.DOWNHILL: 110 * 60.0,
    Kind.TEMPO: 100 * 60.0,
    Kind.INTERVALS: 90 * 60.0,
}


class GroundRules(Value, frozen=True):
    """Climb per metre, speed and time of sessions in the weeks of one block."""

    request: BlockRequest
    first_week: int
    taper_weeks: int

    @classmethod
    def of(cls, request: BlockRequest, weeks: Calendar) -> GroundRules:
        """Return the rules for *request* in *weeks*."""
        return cls(request, weeks.first_week, weeks.taper_weeks)

    @property
    def race_per_m(self) -> float:
        """Climb per metre of the race."""
        return self.request.climb_m / self.request.race_m

    @property
    def is_hilly(self) -> bool:
        """Whether the race climbs enough to ask for hill runs."""
        return self.race_per_m >= HILLY_PER_M

    def climb_per_m(self, kind: Kind, to_go: int) -> float:
        """Return the climb per metre of a session of *kind*, growing toward the race's."""
        if kind in (Kind.TUNE_UP, Kind.RACE):
            return self.race_per_m
        weeks = max(1, self.first_week - self.taper_weeks)
        progress = min(1.0, max(0.0, (self.first_week - to_go) / weeks))
        peak = CLIMB_SHARE[self.request.runner.level]
        share = FIRST_CLIMB_SHARE + (peak - FIRST_CLIMB_SHARE) * progress
        base = self.race_per_m
        if kind is Kind.DOWNHILL:
            base = max(base, self.request.drop_m / self.request.race_m, LEAST_DOWNHILL_PER_M)
        per_m = base * share * CLIMB[kind]
        if kind in (Kind.LONG, Kind.SECOND_LONG, Kind.REHEARSAL):
            return min(per_m, 1.05 * base)
        return min(per_m, max(STEEPEST_PER_M, base))

    def speed_mps(self, kind: Kind) -> float:
        """Return the speed on level ground."""
        return self.request.runner.easy_mps * SPEED.get(kind, 1.0)

    def limit_m(self, kind: Kind, to_go: int, free_s: float) -> float:
        """Return the distance that *free_s*, or the usual limit of the kind, holds."""
        time_s = min(free_s, LIMIT_S.get(kind, free_s))
        return reach_m(time_s, self.climb_per_m(kind, to_go), self.speed_mps(kind))

    def time_s(self, kind: Kind, distance_m: float, climb_m: float) -> float:
        """Return the time a session takes."""
        if kind is Kind.RACE:
            return self.request.race_s
        if kind is Kind.TUNE_UP:
            return tune_up_s(self.request, distance_m)
        return time_on_feet_s(distance_m, climb_m, self.speed_mps(kind))

    @staticmethod
    def ground(kind: Kind, climb_per_m: float) -> Ground:
        """Return the shape of the ground."""
        if kind is Kind.HILLS and climb_per_m >= HILLY_PER_M:
            return Ground.RISING
        if kind is Kind.DOWNHILL:
            return Ground.FALLING
        if climb_per_m >= 2 * HILLY_PER_M:
            return Ground.SAW
        return Ground.ROLLING if climb_per_m >= 0.6 * HILLY_PER_M else Ground.LEVEL

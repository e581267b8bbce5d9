"""Section figures: targets, arrivals, cutoffs, time in hand, arrival windows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.race import Race


@dataclass(frozen=True, slots=True)
class SectionFigures:
    """One section, times in seconds of race time on the target curve unless said.

    `station` is the key of the aid station at its end, None at the finish or a free end.
    `arrive_s`, `leave_s` are at its end; `moving_s` is the running time in it (leave of the
    section before to arrival). `forecast_s` is the arrival on the forecast curve, `window_s`
    the 10th and 90th percentile of arrival about it. `cutoff_s` is None where there is none;
    `to_cutoff_s` cutoff minus the later of target and forecast arrival; `in_hand_s` how much
    later one could arrive at its end and still make this and every later cutoff at planned
    speed (None without one). `is_fixed` says that the runner fixed its target.
    """

    key: str
    station: str | None
    name: str
    start_m: float
    end_m: float
    climb_m: float
    drop_m: float
    moving_s: float
    arrive_s: float
    leave_s: float
    forecast_s: float
    window_s: tuple[float, float]
    cutoff_s: float | None
    to_cutoff_s: float | None
    in_hand_s: float | None
    is_fixed: bool

    @property
    def length_m(self) -> float:
        """Length of the section."""
        return self.end_m - self.start_m

    @property
    def pace_s_per_m(self) -> float:
        """Target pace while moving."""
        return self.moving_s / self.length_m


def shaped_target(course: Course, target: PacePlan, goal_s: float) -> PacePlan:
    """Return *target* with the sections the runner fixed at their times.

    The free sections share what is left so that the finish stays at *goal_s*; when all are
    fixed the finish moves. PlanError, naming the section, if the free ones would have to be
    run in less than half or more than twice their time.
    """
    raise NotImplementedError


def section_figures(
    course: Course, race: Race, profile: Profile, forecast: PacePlan, target: PacePlan
) -> tuple[SectionFigures, ...]:
    """Return the figures of every section, in course order."""
    raise NotImplementedError


def tightest(sections: Sequence[SectionFigures]) -> SectionFigures | None:
    """Return the section whose end's cutoff leaves the least time; None without cutoffs."""
    raise NotImplementedError

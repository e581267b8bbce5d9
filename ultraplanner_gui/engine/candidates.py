"""Races one may pick from, side by side: is there time, what ground, what dark, which cutoffs."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, time, timedelta, tzinfo
from zoneinfo import ZoneInfo

from msgspec.structs import replace

from ultraplanner_gui.engine.first_plan import KEPT_SPEED
from ultraplanner_gui.engine.light import light_spans
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_week import rest_after, weeks_left
from ultraplanner_gui.engine.runway import Runway, growth_of, race_asks, runway
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import standing
from ultraplanner_gui.plan.candidates import Candidate
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.training import CLIMB_EQUIVALENT

HOUR_S = 3600.0
IN_HAND_HOLDS = 0.05


class Leg(Value, frozen=True):
    """The way from one cutoff to the next; the last one ends at the finish.

    `asked_mps` is the flat-equivalent speed its time allows, `does_mps` what the runner is likely
    to do, `arrival_s` the likely race time at its end, `in_hand_s` how long before the cutoff.
    """

    start_m: float
    end_m: float
    flat_m: float
    cutoff_s: float
    asked_mps: float
    does_mps: float
    arrival_s: float

    @property
    def in_hand_s(self) -> float:
        """Seconds before the cutoff; below 0 after it."""
        return self.cutoff_s - self.arrival_s

    @property
    def state(self) -> State:
        """How the likely arrival stands against the cutoff."""
        if self.in_hand_s < 0.0:
            return State.BREAKS
        return State.HOLDS if self.in_hand_s >= IN_HAND_HOLDS * self.cutoff_s else State.STRAINS


class CandidateFigures(Value, frozen=True):
    """What one race asks. `finish_s` is the likely finish, `dark_s` the dark part of it, None
    where no place is known; `state` is the worse of runway and cutoffs, `after` whether there is
    time for it after the race of the plan, None where it comes no later.
    """

    candidate: Candidate
    start: datetime
    finish_s: float
    climb_per_m: float
    drop_per_m: float
    dark_s: float | None
    way: Runway
    legs: tuple[Leg, ...]
    state: State
    says: tuple[Message, ...]
    after: tuple[State, Message] | None = None

    @property
    def tightest(self) -> Leg | None:
        """The leg that ends with the least time in hand."""
        return min(self.legs, key=lambda leg: leg.in_hand_s, default=None)


def candidate_figures(
    project: Project, outlook: Outlook, today: date
) -> tuple[CandidateFigures, ...]:
    """Return the figures of every candidate of *project*, in their order."""
    weekly_m, longest_m = standing(project, outlook.weeks, today)
    place = None
    if outlook.profile is not None:
        place = outlook.profile.latitude_deg, outlook.profile.longitude_deg
    figures = (
        _figures(candidate, project, (weekly_m, longest_m), place, today)
        for candidate in project.candidates
    )
    finish_s = outlook.target.finish_s if outlook.target is not None else project.race.goal_s
    return tuple(replace(one, after=_after(one, project, finish_s)) for one in figures)


def _after(
    figures: CandidateFigures, project: Project, finish_s: float
) -> tuple[State, Message] | None:
    """Return whether rest and a build-up fit between the race of the plan and this one."""
    end, rest = project.race.clock(finish_s).date(), rest_after(finish_s)
    if figures.candidate.day <= end:
        return None
    weeks, apart = weeks_left(figures.candidate.day, end, rest)
    needed = figures.way.weeks_needed
    if apart < rest.race_weeks[0]:
        state, text = State.BREAKS, TOO_SOON
    else:
        state, text = (State.HOLDS if weeks >= needed else State.STRAINS), LEFT
    return state, message(text, project.race.name, weeks, needed, apart, rest.race_weeks[0])


def _figures(
    candidate: Candidate,
    project: Project,
    now: tuple[float, float],
    place: tuple[float, float] | None,
    today: date,
) -> CandidateFigures:
    runner = project.runner
    finish_s = likely_s(candidate.distance_m, candidate.climb_m, runner)
    asks = race_asks(
        candidate.distance_m,
        finish_s,
        runner.level,
        climb_m=candidate.climb_m,
        easy_mps=runner.easy_mps,
    )
    way = runway(
        asks,
        runner,
        today,
        candidate.day,
        project.first_weekday,
        finish_s,
        weekly_m=now[0],
        longest_m=now[1],
        cutback_every=runner.wishes.cutback_every,
        growth=growth_of(runner.wishes),
    )
    start = _start(candidate, project.race.start.tzinfo)
    legs = legs_of(candidate, finish_s, runner)
    states = [way.state, *(leg.state for leg in legs)]
    if candidate.day <= today:
        states = [State.BREAKS]
    return CandidateFigures(
        candidate,
        start,
        finish_s,
        candidate.climb_m / candidate.distance_m,
        candidate.drop_m / candidate.distance_m,
        _dark_s(candidate, start, finish_s, place),
        way,
        legs,
        max(states, key=_ORDER.index),
        _says(candidate, way, legs, today),
    )


_ORDER = (State.HOLDS, State.STRAINS, State.BREAKS)


def likely_s(distance_m: float, climb_m: float, runner: Runner) -> float:
    """Return a likely finish from easy speed, a metre of climb as eight along.

    Scarf 2007, J Sports Sci 25:719; that four fifths of easy speed are kept is our own choice.
    """
    return (distance_m + CLIMB_EQUIVALENT * climb_m) / (KEPT_SPEED * runner.easy_mps)


def legs_of(candidate: Candidate, finish_s: float, runner: Runner) -> tuple[Leg, ...]:
    """Return the legs between cutoffs, by flat-equivalent distance and the runner's fade."""
    ends = [(s.at_m, s.climb_m, s.cutoff_s) for s in candidate.stops]
    if candidate.limit_s is not None:
        ends.append((candidate.distance_m, candidate.climb_m, candidate.limit_s))
    whole_m = candidate.distance_m + CLIMB_EQUIVALENT * candidate.climb_m
    legs: list[Leg] = []
    before_m = before_flat_m = before_cutoff_s = before_s = 0.0
    for at_m, climb_m, cutoff_s in ends:
        flat_m = at_m + CLIMB_EQUIVALENT * climb_m
        arrival_s = arrival_at(flat_m / whole_m, finish_s, runner)
        way_m = max(0.0, flat_m - before_flat_m)
        legs.append(
            Leg(
                before_m,
                at_m,
                way_m,
                cutoff_s,
                way_m / max(1.0, cutoff_s - before_cutoff_s),
                way_m / max(1.0, arrival_s - before_s),
                arrival_s,
            )
        )
        before_m, before_flat_m, before_cutoff_s, before_s = at_m, flat_m, cutoff_s, arrival_s
    return tuple(legs)


def arrival_at(share: float, finish_s: float, runner: Runner) -> float:
    """Return the race time at *share* of the work of a race of *finish_s*, by the runner's fade.

    Power after h hours is (1 + h / onset) ** -fade: the model of race day, own fit, without night.
    """
    onset_s, kept = runner.fade_onset_h * HOUR_S, 1.0 - runner.fade
    whole = (1.0 + finish_s / onset_s) ** kept - 1.0
    return float(onset_s * ((1.0 + share * whole) ** (1.0 / kept) - 1.0))


def _start(candidate: Candidate, zone: tzinfo | None) -> datetime:
    there = ZoneInfo(candidate.zone) if candidate.zone else zone
    at = datetime.combine(candidate.day, time(), there)
    return at + timedelta(seconds=candidate.start_s)


def _dark_s(
    candidate: Candidate,
    start: datetime,
    finish_s: float,
    place: tuple[float, float] | None,
) -> float | None:
    if candidate.latitude_deg is not None and candidate.longitude_deg is not None:
        place = candidate.latitude_deg, candidate.longitude_deg
    if place is None:
        return None
    race = Race(candidate.name, start, finish_s)
    spans = light_spans(race, finish_s, *place)
    return sum(s.end_s - s.start_s for s in spans if s.kind == "dark")


def _says(
    candidate: Candidate, way: Runway, legs: Sequence[Leg], today: date
) -> tuple[Message, ...]:
    if candidate.day <= today:
        return (message(PAST),)
    says = [message(SPARE if way.weeks_spare >= 0 else SHORT, abs(way.weeks_spare))]
    says.append(way.reason)
    tightest = min(legs, key=lambda leg: leg.in_hand_s, default=None)
    if tightest is None:
        says.append(message(NO_CUTOFFS))
    else:
        text = LATE if tightest.in_hand_s < 0.0 else IN_HAND
        says.append(
            message(text, Quantity(tightest.end_m, "m"), Quantity(abs(tightest.in_hand_s), "s"))
        )
    asked = max(legs, key=lambda leg: leg.asked_mps / max(1e-6, leg.does_mps), default=None)
    if asked is not None and asked.asked_mps > asked.does_mps:
        says.append(
            message(
                FASTEST,
                Quantity(asked.start_m, "m"),
                Quantity(asked.end_m, "m"),
                Quantity(1.0 / asked.asked_mps, "pace_s_per_m"),
                Quantity(1.0 / asked.does_mps, "pace_s_per_m"),
            )
        )
    return tuple(says)


PAST = QT_TRANSLATE_NOOP("Candidates", "This race lies in the past.")
SPARE = QT_TRANSLATE_NOOP("Candidates", "Weeks to spare: {0}.")
SHORT = QT_TRANSLATE_NOOP("Candidates", "Weeks missing for all it asks: {0}.")
NO_CUTOFFS = QT_TRANSLATE_NOOP("Candidates", "No cutoffs are entered.")
IN_HAND = QT_TRANSLATE_NOOP("Candidates", "The tightest cutoff is at {0}, with {1} in hand.")
LATE = QT_TRANSLATE_NOOP("Candidates", "The cutoff at {0} is likely to be missed by {1}.")
LEFT = QT_TRANSLATE_NOOP(
    "Candidates",
    "After {0} and its rest {1} weeks are left to build up; {2} are needed from where you are now.",
)
TOO_SOON = QT_TRANSLATE_NOOP(
    "Candidates",
    "Only {3} weeks after {0}: the next race of that size comes after {4} at the soonest.",
)
FASTEST = QT_TRANSLATE_NOOP(
    "Candidates",
    "From {0} to {1} the cutoffs ask {2} of level ground; {3} is likely. Time in hand from before "
    "must last.",
)

"""Sessions that stand in for a stretch of the race on the ground there is at home.

The demand of a stretch is its time on feet by class of gradient. Each ground gives what it can:
a treadmill any gradient it can be set to, a hill, stairs or a ramp one gradient up and as much
down again, a path the level, a recorded loop what it is. The match is the likeness of the two
distributions of time; it describes, no trial says what it is worth.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.match import GRADIENT_EDGES
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.block import Ground, Session
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind, Repeat
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.gradient_cost import pace_cost
from ultraplanner_gui.science.training import likeness

CLASSES = len(GRADIENT_EDGES) + 1
LEVEL_CLASS = CLASSES // 2
#: Gradient a class stands for where nothing of it is there.
MIDDLES = (-0.20, -0.11, -0.05, 0.0, 0.05, 0.11, 0.20)
SLOPES = (GroundKind.HILL, GroundKind.STAIRS, GroundKind.RAMP)
MOST_S = 3 * 3600.0
MOST_REPEATS = 40
LEAST_MATCH = 0.20
PIECE_S = 600.0
ROUND_S = 30.0
LEAST_S = 60.0
LEAST_DROP_M = 100.0
DROP_A_SET_M = 200.0
SETS = (2, 6)
STEPS_A_SET = 15


class Stretch(Value, frozen=True):
    """A stretch of the race: time on feet, gradient, climb and drop by class of gradient."""

    length_m: float
    time_s: tuple[float, ...]
    gradient: tuple[float, ...]
    climb_m: tuple[float, ...]
    drop_m: tuple[float, ...]

    @property
    def whole_s(self) -> float:
        """Time on feet in all."""
        return sum(self.time_s)

    def scaled(self, share: float) -> Stretch:
        """Return a stretch of the same ground, *share* times as long."""
        return Stretch(
            share * self.length_m,
            tuple(share * s for s in self.time_s),
            self.gradient,
            tuple(share * m for m in self.climb_m),
            tuple(share * m for m in self.drop_m),
        )


class StandIn(Value, frozen=True):
    """One session: its parts, what they come to, and how they match the stretch.

    `share` is how much of the stretch it stands for, `match` from 0 to 1; `cannot` says what is
    not matched and what to do instead.
    """

    grounds: tuple[str, ...]
    repeats: tuple[Repeat, ...]
    time_s: float
    distance_m: float
    climb_m: float
    drop_m: float
    share: float
    match: float
    cannot: tuple[Message, ...] = ()

    @property
    def steepest(self) -> float:
        """Steepest gradient of its parts, up or down; stairs are steeper than one runs down."""
        return max(abs(r.gradient) for r in self.repeats)


def stretch_of(profile: Profile, pace: PacePlan, start_m: float, end_m: float) -> Stretch:
    """Return what the race from *start_m* to *end_m* asks at the times of *pace*, without stops."""
    along = profile.distance_m
    elapsed = np.interp(along, pace.distance_m, pace.elapsed_s)
    middle = 0.5 * (along[1:] + along[:-1])
    inside = (middle >= start_m) & (middle <= end_m)
    gradient = profile.gradient[:-1]
    length = np.diff(along) * inside
    typical = pace_cost(gradient)
    took = np.diff(elapsed) * inside
    # What takes over three times the usual is a stop.
    usual = length * typical
    rate = float(np.median(took[inside] / usual[inside]) if inside.any() else 0.0)
    took = np.minimum(took, 3.0 * rate * usual)
    rise = length * gradient
    classes = np.digitize(gradient, GRADIENT_EDGES)

    def by_class(values: np.typing.NDArray[np.float64]) -> tuple[float, ...]:
        return tuple(float(v) for v in np.bincount(classes, weights=values, minlength=CLASSES))

    lengths, rises = by_class(length), by_class(rise)
    return Stretch(
        float(length.sum()),
        by_class(took),
        tuple(r / m if m > 0 else g for r, m, g in zip(rises, lengths, MIDDLES, strict=True)),
        by_class(np.maximum(rise, 0.0)),
        by_class(np.maximum(-rise, 0.0)),
    )


def stand_ins(
    stretch: Stretch,
    grounds: Sequence[GroundAtHand],
    runner: Runner,
    most_s: float = MOST_S,
    least_match: float = LEAST_MATCH,
) -> tuple[StandIn, ...]:
    """Return sessions for *stretch* on each of *grounds* and on all together, best match first.

    None is longer than *most_s* or the stretch; a stretch longer than that is stood in for in
    proportion. No slope is run more than forty times. Under *least_match* only the best is kept.
    """
    if stretch.whole_s <= 0.0 or not grounds:
        return ()
    share = min(1.0, most_s / stretch.whole_s)
    asked = stretch.scaled(share)
    found: dict[tuple[Repeat, ...], StandIn] = {}
    for chosen in _choices(grounds):
        made = _Session(asked, chosen, runner).made(stretch.whole_s)
        if made is not None:
            found.setdefault(made.repeats, made)
    order = sorted(found.values(), key=lambda s: (-round(s.match, 3), len(s.grounds)))
    return tuple(s for n, s in enumerate(order) if n == 0 or s.match >= least_match)


def _choices(grounds: Sequence[GroundAtHand]) -> list[tuple[GroundAtHand, ...]]:
    """Return each ground alone, and a treadmill and a path with each slope and without one."""
    choices: list[tuple[GroundAtHand, ...]] = [(ground,) for ground in grounds]
    slopes = [g for g in grounds if g.kind in SLOPES]
    mill = [g for g in grounds if g.kind is GroundKind.TREADMILL][:1]
    path = [g for g in grounds if g.kind is GroundKind.PATH][:1]
    for slope in ((), *((g,) for g in slopes)):
        for beside in ((*mill, *path), path):
            if len(slope) + len(beside) > 1:
                choices.append((*slope, *beside))
    return choices


def as_session(stand_in: StandIn, session: Session) -> Session:
    """Return *session* run as *stand_in*."""
    up, down = stand_in.climb_m, stand_in.drop_m
    ground = Ground.LEVEL
    if max(up, down) > 0.006 * stand_in.distance_m:
        ground = Ground.SAW if min(up, down) > 0.5 * max(up, down) else Ground.RISING
    return replace(
        session,
        distance_m=stand_in.distance_m,
        duration_s=stand_in.time_s,
        climb_m=up,
        drop_m=down,
        ground=ground,
        repeats=stand_in.repeats,
        ends_on=None,
    )


@dataclass(slots=True)
class _Session:
    """A session being made for *asked* on *grounds*."""

    asked: Stretch
    grounds: Sequence[GroundAtHand]
    runner: Runner
    repeats: list[Repeat] = field(default_factory=list)
    given_s: list[float] = field(default_factory=lambda: [0.0] * CLASSES)
    distance_m: float = 0.0

    def made(self, whole_s: float) -> StandIn | None:
        """Return the session, None if these grounds give nothing of it."""
        loops = [g for g in self.grounds if g.kind is GroundKind.LOOP]
        if loops:
            self._laps(loops[0], self.asked.whole_s)
        else:
            self._hill()
            self._mill_climbs()
            self._mill_descents()
            self._level()
        if not self.repeats:
            return None
        climb_m = sum(r.count * r.climb_m for r in self.repeats)
        drop_m = sum(r.count * r.drop_m for r in self.repeats)
        used = {r.place for r in self.repeats}
        time_s = sum(r.count * r.each_s for r in self.repeats)
        return StandIn(
            tuple(g.key for g in self.grounds if g.key in used),
            tuple(self.repeats),
            time_s,
            self.distance_m,
            climb_m,
            drop_m,
            min(1.0, time_s / whole_s),
            likeness(self.asked.time_s, self.given_s),
            tuple(self._cannot(climb_m, drop_m)),
        )

    @property
    def _treadmill(self) -> GroundAtHand | None:
        return next((g for g in self.grounds if g.kind is GroundKind.TREADMILL), None)

    def _hill(self) -> None:
        """Run the slope up and down: for the descent asked where a treadmill does the climbs,
        else for both together.
        """
        slope = next((g for g in self.grounds if g.kind in SLOPES), None)
        if slope is None:
            return
        gradient = _gradient(slope)
        up_s = self._piece_s(slope.length_m, gradient)
        down_s = self._piece_s(slope.length_m, -gradient)
        climbs, descents = self._asked_s()
        if self._treadmill is None:
            count = round((climbs + descents) / (up_s + down_s))
        else:
            count = min(round(descents / down_s), int(climbs / up_s))
        count = min(MOST_REPEATS, count)
        if count:
            self._add(slope.key, count, gradient, up_s, slope.climb_m)
            self._add(slope.key, count, -gradient, down_s, slope.climb_m)

    def _asked_s(self) -> tuple[float, float]:
        times = self.asked.time_s
        return sum(times[LEVEL_CLASS + 1 :]), sum(times[:LEVEL_CLASS])

    def _mill_climbs(self) -> None:
        """Give the climbs asked, steepest first, less what the slope has given."""
        ground = self._treadmill
        if ground is None or ground.most_gradient <= GRADIENT_EDGES[LEVEL_CLASS]:
            return
        spare = sum(self.given_s[LEVEL_CLASS + 1 :])
        for number in self._nearest_first(range(LEVEL_CLASS + 1, CLASSES)):
            asked_s = self.asked.time_s[number]
            taken = min(spare, asked_s)
            spare -= taken
            if asked_s - taken >= LEAST_S:
                self._mill(ground, self.asked.gradient[number], asked_s - taken)

    def _nearest_first(self, numbers: range) -> list[int]:
        """Return the classes with those a slope has given first, then the others."""
        given = [n for n in numbers if self.given_s[n] > 0.0]
        at = given[0] if given else numbers[-1]
        return sorted(numbers, key=lambda n: (abs(n - at), n))

    def _mill_descents(self) -> None:
        """Give the descents the slope has not, where the treadmill goes down."""
        ground = self._treadmill
        if ground is None or ground.least_gradient >= GRADIENT_EDGES[LEVEL_CLASS - 1]:
            return
        left = self._asked_s()[1] - sum(self.given_s[:LEVEL_CLASS])
        if left >= LEAST_S:
            asked = -sum(self.asked.drop_m) / max(1.0, self._asked_down_m())
            self._mill(ground, asked, left)

    def _asked_down_m(self) -> float:
        gradients = self.asked.gradient[:LEVEL_CLASS]
        drops = self.asked.drop_m[:LEVEL_CLASS]
        return sum(m / -g for m, g in zip(drops, gradients, strict=True) if g < 0.0)

    def _level(self) -> None:
        left = self.asked.time_s[LEVEL_CLASS]
        if left < LEAST_S:
            return
        flat = [g for g in self.grounds if g.kind is GroundKind.PATH]
        mills = [g for g in self.grounds if g.kind is GroundKind.TREADMILL]
        mills = [g for g in mills if g.least_gradient <= 0.0 <= g.most_gradient]
        if flat or mills:
            ground = (flat or mills)[0]
            each_s = max(ROUND_S, round(left / ROUND_S) * ROUND_S)
            self._add(ground.key, 1, 0.0, each_s)

    def _mill(self, ground: GroundAtHand, asked: float, time_s: float) -> None:
        gradient = round(_reached(ground, asked), 3)
        count = max(1, round(time_s / PIECE_S))
        each_s = max(ROUND_S, round(time_s / count / ROUND_S) * ROUND_S)
        self._add(ground.key, count, gradient, each_s)

    def _laps(self, ground: GroundAtHand, whole_s: float) -> None:
        pieces = list(_pieces(ground))
        times = [self._piece_s(length, gradient) for length, gradient in pieces]
        lap_s = sum(times)
        count = round(whole_s / lap_s) if lap_s > 0.0 else 0
        if count < 1:
            return
        length_m = sum(length for length, _ in pieces)
        climb_m = sum(max(0.0, length * gradient) for length, gradient in pieces)
        drop_m = sum(max(0.0, -length * gradient) for length, gradient in pieces)
        self.repeats.append(Repeat(ground.key, count, 0.0, lap_s, climb_m, drop_m))
        self.distance_m += count * length_m
        for (_, gradient), time_s in zip(pieces, times, strict=True):
            self._gave(gradient, count * time_s)

    def _add(
        self, place: str, count: int, gradient: float, each_s: float, height_m: float | None = None
    ) -> None:
        if height_m is None:
            height_m = abs(gradient) * self._speed(gradient) * each_s
        up, down = (height_m, 0.0) if gradient > 0 else (0.0, height_m)
        self.repeats.append(Repeat(place, count, gradient, each_s, up, down))
        self.distance_m += count * self._speed(gradient) * each_s
        self._gave(gradient, count * each_s)

    def _gave(self, gradient: float, time_s: float) -> None:
        self.given_s[int(np.digitize(gradient, GRADIENT_EDGES))] += time_s

    def _piece_s(self, length_m: float, gradient: float) -> float:
        return length_m / self._speed(gradient)

    def _speed(self, gradient: float) -> float:
        """Return easy speed at *gradient*, no faster up than the runner climbs."""
        speed = self.runner.easy_mps / float(pace_cost(gradient, self.runner.uphill_share))
        if gradient > 0.0 and self.runner.hill_m_per_h > 0.0:
            speed = min(speed, self.runner.hill_m_per_h / 3600.0 / gradient)
        return speed

    def _cannot(self, climb_m: float, drop_m: float) -> list[Message]:
        asked_up, asked_down = sum(self.asked.climb_m), sum(self.asked.drop_m)
        said: list[Message] = []
        if asked_down - drop_m >= LEAST_DROP_M:
            text = NO_DESCENT if drop_m == 0.0 else LITTLE_DESCENT
            missing = asked_down - drop_m
            sets = min(SETS[1], max(SETS[0], math.ceil(missing / DROP_A_SET_M)))
            said.append(
                message(text, Quantity(missing, "height_m"), Quantity(asked_down, "height_m"))
            )
            said.append(message(STEP_DOWNS, sets, STEPS_A_SET))
        if asked_up - climb_m >= LEAST_DROP_M:
            missing = asked_up - climb_m
            said.append(
                message(NO_CLIMB, Quantity(missing, "height_m"), Quantity(asked_up, "height_m"))
            )
        steepest = self._steeper_than()
        if steepest is not None:
            said.append(steepest)
        return said

    def _steeper_than(self) -> Message | None:
        climbs = [r.gradient for r in self.repeats if r.climb_m > 0.0 and r.gradient > 0.0]
        asked = [
            g
            for g, s in zip(self.asked.gradient, self.asked.time_s, strict=True)
            if g > 0.0 and s >= LEAST_S
        ]
        if not climbs or not asked or max(asked) - max(climbs) < 0.03:
            return None
        return message(
            STEEPER,
            Quantity(100.0 * max(asked), "percent"),
            Quantity(100.0 * max(climbs), "percent"),
        )


def _gradient(ground: GroundAtHand) -> float:
    return ground.climb_m / ground.length_m if ground.length_m > 0.0 else 0.0


def _reached(ground: GroundAtHand, asked: float) -> float:
    return min(max(asked, ground.least_gradient), ground.most_gradient)


def _pieces(ground: GroundAtHand) -> list[tuple[float, float]]:
    """Return length and gradient of every piece of a loop; half up, half down without points."""
    along, heights = ground.distance_m, ground.elevation_m
    if len(along) >= 2:
        return [
            (b - a, (heights[n + 1] - heights[n]) / (b - a))
            for n, (a, b) in enumerate(pairwise(along))
            if b > a
        ]
    if ground.length_m <= 0.0:
        return []
    half = 0.5 * ground.length_m
    return [(half, ground.climb_m / half), (half, -ground.drop_m / half)]


NO_DESCENT = QT_TRANSLATE_NOOP(
    "StandIn", "Nothing here goes down: {0} of the {1} of drop cannot be matched."
)
LITTLE_DESCENT = QT_TRANSLATE_NOOP("StandIn", "{0} of the {1} of drop is left out.")
STEP_DOWNS = QT_TRANSLATE_NOOP(
    "StandIn",
    "Instead, {0} sets of {1} slow step-downs a leg from a step, three seconds each: some of what "
    "descents do to the quads. Begin with two sets.",
)
NO_CLIMB = QT_TRANSLATE_NOOP("StandIn", "{0} of the {1} of climb is left out.")
STEEPER = QT_TRANSLATE_NOOP(
    "StandIn", "The race climbs at {0}, here it is {1} at most: climb longer, or with steps of two."
)

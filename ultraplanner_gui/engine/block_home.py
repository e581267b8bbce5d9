"""Hill and downhill runs of a block put on the ground there is where the runner lives."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.stand_in import (
    CLASSES,
    MIDDLES,
    StandIn,
    Stretch,
    as_session,
    stand_ins,
)
from ultraplanner_gui.plan.block import Ground, Kind, Session
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.science.gradient_cost import pace_cost

UP, DOWN, LEVEL = 5, 1, 3
NEAR_HOME = (Kind.EASY, Kind.RECOVERY, Kind.TEMPO, Kind.INTERVALS)
LEAST_LOOP_M = 20.0
RUNNABLE = 0.30
LEAST_M = 50.0
STEP_M = 10.0


def at_home(sessions: Sequence[Session], request: BlockRequest) -> list[Session]:
    """Return *sessions*, hill and downhill runs in repeats on the runner's own ground.

    Distance and time stay as planned; climb and drop are what that ground gives. Where nothing
    goes down, a downhill run is left as it is, for ground farther away. Who lives where it is flat
    has easy runs on the level; long runs keep the race's climb, which is worth a journey.
    """
    if not request.runner.grounds:
        return list(sessions)
    flat = lives_flat(request.runner)
    return [_placed(s, request, flat=flat) for s in sessions]


def lives_flat(runner: Runner) -> bool:
    """Return whether places to train are named and none of them is a hill or a loop that climbs."""
    hills = [g for g in runner.grounds if g.kind is GroundKind.HILL or _climbs(g)]
    return bool(runner.grounds) and not hills


def _climbs(ground: GroundAtHand) -> bool:
    heights = ground.elevation_m
    climb_m = max(heights) - min(heights) if heights else ground.climb_m
    return ground.kind is GroundKind.LOOP and climb_m >= LEAST_LOOP_M


def _placed(session: Session, request: BlockRequest, *, flat: bool) -> Session:
    if session.kind in (Kind.HILLS, Kind.DOWNHILL):
        return _at_home(session, request)
    if flat and session.kind in NEAR_HOME:
        return replace(session, climb_m=0.0, drop_m=0.0, ground=Ground.LEVEL)
    return session


def _at_home(session: Session, request: BlockRequest) -> Session:
    if session.climb_m < LEAST_M:
        return session
    runner, asked = request.runner, _stretch(session, request)
    found = stand_ins(asked, runner.grounds, runner, session.duration_s, least_match=0.0)
    best = _best(found, session.kind)
    if best is None:
        return session
    ground = Ground.FALLING if session.kind is Kind.DOWNHILL else Ground.RISING
    return replace(
        as_session(best, session),
        distance_m=session.distance_m,
        duration_s=session.duration_s,
        climb_m=round(best.climb_m / STEP_M) * STEP_M,
        drop_m=round(best.drop_m / STEP_M) * STEP_M,
        ground=ground,
    )


def _best(found: Sequence[StandIn], kind: Kind) -> StandIn | None:
    if kind is Kind.DOWNHILL:
        down = [s for s in found if s.drop_m >= LEAST_M]
        return max(down, key=lambda s: (s.steepest <= RUNNABLE, s.drop_m, s.match), default=None)
    return next((s for s in found if s.climb_m >= LEAST_M), None)


def _stretch(session: Session, request: BlockRequest) -> Stretch:
    """Return *session* as a demand: its climb and drop at 11 %, the rest on the level."""
    up_m, down_m = session.climb_m / MIDDLES[UP], session.drop_m / -MIDDLES[DOWN]
    level_m = max(0.0, session.distance_m - up_m - down_m)
    metres = {UP: up_m, DOWN: down_m, LEVEL: level_m}
    speed = request.runner.easy_mps
    times = [metres.get(n, 0.0) * float(pace_cost(MIDDLES[n])) / speed for n in range(CLASSES)]
    climbs = [session.climb_m if n == UP else 0.0 for n in range(CLASSES)]
    drops = [session.drop_m if n == DOWN else 0.0 for n in range(CLASSES)]
    return Stretch(session.distance_m, tuple(times), MIDDLES, tuple(climbs), tuple(drops))

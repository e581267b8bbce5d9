"""Building a block: weeks counted back from the race, sessions placed on the days there are."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from ultraplanner_gui.engine.runway import Runway
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.runner import Runner


@dataclass(frozen=True, slots=True)
class BlockRequest:
    """What a block is built from. `first_day` is the first day that may hold a session;
    `race_s` the predicted finish; `dark_s` the dark part of it; `cutback_every` 3 or 4;
    `tune_ups` are dates and distances of races on the way."""

    first_day: date
    race_day: date
    race_m: float
    climb_m: float
    drop_m: float
    race_s: float
    runner: Runner
    first_weekday: int = 0
    dark_s: float = 0.0
    cutback_every: int = 4
    carb_target_g_per_h: float = 60.0
    tune_ups: tuple[tuple[date, float], ...] = ()


@dataclass(frozen=True, slots=True)
class BlockPlan:
    """A built block, its runway, and what the builder could not give, in words."""

    block: Block
    runway: Runway
    notes: tuple[Message, ...] = ()


def build_block(request: BlockRequest) -> BlockPlan:
    """Return a block for *request* by the rules; the same request gives the same block."""
    raise NotImplementedError

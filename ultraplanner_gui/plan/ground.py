"""The ground a runner has where they live, and what a session makes of it."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.surface import Surface
from ultraplanner_gui.plan.value import Kept, Number, Whole


class GroundKind(StrEnum):
    """Kinds of ground to train on."""

    TREADMILL = "treadmill"
    HILL = "hill"
    STAIRS = "stairs"
    RAMP = "car-park ramp"
    PATH = "flat path"
    LOOP = "recorded loop"


class GroundAtHand(Kept, frozen=True):
    """One place to train. `length_m` is one way up a hill, stairs or ramp, once round a loop.

    `climb_m` and `drop_m` are what one length climbs and falls; a hill, stairs or a ramp falls on
    the way back. `least_gradient` and `most_gradient` are what a treadmill can be set to, as rise
    over run. `distance_m` and `elevation_m` are the points of a recorded loop, empty otherwise.
    """

    key: str
    kind: GroundKind
    name: str = ""
    length_m: Number = 0.0
    climb_m: Number = 0.0
    drop_m: Number = 0.0
    least_gradient: Number = 0.0
    most_gradient: Number = 0.0
    surface: Surface = Surface.UNKNOWN
    distance_m: tuple[Number, ...] = ()
    elevation_m: tuple[Number, ...] = ()


class Repeat(Kept, frozen=True):
    """A part of a session run *count* times on the ground *place* (its key; empty: any).

    `gradient` is rise over run, below 0 downhill; `each_s`, `climb_m` and `drop_m` are of one time.
    """

    place: str
    count: Whole
    gradient: Number
    each_s: Number
    climb_m: Number = 0.0
    drop_m: Number = 0.0

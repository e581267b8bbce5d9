"""What a runner wants of a build-up, and the rules it is to keep."""

from __future__ import annotations

from datetime import date
from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number, Whole


class Ramp(StrEnum):
    """How the week after a cutback is counted: on from the last loading week, or back to it."""

    ON = "on from the last loading week"
    BACK = "back to the last loading week first"


class Yardstick(StrEnum):
    """What the ramp measures weeks by; by the race: hours on feet if it climbs over 30 m per km and
    the runner's weekly hours are known, else distance.
    """

    BY_RACE = "by the race"
    DISTANCE = "distance"
    TIME = "time on feet"
    FLAT = "flat-equivalent distance"


class Ask(StrEnum):
    """Whether something is wanted: where the race asks for it, always, or never."""

    BY_RACE = "by the race"
    YES = "yes"
    NO = "no"


class Wishes(Kept, frozen=True):
    """Wishes and rules. A cutback comes every 3rd or 4th week; `strength` and `cross` are sessions
    a week.

    `cross_s` is how long one of cross-training takes, `strength_s` one of strength. `fasted` are
    easy runs a week without breakfast, 0 unless the runner has switched them on.
    `long_days` are weekdays the long run may move to besides its own, Monday 0.
    """

    cutback_every: Whole = 4
    ramp: Ramp = Ramp.ON
    yardstick: Yardstick = Yardstick.BY_RACE
    strength: Whole = 2
    strength_s: Number = 1800.0
    cross: Whole = 0
    cross_s: Number = 3600.0
    back_to_back: bool = True
    downhill: Ask = Ask.BY_RACE
    night_runs: bool = True
    heat_days: bool = False
    mind: bool = True
    fasted: Whole = 0
    long_days: tuple[Whole, ...] = ()


class Away(Kept, frozen=True):
    """Days on which things are otherwise, both included: `free_s` seconds a day for running at
    most, none if 0.
    """

    first: date
    last: date
    free_s: Number = 0.0
    why: str = ""

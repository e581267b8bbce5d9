"""The runner: what they do now, when they can train, and how they tire."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.ground import GroundAtHand
from ultraplanner_gui.plan.pacing import PastRun
from ultraplanner_gui.plan.value import Kept, Number, Whole
from ultraplanner_gui.plan.wishes import Away, Wishes


class Level(StrEnum):
    """How much the build-up asks: the floor for finishing inside the cutoffs, usual, ambitious."""

    FLOOR = "floor"
    USUAL = "usual"
    AMBITIOUS = "ambitious"


class Health(StrEnum):
    """What came of the private questions on health; the answers themselves are kept nowhere."""

    NOT_ASKED = "not asked"
    CLEAR = "nothing to ask about"
    ASK_FIRST = "ask a doctor first"


#: Usual hours of the day to run at, Monday to Sunday, in seconds.
USUAL_START_S = (*(18 * 3600.0,) * 5, 8 * 3600.0, 8 * 3600.0)


class Runner(Kept, frozen=True):
    """One runner.

    `weekly_m` is the distance of a usual recent week, `longest_m` the longest run of the last
    30 days, `easy_mps` easy speed on level ground. `available_s` are the seconds free for
    running on Monday to Sunday (0: no run), `long_day` the weekday of the long run, Monday 0.
    `carb_g_per_h` is the intake the gut is known to take while running.

    `fade`, `fade_onset_h`, `uphill_share` and `night_loss` are the parameters of the pacing
    model (`engine.pacing`): power after h hours is (1 + h / fade_onset_h) ** -fade, night
    takes away `night_loss` of it, and `uphill_share` of the published uphill surcharge counts.

    `weekly_s` is the time on feet of a usual week, `longest_s` and `longest_drop_m` time and drop
    of the longest run, `hill_m_per_h` how fast easy effort climbs; 0 where unknown. `start_s` are
    the times of day of the runs, Monday to Sunday, in seconds.

    `descent_speed` is the runner's speed downhill over that of the usual curve, `finish_spread`
    how surely the finish is known beforehand (standard deviation over finish time), `tired_walk`
    the walking speed late in a race over that of a fresh hiker. `past_runs` are what a finish can
    be predicted from.
    """

    name: str = ""
    body_kg: Number = 70.0
    weekly_m: Number = 40_000.0
    longest_m: Number = 18_000.0
    easy_mps: Number = 2.6
    available_s: tuple[Number, ...] = (0.0, 3600.0, 5400.0, 3600.0, 3600.0, 18_000.0, 7200.0)
    long_day: Whole = 5
    level: Level = Level.USUAL
    carb_g_per_h: Number = 40.0
    fade: Number = 0.10
    fade_onset_h: Number = 0.75
    uphill_share: Number = 0.90
    night_loss: Number = 0.10
    health: Health = Health.NOT_ASKED
    weekly_s: Number = 0.0
    longest_s: Number = 0.0
    longest_drop_m: Number = 0.0
    hill_m_per_h: Number = 0.0
    start_s: tuple[Number, ...] = USUAL_START_S
    wishes: Wishes = Wishes()
    away: tuple[Away, ...] = ()
    grounds: tuple[GroundAtHand, ...] = ()
    descent_speed: Number = 1.0
    finish_spread: Number = 0.04
    tired_walk: Number = 0.90
    past_runs: tuple[PastRun, ...] = ()

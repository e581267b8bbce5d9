"""How the runner wants the race paced, and what they have run before."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number

#: The target keeps half of the forecast's fade unless the runner wants it otherwise.
USUAL_FADE_SHARE = 0.5


class ResultKind(StrEnum):
    """How hard a run was meant."""

    RACE = "race"
    LONG_RUN = "long run"


class PastRun(Kept, frozen=True):
    """A race or long run the runner has done, running time only.

    `flat_m` is its flat-equivalent distance where it was recorded, None where it was typed in.
    """

    distance_m: Number
    climb_m: Number
    time_s: Number
    kind: ResultKind = ResultKind.RACE
    name: str = ""
    flat_m: Number | None = None


class Pacing(Kept, frozen=True):
    """The shape of the target.

    `fade_share` of the forecast's fade stays in it: 0 is even effort. With `holds_finish` a
    section that is changed leaves the finish where it is, else the finish moves.
    """

    fade_share: Number = USUAL_FADE_SHARE
    holds_finish: bool = True

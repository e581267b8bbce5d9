"""Looking back: what was really eaten, how it ended, and what is to be remembered of it."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number, Whole


class Ending(StrEnum):
    """How a race or rehearsal ended."""

    FINISHED = "finished"
    STOPPED = "stopped by choice"
    TIMED_OUT = "past a cutoff"
    TAKEN_OUT = "taken out"


class Taken(Kept, frozen=True):
    """What was eaten or drunk at `at_s` of race time: `servings` of the food keyed `food`."""

    at_s: Number
    food: str
    servings: Number = 1.0


class Remark(Kept, frozen=True):
    """A note pinned to a place, metres from the start."""

    at_m: Number
    text: str


class Review(Kept, frozen=True):
    """One race or rehearsal looked back on; `recording` is the key of its recording.

    `taken` is None until what was eaten has been said. `why` says how it ended in the runner's own
    words.
    """

    recording: str
    ending: Ending = Ending.FINISHED
    why: str = ""
    taken: tuple[Taken, ...] | None = None
    remarks: tuple[Remark, ...] = ()
    note: str = ""


class PinnedTo(StrEnum):
    """What a lesson is pinned to."""

    HOUR = "hour"
    CLIMB = "climb"
    FOOD = "food"
    ALL = "the whole race"


class Lesson(Kept, frozen=True):
    """Something learnt. `hour_s` is race time, `climb` which climb of the course, counted from 1,
    `food` the name of a food; the one that `pin` speaks of counts.

    `learnt_at` names the race it comes from, empty for this one. One that comes from an earlier
    race asks for an `answer` before the cards are printed.
    """

    key: str
    text: str
    pin: PinnedTo = PinnedTo.ALL
    hour_s: Number = 0.0
    climb: Whole = 0
    food: str = ""
    learnt_at: str = ""
    answer: str = ""

    @property
    def is_open(self) -> bool:
        """Whether it comes from an earlier race and is not answered."""
        return bool(self.learnt_at) and not self.answer.strip()

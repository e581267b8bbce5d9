"""Days missed, what to mend around them, and what a mended block looks like."""

from __future__ import annotations

from datetime import date
from enum import StrEnum

from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.plan.block import Block, Session
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.value import Value


class Cause(StrEnum):
    """Why days were missed."""

    LIFE = "life"
    ILLNESS = "illness"
    INJURY = "injury"


class Absence(Value, frozen=True):
    """Days without running, both included, and why.

    `has_red_flag` is fever, chest symptoms or aches all over that are not gone for a day yet;
    `is_cleared` says that whoever treats an injury allows running again.
    """

    first_day: date
    last_day: date
    cause: Cause = Cause.LIFE
    has_red_flag: bool = False
    is_cleared: bool = False

    @property
    def days(self) -> int:
        """How many days were missed."""
        return (self.last_day - self.first_day).days + 1


class RepairRequest(Value, frozen=True):
    """What a block is mended by: the request it was built from, and the days missed.

    Of `built` the race, the runner (free time, days away, wishes) and the first weekday count.
    Sessions before `today` that are neither done nor missed count as run as planned.
    """

    built: BlockRequest
    absence: Absence
    today: date


class Change(Value, frozen=True):
    """One session that a mended block changes; `before` None if it is new, `after` None if it
    goes. Sessions on missed days, which are only marked, are not among the changes.
    """

    session: str
    before: Session | None
    after: Session | None


class Cost(Value, frozen=True):
    """What a mended block costs against the one before: metres of the greatest week and of the
    longest run (below 0: gained), metres in all, and loading weeks lost.
    """

    peak_m: float
    longest_m: float
    total_m: float
    weeks: int


class Choice(Value, frozen=True):
    """One way to mend a block, ready to be put in with `edits.block.ReplaceBlock`.

    `name` is short, `why` one sentence. `is_proven` says that no way that changes less
    keeps the rules of this choice (what counts more and less: `engine.repair_model`); else it is
    the best found. `notes` name what could not be kept.
    """

    name: Message
    why: Message
    block: Block
    changes: tuple[Change, ...]
    cost: Cost
    is_proven: bool
    notes: tuple[Message, ...] = ()

    @property
    def kinds_changed(self) -> int:
        """How many sessions come, go or change their kind."""
        return sum(
            c.before is None or c.after is None or c.before.kind is not c.after.kind
            for c in self.changes
        )


class Repair(Value, frozen=True):
    """Two or three ways to mend a block, the one with the fewest changes first; none if refused.

    `refusal` says why nothing was computed: an injury without clearance, fever. `advice` goes
    above the choices: how to take up running again, when to ask.
    """

    choices: tuple[Choice, ...] = ()
    advice: tuple[Message, ...] = ()
    refusal: Message | None = None

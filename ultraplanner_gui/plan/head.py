"""The head: what one worries about, and three kinds of day."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number


class DayKind(StrEnum):
    """Three goals for one race."""

    GOOD = "good day"
    FAIR = "fair day"
    HARD = "hard day"


class Worry(Kept, frozen=True):
    """Something one worries about, and what is done about it, empty while there is nothing."""

    text: str
    remedy: str = ""


class DayGoal(Kept, frozen=True):
    """What counts on one kind of day; `finish_s` is its finish, None for the one reckoned."""

    kind: DayKind
    text: str = ""
    finish_s: Number | None = None


class Head(Kept, frozen=True):
    """All of it. `pictures` are the runner's own lines of what to picture beforehand."""

    worries: tuple[Worry, ...] = ()
    goals: tuple[DayGoal, ...] = ()
    pictures: tuple[str, ...] = ()

    def goal(self, kind: DayKind) -> DayGoal:
        """Return the goal for a day of *kind*, an empty one if none was set."""
        return next((g for g in self.goals if g.kind is kind), DayGoal(kind))

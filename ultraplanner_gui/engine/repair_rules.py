"""How running is taken up again after days without it, as a table.

Common practice, no source: what coaches write differs by a factor of two, and no trial stands
behind any of it. The shares of the longer breaks are our own. What is lost in such a time is
known better: Mujika and Padilla 2000, Sports Med 30:79-87 and 30:145-154.
"""

from __future__ import annotations

from ultraplanner_gui.engine.repair_request import Absence, Cause
from ultraplanner_gui.plan.value import Value

LATE_DAYS = 10
LATE_WEEKS = 8
AS_NEW_DAYS = 28
ILL_DAYS = 4


class Resumption(Value, frozen=True):
    """How to go on after `least_days` days or more without running.

    `yardstick` is what is left of the last loading week to grow from, `long` what is left of the
    last long run to grow from (90: the next is about as long as the last), both in hundredths.
    `easy_days` are how many of the first days with a run are easy and short, `easy_share` how long
    in hundredths of what was planned, `hard_after` after how many days something hard may come:
    pairs of what is usual and what is gentler.
    """

    least_days: int
    yardstick: int
    easy_days: tuple[int, int]
    easy_share: tuple[int, int]
    hard_after: tuple[int, int]
    long: int


RESUMPTION = (
    Resumption(1, 100, (0, 1), (100, 90), (0, 1), 100),
    Resumption(4, 100, (2, 3), (90, 80), (3, 4), 90),
    Resumption(8, 80, (3, 5), (70, 60), (7, 9), 80),
    Resumption(15, 65, (4, 6), (70, 60), (10, 14), 65),
    Resumption(22, 50, (5, 9), (70, 60), (14, 17), 50),
    Resumption(29, 45, (8, 10), (70, 60), (21, 24), 45),
)


def resumption(absence: Absence) -> Resumption:
    """Return how to go on after *absence*; illness counts as four days at least."""
    days = max(absence.days, ILL_DAYS) if absence.cause is Cause.ILLNESS else absence.days
    return [row for row in RESUMPTION if row.least_days <= max(1, days)][-1]

"""A build-up without its runner and race: sessions by weeks to go and weekday."""

from __future__ import annotations

from datetime import date

from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.value import Kept, Number, Whole


class Template(Kept, frozen=True):
    """A block to be used again. Its sessions carry no marks, and their days count back from
    `race_day`. `weekly_m` is what its runner ran in a usual week before it, `easy_mps` at what
    easy speed on level ground.
    """

    name: str
    race_day: date
    first_weekday: Whole
    weekly_m: Number
    easy_mps: Number
    block: Block

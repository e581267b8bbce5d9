"""What the day of the race is like: weather, and what is reckoned with."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number


class Effect(StrEnum):
    """What slows a runner besides the ground and the hours."""

    ALTITUDE = "altitude"
    HEAT = "heat"
    NIGHT = "night"
    DESCENTS = "descents"


class ValleyForecast(Kept, frozen=True):
    """The weather of race day, typed once for a place at *valley_m* metres.

    `coldest_c` comes at the clock hour `coldest_h`, `warmest_c` at `warmest_h`, every day of the
    race. `humidity_percent` is that of the warmest hour.
    """

    coldest_c: Number
    warmest_c: Number
    humidity_percent: Number
    valley_m: Number
    coldest_h: Number = 6.0
    warmest_h: Number = 15.0


class Conditions(Kept, frozen=True):
    """The day of the race.

    `weather` is None while nobody knows; then there is no heat. `off` are the effects switched
    off. `lamp_s` is how long the lamp burns with every spare cell, None where it is not said.
    """

    weather: ValleyForecast | None = None
    off: tuple[Effect, ...] = ()
    lamp_s: Number | None = None

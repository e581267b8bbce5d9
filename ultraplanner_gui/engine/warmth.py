"""How warm it is along the course when one passes, for a lane, the ledger and the checks."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from ultraplanner_gui.engine.environment import weather_at
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.conditions import ValleyForecast
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value

PLACES = 240
# OWN: darker than this the estimate, which assumes sun, is not shown.
MOST_DARK = 0.5


class Warmth(Value, frozen=True, eq=False):
    """Air temperature and WBGT estimate at even places, at the hour of passing.

    Temperature falls 6.5 K per km of height (ISO 2533). `wbgt_c` is NaN in the dark, for the
    estimate assumes sun.
    """

    distance_m: FloatArray
    elapsed_s: FloatArray
    temperature_c: FloatArray
    wbgt_c: FloatArray

    def at(self, place_m: float) -> tuple[float, float]:
        """Return temperature and WBGT estimate at a place."""
        temperature = np.interp(place_m, self.distance_m, self.temperature_c)
        k = int(np.abs(self.distance_m - place_m).argmin())
        return float(temperature), float(self.wbgt_c[k])

    @property
    def hottest(self) -> tuple[float, float, float] | None:
        """The highest WBGT estimate: place, race time and value; None if all is dark."""
        if np.isnan(self.wbgt_c).all():
            return None
        k = int(np.nanargmax(self.wbgt_c))
        return float(self.distance_m[k]), float(self.elapsed_s[k]), float(self.wbgt_c[k])

    @property
    def coldest(self) -> tuple[float, float, float]:
        """The lowest air temperature: place, race time and value."""
        k = int(self.temperature_c.argmin())
        return float(self.distance_m[k]), float(self.elapsed_s[k]), float(self.temperature_c[k])


@lru_cache(maxsize=4)
def warmth(profile: Profile, weather: ValleyForecast, race: Race, plan: PacePlan) -> Warmth:
    """Return the warmth along *plan* in the *weather* of the valley."""
    at_m = np.linspace(0.0, profile.length_m, PLACES + 1)
    elapsed_s = np.array(plan.arrivals_s(at_m.tolist()))
    along = weather_at(profile, weather, race.start, at_m, elapsed_s)
    wbgt_c = np.where(along.dark > MOST_DARK, np.nan, along.wbgt_c)
    return Warmth(at_m, elapsed_s, along.temperature_c, wbgt_c)

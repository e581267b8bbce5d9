"""Day, twilight and dark along the race clock."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from ultraplanner_gui.plan.race import Race


@dataclass(frozen=True, slots=True)
class LightSpan:
    """A stretch of one kind of light, seconds of race time."""

    start_s: float
    end_s: float
    kind: Literal["day", "twilight", "dark"]


def light_spans(
    race: Race, finish_s: float, latitude_deg: float, longitude_deg: float
) -> tuple[LightSpan, ...]:
    """Return the light from the start to *finish_s*, in order and without gaps.

    Twilight is civil twilight (sun between the horizon and 6 degrees below it).
    """
    raise NotImplementedError

"""When those who wait need not worry yet, and when they should ask."""

from __future__ import annotations

from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.value import Value

LEAST_PATIENCE_S = 1800.0


class News(Value, frozen=True):
    """Before `calm_s` no news is good news; after `ask_s` ask the station. Race time."""

    calm_s: float
    ask_s: float


def news(section: SectionFigures) -> News:
    """Return the two times for the end of *section* (own choice).

    Calm until the end of the arrival window, which one day in ten runs past. Ask after as long
    again as from its middle to its end, half an hour at least, and no later than the cutoff
    where one lies between.
    """
    low_s, calm_s = section.window_s
    ask_s = calm_s + max(LEAST_PATIENCE_S, 0.5 * (calm_s - low_s))
    cutoff_s = section.cutoff_s
    if cutoff_s is not None and calm_s < cutoff_s < ask_s:
        ask_s = max(cutoff_s, calm_s + LEAST_PATIENCE_S)
    return News(calm_s, ask_s)

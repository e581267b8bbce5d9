"""What was planned to be eaten in a race or rehearsal, and what was: by food and by hour."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.review import Taken
from ultraplanner_gui.plan.value import Value

HOUR_S = 3600.0


class HourTaken(Value, frozen=True):
    """Carbohydrate and fluid of one hour, planned and taken."""

    number: int
    planned_carb_g: float
    taken_carb_g: float
    planned_ml: float
    taken_ml: float


def planned_of(outlook: Outlook, session: Session | None, is_race: bool) -> tuple[Taken, ...]:
    """Return what the plan has for the race, else for *session*; nothing for neither.

    The portions of a session have no times: they are spread evenly over it.
    """
    if is_race:
        return tuple(Taken(i.at_s, i.food, i.servings) for i in outlook.items)
    if session is None:
        return ()
    foods = session.foods
    step = session.duration_s / (len(foods) + 1)
    return tuple(
        Taken(round(step * (n + 1)), portion.food, portion.servings)
        for n, portion in enumerate(foods)
    )


def until(taken: Iterable[Taken], end_s: float) -> tuple[Taken, ...]:
    """Return what lies before *end_s*: nobody eats after the end."""
    return tuple(t for t in taken if t.at_s <= end_s)


def by_hour(
    fuel: FuelPlan, planned: Sequence[Taken], taken: Sequence[Taken], end_s: float
) -> tuple[HourTaken, ...]:
    """Return the hours up to *end_s*; a food that is no longer in the plan counts as nothing."""
    foods = {food.key: food for food in fuel.foods}
    count = max(1, int(-(-end_s // HOUR_S)))
    sums = [[0.0] * 4 for _ in range(count)]
    for first, items in ((0, planned), (1, taken)):
        for item in items:
            food = foods.get(item.food)
            hour = int(item.at_s // HOUR_S)
            if food is not None and hour < count:
                sums[hour][first] += food.carb_g * item.servings
                sums[hour][2 + first] += food.fluid_ml * item.servings
    return tuple(HourTaken(n, *row) for n, row in enumerate(sums))

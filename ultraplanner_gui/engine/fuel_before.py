"""The countdown from ten days before the race to the gun: what to eat and drink, by the clock.

Rows from other parts of the race week join by `merged`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import datetime, time, timedelta

from ultraplanner_gui.engine.fuel_kit import caffeine_caps_mg
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.fuelling import meal_carb_g
from ultraplanner_gui.science.hydration import drink_before_ml

DAYS = 10
_MORNING, _EVENING = time(8, 0), time(19, 0)
_OWN = QT_TRANSLATE_NOOP("Fuel", "Own rule")
_PRACTICE = QT_TRANSLATE_NOOP("Fuel", "Common practice, no source")
_THOMAS = "Thomas et al. 2016, Med Sci Sports Exerc 48:543-568 (from memory)"
_WALLIS = "Wallis & Podlogar 2022, Sports Science Exchange"
_SAWKA = "Sawka et al. 2007, Med Sci Sports Exerc 39:377-390 (from memory)"
_GUEST = "Guest et al. 2021, J Int Soc Sports Nutr 18:1; EFSA 2015, EFSA Journal 13(5):4102"
_LONG_S = 90.0 * 60.0
_MEALS = 4
_DRINK_BEFORE = timedelta(hours=4)
_COFFEE_BEFORE = timedelta(hours=1)
_LAST_SIP = timedelta(minutes=15)


class CountdownRow(Value, frozen=True):
    """One thing to do before the race, at an aware time where it is run."""

    at: datetime
    text: Message
    source: Message


def merged(*parts: Iterable[CountdownRow]) -> tuple[CountdownRow, ...]:
    """Return the rows of all *parts* in order of time."""
    return tuple(sorted((row for rows in parts for row in rows), key=lambda row: row.at))


def fuel_countdown(project: Project) -> tuple[CountdownRow, ...]:
    """Return what to eat and drink from ten days before the start on.

    For healthy adults; loading is not for people with diabetes without their care team.
    """
    return merged(_days(project), _eve(project), _morning(project))


def _days(project: Project) -> Iterator[CountdownRow]:
    fuel, kg = project.fuel, project.runner.body_kg
    yield _row(
        _day(project, DAYS, _MORNING),
        QT_TRANSLATE_NOOP(
            "Fuel", "Buy what the shopping list says; weigh and label nothing you have not tried."
        ),
        _PRACTICE,
    )
    yield _row(
        _day(project, 7, _MORNING),
        QT_TRANSLATE_NOOP(
            "Fuel", "Eat as usual. No new foods from now on, and no new supplements."
        ),
        _PRACTICE,
    )
    loading = fuel.before.loading_days if project.race.goal_s > _LONG_S else 0
    grams = fuel.before.loading_g_per_kg * kg
    for days in range(loading, 0, -1):
        text = QT_TRANSLATE_NOOP(
            "Fuel",
            "Carbohydrate loading: {0} through the day, about {1} at each of {2} meals; what you "
            "know, little fibre. A heavier body is stored water, and normal.",
        )
        args = (Quantity(grams, "g"), Quantity(grams / _MEALS, "g"), _MEALS)
        yield _row(_day(project, days, _MORNING), text, _THOMAS, *args)


def _eve(project: Project) -> Iterator[CountdownRow]:
    yield _row(
        _day(project, 1, time(12, 0)),
        QT_TRANSLATE_NOOP("Fuel", "Drink with meals and to thirst; pale urine is enough."),
        _OWN,
    )
    yield _row(
        _day(project, 1, _EVENING),
        QT_TRANSLATE_NOOP(
            "Fuel",
            "Last supper: rice, pasta or potatoes you know, little fat and fibre, no alcohol.",
        ),
        _PRACTICE,
    )
    yield _row(
        _day(project, 1, time(20, 0)),
        QT_TRANSLATE_NOOP(
            "Fuel", "Mix nothing yet; put breakfast, bottles and the first hours of food ready."
        ),
        _PRACTICE,
    )


def _morning(project: Project) -> Iterator[CountdownRow]:
    fuel, kg, start = project.fuel, project.runner.body_kg, project.race.start
    low, high = drink_before_ml(kg)
    hours = fuel.before.meal_h
    yield _row(
        _ago(project, _DRINK_BEFORE),
        QT_TRANSLATE_NOOP(
            "Fuel", "If you are up: drink {0} to {1} in sips by {2} before the start."
        ),
        _SAWKA,
        *(Quantity(low, "ml"), Quantity(high, "ml"), Quantity(2 * 3600.0, "s")),
    )
    yield _row(
        _ago(project, timedelta(hours=hours)),
        QT_TRANSLATE_NOOP(
            "Fuel", "Last meal: {0} of carbohydrate you have practised, little fat and fibre."
        ),
        _WALLIS,
        Quantity(meal_carb_g(kg, hours), "g"),
    )
    caffeine = fuel.before.caffeine_mg
    if caffeine > 0.0:
        at_once, a_day = caffeine_caps_mg(fuel, kg)
        yield _row(
            _ago(project, _COFFEE_BEFORE),
            QT_TRANSLATE_NOOP(
                "Fuel",
                "Caffeine: {0}; it counts toward the {1} of the day, no more than {2} at once.",
            ),
            _GUEST,
            *(Quantity(min(caffeine, at_once), "mg"), Quantity(a_day, "mg")),
            Quantity(at_once, "mg"),
        )
    yield _row(
        _ago(project, _LAST_SIP),
        QT_TRANSLATE_NOOP("Fuel", "A mouthful of drink or a sweet if you like, no more."),
        _OWN,
    )
    first = min((item.at_s for item in fuel.items), default=fuel.first_s)
    yield _row(
        start,
        QT_TRANSLATE_NOOP("Fuel", "Start. The first food comes after {0}, by the clock."),
        _OWN,
        Quantity(first, "s"),
    )


def _row(at: datetime, text: str, source: str, *args: Quantity | int | str) -> CountdownRow:
    return CountdownRow(at, message(text, *args), message(source))


def _day(project: Project, days: int, at: time) -> datetime:
    day = project.race.day - timedelta(days=days)
    return datetime.combine(day, at, tzinfo=project.race.start.tzinfo)


def _ago(project: Project, before: timedelta) -> datetime:
    return project.race.clock(-before.total_seconds())

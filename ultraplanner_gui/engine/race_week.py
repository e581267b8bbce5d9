"""The countdown beside food and drink: sessions, kit, feet, bags, travel, sleep, the way home.

And the days after: how long to rest by how long the race is, and what not to wait with.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, time, timedelta

from ultraplanner_gui.engine.fuel_before import DAYS, CountdownRow, fuel_countdown, merged
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Argument, Message, Quantity, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

#: As long as this takes a night with it whatever the start (own rule).
NIGHT_S = 18.0 * 3600.0
_MORNING, _NOON, _EVENING = time(8, 30), time(12, 30), time(18, 0)
_OWN = QT_TRANSLATE_NOOP("Week", "Own rule")
_PRACTICE = QT_TRANSLATE_NOOP("Week", "Common practice, no source")
_PLAN = QT_TRANSLATE_NOOP("Week", "Your plan")
_OWN_LINE = QT_TRANSLATE_NOOP("Week", "Your own line")
_FLAGS = QT_TRANSLATE_NOOP("Week", "Own words; medical review advised")
_SLEEP = "Roberts et al. 2019, Med Sci Sports Exerc 51:2516-2523"
_LIPMAN = "Lipman et al. 2017, Emerg Med J 34:637-642"
_LATE = time(22, 0)
_NAMES = 4


class Rest(Value, frozen=True):
    """What a race of less than `below_s` asks afterwards, days and weeks counted from its end.

    Own rule; the one anchor is 9 to 16 days for 166 km: Millet et al. 2011, PLoS One 6:e17059.
    """

    below_s: float
    no_running: tuple[int, int]
    easy_until: int
    hard_from: tuple[int, int]
    race_weeks: tuple[int, int]


RESTS = (
    Rest(3.0 * 3600.0, (1, 1), 4, (5, 7), (2, 3)),
    Rest(6.0 * 3600.0, (2, 2), 7, (8, 10), (3, 4)),
    Rest(12.0 * 3600.0, (3, 4), 10, (12, 14), (4, 6)),
    Rest(24.0 * 3600.0, (5, 7), 14, (16, 21), (6, 8)),
    Rest(float("inf"), (7, 7), 21, (21, 28), (8, 12)),
)


def rest_after(finish_s: float) -> Rest:
    """Return what a race of *finish_s* asks afterwards."""
    return next(rest for rest in RESTS if finish_s < rest.below_s or rest is RESTS[-1])


def countdown(project: Project) -> tuple[CountdownRow, ...]:
    """Return everything to do from ten days before the race to the gun, by the clock."""
    return merged(
        fuel_countdown(project),
        _sessions(project),
        _days(project),
        _morning(project),
        _own_days(project),
    )


def _own_days(project: Project) -> Iterator[CountdownRow]:
    for own in project.logistics.own_days:
        hour, minute = divmod(int(own.at_s // 60), 60)
        at = _day(project, own.days_before, time(hour, minute))
        yield _row(at, QT_TRANSLATE_NOOP("Week", "{0}"), _OWN_LINE, own.text)


def _sessions(project: Project) -> Iterator[CountdownRow]:
    first = project.race.day - timedelta(days=DAYS)
    for session in project.block.sessions:
        is_run = session.kind.is_run and session.kind is not Kind.RACE
        if not (is_run and session.is_open and first <= session.day < project.race.day):
            continue
        text = QT_TRANSLATE_NOOP("Week", "Run {0} in {1}, as planned and no more.")
        way, takes = Quantity(session.distance_m, "m"), Quantity(session.duration_s, "s")
        at = datetime.combine(session.day, time(), tzinfo=project.race.start.tzinfo)
        hour_s = session.at_s if session.at_s is not None else 7.0 * 3600.0
        yield _row(at + timedelta(seconds=hour_s), text, _PLAN, way, takes)


def _days(project: Project) -> Iterator[CountdownRow]:
    yield _row(
        _day(project, DAYS, _EVENING),
        QT_TRANSLATE_NOOP(
            "Week", "Travel: tickets, room, car and the way to the start; who goes when."
        ),
        _PRACTICE,
    )
    yield from _kit(project)
    yield _row(
        _day(project, 7, _EVENING),
        QT_TRANSLATE_NOOP(
            "Week",
            "Sleep: go to bed half an hour to an hour earlier from tonight. The last night is "
            "often poor; these nights count more.",
        ),
        _SLEEP,
    )
    yield _row(
        _day(project, 4, _EVENING),
        QT_TRANSLATE_NOOP(
            "Week",
            "Feet: cut nails straight, file hard skin thin, do not cut it. Tape and socks as in "
            "your long runs, nothing new.",
        ),
        _PRACTICE,
    )
    yield from _bags(project)
    yield from _home(project)
    yield _row(
        _day(project, 2, time(20, 0)),
        QT_TRANSLATE_NOOP(
            "Week",
            "Head: read your hard stretches once, then put them away. What is not trained by now "
            "is left; nerves are not a sign of form.",
        ),
        _PRACTICE,
    )
    yield _row(
        _day(project, 1, time(15, 0)),
        QT_TRANSLATE_NOOP(
            "Week",
            "Collect the number, hear the briefing; ask what changed of course, kit and cutoffs.",
        ),
        _PRACTICE,
    )
    yield _row(
        _day(project, 1, time(17, 0)),
        QT_TRANSLATE_NOOP(
            "Week", "Lay out what you wear, pin the number, charge watch, phone and lamps."
        ),
        _PRACTICE,
    )
    yield _row(
        _day(project, 1, time(21, 0)),
        QT_TRANSLATE_NOOP(
            "Week", "To bed, two alarms set. Lying still is rest too if sleep does not come."
        ),
        _PRACTICE,
    )


def _kit(project: Project) -> Iterator[CountdownRow]:
    kit = project.race.mandatory_kit
    at = _day(project, 8, _EVENING)
    if not kit:
        text = QT_TRANSLATE_NOOP("Week", "Kit: no mandatory list is in the plan; read the rules.")
        yield _row(at, text, _PRACTICE)
    ticked = {packed.item for packed in project.logistics.packed}
    left = [item for item in kit if item not in ticked]
    if kit and not left:
        text = QT_TRANSLATE_NOOP("Week", "Mandatory kit: all of it is ticked; carry it on a run.")
        yield _row(at, text, _PLAN)
    for n in range(0, len(left), _NAMES):
        text = QT_TRANSLATE_NOOP(
            "Week", "Mandatory kit, tick it and note where it goes (body, vest, bag): {0}."
        )
        yield _row(at, text, _PLAN, ", ".join(left[n : n + _NAMES]))


def _bags(project: Project) -> Iterator[CountdownRow]:
    course, at = project.course, _day(project, 2, _EVENING)
    stations = course.stations if course is not None else ()
    for station in stations:
        lines = project.logistics.bag(station.key)
        if lines:
            text = QT_TRANSLATE_NOOP("Week", "Bag for {0}: pack {1}, close and label it.")
            yield _row(at, text, _PLAN, station.name, ", ".join(lines))
    yield _row(
        at,
        QT_TRANSLATE_NOOP("Week", "Bags: food as in the table of bags; a name on each."),
        _PLAN,
    )


def _home(project: Project) -> Iterator[CountdownRow]:
    driver, at = project.logistics.drives_home, _day(project, 2, _NOON)
    if driver:
        text = QT_TRANSLATE_NOOP(
            "Week", "Way home: {0} drives, and has slept. Ask once more; you do not drive."
        )
        yield _row(at, text, _PLAN, driver)
        return
    text = QT_TRANSLATE_NOOP(
        "Week", "Way home: nobody is named yet. Find who drives; you do not, without sleep."
    )
    yield _row(at, text, _OWN)


def _morning(project: Project) -> Iterator[CountdownRow]:
    race = project.race
    yield _row(
        race.clock(-90.0 * 60.0),
        QT_TRANSLATE_NOOP(
            "Week", "Chafing: grease feet, groin, underarms, chest and under the vest's straps."
        ),
        _PRACTICE,
    )
    yield _row(
        race.clock(-45.0 * 60.0),
        QT_TRANSLATE_NOOP("Week", "At the start: toilet, bag handed in, lamp and phone on you."),
        _PRACTICE,
    )


def days_after(project: Project, finish_s: float) -> tuple[CountdownRow, ...]:
    """Return what to do, and what to watch for, in the days after a race of *finish_s*."""
    end, rest = project.race.clock(finish_s), rest_after(finish_s)
    return merged(
        _flags(end),
        _first_hours(project, end, finish_s),
        _rest(end, rest),
        _next_races(project, end, rest),
    )


def _next_races(project: Project, end: datetime, rest: Rest) -> Iterator[CountdownRow]:
    """Yield how many weeks of build-up would be left for each race thought of after this one."""
    back = end.date() + timedelta(days=rest.hard_from[0])
    for candidate in sorted(project.candidates, key=lambda c: c.day):
        if candidate.day <= end.date():
            continue
        weeks, apart = weeks_left(candidate.day, end.date(), rest)
        text = QT_TRANSLATE_NOOP(
            "Week", "{0}: {1} weeks from rest to its start; {2} after this race."
        )
        if apart < rest.race_weeks[0]:
            text = QT_TRANSLATE_NOOP(
                "Week", "{0} is too soon: {2} weeks after this race; {1} weeks from rest to it."
            )
        at = datetime.combine(back, _NOON, tzinfo=end.tzinfo)
        yield _row(at, text, _OWN, candidate.name, weeks, apart)


def weeks_left(day: date, end: date, rest: Rest) -> tuple[int, int]:
    """Return whole weeks of build-up from the end of *rest* to a race on *day*, and weeks between.

    *end* is the day on which the race before it ended.
    """
    back = end + timedelta(days=rest.hard_from[0])
    return max(0, (day - back).days // 7), (day - end).days // 7


def _first_hours(project: Project, end: datetime, finish_s: float) -> Iterator[CountdownRow]:
    yield _row(
        end,
        QT_TRANSLATE_NOOP(
            "Week",
            "Dry clothes, sit, eat, drink to thirst. No ibuprofen or the like: the kidneys have "
            "enough to do.",
        ),
        _LIPMAN,
    )
    if _has_night(project, end, finish_s):
        yield _row(
            end,
            QT_TRANSLATE_NOOP("Week", "Do not drive: you have been up all night. Sleep first."),
            _OWN,
        )


def _has_night(project: Project, end: datetime, finish_s: float) -> bool:
    is_late = end.date() > project.race.day or end.time() >= _LATE
    return is_late or finish_s >= NIGHT_S


def _rest(end: datetime, rest: Rest) -> Iterator[CountdownRow]:
    low, high = rest.no_running
    days: tuple[tuple[int, str, tuple[Argument, ...]], ...] = (
        (
            1,
            QT_TRANSLATE_NOOP("Week", "No running for {0} days; walk a little, sleep a lot."),
            (_span(low, high),),
        ),
        (
            high + 1,
            QT_TRANSLATE_NOOP(
                "Week", "First easy run if walking and stairs do not hurt; easy only to day {0}."
            ),
            (rest.easy_until,),
        ),
        (
            rest.hard_from[0],
            QT_TRANSLATE_NOOP("Week", "First hard session not before day {0}, and only if fresh."),
            (_span(*rest.hard_from),),
        ),
        (
            7 * rest.race_weeks[0],
            QT_TRANSLATE_NOOP(
                "Week", "The next race of this size: after {0} weeks at the soonest."
            ),
            (_span(*rest.race_weeks),),
        ),
    )
    for day, text, args in days:
        yield _row(_days_on(end, day), text, _OWN, *args)


def _flags(end: datetime) -> Iterator[CountdownRow]:
    texts = (
        QT_TRANSLATE_NOOP(
            "Week",
            "Emergency call at any time: chest pain, fainting, confusion, a fit, severe "
            "breathlessness.",
        ),
        QT_TRANSLATE_NOOP(
            "Week",
            "A doctor the same day: dark or no urine, vomiting that goes on, puffy hands with "
            "headache, black stool, a hot or swollen calf, fever.",
        ),
    )
    for text in texts:
        yield _row(end, text, _FLAGS)
    text = QT_TRANSLATE_NOOP(
        "Week",
        "Still pain on one spot of bone, at night, or in groin, hip or sacrum: no running until it "
        "has been seen.",
    )
    yield _row(_days_on(end, 3), text, _FLAGS)
    text = QT_TRANSLATE_NOOP(
        "Week", "Low for more than two weeks, sleepless, ill again and again: talk to a doctor."
    )
    yield _row(_days_on(end, 14), text, _FLAGS)


def _span(low: int, high: int) -> str:
    return str(low) if low == high else f"{low}–{high}"


def _row(at: datetime, text: str, source: str, *args: Argument) -> CountdownRow:
    return CountdownRow(at, message(text, *args), Message(source))


def _day(project: Project, days: int, at: time) -> datetime:
    day = project.race.day - timedelta(days=days)
    return datetime.combine(day, at, tzinfo=project.race.start.tzinfo)


def _days_on(end: datetime, days: int) -> datetime:
    return datetime.combine(end.date() + timedelta(days=days), _MORNING, tzinfo=end.tzinfo)

"""What stands on the wall plan and on week sheets, as finished text."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from ultraplanner_gui.cards.card_words import Turning, say, turning
from ultraplanner_gui.cards.carry_words import count_texts
from ultraplanner_gui.cards.list_content import Blank, Entry, Item, ListCard
from ultraplanner_gui.cards.station_words import DOT
from ultraplanner_gui.engine.mind import mind_lines
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.plan.block import Gut, Kind, Session
from ultraplanner_gui.plan.cards import Card, CardPart
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.cautions import RED_FLAGS
from ultraplanner_gui.wording.words import Words

WEEK_FLAGS = RED_FLAGS[:4]
FASTED = QT_TRANSLATE_NOOP("Cards", "fasted")
HEAT = QT_TRANSLATE_NOOP("Cards", "heat")
DARK = QT_TRANSLATE_NOOP("Cards", "dark")
MISSED = QT_TRANSLATE_NOOP("Cards", "missed")
GUTS = {
    Gut.FINE: QT_TRANSLATE_NOOP("Cards", "fine"),
    Gut.UNEASY: QT_TRANSLATE_NOOP("Cards", "uneasy"),
    Gut.BAD: QT_TRANSLATE_NOOP("Cards", "bad"),
}
ROLES = {
    Role.CUTBACK: QT_TRANSLATE_NOOP("Cards", "cutback"),
    Role.TAPER: QT_TRANSLATE_NOOP("Cards", "taper"),
    Role.RACE: QT_TRANSLATE_NOOP("Cards", "race"),
}


class WallTile(Value, frozen=True):
    """One session: its kind, its figure, small lines under it; a hard one has a heavy edge."""

    kind: str
    figure: str
    more: tuple[str, ...]
    is_hard: bool
    is_done: bool
    is_missed: bool
    is_race: bool


class WallWeek(Value, frozen=True):
    """One week: its number to go, its first day, what it is for, its days and its sums."""

    number: str
    starts: str
    role: str
    days: tuple[tuple[WallTile, ...], ...]
    sums: tuple[str, ...]


class WallCard(Value, frozen=True):
    """The whole block; `heads` are those of the week, of its days and of its sums."""

    title: str
    subtitle: str
    heads: tuple[str, ...]
    rows: tuple[WallWeek, ...]
    notes: tuple[str, ...]
    turning: Turning


def no_block() -> PlanError:
    """Return the error that asks for a build-up."""
    return PlanError(
        QT_TRANSLATE_NOOP("Cards", "There is no build-up yet. Build the block, then print it.")
    )


def wall_plan(outlook: Outlook, words: Words, card: Card) -> WallCard:
    """Return the wall plan; PlanError without a build-up."""
    if not outlook.weeks:
        raise no_block()
    project = outlook.project
    first = project.first_weekday
    days = [words.weekday((first + k) % 7) for k in range(7)]
    return WallCard(
        title=project.race.name,
        subtitle=DOT.join(
            filter(None, (words.day_and_year(project.race.day), project.runner.name))
        ),
        heads=(
            words.translate(QT_TRANSLATE_NOOP("Cards", "to go")),
            *days,
            words.translate(QT_TRANSLATE_NOOP("Cards", "in all")),
        ),
        rows=tuple(_wall_week(outlook, week, words, card) for week in outlook.weeks),
        notes=(words.translate(_WALL_NOTE),),
        turning=turning(words),
    )


_WALL_NOTE = QT_TRANSLATE_NOOP(
    "Cards", "Heavy edge: hard day. Tick what is done. Distances of a week are without the race."
)


def _wall_week(outlook: Outlook, week: WeekFigures, words: Words, card: Card) -> WallWeek:
    project = outlook.project
    days = (week.start + timedelta(days=k) for k in range(7))
    sums = [words.distance(week.distance_m)]
    if card.has(CardPart.CLIMB):
        sums.append(f"↑ {words.height(week.climb_m)}")
        sums.append(f"↓ {words.height(week.drop_m)}")
    return WallWeek(
        number=words.number(week.to_go),
        starts=words.short_day(week.start),
        role=words.translate(ROLES[week.role]) if week.role in ROLES else "",
        days=tuple(tuple(_tile(s, words, card) for s in project.block.on(day)) for day in days),
        sums=tuple(sums),
    )


def _tile(session: Session, words: Words, card: Card) -> WallTile:
    shows_done = card.has(CardPart.DONE)
    more = []
    if session.climb_m >= 50.0 and card.has(CardPart.CLIMB):
        more.append(f"↑ {words.height(session.climb_m)}")
    if session.carb_g_per_h and card.has(CardPart.CARRY):
        more.append(words.grams_per_hour(session.carb_g_per_h))
    more += _marks(session, words)
    return WallTile(
        kind=words.translate(session.kind.value),
        figure=measure_of(session, words),
        more=tuple(more),
        is_hard=session.kind.is_hard,
        is_done=shows_done and session.done is not None,
        is_missed=shows_done and session.missed,
        is_race=session.kind is Kind.RACE,
    )


def _marks(session: Session, words: Words) -> Iterator[str]:
    if session.at_s is not None:
        yield _time_of_day(session.at_s)
    if session.fasted:
        yield words.translate(FASTED)
    if session.dark:
        yield words.translate(DARK)
    if session.heat:
        yield words.translate(HEAT)


def _time_of_day(at_s: float) -> str:
    hours, minutes = divmod(round(at_s / 60.0), 60)
    return f"{hours % 24:02d}:{minutes:02d}"


def measure_of(session: Session, words: Words) -> str:
    """Return the figure a session goes by: its distance, or its time where it has none."""
    if session.distance_m > 0.0:
        return words.distance(session.distance_m)
    return words.duration(session.duration_s)


# Week sheets


def week_sheets(outlook: Outlook, words: Words, card: Card) -> tuple[ListCard, ...]:
    """Return a sheet for every week from this one on; PlanError without a build-up."""
    ahead = weeks_ahead(outlook)
    if not ahead:
        raise no_block()
    return tuple(_week_sheet(outlook, week, words, card) for week in ahead)


def weeks_ahead(outlook: Outlook) -> tuple[WeekFigures, ...]:
    """Return this week and those to come; every week once the race is over."""
    ahead = [w for w in outlook.weeks if w.start + timedelta(days=7) > outlook.today]
    return tuple(ahead) or outlook.weeks


def _week_sheet(outlook: Outlook, week: WeekFigures, words: Words, card: Card) -> ListCard:
    days = [week.start + timedelta(days=k) for k in range(7)]
    role = words.translate(ROLES[week.role]) if week.role in ROLES else ""
    flags = tuple(words.translate(flag) for flag in WEEK_FLAGS)
    return ListCard(
        title=say(words, QT_TRANSLATE_NOOP("Cards", "{0} to go"), words.number(week.to_go))
        if week.to_go
        else say(words, QT_TRANSLATE_NOOP("Cards", "Race week")),
        subtitle=DOT.join(
            filter(
                None,
                (
                    words.day(week.start),
                    role,
                    words.distance(week.planned_m),
                    outlook.project.race.name,
                ),
            )
        ),
        entries=tuple(entry for day in days for entry in _day(outlook, day, words, card)),
        turning=turning(words),
        notes=flags if card.has(CardPart.FLAGS) else (),
    )


def _day(outlook: Outlook, day: date, words: Words, card: Card) -> Iterator[Entry]:
    sessions = outlook.project.block.on(day)
    if not sessions:
        rest = words.translate(QT_TRANSLATE_NOOP("Cards", "rest"))
        yield Entry(f"{words.day(day)}{DOT}{rest}")
    for session in sessions:
        items = [Item(_planned(session, words))]
        items += (Item(text) for text in _besides(outlook, session, words))
        if card.has(CardPart.WRITE):
            items.append(Item(blanks=blanks(words)))
        name = words.translate(session.kind.value)
        yield Entry(f"{words.day(day)}{DOT}{name}", tuple(items), has_box=True)


def _besides(outlook: Outlook, session: Session, words: Words) -> Iterator[str]:
    """Yield what a session asks besides running: foods, what the head rehearses, the note."""
    foods = count_texts(outlook, ((p.food, p.servings) for p in session.foods), words)
    if foods:
        yield say(words, QT_TRANSLATE_NOOP("Cards", "to eat: {0}"), ", ".join(foods))
    if session.mind is not None:
        for line in mind_lines(outlook, session, words):
            yield say(words, QT_TRANSLATE_NOOP("Cards", "in the head: {0}"), line)
    if session.note:
        yield session.note


def _planned(session: Session, words: Words) -> str:
    parts = [words.distance(session.distance_m)] if session.distance_m > 0.0 else []
    parts.append(words.duration(session.duration_s))
    if session.climb_m >= 1.0 or session.drop_m >= 1.0:
        parts.append(f"↑ {words.height(session.climb_m)} ↓ {words.height(session.drop_m)}")
    if session.kind is not Kind.RACE:
        effort = words.effort(session.effort)
        parts.append(say(words, QT_TRANSLATE_NOOP("Cards", "effort {0}"), effort))
    if session.carb_g_per_h:
        parts.append(words.grams_per_hour(session.carb_g_per_h))
    return DOT.join((*parts, *_marks(session, words)))


def heads(words: Words) -> tuple[str, ...]:
    """Return what is written down of a session, in the order in which it is typed back."""
    return (
        words.translate(MISSED),
        words.distance_unit,
        words.translate(QT_TRANSLATE_NOOP("Cards", "time")),
        say(words, QT_TRANSLATE_NOOP("Cards", "climb {0}"), words.height_unit),
        say(words, QT_TRANSLATE_NOOP("Cards", "drop {0}"), words.height_unit),
        words.translate(QT_TRANSLATE_NOOP("Cards", "effort")),
        words.translate(QT_TRANSLATE_NOOP("Cards", "carbs g")),
        words.translate(QT_TRANSLATE_NOOP("Cards", "gut")),
        words.translate(QT_TRANSLATE_NOOP("Cards", "note")),
    )


def blanks(words: Words) -> tuple[Blank, ...]:
    """Return the room for all of it: a box for missed, one to each state of the gut, lines."""
    missed, *lines, gut, note = heads(words)
    return (
        Blank(missed, is_box=True),
        *(Blank(line) for line in lines),
        *(Blank(f"{gut} {words.translate(text)}", is_box=True) for text in GUTS.values()),
        Blank(note, is_long=True),
    )

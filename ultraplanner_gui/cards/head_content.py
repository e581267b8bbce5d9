"""What stands on cards for the head, the last ten days and those after, as finished text."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from ultraplanner_gui.cards.card_words import no_course, turning
from ultraplanner_gui.cards.list_content import Entry, Item, ListCard
from ultraplanner_gui.engine.fuel_before import CountdownRow
from ultraplanner_gui.engine.head import pictures
from ultraplanner_gui.engine.mind import day_text
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_week import countdown, days_after
from ultraplanner_gui.plan.cards import Card, CardPart
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.cautions import RED_FLAGS
from ultraplanner_gui.wording.words import Words


def three_days(outlook: Outlook, words: Words) -> Iterator[Entry]:
    """Yield the three kinds of day under one heading."""
    lines = day_text(outlook, words)
    if lines:
        head = words.translate(QT_TRANSLATE_NOOP("Cards", "Three kinds of day"))
        yield Entry(head, tuple(map(Item, lines)))


def to_picture(outlook: Outlook, words: Words) -> Iterator[Entry]:
    """Yield what to picture beforehand under one heading."""
    lines = [*(words.say(p.text) for p in pictures(outlook, words)), *outlook.project.head.pictures]
    if lines:
        head = words.translate(QT_TRANSLATE_NOOP("Cards", "To picture beforehand"))
        yield Entry(head, tuple(map(Item, lines)))


def last_days(outlook: Outlook, words: Words, card: Card) -> tuple[ListCard, ...]:
    """Return the countdown, a box to each line, and the days after; PlanError without a course."""
    if not outlook.sections or outlook.target is None:
        raise no_course()
    project = outlook.project
    flags = tuple(words.translate(text) for text in RED_FLAGS) if card.has(CardPart.FLAGS) else ()
    before = ListCard(
        title=words.translate(QT_TRANSLATE_NOOP("Cards", "The last ten days")),
        subtitle=project.race.name,
        entries=tuple(_by_day(outlook, countdown(project), words)),
        turning=turning(words),
        notes=flags,
        most_columns=2,
    )
    if not card.has(CardPart.AFTER):
        return (before,)
    # Its own first lines are the red flags.
    rows = days_after(project, outlook.target.finish_s)
    end = project.race.clock(outlook.target.finish_s).date()
    after = ListCard(
        title=words.translate(QT_TRANSLATE_NOOP("Cards", "The days after")),
        subtitle=project.race.name,
        entries=tuple(
            Entry(
                words.day(day),
                tuple(Item(words.say(row.text)) for row in group),
                right=_since((day - end).days, words),
            )
            for day, group in groupby(rows, lambda row: row.at.date())
        ),
        turning=turning(words),
        most_columns=2,
    )
    return (before, after)


def _by_day(outlook: Outlook, rows: Iterable[CountdownRow], words: Words) -> Iterator[Entry]:
    """Yield the rows of each day under its name, a box to each."""
    for day, group in groupby(rows, lambda row: row.at.date()):
        items = tuple(
            Item(words.say(row.text), label=words.clock(row.at, weekday=False), has_box=True)
            for row in group
        )
        yield Entry(
            words.day(day), items, right=_left((outlook.project.race.day - day).days, words)
        )


def _since(days: int, words: Words) -> str:
    if days == 0:
        return words.translate(QT_TRANSLATE_NOOP("Cards", "the finish"))
    return words.translate(QT_TRANSLATE_NOOP("Cards", "day {0}")).format(days)


def _left(days: int, words: Words) -> str:
    if days == 0:
        return words.translate(QT_TRANSLATE_NOOP("Cards", "race day"))
    return words.translate(QT_TRANSLATE_NOOP("Cards", "{0} to go")).format(days)

"""What stands on cards for the head and for the last ten days, as finished text."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from ultraplanner_gui.cards.card_words import no_course, turning
from ultraplanner_gui.cards.list_content import Entry, Item, ListCard
from ultraplanner_gui.engine.head import pictures
from ultraplanner_gui.engine.mind import day_text
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_week import countdown
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


def last_days(outlook: Outlook, words: Words, card: Card) -> ListCard:
    """Return the countdown with a box for each line; PlanError without a course."""
    if not outlook.sections:
        raise no_course()
    project = outlook.project
    entries = []
    for day, rows in groupby(countdown(project), lambda row: row.at.date()):
        left = (project.race.day - day).days
        items = tuple(
            Item(
                words.say(row.text),
                label=words.clock(row.at, weekday=False),
                has_box=True,
            )
            for row in rows
        )
        entries.append(Entry(words.day(day), items, right=_left(left, words)))
    flags = tuple(words.translate(text) for text in RED_FLAGS) if card.has(CardPart.FLAGS) else ()
    return ListCard(
        title=words.translate(QT_TRANSLATE_NOOP("Cards", "The last ten days")),
        subtitle=project.race.name,
        entries=tuple(entries),
        turning=turning(words),
        notes=flags,
        most_columns=2,
    )


def _left(days: int, words: Words) -> str:
    if days == 0:
        return words.translate(QT_TRANSLATE_NOOP("Cards", "race day"))
    return words.translate(QT_TRANSLATE_NOOP("Cards", "{0} to go")).format(days)

"""Every help topic by its key, and the search over them."""

from __future__ import annotations

from collections.abc import Callable

from ultraplanner_gui.wording.help import (
    cards,
    course,
    fuel,
    fuel_stores,
    handover,
    head,
    living,
    pace,
    program,
    race_hand,
    race_pace,
    race_rules,
    review,
    rules,
    runner,
    sessions,
    sheet,
    weeks,
)
from ultraplanner_gui.wording.help.topic import Topic

MODULES = (
    sheet,
    weeks,
    rules,
    race_rules,
    sessions,
    living,
    runner,
    course,
    pace,
    race_pace,
    race_hand,
    fuel,
    fuel_stores,
    cards,
    head,
    review,
    handover,
    program,
)
"""Where topics stand, in the order of the handbook."""

TOPICS: dict[str, Topic] = {topic.key: topic for module in MODULES for topic in module.TOPICS}


def search(query: str, translate: Callable[[str], str]) -> tuple[Topic, ...]:
    """Return the topics that hold every word of *query*, the best first; all without one.

    A word in the title counts most, at its very beginning above all, then one of the words
    people search by, then one in the text. *translate* gives a text in the user's language.
    """
    wanted = query.casefold().split()
    found = []
    for topic in TOPICS.values():
        title = translate(topic.title).casefold()
        parts = (title, translate(topic.words).casefold(), translate(topic.what).casefold())
        ranks = [_rank(word, parts) for word in wanted]
        if None not in ranks:
            found.append((sum(rank or 0 for rank in ranks), title, topic))
    found.sort(key=lambda entry: entry[:2])
    return tuple(topic for _, _, topic in found)


def _rank(word: str, parts: tuple[str, str, str]) -> int | None:
    """Return how well *word* is found, 0 the best; None if it is not."""
    if parts[0].startswith(word):
        return 0
    return next((rank for rank, text in enumerate(parts, 1) if word in text), None)

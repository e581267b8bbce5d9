"""From a card that was chosen to its pages."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec.structs import replace

from ultraplanner_gui.cards.content import CardContent, card_contents
from ultraplanner_gui.cards.fold import PANELS, folded
from ultraplanner_gui.cards.layout import lay_out
from ultraplanner_gui.cards.leftward import turned
from ultraplanner_gui.cards.page import (
    LEAST_WRIST_X_HEIGHT_MM,
    LEAST_X_HEIGHT_MM,
    Measure,
    Page,
)
from ultraplanner_gui.engine.open_lessons import must_be_answered
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.cards import Card, CardForm, CardKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.wording.words import Words


def pages_of(card: Card, outlook: Outlook, words: Words, measure: Measure) -> tuple[Page, ...]:
    """Return the pages of one copy of *card*; PlanError if it cannot be made.

    What is cut out by itself has its own number in `Page.card`, front and back the same.
    """
    pages: list[Page] = []
    contents = card_contents(card, outlook, words)
    if card.form is CardForm.FOLDED:
        width = card.width_mm / PANELS
        panels = [
            page
            for content in contents
            for page in laid(content, width, card.height_mm, words, measure)
        ]
        return folded(panels, panels[0].name, words.leftward)
    is_worn = card.form is CardForm.WRIST
    least_x_mm = LEAST_WRIST_X_HEIGHT_MM if is_worn else LEAST_X_HEIGHT_MM
    for number, content in enumerate(contents):
        made = laid(content, card.width_mm, card.height_mm, words, measure, least_x_mm)
        pages += [replace(page, card=number) for page in made]
    return tuple(pages)


def laid(
    content: CardContent,
    width_mm: float,
    height_mm: float,
    words: Words,
    measure: Measure,
    least_x_mm: float = LEAST_X_HEIGHT_MM,
) -> tuple[Page, ...]:
    """Return the pages of *content*, the way its language is read; PlanError as `lay_out`."""
    pages = lay_out(content, width_mm, height_mm, measure, least_x_mm)
    return turned(pages, content, measure) if words.leftward else pages


def all_pages(outlook: Outlook, words: Words, measure: Measure) -> tuple[Page, ...]:
    """Return the pages of every copy of every card; PlanError if there is none to make,
    or a lesson of an earlier race waits for an answer.
    """
    if not outlook.project.cards:
        raise PlanError(QT_TRANSLATE_NOOP("Cards", "No card is chosen. Add a card, then print."))
    must_be_answered(outlook.project)
    return tuple(_all(outlook, words, measure))


def _all(outlook: Outlook, words: Words, measure: Measure) -> Iterator[Page]:
    number = 0
    for card in outlook.project.cards:
        pages = pages_of(card, outlook, words, measure)
        for _ in range(card.copies):
            yield from (replace(page, card=number + page.card) for page in pages)
            number += 1 + max(page.card for page in pages)


USUAL_SIZES: dict[tuple[CardKind, CardForm], tuple[float, float]] = {
    (CardKind.PACE, CardForm.WRIST): (200.0, 48.0),
    (CardKind.PACE, CardForm.FOLDED): (148.0, 105.0),
    (CardKind.PACE, CardForm.CONCERTINA): (280.0, 70.0),
    (CardKind.CREW, CardForm.SHEET): (210.0, 297.0),
    (CardKind.BAGS, CardForm.SHEET): (148.0, 105.0),
    (CardKind.LISTS, CardForm.SHEET): (210.0, 297.0),
    (CardKind.WALL, CardForm.SHEET): (297.0, 420.0),
    (CardKind.WEEKS, CardForm.SHEET): (148.0, 210.0),
    (CardKind.COUNTDOWN, CardForm.SHEET): (210.0, 297.0),
}
"""How large a card is when it is added, where that is not A6."""

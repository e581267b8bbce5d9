"""What the contents of all cards share: their sentences and what they need to be made."""

from __future__ import annotations

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Argument, PlanError, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import Words


class Turning(Value, frozen=True):
    """What says that a card goes on: "1 of 2" and "continued on 2 of 2"."""

    page: str
    goes_on: str


def say(words: Words, template: str, *args: Argument) -> str:
    """Return the sentence *template* with *args* in it, in the user's language."""
    return words.say(message(template, *args))


def end_name(name: str, words: Words) -> str:
    """Return the name of a place, that of the finish if it has none."""
    return name or say(words, QT_TRANSLATE_NOOP("Cards", "Finish"))


def no_course() -> PlanError:
    """Return the error that asks for a course."""
    return PlanError(
        QT_TRANSLATE_NOOP("Cards", "There is no course yet. Open a GPX file, then make the cards.")
    )


def race_figures(outlook: Outlook) -> tuple[Profile, PacePlan]:
    """Return profile and target of the race; PlanError without a course."""
    if outlook.profile is None or outlook.target is None or not outlook.sections:
        raise no_course()
    return outlook.profile, outlook.target


def turning(words: Words) -> Turning:
    """Return how a card says that it goes on."""
    return Turning(
        page=words.translate(QT_TRANSLATE_NOOP("Cards", "{0} of {1}")),
        goes_on=words.translate(QT_TRANSLATE_NOOP("Cards", "continued on {0} of {1}")),
    )

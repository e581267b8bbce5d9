"""What the form puts in where a runner does not know: careful values, why, and where from."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QCoreApplication, QTime

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.widgets.guess import CUSTOM, OWN, Guess, mark
from ultraplanner_gui.wording.words import Words

#: Round figures in each unit, on the low side: all our own choice.
USUAL_WEEK = {"metric": 30.0, "imperial": 20.0}
LONGEST_RUN = {"metric": 12.0, "imperial": 8.0}
EASY_MIN = {"metric": 7.0, "imperial": 11.25}
BODY_KG = 70
CARB_G_PER_H = 30
START = QTime(6, 0)

LEAST_ADVISED = QT_TRANSLATE_NOOP(
    "Guesses",
    "the least of the 30 to 50 g/h of Tiller et al. 2019, J Int Soc Sports Nutr 16:50",
)


def usual_week(words: Words) -> Guess[float]:
    """Return a guess of the distance of a usual week, metres."""
    why = QT_TRANSLATE_NOOP("Guesses", "On the low side, so that the build-up begins gently.")
    return Guess(USUAL_WEEK[words.units] * words.unit_m, _say(why), mark(OWN))


def longest_run(words: Words) -> Guess[float]:
    """Return a guess of the longest run of the last 30 days, metres."""
    why = QT_TRANSLATE_NOOP("Guesses", "Rather short: long runs grow from it.")
    return Guess(LONGEST_RUN[words.units] * words.unit_m, _say(why), mark(OWN))


def easy_speed(words: Words) -> Guess[float]:
    """Return a guess of easy speed on level ground, metres per second."""
    why = QT_TRANSLATE_NOOP("Guesses", "Slow enough to talk; too slow only plans more time.")
    return Guess(words.unit_m / (60.0 * EASY_MIN[words.units]), _say(why), mark(OWN))


def body_mass() -> Guess[int]:
    """Return a guess of body mass, kilograms."""
    why = QT_TRANSLATE_NOOP("Guesses", "It only scales the energy you burn.")
    return Guess(BODY_KG, _say(why), mark(CUSTOM))


def carbs() -> Guess[int]:
    """Return a guess of what the gut takes while running, grams per hour."""
    why = QT_TRANSLATE_NOOP("Guesses", "The least that is advised; most beginners manage that.")
    return Guess(CARB_G_PER_H, _say(why), _say(LEAST_ADVISED))


def level() -> Guess[int]:
    """Return a guess of how much the build-up asks, by its place in the list."""
    why = QT_TRANSLATE_NOOP("Guesses", "More than just enough, less than all you could bear.")
    return Guess(list(Level).index(Level.USUAL), _say(why), mark(OWN))


def long_day(minutes: Sequence[int]) -> Guess[int]:
    """Return the weekday with most *minutes* free."""
    why = QT_TRANSLATE_NOOP("Guesses", "The day with most time free.")
    return Guess(list(minutes).index(max(minutes)), _say(why), mark(CUSTOM))


def free_minutes() -> Guess[tuple[int, ...]]:
    """Return a guess of the minutes free on each day of the week."""
    why = QT_TRANSLATE_NOOP("Guesses", "A working week with one day of rest and a long Saturday.")
    minutes = tuple(round(s / 60.0) for s in Runner().available_s)
    return Guess(minutes, _say(why), mark(OWN))


def start_time() -> Guess[QTime]:
    """Return a guess of when the race starts."""
    why = QT_TRANSLATE_NOOP("Guesses", "Most races start early.")
    return Guess(START, _say(why), mark(CUSTOM))


def time_limit() -> Guess[float | None]:
    """Return no time limit."""
    why = QT_TRANSLATE_NOOP("Guesses", "Cutoffs on the way still count.")
    return Guess(None, _say(why), mark(CUSTOM))


def finish(likely_s: Callable[[Runner], float], runner: Runner) -> Guess[float | None]:
    """Return a guess of the finish of *runner*, seconds."""
    why = QT_TRANSLATE_NOOP("Guesses", "Likely at your easy pace.")
    return Guess(likely_s(runner), _say(why), mark(OWN))


def _say(text: str) -> str:
    return QCoreApplication.translate("Guesses", text)

"""What a help topic is made of, and how well its source is known."""

from __future__ import annotations

from enum import Enum

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value


class Mark(Enum):
    """How well what a topic says is founded."""

    PUBLISHED = QT_TRANSLATE_NOOP("Help", "Published")
    MEMORY = QT_TRANSLATE_NOOP("Help", "Published, quoted from memory")
    PRACTICE = QT_TRANSLATE_NOOP("Help", "Common practice, no source")
    CHOICE = QT_TRANSLATE_NOOP("Help", "Our own choice")
    ESTIMATE = QT_TRANSLATE_NOOP("Help", "An estimate of our own")
    PLAN = QT_TRANSLATE_NOOP("Help", "Arithmetic on your own plan")


class Source(Value, frozen=True):
    """One source: what it `says` for the topic, marked in the context "Help", and the paper."""

    mark: Mark
    says: str = ""
    cite: str = ""


class Topic(Value, frozen=True):
    """One thing that can be asked about. All texts are marked in the context "Help".

    `what` says what it is, `how` where the figure comes from, `caution` where it can hurt.
    `see` are keys of other topics, `words` what people may search it by besides.
    """

    key: str
    title: str
    what: str
    how: str = ""
    sources: tuple[Source, ...] = ()
    caution: str = ""
    see: tuple[str, ...] = ()
    words: str = ""


PRACTICE = Source(Mark.PRACTICE)
CHOICE = Source(Mark.CHOICE)
ESTIMATE = Source(Mark.ESTIMATE)
PLAN = Source(Mark.PLAN)


def published(cite: str, says: str = "") -> Source:
    """Return a paper and what it says."""
    return Source(Mark.PUBLISHED, says, cite)


def from_memory(cite: str, says: str = "") -> Source:
    """Return a paper whose figure was not read again."""
    return Source(Mark.MEMORY, says, cite)


def choice(says: str) -> Source:
    """Return a choice of our own with its reason or its limit."""
    return Source(Mark.CHOICE, says)


def estimate(says: str) -> Source:
    """Return an estimate of our own and what it was measured on."""
    return Source(Mark.ESTIMATE, says)


def practice(says: str) -> Source:
    """Return what coaches do, and what is not known about it."""
    return Source(Mark.PRACTICE, says)

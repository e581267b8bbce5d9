"""What a session that rehearses in the head is about, out of the plan itself."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.engine.head import days_of, pictures, place_at
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Mind, Session
from ultraplanner_gui.plan.head import DayKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Quantity, message
from ultraplanner_gui.wording.words import Words

_DAY_NAMES = {
    DayKind.GOOD: QT_TRANSLATE_NOOP("Head", "Good day"),
    DayKind.FAIR: QT_TRANSLATE_NOOP("Head", "Fair day"),
    DayKind.HARD: QT_TRANSLATE_NOOP("Head", "Hard day"),
}


def mind_lines(outlook: Outlook, session: Session, words: Words) -> tuple[str, ...]:
    """Return what *session* is to go through in the head; nothing if it rehearses nothing.

    Sessions to picture share the stretches of the race and the runner's own lines, so that none
    is left out; lines of if and then take turns.
    """
    if session.mind is None:
        return ()
    turn = _turn(outlook, session)
    if session.mind is Mind.PICTURE:
        own = outlook.project.head.pictures
        lines = [*(words.say(p.text) for p in pictures(outlook, words)), *own]
        return _share(lines, turn, _count(outlook, session))
    if session.mind is Mind.IF_THEN:
        found = [
            words.say(message(_IF_THEN, line.when, line.then))
            for line in outlook.project.logistics.if_then
            if line.when
        ]
        return (found[turn % len(found)],) if found else (words.translate(_WRITE_ONE),)
    return (*day_text(outlook, words), *_tightest(outlook, words))


def _share(lines: list[str], turn: int, sessions: int) -> tuple[str, ...]:
    """Return what is the turn of one of so many *sessions*: some lines, or one again."""
    if not lines:
        return ()
    if sessions >= len(lines):
        return (lines[turn % len(lines)],)
    return tuple(lines[turn::sessions])


def _tightest(outlook: Outlook, words: Words) -> Iterator[str]:
    """Yield which cutoff is closest, and how far before it the target is there."""
    near = [s for s in outlook.sections if s.to_cutoff_s is not None and s.cutoff_s is not None]
    section = min(near, key=lambda s: s.to_cutoff_s or 0.0, default=None)
    if section is None or section.cutoff_s is None or section.to_cutoff_s is None:
        return
    said = QT_TRANSLATE_NOOP("Head", "The closest cutoff: {0}, {1}. On target it is {2} away.")
    if section.to_cutoff_s < 0.0:
        said = QT_TRANSLATE_NOOP(
            "Head", "The closest cutoff: {0}, {1}. The target misses it by {2}."
        )
    clock = words.clock(outlook.project.race.clock(section.cutoff_s))
    away = Quantity(abs(section.to_cutoff_s), "s")
    yield words.say(message(said, place_at(outlook, section.end_m, words), clock, away))


_IF_THEN = QT_TRANSLATE_NOOP("Head", "If {0}, then {1}.")
_WRITE_ONE = QT_TRANSLATE_NOOP("Head", "Write a line: if this happens, I do that.")


def finishes(outlook: Outlook) -> dict[DayKind, float]:
    """Return the finish of each kind of day, seconds: the one typed, or the one reckoned."""
    head = outlook.project.head
    typed = {day.kind: head.goal(day.kind).finish_s for day in days_of(outlook)}
    return {day.kind: typed[day.kind] or day.finish_s for day in days_of(outlook)}


def day_text(outlook: Outlook, words: Words) -> list[str]:
    """Return the three kinds of day as sentences, in the runner's words where there are any."""
    head, lines, finish_s = outlook.project.head, [], finishes(outlook)
    for day in days_of(outlook):
        text = head.goal(day.kind).text or words.say(day.text)
        name = words.translate(_DAY_NAMES[day.kind])
        said = QT_TRANSLATE_NOOP("Head", "{0}, about {1}: {2}")
        lines.append(words.say(message(said, name, Quantity(finish_s[day.kind], "s"), text)))
    return lines


def _turn(outlook: Outlook, session: Session) -> int:
    """Return how many sessions of the same kind of rehearsal come before *session*."""
    earlier = (s for s in outlook.project.block.sessions if s.mind is session.mind)
    return sum(1 for s in earlier if (s.day, s.key) < (session.day, session.key))


def _count(outlook: Outlook, session: Session) -> int:
    return sum(1 for s in outlook.project.block.sessions if s.mind is session.mind)

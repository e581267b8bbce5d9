"""What a session that rehearses in the head is about, out of the plan itself."""

from __future__ import annotations

from ultraplanner_gui.engine.head import days_of, pictures
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Mind, Session
from ultraplanner_gui.plan.head import DayKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Quantity, message
from ultraplanner_gui.wording.words import Words

_DAY_NAMES = {
    DayKind.GOOD: QT_TRANSLATE_NOOP("Head", "good day"),
    DayKind.FAIR: QT_TRANSLATE_NOOP("Head", "fair day"),
    DayKind.HARD: QT_TRANSLATE_NOOP("Head", "hard day"),
}


def mind_lines(outlook: Outlook, session: Session, words: Words) -> tuple[str, ...]:
    """Return what *session* is to go through in the head; nothing if it rehearses nothing.

    Sessions to picture take turns: each one stretch of the race, the runner's own lines among
    them; so do those for lines of if and then.
    """
    if session.mind is None:
        return ()
    turn = _turn(outlook, session)
    if session.mind is Mind.PICTURE:
        own = outlook.project.head.pictures
        lines = [*(words.say(p.text) for p in pictures(outlook, words)), *own]
        return (lines[turn % len(lines)],) if lines else ()
    if session.mind is Mind.IF_THEN:
        found = [
            words.say(message(_IF_THEN, line.when, line.then))
            for line in outlook.project.logistics.if_then
            if line.when
        ]
        return (found[turn % len(found)],) if found else (words.translate(_WRITE_ONE),)
    return tuple(day_text(outlook, words))


_IF_THEN = QT_TRANSLATE_NOOP("Head", "If {0}, then {1}.")
_WRITE_ONE = QT_TRANSLATE_NOOP("Head", "Write a line: if this happens, I do that.")


def day_text(outlook: Outlook, words: Words) -> list[str]:
    """Return the three kinds of day as sentences, in the runner's words where there are any."""
    head, lines = outlook.project.head, []
    for day in days_of(outlook):
        goal = head.goal(day.kind)
        finish_s = day.finish_s if goal.finish_s is None else goal.finish_s
        text = goal.text or words.say(day.text)
        name = words.translate(_DAY_NAMES[day.kind])
        said = QT_TRANSLATE_NOOP("Head", "{0}, about {1}: {2}")
        lines.append(words.say(message(said, name, Quantity(finish_s, "s"), text)))
    return lines


def _turn(outlook: Outlook, session: Session) -> int:
    """Return how many sessions of the same kind of rehearsal come before *session*."""
    earlier = (s for s in outlook.project.block.sessions if s.mind is session.mind)
    return sum(1 for s in earlier if (s.day, s.key) < (session.day, session.key))

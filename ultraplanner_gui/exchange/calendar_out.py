"""The build-up as an iCalendar file (RFC 5545): each session and the race as one event.

An event keeps its identifier, so that a calendar that takes a second file changes what it has.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, time, timedelta
from pathlib import Path
from typing import TYPE_CHECKING
from uuid import NAMESPACE_OID, uuid5

from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from icalendar import Event

PRODUCT = "-//Ultraplanner//Ultraplanner//EN"
RACE_KEY = "race"
_FIRST = datetime(2020, 1, 1, tzinfo=UTC)

KindName = Callable[[Kind], str]


def event_uid(project: Project, key: str) -> str:
    """Return the identifier of the event of the session *key*, the same at every export.

    Made of the name of the race (RFC 9562, version 5), because keys are only unique in one plan.
    """
    return f"{uuid5(NAMESPACE_OID, f'ultraplanner:{project.race.name}:{key}')}@ultraplanner"


def write_calendar(
    project: Project, words: Words, kind_name: KindName, path: Path, now: datetime
) -> None:
    """Write sessions and race to *path*; StoreError if it cannot be."""
    write_bytes(path, calendar_bytes(project, words, kind_name, now))


def calendar_bytes(project: Project, words: Words, kind_name: KindName, now: datetime) -> bytes:
    """Return sessions and race as an iCalendar file, made at the aware moment *now*.

    A session with an hour is an event at that hour of whatever clock the runner has; one without
    fills its day and leaves it free. What was missed is cancelled. The race is at its moment.
    """
    from icalendar import Calendar

    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    for event in _events(project, words, kind_name):
        event.add("dtstamp", now.astimezone(UTC))
        # It has to grow with every revision; nothing but the clock is known to.
        event.add("sequence", int((now - _FIRST).total_seconds()))
        calendar.add_component(event)
    return bytes(calendar.to_ical())


def _events(project: Project, words: Words, kind_name: KindName) -> Iterator[Event]:
    for session in project.block.sessions:
        if session.kind is not Kind.RACE:
            yield _session(project, session, words, kind_name)
    yield _race(project, words)


def _session(project: Project, session: Session, words: Words, kind_name: KindName) -> Event:
    from icalendar import Event

    event = Event()
    event.add("uid", event_uid(project, session.key))
    title = kind_name(session.kind)
    if session.distance_m > 0.0:
        title += f", {words.distance(session.distance_m)}"
    event.add("summary", title)
    if session.at_s is None:
        event.add("dtstart", session.day)
        event.add("dtend", session.day + timedelta(days=1))
        event.add("transp", "TRANSPARENT")
    else:
        start = datetime.combine(session.day, time()) + timedelta(seconds=round(session.at_s))
        event.add("dtstart", start)
        event.add("duration", timedelta(minutes=max(1, round(session.duration_s / 60.0))))
    event.add("status", "CANCELLED" if session.missed else "CONFIRMED")
    event.add("categories", [session.kind.value])
    event.add("description", "\n".join(words.say(line) for line in _lines(session, words)))
    return event


def _lines(session: Session, words: Words) -> Iterator[Message]:
    planned = QT_TRANSLATE_NOOP("Export", "Planned: {0}, effort {1}.")
    yield message(planned, words.duration(session.duration_s), words.effort(session.effort))
    if session.climb_m > 0.0 or session.drop_m > 0.0:
        climb = QT_TRANSLATE_NOOP("Export", "Climb {0}, drop {1}.")
        yield message(climb, words.height(session.climb_m), words.height(session.drop_m))
    if session.carb_g_per_h > 0.0:
        carbs = QT_TRANSLATE_NOOP("Export", "Practise {0} of carbohydrate.")
        yield message(carbs, words.grams_per_hour(session.carb_g_per_h))
    if session.done is not None:
        done = QT_TRANSLATE_NOOP("Export", "Done: {0} in {1}.")
        record = session.done
        yield message(done, words.distance(record.distance_m), words.duration(record.duration_s))
    if session.note:
        yield message("{0}", session.note)


def _race(project: Project, words: Words) -> Event:
    from icalendar import Event

    race, event = project.race, Event()
    event.add("uid", event_uid(project, RACE_KEY))
    event.add("summary", race.name)
    event.add("dtstart", race.start.astimezone(UTC))
    event.add("dtend", race.clock(race.limit_s or race.goal_s).astimezone(UTC))
    event.add("status", "CONFIRMED")
    event.add("categories", [Kind.RACE.value])
    text = QT_TRANSLATE_NOOP("Export", "Start {0} where the race is, target {1}.")
    start = words.clock(race.start)
    event.add("description", words.say(message(text, start, words.duration(race.goal_s))))
    return event

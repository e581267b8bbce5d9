"""Sessions out of an iCalendar file (RFC 5545): what it would change in the build-up."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace

from ultraplanner_gui.edits.block import AddSession, ChangeSession
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.exchange.calendar_out import RACE_KEY, event_uid
from ultraplanner_gui.exchange.plan_changes import PlanChanges
from ultraplanner_gui.exchange.safe_read import read_bytes, shown_name
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.message import (
    QT_TRANSLATE_NOOP,
    Message,
    PlanError,
    Quantity,
    StoreError,
    message,
)
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from icalendar import Component

MOST_EVENTS = 2_000
_WAY = re.compile(r"\d[\d.,]*\s*(?:km|mi)\b")
_LONGEST = 60


def read_calendar(project: Project, words: Words, path: Path) -> PlanChanges:
    """Return what the file at *path* would change; PlanError with a sentence if it is none.

    Events that came from this plan move their sessions to their day and hour, and give them their
    length if they have one; other events become sessions where they name a kind. Nothing is
    removed.
    """
    from icalendar import Calendar

    data = read_bytes(path)
    try:
        events = Calendar.from_ical(data).walk("VEVENT")
    except (ValueError, IndexError, KeyError) as error:
        raise StoreError(
            QT_TRANSLATE_NOOP("Export", "{0} is no calendar that can be read. Export it again."),
            shown_name(path),
        ) from error
    if len(events) > MOST_EVENTS:
        raise StoreError(
            QT_TRANSLATE_NOOP("Export", "{0} has too many events. Export fewer months."),
            shown_name(path),
        )
    known = {event_uid(project, s.key): s for s in project.block.sessions}
    race = event_uid(project, RACE_KEY)
    changes: list[tuple[Message, Edit]] = []
    left_out: list[Message] = []
    untouched = 0
    for event in events:
        uid, title = str(event.get("uid", "")), str(event.get("summary", ""))[:_LONGEST]
        if uid == race or str(event.get("status", "")) == "CANCELLED":
            continue
        try:
            change = _change(project, words, event, known.get(uid))
            if change is None:
                untouched += 1
                continue
            change[1].apply(project)
            changes.append(change)
        except PlanError as error:
            text = QT_TRANSLATE_NOOP("Export", "Left out: {0}. {1}")
            left_out.append(message(text, title, words.say(error.message)))
    return PlanChanges(tuple(changes), tuple(left_out), untouched)


def _change(
    project: Project, words: Words, event: Component, session: Session | None
) -> tuple[Message, Edit] | None:
    day, at_s = _when(project, event)
    when = words.day_and_year(day)
    if at_s is not None:
        when += f" {int(at_s // 3600):02d}:{int(at_s % 3600 // 60):02d}"
    if session is not None:
        lasts_s = _lasts_s(event) or session.duration_s
        if (session.day, session.at_s, session.duration_s) == (day, at_s, lasts_s):
            return None
        if session.done is not None or session.locked:
            raise PlanError(QT_TRANSLATE_NOOP("Export", "It is done or locked and stays."))
        moved = replace(session, day=day, at_s=at_s, duration_s=lasts_s)
        if (session.day, session.at_s) == (day, at_s):
            text = QT_TRANSLATE_NOOP("Export", "{0} on {1} takes {2}.")
            return message(text, session.kind.value, when, Quantity(lasts_s, "s")), ChangeSession(
                moved
            )
        text = QT_TRANSLATE_NOOP("Export", "Move {0} from {1} to {2}.")
        said = message(text, session.kind.value, words.day_and_year(session.day), when)
        return said, ChangeSession(moved)
    title = str(event.get("summary", ""))
    kind = _kind(event, title)
    if any((s.day, s.kind, s.at_s) == (day, kind, at_s) for s in project.block.sessions):
        return None
    way = _WAY.search(title)
    distance_m = words.parse_distance(way.group()) if way is not None else None
    new = Session(
        *("", day, kind, distance_m or 0.0, _lasts_s(event)), note=title[:_LONGEST], at_s=at_s
    )
    return message(QT_TRANSLATE_NOOP("Export", "Add {0} on {1}."), kind.value, when), AddSession(
        new
    )


def _when(project: Project, event: Component) -> tuple[date, float | None]:
    """Return day and hour; an hour in UTC is turned to the clock of the race."""
    if "rrule" in event:
        raise PlanError(QT_TRANSLATE_NOOP("Export", "It repeats; enter its days one by one."))
    start = _value(event, "dtstart")
    if isinstance(start, datetime):
        if start.tzinfo is not None and start.tzname() == "UTC":
            start = start.astimezone(project.race.start.tzinfo)
        return start.date(), float(start.hour * 3600 + start.minute * 60 + start.second)
    if isinstance(start, date):
        return start, None
    raise PlanError(QT_TRANSLATE_NOOP("Export", "It has no day."))


def _lasts_s(event: Component) -> float:
    start, end = _value(event, "dtstart"), _value(event, "dtend")
    lasts = _value(event, "duration")
    if isinstance(lasts, timedelta):
        return lasts.total_seconds()
    if not (isinstance(start, datetime) and isinstance(end, datetime)):
        return 0.0
    is_one_clock = (start.tzinfo is None) == (end.tzinfo is None)
    return (end - start).total_seconds() if is_one_clock else 0.0


def _value(event: Component, name: str) -> object:
    """Return what *event* says of *name* as Python's; None if nothing, or what cannot be read."""
    from icalendar.error import BrokenCalendarProperty

    try:
        return getattr(event.get(name), "dt", None)
    except BrokenCalendarProperty:
        return None


def _kind(event: Component, title: str) -> Kind:
    for text in (*_categories(event), title.casefold()):
        for kind in Kind:
            if kind is not Kind.RACE and kind.value in text:
                return kind
    raise PlanError(QT_TRANSLATE_NOOP("Export", "It names no kind of session, such as “long run”."))


def _categories(event: Component) -> Iterator[str]:
    for name in getattr(event.get("categories"), "cats", ()):
        yield str(name).casefold()

"""Checked by parsing with the icalendar library; rules from RFC 5545, sections 3.6.1 and 3.8."""

from datetime import UTC, date, datetime, timedelta

import icalendar
import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.exchange.calendar_out import calendar_bytes, event_uid, write_calendar
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.wording.words import Words

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
TODAY = date(2026, 11, 25)


def kind_name(kind):
    return kind.value.capitalize()


def events_of(project, now=NOW):
    data = calendar_bytes(project, Words(), kind_name, now)
    calendar = icalendar.Calendar.from_ical(data)
    assert not calendar.errors
    events = {str(event["uid"]): event for event in calendar.walk("VEVENT")}
    assert len(events) == len(calendar.walk("VEVENT"))
    return events


@pytest.fixture(scope="module")
def project():
    return demo_project(TODAY)


@pytest.fixture
def session(project):
    return next(s for s in project.block.sessions if s.kind is Kind.LONG)


def changed(project, session):
    return replace(project, block=project.block.with_session(session))


def test_every_session_and_the_race_is_one_event(project):
    events = events_of(project)
    sessions = [s for s in project.block.sessions if s.kind is not Kind.RACE]
    assert len(events) == len(sessions) + 1
    for s in sessions:
        start = events[event_uid(project, s.key)].decoded("dtstart")
        assert (start.date() if isinstance(start, datetime) else start) == s.day
    race = events[event_uid(project, "race")]
    assert race.decoded("dtstart") == project.race.start
    assert race.decoded("summary") == project.race.name


def test_session_without_an_hour_fills_its_day_and_leaves_it_free(project, session):
    session = replace(session, at_s=None)
    event = events_of(changed(project, session))[event_uid(project, session.key)]
    assert event.decoded("dtstart") == session.day
    assert event.decoded("dtend") == session.day + timedelta(days=1)  # DTEND is not included
    assert event["dtstart"].params["VALUE"] == "DATE"
    assert event["transp"] == "TRANSPARENT"


def test_session_with_an_hour_is_at_that_hour_on_any_clock(project, session):
    session = replace(session, at_s=6.5 * 3600, duration_s=5_400.0)
    event = events_of(changed(project, session))[event_uid(project, session.key)]
    start = event.decoded("dtstart")
    assert start.tzinfo is None
    assert (start.date(), start.hour, start.minute) == (session.day, 6, 30)
    assert event.decoded("duration") == timedelta(minutes=90)


def test_second_export_changes_what_the_first_made(project, session):
    moved = replace(session, day=session.day + timedelta(days=1))
    first = events_of(project)
    second = events_of(changed(project, moved), NOW + timedelta(hours=1))
    assert set(first) == set(second)
    uid = event_uid(project, session.key)
    assert first[uid].decoded("dtstart") != second[uid].decoded("dtstart")
    assert second[uid]["sequence"] > first[uid]["sequence"]
    assert second[uid].decoded("dtstamp") > first[uid].decoded("dtstamp")
    assert 0 < second[uid]["sequence"] < 2**31  # RFC 5545, 3.3.8


def test_the_same_key_in_another_plan_is_another_event(project):
    other = replace(project, race=replace(project.race, name="Another"))
    assert not set(events_of(project)) & set(events_of(other))


def test_missed_session_is_cancelled(project, session):
    missed = replace(session, missed=True, done=None)
    event = events_of(changed(project, missed))[event_uid(project, session.key)]
    assert event["status"] == "CANCELLED"


def test_lines_are_folded_and_odd_notes_come_back(project, session):
    note = 'Hills; then "home", \\ slowly\nsecond line ' + "ö" * 100
    noted = changed(project, replace(session, note=note))
    data = calendar_bytes(noted, Words(), kind_name, NOW)
    assert all(len(line) <= 75 for line in data.split(b"\r\n"))
    event = events_of(noted)[event_uid(project, session.key)]
    assert str(event["description"]).endswith(note)


def test_calendar_is_written_whole(project, tmp_path):
    write_calendar(project, Words(), kind_name, tmp_path / "plan.ics", NOW)
    assert icalendar.Calendar.from_ical((tmp_path / "plan.ics").read_bytes()).walk("VEVENT")

from datetime import UTC, date, datetime, timedelta

import icalendar
import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.compound import ImportSessions
from ultraplanner_gui.exchange.calendar_in import read_calendar
from ultraplanner_gui.exchange.calendar_out import event_uid, write_calendar
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.wording.words import Words

WORDS = Words()


@pytest.fixture(scope="module")
def project():
    return demo_project(date(2026, 11, 25))


def written(project, path):
    write_calendar(
        project, WORDS, lambda kind: kind.value, path, datetime(2026, 11, 25, tzinfo=UTC)
    )
    return path


def calendar(tmp_path, *lines):
    text = "\r\n".join(("BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//x//", "BEGIN:VEVENT", *lines))
    path = tmp_path / "other.ics"
    path.write_text(f"{text}\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n", newline="")
    return path


def test_what_was_exported_changes_nothing(project, tmp_path):
    plan = read_calendar(project, WORDS, written(project, tmp_path / "a.ics"))
    assert plan.changes == plan.left_out == ()


def test_session_moved_in_the_calendar_moves_in_the_plan(project, tmp_path):
    session = next(
        s for s in project.block.sessions if s.is_open and s.kind is Kind.LONG and not s.locked
    )
    moved = replace(session, day=session.day + timedelta(days=1), at_s=7.5 * 3600)
    other = replace(project, block=project.block.with_session(moved))
    plan = read_calendar(project, WORDS, written(other, tmp_path / "a.ics"))
    assert len(plan.changes) == 1
    after = ImportSessions(tuple(edit for _, edit in plan.changes)).apply(project)
    assert after == other


def test_event_of_another_calendar_becomes_a_session_once(project, tmp_path):
    day = project.race.day - timedelta(days=20)
    path = calendar(
        tmp_path,
        *("UID:1@club", f"DTSTART:{day:%Y%m%d}T183000", "DURATION:PT1H10M"),
        "SUMMARY:Club tempo run 12 km",
    )
    plan = read_calendar(project, WORDS, path)
    ((_, edit),) = plan.changes
    after = edit.apply(project)
    (new,) = set(after.block.sessions) - set(project.block.sessions)
    assert (new.day, new.kind, new.distance_m) == (day, Kind.TEMPO, 12_000.0)
    assert (new.at_s, new.duration_s) == (18.5 * 3600, 4_200.0)
    assert read_calendar(after, WORDS, path).changes == ()


@pytest.mark.parametrize(
    ("start", "rest"),
    [
        ("20270110", "SUMMARY:Dentist"),
        ("20270110", "SUMMARY:Easy run\r\nRRULE:FREQ=WEEKLY"),
        ("202NDAR", "SUMMARY:Easy run"),
    ],
)
def test_what_is_no_session_is_left_out_and_said(project, tmp_path, start, rest):
    plan = read_calendar(project, WORDS, calendar(tmp_path, "UID:2@x", f"DTSTART:{start}", rest))
    assert plan.changes == ()
    assert len(plan.left_out) == 1


def test_no_calendar_is_refused_in_a_sentence(project, tmp_path):
    (tmp_path / "a.ics").write_bytes(b"hello\x00 there")
    with pytest.raises(PlanError):
        read_calendar(project, WORDS, tmp_path / "a.ics")


def test_an_event_made_longer_makes_its_session_longer(project, tmp_path):
    path = written(project, tmp_path / "a.ics")
    session = next(s for s in project.block.sessions if s.at_s is not None and s.is_open)
    book = icalendar.Calendar.from_ical(path.read_bytes())
    uid = event_uid(project, session.key)
    (event,) = (e for e in book.walk("VEVENT") if str(e["uid"]) == uid)
    lasts = timedelta(seconds=session.duration_s + 1_800.0)
    event.pop("dtend", None)
    event.pop("duration", None)
    event.add("dtend", event["dtstart"].dt + lasts)
    path.write_bytes(book.to_ical())
    (change,) = read_calendar(project, WORDS, path).changes
    after = change[1].apply(project).block.session(session.key)
    assert after.duration_s == session.duration_s + 1_800.0
    assert (after.day, after.at_s) == (session.day, session.at_s)

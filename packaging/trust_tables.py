"""Tables, calendars, templates and settings made to do harm: one sentence, or a sound plan."""

from __future__ import annotations

import gzip
import random
from collections.abc import Iterator
from datetime import date
from pathlib import Path

from trust_files import mutated
from trust_parts import Part, write

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.desk.settings_file import read_settings
from ultraplanner_gui.edits.compound import ImportSessions
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.template import laid_in, template_of
from ultraplanner_gui.exchange.calendar_in import read_calendar
from ultraplanner_gui.exchange.course_table import read_course_table
from ultraplanner_gui.exchange.plan_changes import PlanChanges
from ultraplanner_gui.exchange.table_file import read_text
from ultraplanner_gui.store.soundness import unsound_part
from ultraplanner_gui.store.template_file import read_template, template_bytes
from ultraplanner_gui.window.sessions_csv import read_sessions
from ultraplanner_gui.wording.words import Words

_WORDS = Words()
_CSV = (
    b"Date,Kind,Distance,Time,Note\n2027-05-01,long run,30,5:00,hot\n2027-05-02,easy run,8,1:00,\n"
)
_ICS = (
    b"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//\r\nBEGIN:VEVENT\r\nUID:1@x\r\n"
    b"DTSTART:20270501T080000\r\nDURATION:PT2H\r\nSUMMARY:Long run 20 km\r\nEND:VEVENT\r\n"
    b"END:VCALENDAR\r\n"
)
_COURSE = b"Place;km;Climb;Drop;Cutoff\nMill;12.4;410;120;Sat 10:30\nFinish;42;1240;900;Sun 03:00\n"


def tables(folder: Path, count: int, luck: random.Random) -> Part:
    """Read every hostile table, calendar, template and settings file, and *count* mutated ones."""
    part = Part("tables and calendars")
    today = date.today()
    outlook = derive(demo_project(today), None, today)
    reader = _Reader(folder, outlook, today)
    for name, content in _hostile():
        for kind in _KINDS:
            part.attempt(f"{kind}: {name}", lambda k=kind, c=content: reader.is_sound(k, c))
    good = {"csv": _CSV, "ics": _ICS, "course": _COURSE, "template": reader.template}
    for number in range(count):
        kind = luck.choice(sorted(good))
        spoilt = mutated(good[kind], luck)
        what = f"{kind} mutated {number}"
        part.attempt(what, lambda k=kind, c=spoilt: reader.is_sound(k, c))
    return part


_KINDS = ("csv", "ics", "course", "template", "settings")


class _Reader:
    """Reads bytes as one kind of file and looks whether what comes of it is sound."""

    def __init__(self, folder: Path, outlook: Outlook, today: date) -> None:
        self._path, self._outlook, self._today = folder / "table.x", outlook, today
        self._settings = Settings(folder / "table.ini")
        self.template = template_bytes(template_of(outlook.project, "trust"))

    def is_sound(self, kind: str, content: bytes) -> bool:
        """Return whether *content* as a file of *kind* gives something sound."""
        path, project = write(self._path, content), self._outlook.project
        if kind == "csv":
            return self._is_sound_after(read_sessions(self._outlook, _WORDS, path))
        if kind == "ics":
            return self._is_sound_after(read_calendar(project, _WORDS, path))
        if kind == "course":
            course = read_course_table(read_text(path), _WORDS, project.race.start)
            return course.length_m > 0.0
        if kind == "settings":
            read_settings(self._settings, path)
            return True
        laid = laid_in(read_template(path), project, self._today)
        return len(laid.block.sessions) > 0

    def _is_sound_after(self, plan: PlanChanges) -> bool:
        edits = tuple(edit for _, edit in plan.changes)
        return unsound_part(ImportSessions(edits).apply(self._outlook.project)) is None


def _hostile() -> Iterator[tuple[str, bytes]]:
    yield "empty", b""
    yield "zeros", bytes(100_000)
    yield "one letter", b"x" * 3_000_000
    yield "one line of marks", b"," * 500_000
    yield "many lines", b"a,b\n" * 400_000
    yield "quotes", b'"' * 99_999
    yield "open quote", b'Date,Kind\n"' + b"x\n" * 50_000
    yield "wrong letters", b"Date,Kind\n\xff\xfe\xc3,\x80\n"
    yield "utf-16 cut", "Date,Kind\n2027-05-01,long run\n".encode("utf-16")[:-1]
    yield "formula", b"Date,Kind,Note\n2027-05-01,long run,=cmd|' /C calc'!A0\n"
    yield "deep json", b"[" * 200_000
    yield "huge number", b"Date,Kind,Distance\n2027-05-01,long run," + b"9" * 100_000 + b"\n"
    yield "far day", b"Date,Kind\n9999-12-31,long run\n0001-01-01,easy run\n"
    event = _ICS[_ICS.index(b"BEGIN:VEVENT") : _ICS.index(b"END:VCALENDAR")]
    yield "many events", _ICS.replace(event, event * 3_000)
    yield "endless rule", _ICS.replace(b"SUMMARY", b"RRULE:FREQ=SECONDLY\r\nSUMMARY")
    yield "long title", _ICS.replace(b"Long run", b"Long run " * 20_000)
    yield "no day", _ICS.replace(b"DTSTART:20270501T080000\r\n", b"")
    yield "huge duration", _ICS.replace(b"PT2H", b"P99999999W")
    yield "nested", b"BEGIN:VCALENDAR\r\n" * 20_000
    yield "gzip bomb", gzip.compress(bytes(300_000_000), compresslevel=1)

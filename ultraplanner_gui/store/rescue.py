"""What can still be read of a damaged project file, put into a new one.

Every body carries its checksum, so each is either whole or lost; of a lost part an earlier state
may still have one. What is lost everywhere gets its default and is named.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import Any, TypeVar

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.plan.block import Block, Session
from ultraplanner_gui.plan.candidates import Candidate
from ultraplanner_gui.plan.cards import Card
from ultraplanner_gui.plan.course import Course, Line, SurfaceSpan, sections_between
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.geodesy import distance_along
from ultraplanner_gui.store.codec import from_bytes
from ultraplanner_gui.store.database import is_sealed
from ultraplanner_gui.store.decoding import decode, decode_rows, knows
from ultraplanner_gui.store.header import LARGEST_FILE_BYTES
from ultraplanner_gui.store.line_body import unpack_line
from ultraplanner_gui.store.migrations import NOW, State, read_state
from ultraplanner_gui.store.pages import records
from ultraplanner_gui.store.parts import (
    DIGEST_BYTES,
    LINE,
    TRACKS,
    Manifest,
    is_whole,
    read_manifest,
    read_recording,
)
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.store.soundness import is_sound_line, unsound_part
from ultraplanner_gui.store.troubles import is_unreadable

T = TypeVar("T")

NAMES = {
    "project": QT_TRANSLATE_NOOP("Store", "notes and settings of the plan"),
    "race": QT_TRANSLATE_NOOP("Store", "start, goal and kit of the race"),
    "runner": QT_TRANSLATE_NOOP("Store", "the runner"),
    "block": QT_TRANSLATE_NOOP("Store", "weeks of the block"),
    "sessions": QT_TRANSLATE_NOOP("Store", "sessions"),
    "fuel": QT_TRANSLATE_NOOP("Store", "fuel rates"),
    "foods": QT_TRANSLATE_NOOP("Store", "foods"),
    "items": QT_TRANSLATE_NOOP("Store", "fuel items"),
    "cards": QT_TRANSLATE_NOOP("Store", "cards"),
    "candidates": QT_TRANSLATE_NOOP("Store", "races to pick from"),
    "recordings": QT_TRANSLATE_NOOP("Store", "recordings"),
    TRACKS: QT_TRANSLATE_NOOP("Store", "files of recordings"),
    "course": QT_TRANSLATE_NOOP("Store", "aid stations and sections"),
    "surfaces": QT_TRANSLATE_NOOP("Store", "surfaces"),
    LINE: QT_TRANSLATE_NOOP("Store", "the line of the course (a level one stands in)"),
    "contents": QT_TRANSLATE_NOOP("Store", "the list of contents, and with it the latest changes"),
}
"""What people call each part that can be lost."""

_MOST_MENDS = 12
_ROWS: dict[str, type] = {
    "sessions": Session,
    "foods": Food,
    "items": FuelItem,
    "cards": Card,
    "candidates": Candidate,
    "surfaces": SurfaceSpan,
}


class Rescued(Value, frozen=True):
    """The project that was saved, and the names (of `NAMES`) of what is not as it was kept."""

    project: Project
    lost: tuple[str, ...]


def rescue(path: Path | str, target: Path | str) -> Rescued:
    """Put what can be read of the damaged file *path* into the new file *target*.

    *path* is only read. Raises StoreError if nothing in it can be read, or *target* is taken.
    """
    rescued = read_what_is_left(Path(path))
    ProjectFile.create(target, rescued.project).close()
    return rescued


def has_something_left(path: Path) -> bool:
    """Whether anything in the file *path* could be rescued."""
    try:
        return bool(_Remains(_raw(path)).bodies)
    except StoreError:
        return False


def read_what_is_left(path: Path) -> Rescued:
    """Return what can be read of the damaged file *path*; StoreError if that is nothing."""
    remains = _Remains(_raw(path))
    if not remains.bodies:
        raise StoreError(
            QT_TRANSLATE_NOOP(
                "Store", "Nothing in {0} can be read any more. Open an earlier copy of it."
            ),
            path.name,
        )
    return _Rebuilding(remains, path.stem).rescued()


def _raw(path: Path) -> bytes:
    try:
        if path.stat().st_size > LARGEST_FILE_BYTES:
            raise is_unreadable(path)
        return path.read_bytes()
    except OSError as error:
        raise is_unreadable(path) from error


class _Remains:
    """Every body of a file that still fits its checksum, and every way to put them together."""

    def __init__(self, raw: bytes) -> None:
        self.bodies: dict[str, bytes] = {}
        self._order: dict[str, int] = {}
        self._sealed: list[tuple[int, bytes]] = []
        for number, blobs in records(raw):
            if len(blobs) != 2:
                continue
            first, second = blobs
            if len(first) == DIGEST_BYTES and is_whole(second, first):
                self.bodies[first.hex()] = second
                self._order[first.hex()] = number
            elif is_sealed(number, first, second):
                self._sealed.append((number, first))

    def newest_first(self) -> list[str]:
        """Return the digests of all bodies, the one written last in front."""
        return sorted(self.bodies, key=lambda digest: self._order[digest], reverse=True)

    def manifests(self) -> tuple[list[Manifest], bool]:
        """Return what states are made of, the newest first, and whether the newest is among them.

        A list of contents whose state is lost still stands as a body.
        """
        states = sorted(self._states(), key=lambda pair: (pair[0] == NOW, pair[1].kept_at))
        roots = [state.root for _, state in reversed(states)]
        is_newest = bool(states) and states[-1][0] == NOW and roots[0] in self.bodies
        loose = [digest for digest in self.newest_first() if digest not in roots]
        found = [m for root in (*roots, *loose) if (m := self._manifest(root)) is not None]
        return found, is_newest

    def _states(self) -> Iterator[tuple[int, State]]:
        for number, body in self._sealed:
            try:
                yield number, read_state(body)
            except StoreError:
                continue

    def _manifest(self, digest: str) -> Manifest | None:
        body = self.bodies.get(digest, b"")
        if not body.startswith(b'{"project":['):
            return None
        try:
            return read_manifest(body)
        except StoreError:
            return None


class _Rebuilding:
    """A project being put together from remains; `_lost` collects what is missing."""

    def __init__(self, remains: _Remains, name: str) -> None:
        self._bodies = remains.bodies
        self._loose = remains.newest_first()
        self._manifests, is_newest = remains.manifests()
        self._name = name
        self._lost: list[str] = [] if is_newest else ["contents"]

    def rescued(self) -> Rescued:
        """Return the project, whatever contradicts the rest replaced by its default."""
        rows: dict[str, tuple[Any, ...]] = {
            name: self._rows(name, kind) for name, kind in _ROWS.items()
        }
        sessions = _one_each(rows["sessions"])
        race = self._one("race", Race, lambda: self._some_race(sessions))
        foods = _one_each(rows["foods"])
        known = {food.key for food in foods}
        items = tuple(item for item in _one_each(rows["items"]) if item.food in known)
        if len(items) < len(rows["items"]):
            self._loses("items")
        project = self._one(
            "project",
            Project,
            lambda: Project(race),
            race=race,
            course=self._course(rows["surfaces"]),
            runner=self._one("runner", Runner, Runner),
            block=self._one("block", Block, Block, sessions=sessions),
            fuel=self._one("fuel", FuelPlan, FuelPlan, foods=foods, items=items),
            cards=rows["cards"],
            candidates=_one_each(rows["candidates"]),
            recordings=self._recordings(),
        )
        return Rescued(self._mended(project), tuple(dict.fromkeys(self._lost)))

    def _loses(self, name: str) -> None:
        self._lost.append(name)

    def _one(self, name: str, kind: type[T], default: Callable[[], T], **given: object) -> T:
        """Return the newest part *name* there is; the default, *given* in it, if there is none."""
        if self._is_whole(name):
            value = self._read(name, kind, self._manifests[0][name][0], given)
            if value is not None:
                return value
        older = [d for m in self._manifests[1:] for d in m.get(name, ())[:1]]
        for digest in older if self._manifests else self._loose:
            value = self._read(name, kind, digest, given)
            if value is not None:
                if self._manifests:
                    self._loses(name)
                return value
        self._loses(name)
        value = default()
        return replace(value, **given) if given else value  # type: ignore[type-var]

    def _is_whole(self, name: str) -> bool:
        return bool(self._manifests) and len(self._manifests[0].get(name, ())) == 1

    def _read(
        self, name: str, kind: type[T], digest: str, given: dict[str, object] | None = None
    ) -> T | None:
        body = self._bodies.get(digest)
        if body is None:
            return None
        try:
            return decode(kind, body, name, given) if self._may_be(kind, body) else None
        except StoreError:
            return None

    def _rows(self, name: str, kind: type[T]) -> tuple[T, ...]:
        """Return the rows of the newest state that can be read, then earlier ones for the gaps."""
        if not self._manifests:
            return tuple(v for digest in self._loose for v in self._row(name, kind, digest) or ())
        newest = self._manifests[0].get(name, ())
        rows = [self._row(name, kind, digest) for digest in newest]
        values = [value for row in rows if row for value in row]
        if None in rows:
            self._loses(name)
            older = [d for m in self._manifests[1:] for d in m.get(name, ()) if d not in newest]
            values += [v for d in dict.fromkeys(older) for v in self._row(name, kind, d) or ()]
        return tuple(values)

    def _row(self, name: str, kind: type[T], digest: str) -> tuple[T, ...] | None:
        body, row_of = self._bodies.get(digest), tuple[kind, ...]  # type: ignore[valid-type]
        if body is None or not body.startswith(b"["):
            return None
        try:
            return decode_rows(kind, (body,), name) if self._may_be(row_of, body) else None
        except StoreError:
            return None

    def _may_be(self, hint: object, body: bytes) -> bool:
        """Whether *body* may be of the type *hint*; where no list says so the fields must."""
        return bool(self._manifests) or knows(hint, from_bytes(body, "contents"))

    def _recordings(self) -> tuple[KeptRecording, ...]:
        """Return the recordings of the newest state whose figures and file can both be read."""
        if not self._manifests:
            return ()
        newest = self._manifests[0]
        found: list[KeptRecording] = []
        pairs = zip(newest.get("recordings", ()), newest.get(TRACKS, ()), strict=False)
        for head, track in pairs:
            try:
                bodies = self._bodies[head], self._bodies[track]
                found.append(read_recording(*bodies))
            except (KeyError, StoreError):
                self._loses("recordings")
        return _one_each(found)

    def _course(self, surfaces: tuple[SurfaceSpan, ...]) -> Course | None:
        if self._manifests and not self._manifests[0].get("course"):
            return None
        line = self._line()
        if line is None:
            self._loses(LINE)
        stand_in = line or _level_line(1.0)
        course = self._one(
            "course", Course, lambda: _bare_course(stand_in), line=stand_in, surfaces=surfaces
        )
        if line is None:
            if course.length_m == _bare_course(stand_in).length_m:
                self._loses("course")
                return None
            course = replace(course, line=_level_line(course.length_m))
        return course

    def _line(self) -> Line | None:
        named = [d for m in self._manifests for d in m.get(LINE, ())[:1]]
        for rank, digest in enumerate(named or self._loose):
            try:
                line = unpack_line(self._bodies.get(digest, b""))
            except StoreError:
                continue
            if is_sound_line(line):
                if named and digest != named[0] and rank:
                    self._loses(LINE)
                return line
        return None

    def _some_race(self, sessions: tuple[Session, ...]) -> Race:
        last = max((s.day for s in sessions), default=datetime.now(UTC).date())
        start = datetime.combine(_later(last), time(6), UTC)
        return Race(self._name, start, 86_400.0)

    def _mended(self, project: Project) -> Project:
        for _ in range(_MOST_MENDS):
            part = unsound_part(project)
            if part is None:
                return project
            name = part.partition(".")[0]
            self._loses(_OWNER.get(name, name))
            project = _without(project, name)
        raise StoreError(
            QT_TRANSLATE_NOOP("Store", "Nothing that is left fits together. Open an earlier copy.")
        )


_OWNER = {
    "stations": "course",
    "sections": "course",
    "pins": "course",
    "surface_factors": "course",
    "first_weekday": "project",
}


def _without(project: Project, part: str) -> Project:
    """Return *project* with what the check named *part* speaks of at its default."""
    if part == "race":
        start = datetime.combine(_later(date.today()), time(6), UTC)
        return replace(project, race=Race(project.race.name, start, 86_400.0))
    if part == "runner":
        return replace(project, runner=Runner())
    if part == "first_weekday":
        return replace(project, first_weekday=0)
    if part == "recordings":
        return replace(project, recordings=())
    if part in ("reviews", "lessons"):
        return replace(project, reviews=(), lessons=())
    if part == "candidates":
        return replace(project, candidates=())
    if part == "sessions":
        return replace(project, block=replace(project.block, sessions=()))
    if part in ("foods", "items"):
        return replace(project, fuel=replace(project.fuel, foods=(), items=()))
    course = project.course
    if course is not None and part == "surfaces" and course.surfaces:
        return replace(project, course=replace(course, surfaces=()))
    if course is not None and course != (bare := _bare_course(course.line)):
        return replace(project, course=bare)
    return replace(project, course=None)


def _later(day: date) -> date:
    return day + timedelta(days=1)


def _one_each(values: Iterable[T]) -> tuple[T, ...]:
    """Return *values* without those whose key came before."""
    kept: dict[str, T] = {}
    for value in values:
        kept.setdefault(value.key, value)  # type: ignore[attr-defined]
    return tuple(kept.values())


def _bare_course(line: Line) -> Course:
    length_m = float(distance_along(line.latitude_deg, line.longitude_deg)[-1])
    return Course(line, length_m, (), sections_between(()))


def _level_line(length_m: float) -> Line:
    """Return a line of *length_m* along the equator without heights, where the own one is lost."""
    end_deg = min(length_m / 111_319.5, 359.0)
    return Line(np.zeros(2), np.array([0.0, end_deg]), np.full(2, np.nan))

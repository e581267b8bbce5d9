"""The project file: one SQLite database that holds the project and its earlier states."""

from __future__ import annotations

import os
import shutil
import tempfile
import time
from collections.abc import Mapping
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path
from types import TracebackType
from typing import NamedTuple, Self

from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.store.database import VERSION, Database
from ultraplanner_gui.store.header import check_header
from ultraplanner_gui.store.migrations import (
    MIGRATIONS,
    NOW,
    Migration,
    State,
    body_of,
    bring_up,
    is_newer,
    manifest_of,
    read_state,
    write_state,
)
from ultraplanner_gui.store.open_note import Mark, leave_note, read_note, take_note_away
from ultraplanner_gui.store.parts import Layout, Manifest, assemble, digest_of, digests_in
from ultraplanner_gui.store.placing import part_beside, put_in_place
from ultraplanner_gui.store.soundness import unsound_part
from ultraplanner_gui.store.troubles import (
    Damaged,
    Elsewhere,
    cannot_write,
    damaged,
    is_elsewhere,
    is_gone,
    is_open_since,
    is_protected,
    is_unreadable,
    made_by_newer,
    unfit,
)

SUFFIX = ".ultraplan"
OPENINGS_HELD = 30
MOST_NAMED = 100

NEW_LABEL = QT_TRANSLATE_NOOP("Edit", "New project")

LOOKS = 10
BETWEEN_LOOKS_S = 0.05

_open_here: dict[tuple[int, int], Database] = {}
"""Every file this process has open, by device and inode: a second handle on one, once closed,
would give up the lock of the first (POSIX advisory locks)."""


class Point(NamedTuple):
    """An earlier state to go back to: when it was kept and after which deed."""

    id: int
    kept_at: datetime
    label: str


class ProjectFile:
    """One open project file. `project` is what was last kept, `kept_at` when.

    `is_read_only` says that nothing can be kept here; `original` is where a file of an older
    version was laid aside when it was brought up to this one.
    """

    def __init__(self, database: Database, path: Path, is_read_only: bool) -> None:
        self._database = database
        self.path = path
        self.is_read_only = is_read_only
        self.original: Path | None = None
        self._inode = _inode(path)
        self._note: Mark | None = None
        states = _whole_states(database)
        if NOW not in states:
            raise damaged("history")
        self._now = states.pop(NOW)
        manifest = manifest_of(database, self._now)
        self.project = self._assembled(manifest)
        self._layout: Layout | None = None
        self._points = states
        self._held = {number: _held_by(database, state) for number, state in states.items()}
        self._held_now = _bodies(manifest, self._now.root)
        self._at_opening: State | None = self._now

    @classmethod
    def create(cls, path: Path | str, project: Project, *, overwrite: bool = False) -> Self:
        """Write *project* to a new file at *path* and open it.

        Raises StoreError if there is one already and *overwrite* is not set.
        """
        path = Path(path).resolve()
        _check_free(path, overwrite)
        part = part_beside(path)
        try:
            with closing(Database.make(part, path)) as database, database.transaction():
                _layout, root, bodies, _held = _laid_out(Layout(), project)
                database.put_parts(bodies)
                database.put_state(NOW, write_state(State(datetime.now(UTC), NEW_LABEL, root)))
            put_in_place(part, path)
        finally:
            part.unlink(missing_ok=True)
        return cls.open(path)

    @classmethod
    def open(cls, path: Path | str, *, migrations: Mapping[int, Migration] = MIGRATIONS) -> Self:
        """Open the file at *path*; one of an older version is brought up on a copy first.

        Raises StoreError, the file untouched, if it is open elsewhere, damaged, or not ours.
        """
        path = Path(path).resolve()
        try:
            return cls._opened(path, migrations)
        except Elsewhere as error:
            raise _who_has(path) or error from error

    @classmethod
    def look(cls, path: Path | str) -> Self:
        """Return what was last kept in the file at *path*, read-only, though it is open elsewhere.

        It is a copy in memory that takes no lock. Raises StoreError as `open` does.
        """
        path = Path(path).resolve()
        for count in range(LOOKS):
            try:
                database = Database.look_at_bytes(_content(path), path)
                try:
                    file = cls(database, path, is_read_only=True)
                except BaseException:
                    database.close()
                    raise
            except Damaged:
                # perhaps read in the middle of a change
                if count == LOOKS - 1:
                    raise
                time.sleep(BETWEEN_LOOKS_S)
            else:
                file._inode = None
                return file
        raise is_unreadable(path)

    @classmethod
    def _opened(cls, path: Path, migrations: Mapping[int, Migration]) -> Self:
        if _inode(path) in _open_here:
            raise is_elsewhere(path)
        version = check_header(path)
        if is_newer(version):
            raise made_by_newer(path)
        original = None
        if version < VERSION:
            Database.look_into(path).close()
            if _is_protected(path):
                raise Elsewhere(
                    QT_TRANSLATE_NOOP(
                        "Store",
                        "{0} is of an older version and may not be changed here. Look at it, or "
                        "copy it to a folder you may write to.",
                    ),
                    path.name,
                )
            original = bring_up(path, version, migrations, cls._check_readable)
        file = cls._taken(path)
        file.original = original
        return file

    @classmethod
    def _taken(cls, path: Path) -> Self:
        is_read_only = _is_protected(path)
        database = Database.look_into(path) if is_read_only else Database.take(path)
        try:
            file = cls(database, path, is_read_only)
        except BaseException:
            database.close()
            raise
        if file._inode is not None:
            _open_here[file._inode] = database
        return file

    @classmethod
    def _check_readable(cls, path: Path) -> None:
        with closing(Database.look_into(path)) as database:
            cls(database, path, is_read_only=True)

    @property
    def kept_at(self) -> datetime:
        """When the project was last kept, aware."""
        return self._now.kept_at

    def keep(self, project: Project, label: str) -> None:
        """Keep *project*, made by the deed *label*, in one transaction.

        When this returns it is safe on the disk; on StoreError the file is as it was.
        """
        if project is self.project:
            return
        self._check_writable()
        layout, root, bodies, held = _laid_out(self._known_layout(), project)
        now = State(datetime.now(UTC), label, root)
        points, held_by = self._next_points()
        self._write(points, now, bodies, held_by, held)
        self.project, self._layout, self._at_opening = project, layout, None

    def mark(self, label: str, *, is_named: bool = True) -> None:
        """Make the project as it was last kept a point of the history called *label*.

        One that is not *is_named* goes, like an opening, once there are newer ones enough.
        """
        self._check_writable()
        if is_named and sum(point.is_named for point in self._points.values()) >= MOST_NAMED:
            raise StoreError(
                QT_TRANSLATE_NOOP("Store", "There are {0} named states already; that is the most."),
                MOST_NAMED,
            )
        point = replace(self._now, label=label, is_named=is_named)
        number = max(self._points, default=NOW) + 1
        points = {**self._points, number: point}
        held_by = {**self._held, number: self._held_now}
        _drop_oldest(points, held_by)
        self._write(points, self._now, {}, held_by, self._held_now)

    def history(self) -> list[Point]:
        """Return the states one can go back to, the newest first."""
        points = [Point(n, state.kept_at, state.label) for n, state in self._points.items()]
        return sorted(points, reverse=True)

    def at(self, point: int) -> Project:
        """Return the project as it was at the *point* of that id."""
        state = self._points.get(point)
        if state is None:
            raise StoreError(
                QT_TRANSLATE_NOOP("Store", "That earlier state is no longer in the file.")
            )
        return self._assembled(manifest_of(self._database, state))

    def save_copy(self, path: Path | str, project: Project | None = None) -> None:
        """Write a complete copy, history included, to *path*, over what was there.

        *project* goes into the copy where the last change could not be kept in this file.
        """
        target = Path(path).resolve()
        _check_free(target, overwrite=True)
        part = part_beside(target)
        try:
            self._database.copy_to(part, target)
            if project is not None and project is not self.project:
                with ProjectFile.open(part) as copy:
                    copy.keep(project, self._now.label)
            put_in_place(part, target)
        finally:
            part.unlink(missing_ok=True)

    def leave_note(self) -> None:
        """Say beside the file who has it open, until it is closed: whoever works on it should."""
        if not self.is_read_only and self._note is None:
            self._note = leave_note(self.path)

    def close(self) -> None:
        """Close the file and let other windows open it."""
        if self._note is not None:
            take_note_away(self.path, self._note)
        self._database.close()
        if self._inode is not None:
            _open_here.pop(self._inode, None)

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def _assembled(self, manifest: Manifest) -> Project:
        project = assemble(manifest, self._database.bodies(digests_in(manifest)))
        part = unsound_part(project)
        if part is not None:
            raise damaged(part)
        return project

    def _known_layout(self) -> Layout:
        # not while opening, which it would make a twentieth longer
        if self._layout is None:
            self._layout = Layout.of(self.project, manifest_of(self._database, self._now))
        return self._layout

    def _check_writable(self) -> None:
        if self.is_read_only:
            raise is_protected(self.path)
        if self._inode != _inode(self.path):
            raise is_gone(self.path)

    def _next_points(self) -> tuple[dict[int, State], dict[int, frozenset[str]]]:
        """Return the history with the state at opening in it, once something has changed."""
        points, held_by = dict(self._points), dict(self._held)
        last = max(points, default=NOW)
        opening = self._at_opening
        if opening is not None and (last == NOW or points[last].root != opening.root):
            points[last + 1], held_by[last + 1] = opening, self._held_now
        _drop_oldest(points, held_by)
        return points, held_by

    def _write(
        self,
        points: dict[int, State],
        now: State,
        bodies: Mapping[str, bytes],
        held_by: dict[int, frozenset[str]],
        held_now: frozenset[str],
    ) -> None:
        before = self._held_now.union(*self._held.values())
        after = held_now.union(*held_by.values())
        with self._database.transaction():
            self._database.put_parts(bodies)
            self._database.put_state(NOW, write_state(now))
            for number in points.keys() - self._points.keys():
                self._database.put_state(number, write_state(points[number]))
            self._database.drop_states(self._points.keys() - points.keys())
            self._database.drop_parts(before - after)
        self._now, self._held_now = now, held_now
        self._points, self._held = points, held_by


def read_project(path: Path | str) -> Project:
    """Return the project in the file at *path*; StoreError as in `ProjectFile.open`."""
    with ProjectFile.open(path) as file:
        return file.project


def _laid_out(
    layout: Layout, project: Project
) -> tuple[Layout, str, dict[str, bytes], frozenset[str]]:
    """Return the next layout, the root, the new bodies with it, and all digests of *project*."""
    part = unsound_part(project)
    if part is not None:
        raise unfit(part)
    following, manifest, bodies = layout.written(project)
    contents = body_of(manifest)
    root = digest_of(contents)
    return following, root, {**bodies, root: contents}, _bodies(manifest, root)


def _bodies(manifest: Manifest, root: str) -> frozenset[str]:
    return frozenset((root,)).union(*manifest.values())


def _whole_states(database: Database) -> dict[int, State]:
    return {number: read_state(body) for number, body in database.states().items()}


def _held_by(database: Database, state: State) -> frozenset[str]:
    return _bodies(manifest_of(database, state), state.root)


def _drop_oldest(points: dict[int, State], held_by: dict[int, frozenset[str]]) -> None:
    """Leave as many unnamed states in *points* as are held."""
    openings = sorted(number for number, state in points.items() if not state.is_named)
    for number in openings[:-OPENINGS_HELD]:
        del points[number], held_by[number]


def _content(path: Path) -> bytes:
    """Return the bytes of the file *path*, without a handle of its own on one open here."""
    inode = _inode(path)
    here = _open_here.get(inode) if inode is not None else None
    if here is not None:
        return here.content()
    version = check_header(path)
    if is_newer(version):
        raise made_by_newer(path)
    try:
        return _brought_up(path, version) if version < VERSION else path.read_bytes()
    except OSError as error:
        raise is_unreadable(path) from error


def _brought_up(path: Path, version: int) -> bytes:
    """Return what *path* of an older version is in this one; it stays as it is."""
    with tempfile.TemporaryDirectory(prefix="ultraplanner-") as folder:
        copy = Path(folder) / path.name
        shutil.copyfile(path, copy)
        ProjectFile.open(copy).close()
        return copy.read_bytes()


def _who_has(path: Path) -> StoreError | None:
    """Return the error that names who has *path* open, None where no note says so."""
    holder = read_note(path)
    if holder is None or holder.is_gone:
        return None
    since = holder.since.astimezone().strftime("%Y-%m-%d %H:%M")
    return is_open_since(path, holder.user, holder.host, since)


def _inode(path: Path) -> tuple[int, int] | None:
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino


def _is_protected(path: Path) -> bool:
    return not (os.access(path, os.W_OK) and os.access(path.parent, os.W_OK))


def _check_free(path: Path, overwrite: bool) -> None:
    if _inode(path) in _open_here:
        raise is_elsewhere(path)
    if path.is_dir():
        raise cannot_write(path)
    if path.exists() and not overwrite:
        raise StoreError(
            QT_TRANSLATE_NOOP("Store", "There is already a file {0}. Choose another name."),
            path.name,
        )

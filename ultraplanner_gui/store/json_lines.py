"""A project file as lines of JSON that any tool can read, and back again.

The first line says what it is, then comes one line for each body and each state; the order and the
names are those of `packaging/file-format.md`. The course line is opened into three columns.
"""

from __future__ import annotations

import base64
import binascii
import time
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path
from typing import BinaryIO

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.store.codec import Json, encode, from_bytes, to_bytes
from ultraplanner_gui.store.database import VERSION, Database
from ultraplanner_gui.store.decoding import decode, knows
from ultraplanner_gui.store.header import check_header
from ultraplanner_gui.store.line_body import MOST_POINTS, pack_line, unpack_line
from ultraplanner_gui.store.migrations import (
    MIGRATIONS,
    NOW,
    State,
    Step,
    body_of,
    is_newer,
    manifest_of,
    read_state,
    steps_from,
    write_state,
)
from ultraplanner_gui.store.parts import KINDS, LINE, MOST_BODIES, TRACKS, Manifest, digest_of
from ultraplanner_gui.store.placing import part_beside, put_in_place
from ultraplanner_gui.store.project_file import (
    BETWEEN_LOOKS_S,
    LOOKS,
    MOST_NAMED,
    OPENINGS_HELD,
    ProjectFile,
)
from ultraplanner_gui.store.troubles import (
    Damaged,
    Elsewhere,
    cannot_write,
    damaged,
    is_unreadable,
    made_by_newer,
)

KIND = "ultraplanner"
LONGEST_LINE_BYTES = 96 * 1024 * 1024
MOST_TOLD = OPENINGS_HELD + MOST_NAMED + 1  # as many states as a file comes to hold
MOST_LINES = 100_000
MOST_BYTES = 1024 * 1024 * 1024
COLUMNS = ("latitude_deg", "longitude_deg", "elevation_m")


def dump(path: Path) -> Iterator[bytes]:
    """Yield the file at *path*, earlier states included, line by line; nothing in it changes.

    Raises StoreError as opening it does.
    """
    with closing(_looked_at(path)) as database:
        yield _line({KIND: "project", "version": database.version})
        known: dict[tuple[str, str], int] = {}
        states = database.states()
        # the project as it is comes last, so that lines cut short are no project
        for number in sorted(states, key=lambda one: (one == NOW, one)):
            body = states[number]
            state = read_state(body)
            manifest = manifest_of(database, state)
            for name, digest in _new_bodies(manifest, known):
                value = _open(name, database.body(digest))
                yield _line({"body": known[_kind(name), digest], "part": name, "value": value})
            parts: dict[str, Json] = {
                name: [known[_kind(name), digest] for digest in digests]
                for name, digests in manifest.items()
            }
            yield _line({"state": number, **_figures(state), "parts": parts})


def lines_of(file: BinaryIO) -> Iterator[bytes]:
    """Yield the lines of *file*, each no longer than one byte more than is read."""
    return iter(lambda: file.readline(LONGEST_LINE_BYTES + 1), b"")


def restore(lines: Iterable[bytes], source: str, path: Path) -> None:
    """Write the project in *lines*, called *source*, to the new file *path*.

    Lines of an older version are brought up to this one. Raises StoreError with the number of the
    line that is not as it should be; nothing is left at *path* then.
    """
    path = path.resolve()
    if path.exists():
        raise StoreError(
            QT_TRANSLATE_NOOP("Store", "There is a file {0} already. Choose another name."),
            path.name,
        )
    found = _Found(source)
    total = 0
    for number, line in enumerate(lines, 1):
        total += len(line)
        if total > MOST_BYTES:
            raise found.strange(number)
        found.take(number, line)
    found.check_whole()
    part = part_beside(path)
    try:
        with closing(Database.make(part, path)) as database, database.transaction():
            for number, (state, manifest, bodies) in found.states().items():
                root = body_of(manifest)
                database.put_parts({**bodies, digest_of(root): root})
                database.put_state(number, write_state(replace(state, root=digest_of(root))))
        _check_every_state(part)
        put_in_place(part, path)
    except OSError as error:
        raise cannot_write(path) from error
    finally:
        part.unlink(missing_ok=True)


@dataclass
class _Found:
    """What the lines so far have told."""

    source: str
    version: int | None = None
    bodies: dict[int, tuple[str, Json | bytes]] = field(default_factory=dict)
    told: dict[int, tuple[State, dict[str, list[int]]]] = field(default_factory=dict)

    def take(self, number: int, line: bytes) -> None:
        """Take the line *number* in; StoreError if it is none of ours."""
        if number > MOST_LINES or len(line) > LONGEST_LINE_BYTES:
            raise self.strange(number)
        try:
            coded = from_bytes(line.strip(), "contents")
            if self.version is None:
                self.version = _version(coded)
            elif isinstance(coded, dict) and "body" in coded:
                self._take_body(coded)
            elif isinstance(coded, dict) and "state" in coded:
                self._take_state(coded)
            else:
                raise ValueError
        except (ValueError, KeyError, TypeError, Damaged) as error:
            raise self.strange(number) from error

    def _take_body(self, coded: dict[str, Json]) -> None:
        number, name = _number(coded["body"]), coded["part"]
        if len(coded) != 3 or number in self.bodies or not isinstance(name, str):
            raise ValueError
        self.bodies[number] = (name, _closed(name, coded["value"]))

    def _take_state(self, coded: dict[str, Json]) -> None:
        number, parts = _number(coded.pop("state")), coded.pop("parts")
        if number in self.told or len(self.told) >= MOST_TOLD or not isinstance(parts, dict):
            raise ValueError
        state = decode(State, to_bytes({**coded, "root": ""}), "history")
        self.told[number] = (state, {name: self._known(name, row) for name, row in parts.items()})

    def _known(self, name: str, row: Json) -> list[int]:
        if not isinstance(row, list) or len(row) > MOST_BODIES:
            raise ValueError
        numbers = [_number(one) for one in row]
        if any(_kind(self.bodies[one][0]) != _kind(name) for one in numbers):
            raise ValueError
        return numbers

    def check_whole(self) -> None:
        """Raise StoreError unless there is a project in what was told."""
        if self.version is None or NOW not in self.told:
            raise StoreError(
                QT_TRANSLATE_NOOP(
                    "Store", "{0} has no project in it. Write it anew with --dump and try again."
                ),
                self.source,
            )

    def states(self) -> dict[int, tuple[State, Manifest, dict[str, bytes]]]:
        """Return every state with its parts as they are written in this version."""
        steps = steps_from(self.source, self.version or 0, MIGRATIONS)
        return {
            number: (state, *self._written(rows, steps))
            for number, (state, rows) in self.told.items()
        }

    def _written(
        self, rows: Mapping[str, Sequence[int]], steps: Sequence[Step]
    ) -> tuple[Manifest, dict[str, bytes]]:
        bodies: dict[str, bytes] = {}
        manifest: dict[str, list[str]] = {name: [] for name in rows}
        parts: dict[str, list[Json]] = {}
        for name, row in rows.items():
            for one in row:
                value = self.bodies[one][1]
                if isinstance(value, bytes):
                    bodies[digest_of(value)] = value
                    manifest[name].append(digest_of(value))
                else:
                    parts.setdefault(name, []).append(value)
        for step in steps:
            parts = step(parts)
        for name, values in parts.items():
            # what is mistyped by hand would be passed over else, and its default taken
            if name in KINDS and not all(knows(KINDS[name], value) for value in values):
                raise damaged(name)
            try:
                written = list(map(to_bytes, values))
            except (ValueError, RecursionError) as error:
                raise damaged(name) from error
            bodies |= {digest_of(body): body for body in written}
            manifest[name] = list(map(digest_of, written))
        return {name: tuple(row) for name, row in manifest.items()}, bodies

    def strange(self, number: int) -> StoreError:
        """Return the error that says that the line *number* cannot be read."""
        return StoreError(
            QT_TRANSLATE_NOOP(
                "Store", "Line {0} of {1} is not as --dump writes it. Mend it or dump once more."
            ),
            str(number),
            self.source,
        )


def _looked_at(path: Path) -> Database:
    path = path.resolve()
    version = check_header(path)
    if is_newer(version):
        raise made_by_newer(path)
    for _ in range(LOOKS):
        try:
            return Database.look_into(path)
        except Elsewhere:
            try:
                return Database.look_at_bytes(path.read_bytes(), path)
            except Damaged:  # perhaps read in the middle of a change
                time.sleep(BETWEEN_LOOKS_S)
    raise is_unreadable(path)


def _check_every_state(path: Path) -> None:
    with ProjectFile.open(path) as file:
        for point in file.history():
            file.at(point.id)


def _new_bodies(manifest: Manifest, known: dict[tuple[str, str], int]) -> Iterator[tuple[str, str]]:
    for name, digests in manifest.items():
        for digest in digests:
            if (_kind(name), digest) not in known:
                known[_kind(name), digest] = len(known) + 1
                yield name, digest


def _kind(name: str) -> str:
    """Return how the bodies of the part *name* are opened."""
    return name if name in (LINE, TRACKS) else ""


def _figures(state: State) -> dict[str, Json]:
    coded = from_bytes(encode(State, state, "history"), "history")
    assert isinstance(coded, dict)
    del coded["root"]
    return coded


def _open(name: str, body: bytes) -> Json:
    if name == LINE:
        return _open_line(unpack_line(body))
    if name == TRACKS:
        return base64.b64encode(body).decode("ascii")
    return from_bytes(body, name)


def _open_line(line: Line) -> Json:
    columns: dict[str, Json] = {
        name: [None if np.isnan(value) else value for value in getattr(line, name).tolist()]
        for name in COLUMNS
    }
    return {"gaps": list(line.gaps), **columns}


def _closed(name: str, value: Json) -> Json | bytes:
    if name == LINE:
        return _closed_line(value)
    if name == TRACKS:
        if not isinstance(value, str):
            raise ValueError
        try:
            return base64.b64decode(value, validate=True)
        except binascii.Error as error:
            raise ValueError from error
    return value


def _closed_line(value: Json) -> bytes:
    if not isinstance(value, dict) or value.keys() != {"gaps", *COLUMNS}:
        raise ValueError
    gaps = value["gaps"]
    if not isinstance(gaps, list):
        raise ValueError
    columns = [_column(value[name]) for name in COLUMNS]
    if len(set(map(len, columns))) != 1 or not 2 <= len(columns[0]) <= MOST_POINTS:
        raise ValueError
    places = tuple(_number(gap) for gap in gaps)
    if any(not 0 < gap < len(columns[0]) for gap in places):
        raise ValueError
    latitude, longitude, height = columns
    return pack_line(Line(latitude, longitude, height, places))


def _column(value: Json) -> FloatArray:
    if not isinstance(value, list) or not {type(one) for one in value} <= {float, int, type(None)}:
        raise ValueError
    try:
        column = np.array([np.nan if one is None else one for one in value], dtype=np.float64)
    except OverflowError as error:
        raise ValueError from error
    return column


def _number(value: Json) -> int:
    if type(value) is not int or not 0 <= value <= MOST_LINES:
        raise ValueError
    return value


def _version(coded: Json) -> int:
    if not isinstance(coded, dict) or coded.get(KIND) != "project":
        raise ValueError
    version = coded["version"]
    if type(version) is not int or version > VERSION:
        raise ValueError
    return version


def _line(coded: Mapping[str, Json]) -> bytes:
    return to_bytes(dict(coded)) + b"\n"

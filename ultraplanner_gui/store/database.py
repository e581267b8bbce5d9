"""The SQLite file behind a project: opened with distrust, written in whole transactions."""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import closing, contextmanager
from hashlib import blake2b
from pathlib import Path

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.store.header import APPLICATION_ID
from ultraplanner_gui.store.parts import DIGEST_BYTES, is_whole
from ultraplanner_gui.store.troubles import (
    LeftOpen,
    cannot_write,
    disk_is_full,
    is_broken,
    is_elsewhere,
    is_protected,
    is_strange,
    is_unreadable,
)

VERSION = 2000
MAJOR = 1000

LARGEST_BODY_BYTES = 32 * 1024 * 1024
MOST_STATES = 1000
OPENING_BUDGET_S = 2.0
WAIT_FOR_LOCK_S = 0.3
_MOST_AT_ONCE = 500

TABLES = (
    "CREATE TABLE part (digest BLOB PRIMARY KEY NOT NULL, body BLOB NOT NULL) STRICT",
    "CREATE TABLE state (id INTEGER PRIMARY KEY, body BLOB NOT NULL, seal BLOB NOT NULL) STRICT",
)
_SCHEMA = [
    ("index", "sqlite_autoindex_part_1", "part", None),
    ("table", "part", "part", TABLES[0]),
    ("table", "state", "state", TABLES[1]),
]

Sentence = Callable[[Path], StoreError]


class Database:
    """One connection to one project file.

    Every method raises StoreError with a sentence that names the file by its name.
    """

    def __init__(self, connection: sqlite3.Connection, path: Path) -> None:
        self._connection = connection
        self._path = path

    @classmethod
    def make(cls, path: Path, named: Path, version: int = VERSION) -> Database:
        """Return a new empty file at *path*, where none may be; errors speak of *named*."""
        with _Said(named, cannot_write):
            connection = sqlite3.connect(path, isolation_level=None)
            connection.execute("PRAGMA synchronous = FULL")
            connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
            connection.execute(f"PRAGMA user_version = {version}")
            for statement in TABLES:
                connection.execute(statement)
        return cls(connection, named)

    @classmethod
    def look_into(cls, path: Path) -> Database:
        """Return *path* opened for reading, after every check that a strange file must pass."""
        try:
            database = cls(_connect(path, "ro"), path)
            with database._closed_on_error():
                database._check()
        except LeftOpen:
            _roll_back(path)
            database = cls(_connect(path, "ro"), path)
            with database._closed_on_error():
                database._check()
        return database

    @classmethod
    def look_at_bytes(cls, raw: bytes, path: Path) -> Database:
        """Return the file whose content is *raw*, held in memory, after the checks of a file."""
        with _Said(path):
            connection = _guarded(sqlite3.connect(":memory:", isolation_level=None))
        database = cls(connection, path)
        with database._closed_on_error():
            with _Said(path):
                connection.deserialize(raw)
                connection.execute("PRAGMA query_only = ON")
            database._check(len(raw))
        return database

    def content(self) -> bytes:
        """Return the bytes of the whole file, as they were last written."""
        with _Said(self._path):
            return self._connection.serialize()

    @classmethod
    def take(cls, path: Path) -> Database:
        """Return *path* opened for writing, after every check that a strange file must pass.

        Until it is closed nobody else gets at it. What a stopped program left is rolled back.
        """
        database = cls(_connect(path, "rw"), path)
        with database._closed_on_error(), _Said(path):
            execute = database._connection.execute
            execute("PRAGMA journal_mode = DELETE")
            execute("PRAGMA synchronous = FULL")
            execute("PRAGMA locking_mode = EXCLUSIVE")
            # checked under the lock, and by the connection that goes on to read the same pages
            execute("BEGIN EXCLUSIVE")
            database._check()
            execute("COMMIT")
        return database

    @property
    def version(self) -> int:
        """The version of the file's format, major * 1000 + minor."""
        with _Said(self._path):
            return int(self._connection.execute("PRAGMA user_version").fetchone()[0])

    def states(self) -> dict[int, bytes]:
        """Return the bodies of all states whose seal is whole, by their number."""
        with _Said(self._path):
            rows = self._connection.execute("SELECT id, body, seal FROM state").fetchmany(
                MOST_STATES
            )
        return {number: body for number, body, seal in rows if is_sealed(number, body, seal)}

    def body(self, digest: str) -> bytes:
        """Return the body of the part *digest*; StoreError if it is lost or changed."""
        return self.bodies((digest,))[digest]

    def bodies(self, digests: Sequence[str]) -> dict[str, bytes]:
        """Return the bodies of *digests*, each by its own; StoreError if one is lost or changed."""
        found: dict[str, bytes] = {}
        for start in range(0, len(digests), _MOST_AT_ONCE):
            found.update(self._found(digests[start : start + _MOST_AT_ONCE]))
        if not found.keys() >= set(digests):
            raise is_broken(self._path)
        return found

    def _found(self, digests: Sequence[str]) -> dict[str, bytes]:
        """Return the bodies of *digests* that are there and whole, each by its own."""
        try:
            keys = list(map(bytes.fromhex, digests))
        except ValueError as error:
            raise is_broken(self._path) from error
        places = ",".join("?" * len(keys))
        with _Said(self._path):
            rows = self._connection.execute(
                f"SELECT digest, body FROM part WHERE digest IN ({places})", keys
            ).fetchall()
        return {digest.hex(): body for digest, body in rows if is_whole(body, digest)}

    @contextmanager
    def transaction(self) -> Iterator[None]:
        """Make everything inside happen, safe on the disk, or nothing of it."""
        with _Said(self._path):
            self._connection.execute("BEGIN IMMEDIATE")
            try:
                yield
                self._connection.execute("COMMIT")
            except BaseException:
                if self._connection.in_transaction:
                    self._connection.execute("ROLLBACK")
                raise

    def put_parts(self, bodies: Mapping[str, bytes]) -> None:
        """Add the *bodies* by their digests; those already there stay."""
        if any(len(body) >= LARGEST_BODY_BYTES for body in bodies.values()):
            raise StoreError(
                QT_TRANSLATE_NOOP("Store", "A part of this project is too large to keep.")
            )
        self._connection.executemany(
            "INSERT OR IGNORE INTO part (digest, body) VALUES (?, ?)",
            [(bytes.fromhex(digest), body) for digest, body in bodies.items()],
        )

    def drop_parts(self, digests: Iterable[str]) -> None:
        """Remove the parts *digests*."""
        self._connection.executemany(
            "DELETE FROM part WHERE digest = ?", [(bytes.fromhex(d),) for d in digests]
        )

    def put_state(self, number: int, body: bytes) -> None:
        """Write the state *number*, over an older one of that number."""
        self._connection.execute(
            "INSERT OR REPLACE INTO state (id, body, seal) VALUES (?, ?, ?)",
            (number, body, _seal(number, body)),
        )

    def drop_states(self, numbers: Iterable[int]) -> None:
        """Remove the states *numbers*."""
        self._connection.executemany("DELETE FROM state WHERE id = ?", [(n,) for n in numbers])

    def copy_to(self, path: Path, named: Path) -> None:
        """Write the whole database to the new file *path*; errors speak of *named*."""
        with _Said(named, cannot_write), closing(sqlite3.connect(path)) as target:
            self._connection.backup(target)

    def close(self) -> None:
        """Close the connection and let others in."""
        self._connection.close()

    @contextmanager
    def _closed_on_error(self) -> Iterator[None]:
        try:
            yield
        except BaseException:
            self._connection.close()
            raise

    def _check(self, size_bytes: int | None = None) -> None:
        with _Said(self._path), _budget(self._connection):
            self._check_schema()
            pages, size = (
                self._connection.execute(f"PRAGMA {name}").fetchone()[0]
                for name in ("page_count", "page_size")
            )
            found = self._connection.execute("PRAGMA quick_check(1)").fetchall()
        # a file cut short passes quick_check as long as no used page is missing
        if size_bytes is None:
            size_bytes = self._path.stat().st_size
        if pages * size != size_bytes or found != [("ok",)]:
            raise is_broken(self._path)

    def _check_schema(self) -> None:
        rows = self._connection.execute(
            "SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY type, name"
        ).fetchmany(len(_SCHEMA) + 1)
        if rows != _SCHEMA:
            raise is_broken(self._path)


def _connect(path: Path, mode: str) -> sqlite3.Connection:
    uri = f"{path.absolute().as_uri()}?mode={mode}"
    with _Said(path):
        return _guarded(
            sqlite3.connect(
                uri, uri=True, isolation_level=None, timeout=WAIT_FOR_LOCK_S, cached_statements=32
            )
        )


def _guarded(connection: sqlite3.Connection) -> sqlite3.Connection:
    """Return *connection* with every limit set that a strange file must not pass."""
    connection.text_factory = lambda raw: raw.decode("utf-8", "replace")
    connection.setlimit(sqlite3.SQLITE_LIMIT_LENGTH, LARGEST_BODY_BYTES)
    connection.setlimit(sqlite3.SQLITE_LIMIT_ATTACHED, 0)
    connection.setlimit(sqlite3.SQLITE_LIMIT_TRIGGER_DEPTH, 0)
    for setting in ("trusted_schema = OFF", "cell_size_check = ON", "mmap_size = 0"):
        connection.execute(f"PRAGMA {setting}")
    return connection


def _roll_back(path: Path) -> None:
    """Let SQLite undo the half-written transaction of a program that was stopped."""
    with closing(_connect(path, "rw")) as connection, _Said(path):
        connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()


@contextmanager
def _budget(connection: sqlite3.Connection) -> Iterator[None]:
    end = time.monotonic() + OPENING_BUDGET_S
    connection.set_progress_handler(lambda: int(time.monotonic() > end), 10_000)
    try:
        yield
    finally:
        connection.set_progress_handler(None, 0)


class _Said:
    """Turn what SQLite raises into a sentence for the user; *no_access* if it cannot open."""

    __slots__ = ("_no_access", "_path")

    def __init__(self, path: Path, no_access: Sentence | None = None) -> None:
        self._path, self._no_access = path, no_access

    def __enter__(self) -> None:
        pass

    def __exit__(self, _kind: object, error: BaseException | None, _trace: object) -> None:
        if isinstance(error, UnicodeDecodeError):
            # SQLite quotes the file in its message, and Python cannot read what is hurt there
            raise is_broken(self._path) from error
        if not isinstance(error, sqlite3.Error):
            return
        code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_ERROR)
        if code in (sqlite3.SQLITE_READONLY_ROLLBACK, sqlite3.SQLITE_READONLY_RECOVERY):
            raise LeftOpen(self._path) from error
        if self._no_access is not None and code & 0xFF == sqlite3.SQLITE_CANTOPEN:
            raise self._no_access(self._path) from error
        raise _SENTENCES.get(code & 0xFF, is_broken)(self._path) from error


def is_sealed(number: int, body: bytes, seal: bytes) -> bool:
    """Whether *seal* is that of the state *number* with that *body*."""
    return seal == _seal(number, body)


def _seal(number: int, body: bytes) -> bytes:
    return blake2b(
        body, digest_size=DIGEST_BYTES, salt=number.to_bytes(8, "big", signed=True)
    ).digest()


_SENTENCES: dict[int, Sentence] = {
    sqlite3.SQLITE_BUSY: is_elsewhere,
    sqlite3.SQLITE_LOCKED: is_elsewhere,
    sqlite3.SQLITE_READONLY: is_protected,
    sqlite3.SQLITE_FULL: disk_is_full,
    sqlite3.SQLITE_IOERR: cannot_write,
    sqlite3.SQLITE_CANTOPEN: is_unreadable,
    sqlite3.SQLITE_NOTADB: is_strange,
}

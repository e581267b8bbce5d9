"""From older formats of the project file to this one: numbered steps on a copy."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable, Mapping, Sequence
from contextlib import closing
from datetime import datetime
from pathlib import Path

from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.store.codec import Json, encode, from_bytes, to_bytes
from ultraplanner_gui.store.database import MAJOR, VERSION, Database
from ultraplanner_gui.store.decoding import decode
from ultraplanner_gui.store.parts import (
    LINE,
    TRACKS,
    Manifest,
    digest_of,
    read_manifest,
    write_manifest,
)
from ultraplanner_gui.store.placing import part_beside, put_in_place
from ultraplanner_gui.store.troubles import cannot_write, damaged

NOW = 0
"""Number of the state that is the project as it is; earlier ones count up from 1."""


class State(Value, frozen=True):
    """One state of the project in its file: when and by what it came about.

    `root` is the digest of its manifest; `is_named` says that the user asked for it.
    """

    kept_at: datetime
    label: str
    root: str
    is_named: bool = False


Parts = dict[str, list[Json]]
Step = Callable[[Parts], Parts]


class Migration(Value, frozen=True):
    """The way from one version to the next: *step* rewrites the parts of one state.

    Parts come and go by their names, as JSON; the course line and recordings are never rewritten.
    """

    to_version: int
    step: Step


def _as_it_is(parts: Parts) -> Parts:
    """Return *parts*: what the next version added has defaults."""
    return parts


MIGRATIONS: dict[int, Migration] = {
    # kinds of cutoff and stop, kit, pacers, ways out, official figures, surface factors, repairs
    1000: Migration(1001, _as_it_is),
    # weather and effects, availability, tune-ups, recordings, the runner's foods, cards and lists
    1001: Migration(1002, _as_it_is),
    # the head, recordings, reviews and lessons, kit that is ticked, own lines of the countdown
    1002: Migration(1003, _as_it_is),
    # bodies are named by another checksum
    1003: Migration(2000, _as_it_is),
}
"""Every migration by the version it starts from."""


def read_state(body: bytes) -> State:
    """Return the state in *body*; StoreError if it is none."""
    return decode(State, body, "history")


def write_state(state: State) -> bytes:
    """Return *state* as bytes."""
    return encode(State, state, "history")


def manifest_of(database: Database, state: State) -> Manifest:
    """Return which parts *state* is made of."""
    return read_manifest(database.body(state.root))


def body_of(manifest: Manifest) -> bytes:
    """Return *manifest* as bytes."""
    return to_bytes(write_manifest(manifest))


def is_newer(version: int) -> bool:
    """Whether a file of *version* is beyond this program."""
    return version // MAJOR > VERSION // MAJOR


def bring_up(
    path: Path,
    version: int,
    migrations: Mapping[int, Migration],
    check: Callable[[Path], None],
) -> Path:
    """Rewrite the file *path* of *version* in this one and return where the original is kept.

    Everything happens on a copy, which *check* must be able to read; StoreError leaves the
    original as it was.
    """
    steps = steps_from(path.name, version, migrations)
    original = _free_name(path, version)
    part = part_beside(path)
    try:
        with closing(Database.look_into(path)) as old:
            rewrite(old, part, path, VERSION, steps)
        check(part)
        shutil.copy2(path, original)
        put_in_place(part, path)
    except OSError as error:
        raise cannot_write(path) from error
    finally:
        part.unlink(missing_ok=True)
    return original


def rewrite(old: Database, path: Path, named: Path, version: int, steps: Sequence[Step]) -> None:
    """Write every state of *old*, taken through *steps*, to the new file *path*."""
    states = {number: read_state(body) for number, body in old.states().items()}
    if NOW not in states:
        raise damaged("history")
    with closing(Database.make(path, named, version)) as new, new.transaction():
        for number, state in states.items():
            bodies, manifest = _stepped(old, manifest_of(old, state), steps)
            root = body_of(manifest)
            new.put_parts({**bodies, digest_of(root): root})
            new.put_state(number, write_state(replace(state, root=digest_of(root))))


def _stepped(
    old: Database, manifest: Manifest, steps: Sequence[Step]
) -> tuple[dict[str, bytes], Manifest]:
    rows = {name: list(map(old.body, digests)) for name, digests in manifest.items()}
    parts: Parts = {
        name: [from_bytes(body, name) for body in row]
        for name, row in rows.items()
        if name not in (LINE, TRACKS)
    }
    as_they_are = {name: rows[name] for name in (LINE, TRACKS) if name in rows}
    for step in steps:
        parts = step(parts)
    written = {name: list(map(to_bytes, values)) for name, values in parts.items()}
    result: Manifest = {}
    bodies: dict[str, bytes] = {}
    for name, row in (written | as_they_are).items():
        result[name] = tuple(map(digest_of, row))
        bodies |= zip(result[name], row, strict=True)
    return bodies, result


def steps_from(name: str, version: int, migrations: Mapping[int, Migration]) -> list[Step]:
    """Return what leads from *version* to this one; StoreError, about *name*, if nothing does."""
    steps = []
    while version < VERSION:
        migration = migrations.get(version)
        if migration is None:
            raise StoreError(
                QT_TRANSLATE_NOOP("Store", "{0} has a version this program never wrote."), name
            )
        steps.append(migration.step)
        version = migration.to_version
    return steps


def is_laid_aside(path: Path) -> bool:
    """Whether *path* is what was kept of a file of an older version when it was brought up."""
    return re.search(r"\.before-v\d+(-\d+)?$", path.stem) is not None


def _free_name(path: Path, version: int) -> Path:
    """Return `name.before-vN` beside *path*, with a number behind it if that is taken."""
    wish = path.with_name(f"{path.stem}.before-v{version}{path.suffix}")
    number = 2
    while wish.exists():
        wish = path.with_name(f"{path.stem}.before-v{version}-{number}{path.suffix}")
        number += 1
    return wish

"""Project files killed, changed, cut and forged: what opens is what was kept."""

from __future__ import annotations

import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import time
from contextlib import closing
from functools import partial
from pathlib import Path

from msgspec.structs import replace
from trust_parts import Hung, Part, limit, write

from tests.store.hostile_files import FORGED, SCHEMAS, forged
from tests.store.projects import full_project
from tests.store.test_kill import KEEPER
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.store.pages import PAGE_BYTES
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.store.rescue import read_what_is_left
from ultraplanner_gui.store.soundness import unsound_part


def sample(folder: Path) -> Path:
    """Return a file with every field in use and three earlier states."""
    path = folder / "sample.ultraplan"
    project = full_project(sessions=60, points=900)
    with ProjectFile.create(path, project) as file:
        for number in range(3):
            file.keep(replace(file.project, notes=f"state {number}"), "Write notes")
            file.mark(f"point {number}")
    return path


def kills(folder: Path, count: int, luck: random.Random) -> Part:
    """Stop a program that keeps all the time, *count* times, at random moments."""
    part = Part("kill -9 while keeping")
    path = folder / "killed.ultraplan"
    project = replace(full_project(sessions=40, points=500), notes="0")
    ProjectFile.create(path, project).close()
    for number in range(count):
        run = subprocess.Popen(
            [sys.executable, "-c", KEEPER, str(path)], stdout=subprocess.PIPE, text=True
        )
        assert run.stdout is not None
        finished = int(run.stdout.readline())
        time.sleep(luck.uniform(0.0, 0.15))
        run.send_signal(signal.SIGKILL)
        rest = run.stdout.read().splitlines(keepends=True)
        run.wait()
        run.stdout.close()
        finished = max(finished, *(int(n) for n in rest if n.endswith("\n")), 0)
        refused = part.refused
        part.attempt(f"kill {number}", partial(_is_kept, path, finished))
        if part.refused > refused:
            part.faults.append(f"kill {number}: the file is refused")
    return part


def _is_kept(path: Path, finished: int) -> bool:
    with ProjectFile.open(path) as file:
        kept = int(file.project.notes)
        moved = any(s.distance_m == kept for s in file.project.block.sessions)
        return moved and kept in (finished, finished + 1)


Whole = tuple[Project, list[Project | None]]


def contents(path: Path) -> Whole:
    """Return the project in *path* and its earlier states, None for one that cannot be read."""
    with ProjectFile.open(path) as file:
        earlier: list[Project | None] = []
        for point in file.history():
            try:
                earlier.append(file.at(point.id))
            except StoreError:
                earlier.append(None)
        return file.project, earlier


def _is_same(path: Path, whole: Whole) -> bool:
    project, earlier = contents(path)
    return project == whole[0] and all(state is None or state in whole[1] for state in earlier)


def _spoilt(part: Part, folder: Path, whole: Whole, what: str, raw: bytes) -> None:
    """Open *raw*: it is what was kept or refused, the file stays, and a rescue invents nothing."""
    path = write(folder / "spoilt.ultraplan", raw)
    refused = part.refused
    part.attempt(what, partial(_is_same, path, whole))
    if part.refused > refused and path.read_bytes() != raw:
        part.faults.append(f"{what}: the refused file was written")
    try:
        with limit():
            rescued = read_what_is_left(path)
            if unsound_part(rescued.project) is not None:
                part.faults.append(f"{what}: the rescue cannot be computed with")
            elif not rescued.lost and rescued.project != whole[0]:
                part.faults.append(f"{what}: the rescue lost something unnamed")
    except StoreError:
        pass
    except (Hung, Exception) as error:
        part.faults.append(f"{what}: rescue: {type(error).__name__}: {error}"[:300])


def byte_changes(folder: Path, count: int, luck: random.Random) -> Part:
    """Change one byte at *count* places, the header first."""
    part = Part("one byte changed")
    path = sample(folder)
    whole, raw = contents(path), path.read_bytes()
    places = [*range(min(100, count // 3)), *(luck.randrange(len(raw)) for _ in range(count))]
    for place in places[:count]:
        spoilt = bytearray(raw)
        spoilt[place] ^= luck.randrange(1, 256)
        _spoilt(part, folder, whole, f"byte {place}", bytes(spoilt))
    path.unlink()
    return part


def zeroed_pages(folder: Path, step: int) -> Part:
    """Zero every page, or every *step*-th, one at a time."""
    part = Part("one page zeroed")
    path = sample(folder)
    whole, raw = contents(path), path.read_bytes()
    for start in range(0, len(raw), PAGE_BYTES * step):
        spoilt = raw[:start] + bytes(PAGE_BYTES) + raw[start + PAGE_BYTES :]
        _spoilt(part, folder, whole, f"page {start // PAGE_BYTES}", spoilt)
    path.unlink()
    return part


def cuts(folder: Path, step: int) -> Part:
    """Cut the file at every page, or every *step*-th, and at odd sizes beside each."""
    part = Part("cut short")
    path = sample(folder)
    whole, raw = contents(path), path.read_bytes()
    sizes = {0, 1, 15, 16, 99, 100, 101, len(raw) - 1}
    for page in range(0, len(raw), PAGE_BYTES * step):
        sizes |= {page, page + 1, max(page - 1, 0), page + 511, page + 2047}
    for size in sorted(s for s in sizes if s < len(raw)):
        opened = part.opened
        _spoilt(part, folder, whole, f"cut at {size}", raw[:size])
        if part.opened > opened:
            part.faults.append(f"cut at {size}: opened as if it were whole")
    path.unlink()
    return part


def hostile_files(folder: Path) -> Part:
    """Open every file made to do harm; none may open."""
    part = Part("hostile project files")
    path = folder / "hostile.ultraplan"
    good = folder / "good.ultraplan"
    with ProjectFile.create(good, full_project(sessions=20, points=120)) as file:
        file.keep(replace(file.project, notes="later"), "Write notes")
    others = {
        "empty": b"",
        "text": b"<gpx/>" * 100,
        "stump": b"SQLite format 3\x00",
        "noise": random.Random(1).randbytes(20_000),
    }
    for statement in SCHEMAS:
        shutil.copy(good, path)
        with closing(sqlite3.connect(path)) as connection:
            connection.executescript(statement)
        _refused(part, statement[:40], path)
    for number, (name, change) in enumerate(FORGED):
        shutil.copy(good, path)
        forged(path, name, change)
        _refused(part, f"{name} {number}", path)
    for name, content in others.items():
        _refused(part, name, write(path, content))
    good.unlink()
    return part


def _refused(part: Part, what: str, path: Path) -> None:
    opened, before = part.opened, path.read_bytes()
    part.attempt(what, lambda: bool(contents(path)))
    if part.opened > opened:
        part.faults.append(f"{what}: was opened")
    if path.read_bytes() != before:
        part.faults.append(f"{what}: was written")


def fuzz(folder: Path, seconds: float, luck: random.Random) -> Part:
    """Mutate a project file at random until the time is over."""
    part = Part("project files mutated")
    path = sample(folder)
    whole, raw = contents(path), path.read_bytes()
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        _spoilt(part, folder, whole, f"mutation {part.tried}", mutated(raw, luck))
    path.unlink()
    return part


def mutated(raw: bytes, luck: random.Random) -> bytes:
    """Return *raw* with one to six spans changed, moved, dropped or doubled."""
    content = bytearray(raw)
    for _ in range(luck.randint(1, 6)):
        at, size = luck.randrange(max(1, len(content))), 2 ** luck.randrange(0, 12)
        kind = luck.randrange(5)
        if kind == 0:
            content[at : at + size] = luck.randbytes(min(size, len(content) - at))
        elif kind == 1:
            content[at : at + size] = bytes(len(content[at : at + size]))
        elif kind == 2:
            other = luck.randrange(max(1, len(content)))
            piece = content[other : other + size]
            content[at : at + len(piece)] = piece
        elif kind == 3:
            del content[at : at + luck.choice((1, size))]
        else:
            content[at:at] = content[at : at + luck.choice((1, size))]
    return bytes(content)

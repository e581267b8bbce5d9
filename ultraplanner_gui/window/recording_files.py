"""Files of recordings found, read and matched off the GUI thread."""

from __future__ import annotations

import os
import zlib
from collections.abc import Iterator, Sequence
from pathlib import Path

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError, Message, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import MOST_RECORDINGS, KeptRecording
from ultraplanner_gui.plan.value import Value

ENDINGS = (".gpx", ".gpx.gz")
#: Entries of a folder that are looked at, and folders within folders, at most.
MOST_ENTRIES, DEEPEST = 20_000, 12
#: So much of a file is looked at to tell whether its points have times.
_LOOKED_AT = 200_000
#: Share of the work that is reading; the rest is matching.
_READING = 0.9


class Kept(Value, frozen=True):
    """Recordings read and matched, how many were there already, and what could not be used.

    `project` is the one they were matched to; `is_cut` says that there were more files.
    """

    recordings: tuple[KeptRecording, ...]
    known: int
    left_out: tuple[tuple[str, Message], ...]
    project: Project
    is_cut: bool = False


def keep_all(token: Token, paths: Sequence[Path], project: Project) -> Kept:
    """Read the recordings in *paths*, folders with all in them, and match them to *project*.

    PlanError if there is no file, or the only one cannot be used.
    """
    from ultraplanner_gui.engine.recording_match import all_matched, is_same_run
    from ultraplanner_gui.exchange.kept_recording import keep_recording, recording_of

    files, is_cut = files_in(paths, token)
    if not files:
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "There is no GPX file in what was chosen."))
    fresh: list[KeptRecording] = []
    left_out: list[tuple[str, Message]] = []
    known = 0
    for number, path in enumerate(files):
        token.progress(_READING * number / len(files))
        try:
            recording = keep_recording(path)
        except CourseError as error:
            left_out.append((path.name, error.message))
            continue
        if any(is_same_run(recording, other) for other in (*project.recordings, *fresh)):
            known += 1
        else:
            fresh.append(recording)
    if len(left_out) == 1 and len(files) == 1:
        raise PlanError(left_out[0][1].template, *left_out[0][1].args)
    token.progress(_READING)
    matched = all_matched(fresh, project, recording_of)
    return Kept(matched, known, tuple(left_out), project, is_cut)


def files_in(paths: Sequence[Path], token: Token | None = None) -> tuple[tuple[Path, ...], bool]:
    """Return the files in *paths*, of folders the GPX files in them, and whether there are more."""
    found: dict[Path, None] = {}
    for path in paths:
        for file in _gpx_in(path, token) if path.is_dir() else (path,):
            if len(found) >= MOST_RECORDINGS:
                return tuple(found), True
            found.setdefault(file)
    return tuple(found), False


def has_times(path: Path) -> bool:
    """Whether the beginning of the file at *path* has points with times."""
    try:
        with path.open("rb") as file:
            data = file.read(_LOOKED_AT)
    except OSError:
        return False
    if data.startswith(b"\x1f\x8b"):
        try:
            data = zlib.decompressobj(wbits=31).decompress(data, _LOOKED_AT)
        except zlib.error:
            return False
    start = data.find(b"<trkpt")
    return start >= 0 and b"<time>" in data[start:]


def _gpx_in(folder: Path, token: Token | None) -> Iterator[Path]:
    """Yield the GPX files in *folder* and in folders in it, each folder in the order of names.

    Links to folders are not followed; what cannot be read is passed over.
    """
    looked_at = 0
    for place, folders, names in os.walk(folder):
        if token is not None:
            token.check()
        if len(Path(place).relative_to(folder).parts) >= DEEPEST:
            folders.clear()
        folders.sort()
        for name in sorted(names):
            looked_at += 1
            if looked_at > MOST_ENTRIES:
                return
            if name.lower().endswith(ENDINGS):
                yield Path(place, name)

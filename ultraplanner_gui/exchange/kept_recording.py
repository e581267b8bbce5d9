"""Files of recordings as a project keeps them: packed, and unpacked again to the last byte."""

from __future__ import annotations

import gzip
from functools import lru_cache
from hashlib import blake2b
from pathlib import Path

from ultraplanner_gui.engine.recorded_pace import RecordedPace, recorded_pace
from ultraplanner_gui.engine.run_analysis import flat_and_drift
from ultraplanner_gui.exchange.gpx_in import recording_in
from ultraplanner_gui.exchange.safe_read import (
    GZIP_MAGIC,
    read_as_it_is,
    shown_name,
    unpacked,
)
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError
from ultraplanner_gui.plan.recording import MOST_PACKED_BYTES, KeptRecording, Recording

_KEY_BYTES = 10
_AT_HAND = 12


def keep_recording(path: Path) -> KeptRecording:
    """Return the recording in the GPX file at *path*, ready to be kept.

    Its key is made of what the file says, so that the same run has the same key wherever its
    file lies. CourseError if there is no run in it, or it is too large to be kept.
    """
    return kept_of(read_as_it_is(path), path)


def kept_of(raw: bytes, path: Path) -> KeptRecording:
    """Return the recording in *raw*, the content of a GPX file at *path*, as `keep_recording`."""
    name = shown_name(path)
    data = unpacked(raw, name)
    recording = recording_in(data, name, path)
    came_packed = raw.startswith(GZIP_MAGIC)
    packed = raw if came_packed else gzip.compress(raw, mtime=0)
    if len(packed) > MOST_PACKED_BYTES:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "{0} is too large to be kept. Export it with a point a second or fewer."
            ),
            name,
        )
    pace = recorded_pace(recording)
    flat_m, drift = flat_and_drift(pace)
    elapsed_s = float(recording.elapsed_s[-1] - recording.elapsed_s[0])
    return KeptRecording(
        key=blake2b(data, digest_size=_KEY_BYTES).hexdigest(),
        file=path.name,
        packed=packed,
        came_packed=came_packed,
        name=recording.name,
        start=recording.start,
        distance_m=pace.profile.length_m,
        elapsed_s=elapsed_s,
        moving_s=max(0.0, elapsed_s - pace.standing_s),
        climb_m=pace.profile.ascent_m,
        drop_m=pace.profile.descent_m,
        flat_m=flat_m,
        drift=drift,
    )


def recording_of(kept: KeptRecording) -> Recording:
    """Return the points of *kept*; CourseError if its file can no longer be read."""
    return _read(kept.packed, kept.file)


def pace_of(kept: KeptRecording) -> RecordedPace:
    """Return *kept* cut into pieces."""
    return _cut(kept.packed, kept.file)


def file_of(kept: KeptRecording) -> bytes:
    """Return the file of *kept* as it came; CourseError if it cannot be unpacked any more."""
    return kept.packed if kept.came_packed else unpacked(kept.packed, kept.file)


@lru_cache(maxsize=_AT_HAND)
def _read(packed: bytes, file: str) -> Recording:
    return recording_in(unpacked(packed, file), file, Path(file))


@lru_cache(maxsize=_AT_HAND)
def _cut(packed: bytes, file: str) -> RecordedPace:
    return recorded_pace(_read(packed, file))

"""The course line as one compressed body: little-endian doubles, read with a fixed budget."""

from __future__ import annotations

import struct
import zlib

import numpy as np

from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.store.troubles import damaged

MOST_POINTS = 1_000_000
_HEAD = struct.Struct("<4sII")
_MAGIC = b"line"
_LEVEL = 1  # level 6 takes four times as long to save 3 % of a course of 100,000 points


def pack_line(line: Line) -> bytes:
    """Return *line* as bytes; StoreError if it has too many points."""
    if not 2 <= len(line) <= MOST_POINTS:
        raise StoreError(
            QT_TRANSLATE_NOOP(
                "Store", "A course has between 2 and {0} points. Thin the track and open it again."
            ),
            MOST_POINTS,
        )
    gaps = np.asarray(line.gaps, dtype="<u4")
    columns = (line.latitude_deg, line.longitude_deg, line.elevation_m)
    raw = gaps.tobytes() + b"".join(np.asarray(c, dtype="<f8").tobytes() for c in columns)
    return _HEAD.pack(_MAGIC, len(line), len(gaps)) + zlib.compress(raw, _LEVEL)


def unpack_line(body: bytes) -> Line:
    """Return the line in *body*; StoreError if it is none."""
    if len(body) < _HEAD.size:
        raise damaged("line")
    magic, points, gaps = _HEAD.unpack_from(body)
    if magic != _MAGIC or not 2 <= points <= MOST_POINTS or gaps >= points:
        raise damaged("line")
    size = 4 * gaps + 24 * points
    unzip = zlib.decompressobj()
    try:
        # one byte more than asked for, so that a body that swells is found without unpacking it
        raw = unzip.decompress(body[_HEAD.size :], size + 1)
    except zlib.error as error:
        raise damaged("line") from error
    if len(raw) != size or not unzip.eof or unzip.unused_data:
        raise damaged("line")
    breaks = np.frombuffer(raw, dtype="<u4", count=gaps)
    columns = np.frombuffer(raw, dtype="<f8", offset=4 * gaps).reshape(3, points)
    return Line(
        _column(columns, 0),
        _column(columns, 1),
        _column(columns, 2),
        tuple(int(gap) for gap in breaks),
    )


def _column(columns: FloatArray, index: int) -> FloatArray:
    return np.array(columns[index], dtype=np.float64)

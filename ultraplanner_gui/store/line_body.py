"""The course line as one body: columns of numbers as they are, read with a fixed budget.

A column of coordinates or heights with few decimals, as most devices write them, goes in as 32-bit
whole numbers and comes back to the last bit; any other as doubles. Everything is little-endian.
"""

from __future__ import annotations

import struct
import zlib
from itertools import accumulate

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.store.troubles import damaged

MOST_POINTS = 1_000_000
_HEAD = struct.Struct("<4sII")
_MAGIC = b"cols"
_DEFLATED = b"line"  # how the first files held it: doubles, compressed
_DOUBLES = 255
_MOST_DECIMALS = 7  # more of a longitude than fits into 32 bits
_MISSING = -(2**31)
_A_FEW = 64

IntArray = npt.NDArray[np.int32]


def pack_line(line: Line) -> bytes:
    """Return *line* as bytes; StoreError if it has too many points."""
    if not 2 <= len(line) <= MOST_POINTS:
        raise StoreError(
            QT_TRANSLATE_NOOP(
                "Store", "A course has between 2 and {0} points. Thin the track and open it again."
            ),
            MOST_POINTS,
        )
    columns = [_packed(c) for c in (line.latitude_deg, line.longitude_deg, line.elevation_m)]
    return b"".join(
        (
            _HEAD.pack(_MAGIC, len(line), len(line.gaps)),
            bytes(decimals for decimals, _ in columns),
            np.asarray(line.gaps, dtype="<u4").tobytes(),
            *(raw for _, raw in columns),
        )
    )


def unpack_line(body: bytes) -> Line:
    """Return the line in *body*; StoreError if it is none."""
    if len(body) < _HEAD.size:
        raise damaged("line")
    magic, points, gaps = _HEAD.unpack_from(body)
    if magic not in (_MAGIC, _DEFLATED) or not 2 <= points <= MOST_POINTS or gaps >= points:
        raise damaged("line")
    rest = memoryview(body)[_HEAD.size :]
    if magic == _DEFLATED:
        kinds, rest = [_DOUBLES] * 3, _inflated(rest, 4 * gaps + 24 * points)
    else:
        kinds, rest = list(rest[:3]), rest[3:]
    if len(kinds) != 3 or len(rest) != 4 * gaps + points * sum(map(_width, kinds)):
        raise damaged("line")
    starts = accumulate((points * _width(d) for d in kinds), initial=4 * gaps)
    latitude, longitude, height = (
        _column(rest, at, points, decimals) for at, decimals in zip(starts, kinds, strict=False)
    )
    breaks = np.frombuffer(rest, "<u4", gaps)
    return Line(latitude, longitude, height, tuple(breaks.tolist()))


def _packed(column: FloatArray) -> tuple[int, bytes]:
    """Return *column* as bytes and with how many decimals, `_DOUBLES` for as it is."""
    some = column[:: max(1, len(column) // _A_FEW)]
    for decimals in range(_MOST_DECIMALS + 1):
        if _whole(some, decimals) is not None:
            whole = _whole(column, decimals)
            if whole is not None:
                return decimals, whole.tobytes()
    return _DOUBLES, np.asarray(column, dtype="<f8").tobytes()


def _whole(column: FloatArray, decimals: int) -> IntArray | None:
    """Return *column* in whole steps of its last decimal, None if it would not come back."""
    is_missing = np.isnan(column)
    scale = 10.0**decimals
    if not bool((np.abs(column[~is_missing]) < (-_MISSING - 1) / scale).all()):
        return None
    whole = np.where(is_missing, _MISSING, np.rint(column * scale)).astype("<i4")
    # by the bytes, which tell 0 from -0 as well
    same = _from_whole(whole, decimals).tobytes() == np.asarray(column, np.float64).tobytes()
    return whole if same else None


def _from_whole(whole: IntArray, decimals: int) -> FloatArray:
    # both exact in a double, so that the quotient is the double nearest to the decimal
    column = whole / 10.0**decimals
    if len(whole) and whole.min() == _MISSING:
        column[whole == _MISSING] = np.nan
    return column


def _width(decimals: int) -> int:
    return 8 if decimals == _DOUBLES else 4


def _column(body: memoryview, at: int, points: int, decimals: int) -> FloatArray:
    if decimals == _DOUBLES:
        return np.frombuffer(body, "<f8", points, at).astype(np.float64)
    if decimals > _MOST_DECIMALS:
        raise damaged("line")
    return _from_whole(np.frombuffer(body, "<i4", points, at), decimals)


def _inflated(body: memoryview, size: int) -> memoryview:
    """Return the *size* bytes compressed in *body*; StoreError if it is another number of them."""
    unzip = zlib.decompressobj()
    try:
        # one byte more than asked for, so that a body that swells is found without unpacking it
        raw = unzip.decompress(body, size + 1)
    except zlib.error as error:
        raise damaged("line") from error
    if len(raw) != size or not unzip.eof or unzip.unused_data:
        raise damaged("line")
    return memoryview(raw)

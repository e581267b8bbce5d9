"""GPX 1.1 and 1.0 from bytes nobody vouches for, to arrays.

An own reader on expat, not a GPX library: nothing outside the file is ever looked up, numbers
that are none are refused instead of becoming NaN, and 100,000 points take a second.
Element names and limits of values: GPX 1.1 schema, http://www.topografix.com/GPX/1/1/gpx.xsd.
"""

from __future__ import annotations

import math
import re
from array import array
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import Literal, NoReturn
from xml.parsers import expat

import numpy as np

from ultraplanner_gui.exchange.safe_read import read_bytes, shown_name
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Argument, CourseError
from ultraplanner_gui.plan.value import Value

_NAMESPACE = re.compile(r"|https?://(www\.)?topografix\.com/GPX/\S{0,20}", re.IGNORECASE)
DEEPEST = 64
MOST_ATTRIBUTES = 64
LONGEST_TAG = 1 << 20
LONGEST_TEXT = 4096
LONGEST_NUMBER = 100
MOST_POINTS = 1_000_000
MOST_PARTS = 10_000
_LONGEST_NAME = 60

# What is read inside what; everything else, extensions above all, is passed over.
_CHILDREN: dict[str, tuple[str, ...]] = {
    "gpx": ("metadata", "name", "wpt", "rte", "trk"),
    "metadata": ("name",),
    "wpt": ("name", "type"),
    "rte": ("name", "rtept"),
    "trk": ("name", "trkseg"),
    "trkseg": ("trkpt",),
    "rtept": ("ele", "time"),
    "trkpt": ("ele", "time"),
}
_NUMBER = re.compile(r"[ \t\r\n]*[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?[ \t\r\n]*")

_CONTROLS = re.compile(rb"[\x00-\x08\x0b\x0c\x0e-\x1f]")
_NO_HEIGHT = frozenset(("", "nan", "null", "none", "-", "--"))
_TELL_EVERY = 2_048

Kind = Literal["track", "route"]


@dataclass(slots=True)
class Strand:
    """One track or route: where in the arrays each of its segments starts, and where it ends."""

    kind: Kind
    name: str = ""
    starts: list[int] = field(default_factory=list)
    end: int = 0


@dataclass(slots=True)
class Waypoint:
    """A named place, degrees; `kind` is what the file calls its type."""

    latitude_deg: float
    longitude_deg: float
    name: str = ""
    kind: str = ""


class GpxFile(Value, frozen=True, eq=False):
    """What a file holds; arrays of shape (n,) with the points of all strands.

    `elevation_m` is NaN where there is none, `epoch_s` (UTC) NaN where there is none or where
    times were not asked for.
    """

    file: str
    name: str
    latitude_deg: FloatArray
    longitude_deg: FloatArray
    elevation_m: FloatArray
    epoch_s: FloatArray
    strands: tuple[Strand, ...]
    waypoints: tuple[Waypoint, ...]


def parse_gpx(
    path: Path, with_times: bool = False, progress: Callable[[float], None] | None = None
) -> GpxFile:
    """Return what the GPX file at *path* holds; CourseError with a sentence for the user if it
    is none, is damaged, or asks for more than a course can need.

    *progress* is told now and then what share of it is read, and may raise to stop.
    """
    return parse_gpx_bytes(read_bytes(path), shown_name(path), with_times, progress)


def parse_gpx_bytes(
    data: bytes,
    name: str,
    with_times: bool = False,
    progress: Callable[[float], None] | None = None,
) -> GpxFile:
    """Return what *data*, of the file called *name*, holds, as `parse_gpx` does."""
    reader = _Reader(name, with_times, progress)
    try:
        reader.parse(data)
    except CourseError:
        raise
    except expat.ExpatError as error:
        if not _is_in_old_letters(data, error):
            raise _broken(name, data, error) from error
        return _parsed_as_latin(name, data, with_times, progress)
    except (ValueError, LookupError) as error:  # encodings expat cannot map, UTF-7 among them
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "{0} is written in an encoding that cannot be read. Export it as UTF-8."
            ),
            name,
        ) from error
    return reader.result()


def _is_in_old_letters(data: bytes, error: expat.ExpatError) -> bool:
    """Whether what stopped the parser is text that says it is UTF-8 and is Latin-1."""
    if error.code != expat.errors.codes[expat.errors.XML_ERROR_INVALID_TOKEN] or b"\0" in data:
        return False
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return not _CONTROLS.search(data)
    return False


def _parsed_as_latin(
    name: str, data: bytes, with_times: bool, progress: Callable[[float], None] | None
) -> GpxFile:
    reader = _Reader(name, with_times, progress, "iso-8859-1")
    try:
        reader.parse(data)
    except expat.ExpatError as error:
        raise _broken(name, data, error) from error
    return reader.result()


def cleaned(text: str) -> str:
    """Return *text* on one line, without control characters, at most 60 long."""
    line = " ".join("".join(c if c.isprintable() else " " for c in text).split())
    return line if len(line) <= _LONGEST_NAME else line[: _LONGEST_NAME - 1].rstrip() + "…"


def _broken(name: str, data: bytes, error: expat.ExpatError) -> CourseError:
    if error.code == expat.errors.codes[expat.errors.XML_ERROR_UNKNOWN_ENCODING]:
        return CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "{0} is written in an encoding that cannot be read. Export it as UTF-8."
            ),
            name,
        )
    if b"gpx" not in data[:4096].replace(b"\0", b"").lower():
        return _not_gpx(name)
    return CourseError(
        QT_TRANSLATE_NOOP(
            "Course", "{0} is damaged or cut off at line {1}. Export or download it again."
        ),
        name,
        error.lineno,
    )


def _not_gpx(name: str) -> CourseError:
    return CourseError(
        QT_TRANSLATE_NOOP("Course", "{0} is not a GPX file. Export the course as GPX."), name
    )


class _Reader:
    """Expat handlers that fill arrays; every limit is checked where it would be passed."""

    def __init__(
        self,
        file: str,
        with_times: bool,
        progress: Callable[[float], None] | None = None,
        encoding: str | None = None,
    ) -> None:
        self._file = file
        self._progress = progress
        self._size = 1
        self._name = ""
        self._latitude, self._longitude = array("d"), array("d")
        self._elevation, self._epoch = array("d"), array("d")
        self._strands: list[Strand] = []
        self._waypoints: list[Waypoint] = []
        self._parts = 0
        self._path: list[str] = []
        self._below = 0
        self._text: list[str] = []
        self._room = LONGEST_TEXT
        self._grammar: dict[str, dict[str, str]] = {}
        self._leaves: dict[str, Callable[[str], None]] = {
            "ele": self._on_elevation,
            "name": self._on_name,
            "type": self._on_type,
        }
        if with_times:
            self._leaves["time"] = self._on_time
        parser = expat.ParserCreate(encoding, namespace_separator=" ")
        parser.ordered_attributes = True
        parser.buffer_text = True
        parser.SetParamEntityParsing(expat.XML_PARAM_ENTITY_PARSING_NEVER)
        parser.StartDoctypeDeclHandler = self._on_declaration
        parser.EntityDeclHandler = self._on_declaration
        parser.ExternalEntityRefHandler = self._on_declaration
        parser.StartElementHandler = self._on_start
        parser.EndElementHandler = self._on_end
        self._parser = parser

    def parse(self, data: bytes) -> None:
        """Read the file in pieces of `LONGEST_TAG` bytes, so that a tag of twice that is refused
        before its attributes are made; in smaller ones expat would scan a long tag again and again.
        """
        self._size = len(data)
        view, parser = memoryview(data), self._parser
        for begin in range(0, self._size, LONGEST_TAG):
            piece = view[begin : begin + LONGEST_TAG]
            parser.Parse(piece, False)
            if begin + len(piece) - parser.CurrentByteIndex > 2 * LONGEST_TAG:
                self._refuse_shape()
        parser.Parse(b"", True)

    def result(self) -> GpxFile:
        """Return what was read."""
        return GpxFile(
            file=self._file,
            name=self._name,
            latitude_deg=np.array(self._latitude, dtype=np.float64),
            longitude_deg=np.array(self._longitude, dtype=np.float64),
            elevation_m=np.array(self._elevation, dtype=np.float64),
            epoch_s=np.array(self._epoch, dtype=np.float64),
            strands=tuple(self._strands),
            waypoints=tuple(self._waypoints),
        )

    def _on_start(self, name: str, attributes: list[str]) -> None:
        path = self._path
        if len(attributes) > 2 * MOST_ATTRIBUTES or len(path) >= DEEPEST:
            self._refuse_shape()
        tag = self._grammar[path[-1]].get(name, "") if path else self._root(name)
        if not tag:
            self._below = 1
            self._parser.StartElementHandler = self._on_start_below
            self._parser.EndElementHandler = self._on_end_below
            return
        path.append(tag)
        if tag == "trkpt" or tag == "rtept":
            self._on_point(attributes)
        elif tag in self._leaves:
            self._text.clear()
            self._room = LONGEST_TEXT
            self._parser.CharacterDataHandler = self._on_text
        else:
            self._on_branch(tag, attributes)

    def _on_start_below(self, _name: str, attributes: list[str]) -> None:
        """Pass over an element inside one that is not read; cheap, for a file may be full of it."""
        self._below += 1
        if self._below > DEEPEST or len(attributes) > 2 * MOST_ATTRIBUTES:
            self._refuse_shape()

    def _on_end_below(self, _name: str) -> None:
        self._below -= 1
        if not self._below:
            self._parser.StartElementHandler = self._on_start
            self._parser.EndElementHandler = self._on_end

    def _on_end(self, _name: str) -> None:
        tag = self._path.pop()
        if tag in self._leaves:
            self._parser.CharacterDataHandler = None
            self._leaves[tag]("".join(self._text))

    def _root(self, name: str) -> str:
        """Learn from the root which namespace the file speaks."""
        namespace, _, local = name.rpartition(" ")
        if local != "gpx" or _NAMESPACE.fullmatch(namespace) is None:
            raise _not_gpx(self._file)
        prefix = f"{namespace} " if namespace else ""
        known = {*_CHILDREN, *self._leaves}
        self._grammar = {
            tag: {prefix + child: child for child in _CHILDREN.get(tag, ()) if child in known}
            for tag in known
        }
        return "gpx"

    def _on_point(self, attributes: list[str]) -> None:
        latitude, longitude = self._place(attributes)
        count = len(self._latitude)
        if count + len(self._waypoints) >= MOST_POINTS:
            self._refuse_count()
        if count % _TELL_EVERY == 0 and self._progress is not None:
            self._progress(self._parser.CurrentByteIndex / self._size)
        self._latitude.append(latitude)
        self._longitude.append(longitude)
        self._elevation.append(math.nan)
        self._epoch.append(math.nan)
        self._strands[-1].end = len(self._latitude)

    def _on_branch(self, tag: str, attributes: list[str]) -> None:
        self._parts += tag != "wpt"
        if self._parts > MOST_PARTS:
            self._refuse_shape()
        if tag == "wpt":
            if len(self._latitude) + len(self._waypoints) >= MOST_POINTS:
                self._refuse_count()
            self._waypoints.append(Waypoint(*self._place(attributes)))
        elif tag == "trkseg":
            self._strands[-1].starts.append(len(self._latitude))
        elif tag == "trk":
            self._strands.append(Strand("track", end=len(self._latitude)))
        elif tag == "rte":
            here = len(self._latitude)
            self._strands.append(Strand("route", starts=[here], end=here))

    def _on_text(self, text: str) -> None:
        self._room -= len(text)
        if self._room < 0:
            self._refuse_shape()
        self._text.append(text)

    def _on_elevation(self, text: str) -> None:
        if text.strip().lower() not in _NO_HEIGHT:
            self._elevation[-1] = self._number(text)

    def _on_time(self, text: str) -> None:
        self._epoch[-1] = _epoch(text.strip())

    def _on_name(self, text: str) -> None:
        parent, name = self._path[-1], cleaned(text)
        if parent == "wpt":
            self._waypoints[-1].name = name
        elif parent in ("trk", "rte"):
            self._strands[-1].name = name
        else:
            self._name = name

    def _on_type(self, text: str) -> None:
        self._waypoints[-1].kind = cleaned(text)

    def _place(self, attributes: list[str]) -> tuple[float, float]:
        latitude = longitude = None
        for i in range(0, len(attributes), 2):
            if attributes[i] == "lat":
                latitude = self._number(attributes[i + 1])
            elif attributes[i] == "lon":
                longitude = self._number(attributes[i + 1])
        if latitude is None or longitude is None:
            self._refuse(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "{0} has a point without latitude or longitude at line {1}. Export it again.",
                ),
                self._parser.CurrentLineNumber,
            )
        if not (-90.0 <= latitude <= 90.0 and -180.0 <= longitude <= 180.0):
            self._refuse(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "{0} has a point that is nowhere on the globe at line {1}."
                    " Mend or remove that point.",
                ),
                self._parser.CurrentLineNumber,
            )
        return latitude, longitude

    def _number(self, text: str) -> float:
        if len(text) <= LONGEST_NUMBER and _NUMBER.fullmatch(text) is not None:
            value = float(text)
            if math.isfinite(value):
                return value
        return self._refuse_number(text)

    def _refuse_number(self, text: str) -> NoReturn:
        line = self._parser.CurrentLineNumber
        shown = cleaned(text[:40])[:20]
        if re.fullmatch(r"\s*[+-]?[0-9]+,[0-9]*\s*", text[:40]):
            self._refuse(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "{0} has a comma in the number {2} at line {1}; GPX wants a point."
                    " Export it again.",
                ),
                line,
                shown,
            )
        self._refuse(
            QT_TRANSLATE_NOOP(
                "Course", "{0} has “{2}” at line {1} where a number belongs. Export it again."
            ),
            line,
            shown,
        )

    def _refuse_shape(self) -> NoReturn:
        self._refuse(
            QT_TRANSLATE_NOOP(
                "Course",
                "{0} is built as no GPX file needs to be (line {1}), so it is not read."
                " Export the course again.",
            ),
            self._parser.CurrentLineNumber,
        )

    def _refuse_count(self) -> NoReturn:
        self._refuse(
            QT_TRANSLATE_NOOP(
                "Course", "{0} holds more than 1,000,000 points. Export it with fewer."
            )
        )

    def _on_declaration(self, *_args: object) -> NoReturn:
        self._refuse(
            QT_TRANSLATE_NOOP(
                "Course",
                "{0} declares a document type or entities, which GPX never needs and"
                " which can do harm. Export the course again.",
            )
        )

    def _refuse(self, template: str, *args: Argument) -> NoReturn:
        raise CourseError(template, self._file, *args)


def _epoch(text: str) -> float:
    """Return the seconds since 1970 of an ISO 8601 time, NaN if it is none; UTC if it names no
    zone (GPX 1.1 schema: all times are UTC).
    """
    try:
        time = datetime.fromisoformat(text)
        return (time if time.tzinfo else time.replace(tzinfo=UTC)).timestamp()
    except (ValueError, OverflowError):
        return math.nan

"""Courses and recordings from GPX files."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection
from datetime import UTC, datetime
from pathlib import Path

from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.exchange.course_heights import mended_heights
from ultraplanner_gui.exchange.course_line import gaps_of, line_of
from ultraplanner_gui.exchange.course_pieces import Pieces, chosen_pieces, keys_of, pieces_of
from ultraplanner_gui.exchange.gpx_parse import (
    GpxFile,
    Kind,
    cleaned,
    parse_gpx,
    parse_gpx_bytes,
)
from ultraplanner_gui.exchange.recorded import check_is_run, timed_points
from ultraplanner_gui.exchange.safe_read import read_bytes, shown_name
from ultraplanner_gui.exchange.waypoints import SECTION_END, propose_stations
from ultraplanner_gui.plan.course import Course, Line, Reading, RepairKind, sections_between
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError, Quantity
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.geodesy import distance_along

SHORTEST_COURSE_M = 10.0
LONGEST_COURSE_M = 2_000_000.0
#: How much of the time to read a course goes into parsing its file.
PARSING_SHARE = 0.9

#: What programs call a course nobody named, with a number or not.
_NAMES_NOTHING = re.compile(
    r"\W*|((new|unnamed|untitled|my)\s)?(track|trk|route|rte|course|path|gpx|untitled|unnamed)"
    r"[\s_-]*\d*",
    re.IGNORECASE,
)


class CourseChoice(Value, frozen=True):
    """One way to read a file: `key` for `read_course`, what it is called, how long it is.

    `count` is of how many tracks or routes it is made; `climb_m` None without heights.
    """

    key: str
    name: str
    kind: Kind
    count: int
    length_m: float
    points: int
    climb_m: float | None


def course_choices(path: Path | str) -> tuple[CourseChoice, ...]:
    """Return the ways to read the GPX file at *path*: all tracks or routes joined in order, each
    track, each route. CourseError if it holds no line.
    """
    path = Path(path)
    gpx = parse_gpx(path)
    choices: list[CourseChoice] = []
    for key, strands in keys_of(gpx).items():
        pieces, _ = chosen_pieces(gpx, key, ())
        line, _ = line_of(gpx, pieces)
        length_m = float(distance_along(line.latitude_deg, line.longitude_deg, line.gaps)[-1])
        if not SHORTEST_COURSE_M <= length_m <= LONGEST_COURSE_M:
            continue
        profile = build_profile(Course(line, length_m))
        name = strands[0].name if len(strands) == 1 else gpx.name
        climb_m = profile.ascent_m if profile.has_elevation else None
        choices.append(
            CourseChoice(
                key, name, strands[0].kind, len(strands), length_m, len(pieces.points), climb_m
            )
        )
    if not choices:
        chosen_pieces(gpx, "", ())
    return tuple(choices)


def read_course(
    path: Path | str,
    choice: str = "",
    without: Collection[RepairKind] = (),
    progress: Callable[[float], None] | None = None,
) -> Course:
    """Return the course in the GPX file at *path*, packed with gzip or not.

    *choice* is the key of one of `course_choices`, empty for the most likely line. Waypoints by
    the line become aid stations. What had to be mended is in `repairs`, but for the kinds in
    *without*, which are left as they are. *progress* is told the share done, 0 to 1, and may
    raise to stop. Raises CourseError with a sentence for the user if the file holds no course
    that can be used.
    """
    path, tell = Path(path), progress or _unheard
    gpx = parse_gpx(path, progress=lambda share: tell(PARSING_SHARE * share))
    tell(PARSING_SHARE)
    undone = frozenset(without)
    pieces, decided = chosen_pieces(gpx, choice, undone)
    line, mended = line_of(gpx, pieces, undone)
    along_m = distance_along(line.latitude_deg, line.longitude_deg, line.gaps)
    length_m = float(along_m[-1])
    _check_length(gpx, length_m)
    tell((1.0 + PARSING_SHARE) / 2.0)
    places = [w for w in gpx.waypoints if w.kind != SECTION_END]
    stations, left_out = propose_stations(line, along_m, places)
    tell(1.0)
    return Course(
        line=line,
        length_m=length_m,
        stations=stations,
        sections=sections_between(stations),
        name=_name(gpx, pieces, path),
        repairs=(*decided, *mended, *left_out),
        reading=Reading(path.name, choice, tuple(sorted(undone))),
    )


def _unheard(_share: float) -> None:
    """Take what nobody asked to be told."""


def read_recording(path: Path | str) -> Recording:
    """Return the run recorded in the GPX file at *path*, its points with elapsed seconds.

    Points without a usable time are left out, and so are those against the order of time.
    Raises CourseError with a sentence for the user if there are no times, or none of a run.
    """
    path = Path(path)
    return recording_in(read_bytes(path), shown_name(path), path)


def recording_in(data: bytes, name: str, path: Path) -> Recording:
    """Return the run recorded in *data*, the content of a GPX file called *name* that lay at
    *path*; CourseError like `read_recording`.
    """
    gpx = parse_gpx_bytes(data, name, with_times=True)
    pieces = pieces_of(gpx)
    points, epoch_s, starts = timed_points(gpx, pieces)
    latitude, longitude = gpx.latitude_deg[points], gpx.longitude_deg[points]
    gaps, _ = gaps_of(latitude, longitude, starts)
    along_m = distance_along(latitude, longitude, gaps)
    check_is_run(gpx.file, along_m, epoch_s - epoch_s[0])
    elevation, _ = mended_heights(along_m, gpx.elevation_m[points])
    return Recording(
        line=Line(latitude, longitude, elevation, gaps),
        elapsed_s=epoch_s - epoch_s[0],
        start=datetime.fromtimestamp(float(epoch_s[0]), tz=UTC),
        name=_name(gpx, pieces, path),
    )


def _check_length(gpx: GpxFile, length_m: float) -> None:
    if length_m < SHORTEST_COURSE_M:
        raise CourseError(
            QT_TRANSLATE_NOOP("Course", "The line in {0} leads nowhere. Export the whole course."),
            gpx.file,
        )
    if length_m > LONGEST_COURSE_M:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "The line in {0} is {1} long, more than any race. Export only the course."
            ),
            gpx.file,
            Quantity(length_m, "m"),
        )


def _name(gpx: GpxFile, pieces: Pieces, path: Path) -> str:
    """Return what the file calls the course, else the name of the file without its ending."""
    strands = pieces.strands
    for name in (gpx.name, strands[0].name if len(strands) == 1 else ""):
        if not _NAMES_NOTHING.fullmatch(name):
            return name
    stem = path.name
    for ending in (".gz", ".gpx"):
        stem = stem[: -len(ending)] if stem.lower().endswith(ending) else stem
    return cleaned(stem)

"""Courses and recordings from GPX files."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from pathlib import Path

from ultraplanner_gui.exchange.course_line import gaps_of, line_of, mended_heights, pieces_of
from ultraplanner_gui.exchange.gpx_parse import GpxFile, cleaned, parse_gpx
from ultraplanner_gui.exchange.recorded import timed_points
from ultraplanner_gui.exchange.waypoints import propose_stations
from ultraplanner_gui.plan.course import Course, Line, sections_between
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError, Quantity
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.science.geodesy import distance_along

SHORTEST_COURSE_M = 10.0
LONGEST_COURSE_M = 2_000_000.0

#: What programs call a course nobody named, with a number or not.
_NAMES_NOTHING = re.compile(
    r"\W*|((new|unnamed|untitled|my)\s)?(track|trk|route|rte|course|path|gpx|untitled|unnamed)"
    r"[\s_-]*\d*",
    re.IGNORECASE,
)


def read_course(path: Path | str) -> Course:
    """Return the course in the GPX file at *path*, packed with gzip or not.

    Its tracks, or its routes if there is no track, make one line in the order of the file;
    waypoints by the line become aid stations. What had to be mended is in `repairs`. Raises
    CourseError with a sentence for the user if the file holds no course that can be used.
    """
    path = Path(path)
    gpx = parse_gpx(path)
    line, repairs = line_of(gpx)
    along_m = distance_along(line.latitude_deg, line.longitude_deg, line.gaps)
    length_m = float(along_m[-1])
    _check_length(gpx, length_m)
    stations, left_out = propose_stations(line, along_m, gpx.waypoints)
    return Course(
        line=line,
        length_m=length_m,
        stations=stations,
        sections=sections_between(stations),
        name=_name(gpx, path),
        repairs=(*repairs, *left_out),
    )


def read_recording(path: Path | str) -> Recording:
    """Return the run recorded in the GPX file at *path*, its points with elapsed seconds.

    Points without a usable time are left out, and so are those against the order of time.
    Raises CourseError with a sentence for the user if there are no times.
    """
    path = Path(path)
    gpx = parse_gpx(path, with_times=True)
    points, epoch_s, starts = timed_points(gpx, pieces_of(gpx))
    latitude, longitude = gpx.latitude_deg[points], gpx.longitude_deg[points]
    gaps, _ = gaps_of(latitude, longitude, starts)
    along_m = distance_along(latitude, longitude, gaps)
    elevation, _ = mended_heights(along_m, gpx.elevation_m[points])
    return Recording(
        line=Line(latitude, longitude, elevation, gaps),
        elapsed_s=epoch_s - epoch_s[0],
        start=datetime.fromtimestamp(float(epoch_s[0]), tz=UTC),
        name=_name(gpx, path),
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


def _name(gpx: GpxFile, path: Path) -> str:
    """Return what the file calls the course, else the name of the file without its ending."""
    strands = pieces_of(gpx).strands
    for name in (gpx.name, strands[0].name if len(strands) == 1 else ""):
        if not _NAMES_NOTHING.fullmatch(name):
            return name
    stem = path.name
    for ending in (".gz", ".gpx"):
        stem = stem[: -len(ending)] if stem.lower().endswith(ending) else stem
    return cleaned(stem)

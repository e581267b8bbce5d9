"""The course as a GPX 1.1 file, for a watch or a phone."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from pathlib import Path

import numpy as np

from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.exchange.gpx_parse import cleaned
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.exchange.waypoints import AID_STATION, SECTION_END
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import Words


class Mark(Value, frozen=True):
    """A waypoint on the course: an aid station, or the end of a section without one."""

    at_m: float
    name: str
    note: str = ""
    is_station: bool = True


def race_marks(outlook: Outlook, words: Words) -> tuple[Mark, ...]:
    """Return the aid stations and section ends with their target arrivals, in course order."""
    course, target, race = outlook.project.course, outlook.target, outlook.project.race
    if course is None or target is None:
        return ()

    # A watch has no use for marks that say which way a text is read.
    words = words.plain()

    def note(at_m: float) -> str:
        arrive_s = target.arrival_s(at_m)
        clock = words.clock(race.clock(arrive_s))
        text = QT_TRANSLATE_NOOP("Export", "Target arrival {0}, {1} after the start.")
        return words.say(message(text, clock, words.duration(arrive_s)))

    marks = [Mark(s.at_m, s.name, note(s.at_m)) for s in course.stations]
    for number, section in enumerate(outlook.sections, 1):
        if section.station is None:
            is_last = number == len(outlook.sections)
            text = (
                QT_TRANSLATE_NOOP("Export", "Finish")
                if is_last
                else QT_TRANSLATE_NOOP("Export", "End of section {0}")
            )
            name = words.say(message(text, number))
            marks.append(Mark(section.end_m, name, note(section.end_m), is_station=False))
    return tuple(sorted(marks, key=lambda mark: mark.at_m))


def write_course(course: Course, path: Path | str, marks: Sequence[Mark] | None = None) -> None:
    """Write the line as one track and *marks* as waypoints; StoreError if it cannot be.

    Without *marks* the waypoints are the aid stations. Each piece between gaps is a segment.
    """
    write_bytes(path, course_gpx(course, marks))


def course_gpx(course: Course, marks: Sequence[Mark] | None = None) -> bytes:
    """Return the course as a GPX 1.1 file; as `write_course`."""
    from gpxpy.gpx import GPX, GPXTrack, GPXTrackPoint, GPXTrackSegment, GPXWaypoint

    line = course.line
    gpx = GPX()
    gpx.creator = "Ultraplanner"
    gpx.name = cleaned(course.name) or None
    along_m = places_of_points(course)
    longitude = np.unwrap(line.longitude_deg, period=360.0)
    if marks is None:
        marks = [Mark(station.at_m, station.name) for station in course.stations]
    for mark in marks:
        lat = float(np.interp(mark.at_m, along_m, line.latitude_deg))
        lon = _wrapped(float(np.interp(mark.at_m, along_m, longitude)))
        waypoint = GPXWaypoint(lat, lon, name=cleaned(mark.name) or None)
        waypoint.description = mark.note or None
        waypoint.type = AID_STATION if mark.is_station else SECTION_END
        gpx.waypoints.append(waypoint)
    track = GPXTrack(name=gpx.name)
    gpx.tracks.append(track)
    points = [
        GPXTrackPoint(lat, lon, elevation=ele if math.isfinite(ele) else None)
        for lat, lon, ele in zip(
            line.latitude_deg.tolist(),
            line.longitude_deg.tolist(),
            line.elevation_m.tolist(),
            strict=True,
        )
    ]
    for first, end in pairwise((0, *line.gaps, len(points))):
        track.segments.append(GPXTrackSegment(points[first:end]))
    return str(gpx.to_xml(version="1.1")).encode("utf-8")


def _wrapped(longitude_deg: float) -> float:
    """Return the longitude from -180 up to below 180, as the GPX 1.1 schema has it."""
    return (longitude_deg + 180.0) % 360.0 - 180.0

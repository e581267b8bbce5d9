"""The course as a GPX 1.1 file, for a watch or a phone."""

from __future__ import annotations

import math
from itertools import pairwise
from pathlib import Path

import numpy as np

from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.exchange.gpx_parse import cleaned
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.plan.course import Course


def write_course(course: Course, path: Path | str) -> None:
    """Write the line as one track and the aid stations as waypoints; StoreError if it cannot be.

    Each piece between gaps is a segment of its own.
    """
    from gpxpy.gpx import GPX, GPXTrack, GPXTrackPoint, GPXTrackSegment, GPXWaypoint

    line = course.line
    gpx = GPX()
    gpx.creator = "Ultraplanner"
    gpx.name = cleaned(course.name) or None
    along_m = places_of_points(course)
    longitude = np.unwrap(line.longitude_deg, period=360.0)
    for station in course.stations:
        lat = float(np.interp(station.at_m, along_m, line.latitude_deg))
        lon = float(np.interp(station.at_m, along_m, longitude))
        gpx.waypoints.append(GPXWaypoint(lat, _wrapped(lon), name=cleaned(station.name) or None))
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
    write_bytes(path, gpx.to_xml(version="1.1").encode("utf-8"))


def _wrapped(longitude_deg: float) -> float:
    """Return the longitude from -180 up to below 180, as the GPX 1.1 schema has it."""
    return (longitude_deg + 180.0) % 360.0 - 180.0

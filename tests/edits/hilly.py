"""A hilly course with all that can lie along one, for the edits of its shape."""

from datetime import UTC, datetime

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.course_scale import line_length_m
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    CutoffKind,
    IfStop,
    Kit,
    Line,
    Offer,
    Section,
    StopKind,
    Surface,
    SurfaceSpan,
    sections_between,
)
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race

#: Along the equator and across it on the WGS84 ellipsoid.
M_PER_DEGREE, M_PER_DEGREE_NORTH = 111_319.49, 110_574.39


def round_line(length_m=30_000.0, points=601, hill_m=200.0, waves=5.0):
    """A circle on the map, closed, with *waves* hills."""
    turn = np.linspace(0.0, 2.0 * np.pi, points)
    radius = length_m / (2.0 * np.pi)
    latitude = radius * np.sin(turn) / M_PER_DEGREE_NORTH
    longitude = 7.0 + radius * np.cos(turn) / M_PER_DEGREE
    latitude[-1], longitude[-1] = latitude[0], longitude[0]
    height = 500.0 - hill_m / 2.0 * np.cos(waves * turn)
    height[-1] = height[0]
    return Line(latitude, longitude, height)


def open_line(length_m=30_000.0, points=601, waves=4.0):
    """A line to the east that does not come back, with *waves* hills and a rise on the whole."""
    at = np.linspace(0.0, length_m, points)
    height = 800.0 + at / 200.0 - 120.0 * np.cos(2.0 * np.pi * waves * at / length_m)
    return Line(np.zeros(points), 7.0 + at / M_PER_DEGREE, height)


def course_on(line):
    length_m = line_length_m(line)
    stations = (
        AidStation(
            "hut",
            "Hut",
            8_000.0,
            cutoff_s=7_200.0,
            stop_s=300.0,
            offers=(Offer.WATER, Offer.CREW),
            note="Steep way in.",
            cutoff_kind=CutoffKind.DEPARTURE,
            stop_kind=StopKind.CHANGE,
            kit=(Kit.SHOES,),
            pacer_from=True,
            if_stop=IfStop("Track to the road", "Sam", "1 h", "112"),
            access="By the lower road.",
        ),
        AidStation("mill", "Mill", 21_000.0, stop_s=60.0, offers=(Offer.FOOD,)),
    )
    to_hut, to_mill, finish = sections_between(stations)
    return Course(
        line,
        length_m,
        stations,
        (
            replace(to_hut, target_s=4_000.0, hard_note="Walk the ramp."),
            Section("free", end_m=15_000.0, name="Over the moor", target_s=4_100.0),
            to_mill,
            replace(finish, hard_note="Sing."),
        ),
        (
            SurfaceSpan(0.0, 5_000.0, Surface.ROAD),
            SurfaceSpan(5_000.0, 12_000.0, Surface.ROCK),
            SurfaceSpan(20_000.0, 24_000.0, Surface.GRASS),
        ),
        name="Five hills",
    )


def project_with(course):
    return Project(
        race=Race("Round", datetime(2027, 6, 19, 6, tzinfo=UTC), 5 * 3600.0), course=course
    )


LOOP = course_on(round_line())
ONE_WAY = course_on(open_line())

"""Where along the course its ground lies: the line stretched to the official distance and pins.

A *place* is metres from the start as the course counts them, a *line place* metres along the
line as measured on the ellipsoid.
"""

from __future__ import annotations

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.plan.course import Course, FloatArray, Line, Pin
from ultraplanner_gui.science.geodesy import distance_along

_last_measured: tuple[Line, FloatArray] | None = None


def line_distance(line: Line) -> FloatArray:
    """Return how far each point of *line* lies from its start, metres, gaps not counted."""
    global _last_measured  # a drag measures the same line over and over
    last = _last_measured
    if last is not None and last[0] is line:
        return last[1]
    along = distance_along(line.latitude_deg, line.longitude_deg, line.gaps)
    along.setflags(write=False)
    _last_measured = line, along
    return along


def line_length_m(line: Line) -> float:
    """Return the length of *line* on the ellipsoid, metres."""
    return float(line_distance(line)[-1])


def knots(course: Course) -> tuple[FloatArray, FloatArray]:
    """Return line places and the places they lie at, between which the line is stretched evenly."""
    return knots_of(line_length_m(course.line), course.length_m, course.pins)


def knots_of(
    line_m: float, length_m: float, pins: tuple[Pin, ...]
) -> tuple[FloatArray, FloatArray]:
    """Return the knots of a line *line_m* long on a course of *length_m* with *pins*."""
    return (
        np.array([0.0, *(pin.line_m for pin in pins), line_m]),
        np.array([0.0, *(pin.at_m for pin in pins), length_m]),
    )


def places_of_points(course: Course) -> FloatArray:
    """Return the place of each point of the line, metres from the start of the course."""
    measured = line_distance(course.line)
    if not course.pins and course.length_m == measured[-1]:
        return measured
    return np.interp(measured, *knots(course))


def line_place(course: Course, at_m: float) -> float:
    """Return the line place of the place *at_m*."""
    line_m, places_m = knots(course)
    return float(np.interp(at_m, places_m, line_m))


def rescaled(
    course: Course, length_m: float, official_m: float | None, pins: tuple[Pin, ...]
) -> Course:
    """Return *course* with another length and other pins, everything on the ground it was on."""
    line_m, before_m = knots(course)
    _, after_m = new = knots_of(line_m[-1], length_m, pins)

    def moved(at_m: float) -> float:
        return float(np.interp(np.interp(at_m, before_m, line_m), *new))

    return replace(
        course,
        length_m=float(after_m[-1]),
        official_m=official_m,
        pins=pins,
        stations=tuple(replace(s, at_m=moved(s.at_m)) for s in course.stations),
        sections=tuple(
            s if s.end_m is None else replace(s, end_m=moved(s.end_m)) for s in course.sections
        ),
        surfaces=tuple(
            replace(s, start_m=moved(s.start_m), end_m=moved(s.end_m)) for s in course.surfaces
        ),
    )


def without_pin(course: Course, at_m: float) -> Course:
    """Return *course* without the pin at the place *at_m*, everything on the ground it was on."""
    pins = tuple(pin for pin in course.pins if pin.at_m != at_m)
    if len(pins) == len(course.pins):
        return course
    return rescaled(course, course.length_m, course.official_m, pins)

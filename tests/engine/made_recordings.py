"""Recordings made from a plan, point by point, for what must come out of them."""

from datetime import timedelta

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.plan.course import Line
from ultraplanner_gui.plan.recording import Recording


def run_of(outlook, from_m=0.0, to_m=None, slower=1.0, every_s=10.0, stops=True):
    """The target of *outlook* run as planned, or all of it *slower*, from one place to another."""
    course, plan = outlook.project.course, outlook.target
    to_m = course.length_m if to_m is None else to_m
    first_s, last_s = (slower * plan.arrival_s(m) for m in (from_m, to_m))
    clock_s = np.append(np.arange(first_s, last_s, every_s), last_s)
    places = np.array([plan.distance_at(s / slower) for s in clock_s]) if stops else None
    places[0], places[-1] = from_m, to_m
    along, line = places_of_points(course), course.line
    columns = (line.latitude_deg, line.longitude_deg, line.elevation_m)
    start = outlook.project.race.start + timedelta(seconds=float(first_s))
    return Recording(
        Line(*(np.interp(places, along, c) for c in columns)), clock_s - first_s, start
    )


def with_hole(recording, first, last):
    """*recording* without the points from *first* to *last*."""
    keep = np.r_[0:first, last : len(recording.elapsed_s)]
    line = recording.line
    columns = (line.latitude_deg[keep], line.longitude_deg[keep], line.elevation_m[keep])
    return replace(recording, line=Line(*columns), elapsed_s=recording.elapsed_s[keep])


def standing(recording, at, for_s):
    """*recording* with a stop of *for_s* seconds after the point *at*."""
    extra = int(for_s // 10)
    index = np.r_[0 : at + 1, np.full(extra, at), at + 1 : len(recording.elapsed_s)]
    clock = np.r_[
        recording.elapsed_s[: at + 1],
        recording.elapsed_s[at] + 10.0 * np.arange(1, extra + 1),
        recording.elapsed_s[at + 1 :] + 10.0 * extra,
    ]
    line = recording.line
    columns = (line.latitude_deg[index], line.longitude_deg[index], line.elevation_m[index])
    return replace(recording, line=Line(*columns), elapsed_s=clock)

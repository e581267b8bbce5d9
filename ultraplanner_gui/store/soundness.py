"""What must hold between the parts of a project before any figure is derived from it."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from itertools import pairwise
from operator import attrgetter

import numpy as np

from ultraplanner_gui.plan.course import Course, Line
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import FIRST_YEAR, LAST_YEAR

HIGHEST_M = 12_000.0

# What is read of hundreds of values goes by these, at a third of the time.
_KEY, _DAY, _FOOD = attrgetter("key"), attrgetter("day"), attrgetter("food")


def unsound_part(project: Project) -> str | None:
    """Return the name of a part of *project* that contradicts another, None if there is none.

    Ranges that an edit refuses are not looked at again here: only what the program could not
    compute with.
    """
    return next((part for part, is_sound in _findings(project) if not is_sound), None)


def is_sound_line(line: Line) -> bool:
    """Whether *line* can be computed with; dearer than the rest, so apart."""
    latitude, longitude, height = line.latitude_deg, line.longitude_deg, line.elevation_m
    return (
        len(line) > 0
        and latitude.shape == longitude.shape == height.shape == (len(line),)
        and bool(latitude.min() >= -90.0 and latitude.max() <= 90.0)  # not so with a NaN in it
        and bool(longitude.min() >= -360.0 and longitude.max() <= 360.0)
        # a missing height is NaN; if all are, so are the highest and the lowest
        and not (np.fmax.reduce(height) > HIGHEST_M or np.fmin.reduce(height) < -HIGHEST_M)
        and _is_rising((0, *line.gaps, len(line)))
    )


def _findings(project: Project) -> Iterable[tuple[str, bool]]:
    block, fuel, race = project.block, project.fuel, project.race
    yield "race.start", FIRST_YEAR <= race.start.year <= LAST_YEAR
    yield "race.goal_s", race.goal_s > 0.0 and (race.limit_s is None or race.limit_s > 0.0)
    yield "runner.available_s", len(project.runner.available_s) == 7
    yield "runner.long_day", 0 <= project.runner.long_day <= 6
    yield "runner.start_s", len(project.runner.start_s) == 7
    yield "runner.grounds", _have_own_keys(project.runner.grounds)
    yield "candidates", _have_own_keys(project.candidates)
    yield "candidates", all(FIRST_YEAR <= c.day.year <= LAST_YEAR for c in project.candidates)
    yield "first_weekday", 0 <= project.first_weekday <= 6
    yield "sessions", _have_own_keys(block.sessions)
    days = sorted(map(_DAY, block.sessions)) or [race.start.date()]
    yield "sessions", days[0].year >= FIRST_YEAR and days[-1].year <= LAST_YEAR
    yield "foods", _have_own_keys(fuel.foods)
    yield "items", _have_own_keys(fuel.items)
    yield "items", set(map(_KEY, fuel.foods)).issuperset(map(_FOOD, fuel.items))
    yield "recordings", _have_own_keys(project.recordings)
    starts = (r.start for r in project.recordings if r.start is not None)
    yield "recordings", all(FIRST_YEAR <= start.year <= LAST_YEAR for start in starts)
    yield "reviews", _is_unique(r.recording for r in project.reviews)
    yield "lessons", _have_own_keys(project.lessons)
    if project.course is not None:
        yield from _course_findings(project.course)


def _course_findings(course: Course) -> Iterable[tuple[str, bool]]:
    yield "course.length_m", course.length_m > 0.0
    yield "stations", _have_own_keys(course.stations)
    yield "stations", all(0.0 <= s.at_m <= course.length_m for s in course.stations)
    yield "sections", bool(course.sections) and _have_own_keys(course.sections)
    stations = {s.key for s in course.stations}
    yield "sections", all(s.station is None or s.station in stations for s in course.sections)
    yield "sections", _is_rising((0.0, *course.section_ends()))
    yield (
        "surfaces",
        all(0.0 <= s.start_m <= s.end_m <= course.length_m for s in course.surfaces),
    )
    factors = course.surface_factors
    yield "surface_factors", _is_unique(f.surface for f in factors)
    yield "surface_factors", all(f.cost > 0.0 and f.descent > 0.0 for f in factors)
    yield "course.official_m", course.official_m in (None, course.length_m)
    yield "pins", _is_rising((0.0, *(p.at_m for p in course.pins), course.length_m))
    yield "pins", _is_rising((0.0, *(p.line_m for p in course.pins)))


def _have_own_keys(values: Collection[object]) -> bool:
    return len(set(map(_KEY, values))) == len(values)


def _is_unique(names: Iterable[str]) -> bool:
    seen = list(names)
    return len(set(seen)) == len(seen)


def _is_rising(values: tuple[float, ...]) -> bool:
    return all(a < b for a, b in pairwise(values))

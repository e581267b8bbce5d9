"""How like the race the training is: ground, gradient and surface. Descriptive, no trial."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.block import Ground, Kind, Session
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.surface import Surface
from ultraplanner_gui.science.training import likeness

#: Classes of gradient, rise over run: below the first, between two, above the last (own choice).
GRADIENT_EDGES = (-0.15, -0.08, -0.03, 0.03, 0.08, 0.15)
LEVEL_PER_M, ROLLING_PER_M = 0.006, 0.020
ONE_SIDED = 1.5


def gradient_shares(
    profile: Profile, start_m: float = 0.0, end_m: float | None = None
) -> tuple[float, ...]:
    """Return the shares of the distance from *start_m* to *end_m* in each class of gradient."""
    along = profile.distance_m
    middle = 0.5 * (along[1:] + along[:-1])
    inside = (middle >= start_m) & (middle <= (profile.length_m if end_m is None else end_m))
    length = np.diff(along) * inside
    rise = np.diff(profile.elevation_m)
    gradient = np.divide(rise, np.diff(along), out=np.zeros_like(rise), where=np.diff(along) > 0)
    total = float(length.sum())
    if total <= 0.0:
        return (0.0,) * (len(GRADIENT_EDGES) + 1)
    classes = np.digitize(gradient, GRADIENT_EDGES)
    sums = np.bincount(classes, weights=length, minlength=len(GRADIENT_EDGES) + 1)
    return tuple(float(v) for v in sums / total)


def last_ground(profile: Profile) -> Ground:
    """Return the shape of the ground of the race's last third."""
    inside = profile.distance_m >= profile.length_m * 2.0 / 3.0
    steps = np.diff(profile.elevation_m[inside])
    length_m = profile.length_m / 3.0
    climb_m, drop_m = float(steps[steps > 0].sum()), float(-steps[steps < 0].sum())
    return shape_of(climb_m / length_m, drop_m / length_m)


def shape_of(climb_per_m: float, drop_per_m: float) -> Ground:
    """Return the shape of ground that climbs and falls so much per metre."""
    more, less = max(climb_per_m, drop_per_m), min(climb_per_m, drop_per_m)
    if more < LEVEL_PER_M:
        return Ground.LEVEL
    if more >= ROLLING_PER_M and more >= ONE_SIDED * less:
        return Ground.RISING if climb_per_m > drop_per_m else Ground.FALLING
    return Ground.SAW if less >= ROLLING_PER_M else Ground.ROLLING


def surface_shares(course: Course | None) -> dict[Surface, float]:
    """Return the metres of each known surface of *course*; what is unknown is left out."""
    shares: dict[Surface, float] = {}
    for span in course.surfaces if course is not None else ():
        if span.surface is not Surface.UNKNOWN:
            shares[span.surface] = shares.get(span.surface, 0.0) + span.end_m - span.start_m
    return shares


def main_surface(course: Course | None) -> Surface:
    """Return what is underfoot for most of *course*; unknown if that is not known of a third."""
    shares = surface_shares(course)
    if course is None or sum(shares.values()) < course.length_m / 3.0:
        return Surface.UNKNOWN
    return max(shares, key=lambda s: (shares[s], s.value))


def surface_likeness(
    race: dict[Surface, float], sessions: Sequence[Session]
) -> tuple[float, float]:
    """Return how alike race and training are underfoot, and the metres of training known.

    Strength, cross-training and the race are left out, and so are sessions of unknown surface.
    """
    trained: dict[Surface, float] = {}
    for session in sessions:
        is_run = session.kind.is_run and session.kind is not Kind.RACE
        if is_run and session.surface is not Surface.UNKNOWN:
            metres = session.actual.distance_m
            trained[session.surface] = trained.get(session.surface, 0.0) + metres
    kinds = sorted({*race, *trained})
    one = [race.get(k, 0.0) for k in kinds]
    other = [trained.get(k, 0.0) for k in kinds]
    return likeness(one, other), sum(trained.values())

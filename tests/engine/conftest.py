from collections.abc import Callable

import numpy as np
import pytest

from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import AidStation, Course, Line, Section, sections_between
from ultraplanner_gui.plan.message import message


def _profile(
    distance_m, gradient=0.0, surface_cost=1.0, latitude_deg=46.0, longitude_deg=7.0
) -> Profile:
    distance = np.asarray(distance_m, dtype=np.float64)
    slope = np.broadcast_to(np.asarray(gradient, dtype=np.float64), distance.shape).copy()
    rise = np.diff(distance) * slope[:-1]
    elevation = np.concatenate(([0.0], np.cumsum(rise)))
    climb = np.concatenate(([0.0], np.cumsum(np.maximum(rise, 0.0))))
    drop = np.concatenate(([0.0], np.cumsum(np.maximum(-rise, 0.0))))
    return Profile(
        distance_m=distance,
        elevation_m=elevation,
        gradient=slope,
        climb_m=climb,
        drop_m=drop,
        surface_cost=np.broadcast_to(np.asarray(surface_cost, float), distance.shape).copy(),
        ascent_m=float(climb[-1]),
        descent_m=float(drop[-1]),
        has_elevation=True,
        latitude_deg=latitude_deg,
        longitude_deg=longitude_deg,
        method=message("{0}", "made for a test"),
    )


def _course(
    length_m: float,
    stations: tuple[AidStation, ...] = (),
    sections: tuple[Section, ...] | None = None,
) -> Course:
    line = Line(np.array([46.0, 46.0 + length_m / 111_149.0]), np.full(2, 7.0), np.zeros(2))
    return Course(
        line, length_m, stations, sections_between(stations) if sections is None else sections
    )


@pytest.fixture(scope="session")
def profile_of() -> Callable[..., Profile]:
    """A profile from places, gradients and surface costs."""
    return _profile


@pytest.fixture(scope="session")
def course_of() -> Callable[..., Course]:
    """A straight course of a length, with stations; one section to each unless given."""
    return _course

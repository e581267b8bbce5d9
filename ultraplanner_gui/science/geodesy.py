"""Distances on the WGS84 ellipsoid."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]

# NGA.STND.0036: the defining constants of WGS84.
EQUATOR_RADIUS_M = 6_378_137.0
FLATTENING = 1.0 / 298.257223563


def distance_between(
    latitude_1_deg: npt.ArrayLike,
    longitude_1_deg: npt.ArrayLike,
    latitude_2_deg: npt.ArrayLike,
    longitude_2_deg: npt.ArrayLike,
) -> FloatArray:
    """Return the distance between pairs of points along the ellipsoid, metres, shape as broadcast.

    Lambert's formula on the auxiliary sphere of reduced latitudes (W. D. Lambert 1942, J Wash
    Acad Sci 32:125-130), its error of second order in the flattening: within 0.001 % of the
    geodesic, except between points nearly opposite on the globe.
    """
    first = np.arctan((1.0 - FLATTENING) * np.tan(np.radians(latitude_1_deg)))
    second = np.arctan((1.0 - FLATTENING) * np.tan(np.radians(latitude_2_deg)))
    half_turn = np.radians(np.subtract(longitude_2_deg, longitude_1_deg)) / 2.0
    mean, half = (first + second) / 2.0, (second - first) / 2.0
    haversine = np.sin(half) ** 2 + np.cos(first) * np.cos(second) * np.sin(half_turn) ** 2
    haversine = np.clip(haversine, 0.0, 1.0)
    angle = 2.0 * np.arcsin(np.sqrt(haversine))
    return np.asarray(
        EQUATOR_RADIUS_M * (angle - FLATTENING / 2.0 * _bulge(mean, half, haversine, angle)),
        dtype=np.float64,
    )


def _bulge(
    mean: FloatArray, half: FloatArray, haversine: FloatArray, angle: FloatArray
) -> FloatArray:
    tiny = np.finfo(np.float64).tiny
    far = (
        (angle - np.sin(angle))
        * (np.sin(mean) * np.cos(half)) ** 2
        / np.maximum(1.0 - haversine, tiny)
    )
    near = (
        (angle + np.sin(angle)) * (np.cos(mean) * np.sin(half)) ** 2 / np.maximum(haversine, tiny)
    )
    return np.asarray(far + near, dtype=np.float64)


def distance_along(
    latitude_deg: FloatArray, longitude_deg: FloatArray, gaps: Sequence[int] = ()
) -> FloatArray:
    """Return the distance of each point from the first along the line, metres, shape (n,).

    Nothing is counted between a point in *gaps* and the point before it.
    """
    steps = distance_between(
        latitude_deg[:-1], longitude_deg[:-1], latitude_deg[1:], longitude_deg[1:]
    )
    steps[np.asarray(gaps, dtype=np.intp) - 1] = 0.0
    return np.concatenate(([0.0], np.cumsum(steps)))


def local_plane(
    latitude_deg: FloatArray, longitude_deg: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """Return how far points lie east and north of their middle, metres, each of shape (n,).

    On the plane that touches the ellipsoid there: geodetic to Earth-centred to east-north-up
    coordinates (NGA.STND.0036). True to 0.03 % over a line 300 km across, anywhere on the globe.
    """
    latitude, longitude = np.radians(latitude_deg), np.radians(longitude_deg)
    squash = FLATTENING * (2.0 - FLATTENING)
    normal = EQUATOR_RADIUS_M / np.sqrt(1.0 - squash * np.sin(latitude) ** 2)
    x = normal * np.cos(latitude) * np.cos(longitude)
    y = normal * np.cos(latitude) * np.sin(longitude)
    z = normal * (1.0 - squash) * np.sin(latitude)
    mid_x, mid_y, mid_z = x.mean(), y.mean(), z.mean()
    turn = np.arctan2(mid_y, mid_x)
    tilt = np.arctan2(mid_z, (1.0 - squash) * np.hypot(mid_x, mid_y))
    x, y, z = x - mid_x, y - mid_y, z - mid_z
    outward = np.cos(turn) * x + np.sin(turn) * y
    east = np.cos(turn) * y - np.sin(turn) * x
    return east, np.cos(tilt) * z - np.sin(tilt) * outward

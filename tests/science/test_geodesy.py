import math

import numpy as np
import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.geodesy import distance_along, distance_between, local_plane

# Karney 2013, J Geodesy 87:43-55: the first is the example of the geographiclib documentation,
# nearly opposite on the globe, where Lambert's formula is worst; the others computed with
# geographiclib, in metres.
GEODESICS = [
    ((40.6, -73.8, 51.6, -0.5), 5_551_759.4003),
    ((0, 0, 0, 1), 111_319.4908),
    ((0, 0, 1, 0), 110_574.3886),
    ((45, 0, 46, 0), 111_141.5485),
    ((45, 7, 45.0009, 7), 100.0186),
    ((45, 7, 45, 7.00127), 100.1355),
    ((45.9237, 6.8694, 45.9301, 6.8770), 923.8709),
    ((42.698334, 23.319941, 42.136097, 24.742168), 132_675.5019),
]


@pytest.mark.parametrize(("ends", "geodesic_m"), GEODESICS)
def test_distance_is_the_geodesic(ends, geodesic_m):
    assert Geodesic.WGS84.Inverse(*ends)["s12"] == pytest.approx(geodesic_m, abs=1e-4)
    assert float(distance_between(*ends)) == pytest.approx(geodesic_m, rel=1e-5)


def test_distance_halfway_round_the_globe_is_near_the_geodesic():
    ends = (-41.32, 174.81, 40.96, -5.50)
    assert float(distance_between(*ends)) == pytest.approx(19_959_679.267, rel=2e-4)


@given(st.floats(-89, 89), st.floats(-180, 180), st.floats(-0.2, 0.2), st.floats(-0.2, 0.2))
def test_short_distances_agree_with_geographiclib(lat, lon, north, east):
    ends = (lat, lon, lat + north, lon + east)
    expected = Geodesic.WGS84.Inverse(*ends)["s12"]
    assert float(distance_between(*ends)) == pytest.approx(expected, rel=1e-5, abs=1e-6)


@given(st.floats(-90, 90), st.floats(-180, 180), st.floats(-90, 90), st.floats(-180, 180))
def test_distance_is_the_same_both_ways(lat_1, lon_1, lat_2, lon_2):
    there = float(distance_between(lat_1, lon_1, lat_2, lon_2))
    back = float(distance_between(lat_2, lon_2, lat_1, lon_1))
    assert there == pytest.approx(back, rel=1e-9, abs=1e-6)
    # Half the equator of WGS 84. Opposite places are nearer over a pole (20,004 km), which the
    # formula does not see; no course goes there.
    assert 0.0 <= there <= math.pi * 6_378_137.0 + 1e-6


def test_the_date_line_is_no_way_round_the_globe():
    assert float(distance_between(0, 179.9995, 0, -179.9995)) == pytest.approx(111.32, abs=0.01)


def test_line_adds_up_step_by_step():
    lat, lon = np.array([45.0, 45.1, 45.2, 45.2]), np.array([7.0, 7.0, 7.1, 7.1])
    along = distance_along(lat, lon)
    steps = [
        Geodesic.WGS84.Inverse(lat[i], lon[i], lat[i + 1], lon[i + 1])["s12"] for i in range(3)
    ]
    assert along == pytest.approx([0.0, steps[0], steps[0] + steps[1], sum(steps)], rel=1e-5)


def test_nothing_is_counted_across_a_gap():
    lat, lon = np.array([45.0, 45.1, 46.1, 46.2]), np.full(4, 7.0)
    along = distance_along(lat, lon, gaps=(2,))
    assert along[2] == along[1]
    assert along[3] == pytest.approx(along[1] * 2, rel=1e-4)


@given(
    st.floats(-89.5, 89.5),
    st.floats(-180, 180),
    st.lists(st.tuples(st.floats(0, 360), st.floats(1_000, 60_000)), min_size=3, max_size=8),
)
def test_the_plane_keeps_distances_and_directions(lat, lon, ways):
    # Karney 2013, J Geodesy 87:43-55, by geographiclib.
    points = [Geodesic.WGS84.Direct(lat, lon, azimuth, m) for azimuth, m in ways]
    latitude = np.array([p["lat2"] for p in points])
    longitude = np.array([p["lon2"] for p in points])
    east, north = local_plane(latitude, longitude)
    for a in range(len(points)):
        for b in range(a):
            ends = latitude[a], longitude[a], latitude[b], longitude[b]
            geodesic_m = Geodesic.WGS84.Inverse(*ends)["s12"]
            drawn_m = math.hypot(east[a] - east[b], north[a] - north[b])
            assert drawn_m == pytest.approx(geodesic_m, rel=2e-3, abs=0.5)


def test_north_is_up_on_the_plane_and_the_date_line_does_not_tear_it():
    east, north = local_plane(np.array([-16.0, -16.0, -15.9]), np.array([179.95, -179.95, 179.95]))
    assert east[1] - east[0] == pytest.approx(
        Geodesic.WGS84.Inverse(-16.0, 179.95, -16.0, -179.95)["s12"], rel=1e-4
    )
    assert north[2] - north[0] == pytest.approx(
        Geodesic.WGS84.Inverse(-16.0, 179.95, -15.9, 179.95)["s12"], rel=1e-4
    )
    assert abs(east[2] - east[0]) < 20.0

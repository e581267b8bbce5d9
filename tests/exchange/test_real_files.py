"""Real courses and recordings, where they are at hand."""

import numpy as np
import pytest

from ultraplanner_gui.engine.pacing import pace_for_finish
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.exchange.gpx_in import read_course, read_recording
from ultraplanner_gui.plan.message import CourseError


def course(shared, start):
    (path,) = shared.glob(f"courses/{start}*")
    return read_course(path)


def test_every_file_opens_as_a_course(shared):
    files = sorted(shared.glob("*/*.gpx.gz"))
    assert len(files) > 10
    for path in files:
        read = read_course(path)
        profile = build_profile(read)
        assert 20_000 < profile.length_m == read.length_m < 120_000
        assert np.isfinite(profile.elevation_m).all()
        assert (np.diff([0.0, *read.section_ends()]) >= 100.0).all()


def test_every_file_opens_as_a_recording_or_says_why_it_is_none(shared):
    for path in sorted(shared.glob("*/*.gpx.gz")):
        if path.name.startswith("course-15"):
            with pytest.raises(CourseError, match="drawing the line"):
                read_recording(path)
        elif path.name.startswith("timed-"):
            elapsed = read_recording(path).elapsed_s
            assert (np.diff(elapsed) >= 0).all()
            assert elapsed[-1] > 3_600
        else:
            with pytest.raises(CourseError, match="no times"):
                read_recording(path)


def test_a_route_makes_a_course_with_its_stations_in_order(shared):
    read = course(shared, "course-05")
    assert read.length_m == pytest.approx(98_000, rel=0.01)
    assert [s.name for s in read.stations] == [f"Section{i}" for i in range(2, 11)]


def test_waypoints_out_of_order_become_stations_in_order(shared):
    read = course(shared, "course-06")
    assert [s.name for s in read.stations] == [f"Section{i}" for i in range(2, 13)]


def test_tracks_without_heights_are_joined_and_it_is_said(shared):
    read = course(shared, "course-07")
    words = " ".join(map(str, read.repairs))
    assert "tracks were joined" in words
    assert "no heights" in words
    numbers = [int(s.name.split()[1]) for s in read.stations]
    assert numbers == sorted(numbers)


def test_two_devices_on_one_run_agree_better_smoothed_than_raw(shared):
    climbs, raw = [], []
    for name in ("timed-03-", "timed-03b"):
        (path,) = shared.glob(f"recordings/{name}*")
        read = read_course(path)
        climbs.append(build_profile(read).ascent_m)
        rise = np.diff(read.line.elevation_m)
        raw.append(rise[rise > 0].sum())
    assert max(climbs) / min(climbs) < max(raw) / min(raw)


def test_two_devices_on_one_run_give_one_set_of_targets(shared):
    finish_s, shares = 24_000.0, np.linspace(0.05, 0.95, 19)
    arrivals = []
    for name in ("timed-03-", "timed-03b"):
        (path,) = shared.glob(f"recordings/{name}*")
        profile = build_profile(read_course(path))
        plan = pace_for_finish(profile, finish_s, shape="target")
        arrivals.append(np.interp(shares * profile.length_m, plan.distance_m, plan.elapsed_s))
    apart = np.abs(arrivals[0] - arrivals[1]) / finish_s
    # On one device the heights are lost for eight minutes; but for those it is within 1 %.
    assert apart.mean() < 0.005
    assert apart.max() < 0.011
    assert np.quantile(apart, 0.9) < 0.01

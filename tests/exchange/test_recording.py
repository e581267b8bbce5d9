from datetime import UTC, datetime, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.exchange.gpx_samples import document, eastward, route, track
from ultraplanner_gui.exchange.gpx_in import read_recording
from ultraplanner_gui.plan.message import CourseError

LINE = eastward(12)
START = datetime(2024, 6, 7, 22, 0, 0, tzinfo=UTC)


def timed(seconds, line=LINE, form="{:%Y-%m-%dT%H:%M:%SZ}"):
    return [
        (*p, None if s is None else form.format(START + timedelta(seconds=s)))
        for p, s in zip(line, seconds, strict=False)
    ]


def test_recording_has_elapsed_seconds_and_an_aware_start(write):
    recording = read_recording(write(document(track(timed(range(0, 360, 30)), name="Run"))))
    assert recording.elapsed_s.tolist() == list(range(0, 360, 30))
    assert recording.start == START
    assert recording.start.tzinfo is UTC
    assert recording.name == "Run"
    assert recording.line.latitude_deg.tolist() == [p[0] for p in LINE]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("2024-06-07T22:00:00Z", START),
        ("2024-06-07T22:00:00.250Z", START + timedelta(seconds=0.25)),
        ("2024-06-08T00:00:00+02:00", START),
        ("2024-06-07T22:00:00", START),
        (" 2024-06-07T22:00:00Z\n", START),
    ],
)
def test_time_forms(write, text, expected):
    points = [(*LINE[0], text), *timed([60, 120], LINE[1:])]
    assert read_recording(write(document(track(points)))).start == expected


@pytest.mark.parametrize("bad", ["yesterday", "", "2024-13-07T22:00:00Z", "0001-01-01T00:00:00Z"])
def test_points_without_a_usable_time_are_left_out(write, bad):
    points = timed(range(12))
    points[3] = (*LINE[3], bad)
    recording = read_recording(write(document(track(points))))
    assert recording.elapsed_s.tolist() == [0, 1, 2, 4, 5, 6, 7, 8, 9, 10, 11]
    assert LINE[3][1] not in recording.line.longitude_deg


def test_recording_without_times_is_refused(write):
    for text in (document(track(LINE)), document(route(LINE)), document(track(timed([5] * 12)))):
        with pytest.raises(CourseError, match="no times"):
            read_recording(write(text))


def test_standing_still_and_equal_times_are_kept(write):
    line = [LINE[0]] * 3 + LINE[1:]
    recording = read_recording(write(document(track(timed([0, 10, 10, 20, 30, 40], line)))))
    assert recording.elapsed_s.tolist() == [0, 10, 10, 20, 30, 40]


def test_a_clock_not_yet_set_is_left_out(write):
    points = timed([-7e8, -7e8 + 1, *range(100, 1100, 100)])
    recording = read_recording(write(document(track(points))))
    assert recording.elapsed_s.tolist() == list(range(0, 1000, 100))
    assert recording.start == START + timedelta(seconds=100)


def test_a_point_against_the_order_of_time_is_left_out(write):
    line = eastward(30)
    seconds = list(range(30))
    seconds[12] = 3
    recording = read_recording(write(document(track(timed(seconds, line)))))
    assert recording.elapsed_s.tolist() == [s for s in range(30) if s != 12]
    assert line[12][1] not in recording.line.longitude_deg


def test_segments_are_put_in_the_order_of_time(write):
    first, second = timed(range(6)), timed(range(6, 12), LINE[6:])
    recording = read_recording(write(document(track(second), track(first))))
    assert recording.elapsed_s.tolist() == list(range(12))
    assert recording.line.longitude_deg.tolist() == [p[1] for p in LINE]


def test_a_file_from_last_to_first_is_turned_round(write):
    recording = read_recording(write(document(track(timed(range(12))[::-1]))))
    assert recording.line.longitude_deg.tolist() == [p[1] for p in LINE]


def test_a_long_hole_between_segments_is_a_gap(write):
    far = eastward(4, start=7.5)
    text = document(track(timed(range(12)), timed(range(900, 904), far)))
    assert read_recording(write(text)).line.gaps == (12,)
    near = document(track(timed(range(6)), timed(range(6, 12), LINE[6:])))
    assert read_recording(write(near)).line.gaps == ()


@given(st.lists(st.one_of(st.none(), st.integers(0, 5000)), min_size=2, max_size=40))
def test_elapsed_time_starts_at_zero_and_never_falls(tmp_path_factory, seconds):
    path = tmp_path_factory.getbasetemp() / "recording.gpx"
    path.write_text(document(track(timed(seconds, eastward(40)))))
    known = {s for s in seconds if s is not None}
    if len(known) < 2:
        with pytest.raises(CourseError):
            read_recording(path)
        return
    recording = read_recording(path)
    assert recording.elapsed_s[0] == 0
    assert (np.diff(recording.elapsed_s) >= 0).all()
    assert len(recording.elapsed_s) == len(recording.line)

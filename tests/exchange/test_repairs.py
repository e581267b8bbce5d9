"""What the reader mends, says, and leaves as it is if the user says so."""

import numpy as np
import pytest

from tests.exchange.gpx_samples import document, eastward, track
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.exchange.gpx_in import read_course, read_recording
from ultraplanner_gui.plan.course import Repair, RepairKind
from ultraplanner_gui.plan.message import CourseError
from ultraplanner_gui.science.elevation import M_PER_FOOT, is_in_feet

LINE = eastward(200)


def kinds(course):
    return [r.kind for r in course.repairs if isinstance(r, Repair)]


def mountains(i):
    """A pass of 1,200 m every 12 km, up to 30 % steep."""
    return 1_500.0 - 600.0 * np.cos(2.0 * np.pi * i / 152.0)


CASES = {
    RepairKind.SPIKES: [(*p[:2], 1_900.0 if i == 90 else p[2]) for i, p in enumerate(LINE)],
    RepairKind.FILLERS: [(*p[:2], 0.0 if i in (50, 51) else p[2]) for i, p in enumerate(LINE)],
    RepairKind.STRAY: [(45.3, 7.1, p[2]) if i == 70 else p for i, p in enumerate(LINE)],
    RepairKind.FEET: [(*p[:2], mountains(i) / M_PER_FOOT) for i, p in enumerate(eastward(400))],
}


@pytest.mark.parametrize("kind", CASES)
def test_repair_is_said_in_one_line_and_undone_by_its_kind(write, kind):
    path = write(document(track(CASES[kind])))
    mended = read_course(path)
    assert kinds(mended) == [kind]
    assert len(str(mended.repairs[0])) <= 200
    assert str(mended.repairs[0]).count("\n") == 0
    left = read_course(path, without=(kind,))
    assert kind not in kinds(left)
    assert left.line != mended.line


def test_bridged_and_broken_are_each_undone_alone(write):
    path = write(document(track(LINE[:60], LINE[70:], eastward(50, start=7.5))))
    mended = read_course(path)
    assert kinds(mended) == [RepairKind.BRIDGED, RepairKind.BROKEN]
    unbridged = read_course(path, without=(RepairKind.BRIDGED,))
    assert len(unbridged.line.gaps) == 2
    assert unbridged.length_m == pytest.approx(mended.length_m - 11 * 78.8, rel=0.001)
    unbroken = read_course(path, without=(RepairKind.BROKEN,))
    assert unbroken.line.gaps == ()
    assert unbroken.length_m > mended.length_m + 20_000.0


def test_stray_points_are_dropped_and_the_line_is_as_long_as_without(write):
    clean = read_course(write(document(track(LINE)))).length_m
    for far in ((0.0, 0.0), (45.3, 7.1)):
        spoilt = [(*far, p[2]) if i in (70, 71, 140) else p for i, p in enumerate(LINE)]
        course = read_course(write(document(track(spoilt))))
        assert course.length_m == pytest.approx(clean)
        assert kinds(course) == [RepairKind.STRAY]
    at_start = [(0.0, 0.0, 0.0), *LINE]
    assert read_course(write(document(track(at_start)))).length_m == pytest.approx(clean)


def test_sharp_turns_of_a_thin_line_are_no_strays(write):
    zigzag = [(45.0 + 0.01 * (i % 2), 7.0 + 0.001 * i, 500.0) for i in range(60)]
    assert RepairKind.STRAY not in kinds(read_course(write(document(track(zigzag)))))


# Feet


def test_mountains_in_feet_come_out_in_metres(write):
    course = read_course(write(document(track(CASES[RepairKind.FEET]))))
    assert course.line.elevation_m.max() == pytest.approx(2_100.0, abs=1.0)
    assert "feet" in str(course.repairs[0])
    metres = [(*p[:2], mountains(i)) for i, p in enumerate(eastward(400))]
    same = read_course(write(document(track(metres)), "metres.gpx"))
    assert kinds(same) == []
    assert build_profile(course).ascent_m == pytest.approx(build_profile(same).ascent_m)


def test_heights_that_are_whole_metres_only_as_feet_are_feet():
    at = np.arange(0.0, 40_000.0, 50.0)
    metres = np.round(300.0 + 60.0 * np.sin(at / 2_000.0))
    assert not is_in_feet(at, metres)
    assert is_in_feet(at, np.round(metres / M_PER_FOOT, 2))


def test_whole_feet_made_metres_by_their_program_are_metres():
    at = np.arange(0.0, 40_000.0, 50.0)
    feet = np.round(900.0 + 300.0 * np.sin(at / 2_000.0))
    assert not is_in_feet(at, feet * M_PER_FOOT)


@pytest.mark.parametrize("height_m", [4_800.0, 5_300.0])
def test_high_races_in_metres_are_left_alone(height_m):
    at = np.arange(0.0, 60_000.0, 50.0)
    assert not is_in_feet(at, height_m + 300.0 * np.sin(at / 3_000.0))


def test_a_steep_mile_of_mountain_is_no_sign_of_feet():
    # A vertical kilometre: 1,000 m within 2.5 km, and the way down.
    at = np.arange(0.0, 10_000.0, 20.0)
    assert not is_in_feet(at, np.interp(at, [0, 2_500, 10_000], [1_000, 2_000, 1_000]))


def test_high_mountains_in_feet_are_not_thrown_out_as_fillers(write):
    line = [(*p[:2], (3_300.0 + 40.0 * np.sin(i / 30.0)) / M_PER_FOOT) for i, p in enumerate(LINE)]
    course = read_course(write(document(track(line))))
    assert np.isfinite(course.line.elevation_m).all()
    assert course.line.elevation_m.max() < 3_400.0


# Letters and progress


def test_old_letters_that_call_themselves_utf8_are_read(write):
    text = document(track(LINE, name="Höhenweg"))
    assert read_course(write(text.encode("latin-1"))).name == "Höhenweg"


def test_heights_written_as_no_number_are_missing(write):
    text = document(track(LINE)).replace("<ele>510.0<", "<ele>NaN<")
    course = read_course(write(text))
    assert np.isnan(course.line.elevation_m).sum() == 1
    assert "Height missing at 1 count of 200" in str(course.repairs[0])


def test_progress_rises_evenly_to_the_end(write):
    line = eastward(30_000, step=0.0005, height=lambda i: 500.0)
    told = []
    read_course(write(document(track(line))), progress=told.append)
    assert told == sorted(told)
    assert told[-1] == 1.0
    assert np.diff([0.0, *told]).max() < 0.15


def test_reading_stops_where_progress_says_so(write):
    class Enough(Exception):
        pass

    def stop(share):
        if share > 0.3:
            raise Enough

    with pytest.raises(Enough):
        read_course(write(document(track(eastward(20_000)))), progress=stop)


# Times that are none of a run


def stamped(seconds, along):
    return [
        (
            45.0,
            7.0 + m / 78_847.0,
            500.0,
            f"2026-05-01T{int(s) // 3600:02d}:{int(s) // 60 % 60:02d}:{int(s) % 60:02d}Z",
        )
        for s, m in zip(seconds, along, strict=True)
    ]


def test_times_of_drawing_are_refused(write):
    steps = np.tile([15.0, 20.0, 300.0, 25.0, 18.0, 60.0, 22.0, 30.0], 40)
    along = np.cumsum(steps)
    path = write(document(track(stamped(np.arange(len(steps)) * 60.0, along))))
    with pytest.raises(CourseError, match="drawing the line"):
        read_recording(path)
    assert read_course(path).length_m == pytest.approx(along[-1] - along[0], rel=0.01)


def test_a_run_recorded_once_a_minute_is_a_run(write):
    random = np.random.default_rng(5)
    along = np.cumsum(random.normal(130.0, 45.0, 400).clip(0.0))
    seconds = np.arange(400) * 60.0
    assert len(read_recording(write(document(track(stamped(seconds, along))))).elapsed_s) == 400

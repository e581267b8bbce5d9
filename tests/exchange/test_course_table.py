import itertools
from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from ultraplanner_gui.edits.course import ReplaceCourse
from ultraplanner_gui.engine.profile import build_profile, line_distance
from ultraplanner_gui.exchange.course_rows import (
    ClockTime,
    CourseRow,
    CourseTable,
    Place,
    cutoffs_of,
    limit_of,
    proposed_start,
)
from ultraplanner_gui.exchange.course_table import STEEPEST_LEG, course_of, read_course_table
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.message import CourseError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.wording.words import Words

H = 3600.0
START = datetime(2027, 6, 19, 6, 0, tzinfo=ZoneInfo("Europe/Paris"))  # a Saturday
PARIS = Place("Paris", 48.87, 2.33)


BEGIN = CourseRow("Start", 0.0)


def table(*rows, start=BEGIN):
    return CourseTable((start, *rows), "Round")


def told(*rows, start=START):
    """Return the sentence a table of *rows* is refused with."""
    with pytest.raises(CourseError) as caught:
        course_of(table(*rows), start)
    sentence = Words().say(caught.value.message)
    assert len(sentence) <= 200
    return sentence


def repairs(*rows):
    return [Words().say(m) for m in course_of(table(*rows), START, PARIS).repairs]


@st.composite
def courses(draw, shortest_m=300.0):
    """Rows of a course with legs up to 40 km long, as steep as half of it up and down."""
    lengths = draw(st.lists(st.floats(shortest_m, 40_000.0), min_size=1, max_size=12))
    assume(sum(lengths) <= 400_000.0)
    rows, at_m, height_m = [], 0.0, [0.0]
    for length in lengths:
        at_m += length
        way = draw(st.floats(0.0, 0.5)) * min(length, 6_000.0)
        up = draw(st.sampled_from((0.0, 1.0)) | st.floats(0.0, 1.0))
        rows.append(CourseRow("", at_m, way * up, way * (1.0 - up)))
        height_m.append(height_m[-1] + way * (2.0 * up - 1.0))
    assume(max(height_m) - min(height_m) < 5_000.0)
    return rows


def near(value, typed):
    return abs(value - typed) <= max(5.0, 0.01 * typed)


@settings(max_examples=120)
@given(courses())
def test_each_leg_and_the_whole_have_the_climb_and_drop_typed(rows):
    profile = build_profile(course_of(table(*rows), START))
    start_m = 0.0
    for row in rows:
        climb_m, drop_m = profile.climb_drop(start_m, row.at_m)
        assert near(climb_m, row.climb_m)
        assert near(drop_m, row.drop_m)
        start_m = row.at_m
    assert near(profile.ascent_m, sum(r.climb_m for r in rows))
    assert near(profile.descent_m, sum(r.drop_m for r in rows))


@given(courses(100.0))
def test_the_whole_has_the_climb_and_drop_typed_however_short_the_legs(rows):
    # The profile averages over 70 m, so that ends of legs that short run into one another.
    profile = build_profile(course_of(table(*rows), START))
    assert near(profile.ascent_m, sum(r.climb_m for r in rows))
    assert near(profile.descent_m, sum(r.drop_m for r in rows))


@given(courses(), st.floats(-89.0, 89.0), st.floats(-180.0, 180.0))
def test_the_line_is_as_long_as_typed_wherever_it_lies(rows, latitude, longitude):
    course = course_of(table(*rows), START, Place("there", latitude, longitude))
    along = line_distance(course.line)
    assert along[-1] == pytest.approx(course.length_m, abs=0.02)
    assert course.length_m == rows[-1].at_m
    assert np.abs(course.line.latitude_deg).max() <= 90.0
    assert course.line.latitude_deg[0] == latitude
    # Karney 2013, J Geodesy 87:43-55, as implemented in geographiclib.
    ends = [(course.line.latitude_deg[k], course.line.longitude_deg[k]) for k in (0, -1)]
    real = Geodesic.WGS84.Inverse(*ends[0], *ends[1])["s12"]
    assert real == pytest.approx(course.length_m, rel=2e-5)


@given(courses())
def test_the_same_table_gives_the_same_course(rows):
    assert course_of(table(*rows), START) == course_of(table(*rows), START)


@given(courses())
def test_heights_rise_and_fall_without_a_jump(rows):
    line = course_of(table(*rows), START).line
    gradient = np.diff(line.elevation_m) / np.diff(line_distance(line))
    assert np.abs(gradient).max() < 3.0 * STEEPEST_LEG
    assert line.elevation_m.min() == pytest.approx(0.0, abs=1e-6)


def test_many_small_climbs_add_up_over_the_legs():
    rows = [CourseRow("", 1000.0 * n, 2.0, 2.0) for n in range(1, 101)]
    profile = build_profile(course_of(table(*rows), START))
    assert profile.ascent_m == pytest.approx(200.0, abs=5.0)
    assert profile.descent_m == pytest.approx(200.0, abs=5.0)


def test_stations_lie_where_typed_with_what_is_there():
    row = CourseRow("Mill", 12_400.0, 410.0, 120.0, None, 4 * H, 600.0, (Offer.FOOD,), "soup")
    course = course_of(table(row, CourseRow("", 27_000.0), CourseRow("Finish", 42_200.0)), START)
    mill, second = course.stations
    assert (mill.name, mill.at_m, mill.cutoff_s, mill.stop_s) == ("Mill", 12_400.0, 4 * H, 600.0)
    assert (mill.offers, mill.note) == ((Offer.FOOD,), "soup")
    assert second.name == "Station 2"
    assert course.section_ends() == (12_400.0, 27_000.0, 42_200.0)
    assert course.name == "Round"


def test_a_project_takes_the_course():
    rows = (CourseRow("Mill", 12_000.0, 400.0, 100.0, cutoff=4 * H), CourseRow("Finish", 42_000.0))
    course = course_of(table(*rows), START)
    project = Project(Race("Round", START, 7 * H))
    assert ReplaceCourse(course).apply(project).course is course


def test_the_schematic_line_and_the_place_of_its_light_are_said():
    rows = (CourseRow("Finish", 42_000.0, 500.0, 500.0),)
    assert repairs(*rows)[-1].endswith("Light is computed for Paris.")
    nowhere = course_of(table(*rows), START)
    assert "its place is not known" in Words().say(nowhere.repairs[-1])
    assert nowhere.line.latitude_deg[0] == 0.0


def test_a_climb_goes_up_before_it_goes_down_and_ends_in_the_hollow():
    rows = (CourseRow("A", 4_000.0, 300.0, 300.0), CourseRow("Finish", 8_000.0, 300.0, 300.0))
    profile = build_profile(course_of(table(*rows), START))
    assert profile.elevation_at(2_000.0) == pytest.approx(300.0, abs=1.0)
    assert profile.elevation_at(4_000.0) == pytest.approx(0.0, abs=1.0)


def test_a_table_without_climb_and_drop_is_level_without_heights():
    rows = (CourseRow("A", 10_000.0), CourseRow("Finish", 20_000.0))
    course = course_of(table(*rows), START)
    assert not course.line.has_elevation
    assert "all counts as level" in repairs(*rows)[0]


def test_a_drop_that_is_not_given_is_as_large_as_the_climb_and_it_is_said():
    rows = (CourseRow("A", 10_000.0, 500.0), CourseRow("Finish", 20_000.0, 100.0))
    profile = build_profile(course_of(table(*rows), START))
    assert profile.climb_drop(0.0, 10_000.0) == pytest.approx((500.0, 500.0), abs=1.0)
    assert "has no drop" in repairs(*rows)[0]


def test_heights_of_the_places_give_the_drop_that_is_missing():
    start = CourseRow("Start", 0.0, height_m=800.0)
    rows = (
        CourseRow("A", 10_000.0, 900.0, height_m=1500.0),
        CourseRow("Finish", 20_000.0, 100.0, height_m=700.0),
    )
    course = course_of(CourseTable((start, *rows)), START)
    profile = build_profile(course)
    assert profile.descent_m == pytest.approx(200.0 + 900.0, abs=2.0)
    for at_m, height_m in ((0.0, 800.0), (10_000.0, 1500.0), (20_000.0, 700.0)):
        assert profile.elevation_at(at_m) == pytest.approx(height_m, abs=5.0)


def test_heights_that_do_not_fit_climb_and_drop_give_way_and_it_is_said():
    start = CourseRow("Start", 0.0, height_m=800.0)
    finish = CourseRow("Finish", 20_000.0, 500.0, 500.0, 1000.0)
    course = course_of(CourseTable((start, finish)), START)
    assert build_profile(course).ascent_m == pytest.approx(500.0, abs=5.0)
    assert "by up to 200 m" in Words().say(course.repairs[0])


def test_legs_without_figures_count_as_level_and_it_is_said():
    rows = (CourseRow("A", 10_000.0, 500.0, 100.0), CourseRow("Finish", 20_000.0))
    assert repairs(*rows)[0] == "Legs without climb and drop count as level: 1."


@pytest.mark.parametrize(
    ("row", "says"),
    [
        (CourseRow("Mill"), "Row 3 (Mill) has no distance"),
        (CourseRow("Mill", 9_000.0), "Row 3 (Mill) lies no further"),
        (CourseRow("Mill", 10_050.0), "lies less than 100 m after"),
        (CourseRow("Mill", 3e6), "further than any race"),
        (CourseRow("Mill", 12_000.0, 3_000.0, 0.0), "steeper than any path"),
        (CourseRow("Mill", 12_000.0, -3.0), "none below 0"),
        (CourseRow("Mill", 12_000.0, float("nan")), "none below 0"),
        (CourseRow("Mill", 12_000.0, height_m=12_000.0), "no path lies at a height"),
        (CourseRow("Mill", 12_000.0, stop_s=1e6), "a stop takes 0 to 24 hours"),
        (CourseRow("Mill", 12_000.0, cutoff=1 * H), "comes before an earlier one"),
        (CourseRow("Mill", 12_000.0, cutoff=1e6), "within 240 hours"),
        (CourseRow("Mill", 12_000.0, cutoff=ClockTime(time(10), 3)), "Check it, its weekday"),
    ],
)
def test_what_cannot_be_is_named_with_its_row(row, says):
    before, finish = CourseRow("Hut", 10_000.0, cutoff=2 * H), CourseRow("Finish", 42_000.0)
    assert says in told(before, row, finish)


def test_a_table_without_a_finish_is_refused():
    assert "needs its finish" in told()


def test_too_many_rows_are_refused():
    assert "more than 300 rows" in told(*(CourseRow("", 200.0 * n) for n in range(1, 302)))


def test_climbs_into_the_sky_are_refused():
    rows = (CourseRow("", 30_000.0 * n, 9_000.0, 0.0) for n in range(1, 4))
    assert "where no path is" in told(*rows)


def test_a_long_name_is_shortened_where_it_is_named():
    assert "…" in told(CourseRow("x" * 300))


def cutoffs(*times, start=START):
    rows = (CourseRow("", 10_000.0 * n, cutoff=c) for n, c in enumerate(times, 1))
    return cutoffs_of(table(*rows), start)[1:]


def test_clock_cutoffs_follow_one_another_over_midnight():
    clocks = [ClockTime(time(h)) for h in (10, 16, 1, 12, 7)]
    assert cutoffs(*clocks) == [4 * H, 10 * H, 19 * H, 30 * H, 49 * H]


def test_a_weekday_decides_which_day_a_clock_cutoff_is_on():
    clocks = [ClockTime(time(10), 5), ClockTime(time(12), 6), None, ClockTime(time(7))]
    assert cutoffs(*clocks) == [4 * H, 30 * H, None, 49 * H]


def test_clock_cutoffs_count_the_hour_that_daylight_saving_skips():
    # Clocks went from 02:00 to 03:00 on 28 March 2027 in France (tz database).
    start = datetime(2027, 3, 27, 18, 0, tzinfo=ZoneInfo("Europe/Paris"))
    assert cutoffs(ClockTime(time(6)), start=start) == [11 * H]


def test_a_clock_cutoff_a_day_late_is_questioned():
    assert "23 h 30" in told(
        CourseRow("A", 10_000.0, cutoff=ClockTime(time(15))),
        CourseRow("B", 12_000.0, cutoff=ClockTime(time(14, 30))),
        CourseRow("Finish", 20_000.0),
    )


def test_the_cutoff_of_the_last_row_is_the_limit_of_the_race():
    rows = (CourseRow("A", 9_000.0), CourseRow("Finish", 20_000.0, cutoff=ClockTime(time(14))))
    assert limit_of(table(*rows), START) == 8 * H
    assert limit_of(table(rows[0]), START) is None


@given(
    st.lists(st.tuples(st.floats(0.05, 19.0), st.booleans()), min_size=1, max_size=8),
    st.integers(0, 6),
)
def test_clock_cutoffs_come_back_as_the_race_times_they_were(steps, day):
    start = START + timedelta(days=day)
    race, elapsed_s, clocks, wanted = Race("", start, 0.0), 0.0, [], []
    for hours, has_weekday in steps:
        elapsed_s += 60.0 * round(hours * 60.0)
        at = race.clock(elapsed_s)
        clocks.append(ClockTime(at.time(), at.weekday() if has_weekday else None))
        wanted.append(elapsed_s)
    assume(elapsed_s <= 240 * H)
    assert cutoffs(*clocks, start=start) == wanted


def test_the_start_named_in_the_table_is_proposed():
    start = CourseRow("Start", 0.0, cutoff=ClockTime(time(18), 4))
    friday = proposed_start(table(CourseRow("Finish", 9_000.0), start=start), START)
    assert friday == datetime(2027, 6, 25, 18, 0, tzinfo=ZoneInfo("Europe/Paris"))


@pytest.mark.parametrize(
    ("clock", "day"),
    [(ClockTime(time(10), 6), 20), (ClockTime(time(4), 6), 19), (ClockTime(time(10)), 19)],
)
def test_without_a_start_the_first_cutoff_tells_the_day(clock, day):
    rows = (CourseRow("A", 9_000.0, cutoff=clock), CourseRow("Finish", 20_000.0))
    assert proposed_start(table(*rows), START) == START.replace(day=day)


def test_text_becomes_a_course():
    text = "Place;km;Climb;Drop;Cutoff\nMill;12.4;410;120;10:30\nFinish;42.2;1500;1790;Sat 23:00"
    course = read_course_table(text, Words(), START, PARIS)
    profile = build_profile(course)
    assert course.stations[0].cutoff_s == 4.5 * H
    assert profile.ascent_m == pytest.approx(1910.0, abs=5.0)
    assert profile.length_m == 42_200.0


def test_hills_are_no_longer_than_five_kilometres_nor_lower_than_need_be():
    profile = build_profile(course_of(table(CourseRow("F", 20_000.0, 800.0, 800.0)), START))
    tops = sum(
        a > 0.0 >= b for a, b in itertools.pairwise(np.sign(np.diff(profile.elevation_m)).tolist())
    )
    assert tops == 4

"""Legs between stations, and what there is to say of one station."""

from datetime import date
from functools import cache

import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.course import ChangeStation
from ultraplanner_gui.edits.stations import SetStop
from ultraplanner_gui.edits.surfaces import PaintSurface
from ultraplanner_gui.engine.legs import LAST_LEG, leg_at, legs_of, light_in, surfaces_in
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.station_figures import checks_at, station_figures, stop_mend
from ultraplanner_gui.plan.course import CutoffKind, Surface

TODAY = date(2026, 11, 25)


@cache
def look():
    return derive(demo_project(TODAY), None, TODAY)


def after(*edits):
    project = look().project
    for edit in edits:
        project = edit.apply(project)
    return derive(project, look(), TODAY)


def with_cutoff(key, by_s, kind=CutoffKind.ARRIVAL, outlook=None):
    """The outlook once a station has a cutoff at so many seconds of race time."""
    outlook = outlook or look()
    station = outlook.project.course.station(key)
    edit = ChangeStation(replace(station, cutoff_s=by_s, cutoff_kind=kind))
    return derive(edit.apply(outlook.project), outlook, TODAY)


def test_legs_and_stops_add_up_to_the_finish():
    legs, course, target = legs_of(look()), look().project.course, look().target

    assert [leg.key for leg in legs] == [*(s.key for s in course.stations), LAST_LEG]
    assert sum(leg.length_m for leg in legs) == pytest.approx(course.length_m)
    spent_s = sum(leg.running_s for leg in legs) + sum(s.stop_s for s in course.stations)
    assert spent_s == pytest.approx(target.finish_s, abs=1e-3)


def test_a_place_lies_in_one_leg_and_a_station_in_the_one_ahead():
    course = look().project.course
    first = course.stations[0]

    assert leg_at(look(), 0.0).key == first.key
    assert leg_at(look(), first.at_m - 1.0).key == first.key
    assert leg_at(look(), first.at_m).key == course.stations[1].key
    assert leg_at(look(), course.length_m).key == LAST_LEG


def test_light_of_a_leg_lasts_as_long_as_the_leg():
    for leg in legs_of(look()):
        assert sum(s for _, s in light_in(look(), leg)) == pytest.approx(leg.running_s, abs=1.0)


def test_what_is_underfoot_is_shared_out_the_most_first():
    leg = legs_of(look())[0]
    painted = after(
        PaintSurface(0.0, leg.end_m, Surface.UNKNOWN),
        PaintSurface(0.0, 0.5 * leg.length_m, Surface.ROCK),
        PaintSurface(0.9 * leg.length_m, leg.end_m + 500.0, Surface.ROAD),
    )

    shares = surfaces_in(painted, legs_of(painted)[0])

    assert [surface for surface, _ in shares] == [Surface.ROCK, Surface.ROAD, Surface.UNKNOWN]
    assert [share for _, share in shares] == pytest.approx([0.5, 0.1, 0.4])


def test_figures_of_a_station_are_those_of_the_section_that_ends_there():
    for section in look().sections:
        if section.station is None:
            continue
        figures = station_figures(look(), section.station)
        assert figures.arrive_s == pytest.approx(section.arrive_s)
        assert figures.leave_s == pytest.approx(section.leave_s)
        assert figures.window_s == section.window_s
        assert figures.to_cutoff_s == section.to_cutoff_s
        assert figures.in_hand_s == section.in_hand_s


def test_no_station_no_figures():
    assert station_figures(look(), "nowhere") is None
    assert checks_at(look(), "nowhere") == ()


def test_a_missed_cutoff_breaks_and_a_wide_one_holds():
    key = look().project.course.stations[3].key
    arrive_s = station_figures(look(), key).arrive_s

    missed = checks_at(with_cutoff(key, arrive_s - 3_600.0), key)
    held = checks_at(with_cutoff(key, arrive_s + 4.0 * 3_600.0), key)

    assert missed[0].state is State.BREAKS
    assert {c.state for c in held} == {State.HOLDS}


def test_the_longest_stop_before_is_shortened_to_make_a_cutoff():
    stations = look().project.course.stations
    key, before = stations[3].key, stations[1].key
    waiting = after(SetStop(before, 5_400.0))
    arrive_s = station_figures(waiting, key).arrive_s
    late = with_cutoff(key, arrive_s - 600.0, outlook=waiting)
    assert checks_at(late, key)[0].state is State.BREAKS

    mend = stop_mend(late, key)

    assert mend.station == before
    assert 0.0 <= mend.stop_s < 5_400.0
    edit = SetStop(mend.station, mend.stop_s)
    mended = derive(edit.apply(late.project), late, TODAY)
    assert station_figures(mended, key).to_cutoff_s > station_figures(late, key).to_cutoff_s + 59.0


def test_ones_own_stop_counts_where_the_cutoff_is_for_leaving():
    key = look().project.course.stations[3].key
    waiting = after(SetStop(key, 7_200.0))
    leave_s = station_figures(waiting, key).leave_s
    late = with_cutoff(key, leave_s - 300.0, CutoffKind.DEPARTURE, waiting)

    assert stop_mend(late, key).station == key


def test_nothing_is_mended_that_holds():
    key = look().project.course.stations[3].key
    arrive_s = station_figures(look(), key).arrive_s

    assert stop_mend(with_cutoff(key, arrive_s + 4.0 * 3_600.0), key) is None

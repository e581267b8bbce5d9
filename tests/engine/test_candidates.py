"""Races side by side."""

from datetime import UTC, date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine.candidates import (
    FASTEST,
    LATE,
    PAST,
    TOO_SOON,
    arrival_at,
    candidate_figures,
    legs_of,
    likely_s,
)
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.candidates import Candidate, CandidateStop
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

HOUR = 3600.0
TODAY = date(2026, 11, 30)
RUNNER = Runner(weekly_m=45e3, longest_m=20e3, easy_mps=2.5)
PROJECT = Project(Race("Mine", datetime(2027, 6, 19, 6, tzinfo=UTC), 14 * HOUR), runner=RUNNER)
RIDGE = Candidate(
    *("ridge", "Ridge", date(2027, 6, 26), 60e3, 3_000.0, 3_000.0, 15 * HOUR),
    stops=(CandidateStop(20e3, 4.5 * HOUR, 1_200.0), CandidateStop(40e3, 9.5 * HOUR, 2_200.0)),
    latitude_deg=46.0,
    longitude_deg=8.0,
    zone="Europe/Zurich",
)
PLAIN = Candidate("plain", "Plain", date(2026, 12, 19), 100e3, 200.0, 200.0, 12 * HOUR)


def figures(*candidates, project=PROJECT):
    project = replace(project, candidates=candidates)
    return candidate_figures(project, derive(project, None, TODAY), TODAY)


def test_a_likely_finish_counts_a_metre_of_climb_as_eight():
    # (60,000 + 8 x 3000) m at 0.8 x 2.5 m/s: Scarf 2007; four fifths are our own choice.
    assert likely_s(60e3, 3_000.0, RUNNER) == 42_000.0
    assert figures(RIDGE)[0].finish_s == 42_000.0


def test_ground_is_given_by_the_kilometre():
    (ridge,) = figures(RIDGE)
    assert (ridge.climb_per_m, ridge.drop_per_m) == (0.05, 0.05)


def test_a_near_long_race_breaks_and_a_far_short_one_holds():
    ridge, plain = figures(RIDGE, PLAIN)
    assert ridge.way.weeks_there == 29
    assert plain.way.weeks_there == 2
    assert plain.state is State.BREAKS
    assert ridge.way.state is State.HOLDS
    assert plain.way.means


def test_legs_are_asked_by_their_flat_equivalent_and_their_time():
    first, second, last = legs_of(RIDGE, 42_000.0, RUNNER)
    assert (first.start_m, first.end_m, last.end_m) == (0.0, 20e3, 60e3)
    assert [leg.flat_m for leg in (first, second, last)] == [29_600.0, 28_000.0, 26_400.0]
    assert first.asked_mps == pytest.approx(29_600 / (4.5 * HOUR))
    assert last.asked_mps == pytest.approx(26_400 / (5.5 * HOUR))
    assert last.arrival_s == pytest.approx(42_000.0)
    assert first.does_mps > second.does_mps > last.does_mps


def test_what_is_late_or_faster_than_likely_is_said():
    early = replace(RIDGE, stops=(CandidateStop(20e3, 3 * HOUR, 1_200.0),))
    (ridge,) = figures(early)
    assert ridge.tightest.end_m == 20e3
    assert ridge.state is State.BREAKS
    assert {LATE, FASTEST} <= {m.template for m in ridge.says}


def test_dark_hours_are_those_of_the_place_and_the_start():
    # Late June at 46 degrees north: six in the morning to a finish at 17:40 is all day.
    assert figures(RIDGE)[0].dark_s == 0.0
    night = replace(RIDGE, start_s=22 * HOUR)
    # Civil dusk 22:01, dawn 04:55 at 46 N 8 E on 26 June, summer time (from memory, +-10 min).
    assert figures(night)[0].dark_s == pytest.approx(6.9 * HOUR, abs=0.3 * HOUR)
    assert figures(replace(RIDGE, latitude_deg=None))[0].dark_s is None


def test_a_past_race_is_said_to_be_past():
    (past,) = figures(replace(PLAIN, day=TODAY))
    assert past.state is State.BREAKS
    assert [m.template for m in past.says] == [PAST]


@given(st.floats(0.0, 1.0), st.floats(1.0, 40.0), st.floats(0.0, 0.4), st.floats(0.1, 6.0))
def test_half_the_work_takes_no_more_than_half_the_time(share, hours, fade, onset):
    runner = Runner(fade=fade, fade_onset_h=onset)
    at_s = arrival_at(share, hours * HOUR, runner)
    assert 0.0 <= at_s <= share * hours * HOUR * (1 + 1e-9) + 1e-6
    assert arrival_at(1.0, hours * HOUR, runner) == pytest.approx(hours * HOUR)


def test_a_later_race_is_held_against_rest_and_build_up():
    # 14 h: hard again on day 16, the next one after 6 weeks (own rule, see test_race_week).
    (state, text) = figures(replace(RIDGE, day=date(2027, 9, 18)))[0].after
    assert text.args[1] == (date(2027, 9, 18) - date(2027, 7, 5)).days // 7 == 10
    assert state is (State.HOLDS if text.args[2] <= 10 else State.STRAINS)
    (far, _) = figures(replace(RIDGE, day=date(2028, 9, 16)))[0].after
    assert far is State.HOLDS
    (near, said) = figures(replace(RIDGE, day=date(2027, 7, 24)))[0].after
    assert near is State.BREAKS
    assert said.template == TOO_SOON
    assert figures(replace(RIDGE, day=date(2027, 6, 1)))[0].after is None

"""The days after are an own rule; its anchor: Millet et al. 2011, 9 to 16 days after 166 km."""

from datetime import date, timedelta
from itertools import pairwise

import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.fuel_before import fuel_countdown
from ultraplanner_gui.engine.race_week import RESTS, countdown, days_after, rest_after
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.logistics import BagLine
from ultraplanner_gui.wording.words import Words

HOUR_S = 3600.0


@pytest.fixture(scope="module")
def project():
    return demo_project(date(2026, 11, 25))


def said(rows):
    return [Words().say(row.text) for row in rows]


def test_countdown_holds_the_fuel_rows_and_runs_to_the_start(project):
    rows = countdown(project)
    assert set(fuel_countdown(project)) < set(rows)
    assert [r.at for r in rows] == sorted(r.at for r in rows)
    assert rows[-1].at == project.race.start
    assert rows[0].at.date() == project.race.day - timedelta(days=10)


def test_every_piece_of_mandatory_kit_is_named(project):
    text = " ".join(said(countdown(project)))
    assert project.race.mandatory_kit
    assert all(piece in text for piece in project.race.mandatory_kit)
    bare = replace(project, race=replace(project.race, mandatory_kit=()))
    assert any("no mandatory list" in line for line in said(countdown(bare)))


def test_runs_of_the_taper_stand_at_their_days(project):
    first = project.race.day - timedelta(days=10)
    runs = [
        s.day
        for s in project.block.sessions
        if s.kind.is_run and s.kind is not Kind.RACE and first <= s.day < project.race.day
    ]
    rows = [r.at.date() for r in countdown(project) if Words().say(r.text).startswith("Run ")]
    assert runs
    assert rows == runs


def test_bag_says_what_goes_into_it(project):
    station = project.course.stations[1]
    own = replace(project.logistics, bag_lines=(BagLine(station.key, "dry socks"),))
    lines = said(countdown(replace(project, logistics=own)))
    assert f"Bag for {station.name}: pack dry socks, close and label it." in lines


def test_driver_is_named_or_asked_for(project):
    named = replace(project, logistics=replace(project.logistics, drives_home="Aunt Jo"))
    nobody = replace(project, logistics=replace(project.logistics, drives_home=""))
    assert any("Aunt Jo drives" in line for line in said(countdown(named)))
    assert any("nobody is named yet" in line for line in said(countdown(nobody)))


def test_longer_race_never_asks_for_less_rest():
    for short, longer in pairwise(RESTS):
        assert short.no_running <= longer.no_running
        assert short.easy_until < longer.easy_until
        assert short.hard_from < longer.hard_from
        assert short.race_weeks < longer.race_weeks
    for rest in RESTS:
        assert rest.no_running[1] < rest.easy_until < rest.hard_from[0] + 1


def test_a_race_of_a_hundred_miles_rests_as_long_as_strength_was_gone():
    rest = rest_after(30.0 * HOUR_S)
    assert rest.easy_until >= 16
    assert rest.hard_from[0] >= 16


@pytest.mark.parametrize(("hours", "days"), [(2, 5), (5, 8), (11.9, 12), (12, 16), (50, 21)])
def test_first_hard_day_by_length(project, hours, days):
    finish_s = hours * HOUR_S
    rows = days_after(project, finish_s)
    (hard,) = [r for r in rows if "hard session" in Words().say(r.text)]
    assert hard.at.date() - project.race.clock(finish_s).date() == timedelta(days=days)


def test_after_a_night_one_is_told_not_to_drive(project):
    short, long = (said(days_after(project, h * HOUR_S)) for h in (6, 22))
    assert not any("Do not drive" in line for line in short)
    assert any("Do not drive" in line for line in long)
    assert any("chest pain" in line for line in short)

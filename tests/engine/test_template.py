from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.first_plan import new_block
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.template import fitting_scale, laid_in, template_of
from ultraplanner_gui.plan.block import Block, Kind, weeks_to_go
from ultraplanner_gui.plan.message import PlanError

TODAY = date(2027, 4, 5)


@pytest.fixture(scope="module")
def demo():
    return demo_project(TODAY)


@pytest.fixture(scope="module")
def template(demo):
    return template_of(demo, "Eighteen weeks")


def other_runner(demo, weeks_later=0, **runner):
    race = replace(demo.race, start=demo.race.start + timedelta(weeks=weeks_later))
    return replace(demo, race=race, block=Block(), runner=replace(demo.runner, **runner))


def by_week(project, block):
    found = {}
    for s in block.sessions:
        weeks = weeks_to_go(s.day, project.race.day, project.first_weekday)
        found.setdefault(weeks, []).append((s.day.weekday(), s.kind, s.distance_m))
    return found


def test_a_template_carries_no_marks_and_no_race(template):
    for session in template.block.sessions:
        assert session.is_open
        assert not session.locked
        assert not session.note
        assert session.kind is not Kind.RACE


def test_weeks_to_go_and_weekdays_stay(demo, template):
    project = other_runner(demo, weeks_later=40)
    laid = laid_in(template, project, TODAY)
    assert laid.left_out == 0
    without_race = replace(laid.block, sessions=template_sessions(laid.block))
    assert by_week(project, without_race) == by_week(demo, template.block)


def template_sessions(block):
    return tuple(s for s in block.sessions if s.kind is not Kind.RACE)


def test_what_lies_before_today_is_left_out(demo, template):
    laid = laid_in(template, other_runner(demo), TODAY)
    assert laid.left_out > 0
    assert min(s.day for s in laid.block.sessions) >= TODAY


def test_what_was_done_stays(demo, template):
    laid = laid_in(template, demo, TODAY)
    done = [s for s in demo.block.sessions if s.done is not None]
    assert done
    assert [s for s in laid.block.sessions if s.done is not None] == done


def test_scaled_distances_keep_the_runners_own_easy_speed(demo, template):
    project = other_runner(demo, 40, weekly_m=0.5 * template.weekly_m, easy_mps=2.0)
    scale = fitting_scale(template, project)
    assert scale == 0.5
    laid = laid_in(template, project, TODAY, scale)
    easy = [s for s in laid.block.sessions if s.kind is Kind.EASY]
    before = [s for s in template.block.sessions if s.kind is Kind.EASY]
    for new, old in zip(easy, before, strict=True):
        assert new.distance_m == pytest.approx(0.5 * old.distance_m, abs=50.0)
        speed = old.distance_m / old.duration_s * 2.0 / template.easy_mps
        assert new.distance_m / new.duration_s == pytest.approx(speed, rel=0.05)


def test_the_rules_are_checked_for_the_new_runner(demo, template):
    weak = other_runner(demo, 40, weekly_m=10_000.0, longest_m=5_000.0)
    laid = laid_in(template, weak, TODAY)
    assert laid.loose
    assert laid.outlook.checks == derive(replace(weak, block=laid.block), None, TODAY).checks


def test_a_block_by_the_rules_comes_back_as_it_was(demo):
    project = other_runner(demo, 40)
    built = new_block(project, derive(project, None, TODAY), TODAY).block
    project = replace(project, block=built)
    back = laid_in(template_of(project, "own"), other_runner(demo, 40), TODAY).block
    assert [s.day for s in back.sessions] == [s.day for s in built.sessions]
    assert back.cutbacks == built.cutbacks


def test_nothing_to_keep_and_nothing_that_fits_are_said(demo, template):
    with pytest.raises(PlanError, match="no build-up"):
        template_of(other_runner(demo), "none")
    past = other_runner(demo, weeks_later=-60)
    with pytest.raises(PlanError, match="Nothing of this template"):
        laid_in(template, past, TODAY)

"""The outlook renews what changed and takes over the rest."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.course import ChangeStation, SetSectionTarget
from ultraplanner_gui.edits.fuel import MoveItem
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.block import Kind

TODAY = date(2026, 11, 25)


@pytest.fixture(scope="module")
def project():
    return demo_project(TODAY)


@pytest.fixture(scope="module")
def outlook(project):
    return derive(project, None, TODAY)


def open_easy_run(project):
    return next(s for s in project.block.sessions if s.is_open and s.kind is Kind.EASY)


def test_a_moved_session_renews_the_build_up_alone(project, outlook):
    run = open_easy_run(project)
    after = derive(MoveSession(run.key, run.day + timedelta(days=7)).apply(project), outlook, TODAY)
    assert after.profile is outlook.profile
    assert after.sections is outlook.sections
    assert after.fuel is outlook.fuel
    assert after.weeks != outlook.weeks


def test_a_moved_item_renews_the_fuel_alone(project, outlook):
    item = project.fuel.items[3]
    after = derive(MoveItem(item.key, item.at_s + 600.0).apply(project), outlook, TODAY)
    assert after.fuel is not outlook.fuel
    assert after.weeks is outlook.weeks
    assert after.target is outlook.target


def test_a_fixed_target_keeps_the_profile(project, outlook):
    section = outlook.sections[2]
    after = derive(
        SetSectionTarget(section.key, section.moving_s + 300.0).apply(project), outlook, TODAY
    )
    assert after.profile is outlook.profile
    assert after.sections[2].moving_s == pytest.approx(section.moving_s + 300.0)
    assert after.target.finish_s == pytest.approx(outlook.target.finish_s)


@pytest.mark.parametrize("change", ["session", "item", "target", "station"])
def test_renewing_gives_what_a_fresh_start_gives(project, outlook, change):
    run, item, section = open_easy_run(project), project.fuel.items[5], outlook.sections[1]
    station = project.course.stations[3]
    edit = {
        "session": MoveSession(run.key, run.day + timedelta(days=1)),
        "item": MoveItem(item.key, item.at_s + 900.0),
        "target": SetSectionTarget(section.key, section.moving_s - 120.0),
        "station": ChangeStation(replace(station, at_m=station.at_m + 500.0, stop_s=1200.0)),
    }[change]
    changed = edit.apply(project)
    renewed, fresh = derive(changed, outlook, TODAY), derive(changed, None, TODAY)
    assert renewed.sections == fresh.sections
    assert renewed.weeks == fresh.weeks
    assert renewed.checks == fresh.checks
    assert renewed.light == fresh.light
    assert renewed.runway == fresh.runway
    assert renewed.fuel.total == fresh.fuel.total
    assert renewed.fuel.legs == fresh.fuel.legs


def test_stops_longer_than_the_race_are_said_and_figures_stay(project):
    station = project.course.stations[0]
    course = project.course.with_station(replace(station, stop_s=23 * 3600.0))
    after = derive(replace(project, course=course), None, TODAY)
    assert after.trouble is not None
    assert len(after.sections) == len(project.course.sections)

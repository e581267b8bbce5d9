from datetime import timedelta
from zoneinfo import ZoneInfo

import pytest
from msgspec.structs import fields, replace

from tests.edits.made import DONE, PROJECT, RACE_DAY, RUN
from ultraplanner_gui.edits.block import MarkDone
from ultraplanner_gui.edits.race import RUNNER_RANGES, ChangeRace, ChangeSetup, check_runner
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Number
from ultraplanner_gui.wording.words import Words

LATER = replace(PROJECT.race, start=PROJECT.race.start + timedelta(days=7), goal_s=33_000.0)


@pytest.mark.parametrize(
    "edit", [ChangeRace(LATER), ChangeSetup(LATER, PROJECT.runner, 0)], ids=["race", "setup"]
)
def test_the_race_of_the_block_goes_with_the_race(edit):
    block = edit.apply(PROJECT).block

    race = block.session("race")
    assert (race.day, race.duration_s) == (RACE_DAY + timedelta(days=7), 33_000.0)
    assert block.without("race") == PROJECT.block.without("race")


def test_race_that_was_run_stays_on_the_day_it_was_run():
    run = MarkDone("race", DONE).apply(PROJECT)

    assert ChangeRace(LATER).apply(run).block is run.block


def test_equal_setup_shares_every_part():
    edit = ChangeSetup(replace(PROJECT.race), replace(PROJECT.runner), PROJECT.first_weekday)

    after = edit.apply(PROJECT)

    assert after == PROJECT
    for part in ("race", "course", "runner", "block", "fuel"):
        assert getattr(after, part) is getattr(PROJECT, part)


def test_another_zone_at_the_same_instant_is_taken_over():
    elsewhere = PROJECT.race.start.astimezone(ZoneInfo("Europe/Paris"))
    race = replace(PROJECT.race, start=elsewhere)

    assert ChangeRace(race).apply(PROJECT).race.start.tzinfo is elsewhere.tzinfo


@pytest.mark.parametrize("year", [1899, 2201])
def test_race_in_a_year_no_file_would_take_back_is_refused(year):
    race = replace(PROJECT.race, start=PROJECT.race.start.replace(year=year))

    with pytest.raises(PlanError, match="between the years"):
        ChangeRace(race).apply(PROJECT)


def test_every_figure_of_the_runner_has_a_range_that_holds_its_own_default():
    figures = {f.name for f in fields(Runner) if f.type == Number}

    assert figures == set(RUNNER_RANGES)
    check_runner(Runner())


@pytest.mark.parametrize("field", RUNNER_RANGES)
@pytest.mark.parametrize("end", [0, 1])
def test_runner_reaches_the_ends_of_each_range_and_no_further(field, end):
    value = RUNNER_RANGES[field][end]
    beyond = value + (1.0 if end else -1.0)

    check_runner(replace(Runner(), **{field: value}))
    with pytest.raises(PlanError) as refusal:
        check_runner(replace(Runner(), **{field: beyond}))
    assert "_" not in Words().say(refusal.value.message)


def test_refused_figures_are_said_in_the_users_units():
    with pytest.raises(PlanError) as refusal:
        check_runner(replace(Runner(), weekly_m=500_000.0))
    with pytest.raises(PlanError) as too_slow:
        check_runner(replace(Runner(), easy_mps=0.5))

    assert Words().say(refusal.value.message) == "A usual week lies between 0 m and 400 km."
    # 1 m/s is 16:40 a kilometre, 6 m/s is 1000 s / 6 = 2:47
    assert Words().say(too_slow.value.message) == "Easy pace lies between 2:47 /km and 16:40 /km."


@pytest.mark.parametrize("free", [(), (3600.0,) * 6, (3600.0,) * 8, (86_401.0,) * 7])
def test_free_time_is_given_for_seven_days(free):
    with pytest.raises(PlanError, match="24 hours a day"):
        check_runner(replace(Runner(), available_s=free))


@pytest.mark.parametrize("weekday", [-1, 7])
def test_weekday_is_one_of_seven(weekday):
    with pytest.raises(PlanError, match="seven days"):
        check_runner(replace(Runner(), long_day=weekday))
    with pytest.raises(PlanError, match="seven days"):
        ChangeSetup(PROJECT.race, PROJECT.runner, weekday).apply(PROJECT)


def test_training_stays_put_when_the_race_moves():
    assert ChangeRace(LATER).apply(PROJECT).block.session("run") is RUN

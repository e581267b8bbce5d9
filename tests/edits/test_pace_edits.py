import pytest
from msgspec.structs import replace

from tests.edits.made import PAST_RUNS, PROJECT, WEATHER
from ultraplanner_gui.edits.pace import (
    SetConditions,
    SetPastRuns,
    ShapeTarget,
    UseAsGoal,
    check_weather,
    without,
)
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.conditions import Conditions, Effect
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.pacing import Pacing


@pytest.mark.parametrize(
    "edit",
    [
        ShapeTarget(Pacing()),
        SetConditions(Conditions(), PROJECT.runner.night_loss),
        SetPastRuns(()),
    ],
)
def test_what_is_so_already_changes_nothing(edit):
    assert edit.apply(PROJECT) is PROJECT


@pytest.mark.parametrize(
    "typed",
    [
        {"coldest_c": 27.0},
        {"warmest_c": 61.0},
        {"coldest_c": -61.0},
        {"humidity_percent": 100.5},
        {"valley_m": 7_000.0},
        {"coldest_h": 15.0},
        {"warmest_h": 25.0},
        {"coldest_h": 0.0, "warmest_h": 24.0},
    ],
)
def test_weather_that_cannot_be_is_refused(typed):
    with pytest.raises(PlanError) as refusal:
        check_weather(replace(WEATHER, **typed))
    assert len(str(refusal.value)) <= 200


def test_effect_is_switched_off_and_on_again():
    off = without(Conditions(), Effect.NIGHT, is_on=False)

    assert off.off == (Effect.NIGHT,)
    assert without(off, Effect.ALTITUDE, is_on=False).off == (Effect.ALTITUDE, Effect.NIGHT)
    assert without(off, Effect.NIGHT, is_on=True) == Conditions()


def test_predicted_finish_becomes_goal_with_its_spread_and_moves_the_race_session():
    after = UseAsGoal(27_000.0, 0.08, PAST_RUNS).apply(PROJECT)

    assert (after.race.goal_s, after.runner.finish_spread) == (27_000.0, 0.08)
    assert after.runner.past_runs == PAST_RUNS
    race = next(s for s in after.block.sessions if s.kind is Kind.RACE)
    assert race.duration_s == 27_000.0


def test_predicted_finish_as_goal_that_no_race_can_have_is_refused():
    with pytest.raises(PlanError, match="finish time"):
        UseAsGoal(60.0, 0.08, PAST_RUNS).apply(PROJECT)

"""Edits of health, wishes, days away, grounds, candidates, and mends."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from tests.edits.made import HILL, LOOP, OTHER, PLANNED, PROJECT, RUN
from ultraplanner_gui.edits.race import ChangeSetup
from ultraplanner_gui.edits.training import (
    AddCandidate,
    AddGround,
    ChangeCandidate,
    ChangeGround,
    MendBlock,
    RemoveCandidate,
    RemoveGround,
    SetAway,
    SetHealth,
    SetWishes,
)
from ultraplanner_gui.engine.check import Mend
from ultraplanner_gui.plan.candidates import CandidateStop
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.plan.message import PlanError, message
from ultraplanner_gui.plan.runner import Health
from ultraplanner_gui.plan.wishes import Away, Wishes

UNASKED = SetHealth(Health.NOT_ASKED).apply(PROJECT)
SAYS = message("Shorter.")


def refused(edit, project=PROJECT):
    with pytest.raises(PlanError) as refusal:
        edit.apply(project)
    return str(refusal.value)


@pytest.mark.parametrize("wishes", [Wishes(fasted=1), Wishes(heat_days=True)])
def test_fasted_runs_and_heat_days_need_the_questions_on_health(wishes):
    assert SetWishes(wishes).apply(PROJECT).runner.wishes == wishes
    assert "health" in refused(SetWishes(wishes), UNASKED)
    runner = replace(UNASKED.runner, wishes=wishes)
    assert "health" in refused(ChangeSetup(PROJECT.race, runner, 0), UNASKED)


@pytest.mark.parametrize("health", [Health.NOT_ASKED, Health.ASK_FIRST])
def test_an_answer_that_asks_for_a_doctor_switches_them_off(health):
    wishing = SetWishes(Wishes(fasted=2, heat_days=True, strength=1)).apply(PROJECT)
    after = SetHealth(health).apply(wishing)
    assert after.runner.health is health
    assert after.runner.wishes == Wishes(strength=1)


@pytest.mark.parametrize(
    "edit",
    [
        SetHealth(Health.CLEAR),
        SetWishes(Wishes()),
        SetAway(()),
        ChangeGround(HILL),
        ChangeCandidate(OTHER),
        MendBlock(Mend(SAYS)),
        MendBlock(Mend(SAYS, (PLANNED,), PROJECT.block.cutbacks)),
    ],
    ids=lambda edit: type(edit).__name__,
)
def test_what_changes_nothing_gives_the_project_itself(edit):
    assert edit.apply(PROJECT) is PROJECT


@pytest.mark.parametrize(
    "wishes",
    [
        Wishes(cutback_every=2),
        Wishes(strength=5),
        Wishes(cross=-1),
        Wishes(strength_s=60.0),
        Wishes(cross_s=20_000.0),
        Wishes(fasted=3),
    ],
)
def test_wishes_out_of_range_are_refused(wishes):
    assert refused(SetWishes(wishes))


def test_days_away_are_kept_in_order():
    late = Away(date(2027, 5, 1), date(2027, 5, 3))
    early = Away(date(2027, 4, 1), date(2027, 4, 1), 1_800.0, "night shift")
    assert SetAway((late, early)).apply(PROJECT).runner.away == (early, late)
    assert refused(SetAway((replace(late, last=date(2027, 4, 30)),)))
    assert "60" in refused(SetAway((late,) * 61))


def test_grounds_come_and_go_by_their_key():
    added = AddGround(replace(HILL, name="Other hill")).apply(PROJECT)
    assert [g.key for g in added.runner.grounds] == ["hill", "loop", "hill-2"]
    assert RemoveGround("hill-2").apply(added).runner.grounds == (HILL, LOOP)
    gone = RemoveGround("hill").apply(PROJECT)
    assert refused(ChangeGround(HILL), gone)
    assert refused(RemoveGround("hill"), gone)


@pytest.mark.parametrize(
    "ground",
    [
        GroundAtHand("", GroundKind.HILL, "No height", 400.0),
        GroundAtHand("", GroundKind.STAIRS, "Steeper than upright", 10.0, 12.0),
        GroundAtHand("", GroundKind.TREADMILL, least_gradient=0.1, most_gradient=0.05),
        GroundAtHand("", GroundKind.TREADMILL, most_gradient=0.9),
        replace(LOOP, elevation_m=(1.0,)),
        replace(LOOP, distance_m=(0.0, 500.0, 400.0)),
    ],
)
def test_ground_that_cannot_be_is_refused(ground):
    assert refused(AddGround(ground))


def test_candidates_come_and_go_by_their_key():
    added = AddCandidate(replace(OTHER, name="Third")).apply(PROJECT)
    assert [c.key for c in added.candidates] == ["other", "other-2"]
    assert RemoveCandidate("other").apply(PROJECT).candidates == ()
    assert refused(ChangeCandidate(replace(OTHER, key="gone")))


@pytest.mark.parametrize(
    "change",
    [
        {"distance_m": 500.0},
        {"climb_m": -1.0},
        {"limit_s": 60.0},
        {"start_s": 86_400.0},
        {"zone": "Nowhere/Else"},
        {"latitude_deg": 91.0},
        {"day": date(1800, 1, 1)},
        {"stops": (CandidateStop(70_000.0, 9_000.0),)},
        {"stops": (CandidateStop(20_000.0, 9_000.0), CandidateStop(10_000.0, 10_000.0))},
        {"stops": (CandidateStop(20_000.0, 50_000.0),)},
    ],
    ids=str,
)
def test_a_candidate_out_of_range_is_refused(change):
    assert refused(ChangeCandidate(replace(OTHER, **change)))


def test_a_mend_changes_sessions_and_cutbacks_at_once():
    shorter = replace(PLANNED, distance_m=5_000.0, day=PLANNED.day + timedelta(days=1))
    after = MendBlock(Mend(SAYS, (shorter,), (3,))).apply(PROJECT)
    assert after.block.session(PLANNED.key) == shorter
    assert after.block.cutbacks == (3,)
    assert after.runner is PROJECT.runner


def test_a_mend_leaves_what_is_run_and_the_race_alone():
    race = PROJECT.block.sessions[-1]
    for session in (replace(RUN, distance_m=1_000.0), replace(race, distance_m=1_000.0)):
        assert "open sessions" in refused(MendBlock(Mend(SAYS, (session,))))

"""The rules the build-up is held against."""

from datetime import UTC, date, datetime, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.training import MendBlock
from ultraplanner_gui.engine.block import BlockRequest, build_block
from ultraplanner_gui.engine.checks import block_checks
from ultraplanner_gui.engine.checks_weeks import LEVEL_SHARE
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.runway import RaceAsks, race_asks
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import week_figures, yardstick_of
from ultraplanner_gui.plan.block import Block, Done, Kind, Session
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Health, Level, Runner
from ultraplanner_gui.plan.wishes import Ramp, Yardstick

HOUR = 3600.0
RACE = Race("Race", datetime(2027, 5, 22, 6, tzinfo=UTC), 14 * HOUR)
MONDAY = date(2027, 5, 17)
HOLDS, STRAINS, BREAKS = State.HOLDS, State.STRAINS, State.BREAKS


def on(weeks_before, weekday, km, kind=Kind.EASY, **more):
    day = MONDAY + timedelta(days=weekday - 7 * weeks_before)
    more.setdefault("duration_s", km * 400.0)
    return Session(f"{day}-{kind.name}-{km}", day, kind, km * 1000.0, **more)


def project(*sessions, first_week=10, cutbacks=(), taper_weeks=2, weekly=40, longest=20, fuel=0.0):
    block = Block(tuple(sorted(sessions, key=lambda s: s.day)), first_week, cutbacks, taper_weeks)
    runner = Runner(weekly_m=weekly * 1000.0, longest_m=longest * 1000.0)
    return Project(RACE, runner=runner, block=block, fuel=FuelPlan(carb_g_per_h=fuel))


def checks(plan, rule=None, asks=None):
    found = block_checks(plan, week_figures(plan), asks)
    return [c for c in found if rule is None or c.rule == rule]


def states(plan, rule, asks=None):
    return [c.state for c in checks(plan, rule, asks)]


def week(to_go, km, **more):
    """Return a week of four equal easy runs."""
    return [on(to_go, weekday, km / 4, **more) for weekday in (0, 2, 4, 6)]


def test_an_empty_block_has_no_checks():
    assert checks(project()) == []


@pytest.mark.parametrize(
    ("km", "state"),
    [(44, HOLDS), (44.004, STRAINS), (48, STRAINS), (48.2, BREAKS), (10, HOLDS)],
)
def test_ramp_is_ten_percent_of_the_last_loading_week(km, state):
    plan = project(*week(10, 40), *week(9, km), first_week=10)
    assert states(plan, "ramp")[1] is state


def test_ramp_looks_past_a_cutback():
    plan = project(*week(10, 40), *week(9, 30), *week(8, 44), cutbacks=(9,))
    assert states(plan, "ramp")[:2] == [HOLDS, HOLDS]


def test_ramp_says_that_it_is_custom():
    check = checks(project(*week(10, 60)), "ramp")[0]
    assert check.state is BREAKS
    assert "Buist et al. 2008" in str(check.source)
    assert [round(a.value) for a in check.text.args] == [60_000, 50, 40_000]
    assert check.weeks == (10,)
    assert len(check.sessions) == 4


@pytest.mark.parametrize(
    ("km", "state"), [(24, HOLDS), (32, HOLDS), (22, STRAINS), (34, STRAINS), (18, BREAKS)]
)
def test_a_cutback_takes_sixty_to_eighty_percent(km, state):
    # Common practice, no source.
    plan = project(*week(10, 40), *week(9, km), cutbacks=(9,))
    assert states(plan, "cutback")[0] is state


def test_a_week_after_a_long_tune_up_race_may_be_very_small():
    race = on(10, 6, 40, Kind.TUNE_UP, duration_s=5 * HOUR)
    plan = project(race, *week(9, 8), cutbacks=(9,))
    assert states(plan, "cutback")[0] is HOLDS


def test_a_fourth_loading_week_strains_and_a_fifth_breaks():
    plan = project(*(s for n in range(10, 5, -1) for s in week(n, 40)), cutbacks=(5, 4, 3, 2))
    assert states(plan, "cutback")[:2] == [STRAINS, BREAKS]
    assert [c.weeks for c in checks(plan, "cutback")[:2]] == [(7,), (6,)]


def test_a_missed_week_stands_for_a_cutback():
    missed = [replace(s, missed=True) for s in week(8, 40)]
    plan = project(
        *week(10, 40), *week(9, 40), *missed, *week(7, 40), *week(6, 40), cutbacks=(5, 4, 3, 2)
    )
    assert len([c for c in checks(plan, "cutback") if c.weeks[0] > 5]) == 0


@pytest.mark.parametrize(("km", "state"), [(22, HOLDS), (22.01, BREAKS)])
def test_a_single_run_grows_by_ten_percent_at_most(km, state):
    # Frandsen et al. 2025, Br J Sports Med 59:1203-1210.
    plan = project(on(10, 0, 20), on(9, 0, km, Kind.LONG), longest=20)
    found = checks(plan, "single run")[-1]
    assert found.state is state
    assert "Frandsen et al. 2025" in str(found.source)


def test_a_run_thirty_days_before_is_a_yardstick_and_one_of_thirty_one_is_not():
    first = date(2027, 1, 4)
    past = Session("past", first, Kind.LONG, 30_000.0, 3 * HOUR)
    small = Session("small", first + timedelta(20), Kind.EASY, 10_000.0, HOUR)
    for days, state in ((30, HOLDS), (31, BREAKS)):
        now = Session("now", first + timedelta(days), Kind.LONG, 30_000.0, 3 * HOUR)
        plan = project(past, small, now, longest=28)
        assert states(plan, "single run")[-1] is state


def test_the_runners_own_longest_run_counts_at_first():
    assert states(project(on(10, 0, 22, Kind.LONG), longest=20), "single run") == [HOLDS]
    assert states(project(on(10, 0, 22, Kind.LONG), longest=19), "single run") == [BREAKS]
    assert states(project(on(10, 0, 22, Kind.LONG), longest=0), "single run") == []


def test_two_runs_on_one_day_are_no_yardstick_for_each_other():
    plan = project(on(10, 0, 10), on(9, 0, 15, Kind.LONG), on(9, 0, 16, Kind.LONG), longest=10)
    assert states(plan, "single run") == [BREAKS, BREAKS]


def test_what_was_done_counts_not_what_was_planned():
    done = replace(on(10, 0, 20), done=Done(10_000.0, HOUR))
    plan = project(done, on(9, 0, 20, Kind.LONG), longest=10)
    assert states(plan, "single run") == [BREAKS]
    assert states(project(replace(on(10, 0, 30), missed=True), longest=10), "single run") == []


def test_the_race_itself_is_exempt():
    plan = project(on(1, 0, 10), on(0, 5, 100, Kind.RACE), longest=10)
    assert states(plan, "single run") == []


def test_an_easy_run_shows_only_when_it_is_too_long():
    plan = project(on(10, 0, 10), on(10, 2, 25), longest=20)
    (check,) = checks(plan, "single run")
    assert check.state is BREAKS
    assert check.sessions == (plan.block.sessions[1].key,)


def test_hard_days_side_by_side_break():
    plan = project(on(10, 4, 10, Kind.TEMPO), on(10, 5, 20, Kind.LONG))
    (check,) = checks(plan, "hard days")
    assert check.state is BREAKS
    assert len(check.sessions) == 2


@pytest.mark.parametrize(
    ("sessions", "state"),
    [
        ([(5, Kind.LONG), (6, Kind.SECOND_LONG)], HOLDS),
        ([(4, Kind.LONG), (5, Kind.SECOND_LONG), (6, Kind.TEMPO)], BREAKS),
        ([(4, Kind.TEMPO), (5, Kind.SECOND_LONG)], BREAKS),
        ([(4, Kind.TEMPO), (4, Kind.HILLS)], BREAKS),
        ([(2, Kind.TEMPO), (4, Kind.HILLS), (5, Kind.RECOVERY)], HOLDS),
        ([(4, Kind.STRENGTH), (5, Kind.LONG)], HOLDS),
    ],
)
def test_only_a_meant_back_to_back_joins_two_heavy_days(sessions, state):
    plan = project(*(on(10, weekday, 8, kind) for weekday, kind in sessions))
    assert states(plan, "hard days") == [state]


def test_a_hard_day_before_the_race_breaks():
    plan = project(on(0, 4, 5, Kind.TEMPO), on(0, 5, 100, Kind.RACE))
    assert states(plan, "hard days") == [BREAKS]


@pytest.mark.parametrize(
    ("long_km", "kind", "state"),
    [
        (20, Kind.LONG, HOLDS),
        (22, Kind.LONG, STRAINS),
        (25, Kind.LONG, BREAKS),
        (25, Kind.REHEARSAL, STRAINS),
        (25, Kind.TUNE_UP, STRAINS),
    ],
)
def test_the_long_run_has_its_share_of_the_week(long_km, kind, state):
    # Half of the week at the usual level, as races ask: own threshold.
    rest = [on(10, weekday, (40 - long_km) / 4) for weekday in (0, 1, 2, 3)]
    assert states(project(*rest, on(10, 5, long_km, kind)), "long-run share") == [state]


@pytest.mark.parametrize(("level", "state"), [(Level.FLOOR, HOLDS), (Level.AMBITIOUS, STRAINS)])
def test_who_runs_more_in_all_is_left_less_to_the_long_run(level, state):
    rest = [on(10, weekday, 5) for weekday in (0, 1, 2, 3)]
    plan = project(*rest, on(10, 5, 20, Kind.LONG))
    plan = replace(plan, runner=replace(plan.runner, level=level))
    assert states(plan, "long-run share") == [state]


def test_the_share_at_each_level_is_what_races_ask():
    # Longest run over greatest week of the table, common practice: 0.58, 0.49 and 0.43 on average.
    for level, share in LEVEL_SHARE.items():
        asks = [race_asks(km * 1e3, h * HOUR, level) for km, h in ((50, 7), (100, 15), (160, 27))]
        mean = sum(a.longest_m / a.peak_week_m for a in asks) / 3
        assert share == pytest.approx(mean, abs=0.015)


def test_three_runs_a_week_leave_more_to_the_long_run():
    rest = [on(10, weekday, 10) for weekday in (1, 3)]
    assert states(project(*rest, on(10, 5, 18, Kind.LONG)), "long-run share") == [HOLDS]


@pytest.mark.parametrize(
    ("kms", "state"),
    # Twelve days before a Saturday race; 41-60 %: Bosquet et al. 2007.
    [
        ((26, 12), HOLDS),
        ((36, 20), BREAKS),
        ((30, 16), STRAINS),
        ((15, 8), STRAINS),
        ((0, 8), BREAKS),
    ],
)
def test_the_taper_cuts_the_daily_mean(kms, state):
    runs = [*week(2, 40), *week(1, kms[0]), on(0, 1, kms[1]), on(0, 5, 100, Kind.RACE)]
    (check,) = checks(project(*runs, first_week=2), "taper")
    assert check.state is state
    assert check.weeks == (1, 0)
    cut = 1 - sum(kms) / 12 * 7 / 40
    assert check.text.args[1].value == pytest.approx(100 * cut)


def downhill(*days_before, drop_m=2000.0):
    runs = [
        Session(f"d{n}", RACE.day - timedelta(days=n), Kind.DOWNHILL, 8000.0, HOUR)
        for n in days_before
    ]
    race = on(0, 5, 100, Kind.RACE, drop_m=drop_m)
    return project(*runs, race)


def test_downhill_runs_are_three_weeks_apart_at_most():
    assert states(downhill(56, 35, 14), "downhill") == [HOLDS, HOLDS, HOLDS]
    assert states(downhill(57, 35, 14), "downhill") == [STRAINS, HOLDS, HOLDS]
    assert states(downhill(64, 35, 14), "downhill") == [BREAKS, HOLDS, HOLDS]


@pytest.mark.parametrize(
    ("days", "state"), [(21, HOLDS), (10, HOLDS), (9, STRAINS), (22, STRAINS), (5, BREAKS)]
)
def test_the_last_downhill_run_is_ten_to_twenty_one_days_out(days, state):
    assert states(downhill(days), "downhill") == [state]


def test_a_race_that_drops_little_asks_no_downhill_runs():
    assert states(downhill(drop_m=1000.0), "downhill") == []
    assert states(downhill(drop_m=1001.0), "downhill") == [BREAKS]


def tune_up(days_before, hours, *after):
    race = Session(
        "t", RACE.day - timedelta(days=days_before), Kind.TUNE_UP, 30_000.0, hours * HOUR
    )
    later = [
        Session(f"h{n}", race.day + timedelta(days=n), Kind.TEMPO, 8000.0, HOUR) for n in after
    ]
    return project(race, *later)


def test_a_tune_up_race_keeps_its_distance_its_length_and_its_rest():
    # Common practice, no source; the goal is 14 hours.
    assert states(tune_up(28, 5), "tune-up race") == [HOLDS, HOLDS, HOLDS]
    assert states(tune_up(20, 5), "tune-up race")[0] is STRAINS
    assert states(tune_up(12, 5), "tune-up race")[0] is BREAKS
    assert states(tune_up(28, 7), "tune-up race")[0] is HOLDS
    assert states(tune_up(27, 7), "tune-up race")[0] is STRAINS
    assert states(tune_up(40, 8), "tune-up race")[1] is STRAINS
    assert states(tune_up(40, 9), "tune-up race")[1] is BREAKS


def test_a_hard_day_soon_after_a_tune_up_race_is_named():
    assert states(tune_up(40, 5, 8), "tune-up race")[2] is HOLDS
    assert states(tune_up(40, 5, 6), "tune-up race")[2] is STRAINS
    early = checks(tune_up(40, 5, 3), "tune-up race")[2]
    assert early.state is BREAKS
    assert early.sessions == ("t", "h3")


@pytest.mark.parametrize(("rate", "state"), [(60, HOLDS), (50, STRAINS), (40, BREAKS), (0, BREAKS)])
def test_practice_reaches_the_race_rate_in_the_last_weeks(rate, state):
    plan = project(
        on(5, 5, 20, Kind.LONG, carb_g_per_h=50.0),
        on(2, 5, 15, Kind.LONG, carb_g_per_h=rate),
        fuel=60.0,
    )
    assert states(plan, "practice carbs")[-1] is state


def test_a_jump_in_practice_is_named():
    plan = project(*(on(n, 5, 20, carb_g_per_h=rate) for n, rate in ((5, 40), (4, 50), (3, 80))))
    (jump,) = checks(plan, "practice carbs")
    assert jump.state is STRAINS
    assert [a.value for a in jump.text.args] == [80, 50]


def test_the_greatest_week_and_run_are_held_against_what_the_race_asks():
    asks = RaceAsks(50e3, 6 * HOUR, 25e3, 3 * HOUR, None)
    plan = project(*week(10, 40), on(9, 5, 24.5, Kind.LONG))
    assert states(plan, "what the race asks", asks) == [STRAINS, HOLDS]


def built():
    runner = Runner(
        weekly_m=60e3,
        longest_m=24e3,
        available_s=(0, 5400, 5400, 5400, 0, 8 * HOUR, 3 * HOUR),
        level=Level.USUAL,
    )
    request = BlockRequest(
        date(2027, 1, 4), RACE.day, 80e3, 3000, 3000, RACE.goal_s, runner, dark_s=3 * HOUR
    )
    plan = build_block(request)
    fuel = FuelPlan(carb_g_per_h=request.carb_target_g_per_h)
    return Project(RACE, runner=runner, block=plan.block, fuel=fuel), plan.runway.asks


def test_a_built_block_breaks_no_rule():
    plan, asks = built()
    found = checks(plan, asks=asks)
    assert [str(c.text) for c in found if c.state is BREAKS] == []
    assert {c.rule for c in found} == {
        "ramp",
        "cutback",
        "single run",
        "hard days",
        "long-run share",
        "taper",
        "downhill",
        "practice carbs",
        "what the race asks",
        "climb match",
        "late descent",
    }


def test_checks_come_in_order_of_time_and_name_what_they_are_about():
    plan, asks = built()
    found = checks(plan, asks=asks)
    weeks = [c.weeks[0] for c in found if c.weeks]
    assert weeks == sorted(weeks, reverse=True)
    keys = {s.key for s in plan.block.sessions}
    assert all(set(c.sessions) <= keys for c in found)
    assert all(c.sessions for c in found if c.weeks)
    assert all(str(c.source) for c in found)


def mended(plan, check):
    return MendBlock(check.mend).apply(plan)


def test_a_mend_of_the_ramp_takes_the_excess_off_easy_runs():
    plan = project(*week(10, 50), first_week=10)
    check = checks(plan, "ramp")[0]
    assert check.state is BREAKS
    after = mended(plan, check)
    assert states(after, "ramp")[0] is HOLDS
    assert sum(s.distance_m for s in after.block.sessions) > 0.97 * 44_000


def test_a_mend_of_a_single_run_makes_it_as_long_as_it_may_be():
    plan = project(on(10, 0, 20), on(9, 0, 26, Kind.LONG), longest=20)
    (broken,) = [c for c in checks(plan, "single run") if c.state is BREAKS]
    after = mended(plan, broken)
    assert BREAKS not in states(after, "single run")
    assert after.block.sessions[1].distance_m == 22_000
    assert after.block.sessions[1].duration_s < plan.block.sessions[1].duration_s


def test_a_mend_of_a_cutback_overdue_makes_one():
    plan = project(*(s for n in range(10, 6, -1) for s in week(n, 40)), cutbacks=(5,))
    overdue = checks(plan, "cutback")[0]
    assert (overdue.state, overdue.weeks) == (STRAINS, (7,))
    after = mended(plan, overdue)
    assert after.block.cutbacks == (7, 5)
    assert [c.state for c in checks(after, "cutback") if c.weeks == (7,)] == [HOLDS]


def test_a_cutback_every_third_week_is_due_a_week_sooner():
    plan = project(*(s for n in range(10, 7, -1) for s in week(n, 40)), cutbacks=(6,))
    assert [c for c in checks(plan, "cutback") if c.weeks == (8,)] == []
    wishes = replace(plan.runner.wishes, cutback_every=3)
    plan = replace(plan, runner=replace(plan.runner, wishes=wishes))
    assert [c.state for c in checks(plan, "cutback") if c.weeks == (8,)] == [STRAINS]


def test_the_gentler_ramp_allows_no_growth_right_after_a_cutback():
    plan = project(*week(10, 40), *week(9, 30), *week(8, 43), cutbacks=(9,))
    assert states(plan, "ramp")[:2] == [HOLDS, HOLDS]
    wishes = replace(plan.runner.wishes, ramp=Ramp.BACK)
    plan = replace(plan, runner=replace(plan.runner, wishes=wishes))
    assert states(plan, "ramp")[:2] == [HOLDS, STRAINS]


def test_a_mend_of_hard_days_that_meet_finds_an_empty_day():
    plan = project(on(9, 0, 8, Kind.HILLS), on(9, 1, 8, Kind.TEMPO), on(9, 5, 20, Kind.LONG))
    (check,) = checks(plan, "hard days")
    after = mended(plan, check)
    assert states(after, "hard days") == [HOLDS]
    assert [s.day.weekday() for s in after.block.sessions] == [0, 2, 5]


def test_a_locked_session_gets_no_mend():
    plan = project(on(10, 0, 20), on(9, 0, 26, Kind.LONG, locked=True), longest=20)
    assert [c.mend for c in checks(plan, "single run") if c.state is BREAKS] == [None]


def test_hours_and_drop_of_one_run_are_held_against_the_thirty_days_before():
    known = {"longest_s": 2 * HOUR, "longest_drop_m": 600.0}
    long = on(10, 5, 20, Kind.LONG, duration_s=2.5 * HOUR, drop_m=800.0)
    plan = project(long)
    assert states(plan, "hours of one run") == states(plan, "drop of one run") == []
    plan = replace(plan, runner=replace(plan.runner, **known))
    assert states(plan, "hours of one run") == states(plan, "drop of one run") == [STRAINS]


@pytest.mark.parametrize(("drop_m", "state"), [(600, HOLDS), (400, STRAINS)])
def test_a_late_session_drops_a_quarter_of_what_the_race_drops(drop_m, state):
    # Own rule.
    race = on(0, 5, 100, Kind.RACE, drop_m=2_400.0)
    plan = project(on(3, 5, 30, Kind.DOWNHILL, drop_m=float(drop_m)), race)
    assert states(plan, "late descent") == [state]


def test_the_climb_of_the_last_loading_weeks_is_held_against_the_races():
    race = on(0, 5, 100, Kind.RACE, climb_m=4_000.0)
    for climb_m, state in ((360.0, HOLDS), (200.0, STRAINS), (100.0, BREAKS)):
        plan = project(*week(5, 40, climb_m=climb_m), *week(4, 40, climb_m=climb_m), race)
        (check,) = checks(plan, "climb match")
        assert check.state is state
        assert check.text.args[1].value == pytest.approx(climb_m / 10_000)


def test_dark_hours_ask_two_night_runs_and_the_mend_gives_them():
    race = on(0, 5, 100, Kind.RACE)
    plan = project(*week(5, 40), *week(4, 40), race)
    figures = week_figures(plan)
    dark = [c for c in block_checks(plan, figures, None, 5 * HOUR) if c.rule == "dark hours"]
    assert [c.state for c in dark] == [STRAINS]
    after = mended(plan, dark[0])
    again = block_checks(after, week_figures(after), None, 5 * HOUR)
    assert [c.state for c in again if c.rule == "dark hours"] == [HOLDS]
    assert not [c for c in block_checks(plan, figures, None, HOUR) if c.rule == "dark hours"]


def test_fasted_runs_are_easy_short_apart_and_only_for_the_healthy():
    one = on(9, 0, 8, fasted=True, duration_s=HOUR)
    plan = project(one, on(9, 2, 8, fasted=True, duration_s=HOUR))
    assert states(plan, "fasted runs") == [BREAKS]
    clear = replace(plan.runner, health=Health.CLEAR)
    assert states(replace(plan, runner=clear), "fasted runs") == [HOLDS]
    close = replace(project(one, on(9, 1, 8, fasted=True, duration_s=HOUR)), runner=clear)
    (check,) = checks(close, "fasted runs")
    assert check.state is BREAKS
    assert states(mended(close, check), "fasted runs") == [HOLDS]


def test_a_wish_for_the_race_rate_is_met_by_the_mend():
    runs = [on(n, 5, 20, Kind.LONG, carb_g_per_h=50.0) for n in (3, 2, 1)]
    plan = project(*runs, fuel=60.0)
    late = [c for c in checks(plan, "practice carbs") if len(c.weeks) > 1]
    assert [c.state for c in late] == [STRAINS]
    assert [c.state for c in checks(mended(plan, late[0]), "practice carbs")][-1] is HOLDS


def test_the_ramp_is_measured_by_the_yardstick_chosen():
    # 40 and 44 km hold; their hours grow by 20 %, and so does the climb counted in.
    plan = project(*week(10, 40, duration_s=HOUR), *week(9, 44, duration_s=1.2 * HOUR))
    assert states(plan, "ramp")[:2] == [HOLDS, HOLDS]
    by_hours = wishing(plan, yardstick=Yardstick.TIME)
    assert states(by_hours, "ramp")[:1] == [STRAINS]
    plan = project(*week(10, 40, climb_m=100.0), *week(9, 44, climb_m=250.0))
    # 43.2 and 52 km flat-equivalent: Scarf 2007.
    check = checks(wishing(plan, yardstick=Yardstick.FLAT), "ramp")[0]
    assert check.state is BREAKS
    assert [a.value for a in check.text.args] == pytest.approx(
        [52_000, 100 * (52 / 43.2 - 1), 43_200]
    )


def test_a_steep_race_is_measured_in_hours_where_they_are_known():
    race = on(0, 5, 100, Kind.RACE, climb_m=3_500.0)
    plan = project(*week(10, 40), race)
    assert yardstick_of(plan) is Yardstick.DISTANCE
    known = replace(plan, runner=replace(plan.runner, weekly_s=4 * HOUR))
    assert yardstick_of(known) is Yardstick.TIME
    flat = replace(known, block=project(on(0, 5, 100, Kind.RACE, climb_m=2_500.0)).block)
    assert yardstick_of(flat) is Yardstick.DISTANCE


def wishing(plan, **wishes):
    runner = replace(plan.runner, wishes=replace(plan.runner.wishes, **wishes))
    return replace(plan, runner=runner)


def test_a_race_without_length_asks_for_no_climb():
    demo = demo_project(date(2027, 4, 7))
    race = next(s for s in demo.block.sessions if s.kind is Kind.RACE)
    bare = replace(race, distance_m=0.0, climb_m=0.0)
    bare = replace(demo, block=demo.block.with_session(bare))
    rules, fewer = ({c.rule for c in derive(one).checks} for one in (demo, bare))
    assert rules - fewer == {"climb match"}

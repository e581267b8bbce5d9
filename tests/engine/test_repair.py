"""Blocks mended after missed days, held against a referee and the rules of taking up again."""

from datetime import date, timedelta
from itertools import pairwise

import pytest
from msgspec.structs import replace

from tests.engine.block_requests import HOUR, random_absence, random_request
from tests.engine.repair_referee import TABLE, RepairReferee, metres
from ultraplanner_gui.engine import repair as words
from ultraplanner_gui.engine.block import BlockRequest, build_block
from ultraplanner_gui.engine.repair import Absence, Cause, RepairRequest, repair_block
from ultraplanner_gui.engine.repair_rules import RESUMPTION, resumption
from ultraplanner_gui.plan.block import Done, Kind
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.runner import Runner

RACE_DAY = date(2027, 4, 18)
# 50 km a week, longest run 150 min, 0/75/90/75/60/300/240 min a day, 16 weeks to 95 km.
RUNNER = Runner(
    weekly_m=50e3,
    longest_m=21e3,
    easy_mps=2.6,
    available_s=(0, 4500, 5400, 4500, 3600, 5 * HOUR, 4 * HOUR),
)
REQUEST = BlockRequest(
    RACE_DAY - timedelta(days=16 * 7 - 1), RACE_DAY, 100e3, 1500.0, 1500.0, 14 * HOUR, RUNNER
)
BLOCK = build_block(REQUEST).block


def monday(week):
    """The first day of a week of the block, counted from 1."""
    return REQUEST.first_day + timedelta(weeks=week - 1)


def missed(first, last, cause=Cause.LIFE, **more):
    absence = Absence(first, last, cause, **more)
    return RepairRequest(REQUEST, absence, last + timedelta(days=1))


def mended(request, block=BLOCK, time_s=0.5):
    choices = repair_block(block, request, time_s).choices
    for choice in choices:
        assert RepairReferee(block, request, choice).broken() == []
    return choices


# Held against the referee


@pytest.mark.parametrize("seed", range(30))
def test_a_random_repair_breaks_only_what_it_names(seed):
    request = random_request(seed, weeks=(8, 28))
    block = build_block(request).block
    absence = random_absence(seed, request)
    repair = repair_block(block, absence, 0.4)
    assert repair.choices
    for choice in repair.choices:
        assert RepairReferee(block, absence, choice).broken() == []


def test_the_referee_sees_what_is_wrong():
    request = missed(monday(6) + timedelta(days=1), monday(6) + timedelta(days=6))
    choice = repair_block(BLOCK, request).choices[0]
    undone = replace(choice, block=BLOCK, changes=())
    assert {rule for rule, _ in RepairReferee(BLOCK, request, undone).broken()} >= {
        "missed day not marked",
        "first days hard",
        "hard too soon",
    }


# Single repairs, the days missed of the prototype in our own notes: fewest changes, proven.


@pytest.mark.parametrize(
    ("first", "last", "kinds", "changes"),
    [(3, 6, 1, 12), (0, 2, 0, 2)],
    ids=["Thu-Sun of week 6", "Mon-Wed of week 6"],
)
def test_a_few_days_missed_change_a_few_sessions(first, last, kinds, changes):
    request = missed(monday(6) + timedelta(days=first), monday(6) + timedelta(days=last))
    best = mended(request, time_s=60.0)[0]
    assert best.is_proven
    assert best.kinds_changed <= kinds
    assert len(best.changes) <= changes


def test_two_weeks_missed_lower_what_is_reached_and_nothing_is_made_up():
    request = missed(monday(6), monday(7) + timedelta(days=6))
    best = mended(request)[0]
    assert best.cost.peak_m >= 0
    assert best.cost.weeks >= 2
    volume = RepairReferee(BLOCK, request, best).volumes(best.block)
    planned = RepairReferee(BLOCK, request, best).volumes(BLOCK)
    grown = {n for n in volume if volume[n] > planned[n]}
    assert grown <= set(BLOCK.cutbacks) - set(best.block.cutbacks)


def test_a_day_without_a_run_missed_changes_nothing():
    free = next(
        monday(5) + timedelta(days=n)
        for n in range(7)
        if not BLOCK.on(monday(5) + timedelta(days=n))
    )
    best = mended(missed(free, free))[0]
    assert best.changes == ()
    assert best.block == BLOCK


def test_choices_stand_side_by_side_with_their_changes_and_cost():
    request = missed(monday(6), monday(6) + timedelta(days=5))
    choices = mended(request)
    assert 2 <= len(choices) <= 3
    assert len({c.name for c in choices}) == len(choices)
    assert len({c.block for c in choices}) == len(choices)
    for choice in choices:
        before = sum(metres(s) for s in BLOCK.sessions)
        after = sum(metres(s) for s in choice.block.sessions)
        assert choice.cost.total_m == before - after
        for change in choice.changes:
            assert change.before == words.with_missed(BLOCK, request.absence).session(
                change.session
            )
            kept = {s.key: s for s in choice.block.sessions}.get(change.session)
            assert change.after == kept != change.before
    order = [(c.kinds_changed, len(c.changes)) for c in choices]
    assert order == sorted(order)


def test_the_missed_week_may_stand_in_for_the_next_cutback():
    cutback = 6
    assert cutback in BLOCK.cutbacks
    first = RACE_DAY - timedelta(days=RACE_DAY.weekday(), weeks=cutback + 1)
    request = missed(first, first + timedelta(days=6))
    choices = {c.name.template: c for c in mended(request)}
    released, kept = choices[words.RELEASE], choices[words.KEEP]
    assert cutback not in released.block.cutbacks
    assert cutback in kept.block.cutbacks
    assert released.cost.total_m < kept.cost.total_m
    assert released.cost.peak_m <= kept.cost.peak_m
    assert words.MANY_LOADS in {n.template for n in released.notes}


def test_a_long_run_that_stays_is_the_longest_of_its_week():
    request = missed(monday(6), monday(6) + timedelta(days=9))
    weeks = {}
    for session in mended(request)[0].block.sessions:
        if monday(8) <= session.day < RACE_DAY:
            weeks.setdefault((session.day - monday(1)).days // 7, []).append(session)
    for week in weeks.values():
        longs = [s.distance_m for s in week if s.kind in (Kind.LONG, Kind.REHEARSAL)]
        assert not longs or max(longs) == max(s.distance_m for s in week)


def test_marking_the_days_missed_first_makes_no_difference():
    request = missed(monday(6), monday(6) + timedelta(days=2))
    marked = words.with_missed(BLOCK, request.absence)
    before, after = mended(request, time_s=60.0), mended(request, marked, 60.0)
    assert [c.block for c in before] == [c.block for c in after]


def test_what_is_done_or_locked_stays():
    locked = next(s for s in BLOCK.sessions if s.day > monday(7) and s.kind is Kind.LONG)
    sessions = tuple(
        replace(s, locked=True)
        if s.key == locked.key
        else replace(s, done=Done(s.distance_m, s.duration_s))
        if s.day < monday(6)
        else s
        for s in BLOCK.sessions
    )
    block = replace(BLOCK, sessions=sessions)
    best = mended(missed(monday(6), monday(6) + timedelta(days=3)), block)[0]
    assert best.block.session(locked.key) == block.session(locked.key)
    assert [s for s in best.block.sessions if s.day < monday(6)] == [
        s for s in block.sessions if s.day < monday(6)
    ]


# Taking up running again: common practice, no source; the shares of long breaks are our own.


@pytest.mark.parametrize(
    ("days", "yardstick", "hard_after", "long"),
    [
        (1, 100, 0, 100),
        (3, 100, 0, 100),
        (4, 100, 3, 90),
        (7, 100, 3, 90),
        (8, 80, 7, 80),
        (14, 80, 7, 80),
        (15, 65, 10, 65),
        (21, 65, 10, 65),
        (22, 50, 14, 50),
        (28, 50, 14, 50),
        (29, 45, 21, 45),
    ],
)
def test_the_longer_the_break_the_gentler_the_return(days, yardstick, hard_after, long):
    row = resumption(Absence(monday(3), monday(3) + timedelta(days=days - 1)))
    assert (row.yardstick, row.hard_after[0], row.long) == (yardstick, hard_after, long)


def test_every_row_is_gentler_than_the_one_before():
    for shorter, longer in pairwise(RESUMPTION):
        assert longer.yardstick <= shorter.yardstick
        assert longer.long <= shorter.long
        assert longer.hard_after > shorter.hard_after
        assert longer.easy_days > shorter.easy_days
    for row in RESUMPTION:
        assert row.easy_days[1] >= row.easy_days[0]
        assert row.easy_share[1] <= row.easy_share[0]
        assert row.least_days in {own[0] for own in TABLE}


def test_an_illness_of_a_day_counts_as_four():
    day = monday(5)
    assert resumption(Absence(day, day, Cause.ILLNESS)) == RESUMPTION[1]
    assert resumption(Absence(day, day, Cause.LIFE)) == RESUMPTION[0]


# Where nothing is worked out


def test_fever_or_chest_symptoms_get_rest_and_no_plan():
    repair = repair_block(BLOCK, missed(monday(6), monday(6), Cause.ILLNESS, has_red_flag=True))
    assert repair.refusal is not None
    assert repair.refusal.template == words.REST_AND_ASK
    assert repair.choices == ()


def test_an_injury_needs_clearance():
    first, last = monday(6), monday(6) + timedelta(days=9)
    repair = repair_block(BLOCK, missed(first, last, Cause.INJURY))
    assert repair.refusal is not None
    assert repair.refusal.template == words.NOT_CLEARED
    assert repair.choices == ()
    assert mended(missed(first, last, Cause.INJURY, is_cleared=True))


def test_a_long_break_late_asks_to_think_of_another_race():
    late = RACE_DAY - timedelta(days=45)
    advice = repair_block(BLOCK, missed(late, late + timedelta(days=11))).advice
    assert words.LATER_RACE in {a.template for a in advice}
    early = repair_block(BLOCK, missed(monday(2), monday(2))).advice
    assert words.LATER_RACE not in {a.template for a in early}


@pytest.mark.parametrize(
    ("first", "last"),
    [
        (monday(6), monday(5)),
        (REQUEST.first_day - timedelta(days=40), REQUEST.first_day - timedelta(days=30)),
        (RACE_DAY - timedelta(days=2), RACE_DAY),
    ],
    ids=["back to front", "before the block", "over the race"],
)
def test_days_outside_the_block_are_refused(first, last):
    with pytest.raises(PlanError):
        repair_block(BLOCK, missed(first, last))

"""A built block, held against the rules by a checker of its own."""

from collections import Counter
from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine import block_notes as building
from ultraplanner_gui.engine.block import BlockRequest, build_block
from ultraplanner_gui.engine.block_others import STRENGTH_LEFT
from ultraplanner_gui.engine.block_weeks import cutback_weeks
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.runner import Level, Runner

HOUR = 3600.0
RACE_DAY = date(2027, 4, 17)
HARD = {
    Kind.LONG,
    Kind.REHEARSAL,
    Kind.HILLS,
    Kind.DOWNHILL,
    Kind.TEMPO,
    Kind.INTERVALS,
    Kind.TUNE_UP,
    Kind.RACE,
}
BEGINNER = Runner(
    weekly_m=30e3,
    longest_m=13e3,
    easy_mps=2.5,
    available_s=(0, 4500, 0, 5400, 0, 5 * HOUR, 0),
    carb_g_per_h=30,
)
EMPLOYED = Runner(
    weekly_m=48e3,
    longest_m=20e3,
    easy_mps=2.7,
    available_s=(0, 5400, 3600, 5400, 0, 7 * HOUR, 3 * HOUR),
)
AMBITIOUS = Runner(
    weekly_m=75e3,
    longest_m=30e3,
    easy_mps=2.8,
    available_s=(3600, 2 * HOUR, 2 * HOUR, 2 * HOUR, 3600, 9 * HOUR, 5 * HOUR),
    level=Level.AMBITIOUS,
    carb_g_per_h=60,
)
FIRST_50 = BlockRequest(date(2026, 11, 30), date(2027, 4, 24), 50e3, 900, 900, 7 * HOUR, BEGINNER)
HILLY_100 = BlockRequest(
    date(2026, 12, 2),
    RACE_DAY,
    100e3,
    4200,
    4200,
    17.5 * HOUR,
    EMPLOYED,
    dark_s=7 * HOUR,
    carb_target_g_per_h=80,
)
LONG_160 = BlockRequest(
    date(2026, 11, 30),
    date(2027, 5, 29),
    161e3,
    6500,
    6500,
    27 * HOUR,
    AMBITIOUS,
    dark_s=9 * HOUR,
    carb_target_g_per_h=90,
)
INVENTED = [FIRST_50, HILLY_100, LONG_160]


class Checker:
    """The rules again, on whole metres and days, from the sessions alone."""

    def __init__(self, request):
        self.request = request
        self.plan = build_block(request)
        self.block = self.plan.block
        self.names = {note.template for note in self.plan.notes}
        self.race_week = self._start(request.race_day)
        self.weeks = {}
        for session in self.block.sessions:
            to_go = (self.race_week - self._start(session.day)).days // 7
            self.weeks.setdefault(to_go, []).append(session)
        self.start_m = max(10_000, round(request.runner.weekly_m))

    def _start(self, day):
        return day - timedelta(days=(day.weekday() - self.request.first_weekday) % 7)

    def metres(self, to_go):
        return sum(
            round(s.distance_m) for s in self.weeks.get(to_go, ()) if s.kind is not Kind.RACE
        )

    def has_race_before(self, to_go, weeks=1):
        return any(
            s.kind is Kind.TUNE_UP for n in range(weeks + 1) for s in self.weeks.get(to_go + n, ())
        )

    def violations(self):
        yield from self.ramp_and_cutbacks()
        yield from self.single_runs()
        yield from self.hard_days()
        yield from self.taper()
        yield from self.days()

    def ramp_and_cutbacks(self):
        reference, loads, cut = self.start_m, 0, False
        for to_go in range(self.block.first_week, self.block.taper_weeks - 1, -1):
            metres = self.metres(to_go)
            if to_go in self.block.cutbacks:
                if cut:
                    yield "two cutbacks in a row", to_go
                if 10 * metres > 8 * reference and building.TUNE_UP_WEEK not in self.names:
                    yield "cutback too large", to_go
                few = self.has_race_before(to_go) or building.USUAL_UNFIT in self.names
                if 10 * metres < 6 * reference and not few:
                    yield "cutback too small", to_go
                loads, cut = 0, True
                continue
            if 10 * metres > 11 * reference and building.TUNE_UP_WEEK not in self.names:
                yield "ramp", to_go
            loads, cut = loads + 1, False
            if loads >= self.request.cutback_every:
                yield "no cutback", to_go
            reference = metres or reference
        for to_go in self.weeks:
            large = 10 * self.metres(to_go) > 11 * self.start_m
            if to_go > self.block.first_week and large and building.TUNE_UP_WEEK not in self.names:
                yield "part-week", to_go

    def single_runs(self):
        before = self.request.first_day - timedelta(days=1)
        runs = [(before, max(5_000, round(self.request.runner.longest_m)))]
        for session in self.block.sessions:
            if session.kind is Kind.RACE:
                continue
            metres = round(session.distance_m)
            window = [m for day, m in runs if 1 <= (session.day - day).days <= 30]
            noted = session.kind is Kind.TUNE_UP and building.TUNE_UP_FAR in self.names
            if not noted and 10 * metres > 11 * max(window, default=0):
                yield "single run", session.key
            runs.append((session.day, metres))

    def hard_days(self):
        kinds = {s.day: s.kind for s in self.block.sessions if s.kind is not Kind.STRENGTH}
        for day, kind in kinds.items():
            after = kinds.get(day + timedelta(days=1))
            if kind in HARD | {Kind.SECOND_LONG} and after in HARD:
                yield "hard days meet", day
            if after is Kind.SECOND_LONG and kind not in (Kind.LONG, Kind.REHEARSAL):
                yield "second long run alone", day

    def taper(self):
        loading = [
            n
            for n in range(self.block.taper_weeks, self.block.first_week + 1)
            if n not in self.block.cutbacks and self.metres(n)
        ]
        if not loading or building.TAPER_OFF in self.names:
            return
        days = (self.request.race_day - self.race_week).days + 7 * (self.block.taper_weeks - 1)
        total = sum(self.metres(n) for n in range(self.block.taper_weeks))
        cut = 1 - total * 7 / (days * self.metres(loading[0]))
        if not 0.41 <= cut <= 0.60:
            yield "taper", cut

    def days(self):
        free = self.request.runner.available_s
        for to_go, sessions in self.weeks.items():
            runs = [s for s in sessions if s.kind is not Kind.STRENGTH]
            if len({s.day for s in runs}) != len(runs) or len({s.day for s in sessions}) == 7:
                yield "no rest day", to_go
        for session in self.block.sessions:
            if session.kind in (Kind.RACE, Kind.TUNE_UP, Kind.STRENGTH):
                continue
            if session.duration_s > free[session.day.weekday()]:
                yield "no time", session.key
            if not self.request.first_day <= session.day < self.request.race_day:
                yield "outside", session.key


@st.composite
def requests(draw):
    race_day = RACE_DAY + timedelta(days=draw(st.integers(0, 6)))
    first_day = race_day - timedelta(days=draw(st.integers(8 * 7, 40 * 7)))
    run_days = draw(st.sets(st.integers(0, 6), min_size=3))
    long_day = draw(st.sampled_from(sorted(run_days)))
    free = [draw(st.integers(40, 180)) * 60.0 if day in run_days else 0.0 for day in range(7)]
    free[long_day] = draw(st.integers(3, 10)) * HOUR
    weekly_m = draw(st.integers(20, 140)) * 1000.0
    runner = Runner(
        weekly_m=weekly_m,
        longest_m=round(weekly_m * draw(st.floats(0.2, 0.6)), -2),
        easy_mps=draw(st.floats(2.0, 3.6)),
        available_s=tuple(free),
        long_day=long_day,
        level=draw(st.sampled_from(list(Level))),
        carb_g_per_h=draw(st.integers(0, 90)),
    )
    race_m = draw(st.integers(30, 170)) * 1000.0
    climb_m = race_m * draw(st.floats(0, 0.07))
    return BlockRequest(
        first_day,
        race_day,
        race_m,
        climb_m,
        climb_m,
        race_m / draw(st.floats(1.2, 3.0)),
        runner,
        first_weekday=draw(st.integers(0, 6)),
        dark_s=draw(st.sampled_from([0.0, 3 * HOUR, 9 * HOUR])),
        cutback_every=draw(st.sampled_from([3, 4])),
        carb_target_g_per_h=draw(st.integers(0, 100)),
    )


@given(requests())
@settings(max_examples=120)
def test_no_rule_is_broken_without_a_note(request):
    assert list(Checker(request).violations()) == []


@given(requests(), st.lists(st.tuples(st.integers(1, 270), st.integers(10, 90)), max_size=2))
@settings(max_examples=120)
def test_tune_up_races_break_no_rule_without_a_note(request, races):
    tune_ups = tuple(
        (request.race_day - timedelta(days=before), km * 1000.0) for before, km in races
    )
    checker = Checker(replace(request, tune_ups=tune_ups))
    assert list(checker.violations()) == []
    placed = [s for s in checker.block.sessions if s.kind is Kind.TUNE_UP]
    assert len(placed) == len(tune_ups) or building.TUNE_UP_OUTSIDE in checker.names


@pytest.mark.parametrize("request_", INVENTED, ids=["50 km", "100 km", "161 km"])
def test_invented_runners_get_blocks_within_the_rules(request_):
    checker = Checker(request_)
    assert list(checker.violations()) == []
    assert not checker.names & {building.TAPER_OFF, building.RAMP_HOLDS, building.USUAL_UNFIT}


def built(request):
    return build_block(request).block.sessions


def of_kind(sessions, *kinds):
    return [s for s in sessions if s.kind in kinds]


def test_the_same_request_gives_the_same_block():
    assert build_block(HILLY_100) == build_block(replace(HILLY_100))


@given(requests())
@settings(max_examples=30)
def test_keys_are_unique_and_sessions_in_order_of_days(request):
    sessions = built(request)
    assert max(Counter(s.key for s in sessions).values()) == 1
    assert [s.day for s in sessions] == sorted(s.day for s in sessions)


@given(requests())
@settings(max_examples=30)
def test_figures_are_round(request):
    for session in of_kind(built(request), *set(Kind) - {Kind.RACE, Kind.STRENGTH}):
        assert session.distance_m % 500 == 0
        assert session.duration_s % 300 == 0
        assert session.climb_m % 10 == 0
        assert session.distance_m > 0
        assert session.duration_s > 0


def test_the_race_stands_on_its_day_with_its_own_figures():
    race = built(HILLY_100)[-1]
    assert (race.kind, race.day) == (Kind.RACE, RACE_DAY)
    assert (race.distance_m, race.duration_s) == (100e3, 17.5 * HOUR)
    assert (race.climb_m, race.drop_m, race.dark) == (4200, 4200, True)


def test_the_block_reaches_what_the_race_asks():
    plan = build_block(HILLY_100)
    checker = Checker(HILLY_100)
    asks = plan.runway.asks
    assert plan.runway.state is State.HOLDS
    assert max(map(checker.metres, checker.weeks)) >= 0.97 * asks.peak_week_m
    assert max(s.distance_m for s in plan.block.sessions[:-1]) >= 0.97 * asks.longest_m
    assert {n.template for n in plan.notes} <= {STRENGTH_LEFT}


def test_the_rehearsal_is_the_longest_run_three_to_five_weeks_out():
    for request in INVENTED:
        sessions = built(request)[:-1]
        (rehearsal,) = of_kind(sessions, Kind.REHEARSAL)
        assert 21 <= (request.race_day - rehearsal.day).days <= 35
        assert rehearsal.distance_m == max(s.distance_m for s in sessions)


def test_the_last_long_run_is_short_and_ten_days_out_or_more():
    # Common practice, no source.
    for request in INVENTED:
        sessions = built(request)[:-1]
        last = of_kind(sessions, Kind.LONG)[-1]
        assert 10 <= (request.race_day - last.day).days <= 20
        assert last.distance_m <= 0.6 * max(s.distance_m for s in sessions)


def test_race_week_holds_nothing_hard():
    for request in INVENTED:
        late = [s for s in built(request)[:-1] if (request.race_day - s.day).days < 7]
        assert late
        assert not [s for s in late if s.kind in HARD]
        assert (request.race_day - late[-1].day).days > 1


def test_downhill_runs_are_spaced_for_a_race_that_drops():
    # First 8 weeks out or more, gaps up to 3 weeks, last 10 to 21 days before: own rule.
    for request in (HILLY_100, LONG_160):
        days = [(request.race_day - s.day).days for s in of_kind(built(request), Kind.DOWNHILL)]
        assert days[0] >= 56
        assert 10 <= days[-1] <= 21
        assert max(a - b for a, b in pairwise(days)) <= 21
    assert not of_kind(built(FIRST_50), Kind.DOWNHILL)


def test_a_flat_race_gets_speed_and_no_climbs():
    sessions = built(replace(LONG_160, climb_m=300.0, drop_m=300.0))
    assert of_kind(sessions, Kind.INTERVALS)
    assert of_kind(sessions, Kind.TEMPO)
    assert not of_kind(sessions, Kind.HILLS, Kind.DOWNHILL)
    assert max(s.climb_m for s in sessions[:-1]) <= 150


def test_climb_grows_toward_the_races():
    checker = Checker(HILLY_100)

    def per_km(to_go):
        climb_m = sum(s.climb_m for s in checker.weeks[to_go] if s.kind is not Kind.RACE)
        return climb_m / (checker.metres(to_go) / 1000)

    assert 15 <= per_km(18) <= 25
    assert per_km(3) >= 0.8 * 42


def test_back_to_backs_come_for_the_usual_level_and_four_days_only():
    pairs = of_kind(built(LONG_160), Kind.SECOND_LONG)
    assert len(pairs) >= 3
    assert all((b.day - a.day).days > 7 for a, b in pairwise(pairs))
    floor = replace(AMBITIOUS, level=Level.FLOOR)
    assert not of_kind(built(replace(LONG_160, runner=floor)), Kind.SECOND_LONG)
    assert not of_kind(built(FIRST_50), Kind.SECOND_LONG)


def test_practice_carbs_rise_by_ten_a_week_to_the_race_rate():
    checker = Checker(HILLY_100)
    rates = [max(s.carb_g_per_h for s in checker.weeks[n]) for n in range(18, 0, -1)]
    assert rates[0] == EMPLOYED.carb_g_per_h
    assert all(later - earlier in (0, 10) for earlier, later in pairwise(rates))
    assert rates[-6:] == [80] * 6
    eating = [s for s in checker.block.sessions if s.carb_g_per_h]
    assert all(s.duration_s >= HOUR for s in eating)


def test_two_to_four_runs_are_in_the_dark_if_the_race_is():
    assert 2 <= sum(s.dark for s in built(HILLY_100)[:-1]) <= 4
    assert not any(s.dark for s in built(replace(HILLY_100, dark_s=HOUR))[:-1])


def test_a_tune_up_race_replaces_the_long_run_and_is_rested_from():
    day = date(2027, 3, 6)
    plan = build_block(replace(HILLY_100, tune_ups=((day, 33e3),)))
    (race,) = of_kind(plan.block.sessions, Kind.TUNE_UP)
    assert (race.day, race.distance_m) == (day, 33e3)
    week = [s for s in plan.block.sessions if 0 <= (day - s.day).days < 6]
    assert not of_kind(week, Kind.LONG, Kind.SECOND_LONG)
    after = [s for s in plan.block.sessions if 1 <= (s.day - day).days <= 7]
    assert after
    assert not [s for s in after if s.kind in HARD]
    assert 5 in plan.block.cutbacks


def test_a_far_tune_up_race_is_named():
    plan = build_block(replace(HILLY_100, tune_ups=((date(2027, 2, 6), 60e3),)))
    (note,) = [n for n in plan.notes if n.template == building.TUNE_UP_FAR]
    assert note.args[0].value == 60e3


def test_too_little_time_a_day_is_named():
    short = replace(EMPLOYED, available_s=(0, 2400, 2400, 2400, 0, 4 * HOUR, 2400))
    plan = build_block(replace(HILLY_100, runner=short))
    assert building.DAYS_HOLD in {n.template for n in plan.notes}


def test_too_short_a_long_day_is_named():
    short = replace(EMPLOYED, available_s=(0, 5400, 3600, 5400, 0, 4 * HOUR, 3 * HOUR))
    plan = build_block(replace(HILLY_100, runner=short))
    (note,) = [n for n in plan.notes if n.template == building.LONG_DAY_HOLDS]
    assert note.args[2].value == 4 * HOUR


def test_too_short_a_ramp_is_named():
    plan = build_block(replace(HILLY_100, first_day=RACE_DAY - timedelta(days=54)))
    assert plan.runway.state is State.BREAKS
    assert building.RAMP_HOLDS in {n.template for n in plan.notes}


@pytest.mark.parametrize("days", [0, 1, 3, 6, 9, 13, 17, 24])
def test_a_race_too_near_still_gives_a_block(days):
    request = replace(HILLY_100, first_day=RACE_DAY - timedelta(days=days))
    checker = Checker(request)
    assert checker.block.sessions[-1].kind is Kind.RACE
    assert list(checker.violations()) == []
    assert building.TOO_NEAR in checker.names or days == 24
    assert sum(checker.metres(n) for n in checker.weeks) <= 48e3 * (days + 3) / 7


@pytest.mark.parametrize("weekday", range(7))
@pytest.mark.parametrize("request_", [HILLY_100, replace(HILLY_100, race_s=11 * HOUR)])
def test_a_race_on_any_weekday_is_tapered_for(weekday, request_):
    checker = Checker(replace(request_, race_day=RACE_DAY + timedelta(days=weekday)))
    assert list(checker.violations()) == []
    assert building.TAPER_OFF not in checker.names


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"runner": replace(EMPLOYED, available_s=(0.0,) * 7)}, "20 minutes free"),
        ({"first_day": RACE_DAY + timedelta(days=1)}, "before the first day"),
        ({"race_m": 0.0}, "distance and a finish time"),
        ({"race_s": float("nan")}, "distance and a finish time"),
        ({"runner": replace(EMPLOYED, easy_mps=0.0)}, "easy pace"),
        ({"cutback_every": 5}, "3rd or every 4th"),
    ],
)
def test_what_cannot_be_built_is_refused_with_a_sentence(change, says):
    with pytest.raises(PlanError, match=says):
        build_block(replace(HILLY_100, **change))


def test_cutbacks_are_counted_back_from_the_taper():
    # Sixteen weeks with the race week, two of taper: weeks 11, 7 and 3 of them.
    assert cutback_weeks(15, 2, 4) == (13, 9, 5)
    assert cutback_weeks(15, 2, 3) == (13, 10, 7, 4)


@given(
    st.integers(0, 40),
    st.integers(1, 4),
    st.sampled_from([3, 4]),
    st.frozensets(st.integers(3, 38), max_size=2),
)
def test_cutbacks_never_adjoin_and_always_come_in_time(first, last, every, forced):
    forced = frozenset(n for n in forced if last < n <= first)
    if any(abs(a - b) <= 2 for a in forced for b in forced if a != b):
        return
    cutbacks = cutback_weeks(first, last, every, forced)
    assert forced <= set(cutbacks)
    weeks = ["c" if n in cutbacks else "l" for n in range(last, first + 1)]
    text = "".join(weeks)
    assert "l" * every not in text
    assert "cc" not in text

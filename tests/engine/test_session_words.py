"""What sessions say of themselves."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from tests.engine.invented import INVENTED
from ultraplanner_gui.engine.block import build_block
from ultraplanner_gui.engine.session_words import (
    DARK,
    FASTED,
    HEAT,
    SHORT_AS_IT_IS,
    kept_sessions,
    session_words,
)
from ultraplanner_gui.plan.block import Ground, Kind, Mind, Session

MONDAY = date(2027, 3, 1)
HOUR = 3600.0


def on(weekday, kind, hours=1.0, **more):
    day = MONDAY + timedelta(days=weekday)
    return Session(f"{weekday}", day, kind, 10_000.0, hours * HOUR, **more)


@pytest.mark.parametrize("kind", Kind)
def test_every_kind_says_why_how_and_what_to_keep(kind):
    words = session_words(on(0, kind))
    said = [words.why, words.talk, words.short]
    assert all(str(m).endswith(".") for m in said)
    assert words.short.template != SHORT_AS_IT_IS


def test_what_fits_into_forty_minutes_is_kept_whole():
    assert session_words(on(0, Kind.EASY, 40 / 60)).short.template == SHORT_AS_IT_IS


def test_talk_gets_shorter_as_effort_grows():
    # Persinger et al. 2004: comfortable speech below the first threshold, none towards the second.
    said = [str(session_words(on(0, Kind.EASY, effort=e)).talk) for e in (1, 3, 5, 8)]
    assert len(set(said)) == 4
    assert "sentences" in said[1]
    assert "few words" in said[3]


def test_marks_of_a_session_are_said_with_their_cautions():
    words = session_words(on(0, Kind.LONG, 3, dark=True, heat=True, fasted=True, carb_g_per_h=60.0))
    assert {m.template for m in words.cautions} == {DARK, HEAT, FASTED}
    assert words.extras[0].args[0].value == 180.0
    more = on(0, Kind.LONG, 3, ends_on=Ground.FALLING, mind=Mind.IF_THEN)
    assert len(session_words(more).extras) == 2


def test_the_long_run_and_the_race_specific_session_are_kept():
    week = [on(1, Kind.HILLS), on(3, Kind.EASY), on(5, Kind.LONG, 3), on(6, Kind.RECOVERY, 0.5)]
    assert kept_sessions(week) == ("1", "5")


def test_a_back_to_back_is_not_both_that_are_kept():
    week = [on(1, Kind.EASY), on(5, Kind.LONG, 4), on(6, Kind.SECOND_LONG, 3)]
    assert kept_sessions(week) == ("1", "5")


def test_a_missed_session_is_not_kept():
    week = [on(1, Kind.HILLS), on(3, Kind.EASY), replace(on(5, Kind.LONG), missed=True)]
    assert kept_sessions(week) == ("1", "3")


@pytest.mark.parametrize("request_", INVENTED.values(), ids=INVENTED)
def test_every_built_week_keeps_two_sessions(request_):
    block = build_block(request_).block
    weeks = {}
    for session in block.sessions:
        weeks.setdefault((block.sessions[-1].day - session.day).days // 7, []).append(session)
    assert all(len(kept_sessions(w)) == min(2, len(w)) for w in weeks.values())

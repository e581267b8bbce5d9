"""Absurd values that may be typed: refused in a sentence, or every figure stays a figure."""

import contextlib
import re
from datetime import UTC, date, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.cards.make import pages_of
from ultraplanner_gui.cards.page import Text
from ultraplanner_gui.cards.paint import measure
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.block import AddSession
from ultraplanner_gui.edits.course import ChangeStation, SetSectionTarget
from ultraplanner_gui.edits.fuel import AddItem, SetFuelRates
from ultraplanner_gui.edits.race import ChangeRace, ChangeSetup
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.store.soundness import unsound_part
from ultraplanner_gui.widgets.table_column import copied_text
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.words import Words

TODAY = date(2027, 4, 7)
DEMO = demo_project(TODAY)
WORDS = Words()
NO_FIGURE = re.compile(r"\b(nan|inf|infinity|none)\b", re.IGNORECASE)
KM, H = 1_000.0, 3_600.0


def race(**changes):
    return lambda plan: ChangeRace(replace(plan.race, **changes))


def setup(**changes):
    return lambda plan: ChangeSetup(plan.race, replace(plan.runner, **changes), 0)


def station(at, **changes):
    return lambda plan: ChangeStation(replace(plan.course.stations[at], **changes))


def target(at, lasts_s):
    return lambda plan: SetSectionTarget(plan.course.sections[at].key, lasts_s)


def item(at_s, amount):
    return lambda plan: AddItem(plan.fuel.foods[0].key, at_s, amount)


def rates(*figures):
    return lambda _plan: SetFuelRates(*figures)


def session(**changes):
    return lambda _plan: AddSession(replace(Session("", TODAY, Kind.LONG, 10 * KM, H), **changes))


ABSURD = {
    "a finish in the past": race(start=datetime(2020, 1, 1, 6, tzinfo=UTC)),
    "a race in 3 days": race(start=datetime(2027, 4, 10, 6, tzinfo=UTC)),
    "a race today": race(start=datetime(2027, 4, 7, 6, tzinfo=UTC)),
    "a race in ten years": race(start=datetime(2037, 4, 10, 6, tzinfo=UTC)),
    "a finish after a minute": race(goal_s=60.0),
    "a finish after nine days": race(goal_s=9 * 24 * H),
    "a limit before the finish": race(limit_s=H),
    "no time at all": race(goal_s=0.0),
    "weeks of 400 km": setup(weekly_m=400 * KM, longest_m=200 * KM),
    "no running at all": setup(weekly_m=0.0, longest_m=0.0),
    "no day free": setup(available_s=(0.0,) * 7),
    "every day free all day": setup(available_s=(24 * H,) * 7),
    "a runner of 20 kg": setup(body_kg=20.0),
    "an intake of nothing": setup(carb_g_per_h=0.0),
    "a crawl": setup(easy_mps=0.01),
    "no fade": setup(fade=0.0),
    "a fade at once": setup(fade=5.0, fade_onset_h=1e-6),
    "a night that stops one": setup(night_loss=1.0),
    "no hiking when tired": setup(tired_walk=0.0),
    "a cutoff before the one before": station(3, cutoff_s=60.0),
    "a cutoff at the start": station(2, cutoff_s=0.0),
    "a stop below zero": station(2, stop_s=-600.0),
    "a stop of two days": station(2, stop_s=48 * H),
    "a station at the start": station(1, at_m=0.0),
    "a station behind the finish": station(1, at_m=1e7),
    "a section in no time": target(2, 1e-6),
    "a section of a week": target(2, 7 * 24 * H),
    "a run of 0 km": session(distance_m=0.0),
    "a run of 900 km": session(distance_m=900 * KM),
    "a run of no time": session(duration_s=1e-9),
    "a run in two years": session(day=TODAY + timedelta(days=730)),
    "200 gels at once": item(0.0, 200.0),
    "a gel a week after the race": item(7 * 24 * H, 1.0),
    "nothing per hour": rates(0.0, 0.0, 0.0, 0.0, 0.0),
    "a bucket per hour": rates(500.0, 20_000.0, 50_000.0, 60.0, 60.0),
}


def looked_through(plan, words=WORDS):
    """Yield every text of tables, cards and checks."""
    outlook = derive(plan, None, TODAY)
    for spec in SPECS:
        for row in spec.rows(outlook):
            for column in spec.columns:
                yield f"{spec.name}, {column.name}", copied_text(column, row, words)
    for check in (*outlook.checks, *outlook.race_checks):
        yield "checks", words.say(check.text)
    for card in plan.cards:
        try:
            pages = pages_of(card, outlook, words, measure)
        except PlanError as error:
            yield "cards", str(error)
            continue
        yield from (("cards", op.text) for page in pages for op in page.ops if isinstance(op, Text))


def held(plan, *made):
    """Do the edits *made* of the plan one after the other; what is refused changes nothing."""
    for make in made:
        with contextlib.suppress(PlanError):
            after = make(plan).apply(plan)
            plan = plan if unsound_part(after) else after
    wrong = [(where, text) for where, text in looked_through(plan) if NO_FIGURE.search(text)]
    assert wrong == []


def test_the_demo_itself_says_no_such_thing(qapp):
    held(DEMO)


@pytest.mark.parametrize("name", ABSURD)
def test_one_absurd_value_breaks_no_figure(qapp, name):
    held(DEMO, ABSURD[name])


@settings(max_examples=25, deadline=None)
@given(st.lists(st.sampled_from(sorted(ABSURD)), min_size=2, max_size=6, unique=True))
def test_many_absurd_values_break_no_figure(qapp, names):
    held(DEMO, *(ABSURD[name] for name in names))

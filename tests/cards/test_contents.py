"""Golden texts of the cards beside pace and fuel."""

from datetime import timedelta

import pytest
from msgspec.structs import replace

from tests.cards.big_plans import plan
from ultraplanner_gui.cards.content import card_contents
from ultraplanner_gui.cards.crew_content import crew_sheet
from ultraplanner_gui.cards.pack_content import bag_labels, shopping_and_packing
from ultraplanner_gui.cards.person_content import hard_stretches, who_i_am
from ultraplanner_gui.cards.week_content import blanks, heads, wall_plan, week_sheets
from ultraplanner_gui.engine.fuel_bags import bag_plan
from ultraplanner_gui.engine.news import LEAST_PATIENCE_S, news
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.cards import Card, CardForm, CardKind, CardPart
from ultraplanner_gui.plan.course import CutoffKind, IfStop, Offer
from ultraplanner_gui.plan.logistics import Logistics
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.wording.words import NONE, Words

WORDS = Words()


def _entry(card, head):
    return next(entry for entry in card.entries if entry.head == head)


def _lines(entry):
    return [f"{item.label}: {item.text}" if item.label else item.text for item in entry.items]


def _crew():
    return crew_sheet(plan("demo"), WORDS, Card(CardKind.CREW))


def test_the_crew_sheet_says_where_when_and_what():
    entry = _entry(_crew(), "Ash Green")
    section = next(s for s in plan("demo").sections if s.name == "Ash Green")
    race = plan("demo").project.race
    lines = _lines(entry)
    assert lines[0].startswith(f"on plan: {WORDS.clock(race.clock(section.arrive_s))} · 38.6 km")
    assert lines[0].endswith("cutoff Sat 14:30")
    assert "way there: Village hall, car park behind it; the last 200 m on foot." in lines
    assert "who: Jo" in lines
    assert "bottles, filled" in lines
    assert "ask: Eaten in the last hour? · Passed water? What colour? · Warm enough?" in lines
    low, high = (WORDS.clock(race.clock(s + 30.0 - (s + 30.0) % 60.0)) for s in section.window_s)
    assert entry.right == f"{low} – {high.split()[1]}"


def test_two_times_part_no_news_from_asking():
    race = plan("demo").project.race
    for section in plan("demo").sections:
        found = news(section)
        assert found.calm_s == section.window_s[1]
        assert found.ask_s - found.calm_s >= LEAST_PATIENCE_S
    section = next(s for s in plan("demo").sections if s.name == "Ash Green")
    calm, ask = (WORDS.clock(race.clock(s)) for s in (news(section).calm_s, news(section).ask_s))
    assert _lines(_entry(_crew(), "Ash Green"))[-1] == (
        f"Before {calm} no news is good news; after {ask} ask the station."
    )


def test_whoever_drives_home_is_named_and_has_slept():
    lines = _lines(_entry(_crew(), "The way home"))
    assert lines == ["Kim drives.", "Whoever was up all night does not drive."]
    bare = replace(plan("demo").project, logistics=Logistics())
    card = crew_sheet(replace(plan("demo"), project=bare), WORDS, Card(CardKind.CREW))
    assert _lines(_entry(card, "The way home"))[0] == "Nobody is named yet who drives."


def test_the_crew_knows_the_way_out_if_the_runner_stops():
    outlook = plan("demo")
    course = outlook.project.course
    stations = tuple(
        replace(s, if_stop=IfStop("bus 12 to town", "Kim", "at noon", "01632 960 333"))
        for s in course.stations
    )
    project = replace(outlook.project, course=replace(course, stations=stations))
    look = replace(outlook, project=project)
    line = "if I stop: way out bus 12 to town · fetched by Kim · takes at noon · call 01632 960 333"
    assert line in _lines(_entry(crew_sheet(look, WORDS, Card(CardKind.CREW)), "Ash Green"))
    bare = Card(CardKind.CREW, leaves_out=(CardPart.IF_STOP,))
    assert line not in _lines(_entry(crew_sheet(look, WORDS, bare), "Ash Green"))


def test_only_stations_that_let_the_crew_in_are_on_the_sheet():
    course = plan("170 km").project.course
    open_to = {s.name for s in course.stations if Offer.CREW in s.offers}
    named = {entry.head for entry in crew_sheet(plan("170 km"), WORDS, Card(CardKind.CREW)).entries}
    assert open_to <= named
    closed = {s.name for s in course.stations} - open_to
    assert not closed & named


def test_a_label_to_each_bag_with_its_foods_and_kit():
    outlook = plan("demo")
    halfway, finish = bag_labels(outlook, WORDS, Card(CardKind.BAGS))
    assert (halfway.title, finish.title) == ("Halfway Barn", "Finish")
    assert _entry(halfway, "Demo Runner").right == "number 117"
    inside = _lines(_entry(halfway, "In this bag"))
    assert inside[:5] == ["dry socks", "lamp, tested", "long-sleeved top", "socks", "lamp"]
    plan_of_bags = bag_plan(
        outlook.fuel.plan, outlook.project.course, outlook.sections, outlook.target.finish_s
    )
    pack = next(p for p in plan_of_bags.packs if p.source == "bag")
    assert len(inside) == 5 + len(pack.whole())
    assert _lines(_entry(finish, "In this bag")) == ["dry clothes", "shoes"]


def test_without_bags_a_label_says_what_to_do():
    course = plan("demo").project.course
    stations = tuple(replace(s, offers=(Offer.WATER,)) for s in course.stations)
    project = replace(
        plan("demo").project, course=replace(course, stations=stations), logistics=Logistics()
    )
    with pytest.raises(PlanError, match="drop bag"):
        bag_labels(replace(plan("demo"), project=project), WORDS, Card(CardKind.BAGS))


def test_lists_begin_with_the_mandatory_kit_and_end_with_what_to_buy():
    card = shopping_and_packing(plan("demo"), WORDS)
    assert card.entries[0].head == "Mandatory kit"
    assert _lines(card.entries[0])[0] == "waterproof with taped seams"
    assert card.entries[-1].head == "To buy"
    assert _lines(card.entries[-1])[-2:] == ["spare batteries", "tape"]
    assert all(item.has_box for entry in card.entries for item in entry.items)


def test_hard_stretches_have_the_runners_own_words_and_the_time_they_begin():
    card = hard_stretches(plan("demo"), WORDS, Card(CardKind.HARD))
    entry = _entry(card, "Halfway Barn → Long Ridge")
    section = next(s for s in plan("demo").sections if s.name == "Long Ridge")
    begins = plan("demo").project.race.clock(section.arrive_s - section.moving_s)
    assert entry.right == WORDS.clock(begins)
    assert _lines(entry)[0].startswith("If the legs turn to wood")
    assert _lines(_entry(card, "Anywhere"))[0] == (
        "If I want to stop: then I walk to the next station, sit, eat, and ask again there"
    )
    assert _lines(_entry(card, "To say to myself")) == ["Short steps.", "One gate at a time."]


def test_who_i_am_begins_with_whom_to_call():
    card = who_i_am(plan("demo"), WORDS, Card(CardKind.WHO))
    assert (card.title, card.subtitle) == ("Demo Runner", "number 117 · Fellside Hundred")
    assert _lines(card.entries[0]) == [
        "race emergency: 01632 960 100, race control",
        "my people: Kim, 01632 960 222",
    ]
    assert _lines(_entry(card, "If I stop at Halfway Barn")) == [
        "way out: farm lane to the road",
        "fetched by: Kim",
        "takes: 30 min",
        "call: 01632 960 222",
    ]
    bare = who_i_am(plan("demo"), WORDS, Card(CardKind.WHO, leaves_out=(CardPart.MEDICAL,)))
    assert "Medical" not in {entry.head for entry in bare.entries}


def test_who_i_am_asks_for_a_name_where_there_is_none():
    project = replace(plan("demo").project, logistics=Logistics())
    card = who_i_am(replace(plan("demo"), project=project), WORDS, Card(CardKind.WHO))
    assert card.warnings[0].startswith("Name and whom to call")


def test_the_wall_plan_has_every_session_on_its_day():
    outlook = plan("demo")
    card = wall_plan(outlook, WORDS, Card(CardKind.WALL))
    assert [row.number for row in card.rows] == [str(w.to_go) for w in outlook.weeks]
    tiles = sum(len(day) for row in card.rows for day in row.days)
    assert tiles == len(outlook.project.block.sessions)
    assert sum(t.is_race for row in card.rows for day in row.days for t in day) == 1
    first = outlook.project.block.sessions[0]
    place = (first.day - outlook.weeks[0].start).days
    assert card.rows[0].days[place][0].kind == first.kind.value
    done = [t.is_done for row in card.rows for day in row.days for t in day]
    assert sum(done) == sum(s.done is not None for s in outlook.project.block.sessions)


def test_week_sheets_begin_with_this_week_and_have_every_session_in_order():
    outlook = plan("demo")
    cards = week_sheets(outlook, WORDS, Card(CardKind.WEEKS))
    ahead = [w for w in outlook.weeks if w.start + timedelta(days=7) > outlook.today]
    assert len(cards) == len(ahead)
    for card, week in zip(cards, ahead, strict=True):
        boxes = [entry.head for entry in card.entries if entry.has_box]
        kinds = [outlook.project.block.session(key).kind.value for key in week.sessions]
        assert [head.split(" · ")[1] for head in boxes] == kinds
        assert card.notes[0].startswith("Stop now and call for help")


def test_lines_to_write_on_are_in_the_order_they_are_typed_back():
    labels = [blank.label.split()[0] for blank in blanks(WORDS)]
    order = list(dict.fromkeys(labels))
    assert order == [head.split()[0] for head in heads(WORDS)]


def test_a_cutoff_for_leaving_says_so():
    outlook = plan("170 km")
    (card,) = card_contents(Card(CardKind.PACE), outlook, WORDS)
    stations = outlook.project.course.stations
    for row, station in zip(card.rows, stations, strict=False):
        is_out = station.cutoff_kind is CutoffKind.DEPARTURE and station.cutoff_s is not None
        assert row.cutoff_word == ("leave by" if is_out else "")


def test_the_one_sleep_is_on_the_pace_card():
    (card,) = card_contents(Card(CardKind.PACE), plan("170 km"), WORDS)
    assert [row.there for row in card.rows if "sleep" in row.there] == ["sleep · pacer from here"]


def test_a_strip_has_the_figures_of_the_pace_card():
    outlook = plan("170 km")
    (pace,) = card_contents(Card(CardKind.PACE), outlook, WORDS)
    card = Card(CardKind.PACE, 200.0, 48.0, CardForm.WRIST)
    (strip,) = card_contents(card, outlook, WORDS)
    rows = {row.head: row.cells for row in strip.rows}
    assert rows["km"] == tuple(row.distance for row in pace.rows)
    assert rows["on plan"] == tuple(row.on_plan.split()[1] for row in pace.rows)
    cutoffs = [cell.removeprefix("leave by ").split()[-1] for cell in rows["cutoff"]]
    assert cutoffs == [row.cutoff.time for row in pace.rows]
    assert NONE in cutoffs


def test_each_kind_of_session_is_named_on_the_wall():
    tiles = [
        tile.kind
        for row in wall_plan(plan("demo"), WORDS, Card(CardKind.WALL)).rows
        for day in row.days
        for tile in day
    ]
    assert set(tiles) <= {kind.value for kind in Kind}

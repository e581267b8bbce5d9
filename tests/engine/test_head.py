from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.cards.content import card_contents
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.course import RemoveStation
from ultraplanner_gui.engine.head import days_of, pictures, proposals
from ultraplanner_gui.engine.mind import mind_lines
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.race_week import countdown, days_after, rest_after
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Mind
from ultraplanner_gui.plan.cards import Card, CardKind, CardPart
from ultraplanner_gui.plan.conditions import ValleyForecast
from ultraplanner_gui.plan.head import DayGoal, DayKind, Head, Worry
from ultraplanner_gui.plan.logistics import IfThen, OwnDay, PackedKit
from ultraplanner_gui.wording.words import Words

TODAY = date(2027, 4, 5)
WORDS = Words()


@pytest.fixture(scope="module")
def outlook():
    return derive(demo_project(TODAY), None, TODAY)


def with_(outlook, today=TODAY, **changes):
    return derive(replace(outlook.project, **changes), None, today)


def said(found):
    return [WORDS.say(picture.text) for picture in found]


def test_pictures_stand_in_the_order_of_the_course(outlook):
    found = pictures(outlook, WORDS)
    assert len(found) >= 5
    assert [p.at_m for p in found] == sorted(p.at_m for p in found)


def test_the_dark_hours_are_those_of_the_light(outlook):
    (span,) = (s for s in outlook.light if s.kind == "dark")
    (text,) = (t for t in said(pictures(outlook, WORDS)) if t.startswith("The dark hours"))
    clock = outlook.project.race.clock
    assert WORDS.clock(clock(span.start_s)) in text
    assert WORDS.clock(clock(span.end_s)) in text


def test_the_longest_stretch_alone_is_the_longest_leg_by_time(outlook):
    course, plan = outlook.project.course, outlook.target
    ends = [s.at_m for s in course.stations] + [course.length_m]
    starts = [0.0] + [s.at_m for s in course.stations]
    took = [plan.arrival_s(b) - plan.departure_s(a) for a, b in zip(starts, ends, strict=True)]
    name = [*(s.name for s in course.stations), "the finish"][took.index(max(took))]
    (text,) = (t for t in said(pictures(outlook, WORDS)) if "longest stretch alone" in t)
    assert f"to {name}," in text


def test_a_course_without_stations_has_no_longest_stretch(outlook):
    project = outlook.project
    for station in project.course.stations:
        project = RemoveStation(station.key).apply(project)
    bare = derive(project, None, TODAY)
    assert pictures(bare, WORDS)
    assert not any("stretch alone" in t for t in said(pictures(bare, WORDS)))
    assert {p.station for p in proposals(bare, WORDS)} == {""}


def test_a_race_by_day_has_no_dark_hours(outlook):
    race = replace(outlook.project.race, goal_s=11 * 3600.0, limit_s=None)
    assert not any("dark" in t for t in said(pictures(with_(outlook, race=race), WORDS)))


def test_red_flags_are_never_talked_away(outlook):
    lines = {WORDS.say(p.when): WORDS.say(p.then) for p in proposals(outlook, WORDS)}
    (help_line,) = (then for when, then in lines.items() if "chest hurts" in when)
    assert "stop and call for help" in help_line


def test_lines_are_for_stations_of_the_course_or_anywhere(outlook):
    keys = {s.key for s in outlook.project.course.stations} | {""}
    found = proposals(outlook, WORDS)
    assert {p.station for p in found} <= keys
    assert len({(WORDS.say(p.when)) for p in found}) == len(found)


def test_the_fair_day_is_the_middle_of_the_simulated_races(outlook):
    middle_s = next(d.finish_s for d in days_of(outlook) if d.kind is DayKind.FAIR)
    assert middle_s == outlook.race.odds.middle_s[-1]


def test_the_hard_day_knows_the_limit(outlook):
    tight = replace(outlook.project.race, limit_s=outlook.target.finish_s + 60.0)
    texts = [WORDS.say(days_of(o)[-1].text) for o in (outlook, with_(outlook, race=tight))]
    assert "within 24 h 00" in texts[0]
    assert "may come first" in texts[1]


def test_a_line_for_the_dark_only_where_a_night_begins(outlook):
    whens = [WORDS.say(p.when) for p in proposals(outlook, WORDS)]
    (dark,) = (span for span in outlook.light if span.kind == "dark")
    section = next(s for s in outlook.sections if dark.start_s < s.arrive_s)
    assert [w for w in whens if w.startswith("the dark")] == [
        f"the dark before {section.name} makes me slow and small"
    ]


def hot(outlook):
    weather = ValleyForecast(22.0, 36.0, 50.0, valley_m=100.0)
    return with_(outlook, conditions=replace(outlook.project.conditions, weather=weather))


def test_heat_is_pictured_and_has_a_line_on_a_hot_day_only(outlook):
    for plan, is_hot in ((outlook, False), (hot(outlook), True)):
        assert any("heat of the day" in t for t in said(pictures(plan, WORDS))) is is_hot
        whens = [WORDS.say(p.when) for p in proposals(plan, WORDS)]
        assert any(w.startswith("the heat") for w in whens) is is_hot


def test_a_climb_that_is_run_is_not_pictured_as_walked(outlook):
    fast = with_(outlook, race=replace(outlook.project.race, goal_s=9 * 3600.0))
    slow, quick = (
        [t for t in said(pictures(o, WORDS)) if t.startswith("Climb")] for o in (outlook, fast)
    )
    assert all("Walked, as planned" in t for t in slow)
    assert any("short steps" in t and "Walked" not in t for t in quick)


def test_a_good_day_is_shorter_than_a_fair_and_a_hard_one(outlook):
    good, fair, hard = (day.finish_s for day in days_of(outlook))
    assert good < fair < hard
    assert (good, hard) == outlook.sections[-1].window_s


def test_nothing_is_made_up_without_a_course(outlook):
    bare = with_(outlook, course=None)
    assert (pictures(bare, WORDS), proposals(bare, WORDS), days_of(bare)) == ((), (), ())


def test_a_worry_with_nothing_done_about_it_strains(outlook):
    bare = with_(outlook, head=Head((Worry("The dark"),)))
    done = with_(outlook, head=Head((Worry("The dark", "run twice by night"),)))
    states = [next(c.state for c in o.race_checks if c.rule == "worries") for o in (bare, done)]
    assert states == [State.STRAINS, State.HOLDS]


def rehearsals(outlook, mind):
    return [s for s in outlook.project.block.sessions if s.mind is mind]


def test_sessions_to_picture_take_turns(outlook):
    sessions = rehearsals(outlook, Mind.PICTURE)
    lines = [mind_lines(outlook, s, WORDS) for s in sessions[:4]]
    assert len(set(lines)) == len(lines)


def test_no_stretch_is_left_out_of_the_rehearsals(outlook):
    sessions = rehearsals(outlook, Mind.PICTURE)
    own = with_(outlook, head=Head(pictures=tuple(f"my own {n}" for n in range(5))))
    for plan in (outlook, own):
        shared = [line for s in sessions for line in mind_lines(plan, s, WORDS)]
        assert {*said(pictures(plan, WORDS)), *plan.project.head.pictures} == set(shared)


def test_lines_are_tried_in_turn(outlook):
    lines = (IfThen("sick", "walk"), IfThen("cold", "jacket"))
    plan = with_(outlook, logistics=replace(outlook.project.logistics, if_then=lines))
    sessions = rehearsals(plan, Mind.IF_THEN)
    assert [mind_lines(plan, s, WORDS) for s in sessions[:2]] == [
        ("If sick, then walk.",),
        ("If cold, then jacket.",),
    ]


def test_goals_are_the_runners_own_where_they_are_set(outlook):
    goal = DayGoal(DayKind.HARD, "Reach the valley", 90_000.0)
    plan = with_(outlook, head=Head(goals=(goal,)))
    (session, *_) = rehearsals(plan, Mind.GOALS)
    lines = mind_lines(plan, session, WORDS)
    assert lines[2] == "Hard day, about 25 h 00: Reach the valley"
    near = min((s for s in plan.sections if s.to_cutoff_s is not None), key=lambda s: s.to_cutoff_s)
    assert near.name in lines[3]
    assert WORDS.duration(near.to_cutoff_s) in lines[3]
    assert len(lines) == 4


def texts(rows):
    return [WORDS.say(row.text) for row in rows]


def test_ticked_kit_is_no_longer_asked_for(outlook):
    kit = outlook.project.race.mandatory_kit
    logistics = replace(outlook.project.logistics, packed=(PackedKit(kit[0]),))
    left = " ".join(texts(countdown(replace(outlook.project, logistics=logistics))))
    assert f"{kit[0]}," not in left
    assert kit[1] in left
    everything = replace(logistics, packed=tuple(map(PackedKit, kit)))
    all_ticked = texts(countdown(replace(outlook.project, logistics=everything)))
    assert any("all of it is ticked" in t for t in all_ticked)


def test_kit_is_asked_for_in_the_last_ten_days_only(outlook):
    race_day = outlook.project.race.day
    for days, is_asked in ((40, False), (9, True)):
        checks = with_(outlook, today=race_day - timedelta(days=days)).race_checks
        assert any(c.rule == "mandatory kit" for c in checks) is is_asked


def test_own_lines_join_the_countdown_in_their_place(outlook):
    own = (OwnDay(3, 18 * 3600.0, "Fetch the tent {0}"),)
    project = replace(outlook.project, logistics=replace(outlook.project.logistics, own_days=own))
    rows = countdown(project)
    (row,) = (r for r in rows if "Fetch" in WORDS.say(r.text))
    assert row.at.date() == project.race.day - timedelta(days=3)
    assert WORDS.say(row.text) == "Fetch the tent {0}"
    assert [r.at for r in rows] == sorted(r.at for r in rows)


def test_the_next_race_is_counted_from_the_end_of_rest(outlook):
    later = [c for c in outlook.project.candidates if c.day > outlook.project.race.day]
    rows = texts(days_after(outlook.project, 20.0 * 3600.0))
    assert later
    for candidate in later:
        (text,) = (t for t in rows if t.startswith(candidate.name))
        assert "weeks" in text
    soon = replace(later[0], day=outlook.project.race.day + timedelta(days=10))
    rows = texts(days_after(replace(outlook.project, candidates=(soon,)), 20.0 * 3600.0))
    assert any("too soon" in t for t in rows)


def test_the_countdown_is_printed_with_a_box_to_each_line(outlook):
    (card, _) = card_contents(Card(CardKind.COUNTDOWN), outlook, WORDS)
    items = [item for entry in card.entries for item in entry.items]
    assert len(items) == len(countdown(outlook.project))
    assert all(item.has_box for item in items)
    assert card.notes


def test_the_days_after_are_printed_unless_left_out(outlook):
    _, after = card_contents(Card(CardKind.COUNTDOWN), outlook, WORDS)
    lines = [item.text for entry in after.entries for item in entry.items]
    assert lines == texts(days_after(outlook.project, outlook.target.finish_s))
    rights = [entry.right for entry in after.entries]
    assert rights[0] == "the finish"
    assert f"day {rest_after(outlook.target.finish_s).hard_from[0]}" in rights
    bare = Card(CardKind.COUNTDOWN, leaves_out=(CardPart.AFTER,))
    assert len(card_contents(bare, outlook, WORDS)) == 1


def test_what_is_for_the_head_is_printed(outlook):
    lines = (IfThen("sick", "walk", tried=("a",)),)
    plan = with_(outlook, logistics=replace(outlook.project.logistics, if_then=lines))
    (card,) = card_contents(Card(CardKind.HARD), plan, WORDS)
    text = " ".join(item.text for entry in card.entries for item in entry.items)
    assert "walk (tried)" in text
    assert "Good day, about" in text
    assert "The dark hours" in text

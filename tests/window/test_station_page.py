"""The ledger on an aid station, and folds that last as long as the window."""

from datetime import date

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.course import ChangeStation
from ultraplanner_gui.edits.stations import SetStop
from ultraplanner_gui.engine.station_figures import station_figures
from ultraplanner_gui.plan.course import StopKind
from ultraplanner_gui.raceday.head_hand import START
from ultraplanner_gui.raceday.pleat import Pleat
from ultraplanner_gui.widgets.help_topic import topic_of
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Heads, Link, Title
from ultraplanner_gui.window.station_form import StationForm
from ultraplanner_gui.window.table_stations import STATIONS, station_rows
from ultraplanner_gui.wording.help.topics import TOPICS

TODAY = date(2026, 11, 25)
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def window(bare_window):
    bare_window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    QApplication.processEvents()
    return bare_window


def stations(window):
    return window.document.project.course.stations


def choose(window, index):
    key = stations(window)[index].key
    window.workplace.selection.choose("station", key)
    return key


def rows(window):
    return window.workplace.ledger._lower.rows


def figure(window, label):
    return next(r for r in rows(window) if isinstance(r, Figure) and r.label == label)


def name_of(window, key):
    head = window.workplace.raceday.head
    rect = next(rect for label, rect in head.placed(head.body()) if label.key == key)
    return head, rect.center().toPoint()


def drag(lane, start, by):
    QTest.mousePress(lane, LEFT, pos=start)
    for part in range(1, 6):
        QTest.mouseMove(lane, start + QPoint(by * part // 5, 0))


def test_page_of_a_station_says_arrival_cutoff_stop_and_the_leg_ahead(window):
    key = choose(window, 3)
    station = window.document.project.course.station(key)
    figures, words = station_figures(window.document.outlook, key), window.settings.words()
    race = window.document.project.race

    assert isinstance(rows(window)[0], Title)
    assert rows(window)[0].text == station.name
    assert figure(window, "Arrive").now == words.clock(race.clock(figures.arrive_s))
    assert figure(window, "To this cutoff").now == words.duration(figures.to_cutoff_s)
    assert figure(window, "Time in hand").now == words.duration(figures.in_hand_s)
    following = stations(window)[4]
    heads = [r.title for r in rows(window) if isinstance(r, Heads)]
    assert f"Ahead, to {following.name}" in heads
    assert figure(window, "Length").now == words.distance(following.at_m - station.at_m, 1)


def test_page_goes_from_figures_over_checks_to_what_waits(window):
    choose(window, 3)
    kinds = [
        "check" if isinstance(r, CheckRow) else r.title
        for r in rows(window)
        if isinstance(r, CheckRow | Heads)
    ]

    order = [kinds.index(k) for k in ("Aid station", "Carry out", "check", "Drop bag")]
    assert order == sorted(order)


def test_every_page_has_its_checks_after_its_figures(window):
    section = next(s for s in window.document.outlook.sections if s.to_cutoff_s is not None)
    window.workplace.selection.choose("section", section.key)

    kinds = [type(r) for r in rows(window)]

    assert CheckRow in kinds
    assert kinds.index(CheckRow) > kinds.index(Figure)


def test_station_in_the_hand_shows_before_and_now(window):
    key = choose(window, 3)
    was = figure(window, "At").now
    head, start = name_of(window, key)

    drag(head, start, 30)

    at = figure(window, "At")
    assert at.before == was
    assert at.now != was
    assert figure(window, "Length").before != figure(window, "Length").now
    QTest.keyClick(head, Qt.Key.Key_Escape)
    assert figure(window, "At").now == was


@pytest.mark.parametrize(
    ("stop_s", "kind", "label"),
    [
        (0.0, StopKind.PASS, "Stop: pass through"),
        (600.0, StopKind.PASS, "Stop"),
        (600.0, StopKind.EAT, "Stop: eat"),
    ],
)
def test_only_who_stops_for_no_time_passes_through(window, stop_s, kind, label):
    key = choose(window, 3)
    station = window.document.project.course.station(key)
    window.document.perform(ChangeStation(replace(station, stop_s=stop_s, stop_kind=kind)))
    assert figure(window, label).now == window.settings.words().duration(stop_s)


def test_form_and_table_call_a_stop_for_nothing_said_what_it_is(window):
    key = choose(window, 3)
    station = replace(window.document.project.course.station(key), stop_s=0.0)
    window.document.perform(ChangeStation(replace(station, stop_kind=StopKind.PASS)))
    form = StationForm(window.document, key, window.settings.words(), window)
    assert form.stop_kind.currentText() == "pass through"
    form.stop.setText("10 min")
    form.stop.take_typed()
    assert form.stop_kind.currentText() == "no reason given"
    form.send()
    row = next(r for r in station_rows(window.document.outlook) if r.key == key)
    column = next(c for c in STATIONS.columns if c.name == "Stop to")
    assert column.text(row, window.settings.words()) == "no reason given"
    for typed in ("no reason given", "pass through", "No reason"):
        edit = column.parse(row, typed, window.settings.words())
        assert edit.station.stop_kind is StopKind.PASS


def test_start_in_the_hand_shows_before_and_now_of_the_day(window):
    head, start = name_of(window, START)

    drag(head, start, 60)

    start_row = figure(window, "Start")
    assert start_row.before != start_row.now
    assert figure(window, "Finish").before != figure(window, "Finish").now
    QTest.mouseRelease(head, LEFT, pos=start + QPoint(60, 0))
    assert window.document.undo_stack.undoText() == "Move start"


def test_a_click_on_a_mend_shortens_the_stop_in_one_step(window):
    before, key = stations(window)[1].key, stations(window)[3].key
    document = window.document
    document.perform(SetStop(before, 5_400.0))
    arrive_s = station_figures(document.outlook, key).arrive_s
    station = document.project.course.station(key)
    document.perform(ChangeStation(replace(station, cutoff_s=arrive_s - 600.0)))
    window.workplace.selection.choose("station", key)
    link = next(r for r in rows(window) if isinstance(r, Link))
    steps = document.undo_stack.count()
    late_s = station_figures(document.outlook, key).to_cutoff_s

    window.workplace.ledger._lower.chosen.emit(link.target)

    assert document.undo_stack.count() == steps + 1
    assert document.project.course.station(before).stop_s < 5_400.0
    assert station_figures(document.outlook, key).to_cutoff_s > late_s


def test_no_mend_is_offered_for_a_station_on_trial(window):
    key = choose(window, 3)
    station = window.document.project.course.station(key)
    window.document.try_edit(ChangeStation(replace(station, cutoff_s=3_600.0)))

    assert any(isinstance(r, CheckRow) for r in rows(window))
    assert not any(isinstance(r, Link) and r.target.startswith("stop:") for r in rows(window))


def test_the_note_of_a_station_is_that_of_the_way_from_there(window):
    key = choose(window, 3)
    at_m = window.document.project.course.station(key).at_m
    ahead = next(s for s in window.document.outlook.sections if s.end_m > at_m)
    note = window.workplace.ledger._note
    assert note.isVisible()

    note.setFocus()
    note.setPlainText("If it is dark, then count steps.")
    window.workplace.ledger.flush()

    section = window.document.project.course.section(ahead.key)
    assert section.hard_note == "If it is dark, then count steps."


def test_folds_last_while_the_window_is_open(window):
    folds = window.workplace.raceday.folds
    folds.choose((stations(window)[1].key, ""))
    keys = folds.keys

    window.reopen_views()

    assert window.workplace.raceday.folds is not folds
    assert window.workplace.raceday.folds.keys == keys


def test_actions_fold_the_leg_of_what_is_chosen_and_unfold_all(window):
    choose(window, 2)
    window.table.by_name["fold_leg"].trigger()
    assert window.workplace.raceday.folds.keys == {stations(window)[3].key}
    section = window.document.outlook.sections[0]
    window.workplace.selection.choose("section", section.key)
    window.table.by_name["fold_leg"].trigger()
    assert len(window.workplace.raceday.folds.keys) == 2

    window.table.by_name["unfold_legs"].trigger()

    assert window.workplace.raceday.folds.keys == frozenset()


def test_with_nothing_chosen_the_action_says_what_to_choose(window):
    window.workplace.selection.clear()

    window.table.by_name["fold_leg"].trigger()

    assert window.workplace.raceday.folds.keys == frozenset()
    assert "Choose an aid station" in window._message.text()


def test_header_says_what_the_least_in_hand_was_while_something_is_held(window):
    key = choose(window, 3)
    caption = window.workplace.header._tightest._caption
    plain = caption.text()
    station = window.document.project.course.station(key)

    window.document.try_edit(ChangeStation(replace(station, cutoff_s=station.cutoff_s - 3_600.0)))
    was = window.settings.words().duration(window.document.before.tightest.to_cutoff_s)
    assert caption.text() == f"{plain}, was {was}"
    window.document.drop_trial()

    assert caption.text() == plain


def test_header_says_to_spare_or_too_late_at_the_tightest_cutoff(window):
    words, header = window.settings.words(), window.workplace.header
    tightest = window.document.outlook.tightest
    spare = words.duration(tightest.to_cutoff_s)
    assert header._tightest._value.text() == f"{tightest.name}, {spare} to spare"
    key = next(s.key for s in stations(window) if s.name == tightest.name)
    station = window.document.project.course.station(key)
    sooner_s = station.cutoff_s - tightest.to_cutoff_s - 600.0
    window.document.try_edit(ChangeStation(replace(station, cutoff_s=sooner_s)))
    assert header._tightest._value.text() == f"{tightest.name}, 10 min too late !"


def test_header_says_the_finish_planned_and_between_what_it_is_likely(window):
    outlook, words = window.document.outlook, window.settings.words()
    finish, race = window.workplace.header._finish, outlook.project.race
    low, high = outlook.sections[-1].window_s
    said = finish._value.text()
    assert said.startswith(f"{words.duration(outlook.target.finish_s)}, likely")
    assert words.duration(low) in said
    assert words.duration(high) in said
    for part in ("8 of 10", words.clock(race.clock(low)), words.clock(race.clock(high))):
        assert part in finish.toolTip()


def test_whatever_can_be_grasped_on_race_day_is_explained(window):
    day, head = window.workplace.raceday, window.workplace.raceday.head
    day.folds.choose((stations(window)[1].key,))
    QApplication.processEvents()
    body = head.body()
    spot = head.stop_spots(body)[3]
    fold = next(s.box for s in head.leg_spots(body) if s.box is not None).center()
    _, name = name_of(window, stations(window)[4].key)
    _, start = name_of(window, START)
    places = [fold.toPoint(), QPoint(round(spot.right), round(head.bar_top) + 6), name, start]

    topics = [head.topic_at(at) for at in places]

    assert topics == ["folded leg", "planned stop", "aid station", "moving the start"]
    pleats = [topic_of(p) for p in day.findChildren(Pleat)]
    assert pleats == ["folded leg"]
    assert set(topics) <= set(TOPICS)

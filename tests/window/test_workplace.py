"""The two storeys share the window; lanes are the user's to choose."""

from datetime import date
from itertools import pairwise

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QDialog

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.block import ReplaceBlock
from ultraplanner_gui.edits.block_moves import RemoveSessions
from ultraplanner_gui.edits.course import RemoveStation
from ultraplanner_gui.edits.fuel import RemoveItem
from ultraplanner_gui.edits.sections import SplitSection
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.workplace import race_share

TODAY = date(2026, 11, 25)


@pytest.fixture
def settings(tmp_path):
    return Settings(tmp_path / "settings.ini")


@pytest.fixture
def open_window(qtbot, settings):
    def make(width, height):
        window = MainWindow(settings)
        qtbot.addWidget(window)
        window.resize(width, height)
        window.show()
        window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
        qtbot.waitExposed(window)
        return window

    return make


def strips(window):
    place = window.workplace
    return place.buildup.stack.is_strip, place.raceday.stack.is_strip


def test_a_low_window_opens_one_storey_and_keeps_the_other_as_a_strip(open_window):
    window = open_window(1280, 720)
    assert strips(window) == (False, True)
    assert window.workplace.raceday.height() < 0.25 * window.height()
    window.deeds.raceday_alone()
    assert strips(window) == (True, False)
    assert window.workplace.buildup.height() < 0.25 * window.height()
    window.deeds.buildup_alone()
    assert strips(window) == (False, True)


def test_clicking_a_strip_opens_it(open_window, qtbot):
    window = open_window(1280, 720)
    qtbot.mouseClick(window.workplace.raceday.light, Qt.MouseButton.LeftButton)
    assert strips(window) == (True, False)


def test_a_high_window_opens_both(open_window):
    window = open_window(1440, 900)
    assert strips(window) == (False, False)
    window.resize(1440, 720)
    assert strips(window) == (False, True)
    window.resize(1440, 1000)
    assert strips(window) == (False, False)


def test_the_open_storey_is_remembered(open_window):
    open_window(1280, 720).deeds.raceday_alone()
    assert strips(open_window(1280, 720)) == (True, False)


def test_hidden_moved_and_sized_lanes_are_remembered(open_window):
    stack = open_window(1440, 1000).workplace.raceday.stack
    stack.show_lane("light", False)
    for _ in ("warmth", "in hand"):
        stack.move_lane("fuel", -1)
    stack.size_lane("target", 90)
    again = open_window(1440, 1000).workplace.raceday
    assert again.stack.arrangement == stack.arrangement
    assert not again.light.isVisible()
    assert again.fuel.y() < again.in_hand.y()
    again.stack.arrange_usually()
    assert again.light.isVisible()
    assert again.stack.arrangement == again.stack.usual


def test_the_view_menu_lists_the_lanes(open_window):
    window = open_window(1440, 1600)
    buildup, raceday = window._lanes
    buildup.aboutToShow.emit()
    raceday.aboutToShow.emit()
    for menu, stack in (
        (buildup, window.workplace.buildup.stack),
        (raceday, window.workplace.raceday.stack),
    ):
        titles = [stack.lane(choice.name).title for choice in stack.arrangement.lanes]
        checks = [action for action in menu.actions() if action.isCheckable()]
        assert [action.text() for action in checks] == titles
        checks[-1].trigger()
        assert not stack.arrangement.lanes[-1].is_shown


def test_a_lane_leads_to_its_table(open_window):
    window = open_window(1440, 1000)
    window.workplace.raceday.stack.show_table("fuel")
    assert window.workplace.place == "tables"
    assert window.workplace.tables.page.spec.name == "Fuel"


def test_choosing_distance_or_clock_is_remembered(open_window, settings, qtbot):
    window = open_window(1440, 900)
    window.workplace.raceday.title.chosen.emit("clock")
    assert settings.race_axis == "clock"


def test_the_last_lane_cannot_be_hidden(open_window):
    stack = open_window(1440, 900).workplace.buildup.stack
    for choice in stack.arrangement.lanes:
        stack.show_lane(choice.name, False)
    assert len(stack.arrangement.shown) == 1


@pytest.mark.parametrize("percent", [80, 100, 150, 200])
@pytest.mark.parametrize("size", [(1280, 720), (1440, 900), (1920, 1080), (2560, 1440)])
def test_lanes_never_lie_over_each_other(open_window, settings, size, percent):
    from ultraplanner_gui.widgets.theme import theme

    theme().choose("light", percent)
    try:
        window = open_window(*size)
        for storey in (window.workplace.buildup, window.workplace.raceday):
            parts = [p.part for p in storey.stack._places() if p.part.isVisible()]
            for above, below in pairwise(parts):
                assert above.geometry().bottom() < below.geometry().top() + 1
            assert parts[-1].geometry().bottom() <= storey.stack.height()
    finally:
        theme().choose("light", 100)


@pytest.mark.parametrize(("percent", "one"), [(100, False), (150, True), (200, True)])
def test_larger_text_makes_a_window_low_sooner(open_window, percent, one):
    from ultraplanner_gui.widgets.theme import theme

    window = open_window(1440, 900)
    try:
        theme().choose("light", percent)
        assert any(strips(window)) is one
    finally:
        theme().choose("light", 100)
    assert strips(window) == (False, False)


def test_tab_from_the_last_lane_of_one_storey_opens_the_other(open_window, qtbot):
    window = open_window(1280, 720)
    place = window.workplace
    with qtbot.waitActive(window):
        window.activateWindow()
    place.buildup.practice.setFocus()
    for _ in range(4):
        qtbot.keyClick(window.focusWidget(), Qt.Key.Key_Tab)
        if strips(window) == (True, False):
            break
    assert strips(window) == (True, False)
    assert place.raceday.isAncestorOf(window.focusWidget())
    for _ in range(6):
        qtbot.keyClick(window.focusWidget(), Qt.Key.Key_Backtab)
        if strips(window) == (False, True):
            break
    assert strips(window) == (False, True)
    assert place.buildup.isAncestorOf(window.focusWidget())


def test_what_is_selected_elsewhere_is_brought_into_sight(open_window):
    window = open_window(1280, 720)
    project = window.document.project
    window.workplace.selection.choose("item", project.fuel.items[0].key)
    assert strips(window) == (True, False)
    window.workplace.selection.choose("session", project.block.sessions[0].key)
    assert strips(window) == (False, True)


def test_what_an_undo_takes_away_is_selected_no_longer(open_window):
    window = open_window(1440, 900)
    document, selection = window.document, window.workplace.selection
    known = {s.key for s in document.project.course.sections}
    document.perform(SplitSection(5_000.0))
    new = next(s.key for s in document.project.course.sections if s.key not in known)
    selection.choose("section", new)
    document.undo_stack.undo()
    assert (selection.kind, selection.key) == ("", "")
    window.table.by_name["name_section"].trigger()
    assert not window.findChildren(QDialog)


def _removal(kind, project):
    """Return what removes two sessions, or one thing of another *kind*, and their keys."""
    course = project.course
    if kind == "session":
        keys = tuple(s.key for s in project.block.sessions if s.is_open)[4:6]
        return RemoveSessions(keys), keys
    if kind == "station":
        key = course.stations[2].key
        return RemoveStation(key), (key,)
    key = project.fuel.items[5].key
    return RemoveItem(key), (key,)


@pytest.mark.parametrize("kind", ["session", "station", "item"])
def test_what_an_undo_brings_back_is_selected_as_before(open_window, kind):
    window = open_window(1440, 900)
    document, selection = window.document, window.workplace.selection
    edit, keys = _removal(kind, document.project)
    selection.choose_all(kind, keys, keys[0])
    document.perform(edit)
    assert selection.kind == ""
    document.undo_stack.undo()
    assert (selection.kind, selection.key, selection.keys) == (kind, keys[0], keys)
    document.undo_stack.redo()
    assert selection.kind == ""


def test_undo_of_a_whole_new_block_selects_nothing(open_window):
    window = open_window(1440, 900)
    document, selection = window.document, window.workplace.selection
    block = document.project.block
    fewer = [replace(s, key=f"new-{s.key}") for s in block.sessions[::2]]
    document.perform(ReplaceBlock(replace(block, sessions=tuple(fewer))))
    document.undo_stack.undo()
    assert selection.kind == ""


def test_a_higher_window_gives_more_of_itself_to_the_many_lanes_of_the_race(open_window):
    low, high = open_window(1440, 900).workplace, open_window(1920, 1080).workplace
    assert race_share(900) < race_share(990) < race_share(1080) == race_share(1440)
    assert high.raceday.height() - low.raceday.height() > 0.6 * (high.height() - low.height())
    assert high.buildup.grid.height() >= low.buildup.grid.height()
    lanes = [
        sum(lane.isVisible() for lane in (day.warmth, day.surface, day.fluid))
        for day in (low.raceday, high.raceday)
    ]
    assert lanes == [0, 3]


def test_how_the_storeys_share_the_window_is_remembered(open_window):
    window = open_window(1440, 1000)
    splitter = window.workplace._storeys
    splitter.moveSplitter(splitter.sizes()[0] - 60, 1)
    sizes = splitter.sizes()
    window.close()
    assert open_window(1440, 1000).workplace._storeys.sizes() == sizes


def test_one_storey_alone_becomes_two_when_the_window_gets_low(open_window):
    window = open_window(1440, 900)
    window.deeds.raceday_alone()
    assert not window.workplace.buildup.isVisible()
    window.resize(1440, 700)
    assert window.workplace.buildup.isVisible()
    assert window.workplace.raceday.isVisible()


def test_no_storey_is_squeezed_below_its_least_by_the_splitter(open_window):
    window = open_window(1440, 900)
    place = window.workplace
    place._storeys.moveSplitter(0, 1)
    assert place.buildup.grid.isVisible()
    place._storeys.moveSplitter(2000, 1)
    assert place.raceday.target.isVisible()


@pytest.mark.parametrize(
    ("lane", "kind", "table"),
    [("target", "section", "Sections"), ("fuel", "item", "Fuel")],
)
def test_the_table_of_a_lane_shows_the_row_of_what_is_selected(open_window, lane, kind, table):
    window = open_window(1440, 1000)
    project = window.document.project
    keys = {"section": project.course.sections[2].key, "item": project.fuel.items[5].key}
    window.workplace.selection.choose(kind, keys[kind])
    window.workplace.raceday.stack.show_table(lane)
    page = window.workplace.tables.page
    assert page.spec.name == table
    assert page.view.currentIndex().isValid()
    assert window.workplace.selection.key == keys[kind]


def test_a_lane_of_the_build_up_leads_to_a_session_of_the_week(open_window):
    window = open_window(1440, 1000)
    place = window.workplace
    week = next(w for w in place.document.outlook.weeks if w.to_go == 6)
    place.selection.choose("week", week.start.isoformat())
    place.buildup.stack.show_table("longest")
    assert place.tables.page.spec.name == "Sessions"
    session = place.document.project.block.session(place.selection.key)
    assert session.key in week.sessions
    assert session.distance_m == week.longest_m


def test_over_a_week_its_figures_are_said(open_window, qtbot):
    window = open_window(1440, 1000)
    QApplication.processEvents()
    buildup, words = window.workplace.buildup, window.settings.words()
    week = next(w for w in window.document.outlook.weeks if w.to_go == 6)
    body = buildup.climb.body()
    left, right = buildup._axis.edges(
        buildup._axis.index_of(week.start), buildup.climb.body().width()
    )
    qtbot.mouseMove(buildup.climb, QPoint(round(body.left() + (left + right) / 2), 10))
    said = buildup._cursor.readout.text
    for text in ("6 to go", words.distance(week.distance_m), words.height(week.climb_m)):
        assert text in said
    line = buildup._cursor.line.geometry()
    assert line.left() == pytest.approx(body.left() + left, abs=1)
    assert line.right() == pytest.approx(body.left() + right, abs=1)

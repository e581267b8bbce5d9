from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.window.table_desk import TODAY, project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.action_table import TABLE
from ultraplanner_gui.window.actions import name_of
from ultraplanner_gui.window.finder_index import Entry, EntryIndex, words_of
from ultraplanner_gui.window.main_window import MainWindow

Key = Qt.Key


def entries(*texts):
    return [Entry("Thing", text, lambda: None) for text in texts]


def found(index, query):
    return [entry.text for entry in index.found(query)]


def test_words_are_found_in_any_order_without_accents_or_case():
    index = EntryIndex(entries("Hôtel de Ville, 12.4 km", "Old Mill", "Kühle Straße"))
    assert found(index, "ville hot") == ["Hôtel de Ville, 12.4 km"]
    assert found(index, "MILL") == ["Old Mill"]
    assert found(index, "kuhle strasse") == ["Kühle Straße"]
    assert found(index, "12.4") == ["Hôtel de Ville, 12.4 km"]


def test_a_word_is_found_by_its_beginning_only():
    index = EntryIndex(entries("Rehearsal run", "Downhill run"))
    assert found(index, "reh") == ["Rehearsal run"]
    assert found(index, "hears") == []
    assert found(index, "rhl") == []


def test_without_words_everything_is_listed_in_its_order():
    assert found(EntryIndex(entries("b", "a")), " , ") == ["b", "a"]


def test_what_begins_as_typed_comes_first_then_words_one_behind_another():
    index = EntryIndex(
        [
            *entries("long to 9 go", "13 to go, 9.5", "far: 9 to go", "9 to go"),
            Entry("Thing", "session", lambda: None, aside="9 to go"),
        ]
    )
    order = ["9 to go", "far: 9 to go", "session", "long to 9 go", "13 to go, 9.5"]
    assert found(index, "9 to go") == order


def test_what_can_be_done_now_comes_before_what_cannot():
    off = Entry("Do", "Remove session", lambda: None, is_enabled=False)
    on = Entry("Do", "Remove item", lambda: None)
    assert EntryIndex([off, on]).found("remove") == [on, off]


def test_words_of_splits_at_signs_but_not_in_numbers():
    assert words_of("back-to-back (00:12), 1,240 m") == [
        "back",
        "to",
        "back",
        "00:12",
        "1,240",
        "m",
    ]


@pytest.fixture
def empty_window(qapp, qtbot, tmp_path):
    theme().choose("light", 100)
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "en_GB"
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.resize(1440, 900)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    return window


@pytest.fixture
def window(empty_window):
    empty_window.show_document(Document(project=project(), today=lambda: TODAY))
    QApplication.processEvents()
    return empty_window


@pytest.fixture
def look(qtbot):
    """Open the finder over a window, type into it; give the texts of what it lists."""

    def typed(window, query):
        window.table.by_name["find"].trigger()
        finder = window.finder
        assert finder.field.hasFocus()
        qtbot.keyClicks(finder.field, query)
        rows = range(finder.found.rowCount())
        return [(finder.found.entry(n).kind, finder.found.entry(n).text) for n in rows]

    return typed


def take(qtbot, window, query, look):
    look(window, query)
    qtbot.keyClick(window.finder.field, Key.Key_Return)


def test_a_session_is_found_by_day_kind_and_week_and_shown_on_the_sheet(qtbot, window, look):
    window.go("tables")
    assert look(window, "long 15 may") == [("Session", "Sat 15 May: long run, 24.0 km")]
    qtbot.keyClick(window.finder.field, Key.Key_Return)
    assert window.finder.isHidden()
    assert window.workplace.place == "sheet"
    selection = window.workplace.selection
    assert (selection.kind, selection.key) == ("session", "s3")
    assert window.workplace.buildup.grid.hasFocus()


def test_weeks_to_go_list_the_sessions_of_that_week_first(window, look):
    kinds_and_texts = look(window, "4 to go")
    assert kinds_and_texts[0] == ("Session", "Tue 18 May: strength, 50 min")


@pytest.mark.parametrize(
    ("query", "kind", "key"),
    [
        ("section mill hut", "section", "to-hut"),
        ("aid station mill", "section", "to-mill"),
        ("fuel item gel 1 h 30", "item", "i3"),
    ],
)
def test_things_of_race_day_are_selected_on_the_sheet(qtbot, window, look, query, kind, key):
    window.deeds.buildup_alone()
    take(qtbot, window, query, look)
    selection = window.workplace.selection
    assert (selection.kind, selection.key) == (kind, key)
    assert window.workplace.raceday.isVisible()
    assert window.workplace.raceday.isAncestorOf(QApplication.focusWidget())


def test_a_food_is_shown_in_its_table(qtbot, window, look):
    take(qtbot, window, "food water", look)
    assert window.workplace.place == "tables"
    view = window.workplace.tables.page.view
    assert view.currentIndex().row() == window.workplace.tables.page.table.row_of("water")


def test_checks_that_do_not_hold_are_found_and_lead_to_their_place(qtbot, window, look):
    loose = [c for c in window.document.outlook.checks if c.state.name != "HOLDS" and c.sessions]
    text = window.settings.words().say(loose[0].text)
    assert ("Check", text) in look(window, f"check {text}")
    qtbot.keyClick(window.finder.field, Key.Key_Return)
    assert window.workplace.selection.key == loose[0].sessions[0]


def test_every_action_is_found_by_its_text_with_its_keys(window, look):
    look(window, "")
    listed = [window.finder.found.entry(n) for n in range(window.finder.found.rowCount())]
    deeds = [entry for entry in listed if entry.kind in ("Do", "Setting")]
    for row in TABLE:
        action = window.table.by_name[row.name]
        text = name_of(action).casefold()
        if row.name == "find":
            continue
        (entry,) = (e for e in deeds if e.text.casefold().rpartition(": ")[2] == text)
        assert entry.is_enabled == action.isEnabled()
        if action.isEnabled() and not action.shortcut().isEmpty():
            assert entry.aside in (action.shortcut().toString(), "now")


def test_an_action_that_cannot_be_done_says_why_and_stays(qtbot, window, look):
    take(qtbot, window, "remove session", look)
    assert window.finder.isVisible()
    entry = window.finder.found.entry(0)
    assert (entry.is_enabled, entry.aside) == (False, "choose a session first")
    assert len(window.document.project.block.sessions) == 5


def test_an_action_is_done_with_the_keys_back_where_they_were(qtbot, window, look):
    window.workplace.selection.choose("session", "s3")
    window.workplace.buildup.grid.setFocus()
    take(qtbot, window, "mark missed", look)
    assert window.document.project.block.session("s3").missed
    assert window.workplace.buildup.grid.hasFocus()


def test_a_setting_is_set_and_the_present_one_is_marked(qtbot, window, look):
    take(qtbot, window, "units miles", look)
    assert window.settings.units == "imperial"
    look(window, "units miles")
    assert window.finder.found.entry(0).aside == "now"


def test_a_help_topic_opens(qtbot, window, look):
    take(qtbot, window, "help time in hand", look)
    assert window.help.panel is not None
    assert window.help.panel.key == "time in hand"


def test_undo_is_found_by_the_name_of_the_step(qtbot, window, look):
    window.workplace.selection.choose("session", "s3")
    window.deeds.mark_missed()
    take(qtbot, window, "undo mark", look)
    assert not window.document.project.block.session("s3").missed


def test_esc_closes_and_gives_the_keys_back(qtbot, window, look):
    lane = window.workplace.raceday.target
    lane.setFocus()
    look(window, "anything")
    qtbot.keyClick(window.finder.field, Key.Key_Escape)
    assert window.finder.isHidden()
    assert lane.hasFocus()


def test_arrows_choose_while_one_types_on(qtbot, window, look):
    look(window, "open")
    finder = window.finder
    qtbot.keyClick(finder.field, Key.Key_Down)
    assert finder.list.currentIndex().row() == 1
    assert finder.found.entry(1).text in finder.field.accessibleDescription()
    qtbot.keyClick(finder.field, Key.Key_PageUp)
    assert finder.list.currentIndex().row() == 0
    assert finder.field.hasFocus()


def test_a_click_elsewhere_closes_it(window, look):
    look(window, "a")
    window.workplace.raceday.target.setFocus()
    assert window.finder.isHidden()
    assert window.workplace.raceday.target.hasFocus()


def test_nothing_found_is_said(qtbot, window, look):
    assert look(window, "xyzzy") == []
    qtbot.keyClick(window.finder.field, Key.Key_Return)
    assert window.finder.isVisible()


def test_without_a_project_there_are_actions_alone_and_why_they_wait(empty_window, look):
    kinds = {kind for kind, _ in look(empty_window, "")}
    assert kinds == {"Do", "Setting", "Help"}
    listed = [empty_window.finder.found.entry(n) for n in range(80)]
    waiting = {e.aside for e in listed if e is not None and not e.is_enabled}
    assert waiting == {"open a project first"}


def test_more_sources_can_be_added(qtbot, window, look):
    done = []
    window.finder.add_source(lambda: [Entry("Mine", "Quux", lambda: done.append(date.today()))])
    take(qtbot, window, "quux", look)
    assert len(done) == 1

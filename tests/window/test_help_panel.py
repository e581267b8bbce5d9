import subprocess
import sys
from datetime import date

import pytest
from PySide6.QtCore import QEvent, QPoint, QRect, Qt, QUrl
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QApplication,
    QCheckBox,
    QComboBox,
    QDialog,
    QLineEdit,
    QPlainTextEdit,
    QWidget,
)

from tests.rules import source
from ultraplanner_gui.buildup.session_editor import SessionEditor
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.block import MarkMissed
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.help_topic import PROPERTY, topic_of
from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Rows
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.header import HeaderFigure
from ultraplanner_gui.window.help_html import as_html
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.window.table_topics import column_topics
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.help.topics import TOPICS

TODAY = date(2027, 4, 5)
LEFT = Qt.MouseButton.LeftButton
Key = Qt.Key
FIELDS = (QLineEdit, QPlainTextEdit, QAbstractSpinBox, QComboBox, QCheckBox)


@pytest.fixture(scope="module")
def demo():
    return demo_project(TODAY)


@pytest.fixture
def window(qapp, qtbot, tmp_path, demo):
    theme().choose("light", 100)
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "en_GB"
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.resize(1440, 900)
    window.show_document(Document(project=demo, today=lambda: TODAY))
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    yield window
    window.close()
    theme().choose("light", 100)


def focus_on(qtbot, widget):
    widget.setFocus()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is widget)


def press(qtbot, key, modifier=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(QApplication.focusWidget(), key, modifier)


def ask_here(qtbot, widget):
    focus_on(qtbot, widget)
    press(qtbot, Key.Key_F1)


def ledger_rows(window):
    upper, lower = window.workplace.ledger.findChildren(Rows)
    return [*upper.rows, *lower.rows]


def unexplained(rows):
    """Return the labels of *rows* the help has nothing on."""
    return [
        getattr(row, "label", None) or row.text
        for row in rows
        if isinstance(row, Figure | CheckRow) and row.topic not in TOPICS
    ]


# Everything that shows a figure has a topic


def test_every_figure_and_check_of_the_ledger_is_explained(window):
    place = window.workplace
    project = place.document.project
    easy = next(s for s in project.block.sessions if s.is_open and s.kind is Kind.EASY)
    place.document.perform(MarkMissed(easy.key))
    ends = [(w.sessions[0]) for w in place.document.shown.weeks if w.sessions]
    one_of_each = {s.kind: s.key for s in project.block.sessions}.values()
    things = [("session", key) for key in (*ends, *one_of_each, easy.key)]
    things += [("section", s.key) for s in project.course.sections]
    things += [("station", s.key) for s in project.course.stations]
    things += [("item", item.key) for item in project.fuel.items[:12]]
    seen = {type(row) for row in ledger_rows(window)}
    assert unexplained(ledger_rows(window)) == []
    for kind, key in things:
        place.selection.choose(kind, key)
        assert unexplained(ledger_rows(window)) == [], (kind, key)
        seen |= {type(row) for row in ledger_rows(window)}
    assert {Figure, CheckRow} <= seen


def test_a_figure_without_a_topic_would_be_found():
    assert unexplained([Figure("Speed", "1"), Figure("Load", "2", topic="load")]) == ["Speed"]


def test_every_lane_is_explained(window):
    lanes = window.findChildren(Lane)
    assert len(lanes) >= 12
    assert [type(lane).__name__ for lane in lanes if lane.topic_at(None) not in TOPICS] == []


def test_every_figure_of_the_header_is_explained(window):
    header = window.workplace.header
    figures = header.findChildren(HeaderFigure)
    assert len(figures) >= 4
    assert [f.accessibleName() for f in figures if topic_of(f) not in TOPICS] == []
    assert topic_of(header) in TOPICS


@pytest.mark.parametrize("spec", SPECS, ids=lambda spec: spec.name)
def test_every_column_of_the_tables_is_explained(spec):
    topics = zip(spec.columns, column_topics(spec), strict=True)
    assert [column.name for column, topic in topics if topic not in TOPICS] == []


def fields_without_topic(dialog):
    """Return the names of the fields of *dialog* that say nothing of their own to the help."""

    def names_one(widget):
        while widget is not dialog and not widget.property(PROPERTY):
            widget = widget.parentWidget()
        return widget is not dialog and widget.property(PROPERTY) in TOPICS

    fields = [w for w in dialog.findChildren(QWidget) if isinstance(w, FIELDS)]
    assert len(fields) > 4
    return [f.accessibleName() or f.objectName() for f in fields if not names_one(f)]


def open_form(window):
    project = window.document.project
    form = PlanForm(
        project.race, project.runner, 0, window.settings.words(), lambda answers: "", parent=window
    )
    form.open()
    return form


def test_every_field_of_the_form_is_explained(window):
    assert fields_without_topic(open_form(window)) == []


def test_every_field_of_the_session_editor_is_explained(window):
    key = window.document.project.block.sessions[0].key
    editor = SessionEditor(window.document, key, window.settings.words(), window)
    assert fields_without_topic(editor) == []


@pytest.mark.parametrize("form", ["shape_form", "conditions_form"])
def test_every_field_of_a_pace_form_is_explained(window, form):
    getattr(window.deeds, form)()
    dialog = next(d for d in window.findChildren(QDialog) if d.isVisible())
    assert fields_without_topic(dialog) == []


def test_every_field_of_fuel_per_hour_is_explained(window):
    window.deeds.fuel_rates()
    dialog = next(d for d in window.findChildren(QDialog) if "Fuel" in d.windowTitle())
    assert fields_without_topic(dialog) == []


def test_every_card_is_explained(window):
    window.go("cards")
    preview = window.workplace.cards.preview
    spots = {
        preview.topic_at(QPoint(x, y))
        for x in range(0, preview.width(), 20)
        for y in range(0, preview.height(), 20)
    }
    assert {"", "pace card", "fuel card", "crew sheet", "who I am"} <= spots
    assert spots - {""} <= TOPICS.keys()


# F1


def test_f1_explains_the_lane_that_has_the_focus_and_esc_gives_it_back(window, qtbot):
    lane = window.workplace.raceday.target
    ask_here(qtbot, lane)
    panel = window.help.panel
    assert panel.key == "target"
    assert panel.isAncestorOf(QApplication.focusWidget())
    assert panel.title.text() == "Target"
    press(qtbot, Key.Key_Escape)
    assert window.help.panel is None
    assert QApplication.focusWidget() is lane


def test_f1_on_the_day_grid_explains_the_kind_of_the_chosen_session(window, qtbot):
    place = window.workplace
    long = next(s for s in place.document.project.block.sessions if s.kind is Kind.REHEARSAL)
    place.selection.choose("session", long.key)
    ask_here(qtbot, place.buildup.grid)
    assert window.help.panel.key == "rehearsal run"


def test_f1_on_the_day_grid_with_nothing_chosen_explains_the_grid(window, qtbot):
    ask_here(qtbot, window.workplace.buildup.grid)
    assert window.help.panel.key == "day grid"


def test_f1_in_a_table_explains_the_column(window, qtbot):
    window.go("tables")
    tables = window.workplace.tables
    tables.show_table("Sections")
    view = tables.page.view
    heads = [column.name for column in tables.page.spec.columns]
    focus_on(qtbot, view)
    view.setCurrentIndex(view.model().index(2, heads.index("Time in hand")))
    press(qtbot, Key.Key_F1)
    assert window.help.panel.key == "time in hand"


def test_a_column_without_a_tip_of_its_own_says_what_it_is(window):
    page = next(p for p in window.workplace.tables.pages if p.spec.name == "Sessions")
    heads = [column.name for column in page.spec.columns]
    tip = page.table.headerData(
        heads.index("Effort"), Qt.Orientation.Horizontal, Qt.ItemDataRole.ToolTipRole
    )
    assert tip == TOPICS["effort"].what


def test_f1_with_no_project_explains_how_to_start(qapp, qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    window.deeds.help_here()
    assert window.help.panel.key == "welcome"
    window.close()


def test_f1_in_a_form_opens_beside_it_and_gives_the_keys_back(window, qtbot):
    form = open_form(window)
    qtbot.waitUntil(lambda: QApplication.activeWindow() is form)
    focus_on(qtbot, form.weekly)
    press(qtbot, Key.Key_F1)
    panel = window.help.panel
    assert panel.key == "usual week"
    assert panel.window() is not form
    assert panel.window().parentWidget() is form
    assert panel.screen().availableGeometry().contains(panel.window().geometry())
    panel.closed.emit()
    assert form.isVisible()
    assert form.focusWidget() is form.weekly
    form.reject()


def test_the_help_of_a_form_goes_with_it(window, qtbot):
    form = open_form(window)
    qtbot.waitUntil(lambda: QApplication.activeWindow() is form)
    ask_here(qtbot, form.goal)
    assert window.help.panel is not None
    form.reject()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert window.help.panel is None
    window.activateWindow()
    ask_here(qtbot, window.workplace.raceday.target)
    assert window.help.panel.key == "target"


# Ledger and header


def test_down_and_f1_explain_the_lines_of_the_ledger_one_by_one(window, qtbot):
    _, lower = window.workplace.ledger.findChildren(Rows)
    focus_on(qtbot, lower)
    topics = []
    for _ in range(5):
        press(qtbot, Key.Key_Down)
        topics.append(topic_of(lower))
    assert topics == ["lessons", "least in hand", "odds", "lamp", "race day"]
    assert lower.accessibleName().startswith("Race day figures: The day")
    press(qtbot, Key.Key_Up)
    press(qtbot, Key.Key_F1)
    assert window.help.panel.key == "lamp"


def test_enter_on_a_check_still_goes_to_its_session(window, qtbot):
    upper, _ = window.workplace.ledger.findChildren(Rows)
    focus_on(qtbot, upper)
    press(qtbot, Key.Key_Return)
    assert window.workplace.selection.kind == "session"
    assert window.help.panel is None


def place_of(rows, label):
    """Return the middle of the line *label*, felt for from the top."""
    for y in range(rows.height()):
        row = next((r for r in rows.rows if getattr(r, "label", "") == label), None)
        if row is not None and rows.topic_at(QPoint(5, y)) == row.topic:
            return QPoint(5, y + 4)
    raise AssertionError(f"{label} is not in the ledger")


def test_a_click_on_a_figure_of_the_ledger_explains_it_beside_the_ledger(window, qtbot):
    upper, _ = window.workplace.ledger.findChildren(Rows)
    qtbot.mouseClick(upper, LEFT, pos=place_of(upper, "Load"))
    panel = window.help.panel
    assert panel.key == "load"
    ledger = QRect(window.workplace.ledger.mapTo(window, QPoint()), window.workplace.ledger.size())
    assert not panel.geometry().intersects(ledger)


def test_the_panel_lies_over_the_ledger_when_a_lane_is_asked_about(window, qtbot):
    ask_here(qtbot, window.workplace.raceday.fuel)
    panel = window.help.panel
    assert panel.geometry().contains(window.workplace.ledger.mapTo(window, QPoint(150, 200)))
    assert panel.geometry().right() <= window.width()


def test_a_click_on_a_figure_of_the_header_explains_it(window, qtbot):
    for figure in window.workplace.header.findChildren(HeaderFigure):
        if figure.isVisible():
            qtbot.mouseClick(figure, LEFT)
            assert window.help.panel.key == topic_of(figure)


def test_enter_on_a_figure_of_the_header_explains_it(window, qtbot):
    figure = window.workplace.header.findChildren(HeaderFigure)[0]
    focus_on(qtbot, figure)
    press(qtbot, Key.Key_Return)
    assert window.help.panel.key == "runway"


# Pointing


def test_pointing_explains_what_is_clicked_and_does_nothing_else(window, qtbot):
    place = window.workplace
    focus_on(qtbot, place.buildup.grid)
    press(qtbot, Key.Key_F1, Qt.KeyboardModifier.ShiftModifier)
    lane = place.raceday.target
    qtbot.mouseClick(lane, LEFT, pos=QPoint(300, 20))
    assert window.help.panel.key == "target"
    assert place.selection.kind == ""
    assert QApplication.overrideCursor() is None
    qtbot.mouseClick(lane, LEFT, pos=QPoint(300, 20))
    assert place.selection.kind == "section"


def test_pointing_at_a_tile_explains_its_kind(window, qtbot):
    grid = window.workplace.buildup.grid
    tiles = [tile for day in grid.cells.by_day.values() for tile in day]
    hills = next(tile for tile in tiles if tile.session.kind is Kind.HILLS)
    window.deeds.help_point()
    qtbot.mouseClick(grid, LEFT, pos=hills.rect.center().toPoint())
    assert window.help.panel.key == "hill run"


def test_pointing_at_a_label_of_a_form_explains_its_field(window, qtbot):
    form = open_form(window)
    label = next(w for w in form.findChildren(QWidget) if getattr(w, "text", str)() == "&Body mass")
    assert topic_of(label, QPoint(2, 2)) == "body mass"
    form.reject()


def test_esc_leaves_pointing(window, qtbot):
    place = window.workplace
    focus_on(qtbot, place.buildup.grid)
    window.deeds.help_point()
    press(qtbot, Key.Key_Escape)
    qtbot.mouseClick(place.raceday.target, LEFT, pos=QPoint(300, 20))
    assert window.help.panel is None
    assert place.selection.kind == "section"


# The panel


@pytest.fixture
def panel(window, qtbot):
    ask_here(qtbot, window.workplace.raceday.target)
    return window.help.panel


def test_the_panel_says_what_how_source_and_caution(panel):
    panel.show_topic("time in hand")
    text = panel.text.toPlainText()
    topic = TOPICS["time in hand"]
    for part in (topic.what, topic.how, topic.caution, "Our own choice", "To this cutoff"):
        assert part in text


@pytest.mark.parametrize("key", TOPICS)
def test_every_source_is_shown_with_its_mark(qapp, key):
    html = as_html(TOPICS[key])
    for each in TOPICS[key].sources:
        assert f"<b>{each.mark.value}.</b>" in html
        assert each.cite.replace("&", "&amp;") in html


@pytest.mark.parametrize("key", TOPICS)
def test_links_lead_where_they_say(qapp, key):
    for link in TOPICS[key].see:
        assert QUrl(f"topic:{link}").path() == link


def test_a_link_leads_on_and_alt_left_back(panel, qtbot):
    panel.text.anchorClicked.emit(QUrl("topic:forecast"))
    panel.text.anchorClicked.emit(QUrl("topic:pace model"))
    assert panel.key == "pace model"
    press(qtbot, Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert panel.key == "forecast"
    panel.back.click()
    assert panel.key == "target"
    assert not panel.back.isEnabled()


def test_links_are_reached_by_tab_and_followed_by_enter(panel, qtbot):
    press(qtbot, Key.Key_Tab)
    press(qtbot, Key.Key_Return)
    assert panel.key == TOPICS["target"].see[0]


def test_typing_finds_and_enter_opens(panel, qtbot):
    panel.field.setFocus()
    qtbot.keyClicks(panel.field, "coffee")
    assert panel.key == ""
    assert panel.found.count() == 1
    qtbot.keyClick(panel.field, Key.Key_Return)
    assert panel.key == "caffeine"


def test_arrow_keys_choose_among_what_was_found(panel, qtbot):
    panel.field.setFocus()
    qtbot.keyClicks(panel.field, "gel")
    titles = [panel.found.item(n).text() for n in range(panel.found.count())]
    assert len(titles) > 1
    qtbot.keyClick(panel.field, Key.Key_Down)
    press(qtbot, Key.Key_Down)
    press(qtbot, Key.Key_Return)
    assert panel.title.text() == titles[1]


def test_what_is_not_found_says_so_and_opens_nothing(panel, qtbot):
    panel.field.setFocus()
    qtbot.keyClicks(panel.field, "zebra")
    assert panel.found.count() == 1
    qtbot.keyClick(panel.field, Key.Key_Return)
    assert panel.key == ""
    panel.back.click()
    assert panel.key == "target"


def test_all_topics_are_listed_from_the_menu(window, qtbot):
    window.deeds.help_topics()
    panel = window.help.panel
    assert panel.found.count() == len(TOPICS)
    assert panel.field.hasFocus()


def test_the_panel_stays_in_the_window_at_every_size(window, panel):
    for percent, size in ((100, (960, 600)), (200, (1280, 720)), (80, (1920, 1080))):
        theme().choose("light", percent)
        window.resize(*size)
        QApplication.processEvents()
        assert window.rect().contains(panel.geometry())
        assert panel.text.horizontalScrollBar().maximum() == 0


def test_the_panel_wears_the_colours_in_force(panel):
    theme().choose("dark", 100)
    assert theme().colours.teal in as_html(TOPICS["target"])
    assert theme().colours.panel in panel.styleSheet()
    assert theme().colours.teal in panel.text.toHtml()


def test_everything_in_the_panel_has_a_name(panel):
    focusable = [
        w for w in panel.findChildren(QWidget) if w.focusPolicy() & Qt.FocusPolicy.TabFocus
    ]
    assert len(focusable) >= 4
    assert [w for w in focusable if not (w.accessibleName() or getattr(w, "text", str)())] == []
    assert panel.accessibleName() == "Help: Target"


def test_a_tool_tip_of_the_ledger_still_shows(window):
    upper, _ = window.workplace.ledger.findChildren(Rows)
    at = place_of(upper, "Load")
    event = QHelpEvent(QEvent.Type.ToolTip, at, upper.mapToGlobal(at))
    assert upper.event(event)


def test_the_texts_are_not_read_before_the_first_question():
    code = (
        "import sys; import ultraplanner_gui.window.main_window; "
        "sys.exit('ultraplanner_gui.wording.help.topics' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=source.ROOT, check=False)
    assert done.returncode == 0

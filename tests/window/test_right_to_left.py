"""Read from right to left the window is its mirror image; a course still runs to the right."""

import sys
from datetime import date, time
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt, QTime, QTranslator
from PySide6.QtGui import QTextLayout, QTextOption
from PySide6.QtTest import QTest

from tests.window.test_text_walk import LEFT, PLAIN, _target, _tile, _token
from tests.window.text_drawn import TextWatch, settle
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.language import reads_leftward
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.widgets.fields import ClockField, DateField
from ultraplanner_gui.widgets.rows import Figure, Rows
from ultraplanner_gui.window.table_export import table_csv
from ultraplanner_gui.window.tables import SPECS

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
import translate
from pictures_languages import spoken

TODAY = date(2026, 11, 25)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("languages")


@pytest.fixture
def leftward(qapp, folder):
    with spoken("leftward", folder):
        yield


@pytest.fixture
def window(qapp, leftward, bare_window):
    qapp.setStyle("Fusion")
    bare_window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    settle()
    return bare_window


def _left(widget, window):
    return widget.mapTo(window, QPoint(0, 0)).x()


def test_the_ledger_stands_at_the_left(window):
    desk = window.workplace
    assert _left(desk.ledger, window) < _left(desk.raceday, window)


def test_lanes_run_to_the_right(window):
    lane = window.workplace.raceday.target
    length_m = window.document.project.course.length_m
    assert lane.x_of(0.0, lane.body()) < lane.x_of(length_m, lane.body())
    grid = window.workplace.buildup.grid
    first, *_, last = window.document.project.block.sessions
    assert grid.cells.cell(first.day).left() < grid.cells.cell(last.day).left()


@pytest.mark.parametrize("what", [_tile, _target, _token])
def test_what_is_dragged_follows_the_hand(window, what):
    widget, start, end = what(window)
    before = window.document.project
    QTest.mousePress(widget, LEFT, PLAIN, start)
    for share in (0.4, 0.7, 1.0):
        QTest.mouseMove(widget, start + (end - start) * share)
    QTest.mouseRelease(widget, LEFT, PLAIN, end)
    after = window.document.project
    if what is _tile:
        moved = set(after.block.sessions) - set(before.block.sessions)
        was = {s.key: s.day for s in before.block.sessions}
        assert [(s.day - was[s.key]).days for s in moved] == [6]
    elif what is _token:
        at_s = {item.key: item.at_s for item in before.fuel.items}
        later = [item.at_s - at_s[item.key] for item in after.fuel.items]
        assert max(later) > 60.0
        assert min(later) == 0.0
    else:
        assert after.course.sections != before.course.sections


def test_labels_stand_at_the_right_and_figures_at_the_left(leftward, qtbot, monkeypatch):
    rows = Rows("figures")
    qtbot.addWidget(rows)
    rows.resize(300, 80)
    rows.show_rows((Figure("Distance", "13.5 km"), Figure("Climb, drop", "151, 921")))
    watch = TextWatch(monkeypatch)
    rows.grab()
    inks = {one.text: one.ink for there in watch._drawn.values() for one in there.values()}
    assert inks["\u206713.5 km\u2069"].left() < 5.0
    assert inks["Distance"].right() > 295.0
    pair = next(text for text in inks if "921" in text)
    assert _visible_order(pair, "151, 921") == "921,151"


def _visible_order(text, part):
    """Return *part* of the Hebrew *text* as Qt lays it out, from left to right."""
    layout, option = QTextLayout(text), QTextOption()
    option.setTextDirection(Qt.LayoutDirection.RightToLeft)
    layout.setTextOption(option)
    layout.beginLayout()
    layout.createLine()
    layout.endLayout()
    first, seen = text.index(part), []
    ask = QTextLayout.GlyphRunRetrievalFlag
    for run in layout.glyphRuns(
        0, len(text), ask.RetrieveStringIndexes | ask.DefaultRetrievalFlags
    ):
        places = zip(run.stringIndexes(), run.positions(), strict=True)
        seen += [(at.x(), text[n]) for n, at in places if 0 <= n - first < len(part)]
    return "".join(sign for _, sign in sorted(seen)).replace(" ", "")


@pytest.mark.parametrize("part", ["1 h 26", "13.5 km", "-5", "+12 min", "6:30 min/km"])
def test_a_number_keeps_its_order_in_a_sentence(leftward, tmp_path, part):
    words = Settings(tmp_path / "settings.ini").words()
    said = {
        "1 h 26": words.duration(5160),
        "13.5 km": words.distance(13_500),
        "-5": words.number(-5),
        "+12 min": words.signed(words.duration(720)),
        "6:30 min/km": words.pace_with_unit(0.39),
    }[part]
    sentence = "\u05d6\u05de\u05df {} \u05d9\u05d5\u05ea\u05e8"
    assert _visible_order(sentence.format(said), part) == part.replace(" ", "")
    assert _visible_order(sentence.format(part), part) != part.replace(" ", "")


def test_words_follow_the_language_in_force(qapp, folder, tmp_path):
    settings = Settings(tmp_path / "settings.ini")
    assert settings.words().duration(5160) == "1 h 26"
    with spoken("leftward", folder):
        assert settings.words().leftward
    assert not settings.words().leftward


def test_what_is_copied_out_of_a_table_has_no_marks(leftward, tmp_path):
    words = Settings(tmp_path / "settings.ini").words()
    for spec in SPECS:
        data = table_csv(spec, derive(demo_project(TODAY)), words).decode()
        assert not {"\u2066", "\u2068", "\u2069"} & set(data), spec.name


def test_a_clock_time_and_a_day_keep_their_order(leftward, qtbot):
    clock, day = ClockField(), DateField()
    qtbot.addWidget(clock)
    qtbot.addWidget(day)
    clock.setTime(QTime(6, 0))
    day.setDate(date(2027, 2, 13))
    assert time.fromisoformat(clock.text()) == time(6, 0)
    assert day.text().endswith("13 Feb 2027")


@pytest.mark.parametrize(
    ("form", "is_leftward"), [("long", False), ("leftward", True), ("both", True)]
)
def test_a_translation_says_which_way_it_is_read(folder, form, is_leftward):
    translator = QTranslator()
    assert translator.load(str(translate.pseudo(folder, form)))
    assert reads_leftward(translator.language()) == is_leftward


def test_a_made_up_language_is_longer_and_keeps_marks():
    text = "{0} of {1} days, <b>about</b>"
    longer = translate.pseudo_text(text)
    assert len(longer) >= 1.3 * len(text)
    for made in (longer, translate.leftward_text(text)):
        assert {"{0}", "{1}", "<b>", "</b>"} <= set(translate._PLACEHOLDER.findall(made))

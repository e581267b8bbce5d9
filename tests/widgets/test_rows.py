from itertools import combinations

import pytest
from PySide6.QtCore import QEvent, QPoint, QRectF, Qt
from PySide6.QtGui import QColor, QHelpEvent, QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolTip

from ultraplanner_gui.engine.state import State
from ultraplanner_gui.widgets.cord import draw_cord
from ultraplanner_gui.widgets.rows import (
    CheckRow,
    Figure,
    Heads,
    Link,
    Rows,
    Rule,
    Sentence,
    Title,
)
from ultraplanner_gui.widgets.theme import theme

ROWS = (
    Title("Halfway Barn to Long Ridge", "16.1 km, climb 890 m"),
    Heads("10 to go", "before", "now"),
    Figure("Distance", "64 km", "53 km", warns=True, help_text="what is run in the week"),
    Rule(),
    CheckRow(State.STRAINS, "A hard day before the long run", "why it matters", "easy5"),
    Sentence("Drop here, or Esc to put it back."),
)


@pytest.fixture
def rows(qtbot):
    rows = Rows("Ledger")
    qtbot.addWidget(rows)
    rows.resize(260, 300)
    rows.show_rows(ROWS)
    rows.show()
    return rows


def spot(rows, wanted):
    """Return a point on the row *wanted*."""
    top = 0.0
    for row in ROWS:
        height = rows._height(row, rows.width())
        if row is wanted:
            return QPoint(40, round(top + height / 2))
        top += height
    raise AssertionError


def test_everything_shown_is_said(rows):
    said = rows.accessibleDescription()

    for text in ("Halfway Barn", "10 to go", "Distance: 64 km (53 km)", "strains: A hard day"):
        assert text in said
    assert rows.accessibleName() == "Ledger"


def test_height_is_that_of_the_rows_and_grows_where_words_wrap(rows):
    assert rows.height() == rows.heightForWidth(rows.width())
    assert rows.heightForWidth(120) > rows.heightForWidth(400)


def shown_by(rows):
    QApplication.processEvents()
    return rows.screen().grabWindow(rows.winId()).toImage()


@pytest.mark.parametrize("moving", [False, True])
def test_what_changes_alone_is_painted_and_the_rest_stays_right(rows, qtbot, monkeypatch, moving):
    monkeypatch.setattr("ultraplanner_gui.widgets.rows.moves", lambda: moving)
    with qtbot.waitExposed(rows):
        pass
    first = shown_by(rows)
    other = Figure("Distance", "64 km", "48 km", help_text="what is run in the week")
    rows.show_rows((*ROWS[:2], other, *ROWS[3:]))
    left = shown_by(rows)
    rows.update()
    assert left == shown_by(rows)
    assert left != first


def kinds(name):
    """A row of each kind, all of its letters as high and as deep as letters come."""
    text = f"Ågjpqy|{name}"
    return (
        Title(text, text),
        Heads(text, "before", "now"),
        Figure(text, f"1{name}", f"Å{name}", warns=True),
        CheckRow(State.BREAKS, text, "source"),
        Link(text, "table:foods"),
        Sentence(text),
        Rule(),
    )


@pytest.mark.parametrize("size", [80, 100, 150])
@pytest.mark.parametrize("number", range(6))
def test_no_row_stands_over_its_neighbours(qtbot, monkeypatch, size, number):
    monkeypatch.setattr("ultraplanner_gui.widgets.rows.moves", lambda: True)
    theme().choose("light", size)
    shown = Rows("Ledger")
    qtbot.addWidget(shown)
    shown.resize(360, 100)
    before = (*kinds("a"), *kinds("b"), *kinds("c"))
    shown.show_rows(before)
    with qtbot.waitExposed(shown):
        shown.show()
    shown_by(shown)
    shown.show_rows((*before[: 7 + number], kinds("d")[number], *before[8 + number :]))
    left = shown_by(shown)
    shown.update()
    whole = shown_by(shown)
    theme().choose("light", 100)
    assert left == whole


def test_fewer_rows_take_less_height(rows):
    full = rows.height()
    rows.show_rows(ROWS[:2])

    assert rows.height() < full
    rows.show_rows(())
    assert rows.height() == 0


def test_check_is_chosen_by_mouse_and_by_key(rows, qtbot):
    check = ROWS[4]
    with qtbot.waitSignal(rows.chosen) as chosen:
        QTest.mouseClick(rows, Qt.MouseButton.LeftButton, pos=spot(rows, check))
    assert chosen.args == ["easy5"]

    rows.setFocus()
    with qtbot.waitSignal(rows.chosen) as chosen:
        QTest.keyClick(rows, Qt.Key.Key_Return)
    assert chosen.args == ["easy5"]


def test_only_rows_that_lead_somewhere_take_the_focus(rows, qtbot):
    assert rows.focusPolicy() == Qt.FocusPolicy.TabFocus
    with qtbot.assertNotEmitted(rows.chosen):
        QTest.mouseClick(rows, Qt.MouseButton.LeftButton, pos=spot(rows, ROWS[0]))
    rows.show_rows(ROWS[:4])

    assert rows.focusPolicy() == Qt.FocusPolicy.NoFocus


def test_figure_and_check_explain_themselves(rows, monkeypatch):
    said = []
    monkeypatch.setattr(QToolTip, "showText", lambda at, text, widget: said.append(text))
    for row in (ROWS[2], ROWS[4], ROWS[5]):
        at = spot(rows, row)
        QApplication.sendEvent(rows, QHelpEvent(QEvent.Type.ToolTip, at, rows.mapToGlobal(at)))

    assert said == ["what is run in the week", "why it matters", ""]


def picture(rows, figure):
    rows.show_rows((figure,))
    return rows.grab().toImage()


def test_figure_of_before_is_shown_only_where_it_differs(rows):
    alone = picture(rows, Figure("Distance", "64 km"))

    assert picture(rows, Figure("Distance", "64 km", "64 km")) == alone
    assert picture(rows, Figure("Distance", "64 km", "53 km")) != alone


def test_warning_is_a_sign_and_not_only_a_colour(rows):
    def shape(figure):
        image = picture(rows, figure).convertToFormat(QImage.Format.Format_Mono)
        return image.bits().tobytes()

    assert shape(Figure("Drop", "900 m", warns=True)) != shape(Figure("Drop", "900 m"))


def cord(state):
    """Return which pixels the cord of *state* inks."""
    image = QImage(30, 14, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    with QPainter(image) as painter:
        draw_cord(painter, QRectF(2, 0, 26, 14), state)
    return frozenset(
        (x, y) for x in range(30) for y in range(14) if image.pixelColor(x, y) != QColor("white")
    )


def test_cords_differ_in_shape_alone(qapp):
    cords = {state: cord(state) for state in State}

    for one, other in combinations(State, 2):
        assert len(cords[one] ^ cords[other]) > 10


def test_only_the_parted_cord_has_a_gap(qapp):
    columns = {state: {x for x, _ in cord(state)} for state in State}

    assert set(range(4, 26)) <= columns[State.HOLDS]
    assert set(range(4, 26)) <= columns[State.STRAINS]
    assert not {14, 15} & columns[State.BREAKS]

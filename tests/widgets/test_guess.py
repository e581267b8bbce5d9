import pytest
from PySide6.QtCore import Qt, QTime
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QLineEdit, QVBoxLayout, QWidget

from ultraplanner_gui.widgets.fields import ClockField, DurationField, WholeField
from ultraplanner_gui.widgets.guess import CUSTOM, Guess, GuessField, mark, stops_of
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

Key = Qt.Key


def mass(parent):
    field = WholeField(Words(), 30, 200, "kg", parent=parent)
    field.setValue(64)
    return field, field.value, field.setValue, 70, 64


def limit(parent):
    field = DurationField(Words(), 600.0, 864_000.0, optional=True, parent=parent)
    field.set_value(36_000.0)
    return field, lambda: field.value_s, field.set_value, None, 36_000.0


def clock(parent):
    field = ClockField(parent)
    field.setTime(QTime(7, 30))
    return field, field.time, field.setTime, QTime(6, 0), QTime(7, 30)


def level(parent):
    field = QComboBox(parent)
    field.addItems(["floor", "usual", "ambitious"])
    return field, field.currentIndex, field.setCurrentIndex, 1, 0


def minutes(parent):
    field = QWidget(parent)
    box = QVBoxLayout(field)
    lines = [QLineEdit("30", field) for _ in range(2)]
    for line in lines:
        box.addWidget(line)

    def read():
        return tuple(int(line.text()) for line in lines)

    def write(values):
        for line, value in zip(lines, values, strict=True):
            line.setText(str(value))

    return field, read, write, (60, 90), (30, 30)


@pytest.fixture(params=[mass, limit, clock, level, minutes], ids=lambda make: make.__name__)
def guessed(request, qtbot):
    """A field of each kind with its reader, the guess and what is in it at first."""
    form = QWidget()
    field, read, write, value, before = request.param(form)
    row = GuessField(
        field, "Figure", read, write, lambda: Guess(value, "Because.", mark(CUSTOM)), form
    )
    QVBoxLayout(form).addWidget(row)
    qtbot.addWidget(form)
    with qtbot.waitActive(form):
        form.show()
    row.form = form
    return row, read, value, before


def press(row):
    QTest.mouseClick(row.button, Qt.MouseButton.LeftButton)


def test_not_knowing_puts_the_guess_in_and_says_why(guessed):
    row, read, value, _ = guessed
    press(row)
    assert read() == value
    assert row.is_guessed
    assert (row.why.isVisible(), row.why.text()) == (True, "Because.")
    said = row.field.accessibleDescription()
    assert "Because." in said
    assert "common practice, no source" in said
    assert row.field.toolTip().endswith("(common practice, no source)")


def test_pressed_again_it_brings_back_what_was_there(guessed):
    row, read, _, before = guessed
    press(row)
    press(row)
    assert read() == before
    assert not row.is_guessed
    assert not row.why.isVisible()
    assert "Because." not in row.field.toolTip()


def test_typing_takes_the_place_of_a_guess(guessed):
    row, _, _, _ = guessed
    press(row)
    target = row.form.focusWidget()
    QTest.keyClick(target, Key.Key_Up if isinstance(target, QComboBox) else "5")
    assert not row.is_guessed
    assert not row.why.isVisible()


def test_the_guess_stands_in_soft_ink(guessed):
    row, _, _, _ = guessed
    press(row)
    inked = [row.field, *row.field.findChildren(QLineEdit)]
    assert all(widget.property("guessed") for widget in inked)
    press(row)
    assert not any(widget.property("guessed") for widget in inked)


def test_it_is_told_once_by_whichever_way(guessed, qtbot):
    row, _, _, _ = guessed
    with qtbot.waitSignal(row.changed):
        press(row)
    with qtbot.assertNotEmitted(row.changed):
        row.guess()


def test_keys_reach_the_button_after_its_field_and_it_has_a_name(guessed):
    row, _, _, _ = guessed
    stops_of(row.field)[0].setFocus()
    # The minutes of a clock time are a stop of their own.
    for _ in range(2 if isinstance(row.field, ClockField) else len(stops_of(row.field))):
        QTest.keyClick(row.form.focusWidget(), Key.Key_Tab)
    assert row.form.focusWidget() is row.button
    assert row.button.accessibleName() == "I don't know: Figure"
    assert "Because." in row.button.accessibleDescription()
    QTest.keyClick(row.button, Key.Key_Space)
    assert row.is_guessed


def test_a_guess_is_made_anew_and_a_known_value_is_not(qtbot):
    base = [70]
    field = WholeField(Words(), 30, 200, "kg")
    row = GuessField(field, "Mass", field.value, field.setValue, lambda: Guess(base[0], "So.", "x"))
    qtbot.addWidget(row)
    row.guess(says_why=False)
    assert row.why.isHidden()
    base[0] = 80
    row.renew()
    assert field.value() == 80
    row.button.click()
    base[0] = 90
    row.renew()
    assert field.value() == 30


def test_soft_ink_can_be_read(qapp):
    """WCAG 2.2, 1.4.3: text has a contrast of at least 4.5 to 1."""
    for look in ("light", "dark"):
        theme().choose(look, 100)
        colours = theme().colours

        def luminance(colour):
            parts = [c / 255 for c in colour.getRgb()[:3]]
            linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
            return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

        for ink, ground in (("soft", "panel"), ("soft", "paper"), ("teal", "paper")):
            dark, light = sorted((luminance(colours[ink]), luminance(colours[ground])))
            assert (light + 0.05) / (dark + 0.05) >= 4.5, (look, ink, ground)
    theme().choose("system", 100)

from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QDialog, QLabel, QLineEdit, QWidget

from ultraplanner_gui.widgets.help_topic import ask, set_topic, topic_of


class Halves(QWidget):
    """Left is about one thing, right about another; the keys are on the right."""

    def topic_at(self, at):
        return "left" if at is not None and at.x() < 50 else "right"


def test_a_widget_without_a_topic_is_about_what_is_around_it(qtbot):
    outer = QWidget()
    qtbot.addWidget(outer)
    inner = QLineEdit(QWidget(outer))
    set_topic(outer, "fuel")
    assert topic_of(inner) == "fuel"
    set_topic(inner, "sodium")
    assert topic_of(inner) == "sodium"


def test_a_painted_widget_answers_for_the_part_pointed_at(qtbot):
    halves = Halves()
    qtbot.addWidget(halves)
    child = QWidget(halves)
    child.setGeometry(30, 0, 60, 20)
    assert topic_of(halves, QPoint(10, 5)) == "left"
    assert topic_of(halves) == "right"
    assert topic_of(child, QPoint(5, 5)) == "left"
    assert topic_of(child, QPoint(40, 5)) == "right"


def test_a_label_is_about_its_field(qtbot):
    outer = QWidget()
    qtbot.addWidget(outer)
    label, field = QLabel("&Sodium", outer), QLineEdit(outer)
    label.setBuddy(field)
    assert topic_of(label) == ""
    set_topic(field, "sodium")
    assert topic_of(label) == "sodium"


def test_a_dialog_is_not_about_what_its_window_is_about(qtbot):
    window = QWidget()
    qtbot.addWidget(window)
    set_topic(window, "sheet")
    assert topic_of(QLineEdit(QDialog(window))) == ""


def test_the_nearest_who_can_explain_is_asked_from_a_dialog_too(qtbot):
    class Window(QWidget):
        asked = ()

        def explain(self, key, near):
            self.asked = (key, near)

    window = Window()
    qtbot.addWidget(window)
    field = QLineEdit(QDialog(window))
    ask(field, "sodium")
    assert window.asked == ("sodium", field)

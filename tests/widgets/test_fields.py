import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QDateEdit, QLineEdit, QSpinBox, QVBoxLayout, QWidget

from ultraplanner_gui.widgets.fields import (
    ClockField,
    DateField,
    DistanceField,
    DurationField,
    HeightField,
    PaceField,
    WholeField,
    align_text,
)
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

METRIC, IMPERIAL = Words(), Words(units="imperial")
HOUR_S = 3600.0


class Form(QWidget):
    """A field and another place for the focus to go."""

    def __init__(self, field):
        super().__init__()
        self.field, self.other = field, QWidget()
        self.other.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        box = QVBoxLayout(self)
        box.addWidget(field)
        box.addWidget(self.other)

    def type(self, text, enter=True):
        self.field.setFocus()
        self.field.selectAll()
        QTest.keyClick(self.field, Qt.Key.Key_Delete)
        QTest.keyClicks(self.field, text)
        if enter:
            QTest.keyClick(self.field, Qt.Key.Key_Return)
        else:
            self.other.setFocus()


@pytest.fixture
def form(qtbot):
    forms = []

    def make(field):
        form = Form(field)
        forms.append(form)
        qtbot.addWidget(form)
        with qtbot.waitActive(form):
            form.show()
        return form

    return make


def duration(form, **how):
    made = form(DurationField(METRIC, 600.0, 240 * HOUR_S, **how))
    made.said = []
    made.field.value_changed.connect(made.said.append)
    made.field.set_value(20.25 * HOUR_S)
    return made


@pytest.mark.parametrize("text", ["19 h 42", "19:42", "19h42"])
def test_duration_is_read_as_people_write_it(form, text):
    made = duration(form)
    made.type(text)

    assert made.said == [19 * HOUR_S + 42 * 60]
    assert made.field.value_s == 19 * HOUR_S + 42 * 60
    assert made.field.text() == "19 h 42"


@pytest.mark.parametrize("text", ["soon", "5 min", "300 h", "-3 h", ""])
def test_impossible_duration_is_never_held(form, text):
    made = duration(form)
    made.type(text, enter=True)
    made.other.setFocus()

    assert made.said == []
    assert made.field.value_s == 20.25 * HOUR_S
    assert made.field.text() == "20 h 15"


def test_leaving_the_field_takes_what_was_typed(form):
    made = duration(form)
    made.type("18 h 00", enter=False)

    assert made.said == [18 * HOUR_S]


def test_unchanged_duration_says_nothing(form):
    made = duration(form)
    made.type("20 h 15")

    assert made.said == []


def test_optional_duration_can_be_emptied(form):
    made = duration(form, optional=True)
    made.type("")

    assert made.said == [None]
    assert made.field.value_s is None


def test_seconds_below_the_minute_are_not_lost_by_looking(form):
    made = duration(form)
    made.field.set_value(3_725.0)
    made.type("1 h 02")

    assert made.said == []
    assert made.field.value_s == 3_725.0


@pytest.mark.parametrize("words", [METRIC, IMPERIAL], ids=["metric", "imperial"])
def test_distance_is_held_in_metres_and_shown_in_the_users_unit(form, words):
    field = form(DistanceField(words, 0.0, 400_000.0)).field
    field.set_metres(42_195.0)

    assert field.metres == pytest.approx(42_195.0, abs=0.05 * words.unit_m)
    assert field.text() == words.distance(42_195.0)


def test_field_of_heights_shows_feet_for_miles(form):
    field = form(HeightField(IMPERIAL, 30_000.0)).field
    field.set_metres(1_000.0)

    # 1 ft is 0.3048 m (international foot, 1959)
    assert field.text() == "3281 ft"
    assert field.metres == pytest.approx(1_000.0, abs=0.16)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=30)
@given(metres=st.floats(-1e6, 1e9))
def test_no_value_leaves_the_range(form, metres):
    field = DistanceField(METRIC, 1_000.0, 200_000.0)
    field.set_metres(metres)

    assert 1_000.0 <= field.metres <= 200_000.0
    field.deleteLater()


def test_typing_a_number_is_one_change(form):
    made = form(DistanceField(METRIC, 0.0, 400_000.0, decimals=0))
    said = []
    made.field.valueChanged.connect(said.append)
    made.field.setFocus()
    made.field.selectAll()
    QTest.keyClicks(made.field, "240")
    QTest.keyClick(made.field, Qt.Key.Key_Return)

    assert said == [240.0]


def test_pace_is_held_as_speed_in_the_users_unit(form):
    for words, text, mps in ((METRIC, "6:40", 2.5), (IMPERIAL, "10:44", 1609.344 / 644.0)):
        field = form(PaceField(words, 1.0, 6.0)).field
        field.set_mps(2.5)
        assert (field.text(), field.mps) == (text, pytest.approx(mps))


def test_pace_stays_within_its_range(form):
    field = form(PaceField(METRIC, 1.0, 6.0)).field
    field.set_mps(20.0)
    assert 5.9 < field.mps <= 6.0
    field.set_mps(0.1)
    assert field.mps == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("24 Apr 2027", QDate(2027, 4, 24)),
        ("3 May 2027", QDate(2027, 5, 3)),
        ("03 May 2028", QDate(2028, 5, 3)),
        ("24", QDate(2027, 4, 24)),
        ("24  2028", QDate(2028, 4, 24)),
    ],
)
def test_a_date_is_typed_as_it_is_read_after_tab(form, typed, day):
    made = form(DateField())
    made.field.setDate(QDate(2027, 4, 17))
    made.other.setFocus()
    QTest.keyClick(made.other, Qt.Key.Key_Tab)
    assert made.field.hasFocus()
    QTest.keyClicks(made.field, typed)
    made.other.setFocus()
    assert made.field.date() == day


def test_every_field_says_its_range_to_all(form):
    ranges = {
        DurationField(METRIC, 600.0, 240 * HOUR_S): "From 10 min to 240 h 00, as 20 h 16 or 20:16",
        DistanceField(METRIC, 0.0, 400_000.0): "From 0.0 km to 400 km",
        HeightField(METRIC, 30_000.0): "From 0 m to 30,000 m",
        WholeField(METRIC, 30, 200, "kg"): "From 30 to 200 kg",
        WholeField(METRIC, 0, 10): "From 0 to 10",
        PaceField(METRIC, 1.0, 6.0): "From 2:47 to 16:40 min/km",
        ClockField(): "From 00:00 to 23:59, on the clock at the race",
    }
    for field, said in ranges.items():
        assert form(field).field.toolTip() == said
        assert field.accessibleDescription() == said


def _first_ink(widget):
    """Return how far from the left edge the first letter is drawn."""
    image = widget.grab().toImage()
    rows = range(6, image.height() - 6)
    for x in range(3, image.width()):
        if any(image.pixelColor(x, y).lightness() < 110 for y in rows):
            return x
    raise AssertionError("nothing is drawn")


@pytest.mark.parametrize("percent", [100, 150])
def test_text_begins_as_far_in_whatever_the_field(qtbot, percent):
    theme().choose("light", percent)
    form = QWidget()
    spin, date, choice = QSpinBox(form), QDateEdit(form), QComboBox(form)
    spin.setPrefix("H")
    align_text(spin)
    date.setCalendarPopup(True)
    date.setDisplayFormat("'H'd")
    choice.addItem("H")
    clock = ClockField(form)
    clock.setDisplayFormat("'H'mm")
    fields = (QLineEdit("H", form), spin, clock, date, choice)
    box = QVBoxLayout(form)
    for field in fields:
        field.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        box.addWidget(field)
    qtbot.addWidget(form)
    form.show()
    try:
        starts = [_first_ink(field) for field in fields]
        heights = [field.height() for field in fields]
    finally:
        theme().choose("system", 100)
    assert max(starts) - min(starts) <= 1, starts
    assert max(heights) - min(heights) <= 1, heights

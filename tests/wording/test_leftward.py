"""In a language written from right to left a number with its unit keeps its own order.

Unicode Standard Annex 9, 3.1.2 (isolates), 6.1.1: figures, units and signs are weak or foreign
there, and would be put in the order of what is around them.
"""

from datetime import date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.plan.message import Message, Quantity
from ultraplanner_gui.wording import reading
from ultraplanner_gui.wording.words import NONE, Words

LEFTWARD = Words(leftward=True)
RIGHTWARD = Words()
LRI, FSI, PDI = "\u2066", "\u2068", "\u2069"
UNITS = ("m", "height_m", "climb_per_m", "s", "pace_s_per_m", "percent", "celsius")
UNITS = (*UNITS, "g", "g_per_h", "ml", "mg", "count")
values = st.floats(min_value=-1e6, max_value=1e6) | st.just(float("nan"))
AT = datetime(2027, 6, 20, 0, 12)


@given(values, st.sampled_from(UNITS))
def test_what_is_said_rightward_has_no_marks(value, unit):
    text = RIGHTWARD.quantity(Quantity(value, unit))
    assert not {LRI, FSI, PDI} & set(text)


@given(values, st.sampled_from(UNITS))
def test_marks_are_all_that_differs(value, unit):
    text = LEFTWARD.quantity(Quantity(value, unit))
    assert reading.without_isolates(text) == RIGHTWARD.quantity(Quantity(value, unit))
    assert text.count(LRI) + text.count(FSI) == text.count(PDI)


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        (LEFTWARD.duration(5_160), "1 h 26"),
        (LEFTWARD.distance(13_500), "13.5 km"),
        (LEFTWARD.percent(86), "86 %"),
        (LEFTWARD.number(-5), "-5"),
        (LEFTWARD.pace(-90 / 1000), "-1:30"),
        (LEFTWARD.pace_with_unit(0.39), "6:30 min/km"),
        (LEFTWARD.signed(LEFTWARD.distance(5_000)), "+5.0 km"),
        (LEFTWARD.signed(LEFTWARD.distance(-5_000)), "-5.0 km"),
    ],
)
def test_figures_and_units_run_to_the_right(text, plain):
    assert text == f"{LRI}{plain}{PDI}"


def test_days_run_as_their_names_do():
    assert LEFTWARD.clock(AT) == f"{FSI}Sun 00:12{PDI}"
    hebrew = Words(locale="he_IL", leftward=True).day(date(2027, 6, 19))
    assert (hebrew[0], hebrew[-1]) == (FSI, PDI)


def test_figures_alone_need_no_marks():
    # UAX 9, W4: a colon, a comma or a point between figures is one of them.
    for text in (LEFTWARD.number(1_240.5, 1), LEFTWARD.pace(0.39), LEFTWARD.clock(AT, False)):
        assert text[0].isdigit()
        assert text[-1].isdigit()
    assert LEFTWARD.number(None) == LEFTWARD.duration(None) == NONE


def test_a_sentence_takes_them_with_their_marks():
    said = LEFTWARD.say(Message("in {0}", (Quantity(5_160.0, "s"),)))
    assert said == f"in {LRI}1 h 26{PDI}"


def test_a_name_keeps_what_is_around_it():
    said = LEFTWARD.say(Message('"{0}" is no distance. {1}', ("as far as the hut", "")))
    assert said == f'"{FSI}as far as the hut{PDI}" is no distance. '
    assert RIGHTWARD.say(Message('"{0}" is none.', ("x",))) == '"x" is none.'


@given(st.floats(min_value=0.0, max_value=360_000.0))
def test_what_is_shown_is_read_back(s):
    words = replace(LEFTWARD, locale="he_IL")
    assert words.parse_duration(words.duration(s)) == RIGHTWARD.parse_duration(
        RIGHTWARD.duration(s)
    )
    assert words.parse_distance(words.distance(s)) == pytest.approx(s, abs=510)
    assert words.parse_number(words.number(-s)) == pytest.approx(-s, abs=0.51)
    assert words.parse_clock(words.clock(AT)) == AT.time()


def test_a_path_keeps_its_slashes():
    assert LEFTWARD.path("/runs/all") == f"{LRI}/runs/all{PDI}"
    assert RIGHTWARD.path("/runs/all") == "/runs/all"


def test_fields_show_no_marks():
    assert LEFTWARD.plain().duration(5_160) == "1 h 26"
    assert RIGHTWARD.plain() is RIGHTWARD

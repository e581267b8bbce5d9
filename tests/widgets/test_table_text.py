import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.table_text import (
    MOST_CHARACTERS,
    check_cell,
    folded,
    read_head,
    read_lines,
    with_unit,
    without_unit,
    written,
)
from ultraplanner_gui.wording.words import Words

ENGLISH, GERMAN = Words(), Words(locale="de")
NAMES = [("Distance", "km"), ("Done", "km"), ("Done in", "h:mm"), ("Note", "")]


def lines(text, words=ENGLISH, is_head=lambda line: False):
    return read_lines(text, words, is_head)


cells = st.text(
    st.characters(exclude_categories=("Cs", "Cc", "Zl", "Zp"), include_characters="\t\n"),
    max_size=8,
)


@given(st.integers(1, 4).flatmap(lambda n: st.lists(st.lists(cells, min_size=n, max_size=n))))
def test_what_is_written_is_read_again(table):
    table = [line for line in table if any(cell.strip() for cell in line)]
    if table:
        assert lines(written(table)) == table


@given(st.lists(st.lists(cells, min_size=2, max_size=3), min_size=1, max_size=3))
def test_what_is_written_is_what_the_standard_library_reads(table):
    """Spreadsheets read the same dialect: RFC 4180 with tabs."""
    assert list(csv.reader(io.StringIO(written(table), newline=""), delimiter="\t")) == table


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("a\tb\r\nc\td\r\n", [["a", "b"], ["c", "d"]]),
        ("\ufeffa\tb", [["a", "b"]]),
        ("a;b\nc;d", [["a", "b"], ["c", "d"]]),
        ("24,5;3:05\n8;0:50", [["24,5", "3:05"], ["8", "0:50"]]),
        ("24.5,3:05\n8,0:50", [["24.5", "3:05"], ["8", "0:50"]]),
        ('"two\nlines"\tb', [["two\nlines", "b"]]),
        ('5" disc\tb', [['5" disc', "b"]]),
        ("a\n\nb\n\n\n", [["a"], [""], ["b"]]),
    ],
)
def test_cells_are_parted_by_what_parts_them(text, read):
    assert lines(text) == read


@pytest.mark.parametrize(
    "text", ["water, food\nwater, crew", "poles; lamp", "a;b", "1,240\n3,100", "24.5\n8", "a;b\nc"]
)
def test_signs_inside_words_and_numbers_part_nothing(text):
    assert lines(text) == [[line] for line in text.split("\n")]


def test_a_decimal_comma_parts_nothing_where_it_is_the_decimal_sign():
    assert lines("24,5\n8,0", GERMAN) == [["24,5"], ["8,0"]]


def test_a_known_head_says_that_commas_part():
    assert lines("Distance,Note\n8,x", GERMAN, lambda line: line[0] == "Distance") == [
        ["Distance", "Note"],
        ["8", "x"],
    ]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("x" * (MOST_CHARACTERS + 1), "holds 400,001 characters"),
        ("a\tb\0", "not text"),
        ("\n" * 30, "no text to paste"),
        ("", "no text to paste"),
        ("x\n" * 3000, "at most 2,000 lines"),
        ("x\t" * 200, "lines of 100 cells"),
    ],
)
def test_a_hostile_clipboard_is_refused_in_a_sentence(text, says):
    with pytest.raises(PlanError) as refusal:
        lines(text)
    assert says in str(refusal.value)


def test_a_quoted_cell_beyond_measure_is_still_read_or_refused():
    with pytest.raises(PlanError):
        check_cell(lines(f'"{"x" * 200_000}"\tb')[0][0])


@pytest.mark.parametrize(
    ("cell", "says"),
    [
        ("=1+1", "formula"),
        (' =HYPERLINK("x")', "formula"),
        ("x" * 2001, "longer"),
        ("a\x1bb", "not text"),
        ("a\ud800", "not text"),
    ],
)
def test_a_hostile_cell_is_refused_in_a_sentence(cell, says):
    with pytest.raises(PlanError) as refusal:
        check_cell(cell)
    assert says in str(refusal.value)


@pytest.mark.parametrize("cell", ["", "-", "+5", "@ the hut", "two\nlines", "x" * 2000, "1 = 2"])
def test_what_people_write_is_no_trouble(cell):
    check_cell(cell)


@pytest.mark.parametrize(
    ("cell", "column", "unit"),
    [
        ("Distance, km", 0, "km"),
        ("distance", 0, ""),
        ("Distance (mi)", 0, "mi"),
        ("Distance [km]", 0, "km"),
        ("Done in, h:mm", 2, "h:mm"),
        ("Done", 1, ""),
        ("Note", 3, ""),
        ("Distance run", None, ""),
        ("", None, ""),
    ],
)
def test_heads_are_known_with_and_without_their_unit(cell, column, unit):
    head = read_head(cell, NAMES)
    assert (head.column, head.unit) == (column, unit)


@pytest.mark.parametrize(
    ("text", "unit", "figure"),
    [
        ("12 km", "km", "12"),
        ("1,240 m", "m", "1,240"),
        ("4 of 10", "of 10", "4"),
        ("60 g/h", "carbs g/h", "60"),
        ("12:51 min/km", "min/km", "12:51"),
        ("10", "of 10", "10"),
        ("12 mi", "km", "12 mi"),
        ("soon km", "km", "soon km"),
        ("km", "km", "km"),
        ("5", "", "5"),
    ],
)
def test_a_figure_comes_without_its_own_unit(text, unit, figure):
    assert without_unit(text, unit) == figure


def test_a_unit_is_put_behind_a_bare_figure_only():
    assert [with_unit(text, "mi") for text in ("12.4", "12 km", "", "soon")] == [
        "12.4 mi",
        "12 km",
        "",
        "soon",
    ]


def test_search_knows_no_accents_and_no_capitals():
    assert folded("Éclair STRASSE ß") == "eclair strasse ss"

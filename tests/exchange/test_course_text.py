from datetime import time

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from ultraplanner_gui.exchange import table_text
from ultraplanner_gui.exchange.course_rows import ClockTime
from ultraplanner_gui.exchange.course_text import read_cutoff, read_table
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.message import CourseError
from ultraplanner_gui.wording.words import Words

WORDS = Words("metric", "en_GB")
H = 3600.0
ROWS = (
    ("Mill", "12.4", "410", "120", "10:30"),
    ("Old Hut", "27", "1240", "900", "16:00"),
    ("Finish", "42.2", "300", "930", "Sun 01:00"),
)
HEADS = ("Aid station", "Distance (km)", "Climb (m)", "Drop (m)", "Cutoff")


def lines(part, rows=ROWS, heads=HEADS):
    return "\n".join(part.join(row) for row in (heads, *rows))


def figures(table):
    return [(r.name, r.at_m, r.climb_m, r.drop_m, r.cutoff) for r in table.rows[1:]]


def told(text, words=WORDS):
    """Return the sentence *text* is refused with."""
    with pytest.raises(CourseError) as caught:
        read_table(text, words)
    sentence = words.say(caught.value.message)
    assert len(sentence) <= 200
    assert sentence.endswith(".")
    return sentence


def ending(text):
    """Return how reading ends; anything but rows or a sentence raises."""
    try:
        read_table(text, WORDS)
    except CourseError as error:
        return WORDS.say(error.message)
    return "read"


READ = [
    ("Mill", 12_400.0, 410.0, 120.0, ClockTime(time(10, 30))),
    ("Old Hut", 27_000.0, 1240.0, 900.0, ClockTime(time(16, 0))),
    ("Finish", 42_200.0, 300.0, 930.0, ClockTime(time(1, 0), 6)),
]


@pytest.mark.parametrize("part", ["\t", ";", ",", "|", " | ", "; ", ",  "])
def test_whatever_parts_the_cells_the_table_is_the_same(part):
    assert figures(read_table(lines(part), WORDS)) == READ


def test_columns_aligned_with_spaces_are_read_under_a_title():
    text = """The long way round
    Place     km   climb   drop   cutoff
    Mill     12.4    410    120   10:30
    Old Hut  27.0   1240    900   16:00
    Finish   42.2    300    930   Sun 01:00"""
    table = read_table(text, WORDS)
    assert figures(table) == READ
    assert table.name == "The long way round"


def test_blank_cells_keep_their_column_where_text_is_aligned():
    text = """Place     km   climb   cutoff
Mill     12.4          10:30
Old Hut  27.0   1240
Finish   42.2    300   23:00"""
    rows = read_table(text, WORDS).rows
    assert [r.climb_m for r in rows[1:]] == [None, 1240.0, 300.0]
    assert [r.cutoff for r in rows[1:]] == [
        ClockTime(time(10, 30)),
        None,
        ClockTime(time(23, 0)),
    ]


def test_heads_may_stand_in_any_order():
    order = (4, 2, 0, 3, 1)
    heads, *rows = ([row[n] for n in order] for row in (HEADS, *ROWS))
    assert figures(read_table(lines("\t", rows, heads), WORDS)) == READ


@pytest.mark.parametrize(
    "heads",
    [
        ("Ort", "km", "Hm +", "Hm -", "Zeitlimit"),
        ("Lieu", "Distance", "Dénivelé +", "Dénivelé négatif", "Barrière horaire"),
        ("Punto", "Distanza", "D+", "D\u2212", "Cancello"),
        ("Lugar", "km", "Desnivel positivo", "Desnivel -", "Corte"),
        ("Checkpoint", "From start", "↑", "↓", "Cut-off"),
    ],
)
def test_heads_of_other_languages_and_signs_are_known(heads):
    heads = (heads[0], "km from start" if heads[1] == "From start" else heads[1], *heads[2:])
    assert figures(read_table(lines("\t", ROWS, heads), WORDS)) == READ


def test_without_heads_columns_are_told_by_what_is_in_them():
    assert figures(read_table("\n".join("\t".join(row) for row in ROWS), WORDS)) == READ


def test_heads_no_one_knows_are_passed_over():
    assert figures(read_table(lines("\t", heads=("Paikka", "a", "b", "c", "d")), WORDS)) == READ


def test_a_row_of_units_under_the_heads_counts():
    text = "Place\tDistance\tClimb\n\tmi\tft\nA\t10\t1,000\nFinish\t20\t500"
    rows = read_table(text, WORDS).rows
    assert rows[1].at_m == pytest.approx(16_093.44)
    assert rows[1].climb_m == pytest.approx(304.8)


def test_figures_without_a_unit_are_in_the_units_of_the_reader():
    rows = read_table("A;10;1000\nFinish;20;500", Words("imperial", "en_US")).rows
    assert rows[1].at_m == pytest.approx(16_093.44)
    assert rows[1].climb_m == pytest.approx(304.8)


@pytest.mark.parametrize(
    ("text", "at_m"),
    [
        ("12.4", 12_400.0), ("12,4", 12_400.0), ("12.400", 12_400.0), ("12,400", 12_400.0),
        ("12.4 km", 12_400.0), ("km 12.4", 12_400.0), ("~12.4", 12_400.0), ("12400 m", 12_400.0),
        ("12,400 m", 12_400.0), ("7.705 mi", 12_400.0), ("12.4 km (7.7 mi)", 12_400.0),
    ],
)  # fmt: skip
def test_distances_are_read_as_people_write_them(text, at_m):
    rows = read_table(f"Place\tkm\nMill\t{text}\nFinish\t42.2", WORDS).rows
    assert rows[1].at_m == pytest.approx(at_m, abs=1.0)


@pytest.mark.parametrize("text", ["1240", "1,240", "1.240", "1 240", "1’240", "+1240", "1240 m"])
def test_a_mark_before_three_figures_of_a_height_parts_thousands(text):
    rows = read_table(f"Place\tkm\tD+\nMill\t12\t{text}\nFinish\t42\t3", WORDS).rows
    assert rows[1].climb_m == 1240.0


def test_a_drop_may_be_written_below_zero():
    rows = read_table("Place\tkm\tD-\nMill\t12\t-410\nFinish\t42\t\u2212300", WORDS).rows
    assert [r.drop_m for r in rows[1:]] == [410.0, 300.0]


def test_lengths_of_legs_are_added_up():
    rows = read_table("Place\tLeg, km\nMill\t12\nHut\t15.5\nFinish\t10", WORDS).rows
    assert [r.at_m for r in rows] == [0.0, 12_000.0, 27_500.0, 37_500.0]


def test_distances_that_do_not_rise_are_taken_for_legs_and_it_is_said():
    table = read_table("Place\tkm\nMill\t12\nHut\t9\nCol\t11\nFinish\t10", WORDS)
    assert [r.at_m for r in table.rows] == [0.0, 12_000.0, 21_000.0, 32_000.0, 42_000.0]
    assert "taken for one leg" in str(table.notes[0])


def test_one_slip_in_rising_distances_stays_for_the_user_to_mend():
    table = read_table("Place\tkm\nA\t10\nB\t9\nC\t30\nD\t40\nFinish\t50", WORDS)
    assert table.rows[2].at_m == 9_000.0
    assert table.notes == ()


def test_figures_to_the_next_place_belong_to_the_row_below():
    text = "Station;km to next;Climb to next\nStart;10;500\nMill;15;600\nHut;8;100\nFinish;;"
    rows = read_table(text, WORDS).rows
    assert [r.at_m for r in rows] == [0.0, 10_000.0, 25_000.0, 33_000.0]
    assert [r.climb_m for r in rows] == [None, 500.0, 600.0, 100.0]


def test_sums_of_climb_are_parted_into_legs():
    text = "Place;km;Cumulative climb;Total drop\nA;10;500;100\nB;25;1100;700\nFinish;33;1200;1400"
    rows = read_table(text, WORDS).rows
    assert [r.climb_m for r in rows[1:]] == [500.0, 600.0, 100.0]
    assert [r.drop_m for r in rows[1:]] == [100.0, 600.0, 700.0]


def test_a_row_that_only_adds_up_is_left_out():
    table = read_table("Place;km;climb\nA;10;500\nFinish;20;700\nTotal;20;1200", WORDS)
    assert [r.name for r in table.rows] == ["Start", "A", "Finish"]


def test_a_last_row_that_is_not_called_the_finish_is_taken_for_it_and_it_is_said():
    table = read_table("Place;km\nA;10\nMarket square;20", WORDS)
    assert "Market square, is taken for the finish" in str(table.notes[0])


def test_what_is_there_is_known_and_the_rest_becomes_a_note():
    text = "Place;km;What is there;Notes\nA;10;Water, drop bags + soup;steep after\nFinish;20;;"
    row = read_table(text, WORDS).rows[1]
    assert row.offers == (Offer.WATER, Offer.DROP_BAG)
    assert row.note == "soup, steep after"


def test_columns_of_ticks_say_what_is_there():
    text = "Place;km;Water;Crew;Drop bag\nA;10;x;no;✓\nB;15;;yes;-\nFinish;20;;;"
    rows = read_table(text, WORDS).rows
    assert rows[1].offers == (Offer.WATER, Offer.DROP_BAG)
    assert rows[2].offers == (Offer.CREW,)


def test_a_cell_in_quotes_may_hold_what_parts_cells_and_lines():
    text = 'name,km,note\n"Hut, upper",10,"hot\nsoup"\nFinish,20,'
    row = read_table(text, WORDS).rows[1]
    assert (row.name, row.note) == ("Hut, upper", "hot soup")


@pytest.mark.parametrize(
    ("head", "cells", "expected"),
    [
        ("Cutoff", ("3:30", "8:00", "27:30"), [3.5 * H, 8 * H, 27.5 * H]),
        ("Cutoff", ("0:00", "3:30", "8:00"), [0.0, 3.5 * H, 8 * H]),
        ("Cutoff (race time)", ("3:30", "8:00", "12:30"), [3.5 * H, 8 * H, 12.5 * H]),
        ("Cutoff", ("3 h 30", "8 h", "12h30"), [3.5 * H, 8 * H, 12.5 * H]),
        ("Cutoff, hours", ("3.5", "8", "12.5"), [3.5 * H, 8 * H, 12.5 * H]),
    ],
)
def test_cutoffs_in_race_time_are_told_from_clock_times(head, cells, expected):
    rows = zip(("Start", "Mill", "Finish"), ("0", "20", "40"), cells, strict=True)
    text = "\n".join(f"{a}\t{b}\t{c}" for a, b, c in (("Place", "km", head), *rows))
    assert [r.cutoff for r in read_table(text, WORDS).rows] == expected


@pytest.mark.parametrize(
    ("cells", "expected"),
    [
        (("9:30", "15:00", "2:30"), [(9, 30, None), (15, 0, None), (2, 30, None)]),
        (("9h30", "15h00", "2h30"), [(9, 30, None), (15, 0, None), (2, 30, None)]),
        (("Sa 9:30", "15:00", "So 2:30"), [(9, 30, 5), (15, 0, None), (2, 30, 6)]),
        (("sam. 9h30", "15h00", "dim. 2h30"), [(9, 30, 5), (15, 0, None), (2, 30, 6)]),
        (("9:30 am", "3:00 pm", "2:30 am"), [(9, 30, None), (15, 0, None), (2, 30, None)]),
        (("21:30", "24:00", "2:30"), [(21, 30, None), (0, 0, None), (2, 30, None)]),
    ],
)
def test_cutoffs_by_the_clock_are_told_from_race_times(cells, expected):
    rows = zip(("A", "B", "Finish"), ("10", "20", "40"), cells, strict=True)
    text = "\n".join(f"{a}\t{b}\t{c}" for a, b, c in (("Place", "km", "Cutoff"), *rows))
    found = [r.cutoff for r in read_table(text, WORDS).rows[1:]]
    assert [(c.at.hour, c.at.minute, c.weekday) for c in found] == expected


def test_a_cutoff_typed_alone_is_a_clock_time_unless_written_with_h():
    assert read_cutoff("Sat 20:30", WORDS) == ClockTime(time(20, 30), 5)
    assert read_cutoff("20:30", WORDS) == ClockTime(time(20, 30))
    assert read_cutoff("8:30 pm", WORDS) == ClockTime(time(20, 30))
    assert read_cutoff("14 h 30", WORDS) == 14.5 * H
    assert read_cutoff("26:30", WORDS) == 26.5 * H
    assert read_cutoff("late", WORDS) is None


def test_a_cell_that_cannot_be_read_is_named_by_line_and_place():
    assert told("Place;km\nMill;ten\nFinish;20").startswith("Line 2 (Mill): “ten”")
    assert "is not a height" in told("Place;km;climb\nMill;10;lots\nFinish;20;")
    assert "no cutoff" in told("Place;km;cutoff\nMill;10;soon\nFinish;20;")
    assert "not a stop" in told("Place;km;stop\nMill;10;long\nFinish;20;")


def test_a_decimal_comma_that_parts_cells_is_noticed():
    assert "Line 2 (Mill) has more cells" in told("Place,km,climb\nMill,12,4,410\nFinish,42,3,300")


def test_text_that_is_no_table_is_refused():
    assert "empty" in told("  \n \n")
    assert "No column of distances" in told("a note about the race\nand another line")
    assert "heads but no rows" in told("Place;km;climb")


def test_text_too_large_to_be_a_course_is_refused():
    assert "too large" in told("a;1\n" * (table_text.MOST_LINES + 1))
    assert "too large" in told("x" * (table_text.LONGEST_TEXT + 1))
    assert "too large" in told("km;" + "1;" * (table_text.MOST_CELLS + 1))


CELL = st.one_of(
    st.sampled_from(
        ["", "km", "D+", "cutoff", "Total", "Start", "1e9", "9" * 400, '"', "-", "12,4", "24:00",
         "Sat", "٣", "½", "\x00", "\u202e", "1.2.3", "h", "10 h", "(", "+", "next", "leg"]
    ),
    st.text(max_size=12),
)  # fmt: skip


@given(st.lists(st.lists(CELL, max_size=6), max_size=8), st.sampled_from("\t;,| "))
@example([["km", "climb"], ['"', "1"], ["2", '"']], ",")
@example([["km", "cutoff"], ["1", "99999999999:00"]], "\t")
def test_any_text_is_read_or_refused_with_a_sentence(cells, part):
    text = "\n".join((part * 2 if part == " " else part).join(row) for row in cells)
    assert ending(text) == "read" or len(ending(text)) <= 200

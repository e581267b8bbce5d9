from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.cards.impose import impose
from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.plan.message import PlanError

A4 = (210.0, 297.0)


def _pages(*sizes):
    return [Page(width, height, ()) for width, height in sizes]


def _right(placed):
    return placed.x_mm + placed.page.width_mm


def _bottom(placed):
    return placed.y_mm + placed.page.height_mm


def test_four_pocket_cards_fill_one_a4_sheet():
    (sheet,) = impose(_pages(*[(105.0, 148.0)] * 4), *A4)
    assert [(p.x_mm, p.y_mm) for p in sheet] == [(0, 0.5), (105, 0.5), (0, 148.5), (105, 148.5)]


def test_a_fifth_begins_a_second_sheet():
    sheets = impose(_pages(*[(105.0, 148.0)] * 5), *A4)
    assert [len(sheet) for sheet in sheets] == [4, 1]


def test_a_card_as_large_as_the_paper_lies_at_its_corner():
    ((placed,),) = impose(_pages(A4), *A4, unprintable_mm=4.2)
    assert (placed.x_mm, placed.y_mm) == (0.0, 0.0)


def test_a_printer_with_wide_margins_gets_fewer_cards_to_a_sheet():
    (first, *_) = impose(_pages(*[(105.0, 148.0)] * 4), *A4, unprintable_mm=12.0)
    assert len(first) == 1


def test_a_card_larger_than_the_paper_is_refused():
    with pytest.raises(PlanError, match="larger than the paper"):
        impose(_pages((210.0, 297.0)), 148.0, 210.0)


@given(st.lists(st.tuples(st.floats(30, 210), st.floats(30, 297)), max_size=12))
def test_cards_stay_on_the_paper_in_order_and_apart(sizes):
    pages = _pages(*sizes)
    sheets = impose(pages, *A4)
    assert [placed.page for sheet in sheets for placed in sheet] == pages
    for sheet in sheets:
        for p in sheet:
            assert p.x_mm >= -0.05
            assert p.y_mm >= -0.05
            assert _right(p) <= 210.05
            assert _bottom(p) <= 297.05
        for a, b in combinations(sheet, 2):
            apart_x = max(a.x_mm, b.x_mm) + 1e-6 >= min(_right(a), _right(b))
            apart_y = max(a.y_mm, b.y_mm) + 1e-6 >= min(_bottom(a), _bottom(b))
            assert apart_x or apart_y

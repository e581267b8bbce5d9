"""Sheets, backs behind fronts, tiles."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.cards.page import Line, Page, Rect, Text
from ultraplanner_gui.cards.paper import CUT_GREY, OVERLAP_MM, Paper, sheets
from ultraplanner_gui.plan.message import PlanError

A4 = Paper(210.0, 297.0)


def _page(width, height, card=0, may_tile=False):
    ops = (Text(5.0, 10.0, f"card {card}", 9.0), Rect(0.0, 0.0, width, height))
    return Page(width, height, ops, f"card {card}", card, may_tile)


def _cuts(page):
    return [op for op in page.ops if isinstance(op, Line) and op.grey == CUT_GREY]


def test_four_pocket_cards_lie_on_one_sheet_with_lines_to_cut_along():
    (sheet,) = sheets([_page(105.0, 148.0, k) for k in range(4)], A4)
    assert (sheet.width_mm, sheet.height_mm) == (210.0, 297.0)
    assert len(_cuts(sheet)) == 16
    corners = {(op.x_mm, op.y_mm) for op in sheet.ops if isinstance(op, Rect)}
    assert corners == {(0.0, 0.5), (105.0, 0.5), (0.0, 148.5), (105.0, 148.5)}


def test_a_card_as_large_as_the_paper_is_not_cut():
    (sheet,) = sheets([_page(210.0, 297.0)], A4)
    assert _cuts(sheet) == []


@given(st.lists(st.integers(1, 4), min_size=1, max_size=6))
def test_every_back_lies_behind_its_front(counts):
    pages = [_page(105.0, 148.0, k) for k, count in enumerate(counts) for _ in range(count)]
    made = sheets(pages, Paper(210.0, 297.0, both_sides=True))
    assert len(made) % 2 == 0
    for front, back in zip(made[::2], made[1::2], strict=True):
        fronts = [op for op in front.ops if isinstance(op, Text)]
        for behind in (op for op in back.ops if isinstance(op, Text)):
            # Turned on the long edge, what lay left lies right.
            left = 210.0 - (behind.x_mm - 5.0) - 105.0
            (before,) = [
                op
                for op in fronts
                if op.x_mm - 5.0 == pytest.approx(left) and op.baseline_mm == behind.baseline_mm
            ]
            assert before.text == behind.text


@pytest.mark.parametrize("size", [(420.0, 594.0), (594.0, 420.0), (297.0, 420.0)])
@pytest.mark.parametrize("edge", [0.0, 5.0])
def test_tiles_cover_all_of_a_wall_plan_and_overlap(size, edge):
    marks = [
        Text(x, y, f"{x},{y}", 9.0) for x in range(0, int(size[0]), 7) for y in range(0, 400, 9)
    ]
    page = Page(*size, tuple(marks), "wall", may_tile=True)
    made = sheets([page], Paper(210.0, 297.0, edge))
    seen = set()
    for tile in made:
        for op in tile.ops:
            if isinstance(op, Text) and (
                edge <= op.x_mm <= 210.0 - edge and edge <= op.baseline_mm <= 297.0 - edge
            ):
                seen.add(op.text)
    assert seen == {mark.text for mark in marks}
    first = next(op for op in made[0].ops if isinstance(op, Text))
    second = next(op for op in made[1].ops if isinstance(op, Text))
    assert first.x_mm - second.x_mm == pytest.approx(210.0 - 2.0 * edge - OVERLAP_MM)


def test_only_a_wall_plan_is_parted():
    with pytest.raises(PlanError, match="larger than the paper"):
        sheets([_page(297.0, 420.0)], A4)
    assert len(sheets([_page(297.0, 420.0, may_tile=True)], A4)) == 4


def test_a_wall_plan_that_fits_is_not_parted():
    (sheet,) = sheets([_page(210.0, 297.0, may_tile=True)], A4)
    assert sheet.width_mm == 210.0


def test_paper_is_turned_for_a_strip_that_fits_only_so():
    upright, lying = sheets([_page(105.0, 148.0), _page(280.0, 70.0, 1)], A4)
    assert (upright.width_mm, upright.height_mm) == (210.0, 297.0)
    assert (lying.width_mm, lying.height_mm) == (297.0, 210.0)


def test_the_back_of_a_lying_sheet_is_mirrored_downwards():
    pages = [_page(280.0, 70.0, card) for card in (0, 0, 1, 1)]
    front, back = sheets(pages, Paper(210.0, 297.0, both_sides=True))
    for before, behind in zip(
        (op for op in front.ops if isinstance(op, Text)),
        (op for op in back.ops if isinstance(op, Text)),
        strict=True,
    ):
        assert before.x_mm == behind.x_mm
        assert 210.0 - (before.baseline_mm - 10.0) - 70.0 == pytest.approx(
            behind.baseline_mm - 10.0
        )

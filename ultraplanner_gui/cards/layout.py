"""Laying a card out in millimetres: the largest legible setting on the fewest pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial

from ultraplanner_gui.cards.content import CardContent
from ultraplanner_gui.cards.flow import Frame, Sheet, flow
from ultraplanner_gui.cards.fuel_content import FuelCard
from ultraplanner_gui.cards.fuel_layout import fuel_beside, fuel_stacked, fuel_wide
from ultraplanner_gui.cards.pace_content import PaceCard
from ultraplanner_gui.cards.pace_layout import pace_stacked, pace_two_lines, pace_wide
from ultraplanner_gui.cards.page import LEAST_PT, Measure, Page
from ultraplanner_gui.cards.setting import Setting
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError

LARGEST_PT = 16.0
STEP_PT = 0.25
POCKET_MM2 = 105.0 * 148.0
LARGEST_IN_THE_POCKET_PT = 11.0

Form = Callable[[Setting, Frame], Sheet | None]


def lay_out(
    card: CardContent, width_mm: float, height_mm: float, measure: Measure
) -> tuple[Page, ...]:
    """Return the pages of *card*, each *width_mm* x *height_mm*.

    Rows that find no room at the least legible size go on to further pages. PlanError if not
    even one row fits on a page.
    """
    frame = Frame(width_mm, height_mm)
    found = _best(card, frame, measure, is_dense=False)
    if found is None or len(found) > 1:
        dense = _best(card, frame, measure, is_dense=True)
        if dense is not None and (found is None or len(dense) < len(found)):
            found = dense
    if found is None:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Cards", "A card of {0} x {1} mm is too small to be legible. Choose a larger one."
            ),
            f"{width_mm:g}",
            f"{height_mm:g}",
        )
    return found


def _best(
    card: CardContent, frame: Frame, measure: Measure, is_dense: bool
) -> tuple[Page, ...] | None:
    """Return the setting on the fewest pages, of those the least strained, then the largest."""
    best: tuple[tuple[float, ...], tuple[Page, ...]] | None = None
    for rank, form in enumerate(_forms(card)):
        for size_pt in _sizes(frame):
            sheet = form(Setting(size_pt, measure, is_dense), frame)
            pages = flow(sheet, frame) if sheet is not None else None
            if sheet is None or pages is None:
                continue
            key = (len(pages), sheet.strain, -size_pt, rank)
            if best is None or key < best[0]:
                best = key, pages
            if len(pages) == 1 and sheet.strain == 0:
                break
    return best[1] if best is not None else None


def _forms(card: CardContent) -> Iterator[Form]:
    if isinstance(card, PaceCard):
        yield partial(pace_wide, card)
        yield partial(pace_two_lines, card)
        yield partial(pace_stacked, card)
    elif isinstance(card, FuelCard):
        yield partial(fuel_wide, card)
        yield partial(fuel_beside, card)
        yield partial(fuel_stacked, card)


def _sizes(frame: Frame) -> Iterator[float]:
    share = (frame.width_mm * frame.height_mm / POCKET_MM2) ** 0.5
    size_pt = max(LEAST_PT, min(LARGEST_PT, LARGEST_IN_THE_POCKET_PT * share))
    while size_pt > LEAST_PT:
        yield size_pt
        size_pt -= STEP_PT
    yield LEAST_PT

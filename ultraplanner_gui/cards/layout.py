"""Laying a card out in millimetres: the largest legible setting on the fewest pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import partial

from ultraplanner_gui.cards.content import CardContent
from ultraplanner_gui.cards.flow import MOST_PAGES, Flow, Frame, Sheet
from ultraplanner_gui.cards.fuel_content import FuelCard
from ultraplanner_gui.cards.fuel_layout import STRAIN_STACKED, fuel_beside, fuel_stacked, fuel_wide
from ultraplanner_gui.cards.list_content import ListCard
from ultraplanner_gui.cards.list_layout import forms_of
from ultraplanner_gui.cards.pace_content import PaceCard
from ultraplanner_gui.cards.pace_layout import STRAIN_LIST, pace_stacked, pace_two_lines, pace_wide
from ultraplanner_gui.cards.page import (
    LEAST_WRIST_X_HEIGHT_MM,
    LEAST_X_HEIGHT_MM,
    Measure,
    Page,
    least_pt,
)
from ultraplanner_gui.cards.setting import Setting, Widths
from ultraplanner_gui.cards.strip_content import Concertina, WristStrip
from ultraplanner_gui.cards.strip_layout import concertina_pages, wrist_pages
from ultraplanner_gui.cards.wall_layout import wall_sheet
from ultraplanner_gui.cards.week_content import WallCard
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError

LARGEST_PT, LARGEST_ON_THE_WALL_PT = 16.0, 26.0
STEP_PT = 0.25
POCKET_MM2 = 105.0 * 148.0
LARGEST_IN_THE_POCKET_PT = 11.0

SetForm = Callable[[Setting, Frame], Sheet | None]


@dataclass(frozen=True, slots=True)
class Form:
    """One way to set a card, and the least strain it can have."""

    set: SetForm
    least_strain: int = 0


def lay_out(
    card: CardContent, width_mm: float, height_mm: float, measure: Measure
) -> tuple[Page, ...]:
    """Return the pages of *card*, each *width_mm* x *height_mm*.

    Rows that find no room at the least legible size go on to further pages. PlanError if not
    even one row fits on a page.
    """
    frame, widths = Frame(width_mm, height_mm), Widths(measure)
    if isinstance(card, WristStrip | Concertina):
        pages = _strip(card, frame, widths)
    else:
        found = _flowed(card, frame, widths)
        pages = found.pages() if found is not None else ()
    if not pages:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Cards", "A card of {0} x {1} mm is too small to be legible. Choose a larger one."
            ),
            f"{width_mm:g}",
            f"{height_mm:g}",
        )
    if isinstance(card, WallCard):
        return tuple(replace(page, may_tile=True) for page in pages)
    return pages


def _flowed(card: CardContent, frame: Frame, widths: Widths) -> Flow | None:
    found = _best(card, frame, widths, is_dense=False)
    if found is None or found.total > 1:
        dense = _best(card, frame, widths, is_dense=True)
        if dense is not None and (found is None or dense.total < found.total):
            return dense
    return found


def _strip(card: WristStrip | Concertina, frame: Frame, widths: Widths) -> tuple[Page, ...]:
    """Return the strip on the fewest pages, and of those settings the largest."""
    is_wrist = isinstance(card, WristStrip)
    least = least_pt(LEAST_WRIST_X_HEIGHT_MM if is_wrist else LEAST_X_HEIGHT_MM)
    best: tuple[Page, ...] = ()
    for size_pt in _sizes(frame, least, LARGEST_PT):
        setting = Setting(size_pt, widths, is_wrist, least)
        pages = (
            wrist_pages(card, setting, frame)
            if isinstance(card, WristStrip)
            else concertina_pages(card, setting, frame)
        )
        if pages and (not best or len(pages) < len(best)):
            best = pages
        if len(best) == 1:
            break
    return best


def _best(card: CardContent, frame: Frame, widths: Widths, is_dense: bool) -> Flow | None:
    """Return the setting on the fewest pages, of those the least strained, then the largest."""
    best: tuple[tuple[float, ...], Flow] | None = None
    largest = LARGEST_ON_THE_WALL_PT if isinstance(card, WallCard) else LARGEST_PT
    for rank, form in enumerate(_forms(card)):
        for size_pt, flow in _settings(
            form, frame, widths, is_dense, best and best[0][:2], largest
        ):
            key = (flow.total, flow.sheet.strain, -size_pt, rank)
            if best is None or key < best[0]:
                best = key, flow
    return best[1] if best is not None else None


def _settings(
    form: Form,
    frame: Frame,
    widths: Widths,
    is_dense: bool,
    best: tuple[float, ...] | None,
    largest_pt: float,
) -> Iterator[tuple[float, Flow]]:
    """Yield what could be better than the *best* pages and strain, and the size of its type.

    Larger type takes no fewer pages, so that the smallest tells how few a form can take.
    """
    *larger, smallest = _sizes(frame, least_pt(LEAST_X_HEIGHT_MM), largest_pt)
    least = _flow(form, Setting(smallest, widths, is_dense), frame, MOST_PAGES)
    if least is None:
        return
    fewest = least.total, form.least_strain
    if best is not None and best < fewest:
        return
    for size_pt in larger:
        flow = _flow(form, Setting(size_pt, widths, is_dense), frame, least.total)
        if flow is not None:
            yield size_pt, flow
            if (flow.total, flow.sheet.strain) <= fewest:
                return
    yield smallest, least


def _flow(form: Form, setting: Setting, frame: Frame, most_pages: int) -> Flow | None:
    sheet = form.set(setting, frame)
    flow = Flow(sheet, frame, most_pages) if sheet is not None else None
    return flow if flow is not None and flow.total else None


def _forms(card: CardContent) -> Iterator[Form]:
    if isinstance(card, PaceCard):
        yield Form(partial(pace_wide, card))
        yield Form(partial(pace_two_lines, card))
        yield Form(partial(pace_stacked, card), STRAIN_LIST)
    elif isinstance(card, FuelCard):
        yield Form(partial(fuel_wide, card))
        yield Form(partial(fuel_beside, card))
        yield Form(partial(fuel_stacked, card), STRAIN_STACKED)
    elif isinstance(card, ListCard):
        yield from (Form(form) for form in forms_of(card))
    elif isinstance(card, WallCard):
        yield Form(partial(wall_sheet, card))


def _sizes(frame: Frame, least: float, largest: float) -> Iterator[float]:
    share = (frame.width_mm * frame.height_mm / POCKET_MM2) ** 0.5
    size_pt = max(least, min(largest, LARGEST_IN_THE_POCKET_PT * share))
    while size_pt > least:
        yield size_pt
        size_pt -= STEP_PT
    yield least

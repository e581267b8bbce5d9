"""Laying a card out in millimetres: the largest legible setting on the fewest pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache, partial
from typing import TypeVar

from msgspec.structs import replace

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
from ultraplanner_gui.cards.strip_layout import Laid, set_concertina, set_wrist
from ultraplanner_gui.cards.wall_layout import wall_sheet
from ultraplanner_gui.cards.week_content import WallCard
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value

LARGEST_PT, LARGEST_ON_THE_WALL_PT = 16.0, 26.0
FILL_POWER, WRITING_POWER = 0.85, 1.9
"""How much larger type fills a page: more slowly where lines to write on keep their height (own
measurement)."""

STEP = 0.965
"""From one size of type to the next smaller: less is hardly seen (own choice)."""
POCKET_MM2 = 105.0 * 148.0
LARGEST_IN_THE_POCKET_PT = 11.0

T = TypeVar("T")
SetForm = Callable[[Setting, Frame], Sheet | None]


class Form(Value, frozen=True):
    """One way to set a card, and the least strain it can have.

    In one that is even, smaller type never takes more room, so that sizes can be halved.
    """

    set: SetForm
    least_strain: int = 0
    is_even: bool = False
    fill_power: float = FILL_POWER


def lay_out(
    card: CardContent,
    width_mm: float,
    height_mm: float,
    measure: Measure,
    least_x_mm: float = LEAST_X_HEIGHT_MM,
) -> tuple[Page, ...]:
    """Return the pages of *card*, each *width_mm* x *height_mm*.

    Rows that find no room at the least legible size go on to further pages. PlanError if not
    even one row fits on a page. *least_x_mm* is how high its small letters must be.
    """
    frame, widths = Frame(width_mm, height_mm, least_x_mm), _widths(measure)
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


@lru_cache(maxsize=2)
def _widths(measure: Measure) -> Widths:
    """Return the widths known of *measure*: texts of one card come back on the next."""
    return Widths(measure)


def _flowed(card: CardContent, frame: Frame, widths: Widths) -> Flow | None:
    """Return *card* on the fewest pages, close lines only where they save one."""
    trial = _Trial(card, frame, widths)
    if trial.fewest != 1:
        dense = _Trial(card, frame, widths, is_dense=True)
        trial = dense if dense.fewest < trial.fewest else trial
    return trial.best()


def _strip(card: WristStrip | Concertina, frame: Frame, widths: Widths) -> tuple[Page, ...]:
    """Return the strip on the fewest pages, and of those settings the largest."""
    is_wrist = isinstance(card, WristStrip)
    least = least_pt(LEAST_WRIST_X_HEIGHT_MM if is_wrist else LEAST_X_HEIGHT_MM)
    *larger, smallest = _sizes(frame, least, LARGEST_PT)

    def laid(size_pt: float) -> Laid | None:
        setting = Setting(size_pt, widths, is_wrist, least)
        if isinstance(card, WristStrip):
            return set_wrist(card, setting, frame)
        return set_concertina(card, setting, frame)

    fewest = laid(smallest)
    if fewest is None:
        return ()

    def as_few(size_pt: float) -> Laid | None:
        found = laid(size_pt)
        return found if found is not None and found.total <= fewest.total else None

    return (_halved(larger, as_few) or fewest).draw()


def _halved(
    sizes: Sequence[float], made: Callable[[float], T | None], guess_pt: float = 0.0
) -> T | None:
    """Return what is *made* at the largest of *sizes*, which fall, at which anything is.

    A good guess saves half the trials.
    """
    found: T | None = None
    low, high = 0, len(sizes)
    middle = sizes.index(guess_pt) if guess_pt in sizes else len(sizes) // 2
    step = 1 if guess_pt in sizes else len(sizes)
    while low < high:
        this = made(sizes[middle])
        if this is not None:
            found, high = this, middle
        else:
            low = middle + 1
        # Near a good guess by small steps that grow, then by halves.
        ahead = high - step if this is not None else low + step - 1
        step *= 2
        middle = ahead if low <= ahead < high else (low + high) // 2
    return found


class _Trial:
    """Every form of a card in its smallest type, from which the best setting is sought."""

    def __init__(
        self, card: CardContent, frame: Frame, widths: Widths, is_dense: bool = False
    ) -> None:
        self._frame, self._widths, self._is_dense = frame, widths, is_dense
        largest = LARGEST_ON_THE_WALL_PT if isinstance(card, WallCard) else LARGEST_PT
        *self._larger, self._smallest = _sizes(frame, least_pt(frame.least_x_mm), largest)
        leasts = ((form, self._flow(form, self._smallest, MOST_PAGES)) for form in _forms(card))
        self._leasts = [(form, flow) for form, flow in leasts if flow is not None]
        self.fewest = min((flow.total for _, flow in self._leasts), default=MOST_PAGES + 1)
        """On how few pages the card finds room, too many if on none."""

    def best(self) -> Flow | None:
        """Return the setting on the fewest pages, of those the least strained, then the largest."""
        best: tuple[tuple[float, ...], Flow] | None = None
        for rank, (form, least) in enumerate(self._leasts):
            if best is not None and best[0][:2] < (least.total, form.least_strain):
                continue
            for size_pt, flow in self._settings(form, least):
                key = (flow.total, flow.sheet.strain, -size_pt, rank)
                if best is None or key < best[0]:
                    best = key, flow
        return best[1] if best is not None else None

    def _settings(self, form: Form, least: Flow) -> Iterator[tuple[float, Flow]]:
        """Yield what could be the best, and the size of its type.

        Larger type takes no fewer pages, so that the smallest tells how few a form can take.
        """
        fewest = least.total, form.least_strain

        def made(size_pt: float) -> tuple[float, Flow] | None:
            flow = self._flow(form, size_pt, least.total)
            is_good = flow is not None and (flow.total, flow.sheet.strain) <= fewest
            return (size_pt, flow) if flow is not None and is_good else None

        if form.is_even:
            guess_pt = _likely(least, self._smallest, self._larger, form.fill_power)
            yield _halved(self._larger, made, guess_pt) or (self._smallest, least)
            return
        for size_pt in self._larger:
            flow = self._flow(form, size_pt, least.total)
            if flow is not None:
                yield size_pt, flow
                if (flow.total, flow.sheet.strain) <= fewest:
                    return
        yield self._smallest, least

    def _flow(self, form: Form, size_pt: float, most_pages: int) -> Flow | None:
        least = least_pt(self._frame.least_x_mm)
        sheet = form.set(Setting(size_pt, self._widths, self._is_dense, least), self._frame)
        flow = Flow(sheet, self._frame, most_pages) if sheet is not None else None
        return flow if flow is not None and flow.total else None


def _likely(least: Flow, smallest_pt: float, larger: Sequence[float], fill_power: float) -> float:
    """Return the size of type that is likely to fill the page, going by the smallest."""
    wish_pt = smallest_pt * least.fill**-fill_power
    return next((size_pt for size_pt in larger if size_pt <= wish_pt), 0.0)


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
        has_blanks = any(item.blanks for entry in card.entries for item in entry.items)
        power = WRITING_POWER if has_blanks else FILL_POWER
        yield from (Form(form, is_even=True, fill_power=power) for form in forms_of(card))
    elif isinstance(card, WallCard):
        yield Form(partial(wall_sheet, card), is_even=True, fill_power=WRITING_POWER)


def _sizes(frame: Frame, least: float, largest: float) -> Iterator[float]:
    share = (frame.width_mm * frame.height_mm / POCKET_MM2) ** 0.5
    size_pt = max(least, min(largest, LARGEST_IN_THE_POCKET_PT * share))
    while size_pt > least:
        yield size_pt
        size_pt *= STEP
    yield least

"""Placing cards on sheets of paper, several to a sheet, never scaled."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.cards.flow import Frame
from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value

SLACK_MM = 0.05


class Placed(Value, frozen=True):
    """A page and where its top left corner lies on the sheet."""

    page: Page
    x_mm: float
    y_mm: float


def impose(
    pages: Sequence[Page], width_mm: float, height_mm: float, unprintable_mm: float = 0.0
) -> tuple[tuple[Placed, ...], ...]:
    """Return the sheets of *width_mm* x *height_mm* that take *pages* in order, edge to edge.

    Their white margins may lie where the printer cannot print. PlanError if a page is larger
    than the paper.
    """
    margins = [Frame(page.width_mm, page.height_mm).margin_mm for page in pages]
    border = max(0.0, unprintable_mm - min(margins, default=0.0))
    room = width_mm - 2.0 * border, height_mm - 2.0 * border
    sheets: list[list[Placed]] = []
    x = y = shelf = 0.0
    for page in pages:
        if page.width_mm > room[0] + SLACK_MM or page.height_mm > room[1] + SLACK_MM:
            raise _too_large(page)
        if x + page.width_mm > room[0] + SLACK_MM:
            x, y, shelf = 0.0, y + shelf, 0.0
        if not sheets or y + page.height_mm > room[1] + SLACK_MM:
            sheets.append([])
            x = y = shelf = 0.0
        sheets[-1].append(Placed(page, x, y))
        x, shelf = x + page.width_mm, max(shelf, page.height_mm)
    return tuple(_centred(sheet, width_mm, height_mm) for sheet in sheets)


def _centred(sheet: Sequence[Placed], width_mm: float, height_mm: float) -> tuple[Placed, ...]:
    right = max(placed.x_mm + placed.page.width_mm for placed in sheet)
    bottom = max(placed.y_mm + placed.page.height_mm for placed in sheet)
    x, y = 0.5 * (width_mm - right), 0.5 * (height_mm - bottom)
    return tuple(Placed(p.page, p.x_mm + x, p.y_mm + y) for p in sheet)


def _too_large(page: Page) -> PlanError:
    return PlanError(
        QT_TRANSLATE_NOOP(
            "Cards",
            "A card of {0} x {1} mm is larger than the paper. Choose larger or turned paper, "
            "or a smaller card.",
        ),
        f"{page.width_mm:g}",
        f"{page.height_mm:g}",
    )

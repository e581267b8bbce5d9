"""Cards in a language written from right to left: the mirror image, each text read its own way.

What is a drawing along the course stays: it is run from left to right in every language.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import TypeGuard

from msgspec.structs import replace

from ultraplanner_gui.cards.content import CardContent
from ultraplanner_gui.cards.mirror import mirrored
from ultraplanner_gui.cards.page import Measure, Op, Page, Text
from ultraplanner_gui.cards.strip_content import Concertina, WristStrip
from ultraplanner_gui.wording.reading import END, LEFT_TO_RIGHT, from_the_right

# Groups of figures that are one number, such as a telephone's: in a line read from the right they
# would change places.
_GROUPS = re.compile(r"\+?\d+(?:[ \-/]\d+)+")


# What stands in a column of figures, with the marks `Words` puts around it.
_FIGURES = re.compile(r"[\d\s.,:·–+\-\u2066-\u2069]+")


def turned(pages: Iterable[Page], content: CardContent, measure: Measure) -> tuple[Page, ...]:
    """Return the laid-out *pages* of *content* as they are read from right to left."""
    if isinstance(content, WristStrip | Concertina):
        # Its columns are the course itself.
        return tuple(replace(page, ops=tuple(_read(page.ops))) for page in pages)
    return tuple(replace(page, ops=tuple(_turned(page, measure))) for page in pages)


def _turned(page: Page, measure: Measure) -> Iterator[Op]:
    """Yield what is on *page* from its other side, figures still over one another by their ends."""
    widest: dict[tuple[float, float], float] = {}
    for op in page.ops:
        if _is_figure(op):
            column = op.x_mm, op.size_pt
            wide = measure(op.text, op.size_pt, op.bold)
            widest[column] = max(wide, widest.get(column, 0.0))
    for op, other in zip(page.ops, mirrored(_read(page.ops), page.width_mm), strict=True):
        if _is_figure(op) and isinstance(other, Text):
            end = other.x_mm + widest[op.x_mm, op.size_pt]
            yield replace(other, x_mm=end, align="right")
        else:
            yield other


def _is_figure(op: Op) -> TypeGuard[Text]:
    return isinstance(op, Text) and op.align == "right" and bool(_FIGURES.fullmatch(op.text))


def _read(ops: Iterable[Op]) -> Iterable[Op]:
    """Yield *ops*, each text among them one line read from the right."""
    for op in ops:
        yield replace(op, text=_line(op.text)) if isinstance(op, Text) else op


@lru_cache(maxsize=4_000)
def _line(text: str) -> str:
    whole = _GROUPS.sub(lambda found: f"{LEFT_TO_RIGHT}{found[0]}{END}", text)
    return from_the_right(whole)

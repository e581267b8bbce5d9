"""A laid-out page: what is drawn where, in millimetres from its top left corner."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

from ultraplanner_gui.plan.value import Value

MM_PER_PT = 25.4 / 72.0
X_HEIGHT_EM = 0.55
CAP_HEIGHT_EM = 0.75
"""Heights of the B612 letters, from the OS/2 table of the shipped font."""

LEAST_X_HEIGHT_MM, LEAST_WRIST_X_HEIGHT_MM = 1.5, 1.9
"""In the pocket and on the wrist: own choice for small print that is read in motion."""

LEAST_PT = LEAST_X_HEIGHT_MM / X_HEIGHT_EM / MM_PER_PT

BLACK = 0.0
"""What says something is black: grey is for what may be lost under a red lamp or in a crease."""

HILL = 0.85
RULE = 0.55
BAND = 0.93

Align = Literal["left", "right", "centre"]
Point = tuple[float, float]
Measure = Callable[[str, float, bool], float]
"""Width in millimetres of a text at a size in points, bold or not."""


class Text(Value, frozen=True):
    """A line of text; `x_mm` is its left or right edge or its middle. Black is grey 0, white 1."""

    x_mm: float
    baseline_mm: float
    text: str
    size_pt: float
    bold: bool = False
    align: Align = "left"
    grey: float = BLACK

    def moved(self, x_mm: float, y_mm: float) -> Text:
        """Return a copy further right and down."""
        x, baseline = self.x_mm + x_mm, self.baseline_mm + y_mm
        return Text(x, baseline, self.text, self.size_pt, self.bold, self.align, self.grey)


class Line(Value, frozen=True):
    """A straight line; `dashes_mm` are lengths of ink and gap in turn, none if it is unbroken."""

    start: Point
    end: Point
    width_mm: float = 0.2
    grey: float = BLACK
    dashes_mm: tuple[float, ...] = ()

    def moved(self, x_mm: float, y_mm: float) -> Line:
        """Return a copy further right and down."""
        start, end = _moved(self.start, x_mm, y_mm), _moved(self.end, x_mm, y_mm)
        return Line(start, end, self.width_mm, self.grey, self.dashes_mm)


class Rect(Value, frozen=True):
    """A filled rectangle, or the outline of one if `outline_mm` is given."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    grey: float = BLACK
    outline_mm: float = 0.0

    def moved(self, x_mm: float, y_mm: float) -> Rect:
        """Return a copy further right and down."""
        x, y = self.x_mm + x_mm, self.y_mm + y_mm
        return Rect(x, y, self.width_mm, self.height_mm, self.grey, self.outline_mm)


class Polygon(Value, frozen=True):
    """A filled shape, or an open run of lines if `outline_mm` is given."""

    points: tuple[Point, ...]
    grey: float = BLACK
    outline_mm: float = 0.0

    def moved(self, x_mm: float, y_mm: float) -> Polygon:
        """Return a copy further right and down."""
        points = tuple((x + x_mm, y + y_mm) for x, y in self.points)
        return Polygon(points, self.grey, self.outline_mm)


class Strokes(Value, frozen=True):
    """Many straight lines of one width, such as hachures."""

    lines: tuple[tuple[Point, Point], ...]
    width_mm: float = 0.2
    grey: float = BLACK

    def moved(self, x_mm: float, y_mm: float) -> Strokes:
        """Return a copy further right and down."""
        lines = tuple((_moved(a, x_mm, y_mm), _moved(b, x_mm, y_mm)) for a, b in self.lines)
        return Strokes(lines, self.width_mm, self.grey)


Op = Text | Line | Rect | Polygon | Strokes


class Page(Value, frozen=True):
    """One finished page and the name it goes by in the preview.

    `card` numbers what belongs together, front and back; a page that `may_tile` is printed in
    parts where the paper is smaller. `is_shrunk` says that it has the least legible type.
    """

    width_mm: float
    height_mm: float
    ops: tuple[Op, ...]
    name: str = ""
    card: int = 0
    may_tile: bool = False
    is_shrunk: bool = False


def least_pt(x_height_mm: float) -> float:
    """Return the size of type whose small letters are *x_height_mm* high."""
    return x_height_mm / X_HEIGHT_EM / MM_PER_PT


def _moved(point: Point, x_mm: float, y_mm: float) -> Point:
    return point[0] + x_mm, point[1] + y_mm

"""The strip under the names of the stations: each leg with its fold, each stop with its grip."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from ultraplanner_gui.engine.legs import Leg, legs_of
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import AidStation
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

BAR_PX = 13.0
BOX_PX = 16.0
GRIP_PX = 5.0
#: By distance a stop has no width of its own: so wide is a minute of it drawn and dragged.
MINUTE_PX = 1.6
LEAST_STOP_PX = 4.0
#: Of the way to the next station a stop takes at most so much.
MOST_STOP_SHARE = 0.25

XOf = Callable[[float], float]


class LegSpot(Value, frozen=True):
    """Where a leg stands in the strip; `box` is its fold, None where there is no room for it."""

    leg: Leg
    left: float
    right: float
    box: QRectF | None


class StopSpot(Value, frozen=True):
    """Where the stop at a station begins and ends; its grip is at the end."""

    station: AidStation
    left: float
    right: float


def leg_spots(
    outlook: Outlook, axis: RaceAxis, body: QRectF, top: float, x_of: XOf
) -> list[LegSpot]:
    """Return the legs in sight, the strip beginning at *top*; by clock they begin on leaving."""
    spots, look = [], theme()
    wide, high = look.px(BOX_PX), look.px(BAR_PX)
    least, low, far = wide + 2.0 * look.px(GRIP_PX), body.left(), body.right()
    for leg in legs_of(outlook):
        left = x_of(leg.start_m)
        if axis.measure == "clock":
            left = low + axis.x_of_time(leg.leave_s, body.width())
        left, right = max(left, low), min(x_of(leg.end_m), far)
        if right - left < 2.0:
            continue
        middle = (left + right) / 2.0
        has_room = right - left >= least
        box = QRectF(middle - wide / 2.0, top, wide, high) if has_room else None
        spots.append(LegSpot(leg, left, right, box))
    return spots


def stop_spots(outlook: Outlook, axis: RaceAxis, body: QRectF, x_of: XOf) -> list[StopSpot]:
    """Return the stops at the stations in sight, those of no time too."""
    course, target = outlook.project.course, outlook.target
    if course is None or target is None:
        return []
    xs = [x_of(at_m) for at_m in (*(s.at_m for s in course.stations), course.length_m)]
    low, high = body.left() - 1.0, body.right() + 1.0
    per_s, least = theme().px(MINUTE_PX) / 60.0, theme().px(LEAST_STOP_PX)
    spots = []
    for station, (left, next_x) in zip(course.stations, pairwise(xs), strict=True):
        if not low <= left <= high:
            continue
        if axis.measure == "clock":
            leave_s = target.departure_s(station.at_m)
            right = body.left() + axis.x_of_time(leave_s, body.width())
        else:
            most = MOST_STOP_SHARE * max(next_x - left, 0.0)
            right = left + min(station.stop_s * per_s, most)
        spots.append(StopSpot(station, left, max(right, left + least)))
    return spots


def stop_px_per_s(axis: RaceAxis, width: float) -> float:
    """Return how many pixels of a drag make a stop a second longer."""
    if axis.measure == "clock":
        return axis.unit_px(width)
    return theme().px(MINUTE_PX) / 60.0


def paint_legs(
    painter: QPainter, spots: Sequence[LegSpot], folded: frozenset[str], hot: str | None
) -> None:
    """Draw each leg as a line with its fold in the middle, that of the leg *hot* darker."""
    look = theme()
    c, gap = look.colours, look.px(3.0)
    lines: list[QLineF] = []
    tips: dict[bool, list[QLineF]] = {True: [], False: []}
    for spot in spots:
        box = spot.box
        if box is not None:
            y = box.center().y()
            lines.append(QLineF(spot.left + gap, y, box.left(), y))
            lines.append(QLineF(box.right(), y, spot.right - gap, y))
            tips[spot.leg.key == hot] += _tips(box.center().x(), y, spot.leg.key in folded)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(QPen(c["strong_line"], Stroke.HAIR))
    painter.drawLines(lines)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    for is_hot, strokes in tips.items():
        if strokes:
            painter.setPen(QPen(c["ink" if is_hot else "soft"], Stroke.LINE))
            painter.drawLines(strokes)


def _tips(x: float, y: float, is_folded: bool) -> list[QLineF]:
    """Return two tips: toward each other they fold the leg, away from each other they open it."""
    look = theme()
    half = 0.275 * look.px(BAR_PX)
    away, back = (look.px(5.5), -look.px(3.5)) if is_folded else (look.px(2.0), look.px(3.5))
    strokes = []
    for side in (-1.0, 1.0):
        tip = x + side * away
        start = tip + side * back
        strokes += [QLineF(start, y - half, tip, y), QLineF(start, y + half, tip, y)]
    return strokes


def paint_stops(
    painter: QPainter,
    spots: Sequence[StopSpot],
    top: float,
    hot: str | None,
    was: dict[str, float],
) -> None:
    """Draw each stop as a bar from its station on; *was* are the widths of some before."""
    look = theme()
    c, high, inset = look.colours, look.px(BAR_PX), look.px(3.0)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(QPen(c["ink"], Stroke.HAIR))
    boxes: dict[str, list[QRectF]] = {kind: [] for kind in ("soft", "paper", "teal")}
    for spot in spots:
        is_hot = spot.station.key == hot
        kind = "teal" if is_hot else "soft" if spot.station.stop_s > 0.0 else "paper"
        box = QRectF(spot.left, top + inset, spot.right - spot.left, high - 2.0 * inset)
        boxes[kind].append(box)
    for kind, those in boxes.items():
        if those:
            painter.setBrush(c[kind])
            painter.drawRects(those)
    for box in boxes["teal"]:
        painter.fillRect(QRectF(box.right() - 1.0, top + 1.0, 2.0, high - 2.0), c["ink"])
    painter.setPen(QPen(c["ink"], Stroke.HAIR, Qt.PenStyle.DashLine))
    for spot in spots:
        if spot.station.key in was:
            x = round(spot.left + was[spot.station.key])
            painter.drawLine(QLineF(x, top, x, top + high))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)

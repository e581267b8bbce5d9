"""The picture of a course from above: line, surfaces, direction, places, scale and north."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

import numpy as np
from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.raceday.plan_line import DrawnLine
from ultraplanner_gui.raceday.relief import FULL_WASH
from ultraplanner_gui.raceday.surface_looks import plan_pen
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.wording.words import Words

LINE_PX = 3.4
CASING_PX = 5.2
CHOSEN_PX = 10.0
#: Depths of each hue the gradient is drawn in.
DEPTHS = 4
ARROW_EVERY_PX = 84.0
ARROW_PX = 4.6
DOT_PX = 3.2
NAME_PT = Pt.SMALL
NAME_GAP_PX = 6.0
LONGEST_NAME_PX = 120.0
#: The scale bar takes at most this share of the width.
BAR_SHARE = 0.3


class Scene(Value, frozen=True, eq=False):
    """What there is to draw into `room`: the line and what lies along it."""

    line: DrawnLine
    course: Course
    profile: Profile
    words: Words
    room: QRectF
    chosen_m: tuple[float, float] | None = None


def paint_plan(painter: QPainter, scene: Scene) -> None:
    """Draw the whole picture."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _paint_chosen(painter, scene)
    _paint_line(painter, scene)
    _paint_surfaces(painter, scene)
    _paint_arrows(painter, scene.line)
    taken = [_paint_scale(painter, scene), _paint_north(painter, scene.room)]
    _paint_places(painter, scene, taken)


def _pieces(line: DrawnLine) -> Iterator[tuple[int, int]]:
    return pairwise((*line.starts, len(line.x)))


def _polygon(xs: FloatArray, ys: FloatArray) -> QPolygonF:
    return QPolygonF(list(map(QPointF, xs.tolist(), ys.tolist())))


def _round_pen(colour: QColor, width: float) -> QPen:
    cap, join = Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin
    return QPen(colour, width, Qt.PenStyle.SolidLine, cap, join)


def _stretch(line: DrawnLine, start_m: float, end_m: float) -> QPolygonF:
    """Return the part of the line between two places of the course."""
    first, last = np.searchsorted(line.at_m, (start_m, end_m))
    inner_x, inner_y = line.x[first:last], line.y[first:last]
    ends = line.place_of(start_m), line.place_of(end_m)
    xs = np.concatenate(([ends[0][0]], inner_x, [ends[1][0]]))
    ys = np.concatenate(([ends[0][1]], inner_y, [ends[1][1]]))
    return _polygon(xs, ys)


def _paint_chosen(painter: QPainter, scene: Scene) -> None:
    if scene.chosen_m is not None:
        painter.setPen(_round_pen(theme().colours["pale_teal"], CHOSEN_PX))
        painter.drawPolyline(_stretch(scene.line, *scene.chosen_m))


def _paint_line(painter: QPainter, scene: Scene) -> None:
    """Draw the line by its gradient, dark at both sides; later passes over earlier ones."""
    line, colours = scene.line, theme().colours
    depths = _depths(line, scene.profile)
    for number in range(int(line.passes.max()) + 1):
        for pen_of in (None, depths):
            for first, last in _runs(line, number, pen_of):
                if pen_of is None:
                    painter.setPen(_round_pen(colours["ink"], CASING_PX))
                else:
                    painter.setPen(_round_pen(_hue(int(pen_of[first])), LINE_PX))
                xs, ys = line.x[first : last + 1], line.y[first : last + 1]
                painter.drawPolyline(_polygon(xs, ys))


def _runs(line: DrawnLine, number: int, depths: np.ndarray | None) -> Iterator[tuple[int, int]]:
    """Give first and last point of each run of one pass, and of one depth where *depths* are."""
    for start, end in _pieces(line):
        if end - start < 2:
            continue
        kinds = line.passes[start : end - 1] * 100
        if depths is not None:
            kinds = kinds + depths[start : end - 1]
        edges = np.flatnonzero(np.diff(kinds)) + 1
        for first, last in pairwise((0, *edges.tolist(), end - 1 - start)):
            if line.passes[start + first] == number:
                yield start + first, start + last


def _depths(line: DrawnLine, profile: Profile) -> np.ndarray:
    """Return for each stretch between two points how steep it is, -DEPTHS to DEPTHS."""
    if not profile.has_elevation:
        return np.zeros(len(line.x) - 1, dtype=np.int64)
    heights = np.interp(line.at_m, profile.distance_m, profile.elevation_m)
    gradient = np.diff(heights) / np.maximum(np.diff(line.at_m), 1.0)
    depths = np.rint(np.clip(gradient / FULL_WASH, -1.0, 1.0) * DEPTHS)
    return depths.astype(np.int64)


def _hue(depth: int) -> QColor:
    """Return sky for a descent, stone on the level, ochre for a climb; deeper is steeper."""
    colours = theme().colours
    level, full = colours["stone"], colours["ochre" if depth > 0 else "sky"]
    share = abs(depth) / DEPTHS

    def mixed(a: float, b: float) -> float:
        return a + (b - a) * share

    return QColor.fromRgbF(
        mixed(level.redF(), full.redF()),
        mixed(level.greenF(), full.greenF()),
        mixed(level.blueF(), full.blueF()),
    )


def _paint_surfaces(painter: QPainter, scene: Scene) -> None:
    for span in scene.course.surfaces:
        pen = plan_pen(span.surface)
        if pen is not None:
            painter.setPen(pen)
            painter.drawPolyline(_stretch(scene.line, span.start_m, span.end_m))


def _paint_arrows(painter: QPainter, line: DrawnLine) -> None:
    """Draw which way the course goes, at even steps along the drawn line."""
    colours = theme().colours
    painter.setPen(QPen(colours["paper"], Stroke.HAIR))
    painter.setBrush(colours["ink"])
    for start, end in _pieces(line):
        x, y = line.x[start:end], line.y[start:end]
        run = np.concatenate(([0.0], np.cumsum(np.hypot(np.diff(x), np.diff(y)))))
        for at in np.arange(ARROW_EVERY_PX / 2, run[-1], ARROW_EVERY_PX):
            behind, here, ahead = (at - ARROW_PX, at, min(at + ARROW_PX, run[-1]))
            bx, hx, ax = np.interp((behind, here, ahead), run, x)
            by, hy, ay = np.interp((behind, here, ahead), run, y)
            if (length := float(np.hypot(ax - bx, ay - by))) > ARROW_PX:
                ux, uy = (ax - bx) / length, (ay - by) / length
                painter.drawPolygon(_arrow(float(hx), float(hy), float(ux), float(uy)))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _arrow(x: float, y: float, ux: float, uy: float) -> QPolygonF:
    r = ARROW_PX
    tip = QPointF(x + r * ux, y + r * uy)
    left = QPointF(x - r * ux - 0.9 * r * uy, y - r * uy + 0.9 * r * ux)
    right = QPointF(x - r * ux + 0.9 * r * uy, y - r * uy - 0.9 * r * ux)
    return QPolygonF([tip, left, QPointF(x - 0.4 * r * ux, y - 0.4 * r * uy), right])


def _paint_scale(painter: QPainter, scene: Scene) -> QRectF:
    """Draw a bar of a round distance at the foot; return where it stands."""
    look, words, room = theme(), scene.words, scene.room
    most = BAR_SHARE * room.width() / scene.line.px_per_m / words.unit_m
    units = _round_below(most)
    width = units * words.unit_m * scene.line.px_per_m
    decimals = 0 if units >= 1.0 else 1 if units >= 0.1 else 2
    text = words.distance(units * words.unit_m, decimals)
    y, x = room.bottom() - 2.0, room.left()
    painter.setPen(QPen(look.colours["ink"], Stroke.LINE))
    painter.drawLine(QLineF(x, y, x + width, y))
    painter.setPen(QPen(look.colours["ink"], Stroke.HAIR))
    for end in (x, x + width):
        painter.drawLine(QLineF(end, y - 4.0, end, y))
    metrics = look.metrics(NAME_PT)
    wide = metrics.horizontalAdvance(text)
    place = QRectF(x + width + 5.0, y - metrics.height() + 3.0, wide, metrics.height())
    draw_text(painter, place, text, look.colours["soft"], look.font(NAME_PT))
    return QRectF(x, place.top(), width + 5.0 + wide, metrics.height())


def _round_below(value: float) -> float:
    """Return the greatest of 1, 2 and 5 times a power of ten not above *value*."""
    power = 10.0 ** np.floor(np.log10(value))
    return float(next(m * power for m in (5.0, 2.0, 1.0) if m * power <= value * (1 + 1e-9)))


def _paint_north(painter: QPainter, room: QRectF) -> QRectF:
    """Draw the north mark in the upper right corner; return where it stands."""
    look = theme()
    text = QCoreApplication.translate("PlanView", "N")
    metrics = look.metrics(NAME_PT, bold=True)
    wide, shaft = metrics.horizontalAdvance(text) + 4.0, look.px(14.0)
    x, top = room.right() - wide / 2, room.top()
    painter.setPen(QPen(look.colours["soft"], Stroke.THIN))
    painter.setBrush(look.colours["soft"])
    foot, r = top + shaft, look.px(3.0)
    painter.drawLine(QLineF(x, top + r, x, foot))
    painter.drawPolygon(
        QPolygonF([QPointF(x, top), QPointF(x - r, top + 2 * r), QPointF(x + r, top + 2 * r)])
    )
    painter.setBrush(Qt.BrushStyle.NoBrush)
    place = QRectF(x - wide / 2, foot, wide, metrics.height())
    font = look.font(NAME_PT, bold=True)
    draw_text(painter, place, text, look.colours["soft"], font, Align.AlignCenter)
    return QRectF(place.left(), top, wide, shaft + metrics.height())


class _Named(Value, frozen=True):
    """A place with its name; the lower the `rank`, the sooner it is named."""

    x: float
    y: float
    name: str
    rank: int


def _paint_places(painter: QPainter, scene: Scene, taken: list[QRectF]) -> None:
    """Draw start, finish and aid stations; name them where no other name or mark is in the way."""
    line, colours = scene.line, theme().colours
    start, finish = line.place_of(0.0), line.place_of(scene.course.length_m)
    ends = _ends(start, finish)
    stations = [(*line.place_of(s.at_m), s) for s in scene.course.stations]
    painter.setPen(QPen(colours["ink"], Stroke.LINE))
    painter.setBrush(colours["panel"])
    for x, y, _ in stations:
        painter.drawEllipse(QPointF(x, y), DOT_PX, DOT_PX)
    painter.drawRect(QRectF(finish[0] - 4.0, finish[1] - 4.0, 8.0, 8.0))
    painter.setBrush(colours["ink"])
    painter.drawEllipse(QPointF(*start), DOT_PX, DOT_PX)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    marks = [*((x, y) for x, y, _ in stations), start, finish]
    taken += [QRectF(x - 4.5, y - 4.5, 9.0, 9.0) for x, y in marks]
    named = ends + [
        _Named(x, y, s.name, 1 if s.cutoff_s is not None else 2) for x, y, s in stations
    ]
    for place in sorted(named, key=lambda one: one.rank):
        _paint_name(painter, scene, place, taken)


def _ends(start: tuple[float, float], finish: tuple[float, float]) -> list[_Named]:
    if abs(start[0] - finish[0]) + abs(start[1] - finish[1]) < 3 * DOT_PX:
        return [_Named(*start, tr("Start and finish"), 0)]
    return [_Named(*start, tr("Start"), 0), _Named(*finish, tr("Finish"), 0)]


def _paint_name(painter: QPainter, scene: Scene, place: _Named, taken: list[QRectF]) -> None:
    look = theme()
    bold = place.rank == 0
    metrics = look.metrics(NAME_PT, bold)
    wide, high = metrics.horizontalAdvance(place.name) + 4.0, metrics.height()
    if wide > look.px(LONGEST_NAME_PX):
        return
    gap, free = NAME_GAP_PX, []
    for left, top in (
        (place.x + gap, place.y - high / 2),
        (place.x - gap - wide, place.y - high / 2),
        (place.x - wide / 2, place.y - gap - high),
        (place.x - wide / 2, place.y + gap),
    ):
        room = QRectF(left, top, wide, high)
        if scene.room.contains(room) and not any(room.intersects(other) for other in taken):
            free.append(room)
    if not free:
        return
    room = min(free, key=lambda one: _points_in(scene.line, one))
    ground = look.colours["paper"]
    ground.setAlphaF(0.82)
    painter.fillRect(room, ground)
    colour = look.colours["ink" if bold else "soft"]
    draw_text(painter, room, place.name, colour, look.font(NAME_PT, bold), Align.AlignCenter)
    taken.append(room)


def _points_in(line: DrawnLine, room: QRectF) -> int:
    """Return how much of the line lies under *room*."""
    is_beside = (line.x >= room.left()) & (line.x <= room.right())
    return int((is_beside & (line.y >= room.top()) & (line.y <= room.bottom())).sum())

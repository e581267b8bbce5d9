"""The profile: the ground with its wash of gradient and its hachures."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QColor, QFontMetricsF, QImage, QPainter, QPixmap

from ultraplanner_gui.engine.climbs import Hill, hills_of
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.raceday.race_lane import RaceLane, have_stations_changed
from ultraplanner_gui.raceday.relief import FORMAT, relief
from ultraplanner_gui.widgets.lane import UNIT_PT, Align, Scale, draw_text, nice_ticks
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

#: Each climb or descent with its names and how wide each is.
_Names = tuple[tuple[Hill, tuple[tuple[str, float], ...]], ...]

#: Pieces a section is stretched in.
KNOTS = 4
#: How far a stretched piece may reach past the picture it is taken from.
OVER_PX = 2.0
#: Names of climbs stand in a lane at least so many of their lines high, with room at both sides.
LEAST_LINES = 4.0
ROUND_NAME_PX = 6.0
PLATE_SHARE = 0.8


class _DrawnFor(Value, frozen=True):
    """What a picture was drawn for; `target` only where it runs by the clock."""

    profile: Profile
    look: tuple[object, ...]
    target: PacePlan | None
    low: float
    high: float

    def x_of(self, times_s: FloatArray, width: float) -> FloatArray:
        """Return x of moments of the race in a picture of *width*."""
        return (times_s - self.low) / (self.high - self.low) * width


class Plate(QPixmap):
    """A text on a ground of its own, kept: to copy it takes a sixth of setting its letters."""

    text = ""


class ProfileLane(RaceLane):
    """Height along the race. The picture is kept until size, view, course or theme change.

    What stands beside it, head and heights, stays as it is while the view alone changes.
    """

    topic = "profile"
    #: What was painted before with head and heights that still hold.
    _framed: QPixmap | None = None
    _is_framed = False
    _picture: QImage | None = None
    _picture_of: _DrawnFor | None = None
    _extent_of: Profile | None = None
    _extent_m = (0.0, 0.0)
    _names_for: tuple[Profile, Words, QFontMetricsF] | None = None
    _names: _Names = ()
    #: Those names as they are drawn, and what for: colours, type and pixels.
    _plates: dict[str, Plate]
    _plates_of: tuple[object, ...] = ()
    _ends_m: FloatArray = np.empty((0, 2))
    _least_px: FloatArray = np.empty(0)

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        profile = self.shown.profile
        if profile is None:
            self.paint_empty(
                painter, body, self.tr("No course yet. Drop a GPX file on the window.")
            )
            return
        if not profile.has_elevation:
            self.paint_empty(painter, body, self.tr("The course has no heights: paced as flat."))
            return
        scale = self._scale(profile, body)
        self._paint_heights(painter, body, scale)
        of = self._kept_for(profile, body)
        if self._picture is not None and self._picture_of == of:
            painter.drawImage(body.topLeft(), self._picture)
        elif not self._paint_stretched(painter, body, of):
            self._picture, self._picture_of = self._drawn(profile, body, scale), of
            painter.drawImage(body.topLeft(), self._picture)
        self._name_hills(painter, profile, body)

    def _paint_heights(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        words = self.words()
        ticks = nice_ticks(scale.low, scale.high, max(2, int(body.height() / 26)))
        if self._is_framed:
            self.paint_tick_lines(painter, body, [scale.y(t) for t in ticks])
        else:
            self.paint_ticks(painter, body, scale, [(t, words.height_bare(t)) for t in ticks])

    def update(self, *where: object) -> None:
        self._framed = None
        super().update(*where)

    def on_view_changed(self) -> None:
        framed = self._framed
        self.update()
        self._framed = framed

    def paint_picture(self, picture: QPixmap) -> None:
        self._is_framed = self._framed is picture
        if self._is_framed:
            body = self.body()
            with QPainter(picture) as painter:
                painter.fillRect(body.toAlignedRect(), theme().colours["paper"])
                painter.setRenderHint(QPainter.RenderHint.Antialiasing)
                self.paint_ground(painter, body)
                self.paint_body(painter, body)
        else:
            super().paint_picture(picture)
        self._framed, self._is_framed = picture, False

    def _name_hills(self, painter: QPainter, profile: Profile, body: QRectF) -> None:
        """Write at the foot of each climb and descent what it is, where there is room for it."""
        if body.height() < LEAST_LINES * theme().metrics(UNIT_PT).height():
            return
        rooms, look, ratio = self.name_rooms(profile, body), theme(), self.devicePixelRatioF()
        of = (look.colours, look.metrics(UNIT_PT), ratio)
        if of != self._plates_of:
            self._plates_of, self._plates = of, {}
        for room, name in rooms:
            plate = self._plates.get(name)
            if plate is None:
                plate = self._plates[name] = _plate(name, ratio)
            left = room.left() + 0.5 * (room.width() - plate.width() / ratio)
            painter.drawPixmap(round(left), round(room.top()), plate)

    def name_rooms(self, profile: Profile, body: QRectF) -> list[tuple[QRectF, str]]:
        """Return where names of climbs and descents stand, none across a line of a station."""
        height = theme().metrics(UNIT_PT).height()
        # Those of the plan as kept, so that names stay still under a drag.
        course = self.document.before.project.course
        stations = course.stations if course is not None else ()
        xs = self.axis.xs_of_stations(stations, body.width())
        lines = sorted(body.left() + x for x in xs)
        rooms: list[tuple[QRectF, str]] = []
        known = self._names_of(profile)
        ends = self.axis.x_of_distances(self._ends_m, body.width()) + body.left()
        np.clip(ends, body.left(), body.right(), out=ends)
        is_wide = ends[:, 1] - ends[:, 0] >= self._least_px
        top = body.bottom() - height
        for k, (left, right) in zip(np.flatnonzero(is_wide), ends[is_wide].tolist(), strict=True):
            room_px = right - left
            if inside := lines[bisect_right(lines, left) : bisect_left(lines, right)]:
                left, room_px = _widest((left, *inside, right))
            for text, wide_px in known[k][1]:
                if wide_px <= room_px:
                    rooms.append((QRectF(left, top, room_px, height), text))
                    break
        return rooms

    def _names_of(self, profile: Profile) -> _Names:
        """Return climbs and descents with their names, long and short, and the room each takes."""
        words, metrics = self.words(), theme().metrics(UNIT_PT)
        # Metrics are made anew with another size of type.
        of = (profile, words, metrics)
        if self._names_for is None or any(
            a is not b for a, b in zip(self._names_for, of, strict=True)
        ):
            self._names_for, self._plates_of = of, ()
            self._names = tuple(
                (
                    hill,
                    tuple(
                        (text, metrics.horizontalAdvance(text) + ROUND_NAME_PX)
                        for text in (words.say(hill.name), words.signed(words.height(hill.rise_m)))
                    ),
                )
                for hill in hills_of(profile)
            )
            self._ends_m = np.array([(hill.start_m, hill.end_m) for hill, _ in self._names])
            self._ends_m = self._ends_m.reshape(-1, 2)
            self._least_px = np.array([names[-1][1] for _, names in self._names])
        return self._names

    def renew(self, before: Outlook, after: Outlook) -> None:
        # Names keep off the lines of stations: they are placed anew once those are let go.
        is_trial = self.document.shown is not self.document.before
        has_moved = have_stations_changed(before, after) and not is_trial
        if has_moved or self.has_ground_changed(before, after):
            self.update()

    def _kept_for(self, profile: Profile, body: QRectF) -> _DrawnFor:
        axis = self.axis
        target = self.shown.target if axis.measure == "clock" else None
        size = (round(body.width()), round(body.height()))
        look = (size, self.devicePixelRatioF(), theme().colours, axis.measure, axis.folds)
        return _DrawnFor(profile, look, target, axis.low, axis.high)

    def _paint_stretched(self, painter: QPainter, body: QRectF, wanted: _DrawnFor) -> bool:
        """Draw the kept picture stretched to where a drag by clock moves the places.

        Between two ends of sections it keeps its proportions. Return whether that could be done.
        """
        picture, kept = self._picture, self._picture_of
        is_trial = self.document.shown is not self.document.before
        if picture is None or kept is None or not is_trial or wanted.target is None:
            return False
        if self.axis.folds or kept.target is None:
            return False
        if (kept.profile, kept.look) != (wanted.profile, wanted.look):
            return False
        knots_m, width = self._knots_m(), body.width()
        old = kept.x_of(_times(kept.target, knots_m), width)
        new = wanted.x_of(_times(wanted.target, knots_m), width)
        ratio, columns = picture.devicePixelRatio(), picture.width()
        xs = (np.arange(columns) + 0.5) / ratio
        from_px = np.interp(xs, new, old) * ratio
        if from_px.min() < -OVER_PX or from_px.max() > columns + OVER_PX:
            return False
        index = np.clip(from_px.astype(np.intp), 0, columns - 1)
        painter.drawImage(body.topLeft(), _with_columns(picture, index))
        return True

    def _knots_m(self) -> list[float]:
        """Return the ends of all sections as kept and as they would be, and places between."""
        outlooks = (self.document.before, self.document.shown)
        ends = {0.0, *(s.end_m for outlook in outlooks for s in outlook.sections)}
        knots: list[float] = []
        for start, end in pairwise(sorted(ends)):
            knots += (start + (end - start) * part / KNOTS for part in range(KNOTS))
        return [*knots, max(ends)]

    def readout(self, at: QPointF) -> str:
        profile, target, words = self.shown.profile, self.shown.target, self.words()
        if profile is None or target is None or not self.body().contains(at):
            return ""
        at_m = self.place_at(at.x())
        k = int(np.searchsorted(profile.distance_m, at_m, side="right")) - 1
        gradient = float(profile.gradient[min(max(k, 0), len(profile.gradient) - 1)])
        clock = words.clock(self.shown.project.race.clock(target.arrival_s(at_m)))
        said = self.tr("{0}, {1}, gradient {2}, {3}").format(
            words.distance(at_m, 1),
            words.height(profile.elevation_at(at_m)),
            words.percent(100 * gradient),
            clock,
        )
        here = (h for h in hills_of(profile) if h.start_m <= at_m < h.end_m)
        hill = next(here, None)
        return said if hill is None else f"{said}\n{words.say(hill.name)}"

    def _scale(self, profile: Profile, body: QRectF) -> Scale:
        if self._extent_of is not profile:
            heights = profile.elevation_m
            self._extent_of = profile
            self._extent_m = float(heights.min()), float(heights.max())
        low, high = self._extent_m
        room = max(0.06 * (high - low), 10.0)
        return Scale(low - 2.2 * room, high + room, body.top(), body.bottom())

    def _drawn(self, profile: Profile, body: QRectF, scale: Scale) -> QImage:
        ratio = self.devicePixelRatioF()
        width, height = (max(1, round(ratio * round(px))) for px in body.size().toTuple())
        at_m = self.axis.distances_at(np.arange(width + 1) / ratio, width / ratio)
        heights = np.interp(at_m, profile.distance_m, profile.elevation_m)
        gradient = np.diff(heights) / np.maximum(np.diff(at_m), 1e-6)
        share = (heights - scale.low) / (scale.high - scale.low)
        ys = scale.bottom - body.top() - share * (scale.bottom - scale.top)
        return relief(ratio * ys, gradient, height, ratio, self._picture)


def _plate(name: str, ratio: float) -> Plate:
    """Return *name* on a plate: hachures, of the weight of letters, fade behind it."""
    look = theme()
    size = QSizeF(look.width(name, UNIT_PT) + ROUND_NAME_PX, look.metrics(UNIT_PT).height())
    plate = Plate((size * ratio).toSize())
    plate.text = name
    plate.setDevicePixelRatio(ratio)
    ground = QColor(look.colours["lane"])
    ground.setAlphaF(PLATE_SHARE)
    plate.fill(ground)
    rect, ink, font = QRectF(QPointF(), size), look.colours["ink"], look.font(UNIT_PT)
    with QPainter(plate) as painter:
        draw_text(painter, rect, name, ink, font, Align.AlignCenter)
    return plate


def _widest(xs: Sequence[float]) -> tuple[float, float]:
    """Return where the widest of the gaps between *xs* begins and how wide it is."""
    gaps = [(left, right - left) for left, right in pairwise(xs)]
    return max(gaps, key=lambda gap: gap[1])


def _times(target: PacePlan, places_m: list[float]) -> FloatArray:
    """Return arrival and departure at every place, in this order."""
    stop_s = {stop.at_m: stop.stop_s for stop in target.stops}
    arrive_s = np.array(target.arrivals_s(places_m))
    leave_s = arrive_s + np.array([stop_s.get(at_m, 0.0) for at_m in places_m])
    return np.column_stack((arrive_s, leave_s)).ravel()


def _with_columns(picture: QImage, index: npt.NDArray[np.intp]) -> QImage:
    """Return a picture whose columns are those of *picture* at *index*."""
    row = picture.bytesPerLine() // 4
    pixels = np.frombuffer(picture.constBits(), np.uint32).reshape(picture.height(), row)
    moved = pixels.take(index, axis=1)
    size = (len(index), picture.height(), 4 * len(index))
    image = QImage(moved.data, *size, FORMAT).copy()
    image.setDevicePixelRatio(picture.devicePixelRatio())
    return image

"""The names of aid stations and their cutoffs, over their lines, and what can be done there."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial
from itertools import pairwise

from msgspec.structs import replace
from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import QMenu, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.raceday.head_hand import START, HeadHand
from ultraplanner_gui.raceday.head_names import (
    GAP_PX,
    Label,
    bold_width,
    is_crowded,
    row_height,
    shortened,
    thinned,
    wall_between,
    wish_of,
)
from ultraplanner_gui.raceday.head_scene import MARK_PAD_PX, HeadScene
from ultraplanner_gui.raceday.leg_bar import (
    BAR_PX,
    LegSpot,
    StopSpot,
    leg_spots,
    paint_legs,
    paint_stops,
    stop_spots,
)
from ultraplanner_gui.raceday.race_lane import RaceLane, have_stations_changed
from ultraplanner_gui.raceday.snap import Snap
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane import (
    GUTTER_PX,
    HEAD_PX,
    LABEL_PT,
    RIGHT_PX,
    UNIT_PT,
    Align,
    draw_text,
    draw_texts,
    head_text,
)
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.wording.words import Words

REACH_PX = 60.0
RIGHT = Align.AlignRight | Align.AlignVCenter


class StationHead(RaceLane):
    """Names over their lines; where they would meet, every other one stands a row lower, and
    what still does not fit is shortened and said in full under the pointer. Under the names a
    strip has a fold for each leg and a grip for each stop.

    Names, stops and the start can be dragged. Keys: left and right choose; Enter picks up, then
    left and right move it (with Shift further), up and down change the stop; Enter puts down, Esc
    puts back; F folds the leg ahead away, with Shift the leg behind.
    """

    #: The leg that ends at this key is to be folded, or unfolded.
    fold_wanted = Signal(str)

    topic = "aid station"
    lines_over = False

    def __init__(
        self,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
        snap: Snap | None = None,
    ) -> None:
        super().__init__("", "", 28.0, document, selection, axis, words, parent, snap)
        self.setAccessibleName(self.tr("Aid stations"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self._rows = 1
        self._texts_of: object = None
        self._texts: dict[tuple[str, float | None, bool], Label] = {}
        self._is_strip = False
        self._crowd: tuple[Outlook | None, tuple[object, ...], int] = (None, (), 1)
        self._drawn: tuple[QPixmap, HeadScene] | None = None
        self.folded: frozenset[str] = frozenset()
        self.hand = HeadHand(self)
        theme().changed.connect(self._forget)

    def set_strip(self, is_strip: bool) -> None:
        """Keep to one row, and name the storey, whose title is out of sight."""
        self._is_strip = is_strip
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus if is_strip else Qt.FocusPolicy.StrongFocus)
        self.update()

    @property
    def is_strip(self) -> bool:
        """Whether it is one row of a strip, in which nothing is moved."""
        return self._is_strip

    @property
    def is_carrying(self) -> bool:
        return self.hand.is_on

    @property
    def title_middle(self) -> float:
        """The middle of the storey's name, as far down as it is written in a strip."""
        return theme().metrics(Pt.LABEL, bold=True).height() / 2

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height of one row of names, or of two where one is too crowded.

        The whole race decides, so that nothing jumps under a zoom.
        """
        self._rows = self._rows_in(float(width))
        bar = 0.0 if self._is_strip else theme().px(BAR_PX)
        return round(self._rows * row_height() + bar + 2)

    def sizeHint(self) -> QSize:
        return QSize(400, self.heightForWidth(self.width()))

    @Slot()
    def fit(self) -> None:
        """Ask for another height if the names need another number of rows."""
        if self._rows_in(float(self.width())) != self._rows:
            self.updateGeometry()

    def _rows_in(self, width: float) -> int:
        if self._is_strip:
            return 1
        # Layouts ask a hundred times while the window opens.
        axis, look = self.axis, theme()
        at_one = axis.share_of_race(1.0, width)
        ground = (width, look.px(1.0), axis.measure, at_one, axis.folds, self.words())
        if self._crowd[0] is not self.shown or self._crowd[1] != ground:
            self._crowd = (self.shown, ground, self._rows_anew(width))
        return self._crowd[2]

    def _rows_anew(self, width: float) -> int:
        left, right = theme().px(HEAD_PX), theme().px(RIGHT_PX)
        wide = max(1.0, width - left - right)

        def x_of(at_m: float) -> float:
            return left + self.axis.share_of_race(at_m, wide) * wide

        return 2 if is_crowded(self._labels(x_of)) else 1

    def renew(self, before: Outlook, after: Outlook) -> None:
        if self.has_ground_changed(before, after) or have_stations_changed(before, after):
            self.update()
        # Under a drag the rows stay as they are, else everything below would jump.
        if after is self.document.before:
            self.fit()

    # Painting

    def paint_head(self, painter: QPainter) -> None:
        if self._is_strip:
            look, left = theme(), theme().px(12.0)
            rect = QRectF(
                left, 0.0, look.px(HEAD_PX) - left, look.metrics(Pt.LABEL, bold=True).height()
            )
            font = look.font(Pt.LABEL, bold=True)
            draw_text(painter, rect, self.tr("RACE DAY"), look.colours["soft"], font)
            return
        self._name_bar(painter)

    def _name_bar(self, painter: QPainter) -> None:
        """Say at the left what the strip under the names is."""
        look, height = theme(), theme().px(BAR_PX)
        right = look.px(HEAD_PX - GUTTER_PX)
        rect = QRectF(0.0, self.bar_top, right, height)
        text = self.tr("legs, stops")
        shown = head_text(text, UNIT_PT)
        draw_text(painter, rect, shown, look.colours["soft"], look.font(UNIT_PT), RIGHT)

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_station_lines(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_picture(self, picture: QPixmap) -> None:
        scene, drawn = self._scene(self.body()), self._drawn
        self._drawn = (picture, scene)
        stretch = None
        if drawn is not None and drawn[0] is picture:
            stretch = scene.changed_since(drawn[1])
        low, high = stretch or (0.0, float(self.width()))
        if low > high:
            return
        left, right = math.floor(low) - 1, math.ceil(high) + 1
        room = QRect(left, 0, right - left, self.height())
        with QPainter(picture) as painter:
            painter.setClipRect(room)
            painter.fillRect(room, theme().colours["paper"])
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self.paint_head(painter)
            self._paint_scene(painter, scene.within((left, right)))

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        self._paint_scene(painter, self._scene(body))

    @Slot()
    def _forget(self) -> None:
        """Paint all of it next time, in other colours or another size of type."""
        self._drawn = None

    def _scene(self, body: QRectF) -> HeadScene:
        """Return all there is to draw."""
        hand = self.hand
        state = (hand.hot, hand.chosen, self.folded, self._is_strip, self.is_carrying)
        legs: list[LegSpot] = []
        stops: list[StopSpot] = []
        was: dict[str, float] = {}
        if not self._is_strip:
            legs, stops = self.leg_spots(body), self.stop_spots(body)
            was = self._stops_before(body)
        placed = tuple(self.placed(body))
        return HeadScene(
            (self.words(), self.bar_top, body, *state), placed, tuple(legs), tuple(stops), was
        )

    def _paint_scene(self, painter: QPainter, scene: HeadScene) -> None:
        look = theme()
        c, bold, small = look.colours, look.metrics(LABEL_PT, bold=True), look.metrics(UNIT_PT)
        if not self._is_strip:
            self._paint_bar(painter, scene)
        for label, rect in scene.placed:
            if label.key is not None and label.key == self.hand.chosen and not self._is_strip:
                self._mark_chosen(painter, self.box_round(label, rect))
        bold_px, small_px = bold.height(), small.height()
        names: list[tuple[QRectF, str]] = []
        unders: dict[str, list[tuple[QRectF, str]]] = {"ink": [], "clay": [], "soft": []}
        for label, rect in scene.placed:
            left, top, width = rect.left(), rect.top(), rect.width()
            name = shortened(label.name, width + 1, bold_width)
            names.append((QRectF(left, top, width, bold_px), name))
            under = label.clock_in(width)
            if under:
                foot = QRectF(left, top + bold_px, width, small_px)
                hue = "ink" if label.is_held else "clay" if label.is_cutoff else "soft"
                unders[hue].append((foot, under))
        draw_texts(painter, names, c["ink"], look.font(LABEL_PT, bold=True), Align.AlignHCenter)
        for colour, texts in unders.items():
            draw_texts(painter, texts, c[colour], look.font(UNIT_PT), Align.AlignHCenter)

    @staticmethod
    def box_round(label: Label, rect: QRectF) -> QRectF:
        """Return the box that marks *label*, round what is written of it in *rect*."""
        look = theme()
        pad = look.px(MARK_PAD_PX)
        name = shortened(label.name, rect.width() + 1, bold_width)
        under = label.clock_in(rect.width())
        half = max(bold_width(name), look.width(under, UNIT_PT)) / 2 + pad
        middle = rect.center().x()
        return QRectF(middle - half, rect.top() + 0.5, 2 * half, rect.height() - 1.0)

    def _mark_chosen(self, painter: QPainter, box: QRectF) -> None:
        look = theme()
        painter.setPen(QPen(look.colours["teal"], Stroke.HEAVY if self.is_carrying else 1.0))
        painter.setBrush(look.colours["pale_teal"])
        painter.drawRoundedRect(box, 3.0, 3.0)

    def paint_focus(self, painter: QPainter) -> None:
        if self._is_strip or not self.shown.project.course:
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(QPen(theme().colours["teal"], Stroke.HAIR, Qt.PenStyle.DotLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(self.rect().adjusted(1, 0, -2, -1))

    def _paint_bar(self, painter: QPainter, scene: HeadScene) -> None:
        grip = self.hand.hot
        hot_leg = grip.key if grip.kind == "fold" else None
        paint_legs(painter, scene.legs, self.folded, hot_leg)
        hot = grip.key if grip.kind == "stop" else None
        paint_stops(painter, scene.stops, self.bar_top, hot, scene.was)

    def _stops_before(self, body: QRectF) -> dict[str, float]:
        """Return how wide the stops are drawn that are longer or shorter on trial."""
        before = self.document.before
        if not self.hand.is_on_stop or self.shown is before:
            return {}
        spots = stop_spots(before, self.axis, body, partial(self.x_of, body=body))
        now = {s.key: s.stop_s for s in self.stations}
        return {
            s.station.key: s.right - s.left
            for s in spots
            if now.get(s.station.key) != s.station.stop_s
        }

    # What stands where

    @property
    def bar_top(self) -> float:
        """Where the strip of legs and stops begins."""
        return self._rows * row_height() + 1.0

    def leg_spots(self, body: QRectF) -> list[LegSpot]:
        """Return the legs in sight and their folds."""
        x_of = partial(self.x_of, body=body)
        return leg_spots(self.shown, self.axis, body, self.bar_top, x_of)

    def stop_spots(self, body: QRectF) -> list[StopSpot]:
        """Return the stops in sight and their grips."""
        return stop_spots(self.shown, self.axis, body, partial(self.x_of, body=body))

    def placed(self, body: QRectF) -> list[tuple[Label, QRectF]]:
        """Return the names in sight and where each is written."""
        seen = self._seen(body)
        return self._places(thinned(seen) if self._is_strip else seen, body)

    def readout(self, at: QPointF) -> str:
        said = self.hand.said_at(at)
        if said:
            return said
        near = [
            (abs(label.x - at.x()), f"{label.name}  {label.under}".strip())
            for label in self._seen(self.body())
            if abs(label.x - at.x()) < theme().px(REACH_PX)
        ]
        return min(near)[1] if near else ""

    def topic_at(self, at: QPoint | None) -> str:
        kind = self.hand.hot.kind if at is None else self.hand.grip_at(QPointF(at)).kind
        return {"fold": "folded leg", "stop": "planned stop", "start": "moving the start"}.get(
            kind, self.topic
        )

    # Mouse and keys

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self.hand.press(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self.hand.move(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self.hand.release()

    def leaveEvent(self, event: QEvent) -> None:
        self.hand.cool()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if self._is_strip or self.shown.target is None:
            return
        by_mouse = event.reason() is QContextMenuEvent.Reason.Mouse
        at = QPointF(event.pos()) if by_mouse else None
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.hand.fill(menu, at)
        spot = event.globalPos() if by_mouse else self.mapToGlobal(self.rect().bottomLeft())
        menu.popup(spot)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._is_strip or not self.hand.key(event):
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self.hand.choose_some()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.hand.forsake()
        super().focusOutEvent(event)

    def place_of_choice(self) -> float | None:
        return next((s.at_m for s in self.stations if s.key == self.hand.chosen), None)

    def _places(self, labels: list[Label], body: QRectF) -> list[tuple[Label, QRectF]]:
        """Return where each label goes: over its line as far as its neighbours let it."""
        gap = theme().px(GAP_PX)
        left, right = body.left() - theme().px(REACH_PX), self.width() + gap / 2 - 6.0
        placed, height = [], row_height()
        for row in range(self._rows):
            stand = labels[row :: self._rows]
            if not stand:
                continue
            walls = [left, *(wall_between(a, b) for a, b in pairwise(stand)), right]
            for label, (low, high) in zip(stand, pairwise(walls), strict=True):
                low, high = low + gap / 2, high - gap / 2
                width = min(label.wish, high - low)
                x = min(max(label.x - width / 2, low), high - width)
                placed.append((label, QRectF(x, row * height, width, height)))
        return placed

    def _seen(self, body: QRectF) -> list[Label]:
        labels = self._labels(partial(self.x_of, body=body))
        return [one for one in labels if body.left() - 1 <= one.x <= body.right() + 1]

    def _labels(self, x_of: Callable[[float], float]) -> list[Label]:
        shown, words = self.shown, self.words()
        course = shown.project.course
        if course is None or shown.profile is None:
            return []
        race = shown.project.race
        # On every move of a drag the same texts are asked for, at other places.
        texts_of = (race, words, theme().scale)
        if texts_of != self._texts_of:
            self._texts_of, self._texts = texts_of, {}
        held, said = self.hand.said_in_hand()
        labels = []
        for key, name, at_m, elapsed_s, is_cutoff in self._ends(course, race):
            label = self._label(name, elapsed_s, is_cutoff)
            if key is not None and key == held:
                label = self._saying(label, said)
            labels.append(label.at(x_of(at_m), key))
        return labels

    def _ends(
        self, course: Course, race: Race
    ) -> list[tuple[str | None, str, float, float | None, bool]]:
        """Return key, name, place, clock and whether it is a cutoff of start, stations, finish."""
        ends: list[tuple[str | None, str, float, float | None, bool]]
        ends = [(START, self.tr("Start"), 0.0, 0.0, False)]
        ends += [(s.key, s.name, s.at_m, s.cutoff_s, True) for s in course.stations]
        return [*ends, (None, self.tr("Finish"), course.length_m, race.limit_s, True)]

    def _label(self, name: str, elapsed_s: float | None, is_cutoff: bool = True) -> Label:
        """Return the label of a place, its x left open."""
        key = (name, elapsed_s, is_cutoff)
        label = self._texts.get(key)
        if label is None:
            words, under = self.words(), ""
            shorter: tuple[str, ...] = ()
            if elapsed_s is not None:
                clock = self.shown.project.race.clock(elapsed_s)
                under, bare = words.clock(clock), words.clock(clock, weekday=False)
                shorter = (bare,)
                if is_cutoff:
                    by = self.tr("by {0}")
                    under, shorter = by.format(under), (by.format(bare), bare)
            label = Label(0.0, name, under, shorter, is_cutoff, wish_of(name, under))
            self._texts[key] = label
        return label

    def _saying(self, label: Label, said: tuple[str, ...]) -> Label:
        """Return *label* with what is in the hand, now and before, instead of its clock."""
        under, *shorter = said
        wish = max(label.wish, wish_of(label.name, under))
        label = replace(label, under=under, shorter=tuple(shorter), is_cutoff=False)
        return replace(label, wish=wish, is_held=True)

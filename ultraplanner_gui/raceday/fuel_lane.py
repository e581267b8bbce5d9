"""Fuel: what is taken when, as tokens over the rolling grams per hour and its band."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt, Slot
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPen,
)
from PySide6.QtWidgets import QMenu, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.fuelling import FuelFigures
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.fuel import Food, FuelItem, Keep, Shape
from ultraplanner_gui.raceday.race_lane import RaceLane, bends
from ultraplanner_gui.raceday.snap import SLACK_PX, Snap, is_free
from ultraplanner_gui.raceday.tokens import TOKEN_PX, Tokens, paint_key
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.carry import Carry
from ultraplanner_gui.widgets.lane import (
    GUTTER_PX,
    HEAD_PX,
    UNIT_PT,
    Align,
    Scale,
    draw_curve,
    draw_text,
    nice_ticks,
)
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.wording.words import Words

STEP_S = 60.0
LONG_STEP_S = 600.0
SNAP_S = 60.0
WAYS: dict[int, int] = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
HIGHEST_G_PER_H = 260.0
ROW_PX = 10.0
#: Between the line at nothing and the tokens.
CLEAR_PX = 4.0
#: Row each shape stands in, from the bottom.
ROWS = {Shape.DRINK: 0, Shape.SOLID: 1, Shape.GEL: 1, Shape.SALT: 2}


class FuelLane(RaceLane):
    """Tokens can be dragged along the clock; the line above them follows on every move.

    Keys: arrows choose an item; Enter picks it up, then left and right move it a minute (with
    Shift ten); Enter puts it down, Esc puts it back, Delete removes it, Copy copies it.
    """

    lines_over = False
    may_wait = True

    def __init__(
        self,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
        snap: Snap | None = None,
    ) -> None:
        super().__init__("", "", 92.0, document, selection, axis, words, parent, snap)
        self.rename(self.tr("Fuel"))
        self.set_unit(self.tr("carbs g/h"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self._carry = Carry(document)
        self._tokens = Tokens()
        self._item = ""
        #: When the item in the hand was taken, and how far from that it was gripped.
        self._was_s = self._grab_s = 0.0
        #: Where the mouse was pressed, None once it has moved further than a click does.
        self._from_x: float | None = None
        self._by_mouse = False
        selection.changed.connect(self._on_selected)

    def paint_head(self, painter: QPainter) -> None:
        """Draw name and unit, and beside the tokens what each shape is."""
        super().paint_head(painter)
        if not self.shown.items:
            return
        bottom, row_px = self.body().bottom(), theme().px(ROW_PX)
        gel, food = (Shape.GEL, self.tr("gel")), (Shape.SOLID, self.tr("food"))
        rows = (((Shape.SALT, self.tr("salt")),), (gel, food), ((Shape.DRINK, self.tr("drink")),))
        keys = [(bottom - row_px * (ROWS[row[0][0]] + 0.55), row) for row in rows]
        paint_key(painter, theme().px(HEAD_PX - GUTTER_PX), keys)

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        fuel = self.shown.fuel
        if fuel is None:
            self.paint_empty(painter, body, self.tr("Fuel appears with a course."))
            return
        graph = self._graph(body)
        scale = self._scale(graph)
        self._paint_scale(painter, body, scale)
        painter.save()
        painter.setClipRect(body)
        if self.document.before.fuel is not fuel:
            self._paint_line(painter, graph, scale, self.document.before, is_before=True)
        self._paint_line(painter, graph, scale, self.shown, is_before=False)
        painter.restore()
        self._paint_tokens(painter, body)
        if not self.shown.items:
            self.paint_empty(
                painter,
                body,
                self.tr("Nothing placed. Fuel, Place fuel by the clock; or right-click here."),
            )

    def topic_at(self, at: QPoint | None) -> str:
        is_item = self.selection.kind == "item" if at is None else self._item_at(QPointF(at))
        return "fuel item" if is_item else "fuel"

    def readout(self, at: QPointF) -> str:
        item = self._item_at(at)
        return self._said(item) if item is not None else ""

    def _said(self, item: FuelItem) -> str:
        words = self.words()
        food = self.shown.project.fuel.food(item.food)
        kept = self.tr("{0} {1}, {2} of carbs, at {3} ({4}), keeps its place")
        timed = self.tr("{0} {1}, {2} of carbs, at {3} ({4})")
        return (timed if item.at_m is None else kept).format(
            words.servings(item.servings),
            food.name,
            words.grams(food.carb_g * item.servings),
            words.duration(item.at_s),
            words.clock(self.shown.project.race.clock(item.at_s)),
        )

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        if self._carry.is_on:
            self._carry.put_back()
        item = self._item_at(event.position())
        if item is None:
            self.selection.clear()
            return
        self._choose(item.key)
        self._was_s = item.at_s
        self._grab_s = self._time_at(event.position().x()) - item.at_s
        self._from_x = event.position().x()
        self._by_mouse = True
        self._carry.pick_up()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._carry.is_on and self._by_mouse:
            x = event.position().x()
            if self._from_x is not None and abs(x - self._from_x) < theme().px(SLACK_PX):
                return
            self._from_x = None
            at_s = self._time_at(x) - self._grab_s
            free = is_free(event)
            at_s = self.snap.moment(at_s, self.body().width(), free, self._was_s)
            if at_s == self._was_s and not free:
                self._carry.show_as_it_was()
            else:
                self._move_to(at_s)
            return
        over = self._item_at(event.position()) is not None
        self.setCursor(Qt.CursorShape.SizeHorCursor if over else Qt.CursorShape.ArrowCursor)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        if self._carry.is_on and self._by_mouse:
            self._by_mouse = False
            self._carry.put_down()
        self.snap.let_go()

    def add_deeds(self, menu: QMenu, at: QPointF | None) -> None:
        if self.shown.target is None:
            return
        item = self._item_at(at) if at is not None else self._chosen_item()
        if item is not None:
            self._choose(item.key)
            menu.addAction(self.tr("Copy to one interval later"), partial(self._copy, item))
        add = menu.addMenu(self.tr("Add here"))
        at_s = (item.at_s if item is not None else 0.0) + STEP_S
        if at is not None:
            at_s = round(self._time_at(at.x()) / SNAP_S) * SNAP_S
        for food in self.shown.project.fuel.foods:
            text = self.tr("{0}, {1}").format(food.name, self.words().grams(food.carb_g))
            add.addAction(text, partial(self._add, food.key, at_s))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, items = event.key(), self.shown.items
        index = next((k for k, i in enumerate(items) if i.key == self._item), 0)
        way = WAYS.get(key, 0)
        if not items:
            super().keyPressEvent(event)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self._pick_up_or_put_down(items[index])
        elif key == Qt.Key.Key_Escape and self._carry.is_on:
            self._by_mouse = False
            self._carry.put_back()
            self.snap.let_go()
            self.update()
        elif way and self._carry.is_on:
            is_long = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
            if not self._by_mouse:
                self._move_to(items[index].at_s + way * (LONG_STEP_S if is_long else STEP_S))
        elif way:
            self._choose(items[min(max(index + way, 0), len(items) - 1)].key)
        elif event.matches(QKeySequence.StandardKey.Copy) and not self._carry.is_on:
            self._copy(items[index])
        elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) and not self._carry.is_on:
            self._remove(items[index].key)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        items = self.shown.items
        if (
            event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
            and items
        ):
            keys = [i.key for i in items]
            self._choose(self._item if self._item in keys else keys[0])

    def focusOutEvent(self, event: QFocusEvent) -> None:
        if self._carry.is_on and not self._by_mouse:
            self._carry.put_back()
        super().focusOutEvent(event)

    def renew(self, before: Outlook, after: Outlook) -> None:
        if before.fuel is not after.fuel or before.target is not after.target:
            self.update()
            self._on_selected()

    @property
    def is_carrying(self) -> bool:
        return self._carry.is_on

    def place_of_choice(self) -> float | None:
        item, target = self._chosen_item(), self.shown.target
        return target.distance_at(item.at_s) if item is not None and target is not None else None

    @Slot()
    def _on_selected(self) -> None:
        if self.selection.kind == "item":
            self._item = self.selection.key
            item = self._chosen_item()
            self.setAccessibleDescription(self._said(item) if item is not None else "")

    def _choose(self, key: str) -> None:
        self._item = key
        place_m = self.place_of_choice()
        if place_m is not None:
            self.axis.reveal(place_m, place_m)
        self.selection.choose("item", key)
        self.update()

    def _chosen_item(self) -> FuelItem | None:
        return next((i for i in self.shown.items if i.key == self._item), None)

    def _pick_up_or_put_down(self, item: FuelItem) -> None:
        if self._carry.is_on:
            self._by_mouse = False
            self._carry.put_down()
        else:
            self._choose(item.key)
            self._carry.pick_up()
        self.update()

    def _remove(self, key: str) -> None:
        """Remove an item and choose the one after it, so that more can follow."""
        from ultraplanner_gui.edits.fuel import RemoveItem

        items = self.document.outlook.items
        index = next((k for k, i in enumerate(items) if i.key == key), 0)
        if not self.document.perform(RemoveItem(key)):
            return
        left = self.document.outlook.items
        if left:
            self._choose(left[min(index, len(left) - 1)].key)
        else:
            self.selection.clear()

    def _add(self, food: str, at_s: float) -> None:
        from ultraplanner_gui.edits.fuel import AddItem

        self.document.perform(AddItem(food, max(at_s, 0.0), at_m=self._kept_place(at_s)))

    def _copy(self, item: FuelItem) -> None:
        """Put the same again one interval later, and choose it."""
        from ultraplanner_gui.edits.fuel import CopyItem

        target, known = self.shown.target, {i.key for i in self.shown.items}
        at_s = item.at_s + self.shown.project.fuel.every_s
        at_s = min(at_s, target.finish_s) if target is not None else at_s
        copy = CopyItem(item.food, at_s, item.servings, at_m=self._kept_place(at_s))
        if self.document.perform(copy):
            new = next((i.key for i in self.document.outlook.items if i.key not in known), "")
            self._choose(new or item.key)

    def _kept_place(self, at_s: float) -> float | None:
        """Return where a new item is put for good, None where it keeps its time."""
        target = self.shown.target
        if self.shown.project.fuel.keep is not Keep.PLACE or target is None:
            return None
        return target.distance_at(max(at_s, 0.0))

    def _move_to(self, at_s: float) -> None:
        from ultraplanner_gui.edits.fuel import MoveItem

        target = self.shown.target
        at_s = min(max(at_s, 0.0), target.finish_s if target is not None else at_s)
        at_m = target.distance_at(at_s) if target is not None else None
        self._carry.show(MoveItem(self._item, at_s, self._carry.gesture, at_m))

    def _time_at(self, x: float) -> float:
        body = self.body()
        return self.axis.time_at(x - body.left(), body.width())

    def _graph(self, body: QRectF) -> QRectF:
        """Return where the line runs: clear of the shelf the tokens stand on."""
        shelf = theme().px(ROW_PX * (max(ROWS.values()) + 0.55) + TOKEN_PX / 2 + CLEAR_PX)
        return body.adjusted(0, 0, 0, -min(shelf, 0.7 * body.height()))

    def _spots(self, body: QRectF) -> tuple[FloatArray, FloatArray]:
        """Return x and y of every token, in the order of the items, for painting and hitting.

        What is eaten, drunk and taken as salt at one moment stands in rows of its own.
        """
        fuel = self.shown.project.fuel
        shape = {food.key: food.shape for food in fuel.foods}
        items = self.shown.items
        at_s = np.array([item.at_s for item in items], dtype=np.float64)
        rows = np.array([ROWS[shape[item.food]] for item in items], dtype=np.float64)
        xs = body.left() + self.axis.x_of_times(at_s, body.width())
        return xs, body.bottom() - theme().px(ROW_PX) * (rows + 0.55)

    def _item_at(self, at: QPointF) -> FuelItem | None:
        items = self.shown.items
        if not items:
            return None
        xs, ys = self._spots(self.body())
        off_x, off_y = np.abs(xs - at.x()), np.abs(ys - at.y())
        reach = theme().px(TOKEN_PX)
        # Its own row first: a near neighbour above must not be taken for it.
        far = np.where((off_x <= reach) & (off_y <= reach), off_x + 2.0 * off_y, np.inf)
        nearest = int(far.argmin())
        return items[nearest] if np.isfinite(far[nearest]) else None

    def _scale(self, graph: QRectF) -> Scale:
        # From the kept outlook, so that the scale stays still under a drag.
        before = self.document.before.fuel
        high = max(before.band_g_per_h[1] * 1.3, 30.0) if before is not None else 100.0
        if before is not None and len(before.rolling_g_per_h):
            high = max(high, float(before.rolling_g_per_h.max()) * 1.1)
        return Scale(0.0, min(high, HIGHEST_G_PER_H), graph.top() + 2, graph.bottom())

    def _paint_scale(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        """Draw the band of the target, named in the gutter, and what ticks there is room for."""
        look, fuel, words = theme(), self.shown.fuel, self.words()
        if fuel is None:
            return
        asked = self.shown.project.fuel.carb_g_per_h
        room = look.metrics(UNIT_PT).height()
        labels = [
            (t, words.number(t))
            for t in nice_ticks(0.0, scale.high, 3)
            if abs(scale.y(t) - scale.y(asked)) >= room
        ]
        self.paint_ticks(painter, body, scale, labels)
        low, high = (scale.y(g_per_h) for g_per_h in fuel.band_g_per_h)
        band = QRectF(body.left(), high, body.width(), low - high)
        painter.fillRect(band, look.colours["pale_plum"])
        right = body.left() - 5.0
        top = min(max(scale.y(asked) - room / 2, 0.0), self.height() - room)
        draw_text(
            painter,
            QRectF(right - look.px(GUTTER_PX), top, look.px(GUTTER_PX), room),
            words.number(asked),
            look.colours["plum"],
            look.font(UNIT_PT, bold=True),
            Align.AlignRight | Align.AlignVCenter,
        )

    def _paint_line(
        self, painter: QPainter, graph: QRectF, scale: Scale, outlook: Outlook, is_before: bool
    ) -> None:
        fuel, target = outlook.fuel, outlook.target
        if fuel is None or target is None or not len(fuel.rolling_s):
            return
        xs = graph.left() + self.axis.x_of_times(fuel.rolling_s, graph.width())
        rates = np.minimum(fuel.rolling_g_per_h, scale.high)
        ys = scale.bottom - rates / scale.high * (scale.bottom - scale.top)
        shown = (xs >= graph.left() - 50) & (xs <= graph.right() + 50)
        if is_before:
            shown &= self._has_changed(fuel)
        c = theme().colours
        painter.setPen(
            QPen(c["ink"], Stroke.HAIR, Qt.PenStyle.DotLine)
            if is_before
            else QPen(c["plum"], Stroke.LINE)
        )
        painter.setBrush(Qt.BrushStyle.NoBrush)
        # Smooth dots are dear.
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, not is_before)
        for first, last in _runs(shown):
            picked = bends(ys[first:last]) + first
            line = xs[picked].tolist(), ys[picked].tolist()
            if is_before:
                painter.drawPolyline(list(map(QPointF, *line)))
            else:
                draw_curve(painter, *line)

    def _has_changed(self, before: FuelFigures) -> npt.NDArray[np.bool_]:
        """Return where the line of the trial leaves that of *before*, a step further each way."""
        now = self.shown.fuel
        if now is None or not len(now.rolling_s):
            return np.ones(len(before.rolling_s), dtype=np.bool_)
        rates = np.interp(before.rolling_s, now.rolling_s, now.rolling_g_per_h)
        other = np.abs(rates - before.rolling_g_per_h) > 0.5
        return np.convolve(other, np.ones(3), mode="same") > 0

    def _paint_tokens(self, painter: QPainter, body: QRectF) -> None:
        fuel, items = self.shown.project.fuel, self.shown.items
        if not items:
            return
        chosen = self.selection.key if self.selection.kind == "item" else ""
        xs, ys = self._spots(body)
        self._tokens.prepare(self.devicePixelRatioF())
        last: tuple[float, float, Food] | None = None
        low, high = body.left() - 6, body.right() + 6
        pictures = {food.key: self._tokens.picture(food) for food in fuel.foods}
        off, draw = self._tokens.middle, painter.drawImage
        for item, x, y in zip(items, xs.tolist(), ys.tolist(), strict=True):
            if not low <= x <= high:
                continue
            if item.key == chosen:
                last = x, y, fuel.food(item.food)
            else:
                draw(QPointF(x - off, y - off), pictures[item.food])
        if last is not None:
            self._tokens.draw(painter, *last, is_chosen=True)


def _runs(marks: npt.NDArray[np.bool_]) -> list[tuple[int, int]]:
    """Return first and one past the last of each unbroken run of true *marks*."""
    edges = np.flatnonzero(np.diff(marks.astype(np.int8), prepend=0, append=0))
    return [(int(a), int(b)) for a, b in edges.reshape(-1, 2)]

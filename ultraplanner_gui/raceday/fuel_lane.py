"""Fuel: what is taken when, as tokens over the rolling grams per hour and its band."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QMenu, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.fuel import AddItem, MoveItem, RemoveItem
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.fuel import FuelItem
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.raceday.tokens import TOKEN_PX, draw_token
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.carry import Carry
from ultraplanner_gui.widgets.lane import Scale, nice_ticks
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

STEP_S = 60.0
LONG_STEP_S = 600.0
SNAP_S = 60.0


class FuelLane(RaceLane):
    """Tokens can be dragged along the clock; the line above them follows on every move."""

    chosen = Signal(str)

    def __init__(
        self,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", "", 92.0, document, selection, axis, words, parent)
        self._name = self.tr("Fuel")
        self.set_unit(self.tr("carbs g/h"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self._carry = Carry(document)
        self._item = ""
        self._grab_s = 0.0
        self._by_mouse = False

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        fuel = self.shown.fuel
        if fuel is None:
            self.paint_empty(painter, body, self.tr("Fuel appears with a course."))
            return
        graph = body.adjusted(0, 0, 0, -self._shelf())
        scale = self._scale(graph)
        self.paint_ticks(
            painter,
            body,
            scale,
            [(t, self.words().number(t)) for t in nice_ticks(0.0, scale.high, 3) if t > 0.0],
        )
        painter.save()
        painter.setClipRect(body)
        self._paint_band(painter, graph, scale, fuel.band_g_per_h)
        if self.document.before.fuel is not None and self.document.before.fuel is not fuel:
            self._paint_line(painter, graph, scale, self.document.before, is_before=True)
        self._paint_line(painter, graph, scale, self.shown, is_before=False)
        painter.restore()
        self._paint_tokens(painter, body)
        if not self.shown.project.fuel.items:
            self.paint_empty(
                painter,
                body,
                self.tr(
                    "Nothing placed. Race day menu, Place fuel by the clock; or right-click here to add."
                ),
            )

    def readout(self, at: QPointF) -> str:
        item, words = self._item_at(at), self.words()
        if item is None or self.shown.target is None:
            return ""
        food = self.shown.project.fuel.food(item.food)
        return self.tr("{0} {1}, {2} of carbs, at {3} ({4})").format(
            words.servings(item.servings),
            food.name,
            words.grams(food.carb_g * item.servings),
            words.duration(item.at_s),
            words.clock(self.shown.project.race.clock(item.at_s)),
        )

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        item = self._item_at(event.position())
        if item is None:
            self.selection.clear()
            return
        self._choose(item.key)
        self._grab_s = self._time_at(event.position().x()) - item.at_s
        self._by_mouse = True
        self._carry.pick_up()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._carry.is_on and self._by_mouse:
            at_s = self._time_at(event.position().x()) - self._grab_s
            self._move_to(round(at_s / SNAP_S) * SNAP_S)
            return
        over = self._item_at(event.position()) is not None
        self.setCursor(Qt.CursorShape.SizeHorCursor if over else Qt.CursorShape.ArrowCursor)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._carry.is_on and self._by_mouse:
            self._by_mouse = False
            self._carry.put_down()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if self.shown.target is None:
            return
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        at = QPointF(event.pos())
        item = (
            self._item_at(at)
            if event.reason() is QContextMenuEvent.Reason.Mouse
            else self._chosen_item()
        )
        if item is not None:
            self._choose(item.key)
            menu.addAction(self.tr("Remove it"), partial(self._remove, item.key))
        add = menu.addMenu(self.tr("Add here"))
        by_mouse = event.reason() is QContextMenuEvent.Reason.Mouse
        at_s = (
            round(self._time_at(at.x()) / SNAP_S) * SNAP_S
            if by_mouse
            else (item.at_s if item else 0.0) + STEP_S
        )
        for food in self.shown.project.fuel.foods:
            text = self.tr("{0}, {1}").format(food.name, self.words().grams(food.carb_g))
            add.addAction(text, partial(self._add, food.key, at_s))
        menu.popup(event.globalPos())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, items = event.key(), self.shown.project.fuel.items
        if not items:
            super().keyPressEvent(event)
            return
        index = next((k for k, i in enumerate(items) if i.key == self._item), 0)
        item = items[index]
        way = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(key), 0)
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            if self._carry.is_on:
                self._carry.put_down()
            else:
                self._choose(item.key)
                self._carry.pick_up()
            self.update()
        elif key == Qt.Key.Key_Escape and self._carry.is_on:
            self._by_mouse = False
            self._carry.put_back()
            self.update()
        elif self._carry.is_on and way:
            is_long = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
            self._move_to(item.at_s + way * (LONG_STEP_S if is_long else STEP_S))
        elif way:
            self._choose(items[min(max(index + way, 0), len(items) - 1)].key)
        elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self._remove(item.key)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        items = self.shown.project.fuel.items
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

    def _choose(self, key: str) -> None:
        self._item = key
        self.selection.choose("item", key)
        self.update()

    def _chosen_item(self) -> FuelItem | None:
        return next((i for i in self.shown.project.fuel.items if i.key == self._item), None)

    def _remove(self, key: str) -> None:
        self.document.perform(RemoveItem(key))
        self.selection.clear()

    def _add(self, food: str, at_s: float) -> None:
        self.document.perform(AddItem(food, max(at_s, 0.0)))

    def _move_to(self, at_s: float) -> None:
        finish_s = self.shown.target.finish_s if self.shown.target is not None else at_s
        self._carry.show(MoveItem(self._item, min(max(at_s, 0.0), finish_s), self._carry.gesture))

    def _time_at(self, x: float) -> float:
        body = self.body()
        return self.axis.time_at(x - body.left(), body.width())

    def _shelf(self) -> float:
        return theme().px(26.0)

    def _spot(self, item: FuelItem, index: int, body: QRectF) -> QPointF:
        # Two heights in turn, so that near neighbours do not cover each other.
        lift = theme().px(18.0 if index % 2 else 8.5)
        return QPointF(self.x_of_time(item.at_s, body), body.bottom() - lift)

    def _item_at(self, at: QPointF) -> FuelItem | None:
        body, reach = self.body(), theme().px(TOKEN_PX)
        best: tuple[float, FuelItem] | None = None
        for index, item in enumerate(self.shown.project.fuel.items):
            gap = self._spot(item, index, body) - at
            far = max(abs(gap.x()), abs(gap.y()))
            if far <= reach and (best is None or far < best[0]):
                best = (far, item)
        return best[1] if best is not None else None

    def _scale(self, graph: QRectF) -> Scale:
        before = self.document.before.fuel
        high = max(before.band_g_per_h[1] * 1.3, 30.0) if before is not None else 100.0
        if before is not None and len(before.rolling_g_per_h):
            high = max(high, float(before.rolling_g_per_h.max()) * 1.1)
        return Scale(0.0, min(high, 260.0), graph.top() + 2, graph.bottom())

    def _paint_band(
        self, painter: QPainter, graph: QRectF, scale: Scale, band: tuple[float, float]
    ) -> None:
        low, high = scale.y(band[0]), scale.y(band[1])
        painter.fillRect(
            QRectF(graph.left(), high, graph.width(), low - high), theme().colours["pale_plum"]
        )

    def _paint_line(
        self, painter: QPainter, graph: QRectF, scale: Scale, outlook: Outlook, is_before: bool
    ) -> None:
        fuel, target = outlook.fuel, outlook.target
        if fuel is None or target is None or not len(fuel.rolling_s):
            return
        values = fuel.rolling_s
        if self.axis.measure == "distance":
            values = np.interp(fuel.rolling_s, target.elapsed_s, target.distance_m)
        xs = (
            graph.left()
            + (values - self.axis.low) / (self.axis.high - self.axis.low) * graph.width()
        )
        seen = (xs >= graph.left() - 50) & (xs <= graph.right() + 50)
        points = [
            QPointF(float(x), scale.y(float(y)))
            for x, y in zip(xs[seen], fuel.rolling_g_per_h[seen], strict=True)
        ]
        c = theme().colours
        painter.setPen(
            QPen(c["ink"], 1.0, Qt.PenStyle.DotLine) if is_before else QPen(c["plum"], 1.6)
        )
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF(points))

    def _paint_tokens(self, painter: QPainter, body: QRectF) -> None:
        fuel = self.shown.project.fuel
        foods = {food.key: food for food in fuel.foods}
        chosen = self.selection.key if self.selection.kind == "item" else ""
        for index, item in enumerate(fuel.items):
            at = self._spot(item, index, body)
            if body.left() - 6 <= at.x() <= body.right() + 6:
                draw_token(painter, at, foods[item.food], item.key == chosen)

"""Section targets as steps: the edge moves a section's end, the top makes it faster or slower."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial
from typing import NamedTuple

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QMenu, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.course import MoveSectionEnd, SetSectionTarget
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.raceday.snap import SLACK_PX, Snap, is_free
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.carry import Carry
from ultraplanner_gui.widgets.lane import (
    LABEL_PT,
    UNIT_PT,
    Align,
    Scale,
    draw_levels,
    draw_rects,
    draw_text,
)
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.wording.words import Words

GRIP_PX = 6.0
WALKED_PX = 1.5
FIGURE_PT = LABEL_PT + 1
#: No more of a low lane than this is kept for the pace of the slowest section.
MOST_SHARE = 0.6
KEY_STEP_S = 60.0
KEY_STEP_M = 100.0
SLOWEST_TARGET_MPS = 0.2
#: Steps to the right and up.
ARROWS: dict[int, tuple[int, int]] = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, 1),
    Qt.Key.Key_Down: (0, -1),
}


class _Step(NamedTuple):
    """A section and where its step is drawn."""

    section: SectionFigures
    left: float
    right: float
    top: float
    foot: float

    @property
    def rect(self) -> QRectF:
        return QRectF(self.left, self.top, self.right - self.left, self.foot - self.top)


class TargetLane(RaceLane):
    """The pace asked of each section; taller is faster. The forecast is a dotted line across.

    Keys: arrows choose a section; Enter picks it up, then up and down change its time, left and
    right its end; Enter puts it down, Esc puts it back, Delete frees its target.
    """

    topic = "target"

    def __init__(
        self,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
        snap: Snap | None = None,
    ) -> None:
        super().__init__("", "", 58.0, document, selection, axis, words, parent, snap)
        self.rename(self.tr("Target"))
        self.set_unit(self.tr("{0}\nfaster up\ndots: walking").format(words().pace_unit))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self._carry = Carry(document)
        self._grip = ""  # "edge" or "top" while the mouse carries
        self._section = ""
        #: Where the mouse was pressed, None once it has moved further than a click does.
        self._from_x: float | None = None
        selection.changed.connect(self._on_selected)

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        sections = self.shown.sections
        if not sections:
            self.paint_empty(painter, body, self.tr("Targets appear with a course."))
            return
        scale = self._scale(body)
        steps = self._steps(body, scale)
        painter.save()
        painter.setClipRect(body)
        self._paint_steps(painter, body, scale, steps)
        self._paint_forecast(painter, body, scale, steps)
        self._paint_walked(painter, body)
        painter.restore()

    def readout(self, at: QPointF) -> str:
        section = self._section_at(at.x())
        if section is None:
            return ""
        said = self.tr("{0}. Drag the top to change it, the right edge to move the end.").format(
            self._said(section)
        )
        at_m, words = self.place_at(at.x()), self.words()
        part = next((p for p in self.shown.walked if p.start_m <= at_m < p.end_m), None)
        if part is None or not part.is_walked:
            return said
        walk = self.tr("At walking pace here: {0} at {1} {2}, {3} up.").format(
            words.distance(part.length_m, 1),
            words.pace(1.0 / part.speed_mps),
            words.pace_unit,
            words.height(part.climb_m),
        )
        return f"{said}\n{walk}"

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        if self._carry.is_on:
            self._carry.put_back()
        section, grip = self._hit(event.position())
        if section is None:
            self.selection.clear()
            return
        self._section, self._grip = section.key, grip
        self._from_x = event.position().x()
        self.selection.choose("section", section.key)
        if grip:
            self._carry.pick_up()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._carry.is_on and self._grip:
            self._drag(event.position(), is_free(event))
            return
        _, grip = self._hit(event.position())
        shapes = {"edge": Qt.CursorShape.SizeHorCursor, "top": Qt.CursorShape.SizeVerCursor}
        self.setCursor(shapes.get(grip, Qt.CursorShape.ArrowCursor))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        if self._carry.is_on and self._grip:
            self._grip = ""
            self._carry.put_down()
        self.snap.let_go()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        section = self._section_at(event.position().x())
        if section is not None:
            self._free(section)

    def add_deeds(self, menu: QMenu, at: QPointF | None) -> None:
        section = self._section_at(at.x()) if at is not None else self._chosen()
        if section is not None:
            self._choose(section)
            text = self.tr("Move with the arrow keys")
            menu.addAction(text, partial(self._pick_up_for_keys, section))
            free = menu.addAction(
                self.tr("Let the section follow the curve"), partial(self._free, section)
            )
            free.setEnabled(section.is_fixed)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, sections = event.key(), self.shown.sections
        index = next((k for k, s in enumerate(sections) if s.key == self._section), 0)
        if not sections:
            super().keyPressEvent(event)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self._pick_up_or_put_down(sections[index])
        elif key == Qt.Key.Key_Escape and self._carry.is_on:
            self._grip = ""
            self._carry.put_back()
            self.snap.let_go()
            self.update()
        elif key in ARROWS and self._carry.is_on:
            if not self._grip:
                self._carry_by(sections[index], *ARROWS[key])
        elif key in ARROWS and ARROWS[key][0]:
            self._choose(sections[min(max(index + ARROWS[key][0], 0), len(sections) - 1)])
        elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) and not self._carry.is_on:
            self._free(sections[index])
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if (
            event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
            and self.shown.sections
        ):
            keys = [s.key for s in self.shown.sections]
            self._choose(
                self.shown.sections[keys.index(self._section) if self._section in keys else 0]
            )

    def focusOutEvent(self, event: QFocusEvent) -> None:
        if self._carry.is_on and not self._grip:
            self._carry.put_back()
        super().focusOutEvent(event)

    @Slot()
    def _on_selected(self) -> None:
        chosen = next((s for s in self.shown.sections if s.key == self.selection.key), None)
        if self.selection.kind == "section" and chosen is not None:
            self._section = chosen.key
            self.setAccessibleDescription(self._said(chosen))

    def _said(self, section: SectionFigures) -> str:
        words, is_last = self.words(), section.key == self.shown.sections[-1].key
        end = self.tr("the finish") if is_last else words.distance(section.end_m)
        return self.tr("To {0}: {1} {2}, {3} running").format(
            section.name or end,
            words.pace(section.pace_s_per_m),
            words.pace_unit,
            words.duration(section.moving_s),
        )

    @property
    def is_carrying(self) -> bool:
        return self._carry.is_on

    def _chosen(self) -> SectionFigures | None:
        return next((s for s in self.shown.sections if s.key == self._section), None)

    def place_of_choice(self) -> float | None:
        chosen = self._chosen()
        return (chosen.start_m + chosen.end_m) / 2 if chosen is not None else None

    def _choose(self, section: SectionFigures) -> None:
        self._section = section.key
        self.axis.reveal(section.start_m, section.end_m)
        self.selection.choose("section", section.key)
        self.update()

    def _free(self, section: SectionFigures) -> None:
        if section.is_fixed:
            self.document.perform(SetSectionTarget(section.key, None))

    def _pick_up_or_put_down(self, section: SectionFigures) -> None:
        if self._carry.is_on:
            self._grip = ""
            self._carry.put_down()
        else:
            self._choose(section)
            self._carry.pick_up()
        self.update()

    def _pick_up_for_keys(self, section: SectionFigures) -> None:
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        if not self._carry.is_on:
            self._pick_up_or_put_down(section)

    def _carry_by(self, section: SectionFigures, right: int, up: int) -> None:
        if up:
            self._carry.turn_to(SetSectionTarget)
            target_s = round(section.moving_s / KEY_STEP_S - up) * KEY_STEP_S
            edit: Edit = SetSectionTarget(section.key, target_s, self._carry.gesture)
        else:
            self._carry.turn_to(MoveSectionEnd)
            end_m = round(section.end_m / KEY_STEP_M + right) * KEY_STEP_M
            edit = MoveSectionEnd(section.key, end_m, self._carry.gesture)
        self._carry.show(edit)

    def _drag(self, at: QPointF, free: bool) -> None:
        section = next((s for s in self.shown.sections if s.key == self._section), None)
        if section is None:
            return
        if self._grip == "edge":
            if self._from_x is not None and abs(at.x() - self._from_x) < theme().px(SLACK_PX):
                return
            self._from_x = None
            end_m = self._end_at(at.x(), section, free)
            self._carry.show(MoveSectionEnd(section.key, end_m, self._carry.gesture))
            return
        speed_mps = max(self._scale(self.body()).value(at.y()), SLOWEST_TARGET_MPS)
        target_s = round(section.length_m / speed_mps / 10.0) * 10.0
        self._carry.show(SetSectionTarget(section.key, target_s, self._carry.gesture))

    def _end_at(self, x: float, section: SectionFigures, free: bool) -> float:
        """Return where the end of *section* is put when it is dragged to *x*."""
        was = next((s for s in self.document.before.sections if s.key == section.key), section)
        ends = {s.station for s in self.shown.sections if s.station is not None}
        at_m = self.place_without_stop(x, was.end_m) if was.station else self.place_at(x)
        return self.snap.place(at_m, self.body().width(), free, was.end_m, ends)

    def _hit(self, at: QPointF) -> tuple[SectionFigures | None, str]:
        body, scale = self.body(), self._scale(self.body())
        ends = [(abs(at.x() - self.x_of(s.end_m, body)), s) for s in self.shown.sections[:-1]]
        gap, nearest = min(ends, key=lambda end: end[0], default=(math.inf, None))
        if gap <= GRIP_PX:
            return nearest, "edge"
        section = self._section_at(at.x())
        if section is None:
            return None, ""
        near_top = abs(at.y() - scale.y(1.0 / section.pace_s_per_m)) <= GRIP_PX + 2
        return section, "top" if near_top else ""

    def _section_at(self, x: float) -> SectionFigures | None:
        body = self.body()
        if not body.left() <= x <= body.right():
            return None
        at_m = self.place_at(x)
        return next((s for s in self.shown.sections if at_m <= s.end_m), None)

    def _scale(self, body: QRectF) -> Scale:
        # From the kept outlook, so that the scale stays still under a drag.
        speeds = [
            1.0 / s.pace_s_per_m for s in self.document.before.sections if s.moving_s > 0
        ] or [1.0]
        low, high = min(speeds), max(speeds)
        room = max(0.25 * (high - low), 0.1 * high)
        # The slowest step has room for its pace, clear of the steps of the plan as kept.
        pace_px = theme().metrics(FIGURE_PT, bold=True).height() + 3.0 * WALKED_PX
        share = min(pace_px / max(body.height() - 2.0, 1.0), MOST_SHARE)
        foot = min(low - 3.0 * room, (low - share * (high + room)) / (1.0 - share))
        return Scale(max(foot, 0.0), high + room, body.top() + 2, body.bottom())

    def _steps(self, body: QRectF, scale: Scale) -> list[_Step]:
        """Return the sections in sight and where each is drawn."""
        steps, low, high, foot = [], body.left(), body.right(), body.bottom()
        for section in self.shown.sections:
            left, right = self.x_of(section.start_m, body), self.x_of(section.end_m, body)
            if right >= low and left <= high:
                top = max(scale.y(1.0 / section.pace_s_per_m), body.top())
                steps.append(_Step(section, left, right, top, foot))
        return steps

    def _paint_steps(
        self, painter: QPainter, body: QRectF, scale: Scale, steps: list[_Step]
    ) -> None:
        """Draw all steps, like with like: every change of pen and brush takes as long as a line."""
        c = theme().colours
        chosen = self.selection.key if self.selection.kind == "section" else None
        usual = [step.rect for step in steps if step.section.key != chosen]
        draw_rects(painter, usual, c["pale_teal"])
        draw_rects(painter, [s.rect for s in steps if s.section.key == chosen], c["teal"])
        for is_fixed, hue, thick in ((False, "teal", 1.5), (True, "clay", 3.0)):
            levels = [(s.left, s.right, s.top) for s in steps if s.section.is_fixed is is_fixed]
            if levels:
                draw_levels(painter, levels, c[hue], thick)
        edges = [QRectF(round(s.right) - 0.5, s.top, 1.0, s.foot - s.top) for s in steps]
        draw_rects(painter, edges, c["panel"])
        if self.document.before.sections is not self.shown.sections:
            self._paint_before(painter, body, scale, [step.section for step in steps])
        for step in steps:
            if step.section.is_fixed:
                self._paint_pin(painter, QPointF(step.left + 8, step.top + 8))
        self._paint_labels(painter, body, steps, chosen)

    def _paint_before(
        self, painter: QPainter, body: QRectF, scale: Scale, sections: list[SectionFigures]
    ) -> None:
        """Draw the steps of the plan as kept, of *sections* that are drawn elsewhere now."""
        before = {s.key: s for s in self.document.before.sections}
        levels, edges, foot = [], [], body.bottom()
        for section in sections:
            was = before.get(section.key)
            if was is None:
                continue
            top, now = scale.y(1.0 / was.pace_s_per_m), scale.y(1.0 / section.pace_s_per_m)
            is_same = was.start_m == section.start_m and was.end_m == section.end_m
            if is_same and round(top) == round(now):
                continue
            left, right = (round(self.x_of(at_m, body)) for at_m in (was.start_m, was.end_m))
            levels.append((left, right, top))
            edges += [QLineF(x + 0.5, top, x + 0.5, foot) for x in (left, right)]
        if not levels:
            return
        ink = theme().colours["ink"]
        draw_levels(painter, levels, ink, 1.0, Qt.PenStyle.DashLine)
        painter.setPen(QPen(ink, Stroke.HAIR, Qt.PenStyle.DashLine))
        painter.drawLines(edges)

    def _paint_forecast(
        self, painter: QPainter, body: QRectF, scale: Scale, steps: list[_Step]
    ) -> None:
        """Draw the pace the forecast has in each section, named where there is room above it."""
        look, text = theme(), self.tr("forecast")
        high, room = look.metrics(UNIT_PT).height(), look.width(text, UNIT_PT) + 10
        levels: list[tuple[float, float, float]] = []
        place: QRectF | None = None
        for section, left, right, top, _ in steps:
            y = scale.y(section.length_m / max(section.forecast_moving_s, 1.0))
            left, right = max(left, body.left()), min(right, body.right())
            if right <= left:
                continue
            levels.append((left, right, y))
            is_clear = top >= y and y - high >= body.top() - 1
            if place is None and is_clear and room < right - left:
                place = QRectF(left + 5, y - high, right - left, high)
        draw_levels(painter, levels, look.colours["soft"], 1.0, Qt.PenStyle.DotLine)
        if place is not None:
            draw_text(painter, place, text, look.colours["soft"], look.font(UNIT_PT))

    def _paint_walked(self, painter: QPainter, body: QRectF) -> None:
        """Dot the foot of the lane where the target is walked."""
        y = body.bottom() - WALKED_PX
        walked = [part for part in self.shown.walked if part.is_walked]
        ends_m = np.array([(part.start_m, part.end_m) for part in walked]).reshape(-1, 2)
        xs = self.axis.x_of_distances(ends_m, body.width()) + body.left()
        seen = xs[(xs[:, 1] > body.left()) & (xs[:, 0] < body.right())]
        lines = [QLineF(left, y, right, y) for left, right in seen.tolist()]
        pen = QPen(theme().colours["ink"], Stroke.HEAVY, Qt.PenStyle.DotLine)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(pen)
        painter.drawLines(lines)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)

    def _paint_pin(self, painter: QPainter, at: QPointF) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme().colours["clay"])
        painter.drawPolygon(
            QPolygonF([at + QPointF(-3, -3), at + QPointF(3, -3), at + QPointF(0, 4)])
        )

    def _paint_labels(
        self, painter: QPainter, body: QRectF, steps: list[_Step], chosen: str | None
    ) -> None:
        """Write the pace of each step into it, or above its edge where it is too low for that."""
        look, words = theme(), self.words()
        sizes = [
            (size, look.metrics(size, bold=True).height(), look.font(size, bold=True))
            for size in (FIGURE_PT, UNIT_PT)
        ]
        pad, lift, ink = look.px(3), look.px(1), look.colours["ink"]
        for section, left, right, top, foot in steps:
            left, right = max(left, body.left()), min(right, body.right())
            text = words.pace(section.pace_s_per_m)
            for size, height, font in sizes:
                is_inside = foot - top >= height
                has_room = is_inside or top - body.top() >= height
                if not has_room or look.width(text, size, bold=True) + 4 > right - left:
                    continue
                base = foot - min(pad, foot - top - height) if is_inside else top - lift
                place = QRectF(left, base - height, right - left, height)
                is_chosen = is_inside and section.key == chosen
                colour = look.colours["on_colour"] if is_chosen else ink
                draw_text(painter, place, text, colour, font, Align.AlignCenter)
                break

    def renew(self, before: Outlook, after: Outlook) -> None:
        super().renew(before, after)
        if before.sections is not after.sections:
            self._on_selected()

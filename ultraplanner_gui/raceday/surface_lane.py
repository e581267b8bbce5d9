"""What is underfoot: a band in which a surface is painted by dragging along it."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QActionGroup, QFocusEvent, QKeyEvent, QMouseEvent, QPainter
from PySide6.QtWidgets import QMenu

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import Surface
from ultraplanner_gui.raceday.at_cursor import surface_at
from ultraplanner_gui.raceday.clear_places import first_clear
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.raceday.surface_looks import paint_surface, surface_icon, surface_name
from ultraplanner_gui.widgets.carry import Carry
from ultraplanner_gui.widgets.lane import LABEL_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt

SHORTEST_M = 10.0


class SurfaceLane(RaceLane):
    """Tone and pattern by surface, nothing where it is unknown.

    A drag paints with the surface chosen in the menu, on trial until it is let go; Esc takes it
    back. The table of surfaces does the same by keys.
    """

    topic = "surface"
    _brush = Surface.GRAVEL
    _from_m: float | None = None
    _hand: Carry | None = None

    @property
    def brush(self) -> Surface:
        """The surface a drag paints."""
        return self._brush

    def take_brush(self, surface: Surface) -> None:
        """Paint with *surface* from now on."""
        self._brush = surface
        self.update()

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        course = self.shown.project.course
        if course is None or self.shown.profile is None:
            return
        if not course.surfaces:
            self._paint_unknown(painter, body)
            return
        painter.save()
        painter.setClipRect(body)
        for span in course.surfaces:
            left = max(self.x_of(span.start_m, body), body.left())
            right = min(self.x_of(span.end_m, body), body.right())
            if right > left:
                place = QRectF(left, body.top(), right - left, body.height())
                paint_surface(painter, place, span.surface)
                self._paint_name(painter, place, surface_name(span.surface))
        painter.restore()

    def _paint_unknown(self, painter: QPainter, body: QRectF) -> None:
        """Say that nothing is known, and how to paint where there is room for it."""
        texts = (
            self.tr("Unknown. Drag here to paint {0}; the menu has other surfaces.").format(
                surface_name(self._brush)
            ),
            self.tr("Unknown. Drag here to paint."),
            self.tr("Unknown"),
        )
        advance = theme().metrics(Pt.NOTE).horizontalAdvance
        fitting = (text for text in texts if advance(text) + 20 <= body.width())
        self.paint_empty(painter, body, next(fitting, ""))

    def _paint_name(self, painter: QPainter, place: QRectF, name: str) -> None:
        look = theme()
        metrics = look.metrics(LABEL_PT)
        width = metrics.horizontalAdvance(name)
        if width + 14 > place.width() or metrics.height() > place.height() + 2:
            return
        lines = self.station_xs(self.body())
        left = first_clear(place.left() - 1.0, place.right(), width + 6, lines)
        label = QRectF(left, place.top() + 1, width + 6, place.height() - 2)
        painter.fillRect(label, look.colours["panel"])
        draw_text(painter, label, name, look.colours["ink"], look.font(LABEL_PT), Align.AlignCenter)

    def readout(self, at: QPointF) -> str:
        if self.shown.project.course is None:
            return ""
        here = surface_name(surface_at(self.shown, self.place_at(at.x())))
        return self.tr("{0}. Drag to paint {1}; the menu has other surfaces.").format(
            here.capitalize(), surface_name(self._brush)
        )

    def renew(self, before: Outlook, after: Outlook) -> None:
        was, now = before.project.course, after.project.course
        is_other = was is None or now is None or was.surfaces is not now.surfaces
        if self.has_ground_changed(before, after) or (was is not now and is_other):
            self.update()

    def add_deeds(self, menu: QMenu, at: QPointF | None) -> None:
        brushes = menu.addMenu(self.tr("Paint with"))
        group = QActionGroup(brushes)
        for surface in Surface:
            action = brushes.addAction(surface_icon(surface), surface_name(surface))
            action.setCheckable(True)
            action.setChecked(surface is self._brush)
            action.triggered.connect(partial(self.take_brush, surface))
            group.addAction(action)
        place_m = self.place_at(at.x()) if at is not None else None
        section = self._section(place_m)
        if section is not None:
            whole = menu.addMenu(self.tr("This section is all"))
            for surface in Surface:
                paint = partial(self._paint_stretch, *section, surface)
                whole.addAction(surface_icon(surface), surface_name(surface), paint)

    def _section(self, place_m: float | None) -> tuple[float, float] | None:
        """Return the section at a place, without one the section selected."""
        for section in self.document.outlook.sections:
            is_here = place_m is not None and section.start_m <= place_m <= section.end_m
            if is_here or (place_m is None and section.key == self.selection.key):
                return section.start_m, section.end_m
        return None

    def _paint_stretch(self, start_m: float, end_m: float, surface: Surface) -> None:
        from ultraplanner_gui.edits.surfaces import PaintSurface

        self.document.perform(PaintSurface(start_m, end_m, surface))

    # Painting by hand

    @property
    def is_carrying(self) -> bool:
        return self._hand is not None and self._hand.is_on

    def mousePressEvent(self, event: QMouseEvent) -> None:
        is_body = self.body().contains(event.position())
        if event.button() is not Qt.MouseButton.LeftButton or not is_body:
            return
        if self.document.outlook.project.course is None:
            return
        self._hand = self._hand or Carry(self.document)
        self._hand.pick_up()
        self._from_m = self.place_at(event.position().x())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._hand is None or not self._hand.is_on or self._from_m is None:
            return
        low, high = sorted((self._from_m, self.place_at(event.position().x())))
        if high - low >= SHORTEST_M:
            from ultraplanner_gui.edits.surfaces import PaintSurface

            self._hand.show(PaintSurface(low, high, self._brush, self._hand.gesture))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._hand is not None and self._from_m is not None:
            self._from_m = None
            self._hand.put_down()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.is_carrying:
            self._put_back()
        else:
            super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        if self.is_carrying and self._from_m is None:
            self._put_back()
        super().focusOutEvent(event)

    def _put_back(self) -> None:
        self._from_m = None
        if self._hand is not None:
            self._hand.put_back()

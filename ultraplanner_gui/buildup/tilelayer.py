"""The grid without what moves over it, as one picture in which only changed days are redrawn."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from math import ceil, floor
from typing import NamedTuple

from PySide6.QtCore import QRect, QRectF, QSize
from PySide6.QtGui import QPainter, QPixmap, QRegion

from ultraplanner_gui.buildup import gridpaint, strips
from ultraplanner_gui.buildup.cells import GAP_PX, Cells, Tile
from ultraplanner_gui.buildup.crowd import paint_crowd
from ultraplanner_gui.buildup.tile import Stage, paint_tile
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

NOTHING_CARRIED: tuple[frozenset[str], Stage] = (frozenset(), Stage())


class Scene(NamedTuple):
    """What there is to draw. From afar `longest_m` is the longest run, near by it is None.

    `carried` are the keys of the sessions in the hand and how they are drawn.
    """

    size: QSize
    ratio: float
    cells: Cells
    axis: WeekAxis
    words: Words
    today: date
    race_day: date
    first_weekday: int
    longest_m: float | None = None
    carried: tuple[frozenset[str], Stage] = NOTHING_CARRIED

    @property
    def frame(self) -> tuple[object, ...]:
        """Equal for two scenes that differ in single days at most."""
        return (self.cells.frame, self.size, self.ratio, *self[4:9])


class TileLayer:
    """A picture of the size of the grid: ground, names of the days, tiles."""

    def __init__(self) -> None:
        self.picture = QPixmap()
        self._frame: tuple[object, ...] | None = None
        self._drawn: dict[date, list[Tile]] = {}
        self._carried = NOTHING_CARRIED

    def clear(self) -> None:
        """Draw everything anew next time."""
        self._frame = None

    def renew(self, scene: Scene) -> QRegion:
        """Draw what changed since the last time and return where that is."""
        if scene.frame != self._frame:
            self._draw_all(scene)
            changed = QRegion(QRect(0, 0, scene.size.width(), scene.size.height()))
        else:
            changed = self._draw_days(scene, self._changed_days(scene))
        self._frame, self._drawn, self._carried = scene.frame, scene.cells.by_day, scene.carried
        return changed

    def _changed_days(self, scene: Scene) -> list[date]:
        # A day that stayed as it was keeps its very list of tiles.
        now, before = scene.cells.by_day, self._drawn
        days = {day for day in now.keys() | before.keys() if now.get(day) is not before.get(day)}
        if scene.carried != self._carried:
            keys = scene.carried[0] | self._carried[0]
            for day, there in now.items():
                if any(tile.session.key in keys for tile in there):
                    days.add(day)
        return sorted(days)

    def _draw_all(self, scene: Scene) -> None:
        self.picture = QPixmap(scene.size * scene.ratio)
        self.picture.setDevicePixelRatio(scene.ratio)
        self.picture.fill(theme().colours["paper"])
        cells = scene.cells
        painter = _painter(self.picture)
        self._draw_ground(painter, scene, cells.columns)
        gridpaint.paint_day_names(painter, cells, scene.first_weekday, scene.today, scene.words)
        for day, there in cells.by_day.items():
            _draw_tiles(painter, scene, day, there)
        gridpaint.paint_tear(painter, cells.body, scene.axis)
        painter.end()

    def _draw_days(self, scene: Scene, days: list[date]) -> QRegion:
        region = QRegion()
        if not days:
            return region
        painter = _painter(self.picture)
        for day in days:
            outer, place = scene.cells.outer_cell(day), scene.cells.place(day)
            if outer is None or place is None:
                continue
            painter.setClipRect(_whole_pixels(outer, scene.ratio))
            self._draw_ground(painter, scene, _beside(place[0], scene))
            _draw_tiles(painter, scene, day, scene.cells.tiles_on(day))
            region += outer.toRect()
        painter.end()
        return region

    @staticmethod
    def _draw_ground(painter: QPainter, scene: Scene, columns: Iterable[int]) -> None:
        columns = tuple(columns)
        gridpaint.paint_ground(painter, scene.cells, scene.axis, scene.race_day, columns)
        if scene.longest_m is not None:
            for index in columns:
                role = scene.axis.weeks[index].role
                strips.paint_strip(painter, scene.cells.week(index), role)


def _whole_pixels(rect: QRectF, ratio: float) -> QRectF:
    """Return *rect* grown to whole pixels of a screen with *ratio* of them to ours."""
    if ratio == int(ratio):
        return rect
    left, top = floor(rect.left() * ratio) / ratio, floor(rect.top() * ratio) / ratio
    right, bottom = ceil(rect.right() * ratio) / ratio, ceil(rect.bottom() * ratio) / ratio
    return QRectF(left, top, right - left, bottom - top)


def _beside(column: int, scene: Scene) -> tuple[int, ...]:
    """Return *column*, with its neighbours where cells do not end on whole pixels."""
    if scene.ratio == int(scene.ratio):
        return (column,)
    return tuple(c for c in (column - 1, column, column + 1) if c in scene.cells.columns)


def _painter(picture: QPixmap) -> QPainter:
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    return painter


def _draw_tiles(painter: QPainter, scene: Scene, day: date, there: list[Tile]) -> None:
    carried, in_hand = scene.carried
    usual = Stage(is_past=day < scene.today)
    staged = [(tile, in_hand if tile.session.key in carried else usual) for tile in there]
    if there and scene.cells.is_crowded(day):
        _draw_crowd(painter, scene, day, staged)
        return
    for tile, stage in staged:
        if scene.longest_m is None:
            # Written as in the narrowest column, so that all weeks are written alike.
            spare_px = round(tile.rect.width()) - floor(scene.cells.cell_size.width())
            _paint_aligned(painter, tile.rect, tile.session, stage, scene.words, spare_px)
        else:
            column, _ = scene.cells.place(day) or (0, 0)
            # As wide as the narrowest column, so that all weeks are written alike.
            week = scene.cells.week(column)
            week.setWidth(floor(scene.cells.cell_size.width() + 2 * GAP_PX))
            strips.paint_line(painter, tile, week, scene.longest_m, stage, scene.words)


def _draw_crowd(
    painter: QPainter, scene: Scene, day: date, staged: list[tuple[Tile, Stage]]
) -> None:
    cell = scene.cells.cell(day)
    if cell is not None:
        cell.setWidth(min(cell.width(), scene.cells.cell_size.width()))
        paint_crowd(painter, cell, staged, scene.words, scene.longest_m is None)


def _paint_aligned(
    painter: QPainter,
    rect: QRectF,
    session: Session,
    stage: Stage,
    words: Words,
    spare_px: float,
) -> None:
    """Draw a tile with its edges on whole pixels."""
    painter.save()
    # Halves upwards, for cells lie on halves; the height cut, that neighbours leave out alike.
    painter.translate(round(rect.left()), floor(rect.top() + 0.5))
    box = QRectF(0.0, 0.0, round(rect.width()), floor(rect.height() + 0.01))
    paint_tile(painter, box, session, stage, words, max(0.0, spare_px))
    painter.restore()

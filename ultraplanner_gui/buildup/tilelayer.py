"""All tiles in one picture, in which only the days that changed are drawn anew."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPixmap

from ultraplanner_gui.buildup.cells import GAP_PX, Cells, Tile
from ultraplanner_gui.buildup.tile import Stage, paint_tile
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.wording.words import Words

Drawn = tuple[list[Tile], tuple[str, Stage]]
NOTHING_CARRIED = ("", Stage())


class TileLayer:
    """A transparent picture of the size of the grid that holds the tiles."""

    def __init__(self) -> None:
        self._picture = QPixmap()
        self._drawn: dict[date, Drawn] = {}
        self._made_for: tuple[QSize, float, Words, date] | None = None

    def clear(self) -> None:
        """Draw everything anew next time."""
        self._made_for = None

    def picture(
        self,
        size: QSize,
        ratio: float,
        cells: Cells,
        words: Words,
        today: date,
        carried: tuple[str, Stage],
    ) -> QPixmap:
        """Return the picture of *cells*; the session *carried* (key, stage) as in the hand."""
        made_for = (size, ratio, words, today)
        if made_for != self._made_for:
            self._made_for = made_for
            self._drawn = {}
            self._picture = QPixmap(size * ratio)
            self._picture.setDevicePixelRatio(ratio)
            self._picture.fill(Qt.GlobalColor.transparent)
        wanted = {day: (there, _in_hand(there, carried)) for day, there in cells.by_day.items()}
        days = wanted.keys() | self._drawn.keys()
        changed = [day for day in days if wanted.get(day) != self._drawn.get(day)]
        if changed:
            self._draw(changed, cells, words, today, wanted)
            self._drawn = wanted
        return self._picture

    def _draw(
        self,
        days: list[date],
        cells: Cells,
        words: Words,
        today: date,
        wanted: dict[date, Drawn],
    ) -> None:
        painter = QPainter(self._picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for day in days:
            cell = cells.cell(day)
            if cell is not None and day in self._drawn:
                _wipe(painter, cell.adjusted(-GAP_PX, -GAP_PX, GAP_PX, GAP_PX))
            there, (key, stage) = wanted.get(day, ([], NOTHING_CARRIED))
            usual = Stage(is_past=day < today)
            for tile in there:
                is_carried = tile.session.key == key
                _paint_aligned(
                    painter, tile.rect, tile.session, stage if is_carried else usual, words
                )
        painter.end()


def _in_hand(there: list[Tile], carried: tuple[str, Stage]) -> tuple[str, Stage]:
    key = carried[0]
    if key and any(tile.session.key == key for tile in there):
        return carried
    return NOTHING_CARRIED


def _wipe(painter: QPainter, rect: QRectF) -> None:
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Source)
    painter.fillRect(rect, Qt.GlobalColor.transparent)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceOver)


def _paint_aligned(
    painter: QPainter, rect: QRectF, session: Session, stage: Stage, words: Words
) -> None:
    """Draw a tile with its edges on whole pixels."""
    painter.save()
    painter.translate(round(rect.left()), round(rect.top()))
    box = QRectF(0.0, 0.0, round(rect.width()), round(rect.height()))
    paint_tile(painter, box, session, stage, words)
    painter.restore()

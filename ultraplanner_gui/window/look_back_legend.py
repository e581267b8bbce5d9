"""What the fills of a pile chart mean."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QBrush, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from ultraplanner_gui.widgets.lane import draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space, Stroke
from ultraplanner_gui.window.small_charts import Fill

_BOX_PX = 12.0


class Legend(QWidget):
    """Boxes with their names, in a row; in two where it is narrow."""

    def __init__(self, entries: Sequence[tuple[str, Fill]], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._entries = tuple(entries)
        self.setAccessibleName(self.tr("Legend"))
        self.setAccessibleDescription(", ".join(name for name, _ in entries))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme().changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(400, round(2 * theme().metrics(Pt.LABEL).height() + Space.NEAR))

    def paintEvent(self, event: QPaintEvent) -> None:
        look, c = theme(), theme().colours
        painter, metrics = QPainter(self), look.metrics(Pt.LABEL)
        x, y, high = float(Space.NEAR), 0.0, metrics.height()
        for name, (colour, hatch) in self._entries:
            wide = _BOX_PX + Space.TIGHT + metrics.horizontalAdvance(name) + Space.WIDE
            if x + wide > self.width() and x > Space.NEAR:
                x, y = float(Space.NEAR), y + high + Space.HAIR
            box = QRectF(x, y + (high - _BOX_PX) / 2, _BOX_PX, _BOX_PX)
            painter.fillRect(box, QBrush(c[colour], hatch))
            painter.setPen(QPen(c["strong_line"], Stroke.HAIR))
            painter.drawRect(box)
            room = QRectF(box.right() + Space.TIGHT, y, wide, high)
            draw_text(painter, room, name, c["ink"], look.font(Pt.LABEL))
            x += wide

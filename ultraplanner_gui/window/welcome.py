"""The empty start: drop a course, type its table, open a project, open the demo."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space, Stroke


class Welcome(QWidget):
    """What stands in the window while no project is open."""

    def __init__(
        self,
        new: Callable[[], None],
        type_course: Callable[[], None],
        open_project: Callable[[], None],
        demo: Callable[[], None],
        open_recent: Callable[[Path], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._open_recent = open_recent
        self._title = QLabel(self.tr("Drop a course here"), self)
        self._under = QLabel(
            self.tr(
                "A GPX file of the race, with or without heights. You get its profile, a build-up "
                "counted back from race day, section targets, fuel and cards to print."
            ),
            self,
        )
        self._under.setWordWrap(True)
        self._under.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self._new = QPushButton(self.tr("New from a &course…"), self)
        self._new.setDefault(True)
        self._new.clicked.connect(new)
        self._type = QPushButton(self.tr("No file? &Type the course…"), self)
        self._type.clicked.connect(type_course)
        self._open = QPushButton(self.tr("&Open project…"), self)
        self._open.clicked.connect(open_project)
        self._demo = QPushButton(self.tr("Open the &demo"), self)
        self._demo.clicked.connect(demo)
        buttons = QHBoxLayout()
        buttons.setSpacing(Space.APART)
        buttons.addStretch(1)
        for button in (self._new, self._type, self._open, self._demo):
            buttons.addWidget(button)
        buttons.addStretch(1)
        self._recent = QVBoxLayout()
        self._recent.setSpacing(Space.HAIR)
        box = QVBoxLayout(self)
        box.setSpacing(Space.WIDE)
        box.addStretch(3)
        box.addWidget(self._title, 0, Qt.AlignmentFlag.AlignHCenter)
        box.addWidget(self._under, 0, Qt.AlignmentFlag.AlignHCenter)
        box.addLayout(buttons)
        box.addSpacing(18)
        box.addLayout(self._recent)
        box.addStretch(4)
        theme().changed.connect(self._dress)
        self._dress()

    def show_recent(self, files: Sequence[Path]) -> None:
        """List the projects opened last."""
        while (item := self._recent.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        for path in files:
            button = QPushButton(path.stem, self)
            button.setFlat(True)
            button.setToolTip(str(path))
            button.setAccessibleName(self.tr("Open {0}").format(path.stem))
            button.clicked.connect(partial(self._open_recent, path))
            self._recent.addWidget(button, 0, Qt.AlignmentFlag.AlignHCenter)

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        inset = look.px(28)
        frame = QRectF(self.rect()).adjusted(inset, inset, -inset, -inset)
        self._paint_hills(painter, frame)
        painter.setPen(QPen(look.colours["strong_line"], Stroke.LINE, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(frame, 10, 10)
        painter.end()

    def _paint_hills(self, painter: QPainter, frame: QRectF) -> None:
        """Draw a quiet profile along the foot: what a course will look like here."""
        look, steps = theme(), 160
        points = [frame.bottomLeft()]
        for k in range(steps + 1):
            x = k / steps
            rise = 0.52 + 0.26 * math.sin(5.1 * x + 0.4) + 0.16 * math.sin(13.7 * x)
            rise += 0.07 * math.sin(31.0 * x + 1.0)
            y = frame.bottom() - 0.30 * frame.height() * max(rise, 0.03)
            points.append(QPointF(frame.left() + x * frame.width(), y))
        points.append(frame.bottomRight())
        path = QPainterPath()
        path.addRoundedRect(frame, 10, 10)
        painter.setClipPath(path)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(look.colours["lane"])
        painter.drawPolygon(QPolygonF(points))
        painter.setClipping(False)

    def _dress(self) -> None:
        look = theme()
        dress(self._title, Pt.GREETING, look.colours.ink, bold=True)
        dress(self._under, Pt.LARGE, look.colours.soft)
        self._under.ensurePolished()  # the height is that of the letters it is dressed in
        width = round(look.px(560))
        self._under.setFixedSize(width, self._under.heightForWidth(width))

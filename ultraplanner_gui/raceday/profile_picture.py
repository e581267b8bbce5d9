"""Stations, profile and targets as a picture, painted by the lanes of the sheet."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QRect, QSize
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.raceday.clock_lanes import FootLane
from ultraplanner_gui.raceday.profile_lane import ProfileLane
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.raceday.station_head import StationHead
from ultraplanner_gui.raceday.target_lane import TargetLane
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

WIDTH_PX, PROFILE_PX, TARGET_PX, FOOT_PX, GAP_PX = 1600, 320, 140, 22, 3
#: Pixels of a PNG for each of the sheet: sharp on paper 16 cm wide.
SCALE = 2.0


class ProfilePicture(QWidget):
    """The whole course in the lanes of the sheet, never shown."""

    def __init__(self, document: Document, words: Callable[[], Words]) -> None:
        super().__init__()
        selection, axis = Selection(self), RaceAxis(self)
        axis.show(document.shown)
        units = words()
        head = StationHead(document, selection, axis, words, self)
        profile = ProfileLane(
            *(self.tr("Profile"), units.height_unit, 1.0, document, selection, axis, words, self)
        )
        target = TargetLane(document, selection, axis, words, self)
        foot = FootLane("", units.distance_unit, 1.0, document, selection, axis, words, self)
        top = GAP_PX
        lanes: tuple[tuple[RaceLane, int], ...] = (
            (head, head.heightForWidth(WIDTH_PX)),
            (profile, PROFILE_PX),
            (target, TARGET_PX),
            (foot, FOOT_PX),
        )
        for lane, height in lanes:
            lane.setGeometry(0, top, WIDTH_PX, height)
            top += height + GAP_PX
        self.lanes = tuple(lane for lane, _ in lanes)
        self.resize(WIDTH_PX, top)

    def draw(self, painter: QPainter) -> None:
        """Draw all lanes under one another."""
        painter.fillRect(self.rect(), theme().colours["paper"])
        for lane in self.lanes:
            painter.save()
            painter.translate(lane.pos())
            painter.setClipRect(lane.rect())
            lane.paint_whole(painter)
            painter.restore()

    def png(self) -> bytes:
        """Return the picture as PNG."""
        image = QImage(self.size() * SCALE, QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(SCALE)
        with QPainter(image) as painter:
            self.draw(painter)
        buffer = QBuffer()
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        image.save(buffer, "PNG")  # type: ignore[call-overload]
        return bytes(buffer.data().data())

    def svg(self, title: str) -> bytes:
        """Return the picture as SVG; the wash of the profile is an image in it."""
        buffer, generator = QBuffer(), QSvgGenerator()
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        generator.setOutputDevice(buffer)
        # Type is as large against the lines as on the sheet.
        generator.setResolution(self.logicalDpiX())
        generator.setSize(QSize(self.width(), self.height()))
        generator.setViewBox(QRect(0, 0, self.width(), self.height()))
        generator.setTitle(title)
        with QPainter(generator) as painter:
            self.draw(painter)
        return bytes(buffer.data().data())


def write_profile(document: Document, words: Callable[[], Words], path: Path) -> None:
    """Write the picture to *path*, as SVG if it is called so, else as PNG; StoreError if not."""
    picture = ProfilePicture(document, words)
    is_svg = path.suffix.lower() == ".svg"
    title = document.shown.project.race.name
    data = picture.svg(title) if is_svg else picture.png()
    picture.deleteLater()
    write_bytes(path, data)

"""Where stations, stops and the start can be taken hold of, and what they are then."""

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication


def head(stage):
    return stage.storey.head


def name_of(stage, key):
    """Where the name of a station, or of the start, can be taken hold of."""
    lane = head(stage)
    rect = next(rect for label, rect in lane.placed(lane.body()) if label.key == key)
    return rect.center().toPoint()


def grip_of(stage, key):
    """Where the stop at a station can be taken hold of."""
    lane = head(stage)
    spot = next(s for s in lane.stop_spots(lane.body()) if s.station.key == key)
    return QPoint(round(spot.right), round(lane.bar_top) + 6)


def shown_station(stage, key):
    return stage.document.shown.project.course.station(key)


def kept_station(stage, key):
    return stage.document.project.course.station(key)


def shown_start(stage):
    return stage.document.shown.project.race.start


def move_freely(lane, at):
    """Move the pressed mouse with Alt held."""
    QApplication.sendEvent(
        lane,
        QMouseEvent(
            QEvent.Type.MouseMove,
            QPointF(at),
            QPointF(lane.mapToGlobal(at)),
            Qt.MouseButton.NoButton,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.AltModifier,
        ),
    )

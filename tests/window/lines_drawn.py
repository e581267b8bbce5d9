"""Notes every line that is drawn near a text, and which of them run through its letters."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import count, pairwise

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QFont, QFontMetricsF, QImage, QPainter, QPixmap, QPolygonF
from PySide6.QtWidgets import QWidget

from tests.window.text_drawn import _owner, as_drawn
from ultraplanner_gui.raceday.profile_lane import Plate
from ultraplanner_gui.widgets.theme import theme

#: Letters have so much air round them that a line there is not read as part of them.
AIR_PX = 1.5
STEP_PX = 1.0
#: A stroke hardly longer than a text is meant to strike it out.
STRUCK_PX = 14.0


@dataclass(frozen=True)
class Stroke:
    """A line, a text or a plate, where it is in its widget and when it was drawn."""

    number: int
    line: QLineF
    rect: QRectF
    colour: str
    text: str = ""

    def crosses(self, letters: QRectF) -> bool:
        """Whether it runs through *letters*."""
        steps = max(1, round(self.line.length() / STEP_PX))
        return any(letters.contains(self.line.pointAt(k / steps)) for k in range(steps + 1))


class LineWatch:
    """Stands between painted widgets and their painters while it is entered.

    Pale lines of a scale lie under what is written and count for nothing; so does a line over
    which a plate was laid before the text.
    """

    def __init__(self, monkeypatch) -> None:
        self._number = count()
        self.forget()
        for name in ("drawLine", "drawLines", "drawPolyline"):
            self._stand_before(monkeypatch, name, self._note_lines)
        self._stand_before(monkeypatch, "fillRect", self._note_plate)
        self._stand_before(monkeypatch, "drawText", self._note_text)
        self._stand_before(monkeypatch, "drawPixmap", self._note_copy)

    def forget(self) -> None:
        self._lines: dict[object, list[Stroke]] = {}
        self._plates: dict[object, list[Stroke]] = {}
        self._texts: dict[object, dict[tuple, Stroke]] = {}

    @property
    def count(self) -> int:
        return sum(map(len, self._lines.values()))

    def faults(self) -> list[str]:
        """Return which texts have lines through them."""
        pale, found = theme().colours["line"].name(), []
        for key, there in self._texts.items():
            lines = self._lines.get(key, [])
            boxes = np.array([_box(stroke.line) for stroke in lines]).reshape(-1, 4)
            for text in there.values():
                letters = text.rect.adjusted(AIR_PX, AIR_PX, -AIR_PX, -AIR_PX)
                for line in (lines[k] for k in _near(boxes, letters)):
                    if line.colour == pale or self._is_struck_out(line, text):
                        continue
                    if not line.crosses(letters) or self._is_covered(key, line, text, letters):
                        continue
                    ends = [round(v) for v in (line.line.x1(), line.line.y1())]
                    ends += [round(v) for v in (line.line.x2(), line.line.y2())]
                    found.append(f"{key[0]}: {text.text!r} has {ends}, {line.colour}, through it")
                    break
        return found

    @staticmethod
    def _is_struck_out(line: Stroke, text: Stroke) -> bool:
        return line.line.dy() == 0 and line.line.length() < text.rect.width() + STRUCK_PX

    def _is_covered(self, key: object, line: Stroke, text: Stroke, letters: QRectF) -> bool:
        plates = self._plates.get(key, [])
        between = (p for p in plates if line.number < p.number < text.number)
        return any(plate.rect.contains(letters) for plate in between)

    def _stand_before(self, monkeypatch, name: str, note) -> None:
        draw = getattr(QPainter, name)

        def noted(painter, *args):
            key = _key(painter)
            if key is not None:
                note(key, painter, args)
            return draw(painter, *args)

        monkeypatch.setattr(QPainter, name, noted)

    def _note_lines(self, key: object, painter: QPainter, args: tuple) -> None:
        place, colour = painter.worldTransform(), painter.pen().color().name()
        for line in _pieces(args):
            there = Stroke(next(self._number), place.map(line), QRectF(), colour)
            self._lines.setdefault(key, []).append(there)

    def _note_plate(self, key: object, painter: QPainter, args: tuple) -> None:
        if isinstance(args[0], QRectF):
            rect = painter.worldTransform().mapRect(args[0])
            plate = Stroke(next(self._number), QLineF(), rect, "")
            self._plates.setdefault(key, []).append(plate)

    def _note_copy(self, key: object, painter: QPainter, args: tuple) -> None:
        if isinstance(args[-1], Plate):
            drawn, font = as_drawn(args)
            self._note_plate(key, painter, drawn)
            self._note_text(key, painter, drawn, font)

    def _note_text(
        self, key: object, painter: QPainter, args: tuple, font: QFont | None = None
    ) -> None:
        text = next(a for a in args if isinstance(a, str))
        if not text.strip() or not isinstance(args[0], QRectF):
            return
        metrics = QFontMetricsF(font or painter.font(), painter.device())
        letters = painter.worldTransform().mapRect(_letters(metrics, args, text))
        if painter.hasClipping():
            letters &= painter.worldTransform().mapRect(painter.clipBoundingRect())
        one = Stroke(next(self._number), QLineF(), letters, "", text)
        place = (text, round(letters.left()), round(letters.top()))
        self._texts.setdefault(key, {})[place] = one


def _box(line: QLineF) -> tuple[float, float, float, float]:
    xs, ys = sorted((line.x1(), line.x2())), sorted((line.y1(), line.y2()))
    return xs[0], ys[0], xs[1], ys[1]


def _near(boxes: np.ndarray, letters: QRectF) -> list[int]:
    """Return which lines may touch *letters*, by the boxes round them."""
    left, top, right, foot = boxes.T
    across = (left <= letters.right()) & (right >= letters.left())
    return np.flatnonzero(across & (top <= letters.bottom()) & (foot >= letters.top())).tolist()


def _key(painter: QPainter) -> tuple[str, int] | None:
    """Return whose painting it is; None for pictures of other sizes, as of what is in the hand."""
    device = painter.device()
    if isinstance(device, QWidget):
        return type(device).__name__, id(device)
    try:
        owner = _owner()
    except AssertionError:
        return None
    is_whole = isinstance(device, QPixmap | QImage) and (
        device.size() == owner.size() * device.devicePixelRatioF()
    )
    return (type(owner).__name__, id(owner)) if is_whole else None


def _pieces(args: tuple) -> list[QLineF]:
    first = args[0]
    if isinstance(first, QLineF):
        return [first]
    if isinstance(first, QPointF):
        return [QLineF(first, args[1])]
    if isinstance(first, QPolygonF | list | tuple):
        items = list(first)
        if items and isinstance(items[0], QLineF):
            return items
        if items and isinstance(items[0], QPointF):
            return [QLineF(a, b) for a, b in pairwise(items)]
    return []


def _letters(metrics: QFontMetricsF, args: tuple, text: str) -> QRectF:
    """Return the box of the letters without their tails, which may touch what lies under them."""
    box = metrics.boundingRect(*args[:2], text)
    top = metrics.tightBoundingRect(text).top()
    width = metrics.horizontalAdvance(text)
    return QRectF(box.left(), box.top() + metrics.ascent() + top, width, -top)

"""Notes every text painted widgets draw, with the ink it covers, and what is wrong with it."""

from __future__ import annotations

import sys
from dataclasses import dataclass
from itertools import combinations

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QImage, QPainter, QPixmap
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QPushButton, QWidget

from ultraplanner_gui.raceday.profile_lane import Plate
from ultraplanner_gui.widgets.lane import UNIT_PT, Align
from ultraplanner_gui.widgets.theme import theme

OUTSIDE_PX = 1.0
OVER_PX = 1.5
EVERYWHERE = QRectF(-1e6, -1e6, 2e6, 2e6)
WRAP = int(Qt.TextFlag.TextWordWrap)


@dataclass(frozen=True)
class Drawn:
    """One text: its ink in the picture it was drawn on, and the part that is shown of it."""

    text: str
    ink: QRectF
    shown: QRectF

    def __str__(self) -> str:
        return f"{self.text!r} {_numbers(self.ink)} in {_numbers(self.shown)}"


class TextWatch:
    """Stands between painted widgets and `QPainter.drawText` while it is entered."""

    def __init__(self, monkeypatch) -> None:
        self._drawn: dict[tuple[str, int], dict[tuple, Drawn]] = {}
        self._owners: dict[tuple[str, int], QWidget] = {}
        draw = QPainter.drawText

        def noted(painter, *args):
            self._note(painter, args)
            return draw(painter, *args)

        paste = QPainter.drawPixmap

        def pasted(painter, *args):
            if isinstance(args[-1], Plate):
                self._note(painter, *as_drawn(args))
            return paste(painter, *args)

        monkeypatch.setattr(QPainter, "drawText", noted)
        monkeypatch.setattr(QPainter, "drawPixmap", pasted)

    def forget(self) -> None:
        self._drawn.clear()
        self._owners.clear()

    @property
    def texts(self) -> list[str]:
        """Every text drawn since the last `forget`."""
        return [one.text for there in self._drawn.values() for one in there.values()]

    def faults(self) -> list[str]:
        """Return what stands outside its widget or over another text of the same widget."""
        found = []
        for (name, _), there in self._drawn.items():
            texts = list(there.values())
            found += [f"{name}: {one} is cut off" for one in texts if _is_cut(one)]
            for one, other in combinations(texts, 2):
                over = one.ink.intersected(other.ink)
                if min(over.width(), over.height()) > OVER_PX:
                    found.append(f"{name}: {one} over {other}")
        return found

    def _note(self, painter: QPainter, args: tuple, font: QFont | None = None) -> None:
        text = next(a for a in args if isinstance(a, str))
        if not text.strip():
            return
        device, owner = painter.device(), _owner()
        is_picture = isinstance(device, QPixmap | QImage)
        if isinstance(device, QWidget):
            owner = device
        size = QSizeF(device.size()) if is_picture else QSizeF(owner.size())
        key = (type(owner).__name__, id(owner))
        if is_picture and size != QSizeF(owner.size()) * device.devicePixelRatioF():
            key = (f"{key[0]} in the hand", id(device))
        shown = QRectF(QPointF(0, 0), size / device.devicePixelRatioF() if is_picture else size)
        if _scrolls(owner):
            shown = EVERYWHERE
        metrics = QFontMetricsF(font or painter.font(), device)
        ink = painter.worldTransform().mapRect(_ink(metrics, args, text))
        if painter.hasClipping():
            shown = shown & painter.worldTransform().mapRect(painter.clipBoundingRect())
        one = Drawn(text, ink, shown)
        place = (text, round(ink.left()), round(ink.top()))
        self._drawn.setdefault(key, {})[place] = one


def narrow_buttons() -> list[str]:
    """Return the buttons in sight that are less wide than what stands on them."""
    found = []
    for widget in QApplication.allWidgets():
        if not isinstance(widget, QPushButton) or not widget.isVisible():
            continue
        wide = widget.fontMetrics().horizontalAdvance(widget.text().replace("&", ""))
        if widget.width() < wide:
            found.append(f"{widget.text()!r}, {wide} wide, on a button {widget.width()} wide")
    return found


def settle() -> None:
    for _ in range(4):
        QApplication.processEvents()


def _numbers(rect: QRectF) -> str:
    return " ".join(f"{value:.0f}" for value in rect.getRect())


def _is_cut(one: Drawn) -> bool:
    return not one.shown.adjusted(-OUTSIDE_PX, -OUTSIDE_PX, OUTSIDE_PX, OUTSIDE_PX).contains(
        one.ink
    )


def _scrolls(owner: QWidget) -> bool:
    """Whether *owner* is the view of something that is scrolled: it may end within a text."""
    above = owner.parentWidget()
    is_view = isinstance(above, QAbstractScrollArea) and above.viewport() is owner
    return is_view or isinstance(owner, QAbstractScrollArea)


def as_drawn(args: tuple) -> tuple[tuple, QFont]:
    """Return what would draw the text of a plate where it is copied to, and its type."""
    x, y, plate = args
    rect = QRectF(QPointF(x, y), plate.deviceIndependentSize())
    return (rect, int(Align.AlignCenter), plate.text), theme().font(UNIT_PT)


def _ink(metrics: QFontMetricsF, args: tuple, text: str) -> QRectF:
    """Return the box of the letters themselves, without the leading above and under them."""
    tight, width = metrics.tightBoundingRect(text), metrics.horizontalAdvance(text)
    # What is found is rounded outward; a letter keeps within its advance all but a hair.
    ink = QRectF(0.0, tight.top(), width, tight.height())
    if not isinstance(args[0], QRectF):
        return ink.translated(args[0])
    box = metrics.boundingRect(*args[:2], text)
    return box if args[1] & WRAP else ink.translated(box.left(), box.top() + metrics.ascent())


def _owner() -> QWidget:
    """Return the widget whose method paints, or for which a painter of cells does."""
    frame = sys._getframe(3)
    while frame is not None:
        there = frame.f_locals
        for owner in (there.get("self"), getattr(there.get("option"), "widget", None)):
            if isinstance(owner, QWidget):
                return owner
        frame = frame.f_back
    raise AssertionError("nobody painted this")

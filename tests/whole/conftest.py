"""A real window with hands on it: mouse and keys go in where the window system gives them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QAction, QDragEnterEvent, QDragMoveEvent, QDropEvent, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.main_window import MainWindow

LEFT = Qt.MouseButton.LeftButton
Key, Shape = Qt.Key, Qt.CursorShape
PLAIN = Qt.KeyboardModifier.NoModifier
SIZE = (1440, 900)
PATIENCE_MS = 20_000
STEPS = 8
STILL = 12


class Answering(Ask):
    """Answers every question with the path it was told beforehand, and notes what it is told."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self.answer: Path | None = None
        self.told: list[str] = []

    def which_course(self, folder, taken):
        taken(self.answer)

    which_project = where_to_keep = where_to_write_pdf = which_course
    where_to_write_picture = which_course

    def tell(self, title, sentence):
        self.told.append(sentence)

    def offer(self, title, sentence, deed, taken):
        self.told.append(sentence)


class Hand:
    """Mouse and keyboard over *window*: events enter where those of the window system do."""

    def __init__(self, qtbot, window: MainWindow) -> None:
        self.qtbot, self.window = qtbot, window
        self._top: QWidget = window

    # Waiting

    def until(self, is_so: Callable[[], object]) -> None:
        self.qtbot.waitUntil(lambda: bool(is_so()), timeout=PATIENCE_MS)

    def dialog(self, kind: type[QWidget]) -> QWidget:
        """Return the dialog of *kind*, once it is in front."""
        self.until(lambda: isinstance(QApplication.activeWindow(), kind))
        return QApplication.activeWindow()

    def in_front(self, window: QWidget | None = None) -> None:
        """Wait until *window*, or the main window, has the keyboard."""
        wanted = window or self.window
        self.until(lambda: QApplication.activeWindow() is wanted)

    @property
    def focus(self) -> QWidget | None:
        """What the keys go to."""
        return QApplication.focusWidget()

    # Keyboard

    def keys(self, *keys: Key, modifier: Qt.KeyboardModifier = PLAIN) -> None:
        """Press *keys* one after another, wherever the focus is."""
        for key in keys:
            QTest.keyClick(QApplication.focusWindow(), key, modifier)

    def shortcut(self, action: QAction | str) -> None:
        """Press the shortcut of an action of the main window."""
        action = action if isinstance(action, QAction) else self.window.table.by_name[action]
        combination = action.shortcut()[0]
        self.keys(combination.key(), modifier=combination.keyboardModifiers())

    def type(self, text: str) -> None:
        """Type *text* in place of all there is in the field with the focus."""
        self.keys(Key.Key_A, modifier=Qt.KeyboardModifier.ControlModifier)
        self.write(text)

    def write(self, text: str) -> None:
        """Type *text* at where the keys go."""
        for letter in text:
            QTest.keyClick(QApplication.focusWindow(), letter)

    def tab_to(self, widget: QWidget, at_most: int = 60) -> None:
        """Go to *widget* by Tab alone."""
        for _ in range(at_most):
            if widget.hasFocus():
                return
            self.keys(Key.Key_Tab)
        raise AssertionError(f"{widget} cannot be reached by Tab")

    # Mouse

    def move(self, widget: QWidget, at: QPoint) -> None:
        QTest.mouseMove(*self._spot(widget, at))

    def press(self, widget: QWidget, at: QPoint) -> None:
        self.move(widget, at)
        window, spot = self._spot(widget, at)
        QTest.mousePress(window, LEFT, PLAIN, spot)

    def release(self, widget: QWidget, at: QPoint) -> None:
        window, spot = self._spot(widget, at)
        QTest.mouseRelease(window, LEFT, PLAIN, spot)

    def click(self, widget: QWidget, at: QPoint | None = None) -> None:
        at = widget.rect().center() if at is None else at
        self.press(widget, at)
        self.release(widget, at)

    def double_click(self, widget: QWidget, at: QPoint) -> None:
        self.click(widget, at)
        window, spot = self._spot(widget, at)
        QTest.mouseDClick(window, LEFT, PLAIN, spot)

    def way(self, start: QPoint, end: QPoint, steps: int = STEPS) -> Iterator[QPoint]:
        """Give the points a pointer passes on its way from *start* to *end*."""
        for step in range(1, steps + 1):
            share = QPointF(end - start) * step / steps
            yield start + share.toPoint()

    def menu(self, name: str) -> None:
        """Choose an action from the menu bar with the mouse."""
        action = self.window.table.by_name[name]
        bar = self.window.menuBar()
        above = next(a for a in bar.actions() if action in a.menu().actions())
        self.click(bar, bar.actionGeometry(above).center())
        menu = above.menu()
        self.until(menu.isVisible)
        self.click(menu, menu.actionGeometry(action).center())

    def grip(self, widget: QWidget, x: float, ys: range, shape: Shape) -> QPoint:
        """Feel down *widget* at *x* for where the pointer becomes *shape*."""
        for y in ys:
            self.move(widget, QPoint(round(x), y))
            if widget.cursor().shape() is shape:
                return QPoint(round(x), y)
        raise AssertionError(f"{widget} has nothing to take hold of at {x}")

    def drop(self, path: Path, at: QPoint | None = None) -> None:
        """Drop the file *path* on the window, *at* a place in it or in the middle."""
        spot = QPointF(at or self.window.rect().center())
        what, copy = QMimeData(), Qt.DropAction.CopyAction
        what.setUrls([QUrl.fromLocalFile(str(path))])
        handle = self.window.windowHandle()
        enter = QDragEnterEvent(spot.toPoint(), copy, what, LEFT, PLAIN)
        QApplication.sendEvent(handle, enter)
        assert enter.isAccepted()
        QApplication.sendEvent(handle, QDragMoveEvent(spot.toPoint(), copy, what, LEFT, PLAIN))
        QApplication.sendEvent(handle, QDropEvent(spot, copy, what, LEFT, PLAIN))

    # Eyes

    def pixels(self, widget: QWidget) -> QImage:
        """Return what stands on the screen where *widget* is."""
        at = widget.mapTo(self.window, QPoint(0, 0))
        grabbed = self.window.screen().grabWindow(
            self.window.winId(), at.x(), at.y(), widget.width(), widget.height()
        )
        return grabbed.toImage()

    def settled(self, widget: QWidget) -> QImage:
        """Return what *widget* looks like once it has stopped changing."""
        looks: list[QImage] = []

        def is_still():
            looks.append(self.pixels(widget))
            return len(looks) > STILL and all(look == looks[-1] for look in looks[-STILL:])

        self.until(is_still)
        return looks[-1]

    def sees_change(self, widget: QWidget, before: QImage) -> None:
        """Wait until *widget* looks other than *before* on the screen."""
        self.until(lambda: self.pixels(widget) != before)

    def sees_again(self, widget: QWidget, before: QImage) -> None:
        """Wait until *widget* looks like *before* on the screen."""
        self.until(lambda: self.pixels(widget) == before)

    def _spot(self, widget: QWidget, at: QPoint):
        # Held, because the wrapper of its handle goes when the wrapper of the window does.
        self._top = top = widget.window()
        return top.windowHandle(), widget.mapTo(top, at)


@pytest.fixture(autouse=True)
def home(tmp_path, monkeypatch):
    """An empty profile; the look a user meets first."""
    folder = tmp_path / "home"
    monkeypatch.setenv("ULTRAPLANNER_HOME", str(folder))
    return folder


@pytest.fixture
def open_window(qtbot, home):
    """Open a window as the program does at its start; give the hand over it."""
    theme().choose("light", 100)

    def opened(size: tuple[int, int] = SIZE) -> Hand:
        settings = Settings()
        settings.units, settings.locale = "metric", "en_GB"
        window = MainWindow(settings)
        window.ask = Answering(window)
        qtbot.addWidget(window)
        window.resize(*size)
        with qtbot.waitActive(window, timeout=PATIENCE_MS):
            window.show()
            window.activateWindow()
        return Hand(qtbot, window)

    yield opened
    theme().choose("light", 100)


@pytest.fixture
def hand(open_window):
    return open_window()


def close(hand: Hand) -> None:
    """Close the window as its frame's button does."""
    hand.window.close()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)

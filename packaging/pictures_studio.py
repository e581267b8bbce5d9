"""A window of the program and what it takes to put it into a pose and take its picture."""

# ruff: noqa: E402 - this checkout is put on the path before anything of it is imported
from __future__ import annotations

import os
import sys
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))
if sys.platform == "linux" and not (os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")):
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEvent, QEventLoop, QPoint, QPointF, QTimer
from PySide6.QtGui import QImage, QMouseEvent, Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QWidget

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.theme import ThemeWish, theme
from ultraplanner_gui.window.main_window import MainWindow

SIZE = (1440, 900)
READING_MS = 20_000
NEUTRAL_FOLDER = "Documents/Ultraplanner"


class Studio:
    """A window with the demo in it, and what it takes to put it into a pose."""

    def __init__(self, home: Path, today: date) -> None:
        self.home, self.today = home, today
        self.settings = Settings(home / "settings.ini")
        self.settings.units = "metric"
        self.settings.locale = "en_GB"
        theme().choose("light", 100)

    def empty_window(self, size: tuple[int, int]) -> MainWindow:
        """Return a window without a project."""
        window = MainWindow(self.settings)
        window.resize(*size)
        window.show()
        settle()
        return window

    def demo(self) -> Project:
        """Return the demo as it is today."""
        return demo_project(self.today)

    def demo_window(
        self,
        look: ThemeWish = "light",
        percent: int = 100,
        size: tuple[int, int] = SIZE,
        project: Project | None = None,
    ) -> MainWindow:
        """Return a window on the demo, a long run ahead and the hardest section selected.

        Another *project* is shown in its place if there is one.
        """
        theme().choose(look, percent)
        window = self.empty_window(size)
        path = self.home / f"{NEUTRAL_FOLDER.rpartition('/')[2]} {look}.ultraplan"
        file = ProjectFile.create(path, project or self.demo(), overwrite=True)
        window.show_document(Document(file, today=lambda: self.today, parent=window))
        assert window.workplace is not None
        window.workplace.selection.choose("session", self.long_run(window).key)
        window.workplace.selection.choose("section", self.hard_section(window))
        settle()
        return window

    def long_run(self, window: MainWindow) -> Session:
        """Return a long run a few weeks ahead."""
        assert window.document is not None
        ahead = self.today + timedelta(weeks=2)
        block = window.document.project.block
        return next(s for s in block.sessions if s.kind is Kind.LONG and s.day > ahead)

    def hard_section(self, window: MainWindow) -> str:
        """Return the key of the section before the tightest cutoff."""
        assert window.document is not None
        tightest = window.document.outlook.tightest
        assert tightest is not None
        return tightest.key


def settle() -> None:
    """Let everything posted happen and everything be painted."""
    for _ in range(3):
        QApplication.processEvents()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def wait_for(there: Callable[[], bool]) -> None:
    """Run the event loop until *there*; TimeoutError after a while."""
    loop, look, end = QEventLoop(), QTimer(), QTimer()
    end.setSingleShot(True)
    end.timeout.connect(loop.quit)
    look.timeout.connect(lambda: loop.quit() if there() else None)
    look.start(20)
    end.start(READING_MS)
    loop.exec()
    if not there():
        raise TimeoutError("the window did not get there")


def mouse(widget: QWidget, kind: QEvent.Type, at: QPoint, is_down: bool) -> None:
    """Send one event of the left button to *widget*."""
    button = Qt.MouseButton.LeftButton
    none = Qt.MouseButton.NoButton
    QApplication.sendEvent(
        widget,
        QMouseEvent(
            kind,
            QPointF(at),
            QPointF(widget.mapToGlobal(at)),
            none if kind is QEvent.Type.MouseMove else button,
            button if is_down else none,
            Qt.KeyboardModifier.NoModifier,
        ),
    )


def taken(window: MainWindow, close: bool = True) -> QImage:
    """Return a picture of *window*, without the frame round the button that has the keys."""
    focus = window.focusWidget()
    if isinstance(focus, QAbstractButton):
        focus.clearFocus()
    settle()
    image = window.grab().toImage()
    if close:
        window.close()
    return image


def hover(widget: QWidget, at: QPoint) -> None:
    """Move the pointer to *at* with no button down."""
    mouse(widget, QEvent.Type.MouseMove, at, False)


def held_tile(studio: Studio, window: MainWindow) -> Callable[[], None]:
    """Hold a long run over the week after its own; return what puts it back."""
    assert window.workplace is not None
    grid, session = window.workplace.buildup.grid, studio.long_run(window)
    tile, cell = grid.cells.tile(session.key), grid.cells.cell(session.day + timedelta(days=6))
    assert tile is not None
    assert cell is not None
    return held(grid, tile.rect.center().toPoint(), cell.center().toPoint() + QPoint(7, 5))


def held(widget: QWidget, start: QPoint, end: QPoint) -> Callable[[], None]:
    """Drag what is at *start* to *end* and keep it there; return what puts it back."""
    mouse(widget, QEvent.Type.MouseButtonPress, start, True)
    for part in range(1, 9):
        mouse(widget, QEvent.Type.MouseMove, start + (end - start) * part / 8, True)
    settle()

    def let_go() -> None:
        mouse(widget, QEvent.Type.MouseMove, start, True)
        mouse(widget, QEvent.Type.MouseButtonRelease, start, False)

    return let_go

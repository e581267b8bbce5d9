"""Make the pictures of the README from the program itself: window and cards, of the demo.

    .venv/bin/python packaging/pictures.py [--today 2027-04-05] [--to FOLDER] [NAME ...]

Runs without a screen too. What is shown moves with today's date unless one is given.
"""

# ruff: noqa: E402 - this checkout is put on the path before anything of it is imported
from __future__ import annotations

import argparse
import os
import sys
import tempfile
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))
if sys.platform == "linux" and not (os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")):
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
from PySide6.QtCore import QEvent, QEventLoop, QLocale, QPoint, QPointF, QTimer
from PySide6.QtGui import QColor, QImage, QMouseEvent, QPainter, Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget

from ultraplanner_gui.cards.paint import paint_page
from ultraplanner_gui.cards.pdf import card_pages
from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.theme import ThemeWish, register_fonts, theme
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.plan_form import PlanForm

FOLDER = ROOT / "packaging" / "pictures"
SIZE = (1440, 900)
SMALL_SIZE = (1180, 720)
MOST_BYTES = 250_000
COLOURS, FLAT_COLOURS = 256, 64
CARD_PX_PER_MM = 7.0
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

    def demo_window(self, look: ThemeWish = "light") -> MainWindow:
        """Return a window on the demo, a long run ahead and the hardest section selected."""
        theme().choose(look, 100)
        window = self.empty_window(SIZE)
        path = self.home / f"{NEUTRAL_FOLDER.rpartition('/')[2]} {look}.ultraplan"
        file = ProjectFile.create(path, demo_project(self.today), overwrite=True)
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


# ---------------------------------------------------------------- the pictures


def sheet(studio: Studio) -> QImage:
    """Take the sheet by day."""
    return taken(studio.demo_window())


def sheet_dark(studio: Studio) -> QImage:
    """Take the sheet in the dark colours."""
    image = taken(studio.demo_window("dark"))
    theme().choose("light", 100)
    return image


def dragging(studio: Studio) -> QImage:
    """Take the sheet while a long run hangs over the week after its own."""
    window = studio.demo_window()
    assert window.workplace is not None
    grid, session = window.workplace.buildup.grid, studio.long_run(window)
    tile, cell = grid.cells.tile(session.key), grid.cells.cell(session.day + timedelta(days=6))
    assert tile is not None
    assert cell is not None
    start, end = tile.rect.center().toPoint(), cell.center().toPoint() + QPoint(7, 5)
    mouse(grid, QEvent.Type.MouseButtonPress, start, True)
    for part in range(1, 9):
        mouse(grid, QEvent.Type.MouseMove, start + (end - start) * part / 8, True)
    settle()
    image = taken(window, close=False)
    mouse(grid, QEvent.Type.MouseMove, start, True)
    mouse(grid, QEvent.Type.MouseButtonRelease, start, False)
    window.close()
    return image


def tables(studio: Studio) -> QImage:
    """Take the table of sessions, a long run in it selected."""
    window = studio.demo_window()
    assert window.workplace is not None
    window.workplace.selection.choose("session", studio.long_run(window).key)
    window.go("tables")
    return taken(window)


def desk(studio: Studio) -> QImage:
    """Take the desk of the cards."""
    window = studio.demo_window()
    window.go("cards")
    return taken(window)


def cards(studio: Studio) -> QImage:
    """Take the printed pages side by side."""
    window = studio.demo_window()
    assert window.document is not None
    image = pages_of(window.document.outlook, studio.settings)
    window.close()
    return image


def welcome(studio: Studio) -> QImage:
    """Take the window without a project."""
    return taken(studio.empty_window(SMALL_SIZE))


def form(studio: Studio) -> QImage:
    """Take the form as it opens over a course that was dropped."""
    window = studio.empty_window(SMALL_SIZE)
    window.deeds.open_any(resources.path("demo/course.gpx"))
    wait_for(lambda: bool(window.findChildren(PlanForm)))
    asked = window.findChildren(PlanForm)[0]
    race_day = studio.today + timedelta(weeks=20, days=(5 - studio.today.weekday()) % 7)
    asked.day.setDate(race_day)  # type: ignore[arg-type]
    asked.zone.setCurrentText("Europe/London")
    for label in asked.findChildren(QLabel):
        label.setText(label.text().replace(str(studio.home / "projects"), NEUTRAL_FOLDER))
    settle()
    image = asked.grab().toImage()
    asked.reject()
    window.close()
    return image


PICTURES: dict[str, Callable[[Studio], QImage]] = {
    "sheet": sheet,
    "sheet-dark": sheet_dark,
    "dragging": dragging,
    "tables": tables,
    "desk": desk,
    "cards": cards,
    "welcome": welcome,
    "form": form,
}


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


def pages_of(outlook: Outlook, settings: Settings) -> QImage:
    """Return the pages of every card beside each other on grey, all at one scale."""
    pages = card_pages(outlook, settings.words())
    gap, mm = 6.0, CARD_PX_PER_MM
    width = sum(page.width_mm + gap for page in pages) + gap
    height = max(page.height_mm for page in pages) + 2 * gap
    image = QImage(round(width * mm), round(height * mm), QImage.Format.Format_RGB32)
    image.fill(QColor("#d9d2c3"))
    painter = QPainter(image)
    x = gap
    for page in pages:
        painter.resetTransform()
        painter.translate(round(x * mm), round(gap * mm))
        painter.fillRect(0, 0, round(page.width_mm * mm), round(page.height_mm * mm), "white")
        paint_page(painter, page, mm)
        x += page.width_mm + gap
    painter.end()
    return image


# ---------------------------------------------------------------- small files


def shrunk(image: QImage) -> QImage:
    """Return *image* with the 256 colours it has most of: a third of the bytes, hardly seen."""
    rgb = image.convertToFormat(QImage.Format.Format_RGB32)
    pixels = np.frombuffer(rgb.constBits(), np.uint32).reshape(rgb.height(), -1) & 0xFFFFFF
    colours, counts = np.unique(pixels, return_counts=True)
    most = colours[np.argsort(-counts, kind="stable")]
    flags = Qt.ImageConversionFlag.AvoidDither | Qt.ImageConversionFlag.ThresholdDither
    table = [int(c) | 0xFF000000 for c in _spread(most)]
    return rgb.convertToFormat(QImage.Format.Format_Indexed8, table, flags)


def _spread(colours: np.ndarray) -> list[int]:
    """Return COLOURS of *colours*: the most frequent, then others unlike any that is taken."""
    channels = np.stack([(colours >> shift) & 0xFF for shift in (16, 8, 0)], axis=1).astype(int)
    for apart in (6, 10, 14, 20, 28, 255):
        chosen = list(range(min(FLAT_COLOURS, len(colours))))
        for number in range(len(chosen), len(colours)):
            if np.abs(channels[chosen] - channels[number]).max(axis=1).min() >= apart:
                chosen.append(number)
            if len(chosen) > COLOURS:
                break
        if len(chosen) <= COLOURS:
            return [int(colours[number]) for number in chosen]
    return []


def main() -> int:
    """Make the pictures named, or all; return 1 if one is too large for the repository."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("names", nargs="*", metavar="NAME", help=f"of {', '.join(PICTURES)}")
    parser.add_argument("--today", type=date.fromisoformat, default=date.today())
    parser.add_argument("--to", type=Path, default=FOLDER)
    options = parser.parse_args()
    unknown = set(options.names) - set(PICTURES)
    if unknown:
        parser.error(f"there is no picture {', '.join(sorted(unknown))}")
    options.to.mkdir(parents=True, exist_ok=True)
    too_large = False
    with tempfile.TemporaryDirectory(prefix="pictures-", ignore_cleanup_errors=True) as home:
        os.environ["ULTRAPLANNER_HOME"] = home
        QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedKingdom))
        app = QApplication(sys.argv[:1])
        app.setStyle("Fusion")
        register_fonts()
        studio = Studio(Path(home), options.today)
        for name in options.names or PICTURES:
            path = options.to / f"{name}.png"
            shrunk(PICTURES[name](studio)).save(str(path), "PNG", 0)
            size = path.stat().st_size
            too_large |= size > MOST_BYTES
            print(f"{path.name}: {size / 1000:.0f} kB{' TOO LARGE' if size > MOST_BYTES else ''}")
    return int(too_large)


if __name__ == "__main__":
    sys.exit(main())

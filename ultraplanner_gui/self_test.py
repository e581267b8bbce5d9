"""Whether an installation works: the demo opened, a block built, cards written, all thrown away."""

from __future__ import annotations

import os
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.options import speak_plainly

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

    from ultraplanner_gui.desk.document import Document
    from ultraplanner_gui.window.main_window import MainWindow

BUILD_LIMIT_MS = 120_000
FACTS = ("fonts/B612-Regular.otf", "foods.csv", "icons/ultraplanner.svg", "demo/course.gpx")


def self_test() -> int:
    """Go through the job in a folder that is thrown away; print a line for each part of it.

    Returns 0 if all of it works, else 2.
    """
    if sys.platform == "linux" and not any(map(os.environ.get, ("DISPLAY", "WAYLAND_DISPLAY"))):
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    with tempfile.TemporaryDirectory() as folder:
        os.environ["ULTRAPLANNER_HOME"] = folder
        return 0 if _goes_through(Path(folder)) else 2


def _goes_through(folder: Path) -> bool:
    from PySide6.QtWidgets import QApplication

    from ultraplanner_gui.desk.language import speak, write_as
    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.widgets.theme import theme
    from ultraplanner_gui.window.ask import Ask
    from ultraplanner_gui.window.main_window import MainWindow

    class Printing(Ask):
        """Prints what the window would say in a dialog."""

        def tell(self, title: str, sentence: str) -> None:
            print(f"{title}: {sentence}", flush=True)

    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setStyle("Fusion")
    settings = Settings(folder / "settings.ini")
    write_as(app, speak(app, settings.language))
    speak_plainly()
    theme().choose("light", 100)
    window = MainWindow(settings)
    window.ask = Printing(window)
    try:
        return all(
            (
                _step(tr("resources"), _has_resources),
                _step(tr("window"), lambda: _shows_demo(window, app)),
                _step(tr("block, in a process of its own"), lambda: _builds(window)),
                _step(tr("course, calendar, tables"), lambda: _hands_over(window, folder)),
                _step(tr("cards"), lambda: _writes_cards(window, folder / "cards.pdf")),
            )
        )
    finally:
        window.close()


def _step(name: str, work: Callable[[], str]) -> bool:
    begin = time.monotonic()
    try:
        found = work()
    except Exception as error:
        # A sentence of ours, or what nobody thought of as Python says it.
        why = str(error) if type(error) is RuntimeError else repr(error)
        _tell(tr("FAILED"), name, why)
        return False
    took = _number(time.monotonic() - begin)
    _tell(tr("ok"), name, tr("{0} ({1} s)").format(found, took))
    return True


def _tell(mark: str, name: str, found: str) -> None:
    """Print a line, padded so that the names stand below one another."""
    widest = max(len(tr("ok")), len(tr("FAILED")))
    print(f"{mark:<{widest + 2}}{name}: {found}", flush=True)


def _number(value: float) -> str:
    from PySide6.QtCore import QLocale

    return QLocale.system().toString(value, "f", 1)


def _has_resources() -> str:
    from zoneinfo import ZoneInfo

    from PySide6.QtCore import QLibraryInfo

    from ultraplanner_gui.desk import resources
    from ultraplanner_gui.desk.language import LANGUAGES
    from ultraplanner_gui.wording.locales import FALLBACK, known_locale

    files = [*FACTS, *(f"translations/ultraplanner_{language}.qm" for language in LANGUAGES)]
    for name in files:
        resources.path(name)
    qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
    lacking = [one for one in LANGUAGES if not (qt / f"qtbase_{one}.qm").exists()]
    if lacking:
        raise RuntimeError(tr("Qt has no words in {0}.").format(", ".join(lacking)))
    named = [ZoneInfo("Europe/London").key, str(known_locale("de_DE")), str(known_locale(FALLBACK))]
    return tr("{0} files, {1}").format(len(files), ", ".join(named))


def _shows_demo(window: MainWindow, app: QApplication) -> str:
    window.show()
    window.deeds.demo()
    app.processEvents()
    picture = window.grab()
    document = _document(window)
    if picture.isNull():
        raise RuntimeError(tr("The demo did not open."))
    return f"{app.platformName()}, {document.project.race.name}"


def _document(window: MainWindow) -> Document:
    if window.document is None:
        raise RuntimeError(tr("The demo did not open."))
    return window.document


def _builds(window: MainWindow) -> str:
    from PySide6.QtCore import QEventLoop, QTimer

    from ultraplanner_gui.engine.block_exact import ExactPlan

    document = _document(window)
    heard: list[object] = []
    loop = QEventLoop()

    def hear(_ticket: object, result: object) -> None:
        heard.append(result)
        if isinstance(result, ExactPlan):
            loop.quit()

    window.jobs.done.connect(hear)
    window.jobs.failed.connect(loop.quit)
    QTimer.singleShot(BUILD_LIMIT_MS, loop.quit)
    window.deeds.build_block()
    loop.exec()
    if not heard or not isinstance(heard[-1], ExactPlan):
        raise RuntimeError(tr("The search for a block ended without one."))
    sessions = len(document.project.block.sessions)
    searched = len(heard[-1].plan.block.sessions)
    return tr("{0} sessions, searched plan has {1}").format(sessions, searched)


def _hands_over(window: MainWindow, folder: Path) -> str:
    from ultraplanner_gui.desk.jobs import Token
    from ultraplanner_gui.window.export_deeds import calendar_job, gpx_job, tables_job, xlsx_job

    document, words = _document(window), window.settings.words()
    jobs = {
        "race.gpx": gpx_job,
        "sessions.ics": calendar_job,
        "tables.zip": tables_job,
        "tables.xlsx": xlsx_job,
    }
    for name, job in jobs.items():
        path = job(Token(lambda share: None), document.outlook, words, folder / name)
        if not path.stat().st_size:
            raise RuntimeError(tr("{0} is empty.").format(name))
    return ", ".join(jobs)


def _writes_cards(window: MainWindow, path: Path) -> str:
    from ultraplanner_gui.cards.pdf import write_cards

    write_cards(_document(window).outlook, window.settings.words(), path)
    raw = path.read_bytes()
    if not raw.startswith(b"%PDF") or not raw.rstrip().endswith(b"%%EOF"):
        raise RuntimeError(tr("The PDF is not whole."))
    pages = raw.count(b"/Type /Page") - raw.count(b"/Type /Pages")
    return tr("{0} pages").format(pages)

"""Whether an installation works: the demo opened, a block built, cards written, all thrown away."""

from __future__ import annotations

import os
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

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
    theme().choose("light", 100)
    window = MainWindow(settings)
    window.ask = Printing(window)
    try:
        return all(
            (
                _step("resources", _has_resources),
                _step("window", lambda: _shows_demo(window, app)),
                _step("block, in a process of its own", lambda: _builds(window)),
                _step("course, calendar, tables", lambda: _hands_over(window, folder)),
                _step("cards", lambda: _writes_cards(window, folder / "cards.pdf")),
            )
        )
    finally:
        window.close()


def _step(name: str, work: Callable[[], str]) -> bool:
    begin = time.monotonic()
    try:
        found = work()
    except Exception as error:
        print(f"FAILED  {name}: {error!r}", flush=True)
        return False
    print(f"ok      {name}: {found} ({time.monotonic() - begin:.1f} s)", flush=True)
    return True


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
        raise FileNotFoundError(f"Qt has no words in {', '.join(lacking)}")
    named = [ZoneInfo("Europe/London").key, str(known_locale("de_DE")), str(known_locale(FALLBACK))]
    return f"{len(files)} files, {', '.join(named)}"


def _shows_demo(window: MainWindow, app: QApplication) -> str:
    window.show()
    window.deeds.demo()
    app.processEvents()
    picture = window.grab()
    document = window.document
    if document is None or picture.isNull():
        raise RuntimeError("the demo did not open")
    return f"{app.platformName()}, {document.project.race.name}"


def _builds(window: MainWindow) -> str:
    from PySide6.QtCore import QEventLoop, QTimer

    from ultraplanner_gui.engine.block_exact import ExactPlan

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
    document = window.document
    if document is None or not heard or not isinstance(heard[-1], ExactPlan):
        raise RuntimeError("the search for a block ended without one")
    sessions = len(document.project.block.sessions)
    return f"{sessions} sessions, searched plan has {len(heard[-1].plan.block.sessions)}"


def _hands_over(window: MainWindow, folder: Path) -> str:
    from ultraplanner_gui.desk.jobs import Token
    from ultraplanner_gui.window.export_deeds import calendar_job, gpx_job, tables_job, xlsx_job

    document, words = window.document, window.settings.words()
    assert document is not None
    jobs = {
        "race.gpx": gpx_job,
        "sessions.ics": calendar_job,
        "tables.zip": tables_job,
        "tables.xlsx": xlsx_job,
    }
    for name, job in jobs.items():
        path = job(Token(lambda share: None), document.outlook, words, folder / name)
        if not path.stat().st_size:
            raise RuntimeError(f"{name} is empty")
    return ", ".join(jobs)


def _writes_cards(window: MainWindow, path: Path) -> str:
    from ultraplanner_gui.cards.pdf import write_cards

    document = window.document
    assert document is not None
    write_cards(document.outlook, window.settings.words(), path)
    raw = path.read_bytes()
    if not raw.startswith(b"%PDF") or not raw.rstrip().endswith(b"%%EOF"):
        raise RuntimeError("the PDF is not whole")
    return f"{raw.count(b'/Type /Page') - raw.count(b'/Type /Pages')} pages"

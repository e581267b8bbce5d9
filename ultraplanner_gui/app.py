"""Composition: arguments, application, document, window; cards without a window."""

from __future__ import annotations

import argparse
import gc
import os
import sys
from collections.abc import Sequence
from datetime import date
from functools import partial
from pathlib import Path

from ultraplanner_gui import __version__
from ultraplanner_gui.plan.message import PlanError

SETTLED_MS = 1000


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the program; return its exit code: 0, or 2 with one sentence on what is wrong."""
    options = _options(sys.argv[1:] if arguments is None else arguments)
    if options.cards is not None:
        return _write_cards(options.cards, options.file, options.demo)
    return _run_window(options.file, options.demo)


def _options(arguments: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(
        prog="ultraplanner-gui",
        description="Plan an ultramarathon: training block, section targets, fuel, cards.",
    )
    parser.add_argument(
        "file", nargs="?", type=Path, help="a project (.ultraplan) or a course (.gpx)"
    )
    parser.add_argument("--demo", action="store_true", help="open the demo project")
    parser.add_argument(
        "--cards", type=Path, metavar="OUT.pdf", help="write all cards without a window"
    )
    parser.add_argument("--version", action="version", version=f"Ultraplanner {__version__}")
    return parser.parse_args(arguments)


def _write_cards(target: Path, file: Path | None, demo: bool) -> int:
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    from ultraplanner_gui.cards.pdf import write_cards
    from ultraplanner_gui.desk.demo import demo_project
    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.engine.outlook import derive
    from ultraplanner_gui.store.project_file import read_project
    from ultraplanner_gui.widgets.theme import register_fonts

    if file is None and not demo:
        print("Name a project file (.ultraplan) to print, or --demo.", file=sys.stderr)
        return 2
    app = QGuiApplication.instance() or QGuiApplication(sys.argv[:1])
    words = Settings().words()
    try:
        register_fonts()
        project = demo_project(date.today()) if file is None else read_project(file)
        write_cards(derive(project), words, target)
    except PlanError as error:
        print(words.say(error.message), file=sys.stderr)
        return 2
    finally:
        del app
    return 0


def _run_window(file: Path | None, demo: bool) -> int:
    # Nothing that is made until the window stands is garbage; looking for some takes a tenth.
    gc.disable()
    # Nothing here is worth a thread of its linear algebra, and making them takes tens of ms.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    # Before Qt, which reads the source of every module that is imported after it.
    import ultraplanner_gui.edits.block
    import ultraplanner_gui.edits.fuel
    import ultraplanner_gui.edits.project
    import ultraplanner_gui.engine.outlook
    import ultraplanner_gui.store.project_file
    import ultraplanner_gui.wording.words  # noqa: F401

    # isort: split
    from PySide6.QtCore import QLocale, QTimer
    from PySide6.QtWidgets import QApplication

    import ultraplanner_gui.desk.crash as crash
    from ultraplanner_gui.desk.language import speak
    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.widgets.theme import theme
    from ultraplanner_gui.window.main_window import MainWindow

    QApplication.setApplicationName("Ultraplanner")
    QApplication.setApplicationVersion(__version__)
    QApplication.setDesktopFileName("ultraplanner")
    app = QApplication(sys.argv[:1])
    app.setStyle("Fusion")
    settings = Settings()
    speak(app, settings.language)
    QLocale.setDefault(QLocale(settings.words().locale))
    theme().choose(settings.theme, settings.text_percent)
    window = MainWindow(settings)
    crash.install(window.say)
    window.show()
    if demo:
        QTimer.singleShot(0, window.deeds.demo)
    elif file is not None:
        QTimer.singleShot(0, partial(window.deeds.open_any, file))
    QTimer.singleShot(SETTLED_MS, _collect_again)
    return app.exec()


def _collect_again() -> None:
    """Look for garbage from here on, though not in what stays as long as the program runs."""
    gc.freeze()
    gc.enable()

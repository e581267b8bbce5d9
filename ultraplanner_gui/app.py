"""Composition: arguments, application, document, window; cards without a window."""

from __future__ import annotations

import argparse
import builtins
import gc
import os
import sys
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from ultraplanner_gui import __version__

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.window.first_sight import FirstSight
    from ultraplanner_gui.window.main_window import MainWindow

SETTLED_MS = 1000


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the program; return its exit code: 0, or 2 with one sentence on what is wrong."""
    options = _options(sys.argv[1:] if arguments is None else arguments)
    if options.self_test:
        from ultraplanner_gui.self_test import self_test

        return self_test()
    if options.cards is None and options.restore is None and not options.dump:
        run = _run_thrown_away if options.throw_away else _run_window
        return run(options.file, options.demo, options.translation)
    from ultraplanner_gui import commands

    if options.dump:
        return commands.dump(options.file)
    if options.restore is not None:
        return commands.restore(options.restore, options.file)
    return commands.cards(options.cards, options.file, options.demo)


def _options(arguments: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(
        prog="ultraplanner-gui",
        description="Plan an ultramarathon: training block, section targets, fuel, cards.",
        epilog="Without an option the window opens, with FILE in it if one is named.",
    )
    parser.add_argument(
        "file",
        nargs="?",
        type=Path,
        metavar="FILE",
        help="a project (.ultraplan) or a course (.gpx); with --cards also a folder of projects",
    )
    deeds = parser.add_mutually_exclusive_group()
    parser.add_argument("--demo", action="store_true", help="take the demo project")
    deeds.add_argument(
        "--cards",
        type=Path,
        metavar="OUT",
        help="write all cards of FILE to the PDF OUT, without a window; "
        "if FILE is a folder, a PDF of each project in it into the folder OUT",
    )
    deeds.add_argument(
        "--dump", action="store_true", help="print the project FILE as lines of JSON"
    )
    deeds.add_argument(
        "--restore",
        type=Path,
        metavar="LINES",
        help="make the new project FILE out of the lines of JSON in LINES (- for standard input)",
    )
    deeds.add_argument(
        "--self-test",
        action="store_true",
        help="see whether this installation works, in a folder that is thrown away",
    )
    parser.add_argument(
        "--throw-away",
        action="store_true",
        help="keep settings and new projects in a folder that is gone when the window closes",
    )
    parser.add_argument(
        "--translation",
        type=Path,
        metavar="QM",
        help="speak the language of the compiled translation QM, for trying one",
    )
    parser.add_argument("--version", action="version", version=f"Ultraplanner {__version__}")
    return parser.parse_args(arguments)


def _run_thrown_away(file: Path | None, demo: bool, translation: Path | None) -> int:
    """Run the window with a profile of its own, for trying things."""
    import tempfile

    with tempfile.TemporaryDirectory(prefix="ultraplanner-") as home:
        os.environ["ULTRAPLANNER_HOME"] = home
        return _run_window(file, demo, translation)


def _run_window(file: Path | None, demo: bool, translation: Path | None) -> int:
    # Nothing that is made until the window stands is garbage; looking for some takes a tenth.
    gc.disable()
    # Nothing here is worth a thread of its linear algebra, and making them takes tens of ms.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    plain_import = builtins.__import__
    from PySide6.QtCore import QLocale, QTimer
    from PySide6.QtWidgets import QApplication

    # Qt's own one reads the source of every module, in search of features we do not use.
    builtins.__import__ = plain_import

    import ultraplanner_gui.desk.crash as crash
    from ultraplanner_gui.desk.language import plain_figures, speak, speak_from, write_as
    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.widgets.theme import theme
    from ultraplanner_gui.window.main_window import MainWindow

    QApplication.setApplicationName("Ultraplanner")
    QApplication.setApplicationVersion(__version__)
    QApplication.setDesktopFileName("org.ultraplanner.Ultraplanner")
    app = QApplication(sys.argv[:1])
    app.setStyle("Fusion")
    settings = Settings()
    language = speak(app, settings.language)
    if translation is not None:
        language = speak_from(app, translation) or language
    write_as(app, language)
    QLocale.setDefault(plain_figures(QLocale(settings.words().locale)))
    theme().choose(settings.theme, settings.text_percent)
    project = _project_to_open(settings, file, demo)
    sight = _first_sight(settings, project) if project is not None else None
    window = MainWindow(settings, sight=sight)
    crash.install(window.say)
    if sight is None:
        QTimer.singleShot(0, partial(_open, window, file, demo))
    else:
        fill = partial(_fill, window, file, demo)
        # Once it is painted, and not in the midst of that; a window that starts hidden never is.
        sight.seen.connect(partial(QTimer.singleShot, 0, fill))
        QTimer.singleShot(SETTLED_MS, fill)
    window.show()
    QTimer.singleShot(0, partial(_give_icon, app))
    QTimer.singleShot(SETTLED_MS, _collect_again)
    if sys.platform == "darwin":
        from ultraplanner_gui.window.handed_over import HandedOver

        app.installEventFilter(HandedOver(partial(_open_handed_over, window), app))
    return app.exec()


def _project_to_open(settings: Settings, file: Path | None, demo: bool) -> Path | None:
    """Return the project that the window will open at once, None if it opens none."""
    if demo:
        from datetime import date

        from ultraplanner_gui.desk.demo_file import demo_path

        return demo_path(date.today())
    if file is not None:
        return file if file.suffix.lower() == ".ultraplan" else None
    return Path(settings.sitting[0]) if settings.sitting else None


def _first_sight(settings: Settings, project: Path) -> FirstSight:
    from ultraplanner_gui.store.glance import glance
    from ultraplanner_gui.window.first_sight import FirstSight

    return FirstSight(settings, glance(project))


def _fill(window: MainWindow, file: Path | None, demo: bool) -> None:
    """Put everything into *window*, open what it was started for, let held keys act; once."""
    if not window.is_furnished:
        window.furnish()
        _open(window, file, demo)
        window.hand_on_keys()


def _open(window: MainWindow, file: Path | None, demo: bool) -> None:
    if demo:
        window.deeds.demo()
    elif file is not None:
        window.deeds.open_any(file)
    else:
        window.deeds.go_on()


def _open_handed_over(window: MainWindow, file: Path) -> None:
    window.furnish()
    window.deeds.open_any(file)


def _give_icon(app: QApplication) -> None:
    """Give every window its icon, once the first one stands: drawing it takes some ms."""
    from PySide6.QtGui import QIcon

    from ultraplanner_gui.desk import resources

    app.setWindowIcon(QIcon(str(resources.path("icons/ultraplanner.svg"))))


def _collect_again() -> None:
    """Look for garbage from here on, though not in what stays as long as the program runs."""
    gc.freeze()
    gc.enable()

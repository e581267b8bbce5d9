"""Composition: arguments, application, document, window; cards without a window."""

from __future__ import annotations

import builtins
import gc
import os
import sys
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from ultraplanner_gui import __version__
from ultraplanner_gui.options import options_of

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.window.first_sight import FirstSight
    from ultraplanner_gui.window.main_window import MainWindow

SETTLED_MS = 1000


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the program; return its exit code: 0, or 2 with one sentence on what is wrong."""
    options = options_of(sys.argv[1:] if arguments is None else arguments)
    if options.self_test:
        from ultraplanner_gui.self_test import self_test

        return self_test()
    if options.cards is None and options.restore is None and not options.dump:
        run = _run_thrown_away if options.throw_away else _run_window
        return run(options.file, options.demo, options.translation)
    from ultraplanner_gui import commands

    if options.cards is not None:
        return commands.cards(options.cards, options.file, options.demo)
    if options.restore is not None:
        return commands.restore(options.restore, options.file)
    return commands.dump(options.file)


def _run_thrown_away(file: Path | None, demo: bool, translation: Path | None) -> int:
    """Run the window with a profile of its own, for trying things."""
    from ultraplanner_gui.desk.further_windows import thrown_away

    with thrown_away():
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
        from ultraplanner_gui.desk.further_windows import hand_on

        language = speak_from(app, translation) or language
        hand_on("--translation", str(translation.absolute()))
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
    return Path(settings.sitting[0]) if settings.sitting and not _is_beside_another() else None


def _is_beside_another() -> bool:
    """Whether this window was opened from another one, which has what was open last."""
    return bool(os.environ.get("ULTRAPLANNER_BESIDE"))


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
    elif not _is_beside_another():
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

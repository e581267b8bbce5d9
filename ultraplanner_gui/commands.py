"""What the program does without a window: cards, lines of JSON, a test of the installation."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from ultraplanner_gui.options import speak_plainly
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, StoreError

if TYPE_CHECKING:
    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.plan.project import Project
    from ultraplanner_gui.wording.words import Words

SUFFIX = ".ultraplan"
DONE, FAULTY = 0, 2
_STANDARD_INPUT = QT_TRANSLATE_NOOP("Store", "standard input")


def cards(target: Path, source: Path | None, demo: bool) -> int:
    """Write the cards of one project to a PDF, or of each project of a folder to one of its own."""
    with _spoken() as settings:
        words = settings.words()
        if source is None and not demo:
            return _refused(words, _nothing_named())
        if source is not None and source.is_dir():
            return _cards_of_folder(words, source, target)
        return _told(words, lambda: _write_cards(words, _project(source), target))


def dump(source: Path | None) -> int:
    """Write the project *source* to standard output as lines of JSON."""
    from ultraplanner_gui.store.json_lines import dump

    with _spoken() as settings:
        words = settings.words()
        if source is None:
            return _refused(words, _nothing_named())
        return _told(words, lambda: _print(dump(source)))


def restore(source: Path, target: Path | None) -> int:
    """Make the project *target* out of lines of JSON in *source*, or standard input for "-"."""
    from ultraplanner_gui.store.json_lines import lines_of, restore

    def read(into: Path, words: Words) -> None:
        if str(source) == "-":
            restore(lines_of(sys.stdin.buffer), words.translate(_STANDARD_INPUT), into)
            return
        try:
            with source.open("rb") as file:
                restore(lines_of(file), source.name, into)
        except OSError as error:
            raise StoreError(
                QT_TRANSLATE_NOOP("Store", "{0} could not be read. Check that you may open it."),
                source.name,
            ) from error

    with _spoken() as settings:
        words = settings.words()
        if target is None:
            return _refused(words, _nothing_named())
        return _told(words, lambda: read(target, words))


def _print(lines: Iterable[bytes]) -> None:
    sys.stdout.buffer.writelines(lines)
    sys.stdout.buffer.flush()


def _cards_of_folder(words: Words, source: Path, target: Path) -> int:
    """Write a PDF for each project in *source* into the folder *target*, a line for each."""
    from ultraplanner_gui.store.migrations import is_laid_aside

    found = (one for one in source.iterdir() if one.suffix.lower() == SUFFIX)
    projects = sorted(one for one in found if not is_laid_aside(one))
    if not projects:
        return _refused(
            words,
            StoreError(
                QT_TRANSLATE_NOOP("Store", "There is no project (.ultraplan) in {0}."), source.name
            ),
        )
    try:
        target.mkdir(parents=True, exist_ok=True)
    except OSError:
        return _refused(
            words,
            StoreError(
                QT_TRANSLATE_NOOP("Store", "{0} is no folder to write into. Name another one."),
                target.name,
            ),
        )
    failed = 0
    for project in projects:
        pdf = target / f"{project.stem}.pdf"
        try:
            _write_cards(words, _project(project), pdf)
        except PlanError as error:
            failed += 1
            print(f"{project.name}: {words.say(error.message)}", flush=True)
        else:
            print(f"{project.name}: {pdf.name}", flush=True)
    return FAULTY if failed else DONE


def _write_cards(words: Words, project: Project, target: Path) -> None:
    from ultraplanner_gui.cards.pdf import write_cards
    from ultraplanner_gui.engine.outlook import derive

    write_cards(derive(project), words, target)


def _project(source: Path | None) -> Project:
    """Return the project in the file *source*, which is only read; or the demo."""
    from ultraplanner_gui.store.project_file import ProjectFile, read_project
    from ultraplanner_gui.store.troubles import Damaged

    if source is None:
        from ultraplanner_gui.desk.demo import demo_project

        return demo_project(date.today())
    try:
        with ProjectFile.look(source) as file:
            return file.project
    except Damaged:
        return read_project(source)  # what a crash left half written is rolled back first


@contextmanager
def _spoken() -> Iterator[Settings]:
    """Give the settings, with fonts and language in place, while there is an application."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    from ultraplanner_gui.desk.language import speak, write_as
    from ultraplanner_gui.desk.settings import Settings
    from ultraplanner_gui.widgets.theme import register_fonts

    app = QGuiApplication.instance() or QGuiApplication(sys.argv[:1])
    assert isinstance(app, QGuiApplication)
    settings = Settings()
    write_as(app, speak(app, settings.language))
    register_fonts()
    speak_plainly()
    yield settings


def _told(words: Words, work: Callable[[], object]) -> int:
    """Do *work*; say in one sentence why not, if it cannot be done."""
    try:
        work()
    except BrokenPipeError:
        # Whoever was reading has seen enough; Python would say so once more at its end.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return FAULTY
    except PlanError as error:
        return _refused(words, error)
    return DONE


def _refused(words: Words, error: PlanError) -> int:
    print(words.say(error.message), file=sys.stderr)
    return FAULTY


def _nothing_named() -> StoreError:
    return StoreError(QT_TRANSLATE_NOOP("Store", "Name a project file (.ultraplan), or --demo."))

"""What can be written behind the name of the program, told in the language of the window."""

from __future__ import annotations

import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

from ultraplanner_gui import __version__
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value

if TYPE_CHECKING:
    import argparse

Say = Callable[[str], str]

CONTEXT = "Command line"
# What `argparse` says by itself, marked here so that it is translated.
OF_ARGPARSE = (
    QT_TRANSLATE_NOOP("Command line", "usage: "),
    QT_TRANSLATE_NOOP("Command line", "positional arguments"),
    QT_TRANSLATE_NOOP("Command line", "options"),
    QT_TRANSLATE_NOOP("Command line", "show this help message and exit"),
    QT_TRANSLATE_NOOP("Command line", "%(prog)s: error: %(message)s\n"),
    QT_TRANSLATE_NOOP("Command line", "argument %(argument_name)s: %(message)s"),
    QT_TRANSLATE_NOOP("Command line", "unrecognized arguments: %s"),
    QT_TRANSLATE_NOOP("Command line", "expected one argument"),
    QT_TRANSLATE_NOOP("Command line", "not allowed with argument %s"),
    QT_TRANSLATE_NOOP("Command line", "ignored explicit argument %r"),
    QT_TRANSLATE_NOOP("Command line", "ambiguous option: %(option)s could match %(matches)s"),
)


class Options(Value, frozen=True):
    """What the arguments ask for, as the man page has it."""

    file: Path | None = None
    demo: bool = False
    cards: Path | None = None
    dump: bool = False
    restore: Path | None = None
    self_test: bool = False
    throw_away: bool = False
    translation: Path | None = None


def options_of(arguments: Sequence[str]) -> Options:
    """Return what *arguments* ask for; print help or what is wrong with them, and exit."""
    return _usual(arguments) or parsed(arguments)


def _usual(arguments: Sequence[str]) -> Options | None:
    """Return what the usual arguments of a window ask for, None if there are others.

    The parser and what it imports take as long as a third of all that comes before Qt.
    """
    files = [one for one in arguments if not one.startswith("-")]
    flags = set(arguments) - set(files)
    if len(files) > 1 or flags - {"--demo", "--throw-away"} or "" in files:
        return None
    file = Path(files[0]) if files else None
    return Options(file, demo="--demo" in flags, throw_away="--throw-away" in flags)


def parsed(arguments: Sequence[str]) -> Options:
    """Return what *arguments* ask for, whichever they are; as `options_of`.

    Nothing is translated, and no Qt looked for, until there is something to say.
    """
    import argparse

    try:
        return Options(**vars(_parser(_as_written, _silent()).parse_args(arguments)))
    except _HasToSpeak:
        speak_plainly()
        say = sayer()
        # What it calls by that name looks a text up in the catalogue of the language.
        vars(argparse)["_"] = say
        return Options(**vars(_parser(say, argparse.ArgumentParser).parse_args(arguments)))


def sayer() -> Say:
    """Return what gives a text of the command line in the user's language.

    It needs no application, and where Qt cannot start, which is when one asks for help, it
    speaks English.
    """
    try:
        from PySide6.QtCore import QTranslator

        from ultraplanner_gui.desk import places, resources
        from ultraplanner_gui.desk.language import SYSTEM, spoken
        from ultraplanner_gui.desk.settings import Settings
    except ImportError:
        return _as_written
    kept = places.settings_path()
    language = spoken(Settings(kept).language if kept.exists() else SYSTEM)
    translator = QTranslator()
    if not translator.load(str(resources.path(f"translations/ultraplanner_{language}.qm"))):
        return _as_written
    return lambda text: translator.translate(CONTEXT, text) or text


def speak_plainly() -> None:
    """Have signs that the terminal does not know printed as "?", rather than end by a fault."""
    if sys.stdout is not None and hasattr(sys.stdout, "reconfigure"):
        sys.stdout.reconfigure(errors="replace")


class _HasToSpeak(Exception):
    """There is something to print: help, or what is wrong."""


def _silent() -> type[argparse.ArgumentParser]:
    """Return a parser that leaves it to another one to say anything."""
    from argparse import ArgumentParser

    class Silent(ArgumentParser):
        def error(self, message: str) -> NoReturn:
            raise _HasToSpeak

        def print_help(self, file: object = None) -> None:
            raise _HasToSpeak

    return Silent


def _as_written(text: str) -> str:
    return text


def _parser(say: Say, kind: type[argparse.ArgumentParser]) -> argparse.ArgumentParser:
    parser = kind(
        prog="ultraplanner-gui",
        description=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "Plan an ultramarathon: training block, section targets, fuel, cards.",
            )
        ),
        epilog=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "Without an option the window opens, with FILE in it if one is named.",
            )
        ),
    )
    parser.add_argument(
        "file",
        nargs="?",
        type=Path,
        metavar=say(QT_TRANSLATE_NOOP("Command line", "FILE")),
        help=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "a project (.ultraplan) or a course (.gpx); with --cards also a folder of projects",
            )
        ),
    )
    parser.add_argument(
        "--demo",
        action="store_true",
        help=say(QT_TRANSLATE_NOOP("Command line", "take the demo project")),
    )
    _add_deeds(parser.add_mutually_exclusive_group(), say)
    _add_manners(parser, say)
    return parser


def _add_manners(parser: argparse.ArgumentParser, say: Say) -> None:
    """Add how the window is to be, and what answers at once."""
    parser.add_argument(
        "--throw-away",
        action="store_true",
        help=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "keep settings and new projects in a folder that is gone when its last window"
                " closes",
            )
        ),
    )
    parser.add_argument(
        "--translation",
        type=Path,
        metavar="QM",
        help=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "speak the language of the compiled translation QM, for trying one",
            )
        ),
    )
    parser.add_argument(
        "--version",
        action="version",
        version=f"Ultraplanner {__version__}",
        help=say(QT_TRANSLATE_NOOP("Command line", "show the version and exit")),
    )


def _add_deeds(deeds: argparse._MutuallyExclusiveGroup, say: Say) -> None:
    """Add what is done without a window, one thing at a time."""
    deeds.add_argument(
        "--cards",
        type=Path,
        metavar=say(QT_TRANSLATE_NOOP("Command line", "OUT")),
        help=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "write all cards of FILE to the PDF OUT, without a window; if FILE is a folder, a"
                " PDF of each project in it into the folder OUT",
            )
        ),
    )
    deeds.add_argument(
        "--dump",
        action="store_true",
        help=say(QT_TRANSLATE_NOOP("Command line", "print the project FILE as lines of JSON")),
    )
    deeds.add_argument(
        "--restore",
        type=Path,
        metavar=say(QT_TRANSLATE_NOOP("Command line", "LINES")),
        help=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "make the new project FILE out of the lines of JSON in LINES (- for standard"
                " input)",
            )
        ),
    )
    deeds.add_argument(
        "--self-test",
        action="store_true",
        help=say(
            QT_TRANSLATE_NOOP(
                "Command line",
                "see whether this installation works, in a folder that is thrown away",
            )
        ),
    )

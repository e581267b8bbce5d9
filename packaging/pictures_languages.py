"""The states of the window in other languages: German, and two made up to find what they break."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import lru_cache
from pathlib import Path

import translate
from pictures_studio import Studio
from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator
from PySide6.QtGui import QGuiApplication, QImage

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.language import translated, write_as

Take = Callable[[Studio], QImage]

#: How numbers are written beside each language; a made-up one keeps those of English.
LOCALES = {"de": "de_DE", "long": "en_GB", "leftward": "en_GB"}


@contextmanager
def spoken(language: str, folder: Path) -> Iterator[None]:
    """Have the program speak *language*: one of its own, or one that `translate` makes up."""
    app = QCoreApplication.instance()
    assert isinstance(app, QGuiApplication)
    speakers = [QTranslator() for _ in _files(language, folder)]
    for speaker, file in zip(speakers, _files(language, folder), strict=True):
        if not speaker.load(str(file)):
            raise FileNotFoundError(file)
        app.installTranslator(speaker)
    translated.cache_clear()
    write_as(app, speakers[0].language())
    try:
        yield
    finally:
        for speaker in speakers:
            app.removeTranslator(speaker)
        translated.cache_clear()
        write_as(app, "en")


def in_language(language: str, state: Take) -> Take:
    """Return what takes *state* in another language."""

    def take(studio: Studio) -> QImage:
        usual, studio.settings.locale = studio.settings.locale, LOCALES[language]
        QLocale.setDefault(QLocale(LOCALES[language]))
        try:
            with spoken(language, studio.home):
                return state(studio)
        finally:
            studio.settings.locale = usual
            QLocale.setDefault(QLocale(usual))

    return take


def states_of(
    states: dict[str, Take], languages: tuple[str, ...] = tuple(LOCALES)
) -> dict[str, Take]:
    """Return *states* in *languages*, each named after both."""
    return {
        f"{language}-{name}": in_language(language, state)
        for language in languages
        for name, state in states.items()
    }


@lru_cache(maxsize=8)
def _files(language: str, folder: Path) -> tuple[Path, ...]:
    if language in translate.PSEUDO:
        return (translate.pseudo(folder, language),)
    qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
    return (
        resources.path(f"translations/ultraplanner_{language}.qm"),
        qt / f"qtbase_{language}.qm",
    )

"""The language of the program: which there are, and sentences from below Qt in it."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, Qt, QTranslator
from PySide6.QtGui import QGuiApplication

from ultraplanner_gui.desk import resources
from ultraplanner_gui.wording.locales import separators

SYSTEM = "system"
#: What the texts in the code are, and what they are translated to, each by its own name.
ENGLISH = "en"
LANGUAGES = {ENGLISH: "English", "de": "Deutsch"}

CONTEXTS = (
    "Plan",
    "Handbook",
    "Edit",
    "Course",
    "Profile",
    "Runway",
    "Block",
    "Mend",
    "Session",
    "Week",
    "StandIn",
    "Candidates",
    "Checks",
    "Fuel",
    "Food table",
    "Kinds",
    "Head",
    "Course words",
    "Repair",
    "Tables",
    "Caution",
    "Cards",
    "Help",
    "Store",
    "Export",
    "Jobs",
    "Crash",
    "Command line",
)
"""Where sentences are marked that travel in a `Message`, which does not say its own context."""


def tr(text: str) -> str:
    """Return the literal *text* in the user's language, outside a class.

    The name is the one texts are collected by; in a class it is `self.tr`.
    """
    return QCoreApplication.translate("", text)


@lru_cache(maxsize=4096)
def translated(text: str) -> str:
    """Return *text* in the user's language, itself where no translation is known."""
    for context in CONTEXTS:
        found = QCoreApplication.translate(context, text)
        if found != text:
            return found
    return text


def spoken(wish: str) -> str:
    """Return the language, of `LANGUAGES`, for *wish*: one of them, or that of the system."""
    if wish in LANGUAGES:
        return wish
    wanted = (name.partition("-")[0] for name in QLocale.system().uiLanguages())
    return next((name for name in wanted if name in LANGUAGES), ENGLISH)


def speak(app: QCoreApplication, wish: str) -> str:
    """Give *app* the language of *wish* and return which that is; before any text is made."""
    language = spoken(wish)
    speak_from(app, resources.path(f"translations/ultraplanner_{language}.qm"))
    if language != ENGLISH:
        qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        speak_from(app, qt / f"qtbase_{language}.qm")
    return language


def speak_from(app: QCoreApplication, file: Path) -> str:
    """Add the translation in *file* to those of *app* and return its language; "" if it is none."""
    translator = QTranslator(app)
    if not translator.load(str(file)):
        return ""
    app.installTranslator(translator)
    translated.cache_clear()
    return translator.language() or ENGLISH


def write_as(app: QGuiApplication, language: str) -> None:
    """Lay every window of *app* out the way *language* is written."""
    right_to_left = Qt.LayoutDirection.RightToLeft
    usual = Qt.LayoutDirection.LeftToRight
    app.setLayoutDirection(right_to_left if reads_leftward(language) else usual)


def writes_leftward() -> bool:
    """Whether what the program says now is written from right to left; see `write_as`."""
    return QGuiApplication.layoutDirection() is Qt.LayoutDirection.RightToLeft


def plain_figures(locale: QLocale) -> QLocale:
    """Return *locale*, or one of its language that writes 0 to 9 as everything else here does.

    Qt would show other figures in its fields than `Words` does beside them.
    """
    if locale.zeroDigit() == "0":
        return locale
    every = QLocale.matchingLocales(locale.language(), locale.script(), QLocale.Country.AnyCountry)
    decimal = separators(locale.name()).decimal
    alike = (o for o in every if (o.zeroDigit(), o.decimalPoint()) == ("0", decimal))
    return next(alike, QLocale("en_GB"))


def reads_leftward(language: str) -> bool:
    """Whether *language* is written from right to left."""
    return QLocale(language).textDirection() is Qt.LayoutDirection.RightToLeft

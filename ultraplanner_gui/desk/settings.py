"""What the user has chosen for the program, not for one project; each setting declared once."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Generic, Literal, TypeGuard, TypeVar, overload

from PySide6.QtCore import QByteArray, QLocale, QSettings

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.language import LANGUAGES, SYSTEM, spoken, translated, writes_leftward
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import Words

T = TypeVar("T")

ThemeWish = Literal["system", "light", "dark"]

RECENT_FILES = 10
_AS_SYSTEM = QT_TRANSLATE_NOOP("Settings", "As the system has it")


class Setting(Value, Generic[T], frozen=True, dict=True):
    """One setting, an attribute of `Settings`: its key, its default and a sentence on it.

    What stands in the file and is not one of *among*, not between *low* and *high* or not of
    the default's type counts as the default. One that the user is asked for has a *name*, and
    *names* for what it is chosen among; the others are only remembered.
    """

    key: str
    default: T
    sentence: str
    among: Sequence[T] = ()
    low: int = 0
    high: int = 0
    name: str = ""
    names: Sequence[str] = ()
    unit: str = ""

    @overload
    def __get__(self, settings: None, owner: type) -> Setting[T]: ...
    @overload
    def __get__(self, settings: Settings, owner: type) -> T: ...
    def __get__(self, settings: Settings | None, owner: type) -> T | Setting[T]:
        if settings is None:
            return self
        value: object = _READERS[type(self.default)](settings.store, self.key, self.default)
        return value if self.allows(value) else self.default

    def __set__(self, settings: Settings, value: T) -> None:
        if not self.allows(value):
            raise ValueError(f"{self.key} cannot be {value!r}")
        settings.store.setValue(self.key, _written(value))
        settings.store.sync()
        settings.forget_words()

    def allows(self, value: object) -> TypeGuard[T]:
        """Whether *value* may be set."""
        if type(value) is not type(self.default):
            return False
        if self.high and isinstance(value, int):
            return self.low <= value <= self.high
        return not self.among or value in self.among


class Settings:
    """Every setting, read from and written to one file at once."""

    language = Setting(
        "language",
        SYSTEM,
        QT_TRANSLATE_NOOP("Settings", "What the program speaks; from its next start on"),
        (SYSTEM, *LANGUAGES),
        name=QT_TRANSLATE_NOOP("Settings", "Language"),
        names=(_AS_SYSTEM, *LANGUAGES.values()),
    )
    locale = Setting(
        "locale",
        SYSTEM,
        QT_TRANSLATE_NOOP("Settings", "How numbers and days are written, and when weeks begin"),
        name=QT_TRANSLATE_NOOP("Settings", "Numbers and days"),
    )
    units = Setting(
        "units",
        SYSTEM,
        QT_TRANSLATE_NOOP("Settings", "For distances, heights and paces everywhere"),
        (SYSTEM, "metric", "imperial"),
        name=QT_TRANSLATE_NOOP("Settings", "Units"),
        names=(
            _AS_SYSTEM,
            QT_TRANSLATE_NOOP("Settings", "Kilometres and metres"),
            QT_TRANSLATE_NOOP("Settings", "Miles and feet"),
        ),
    )
    theme: Setting[ThemeWish] = Setting(
        "theme",
        "system",
        QT_TRANSLATE_NOOP("Settings", "Light or dark paper"),
        ("system", "light", "dark"),
        name=QT_TRANSLATE_NOOP("Settings", "Colours"),
        names=(
            _AS_SYSTEM,
            QT_TRANSLATE_NOOP("Settings", "Light"),
            QT_TRANSLATE_NOOP("Settings", "Dark"),
        ),
    )
    text_percent = Setting(
        "text_percent",
        100,
        QT_TRANSLATE_NOOP("Settings", "Of all text in the window; cards have their own"),
        low=80,
        high=200,
        name=QT_TRANSLATE_NOOP("Settings", "Size of text"),
        unit=" %",
    )
    motion = Setting(
        "motion",
        True,
        QT_TRANSLATE_NOOP(
            "Settings",
            "A moved session settles, changed figures are marked for a moment; not where your "
            "system asks to keep still",
        ),
        name=QT_TRANSLATE_NOOP("Settings", "Motion"),
    )
    race_axis: Setting[Literal["distance", "clock"]] = Setting(
        "race_axis",
        "distance",
        QT_TRANSLATE_NOOP("Settings", "What race day runs along"),
        ("distance", "clock"),
        name=QT_TRANSLATE_NOOP("Settings", "Axis of race day"),
        names=(
            QT_TRANSLATE_NOOP("Settings", "Distance"),
            QT_TRANSLATE_NOOP("Settings", "Clock"),
        ),
    )
    plan_view = Setting(
        "plan_view",
        False,
        QT_TRANSLATE_NOOP("Settings", "Race day shows the course from above"),
        name=QT_TRANSLATE_NOOP("Settings", "Course from above"),
    )
    card_paper = Setting(
        "cards/paper",
        "card",
        QT_TRANSLATE_NOOP("Settings", "Each card on a page of its own, or several on a sheet"),
        ("card", "A4", "A3", "Letter"),
        name=QT_TRANSLATE_NOOP("Settings", "Paper for cards"),
        names=(QT_TRANSLATE_NOOP("Settings", "As large as the card"), "A4", "A3", "Letter"),
    )
    card_both_sides = Setting(
        "cards/both_sides",
        False,
        QT_TRANSLATE_NOOP("Settings", "Cards have a back, where they are longer than a page"),
        name=QT_TRANSLATE_NOOP("Settings", "Cards on both sides"),
    )
    card_light: Setting[Literal["day", "grey", "red"]] = Setting(
        "cards/light", "day", "The light cards are shown in", ("day", "grey", "red")
    )
    card_screens = Setting[tuple[str, ...]](
        "cards/screens", (), "Pixels to a millimetre of each screen that was measured"
    )
    last_folder = Setting("last_folder", "", "The folder a file was last taken from")
    template_folder = Setting("template_folder", "", "The folder a template was last in")
    recent_names = Setting[tuple[str, ...]]("recent_files", (), "The projects opened last")
    window_geometry = Setting("window/geometry", b"", "Where the window stood")
    sitting = Setting[tuple[str, ...]](
        "window/sitting", (), "What is open, so that the next start goes on there after a fault"
    )
    window_state = Setting("window/state", b"", "How its bars lay")
    buildup_lanes = Setting[tuple[str, ...]](
        "lanes/buildup", (), "Which lanes of the build-up are shown, in what order, how high"
    )
    raceday_lanes = Setting[tuple[str, ...]](
        "lanes/raceday", (), "Which lanes of race day are shown, in what order, how high"
    )
    open_storey = Setting(
        "window/open_storey",
        "buildup",
        "Which storey is open where the window is low",
        ("buildup", "raceday"),
    )
    storey_split = Setting("window/storeys", b"", "How the storeys shared the window")

    def __init__(self, path: Path | None = None) -> None:
        file = path or places.settings_file()
        self.store = QSettings(str(file), QSettings.Format.IniFormat)
        self._words: Words | None = None

    def words(self) -> Words:
        """Return how numbers read in the units and language chosen.

        The same until a setting changes: views ask for it many times a drag.
        """
        leftward = writes_leftward()
        if self._words is None or self._words.leftward != leftward:
            units: Literal["metric", "imperial"] = "imperial" if self.is_imperial() else "metric"
            self._words = Words(units, self._locale(), translated, leftward)
        return self._words

    def forget_words(self) -> None:
        """Make `words` anew at the next call."""
        self._words = None

    def is_imperial(self) -> bool:
        """Whether distances are shown in miles."""
        if self.units == SYSTEM:
            return QLocale().measurementSystem() is QLocale.MeasurementSystem.ImperialUSSystem
        return self.units == "imperial"

    def first_weekday(self) -> int:
        """Return the first day of the week to propose for a new project, Monday 0."""
        return QLocale(self._locale()).firstDayOfWeek().value - 1

    @property
    def recent_files(self) -> tuple[Path, ...]:
        """The projects opened last, the newest first."""
        return tuple(Path(name) for name in self.recent_names)

    def remember_file(self, path: Path) -> None:
        """Put *path* first among the recent files."""
        older = [name for name in self.recent_names if name != str(path)]
        self.recent_names = (str(path), *older)[:RECENT_FILES]
        if path.parent != places.data():  # where the demo lies, and nothing of the user's own
            self.last_folder = str(path.parent)

    def _locale(self) -> str:
        if self.locale != SYSTEM:
            return self.locale
        name = QLocale().name()
        if self.language != SYSTEM and spoken(self.language) != name.partition("_")[0]:
            return QLocale(self.language).name()
        return "en_GB" if name == "C" else name


def _text(store: QSettings, key: str, default: str) -> str:
    return str(store.value(key, default, type=str))


def _number(store: QSettings, key: str, default: int) -> int:
    value = store.value(key, default, type=int)
    return value if isinstance(value, int) else default


def _flag(store: QSettings, key: str, default: bool) -> bool:
    # without type= the next run would read the text "false", which is true (pitfall 19)
    return bool(store.value(key, default, type=bool))


def _raw(store: QSettings, key: str, default: bytes) -> bytes:
    value = store.value(key, QByteArray(default), type=QByteArray)
    return bytes(value.data()) if isinstance(value, QByteArray) else default


def _names(store: QSettings, key: str, default: tuple[str, ...]) -> tuple[str, ...]:
    # a list of one would come back as its only text
    try:
        names = json.loads(_text(store, key, "[]"))
    except ValueError:
        return default
    is_row = isinstance(names, list) and all(isinstance(name, str) for name in names)
    return tuple(names) if is_row else default


def _written(value: object) -> object:
    if isinstance(value, bytes):
        return QByteArray(value)
    return json.dumps(value) if isinstance(value, tuple) else value


_READERS: dict[type, Callable[..., object]] = {
    str: _text,
    int: _number,
    bool: _flag,
    bytes: _raw,
    tuple: _names,
}

"""Where the finder's entries come from: actions, settings, and everything in the project."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.desk.language import translated
from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.glycogen import ledger_of
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.state import STATES, State
from ultraplanner_gui.plan.block import Session, weeks_to_go
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.window.action_row import (
    MARKED,
    NOT_DONE,
    NOT_MISSED,
    NOT_RACE,
    TO_MOVE,
    WITH_COURSE,
    WITH_ITEM,
    WITH_PROJECT,
    WITH_SECTION,
    WITH_SESSION,
    ActionRow,
)
from ultraplanner_gui.window.action_table import TABLE
from ultraplanner_gui.window.actions import name_of
from ultraplanner_gui.window.finder_index import Entry, Source
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.window.main_window import MainWindow

ACTION = QT_TRANSLATE_NOOP("Finder", "Do")
SETTING = QT_TRANSLATE_NOOP("Finder", "Setting")
CHECK = QT_TRANSLATE_NOOP("Finder", "Check")
SESSION = QT_TRANSLATE_NOOP("Finder", "Session")
SECTION = QT_TRANSLATE_NOOP("Finder", "Section")
STATION = QT_TRANSLATE_NOOP("Finder", "Aid station")
ITEM = QT_TRANSLATE_NOOP("Finder", "Fuel item")
FOOD = QT_TRANSLATE_NOOP("Finder", "Food")
TABLE_KIND = QT_TRANSLATE_NOOP("Finder", "Table")
PROJECT = QT_TRANSLATE_NOOP("Finder", "Project")
HELP = QT_TRANSLATE_NOOP("Finder", "Help")

#: When an action can be used that acts on a session.
OF_SESSIONS = frozenset((NOT_DONE, NOT_MISSED, MARKED, NOT_RACE, TO_MOVE))
#: Why an action cannot be done, by when it can.
WHY_NOT = {
    WITH_PROJECT: QT_TRANSLATE_NOOP("Finder", "open a project first"),
    WITH_COURSE: QT_TRANSLATE_NOOP("Finder", "needs a course"),
    WITH_SESSION: QT_TRANSLATE_NOOP("Finder", "choose a session first"),
    NOT_DONE: QT_TRANSLATE_NOOP("Finder", "choose a session that is not done"),
    NOT_MISSED: QT_TRANSLATE_NOOP("Finder", "choose a session that was not missed"),
    MARKED: QT_TRANSLATE_NOOP("Finder", "choose a session that was done or missed"),
    NOT_RACE: QT_TRANSLATE_NOOP("Finder", "choose a session; the race stays"),
    TO_MOVE: QT_TRANSLATE_NOOP("Finder", "choose a session that is not done"),
    WITH_ITEM: QT_TRANSLATE_NOOP("Finder", "choose a fuel item first"),
    WITH_SECTION: QT_TRANSLATE_NOOP("Finder", "choose a section first"),
}

#: Actions that set something: what, and the setting and value that make one the present one.
SETTINGS: dict[str, tuple[str, str, str]] = {
    "theme_system": (QT_TRANSLATE_NOOP("Finder", "Colours: {0}"), "theme", "system"),
    "theme_light": (QT_TRANSLATE_NOOP("Finder", "Colours: {0}"), "theme", "light"),
    "theme_dark": (QT_TRANSLATE_NOOP("Finder", "Colours: {0}"), "theme", "dark"),
    "text_larger": (QT_TRANSLATE_NOOP("Finder", "Size of all text: {0}"), "", ""),
    "text_smaller": (QT_TRANSLATE_NOOP("Finder", "Size of all text: {0}"), "", ""),
    "units_metric": (QT_TRANSLATE_NOOP("Finder", "Units: {0}"), "units", "metric"),
    "units_imperial": (QT_TRANSLATE_NOOP("Finder", "Units: {0}"), "units", "imperial"),
    "by_distance": (QT_TRANSLATE_NOOP("Finder", "Race axis: {0}"), "race_axis", "distance"),
    "by_clock": (QT_TRANSLATE_NOOP("Finder", "Race axis: {0}"), "race_axis", "clock"),
}


def say(text: str) -> str:
    """Return a text marked in the context "Finder" in the user's language."""
    return QCoreApplication.translate("Finder", text)


class FinderSources:
    """The sources of one window, in the order in which they are listed."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def all(self) -> tuple[Source, ...]:
        """Return every source."""
        return (
            self.actions,
            self.steps,
            self.checks,
            self.sessions,
            self.sections,
            self.stations,
            self.items,
            self.foods,
            self.tables,
            self.recent,
            self.help_topics,
        )

    # The program

    def actions(self) -> Iterator[Entry]:
        """Give every action, those that set something as settings."""
        for row in TABLE:
            if row.name != "find":
                yield self._action(row)

    def steps(self) -> Iterator[Entry]:
        """Give undo and redo by the name of the step."""
        document = self._window.document
        if document is None:
            return
        stack = document.undo_stack
        for text, name, can, go, keys in (
            (say(QT_TRANSLATE_NOOP("Finder", "Undo {0}")), stack.undoText(), stack.canUndo(),
             stack.undo, "Ctrl+Z"),
            (say(QT_TRANSLATE_NOOP("Finder", "Redo {0}")), stack.redoText(), stack.canRedo(),
             stack.redo, "Ctrl+Shift+Z"),
        ):  # fmt: skip
            why = say(QT_TRANSLATE_NOOP("Finder", "no such step"))
            yield Entry(
                say(ACTION),
                text.format(name).strip(),
                go,
                _keys(QKeySequence(keys)) if can else why,
                can,
            )

    def tables(self) -> Iterator[Entry]:
        """Give the tables by name."""
        if self._window.document is not None:
            from ultraplanner_gui.window.tables import SPECS

            for spec in SPECS:
                name = QCoreApplication.translate("Tables", spec.name)
                yield Entry(say(TABLE_KIND), name, partial(self._to_table, spec.name))

    def recent(self) -> Iterator[Entry]:
        """Give the projects opened last."""
        document, deeds = self._window.document, self._window.deeds
        opened = document.path if document is not None else None
        for path in self._window.settings.recent_files:
            if path != opened and path.exists():
                go = partial(deeds.open_project_file, path)
                yield Entry(say(PROJECT), path.stem, go, path.parent.name)

    def help_topics(self) -> Iterator[Entry]:
        """Give the help topics by title."""
        # Nobody needs the texts before the first search: they stay out of the start.
        from ultraplanner_gui.wording.help.topics import TOPICS

        for topic in TOPICS.values():
            title = QCoreApplication.translate("Help", topic.title)
            also = QCoreApplication.translate("Help", topic.words) if topic.words else ""
            yield Entry(say(HELP), title, partial(self._explain, topic.key), also=also)

    # The project

    def checks(self) -> Iterator[Entry]:
        """Give the checks that do not hold, the broken first."""
        outlook, words = self._outlook(), self._words()
        if outlook is None:
            return
        loose = [c for c in outlook.checks if c.state is not State.HOLDS]
        loose.sort(key=lambda check: check.state is not State.BREAKS)
        for check in loose:
            text = words.say(check.text)
            yield Entry(
                say(CHECK), text, partial(self._to_check, check), translated(STATES[check.state])
            )
        stores = ledger_of(outlook)
        found = (*stores.checks, *outlook.fuel.checks) if stores and outlook.fuel else ()
        for fuel in found:
            if fuel.state is not State.HOLDS:
                go = partial(self._to_race, "", "")
                yield Entry(say(CHECK), words.say(fuel.text), go, translated(STATES[fuel.state]))

    def sessions(self) -> Iterator[Entry]:
        """Give every session by its day, kind and week."""
        outlook, words = self._outlook(), self._words()
        if outlook is None:
            return
        project = outlook.project
        for session in project.block.sessions:
            to_go = weeks_to_go(session.day, project.race.day, project.first_weekday)
            week = (
                say(QT_TRANSLATE_NOOP("Finder", "race week"))
                if to_go == 0
                else say(QT_TRANSLATE_NOOP("Finder", "{0} to go")).format(to_go)
            )
            figure = _figure(session, words)
            text = f"{words.day(session.day)}: {kinds.say(kinds.FULL[session.kind])}"
            yield Entry(
                say(SESSION),
                f"{text}, {figure}" if figure else text,
                partial(self._to_session, session.key),
                ", ".join((*_standing(session), week)),
                also=f"{session.day.isoformat()} {session.note}",
            )

    def sections(self) -> Iterator[Entry]:
        """Give every section by the places at its ends."""
        outlook, words = self._outlook(), self._words()
        before = say(QT_TRANSLATE_NOOP("Finder", "Start"))
        for section in outlook.sections if outlook is not None else ():
            end = section.name or (
                say(QT_TRANSLATE_NOOP("Finder", "Finish"))
                if section is outlook.sections[-1]  # type: ignore[union-attr]
                else words.distance(section.end_m, 1)
            )
            text = say(QT_TRANSLATE_NOOP("Finder", "{0} to {1}")).format(before, end)
            aside = words.distance(section.length_m, 1)
            yield Entry(say(SECTION), text, partial(self._to_race, "section", section.key), aside)
            before = end

    def stations(self) -> Iterator[Entry]:
        """Give every aid station; the section that ends there shows its figures."""
        outlook, words = self._outlook(), self._words()
        course = outlook.project.course if outlook is not None else None
        for station in course.stations if course is not None else ():
            ending = (s.key for s in course.sections if s.station == station.key)  # type: ignore[union-attr]
            section = next(ending, "")
            kind, key = ("section", section) if section else ("station", station.key)
            aside = say(QT_TRANSLATE_NOOP("Finder", "at {0}")).format(
                words.distance(station.at_m, 1)
            )
            yield Entry(
                say(STATION),
                station.name,
                partial(self._to_race, kind, key),
                aside,
                also=station.note,
            )

    def items(self) -> Iterator[Entry]:
        """Give every fuel item by its food and when it is taken."""
        outlook, words = self._outlook(), self._words()
        if outlook is None:
            return
        race, fuel = outlook.project.race, outlook.project.fuel
        names = {food.key: food.name for food in fuel.foods}
        for item in outlook.items:
            text = say(QT_TRANSLATE_NOOP("Finder", "{0}, after {1}")).format(
                names.get(item.food, item.food), words.duration(item.at_s)
            )
            yield Entry(
                say(ITEM),
                text,
                partial(self._to_race, "item", item.key),
                words.clock(race.clock(item.at_s)),
            )

    def foods(self) -> Iterator[Entry]:
        """Give every food."""
        outlook, words = self._outlook(), self._words()
        for food in outlook.project.fuel.foods if outlook is not None else ():
            aside = say(QT_TRANSLATE_NOOP("Finder", "{0} carbs, {1}")).format(
                words.grams(food.carb_g), food.serving
            )
            yield Entry(say(FOOD), food.name, partial(self._to_food, food.key), aside)

    # Inside

    def _outlook(self) -> Outlook | None:
        document = self._window.document
        return document.outlook if document is not None else None

    def _words(self) -> Words:
        return self._window.settings.words()

    def _action(self, row: ActionRow) -> Entry:
        action = self._window.table.by_name[row.name]
        text, kind = name_of(action), say(ACTION)
        aside = _keys(action.shortcut())
        if row.name in SETTINGS:
            head, name, value = SETTINGS[row.name]
            text, kind = say(head).format(text[:1].lower() + text[1:]), say(SETTING)
            if name and self._set_to(name) == value:
                aside = say(QT_TRANSLATE_NOOP("Finder", "now"))
        is_enabled = action.isEnabled()
        if not is_enabled:
            aside = say(self._why_not(row))
        return Entry(kind, text, action.trigger, aside, is_enabled)

    def _set_to(self, name: str) -> object:
        # Units may be those of the system: what counts is which are in use.
        return self._words().units if name == "units" else getattr(self._window.settings, name)

    def _why_not(self, row: ActionRow) -> str:
        if self._window.document is None:
            return WHY_NOT[WITH_PROJECT]
        place = self._window.workplace
        if row.enabled in OF_SESSIONS and (place is None or place.selection.kind != "session"):
            return WHY_NOT[WITH_SESSION]
        return WHY_NOT[row.enabled]

    def _explain(self, key: str) -> None:
        self._window.explain(key, QApplication.focusWidget() or self._window)

    # Going there

    def _to_session(self, key: str) -> None:
        self._choose("session", key, is_race=False)

    def _to_race(self, kind: str, key: str) -> None:
        self._choose(kind, key, is_race=True)

    def _to_check(self, check: Check) -> None:
        if check.sessions:
            self._to_session(check.sessions[0])
            return
        outlook = self._outlook()
        weeks = outlook.weeks if outlook is not None else ()
        week = next((w for w in weeks if w.to_go in check.weeks), None)
        kind, key = ("week", week.start.isoformat()) if week is not None else ("", "")
        self._choose(kind, key, is_race=False)

    def _choose(self, kind: str, key: str, is_race: bool) -> None:
        """Show the sheet with both storeys as they are, the one in question open, and select."""
        place = self._window.workplace
        if place is None:
            return
        self._window.go("sheet")
        storey = place.raceday if is_race else place.buildup
        if storey.isHidden():
            place.show_storeys(True, True)
        if kind:
            place.selection.choose(kind, key)
        if is_race:
            (place.raceday.fuel if kind == "item" else place.raceday.target).setFocus()

    def _to_table(self, name: str) -> None:
        place = self._window.workplace
        if place is not None:
            self._window.go("tables")
            place.tables.show_table(name)
            place.tables.page.view.setFocus()

    def _to_food(self, key: str) -> None:
        from ultraplanner_gui.window.table_foods import FOODS

        self._to_table(FOODS.name)
        if self._window.workplace is not None:
            self._window.workplace.tables.page.view.show_row(key)


def _keys(keys: QKeySequence) -> str:
    return keys.toString(QKeySequence.SequenceFormat.NativeText)


def _figure(session: Session, words: Words) -> str:
    figures = []
    if session.kind.is_run and session.distance_m > 0.0:
        figures.append(words.distance(session.actual.distance_m or session.distance_m))
    if session.duration_s > 0.0:
        figures.append(words.duration(session.duration_s))
    return ", ".join(figures[:1])


def _standing(session: Session) -> tuple[str, ...]:
    if session.done is not None:
        return (say(QT_TRANSLATE_NOOP("Finder", "done")),)
    return (say(QT_TRANSLATE_NOOP("Finder", "missed")),) if session.missed else ()

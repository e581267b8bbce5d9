"""The fields of the race: its name, start, finish aimed for and limit."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from zoneinfo import ZoneInfo, available_timezones

from msgspec.structs import replace
from PySide6.QtCore import QDate, QTime
from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.edits.race import SHORTEST_RACE_S
from ultraplanner_gui.plan.race import FIRST_YEAR, LAST_YEAR, Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.widgets.fields import ClockField, DateField, DurationField, describe
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.guess import Guess
from ultraplanner_gui.window import guesses
from ultraplanner_gui.wording.words import Words

LONGEST_NAME = 120
ZONE_LETTERS = 14


class RaceColumn(FormColumn):
    """The race. `likely_s` gives the likely finish of a runner, None where none can be told."""

    def __init__(
        self,
        race: Race,
        first_weekday: int,
        words: Words,
        likely_s: Callable[[Runner], float] | None,
        runner: Callable[[], Runner],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._race, self._likely_s, self._runner = race, likely_s, runner
        self.name = QLineEdit(race.name, self)
        self.day = DateField(self)
        self.start = ClockField(self)
        self.zone = QComboBox(self)
        self.goal = DurationField(words, SHORTEST_RACE_S, LONGEST_RACE_S, parent=self)
        self.limit = DurationField(words, SHORTEST_RACE_S, LONGEST_RACE_S, True, self)
        self.first_weekday = weekday_list(words, first_weekday, self)
        self._fill()
        self._add_rows()
        self._shown = self._start()

    def race(self) -> Race:
        """Return the race as the fields have it; a start nobody touched keeps its seconds."""
        start = self._start()
        return replace(
            self._race,
            name=self.name.text().strip(),
            start=self._race.start if start == self._shown else _aware(*start),
            goal_s=self.goal.value_s or self._race.goal_s,
            limit_s=self.limit.value_s,
        )

    def guess_all(self) -> None:
        """Put a guess into what the course does not say, and say that the day is one."""
        known: set[QWidget] = set()
        if self.start.time() != guesses.START:
            known.add(self.start)
        if self.limit.value_s is not None:
            known.add(self.limit)
        for field, row in self.guesses.items():
            if field not in known:
                row.guess(says_why=field is self.goal)
        self.note.setVisible(True)

    def renew_finish(self) -> None:
        """Make a guessed finish anew for the runner as answered by now."""
        if self.goal in self.guesses:
            self.guesses[self.goal].renew()

    def _fill(self) -> None:
        race = self._race
        self.name.setMaxLength(LONGEST_NAME)
        describe(
            self.name, self.tr("What the race is called, up to {0} letters").format(LONGEST_NAME)
        )
        self.day.setDateRange(QDate(FIRST_YEAR, 1, 1), QDate(LAST_YEAR, 12, 31))
        self.day.setDate(QDate(race.day.year, race.day.month, race.day.day))
        describe(self.day, self.tr("Between the years {0} and {1}").format(FIRST_YEAR, LAST_YEAR))
        self.start.setTime(QTime(race.start.hour, race.start.minute))
        self.zone.addItems(sorted(available_timezones()))
        self.zone.setCurrentText(getattr(race.start.tzinfo, "key", "UTC"))
        self.zone.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.zone.setMinimumContentsLength(ZONE_LETTERS)
        describe(self.zone, self.tr("The clock at the race, proposed from where the course lies"))
        self.goal.set_value(race.goal_s)
        self.limit.set_value(race.limit_s)
        describe(self.first_weekday, self.tr("Weeks are counted and summed from this day on"))

    def _add_rows(self) -> None:
        self.add_head(self.tr("Race"))
        self.add(self.tr("&Name"), self.name, "race name")
        self.add(self.tr("&Date"), self.day, "race date")
        self.note = self.add_under(self.tr("Proposed: put in the day of your race."))
        self.note.hide()
        self.day.dateChanged.connect(self.note.hide)
        self.add_guess(
            self.tr("&Start"),
            self.start,
            self.start.time,
            self.start.setTime,
            guesses.start_time,
            "start time",
        )
        self.add(self.tr("Time &zone"), self.zone, "time zone")
        if self._likely_s is None:
            self.add(self.tr("&Finish aimed for"), self.goal, "finish aimed for")
        else:
            self.add_guess(
                self.tr("&Finish aimed for"),
                self.goal,
                lambda: self.goal.value_s,
                self.goal.set_value,
                self._likely,
                "finish aimed for",
            )
        self.add_guess(
            self.tr("Time &limit"),
            self.limit,
            lambda: self.limit.value_s,
            self.limit.set_value,
            guesses.time_limit,
            "time limit",
        )
        self.add(self.tr("&Week begins on"), self.first_weekday, "week begins on")
        self.end()

    def _likely(self) -> Guess[float | None]:
        assert self._likely_s is not None
        return guesses.finish(self._likely_s, self._runner())

    def _start(self) -> tuple[QDate, QTime, str]:
        return self.day.date(), self.start.time(), self.zone.currentText()


def weekday_list(words: Words, chosen: int, parent: QWidget) -> QComboBox:
    """Return a list of the days of the week, Monday first, with *chosen* in it."""
    field = QComboBox(parent)
    for weekday in range(7):
        field.addItem(words.weekday(weekday), weekday)
    field.setCurrentIndex(chosen)
    return field


def _aware(day: QDate, at: QTime, zone: str) -> datetime:
    return datetime(
        day.year(), day.month(), day.day(), at.hour(), at.minute(), tzinfo=ZoneInfo(zone)
    )

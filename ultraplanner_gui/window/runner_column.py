"""The fields of the runner: what they do now, when they can run, what their gut takes."""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QLineEdit, QWidget

from ultraplanner_gui.edits.race import RUNNER_RANGES
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.widgets.fields import (
    DistanceField,
    PaceField,
    WholeField,
    WithinValidator,
    describe,
)
from ultraplanner_gui.widgets.form_column import SMALL_PT, FormColumn
from ultraplanner_gui.widgets.guess import Guess
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.window import guesses
from ultraplanner_gui.window.race_column import weekday_list
from ultraplanner_gui.wording.words import Words

MINUTES_A_DAY = 1440
LEVEL_LETTERS = 12
MINUTES_PX = 46.0


class RunnerColumn(FormColumn):
    """The runner; what nobody touched keeps the digits its field does not show."""

    def __init__(self, runner: Runner, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._of, self._words = runner, words
        self.add_head(self.tr("Runner"))
        self.note = self.add_note(
            self.tr("What is pale is a careful guess of ours. Type over it what you know.")
        )
        self.weekly = DistanceField(words, *RUNNER_RANGES["weekly_m"], decimals=0, parent=self)
        self.longest = DistanceField(words, *RUNNER_RANGES["longest_m"], decimals=0, parent=self)
        self.easy = PaceField(words, *RUNNER_RANGES["easy_mps"], parent=self)
        self.body = WholeField(words, *RUNNER_RANGES["body_kg"], "kg", parent=self)
        self.carbs = WholeField(words, *RUNNER_RANGES["carb_g_per_h"], "g/h", 5, self)
        self.level = QComboBox(self)
        self.long_day = weekday_list(words, runner.long_day, self)
        self.free = QWidget(self)
        self.minutes = self._minute_fields()
        self._fill()
        self._add_rows()
        self._shown = self._figures()
        self.changed.connect(self._say_note)
        self._say_note()

    def runner(self) -> Runner:
        """Return the runner as the fields have it."""
        figures = self._figures()
        changed = {name: value for name, value in figures.items() if value != self._shown[name]}
        return replace(self._of, **changed)

    def guess_all(self) -> None:
        """Put a guess into everything a runner may not know."""
        for row in self.guesses.values():
            row.guess(says_why=False)
        self._say_note()

    def _figures(self) -> dict[str, object]:
        return {
            "weekly_m": self.weekly.metres,
            "longest_m": self.longest.metres,
            "easy_mps": self.easy.mps,
            "body_kg": float(self.body.value()),
            "carb_g_per_h": float(self.carbs.value()),
            "level": self.level.currentData(),
            "long_day": self.long_day.currentData(),
            "available_s": tuple(60.0 * minutes for minutes in self._minutes()),
        }

    def _fill(self) -> None:
        runner = self._of
        self.weekly.set_metres(runner.weekly_m)
        self.longest.set_metres(runner.longest_m)
        self.easy.set_mps(runner.easy_mps)
        self.body.setValue(round(runner.body_kg))
        self.carbs.setValue(round(runner.carb_g_per_h))
        for level, text in (
            (Level.FLOOR, self.tr("just enough to finish inside the cutoffs")),
            (Level.USUAL, self.tr("as much as is usual")),
            (Level.AMBITIOUS, self.tr("ambitious: as much as you can bear")),
        ):
            self.level.addItem(text, level)
        self.level.setCurrentIndex(list(Level).index(runner.level))
        self.level.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.level.setMinimumContentsLength(LEVEL_LETTERS)
        describe(self.level, self.tr("How much the build-up asks of you, week by week"))
        describe(self.long_day, self.tr("The day of the longest run of the week"))
        self._write_minutes(tuple(round(s / 60.0) for s in runner.available_s))

    def _add_rows(self) -> None:
        words = self._words
        week, longest, easy = self.weekly, self.longest, self.easy
        self.add_guess(
            self.tr("A &usual week now"),
            week,
            lambda: week.metres,
            week.set_metres,
            self._week,
            "usual week",
        )
        self.add_guess(
            self.tr("Lon&gest run, last 30 days"),
            longest,
            lambda: longest.metres,
            longest.set_metres,
            self._longest,
            "longest lately",
        )
        self.add_guess(
            self.tr("Eas&y pace, {0}").format(words.pace_unit),
            easy,
            lambda: easy.mps,
            easy.set_mps,
            self._easy,
            "easy pace",
        )
        self._add_choices()

    def _add_choices(self) -> None:
        for label, field, guess, topic in (
            (self.tr("&Body mass"), self.body, guesses.body_mass, "body mass"),
            (self.tr("Carbs you ta&ke running"), self.carbs, guesses.carbs, "carbs tolerated"),
        ):
            self.add_guess(label, field, field.value, field.setValue, guess, topic)
        for text, choice, proposed, subject in (
            (self.tr("How much tra&ining"), self.level, guesses.level, "level"),
            (self.tr("Long &run on"), self.long_day, self._long_day, "long run day"),
        ):
            put = choice.setCurrentIndex
            self.add_guess(text, choice, choice.currentIndex, put, proposed, subject)
        self.add_guess(
            self.tr("Minu&tes free for running"),
            self.free,
            self._minutes,
            self._write_minutes,
            guesses.free_minutes,
            "free minutes",
            is_below=True,
        )
        self.end()

    def _week(self) -> Guess[float]:
        return guesses.usual_week(self._words)

    def _longest(self) -> Guess[float]:
        return guesses.longest_run(self._words)

    def _easy(self) -> Guess[float]:
        return guesses.easy_speed(self._words)

    def _long_day(self) -> Guess[int]:
        return guesses.long_day(self._minutes())

    def _minute_fields(self) -> list[QLineEdit]:
        """Return a field for the minutes free on each day, under the day's name."""
        look, fields = theme(), []
        grid = QGridLayout(self.free)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(Space.HAIR)
        grid.setVerticalSpacing(Space.HAIR)
        for weekday in range(7):
            name = self._words.weekday(weekday)
            field = QLineEdit(self.free)
            field.setValidator(WithinValidator(0, MINUTES_A_DAY, field))
            field.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            field.setFixedWidth(round(look.px(MINUTES_PX)))
            field.setAccessibleName(self.tr("Minutes free on {0}").format(name))
            reach = self.tr("From 0 to {0} min; 0 is a day without a run")
            describe(field, reach.format(self._words.number(MINUTES_A_DAY)))
            label = QLabel(name, self.free)
            label.setFont(look.font(SMALL_PT))
            label.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            grid.addWidget(label, 0, weekday)
            grid.addWidget(field, 1, weekday)
            fields.append(field)
        return fields

    def _minutes(self) -> tuple[int, ...]:
        texts = (f.text() if f.hasAcceptableInput() else "0" for f in self.minutes)
        return tuple(map(int, texts))

    def _write_minutes(self, minutes: tuple[int, ...]) -> None:
        for field, value in zip(self.minutes, minutes, strict=True):
            field.setText(str(value))

    @Slot()
    def _say_note(self) -> None:
        self.guesses[self.long_day].renew()
        self.note.setVisible(any(row.is_guessed for row in self.guesses.values()))

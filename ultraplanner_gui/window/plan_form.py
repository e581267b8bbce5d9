"""One short form for the race and the runner, with sensible values in it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo, available_timezones

from PySide6.QtCore import QCoreApplication, QDate, Qt, QTime
from PySide6.QtGui import QIntValidator
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QTimeEdit,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.edits.race import RUNNER_RANGES
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.widgets.fields import DistanceField, DurationField
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.wording.cautions import BEFORE_BLOCK
from ultraplanner_gui.wording.words import Words

SHORTEST_RACE_S = 600.0
MINUTES_A_DAY = 1440


@dataclass(frozen=True, slots=True)
class Answers:
    """What the form holds when it is sent."""

    race: Race
    runner: Runner
    first_weekday: int
    path: Path | None


def _form() -> QFormLayout:
    form = QFormLayout()
    form.setVerticalSpacing(round(theme().px(8)))
    form.setHorizontalSpacing(round(theme().px(12)))
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
    return form


class PlanForm(QDialog):
    """Race on the left, runner on the right.

    `sent` is called with the answers; it returns a sentence on what is wrong with them, which
    stays in the form, or nothing, which closes it.
    """

    def __init__(
        self,
        race: Race,
        runner: Runner,
        first_weekday: int,
        words: Words,
        sent: Callable[[Answers], str],
        facts: str = "",
        path: Path | None = None,
        where: Callable[[Path, Callable[[Path], None]], None] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._words, self._sent, self._path, self._where = words, sent, path, where
        self._runner = runner
        self.setWindowTitle(self.tr("New plan") if path is not None else self.tr("Race and runner"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        columns = QHBoxLayout()
        columns.setSpacing(30)
        columns.addLayout(self._race_fields(race, first_weekday), 1)
        columns.addLayout(self._runner_fields(runner), 1)
        box = QVBoxLayout(self)
        box.setContentsMargins(22, 18, 22, 18)
        box.setSpacing(14)
        if facts:
            head = QLabel(facts, self)
            head.setWordWrap(True)
            dress(head, 9.0, theme().colours.ink, bold=True)
            box.addWidget(head)
        box.addLayout(columns)
        self._name_topics()
        box.addStretch(1)
        box.addWidget(self._small(QCoreApplication.translate("Caution", BEFORE_BLOCK)))
        if path is not None:
            box.addLayout(self._place_row())
        self._trouble = QLabel("", self)
        self._trouble.setWordWrap(True)
        dress(self._trouble, 8.5, theme().colours.clay)
        self._trouble.hide()
        box.addWidget(self._trouble)
        box.addWidget(self._buttons(is_new=path is not None))
        self.name.setFocus()

    def complain(self, sentence: str) -> None:
        """Say in the form why the answers cannot be used."""
        self._trouble.setText(sentence)
        self._trouble.show()

    def answers(self) -> Answers:
        """Return what is in the fields now."""
        day, clock = self.day.date(), self.start.time()
        zone = ZoneInfo(self.zone.currentText())
        start = datetime(
            day.year(), day.month(), day.day(), clock.hour(), clock.minute(), tzinfo=zone
        )
        goal_s = self.goal.value_s
        assert goal_s is not None
        race = Race(self.name.text().strip(), start, goal_s, self.limit.value_s)
        runner = replace(
            self._runner,
            body_kg=float(self.body.value()),
            weekly_m=self.weekly.metres,
            longest_m=self.longest.metres,
            easy_mps=1.0 / self._easy_pace_s_per_m(),
            available_s=tuple(60.0 * int(field.text() or 0) for field in self.minutes),
            long_day=self.long_day.currentData(),
            level=self.level.currentData(),
            carb_g_per_h=float(self.carbs.value()),
        )
        return Answers(race, runner, self.first_weekday.currentData(), self._path)

    def _race_fields(self, race: Race, first_weekday: int) -> QFormLayout:
        words, form = self._words, _form()
        self.name = QLineEdit(race.name, self)
        self.day = QDateEdit(QDate(race.day.year, race.day.month, race.day.day), self)
        self.day.setCalendarPopup(True)
        self.day.setDisplayFormat("ddd d MMM yyyy")
        self.start = QTimeEdit(QTime(race.start.hour, race.start.minute), self)
        self.start.setDisplayFormat("HH:mm")
        self.zone = QComboBox(self)
        self.zone.addItems(sorted(available_timezones()))
        self.zone.setCurrentText(getattr(race.start.tzinfo, "key", "UTC"))
        self.zone.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.zone.setMinimumContentsLength(18)
        self.goal = DurationField(words, SHORTEST_RACE_S, LONGEST_RACE_S, parent=self)
        self.goal.set_value(race.goal_s)
        self.limit = DurationField(
            words, SHORTEST_RACE_S, LONGEST_RACE_S, optional=True, parent=self
        )
        self.limit.set_value(race.limit_s)
        self.first_weekday = self._weekdays(first_weekday)
        form.addRow(self._head(self.tr("Race")))
        form.addRow(self.tr("&Name"), self.name)
        form.addRow(self.tr("&Date"), self.day)
        form.addRow(self.tr("S&tart"), self.start)
        form.addRow(self.tr("Time &zone"), self.zone)
        form.addRow(self.tr("&Finish aimed for"), self.goal)
        form.addRow(self.tr("Time &limit"), self.limit)
        form.addRow(self.tr("&Week begins on"), self.first_weekday)
        return form

    def _runner_fields(self, runner: Runner) -> QFormLayout:
        words, form = self._words, _form()
        self.weekly = DistanceField(words, *RUNNER_RANGES["weekly_m"], decimals=0, parent=self)
        self.weekly.set_metres(runner.weekly_m)
        self.longest = DistanceField(words, *RUNNER_RANGES["longest_m"], decimals=0, parent=self)
        self.longest.set_metres(runner.longest_m)
        per_unit_s = words.unit_m / runner.easy_mps
        self.easy = QTimeEdit(QTime(0, 0).addSecs(round(per_unit_s)), self)
        self.easy.setDisplayFormat("m:ss")
        self.easy.setToolTip(self.tr("Easy pace on level ground, {0}").format(words.pace_unit))
        self.body = self._whole(round(runner.body_kg), *RUNNER_RANGES["body_kg"], " kg")
        self.carbs = self._whole(round(runner.carb_g_per_h), *RUNNER_RANGES["carb_g_per_h"], " g/h")
        self.carbs.setToolTip(
            self.tr("What your stomach takes while running today; 30 if you don't know")
        )
        self.long_day = self._weekdays(runner.long_day)
        self.level = QComboBox(self)
        for level, text in (
            (Level.FLOOR, self.tr("the floor, to finish inside the cutoffs")),
            (Level.USUAL, self.tr("usual")),
            (Level.AMBITIOUS, self.tr("ambitious")),
        ):
            self.level.addItem(text, level)
        self.level.setCurrentIndex(list(Level).index(runner.level))
        form.addRow(self._head(self.tr("Runner")))
        form.addRow(self.tr("A usual wee&k now"), self.weekly)
        form.addRow(self.tr("Lon&gest run, last 30 days"), self.longest)
        form.addRow(self.tr("Eas&y pace, {0}").format(words.pace_unit), self.easy)
        form.addRow(self.tr("&Body mass"), self.body)
        form.addRow(self.tr("&Carbs you take while running"), self.carbs)
        form.addRow(self.tr("Build-&up"), self.level)
        form.addRow(self.tr("Long &run on"), self.long_day)
        form.addRow(self.tr("Minutes free for running"), self._minutes_row(runner))
        return form

    def _name_topics(self) -> None:
        set_topic(self, "welcome")
        race: dict[QWidget, str] = {
            self.name: "race name",
            self.day: "race date",
            self.start: "start time",
            self.zone: "time zone",
            self.goal: "finish aimed for",
            self.limit: "time limit",
            self.first_weekday: "week begins on",
        }
        runner: dict[QWidget, str] = {
            self.weekly: "usual week",
            self.longest: "longest lately",
            self.easy: "easy pace",
            self.body: "body mass",
            self.carbs: "carbs tolerated",
            self.level: "level",
            self.long_day: "long run day",
        }
        set_topics(race | runner | dict.fromkeys(self.minutes, "free minutes"))

    def _minutes_row(self, runner: Runner) -> QWidget:
        holder = QWidget(self)
        grid = QGridLayout(holder)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(4)
        grid.setVerticalSpacing(2)
        self.minutes: list[QLineEdit] = []
        for weekday in range(7):
            field = QLineEdit(str(round(runner.available_s[weekday] / 60)), holder)
            field.setValidator(QIntValidator(0, MINUTES_A_DAY, field))
            field.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            field.setFixedWidth(round(theme().px(48)))
            field.setToolTip(
                self.tr("From 0 to {0}; 0 is a day without a run").format(MINUTES_A_DAY)
            )
            name = self._words.weekday(weekday)
            field.setAccessibleName(self.tr("Minutes free on {0}").format(name))
            label = QLabel(name, holder)
            label.setFont(theme().font(7.5))
            label.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            grid.addWidget(label, 0, weekday)
            grid.addWidget(field, 1, weekday)
            self.minutes.append(field)
        return holder

    def _place_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self._place = QLabel("", self)
        self._place.setWordWrap(True)
        change = QPushButton(self.tr("Keep it &elsewhere…"), self)
        change.clicked.connect(self._on_elsewhere)
        row.addWidget(self._place, 1)
        row.addWidget(change)
        self._show_place()
        return row

    def _buttons(self, is_new: bool) -> QDialogButtonBox:
        buttons = QDialogButtonBox(self)
        text = self.tr("&Make the plan") if is_new else self.tr("&Change")
        send = buttons.addButton(text, QDialogButtonBox.ButtonRole.AcceptRole)
        send.setDefault(True)
        buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self._on_sent)
        buttons.rejected.connect(self.reject)
        return buttons

    def _on_sent(self) -> None:
        if not self.name.text().strip():
            self.complain(self.tr("The race needs a name."))
        elif not self.goal.reads(self.goal.text()):
            self.complain(
                self.tr("The finish aimed for reads like 20 h 16 and lies within 240 hours.")
            )
        elif trouble := self._sent(self.answers()):
            self.complain(trouble)
        else:
            self.accept()

    def _on_elsewhere(self) -> None:
        if self._where is not None and self._path is not None:
            self._where(self._path, self._take_place)

    def _take_place(self, path: Path) -> None:
        self._path = path
        self._show_place()

    def _show_place(self) -> None:
        self._place.setText(self.tr("Kept in {0}").format(self._path))

    def _easy_pace_s_per_m(self) -> float:
        seconds = QTime(0, 0).secsTo(self.easy.time())
        low, high = RUNNER_RANGES["easy_mps"]
        return min(max(seconds / self._words.unit_m, 1.0 / high), 1.0 / low)

    def _whole(self, value: int, low: float, high: float, suffix: str) -> QSpinBox:
        field = QSpinBox(self)
        field.setKeyboardTracking(False)
        field.setRange(round(low), round(high))
        field.setSuffix(suffix)
        field.setValue(value)
        field.setToolTip(self.tr("From {0} to {1}").format(round(low), round(high)))
        return field

    def _weekdays(self, chosen: int) -> QComboBox:
        field = QComboBox(self)
        for weekday in range(7):
            field.addItem(self._words.weekday(weekday), weekday)
        field.setCurrentIndex(chosen)
        return field

    def _head(self, text: str) -> QLabel:
        label = QLabel(text, self)
        dress(label, 11.0, theme().colours.ink, bold=True)
        return label

    def _small(self, text: str) -> QLabel:
        label = QLabel(text, self)
        label.setWordWrap(True)
        dress(label, 7.5, theme().colours.soft)
        return label

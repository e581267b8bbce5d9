"""The form for the day of the race: weather, what is reckoned with, and the lamp."""

from __future__ import annotations

import math
from collections.abc import Callable

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, Qt, QTime, QTimer, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.pace import (
    COLDEST_C,
    HIGHEST_VALLEY_M,
    WARMEST_C,
    SetConditions,
    check_conditions,
)
from ultraplanner_gui.edits.race import RUNNER_RANGES
from ultraplanner_gui.engine.conditions import condition_times
from ultraplanner_gui.engine.environment import WBGT_CAVEAT
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.outlook_race import race_effects
from ultraplanner_gui.engine.race_checks import dark_s
from ultraplanner_gui.engine.warmth import warmth
from ultraplanner_gui.plan.conditions import Conditions, Effect, ValleyForecast
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.fields import (
    ClockField,
    DurationField,
    HeightField,
    WholeField,
)
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording import reading
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 560.0
PAUSE_MS = 250
LONGEST_LAMP_S = 72 * 3600.0
USUAL = ValleyForecast(8.0, 20.0, 50.0, 0.0)


class ConditionsForm(QDialog):
    """Weather and effects of the race in *outlook*; *sent* takes the edit, says what is wrong."""

    def __init__(
        self,
        outlook: Outlook,
        words: Words,
        sent: Callable[[SetConditions], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._outlook, self._words, self._sent = outlook, words, sent
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Weather and conditions"))
        set_topic(self, "conditions")
        self._weather_fields()
        self._effect_fields()
        self._result = self._small()
        set_topic(self._result, "warmth")
        self._trouble = self._small()
        self._trouble.hide()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        buttons.addButton(self.tr("&Set"), QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for part in (self._upper, self._result, self._lower, self._trouble, buttons):
            box.addWidget(part)
        at_least(self, theme().px(WIDTH_PX))
        self._fill()
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self.reckon)
        self._listen()
        self.reckon()

    def conditions(self) -> Conditions:
        """Return what is in the fields."""
        weather = None
        if self.known.isChecked():
            weather = ValleyForecast(
                self._celsius(self.coldest),
                self._celsius(self.warmest),
                float(self.humidity.value()),
                self.valley.metres,
                _hour(self.coldest_at),
                _hour(self.warmest_at),
            )
        off = tuple(e for e in Effect if not self.switches[e].isChecked())
        return Conditions(weather, off, self.lamp.value_s)

    @property
    def night_loss(self) -> float:
        """The share of speed the dark takes."""
        return self.night.value() / 100.0

    def edit(self) -> SetConditions:
        """Return the edit for what is in the fields."""
        return SetConditions(self.conditions(), self.night_loss)

    def accept(self) -> None:
        """Hand over what was typed; stay open and say why if it cannot be taken."""
        self.lamp.take_typed()
        trouble = self._sent(self.edit())
        self._say_trouble(trouble)
        if not trouble:
            super().accept()

    @Slot()
    def reckon(self) -> None:
        """Say what each effect takes, and how warm it gets along the course."""
        conditions = self.conditions()
        try:
            check_conditions(conditions)
        except PlanError as error:
            self._say_trouble(self._words.say(error.message))
            return
        self._say_trouble("")
        self._say_minutes(conditions)
        self._say_warmth(conditions.weather)
        self._fit()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Be no lower than the wrapped lines need."""
        box = self.layout()
        if box is not None:
            width = max(self.width(), self.minimumWidth())
            self.setMinimumHeight(max(box.totalHeightForWidth(width), 0))

    def _say_minutes(self, conditions: Conditions) -> None:
        project, race = self._outlook.project, self._outlook.race
        if project.course is None or race is None:
            return
        runner = replace(project.runner, night_loss=self.night_loss)
        effects = race_effects(
            replace(project, conditions=replace(conditions, off=())), project.course
        )
        times = condition_times(
            race.profile,
            race.forecast.finish_s,
            effects.without(*conditions.off),
            runner,
            race.forecast.stops,
            "forecast",
            project.race.start,
        )
        for effect, label in self.minutes.items():
            is_on = effect not in conditions.off
            label.setText(self._words.duration(times.seconds[effect]) if is_on else self.tr("off"))

    def _say_warmth(self, weather: ValleyForecast | None) -> None:
        race, words = self._outlook.race, self._words
        self._result.setVisible(weather is not None)
        if weather is None or race is None:
            return
        project = self._outlook.project
        warm = warmth(race.profile, weather, project.race, race.target)
        at_m, at_s, coldest_c = warm.coldest
        said = [
            self.tr("Coldest on your way: {0} at {1}, {2}.").format(
                words.temperature(coldest_c),
                words.distance(at_m),
                words.clock(project.race.clock(at_s)),
            )
        ]
        if warm.hottest is not None and math.isfinite(warm.hottest[2]):
            at_m, at_s, wbgt_c = warm.hottest
            said.append(
                self.tr("Hottest: {0} at {1}, {2}; WBGT about {3}.").format(
                    words.temperature(warm.at(at_m)[0]),
                    words.distance(at_m),
                    words.clock(project.race.clock(at_s)),
                    words.temperature(wbgt_c),
                )
            )
            said.append(QCoreApplication.translate("Plan", WBGT_CAVEAT))
        self._result.setText(" ".join(said))

    def _say_trouble(self, text: str) -> None:
        self._trouble.setText(text)
        self._trouble.setVisible(bool(text))
        dress(self._trouble, Pt.TEXT, theme().colours.clay)

    # The fields

    def _weather_fields(self) -> None:
        words = self._words
        self._upper = FormColumn(self)
        self._upper.add_head(self.tr("Weather of the day"))
        self.known = QCheckBox(self.tr("There is a &forecast"), self._upper)
        set_topic(self.known, "valley forecast")
        self._upper.add_ticks(self.known)
        low, high = (self._shown(c) for c in (COLDEST_C, WARMEST_C))
        unit = words.temperature_unit
        self.coldest = WholeField(words, low, high, unit, parent=self._upper)
        self.warmest = WholeField(words, low, high, unit, parent=self._upper)
        self.coldest_at, self.warmest_at = ClockField(self._upper), ClockField(self._upper)
        self.humidity = WholeField(words, 0, 100, "%", 5, self._upper)
        self.valley = HeightField(words, HIGHEST_VALLEY_M, self._upper)
        coldest = self._with_hour(self.coldest, self.coldest_at)
        warmest = self._with_hour(self.warmest, self.warmest_at)
        for label, field in (
            (self.tr("&Coldest in the valley"), coldest),
            (self.tr("W&armest in the valley"), warmest),
            (self.tr("&Humidity at the warmest"), self.humidity),
            (self.tr("H&eight of that place"), self.valley),
        ):
            self._upper.add(label, field, "valley forecast")
        self.coldest.setAccessibleName(self.tr("Coldest in the valley"))
        self.warmest.setAccessibleName(self.tr("Warmest in the valley"))
        self.coldest_at.setAccessibleName(self.tr("Hour of the coldest"))
        self.warmest_at.setAccessibleName(self.tr("Hour of the warmest"))
        self._upper.end()

    def _with_hour(self, degrees: WholeField, hour: ClockField) -> QWidget:
        """Return both fields beside each other."""
        pair = QWidget(self._upper)
        box = QHBoxLayout(pair)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(Space.APART)
        box.addWidget(degrees, 1)
        box.addWidget(QLabel(self.tr("at"), pair))
        box.addWidget(hour, 1)
        pair.setFocusProxy(degrees)
        return pair

    def _effect_fields(self) -> None:
        words = self._words
        self._lower = QWidget(self)
        grid = QGridLayout(self._lower)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(Space.WIDE)
        grid.setVerticalSpacing(Space.NEAR)
        grid.setColumnStretch(2, 1)
        head = QLabel(self.tr("Reckon with"), self._lower)
        dress(head, Pt.HEAD, theme().colours.ink, bold=True)
        takes = QLabel(self.tr("takes in all"), self._lower)
        dress(takes, Pt.LABEL, theme().colours.soft)
        grid.addWidget(head, 0, 0)
        grid.addWidget(takes, 0, 1)
        self.switches: dict[Effect, QCheckBox] = {}
        self.minutes: dict[Effect, QLabel] = {}
        names = {
            Effect.ALTITUDE: self.tr("A&ltitude"),
            Effect.HEAT: self.tr("Heat, b&y day"),
            Effect.NIGHT: self.tr("&Night"),
            Effect.DESCENTS: self.tr("&Rough descents"),
        }
        for row, effect in enumerate(Effect, 1):
            switch, label = QCheckBox(names[effect], self._lower), QLabel("", self._lower)
            set_topic(switch, "effects")
            set_topic(label, "effects")
            grid.addWidget(switch, row, 0)
            grid.addWidget(label, row, 1)
            self.switches[effect], self.minutes[effect] = switch, label
        low, high = RUNNER_RANGES["night_loss"]
        self.night = WholeField(words, 100 * low, 100 * high, "%", parent=self._lower)
        set_topic(self.night, "night loss")
        self.lamp = DurationField(words, 0.0, LONGEST_LAMP_S, True, self._lower)
        set_topic(self.lamp, "lamp")
        row = self._add_row(grid, 5, self.tr("The dark ta&kes, an estimate"), self.night)
        self._add_row(grid, row, self.tr("Lam&p burns, all cells"), self.lamp)
        dark = QLabel("", self._lower)
        set_topic(dark, "light")
        dark.setText(
            self.tr("{0} dark").format(words.duration(dark_s(self._outlook.light)))
            if self._outlook.light
            else ""
        )
        dress(dark, Pt.LABEL, theme().colours.soft)
        grid.addWidget(dark, row, 2)

    def _add_row(self, grid: QGridLayout, row: int, text: str, field: QWidget) -> int:
        label = QLabel(text, self._lower)
        label.setBuddy(field)
        field.setAccessibleName(text.replace("&", ""))
        grid.addWidget(label, row, 0)
        grid.addWidget(field, row, 1)
        return row + 1

    def _small(self) -> QLabel:
        label = QLabel("", self)
        label.setWordWrap(True)
        dress(label, Pt.LABEL, theme().colours.soft)
        return label

    def _fill(self) -> None:
        project = self._outlook.project
        conditions = project.conditions
        profile = self._outlook.profile
        start_m = profile.elevation_at(0.0) if profile is not None else 0.0
        weather = conditions.weather or replace(USUAL, valley_m=max(round(start_m), 0.0))
        self.known.setChecked(conditions.weather is not None)
        self.coldest.setValue(round(self._shown(weather.coldest_c)))
        self.warmest.setValue(round(self._shown(weather.warmest_c)))
        self.coldest_at.setTime(_time(weather.coldest_h))
        self.warmest_at.setTime(_time(weather.warmest_h))
        self.humidity.setValue(round(weather.humidity_percent))
        self.valley.set_metres(weather.valley_m)
        for effect, switch in self.switches.items():
            switch.setChecked(effect not in conditions.off)
        self.night.setValue(round(100.0 * project.runner.night_loss))
        self.lamp.set_value(conditions.lamp_s)
        self._show_known()

    def _listen(self) -> None:
        again = self._on_typed
        for spin in (self.coldest, self.warmest, self.humidity, self.night):
            spin.valueChanged.connect(again)
        self.valley.valueChanged.connect(again)
        for clock in (self.coldest_at, self.warmest_at):
            clock.timeChanged.connect(again)
        for tick in (self.known, *self.switches.values()):
            tick.toggled.connect(again)
        self.known.toggled.connect(self._show_known)

    @Slot()
    def _on_typed(self) -> None:
        # not connected by itself: start() would take what a signal carries for milliseconds
        self._pause.start()

    @Slot()
    def _show_known(self) -> None:
        is_known = self.known.isChecked()
        for field in (
            *(self.coldest, self.coldest_at, self.warmest, self.warmest_at),
            *(self.humidity, self.valley),
        ):
            field.setEnabled(is_known)
        self.switches[Effect.HEAT].setEnabled(is_known)

    def _shown(self, celsius: float) -> float:
        is_metric = self._words.units == "metric"
        return celsius if is_metric else reading.fahrenheit(celsius)

    def _celsius(self, field: QSpinBox) -> float:
        is_metric = self._words.units == "metric"
        return float(field.value()) if is_metric else reading.celsius(field.value())


def _hour(field: ClockField) -> float:
    at = field.time()
    return at.hour() + at.minute() / 60.0


def _time(hour: float) -> QTime:
    minutes = round(hour * 60.0) % 1440
    return QTime(minutes // 60, minutes % 60)

"""What the runner has and wants beyond the short form: figures, rules, wishes, days away."""

from __future__ import annotations

from datetime import date

from msgspec.structs import replace
from PySide6.QtCore import QDate, Qt, QTime, Signal, Slot
from PySide6.QtWidgets import (
    QBoxLayout,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.edits.race import ChangeSetup
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.runner import Health, Runner
from ultraplanner_gui.plan.wishes import Ask, Away, Ramp, Wishes, Yardstick
from ultraplanner_gui.widgets.fields import (
    ClockField,
    DateField,
    DurationField,
    HeightField,
    WholeField,
    describe,
)
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

WEEK_S = 168 * 3600.0
MOST_DROP_M = 20_000.0
MOST_A_WEEK = 7
WISHES, FIGURES, AWAY = "wishes", "figures of the runner", "days away"


class WishesForm(QDialog):
    """Two columns, and days away under them; sent, all of it is one step."""

    def __init__(self, document: Document, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document, self._words = document, words
        self._of = document.project.runner
        self.setWindowTitle(self.tr("Wishes and days away"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, WISHES)
        self.figures = _Figures(self._of, words, self)
        self.wishes = _WishFields(self._of, words, self)
        self.away = AwayRows(self._of.away, words, document.before.today, self)
        inside = QWidget(self)
        columns = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        columns.setSpacing(round(theme().px(26.0)))
        columns.addWidget(self.figures, 1)
        columns.addWidget(self.wishes, 1)
        held = QVBoxLayout(inside)
        held.setContentsMargins(0, 0, Space.NEAR, 0)
        held.setSpacing(Space.WIDE)
        held.addLayout(columns)
        held.addWidget(self.away)
        held.addStretch(1)
        area = QScrollArea(self)
        area.setWidget(inside)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.trouble = QLabel("", self)
        self.trouble.setWordWrap(True)
        dress(self.trouble, Pt.TEXT, theme().colours.clay)
        self.trouble.hide()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        send = buttons.addButton(self.tr("C&hange"), QDialogButtonBox.ButtonRole.AcceptRole)
        send.setDefault(True)
        buttons.accepted.connect(self._on_sent)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for widget in (area, self.trouble, buttons):
            box.addWidget(widget, 1 if widget is area else 0)
        document.refused.connect(self._on_refused)
        room = self.screen().availableSize() * 0.9
        if parent is not None:
            room = room.expandedTo(parent.window().size() * 0.9)
        if inside.sizeHint().width() + 3 * Space.EDGE > room.width():
            columns.setDirection(QBoxLayout.Direction.TopToBottom)
        hint = inside.sizeHint()
        wanted_w = hint.width() + 2 * Space.EDGE + area.verticalScrollBar().sizeHint().width() + 12
        wanted_h = hint.height() + round(theme().px(110.0))
        self.resize(min(wanted_w, room.width()), min(wanted_h, room.height()))

    def runner(self) -> Runner:
        """Return the runner as the fields have it."""
        runner = self.figures.taken(self._of)
        return replace(runner, wishes=self.wishes.wishes(), away=self.away.away())

    @Slot()
    def _on_sent(self) -> None:
        self.trouble.hide()
        project = self._document.project
        edit = ChangeSetup(project.race, self.runner(), project.first_weekday)
        if self._document.perform(edit):
            self.accept()

    @Slot(object)
    def _on_refused(self, why: Message) -> None:
        self.trouble.setText(self._words.say(why))
        self.trouble.show()


class _Figures(FormColumn):
    """What the runner does now, as far as it is known: 0 is unknown."""

    def __init__(self, runner: Runner, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.add_head(self.tr("What is run now"))
        unknown = self.tr("Empty or 0: unknown. Distances stand in Race and runner.")
        set_topic(self.add_note(unknown), FIGURES)
        self.week = DurationField(words, 0.0, WEEK_S, optional=True, parent=self)
        self.longest = DurationField(words, 0.0, LONGEST_RACE_S, optional=True, parent=self)
        self.week.set_value(runner.weekly_s or None)
        self.longest.set_value(runner.longest_s or None)
        self.drop = HeightField(words, MOST_DROP_M, self)
        self.drop.set_metres(runner.longest_drop_m)
        self._drop_shown = self.drop.value()
        self.hill = WholeField(words, 0, 2_000, "m/h", 50, self)
        self.hill.setValue(round(runner.hill_m_per_h))
        self.add(self.tr("On fee&t in a usual week"), self.week, FIGURES)
        self.add(self.tr("Lon&gest run lasted"), self.longest, FIGURES)
        self.add(self.tr("Its &drop"), self.drop, FIGURES)
        self.add(self.tr("Easy effort clim&bs"), self.hill, FIGURES)
        self.yardstick = _choice(
            self,
            (
                (Yardstick.BY_RACE, self.tr("what suits the race")),
                (Yardstick.DISTANCE, self.tr("distance")),
                (Yardstick.TIME, self.tr("time on feet")),
                (Yardstick.FLAT, self.tr("flat-equivalent distance")),
            ),
            runner.wishes.yardstick,
        )
        self.add(self.tr("&Volume counted by"), self.yardstick, FIGURES)
        self.starts = tuple(ClockField(self) for _ in range(2))
        for field, weekday in zip(self.starts, (0, 5), strict=True):
            field.setTime(QTime(0, 0).addSecs(round(runner.start_s[weekday])))
        self.add(self.tr("Runs start, &Mon to Fri"), self.starts[0], FIGURES)
        self.add(self.tr("R&uns start, Sat and Sun"), self.starts[1], FIGURES)
        self._starts_shown = self._starts()
        self.end()

    def _starts(self) -> tuple[float, ...]:
        week, weekend = (float(QTime(0, 0).secsTo(f.time())) for f in self.starts)
        return (*(week,) * 5, weekend, weekend)

    def taken(self, runner: Runner) -> Runner:
        """Return *runner* with the figures of the fields."""
        for field in (self.week, self.longest):
            field.take_typed()
        same_drop = self.drop.value() == self._drop_shown
        hill = self.hill.value()
        return replace(
            runner,
            weekly_s=self.week.value_s or 0.0,
            longest_s=self.longest.value_s or 0.0,
            start_s=runner.start_s if self._starts() == self._starts_shown else self._starts(),
            longest_drop_m=runner.longest_drop_m if same_drop else self.drop.metres,
            hill_m_per_h=runner.hill_m_per_h if hill == round(runner.hill_m_per_h) else float(hill),
        )


class _WishFields(FormColumn):
    """Rules and wishes of the build-up."""

    def __init__(self, runner: Runner, words: Words, parent: WishesForm) -> None:
        super().__init__(parent)
        self._of, self._form = runner.wishes, parent
        wishes = runner.wishes
        self.add_head(self.tr("Wishes"))
        self.cutback = _choice(
            self,
            ((4, self.tr("every 4th week")), (3, self.tr("every 3rd week"))),
            wishes.cutback_every,
        )
        self.ramp = _choice(
            self,
            (
                (Ramp.ON, self.tr("on from the last loading week")),
                (Ramp.BACK, self.tr("back to it first, the gentler one")),
            ),
            wishes.ramp,
        )
        self.downhill = _choice(
            self,
            (
                (Ask.BY_RACE, self.tr("where the race asks for them")),
                (Ask.YES, self.tr("yes")),
                (Ask.NO, self.tr("no")),
            ),
            wishes.downhill,
        )
        self.strength = WholeField(words, 0, MOST_A_WEEK, self.tr("a week"), parent=self)
        self.cross = WholeField(words, 0, MOST_A_WEEK, self.tr("a week"), parent=self)
        self.fasted = WholeField(words, 0, MOST_A_WEEK, self.tr("a week"), parent=self)
        for field, value in (
            (self.strength, wishes.strength),
            (self.cross, wishes.cross),
            (self.fasted, wishes.fasted),
        ):
            field.setValue(value)
        self.add(self.tr("&Cutback"), self.cutback, WISHES)
        self.add(self.tr("Weeks &after it grow"), self.ramp, WISHES)
        self.add(self.tr("Downhi&ll runs"), self.downhill, WISHES)
        self.add(self.tr("&Strength"), self.strength, WISHES)
        self.add(self.tr("Cr&oss-training"), self.cross, WISHES)
        self.add(self.tr("&Fasted easy runs"), self.fasted, WISHES)
        self.fasted.setEnabled(runner.health is Health.CLEAR)
        self.heat = self._tick(self.tr("H&eat days"), wishes.heat_days)
        self.heat.setEnabled(runner.health is Health.CLEAR)
        healthy = self.add_note(
            self.tr(
                "Fasted runs and heat days: only after the questions on health came to no. Not "
                "under 18, pregnant, ill, injured, with diabetes, fainting or an eating disorder."
            )
        )
        set_topic(healthy, "health")
        self.back = self._tick(self.tr("Back-to-bac&ks"), wishes.back_to_back)
        self.night = self._tick(self.tr("&Night runs"), wishes.night_runs)
        self.mind = self._tick(self.tr("Mental &rehearsal"), wishes.mind)
        self.add_ticks(self.back, self.night)
        self.add_ticks(self.mind, self.heat)
        self.end()

    def wishes(self) -> Wishes:
        """Return the wishes as the fields have them."""
        return replace(
            self._of,
            cutback_every=int(self.cutback.currentData()),
            ramp=Ramp(self.ramp.currentData()),
            yardstick=Yardstick(self._form.figures.yardstick.currentData()),
            strength=self.strength.value(),
            cross=self.cross.value(),
            back_to_back=self.back.isChecked(),
            downhill=Ask(self.downhill.currentData()),
            night_runs=self.night.isChecked(),
            heat_days=self.heat.isChecked(),
            mind=self.mind.isChecked(),
            fasted=self.fasted.value(),
        )

    def _tick(self, text: str, is_on: bool) -> QCheckBox:
        tick = QCheckBox(text, self)
        tick.setChecked(is_on)
        set_topic(tick, WISHES)
        return tick


class AwayRows(QWidget):
    """Days on which no run fits, or less of one: first, last, minutes, why."""

    def __init__(
        self, away: tuple[Away, ...], words: Words, today: date, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._words, self._today = words, today
        self._rows: list[_AwayRow] = []
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(Space.CLOSE)
        head = QLabel(self.tr("Days away"), self)
        dress(head, Pt.HEAD, theme().colours.ink, bold=True)
        note = QLabel(
            self.tr("Travel, holidays, shifts: first and last day, minutes free on each, why."),
            self,
        )
        dress(note, Pt.LABEL, theme().colours.soft)
        self.add = QPushButton(self.tr("Add da&ys away"), self)
        self.add.setAutoDefault(False)
        self.add.clicked.connect(self._on_add)
        set_topics({self: AWAY, self.add: AWAY})
        for widget in (head, note):
            self._box.addWidget(widget)
        self._box.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)
        for one in away:
            self._put(one)

    def away(self) -> tuple[Away, ...]:
        """Return what the rows say."""
        return tuple(row.away() for row in self._rows)

    def _put(self, away: Away) -> None:
        row = _AwayRow(away, self._words, self)
        row.gone.connect(self._on_gone)
        self._rows.append(row)
        self._box.insertWidget(self._box.count() - 1, row)

    @Slot(object)
    def _on_gone(self, row: _AwayRow) -> None:
        self._rows.remove(row)
        self._box.removeWidget(row)
        row.hide()
        row.deleteLater()

    @Slot()
    def _on_add(self) -> None:
        self._put(Away(self._today, self._today))
        self._rows[-1].first.setFocus()


class _AwayRow(QWidget):
    """One row of `AwayRows`; `gone` carries it when it is to be removed."""

    gone = Signal(object)

    def __init__(self, away: Away, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        self.first, self.last = DateField(self), DateField(self)
        self.minutes = WholeField(words, 0, 1_440, "min", 10, self)
        self.why = QLineEdit(away.why, self)
        describe(self.why, self.tr("Why, if you like"))
        for field, day in ((self.first, away.first), (self.last, away.last)):
            field.setDate(QDate(day.year, day.month, day.day))
        self.minutes.setValue(round(away.free_s / 60.0))
        self.remove = QPushButton(self.tr("Remove"), self)
        self.remove.setAutoDefault(False)
        self.remove.clicked.connect(self._on_remove)
        named: tuple[tuple[QWidget, str], ...] = (
            (self.first, self.tr("First day away")),
            (self.last, self.tr("Last day away")),
            (self.minutes, self.tr("Minutes free on each day")),
            (self.why, self.tr("Why")),
        )
        for widget, name in named:
            widget.setAccessibleName(name)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.CLOSE)
        for widget in (self.first, self.last, self.minutes):
            row.addWidget(widget)
        row.addWidget(self.why, 1)
        row.addWidget(self.remove)

    @Slot()
    def _on_remove(self) -> None:
        self.gone.emit(self)

    def away(self) -> Away:
        """Return what the row says."""
        first, last = (
            date(d.year(), d.month(), d.day()) for d in (self.first.date(), self.last.date())
        )
        return Away(first, last, 60.0 * self.minutes.value(), self.why.text().strip())


def _choice(parent: QWidget, entries: tuple[tuple[object, str], ...], chosen: object) -> QComboBox:
    box = QComboBox(parent)
    for value, text in entries:
        box.addItem(text, value)
    box.setCurrentIndex([value for value, _ in entries].index(chosen))
    return box

"""Days missed: what happened, then the ways to mend the build-up side by side."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import QDate, Qt, Signal, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QRadioButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.edits.block_moves import TakeRepair
from ultraplanner_gui.engine.repair_request import Absence, Cause, Change, Choice, Repair
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.widgets.fields import DateField
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.rows import Figure, Heads, Row, Rows, Rule, Sentence
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

COLUMN_PX = 290.0
HEIGHT_PX = 580.0
#: It takes this share of the height of the window at most.
LOW_SHARE = 0.52
ASK_PX = 430.0
TOPIC = "missed days"


class RepairForm(QDialog):
    """Asks which days were missed and why; `asked` carries the `Absence`."""

    asked = Signal(object)

    def __init__(
        self, missed: tuple[date, date], words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._words = words
        self.setWindowTitle(self.tr("I missed these days"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, TOPIC)
        fields = FormColumn(self)
        fields.add_note(
            self.tr(
                "What is missed is not made up. The rest is changed as little as the rules allow."
            )
        )
        self.first, self.last = DateField(self), DateField(self)
        for field, day in zip((self.first, self.last), missed, strict=True):
            field.setDate(QDate(day.year, day.month, day.day))
        self.cause = QComboBox(self)
        for cause, text in (
            (Cause.LIFE, self.tr("Life: work, family, travel")),
            (Cause.ILLNESS, self.tr("Illness")),
            (Cause.INJURY, self.tr("Injury")),
        ):
            self.cause.addItem(text, cause)
        self.fever = QCheckBox(self.tr("Fe&ver, chest symptoms or aches all over, not yet gone"))
        self.cleared = QCheckBox(self.tr("Whoever &treats it allows running again"))
        fields.add(self.tr("&First day missed"), self.first, TOPIC)
        fields.add(self.tr("&Last day missed"), self.last, TOPIC)
        fields.add(self.tr("&Why"), self.cause, TOPIC)
        fields.add_ticks(self.fever)
        fields.add_ticks(self.cleared)
        set_topics({self.fever: TOPIC, self.cleared: TOPIC})
        fields.end()
        self.trouble = _label("", self, "clay")
        self.trouble.hide()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.send = buttons.addButton(
            self.tr("&Show the ways to mend"), QDialogButtonBox.ButtonRole.AcceptRole
        )
        self.send.setDefault(True)
        buttons.accepted.connect(self._on_sent)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for widget in (fields, self.trouble, buttons):
            box.addWidget(widget)
        at_least(self, theme().px(ASK_PX))
        self.cause.currentIndexChanged.connect(self._on_cause)
        self._on_cause()

    def absence(self) -> Absence:
        """Return what the fields say."""
        first, last = (_day(f.date()) for f in (self.first, self.last))
        cause = Cause(self.cause.currentData())
        return Absence(
            first,
            last,
            cause,
            has_red_flag=cause is Cause.ILLNESS and self.fever.isChecked(),
            is_cleared=cause is Cause.INJURY and self.cleared.isChecked(),
        )

    def complain(self, sentence: str) -> None:
        """Say in the form why nothing can be mended by it."""
        self.trouble.setText(sentence)
        self.trouble.show()

    @Slot()
    def _on_cause(self) -> None:
        cause = Cause(self.cause.currentData())
        self.fever.setEnabled(cause is Cause.ILLNESS)
        self.cleared.setEnabled(cause is Cause.INJURY)

    @Slot()
    def _on_sent(self) -> None:
        absence = self.absence()
        if absence.last_day < absence.first_day:
            self.complain(self.tr("The last day missed lies before the first; swap them."))
            return
        self.asked.emit(absence)
        self.accept()


class ChoicesForm(QDialog):
    """The ways to mend side by side; the one looked at is shown in the grid, on trial."""

    def __init__(
        self,
        document: Document,
        repair: Repair,
        words: Words,
        show_red_flags: Callable[[], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._repair, self._words = document, repair, words
        self._base = document.project
        self.setWindowTitle(self.tr("Ways to mend the build-up"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, TOPIC)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        self.choices = QButtonGroup(self)
        if repair.refusal is not None:
            box.addWidget(_label(words.say(repair.refusal), self, "clay", bold=True))
        for advice in repair.advice:
            box.addWidget(_label(words.say(advice), self, "ink"))
        columns = QHBoxLayout()
        columns.setSpacing(Space.WIDE)
        for number, choice in enumerate(repair.choices):
            columns.addWidget(self._column(number, choice), 1)
        box.addLayout(columns, 1)
        box.addWidget(self._buttons(show_red_flags))
        look = theme()
        width = look.px(COLUMN_PX) * max(1.5, len(repair.choices)) + 2 * Space.EDGE
        self.resize(round(width), round(look.px(HEIGHT_PX if repair.choices else 160.0)))
        document.changed.connect(self._on_changed)
        self.choices.idToggled.connect(self._on_toggled)
        self.finished.connect(self._on_finished)
        if repair.choices:
            self.choices.button(0).setChecked(True)
            self.choices.button(0).setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        # At the foot of the window, so that the day grid above shows the way looked at.
        parent = self.parentWidget()
        if parent is not None and self._repair.choices:
            around = parent.window().geometry()
            self.resize(self.width(), min(self.height(), round(LOW_SHARE * around.height())))
            left = around.left() + (around.width() - self.width()) // 2
            self.move(left, around.bottom() - self.height())
        super().showEvent(event)

    @property
    def chosen(self) -> Choice | None:
        """The way that is looked at."""
        number = self.choices.checkedId()
        return self._repair.choices[number] if number >= 0 else None

    def _column(self, number: int, choice: Choice) -> QWidget:
        column = QFrame(self)
        box = QVBoxLayout(column)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(Space.CLOSE)
        button = QRadioButton(f"&{number + 1}  {self._words.say(choice.name)}", column)
        button.setFont(theme().font(Pt.STRONG, bold=True))
        set_topic(button, TOPIC)
        self.choices.addButton(button, number)
        box.addWidget(button)
        rows = Rows(self._words.say(choice.name), column)
        rows.show_rows(choice_rows(choice, self._words))
        area = QScrollArea(column)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        inside = QWidget(area)
        held = QVBoxLayout(inside)
        held.setContentsMargins(0, 0, Space.NEAR, 0)
        held.addWidget(rows)
        held.addStretch(1)
        area.setWidget(inside)
        box.addWidget(area, 1)
        return column

    def _buttons(self, show_red_flags: Callable[[], None]) -> QDialogButtonBox:
        buttons = QDialogButtonBox(self)
        flags = QPushButton(self.tr("When to &stop and get help"), self)
        flags.clicked.connect(show_red_flags)
        buttons.addButton(flags, QDialogButtonBox.ButtonRole.HelpRole)
        if self._repair.choices:
            self.put_in = buttons.addButton(
                self.tr("&Put it in"), QDialogButtonBox.ButtonRole.AcceptRole
            )
            self.put_in.setDefault(True)
        leave = QDialogButtonBox.StandardButton.Cancel
        if not self._repair.choices:
            leave = QDialogButtonBox.StandardButton.Close
        buttons.addButton(leave)
        buttons.accepted.connect(self._on_put_in)
        buttons.rejected.connect(self.reject)
        return buttons

    @Slot(int, bool)
    def _on_toggled(self, number: int, is_on: bool) -> None:
        if is_on and self._document.project is self._base:
            self._document.try_edit(TakeRepair(self._repair.choices[number].block))

    @Slot()
    def _on_put_in(self) -> None:
        choice = self.chosen
        if choice is not None and self._document.perform(TakeRepair(choice.block)):
            self.accept()

    @Slot(object, object)
    def _on_changed(self, before: object, after: object) -> None:
        # Changed by anything else, the ways no longer fit what is there.
        if self._document.project is not self._base and self.result() == 0:
            self.reject()

    @Slot(int)
    def _on_finished(self, result: int) -> None:
        if result == QDialog.DialogCode.Rejected:
            self._document.drop_trial()


def choice_rows(choice: Choice, words: Words) -> tuple[Row, ...]:
    """Return what there is to say of one way: why, what it costs, every session it changes."""
    cost = choice.cost
    proven = tr("Proven: no way keeps these rules with fewer changes.")
    best = tr("The best found in the time; fewer changes may be possible.")
    rows: list[Row] = [
        Sentence(words.say(choice.why), TOPIC),
        Sentence(proven if choice.is_proven else best, TOPIC),
        *(Sentence(words.say(note), TOPIC) for note in choice.notes),
        Rule(),
        Heads(tr("What it costs"), topic=TOPIC),
        _cost(tr("Greatest week"), cost.peak_m, words),
        _cost(tr("Longest run"), cost.longest_m, words),
        _cost(tr("In all"), cost.total_m, words),
        Figure(tr("Loading weeks lost"), words.number(cost.weeks), topic=TOPIC),
        Rule(),
        Heads(tr("Sessions changed: {0}").format(len(choice.changes)), topic=TOPIC),
    ]
    rows += [Sentence(change_sentence(change, words), TOPIC) for change in choice.changes]
    return tuple(rows)


def change_sentence(change: Change, words: Words) -> str:
    """Return one change in words: where it stood, what it was and what it becomes."""
    before, after = change.before, change.after
    if after is None and before is not None:
        return tr("{0}: {1} goes").format(words.day(before.day), _said(before, words))
    if before is None and after is not None:
        return tr("{0}: {1} comes in").format(words.day(after.day), _said(after, words))
    assert before is not None
    assert after is not None
    now = _said(after, words)
    if after.day != before.day:
        now = tr("{0} on {1}").format(now, words.day(after.day))
    return tr("{0}: {1} becomes {2}").format(words.day(before.day), _said(before, words), now)


def _said(session: Session, words: Words) -> str:
    return f"{kinds.say(kinds.FULL[session.kind])} {kinds.planned_figure(session, words)}".strip()


def _cost(label: str, metres: float, words: Words) -> Figure:
    text = words.distance(abs(metres), 1)
    sign = "−" if metres > 0.0 else "+" if metres < 0.0 else ""
    return Figure(label, f"{sign}{text}", topic=TOPIC)


def _label(text: str, parent: QWidget, colour: str, bold: bool = False) -> QLabel:
    label = QLabel(text, parent)
    label.setWordWrap(True)
    dress(label, Pt.TEXT, getattr(theme().colours, colour), bold=bold)
    return label


def _day(day: QDate) -> date:
    return date(day.year(), day.month(), day.day())


def likely_missed(document: Document) -> tuple[date, date]:
    """Return the days the form proposes: from the first one not marked lately to yesterday."""
    today = document.before.today
    yesterday = today - timedelta(days=1)
    unmarked = [
        s.day
        for s in document.project.block.sessions
        if s.day < today and (s.is_open or s.missed) and (today - s.day).days <= 28
    ]
    return (min(unmarked, default=yesterday), yesterday)

"""Typing a week sheet back in by keys, in the order in which it is written on paper."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QObject, Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.cards.week_content import GUTS, heads, measure_of, weeks_ahead
from ultraplanner_gui.edits.logistics import TypeWeekBack
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.weeks import WeekFigures
from ultraplanner_gui.plan.block import Done, Gut, Session
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

WIDTH_PX, HEIGHT_PX = 980.0, 560.0
NARROW_LETTERS = 8


#: What the help says of each column.
TOPICS = (
    *("done or missed", "session distance", "session time", "session climb", "session climb"),
    *("effort", "carbs eaten", "gut", "session note"),
)


class TypeBack(QDialog):
    """One week at a time, a row to each session; *sent* returns what is wrong with the edit.

    Enter goes from field to field, as the eye goes along the sheet; after the last it sends.
    """

    def __init__(
        self,
        outlook: Outlook,
        words: Words,
        sent: Callable[[TypeWeekBack], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._outlook, self._words, self._sent = outlook, words, sent
        self.setWindowTitle(self.tr("Type a week back in"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "type a week back")
        self.week = QComboBox(self)
        self.week.setAccessibleName(self.tr("Week"))
        set_topic(self.week, "weeks to go")
        self.rows: list[SessionRow] = []
        self._scroll = QScrollArea(self)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._trouble = QLabel(self)
        self._trouble.setWordWrap(True)
        dress(self._trouble, Pt.TEXT, theme().colours.clay)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.addWidget(self.week)
        box.addWidget(self._scroll, 1)
        box.addWidget(self._trouble)
        box.addWidget(self.buttons)
        self._fill_weeks()
        self.week.currentIndexChanged.connect(self._on_week)
        self.resize(round(theme().px(WIDTH_PX)), round(theme().px(HEIGHT_PX)))
        self._on_week()

    def edit(self) -> TypeWeekBack:
        """Return what was typed; rows nobody touched stay as they are."""
        marks = [(row.session.key, row.done()) for row in self.rows if row.is_filled()]
        return TypeWeekBack(tuple(marks))

    def accept(self) -> None:
        """Send what was typed; stay open and say what is wrong."""
        for row in self.rows:
            wrong = row.unread()
            if wrong is not None:
                self._trouble.setText(
                    self.tr("{0} cannot be read here: {1}").format(
                        wrong.text(), wrong.accessibleName()
                    )
                )
                wrong.setFocus()
                wrong.selectAll()
                return
        trouble = self._sent(self.edit())
        self._trouble.setText(trouble)
        if not trouble:
            super().accept()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        ):
            self._go_on(watched)
            return True
        return super().eventFilter(watched, event)

    def _go_on(self, watched: QObject) -> None:
        fields = [field for row in self.rows for field in row.fields if field.isEnabled()]
        place = next((k for k, field in enumerate(fields) if field is watched), -1)
        if 0 <= place < len(fields) - 1:
            fields[place + 1].setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.buttons.button(QDialogButtonBox.StandardButton.Ok).setFocus()

    def _fill_weeks(self) -> None:
        weeks = [week for week in self._outlook.weeks if week.sessions]
        ahead = {week.to_go for week in weeks_ahead(self._outlook)[1:]}
        due = 0
        for number, week in enumerate(weeks):
            self.week.addItem(self._week_text(week), week)
            if week.to_go not in ahead and any(self._is_open(key) for key in week.sessions):
                due = number
        self.week.setCurrentIndex(due)

    def _is_open(self, key: str) -> bool:
        return self._outlook.project.block.session(key).is_open

    def _week_text(self, week: WeekFigures) -> str:
        return self.tr("{0} to go, from {1}").format(
            self._words.number(week.to_go), self._words.day(week.start)
        )

    @Slot()
    def _on_week(self) -> None:
        week = self.week.currentData()
        inside = QWidget(self._scroll)
        grid = QGridLayout(inside)
        grid.setVerticalSpacing(Space.CLOSE)
        block = self._outlook.project.block
        sessions = [block.session(key) for key in week.sessions] if week is not None else []
        self.rows = [SessionRow(session, self._words, inside) for session in sessions]
        for column, head in enumerate(heads(self._words) if self.rows else (), 1):
            grid.addWidget(QLabel(head, inside), 0, column)
        for number, row in enumerate(self.rows, 1):
            grid.addWidget(row.label, number, 0)
            for column, field in enumerate(row.fields, 1):
                grid.addWidget(field, number, column)
                field.installEventFilter(self)
        grid.setRowStretch(len(self.rows) + 1, 1)
        self._scroll.setWidget(inside)
        if self.rows:
            self.rows[0].fields[0].setFocus()


class SessionRow:
    """The fields of one session, in the order of the sheet."""

    def __init__(self, session: Session, words: Words, parent: QWidget) -> None:
        self.session, self._words = session, words
        kind = words.translate(session.kind.value)
        day = words.day(session.day)
        self.label = QLabel(f"{day} · {kind} · {measure_of(session, words)}", parent)
        self.missed = QCheckBox(parent)
        self.distance, self.time, self.climb, self.drop, self.effort, self.carbs = (
            self._line(parent) for _ in range(6)
        )
        self.gut = QComboBox(parent)
        self.gut.addItem("", None)
        for gut, text in GUTS.items():
            self.gut.addItem(words.translate(text), gut)
        self.note = QLineEdit(parent)
        self.fields: Sequence[QWidget] = (
            *(self.missed, self.distance, self.time, self.climb, self.drop),
            *(self.effort, self.carbs, self.gut, self.note),
        )
        for field, head, topic in zip(self.fields, heads(words), TOPICS, strict=True):
            field.setAccessibleName(f"{self.label.text()}: {head}")
            set_topic(field, topic)
        set_topic(self.label, session.kind.value)
        self.missed.toggled.connect(self._on_missed)
        self._show()
        self._before = self._typed()

    def is_filled(self) -> bool:
        """Whether anything was typed or ticked here."""
        return self._typed() != self._before

    def unread(self) -> QLineEdit | None:
        """Return the first field that cannot be read."""
        if not self.is_filled() or self.missed.isChecked():
            return None
        words = self._words
        readings = (
            (self.distance, words.parse_distance),
            (self.time, words.parse_duration),
            (self.climb, words.parse_height),
            (self.drop, words.parse_height),
            (self.effort, words.parse_number),
            (self.carbs, words.parse_number),
        )
        for field, read in readings:
            if field.text().strip() and read(field.text()) is None:
                return field
        return None

    def done(self) -> Done | None:
        """Return what was done, None if it was missed; what was left empty is as planned."""
        if self.missed.isChecked():
            return None
        words, plan = self._words, self.session.actual if self.session.done else self.session
        carb_g = plan.carb_g if isinstance(plan, Done) else 0.0
        return Done(
            distance_m=_or(words.parse_distance(self.distance.text()), plan.distance_m),
            duration_s=_or(words.parse_duration(self.time.text()), plan.duration_s),
            climb_m=_or(words.parse_height(self.climb.text()), plan.climb_m),
            drop_m=_or(words.parse_height(self.drop.text()), plan.drop_m),
            effort=round(_or(words.parse_number(self.effort.text()), plan.effort)),
            carb_g=_or(words.parse_number(self.carbs.text()), carb_g),
            gut=self._gut(),
            note=self.note.text().strip(),
            foods=self.session.done.foods if self.session.done else (),
        )

    def _gut(self) -> Gut | None:
        gut = self.gut.currentData()
        return Gut(gut) if gut is not None else None

    def _typed(self) -> tuple[object, ...]:
        lines = (
            self.distance,
            self.time,
            self.climb,
            self.drop,
            self.effort,
            self.carbs,
            self.note,
        )
        return (
            self.missed.isChecked(),
            *(line.text().strip() for line in lines),
            self.gut.currentIndex(),
        )

    def _line(self, parent: QWidget) -> QLineEdit:
        field = QLineEdit(parent)
        field.setMaximumWidth(NARROW_LETTERS * field.fontMetrics().averageCharWidth() + 24)
        return field

    def _show(self) -> None:
        session, words, done = self.session, self._words.plain(), self.session.done
        self.missed.setChecked(session.missed)
        plan = session if done is None else done
        hints = (
            (self.distance, words.distance_bare(plan.distance_m)),
            (self.time, words.duration(plan.duration_s)),
            (self.climb, words.height_bare(plan.climb_m)),
            (self.drop, words.height_bare(plan.drop_m)),
            (self.effort, words.number(plan.effort)),
        )
        for field, text in hints:
            field.setPlaceholderText(text)
            if done is not None:
                field.setText(text)
        if done is not None:
            self.carbs.setText(words.number(done.carb_g))
            self.gut.setCurrentIndex(max(0, self.gut.findData(done.gut)))
            self.note.setText(done.note)

    def _on_missed(self, is_missed: bool) -> None:
        for field in self.fields[1:]:
            field.setEnabled(not is_missed)


def _or(value: float | None, otherwise: float) -> float:
    return otherwise if value is None else value

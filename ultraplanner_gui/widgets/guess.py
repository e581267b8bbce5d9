"""A field with "I don't know" beside it: a careful value goes in, and a line says why."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtCore import QCoreApplication, QObject, Signal, Slot
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QComboBox,
    QDateTimeEdit,
    QDoubleSpinBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QWidget,
)

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.fields import DurationField
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space

V = TypeVar("V")

OWN = QT_TRANSLATE_NOOP("Guesses", "an estimate of our own")
CUSTOM = QT_TRANSLATE_NOOP("Guesses", "common practice, no source")

WHY_PT = Pt.LABEL
BUTTON_PT = Pt.LABEL


class Guess(Value, Generic[V], frozen=True):
    """A careful value for who does not know, one line of why, and where the value is from."""

    value: V
    why: str
    source: str


def mark(source: str) -> str:
    """Return where a value is from, in the user's language."""
    return QCoreApplication.translate("Guesses", source)


class GuessField(QWidget, Generic[V]):
    """A field and a button that puts a careful guess into it.

    The guess stands in soft ink with a line under it that says why; typing takes its place,
    and the button, pressed again, brings back what was there. `changed` says that the field
    holds another value, by whichever way.
    """

    changed = Signal()

    def __init__(
        self,
        field: QWidget,
        name: str,
        read: Callable[[], V],
        write: Callable[[V], None],
        guess: Callable[[], Guess[V]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.field = field
        self._name, self._read, self._write, self._guess = name, read, write, guess
        self._before: V | None = None
        self._is_guessed = self._is_writing = False
        self._description = field.accessibleDescription()
        field.setAccessibleName(name)
        self.button = QPushButton(self)
        self.button.setFlat(True)
        self.button.setAutoDefault(False)
        self.button.setCheckable(True)
        self.button.clicked.connect(self._on_clicked)
        self.why = QLabel("", self)
        self.why.setWordWrap(True)
        self.why.hide()
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(Space.TIGHT)
        grid.setVerticalSpacing(Space.HAIR)
        grid.addWidget(field, 0, 0)
        grid.addWidget(self.button, 0, 1)
        grid.addWidget(self.why, 1, 0, 1, 2)
        grid.setColumnStretch(0, 1)
        QWidget.setTabOrder(stops_of(field)[-1], self.button)
        _listen(field, self)
        theme().changed.connect(self._dress)
        self._show_state()
        self._dress()

    @property
    def is_guessed(self) -> bool:
        """Whether the value is a guess nobody has typed over."""
        return self._is_guessed

    def guess(self, says_why: bool = True) -> None:
        """Put the guess in; without *says_why* only the pointer is told why."""
        if not self._is_guessed:
            self._before = self._read()
        self._is_guessed = True
        self._put(self._guess().value)
        self._show_state(says_why)

    def renew(self) -> None:
        """Make the guess anew, if there is one, from what other fields hold by now."""
        if self._is_guessed:
            self.guess(not self.why.isHidden())

    @Slot()
    def take_for_known(self) -> None:
        """Take what is in the field for what the user knows: they have typed."""
        if self._is_writing:
            return
        if self._is_guessed:
            self._is_guessed = False
            self._show_state()
        self.changed.emit()

    @Slot()
    def _on_clicked(self) -> None:
        if not self._is_guessed:
            self.guess()
        elif self._before is not None or isinstance(self.field, DurationField):
            self._is_guessed = False
            self._put(self._before)  # type: ignore[arg-type]
            self._show_state()
        self.changed.emit()
        first = stops_of(self.field)[0]
        first.setFocus()
        # So that the first key typed takes the place of what is there.
        if isinstance(first, QDateTimeEdit):
            first.setSelectedSection(first.sectionAt(0))
        elif isinstance(first, QLineEdit | QAbstractSpinBox):
            first.selectAll()

    def _put(self, value: V) -> None:
        self._is_writing = True
        try:
            self._write(value)
        finally:
            self._is_writing = False

    def _show_state(self, says_why: bool = True) -> None:
        """Dress field, button and line for what is known."""
        guess = self._guess() if self._is_guessed else None
        tip = self._description
        if guess is not None:
            tip = f"{tip}\n{guess.why} ({guess.source})".strip()
        self.field.setToolTip(tip)
        self.field.setAccessibleDescription(tip.replace("\n", ". "))
        self.why.setText(guess.why if guess is not None else "")
        self.why.setVisible(guess is not None and says_why)
        self.button.setChecked(self._is_guessed)
        self.button.setText(self.tr("our guess") if self._is_guessed else self.tr("I don't know"))
        self.button.setToolTip(
            self.tr("Put back what was there")
            if self._is_guessed
            else self.tr("Put a careful guess in: {0}").format(self._guess().why)
        )
        self.button.setAccessibleName(self.tr("I don't know: {0}").format(self._name))
        self.button.setAccessibleDescription(self.button.toolTip())
        self._dress_field()

    def _dress_field(self) -> None:
        for widget in (self.field, *self.field.findChildren(QLineEdit)):
            widget.setProperty("guessed", self._is_guessed)
            widget.style().unpolish(widget)
            widget.style().polish(widget)

    @Slot()
    def _dress(self) -> None:
        look = theme()
        dress(self.why, WHY_PT, look.colours.soft)
        points, pad = BUTTON_PT * look.scale, round(look.px(4))
        colours = look.colours
        self.button.setStyleSheet(
            f"QPushButton {{ color: {colours.teal}; font-size: {points:.2f}pt;"
            f" padding: {pad}px; background: transparent; }}"
            f"QPushButton:checked {{ color: {colours.soft}; background: transparent; }}"
            f"QPushButton:disabled {{ color: {colours.strong_line}; border-color: transparent; }}"
            f"QPushButton:hover {{ background: {colours.lane}; }}"
            f"QPushButton:focus {{ border: 2px solid {colours.teal}; padding: {pad - 1}px; }}"
        )
        texts = (self.tr("our guess"), self.tr("I don't know"))
        widest = max(look.metrics(BUTTON_PT).horizontalAdvance(text) for text in texts)
        self.button.setFixedWidth(round(widest) + 2 * pad + 6)


def stops_of(field: QWidget) -> list[QWidget]:
    """Return where the Tab key stops in *field*: itself, or the lines it is made of."""
    if isinstance(field, QAbstractSpinBox | QComboBox | QLineEdit):
        return [field]
    return list(field.findChildren(QLineEdit)) or [field]


def _listen(field: QWidget, owner: QObject) -> None:
    """Tell *owner* when the user types into *field* or chooses in it."""
    known = owner.take_for_known  # type: ignore[attr-defined]
    if isinstance(field, QAbstractSpinBox):
        field.lineEdit().textEdited.connect(known)
    if isinstance(field, QSpinBox | QDoubleSpinBox):
        field.valueChanged.connect(known)
    elif isinstance(field, QDateTimeEdit):
        field.dateTimeChanged.connect(known)
    elif isinstance(field, QComboBox):
        field.currentIndexChanged.connect(known)
    elif isinstance(field, QLineEdit):
        field.textEdited.connect(known)
    else:
        for line in field.findChildren(QLineEdit):
            line.textEdited.connect(known)

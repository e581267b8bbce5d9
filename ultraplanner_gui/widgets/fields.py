"""Fields that say their unit and range and never hold an impossible value."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QLocale, QObject, Qt, QTime, Signal, Slot
from PySide6.QtGui import QFocusEvent, QIntValidator, QKeyEvent, QValidator
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QDateEdit,
    QDateTimeEdit,
    QDoubleSpinBox,
    QLineEdit,
    QSpinBox,
    QTimeEdit,
    QWidget,
)

from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

METRES_PER_MILE = 1609.344
PAD_PX = 4.0
#: The day of the month, after the weekday.
DAY_INDEX = 1


def describe(field: QWidget, sentence: str) -> None:
    """Say *sentence* where the pointer rests on *field*, and to who cannot see it."""
    field.setToolTip(sentence)
    field.setAccessibleDescription(sentence)


def align_text(field: QAbstractSpinBox) -> None:
    """Set the text of *field* as far in as that of a plain line.

    A style sheet has no say in it: beside styled buttons the line in a spin box begins at 0.
    """
    _Alignment(field)


def keep_order(field: QDateTimeEdit) -> None:
    """Have *field* write hours before minutes in every language; before its format is set.

    Laid out from right to left, Qt turns the parts round: 06:00 would read 00:06.
    """
    field.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


class _Alignment(QObject):
    def __init__(self, field: QAbstractSpinBox) -> None:
        super().__init__(field)
        self._line = field.lineEdit()
        theme().changed.connect(self._dress)
        self._dress()

    @Slot()
    def _dress(self) -> None:
        self._line.setTextMargins(round(theme().px(PAD_PX)) + 1, 0, 0, 0)


class DurationField(QLineEdit):
    """A duration as text, "20 h 16"; `value_s` is its value in seconds, None when empty."""

    value_changed = Signal(object)

    def __init__(
        self,
        words: Words,
        low_s: float,
        high_s: float,
        optional: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._words = words.plain()
        self._low_s, self._high_s, self._optional = low_s, high_s, optional
        self._value_s: float | None = None
        self.setValidator(_DurationValidator(self))
        self.setPlaceholderText(self.tr("none") if optional else self._words.duration(low_s))
        describe(
            self,
            self.tr("From {0} to {1}, as 20 h 16 or 20:16").format(
                words.duration(low_s), words.duration(high_s)
            ),
        )
        self.editingFinished.connect(self._on_editing_finished)

    @property
    def value_s(self) -> float | None:
        """The duration, seconds."""
        return self._value_s

    def set_value(self, value_s: float | None) -> None:
        """Show *value_s*."""
        self._value_s = value_s
        self.setText("" if value_s is None else self._words.duration(value_s))

    def take_typed(self) -> None:
        """Take what is typed as if the field were left, if it can be read."""
        self._on_editing_finished()

    def reads(self, text: str) -> bool:
        """Whether *text* is a duration within range, or empty where that is allowed."""
        if not text.strip():
            return self._optional
        value = self._words.parse_duration(text)
        return value is not None and self._low_s <= value <= self._high_s

    def focusOutEvent(self, event: object) -> None:
        if not self.reads(self.text()):
            self.set_value(self._value_s)
        super().focusOutEvent(event)  # type: ignore[arg-type]

    def _on_editing_finished(self) -> None:
        text = self.text()
        value = self._words.parse_duration(text) if text.strip() else None
        shown = "" if self._value_s is None else self._words.duration(self._value_s)
        if text != shown and self.reads(text):
            self.set_value(value)
            self.value_changed.emit(value)


class _DurationValidator(QValidator):
    def __init__(self, field: DurationField) -> None:
        super().__init__(field)
        self._reads: Callable[[str], bool] = field.reads

    def validate(self, text: str, position: int) -> tuple[QValidator.State, str, int]:
        state = QValidator.State.Acceptable if self._reads(text) else QValidator.State.Intermediate
        return state, text, position


class DistanceField(QDoubleSpinBox):
    """A distance in the user's unit; `metres` is its value."""

    def __init__(
        self,
        words: Words,
        low_m: float,
        high_m: float,
        decimals: int = 1,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._per_unit = METRES_PER_MILE if words.units == "imperial" else 1000.0
        self.setKeyboardTracking(False)
        self.setDecimals(decimals)
        self.setRange(low_m / self._per_unit, high_m / self._per_unit)
        self.setSuffix(f" {words.distance_unit}")
        align_text(self)
        reach = self.tr("From {0} to {1}").format(words.distance(low_m), words.distance(high_m))
        describe(self, reach)

    @property
    def metres(self) -> float:
        """The distance, metres."""
        return self.value() * self._per_unit

    def set_metres(self, metres: float) -> None:
        """Show *metres*."""
        self.setValue(metres / self._per_unit)


class HeightField(QDoubleSpinBox):
    """A climb or drop in the user's unit; `metres` is its value."""

    def __init__(self, words: Words, high_m: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._per_unit = 0.3048 if words.units == "imperial" else 1.0
        self.setKeyboardTracking(False)
        self.setDecimals(0)
        self.setSingleStep(50)
        self.setRange(0.0, high_m / self._per_unit)
        self.setSuffix(f" {words.height_unit}")
        align_text(self)
        reach = self.tr("From {0} to {1}").format(words.height(0), words.height(high_m))
        describe(self, reach)

    @property
    def metres(self) -> float:
        """The height, metres."""
        return self.value() * self._per_unit

    def set_metres(self, metres: float) -> None:
        """Show *metres*."""
        self.setValue(metres / self._per_unit)


class WholeField(QSpinBox):
    """A whole number with its unit behind it."""

    def __init__(
        self,
        words: Words,
        low: float,
        high: float,
        unit: str = "",
        step: int = 1,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setKeyboardTracking(False)
        self.setRange(round(low), round(high))
        self.setSingleStep(step)
        self.setSuffix(f" {unit}" if unit else "")
        align_text(self)
        lowest, highest = words.number(low), f"{words.number(high)} {unit}".rstrip()
        describe(self, self.tr("From {0} to {1}").format(lowest, highest))


class WithinValidator(QIntValidator):
    """Lets whole numbers through and brings one out of range back into it.

    Signs between groups of digits it does not let through: who reads the text takes digits alone.
    """

    def __init__(self, low: int, high: int, parent: QWidget) -> None:
        super().__init__(low, high, parent)
        locale = self.locale()
        locale.setNumberOptions(QLocale.NumberOption.RejectGroupSeparator)
        self.setLocale(locale)

    def fixup(self, text: str) -> str:
        if not text.strip().lstrip("-").isdigit():
            return str(self.bottom())
        return str(min(max(int(text), self.bottom()), self.top()))


class DateField(QDateEdit):
    """A date that can be typed as it is read: "24 Apr 2027", day first, after Tab."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._has_moved_on = False
        keep_order(self)
        self.setCalendarPopup(True)
        self.setDisplayFormat("ddd d MMM yyyy")

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        # Qt begins at the weekday, which cannot be typed over, and so loses what is typed.
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.ShortcutFocusReason):
            self.setCurrentSectionIndex(DAY_INDEX)
            self.setSelectedSection(QDateEdit.Section.DaySection)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        is_gap = event.text() == " "
        # A full section has led on to the next already: the gap typed after it is not another.
        if is_gap and self._has_moved_on:
            self._has_moved_on = False
            return
        section = self.currentSectionIndex()
        super().keyPressEvent(event)
        self._has_moved_on = event.text().isalnum() and self.currentSectionIndex() != section


class ClockField(QTimeEdit):
    """A time of day."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        keep_order(self)
        self.setDisplayFormat("HH:mm")
        align_text(self)
        describe(self, self.tr("From 00:00 to 23:59, on the clock at the race"))


class PaceField(QTimeEdit):
    """A pace in minutes and seconds to the user's unit; `mps` is the speed."""

    def __init__(
        self, words: Words, low_mps: float, high_mps: float, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._unit_m = words.unit_m
        self._low_mps, self._high_mps = low_mps, high_mps
        keep_order(self)
        self.setDisplayFormat("m:ss")
        self.setKeyboardTracking(False)
        self.setTimeRange(self._time(high_mps), self._time(low_mps))
        self.setCurrentSection(QTimeEdit.Section.MinuteSection)
        align_text(self)
        fast, slow = words.pace(1.0 / high_mps), words.pace(1.0 / low_mps)
        reach = self.tr("From {0} to {1} {2}").format(fast, slow, words.pace_unit)
        describe(self, reach)

    @property
    def mps(self) -> float:
        """The speed, metres per second."""
        seconds = QTime(0, 0).secsTo(self.time())
        return min(max(self._unit_m / seconds, self._low_mps), self._high_mps)

    def set_mps(self, mps: float) -> None:
        """Show *mps*."""
        self.setTime(self._time(mps))

    def _time(self, mps: float) -> QTime:
        return QTime(0, 0).addSecs(round(self._unit_m / mps))

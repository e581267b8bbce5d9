"""Fields that say their unit and range and never hold an impossible value."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtGui import QValidator
from PySide6.QtWidgets import QDoubleSpinBox, QLineEdit, QWidget

from ultraplanner_gui.wording.words import Words

METRES_PER_MILE = 1609.344


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
        self._words = words
        self._low_s, self._high_s, self._optional = low_s, high_s, optional
        self._value_s: float | None = None
        self.setValidator(_DurationValidator(self))
        self.setPlaceholderText(self.tr("none") if optional else words.duration(low_s))
        self.setToolTip(
            self.tr("From {0} to {1}, as 20 h 16 or 20:16").format(
                words.duration(low_s), words.duration(high_s)
            )
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
        self.setToolTip(
            self.tr("From {0} to {1}").format(words.distance(low_m), words.distance(high_m))
        )

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
        self.setToolTip(self.tr("From {0} to {1}").format(words.height(0), words.height(high_m)))

    @property
    def metres(self) -> float:
        """The height, metres."""
        return self.value() * self._per_unit

    def set_metres(self, metres: float) -> None:
        """Show *metres*."""
        self.setValue(metres / self._per_unit)

"""A field for the time of day of a session, empty where any will do."""

from __future__ import annotations

from PySide6.QtWidgets import QLineEdit, QWidget

from ultraplanner_gui.widgets.fields import describe
from ultraplanner_gui.wording.words import Words


class HourField(QLineEdit):
    """A time of day as text, "06:30"; `value_s` is seconds from midnight, None when empty.

    A text that is no time of day leaves the one before.
    """

    def __init__(self, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._before_s: float | None = None
        self.setPlaceholderText(self.tr("any"))
        describe(self, self.tr("A time of day from 00:00 to 23:59, or empty for any"))
        self.editingFinished.connect(self._on_editing_finished)

    @property
    def value_s(self) -> float | None:
        """The time of day, seconds from midnight."""
        text = self.text().strip()
        if not text:
            return None
        if text == _clock(self._before_s):
            return self._before_s
        at = self._words.parse_clock(text)
        return self._before_s if at is None else at.hour * 3600.0 + at.minute * 60.0

    def set_value(self, value_s: float | None) -> None:
        """Show *value_s*."""
        self._before_s = value_s
        self.setText(_clock(value_s))

    def _on_editing_finished(self) -> None:
        self.set_value(self.value_s)


def _clock(at_s: float | None) -> str:
    if at_s is None:
        return ""
    hours, minutes = divmod(int(at_s // 60), 60)
    return f"{hours:02d}:{minutes:02d}"

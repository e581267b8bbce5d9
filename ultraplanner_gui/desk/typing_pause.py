"""Typed text is kept when the typing pauses, not at every key."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QTimer, Slot
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit

from ultraplanner_gui.edits.edit import Edit

PAUSE_MS = 2000


class TypingPause(QObject):
    """Watches one text field and performs its edit after a pause or when the field is left.

    *make_edit* gets the text and the number of the gesture; each pause ends a step of its
    own, so that undo takes back a spell of typing and not a whole evening's.
    """

    def __init__(
        self,
        field: QPlainTextEdit | QLineEdit,
        make_edit: Callable[[str, int], Edit | None],
        perform: Callable[[Edit], bool],
        parent: QObject,
        pause_ms: int = PAUSE_MS,
    ) -> None:
        super().__init__(parent)
        self._field = field
        self._make_edit = make_edit
        self._perform = perform
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(pause_ms)
        self._timer.timeout.connect(self.flush)
        field.textChanged.connect(self._on_typed)
        field.installEventFilter(self)

    @property
    def is_pending(self) -> bool:
        """Whether something typed is not kept yet."""
        return self._timer.isActive()

    @Slot()
    def flush(self) -> None:
        """Keep what was typed now."""
        if not self.is_pending and self.sender() is not self._timer:
            return
        self._timer.stop()
        edit = self._make_edit(self._text(), 0)
        if edit is not None:
            self._perform(edit)

    def drop(self) -> None:
        """Forget what was typed since the last pause."""
        self._timer.stop()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.FocusOut:
            self.flush()
        return False

    @Slot()
    def _on_typed(self) -> None:
        self._timer.start()

    def _text(self) -> str:
        field = self._field
        return field.toPlainText() if isinstance(field, QPlainTextEdit) else field.text()

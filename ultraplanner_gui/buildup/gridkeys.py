"""The keys of the day grid."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

Key = Qt.Key
STEPS = {Key.Key_Up: -1, Key.Key_Down: 1, Key.Key_Left: -7, Key.Key_Right: 7}
CONFIRM = (Key.Key_Return, Key.Key_Enter, Key.Key_Space)
ENDS = (Key.Key_Home, Key.Key_End)
ADD = (Key.Key_Insert, Key.Key_N)
DEEDS = {
    Key.Key_Delete: "remove",
    Key.Key_Backspace: "remove",
    Key.Key_D: "mark_done",
    Key.Key_M: "mark_missed",
    Key.Key_E: "edit",
    Key.Key_F2: "edit",
}
_ALL = frozenset((*STEPS, *CONFIRM, *ENDS, *ADD, *DEEDS))


def is_grid_key(event: QKeyEvent, is_carrying: bool) -> bool:
    """Whether the day grid acts on a key; Esc only while something is in the hand."""
    plain = Qt.KeyboardModifier.KeypadModifier | Qt.KeyboardModifier.NoModifier
    if event.modifiers() & ~plain:
        return False
    key = Key(event.key())
    return is_carrying if key is Key.Key_Escape else key in _ALL

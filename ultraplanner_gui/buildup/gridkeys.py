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
#: By what is typed, wherever the keyboard has it.
ZOOM = {"+": "zoom_in", "=": "zoom_in", "-": "zoom_out", "0": "show_all"}
#: What acts while weeks are strips: sessions cannot be told apart there.
_AFAR = frozenset((Key.Key_Left, Key.Key_Right, *CONFIRM, *ENDS))
_ALL = frozenset((*STEPS, *CONFIRM, *ENDS, *ADD, *DEEDS))


def is_grid_key(event: QKeyEvent, is_carrying: bool, is_far: bool = False) -> bool:
    """Whether the day grid acts on a key; Esc only while something is in the hand."""
    if is_zoom_key(event):
        return True
    plain = Qt.KeyboardModifier.KeypadModifier | Qt.KeyboardModifier.NoModifier
    if event.modifiers() & ~plain:
        return False
    key = Key(event.key())
    if key is Key.Key_Escape:
        return is_carrying
    return key in (_AFAR if is_far and not is_carrying else _ALL)


def is_zoom_key(event: QKeyEvent) -> bool:
    """Whether a key zooms; on some keyboards + takes Shift."""
    free = Qt.KeyboardModifier.KeypadModifier | Qt.KeyboardModifier.ShiftModifier
    return event.text() in ZOOM and not event.modifiers() & ~free

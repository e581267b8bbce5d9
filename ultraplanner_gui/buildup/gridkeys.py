"""The keys of the day grid."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QKeySequence

Key = Qt.Key
Modifier = Qt.KeyboardModifier
STEPS = {Key.Key_Up: -1, Key.Key_Down: 1, Key.Key_Left: -7, Key.Key_Right: 7}
CONFIRM = (Key.Key_Return, Key.Key_Enter, Key.Key_Space)
ENDS = (Key.Key_Home, Key.Key_End)
ADD = (Key.Key_Insert, Key.Key_N)
SHELF = Key.Key_K
#: Opens the field over a tile with what stands there; a figure opens it too.
TYPE = Key.Key_T
#: Does what was found to hold with what is in the hand.
TAKE_OFFER = Key.Key_H
DEEDS = {
    Key.Key_Delete: "remove",
    Key.Key_Backspace: "remove",
    Key.Key_D: "mark_done",
    Key.Key_C: "edit_done",
    Key.Key_M: "mark_missed",
    Key.Key_E: "edit",
    Key.Key_F2: "edit",
    Key.Key_L: "lock",
    Key.Key_S: "swap",
}
#: Keys of the whole system, on several sessions at once.
STANDARD = {
    QKeySequence.StandardKey.Copy: "copy",
    QKeySequence.StandardKey.Cut: "cut",
    QKeySequence.StandardKey.Paste: "paste",
    QKeySequence.StandardKey.SelectAll: "select_all",
}
#: By what is typed, wherever the keyboard has it.
ZOOM = {"+": "zoom_in", "=": "zoom_in", "-": "zoom_out", "0": "show_all"}
#: What acts while weeks are strips: sessions cannot be told apart there.
_AFAR = frozenset((Key.Key_Left, Key.Key_Right, *CONFIRM, *ENDS))
_ALL = frozenset((*STEPS, *CONFIRM, *ENDS, *ADD, *DEEDS, SHELF, TYPE))
_PLAIN = Modifier.KeypadModifier | Modifier.NoModifier


def is_grid_key(event: QKeyEvent, is_carrying: bool, is_far: bool = False) -> bool:
    """Whether the day grid acts on a key; Esc only while something is in the hand."""
    if is_zoom_key(event):
        return True
    key = Key(event.key())
    if (
        is_carrying
        and key in CONFIRM
        and not event.modifiers() & ~(_PLAIN | Modifier.ControlModifier)
    ):
        return True
    if not is_far and not is_carrying and (_is_arrow_with_more(event) or _standard(event)):
        return True
    if event.modifiers() & ~_PLAIN:
        return False
    if key in (Key.Key_Escape, TAKE_OFFER):
        return is_carrying
    return key in (_AFAR if is_far and not is_carrying else _ALL) or (
        is_start_of_figure(event) and not is_far and not is_carrying
    )


def is_zoom_key(event: QKeyEvent) -> bool:
    """Whether a key zooms; on some keyboards + takes Shift."""
    free = Modifier.KeypadModifier | Modifier.ShiftModifier
    return event.text() in ZOOM and not event.modifiers() & ~free


def is_start_of_figure(event: QKeyEvent) -> bool:
    """Whether a key begins a figure typed over a session."""
    return event.text() in "123456789" and bool(event.text()) and not event.modifiers() & ~_PLAIN


def deed_of(event: QKeyEvent) -> str:
    """Return the name of what a key does to the selected sessions; empty for nothing."""
    return _standard(event) or DEEDS.get(Key(event.key()), "")


def _standard(event: QKeyEvent) -> str:
    return next((deed for keys, deed in STANDARD.items() if event.matches(keys)), "")


def _is_arrow_with_more(event: QKeyEvent) -> bool:
    more = event.modifiers() & ~_PLAIN
    alone = (Modifier.ControlModifier, Modifier.ShiftModifier, Modifier.AltModifier)
    if Key(event.key()) not in STEPS or more not in alone:
        return False
    return more is not Modifier.AltModifier or Key(event.key()) in (Key.Key_Left, Key.Key_Right)

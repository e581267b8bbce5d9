"""Whether things move on screen: not where the system or the user wants none of it."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QStyle

#: A tile put down settles in this time, in milliseconds.
SETTLE_MS = 110
#: So long a changed figure stays marked.
MARK_MS = 700


class Motion:
    """What the user chose; the system's own choice is asked for each time."""

    wished = True


def moves() -> bool:
    """Whether something may move."""
    style = QApplication.style()
    if not Motion.wished or style is None:
        return False
    return style.styleHint(QStyle.StyleHint.SH_Widget_Animation_Duration) > 0

"""Whether things move on screen: not where the system or the user wants none of it."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QStyle

#: A tile put down settles in this time, in milliseconds.
SETTLE_MS = 110
#: So long a changed figure stays marked.
MARK_MS = 700


class Motion:
    """What the user chose, and what the system was last heard to ask for."""

    wished = True
    is_stilled = False

    @classmethod
    def still(cls, is_wanted: bool) -> None:
        """Take note of whether the system asks to keep still."""
        cls.is_stilled = is_wanted


def moves() -> bool:
    """Whether something may move."""
    style = QApplication.style()
    if not Motion.wished or Motion.is_stilled or style is None:
        return False
    return style.styleHint(QStyle.StyleHint.SH_Widget_Animation_Duration) > 0

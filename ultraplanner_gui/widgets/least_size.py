"""How small a dialog may be: never smaller than its texts, in any language."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget


def at_least(dialog: QWidget, width: float, with_height: bool = False) -> None:
    """Let *dialog* be no narrower than *width* and what stands in it.

    A width that is set takes the place of what the layout asks for, which may be more. The
    height stays with the layout unless *with_height* counts lines that wrap, too.
    """
    box = dialog.layout()
    assert box is not None, "before its layout there is nothing to be wide enough for"
    least = max(round(width), box.totalMinimumSize().width())
    dialog.setMinimumWidth(least)
    if with_height:
        dialog.setMinimumHeight(max(box.totalHeightForWidth(least), 0))

"""Sizes of type, strokes and space, each named once; colours are in `widgets.theme`."""

from __future__ import annotations

from typing import Final


class Pt:
    """Sizes of type in points at the usual text size, small to large."""

    MARK: Final = 6.5
    SMALL: Final = 7.0
    LABEL: Final = 7.5
    NOTE: Final = 8.0
    TEXT: Final = 8.5
    STRONG: Final = 9.0
    LARGE: Final = 9.5
    HEAD: Final = 11.0
    TITLE: Final = 12.0
    GREETING: Final = 20.0


class Stroke:
    """Widths of lines in device-independent pixels."""

    HAIR: Final = 1.0
    THIN: Final = 1.2
    LINE: Final = 1.6
    HEAVY: Final = 2.0


class Space:
    """Room between things in device-independent pixels."""

    HAIR: Final = 2
    TIGHT: Final = 4
    CLOSE: Final = 6
    NEAR: Final = 8
    APART: Final = 12
    WIDE: Final = 16
    EDGE: Final = 22

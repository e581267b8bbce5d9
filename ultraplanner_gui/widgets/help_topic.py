"""How a widget, or a part of a painted one, names what it is about, for the help."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QLabel, QWidget

PROPERTY = "helpTopic"


def set_topic(widget: QWidget, key: str) -> None:
    """Say that *widget*, and all in it that names no topic of its own, is about *key*."""
    widget.setProperty(PROPERTY, key)


def set_topics(topics: Mapping[QWidget, str]) -> None:
    """Say what each of some widgets is about."""
    for widget, key in topics.items():
        set_topic(widget, key)


def topic_of(widget: QWidget | None, at: QPoint | None = None) -> str:
    """Return the topic of *widget*, or else of the nearest one around it; empty if none has one.

    A widget of many parts has a method `topic_at`; it is given the place *at* in it, or None
    where the keyboard asks, for the part its own cursor is on. A label speaks for its field.
    """
    while widget is not None:
        key = _own(widget, at)
        if key or widget.isWindow():
            return key
        at = None if at is None else widget.mapToParent(at)
        widget = widget.parentWidget()
    return ""


def ask(widget: QWidget, key: str) -> None:
    """Have the topic *key* explained on behalf of *widget*, by the nearest around it that can."""
    giver: QWidget | None = widget
    while giver is not None:
        explain = getattr(giver, "explain", None)
        if explain is not None:
            explain(key, widget)
            return
        giver = giver.parentWidget()


def _own(widget: QWidget, at: QPoint | None) -> str:
    topic_at = getattr(widget, "topic_at", None)
    key = topic_at(at) if topic_at is not None else ""
    key = key or widget.property(PROPERTY) or ""
    if not key and isinstance(widget, QLabel) and widget.buddy() is not None:
        key = widget.buddy().property(PROPERTY) or ""
    return str(key)

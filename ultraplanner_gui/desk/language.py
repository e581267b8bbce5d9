"""Sentences from below Qt in the user's language."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

CONTEXTS = (
    "Plan",
    "Edit",
    "Course",
    "Profile",
    "Runway",
    "Block",
    "Mend",
    "Session",
    "Week",
    "StandIn",
    "Candidates",
    "Checks",
    "Fuel",
    "Food table",
    "Kinds",
    "Course words",
    "Repair",
    "Tables",
    "Caution",
    "Cards",
    "Help",
    "Store",
    "Export",
    "Jobs",
    "Crash",
)
"""Where sentences are marked that travel in a `Message`, which does not say its own context."""


def translated(text: str) -> str:
    """Return *text* in the user's language, itself where no translation is known."""
    for context in CONTEXTS:
        found = QCoreApplication.translate(context, text)
        if found != text:
            return found
    return text

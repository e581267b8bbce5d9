"""Sentences for the user, kept apart from the numbers in them, and the error that carries one."""

from __future__ import annotations

from typing import Literal

from ultraplanner_gui.plan.value import Kept, Number, Whole

Unit = Literal[
    "m",
    "height_m",
    "climb_per_m",
    "s",
    "pace_s_per_m",
    "percent",
    "celsius",
    "g",
    "g_per_h",
    "ml",
    "mg",
    "count",
]


def QT_TRANSLATE_NOOP(context: str, text: str) -> str:  # noqa: N802 - the name the extraction tool looks for
    """Mark *text* for translation in *context* and return it unchanged."""
    return text


class Quantity(Kept, frozen=True):
    """A number in SI units that becomes text only in `wording`."""

    value: Number
    unit: Unit

    def __str__(self) -> str:
        return f"{self.value:g} {self.unit}"


Argument = str | Whole | Quantity


class Message(Kept, frozen=True):
    """A sentence as a translatable template with numbered places, and what goes into them.

    `str()` gives a plain English form for logs; `wording.Words.say` gives the one people see.
    """

    template: str
    args: tuple[Argument, ...] = ()

    def __str__(self) -> str:
        return self.template.format(*self.args)


def message(template: str, *args: Argument) -> Message:
    """Return a `Message` of *template* and *args*."""
    return Message(template, args)


class PlanError(ValueError):
    """Something the user asked for cannot be done; carries one sentence that says what to do."""

    def __init__(self, template: str, *args: Argument) -> None:
        self.message = Message(template, args)
        super().__init__(template, *args)

    def __str__(self) -> str:
        return str(self.message)


class CourseError(PlanError):
    """A course or recording cannot be read."""


class StoreError(PlanError):
    """A project file cannot be read or kept."""

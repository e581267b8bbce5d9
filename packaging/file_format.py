"""Renew the list of classes and fields in file-format.md: python packaging/file_format.py."""

from __future__ import annotations

import inspect
import sys
import typing
from enum import Enum
from pathlib import Path

from msgspec import structs

ROOT = Path(__file__).resolve().parents[1]
DOCUMENT = ROOT / "packaging" / "file-format.md"
LONGEST = 60
BEGIN, END = "<!-- fields: file_format.py -->\n", "<!-- end of fields -->\n"

sys.path.insert(0, str(ROOT))

from ultraplanner_gui.plan.course import Line  # noqa: E402
from ultraplanner_gui.plan.project import Project  # noqa: E402
from ultraplanner_gui.store.codec import encode, hints_of, is_kind  # noqa: E402
from ultraplanner_gui.store.migrations import State  # noqa: E402


def kept_classes() -> list[type]:
    """Return every class of which something is kept, as they are met from the project on."""
    found: list[type] = []

    def meet(kind: object) -> None:
        for part in typing.get_args(kind):
            meet(part)
        if not isinstance(kind, type) or kind in found or kind is Line:
            return
        if issubclass(kind, Enum):
            found.append(kind)
        elif is_kind(kind):
            found.append(kind)
            for hint in hints_of(kind).values():
                meet(hint)

    meet(Project)
    meet(State)
    return found


def described() -> str:
    """Return all classes and fields in Markdown."""
    return "\n".join(_class(kind) for kind in kept_classes())


def _class(kind: type) -> str:
    head = f"### {kind.__name__}\n\n{_sentence(kind)}\n\n"
    if issubclass(kind, Enum):
        return head + ", ".join(f"`{member.value}`" for member in kind) + "\n"
    assert is_kind(kind)
    types: dict[str, str] = {}
    for base in reversed(kind.__mro__):
        types |= inspect.get_annotations(base)
    lines = [f"- `{of.name}`: `{types[of.name]}`{_default(of)}" for of in structs.fields(kind)]
    return head + "\n".join(lines) + "\n"


def _sentence(kind: type) -> str:
    """Return what the class says of itself, on one line."""
    return " ".join((inspect.getdoc(kind) or "").split("\n\n")[0].split())


def _default(field: structs.FieldInfo) -> str:
    """Return what a field is if it is not there, as it would be written."""
    if field.required:
        return ""
    value = field.default
    plain = {None: "null", (): "[]"}  # of what the store writes by hand: the line, the recordings
    if value is None or value == ():
        written = plain[value]
    else:
        written = encode(field.type, value, field.name).decode("ascii")
    return f", else `{written}`" if len(written) <= LONGEST else ", else one of defaults"


def renewed(text: str) -> str:
    """Return the document *text* with the list as the code has it now."""
    before, rest = text.split(BEGIN)
    after = rest.split(END)[1]
    return f"{before}{BEGIN}\n{described()}\n{END}{after}"


if __name__ == "__main__":
    DOCUMENT.write_text(renewed(DOCUMENT.read_text("utf-8")), "utf-8")

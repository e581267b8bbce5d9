"""A template block as the bytes of a file: one line that says what it is, then JSON."""

from __future__ import annotations

from pathlib import Path

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.plan.race import FIRST_YEAR, LAST_YEAR
from ultraplanner_gui.plan.template import Template
from ultraplanner_gui.store.codec import encode
from ultraplanner_gui.store.decoding import decode

SUFFIX = ".ultrablock"
HEAD = b"Ultraplanner block 1\n"
MOST_BYTES = 4_000_000


def template_bytes(template: Template) -> bytes:
    """Return *template* as the content of a file."""
    return HEAD + encode(Template, template, "template") + b"\n"


def read_template(path: Path) -> Template:
    """Return the template in *path*; StoreError with one sentence if there is none."""
    try:
        with path.open("rb") as file:
            body = file.read(MOST_BYTES + 1)
    except OSError as error:
        raise _strange(path) from error
    if not body.startswith(HEAD) or len(body) > MOST_BYTES:
        raise _strange(path)
    try:
        template = decode(Template, body.removeprefix(HEAD), "template")
    except StoreError as error:
        raise _strange(path) from error
    if not _is_sound(template):
        raise _strange(path)
    return template


def _is_sound(template: Template) -> bool:
    days = [template.race_day, *(s.day for s in template.block.sessions)]
    keys = [s.key for s in template.block.sessions]
    return (
        all(FIRST_YEAR <= day.year <= LAST_YEAR for day in days)
        and len(set(keys)) == len(keys)
        and 0 <= template.first_weekday <= 6
        and 0.0 < template.easy_mps < 20.0
        and template.weekly_m >= 0.0
    )


def _strange(path: Path) -> StoreError:
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store", "{0} is no template of a block. Choose a file that ends in .ultrablock."
        ),
        path.name,
    )

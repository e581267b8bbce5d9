"""The choices of `Settings` as a file to take to another computer: one JSON object."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

from ultraplanner_gui.desk.settings import Setting, Settings
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError

Choice = bool | int | str

_MOST_BYTES = 100_000


def asked_for() -> Iterator[tuple[str, Setting[Choice]]]:
    """Yield the settings a user is asked for, each with the name of its attribute."""
    for attribute, setting in vars(Settings).items():
        if isinstance(setting, Setting) and setting.name:
            yield attribute, setting


def write_settings(settings: Settings, path: Path) -> None:
    """Write what the user has chosen to *path*; StoreError if that cannot be done."""
    chosen = {setting.key: getattr(settings, name) for name, setting in asked_for()}
    write_bytes(path, json.dumps(chosen, indent=2, sort_keys=True).encode("ascii") + b"\n")


def read_settings(settings: Settings, path: Path) -> tuple[str, ...]:
    """Choose what the file *path* says and return the keys in it that mean nothing here.

    StoreError if it is no such file; nothing is changed then.
    """
    try:
        with path.open("rb") as file:
            chosen = json.loads(file.read(_MOST_BYTES))
    except (OSError, ValueError, RecursionError) as error:
        raise _strange(path) from error
    if not isinstance(chosen, dict):
        raise _strange(path)
    known = {setting.key: (name, setting) for name, setting in asked_for()}
    unknown = []
    for key, value in chosen.items():
        name, setting = known.get(key, ("", None))
        if setting is not None and setting.allows(value):
            setattr(settings, name, value)
        else:
            unknown.append(str(key)[:40])
    return tuple(unknown)


def chosen_settings(settings: Settings) -> dict[str, Choice]:
    """Return what is chosen now, by attribute."""
    return {name: getattr(settings, name) for name, _ in asked_for()}


def choose_settings(settings: Settings, chosen: dict[str, Choice]) -> None:
    """Choose again what `chosen_settings` has given."""
    for name, value in chosen.items():
        setattr(settings, name, value)


def reset_settings(settings: Settings) -> None:
    """Choose what a new user would have."""
    for name, setting in asked_for():
        setattr(settings, name, setting.default)


def _strange(path: Path) -> StoreError:
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store", "{0} holds no settings. Choose a file that Export in the settings has written."
        ),
        path.name,
    )

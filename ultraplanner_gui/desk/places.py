"""Where the program keeps things of its own, all in `$ULTRAPLANNER_HOME` where that is set."""

from __future__ import annotations

import os
import re
from pathlib import Path

import platformdirs

HOME_VARIABLE = "ULTRAPLANNER_HOME"
SUFFIX = ".ultraplan"

_APP = "Ultraplanner"
_LONGEST_NAME = 60
# What one of the three systems forbids in a name, and what would hide the file or name a folder.
_FORBIDDEN = re.compile(r'[\x00-\x1f<>:"/\\|?*\ud800-\udfff]+')
_DEVICES = re.compile(r"(?i)(con|prn|aux|nul|com\d|lpt\d)(\..*)?$")


def settings_file() -> Path:
    """Return the file of the settings, in a folder that is there."""
    _made(settings_path().parent)
    return settings_path()


def settings_path() -> Path:
    """Return where the settings are or would be."""
    return (_home("settings") or _config()) / "settings.ini"


def data() -> Path:
    """Return the folder for files the program makes for itself, such as the demo."""
    return _made(_home("data") or platformdirs.user_data_path(_APP, appauthor=False))


def logs() -> Path:
    """Return the folder of the log files."""
    return _made(_home("logs") or platformdirs.user_log_path(_APP, appauthor=False))


def documents() -> Path:
    """Return the folder where new projects are proposed to be kept."""
    return _made(_home("projects") or platformdirs.user_documents_path() / _APP)


def downloads() -> Path:
    """Return the folder a course file is likely in, `documents` where there is no such folder."""
    folder = platformdirs.user_downloads_path()
    return folder if folder.is_dir() and _home("") is None else documents()


def free_project_path(name: str) -> Path:
    """Return a path in `documents` for a new project called *name* that is not taken yet."""
    stem = file_name(name)
    folder, number, path = documents(), 2, documents() / f"{stem}{SUFFIX}"
    while path.exists():
        path = folder / f"{stem} {number}{SUFFIX}"
        number += 1
    return path


def file_name(name: str) -> str:
    """Return *name* as a file can be called on every system, without what follows the point."""
    stem = " ".join(_FORBIDDEN.sub(" ", name).split())[:_LONGEST_NAME].strip(" .")
    return f"Race {stem}".strip() if not stem or _DEVICES.match(stem) else stem


def _home(part: str) -> Path | None:
    home = os.environ.get(HOME_VARIABLE)
    return Path(home) / part if home else None


def _config() -> Path:
    return platformdirs.user_config_path(_APP, appauthor=False)


def _made(folder: Path) -> Path:
    folder.mkdir(parents=True, exist_ok=True)
    return folder

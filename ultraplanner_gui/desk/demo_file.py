"""Where the demo lies."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from ultraplanner_gui.desk import places


def demo_path(today: date) -> Path:
    """Return where the demo's project file for *today* is or will be."""
    return places.data() / f"demo-{today.isoformat()}.ultraplan"


def demo_file(today: date) -> Path:
    """Return the demo's project file for *today*, written at the first call of the day."""
    path = demo_path(today)
    if not path.exists():
        # What makes the demo takes longer to import than the demo takes to open.
        from ultraplanner_gui.desk.demo import demo_project
        from ultraplanner_gui.store.project_file import ProjectFile

        path.parent.mkdir(parents=True, exist_ok=True)
        ProjectFile.create(path, demo_project(today)).close()
    return path

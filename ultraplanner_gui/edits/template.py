"""Laying a template block into a plan."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.block import check_session
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value


class ApplyTemplate(Value, frozen=True):
    """The user took the block that a template gives for this race and runner."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Put a template in")
    block: Block
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for session in self.block.sessions:
            check_session(session)
        if self.block == project.block:
            return project
        return replace(project, block=self.block)

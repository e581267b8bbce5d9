"""Taking over a block that was searched for while the one by the rules stood."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.block import check_session
from ultraplanner_gui.plan.block import Block, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value


class TakeBetterBlock(Value, frozen=True):
    """The user took a better block than `built`, the one that stood when the search began.

    Sessions marked done, missed or locked, or noted on, since then are kept; where others were
    moved, changed, added or removed the offer no longer fits.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Take the better block")
    built: Block
    better: Block
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for session in (*self.built.sessions, *self.better.sessions):
            check_session(session)
        block = self._rebased(project.block)
        if block is None:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit",
                    "The build-up has changed since the search began; build it again to search "
                    "anew.",
                )
            )
        return project if block == project.block else replace(project, block=block)

    def fits(self, project: Project) -> bool:
        """Return whether the block of *project* still allows it."""
        return self._rebased(project.block) is not None

    def _rebased(self, now: Block) -> Block | None:
        """Return the better block with the marks made since; None if more than marks changed."""
        if now is self.built or now == self.built:
            return self.better
        before = {s.key: s for s in self.built.sessions}
        if [s.key for s in now.sessions] != [s.key for s in self.built.sessions]:
            return None
        marked = [s for s in now.sessions if s != before[s.key]]
        if any(_unmarked(s, before[s.key]) != before[s.key] for s in marked):
            return None
        days = {s.day for s in marked}
        keys = {s.key for s in marked}
        kept = [
            replace(s, key=f"{s.key}-new") if s.key in keys else s
            for s in self.better.sessions
            if s.day not in days
        ]
        there = [s for s in now.sessions if s.day in days]
        return replace(self.better, sessions=tuple(sorted((*kept, *there), key=lambda s: s.day)))


def _unmarked(session: Session, before: Session) -> Session:
    return replace(
        session, done=before.done, missed=before.missed, locked=before.locked, note=before.note
    )

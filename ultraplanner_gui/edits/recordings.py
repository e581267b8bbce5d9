"""Recordings kept with the plan: added, matched, named, taken away."""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import MOST_PACKED_BYTES, MOST_RECORDINGS, KeptRecording
from ultraplanner_gui.plan.value import Value

MOST_BYTES_IN_ALL = 200 * 1024 * 1024
LONGEST_NAME = 200
MOST_DRIFT = 1e3


class AddRecordings(Value, frozen=True):
    """The user added recordings; those that are there already are passed over."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add recordings")
    recordings: tuple[KeptRecording, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        kept = {r.key: r for r in project.recordings}
        for recording in self.recordings:
            _check(recording, project)
            kept.setdefault(recording.key, recording)
        if len(kept) == len(project.recordings):
            return project
        if len(kept) > MOST_RECORDINGS or _bytes(kept.values()) > MOST_BYTES_IN_ALL:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit",
                    "A project keeps up to {0} recordings and 200 MB of them; remove some first.",
                ),
                MOST_RECORDINGS,
            )
        return replace(project, recordings=_in_order(kept.values()))


class RemoveRecording(Value, frozen=True):
    """The user took a recording out, and with it what was said in looking back on it."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove a recording")
    key: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        _find(project, self.key)
        return replace(
            project,
            recordings=tuple(r for r in project.recordings if r.key != self.key),
            reviews=tuple(r for r in project.reviews if r.recording != self.key),
        )


class MatchRecording(Value, frozen=True):
    """The user said which session a recording is of, empty for none, or that it is the race."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Match a recording")
    key: str
    session: str
    is_race: bool = False
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        recording = _find(project, self.key)
        if self.session:
            project.block.session(self.session)
        return _with(
            project, recording, replace(recording, session=self.session, is_race=self.is_race)
        )


class RenameRecording(Value, frozen=True):
    """The user called a recording something else."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Name a recording")
    key: str
    name: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if len(self.name) > LONGEST_NAME:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A name has up to {0} letters; shorten it."), LONGEST_NAME
            )
        recording = _find(project, self.key)
        return _with(project, recording, replace(recording, name=self.name))


def _find(project: Project, key: str) -> KeptRecording:
    for recording in project.recordings:
        if recording.key == key:
            return recording
    raise PlanError(QT_TRANSLATE_NOOP("Edit", "That recording is no longer in the plan."))


def _with(project: Project, before: KeptRecording, after: KeptRecording) -> Project:
    if after == before:
        return project
    return replace(
        project, recordings=tuple(after if r is before else r for r in project.recordings)
    )


def _check(recording: KeptRecording, project: Project) -> None:
    if not 0 < len(recording.packed) <= MOST_PACKED_BYTES:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "{0} is too large to be kept."), recording.file[:60]
        )
    figures = (recording.distance_m, recording.elapsed_s, recording.moving_s, recording.flat_m)
    is_sound = all(0.0 <= f < 1e9 for f in (*figures, recording.climb_m, recording.drop_m))
    if not is_sound or not -1.0 < (recording.drift or 0.0) < MOST_DRIFT:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "{0} has figures no run can have."), recording.file[:60]
        )
    if recording.session:
        project.block.session(recording.session)


def _bytes(recordings: Iterable[KeptRecording]) -> int:
    return sum(len(r.packed) for r in recordings)


def _in_order(recordings: Iterable[KeptRecording]) -> tuple[KeptRecording, ...]:
    """Return *recordings* by their start, those without one first."""

    def began(recording: KeptRecording) -> tuple[float, str]:
        start = recording.start
        return (-math.inf if start is None else start.timestamp()), recording.key

    return tuple(sorted(recordings, key=began))

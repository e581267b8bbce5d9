"""Recordings read off the GUI thread, and what they are as past runs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.prediction import result_of
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError, Message, PlanError
from ultraplanner_gui.plan.pacing import PastRun, ResultKind
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner

MOST_FILES = 200

#: Files that could not be used, and why.
LeftOut = tuple[tuple[str, Message], ...]


@dataclass(frozen=True, slots=True)
class ReadRuns:
    """Recordings as past runs; `left_out` are the files that could not be used, and why."""

    runs: tuple[PastRun, ...]
    left_out: LeftOut


def read_recordings(
    token: Token, paths: Sequence[Path], share: float = 1.0
) -> tuple[list[tuple[str, Recording]], LeftOut]:
    """Return the recordings in *paths* with the names of their files; it is *share* of the work.

    PlanError if there are too many, or the only one cannot be used.
    """
    from ultraplanner_gui.exchange.gpx_in import read_recording

    if len(paths) > MOST_FILES:
        raise PlanError(
            QT_TRANSLATE_NOOP("Plan", "Up to {0} recordings are read at once; choose fewer."),
            MOST_FILES,
        )
    recordings: list[tuple[str, Recording]] = []
    left_out: list[tuple[str, Message]] = []
    for number, path in enumerate(paths):
        token.progress(share * number / len(paths))
        try:
            recordings.append((path.name, read_recording(path)))
        except CourseError as error:
            left_out.append((path.name, error.message))
    if len(left_out) == 1 and not recordings:
        raise PlanError(left_out[0][1].template, *left_out[0][1].args)
    return recordings, tuple(left_out)


def read_runs(token: Token, paths: Sequence[Path], runner: Runner) -> ReadRuns:
    """Read the recordings in *paths* as past runs, their standing time left out.

    Each is taken as a long run: a race held against one would promise too much.
    """
    recordings, unread = read_recordings(token, paths)
    runs: list[PastRun] = []
    left_out = list(unread)
    for name, recording in recordings:
        try:
            found = result_of(recording, "long run", runner)
        except PlanError as error:
            left_out.append((name, error.message))
            continue
        runs.append(
            PastRun(
                found.distance_m,
                found.climb_m,
                found.time_s,
                ResultKind.LONG_RUN,
                recording.name or name,
                found.flat_m,
            )
        )
    return ReadRuns(tuple(runs), tuple(left_out))

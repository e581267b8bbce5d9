"""Recordings read off the GUI thread, and what they are as past runs."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.prediction import result_of
from ultraplanner_gui.plan.message import CourseError, Message, PlanError
from ultraplanner_gui.plan.pacing import PastRun, ResultKind
from ultraplanner_gui.plan.recording import KeptRecording, Recording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value

#: Recordings that could not be used, and why.
LeftOut = tuple[tuple[str, Message], ...]


class ReadRuns(Value, frozen=True):
    """Recordings as past runs; `left_out` are those that could not be used, and why."""

    runs: tuple[PastRun, ...]
    left_out: LeftOut


def read_kept(
    token: Token, kept: Sequence[KeptRecording], share: float = 1.0
) -> tuple[list[tuple[str, Recording]], LeftOut]:
    """Return the points of the recordings *kept*, with their names; it is *share* of the work.

    PlanError if the only one cannot be used.
    """
    from ultraplanner_gui.exchange.kept_recording import recording_of

    recordings: list[tuple[str, Recording]] = []
    left_out: list[tuple[str, Message]] = []
    for number, one in enumerate(kept):
        token.progress(share * number / len(kept))
        try:
            recordings.append((one.name or one.file, recording_of(one)))
        except CourseError as error:
            left_out.append((one.file, error.message))
    if len(left_out) == 1 and not recordings:
        raise PlanError(left_out[0][1].template, *left_out[0][1].args)
    return recordings, tuple(left_out)


def kept_runs(token: Token, kept: Sequence[KeptRecording], runner: Runner) -> ReadRuns:
    """Return the recordings *kept* as past runs, their standing time left out.

    Each is taken as a long run: a race held against one would promise too much.
    """
    recordings, unread = read_kept(token, kept)
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
                name,
                found.flat_m,
            )
        )
    return ReadRuns(tuple(runs), tuple(left_out))

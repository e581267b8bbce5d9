"""The table of the recordings kept with the plan."""

from __future__ import annotations

from datetime import timedelta

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.recordings import MatchRecording, RemoveRecording, RenameRecording
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.recording_match import local_day
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window.table_spec import (
    TableSpec,
    distance_unit,
    height_unit,
    one_line,
    pace_unit,
    unit,
)
from ultraplanner_gui.wording.words import NONE, Words

#: Sessions so many days from a recording are offered for it.
_DAYS_ABOUT = 3
_RACE = QT_TRANSLATE_NOOP("Tables", "the race")


class RecordingRow(Value, frozen=True):
    """One recording in its plan."""

    recording: KeptRecording
    project: Project

    @property
    def key(self) -> str:
        """Its key."""
        return self.recording.key


def recording_rows(outlook: Outlook) -> tuple[RecordingRow, ...]:
    """Return the recordings by their start."""
    project = outlook.project
    return tuple(RecordingRow(recording, project) for recording in project.recordings)


def match_text(row: RecordingRow, words: Words) -> str:
    """Return what a recording is of, in words."""
    if row.recording.is_race:
        return say(_RACE)
    for session in row.project.block.sessions:
        if session.key == row.recording.session:
            return _session_text(session, words)
    return NONE


def _session_text(session: Session, words: Words) -> str:
    return f"{words.day(session.day)}, {kinds.say(kinds.FULL[session.kind])}"


def _choices(row: RecordingRow, words: Words) -> tuple[str, ...]:
    near = (_session_text(s, words) for s in _near(row))
    return (NONE, say(_RACE), *dict.fromkeys(near))


def _near(row: RecordingRow) -> tuple[Session, ...]:
    day = local_day(row.recording, row.project)
    runs = (s for s in row.project.block.sessions if s.kind.is_run and s.kind is not Kind.RACE)
    if day is None:
        return tuple(runs)
    about = timedelta(days=_DAYS_ABOUT)
    return tuple(s for s in runs if abs(s.day - day) <= about)


def _match(row: RecordingRow, text: str, words: Words) -> Edit | None:
    wanted = text.strip().casefold()
    if wanted in ("", NONE):
        return MatchRecording(row.key, "")
    if wanted == say(_RACE).casefold():
        races = [s.key for s in row.project.block.sessions if s.kind is Kind.RACE]
        return MatchRecording(row.key, races[0] if races else "", is_race=True)
    for session in _near(row):
        if _session_text(session, words).casefold() == wanted:
            return MatchRecording(row.key, session.key)
    raise PlanError(
        QT_TRANSLATE_NOOP("Plan", "No session near this day is called so. Choose one of the list.")
    )


def _pace(row: RecordingRow, words: Words) -> str:
    metres = row.recording.distance_m
    return words.pace(row.recording.moving_s / metres) if metres > 0.0 else NONE


def _flat_pace(row: RecordingRow, words: Words) -> str:
    metres = row.recording.flat_m
    return words.pace(row.recording.moving_s / metres) if metres > 0.0 else NONE


def _drift(row: RecordingRow, words: Words) -> str:
    drift = row.recording.drift
    return NONE if drift is None else words.number(100.0 * drift, 1)


def _began(row: RecordingRow, words: Words) -> str:
    day = local_day(row.recording, row.project)
    return NONE if day is None else words.day_and_year(day)


def _hour(row: RecordingRow, words: Words) -> str:
    start = row.recording.start
    if start is None:
        return NONE
    return words.clock(start.astimezone(row.project.race.start.tzinfo), weekday=False)


def _started(row: RecordingRow) -> float | None:
    start = row.recording.start
    return None if start is None else start.timestamp()


RECORDINGS: TableSpec[RecordingRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Recordings"),
    kind="recording",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Date"),
            text=_began,
            value=_started,
            is_main=True,
        ),
        Column(QT_TRANSLATE_NOOP("Tables", "Start"), text=_hour, is_figure=True),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Name"),
            text=lambda row, words: one_line(row.recording.name or row.recording.file),
            parse=lambda row, text, words: RenameRecording(row.key, text.strip()),
            is_wide=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Is of"),
            text=match_text,
            parse=_match,
            choices=_choices,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Distance"),
            text=lambda row, words: words.distance_bare(row.recording.distance_m, 1),
            value=lambda row: row.recording.distance_m,
            unit=distance_unit,
            is_figure=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Elapsed"),
            text=lambda row, words: words.duration(row.recording.elapsed_s),
            value=lambda row: row.recording.elapsed_s,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Moving"),
            text=lambda row, words: words.duration(row.recording.moving_s),
            value=lambda row: row.recording.moving_s,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Standing"),
            text=lambda row, words: words.duration(
                row.recording.elapsed_s - row.recording.moving_s
            ),
            value=lambda row: row.recording.elapsed_s - row.recording.moving_s,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Climb"),
            text=lambda row, words: words.height_bare(row.recording.climb_m),
            value=lambda row: row.recording.climb_m,
            unit=height_unit,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Drop"),
            text=lambda row, words: words.height_bare(row.recording.drop_m),
            value=lambda row: row.recording.drop_m,
            unit=height_unit,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Pace"),
            text=_pace,
            unit=pace_unit,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Flat-equivalent pace"),
            text=_flat_pace,
            unit=pace_unit,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Slower later"),
            text=_drift,
            value=lambda row: row.recording.drift,
            unit=unit("%"),
            is_figure=True,
        ),
    ),
    rows=recording_rows,
    empty=lambda outlook: QT_TRANSLATE_NOOP(
        "Tables", "No recordings yet. Recordings menu, Add recordings, or drop files here."
    ),
    hint=QT_TRANSLATE_NOOP(
        "Tables",
        "Kept in the project file as they came. Choose one, then look at it, mark its session or "
        "export it by the Recordings menu.",
    ),
    title=lambda row, words: row.recording.name or row.recording.file,
    remove=lambda row: RemoveRecording(row.key),
)

"""What the ledger says of the recording of a session: planned against recorded."""

from __future__ import annotations

from msgspec.structs import replace

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Done, Kind, Session
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.widgets.rows import Figure, Heads, Link, Row, Rule
from ultraplanner_gui.wording.words import NONE, Words

TOPIC = "recordings"
#: Link targets: an action by the name of its row.
_LOOK, _MARK = "action:look_at_recording", "action:mark_from_recording"


def recording_rows(outlook: Outlook, session: Session, words: Words) -> list[Row]:
    """Return the figures of the recordings of *session* beside what was planned; none without."""
    mine = [r for r in outlook.project.recordings if r.session == session.key]
    if not mine:
        return []
    plan = replace(session, done=None, missed=False).actual
    rows: list[Row] = []
    for recording in mine:
        name = recording.name or recording.file
        rows += [Rule(), Heads(name, tr("planned"), tr("recorded"), TOPIC)]
        rows += _figures(recording, plan, words)
    rows.append(Link(tr("Look at the recording"), _LOOK, topic=TOPIC))
    if session.done is None and session.kind is not Kind.RACE:
        rows.append(Link(tr("Mark the session done from it"), _MARK, topic="done or missed"))
    return rows


def _figures(recording: KeptRecording, plan: Done, words: Words) -> list[Row]:
    planned = words.climb_and_drop(plan.climb_m, plan.drop_m)
    climbed = words.climb_and_drop(recording.climb_m, recording.drop_m)
    moving = words.duration(recording.moving_s)
    standing = words.duration(recording.elapsed_s - recording.moving_s)
    rows: list[Row] = [
        Figure(
            tr("Distance"),
            words.distance(recording.distance_m, 1),
            words.distance(plan.distance_m, 1),
            shows_both=True,
            topic=TOPIC,
        ),
        Figure(tr("Climb, drop"), climbed, planned, shows_both=True, topic="climb and drop"),
        Figure(
            tr("Time moving"), moving, words.duration(plan.duration_s), shows_both=True, topic=TOPIC
        ),
        Figure(tr("Standing"), standing, topic=TOPIC),
    ]
    if recording.flat_m > 0.0:
        pace = words.pace_with_unit(recording.moving_s / recording.flat_m)
        rows.append(Figure(tr("Flat-equivalent pace"), pace, topic=TOPIC))
    drift = NONE if recording.drift is None else words.percent(100.0 * recording.drift, 1)
    rows.append(Figure(tr("Second half slower by"), drift, topic=TOPIC))
    return rows

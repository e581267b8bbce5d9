"""The actions of the Recordings menu, in its order."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.window.action_row import WITH_COURSE, ActionRow

RECORDINGS: tuple[ActionRow, ...] = (
    ActionRow("add_recordings", "recordings", QT_TRANSLATE_NOOP("Actions", "&Add recordings…")),
    ActionRow(
        "add_recording_folder", "recordings", QT_TRANSLATE_NOOP("Actions", "Add a &folder of them…")
    ),
    ActionRow(
        "look_at_recording", "recordings", QT_TRANSLATE_NOOP("Actions", "&Look at a recording…")
    ),
    ActionRow(
        "mark_from_recording",
        "recordings",
        QT_TRANSLATE_NOOP("Actions", "&Mark its session done…"),
    ),
    ActionRow("export_recording", "recordings", QT_TRANSLATE_NOOP("Actions", "&Export its file…")),
    ActionRow(
        "remove_recording", "recordings", QT_TRANSLATE_NOOP("Actions", "&Remove the recording")
    ),
    ActionRow(
        "look_back",
        "recordings",
        QT_TRANSLATE_NOOP("Actions", "Look &back on a run…"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "answer_lessons", "recordings", QT_TRANSLATE_NOOP("Actions", "Lessons, and their a&nswers")
    ),
    ActionRow(
        "next_project",
        "recordings",
        QT_TRANSLATE_NOOP("Actions", "New &project from this one…"),
    ),
)

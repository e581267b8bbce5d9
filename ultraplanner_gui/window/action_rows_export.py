"""The actions of the File menu that hand the plan over to other programs."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.window.action_row import WITH_COURSE, ActionRow

EXPORT: tuple[ActionRow, ...] = (
    ActionRow(
        "import_sessions",
        "file",
        QT_TRANSLATE_NOOP("Actions", "I&mport sessions, from calendar or CSV…"),
    ),
    ActionRow(
        "export_gpx",
        "file",
        QT_TRANSLATE_NOOP("Actions", "Export course with tar&gets as GPX…"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "export_calendar", "file", QT_TRANSLATE_NOOP("Actions", "Export sessions for &a calendar…")
    ),
    ActionRow("export_tables", "file", QT_TRANSLATE_NOOP("Actions", "Export all ta&bles as CSV…")),
    ActionRow("export_xlsx", "file", QT_TRANSLATE_NOOP("Actions", "Export all tables as &XLSX…")),
    ActionRow(
        "export_png",
        "file",
        QT_TRANSLATE_NOOP("Actions", "Export pro&file as PNG…"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "export_svg",
        "file",
        QT_TRANSLATE_NOOP("Actions", "Export profile as S&VG…"),
        "",
        WITH_COURSE,
    ),
)

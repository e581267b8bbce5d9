"""The actions of the Build-up menu, in its order."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.window.action_row import (
    MARKED,
    NOT_DONE,
    NOT_MISSED,
    NOT_RACE,
    TO_MOVE,
    WITH_COURSE,
    WITH_SESSION,
    ActionRow,
)

TRAINING: tuple[ActionRow, ...] = (
    ActionRow(
        "edit_session",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&Change session…"),
        "F2",
        WITH_SESSION,
        contexts=("session",),
    ),
    ActionRow(
        "pick_up",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Move with the arrow &keys"),
        enabled=TO_MOVE,
        contexts=("session",),
    ),
    ActionRow(
        "this_week",
        "training",
        QT_TRANSLATE_NOOP("Actions", "T&his week…"),
        "Ctrl+T",
    ),
    ActionRow(
        "how_it_went",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Ho&w it went…"),
        enabled=NOT_RACE,
        contexts=("session",),
    ),
    ActionRow(
        "mark_done",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Mark &done as planned"),
        enabled=NOT_DONE,
        contexts=("session",),
    ),
    ActionRow(
        "mark_missed",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Mark &missed"),
        enabled=NOT_MISSED,
        contexts=("session",),
    ),
    ActionRow(
        "unmark",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&Neither done nor missed"),
        enabled=MARKED,
        contexts=("session",),
    ),
    ActionRow(
        "add_session",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&Add a session"),
        "Ctrl+Shift+A",
        contexts=("session", "weeks"),
    ),
    ActionRow(
        "add_of_kind",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Add from the shel&f of kinds…"),
        "Ctrl+Shift+K",
        contexts=(
            "session",
            "weeks",
        ),
    ),
    ActionRow(
        "remove_session",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&Remove session"),
        enabled=NOT_RACE,
        contexts=("session",),
    ),
    ActionRow(
        "type_week_back",
        "training",
        QT_TRANSLATE_NOOP("Actions", "T&ype a week back in…"),
        "Ctrl+Shift+Y",
    ),
    ActionRow(
        "cut_sessions",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Cu&t"),
        enabled=NOT_RACE,
        contexts=("session",),
    ),
    ActionRow(
        "copy_sessions",
        "training",
        QT_TRANSLATE_NOOP("Actions", "C&opy"),
        enabled=NOT_RACE,
        contexts=("session",),
    ),
    ActionRow(
        "paste_sessions",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&Paste"),
        contexts=(
            "session",
            "weeks",
        ),
    ),
    ActionRow(
        "repeat_weekly",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Repeat e&very week…"),
        enabled=NOT_RACE,
        contexts=("session",),
    ),
    ActionRow(
        "lock_sessions",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Lock or &unlock"),
        enabled=NOT_RACE,
        contexts=("session",),
    ),
    ActionRow(
        "swap_sessions",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&Swap the two selected"),
        enabled=TO_MOVE,
        contexts=("session",),
    ),
    ActionRow(
        "swap_week_earlier",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Swap w&eek with the one before"),
        contexts=(
            "session",
            "weeks",
        ),
    ),
    ActionRow(
        "swap_week_later",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Swap week with the ne&xt one"),
        contexts=(
            "session",
            "weeks",
        ),
    ),
    ActionRow(
        "select_ahead",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Se&lect all ahead"),
    ),
    ActionRow(
        "missed_days",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&I missed these days…"),
        "Ctrl+Shift+M",
    ),
    ActionRow(
        "build_block",
        "training",
        QT_TRANSLATE_NOOP("Actions", "&Build the block anew"),
        "Ctrl+B",
        WITH_COURSE,
    ),
    ActionRow(
        "save_template",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Keep as a template to use a&gain…"),
    ),
    ActionRow(
        "apply_template",
        "training",
        QT_TRANSLATE_NOOP("Actions", "Ad&just a template to this race…"),
        enabled=WITH_COURSE,
    ),
)

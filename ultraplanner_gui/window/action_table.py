"""Every action once, in a table: its words, its keys, its menus and when it can be used."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.window.action_row import (
    ALWAYS,
    WITH_COURSE,
    WITH_ITEM,
    WITH_PROJECT,
    WITH_SECTION,
    ActionRow,
    Standard,
)
from ultraplanner_gui.window.action_rows_export import EXPORT
from ultraplanner_gui.window.action_rows_recordings import RECORDINGS
from ultraplanner_gui.window.action_rows_training import TRAINING

MENUS = (
    ("file", QT_TRANSLATE_NOOP("Actions", "&File")),
    ("edit", QT_TRANSLATE_NOOP("Actions", "&Edit")),
    ("training", QT_TRANSLATE_NOOP("Actions", "&Build-up")),
    ("race", QT_TRANSLATE_NOOP("Actions", "&Race day")),
    ("course", QT_TRANSLATE_NOOP("Actions", "&Course")),
    ("fuel", QT_TRANSLATE_NOOP("Actions", "F&uel")),
    ("recordings", QT_TRANSLATE_NOOP("Actions", "Rec&ordings")),
    ("view", QT_TRANSLATE_NOOP("Actions", "&View")),
    ("help", QT_TRANSLATE_NOOP("Actions", "&Help")),
)

TABLE: tuple[ActionRow, ...] = (
    ActionRow(
        "new", "file", QT_TRANSLATE_NOOP("Actions", "New from a &course…"), Standard.New, ALWAYS
    ),
    ActionRow(
        "type_course",
        "file",
        QT_TRANSLATE_NOOP("Actions", "&Type a course table…"),
        "Ctrl+Shift+C",
        ALWAYS,
    ),
    ActionRow(
        "open", "file", QT_TRANSLATE_NOOP("Actions", "&Open project…"), Standard.Open, ALWAYS
    ),
    ActionRow(
        "another_window", "file", QT_TRANSLATE_NOOP("Actions", "Another &window"), "", ALWAYS
    ),
    ActionRow("demo", "file", QT_TRANSLATE_NOOP("Actions", "Open the &demo"), "", ALWAYS),
    ActionRow("save_copy", "file", QT_TRANSLATE_NOOP("Actions", "&Save a copy…"), "Ctrl+Shift+S"),
    ActionRow("mail_copy", "file", QT_TRANSLATE_NOOP("Actions", "Cop&y to send…")),
    ActionRow("name_state", "file", QT_TRANSLATE_NOOP("Actions", "&Name this state…")),
    ActionRow("history", "file", QT_TRANSLATE_NOOP("Actions", "Go back to an &earlier state…")),
    ActionRow(
        "write_pdf",
        "file",
        QT_TRANSLATE_NOOP("Actions", "Write cards as &PDF…"),
        "Ctrl+E",
        WITH_COURSE,
    ),
    ActionRow(
        "print_cards",
        "file",
        QT_TRANSLATE_NOOP("Actions", "Pr&int cards…"),
        Standard.Print,
        WITH_COURSE,
    ),
    ActionRow(
        "lock_screen",
        "file",
        QT_TRANSLATE_NOOP("Actions", "Card for a loc&k screen…"),
        "",
        WITH_COURSE,
    ),
    *EXPORT,
    ActionRow(
        "close_project", "file", QT_TRANSLATE_NOOP("Actions", "C&lose project"), Standard.Close
    ),
    ActionRow("quit", "file", QT_TRANSLATE_NOOP("Actions", "&Quit"), "Ctrl+Q", ALWAYS),
    ActionRow(
        "steps", "edit", QT_TRANSLATE_NOOP("Actions", "&Steps of this sitting…"), "Ctrl+Shift+H"
    ),
    ActionRow(
        "find", "edit", QT_TRANSLATE_NOOP("Actions", "&Find anything…"), "Ctrl+Shift+F", ALWAYS
    ),
    ActionRow("race_form", "edit", QT_TRANSLATE_NOOP("Actions", "Ra&ce and runner…"), "Ctrl+R"),
    ActionRow(
        "crew_form", "edit", QT_TRANSLATE_NOOP("Actions", "Cre&w and lists…"), "Ctrl+Shift+W"
    ),
    ActionRow(
        "wishes",
        "edit",
        QT_TRANSLATE_NOOP("Actions", "Wishes and days &away…"),
        "Ctrl+Shift+R",
    ),
    ActionRow("tune_up", "edit", QT_TRANSLATE_NOOP("Actions", "Add a &tune-up race…")),
    ActionRow(
        "candidates",
        "edit",
        QT_TRANSLATE_NOOP("Actions", "Races to &pick from…"),
        "Ctrl+Shift+J",
    ),
    ActionRow(
        "ground_at_hand",
        "edit",
        QT_TRANSLATE_NOOP("Actions", "&Ground at hand…"),
        "Ctrl+Shift+G",
    ),
    ActionRow(
        "health",
        "edit",
        QT_TRANSLATE_NOOP("Actions", "&Health…"),
    ),
    ActionRow("head_form", "edit", QT_TRANSLATE_NOOP("Actions", "For the hea&d…")),
    ActionRow("own_days", "edit", QT_TRANSLATE_NOOP("Actions", "&Own lines for the last days…")),
    ActionRow("notes", "edit", QT_TRANSLATE_NOOP("Actions", "&Notes…"), "Ctrl+Shift+N"),
    ActionRow(
        "settings",
        "edit",
        QT_TRANSLATE_NOOP("Actions", "Sett&ings…"),
        Standard.Preferences,
        ALWAYS,
    ),
    *TRAINING,
    ActionRow("open_course", "race", QT_TRANSLATE_NOOP("Actions", "Open another &course…"), ""),
    ActionRow(
        "add_station",
        "race",
        QT_TRANSLATE_NOOP("Actions", "Add an &aid station"),
        "Ctrl+Shift+T",
        WITH_COURSE,
        contexts=("profile", "target"),
    ),
    ActionRow(
        "free_target",
        "race",
        QT_TRANSLATE_NOOP("Actions", "Let the section follow the cur&ve"),
        "",
        WITH_SECTION,
        contexts=("target",),
    ),
    ActionRow(
        "free_targets",
        "race",
        QT_TRANSLATE_NOOP("Actions", "Let all &sections follow the curve"),
        "",
        WITH_COURSE,
        contexts=("target",),
    ),
    ActionRow(
        "lock_target",
        "race",
        QT_TRANSLATE_NOOP("Actions", "&Lock the section at its time"),
        "",
        WITH_SECTION,
        contexts=("target",),
    ),
    ActionRow(
        "shape_form",
        "race",
        QT_TRANSLATE_NOOP("Actions", "Pace of &target and runner…"),
        "Ctrl+Shift+P",
        WITH_COURSE,
        contexts=("target",),
    ),
    ActionRow(
        "predict_form",
        "race",
        QT_TRANSLATE_NOOP("Actions", "Predict the &finish…"),
        "",
        WITH_COURSE,
        contexts=("target",),
    ),
    ActionRow(
        "fit_runs",
        "race",
        QT_TRANSLATE_NOOP("Actions", "Fit from my &runs…"),
        "",
        WITH_COURSE,
        contexts=("target",),
    ),
    ActionRow(
        "conditions_form",
        "race",
        QT_TRANSLATE_NOOP("Actions", "&Weather and conditions…"),
        "Ctrl+Shift+O",
        WITH_COURSE,
        contexts=("warmth", "light"),
    ),
    ActionRow(
        "beside_rules",
        "race",
        QT_TRANSLATE_NOOP("Actions", "&Beside other rules…"),
        "",
        WITH_COURSE,
        contexts=("target",),
    ),
    ActionRow(
        "fold_leg",
        "race",
        QT_TRANSLATE_NOOP("Actions", "Fold the le&g away, or unfold it"),
        "Ctrl+Shift+E",
        WITH_COURSE,
    ),
    ActionRow(
        "unfold_legs",
        "race",
        QT_TRANSLATE_NOOP("Actions", "&Unfold all legs"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "course_shape",
        "course",
        QT_TRANSLATE_NOOP("Actions", "Shape of the &course…"),
        "",
        WITH_COURSE,
        contexts=("profile",),
    ),
    ActionRow(
        "what_was_mended",
        "course",
        QT_TRANSLATE_NOOP("Actions", "What was &mended…"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "change_station",
        "course",
        QT_TRANSLATE_NOOP("Actions", "Change &aid station…"),
        "",
        WITH_COURSE,
        contexts=("profile", "target"),
    ),
    ActionRow(
        "cut_by_stations",
        "course",
        QT_TRANSLATE_NOOP("Actions", "Cut sections by aid &stations"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "cut_by_climbs",
        "course",
        QT_TRANSLATE_NOOP("Actions", "Cut sections by climbs and &descents"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "cut_by_distance",
        "course",
        QT_TRANSLATE_NOOP("Actions", "Cut sections &every so far…"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "split_section",
        "course",
        QT_TRANSLATE_NOOP("Actions", "S&plit the section at the cursor"),
        "",
        WITH_COURSE,
        contexts=("target", "profile"),
    ),
    ActionRow(
        "merge_section",
        "course",
        QT_TRANSLATE_NOOP("Actions", "&Join the section with the next"),
        "",
        WITH_SECTION,
        contexts=("target",),
    ),
    ActionRow(
        "name_section",
        "course",
        QT_TRANSLATE_NOOP("Actions", "&Name the section…"),
        "",
        WITH_SECTION,
        contexts=("target",),
    ),
    ActionRow(
        "surface_factors",
        "course",
        QT_TRANSLATE_NOOP("Actions", "What surfaces c&ost…"),
        "",
        WITH_COURSE,
        contexts=("surface",),
    ),
    ActionRow(
        "fuel_rates",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Fuel per &hour…"),
        "",
        WITH_COURSE,
        contexts=("fuel",),
    ),
    ActionRow(
        "fuel_habits",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "&Bottles, caffeine, allergies…"),
        contexts=("fuel", "glycogen", "fluid"),
    ),
    ActionRow(
        "station_foods",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Food at &stations…"),
        "",
        WITH_COURSE,
    ),
    ActionRow("sweat_test", "fuel", QT_TRANSLATE_NOOP("Actions", "S&weat test…")),
    ActionRow(
        "place_fuel",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "&Place fuel by the clock"),
        "Ctrl+L",
        WITH_COURSE,
        contexts=("fuel",),
    ),
    ActionRow(
        "fill_fuel",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "&Fill to target…"),
        "Ctrl+Shift+L",
        WITH_COURSE,
        contexts=("fuel",),
    ),
    ActionRow(
        "repeat_food",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Repeat a food b&y rule…"),
        "",
        WITH_COURSE,
        contexts=("fuel",),
    ),
    ActionRow(
        "add_item",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Add a fuel &item"),
        "Ctrl+I",
        WITH_COURSE,
        contexts=("fuel",),
    ),
    ActionRow(
        "remove_item",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "&Remove fuel item"),
        "",
        WITH_ITEM,
        contexts=("fuel",),
    ),
    ActionRow(
        "clear_fuel",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Remove &all items"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "keep_clock",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Items keep their &time"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "keep_place",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Items &keep their place"),
        "",
        WITH_COURSE,
    ),
    ActionRow(
        "fuel_cautions",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "When it goes wrong, and &cautions…"),
        "",
        WITH_COURSE,
        contexts=("glycogen", "fluid"),
    ),
    ActionRow(
        "practice_food",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "Put practice food on sessi&ons"),
    ),
    ActionRow(
        "take_tolerated",
        "fuel",
        QT_TRANSLATE_NOOP("Actions", "What your &gut has tolerated…"),
    ),
    *RECORDINGS,
    ActionRow(
        "sheet", "view", QT_TRANSLATE_NOOP("Actions", "&Sheet"), "Ctrl+1", WITH_PROJECT, True
    ),
    ActionRow(
        "tables", "view", QT_TRANSLATE_NOOP("Actions", "&Tables"), "Ctrl+2", WITH_PROJECT, True
    ),
    ActionRow("cards", "view", QT_TRANSLATE_NOOP("Actions", "Ca&rds"), "Ctrl+3", WITH_COURSE, True),
    ActionRow("both_storeys", "view", QT_TRANSLATE_NOOP("Actions", "&Both storeys"), "Ctrl+4"),
    ActionRow("buildup_alone", "view", QT_TRANSLATE_NOOP("Actions", "Build-&up alone"), "Ctrl+5"),
    ActionRow("raceday_alone", "view", QT_TRANSLATE_NOOP("Actions", "Race day &alone"), "Ctrl+6"),
    ActionRow(
        "by_distance",
        "view",
        QT_TRANSLATE_NOOP("Actions", "Race by &distance"),
        "Ctrl+D",
        WITH_COURSE,
    ),
    ActionRow(
        "by_clock", "view", QT_TRANSLATE_NOOP("Actions", "Race by clo&ck"), "Ctrl+K", WITH_COURSE
    ),
    ActionRow(
        "plan_view",
        "view",
        QT_TRANSLATE_NOOP("Actions", "Plan view of t&he course"),
        "",
        WITH_COURSE,
        contexts=("profile",),
    ),
    ActionRow(
        "weeks_larger",
        "view",
        QT_TRANSLATE_NOOP("Actions", "Fewer &weeks, larger"),
        contexts=("session", "weeks"),
        keys="+",
    ),
    ActionRow(
        "weeks_smaller",
        "view",
        QT_TRANSLATE_NOOP("Actions", "More weeks o&ver the same width"),
        contexts=("session", "weeks"),
        keys="-",
    ),
    ActionRow(
        "all_weeks",
        "view",
        QT_TRANSLATE_NOOP("Actions", "All weeks i&n view"),
        contexts=("session", "weeks"),
        keys="0",
    ),
    ActionRow(
        "theme_system", "view", QT_TRANSLATE_NOOP("Actions", "Col&ours of the system"), "", ALWAYS
    ),
    ActionRow("theme_light", "view", QT_TRANSLATE_NOOP("Actions", "&Light"), "", ALWAYS),
    ActionRow("theme_dark", "view", QT_TRANSLATE_NOOP("Actions", "Dar&k"), "", ALWAYS),
    ActionRow(
        "text_larger", "view", QT_TRANSLATE_NOOP("Actions", "Text lar&ger"), Standard.ZoomIn, ALWAYS
    ),
    ActionRow(
        "text_smaller",
        "view",
        QT_TRANSLATE_NOOP("Actions", "Text s&maller"),
        Standard.ZoomOut,
        ALWAYS,
    ),
    ActionRow("motion", "view", QT_TRANSLATE_NOOP("Actions", "Sto&p or allow motion"), "", ALWAYS),
    ActionRow(
        "units_metric", "view", QT_TRANSLATE_NOOP("Actions", "Kilom&etres and metres"), "", ALWAYS
    ),
    ActionRow(
        "units_imperial", "view", QT_TRANSLATE_NOOP("Actions", "Miles and &feet"), "", ALWAYS
    ),
    ActionRow("help_here", "help", QT_TRANSLATE_NOOP("Actions", "&What is this?"), "F1", ALWAYS),
    ActionRow(
        "help_point",
        "help",
        QT_TRANSLATE_NOOP("Actions", "&Point at what to explain"),
        "Shift+F1",
        ALWAYS,
    ),
    ActionRow(
        "help_topics", "help", QT_TRANSLATE_NOOP("Actions", "Search the &help…"), "Alt+F1", ALWAYS
    ),
    ActionRow("handbook", "help", QT_TRANSLATE_NOOP("Actions", "Hand&book"), "", ALWAYS),
    ActionRow("shortcuts", "help", QT_TRANSLATE_NOOP("Actions", "&Keys"), "Ctrl+F1", ALWAYS),
    ActionRow(
        "red_flags", "help", QT_TRANSLATE_NOOP("Actions", "When to &stop and get help"), "", ALWAYS
    ),
    ActionRow("about", "help", QT_TRANSLATE_NOOP("Actions", "&About Ultraplanner"), "", ALWAYS),
)

#: A rule is drawn in the menu before these.
GROUPS = frozenset(
    (
        *("save_copy", "write_pdf", "export_gpx", "close_project"),
        *("race_form", "build_block", "add_station"),
        *("this_week", "add_session", "cut_sessions", "swap_sessions", "missed_days"),
        "weeks_larger",
        *("cut_by_stations", "surface_factors"),
        *("free_target", "shape_form", "both_storeys", "by_distance", "theme_system"),
        *("place_fuel", "add_item", "keep_clock", "fuel_cautions", "practice_food"),
        *("text_larger", "units_metric", "shortcuts", "red_flags"),
        *("look_at_recording", "look_back"),
    )
)

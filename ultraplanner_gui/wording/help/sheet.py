"""Topics of the program itself: the sheet, tables, and how the work is kept."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help.topic import CHOICE, PLAN, Topic, choice

PROGRAM: tuple[Topic, ...] = (
    Topic(
        "help",
        QT_TRANSLATE_NOOP("Help", "Asking what something is"),
        QT_TRANSLATE_NOOP(
            "Help",
            "F1 explains what has the focus: what it is, where its figure comes from and on which "
            "source. Shift+F1 lets you point at anything instead. Figures in the header and in the "
            "ledger can be clicked. The field above searches every page; Esc takes you back to "
            "where you were.",
        ),
        see=("sheet", "checks", "red flags", "welcome", "notes", "settings", "handbook"),
        words=QT_TRANSLATE_NOOP("Help", "F1 explain source meaning"),
    ),
    Topic(
        "sheet",
        QT_TRANSLATE_NOOP("Help", "The sheet"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One sheet, two storeys: the build-up above, race day below, both running left to "
            "right toward the finish. On the right the ledger holds the figures of what you "
            "selected. Whatever you drag shows at once what it changes.",
        ),
        see=("build-up", "race day", "ledger", "runway", "finish window", "tables", "cards"),
        words=QT_TRANSLATE_NOOP("Help", "window overview"),
    ),
    Topic(
        "welcome",
        QT_TRANSLATE_NOOP("Help", "Starting a plan"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Drop the GPX file of your race on the window. One short form asks for the race and "
            "for what you run now; from that you get a build-up, section targets and a fuel plan, "
            "all of which can be changed later. The demo shows a plan that is under way.",
        ),
        see=("course", "usual week", "finish aimed for", "sheet"),
        words=QT_TRANSLATE_NOOP("Help", "new first start begin gpx demo"),
    ),
    Topic(
        "race facts",
        QT_TRANSLATE_NOOP("Help", "The race at a glance"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Date, length, climb and drop of the course, and the time limit if there is one. "
            "Length and climb are measured on the file you opened, so they may differ from what "
            "the race announces.",
        ),
        sources=(PLAN,),
        see=("race date", "course", "climb and drop", "time limit", "race name"),
        words=QT_TRANSLATE_NOOP("Help", "header distance ascent"),
    ),
    Topic(
        "ledger",
        QT_TRANSLATE_NOOP("Help", "Ledger"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The figures of what is selected: a session with its week above, a section or a fuel "
            "item below, and the checks they touch. While you drag, each figure stands before and "
            "now. With the keyboard, up and down go through its lines and F1 explains one; Enter "
            "on a check goes to the session it is about.",
        ),
        see=("before and now", "checks", "what comes next", "sheet"),
        words=QT_TRANSLATE_NOOP("Help", "panel right figures"),
    ),
    Topic(
        "what comes next",
        QT_TRANSLATE_NOOP("Help", "What comes next"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The steps still open in this plan, each gone once it is taken: aid stations and "
            "cutoffs as long as there are none, and after a new plan what is worth a look first. "
            "Under it stands where the build-up could not give all that was asked, and what was "
            "mended in the course file. Nothing has to be done in this order.",
        ),
        see=("ledger", "cutoff", "cards"),
        words=QT_TRANSLATE_NOOP("Help", "first steps begin start new plan"),
    ),
    Topic(
        "before and now",
        QT_TRANSLATE_NOOP("Help", "Before and now"),
        QT_TRANSLATE_NOOP(
            "Help",
            "While something is in your hand, every lane and figure shows what it would come to. "
            "Dashed outlines and the small figures are what is kept. Nothing is kept until you put "
            "it down; Esc puts it back.",
        ),
        see=("ledger", "day grid", "kept"),
        words=QT_TRANSLATE_NOOP("Help", "drag trial preview dashed"),
    ),
    Topic(
        "checks",
        QT_TRANSLATE_NOOP("Help", "Holds, strains, breaks"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How your plan stands against a rule, in words and as a cord: taut when it holds, "
            "frayed when it strains, parted when it breaks. No rule stops you from planning what "
            "you think right; each says its source, and some are no more than custom.",
        ),
        sources=(choice(QT_TRANSLATE_NOOP("Help", "Where strains ends and breaks begins.")),),
        caution=QT_TRANSLATE_NOOP(
            "Help", "A plan in which everything holds can still hurt you. It does not examine you."
        ),
        see=(
            *("ramp", "single run", "hard days", "cutback", "long-run share", "taper", "mend"),
            *("downhill", "tune-up race", "practice carbs", "what the race asks"),
            *("fuel target", "carbs practised", "carb ceiling", "carb advice"),
            *("first bite",),
        ),
        words=QT_TRANSLATE_NOOP("Help", "rules warnings cord strain break"),
    ),
    Topic(
        "tables",
        QT_TRANSLATE_NOOP("Help", "Tables"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The same plan to type instead of drag: sessions, sections, aid stations, fuel, foods. "
            "Type over a cell, copy to a spreadsheet and paste back. F1 explains the column you "
            "are in.",
        ),
        see=("session kind", "section", "aid station", "fuel item", "food", "typing in a table"),
        words=QT_TRANSLATE_NOOP("Help", "spreadsheet list type rows columns"),
    ),
    Topic(
        "notes",
        QT_TRANSLATE_NOOP("Help", "Notes"),
        QT_TRANSLATE_NOOP(
            "Help", "Room for anything about the whole plan. Kept as you type; it changes nothing."
        ),
        see=("session note", "when it gets hard"),
    ),
)

KEEPING: tuple[Topic, ...] = (
    Topic(
        "kept",
        QT_TRANSLATE_NOOP("Help", "Kept"),
        QT_TRANSLATE_NOOP(
            "Help",
            "When your work was last written to its file; hover over it to see where. Every change "
            "is kept at once, so there is nothing to save and nothing to lose in a power cut. If "
            "it says not kept, the sentence beside it tells why.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Clock time of the last change that was written, on your computer's clock."
        ),
        (PLAN,),
        see=("history", "before and now"),
        words=QT_TRANSLATE_NOOP("Help", "save saved file header autosave undo"),
    ),
    Topic(
        "history",
        QT_TRANSLATE_NOOP("Help", "Earlier states"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The file keeps the plan as it was each time you opened it and before a block, a "
            "course or a mend went in: the latest 30 of these, and every state you named. Going "
            "back to one of them is a step like any other, so Undo brings today's plan back.",
        ),
        sources=(CHOICE,),
        see=("kept",),
        words=QT_TRANSLATE_NOOP("Help", "versions go back restore earlier opening name state undo"),
    ),
)

TOPICS = PROGRAM + KEEPING

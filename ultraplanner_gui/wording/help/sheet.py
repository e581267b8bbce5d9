"""Topics of the program itself: the sheet, tables, cards, and how the work is kept."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import CHOICE, PLAN, Topic, choice, published

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
        see=("sheet", "checks", "red flags", "welcome", "notes"),
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
        see=("before and now", "checks", "sheet"),
        words=QT_TRANSLATE_NOOP("Help", "panel right figures"),
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
            *("ramp", "single run", "hard days", "cutback", "long-run share", "taper"),
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
        see=("session kind", "section", "aid station", "fuel item", "food"),
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
        QT_TRANSLATE_NOOP("Help", "Earlier openings"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The file keeps the plan as it was each time you opened it. Going back to one of them "
            "is a step like any other, so Undo brings today's plan back.",
        ),
        see=("kept",),
        words=QT_TRANSLATE_NOOP("Help", "versions go back restore earlier state undo"),
    ),
)

CARDS: tuple[Topic, ...] = (
    Topic(
        "cards",
        QT_TRANSLATE_NOOP("Help", "Cards"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you carry on the day, printed small: when to be where, and what to eat on each "
            "leg. Choose cards and sizes on the left; the desk shows them as they will be. Print "
            "at 100 %, not fitted to the page.",
        ),
        see=("pace card", "fuel card", "card size"),
        words=QT_TRANSLATE_NOOP("Help", "print pdf preview paper"),
    ),
    Topic(
        "card size",
        QT_TRANSLATE_NOOP("Help", "Size of a card"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The finished size in millimetres. Print grows and shrinks with it within what can be "
            "read; what does not fit goes on to a second page.",
        ),
        see=("cards",),
        words=QT_TRANSLATE_NOOP("Help", "A6 A5 A4 letter width height mm"),
    ),
    Topic(
        "pace card",
        QT_TRANSLATE_NOOP("Help", "Pace card"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One row to each place: how far, climb and drop since the last, pace, when you are "
            "there on plan, your stop, time in hand, when you would be there half an hour late, "
            "the last arrival that still makes every cutoff, and the cutoff itself.",
        ),
        see=(
            *("section", "climb and drop", "target", "arrive", "planned stop", "time in hand"),
            *("30 late", "last arrival", "cutoff", "light"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "print on plan"),
    ),
    Topic(
        "30 late",
        QT_TRANSLATE_NOOP("Help", "30 min late"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The clock if you come through half an hour behind plan. Two columns beside each "
            "other are easier to read on a bad day than a sum.",
        ),
        QT_TRANSLATE_NOOP("Help", "Arrival on plan plus 30 minutes."),
        (CHOICE,),
        see=("arrive", "last arrival", "pace card"),
        words=QT_TRANSLATE_NOOP("Help", "half an hour behind column"),
    ),
    Topic(
        "last arrival",
        QT_TRANSLATE_NOOP("Help", "Last arrival"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The latest you may arrive and still make this and every later cutoff at planned "
            "speed. Later than that, only going faster helps.",
        ),
        QT_TRANSLATE_NOOP("Help", "Arrival on plan plus time in hand, rounded down."),
        (PLAN,),
        see=("time in hand", "cutoff", "pace card"),
        words=QT_TRANSLATE_NOOP("Help", "latest column"),
    ),
    Topic(
        "fuel card",
        QT_TRANSLATE_NOOP("Help", "Fuel card"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One row to each leg between aid stations: how long it takes, what to eat and drink on "
            "it, carbohydrate in all and per hour, fluid, and whether a bag or your crew waits at "
            "its end. Items with caffeine carry the clock time they are meant for.",
        ),
        sources=(
            published(
                papers.HEW_BUTLER_2015,
                QT_TRANSLATE_NOOP("Help", "Why it says to drink to thirst."),
            ),
        ),
        see=("race carbs", "carbs per hour", "fluid", "servings", "running time", "what is there"),
        words=QT_TRANSLATE_NOOP("Help", "print leg food"),
    ),
)

TOPICS = PROGRAM + KEEPING + CARDS

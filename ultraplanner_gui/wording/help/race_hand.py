"""Topics of what is moved by hand on race day: stations, stops, the start, folded legs."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help.topic import CHOICE, PLAN, Topic

TOPICS: tuple[Topic, ...] = (
    Topic(
        "moving on race day",
        QT_TRANSLATE_NOOP("Help", "Moving things on race day"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Drag a station by its name, a stop by the end of its bar, the start by its name or by "
            "the light, a section by its right edge, food by its token. All lanes, the header and "
            "the ledger show what it would come to; let go and it is one step to undo, Esc puts "
            "it back. With the keys: choose with left and right, Enter picks up, the arrows move, "
            "Enter puts down.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A station takes the end of its section and its cutoff along; the finish aimed for "
            "stays. A longer stop leaves less time to run.",
        ),
        sources=(PLAN,),
        see=("snapping", "aid station", "planned stop", "moving the start", "before and now"),
        words=QT_TRANSLATE_NOOP("Help", "drag mouse keys arrows hand carry grip handle"),
    ),
    Topic(
        "snapping",
        QT_TRANSLATE_NOOP("Help", "What things snap to"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Places snap to feet and tops of climbs, to aid stations and to whole kilometres or "
            "miles; food to passing these; stops to whole five minutes; the start to half hours "
            "and five minutes; all of them to where they were. A light line names what it snapped "
            "to. Hold Alt while dragging and nothing snaps; zoomed in it snaps less.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A named place takes hold from 6 pixels away, a round figure from 3.5. What nothing "
            "holds is rounded to 10 m or a minute, with Alt to 1 m or 10 seconds.",
        ),
        sources=(CHOICE,),
        see=("moving on race day", "climbs and descents"),
        words=QT_TRANSLATE_NOOP("Help", "snap magnet round Alt free exact"),
    ),
    Topic(
        "moving the start",
        QT_TRANSLATE_NOOP("Help", "Moving the start"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Drag the start by its name over the lanes, or drag the light along the race. Every "
            "clock time follows, cutoffs too, for they count from the start; the dark hours, the "
            "warmth and the pace in the dark are reckoned anew. It stays on its day: another day "
            "is set in Race and runner.",
        ),
        sources=(PLAN,),
        see=("light", "lamp", "cutoff", "race date"),
        words=QT_TRANSLATE_NOOP("Help", "start time earlier later wave gun dawn"),
    ),
    Topic(
        "folded leg",
        QT_TRANSLATE_NOOP("Help", "Folding a leg away"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Under the names of the stations each leg has two tips. A click on them folds the leg "
            "to a narrow pleat through all lanes, so that the others get its room; a click on the "
            "pleat opens it. With the keys: F folds the leg ahead of the chosen station, Shift+F "
            "the one behind. Nothing in the plan changes, and one leg always stays open.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "The pleat says from where to where, how far and how long on the target."
        ),
        sources=(PLAN,),
        see=("race axis", "aid station", "next leg", "lanes without room"),
        words=QT_TRANSLATE_NOOP("Help", "fold unfold hide narrow pleat collapse"),
    ),
    Topic(
        "lanes without room",
        QT_TRANSLATE_NOOP("Help", "Lanes without room"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A low window has no room for every lane. The profile keeps a fair height; surface, "
            "warmth, glycogen and fluid make room for it. The button beside the title names them: "
            "it shows one in place of another, or race day alone with all of them. Drag the lower "
            "edge of the profile up, and they come back of themselves.",
        ),
        see=("race day", "profile", "folded leg"),
        words=QT_TRANSLATE_NOOP("Help", "hidden missing lane height more glycogen surface"),
    ),
    Topic(
        "next leg",
        QT_TRANSLATE_NOOP("Help", "The leg ahead"),
        QT_TRANSLATE_NOOP(
            "Help",
            "From leaving an aid station to the next one, or the finish: how far, how much up and "
            "down, when and in what light, over what ground. A leg may hold several sections.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Times are those of the target, climb and drop those of the profile."
        ),
        sources=(PLAN,),
        see=("section", "running time", "climb and drop", "surface", "light", "carry"),
        words=QT_TRANSLATE_NOOP("Help", "leg between stations ahead underfoot"),
    ),
)

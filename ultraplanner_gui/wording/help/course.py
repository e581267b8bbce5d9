"""Help on the course: how its file is read, what can be changed on it, what lies underfoot."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help.papers import (
    BJORKLUND_2019,
    LEJEUNE_1998,
    RAPAPORT_2010,
    VOLOSHINA_2015,
)
from ultraplanner_gui.wording.help.topic import (
    CHOICE,
    PLAN,
    PRACTICE,
    Topic,
    choice,
    practice,
    published,
)

TOPICS = (
    Topic(
        "mended file",
        QT_TRANSLATE_NOOP("Help", "What was mended in the file"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Files come broken in known ways: tracks in pieces or out of order, the same line "
            "twice, points far off, heights missing, jumping or in feet. What was done about it "
            "is said in one line each. A line that can be undone is: the file is read again and "
            "that is left as it was. The file itself is never changed.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A way of up to 2 km between two pieces is run straight, a longer one is missing and "
            "counts for nothing. A point is far off where the line jumps 500 m or more to it and "
            "back. A height is a spike where it jumps by more than 30 m, steeper than 45 degrees, "
            "and back within 500 m. Heights are taken for feet where 8 % of the way would be "
            "steeper than 45 %, where half the course would lie above 5,900 m, or where they are "
            "whole metres only once taken as feet.",
        ),
        (CHOICE,),
        QT_TRANSLATE_NOOP(
            "Help",
            "Gentle ground in feet looks like hilly ground in metres and is not noticed. Compare "
            "the climb with what the race says.",
        ),
        see=("course", "which line", "official climb and drop"),
        words=QT_TRANSLATE_NOOP("Help", "repair gap spike feet filler broken import GPX undo"),
    ),
    Topic(
        "which line",
        QT_TRANSLATE_NOOP("Help", "Which line of the file"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A file may hold several tracks and routes. The most likely reading is taken: tracks "
            "rather than routes, joined in order, and a line that goes over the ground of another "
            "one only once. Any single one, or all joined, can be chosen instead.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A line is there twice if 95 % of it lies within 75 m of another one and goes the "
            "same way. Tracks are put in another order than the file's only if each then begins "
            "within 2 km of where the one before ends.",
        ),
        (CHOICE,),
        see=("course", "mended file"),
        words=QT_TRANSLATE_NOOP("Help", "track route several choose join"),
    ),
    Topic(
        "course shape",
        QT_TRANSLATE_NOOP("Help", "Changing the line"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A course can be trimmed at both ends, turned round, run in laps, gone out and back, "
            "or continued by another leg. Stations, surfaces, pins and sections go with their "
            "ground; stations come by again in every lap.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Cutoffs stay when you trim, for they are times of the race. They are dropped when "
            "you turn the course round, and in laps, on the way back and on another leg: nobody "
            "knows them but the race. A target you have fixed stays only where its section is "
            "what it was.",
        ),
        (PLAN,),
        QT_TRANSLATE_NOOP(
            "Help", "Enter the cutoffs of later laps yourself; without them nothing warns you."
        ),
        see=("course", "official distance", "cutoff"),
        words=QT_TRANSLATE_NOOP("Help", "trim reverse laps out and back join leg"),
    ),
    Topic(
        "official distance",
        QT_TRANSLATE_NOOP("Help", "Official distance"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long the race says the course is. With it the line is stretched to that length, "
            "evenly, and all places on it with it; both figures are shown. Without it the line "
            "counts as measured.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "One factor on all distances between two pins. More than threefold is taken for a "
            "slip of the keys.",
        ),
        (CHOICE,),
        see=("course", "pinned station", "official climb and drop"),
        words=QT_TRANSLATE_NOOP("Help", "length scale stretch announced"),
    ),
    Topic(
        "official climb and drop",
        QT_TRANSLATE_NOOP("Help", "Official climb and drop"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the race says about metres up and down. With it the heights are scaled so that "
            "they come to these figures, slopes get steeper or gentler by as much, and section "
            "figures add up to them.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "All that counts as climb is multiplied by one factor, all that counts as drop by "
            "another; waves too small to count stay as they are. If you give one figure alone, "
            "the other follows so that start and finish keep their heights.",
        ),
        (
            published(
                RAPAPORT_2010,
                QT_TRANSLATE_NOOP(
                    "Help", "Climb hangs on how heights are smoothed: no two methods agree."
                ),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "How the heights are scaled.")),
        ),
        see=("climb and drop", "official distance", "profile"),
        words=QT_TRANSLATE_NOOP("Help", "ascent descent elevation gain announced scale"),
    ),
    Topic(
        "pinned station",
        QT_TRANSLATE_NOOP("Help", "Pinned station"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A station whose distance you take from the handbook while it stays where it is on "
            "the ground. The line before and after it is stretched to fit, so that all stations "
            "stand at the handbook's distances. Moving a pinned station takes its pin away.",
        ),
        QT_TRANSLATE_NOOP("Help", "Between two pins distances are multiplied by one factor."),
        (CHOICE,),
        see=("aid station", "official distance"),
        words=QT_TRANSLATE_NOOP("Help", "pin handbook distance place"),
    ),
    Topic(
        "surface",
        QT_TRANSLATE_NOOP("Help", "What is underfoot"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Paint a stretch as road, gravel, smooth trail, grass, technical trail, rock, sand or "
            "snow. What you do not know stays unknown and counts as firm ground.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each surface has a cost (energy over that on firm ground) and a factor on speed "
            "downhill. Usual costs: gravel 1.02, smooth trail 1.05, grass 1.08, technical trail "
            "1.15, rock 1.40, snow 1.45, sand 1.60. You can set both for this course.",
        ),
        (
            published(LEJEUNE_1998, QT_TRANSLATE_NOOP("Help", "Running on dry sand: 1.6.")),
            published(VOLOSHINA_2015, QT_TRANSLATE_NOOP("Help", "An uneven treadmill: 1.05.")),
            published(
                BJORKLUND_2019,
                QT_TRANSLATE_NOOP("Help", "Runners differ most downhill. No factor is given."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "All other factors.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Mud, wet rock or a path in the dark can cost far more than any of these.",
        ),
        see=("gradient and pace", "pace model", "course", "surface match"),
        words=QT_TRANSLATE_NOOP("Help", "terrain road gravel trail grass rock sand snow factor"),
    ),
    Topic(
        "cutting sections",
        QT_TRANSLATE_NOOP("Help", "Cutting the course into sections"),
        QT_TRANSLATE_NOOP(
            "Help",
            "By aid stations, by climbs and descents, every so many kilometres, or by hand: split "
            "a section at a place, join it with the next, give it a name. A section always ends "
            "where there is a cutoff.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A section that stays what it was keeps its target, name and words. Words for when it "
            "gets hard are never lost: they go to the section with the middle of the old one.",
        ),
        (PLAN,),
        see=("section", "climbs and descents", "fixed target", "when it gets hard"),
        words=QT_TRANSLATE_NOOP("Help", "split merge join rename divide leg"),
    ),
    Topic(
        "plan view",
        QT_TRANSLATE_NOOP("Help", "Plan view of the course"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The line from above, north up, in the colours of the profile: ochre climbs, sky "
            "descents. Arrows say which way; a lap or a way back runs beside the way before. "
            "Dashes along the line are surfaces. The place is the one in the lanes; arrow keys "
            "walk it, Enter or a click selects.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "On the plane that touches the ellipsoid of the Earth in the middle of the line.",
        ),
        (PLAN,),
        see=("course", "profile", "surface"),
        words=QT_TRANSLATE_NOOP("Help", "map track route from above laps north"),
    ),
    Topic(
        "climbs and descents",
        QT_TRANSLATE_NOOP("Help", "Climbs and descents"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The long slopes of the course, found in its profile and numbered in course order, "
            "with length and height. Small ups and downs within one belong to it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The profile is parted where it goes back by a 25th of the climb of the course, at "
            "least 30 m and at most 150 m. Of each part counts what rises more than 2 % of its "
            "way; 2 km that rise less than 1 % part two climbs. Level ground of less than 1 km "
            "between two slopes goes to them.",
        ),
        (
            practice(QT_TRANSLATE_NOOP("Help", "Racing by climbs.")),
            choice(QT_TRANSLATE_NOOP("Help", "The limits.")),
        ),
        see=("cutting sections", "climb and drop", "profile", "plan view"),
        words=QT_TRANSLATE_NOOP("Help", "hill slope ascent descent steepest"),
    ),
    Topic(
        "sleep stop",
        QT_TRANSLATE_NOOP("Help", "A stop to sleep"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A planned stop can be to pass, to eat, to change, or to sleep. Time asleep is part "
            "of the stop: add what it takes to lie down, to wake up and to get going again.",
        ),
        sources=(PRACTICE,),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Who sees things that are not there, cannot walk straight or falls asleep walking "
            "must stop where people are, whatever the plan says. Tell somebody to wake you. Do "
            "not drive home without having slept.",
        ),
        see=("planned stop", "aid station"),
        words=QT_TRANSLATE_NOOP("Help", "nap rest night tired"),
    ),
)

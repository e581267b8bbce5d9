"""Topics of recordings, of looking back on a run, and of what is learnt from it."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    PLAN,
    Topic,
    choice,
    estimate,
    from_memory,
    published,
)

TOPICS: tuple[Topic, ...] = (
    Topic(
        "recordings",
        QT_TRANSLATE_NOOP("Help", "Recordings"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Runs and races recorded by a device, kept in the project file as they came and "
            "exported again unchanged. Distance is measured along the points, climb and drop on "
            "heights averaged as on the course. Pace on equal effort takes the gradients out.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Moving time leaves out where the points stay within 6 m in 20 s for half a minute or "
            "more. Flat-equivalent distance and the pace line use the pace model with your own "
            "figures, in the table the usual ones; slower later is how much longer the second half "
            "of that distance took than the first.",
        ),
        (
            published(papers.MINETTI_2002, QT_TRANSLATE_NOOP("Help", "What climbing costs.")),
            choice(QT_TRANSLATE_NOOP("Help", "When one stands, and how slopes are sorted.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A recording says where you have been and when. Think before you send the project "
            "file to others.",
        ),
        see=("recording matched", "looking back", "fit from my runs", "predicted finish"),
        words=QT_TRANSLATE_NOOP("Help", "gpx track device import moving standing drift pace"),
    ),
    Topic(
        "recording matched",
        QT_TRANSLATE_NOOP("Help", "What a recording is of"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A recording is of the session of its day whose length is nearest, of the evening "
            "before if it began before four in the morning, or of the race if it began at its "
            "time and lies on its line. A file with the start and length of one kept is not added "
            "twice. Choose another in the table; nothing is marked done by itself.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "By date where the race is, and by length: 0.4 to 2.5 times. A point is on the course "
            "within 80 m of its line; each takes the nearest place ahead of the one before.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "How far apart two lengths may be.")),),
        see=("recordings", "done or missed"),
        words=QT_TRANSLATE_NOOP("Help", "match session race assign"),
    ),
    Topic(
        "looking back",
        QT_TRANSLATE_NOOP("Help", "Looking back"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A race as it was run beside the plan, section by section, also when it ended early "
            "or the recording has a hole: what there is, is used. The minutes more or less than "
            "planned are shared out among speed throughout, climbs and descents, fade, dark and "
            "stops; what is left is the rest. They add up to the difference.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Fade, climbs, descents and dark of the day are found by regression over pieces of "
            "200 m. Each cause gets its average effect over all orders in which the causes could "
            "be put in, so that none gains by being named first.",
        ),
        (
            from_memory(papers.SHAPLEY_1953, QT_TRANSLATE_NOOP("Help", "How causes share.")),
            published(papers.HUBER_1964, QT_TRANSLATE_NOOP("Help", "Robust regression.")),
            estimate(QT_TRANSLATE_NOOP("Help", "How far one day may differ from the plan.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A hint, not a verdict: heat, stomach, mood and a wrong turn are not told apart. To "
            "stop in time is not a failure.",
        ),
        see=("recordings", "food taken", "lessons", "forecast", "target"),
        words=QT_TRANSLATE_NOOP("Help", "review debrief minutes lost causes planned real"),
    ),
    Topic(
        "food taken",
        QT_TRANSLATE_NOOP("Help", "Food taken"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What was really eaten beside what was planned, item by item and by the hour, as far "
            "as the run went. Type the servings; nothing is assumed until you say it.",
        ),
        QT_TRANSLATE_NOOP("Help", "Servings times what the food has, summed by the hour."),
        (PLAN,),
        QT_TRANSLATE_NOOP(
            "Help",
            "Vomiting that goes on, or weight gained in a race, is for medical staff and not for "
            "another plan.",
        ),
        see=("looking back", "race carbs", "practice carbs"),
        words=QT_TRANSLATE_NOOP("Help", "eaten drunk intake gut"),
    ),
    Topic(
        "lessons",
        QT_TRANSLATE_NOOP("Help", "Lessons"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What was learnt, pinned to an hour, a climb, a food or the whole race. A new project "
            "made from this one takes them along: there they come back at their hour, climb or "
            "food, and each wants an answer, what you do about it this time, before cards are "
            "printed.",
        ),
        see=("looking back", "cards", "hard stretches"),
        words=QT_TRANSLATE_NOOP("Help", "learn remember next race answer"),
    ),
)

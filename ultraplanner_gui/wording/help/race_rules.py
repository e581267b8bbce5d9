"""Topics of the rules that hold a build-up against its race, and of what sessions say."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording import cautions
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    PRACTICE,
    Topic,
    choice,
    from_memory,
    practice,
    published,
)

TOPICS: tuple[Topic, ...] = (
    Topic(
        "hours of one run",
        QT_TRANSLATE_NOOP("Help", "Hours of one run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A run on steeper ground may be no longer and still last much longer. So long runs are "
            "also held against the longest time on feet of the 30 days before.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Runs of over 90 minutes; strains at over 1.2 times. It begins once your own longest "
            "time is known, or after 30 days.",
        ),
        (
            choice(
                QT_TRANSLATE_NOOP(
                    "Help", "The study behind the single-run rule looked at distance alone."
                )
            ),
        ),
        see=("single run", "drop of one run", "time on feet"),
        words=QT_TRANSLATE_NOOP("Help", "duration long check"),
    ),
    Topic(
        "drop of one run",
        QT_TRANSLATE_NOOP("Help", "Drop of one run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Descents are what the legs are least used to. No run should drop much more than any "
            "of the 30 days before.",
        ),
        QT_TRANSLATE_NOOP("Help", "Drops of over 300 m; strains at over 1.25 times."),
        (
            published(
                papers.BONTEMPS_2020,
                QT_TRANSLATE_NOOP("Help", "The least accustomed are damaged most."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The figures.")),
        ),
        see=("downhill", "late descent", "hours of one run"),
        words=QT_TRANSLATE_NOOP("Help", "descent downhill dose check"),
    ),
    Topic(
        "late descent",
        QT_TRANSLATE_NOOP("Help", "Late descent"),
        QT_TRANSLATE_NOOP(
            "Help",
            "For a race that drops over 1000 m one session of the last two months should drop a "
            "fair part of what the race does.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Greatest drop 10 to 56 days before the race over that of the race: 25 % holds."
        ),
        (
            published(
                papers.BONTEMPS_2020,
                QT_TRANSLATE_NOOP("Help", "Earlier descents protect best."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The share and the days.")),
        ),
        see=("downhill", "drop of one run"),
        words=QT_TRANSLATE_NOOP("Help", "descent dose quads check"),
    ),
    Topic(
        "climb match",
        QT_TRANSLATE_NOOP("Help", "Climb per kilometre"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much the last loading weeks climb per kilometre against the race. No trial says "
            "how alike training must be.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Climb over distance of the last four loading weeks. Asked are 70 % of the race's for "
            "just enough, 90 % usually, all of it when ambitious; a tenth less still holds, under "
            "40 % breaks. Races that climb under 10 m per km ask nothing.",
        ),
        (PRACTICE,),
        see=("weekly climb", "stand-in sessions", "what the race asks"),
        words=QT_TRANSLATE_NOOP("Help", "gradient hills vertical specific check"),
    ),
    Topic(
        "surface match",
        QT_TRANSLATE_NOOP("Help", "Surfaces matched"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How alike training and race are underfoot, where both are known: 100 % the same "
            "shares, 0 % nothing in common. It describes; no trial says what it is worth.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "1 less half the sum of the differences of the shares, over eight weeks; 60 % holds. "
            "Sessions and stretches of unknown surface are left out.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "The measure and its threshold.")),),
        see=("surface", "climb match"),
        words=QT_TRANSLATE_NOOP("Help", "trail road underfoot specific check"),
    ),
    Topic(
        "dark hours",
        QT_TRANSLATE_NOOP("Help", "Dark hours practised"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A race with more than two hours of dark asks for two runs by lamp or more in the last "
            "ten weeks: to learn footing, pace, cold and the lamp itself.",
        ),
        QT_TRANSLATE_NOOP("Help", "Dark hours between start and the finish of the target."),
        (PRACTICE,),
        caution=cautions.RED_FLAGS[3],
        see=("dark", "light", "lamp"),
        words=QT_TRANSLATE_NOOP("Help", "night running headlamp check"),
    ),
    Topic(
        "spare weeks",
        QT_TRANSLATE_NOOP("Help", "Spare weeks"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Weeks there beyond those needed. Life takes some: over a year two of three "
            "ultrarunners lose days to an injury, so a plan without any slack is not likely to be "
            "run as it stands.",
        ),
        QT_TRANSLATE_NOOP("Help", "One for every 16 weeks needed, begun ones counted."),
        (
            published(
                papers.HOFFMAN_KRISHNAN_2014,
                QT_TRANSLATE_NOOP("Help", "64.6 % lost training days, 14 of them in the middle."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "How many to spare.")),
        ),
        see=("runway", "missed training"),
        words=QT_TRANSLATE_NOOP("Help", "slack buffer margin check"),
    ),
    Topic(
        "fasted runs",
        QT_TRANSLATE_NOOP("Help", "Limits of fasted runs"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Fasted runs are easy, up to 90 minutes, two a week and never on days side by side, "
            "none in race week or in the heat, and only if the questions on health left nothing "
            "to ask a doctor about.",
        ),
        QT_TRANSLATE_NOOP("Help", "Every session ahead that is marked fasted."),
        (
            published(papers.VAN_PROEYEN_2011),
            published(papers.IMPEY_2018),
            choice(QT_TRANSLATE_NOOP("Help", "All limits.")),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Not under 18, not when pregnant, with diabetes, fainting or an eating disorder now "
            "or before.",
        ),
        see=("fasted", "health"),
        words=QT_TRANSLATE_NOOP("Help", "breakfast low carbohydrate check"),
    ),
    Topic(
        "stand-in sessions",
        QT_TRANSLATE_NOOP("Help", "Stand-in sessions"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A session on the ground there is that asks of the legs what a stretch of the race "
            "does: so many minutes at each gradient. A treadmill climbs but does not come down; "
            "what cannot be had is said, with slow step-downs in its place.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Time on feet by seven classes of gradient at the target's times, scaled to three "
            "hours at most. The match is the likeness of the two: 100 % the same shares of time.",
        ),
        (
            choice(QT_TRANSLATE_NOOP("Help", "Classes, match and the sets of step-downs.")),
            practice(
                QT_TRANSLATE_NOOP("Help", "That likeness helps: nobody has measured how much.")
            ),
        ),
        see=("ground at hand", "climb match", "profile"),
        words=QT_TRANSLATE_NOOP("Help", "treadmill stairs hill repeats flat town simulate"),
    ),
    Topic(
        "what to keep",
        QT_TRANSLATE_NOOP("Help", "What to keep"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Two sessions a week are marked to keep if it falls apart: the one most like the race "
            "and the next that is not beside it. Each session says what is left of it in 40 "
            "minutes. What is left out is not made up for.",
        ),
        sources=(
            PRACTICE,
            from_memory(
                papers.PERSINGER_2004,
                QT_TRANSLATE_NOOP("Help", "The talk test beside each effort."),
            ),
        ),
        see=("missed days", "effort", "session kind"),
        words=QT_TRANSLATE_NOOP("Help", "short of time busy week priority talk test why"),
    ),
    Topic(
        "mental rehearsal",
        QT_TRANSLATE_NOOP("Help", "Mental rehearsal"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Ten minutes on some runs of the last six weeks: plans of the form if this happens, I "
            "do that; a hard stretch pictured; goals, cutoffs and kit in the last days.",
        ),
        sources=(
            published(
                papers.GOLLWITZER_2006,
                QT_TRANSLATE_NOOP("Help", "If-then plans help people do what they meant to."),
            ),
            published(
                papers.MCCORMICK_2018,
                QT_TRANSLATE_NOOP(
                    "Help", "Self-talk did not make 29 runners of 60 miles faster; they liked it."
                ),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "When and how often.")),
        ),
        see=("when it gets hard", "wishes"),
        words=QT_TRANSLATE_NOOP("Help", "imagery psychology if-then head"),
    ),
    Topic(
        "heat days",
        QT_TRANSLATE_NOOP("Help", "Heat days"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Easy runs in the heat 24 to 10 days before a hot race and a few 6 to 3 days before. "
            "About 2.5 % of what is gained is lost a day without.",
        ),
        sources=(
            from_memory(papers.RACINAIS_2015),
            from_memory(papers.DAANEN_2018),
            choice(QT_TRANSLATE_NOOP("Help", "The days before the race.")),
        ),
        caution=cautions.HEAT,
        see=("heat", "wishes"),
        words=QT_TRANSLATE_NOOP("Help", "hot acclimatisation summer"),
    ),
)

"""Topics of single sessions: their kinds, and the figures of one."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    CHOICE,
    PLAN,
    PRACTICE,
    Topic,
    choice,
    practice,
    published,
)

KINDS: tuple[Topic, ...] = (
    Topic(
        "recovery run",
        QT_TRANSLATE_NOOP("Help", "Recovery run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Short and slower than easy, the day after something hard: 20 to 45 minutes, effort 2 "
            "of 10. If it feels like training, walk.",
        ),
        sources=(PRACTICE,),
        see=("easy run", "effort", "hard days"),
    ),
    Topic(
        "easy run",
        QT_TRANSLATE_NOOP("Help", "Easy run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "You can talk in whole sentences all the way, effort 3 of 10. Most of your running "
            "should be this. Go by breath rather than by a watch: on hills and trails pulse and "
            "pace lag behind.",
        ),
        sources=(
            published(
                papers.BOK_2022,
                QT_TRANSLATE_NOOP("Help", "Speaking in comfort means below the first threshold."),
            ),
            published(
                papers.SEILER_2006,
                QT_TRANSLATE_NOOP("Help", "Junior endurance athletes spent about 75 % of it easy."),
            ),
            published(
                papers.FESTA_2020,
                QT_TRANSLATE_NOOP(
                    "Help", "Not settled: 38 hobby runners gained as much with more in between."
                ),
            ),
        ),
        see=("effort", "easy pace", "recovery run"),
    ),
    Topic(
        "long run",
        QT_TRANSLATE_NOOP("Help", "Long run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The run the week is built around, effort 4 of 10, on ground like the race's. It "
            "grows by 10 % at most over the longest of the last 30 days; once it is really long, "
            "only every other week. Eat and drink on it as on race day.",
        ),
        sources=(PRACTICE, published(papers.FRANDSEN_2025, "")),
        see=("single run", "longest run", "long-run share", "practice carbs", "back-to-back"),
    ),
    Topic(
        "back-to-back",
        QT_TRANSLATE_NOOP("Help", "Back-to-back"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A second long run the day after the first, to run on tired legs without one run of "
            "dangerous length. An easy day or a rest day follows. It is a wish and not a must: "
            "with just enough training there is none.",
        ),
        sources=(PRACTICE,),
        see=("long run", "hard days", "what the race asks"),
    ),
    Topic(
        "rehearsal run",
        QT_TRANSLATE_NOOP("Help", "Rehearsal run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A long run as a trial of race day: its kit, its food by the clock, its shoes, poles "
            "and lamp, on such ground, from its start hour if you can. Nothing that was not tried "
            "here belongs into the race.",
        ),
        sources=(PRACTICE,),
        see=("practice carbs", "fuel", "when it gets hard", "dark"),
    ),
    Topic(
        "hill run",
        QT_TRANSLATE_NOOP("Help", "Hill run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Hard uphill, easy down, effort 7 of 10: repeats, or one long climb. Practise "
            "walking fast too; in the race steep climbs are walked.",
        ),
        sources=(
            published(
                papers.BJORKLUND_2019,
                QT_TRANSLATE_NOOP(
                    "Help", "In a short trail race most time was lost uphill once runners tired."
                ),
            ),
        ),
        see=("weekly climb", "hard days", "downhill run"),
    ),
    Topic(
        "downhill run",
        QT_TRANSLATE_NOOP("Help", "Downhill run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Descents on purpose, to harden the quads: start with 20 to 30 minutes of running "
            "down, quick and short steps, effort 5 of 10. Hard on the legs rather than on the "
            "breath, so it counts as a hard day.",
        ),
        sources=(
            published(
                papers.BONTEMPS_2020,
                QT_TRANSLATE_NOOP("Help", "Having run down before is the best protection."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The dose to start with.")),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Soreness for one to three days is usual. Dark urine, much swelling or weakness: see "
            "a doctor the same day.",
        ),
        see=("downhill", "weekly climb", "hard days"),
    ),
    Topic(
        "tempo run",
        QT_TRANSLATE_NOOP("Help", "Tempo run"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Steady and brisk, effort 6 of 10: sentences get short, but you could go on for an "
            "hour. Warm up and run out easily.",
        ),
        sources=(PRACTICE,),
        see=("effort", "interval session", "hard days"),
    ),
    Topic(
        "interval session",
        QT_TRANSLATE_NOOP("Help", "Interval session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Short stretches at effort 8 of 10 with easy running between, the hardest session of "
            "a week. A little of it is enough for a long race; leave it out when you are tired.",
        ),
        sources=(PRACTICE,),
        see=("effort", "tempo run", "hard days"),
    ),
    Topic(
        "tune-up race",
        QT_TRANSLATE_NOOP("Help", "Tune-up race"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A smaller race on the way, run to practise and not to empty yourself: start, "
            "crowds, aid stations, food. It stands in for a long run, and easy days follow it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Holds at least three weeks before the race, four if it takes over six hours; at up "
            "to half of the goal time; and with easy days after it: 4 under three hours, 7 under "
            "six, 10 under twelve, 14 under a day, then 21.",
        ),
        (
            PRACTICE,
            published(
                papers.MILLET_2011,
                QT_TRANSLATE_NOOP(
                    "Help", "After 166 km strength was back on day 16 at the latest."
                ),
            ),
        ),
        QT_TRANSLATE_NOOP("Help", "The single-run rule holds for it as well."),
        see=("single run", "rehearsal run", "hard days"),
        words=QT_TRANSLATE_NOOP("Help", "B race preparation race check"),
    ),
    Topic(
        "strength",
        QT_TRANSLATE_NOOP("Help", "Strength"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Weights or body weight for legs, hips and trunk, once or twice a week. Counts as "
            "time and load, not as distance. Keep heavy leg work a day away from a hard run and "
            "leave it out in the last ten days.",
        ),
        sources=(
            published(
                papers.BLAGROVE_2018,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Two or three times a week for 8 to 12 weeks made running 2 to 8 % cheaper in "
                    "most studies; none looked at ultramarathons.",
                ),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The distance from hard runs and from the race.")),
        ),
        see=("load", "cross-training"),
    ),
    Topic(
        "cross-training",
        QT_TRANSLATE_NOOP("Help", "Cross-training"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Cycling, skiing, swimming, hiking without a run: time and load without the blows. "
            "It counts in hours and load, never as kilometres of running.",
        ),
        sources=(PRACTICE,),
        see=("load", "time on feet"),
    ),
    Topic(
        "race",
        QT_TRANSLATE_NOOP("Help", "The race"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The day everything is counted back from. Its tile takes distance, climb and drop from "
            "the course and its time from the finish aimed for; it is left out of every weekly "
            "total. Move it in the form, not by dragging.",
        ),
        sources=(PLAN,),
        see=("race date", "finish aimed for", "race day"),
    ),
)

FIGURES: tuple[Topic, ...] = (
    Topic(
        "session kind",
        QT_TRANSLATE_NOOP("Help", "Kind of session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the session is for. The kind decides whether it counts as hard, whether its "
            "distance counts as running, and what effort is proposed.",
        ),
        sources=(
            practice(QT_TRANSLATE_NOOP("Help", "The kinds are the trade's own words.")),
            CHOICE,
        ),
        see=(
            *("easy run", "long run", "rehearsal run", "downhill run", "strength"),
            *("hard days", "recovery run", "back-to-back", "hill run", "tempo run"),
            *("interval session", "tune-up race", "cross-training", "race"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "type workout"),
    ),
    Topic(
        "session day",
        QT_TRANSLATE_NOOP("Help", "Day of a session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The date it is on. Drag the tile, or type the date in the table; a done session "
            "stays where it was done.",
        ),
        see=("day grid", "weeks to go", "free minutes", "session hour"),
        words=QT_TRANSLATE_NOOP("Help", "date weekday"),
    ),
    Topic(
        "session hour",
        QT_TRANSLATE_NOOP("Help", "Start of a session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The time of day it starts, if it matters; empty is any. It goes into the calendar "
            "you hand out.",
        ),
        see=("session day", "dark"),
        words=QT_TRANSLATE_NOOP("Help", "clock start morning evening"),
    ),
    Topic(
        "session distance",
        QT_TRANSLATE_NOOP("Help", "Distance of a session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How far the run goes. It counts toward the week's total, the ramp and the single-run "
            "rule; strength and cross-training have none.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "What you typed, or what the block needs that day, in half kilometres."
        ),
        (PLAN,),
        see=("weekly distance", "single run", "session time"),
        words=QT_TRANSLATE_NOOP("Help", "kilometres miles length"),
    ),
    Topic(
        "session time",
        QT_TRANSLATE_NOOP("Help", "Time of a session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long it takes, stops left out. On hills go by the time: where distance and time "
            "do not agree, the time is what your body gets.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you typed; in a built block distance plus eight times climb at your easy pace, "
            "to five minutes.",
        ),
        (published(papers.SCARF_2007), CHOICE),
        see=("easy pace", "time on feet", "load"),
        words=QT_TRANSLATE_NOOP("Help", "duration minutes hours"),
    ),
    Topic(
        "session climb",
        QT_TRANSLATE_NOOP("Help", "Climb and drop of a session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Metres up and metres down. In a built block they grow toward the race's own climb "
            "per kilometre; the drop grows by a fifth at most over the last 30 days.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you typed; in a built block a share of the race's climb per kilometre by kind "
            "of session, more for hill and downhill runs, less for easy ones.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "The shares by kind, and the step of 1.2.")),),
        see=("weekly climb", "ground", "downhill"),
        words=QT_TRANSLATE_NOOP("Help", "ascent descent elevation gain metres up down"),
    ),
    Topic(
        "ground",
        QT_TRANSLATE_NOOP("Help", "Ground"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The shape of the way: level, rolling, rising, falling, up and down, stairs. It is "
            "drawn along the foot of the tile, so that a week shows at a glance whether it looks "
            "like the race.",
        ),
        sources=(
            choice(
                QT_TRANSLATE_NOOP("Help", "No trial says how like the race training has to be.")
            ),
        ),
        see=("weekly climb", "day grid", "hill run"),
        words=QT_TRANSLATE_NOOP("Help", "terrain surface silhouette trail road"),
    ),
    Topic(
        "fasted",
        QT_TRANSLATE_NOOP("Help", "Fasted"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Run before breakfast, to burn more fat at easy effort. It is optional and gains "
            "nothing that is proven for the race. Easy and short only: 60 minutes in the first "
            "month, later 90 at most, with 25 g of sugar in the pocket.",
        ),
        sources=(
            published(
                papers.VAN_PROEYEN_2011,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Six weeks fasted: more fat burnt, the same gain in the time trial (20 men on "
                    "bicycles).",
                ),
            ),
            published(
                papers.IMPEY_2018,
                QT_TRANSLATE_NOOP("Help", "Performance better in 37 % of 11 studies, else equal."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The limits on time and effort.")),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Not under 18, not when pregnant, ill or injured, with diabetes, fainting or an eating "
            "disorder now or before: ask a doctor first.",
        ),
        see=("easy run", "practice carbs", "fasted runs"),
        words=QT_TRANSLATE_NOOP("Help", "train low before breakfast empty stomach"),
    ),
    Topic(
        "dark",
        QT_TRANSLATE_NOOP("Help", "In the dark"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Run by lamp, to know lamp, battery, footing and your head at night. If the race has "
            "more than two dark hours, a built block puts two to four such runs into the last ten "
            "weeks.",
        ),
        sources=(choice(QT_TRANSLATE_NOOP("Help", "How many, and when.")),),
        caution=QT_TRANSLATE_NOOP("Help", "No driving after a night without sleep."),
        see=("light", "rehearsal run", "dark hours"),
        words=QT_TRANSLATE_NOOP("Help", "night lamp headlamp torch"),
    ),
    Topic(
        "done or missed",
        QT_TRANSLATE_NOOP("Help", "Done or missed"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Ahead, done with figures of its own, or missed. Done counts with what was really "
            "run; missed counts as nothing and is not made up later. D marks the selected "
            "session done as planned, M missed.",
        ),
        sources=(PLAN,),
        see=("missed training", "weekly distance", "gut"),
        words=QT_TRANSLATE_NOOP("Help", "state record completed skipped"),
    ),
    Topic(
        "carbs eaten",
        QT_TRANSLATE_NOOP("Help", "Carbs eaten"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The carbohydrate you really took during the session, in grams for the whole of it. "
            "Packets say it; fibre does not count.",
        ),
        QT_TRANSLATE_NOOP("Help", "Planned: grams per hour times hours. Done: what you typed."),
        (PLAN,),
        see=("practice carbs", "gut", "net carbs"),
    ),
    Topic(
        "gut",
        QT_TRANSLATE_NOOP("Help", "Gut"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How the stomach took it: fine, uneasy, bad. Note it after every session with "
            "practice carbs; it tells you whether to go up, stay or go back.",
        ),
        sources=(
            published(
                papers.STUEMPFLE_2015,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "In a 161 km race 96 % had some gut symptom; of those who stopped, 36 % named "
                    "it as a reason.",
                ),
            ),
        ),
        see=("gut training", "practice carbs", "carbs tolerated", "carbs eaten"),
        words=QT_TRANSLATE_NOOP("Help", "stomach nausea sick cramps"),
    ),
    Topic(
        "session note",
        QT_TRANSLATE_NOOP("Help", "Note of a session"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Your own words: where, with whom, what to try, how it felt. It changes nothing.",
        ),
        see=("done or missed", "notes"),
    ),
)

TOPICS = KINDS + FIGURES

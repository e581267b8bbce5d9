"""Topics of the build-up: weeks, what they add up to, how a block is made."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    CHOICE,
    PLAN,
    PRACTICE,
    Topic,
    choice,
    from_memory,
    practice,
    published,
)

TOPICS: tuple[Topic, ...] = (
    Topic(
        "build-up",
        QT_TRANSLATE_NOOP("Help", "Build-up"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Your training from now to the race, one column to a week, counted down. Behind the "
            "edge of today lies what was done, ahead of it what comes. The lanes under the days "
            "show what each week adds up to.",
        ),
        see=(
            *("day grid", "weeks to go", "building a block", "runway", "checks"),
            *("weeks in view",),
        ),
        words=QT_TRANSLATE_NOOP("Help", "training block plan upper storey"),
    ),
    Topic(
        "day grid",
        QT_TRANSLATE_NOOP("Help", "Day grid"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each tile is a session: its kind, its distance or time, and along its foot the shape "
            "of the ground it is run on; the heavier the ink, the harder the effort. Filled tiles "
            "are done, outlined ones are planned. Narrow ones have a letter for the kind: R "
            "recovery, B back-to-back, Rh rehearsal, Tu tune-up. Drag a tile to another day and "
            "every lane shows at once what the weeks would come to; with keys, Enter picks it up "
            "and the arrows move it.\nA day too full for its figures has letters over their "
            "sum; the pointer on it names each session.",
        ),
        sources=(PLAN,),
        see=(
            *(
                "effort",
                "ground",
                "build-up",
                "before and now",
                "done or missed",
                "several sessions",
            ),
            *("session kind", "session day", "session distance", "session climb", "fasted"),
            *("session note",),
        ),
        words=QT_TRANSLATE_NOOP("Help", "tile session calendar drag move"),
    ),
    Topic(
        "weeks in view",
        QT_TRANSLATE_NOOP("Help", "Weeks in view"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A small strip of the whole build-up, a bar for the distance of each week, with a "
            "frame round the weeks you see below. Drag the frame to go along, its ends for fewer "
            "or more weeks; a double click shows all.",
        ),
        sources=(PLAN,),
        see=("weeks to go", "weekly distance", "day grid"),
        words=QT_TRANSLATE_NOOP("Help", "zoom scroll overview far"),
    ),
    Topic(
        "weeks to go",
        QT_TRANSLATE_NOOP("Help", "Weeks to go"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How many weeks lie between this week and the week of the race, which is 0. A week "
            "begins on the day kept in the project, so no total changes with the language of "
            "your computer. Cutback and taper weeks are named under their number.",
        ),
        QT_TRANSLATE_NOOP("Help", "Whole weeks from the start of this week to that of race week."),
        (PLAN,),
        see=("cutback", "taper", "week begins on", "runway"),
        words=QT_TRANSLATE_NOOP("Help", "countdown loading week role"),
    ),
    Topic(
        "weekly distance",
        QT_TRANSLATE_NOOP("Help", "Distance of a week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the week's runs add up to: what was done where a session is done, nothing where "
            "it was missed, the plan where it still lies ahead. The race itself is left out. The "
            "tick over a loading week is its ceiling; a hatched top is above it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Sum of the distances of all runs of the week. Ceiling: 1.10 times the last loading "
            "week. Strength and cross-training count no distance.",
        ),
        (
            PLAN,
            published(
                papers.HOFFMAN_KRISHNAN_2013,
                QT_TRANSLATE_NOOP(
                    "Help", "Active ultrarunners run 3347 km a year, about 64 km a week (median)."
                ),
            ),
            published(
                papers.RASMUSSEN_2013,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Too little is a risk as well: marathoners under 30 km a week were hurt twice "
                    "as often as those with 30 to 60 km.",
                ),
            ),
        ),
        see=("ramp", "of last loading week", "what the race asks", "time on feet"),
        words=QT_TRANSLATE_NOOP("Help", "volume mileage kilometres ceiling bar"),
    ),
    Topic(
        "of last loading week",
        QT_TRANSLATE_NOOP("Help", "Of last loading week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "This week's distance as a share of the last week that was meant to load you. Growth "
            "is counted from there and not from a cutback week: counted from the cutback, weeks "
            "of 10 % more with a quarter off every fourth would never get anywhere.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Distance divided by that of the last loading week; before the first one, by your "
            "usual week. A week that fell short because sessions were missed is passed over; two "
            "such weeks in a row lower the yardstick to 80 %, three to 65 %, four to 50 %.",
        ),
        (
            choice(
                QT_TRANSLATE_NOOP(
                    "Help", "Counting from the last loading week: 1.1 x 1.1 x 1.1 x 0.75 is 0.998."
                )
            ),
            practice(QT_TRANSLATE_NOOP("Help", "How far missed weeks lower the yardstick.")),
        ),
        see=("ramp", "cutback", "missed training"),
        words=QT_TRANSLATE_NOOP("Help", "percent growth yardstick"),
    ),
    Topic(
        "longest run",
        QT_TRANSLATE_NOOP("Help", "Longest run of a week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The longest single run of each week, against what the race asks as a level line. A "
            "tune-up race counts as a run here; the race itself does not.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "The greatest distance among the week's runs, done or still planned."
        ),
        (
            PLAN,
            published(
                papers.KNECHTLE_2011,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "In 63 runners of a 24-hour race the longest session went with distance more "
                    "closely (r = 0.56) than the weekly distance did (0.31). No trial tells how "
                    "long it should be.",
                ),
            ),
        ),
        see=(
            "single run",
            "long-run share",
            "what the race asks",
            "long run",
            "longest run of the week",
        ),
        words=QT_TRANSLATE_NOOP("Help", "long lane"),
    ),
    Topic(
        "time on feet",
        QT_TRANSLATE_NOOP("Help", "On feet"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long the week's sessions take in all. On hilly ground hours say more about the "
            "week than kilometres do. Strength and cross-training count here too.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Sum of the times. A run that was planned for you takes its distance plus eight times "
            "its climb, at your easy pace on level ground.",
        ),
        (
            published(
                papers.SCARF_2007,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "One metre of climb for eight of level ground, from records of fell races "
                    "(men); ten for women.",
                ),
            ),
        ),
        see=("easy pace", "weekly distance", "load"),
        words=QT_TRANSLATE_NOOP("Help", "hours duration time flat-equivalent"),
    ),
    Topic(
        "weekly climb",
        QT_TRANSLATE_NOOP("Help", "Climb and drop of a week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Metres up and metres down in all runs of the week, climb above the line and drop "
            "below it. Toward the race your climb per kilometre should come near the race's; drop "
            "is what makes the quads ready for long descents.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Sums over the week's runs. A block built for you grows from half of the race's climb "
            "per kilometre to 0.7 of it for just enough, 0.9 for usual, all of it for ambitious.",
        ),
        (
            PLAN,
            practice(QT_TRANSLATE_NOOP("Help", "The shares of the race's climb.")),
            published(
                papers.EHRSTROM_2018,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "In a 27 km trail race uphill economy and how the thighs tire told more than "
                    "road fitness alone (9 runners).",
                ),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help", "New descents make sore for one to three days: raise the drop step by step."
        ),
        see=("downhill", "what the race asks", "climb and drop"),
        words=QT_TRANSLATE_NOOP("Help", "ascent descent elevation gain vert"),
    ),
    Topic(
        "practice carbs",
        QT_TRANSLATE_NOOP("Help", "Practice carbs"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Carbohydrate taken in training to teach the gut what it must take on race day. The "
            "lane shows the highest rate practised in each week and its grams in all, against the "
            "rate of the race plan. The check asks that the last three weeks reach the race rate "
            "and that no week jumps.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Grams per hour times hours, summed over the week. From what you take now the plan "
            "adds 10 g/h a week at most; the race rate is kept for the last six weeks where there "
            "is time.",
        ),
        (
            published(
                papers.COSTA_2017,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Two weeks of eating 90 g/h while running cut gut symptoms by about 60 % in 25 "
                    "runners.",
                ),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The step of 10 g/h a week.")),
            practice(QT_TRANSLATE_NOOP("Help", "Six weeks at the race rate.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Stop raising the rate when you feel sick, bloated or get cramps."
        ),
        see=("gut training", "carbs tolerated", "carbs per hour", "gut"),
        words=QT_TRANSLATE_NOOP("Help", "gut training stomach gels eat while running lane"),
    ),
    Topic(
        "load",
        QT_TRANSLATE_NOOP("Help", "Load"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One number for how much a week asked of you: effort on ten steps times minutes, over "
            "all sessions, strength included. An hour at 4 of 10 is 240.",
        ),
        QT_TRANSLATE_NOOP("Help", "Sum over the sessions of effort times minutes."),
        (
            published(papers.FOSTER_2001),
            published(
                papers.WALLACE_2014,
                QT_TRANSLATE_NOOP(
                    "Help", "Coarse: the same session rated again scattered by 28 %."
                ),
            ),
            published(
                papers.FOSTER_1998,
                QT_TRANSLATE_NOOP("Help", "What is too much differs from athlete to athlete."),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Compare only with your own earlier weeks. It does not tell your risk of injury, and "
            "there is no number that is right for everybody.",
        ),
        see=("effort", "time on feet"),
        words=QT_TRANSLATE_NOOP("Help", "session load rpe training stress strain monotony"),
    ),
    Topic(
        "building a block",
        QT_TRANSLATE_NOOP("Help", "How a block is built"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Counted back from the race: taper first, then every fourth week a cutback, the "
            "loading weeks between growing to what the race asks. Sessions go on the days you "
            "have time; no two hard days meet, but for a back-to-back. What lies behind today "
            "stays as it was.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "By fixed rules, so the same answers give the same block. It starts from what you run "
            "now: your last loading week and the longest run of the last 30 days. Then a search "
            "goes on for one that comes nearer to what the race asks, on the same rules and days. "
            "It is offered, never put in by itself, with how much better any could still be.",
        ),
        (
            choice(
                QT_TRANSLATE_NOOP(
                    "Help", "The order in which rules give way; each rule has a page."
                )
            ),
            PRACTICE,
        ),
        QT_TRANSLATE_NOOP(
            "Help", "The plan is arithmetic on what you typed. It does not examine you."
        ),
        see=(
            *("ramp", "single run", "hard days", "cutback", "taper", "free minutes"),
            *("wishes", "what to keep"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "build generate make a plan automatic search best exact"),
    ),
    Topic(
        "runway",
        QT_TRANSLATE_NOOP("Help", "Runway"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Is the race far enough away? Full weeks until race week, against the weeks it takes "
            "to grow from what you run now to what the race asks, cutbacks and taper included. If "
            "there are fewer, the sentence beside it says how far you get.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Steps of 10 % from your week and your longest run to those asked, every fourth week "
            "a cutback, plus the taper; the longer of the two counts. Holds if at least 98 % is "
            "reached, strains from 85 %.",
        ),
        (
            CHOICE,
            practice(QT_TRANSLATE_NOOP("Help", "Steps of 10 % and a cutback every fourth week.")),
        ),
        see=(
            *("what the race asks", "ramp", "usual week", "longest lately", "spare weeks"),
            *("candidate races", "figures of the runner"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "enough time weeks needed header"),
    ),
    Topic(
        "effort",
        QT_TRANSLATE_NOOP("Help", "Effort on ten steps"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How hard the whole session was, asked about half an hour after it:\n"
            "0 rest\n"
            "1-2 no effort to speak of\n"
            "3 you talk in whole sentences all the way\n"
            "4 you talk, and are glad to walk a climb\n"
            "5-6 sentences get short\n"
            "7-8 single words\n"
            "9 hardly a word\n"
            "10 there was nothing more in you.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "You set it; a built block proposes a step for each kind of session."
        ),
        (
            choice(
                QT_TRANSLATE_NOOP("Help", "The words for each step, and the step for each kind.")
            ),
            published(
                papers.FOSTER_2001,
                QT_TRANSLATE_NOOP("Help", "That one rating of the whole session will do."),
            ),
            published(
                papers.BOK_2022,
                QT_TRANSLATE_NOOP("Help", "That talking tells easy from hard about as well."),
            ),
            from_memory(
                papers.SEILER_2006,
                QT_TRANSLATE_NOOP(
                    "Help", "Up to 4 counts as easy, 5-6 as between, from 7 as hard."
                ),
            ),
        ),
        see=("load", "hard days", "easy run"),
        words=QT_TRANSLATE_NOOP("Help", "rpe perceived exertion hard easy talk scale"),
    ),
)

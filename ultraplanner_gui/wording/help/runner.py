"""Topics of the form for race and runner."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    PRACTICE,
    Topic,
    choice,
    from_memory,
    practice,
    published,
)

RACE: tuple[Topic, ...] = (
    Topic(
        "race name",
        QT_TRANSLATE_NOOP("Help", "Name of the race"),
        QT_TRANSLATE_NOOP(
            "Help", "What the race is called in the header and on every card. Anything will do."
        ),
        see=("race date", "pace card"),
    ),
    Topic(
        "race date",
        QT_TRANSLATE_NOOP("Help", "Date of the race"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The day of the start, where the race is. Weeks to go, taper, light and every clock "
            "time are counted from it. If you change it, the race tile moves along; build the "
            "block anew afterwards.",
        ),
        see=("runway", "start time", "building a block"),
    ),
    Topic(
        "start time",
        QT_TRANSLATE_NOOP("Help", "Start"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The time of the gun, on the clock at the race. It decides which parts you run in the "
            "dark, and so the forecast too. Waves: take your own.",
        ),
        see=("time zone", "light", "forecast"),
    ),
    Topic(
        "time zone",
        QT_TRANSLATE_NOOP("Help", "Time zone"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The zone whose clock the race goes by. All clock times on screen and paper are in it, "
            "wherever your computer is, with the change to or from summer time included. It is "
            "proposed from where the course starts.",
        ),
        see=("start time", "arrive"),
        words=QT_TRANSLATE_NOOP("Help", "clock summer time daylight saving"),
    ),
    Topic(
        "finish aimed for",
        QT_TRANSLATE_NOOP("Help", "Finish aimed for"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The time you plan to take, stops included. Target, forecast, fuel and what the race "
            "asks all follow from it. Take a time you can finish in on a fair day rather than a "
            "dream.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "For a new course a first guess is put in: distance plus eight times climb, at 80 % "
            "of your easy speed on level ground.",
        ),
        (
            published(
                papers.SCARF_2007,
                QT_TRANSLATE_NOOP("Help", "Eight metres of level ground to one of climb."),
            ),
            choice(
                QT_TRANSLATE_NOOP("Help", "The 80 %: a proposal to start from, not a prediction.")
            ),
        ),
        see=("finish window", "target", "forecast", "time limit"),
        words=QT_TRANSLATE_NOOP("Help", "goal time target time"),
    ),
    Topic(
        "time limit",
        QT_TRANSLATE_NOOP("Help", "Time limit"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The latest time at the finish that still counts, from the race's rules; empty if "
            "there is none. It is the last cutoff, so it bounds your time in hand all the way.",
        ),
        see=("cutoff", "time in hand", "least in hand"),
        words=QT_TRANSLATE_NOOP("Help", "cutoff at the finish closing time"),
    ),
    Topic(
        "week begins on",
        QT_TRANSLATE_NOOP("Help", "Week begins on"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The first day of every week in this project. Weekly totals and their checks hang on "
            "it, so it is kept in the project; your language only proposes it.",
        ),
        see=("weeks to go", "weekly distance"),
    ),
)

RUNNER: tuple[Topic, ...] = (
    Topic(
        "usual week",
        QT_TRANSLATE_NOOP("Help", "A usual week now"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you have run in a normal week of the last month, not your best week and not "
            "what you mean to run. The first week of the block starts from it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "You say it; once training is marked done, the last loading week takes its place. "
            "Under 10 km a block is built as if it were 10.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "The least of 10 km.")),),
        QT_TRANSLATE_NOOP("Help", "Too high a figure here makes every later week too large."),
        see=("ramp", "runway", "weekly distance"),
        words=QT_TRANSLATE_NOOP("Help", "weekly mileage current volume"),
    ),
    Topic(
        "longest lately",
        QT_TRANSLATE_NOOP("Help", "Longest run, last 30 days"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The longest single run of the last 30 days. The next long run may be 10 % longer. An "
            "old marathon does not count.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "You say it; after 30 days of marked training the record takes its place. Under 5 km "
            "a block is built as if it were 5.",
        ),
        (
            published(
                papers.FRANDSEN_2025,
                QT_TRANSLATE_NOOP("Help", "The 30 days, and the 10 %."),
            ),
        ),
        see=("single run", "long run", "runway"),
    ),
    Topic(
        "easy pace",
        QT_TRANSLATE_NOOP("Help", "Easy pace"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Your pace on level firm ground when you can talk in whole sentences. It turns "
            "distances into times: how long runs take, and what fits into the minutes you have. "
            "It is not your race pace.",
        ),
        sources=(
            published(
                papers.BOK_2022, QT_TRANSLATE_NOOP("Help", "Talking as the measure of easy.")
            ),
        ),
        see=("easy run", "time on feet", "finish aimed for"),
    ),
    Topic(
        "body mass",
        QT_TRANSLATE_NOOP("Help", "Body mass"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Used for the caffeine limits only, which are per kilogram. There is no target weight "
            "in this program, and carbohydrate per hour does not depend on it.",
        ),
        sources=(
            published(
                papers.JEUKENDRUP_2014,
                QT_TRANSLATE_NOOP("Help", "Advice per hour does not go by body mass."),
            ),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Losing weight on purpose in a hard block risks bones, hormones and health; missed "
            "periods or a stress fracture: see a doctor.",
        ),
        see=("caffeine", "carbs per hour"),
        words=QT_TRANSLATE_NOOP("Help", "weight kilograms"),
    ),
    Topic(
        "carbs tolerated",
        QT_TRANSLATE_NOOP("Help", "Carbs you take while running"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What your stomach takes today while running, in grams per hour, without trouble. "
            "30 if you don't know: a gel an hour and a few sips of sports drink. Practice starts "
            "from here, and the fuel plan is held against it.",
        ),
        sources=(
            published(
                papers.KINRADE_2021,
                QT_TRANSLATE_NOOP("Help", "18 amateurs in a 24-hour race took 33 g/h (spread 12)."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The 30 for those who don't know.")),
        ),
        see=("gut training", "practice carbs", "carbs practised"),
        words=QT_TRANSLATE_NOOP("Help", "stomach tolerance grams per hour now"),
    ),
    Topic(
        "level",
        QT_TRANSLATE_NOOP("Help", "How much training"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much the build-up asks of you. Just enough is for finishing inside the cutoffs, "
            "usual is what most plans ask, ambitious is for those with years of running and time "
            "to recover.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Three columns of one table: largest week, longest run, and 0.7, 0.9 or all of the "
            "race's climb per kilometre.",
        ),
        (practice(QT_TRANSLATE_NOOP("Help", "Ranges coaches use; no trial sets them.")),),
        see=("what the race asks", "weekly climb", "runway"),
    ),
    Topic(
        "long run day",
        QT_TRANSLATE_NOOP("Help", "Long run on"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The weekday of the long run. It needs the most free minutes, and an easy day on both "
            "sides of it.",
        ),
        sources=(PRACTICE,),
        see=("free minutes", "long run", "hard days"),
    ),
    Topic(
        "free minutes",
        QT_TRANSLATE_NOOP("Help", "Minutes free for running"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long you can run on each weekday, changing and driving left out; 0 is a day "
            "without a run. No session is built longer than its day. Six days are used at most.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "A day with less than 20 minutes is not used. A tune-up race is excepted."
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "The 20 minutes and the day of rest.")),),
        see=("long run day", "building a block", "session time"),
        words=QT_TRANSLATE_NOOP("Help", "available time days"),
    ),
    Topic(
        "red flags",
        QT_TRANSLATE_NOOP("Help", "When to stop and get help"),
        QT_TRANSLATE_NOOP(
            "Help",
            "No plan is worth your health. Ask a doctor before you start with chest pain, "
            "fainting, unusual breathlessness or palpitations, with heart, kidney or metabolic "
            "disease, when pregnant, or after long inactivity. The Help menu lists what to stop "
            "for.",
        ),
        sources=(
            from_memory(
                papers.RIEBE_2015,
                QT_TRANSLATE_NOOP("Help", "Whom to send to a doctor before hard training."),
            ),
            published(
                papers.DEMARTINI_2015,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Cooled in cold water at once, all of 274 runners with heat stroke lived.",
                ),
            ),
            published(
                papers.MOUNTJOY_2023,
                QT_TRANSLATE_NOOP("Help", "Signs of eating too little for the training."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The wording; it does not replace a doctor.")),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Stop now and call for help: chest pain, fainting, confusion, a fit, severe "
            "breathlessness, hot and confused.",
        ),
        see=("painkillers", "fluid", "missed training"),
        words=QT_TRANSLATE_NOOP("Help", "danger doctor emergency health warning"),
    ),
    Topic(
        "painkillers",
        QT_TRANSLATE_NOOP("Help", "Painkillers"),
        QT_TRANSLATE_NOOP(
            "Help",
            "No ibuprofen or similar before or during the race. They may harm the kidneys and hide "
            "pain that is a reason to stop.",
        ),
        sources=(
            published(
                papers.LIPMAN_2017,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Trial over 80 km: kidney trouble in 52 % with ibuprofen, in 34 % without; the "
                    "difference may be chance.",
                ),
            ),
        ),
        see=("red flags", "fluid"),
        words=QT_TRANSLATE_NOOP("Help", "ibuprofen nsaid drugs kidney"),
    ),
)

TOPICS = RACE + RUNNER

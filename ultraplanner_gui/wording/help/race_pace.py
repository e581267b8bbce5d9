"""Topics of pacing the race: the target's shape, prediction, conditions, odds, walking in."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    CHOICE,
    PLAN,
    PRACTICE,
    Topic,
    choice,
    estimate,
    from_memory,
    published,
)

SHAPE: tuple[Topic, ...] = (
    Topic(
        "shape of the target",
        QT_TRANSLATE_NOOP("Help", "Shape of the target"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much of the forecast's fade the target keeps: none is even effort, half is the "
            "usual, all of it is the forecast itself, more starts faster still. It also says "
            "whether the finish stays when you change one section, or moves with it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The fade of the pace model times that part. Ground, night and the other conditions "
            "slow every shape alike. If the finish moves, the forecast is that of the new finish.",
        ),
        (CHOICE,),
        see=("target", "forecast", "fixed target", "fade", "downhill speed"),
        words=QT_TRANSLATE_NOOP("Help", "even effort fade negative split hold move finish"),
    ),
    Topic(
        "fade",
        QT_TRANSLATE_NOOP("Help", "Fade over the hours"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much you slow down as the hours pass: 0 never, 8 front runners, 10 the usual, 20 "
            "strong. It is of the runner and the day, and half of what a forecast does not know; "
            "several long recordings tell it best.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A hundred times the power of the pace model: after h hours you give (1 + h / onset) "
            "to the power -fade.",
        ),
        (estimate(QT_TRANSLATE_NOOP("Help", "Best per run from 0 to 30 on recordings.")),),
        see=("forecast", "pace model", "shape of the target", "fit from my runs"),
        words=QT_TRANSLATE_NOOP("Help", "slow down tire fatigue endurance"),
    ),
    Topic(
        "downhill speed",
        QT_TRANSLATE_NOOP("Help", "Speed downhill"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How fast you are on descents against what most runners of your level pace do. It "
            "shifts time between climbs and descents; the finish aimed for stays.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "A factor on speed, in full from 5 % down, less on gentler descents."
        ),
        (CHOICE,),
        see=("gradient and pace", "shape of the target", "downhill"),
        words=QT_TRANSLATE_NOOP("Help", "descent skill technical braking"),
    ),
    Topic(
        "fit from my runs",
        QT_TRANSLATE_NOOP("Help", "Fit from my runs"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What your own recordings say of how you fade, climb and descend, beside the defaults. "
            "Tick those kept with the plan or add files. The plan changes only if you use the "
            "figures; target, windows and predicted finish then do. Each run is also forecast "
            "from the others alone: where the defaults do better then, keep them.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Robust regression of pace over short pieces, drawn towards the defaults where there "
            "is little. Errors are the median over tenths of a run. Standing time is set apart.",
        ),
        (
            published(papers.HUBER_1964),
            choice(QT_TRANSLATE_NOOP("Help", "How strongly the defaults draw.")),
        ),
        see=("fade", "gradient and pace", "downhill speed", "predicted finish", "recordings"),
        words=QT_TRANSLATE_NOOP("Help", "recordings GPX calibrate own runs error spread"),
    ),
    Topic(
        "predicted finish",
        QT_TRANSLATE_NOOP("Help", "Predicted finish"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The finish to expect from what you have run, as a window of 8 in 10 days, with the "
            "reasons. Nothing changes until you press Use as goal; then the window of the finish "
            "becomes that of the prediction.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each run is turned into flat-equivalent distance and carried to that of the course: "
            "time grows with distance to the power 1.06 to 1.08 up to 4 h, 1.12 to 1.18 up to a "
            "day, 1.20 to 1.30 beyond. A long run counts as 10 % slower than a race.",
        ),
        (
            published(
                papers.RIEGEL_1981,
                QT_TRANSLATE_NOOP("Help", "The power law, for efforts of up to four hours."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The powers beyond four hours, and the 10 %.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "It does not know heat, mud, sleep or your stomach. From runs half as long or less "
            "the window is wide, and rightly so.",
        ),
        see=("past runs", "finish aimed for", "finish window"),
        words=QT_TRANSLATE_NOOP("Help", "predict prediction how long will it take estimate goal"),
    ),
    Topic(
        "past runs",
        QT_TRANSLATE_NOOP("Help", "Past runs"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Races and long runs for the prediction: distance, climb, time without long stops, "
            "and whether it was a race. Two or three of the last year, the longer the better. "
            "Recordings can be added: their ground is measured, not guessed from the climb. "
            "They are kept with the runner.",
        ),
        sources=(PRACTICE,),
        see=("predicted finish", "forecast"),
        words=QT_TRANSLATE_NOOP("Help", "results history races typed in"),
    ),
    Topic(
        "beside other rules",
        QT_TRANSLATE_NOOP("Help", "Beside other rules"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The splits of your target beside those of plain rules that all end at the same "
            "finish: even pace, climb counted as distance, hikers, constant power. The last line "
            "is the finish a hiking rule names by itself.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each rule's time for every stretch, stretched to the same running time; your stops "
            "added.",
        ),
        (
            published(papers.SCARF_2007, QT_TRANSLATE_NOOP("Help", "1 m up as 8 m along.")),
            published(papers.TOBLER_1993, QT_TRANSLATE_NOOP("Help", "Hiking speed by slope.")),
            from_memory(papers.CAMPBELL_2022, QT_TRANSLATE_NOOP("Help", "Median speed of hikers.")),
            published(papers.MINETTI_2002, QT_TRANSLATE_NOOP("Help", "Cost of running uphill.")),
        ),
        see=("pace model", "target", "gradient and pace"),
        words=QT_TRANSLATE_NOOP("Help", "compare Naismith Tobler Scarf even pace table"),
    ),
)

DAY: tuple[Topic, ...] = (
    Topic(
        "conditions",
        QT_TRANSLATE_NOOP("Help", "Weather and conditions"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the day may take besides the ground: weather typed once for the valley, "
            "altitude, night, rough descents, and how long your lamp burns. Each effect can be "
            "switched off and says its minutes.",
        ),
        see=("valley forecast", "effects", "night loss", "lamp", "warmth", "heat"),
        words=QT_TRANSLATE_NOOP("Help", "weather altitude heat dark switch off"),
    ),
    Topic(
        "valley forecast",
        QT_TRANSLATE_NOOP("Help", "Forecast for the valley"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The coldest and the warmest of the day with their hours, humidity at the warmest, "
            "and the height of the place the forecast is for. Along the course and through the "
            "day the rest follows from it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Between the two hours a smooth curve; 6.5 degrees colder per 1000 m up; the same "
            "moisture in the air all day.",
        ),
        (
            published(papers.ISO_2533, QT_TRANSLATE_NOOP("Help", "6.5 K per km.")),
            choice(QT_TRANSLATE_NOOP("Help", "The curve through the day.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Wind, rain and a cold front are not in it. On a ridge it can be far colder than "
            "this; pack for it.",
        ),
        see=("conditions", "warmth"),
        words=QT_TRANSLATE_NOOP("Help", "temperature humidity weather typed lapse rate"),
    ),
    Topic(
        "effects",
        QT_TRANSLATE_NOOP("Help", "What altitude, heat, night and descents take"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How many minutes of the finish each effect is worth at the same effort. Since the "
            "finish is held, switching one on does not make you slower in all; it moves time to "
            "where the effect bites.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Altitude: a third of 6.3 % per 1000 m above 300 m. Heat: 0.7 % per degree WBGT above "
            "15, by day. Rough descents by the ground painted on. Minutes are shared out fairly "
            "where effects stretch each other.",
        ),
        (
            from_memory(
                papers.WEHRLIN_2006, QT_TRANSLATE_NOOP("Help", "6.3 % of power per 1000 m.")
            ),
            published(
                papers.MANTZIOS_2022,
                QT_TRANSLATE_NOOP(
                    "Help", "0.3 to 0.4 % per degree; doubled here for slower runners."
                ),
            ),
            estimate(QT_TRANSLATE_NOOP("Help", "The third, and the descents, are ours.")),
        ),
        see=("conditions", "night loss", "pace model"),
        words=QT_TRANSLATE_NOOP("Help", "minutes lost altitude heat rough descent technical"),
    ),
    Topic(
        "night loss",
        QT_TRANSLATE_NOOP("Help", "What the dark takes"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The share of your speed that goes in the dark: 10 % on trails, less on roads, none "
            "where streets are lit, more if you see badly by lamp. Type your own if you know it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "From civil dusk to civil dawn with half an hour of change about each; half as much "
            "again about three in the morning.",
        ),
        (estimate(QT_TRANSLATE_NOOP("Help", "Fitted to a few night runs; nothing published.")),),
        see=("light", "effects", "lamp"),
        words=QT_TRANSLATE_NOOP("Help", "night darkness slower percent lit streets"),
    ),
    Topic(
        "lamp",
        QT_TRANSLATE_NOOP("Help", "Dark and the lamp"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long it is dark while you are out, against how long your lamp burns with all the "
            "cells you carry, at the brightness you use. It strains from 80 % of the run-time, "
            "because cold cells give less, and breaks when the dark is longer.",
        ),
        QT_TRANSLATE_NOOP("Help", "All dark spans of the light lane together, on the target."),
        (PLAN, PRACTICE),
        QT_TRANSLATE_NOOP("Help", "Later than planned is darker than planned. Carry a spare."),
        see=("light", "night loss", "conditions"),
        words=QT_TRANSLATE_NOOP("Help", "headlamp torch battery cells dark hours run-time"),
    ),
    Topic(
        "warmth",
        QT_TRANSLATE_NOOP("Help", "Warmth"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The air where you are when you are there, as a line; over it, dashed, the WBGT "
            "estimate, which counts moisture and sun as the body feels them. Shaded where that is "
            "high. In the dark there is no estimate.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Temperature from the valley forecast, height and hour. WBGT is 0.567 times it plus "
            "0.393 times the vapour pressure in hPa plus 3.94.",
        ),
        (
            published(
                papers.BOM_WBGT,
                QT_TRANSLATE_NOOP("Help", "The short formula; read in secondary sources."),
            ),
            published(papers.ISO_2533),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The estimate assumes sun and a light wind: too high under cloud and in wind, too low "
            "in full sun without wind.",
        ),
        see=("heat", "valley forecast", "light"),
        words=QT_TRANSLATE_NOOP("Help", "temperature WBGT air lane hot cold"),
    ),
    Topic(
        "heat",
        QT_TRANSLATE_NOOP("Help", "Heat"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The hottest the day gets on your way, in words: low, moderate from 18, high from 23, "
            "very high from 28 degrees WBGT. From moderate on slow down and cool down; at very "
            "high heat races are stopped.",
        ),
        QT_TRANSLATE_NOOP("Help", "The highest WBGT estimate along the target, by day."),
        (
            published(
                papers.ACSM_2007,
                QT_TRANSLATE_NOOP("Help", "Bands for distance races; read in secondary sources."),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Confusion, staggering or hot dry skin in the heat is an emergency: stop, cool, call "
            "for help. Never start with fever.",
        ),
        see=("warmth", "conditions", "red flags"),
        words=QT_TRANSLATE_NOOP("Help", "hot heat stroke caution WBGT"),
    ),
)

CHANCES: tuple[Topic, ...] = (
    Topic(
        "odds",
        QT_TRANSLATE_NOOP("Help", "Makes it"),
        QT_TRANSLATE_NOOP(
            "Help",
            "On about how many of 20 such days you are in time here and at every cutoff before. "
            "Never 0 and never 20, because nothing is sure. From 18 on it holds, under 10 it "
            "breaks.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "10,000 simulated races about the forecast: shape of the day, fade of the day, "
            "longer and shorter stops, ups and downs that carry on from section to section. The "
            "same draws each time, so a drag moves figures and not luck.",
        ),
        (
            estimate(
                QT_TRANSLATE_NOOP(
                    "Help", "Scatter fitted to one mountain race and to recordings of real runs."
                )
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Injury, giving up and a closed course are not among the simulated days."
        ),
        see=("arrival window", "cutoff", "least in hand", "forecast"),
        words=QT_TRANSLATE_NOOP("Help", "chance probability simulated races cutoff days"),
    ),
    Topic(
        "leave by",
        QT_TRANSLATE_NOOP("Help", "Leave by"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The latest you may leave the place and still make every cutoff from there on at "
            "planned speed. Where the cutoff counts leaving, it is in this too.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Planned leaving plus the least time to spare over the later cutoffs; the later of "
            "target and forecast counts.",
        ),
        (PLAN,),
        see=("time in hand", "cutoff", "walk-in limit"),
        words=QT_TRANSLATE_NOOP("Help", "latest departure leaving aid station"),
    ),
    Topic(
        "walk-in limit",
        QT_TRANSLATE_NOOP("Help", "Walk-in limit"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How late you may be and still make every cutoff walking, stops included: the dashed "
            "line in the lane, and the latest leaving of each place. Below zero the rest cannot be "
            "walked in. Only if you are well.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Median walking speed by slope, times 0.9 for tired legs (yours to change). The first "
            "place from which it holds to the end is said in the ledger.",
        ),
        (
            from_memory(papers.CAMPBELL_2022, QT_TRANSLATE_NOOP("Help", "Speed by slope.")),
            choice(QT_TRANSLATE_NOOP("Help", "The 0.9.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "An injured, cold or sick walker is slower than this. It is not a reason to go on.",
        ),
        see=("time in hand", "leave by", "walking", "red flags"),
        words=QT_TRANSLATE_NOOP("Help", "walk it in reserve late hike tired"),
    ),
    Topic(
        "walking",
        QT_TRANSLATE_NOOP("Help", "At walking pace"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Stretches the target takes slower than where people change from running to walking, "
            "dotted along the foot of the target lane, and how fast they go. Who runs some of such "
            "a stretch may walk the rest of it slower.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Slower than 2.0 m/s on the level, falling to 1.3 m/s where it is steep; stretches of "
            "less than 200 m are left out.",
        ),
        (
            choice(
                QT_TRANSLATE_NOOP(
                    "Help", "The line by slope; measured on the level, about 2.1 m/s."
                )
            ),
            published(papers.ABE_2015, QT_TRANSLATE_NOOP("Help", "7.5 km/h on the level.")),
        ),
        see=("target", "walk-in limit", "gradient and pace"),
        words=QT_TRANSLATE_NOOP("Help", "walk hike gait change power hike"),
    ),
)

TOPICS = SHAPE + DAY + CHANCES

"""Topics of race day: course, targets, arrivals, cutoffs, light."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    CHOICE,
    PLAN,
    Topic,
    choice,
    estimate,
    published,
)

COURSE: tuple[Topic, ...] = (
    Topic(
        "race day",
        QT_TRANSLATE_NOOP("Help", "Race day"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The race from start to finish on one axis, by distance or by clock. Aid stations are "
            "lines through all lanes. Ctrl and the wheel zoom in, the wheel alone moves along, 0 "
            "shows the whole race again.",
        ),
        see=("profile", "target", "time in hand", "light", "fuel", "race axis", "race facts"),
        words=QT_TRANSLATE_NOOP("Help", "lower storey race plan"),
    ),
    Topic(
        "race axis",
        QT_TRANSLATE_NOOP("Help", "By distance or by clock"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the lanes of race day run along. By distance a climb is as wide as it is long; "
            "by clock it is as wide as the time it takes you, which is the better view for food "
            "and for the night.",
        ),
        QT_TRANSLATE_NOOP("Help", "Between the two the target tells where you are when."),
        (PLAN,),
        see=("race day", "target"),
        words=QT_TRANSLATE_NOOP("Help", "scale foot axis"),
    ),
    Topic(
        "course",
        QT_TRANSLATE_NOOP("Help", "The course"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The line of the race from a GPX file, with or without heights. Aid stations are "
            "proposed from its waypoints. What had to be mended in the file is said in the ledger. "
            "Nothing in the file itself is changed.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Length is measured point to point over the ellipsoid of the Earth. It seldom equals "
            "the distance the race announces: a line with few points is shorter, a shaky one "
            "longer.",
        ),
        (published(papers.KARNEY_2013, QT_TRANSLATE_NOOP("Help", "Distance on the ellipsoid.")),),
        see=(
            "profile",
            "climb and drop",
            "aid station",
            "course table",
            "mended file",
            "which line",
            "course shape",
            "official distance",
        ),
        words=QT_TRANSLATE_NOOP("Help", "gpx track length distance of the race"),
    ),
    Topic(
        "course table",
        QT_TRANSLATE_NOOP("Help", "A course from a table"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Where there is no GPX file, the race's own table will do: each place with its "
            "distance, the climb and drop of the leg that ends there, its cutoff and what is "
            "there. Distances, climb and drop are kept as typed; the hills between are made up.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A leg gets a hill to each 5 km at most, all of one height, up first; its climbs and "
            "drops have one mean gradient. Light is that of the place the time zone is named "
            "after.",
        ),
        (CHOICE,),
        see=("course", "profile", "light", "time zone"),
        words=QT_TRANSLATE_NOOP("Help", "no gpx typed pasted schematic handbook spreadsheet"),
    ),
    Topic(
        "profile",
        QT_TRANSLATE_NOOP("Help", "Profile"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Height along the course, smoothed. The colour says how steep: sky down, stone level, "
            "ochre up; the hatching gets denser where it is steeper, so that it reads in black and "
            "white too.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Heights of the file averaged over 70 m and read every 10 m. Gradient is rise over "
            "distance, 10 % being 10 m up in 100 m.",
        ),
        (
            choice(QT_TRANSLATE_NOOP("Help", "The 70 m.")),
            published(
                papers.RAPAPORT_2010,
                QT_TRANSLATE_NOOP(
                    "Help", "That height must be smoothed, and that the sum hangs on how far."
                ),
            ),
        ),
        see=("climb and drop", "gradient and pace", "course"),
        words=QT_TRANSLATE_NOOP("Help", "elevation height gradient steep slope hachures lane"),
    ),
    Topic(
        "climb and drop",
        QT_TRANSLATE_NOOP("Help", "Climb and drop of the course"),
        QT_TRANSLATE_NOOP(
            "Help",
            "All metres up and all metres down from start to finish, or over one section. Two "
            "devices on the same run differ by a fifth and more, and race organisers count in "
            "their own ways, so don't be surprised by another figure.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Summed from turning point to turning point of the smoothed profile; ups and downs of "
            "less than 5 m are not counted. Summing every small rise would count the noise of the "
            "file as climb.",
        ),
        (
            choice(QT_TRANSLATE_NOOP("Help", "The 5 m.")),
            published(papers.RAPAPORT_2010),
        ),
        see=("profile", "course", "gradient and pace", "official climb and drop"),
        words=QT_TRANSLATE_NOOP("Help", "ascent descent elevation gain vert metres section"),
    ),
    Topic(
        "aid station",
        QT_TRANSLATE_NOOP("Help", "Aid station"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A place on the course where you may stop, with its cutoff, your planned stop and what "
            "there is. Sections run from one to the next. Move one by typing its place, or drag "
            "it by its name.",
        ),
        see=(
            "moving on race day",
            "folded leg",
            "cutoff",
            "planned stop",
            "what is there",
            "section",
            "carry",
            "pinned station",
        ),
        words=QT_TRANSLATE_NOOP("Help", "checkpoint control station name place at"),
    ),
    Topic(
        "what is there",
        QT_TRANSLATE_NOOP("Help", "What is there"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Water, food, drop bag, crew, medical: what the aid station offers, from the race's "
            "handbook. Bag and crew are marked on the fuel card.",
        ),
        see=("aid station", "fuel card"),
        words=QT_TRANSLATE_NOOP("Help", "offers drop bag crew water food"),
    ),
    Topic(
        "planned stop",
        QT_TRANSLATE_NOOP("Help", "Planned stop"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long you mean to stand at an aid station. Stops are part of the finish aimed "
            "for: the longer they are, the faster you must run. Enter what you really take; ten "
            "minutes at ten stations are most of two hours.",
        ),
        QT_TRANSLATE_NOOP("Help", "What you typed, added after the arrival there."),
        (
            PLAN,
            published(
                papers.KERHERVE_2015,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "In a 106 km race less time stopped went with a faster race (r = -0.77).",
                ),
            ),
        ),
        see=("running time", "aid station", "finish aimed for", "sleep stop"),
        words=QT_TRANSLATE_NOOP("Help", "pause rest time at the station"),
    ),
    Topic(
        "light",
        QT_TRANSLATE_NOOP("Help", "Light"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Day, twilight and dark along the race, at its place and date. Twilight lasts until "
            "the sun is 6 degrees under the horizon; then you need the lamp. In a deep valley or "
            "a wood it is dark sooner.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Height of the sun at the start of the course for every minute of the race; level "
            "horizon, no clouds.",
        ),
        (published(papers.MEEUS_1998, QT_TRANSLATE_NOOP("Help", "Position of the sun.")),),
        see=("dark", "lamp", "forecast", "start time", "moving the start"),
        words=QT_TRANSLATE_NOOP("Help", "sunrise sunset night lamp dusk dawn lane"),
    ),
)

TARGETS: tuple[Topic, ...] = (
    Topic(
        "section",
        QT_TRANSLATE_NOOP("Help", "Section"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A stretch of the course with one target, mostly from one aid station to the next. "
            "Drag the right edge of its step to move its end, the top to make it faster or slower.",
        ),
        QT_TRANSLATE_NOOP("Help", "Length: its end minus its start along the course."),
        (PLAN,),
        see=(
            "target",
            "running time",
            "arrive",
            "aid station",
            "climb and drop",
            "cutting sections",
        ),
        words=QT_TRANSLATE_NOOP("Help", "leg split length from to"),
    ),
    Topic(
        "target",
        QT_TRANSLATE_NOOP("Help", "Target"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The pace the plan asks for in a section, stops left out; it is what the pace card "
            "prints. By default it fades half as much as the forecast: a little slower at first "
            "than most start, a little faster at the end. Higher in the lane is faster.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The running time of the section over its length. The curve behind it meets the "
            "finish aimed for, with what the ground costs, half of your fade, and the night.",
        ),
        (
            estimate(QT_TRANSLATE_NOOP("Help", "The pace model, fitted to real runs.")),
            choice(
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Half the fade: steadier runners do better, but nobody has tried it out on "
                    "the same runners.",
                )
            ),
            published(
                papers.LAMBERT_2004,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Over 100 km the ten fastest of 67 stayed within 15 % of their starting speed; "
                    "slower ones lost more.",
                ),
            ),
        ),
        see=(
            *("forecast", "fixed target", "shape of the target", "pace model", "running time"),
            "walking",
        ),
        words=QT_TRANSLATE_NOOP("Help", "pace speed section target lane"),
    ),
    Topic(
        "fixed target",
        QT_TRANSLATE_NOOP("Help", "Fixed target"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A section whose time you set yourself keeps it. The others share what is left, so "
            "that the finish stays, unless you let it move; if all are fixed, it moves. Delete "
            "lets the section follow the curve again.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The free sections are all run at the same share of their usual time, from half to "
            "twice of it; beyond that the program refuses.",
        ),
        (CHOICE,),
        see=("target", "running time", "section"),
        words=QT_TRANSLATE_NOOP("Help", "lock set own time follow the curve"),
    ),
    Topic(
        "running time",
        QT_TRANSLATE_NOOP("Help", "Running time"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long the section takes from leaving one place to arriving at the next, walking "
            "included and stops left out. Type one and it is fixed.",
        ),
        QT_TRANSLATE_NOOP("Help", "Arrival minus the leaving before it, on the target curve."),
        (PLAN,),
        see=("target", "planned stop", "arrive"),
        words=QT_TRANSLATE_NOOP("Help", "moving time duration of a section"),
    ),
    Topic(
        "forecast",
        QT_TRANSLATE_NOOP("Help", "Forecast"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What runners of your finish time really do: start fast, fade. The dashed line. "
            "Windows are drawn about it, and cutoffs are judged by it wherever it comes later than "
            "the target, because that is where most people end up.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Same ground and same finish as the target, with all of your fade. What you give after "
            "h hours is (1 + h / onset) to the power -fade, and a tenth less in the dark; onset "
            "and fade are those of most runners until your own runs tell better.",
        ),
        (
            estimate(
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Fitted to recordings of real runs from 21 to 158 km. On runs kept apart half "
                    "of all passing times were off by less than 1 % of the finish time, nine of "
                    "ten by less than 4 %.",
                )
            ),
            published(
                papers.KERHERVE_2015,
                QT_TRANSLATE_NOOP(
                    "Help", "Over 106 km speed fell on every gradient until near the end."
                ),
            ),
        ),
        see=("target", "pace model", "arrival window", "finish window"),
        words=QT_TRANSLATE_NOOP("Help", "prediction fade slow down positive split dashed"),
    ),
    Topic(
        "pace model",
        QT_TRANSLATE_NOOP("Help", "How pace is worked out"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each metre costs more or less by how steep it is and what is underfoot; you give "
            "less as the hours pass and in the dark. The finish aimed for is shared out so that "
            "both fit. There is no search for a magic speed in it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Time is shared out by cost over power. Power after h hours: (1 + h / onset) to the "
            "power -fade, times 0.9 in the dark. Stops are left out of the cost but not of the "
            "hours.",
        ),
        (
            estimate(
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Own fit to real runs. Sections come out with a scatter of 10 % and more; "
                    "mud, queues and a bad day are not in it.",
                )
            ),
        ),
        see=("gradient and pace", "forecast", "target", "conditions", "beside other rules"),
        words=QT_TRANSLATE_NOOP("Help", "model formula fade power night"),
    ),
    Topic(
        "gradient and pace",
        QT_TRANSLATE_NOOP("Help", "What a slope costs"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much longer a metre takes uphill or downhill than on the level. Uphill follows "
            "measured energy; downhill follows what runners do, for hardly anyone takes the gift "
            "of a steep descent: at -6 % they are a tenth faster, at -22 % slower than on the "
            "level.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Uphill 1 plus 0.9 times the extra energy of running at that gradient over level "
            "running. Downhill a curve through 0.90 at -6 %, 0.97 at -13 %, 1.22 at -22 % and "
            "1.85 at -38 %. Ground: gravel 1.02, smooth trail 1.05, technical trail 1.15, rock "
            "1.40, sand 1.60 times; unknown counts as firm.",
        ),
        (
            published(
                papers.MINETTI_2002,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Energy of running from -45 to +45 %, ten runners; the polynomial was read in "
                    "public copies, not in the paper itself.",
                ),
            ),
            estimate(QT_TRANSLATE_NOOP("Help", "The downhill curve and the 0.9, from real runs.")),
            published(papers.LEJEUNE_1998, QT_TRANSLATE_NOOP("Help", "Sand: 1.6 times.")),
            published(
                papers.VOLOSHINA_2015,
                QT_TRANSLATE_NOOP("Help", "Uneven ground: 1.05 times; the other grounds are ours."),
            ),
        ),
        see=("pace model", "profile", "downhill", "surface"),
        words=QT_TRANSLATE_NOOP("Help", "uphill downhill surface terrain energy cost Minetti"),
    ),
    Topic(
        "arrive",
        QT_TRANSLATE_NOOP("Help", "Arrive"),
        QT_TRANSLATE_NOOP(
            "Help",
            "When the target brings you to the end of the section, on the clock at the race. The "
            "planned stop comes after it.",
        ),
        QT_TRANSLATE_NOOP("Help", "Start time plus all running times and stops up to there."),
        (PLAN,),
        see=("arrival window", "time in hand", "target", "time zone"),
        words=QT_TRANSLATE_NOOP("Help", "arrival clock time split eta"),
    ),
    Topic(
        "arrival window",
        QT_TRANSLATE_NOOP("Help", "Arrival window"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Where 8 of 10 arrivals fall, about the forecast: one day in ten you are earlier, one "
            "in ten later. Tell it to your crew. It takes for granted that you can run the finish "
            "you aim for.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "From 10,000 simulated races (see Makes it). Their spread is near 0.09 x T x (s x (1 - "
            "s)) to the power 0.75 at the share s of the finish time T, joined with a finish that "
            "scatters by 4 %, or as much as its prediction says.",
        ),
        (
            estimate(
                QT_TRANSLATE_NOOP(
                    "Help", "Measured on real runs and one large race; the 4 % is a guess of ours."
                )
            ),
        ),
        see=("forecast", "finish window", "arrive", "odds"),
        words=QT_TRANSLATE_NOOP("Help", "range spread probability chance crew"),
    ),
    Topic(
        "finish window",
        QT_TRANSLATE_NOOP("Help", "Planned finish, and how likely"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The finish your targets come to, and between which times 8 of 10 days would end if "
            "you are in the shape you think. Injury, heat and bad stomachs are not in it.",
        ),
        QT_TRANSLATE_NOOP("Help", "The finish time and 1.28 times 4 % of it to both sides."),
        (
            estimate(
                QT_TRANSLATE_NOOP(
                    "Help",
                    "The 4 %: how well runners know their finish beforehand. A guess of ours.",
                )
            ),
        ),
        see=("finish aimed for", "predicted finish", "arrival window", "forecast"),
        words=QT_TRANSLATE_NOOP("Help", "predicted finish time header"),
    ),
    Topic(
        "cutoff",
        QT_TRANSLATE_NOOP("Help", "Cutoff"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The latest arrival the race allows at a place, from its rules. Type it as a clock "
            "time or as race time, whichever the handbook gives. Where it counts leaving, your "
            "planned stop is taken off for you.",
        ),
        see=("to this cutoff", "time in hand", "least in hand", "time limit"),
        words=QT_TRANSLATE_NOOP("Help", "closing time limit cutoff after clock barrier"),
    ),
    Topic(
        "time in hand",
        QT_TRANSLATE_NOOP("Help", "Time in hand"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much later you could arrive here and still make this and every later cutoff at "
            "planned speed. It is a step line: level up to the cutoff that binds, because a "
            "generous cutoff is worth nothing if the next is tight. Below zero one is missed.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The least, over this and all later cutoffs, of cutoff minus arrival; the later of "
            "target and forecast counts as arrival.",
        ),
        (PLAN, choice(QT_TRANSLATE_NOOP("Help", "That the later of the two arrivals counts."))),
        QT_TRANSLATE_NOOP(
            "Help", "It holds only as long as you can keep planned speed to the finish."
        ),
        see=(
            *("to this cutoff", "least in hand", "cutoff", "last arrival", "walk-in limit"),
            "leave by",
        ),
        words=QT_TRANSLATE_NOOP("Help", "buffer margin spare slack in hand lane late"),
    ),
    Topic(
        "to this cutoff",
        QT_TRANSLATE_NOOP("Help", "To this cutoff"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Time between your arrival and the cutoff of this place alone. Look at the time in "
            "hand as well: a later cutoff may be the tighter one.",
        ),
        QT_TRANSLATE_NOOP("Help", "Cutoff minus the later of the arrivals on target and forecast."),
        (PLAN,),
        see=("time in hand", "cutoff", "arrive"),
        words=QT_TRANSLATE_NOOP("Help", "margin"),
    ),
    Topic(
        "least in hand",
        QT_TRANSLATE_NOOP("Help", "Tightest cutoff"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The cutoff that leaves you the least time, and how much. It is the one to plan for; "
            "if it is missed, change the finish aimed for, the stops, or the targets before it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The least of cutoff minus arrival over all cutoffs; the later of target and forecast "
            "counts.",
        ),
        (PLAN,),
        see=("time in hand", "cutoff", "target"),
        words=QT_TRANSLATE_NOOP("Help", "least in hand spare header"),
    ),
    Topic(
        "when it gets hard",
        QT_TRANSLATE_NOOP("Help", "When it gets hard here"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Your own words for a bad patch in this section, written while you are calm: if this, "
            "then that. If the stomach turns, then walk ten minutes and sip. Try them out in "
            "rehearsal runs.",
        ),
        sources=(
            published(
                papers.GOLLWITZER_2006,
                QT_TRANSLATE_NOOP(
                    "Help", "94 tests: if-then plans help people do what they meant to do."
                ),
            ),
            published(
                papers.MCCORMICK_2018,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "29 runners over 60 miles: talking to oneself did not make them faster, but "
                    "they liked it.",
                ),
            ),
        ),
        see=("section", "rehearsal run", "red flags"),
        words=QT_TRANSLATE_NOOP("Help", "mental head if then motivation note low patch"),
    ),
)

TOPICS = COURSE + TARGETS

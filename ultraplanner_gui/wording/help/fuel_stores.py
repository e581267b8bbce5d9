"""Topics of stores, bags, filling, the days before and what one's own gut has shown."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording import cautions
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

TOPICS: tuple[Topic, ...] = (
    Topic(
        "glycogen",
        QT_TRANSLATE_NOOP("Help", "Glycogen"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much carbohydrate liver and legs still hold along the course, as a band. The "
            "upper "
            "edge burns as most people do, the lower one a tenth of all energy more. What is eaten "
            "spares it. A trend, not a prediction: 30 % off either way is usual.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Minute by minute: body mass, distance and slope give the energy, how hard that is for "
            "you the share from carbohydrate; what you eat is absorbed with a delay of half an "
            "hour and never faster than the gut can.",
        ),
        (
            from_memory(
                papers.ROMIJN_1993,
                QT_TRANSLATE_NOOP(
                    "Help", "About 10, 50 and 75 % of energy from carbohydrate at 25, 65 and 85 %."
                ),
            ),
            from_memory(
                papers.JEUKENDRUP_2000,
                QT_TRANSLATE_NOOP("Help", "What is eaten is burnt at a steady rate after 90 min."),
            ),
            from_memory(
                papers.RAPOPORT_2010,
                QT_TRANSLATE_NOOP("Help", "Legs are a fifth of the body; stores per kg."),
            ),
            choice(
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Low below 40 % of the start, empty below 20 %; downhill, heat and "
                    "altitude are left out.",
                )
            ),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help", "Not valid with diabetes: make your own plan with your care team."
        ),
        see=("gut load", "glycogen at the start", "fuel"),
        words=QT_TRANSLATE_NOOP("Help", "tank wall bonk stores empty liver legs"),
    ),
    Topic(
        "gut load",
        QT_TRANSLATE_NOOP("Help", "Gut load"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What has been eaten and not yet been absorbed or used. Above 60 g it is much, above "
            "100 g more than the body can use at this pace: take less there, or slow down less.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Out of the glycogen ledger: no more than 60 g/h of glucose is absorbed, 90 of a "
            "mixture, and no more is burnt than three quarters of the energy spent.",
        ),
        (estimate(QT_TRANSLATE_NOOP("Help", "A simple model; guts differ more than it knows.")),),
        see=("glycogen", "sugars"),
        words=QT_TRANSLATE_NOOP("Help", "stomach bloating nausea absorption ceiling"),
    ),
    Topic(
        "glycogen at the start",
        QT_TRANSLATE_NOOP("Help", "Glycogen at the start"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the ledger starts from: leg muscle as a share of the body, glycogen in a "
            "kilogram "
            "of it, and the liver. 20 g/kg after usual food, up to 36 loaded; the liver 90 g after "
            "breakfast, 45 without.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "With the VO2max each section has its own effort; else choose how hard the race is.",
        ),
        (from_memory(papers.RAPOPORT_2010), CHOICE),
        see=("glycogen", "before the start"),
        words=QT_TRANSLATE_NOOP("Help", "vo2max loading liver muscle"),
    ),
    Topic(
        "fluid lane",
        QT_TRANSLATE_NOOP("Help", "Fluid and sodium"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Fluid in the hour around each moment, as an area, and sodium as a line. Both are what "
            "to have with you, never what to force down.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The items of that hour; water in food counts. The band is a quarter either way.",
        ),
        (
            PLAN,
            published(
                papers.TILLER_2019,
                QT_TRANSLATE_NOOP("Help", "450 to 750 mL an hour in ultramarathons."),
            ),
        ),
        caution=cautions.OVER_DRINKING,
        see=("fluid", "sodium", "sweat test"),
        words=QT_TRANSLATE_NOOP("Help", "water drink lane"),
    ),
    Topic(
        "caffeine in the body",
        QT_TRANSLATE_NOOP("Help", "Caffeine in the body"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What is left of all caffeine taken by then: half of it is gone after about five "
            "hours, "
            "in some people after two, in others after nine.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Every dose counts in full when taken and halves every five hours."
        ),
        (
            published(
                papers.IOM_2001,
                QT_TRANSLATE_NOOP("Help", "Half-life 5 h on average, 1.5 to 9.5 h."),
            ),
        ),
        caution=cautions.CAFFEINE,
        see=("caffeine",),
        words=QT_TRANSLATE_NOOP("Help", "sleep half-life"),
    ),
    Topic(
        "keeps",
        QT_TRANSLATE_NOOP("Help", "Keeps its time or its place"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What happens to an item when the pace changes: one that keeps its time is taken at "
            "the "
            "same race time, one that keeps its place where it was put, such as soup at a station.",
        ),
        sources=(CHOICE,),
        see=("fuel item", "fill to target"),
        words=QT_TRANSLATE_NOOP("Help", "clock distance anchor pace"),
    ),
    Topic(
        "fill to target",
        QT_TRANSLATE_NOOP("Help", "Fill to target"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Chooses from the foods you tick how much of each to take when, so that carbohydrate, "
            "fluid, sodium and caffeine stay in their bands, sweet gives way to savoury, and "
            "little "
            "is carried far. Where a band cannot be met it says why.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "An exact choice in whole portions, an hour at a time. Foods marked to avoid and those "
            "with your allergens are never used, caffeine only if you allow it.",
        ),
        (
            choice(
                QT_TRANSLATE_NOOP(
                    "Help", "Bands of 10 % for carbohydrate, 25 % for fluid, a third for sodium."
                )
            ),
            published(
                papers.TILLER_2019,
                QT_TRANSLATE_NOOP("Help", "In long races savoury food is liked more."),
            ),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help", "A proposal to read item by item and to practise in training."
        ),
        see=("placing fuel", "fuel", "your gut"),
        words=QT_TRANSLATE_NOOP("Help", "optimise automatic menu"),
    ),
    Topic(
        "bags",
        QT_TRANSLATE_NOOP("Help", "Bags"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Where each item of the plan comes from: on you from the start, out of a drop bag, "
            "from "
            "your crew, or off a table. Packed whole, with what is spare. Nothing perishable where "
            "a bag waits for hours in the warm.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The last bag or crew before an item holds it, unless the station there offers it. "
            "Bags and tables together are the timeline.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "15 % spare, unless you set another.")), PRACTICE),
        see=("carry", "carried", "shopping", "food at stations"),
        words=QT_TRANSLATE_NOOP("Help", "drop bag crew pack label kit"),
    ),
    Topic(
        "carried",
        QT_TRANSLATE_NOOP("Help", "Carried"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What is on you when you leave a station: all food until it is eaten, and drink until "
            "the next tap, with the spare. Short of room means that your bottles do not hold it.",
        ),
        sources=(PLAN,),
        see=("bags", "carry"),
        words=QT_TRANSLATE_NOOP("Help", "bottles weight capacity pack"),
    ),
    Topic(
        "shopping",
        QT_TRANSLATE_NOOP("Help", "Shopping"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What all bags take, spare among it, in whole packs, and what is left in the end if "
            "the "
            "race goes as planned.",
        ),
        sources=(PLAN,),
        see=("bags",),
        words=QT_TRANSLATE_NOOP("Help", "buy packs list left over"),
    ),
    Topic(
        "food at stations",
        QT_TRANSLATE_NOOP("Help", "Food at stations"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Which foods stand on the table of an aid station, as the organiser says. Filling "
            "takes "
            "them there, bags leave them out.",
        ),
        sources=(PLAN,),
        caution=QT_TRANSLATE_NOOP(
            "Help", "Tables run empty for late runners: carry what you cannot do without."
        ),
        see=("bags", "fill to target"),
        words=QT_TRANSLATE_NOOP("Help", "table aid station offers"),
    ),
    Topic(
        "before the start",
        QT_TRANSLATE_NOOP("Help", "Before the start"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One countdown from ten days before to the gun: runs, kit, feet, bags, sleep and the "
            "way home; loading, meals, drink and caffeine by body mass and start time. Loading "
            "binds water, so a kilogram or two more is usual.",
        ),
        sources=(
            from_memory(
                papers.THOMAS_2016,
                QT_TRANSLATE_NOOP("Help", "10 to 12 g/kg a day for 36 to 48 hours."),
            ),
            published(
                papers.WALLIS_2022,
                QT_TRANSLATE_NOOP("Help", "1 to 4 g/kg one to four hours before."),
            ),
            from_memory(
                papers.SAWKA_2007, QT_TRANSLATE_NOOP("Help", "5 to 7 mL/kg four hours before.")
            ),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help", "Loading is not for people with diabetes without their care team."
        ),
        see=("glycogen at the start", "caffeine", "sweat test", "after the race"),
        words=QT_TRANSLATE_NOOP("Help", "countdown loading breakfast meal week"),
    ),
    Topic(
        "sweat test",
        QT_TRANSLATE_NOOP("Help", "Sweat test"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A run of one to two hours, weighed undressed and dry before and after. It gives what "
            "you sweat an hour; no more than that is ever planned, and 70 % of it is enough to "
            "have.",
        ),
        QT_TRANSLATE_NOOP("Help", "Weight lost, plus drunk, less passed, over the hours."),
        (
            from_memory(papers.SAWKA_2007),
            choice(QT_TRANSLATE_NOOP("Help", "The least of several tests counts, to be careful.")),
        ),
        caution=cautions.OVER_DRINKING,
        see=("fluid", "fluid lane"),
        words=QT_TRANSLATE_NOOP("Help", "sweat rate weigh hydration"),
    ),
    Topic(
        "your gut",
        QT_TRANSLATE_NOOP("Help", "Your gut"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Your own mark for a food: tolerated, not tried, or to avoid. Two runs on which it sat "
            "well are a good reason for the first.",
        ),
        sources=(CHOICE,),
        see=("practice carbs", "fill to target"),
        words=QT_TRANSLATE_NOOP("Help", "tolerated avoid stomach mark"),
    ),
    Topic(
        "allergens",
        QT_TRANSLATE_NOOP("Help", "Allergens"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What of the fourteen that must be named on a packet a food holds. Say under Fuel "
            "habits "
            "what you must not eat: such foods are then never filled in, and the checks say if one "
            "stands in the plan.",
        ),
        sources=(published(papers.EU_1169),),
        caution=cautions.ALLERGY,
        see=("food",),
        words=QT_TRANSLATE_NOOP("Help", "allergy gluten nuts milk"),
    ),
    Topic(
        "pack",
        QT_TRANSLATE_NOOP("Help", "In a pack"),
        QT_TRANSLATE_NOOP(
            "Help", "How many servings are bought at once; the shopping list counts whole packs."
        ),
        sources=(PLAN,),
        see=("shopping",),
    ),
    Topic(
        "carried food",
        QT_TRANSLATE_NOOP("Help", "Can be carried"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Whether a food can go in a bag or a pocket. Soup and cups of cola cannot: they "
            "are eaten where they stand.",
        ),
        sources=(PRACTICE,),
        see=("food at stations",),
    ),
)

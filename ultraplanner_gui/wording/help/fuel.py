"""Topics of eating and drinking: rates, checks, items and foods."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    CHOICE,
    PLAN,
    Topic,
    choice,
    from_memory,
    practice,
    published,
)

RATES: tuple[Topic, ...] = (
    Topic(
        "fuel",
        QT_TRANSLATE_NOOP("Help", "Fuel"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you eat and drink along the race, each item a token on the clock: drag it to "
            "another time. The line above shows carbohydrate per hour, the band what you asked "
            "for. Amounts are a starting point to practise in training.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The line is the carbohydrate taken in the hour around each moment; the band is 10 % "
            "below and above the rate you set.",
        ),
        (
            PLAN,
            choice(QT_TRANSLATE_NOOP("Help", "The hour the line looks over, and the 10 %.")),
        ),
        see=(
            *("carbs per hour", "fluid", "sodium", "caffeine", "fuel item", "placing fuel"),
            *("fill to target", "glycogen", "fluid lane", "bags", "before the start"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "food nutrition eating lane tokens band"),
    ),
    Topic(
        "carbs per hour",
        QT_TRANSLATE_NOOP("Help", "Carbs per hour"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much carbohydrate you take in an hour of racing, on average. The first 30 g/h "
            "matter most; more helps only if your gut takes it. Most runners of long races manage "
            "25 to 60.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "All carbohydrate of the items over the hours of the race, or over those of one leg. "
            "Fibre is not counted.",
        ),
        (
            published(
                papers.JEUKENDRUP_2014,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Up to 60 g/h of any sugar, up to 90 of glucose with fructose; the same for "
                    "light and heavy people.",
                ),
            ),
            published(
                papers.TILLER_2019,
                QT_TRANSLATE_NOOP("Help", "30 to 50 g/h in ultramarathons run in one go."),
            ),
            published(
                papers.SMITH_2013,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "51 cyclists gained 2.0 % at 19 g/h, 3.0 at 31, 4.0 at 48 and 4.7 at 78.",
                ),
            ),
            published(
                papers.KINRADE_2021,
                QT_TRANSLATE_NOOP("Help", "18 amateurs took 33 g/h (spread 12) over 24 hours."),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Figures above 60 g/h were studied for three hours and need practice. Feel sick or "
            "bloated: slow down and take less.",
        ),
        see=(
            *("gut training", "carbs practised", "carb ceiling", "practice carbs"),
            *("net carbs", "carb advice"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "carbohydrate grams rate energy gels total"),
    ),
    Topic(
        "race carbs",
        QT_TRANSLATE_NOOP("Help", "Carbs in all"),
        QT_TRANSLATE_NOOP(
            "Help",
            "All carbohydrate of the items up to the finish, in grams. What lies beyond the finish "
            "is not counted.",
        ),
        QT_TRANSLATE_NOOP("Help", "Servings times carbohydrate per serving, summed."),
        (PLAN,),
        see=("carbs per hour", "net carbs", "fuel item"),
        words=QT_TRANSLATE_NOOP("Help", "total grams carbohydrate"),
    ),
    Topic(
        "fluid",
        QT_TRANSLATE_NOOP("Help", "Fluid"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you have with you to drink, not what you must drink. Drink to thirst. Water in "
            "gels and food counts in a little.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Sum of the fluid in the items. The check takes the most within two hours: up to "
            "800 mL an hour holds, up to 1000 strains, beyond it breaks.",
        ),
        (
            published(
                papers.TILLER_2019, QT_TRANSLATE_NOOP("Help", "450 to 750 mL an hour as a start.")
            ),
            published(
                papers.HOFFMAN_2014,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "383 starters in up to 39 degrees lost 2 to 3 % of their weight whichever way "
                    "they drank; most drank to thirst.",
                ),
            ),
            published(
                papers.HOFFMAN_2018,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "A runner of 69 kg has to lose 1.9 to 5.0 % over 161 km only to keep the water "
                    "in the body level.",
                ),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The limits of 800 and 1000 mL.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Drinking more than you sweat can kill. Weight gain, puffy hands, headache, vomiting "
            "or confusion: no more plain water, go to medical staff at once.",
        ),
        see=("sodium", "carry", "red flags"),
        words=QT_TRANSLATE_NOOP("Help", "water drink drinking hydration hyponatraemia sweat"),
    ),
    Topic(
        "sodium",
        QT_TRANSLATE_NOOP("Help", "Sodium"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Sodium in milligrams, from food, drink and capsules together; a gram of table salt "
            "holds 388. It makes food and drink go down better. It need not all be replaced, and "
            "it does not protect you if you drink too much.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Sum over the items; the check takes the most within two hours and strains above "
            "1000 mg an hour. One mmol is 22.99 mg.",
        ),
        (
            published(
                papers.HOFFMAN_2013,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "15 % of 669 finishers had low blood sodium, many of them after losing weight.",
                ),
            ),
            published(
                papers.HOFFMAN_2014,
                QT_TRANSLATE_NOOP("Help", "Sodium pills are not needed to keep enough water."),
            ),
            published(
                papers.TILLER_2019,
                QT_TRANSLATE_NOOP("Help", "More than 575 mg to the litre may be called for."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The 1000 mg, and 400 mg an hour to start from.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help", "High blood pressure, heart or kidney disease: ask your doctor first."
        ),
        see=("fluid", "figures are"),
        words=QT_TRANSLATE_NOOP("Help", "salt electrolytes capsules"),
    ),
    Topic(
        "caffeine",
        QT_TRANSLATE_NOOP("Help", "Caffeine"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Caffeine in milligrams from all items. Small doses late, when the night gets long, do "
            "more than one large one early. Half of it is still in you after about five hours. "
            "Food placed by the clock holds none unless you add it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "At most the lower of 3 mg per kg and 200 mg within an hour, and the lower of 6 mg per "
            "kg and 400 mg within 24 hours; the coffee before the start counts in.",
        ),
        (
            published(
                papers.EFSA_2015,
                QT_TRANSLATE_NOOP("Help", "200 mg at once and 400 mg a day for healthy adults."),
            ),
            published(
                papers.GUEST_2021, QT_TRANSLATE_NOOP("Help", "3 to 6 mg per kg help performance.")
            ),
            published(
                papers.IOM_2001,
                QT_TRANSLATE_NOOP("Help", "Half-life about 5 hours, 1.5 to 9.5 between people."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "Taking the lower of the two limits.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "For healthy adults only. Pregnant, under 18, with heart trouble, high blood pressure, "
            "anxiety or stimulant medicines: ask a doctor first.",
        ),
        see=("body mass", "fuel item", "caffeine in the body"),
        words=QT_TRANSLATE_NOOP("Help", "coffee cola stimulant dose"),
    ),
    Topic(
        "gut training",
        QT_TRANSLATE_NOOP("Help", "Training the gut"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Eating in training what you mean to eat in the race, a little more each week, until "
            "it goes down without trouble. It is the best known cure for the stomach problems "
            "that end long races.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Weeks needed: one for each 10 g/h between what you take now and the race rate, and "
            "two more at the race rate. From 40 to 80 g/h that is six.",
        ),
        (
            published(
                papers.COSTA_2017,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Two weeks: symptoms down by about 60 %, distance in a test up 4 to 5 %.",
                ),
            ),
            published(
                papers.MIALL_2018,
                QT_TRANSLATE_NOOP("Help", "Two weeks of 90 g/h in a daily hour: better absorbed."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "10 g/h a week, and two weeks at the race rate.")),
        ),
        see=("practice carbs", "gut", "carbs per hour"),
        words=QT_TRANSLATE_NOOP("Help", "stomach practise eating adaptation"),
    ),
    Topic(
        "carry",
        QT_TRANSLATE_NOOP("Help", "Carry, 15 % spare"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What to carry out of an aid station so that it lasts to the next, with a seventh to "
            "spare for a slower leg or a dropped gel. Carry no less than the race's rules say.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Rate times the time to the next station times 1.15; of the rate you asked for and "
            "the one your items give the higher counts.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "The 15 %.")),),
        see=("carbs per hour", "fluid", "aid station", "fuel card"),
        words=QT_TRANSLATE_NOOP("Help", "bottles pack spare leg drop bag"),
    ),
)

CHECKS: tuple[Topic, ...] = (
    Topic(
        "fuel target",
        QT_TRANSLATE_NOOP("Help", "Items against what was asked"),
        QT_TRANSLATE_NOOP(
            "Help", "Whether the items on the clock come to the carbohydrate per hour you set."
        ),
        QT_TRANSLATE_NOOP("Help", "Holds within 10 % of the rate, else it strains."),
        (CHOICE,),
        see=("carbs per hour", "placing fuel", "fuel", "after the finish"),
        words=QT_TRANSLATE_NOOP("Help", "band check too little too much"),
    ),
    Topic(
        "carbs practised",
        QT_TRANSLATE_NOOP("Help", "Race rate against what your gut is known to take"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A race is no place for a first try. If the race plan takes more than 10 g/h above "
            "what you take without trouble, practise first; the sentence says for how many weeks.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Carbs per hour of the race minus the rate in the form for race and runner."
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "The 10 g/h.")), published(papers.COSTA_2017)),
        see=("gut training", "carbs tolerated", "carbs per hour"),
        words=QT_TRANSLATE_NOOP("Help", "check practised tolerated"),
    ),
    Topic(
        "carb ceiling",
        QT_TRANSLATE_NOOP("Help", "How much can be absorbed"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One kind of sugar gets through the gut at about 60 g/h, glucose with fructose at "
            "about 90 in a trained gut. More than that lies in the stomach.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Strains above 60 g/h, of glucose alone or in all; breaks above 90 on average or above "
            "120 in any one hour. Of a mixed food two thirds count as glucose.",
        ),
        (
            published(papers.JEUKENDRUP_2014, QT_TRANSLATE_NOOP("Help", "60 and 90 g/h.")),
            published(
                papers.VIRIBAY_2020,
                QT_TRANSLATE_NOOP(
                    "Help", "120 g/h is the most that was tried: 20 elite runners, trained for it."
                ),
            ),
            published(papers.CURRELL_2008, QT_TRANSLATE_NOOP("Help", "The mixture of two to one.")),
            published(
                papers.ROWLANDS_2015,
                QT_TRANSLATE_NOOP("Help", "0.8 of fructose to 1 may be better still."),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help", "With hereditary fructose intolerance no fructose, no table sugar."
        ),
        see=("sugars", "carbs per hour", "gut training"),
        words=QT_TRANSLATE_NOOP("Help", "glucose fructose limit maximum check"),
    ),
    Topic(
        "carb advice",
        QT_TRANSLATE_NOOP("Help", "Advice for a race of this length"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the advice for so long a race is, and whether the plan reaches its lower end: "
            "30 to 90 g/h from three hours on, 45 to 60 from two, 30 to 45 from 75 minutes.",
        ),
        QT_TRANSLATE_NOOP("Help", "Read from a table by the finish time."),
        (
            published(papers.JEUKENDRUP_2014),
            published(papers.TILLER_2019),
            from_memory(
                papers.JEUKENDRUP_2014,
                QT_TRANSLATE_NOOP("Help", "Some of the rows under three hours."),
            ),
        ),
        see=("carbs per hour", "carb ceiling"),
        words=QT_TRANSLATE_NOOP("Help", "check duration recommendation"),
    ),
    Topic(
        "first bite",
        QT_TRANSLATE_NOOP("Help", "First bite"),
        QT_TRANSLATE_NOOP(
            "Help",
            "When you first take something. Start early, while the stomach is willing: within 30 "
            "to 45 minutes.",
        ),
        QT_TRANSLATE_NOOP("Help", "The time of the first item with carbohydrate."),
        (CHOICE,),
        see=("placing fuel", "carbs per hour"),
        words=QT_TRANSLATE_NOOP("Help", "start eating check"),
    ),
    Topic(
        "after the finish",
        QT_TRANSLATE_NOOP("Help", "Items after the finish"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Items whose time is later than the finish, mostly because the finish was moved. They "
            "count for nothing; take them out or place the fuel again.",
        ),
        QT_TRANSLATE_NOOP("Help", "Item time against the finish of the target."),
        (PLAN,),
        see=("fuel item", "placing fuel"),
    ),
)

ITEMS: tuple[Topic, ...] = (
    Topic(
        "fuel item",
        QT_TRANSLATE_NOOP("Help", "Fuel item"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Something you take at one moment of the race: a food, how many servings, and when. "
            "Race time counts from the gun; the place is where the target brings you by then.",
        ),
        QT_TRANSLATE_NOOP("Help", "Servings times what one serving holds."),
        (PLAN,),
        see=("servings", "placing fuel", "fuel", "food", "keeps"),
        words=QT_TRANSLATE_NOOP("Help", "token race time clock gel"),
    ),
    Topic(
        "servings",
        QT_TRANSLATE_NOOP("Help", "Servings"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How many of the food: 2 gels, half a sandwich, a quarter of a bottle. One serving is "
            "what the table of foods says it is.",
        ),
        QT_TRANSLATE_NOOP("Help", "An item gives its servings times what one serving has."),
        (PLAN,),
        see=("food", "fuel item"),
    ),
    Topic(
        "placing fuel",
        QT_TRANSLATE_NOOP("Help", "Placing fuel by the clock"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Puts items on the clock for you: a first bite, then one every so many minutes, none "
            "in the last 15 minutes. Gels and sweet things at first, from four hours on savoury "
            "ones too, broth from ten. What one time gives too much, the next gives less.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each time owes the rate times the minutes since the one before, in carbohydrate, "
            "fluid and sodium.",
        ),
        (
            choice(QT_TRANSLATE_NOOP("Help", "The whole rule.")),
            published(
                papers.TILLER_2019,
                QT_TRANSLATE_NOOP("Help", "In long races taste turns from sweet to savoury."),
            ),
        ),
        see=("first bite", "carbs per hour", "fuel item", "fuel target"),
        words=QT_TRANSLATE_NOOP("Help", "every minutes interval automatic slots"),
    ),
    Topic(
        "food",
        QT_TRANSLATE_NOOP("Help", "Food"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Something you can take in the race, with what one serving holds. Type what your own "
            "packets say over the figures; they then count as read from the packet.",
        ),
        sources=(
            published(papers.USDA_SR, QT_TRANSLATE_NOOP("Help", "Plain foods.")),
            practice(
                QT_TRANSLATE_NOOP(
                    "Help", "Gels, sports drinks and capsules: typical packets, from memory."
                )
            ),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help", "Allergies: the program does not know what is in your food. Read the packet."
        ),
        see=(
            *("servings", "net carbs", "sugars", "figures are", "food form", "food energy"),
            *("food weight", "your gut", "allergens", "pack", "carried food", "food at stations"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "foods serving one serving is"),
    ),
    Topic(
        "net carbs",
        QT_TRANSLATE_NOOP("Help", "Carbs of a serving"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Carbohydrate your gut can take up, in grams: fibre is left out, because it feeds "
            "nobody within a race.",
        ),
        QT_TRANSLATE_NOOP("Help", "Carbohydrate minus fibre, per serving."),
        (published(papers.USDA_SR),),
        see=("food", "carbs per hour", "sugars"),
        words=QT_TRANSLATE_NOOP("Help", "carbohydrate fibre grams"),
    ),
    Topic(
        "sugars",
        QT_TRANSLATE_NOOP("Help", "Sugars"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One kind is glucose, maltodextrin or starch; mixed is glucose and fructose together, "
            "as in fruit, honey, table sugar and mixed gels. They take two ways through the gut, "
            "so mixed foods allow more per hour.",
        ),
        QT_TRANSLATE_NOOP("Help", "Of a mixed food two thirds count as glucose."),
        (published(papers.JEUKENDRUP_2014), published(papers.CURRELL_2008)),
        QT_TRANSLATE_NOOP("Help", "Many people take fructose badly; find out in training."),
        see=("carb ceiling", "food"),
        words=QT_TRANSLATE_NOOP("Help", "glucose fructose mixed single"),
    ),
    Topic(
        "food energy",
        QT_TRANSLATE_NOOP("Help", "Energy of a serving"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Kilocalories of a serving. Nothing is planned by it: in a race carbohydrate is what "
            "counts, and nobody eats as much as they burn.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "About 4 kcal for a gram of carbohydrate or protein and 9 for one of fat."
        ),
        (published(papers.USDA_SR),),
        see=("net carbs", "food"),
        words=QT_TRANSLATE_NOOP("Help", "kcal calories"),
    ),
    Topic(
        "food weight",
        QT_TRANSLATE_NOOP("Help", "Weight of a serving"),
        QT_TRANSLATE_NOOP("Help", "What a serving weighs, in grams: what you have to carry."),
        sources=(published(papers.USDA_SR),),
        see=("carry", "food"),
    ),
    Topic(
        "food form",
        QT_TRANSLATE_NOOP("Help", "Form of a food"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Gel, drink, solid or salt: how it is carried and taken, and the shape of its token. "
            "Drinks count toward fluid first.",
        ),
        see=("food", "placing fuel"),
        words=QT_TRANSLATE_NOOP("Help", "shape gel drink solid"),
    ),
    Topic(
        "figures are",
        QT_TRANSLATE_NOOP("Help", "Where a food's figures are from"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Published: a food table, named beside it. From memory: a typical packet, to be typed "
            "over. From the packet: you typed it.",
        ),
        sources=(published(papers.USDA_SR),),
        see=("food", "net carbs"),
        words=QT_TRANSLATE_NOOP("Help", "source mark packet published memory"),
    ),
)

TOPICS = RATES + CHECKS + ITEMS

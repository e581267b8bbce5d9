"""Topics of the cards, and of what stands on them beside the plan."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import CHOICE, PLAN, Topic, from_memory, published

TOPICS: tuple[Topic, ...] = (
    Topic(
        "cards",
        QT_TRANSLATE_NOOP("Help", "Cards"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you carry, hang up or hand out. Choose cards, sizes and what is on them on the "
            "left; the desk shows them as they will be. All that says something is black, so that "
            "it reads in grey and under a red lamp. Print at 100 %, not fitted to the page.",
        ),
        see=(
            *("pace card", "fuel card", "crew sheet", "bag labels", "shopping and packing"),
            *("hard stretches", "who I am", "wall plan", "week sheets", "card size"),
            "last ten days",
            *("card contents", "card paper", "card light", "true size", "phone picture"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "print pdf preview paper"),
    ),
    Topic(
        "card size",
        QT_TRANSLATE_NOOP("Help", "Size of a card"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The finished size in millimetres, flat where it is folded. Print grows and shrinks "
            "with it within what can be read; what does not fit goes on to a second page, and the "
            "desk says so. Nothing is ever cut.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Small letters are at least 1.9 mm high on the wrist and 1.5 mm elsewhere.",
        ),
        (CHOICE,),
        see=("cards", "true size"),
        words=QT_TRANSLATE_NOOP("Help", "A6 A5 A4 letter width height mm"),
    ),
    Topic(
        "pace card",
        QT_TRANSLATE_NOOP("Help", "Pace card"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One row to each place: how far, climb and drop since the last, pace, when you are "
            "there on plan, your stop, time in hand, when you would be there half an hour late, "
            "the last arrival that still makes every cutoff, and the cutoff itself.",
        ),
        sources=(PLAN,),
        see=(
            *("section", "climb and drop", "target", "arrive", "planned stop", "time in hand"),
            *("30 late", "last arrival", "cutoff", "light"),
        ),
        words=QT_TRANSLATE_NOOP("Help", "print on plan"),
    ),
    Topic(
        "30 late",
        QT_TRANSLATE_NOOP("Help", "30 min late"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The clock if you come through half an hour behind plan. Two columns beside each "
            "other are easier to read on a bad day than a sum.",
        ),
        QT_TRANSLATE_NOOP("Help", "Arrival on plan plus 30 minutes."),
        (CHOICE,),
        see=("arrive", "last arrival", "pace card"),
        words=QT_TRANSLATE_NOOP("Help", "half an hour behind column"),
    ),
    Topic(
        "last arrival",
        QT_TRANSLATE_NOOP("Help", "Last arrival"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The latest you may arrive and still make this and every later cutoff at planned "
            "speed. Later than that, only going faster helps.",
        ),
        QT_TRANSLATE_NOOP("Help", "Arrival on plan plus time in hand, rounded down."),
        (PLAN,),
        see=("time in hand", "cutoff", "pace card"),
        words=QT_TRANSLATE_NOOP("Help", "latest column"),
    ),
    Topic(
        "fuel card",
        QT_TRANSLATE_NOOP("Help", "Fuel card"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One row to each leg between aid stations: how long it takes, what to eat and drink on "
            "it, carbohydrate in all and per hour, fluid, and whether a bag or your crew waits at "
            "its end. Items with caffeine carry the clock time they are meant for.",
        ),
        sources=(
            published(
                papers.HEW_BUTLER_2015,
                QT_TRANSLATE_NOOP("Help", "Why it says to drink to thirst."),
            ),
        ),
        see=("race carbs", "carbs per hour", "fluid", "servings", "running time", "what is there"),
        words=QT_TRANSLATE_NOOP("Help", "print leg food"),
    ),
    Topic(
        "crew sheet",
        QT_TRANSLATE_NOOP("Help", "Crew sheet"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the crew needs at every station they may come to: how to get there, when "
            "you are likely to come, what to hand over and what to ask, the way out if you stop, "
            "and who drives home. Fill in the rest under Edit, Crew and lists.",
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Whoever was up all night does not drive. The red flags on the sheet are "
            "reasons to stop you.",
        ),
        see=("no news", "what is there", "crew and lists", "finish window"),
        words=QT_TRANSLATE_NOOP("Help", "print crew support station driver"),
    ),
    Topic(
        "no news",
        QT_TRANSLATE_NOOP("Help", "No news is good news"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Two times for those who wait. Before the first, not having seen you says "
            "nothing. After the second they ask the station whether you have been through.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The first is the end of your arrival window, which one day in ten runs past. "
            "The second is as much later again as from the middle of the window to its end, "
            "half an hour at least, and no later than a cutoff in between.",
        ),
        (CHOICE,),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "If someone is known to be hurt or lost, call the race emergency line at once.",
        ),
        see=("crew sheet",),
        words=QT_TRANSLATE_NOOP("Help", "worry late search missing"),
    ),
    Topic(
        "bag labels",
        QT_TRANSLATE_NOOP("Help", "Bag labels"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One label for each drop bag: the station in large letters, your name and "
            "number, what is inside and what to do there. Foods are those of the plan up to "
            "the next bag.",
        ),
        see=("what is there", "crew and lists", "fuel card"),
        words=QT_TRANSLATE_NOOP("Help", "print drop bag contents"),
    ),
    Topic(
        "shopping and packing",
        QT_TRANSLATE_NOOP("Help", "To buy and to pack"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Boxes to tick: the kit the race rules ask for, what you pack besides, what "
            "goes into each bag, and what to buy. Foods are counted over the whole race "
            "plan.",
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Read the race rules yourself: kit lists change, and a missing piece can end a race.",
        ),
        see=("bag labels", "crew and lists", "mandatory kit"),
        words=QT_TRANSLATE_NOOP("Help", "print list mandatory kit shop"),
    ),
    Topic(
        "hard stretches",
        QT_TRANSLATE_NOOP("Help", "Hard stretches"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Your own words for when it gets hard, put down while you can think: what may "
            "come, what you will do then, and short words to yourself.",
        ),
        sources=(
            from_memory(
                papers.GOLLWITZER_2006,
                QT_TRANSLATE_NOOP(
                    "Help", "If-then plans are carried out more often than good intentions."
                ),
            ),
        ),
        see=("when it gets hard", "crew and lists", "head"),
        words=QT_TRANSLATE_NOOP("Help", "if then mental cues low point print"),
    ),
    Topic(
        "who I am",
        QT_TRANSLATE_NOOP("Help", "Who I am"),
        QT_TRANSLATE_NOOP(
            "Help",
            "For a stranger who finds you: your name, whom to call, the race emergency "
            "line, what a doctor should know, and how you get away from each station if you "
            "stop there.",
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "It stays on your computer and on the paper you print. Print it only if you "
            "want others to read it.",
        ),
        see=("crew and lists", "red flags"),
        words=QT_TRANSLATE_NOOP("Help", "emergency contact medical identity print"),
    ),
    Topic(
        "wall plan",
        QT_TRANSLATE_NOOP("Help", "Wall plan"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The whole build-up on one large sheet: a row to each week counted down to the "
            "race, a box to each session, hard days with a heavy edge, room to tick. Where "
            "the printer takes smaller paper it comes in parts to be glued, each a "
            "centimetre over the last.",
        ),
        see=("weekly distance", "week sheets"),
        words=QT_TRANSLATE_NOOP("Help", "print poster block"),
    ),
    Topic(
        "week sheets",
        QT_TRANSLATE_NOOP("Help", "Week sheets"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A sheet to each week from this one on: what is planned, and boxes and lines "
            "for what was done. Type it back in from the Build-up menu, in the same order.",
        ),
        see=("type a week back", "wall plan"),
        words=QT_TRANSLATE_NOOP("Help", "print log diary"),
    ),
    Topic(
        "last ten days",
        QT_TRANSLATE_NOOP("Help", "The last ten days"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The countdown of the table Before the start on paper, a box to each line: sessions "
            "of the taper, sleep, food, kit, feet, bags, travel, the morning, and your own lines. "
            "A second sheet has the days after: red flags, rest, when to run again.",
        ),
        see=("before the start", "mandatory kit"),
        words=QT_TRANSLATE_NOOP("Help", "race week countdown checklist print"),
    ),
    Topic(
        "type a week back",
        QT_TRANSLATE_NOOP("Help", "Typing a week back in"),
        QT_TRANSLATE_NOOP(
            "Help",
            "One row to each session of a week in the order of the week sheet. Enter goes "
            "to the next field, and at the end sends the week as one step that can be "
            "undone. A field left empty is taken as planned; a row nobody touched stays as "
            "it is.",
        ),
        see=("week sheets",),
        words=QT_TRANSLATE_NOOP("Help", "log done enter keyboard"),
    ),
    Topic(
        "crew and lists",
        QT_TRANSLATE_NOOP("Help", "Crew and lists"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Everything beside running: who you are, the crew and who drives home, what "
            "happens at each station, the kit the rules ask for, lists, and your own words "
            "for hard stretches. It stands on the cards and changes no figure of the plan.",
        ),
        see=("crew sheet", "bag labels", "shopping and packing", "hard stretches", "who I am"),
        words=QT_TRANSLATE_NOOP("Help", "form contact emergency kit bag"),
    ),
    Topic(
        "card contents",
        QT_TRANSLATE_NOOP("Help", "What is on a card"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How often it is printed, in which units, in which language numbers and days "
            "are written, and which columns or lines stand on it. What you leave out makes "
            "room for larger print.",
        ),
        see=("cards", "card size"),
        words=QT_TRANSLATE_NOOP("Help", "copies units language columns"),
    ),
    Topic(
        "card paper",
        QT_TRANSLATE_NOOP("Help", "Paper"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each card can be a page of its own, or several lie on one sheet with lines to "
            "cut along. With backs behind fronts the second page of a card lies behind its "
            "first; turn the paper on its long edge.",
        ),
        see=("cards",),
        words=QT_TRANSLATE_NOOP("Help", "several sheet duplex both sides cut"),
    ),
    Topic(
        "card light",
        QT_TRANSLATE_NOOP("Help", "Light on the cards"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Shows the cards by day, as a grey printer gives them, or as a red lamp shows "
            "them. Only the picture on the screen changes.",
        ),
        see=("cards",),
        words=QT_TRANSLATE_NOOP("Help", "red lamp night grey preview"),
    ),
    Topic(
        "true size",
        QT_TRANSLATE_NOOP("Help", "True size"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Shows cards on the screen as large as they are printed. Screens often say "
            "wrongly how large they are: lay a bank card on the outline once and match it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "A bank card measures 85.60 by 53.98 mm. What you set is kept for each screen.",
        ),
        (from_memory(papers.ISO_7810),),
        see=("cards", "card size"),
        words=QT_TRANSLATE_NOOP("Help", "calibrate scale bank card millimetre"),
    ),
    Topic(
        "phone picture",
        QT_TRANSLATE_NOOP("Help", "A card for a lock screen"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A card as a picture of exactly the pixels of your telephone, with room for its "
            "clock. White on black spares your eyes and the battery at night.",
        ),
        see=("cards",),
        words=QT_TRANSLATE_NOOP("Help", "png image phone wallpaper"),
    ),
)

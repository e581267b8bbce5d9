"""Topics of living with the build-up: this week, missed days, wishes, health, many sessions."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
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
        "this week",
        QT_TRANSLATE_NOOP("Help", "This week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Seven days with what was planned and what was done side by side. D marks a session "
            "done as planned, C opens a short form with the plan already in it, M marks it "
            "missed, U takes the mark back. A star marks the two sessions to keep if the week "
            "falls apart: the long run, then what is most specific to the race.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "Load is effort times minutes, of what was done or else of the plan."
        ),
        (practice(QT_TRANSLATE_NOOP("Help", "Which two to keep is a rule of the trade.")),),
        see=("done or missed", "load", "missed days"),
        words=QT_TRANSLATE_NOOP("Help", "today glance log diary"),
    ),
    Topic(
        "missed days",
        QT_TRANSLATE_NOOP("Help", "Days missed, and mending"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Say which days you missed and why. Two or three ways to mend the build-up come side "
            "by side, each with the sessions it changes and what it costs; the one you look at is "
            "shown in the grid. Nothing that was missed is made up later.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "As few sessions as possible are changed so that the rules hold again. Proven means "
            "that a search found no way with fewer. A cost with a minus is distance lost.",
        ),
        (
            practice(
                QT_TRANSLATE_NOOP(
                    "Help", "How to take up running again after a break has no trial."
                )
            ),
            published(
                papers.MUJIKA_PADILLA_2000,
                QT_TRANSLATE_NOOP("Help", "What a break of some weeks takes."),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "With fever, chest symptoms or aches all over nothing is planned: rest and ask. After "
            "an injury whoever treats it decides when running is allowed.",
        ),
        see=("red flags", "this week", "checks"),
        words=QT_TRANSLATE_NOOP("Help", "ill injured holiday repair mend break return"),
    ),
    Topic(
        "health",
        QT_TRANSLATE_NOOP("Help", "Questions on health"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Before the first block: does anything speak for asking a doctor first? The published "
            "questionnaire PAR-Q+ asks it best; it must be used whole and is not repeated here. "
            "Only yes or no is kept, in the project file and nowhere else.",
        ),
        sources=(
            from_memory(papers.RIEBE_2015),
            choice(QT_TRANSLATE_NOOP("Help", "The wording is ours and wants medical review.")),
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help", "This plan is arithmetic on what you typed. It does not examine you."
        ),
        see=("red flags", "wishes"),
        words=QT_TRANSLATE_NOOP("Help", "doctor heart screening questionnaire"),
    ),
    Topic(
        "wishes",
        QT_TRANSLATE_NOOP("Help", "Wishes"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the build-up is to hold besides running, how often a week is cut back and how "
            "the weeks after it grow. A builder keeps to it as far as the rules allow and names "
            "what gives way. Strength lies on days with time to run, beyond it where that is full.",
        ),
        sources=(PRACTICE,),
        caution=QT_TRANSLATE_NOOP(
            "Help",
            "Fasted runs are easy and short only, and not for everybody; heat days never alone. "
            "Both stay off until the questions on health are answered with no.",
        ),
        see=(
            *("health", "cutback", "weekly distance", "fasted", "mental rehearsal", "heat days"),
            "days away",
        ),
        words=QT_TRANSLATE_NOOP("Help", "strength cross-training back-to-back night heat fasted"),
    ),
    Topic(
        "figures of the runner",
        QT_TRANSLATE_NOOP("Help", "Hours, drop and climbing speed"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Time on feet of a usual week, how long your longest run of the last 30 days took "
            "and what it dropped, and how many metres you climb in an hour at easy effort. Left "
            "empty, distance and easy pace stand in for them. Unless you choose, the ramp counts "
            "hours where the race climbs over 30 m per km and your hours are given, else distance.",
        ),
        sources=(PRACTICE,),
        see=("usual week", "longest lately", "easy pace"),
        words=QT_TRANSLATE_NOOP("Help", "volume hours vertical speed flat-equivalent yardstick"),
    ),
    Topic(
        "days away",
        QT_TRANSLATE_NOOP("Help", "Days away"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Days on which no run fits, or less of one than usual: travel, holidays, shifts. "
            "What is built anew keeps to them; what stands already is left alone.",
        ),
        sources=(PLAN,),
        see=("free minutes", "missed days"),
        words=QT_TRANSLATE_NOOP("Help", "travel holiday no-run dates availability"),
    ),
    Topic(
        "several sessions",
        QT_TRANSLATE_NOOP("Help", "Hands on sessions"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Drag a tile to move it, with Ctrl to copy it, its right edge to make it longer; draw "
            "a box over empty days to select. Ctrl and click adds one, Shift and click all "
            "between. Ctrl+arrows move, Alt+left and right shorten and lengthen, Shift+arrows "
            "select on. Type 12 or 1 h 30 over a tile, or T and long 28. S swaps two, L locks, K "
            "opens the shelf of kinds, Ctrl+X, C and V cut, copy and paste.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Made longer, a session keeps its pace and its climb per kilometre. Each deed is one "
            "step that can be undone.",
        ),
        (PLAN,),
        see=("day grid", "this week", "checks"),
        words=QT_TRANSLATE_NOOP("Help", "drag copy paste repeat swap lock select keys shelf kinds"),
    ),
    Topic(
        "mend",
        QT_TRANSLATE_NOOP("Help", "Mends"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A line underlined beneath a check says what would put it right; a click, or Enter on "
            "it, does that as one step. Where a dragged session breaks a rule and the hand rests, "
            "the nearest day that would hold is looked for, else a run to change places with; "
            "where an edge is drawn too far, a length that would hold. H does it.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "What is offered breaks no rule for the session and leaves no other rule worse than "
            "before the drag; a day has time enough free and no other run.",
        ),
        (PLAN,),
        see=("checks", "missed days"),
        words=QT_TRANSLATE_NOOP("Help", "repair fix suggestion nearest day"),
    ),
    Topic(
        "longest run of the week",
        QT_TRANSLATE_NOOP("Help", "Longest run, and the 30 days before it"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The longest run of the week, planned or done, and the longest of the 30 days before "
            "it: the first should exceed the second by 10 % at most. Before 30 days lie behind, "
            "the longest run you entered counts.",
        ),
        sources=(
            published(
                papers.FRANDSEN_2025,
                QT_TRANSLATE_NOOP("Help", "Observed in 5205 runners; no trial."),
            ),
        ),
        see=("single run", "long-run share"),
        words=QT_TRANSLATE_NOOP("Help", "reference 30-day"),
    ),
    Topic(
        "candidate races",
        QT_TRANSLATE_NOOP("Help", "Races to pick from"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Several races side by side: the weeks there are against the weeks needed, what can "
            "be reached by then of what each asks, climb per km, hours in the dark, and between "
            "cutoffs the pace of level ground they ask against the one you are likely to run.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The likely finish keeps four fifths of your easy speed, with a metre of climb as "
            "eight along; between cutoffs your speed fades as on race day.",
        ),
        (
            published(
                papers.SCARF_2007,
                QT_TRANSLATE_NOOP("Help", "A metre of climb as eight along."),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "That four fifths of easy speed are kept.")),
        ),
        see=("runway", "what the race asks", "usual week"),
        words=QT_TRANSLATE_NOOP("Help", "candidate choose compare race date"),
    ),
    Topic(
        "ground at hand",
        QT_TRANSLATE_NOOP("Help", "Ground at hand"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What there is to train on where you live, and sessions on it that stand in for a "
            "stretch of the race: how often, at what gradient, how long, climb and drop in all. "
            "What cannot be matched is said, with what to do instead.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Match compares the time on feet by class of gradient: 100 % is the same shares, 0 "
            "nothing in common. Of the stretch says how much of it one session stands for.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "No trial says how alike training must be.")),),
        QT_TRANSLATE_NOOP(
            "Help",
            "Begin with few descents and few step-downs: the quads need days to get over it.",
        ),
        see=("ground", "downhill run", "climb and drop", "template block"),
        words=QT_TRANSLATE_NOOP("Help", "treadmill stairs hill ramp flat stand-in similar"),
    ),
    Topic(
        "template block",
        QT_TRANSLATE_NOOP("Help", "Template block"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A build-up kept in a file of its own, without its runner, marks and notes, to be "
            "laid into another plan: weeks to go and weekdays stay, distances are taken as they "
            "are or scaled so that the block begins at the other runner's usual week, times follow "
            "the easy pace. What was done, what is locked, and races on the way stay.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Scaled by usual week over usual week, between 0.4 and 1.5. Every rule is checked "
            "again for the runner it is laid in for, before anything changes.",
        ),
        (choice(QT_TRANSLATE_NOOP("Help", "How far a template is scaled.")),),
        QT_TRANSLATE_NOOP(
            "Help",
            "A block that suited one runner can hurt another. It knows nothing of health, of days "
            "without time or of ground at hand: look at each week.",
        ),
        see=("building a block", "checks", "usual week", "several plans"),
        words=QT_TRANSLATE_NOOP("Help", "coach reuse another runner athlete copy block file"),
    ),
)

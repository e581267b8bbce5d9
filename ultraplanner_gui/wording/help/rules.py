"""Topics of the rules a build-up is held against."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import (
    PRACTICE,
    Topic,
    choice,
    practice,
    published,
)

TOPICS: tuple[Topic, ...] = (
    Topic(
        "ramp",
        QT_TRANSLATE_NOOP("Help", "Ramp: 10 % a week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A loading week may be 10 % larger than the last loading week. It is a custom that "
            "keeps plans sane; that it prevents injury has not been shown.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "This week's distance against 1.10 times that of the last loading week; strains to "
            "1.20 times, breaks beyond.",
        ),
        (
            published(
                papers.BUIST_2008,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Trial in 532 beginners: 20.8 % injured with the 10 % rule, 20.3 % without.",
                ),
            ),
            published(
                papers.FRANDSEN_2025,
                QT_TRANSLATE_NOOP(
                    "Help", "5205 runners: weekly growth had nothing to do with injury."
                ),
            ),
            practice(QT_TRANSLATE_NOOP("Help", "Weakly supported custom.")),
        ),
        see=("single run", "of last loading week", "cutback", "weekly distance"),
        words=QT_TRANSLATE_NOOP("Help", "ten percent rule growth increase check"),
    ),
    Topic(
        "single run",
        QT_TRANSLATE_NOOP("Help", "Single run: 10 % over your longest"),
        QT_TRANSLATE_NOOP(
            "Help",
            "No single run should be more than 10 % longer than the longest of the 30 days before "
            "it. Of all the growth rules this one is best supported, so keep to it before the "
            "others.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The run's distance against 1.10 times the longest run of the 30 calendar days before "
            "its day. Until the first 30 days are over, the longest run you gave in the form "
            "counts as well.",
        ),
        (
            published(
                papers.FRANDSEN_2025,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "5205 runners over 18 months: 10 to 30 % longer, 1.6 times the injuries; more "
                    "than twice as long, 2.3 times. Seen, not tried out.",
                ),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help", "A race or a club run you did not plan can be the jump that hurts."
        ),
        see=(
            "longest run",
            "longest lately",
            "long run",
            "ramp",
            "hours of one run",
            "drop of one run",
        ),
        words=QT_TRANSLATE_NOOP("Help", "thirty days longest jump spike check"),
    ),
    Topic(
        "cutback",
        QT_TRANSLATE_NOOP("Help", "Cutback week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A planned lighter week, every fourth as a rule, to recover and to leave room for a "
            "missed day. Its bar is paler. Growth goes on from the last loading week, not from "
            "the cutback.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Holds with 60 to 80 % of the last loading week, and when no more than three loading "
            "weeks follow each other. The week after a long tune-up race may be lighter still.",
        ),
        (practice(QT_TRANSLATE_NOOP("Help", "No trial in runners was found.")),),
        see=("ramp", "of last loading week", "missed training", "taper"),
        words=QT_TRANSLATE_NOOP("Help", "recovery week deload step back easy week"),
    ),
    Topic(
        "hard days",
        QT_TRANSLATE_NOOP("Help", "Hard days apart"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Two hard sessions should not fall on one day or on days side by side. A back-to-back "
            "after a long run is meant that way; a hard day after it is not. Long, rehearsal, "
            "hill, downhill and tempo runs, intervals and tune-up races count as hard.",
        ),
        QT_TRANSLATE_NOOP("Help", "Days between hard sessions that were not missed."),
        (PRACTICE,),
        see=("effort", "back-to-back", "tune-up race"),
        words=QT_TRANSLATE_NOOP("Help", "easy day between check rest"),
    ),
    Topic(
        "long-run share",
        QT_TRANSLATE_NOOP("Help", "Longest, share of the week"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How much of the week lies in its longest run. If it is most of the week, the other "
            "days do not carry it. With three runs a week none can be much under half, so the "
            "limits are wider then.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Longest run over the distance of the week. With three runs or fewer up to 55 % holds, "
            "with four 50 %, with five 45 %, with more 40 %, and in any week what the race asks at "
            "your level: 58 % just enough, 50 % usual, 43 % ambitious. 10 % beyond strains; a "
            "rehearsal run or a tune-up race never breaks.",
        ),
        (
            practice(
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Road custom is 25 to 30 %, which nobody has tested; ultrarunners on three "
                    "to five days a week run 35 to 50 %. The thresholds are our own.",
                )
            ),
        ),
        see=("longest run", "weekly distance", "single run"),
        words=QT_TRANSLATE_NOOP("Help", "percent of the week check"),
    ),
    Topic(
        "taper",
        QT_TRANSLATE_NOOP("Help", "Taper"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The last weeks before the race, in which you run less and keep a little speed, so "
            "that you start rested: two weeks for a race under 12 hours, three for a longer one, "
            "race week included.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "The cut is one minus the daily mean of the taper days, race day left out, over that "
            "of the last loading week. 41 to 60 % holds. A built block runs 65 and 35 % of the "
            "last loading week, or 76, 46 and 28 %.",
        ),
        (
            published(
                papers.BOSQUET_2007,
                QT_TRANSLATE_NOOP(
                    "Help", "27 studies of shorter events: two weeks, 41 to 60 % less, same speed."
                ),
            ),
            published(
                papers.SMYTH_2021,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Of 158,000 marathoners those with a strict three-week taper were 2.6 % "
                    "faster; seen, not tried out.",
                ),
            ),
            choice(
                QT_TRANSLATE_NOOP(
                    "Help",
                    "That the cut is the mean over the taper, and the weekly shares. No trial of a "
                    "taper for ultramarathons was found.",
                )
            ),
        ),
        see=("cutback", "downhill", "weeks to go"),
        words=QT_TRANSLATE_NOOP("Help", "rest before the race last weeks"),
    ),
    Topic(
        "downhill",
        QT_TRANSLATE_NOOP("Help", "Hardening the quads to descents"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Running downhill wears the thighs; having done it before is the best protection. For "
            "a race that drops more than 1000 m a downhill run comes every second week or so, and "
            "the last one neither too early nor too late. A tune-up race that drops 500 m or more "
            "counts as one.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Holds when no more than 21 days lie between two downhill runs and the last is 10 to "
            "21 days before the race. No session drops more than 1.2 times the most of the 30 days "
            "before.",
        ),
        (
            published(
                papers.BONTEMPS_2020,
                QT_TRANSLATE_NOOP(
                    "Help", "Earlier descents protect, and those least used to them are hurt most."
                ),
            ),
            published(
                papers.KHASSETARASH_2022,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "A second half hour at -20 %, three weeks after the first, cost less soreness "
                    "and strength (10 runners).",
                ),
            ),
            published(
                papers.MILLET_2011,
                QT_TRANSLATE_NOOP(
                    "Help", "After 166 km with 9500 m of climb thigh strength was 35 % lower."
                ),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "The spacing in days and the step of 1.2.")),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Expect soreness for one to three days after the first ones. Dark urine, much swelling "
            "or weakness: stop and see a doctor the same day.",
        ),
        see=("downhill run", "weekly climb", "taper", "late descent"),
        words=QT_TRANSLATE_NOOP("Help", "quads thighs eccentric soreness descent check"),
    ),
    Topic(
        "what the race asks",
        QT_TRANSLATE_NOOP("Help", "What the race asks"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How large your largest week and how long your longest run should get for this race: "
            "what is asked beside what is planned. Of three levels the lowest is for "
            "finishing inside the cutoffs. Long hilly races go by hours rather than kilometres.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Read from a table by the length of the race: for 100 km a week of 60, 90 or 130 km "
            "and a run of 35, 45 or 55 km. The hours of the same table are a second limit; beyond "
            "36 hours, or with more than 50 m of climb to the kilometre, they count alone. Planned "
            "holds from 97 % of what is asked, strains from 80 %.",
        ),
        (
            practice(
                QT_TRANSLATE_NOOP("Help", "These are ranges coaches use; no trial sets them.")
            ),
            published(
                papers.HOFFMAN_FOGARD_2011,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "In a 161 km race volume was not what kept people from finishing; nausea was "
                    "the main reason (23 %).",
                ),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help", "If your body says no, a smaller plan and a shorter race are good plans."
        ),
        see=("level", "runway", "longest run", "weekly distance"),
        words=QT_TRANSLATE_NOOP("Help", "peak week largest week longest run asked required"),
    ),
    Topic(
        "missed training",
        QT_TRANSLATE_NOOP("Help", "Missed training"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What is missed is not made up later: the sessions that follow stay as they are. A "
            "loading week that came to less than 80 % because of missed sessions sets no "
            "yardstick for the next.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Two low weeks in a row lower the yardstick for growth to 80 %, three to 65 %, four "
            "to 50 %. A long gap also empties the 30 days of the single-run rule.",
        ),
        (
            PRACTICE,
            published(
                papers.FEELY_2023,
                QT_TRANSLATE_NOOP(
                    "Help",
                    "Seven days or more without running in the last 16 weeks: 5 to 8 % slower in "
                    "the marathon, the same runners compared.",
                ),
            ),
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "No training with fever, chest symptoms or aches all over. After an injury ask whoever "
            "treated you before you run.",
        ),
        see=("of last loading week", "done or missed", "single run"),
        words=QT_TRANSLATE_NOOP("Help", "ill illness injury holiday gap break"),
    ),
)

"""Topics for the head, and of the last days."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import PLAN, PRACTICE, Topic, choice, published

TOPICS: tuple[Topic, ...] = (
    Topic(
        "head",
        QT_TRANSLATE_NOOP("Help", "For the head"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What to picture beforehand, lines for hard hours, worries with what is done about "
            "each, and what counts on a good, a fair and a hard day. Made from the plan, taken "
            "only where you say so. There are no scores and no promises in it.",
        ),
        see=("to picture", "if-then lines", "worries", "three kinds of day", "hard stretches"),
        words=QT_TRANSLATE_NOOP("Help", "mental mind nerves fear psychology"),
    ),
    Topic(
        "to picture",
        QT_TRANSLATE_NOOP("Help", "To picture"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Stretches of this race to go through beforehand: the longest one alone, the dark "
            "hours, the great climbs, the heat of the day, the last third, and until when it "
            "should feel easy. Sessions marked for it share them between them.",
        ),
        QT_TRANSLATE_NOOP(
            "Help",
            "Places and hours are those of the target; easy is the first third of the time, the "
            "last third is of the distance.",
        ),
        (
            published(
                papers.HOLMES_COLLINS_2001,
                QT_TRANSLATE_NOOP("Help", "Imagery that is like the real thing."),
            ),
            published(
                papers.MCCORMICK_2018,
                QT_TRANSLATE_NOOP(
                    "Help", "Talking to oneself did not make runners of 60 miles faster."
                ),
            ),
            choice(QT_TRANSLATE_NOOP("Help", "Which stretches, and the words.")),
        ),
        see=("head", "target", "light"),
        words=QT_TRANSLATE_NOOP("Help", "imagery visualise picture rehearsal"),
    ),
    Topic(
        "if-then lines",
        QT_TRANSLATE_NOOP("Help", "If-then lines"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What you do when it gets hard, written down before: if this happens, then I do that. "
            "The plan proposes some for its climbs, heat, dark, long stops and close cutoffs. "
            "Try each in a run; five to eight are enough.",
        ),
        "",
        (
            published(
                papers.GOLLWITZER_2006,
                QT_TRANSLATE_NOOP(
                    "Help", "94 tests; of all kinds of goals, few of them in long races."
                ),
            ),
            PRACTICE,
        ),
        QT_TRANSLATE_NOOP(
            "Help", "No line is for red flags: confused, faint or chest pain means stop and help."
        ),
        see=("head", "hard stretches", "red flags"),
        words=QT_TRANSLATE_NOOP("Help", "implementation intention plan hard quit"),
    ),
    Topic(
        "worries",
        QT_TRANSLATE_NOOP("Help", "Worries"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What goes round in the head at night, and what is done about it. One with nothing "
            "done about it strains; the check wants a thing to do, not courage.",
        ),
        "",
        (PRACTICE, choice(QT_TRANSLATE_NOOP("Help", "That an open worry strains."))),
        QT_TRANSLATE_NOOP(
            "Help",
            "Anxiety or low mood that lasts, or sleepless weeks, are for a doctor or therapist.",
        ),
        see=("head", "before the start"),
        words=QT_TRANSLATE_NOOP("Help", "anxiety fear nerves sleep"),
    ),
    Topic(
        "three kinds of day",
        QT_TRANSLATE_NOOP("Help", "Good, fair and hard day"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Three goals for one race, so that no day is lost: what counts if all goes well, if "
            "it goes as usual, and if it does not. Type your own, or leave what is reckoned.",
        ),
        QT_TRANSLATE_NOOP(
            "Help", "10th, 50th and 90th percentile of 10,000 simulated races about the forecast."
        ),
        (PLAN, PRACTICE),
        see=("head", "finish window", "odds"),
        words=QT_TRANSLATE_NOOP("Help", "goals A B C target"),
    ),
    Topic(
        "mandatory kit",
        QT_TRANSLATE_NOOP("Help", "Mandatory kit"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What the rules of the race ask you to have with you, ticked with where it is: on the "
            "body, in the vest, or in the bag of a station. What is not ticked in the last ten "
            "days strains.",
        ),
        "",
        (PLAN,),
        QT_TRANSLATE_NOOP("Help", "The rules of the race count, in the words of its organisers."),
        see=("before the start", "shopping and packing"),
        words=QT_TRANSLATE_NOOP("Help", "equipment gear list check packed vest bag"),
    ),
)

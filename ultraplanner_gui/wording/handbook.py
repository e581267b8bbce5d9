"""The handbook: the job in ten steps, then every topic of the help, custom and support, cautions.

Nothing is said twice: all but the ten steps is what the help says anyway.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording import cautions
from ultraplanner_gui.wording.help import topics
from ultraplanner_gui.wording.help.topic import Mark, Topic

CONTEXT = "Handbook"


class Step(Value, frozen=True):
    """One step of the job: what one does, its picture, and the topics that say more.

    Texts are marked in the context "Handbook"; `picture` is the name of a file in
    `resources/handbook`.
    """

    title: str
    texts: tuple[str, ...]
    picture: str
    see: tuple[str, ...] = ()


STEPS: tuple[Step, ...] = (
    Step(
        QT_TRANSLATE_NOOP("Handbook", "1. Drop the course"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Drag the GPX file of your race on the window, or take File, New from a course. "
                "Without a file, type the table of the race's handbook: places, distances, "
                "cutoffs.",
            ),
            QT_TRANSLATE_NOOP(
                "Handbook",
                "One form opens over it. It asks when the race is and what you run now; each field "
                "where you may not know the answer proposes a careful one and says why. Nothing "
                "in it is for ever: Edit, Race and runner shows it again.",
            ),
        ),
        "form",
        ("welcome", "course", "usual week", "finish aimed for"),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "2. See whether there is time"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "The runway in the header counts the weeks there are and the weeks that are "
                "needed to grow from what you run now to what the race asks, cutback weeks and "
                "taper included. If it is too short it says what binds: the weekly distance or "
                "the long run.",
            ),
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Edit, Races to pick from lays several races side by side: their ground, their "
                "likely finish, their cutoffs, and the runway each leaves you.",
            ),
        ),
        "candidates",
        ("runway",),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "3. Read the build-up"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "The upper storey is your training. Each column is a week, counted down to the "
                "race; each tile is a session with its kind, its length and the ground it is run "
                "on. The lanes above it show what a week adds up to: distance, longest run, climb "
                "and drop, practice carbs.",
            ),
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Select a tile and the ledger on the right says what it is for, how hard it "
                "should feel, and which rule it touches. A rule holds, strains or breaks; its "
                "source stands beside it.",
            ),
        ),
        "sheet",
        ("build-up", "checks", "ledger"),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "4. Move what does not fit your life"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Drag a session to another day or week; with Ctrl you drag a copy. Drag its right "
                "edge to make it longer. While it hangs from the pointer every figure shows what "
                "it would become beside what it is; Esc puts it back. Where the move breaks a "
                "rule the ledger names a day that would hold.",
            ),
            QT_TRANSLATE_NOOP(
                "Handbook",
                "By keys: arrows choose a session, Enter picks it up, arrows carry it, Enter puts "
                "it down. Every step can be undone.",
            ),
        ),
        "dragging",
        ("several sessions",),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "5. Live with it"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Mark what was done, changed or missed with Ctrl+T, a key each. What is missed is "
                "not made up: after a cold or a week away, Build-up, I missed these days finds "
                "the smallest change that keeps the rules, and offers it.",
            ),
        ),
        "week",
        ("this week", "done or missed"),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "6. Set the targets"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "The lower storey is race day. The forecast is what runners of your finish do: "
                "start fast and fade. The target is yours, more even by default. Drag the top of "
                "a section to make it faster or slower, its edge to move where it ends.",
            ),
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Stations move by their names, stops by the end of their bars, the start by its "
                "name or by the light. All snap to climbs and round figures; hold Alt and nothing "
                "does. Two tips under the names fold a leg away.",
            ),
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Time in hand tells how much later you could be and still make every cutoff; the "
                "walk-in limit, from where walking the rest would do, if you are well. Type the "
                "cutoffs and stops under Tables, Aid stations.",
            ),
        ),
        "race",
        ("target", "time in hand", "walk-in limit", "odds"),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "7. Lay out the fuel"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Fuel, Fuel per hour sets the rates; then the foods you know are laid out by the "
                "clock, by a rule, or so that the hours reach the target with what your stations "
                "have. Drag a token to another time; the totals by the hour, the fluid and the "
                "glycogen follow.",
            ),
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Practise it: the practice lane shows what the long runs ask your gut to take, "
                "growing toward the race.",
            ),
        ),
        "fuel",
        ("fuel", "carbs per hour", "glycogen", "practice carbs"),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "8. Prepare the head and the crew"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Edit, For the head has what to picture, lines for when it gets hard, worries and "
                "what is done about each, and a good, a fair and a hard day. Edit, Crew and "
                "lists names who is where, what they hand over and ask, and who drives home. "
                "The table Before the start counts down from ten days to the gun.",
            ),
        ),
        "crew",
        ("head", "hard stretches", "crew and lists", "crew sheet"),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "9. Print what you carry"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Under Cards choose what you want on paper: pace, fuel, crew, bags, lists, hard "
                "stretches. Each has its size and form, flat, folded or around the wrist, and "
                "shows whether it can be read while running and under a red lamp. Print a test "
                "page once and measure it.",
            ),
        ),
        "cards",
        ("cards",),
    ),
    Step(
        QT_TRANSLATE_NOOP("Handbook", "10. Learn from it"),
        (
            QT_TRANSLATE_NOOP(
                "Handbook",
                "Open the recordings of your runs: the pace model is fitted to you, with the "
                "error it had on runs it did not see, and is used only if you say so. After the "
                "race, finished or not, the table After the race says how long to rest and what "
                "to watch for.",
            ),
        ),
        "tables",
        ("recordings", "looking back", "lessons", "fit from my runs", "after the race"),
    ),
)

SUPPORT: tuple[tuple[Mark, str], ...] = (
    (
        Mark.PUBLISHED,
        QT_TRANSLATE_NOOP("Handbook", "Rests on published measurements, named at the topic."),
    ),
    (
        Mark.MEMORY,
        QT_TRANSLATE_NOOP(
            "Handbook", "Published, but its value was not looked up again in the paper."
        ),
    ),
    (
        Mark.PRACTICE,
        QT_TRANSLATE_NOOP(
            "Handbook",
            "Custom: what coaches and runners do. That it is common does not show that it works.",
        ),
    ),
    (Mark.CHOICE, QT_TRANSLATE_NOOP("Handbook", "Chosen by us so that a plan can be made at all.")),
    (Mark.ESTIMATE, QT_TRANSLATE_NOOP("Handbook", "Our own estimate; treat it as a guess.")),
)
"""Marks in the order in which they support a figure, and what each is worth."""

TITLE = QT_TRANSLATE_NOOP("Handbook", "Ultraplanner, the handbook")
JOB = QT_TRANSLATE_NOOP("Handbook", "The job in ten steps")
WORTH = QT_TRANSLATE_NOOP("Handbook", "What is custom and what is supported")
CAUTIONS = QT_TRANSLATE_NOOP("Handbook", "Cautions")
FIRST = QT_TRANSLATE_NOOP(
    "Handbook",
    "This plan is arithmetic on what you typed. It does not examine you. Race rules, medical "
    "staff, local rules and your doctor go first.",
)

CHAPTERS: dict[str, str] = {
    "sheet": QT_TRANSLATE_NOOP("Handbook", "The sheet"),
    "weeks": QT_TRANSLATE_NOOP("Handbook", "The build-up and its weeks"),
    "rules": QT_TRANSLATE_NOOP("Handbook", "The rules of a build-up"),
    "race_rules": QT_TRANSLATE_NOOP("Handbook", "The build-up against its race"),
    "sessions": QT_TRANSLATE_NOOP("Handbook", "Sessions"),
    "living": QT_TRANSLATE_NOOP("Handbook", "Living with the build-up"),
    "runner": QT_TRANSLATE_NOOP("Handbook", "Race and runner"),
    "course": QT_TRANSLATE_NOOP("Handbook", "The course"),
    "pace": QT_TRANSLATE_NOOP("Handbook", "Race day"),
    "race_pace": QT_TRANSLATE_NOOP("Handbook", "Pacing the race"),
    "race_hand": QT_TRANSLATE_NOOP("Handbook", "Race day in your hands"),
    "fuel": QT_TRANSLATE_NOOP("Handbook", "Eating and drinking"),
    "fuel_stores": QT_TRANSLATE_NOOP("Handbook", "Stores, bags and practice"),
    "cards": QT_TRANSLATE_NOOP("Handbook", "Cards"),
    "head": QT_TRANSLATE_NOOP("Handbook", "For the head, and the last days"),
    "review": QT_TRANSLATE_NOOP("Handbook", "Recordings and looking back"),
    "handover": QT_TRANSLATE_NOOP("Handbook", "After the race, and other programs"),
    "program": QT_TRANSLATE_NOOP("Handbook", "The program"),
}
"""What the chapter of each module of topics is called."""


class Chapter(Value, frozen=True):
    """Topics that belong together, under a title."""

    key: str
    title: str
    topics: tuple[Topic, ...]


def chapters(say: Callable[[str, str], str]) -> Iterator[Chapter]:
    """Yield the chapters of topics, each in the order of its titles; *say* takes context, text."""
    for module in topics.MODULES:
        key = module.__name__.rpartition(".")[2]
        ordered = sorted(module.TOPICS, key=lambda topic: say("Help", topic.title).casefold())
        yield Chapter(key, say(CONTEXT, CHAPTERS[key]), tuple(ordered))


def supported_by(mark: Mark) -> tuple[Topic, ...]:
    """Return the topics whose best source is *mark*."""
    order = [each for each, _ in SUPPORT]
    return tuple(topic for topic in topics.TOPICS.values() if _best(topic, order) is mark)


def _best(topic: Topic, order: list[Mark]) -> Mark | None:
    marks = [source.mark for source in topic.sources if source.mark in order]
    return min(marks, key=order.index, default=None)


def every_caution() -> tuple[str, ...]:
    """Return every caution once, those that cannot wait first; marked in the context "Caution"."""
    texts = (
        *cautions.RED_FLAGS,
        *cautions.ALL,
        cautions.BEFORE_BLOCK,
        cautions.ALLERGY,
        cautions.FRUCTOSE,
        *cautions.FALLBACKS,
    )
    return tuple(dict.fromkeys(texts))

"""What a session says of itself: why it is there, how it should feel, what to keep of it."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.plan.block import Ground, Kind, Mind, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.value import Value

SHORT_S = 40 * 60.0
KEPT = 2

# What is kept when a week falls apart, the most important first (common practice, no source).
KEEP_ORDER = (
    *(Kind.RACE, Kind.REHEARSAL, Kind.TUNE_UP, Kind.LONG, Kind.DOWNHILL, Kind.HILLS),
    *(Kind.TEMPO, Kind.SECOND_LONG, Kind.INTERVALS, Kind.EASY, Kind.STRENGTH),
    *(Kind.CROSS, Kind.RECOVERY),
)


class SessionWords(Value, frozen=True):
    """Sentences on one session. `talk` is the talk test (Persinger et al. 2004, Med Sci Sports
    Exerc 36:1632-1636), `short` what to keep when 40 minutes are left, `cautions` what to mind.
    """

    why: Message
    talk: Message
    short: Message
    extras: tuple[Message, ...] = ()
    cautions: tuple[Message, ...] = ()


def session_words(session: Session) -> SessionWords:
    """Return what *session* says of itself."""
    return SessionWords(
        message(WHY[session.kind]),
        _talk(session),
        _short(session),
        tuple(_extras(session)),
        tuple(_cautions(session)),
    )


def kept_sessions(sessions: Sequence[Session]) -> tuple[str, ...]:
    """Return the keys of the two sessions of a week to keep if it falls apart, by day.

    The one most like the race first; never two hard ones on days side by side.
    """
    ranked = sorted(
        (s for s in sessions if not s.missed),
        key=lambda s: (KEEP_ORDER.index(s.kind), -s.duration_s, s.day),
    )
    kept: list[Session] = []
    for session in ranked:
        beside = any(abs((session.day - k.day).days) < 2 for k in kept)
        if len(kept) < KEPT and not beside:
            kept.append(session)
    for session in ranked:
        if len(kept) < KEPT and session not in kept:
            kept.append(session)
    return tuple(s.key for s in sorted(kept, key=lambda s: s.day))


def _talk(session: Session) -> Message:
    if session.kind in (Kind.STRENGTH, Kind.CROSS):
        return message(TALK_OTHER[session.kind])
    for most, text in TALK:
        if session.effort <= most:
            return message(text)
    return message(TALK_HARD)


def _short(session: Session) -> Message:
    if session.duration_s <= SHORT_S:
        return message(SHORT_AS_IT_IS)
    return message(SHORT[session.kind])


def _extras(session: Session) -> list[Message]:
    said: list[Message] = []
    if session.ends_on is not None:
        said.append(message(ENDS_ON[session.ends_on]))
    if session.carb_g_per_h > 0:
        grams = session.carb_g_per_h * session.duration_s / 3600.0
        rate = Quantity(session.carb_g_per_h, "g_per_h")
        said.append(message(CARBS, Quantity(grams, "g"), rate))
    if session.mind is not None:
        said.append(message(MIND[session.mind]))
    return said


def _cautions(session: Session) -> list[Message]:
    said: list[Message] = []
    if session.dark:
        said.append(message(DARK))
    if session.heat:
        said.append(message(HEAT))
    if session.fasted:
        said.append(message(FASTED))
    if session.kind is Kind.DOWNHILL:
        said.append(message(SORE))
    return said


WHY = {
    Kind.RECOVERY: QT_TRANSLATE_NOOP(
        "Session", "To move the legs without tiring them after a hard day."
    ),
    Kind.EASY: QT_TRANSLATE_NOOP(
        "Session", "Most of the volume is easy: it builds endurance at little cost."
    ),
    Kind.LONG: QT_TRANSLATE_NOOP(
        "Session", "Time on feet on the race's ground, and practice in eating and pacing."
    ),
    Kind.SECOND_LONG: QT_TRANSLATE_NOOP(
        "Session", "To run on tired legs without one very long run."
    ),
    Kind.REHEARSAL: QT_TRANSLATE_NOOP(
        "Session",
        "The race in small: its kit, food, poles, ground and start hour. Change what fails here.",
    ),
    Kind.HILLS: QT_TRANSLATE_NOOP(
        "Session", "Strength for the climbs, and practice in walking them."
    ),
    Kind.DOWNHILL: QT_TRANSLATE_NOOP(
        "Session", "Earlier descents harden the quads against those of the race."
    ),
    Kind.TEMPO: QT_TRANSLATE_NOOP(
        "Session", "Comfortably hard running raises the pace that can be held."
    ),
    Kind.INTERVALS: QT_TRANSLATE_NOOP(
        "Session", "Short hard pieces raise what heart and legs can do at most."
    ),
    Kind.TUNE_UP: QT_TRANSLATE_NOOP(
        "Session", "A shorter race to test pacing, food and kit among others."
    ),
    Kind.STRENGTH: QT_TRANSLATE_NOOP(
        "Session", "Strong legs run with less effort; keep it heavy, few times and well done."
    ),
    Kind.CROSS: QT_TRANSLATE_NOOP("Session", "Endurance without the impact of running."),
    Kind.RACE: QT_TRANSLATE_NOOP("Session", "What all the rest is for."),
}
TALK = (
    (2, QT_TRANSLATE_NOOP("Session", "So easy that you could sing.")),
    (4, QT_TRANSLATE_NOOP("Session", "You can talk in whole sentences all the time; walk if not.")),
    (6, QT_TRANSLATE_NOOP("Session", "You can say a sentence, but would rather not.")),
)
TALK_HARD = QT_TRANSLATE_NOOP("Session", "A few words at a time on the hard pieces.")
TALK_OTHER = {
    Kind.STRENGTH: QT_TRANSLATE_NOOP(
        "Session", "Two or three repeats would still be left at the end of each set."
    ),
    Kind.CROSS: QT_TRANSLATE_NOOP("Session", "You can talk in whole sentences all the time."),
}
SHORT_AS_IT_IS = QT_TRANSLATE_NOOP("Session", "It fits into 40 minutes as it is.")
SHORT = {
    Kind.RECOVERY: QT_TRANSLATE_NOOP("Session", "20 minutes, or a walk."),
    Kind.EASY: QT_TRANSLATE_NOOP("Session", "40 minutes easy; nothing is made up for later."),
    Kind.LONG: QT_TRANSLATE_NOOP(
        "Session",
        "40 minutes on the race's ground, eating as planned; move the long run if you can.",
    ),
    Kind.SECOND_LONG: QT_TRANSLATE_NOOP("Session", "40 minutes easy on the tired legs."),
    Kind.REHEARSAL: QT_TRANSLATE_NOOP(
        "Session", "40 minutes with pack, shoes and the race's food, at its start hour."
    ),
    Kind.HILLS: QT_TRANSLATE_NOOP(
        "Session", "10 minutes easy, four climbs of three minutes, then home."
    ),
    Kind.DOWNHILL: QT_TRANSLATE_NOOP(
        "Session", "10 minutes easy, then 20 minutes of descents, relaxed and quick of foot."
    ),
    Kind.TEMPO: QT_TRANSLATE_NOOP("Session", "10 minutes easy, 20 comfortably hard, 10 easy."),
    Kind.INTERVALS: QT_TRANSLATE_NOOP(
        "Session", "10 minutes easy, four times three minutes hard, then easy."
    ),
    Kind.TUNE_UP: QT_TRANSLATE_NOOP("Session", "Leave it out and run easy; there are other races."),
    Kind.STRENGTH: QT_TRANSLATE_NOOP(
        "Session", "One set each of step-ups, slow step-downs, calf raises and a plank."
    ),
    Kind.CROSS: QT_TRANSLATE_NOOP("Session", "Leave it out."),
    Kind.RACE: QT_TRANSLATE_NOOP("Session", "The race is run whole or stopped in good time."),
}
ENDS_ON = {
    Ground.LEVEL: QT_TRANSLATE_NOOP("Session", "End it on the level, as the race does."),
    Ground.ROLLING: QT_TRANSLATE_NOOP("Session", "End it on rolling ground, as the race does."),
    Ground.RISING: QT_TRANSLATE_NOOP("Session", "End it with a climb, as the race does."),
    Ground.FALLING: QT_TRANSLATE_NOOP("Session", "End it with a descent, as the race does."),
    Ground.SAW: QT_TRANSLATE_NOOP("Session", "End it up and down, as the race does."),
    Ground.STAIRS: QT_TRANSLATE_NOOP("Session", "End it on stairs, as the race does."),
}
CARBS = QT_TRANSLATE_NOOP("Session", "Eat {0} on the way, {1}, from what the race plan holds.")
MIND = {
    Mind.IF_THEN: QT_TRANSLATE_NOOP(
        "Session",
        "Ten minutes for the head: a plan of the form if this happens, I do that; try it here.",
    ),
    Mind.PICTURE: QT_TRANSLATE_NOOP(
        "Session",
        "Ten minutes for the head: picture one hard stretch of the race at its own pace, and how "
        "you get through it.",
    ),
    Mind.GOALS: QT_TRANSLATE_NOOP(
        "Session",
        "Ten minutes for the head: goals for a good, a fair and a hard day, cutoffs and kit list.",
    ),
}
DARK = QT_TRANSLATE_NOOP(
    "Session", "Take a spare lamp, tell someone where you run, be seen on roads; no driving tired."
)
HEAT = QT_TRANSLATE_NOOP(
    "Session",
    "In the heat: easy, never alone, drink to thirst. Stop if dizzy, confused or shivering. Not "
    "with fever.",
)
FASTED = QT_TRANSLATE_NOOP(
    "Session",
    "Before breakfast: easy only, 25 g of sugar in the pocket, eat within the hour after. Not "
    "alone in remote ground.",
)
SORE = QT_TRANSLATE_NOOP(
    "Session",
    "Expect soreness for one to three days. Dark urine, severe swelling or weakness: a doctor the "
    "same day.",
)

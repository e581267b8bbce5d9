"""What kinds of session, grounds and weeks are called on tiles, in fields and in sentences."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.plan.block import Ground, Gut, Kind, Mind, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.words import Words

FULL: dict[Kind, str] = {
    Kind.RECOVERY: QT_TRANSLATE_NOOP("Kinds", "recovery run"),
    Kind.EASY: QT_TRANSLATE_NOOP("Kinds", "easy run"),
    Kind.LONG: QT_TRANSLATE_NOOP("Kinds", "long run"),
    Kind.SECOND_LONG: QT_TRANSLATE_NOOP("Kinds", "back-to-back"),
    Kind.REHEARSAL: QT_TRANSLATE_NOOP("Kinds", "rehearsal run"),
    Kind.HILLS: QT_TRANSLATE_NOOP("Kinds", "hill run"),
    Kind.DOWNHILL: QT_TRANSLATE_NOOP("Kinds", "downhill run"),
    Kind.TEMPO: QT_TRANSLATE_NOOP("Kinds", "tempo run"),
    Kind.INTERVALS: QT_TRANSLATE_NOOP("Kinds", "interval session"),
    Kind.TUNE_UP: QT_TRANSLATE_NOOP("Kinds", "tune-up race"),
    Kind.STRENGTH: QT_TRANSLATE_NOOP("Kinds", "strength"),
    Kind.CROSS: QT_TRANSLATE_NOOP("Kinds", "cross-training"),
    Kind.RACE: QT_TRANSLATE_NOOP("Kinds", "race"),
}

SHORT: dict[Kind, str] = {
    Kind.RECOVERY: QT_TRANSLATE_NOOP("Kinds", "Recovery"),
    Kind.EASY: QT_TRANSLATE_NOOP("Kinds", "Easy"),
    Kind.LONG: QT_TRANSLATE_NOOP("Kinds", "Long"),
    Kind.SECOND_LONG: QT_TRANSLATE_NOOP("Kinds", "Long 2"),
    Kind.REHEARSAL: QT_TRANSLATE_NOOP("Kinds", "Rehearsal"),
    Kind.HILLS: QT_TRANSLATE_NOOP("Kinds", "Hills"),
    Kind.DOWNHILL: QT_TRANSLATE_NOOP("Kinds", "Downhill"),
    Kind.TEMPO: QT_TRANSLATE_NOOP("Kinds", "Tempo"),
    Kind.INTERVALS: QT_TRANSLATE_NOOP("Kinds", "Intervals"),
    Kind.TUNE_UP: QT_TRANSLATE_NOOP("Kinds", "Tune-up"),
    Kind.STRENGTH: QT_TRANSLATE_NOOP("Kinds", "Strength"),
    Kind.CROSS: QT_TRANSLATE_NOOP("Kinds", "Cross"),
    Kind.RACE: QT_TRANSLATE_NOOP("Kinds", "RACE"),
}

#: Whole words for where the usual ones do not fit; fewer than four letters say too little.
SHORTER: dict[Kind, str] = {
    Kind.REHEARSAL: QT_TRANSLATE_NOOP("Kinds", "Rehearse"),
    Kind.DOWNHILL: QT_TRANSLATE_NOOP("Kinds", "Down"),
    Kind.INTERVALS: QT_TRANSLATE_NOOP("Kinds", "Reps"),
}

#: What is left of the word on a tile of two halves; the kind alone is worth more than nothing.
ABBREVIATED: dict[Kind, str] = {
    Kind.RECOVERY: QT_TRANSLATE_NOOP("Kinds", "Rec"),
    Kind.REHEARSAL: QT_TRANSLATE_NOOP("Kinds", "Reh"),
    Kind.INTERVALS: QT_TRANSLATE_NOOP("Kinds", "Int"),
    Kind.TUNE_UP: QT_TRANSLATE_NOOP("Kinds", "Tune"),
    Kind.STRENGTH: QT_TRANSLATE_NOOP("Kinds", "Str"),
}

#: The least there is of a kind; no two alike.
LETTERS: dict[Kind, str] = {
    Kind.RECOVERY: QT_TRANSLATE_NOOP("KindLetters", "R"),
    Kind.EASY: QT_TRANSLATE_NOOP("KindLetters", "E"),
    Kind.LONG: QT_TRANSLATE_NOOP("KindLetters", "L"),
    Kind.SECOND_LONG: QT_TRANSLATE_NOOP("KindLetters", "B"),
    Kind.REHEARSAL: QT_TRANSLATE_NOOP("KindLetters", "Rh"),
    Kind.HILLS: QT_TRANSLATE_NOOP("KindLetters", "H"),
    Kind.DOWNHILL: QT_TRANSLATE_NOOP("KindLetters", "D"),
    Kind.TEMPO: QT_TRANSLATE_NOOP("KindLetters", "T"),
    Kind.INTERVALS: QT_TRANSLATE_NOOP("KindLetters", "I"),
    Kind.TUNE_UP: QT_TRANSLATE_NOOP("KindLetters", "Tu"),
    Kind.STRENGTH: QT_TRANSLATE_NOOP("KindLetters", "S"),
    Kind.CROSS: QT_TRANSLATE_NOOP("KindLetters", "C"),
}

GROUNDS: dict[Ground, str] = {
    Ground.LEVEL: QT_TRANSLATE_NOOP("Kinds", "level"),
    Ground.ROLLING: QT_TRANSLATE_NOOP("Kinds", "rolling"),
    Ground.RISING: QT_TRANSLATE_NOOP("Kinds", "rising"),
    Ground.FALLING: QT_TRANSLATE_NOOP("Kinds", "falling"),
    Ground.SAW: QT_TRANSLATE_NOOP("Kinds", "up and down"),
    Ground.STAIRS: QT_TRANSLATE_NOOP("Kinds", "stairs"),
}

GUTS: dict[Gut, str] = {
    Gut.FINE: QT_TRANSLATE_NOOP("Kinds", "fine"),
    Gut.UNEASY: QT_TRANSLATE_NOOP("Kinds", "uneasy"),
    Gut.BAD: QT_TRANSLATE_NOOP("Kinds", "bad"),
}

MINDS: dict[Mind, str] = {
    Mind.IF_THEN: QT_TRANSLATE_NOOP("Kinds", "if-then plans"),
    Mind.PICTURE: QT_TRANSLATE_NOOP("Kinds", "picture the race"),
    Mind.GOALS: QT_TRANSLATE_NOOP("Kinds", "goals and cutoffs"),
}

ROLES: dict[Role, str] = {
    Role.LOADING: "",
    Role.CUTBACK: QT_TRANSLATE_NOOP("Kinds", "cutback"),
    Role.TAPER: QT_TRANSLATE_NOOP("Kinds", "taper"),
    Role.RACE: QT_TRANSLATE_NOOP("Kinds", "race"),
}

MISSED = QT_TRANSLATE_NOOP("Kinds", "missed")
OF_PLANNED = QT_TRANSLATE_NOOP("Kinds", "of {0}")
CLIMB = QT_TRANSLATE_NOOP("Kinds", "climb {0}")
DROP = QT_TRANSLATE_NOOP("Kinds", "drop {0}")
OF_TEN = QT_TRANSLATE_NOOP("Kinds", "of 10")
#: More of them are read as hours only.
MOST_MINUTES = 100
PASSED = QT_TRANSLATE_NOOP("Kinds", "not marked yet")


def say(text: str) -> str:
    """Return one of the texts above in the user's language."""
    return QCoreApplication.translate("Kinds", text) if text else ""


def letters(kind: Kind) -> str:
    """Return the least there is of *kind*; nothing for the race, which its colour tells."""
    text = LETTERS.get(kind, "")
    return QCoreApplication.translate("KindLetters", text) if text else ""


def names(kind: Kind) -> tuple[str, ...]:
    """Return what *kind* is called on a tile, the fullest first."""
    said = (say(of.get(kind, "")) for of in (SHORT, SHORTER, ABBREVIATED))
    return tuple(name for name in (*said, letters(kind)) if name)


def capital(text: str) -> str:
    """Return *text* with its first letter as a capital."""
    return text[:1].upper() + text[1:]


def figure(session: Session, words: Words) -> str:
    """Return the one figure of a tile: distance without unit for a run, else time."""
    if session.done is not None:
        return amount(session.done.distance_m, session.done.duration_s, session.kind, words)
    return planned_figure(session, words)


def brief_figure(session: Session, words: Words) -> str:
    """Return the figure of a tile as short as it goes: whole km, or minutes by their sign, 30′."""
    actual = session.actual if session.done is not None else session
    if session.kind.is_run and actual.distance_m > 0.0:
        whole = words.distance_bare(actual.distance_m, 0)
        return whole if whole != "0" else figure(session, words)
    return minutes_by_sign(actual.duration_s) or figure(session, words)


def minutes_by_sign(duration_s: float) -> str:
    """Return 30′; nothing for no time at all, or where hours say it better."""
    minutes = round(duration_s / 60.0)
    if not 0 < minutes < MOST_MINUTES:
        return ""
    return say(QT_TRANSLATE_NOOP("Kinds", "{0}′")).format(minutes)


def planned_figure(session: Session, words: Words) -> str:
    """Return the figure planned."""
    return amount(session.distance_m, session.duration_s, session.kind, words)


def amount(distance_m: float, duration_s: float, kind: Kind, words: Words) -> str:
    """Return *distance_m* bare, with a decimal below 10 only, or the time where there is none."""
    if kind.is_run and distance_m > 0.0:
        exact, whole = words.distance_bare(distance_m, 1), words.distance_bare(distance_m, 0)
        return whole if exact.endswith("0") or len(whole) > 1 else exact
    return words.duration(duration_s) if duration_s > 0.0 else ""


def sentence(session: Session, words: Words, is_past: bool = False) -> str:
    """Return all a tile says, in words."""
    said = _said(session, words, is_past)
    return say(QT_TRANSLATE_NOOP("Kinds", "{0}: {1}")).format(words.day(session.day), said)


def day_sentences(sessions: Sequence[Session], words: Words, is_past: bool = False) -> str:
    """Return all the tiles of one day say, a line for each under what they come to."""
    actual = [session.actual for session in sessions]
    head = say(QT_TRANSLATE_NOOP("Kinds", "{0}: {1} sessions, {2}, {3}")).format(
        words.day(sessions[0].day),
        len(sessions),
        words.distance(sum(a.distance_m for a in actual)),
        words.duration(sum(a.duration_s for a in actual)),
    )
    return "\n".join([head, *(_said(session, words, is_past) for session in sessions)])


def _said(session: Session, words: Words, is_past: bool) -> str:
    parts = [say(FULL[session.kind])]
    if session.kind.is_run and session.distance_m > 0.0:
        parts.append(words.distance(session.distance_m))
    if session.duration_s > 0.0:
        parts.append(words.duration(session.duration_s))
    if session.climb_m > 0.0 or session.drop_m > 0.0:
        up, down = words.height(session.climb_m), words.height(session.drop_m)
        parts.append(say(QT_TRANSLATE_NOOP("Kinds", "climb {0}, drop {1}")).format(up, down))
    if session.kind.is_run:
        parts.append(
            say(QT_TRANSLATE_NOOP("Kinds", "ground {0}")).format(say(GROUNDS[session.ground]))
        )
    parts.append(say(QT_TRANSLATE_NOOP("Kinds", "effort {0}")).format(words.effort(session.effort)))
    if session.carb_g_per_h > 0.0:
        parts.append(
            say(QT_TRANSLATE_NOOP("Kinds", "{0} practice carbs")).format(
                words.grams_per_hour(session.carb_g_per_h)
            )
        )
    parts += [say(QT_TRANSLATE_NOOP("Kinds", "in the dark"))] * session.dark + [
        say(QT_TRANSLATE_NOOP("Kinds", "fasted"))
    ] * session.fasted
    parts += [say(QT_TRANSLATE_NOOP("Kinds", "locked"))] * session.locked
    if session.done is not None:
        parts.append(_done_part(session, words))
    elif session.missed:
        parts.append(say(MISSED))
    elif is_past:
        parts.append(say(PASSED))
    return ", ".join(parts)


def week_name(week: WeekFigures, words: Words) -> str:
    """Return "10 to go, a cutback week (5 Apr)"."""
    day = words.short_day(week.start)
    if week.role is Role.RACE:
        return say(QT_TRANSLATE_NOOP("Kinds", "Race week ({0})")).format(day)
    if week.role is Role.CUTBACK:
        return say(QT_TRANSLATE_NOOP("Kinds", "{0} to go, a cutback week ({1})")).format(
            week.to_go, day
        )
    if week.role is Role.TAPER:
        return say(QT_TRANSLATE_NOOP("Kinds", "{0} to go, taper ({1})")).format(week.to_go, day)
    return say(QT_TRANSLATE_NOOP("Kinds", "{0} to go ({1})")).format(week.to_go, day)


def week_sentence(week: WeekFigures, words: Words) -> str:
    """Return what a week comes to, in words."""
    count = len(week.sessions)
    parts = [
        say(QT_TRANSLATE_NOOP("Kinds", "one session"))
        if count == 1
        else say(QT_TRANSLATE_NOOP("Kinds", "{0} sessions")).format(count),
        words.distance(week.distance_m),
        say(QT_TRANSLATE_NOOP("Kinds", "longest run {0}")).format(words.distance(week.longest_m)),
        say(QT_TRANSLATE_NOOP("Kinds", "climb {0}, drop {1}")).format(
            words.height(week.climb_m), words.height(week.drop_m)
        ),
    ]
    if week.carb_g > 0.0:
        parts.append(
            say(QT_TRANSLATE_NOOP("Kinds", "{0} practice carbs")).format(words.grams(week.carb_g))
        )
    return say(QT_TRANSLATE_NOOP("Kinds", "{0}: {1}")).format(
        week_name(week, words), ", ".join(parts)
    )


def _done_part(session: Session, words: Words) -> str:
    done = session.done
    assert done is not None
    if session.kind.is_run and done.distance_m > 0.0:
        how = f"{words.distance(done.distance_m)}, {words.duration(done.duration_s)}"
    else:
        how = words.duration(done.duration_s)
    return say(QT_TRANSLATE_NOOP("Kinds", "done {0}, effort {1}")).format(
        how, words.effort(done.effort)
    )

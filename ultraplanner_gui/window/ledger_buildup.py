"""What the ledger says of the build-up: a session, its week, the checks it touches."""

from __future__ import annotations

from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.nearest_day import Offer
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.engine.checks import Check
from ultraplanner_gui.engine.checks_runs import actual_m
from ultraplanner_gui.engine.mind import mind_lines
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.plan.block import Done, Session, weeks_to_go
from ultraplanner_gui.science.training import WINDOW_DAYS, longest_before
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Heads, Link, Row, Rule, Sentence, Title
from ultraplanner_gui.window.ledger_pairs import Pairs, each
from ultraplanner_gui.window.ledger_recording import recording_rows
from ultraplanner_gui.window.ledger_week import (
    ACTION,
    carry_rows,
    health_rows,
    this_week_rows,
    word_rows,
)
from ultraplanner_gui.wording.words import NONE, Words

MOST_CHECKS = 6
MOST_LED_TO = 3
#: Targets of links: the mend of a check, by its place, a day for a session, two to swap.
MEND, TO_DAY, SWAP = "mend", "to day", "swap"
_URGENCY = {State.BREAKS: 0, State.STRAINS: 1, State.HOLDS: 2}
_ROLE_TOPICS = {
    Role.LOADING: "weeks to go",
    Role.CUTBACK: "cutback",
    Role.TAPER: "taper",
    Role.RACE: "taper",
}


def session_rows(
    now: Outlook,
    before: Outlook,
    key: str,
    words: Words,
    better: Offer | None = None,
    selected: tuple[str, ...] = (),
) -> tuple[Row, ...]:
    """Return the rows for the session *key* of those *selected*, its week, the checks it touches.

    *better* is what would put it right where it breaks a rule, if that was found.
    """
    session = _session(now, key)
    if session is None:
        return build_up_rows(now, before, words)
    earlier = _session(before, key) or session
    rows: list[Row] = [
        Title(
            kinds.capital(kinds.say(kinds.FULL[session.kind])),
            _where(session, earlier, now, words),
            session.kind.value,
        )
    ]
    rows += _selected(now, selected, words)
    rows += _session_figures(session, words)
    rows += recording_rows(now, session, words)
    to_go = weeks_to_go(session.day, now.project.race.day, now.project.first_weekday)
    week = next((w for w in now.weeks if w.to_go == to_go), None)
    if week is not None:
        rows += [Rule(), *week_rows(before, week, words, now)]
    mend = None if better is None else _better(now, before, session, better, words)
    rows += _touched_checks(now, before, key, week, words, mend)
    rows += _same_day(now, session, words)
    rows += word_rows(session, words)
    rows += [Sentence(line, "mental rehearsal") for line in mind_lines(now, session, words)]
    return tuple(rows)


def build_up_rows(
    now: Outlook, before: Outlook, words: Words, week_start: str = ""
) -> tuple[Row, ...]:
    """Return the rows for the build-up as a whole, with the week that begins on *week_start*.

    By default that is the week of today.
    """
    reason = words.say(now.runway.reason) if now.runway is not None else ""
    rows: list[Row] = [Title(tr("Build-up"), reason, "runway")]
    if not now.project.block.sessions:
        build = Link(tr("Build the block"), f"{ACTION}:build_block", "build-up")
        return (*rows, Sentence(tr("No sessions yet.")), build)
    this = weeks_to_go(now.today, now.project.race.day, now.project.first_weekday)
    here = next((w for w in now.weeks if w.to_go == this), None)
    week = next((w for w in now.weeks if w.start.isoformat() == week_start), here)
    rows += health_rows(now)
    if here is not None and week is here:
        rows += [*this_week_rows(now, here, words), Rule()]
    if week is not None:
        rows += week_rows(before, week, words, now)
    if now.asks is not None:
        peak = max((w.distance_m for w in now.weeks), default=0.0)
        longest = max((w.longest_m for w in now.weeks), default=0.0)
        rows += [
            Rule(),
            Heads(tr("What the race asks"), tr("asked"), tr("planned"), "what the race asks"),
            _asked(tr("Largest week"), now.asks.peak_week_m, peak, words),
            _asked(tr("Longest run"), now.asks.longest_m, longest, words),
            Sentence(tr("Ranges coaches use; no trial sets them."), "what the race asks"),
        ]
    rows += [Rule(), *_loose_checks(now, before, words)]
    rows.append(Sentence(tr("This plan is arithmetic on what you typed. It does not examine you.")))
    return tuple(rows)


def week_rows(
    before: Outlook, week: WeekFigures, words: Words, now: Outlook | None = None
) -> list[Row]:
    """Return the rows for one week, before and now."""
    was = next((w for w in before.weeks if w.start == week.start), week)
    name = tr("{0} to go, {1} week").format(
        week.to_go, kinds.say(kinds.ROLES[week.role]) or tr("loading")
    )
    title = tr("Race week") if week.to_go == 0 else name
    pairs = Pairs(title, was is not week and was != week, _ROLE_TOPICS[week.role])
    pairs.add(
        tr("Distance"),
        "weekly distance",
        (words.distance(was.distance_m, 0), words.distance(week.distance_m, 0)),
        week.ceiling_m is not None and week.distance_m > week.ceiling_m + 0.5,
        tr("Clay: over 10 % above the last loading week. A custom, weakly supported."),
    )
    if week.last_loading_m:
        of_last = _of_last(was, words), _of_last(week, words)
        pairs.add(tr("Of last loading week"), "of last loading week", of_last)
    longest = each(words.distance, was.longest_m, week.longest_m)
    pairs.add(tr("Longest run"), "longest run of the week", longest)
    share = _share(was, words), _share(week, words)
    pairs.add(tr("Its share of the week"), "long-run share", share)
    if now is not None:
        reference = (_of_30_days(before, was, words), _of_30_days(now, week, words))
        pairs.add(tr("Longest, 30 days before"), "longest run of the week", reference)
    on_feet = each(words.duration, was.on_feet_s, week.on_feet_s)
    pairs.add(tr("On feet"), "time on feet", on_feet)
    pairs.add(tr("Climb"), "weekly climb", each(words.height, was.climb_m, week.climb_m))
    pairs.add(tr("Drop"), "weekly climb", each(words.height, was.drop_m, week.drop_m))
    carbs = each(words.grams, was.carb_g, week.carb_g)
    pairs.add(tr("Practice carbs"), "practice carbs", carbs)
    pairs.add(
        tr("Load"),
        "load",
        each(words.number, was.load, week.load),
        help_text=tr("Effort times minutes (Foster 1998). Compare only with your own weeks."),
    )
    return pairs.rows


def _session(outlook: Outlook, key: str) -> Session | None:
    return next((s for s in outlook.project.block.sessions if s.key == key), None)


def _selected(now: Outlook, keys: tuple[str, ...], words: Words) -> list[Row]:
    """Return what several selected sessions come to."""
    if len(keys) < 2:
        return []
    chosen = [s.actual for s in now.project.block.sessions if s.key in frozenset(keys)]
    metres, time_s = sum(a.distance_m for a in chosen), sum(a.duration_s for a in chosen)
    text = tr("{0} sessions are selected: {1}, {2}. This is the one at the cursor.")
    said = text.format(len(chosen), words.distance(metres), words.duration(time_s))
    return [Sentence(said, "several sessions")]


def _same_day(now: Outlook, session: Session, words: Words) -> list[Row]:
    """Return what else there is on the day of *session*."""
    sessions = (s for s in now.project.block.sessions if s.day == session.day)
    others = [
        f"{kinds.say(kinds.FULL[s.kind])}\N{NO-BREAK SPACE}{_length(s, words)}".rstrip()
        for s in sessions
        if s.key != session.key
    ]
    if not others:
        return []
    return [Sentence(tr("On the same day: {0}").format(", ".join(others)), "session day")]


def _length(session: Session, words: Words) -> str:
    done = session.done or session
    if session.kind.is_run and done.distance_m > 0.0:
        return words.distance(done.distance_m)
    return words.duration(done.duration_s) if done.duration_s > 0.0 else ""


def _where(session: Session, earlier: Session, now: Outlook, words: Words) -> str:
    race_day, first = now.project.race.day, now.project.first_weekday

    def day(of: Session) -> str:
        to_go = weeks_to_go(of.day, race_day, first)
        week = tr("race week") if to_go == 0 else tr("{0} to go").format(to_go)
        return f"{words.day(of.day)}, {week}"

    if earlier.day != session.day:
        return tr("from {0}, to {1}").format(day(earlier), day(session))
    return day(session)


def _session_figures(session: Session, words: Words) -> list[Row]:
    done = session.done
    rows = _planned_and_done(session, words) if done is None else _done_rows(session, done, words)
    if session.kind.is_run:
        rows.append(
            Figure(
                tr("Ground"),
                kinds.capital(kinds.say(kinds.GROUNDS[session.ground])),
                topic="ground",
            )
        )
    rows += carry_rows(session, words)
    if session.carb_g_per_h:
        rate = words.grams_per_hour(session.carb_g_per_h)
        rows.append(Figure(tr("Practice"), rate, topic="practice carbs"))
    if session.missed:
        rows.append(Sentence(tr("Missed. What is missed is not made up later.")))
    if session.note:
        rows.append(Sentence(session.note, "session note"))
    return rows


def _planned_and_done(session: Session, words: Words) -> list[Row]:
    plan = session.actual if session.is_open else replace(session, missed=False).actual
    return [
        Figure(label, text, topic=topic) for label, text, topic in _figures(session, plan, words)
    ]


def _done_rows(session: Session, done: Done, words: Words) -> list[Row]:
    plan = replace(session, done=None).actual
    rows: list[Row] = [Heads("", tr("planned"), tr("done"), "done or missed")]
    both = zip(_figures(session, plan, words), _figures(session, done, words), strict=True)
    rows += [Figure(label, real, was, topic=topic) for (label, was, topic), (_, real, _) in both]
    return rows


def _figures(session: Session, of: Done, words: Words) -> list[tuple[str, str, str]]:
    """Return label, text and help topic of each figure."""
    figures = [
        (tr("Time"), words.duration(of.duration_s), "session time"),
        (tr("Effort"), words.effort(of.effort), "effort"),
    ]
    if session.kind.is_run:
        heights = words.climb_and_drop(of.climb_m, of.drop_m)
        figures = [
            (tr("Distance"), words.distance(of.distance_m, 1), "session distance"),
            (tr("Climb, drop"), heights, "session climb"),
            *figures,
        ]
    if session.carb_g_per_h:
        figures.append((tr("Carbs"), words.grams(of.carb_g), "carbs eaten"))
    return figures


def _loose_checks(now: Outlook, before: Outlook, words: Words) -> list[Row]:
    """Return one row to each rule that does not hold, its worst place first."""
    loose: dict[str, list[Check]] = {}
    for check in now.checks:
        if check.state is not State.HOLDS:
            loose.setdefault(check.rule, []).append(check)
    if not loose:
        return [Heads(tr("Every check holds"), topic="checks")]
    rows: list[Row] = [Heads(tr("Checks that do not hold"), topic="checks")]
    for checks in sorted(loose.values(), key=lambda g: min(_URGENCY[c.state] for c in g)):
        worst = min(checks, key=lambda c: _URGENCY[c.state])
        row = _check_row(worst, words)
        others = len(checks) - 1
        if others:
            more = tr("{0} One more like it.") if others == 1 else tr("{0} {1} more like it.")
            row = replace(row, text=more.format(row.text, others))
        rows.append(row)
        rows += _mend_rows(now, before, worst, words)
    return rows


def _touched_checks(
    now: Outlook,
    before: Outlook,
    key: str,
    week: WeekFigures | None,
    words: Words,
    mend: Row | None,
) -> list[Row]:
    """Return the checks a session touches, *mend* under those that are broken."""
    touched = [
        c
        for c in now.checks
        if key in c.sessions or (week is not None and not c.sessions and week.to_go in c.weeks)
    ]
    if not touched:
        return []
    touched.sort(key=lambda c: _URGENCY[c.state])
    rows: list[Row] = [Rule(), Heads(tr("Checks it touches"), topic="checks")]
    for place, check in enumerate(touched[:MOST_CHECKS]):
        rows.append(_check_row(check, words))
        rows += _mend_rows(now, before, check, words)
        states = {c.state for c in touched[place + 1 : MOST_CHECKS]}
        if mend is not None and check.state is State.BREAKS and State.BREAKS not in states:
            rows.append(mend)
    return rows


def _mend_rows(now: Outlook, before: Outlook, check: Check, words: Words) -> list[Row]:
    """Return what would put *check* right, as a link; nothing on trial, where it is no use yet."""
    mend = check.mend if now is before and check.state is not State.HOLDS else None
    if mend is None:
        return []
    place = next(n for n, c in enumerate(now.checks) if c is check)
    return [Link(words.say(mend.text), f"{MEND}:{place}", topic="mend")]


def _better(now: Outlook, before: Outlook, session: Session, offer: Offer, words: Words) -> Row:
    """Return what would hold, with the key that does it while the session is in the hand."""
    is_trial = now is not before
    if offer.is_home and offer.length is not None:
        return Sentence(tr("It holds only as long as it was; H puts it back."), "mend")
    if offer.is_home and _session(before, session.key) is None:
        return Sentence(tr("Nothing near would hold; H leaves it out."))
    if offer.is_home:
        return Sentence(tr("Nothing near would hold; H puts it back."))
    if offer.length is not None:
        metres = session.kind.is_run and session.distance_m > 0.0
        length = words.distance(offer.length, 1) if metres else words.duration(offer.length)
        return Sentence(tr("{0} would hold; H makes it so").format(length), "mend")
    day = _named_day(offer.day, now, words)
    other = _session(now, offer.other)
    if other is not None:
        kind = kinds.say(kinds.FULL[other.kind])
        text = tr("Swapped with the {0} of {1} would hold").format(kind, day)
        text = tr("{0}; H swaps them").format(text) if is_trial else text
        return Link(text, f"{SWAP}:{session.key}:{other.key}", topic="mend")
    text = tr("{0} would hold").format(day)
    text = tr("{0}; H puts it there").format(text) if is_trial else text
    return Link(text, f"{TO_DAY}:{session.key}:{offer.day.isoformat()}", topic="mend")


def _named_day(day: date, now: Outlook, words: Words) -> str:
    to_go = weeks_to_go(day, now.project.race.day, now.project.first_weekday)
    text = tr("{0} of {1} to go") if to_go else tr("{0} of the race week")
    return text.format(words.weekday(day.weekday()), to_go)


def _of_30_days(outlook: Outlook, week: WeekFigures, words: Words) -> str:
    metres = longest_of_30_days(outlook, week)
    return NONE if metres is None else words.distance(metres)


def longest_of_30_days(outlook: Outlook, week: WeekFigures) -> float | None:
    """Return the longest run of the 30 days before the week's own longest one; None without."""
    runs = [
        (s.day.toordinal(), actual_m(s)) for s in outlook.project.block.sessions if actual_m(s) > 0
    ]
    keys = frozenset(week.sessions)
    own = [s for s in outlook.project.block.sessions if s.key in keys and actual_m(s) > 0]
    if not own:
        return None
    day = max(own, key=actual_m).day.toordinal()
    metres = longest_before(runs, day)
    if not metres or day - WINDOW_DAYS < runs[0][0]:
        metres = max(metres, outlook.project.runner.longest_m)
    return metres


def _check_row(check: Check, words: Words) -> CheckRow:
    # Checks of a whole week lead to it, those of some sessions to all of them.
    is_week = len(check.weeks) == 1 and len(check.sessions) > MOST_LED_TO
    target = f"session:{check.sessions[0]}" if is_week else ""
    if check.sessions and not is_week:
        target = f"session:{','.join(check.sessions[:MOST_LED_TO])}"
    text, source = words.say(check.text), words.say(check.source)
    return CheckRow(check.state, text, source, target, topic=check.rule)


def _asked(label: str, asked_m: float, planned_m: float, words: Words) -> Figure:
    asked, planned = words.distance(asked_m, 0), words.distance(planned_m, 0)
    return Figure(label, planned, asked, shows_both=True, topic="what the race asks")


def _of_last(week: WeekFigures, words: Words) -> str:
    return words.percent(100 * week.distance_m / week.last_loading_m) if week.last_loading_m else ""


def _share(week: WeekFigures, words: Words) -> str:
    return words.percent(100 * week.longest_m / week.distance_m) if week.distance_m else "–"

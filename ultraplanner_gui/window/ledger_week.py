"""What the ledger says of today's week, and what a session says of itself."""

from __future__ import annotations

from datetime import datetime, time, timedelta

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.session_words import kept_sessions, session_words
from ultraplanner_gui.engine.weeks import WeekFigures
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.runner import Health
from ultraplanner_gui.widgets.rows import Figure, Heads, Link, Row, Rule, Sentence
from ultraplanner_gui.wording.words import Words

#: Target of a link that starts an action, by its name in the action table.
ACTION = "action"


def this_week_rows(now: Outlook, week: WeekFigures, words: Words) -> list[Row]:
    """Return each day of the week, planned beside done, the two sessions to keep starred."""
    keys = frozenset(week.sessions)
    sessions = [s for s in now.project.block.sessions if s.key in keys and s.kind is not Kind.RACE]
    if not sessions:
        return []
    keep = kept_sessions(sessions)
    rows: list[Row] = [Heads(tr("This week"), tr("planned"), tr("done"), "this week")]
    rows += [_day_row(s, s.key in keep, now, words) for s in sessions]
    rows.append(Link(tr("Mark the sessions of this week"), f"{ACTION}:this_week", "this week"))
    return rows


def _day_row(session: Session, is_kept: bool, now: Outlook, words: Words) -> Figure:
    day = words.weekday(session.day.weekday())
    star = "★ " if is_kept else ""
    label = f"{day}  {star}{kinds.say(kinds.SHORT[session.kind])}"
    planned = kinds.planned_figure(session, words)
    if session.done is not None:
        return Figure(label, kinds.figure(session, words), planned, False, "", True, "this week")
    if session.missed:
        return Figure(label, kinds.say(kinds.MISSED), planned, False, "", True, "this week")
    is_late = session.day < now.today
    return Figure(label, "?" if is_late else " ", planned, is_late, "", True, "this week")


def carry_rows(session: Session, words: Words) -> list[Row]:
    """Return what else a session carries: its hour, its last ground, the head, whether locked."""
    rows: list[Row] = []
    if session.at_s is not None:
        at = datetime.combine(session.day, time()) + timedelta(seconds=session.at_s)
        rows.append(Figure(tr("Start"), words.clock(at, weekday=False), topic="session day"))
    if session.ends_on is not None:
        last = kinds.capital(kinds.say(kinds.GROUNDS[session.ends_on]))
        rows.append(Figure(tr("Last part"), last, topic="ground"))
    if session.repeats:
        count = sum(repeat.count for repeat in session.repeats)
        rows.append(Figure(tr("Parts"), words.number(count), topic="ground at hand"))
    if session.locked:
        rows.append(Figure(tr("Locked"), tr("stays as it is"), topic="several sessions"))
    return rows


def word_rows(session: Session, words: Words) -> list[Row]:
    """Return why a session is there, how it should feel, and what to keep of it."""
    said = session_words(session)
    rows: list[Row] = [Rule(), Heads(tr("What it is for"), topic=session.kind.value)]
    texts = (said.why, said.talk, *said.extras, *said.cautions)
    rows += [Sentence(words.say(text), session.kind.value) for text in texts]
    if session.kind is not Kind.RACE:
        rows.append(Heads(tr("With only 40 minutes"), topic=session.kind.value))
    rows.append(Sentence(words.say(said.short), session.kind.value))
    return rows


def health_rows(now: Outlook) -> list[Row]:
    """Return the way to the questions on health as long as they are not answered."""
    if now.project.runner.health is not Health.NOT_ASKED:
        return []
    return [
        Link(tr("Questions on health, before the first hard weeks"), f"{ACTION}:health", "health")
    ]

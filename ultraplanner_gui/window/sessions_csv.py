"""Sessions out of a CSV file: the columns of the table of sessions, by their heads."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from msgspec.structs import replace

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.deeds import easy_run
from ultraplanner_gui.edits.block import AddSession
from ultraplanner_gui.edits.compound import ImportSessions
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.exchange.csv_in import CsvTable, read_csv
from ultraplanner_gui.exchange.plan_changes import PlanChanges
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.message import (
    QT_TRANSLATE_NOOP,
    Message,
    PlanError,
    Quantity,
    StoreError,
    message,
)
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.table_column import Column, copied_text, say, typed
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_sessions import (
    COLUMNS,
    DATE,
    KIND,
    SessionRow,
)
from ultraplanner_gui.wording.words import Words

_MOST_SAID = 4


def read_sessions(outlook: Outlook, words: Words, path: Path) -> PlanChanges:
    """Return what the CSV file at *path* would change; PlanError with a sentence if it is none.

    A line is of the session of its day and kind, else it is a new one. Cells that are empty say
    nothing, columns that the table does not have are passed over. Nothing is removed.
    """
    table = read_csv(path)
    columns = {say(column.name).casefold(): column for column in COLUMNS}
    at = {
        columns[head.casefold()].name: number
        for number, head in enumerate(table.heads)
        if head.casefold() in columns
    }
    if DATE not in at:
        raise StoreError(
            QT_TRANSLATE_NOOP(
                "Export", "{0} has no column “Date”. Export the sessions once to see its heads."
            ),
            path.name,
        )
    return _Reading(outlook, words, at).changes(table)


@dataclass(slots=True)
class _Reading:
    """One file being read; `at` says in which cell of a line each column stands."""

    outlook: Outlook
    words: Words
    at: Mapping[str, int]

    def changes(self, table: CsvTable) -> PlanChanges:
        found: list[tuple[Message, Edit]] = []
        left_out: list[Message] = []
        taken: set[str] = set()
        untouched = 0
        for number, line in enumerate(table.lines, 2):
            try:
                change = self._change(line, taken)
            except PlanError as error:
                text = QT_TRANSLATE_NOOP("Export", "Left out: line {0}. {1}")
                left_out.append(message(text, number, self.words.say(error.message)))
                continue
            if change is None:
                untouched += 1
            else:
                found.append(change)
        return PlanChanges(tuple(found), tuple(left_out), untouched)

    def _change(self, line: tuple[str, ...], taken: set[str]) -> tuple[Message, Edit] | None:
        day = reading.read_date(self._cell(line, DATE), self.outlook.today, self.words)
        names: dict[str, str] = {kind: kinds.say(kinds.FULL[kind]) for kind in Kind}
        named = self._cell(line, KIND)
        kind = Kind(reading.read_choice(named, names)) if named else Kind.EASY
        there = [
            s
            for s in self.outlook.project.block.sessions
            if (s.day, s.kind) == (day, kind) and s.key not in taken
        ]
        if not there:
            if kind is Kind.RACE:
                raise PlanError(
                    QT_TRANSLATE_NOOP("Export", "The race is set under Race and runner.")
                )
            return self._added(line, day, kind)
        taken.add(there[0].key)
        return self._changed(line, there[0])

    def _added(self, line: tuple[str, ...], day: date, kind: Kind) -> tuple[Message, Edit]:
        project = self.outlook.project
        new = replace(easy_run(project, day), key="", kind=kind, distance_m=0.0, duration_s=0.0)
        after = AddSession(new).apply(project)
        known = {s.key for s in project.block.sessions}
        (made,) = (s for s in after.block.sessions if s.key not in known)
        steps, _ = self._steps(line, made, after)
        session = next(s for s in _done(after, steps).block.sessions if s.key == made.key)
        said = message(
            QT_TRANSLATE_NOOP("Export", "Add {0} on {1}: {2}, {3}."),
            kinds.say(kinds.FULL[kind]),
            self.words.day_and_year(day),
            Quantity(session.distance_m, "m"),
            Quantity(session.duration_s, "s"),
        )
        return said, AddSession(replace(session, key=""))

    def _changed(self, line: tuple[str, ...], session: Session) -> tuple[Message, Edit] | None:
        steps, said = self._steps(line, session, self.outlook.project)
        if not steps:
            return None
        text = message(
            QT_TRANSLATE_NOOP("Export", "Change {0} on {1}: {2}."),
            kinds.say(kinds.FULL[session.kind]),
            self.words.day_and_year(session.day),
            ", ".join(said[:_MOST_SAID]),
        )
        return text, ImportSessions(tuple(steps))

    def _steps(
        self, line: tuple[str, ...], session: Session, project: Project
    ) -> tuple[list[Edit], list[str]]:
        """Return the edits that make *session* as *line* has it, and each change in words."""
        steps: list[Edit] = []
        said: list[str] = []
        for column in COLUMNS:
            if column.name in (DATE, KIND) or column.parse is None:
                continue
            text = self._cell(line, column.name)
            row = _row(project, session.key)
            if not text or not column.can_edit(row) or _is_same(column, row, text, self.words):
                continue
            edit = column.parse(row, typed(column, text, self.words), self.words)
            if edit is None:
                continue
            after = edit.apply(project)
            if after == project:
                continue
            was = copied_text(column, row, self.words) or "–"
            now = copied_text(column, _row(after, session.key), self.words) or "–"
            arrow = "←" if self.words.leftward else "→"
            said.append(f"{say(column.name)} {was} {arrow} {now}")
            steps.append(edit)
            project = after
        return steps, said

    def _cell(self, line: tuple[str, ...], name: str) -> str:
        return line[self.at[name]].strip() if name in self.at else ""


def _is_same(column: Column[SessionRow], row: SessionRow, text: str, words: Words) -> bool:
    return copied_text(column, row, words) == text


def _row(project: Project, key: str) -> SessionRow:
    return SessionRow(key, project.block.session(key), 0)


def _done(project: Project, steps: list[Edit]) -> Project:
    for step in steps:
        project = step.apply(project)
    return project

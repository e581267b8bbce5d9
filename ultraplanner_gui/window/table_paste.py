"""What a paste would change, found out on a trial before anything happens."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from msgspec.structs import replace

from ultraplanner_gui.edits.compound import PasteCells
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import (
    Aim,
    Keyed,
    Mark,
    cell_text,
    copied_text,
    edited_text,
    say,
    typed,
)
from ultraplanner_gui.widgets.table_text import check_cell
from ultraplanner_gui.window.table_clipboard import Sheet, lay_out
from ultraplanner_gui.window.table_spec import TableSpec
from ultraplanner_gui.wording.words import Words

WHOLE_ROW = -1
MOST_NEW_ROWS = 500

STAYS = QT_TRANSLATE_NOOP("Tables", "This cell cannot be typed over.")
NOTHING_NEW = QT_TRANSLATE_NOOP(
    "Tables", "Nothing to change: the table shows what the clipboard holds."
)
BLANKS = QT_TRANSLATE_NOOP("Tables", "Empty cells leave what stands there.")
PAST_THE_END = QT_TRANSLATE_NOOP("Tables", "Lines left out past the last row: {0}.")
PAST_THE_FILTER = QT_TRANSLATE_NOOP(
    "Tables", "Lines left out past the last row: {0}. Clear the filter to add rows."
)
WOULD_BECOME = QT_TRANSLATE_NOOP("Tables", "would become {0}")

Cells = dict[int, str]


class Finding(Value, frozen=True):
    """One line of the preview: a cell of the row *row*, or a new row as a whole.

    `reason` says why a cell or row cannot be taken.
    """

    key: str
    row: str
    column: int
    where: str
    head: str
    now: str
    becomes: str
    reason: Message | None = None

    @property
    def is_new_row(self) -> bool:
        """Whether this is a whole row."""
        return self.column == WHOLE_ROW


class PastePlan(Value, frozen=True):
    """What a paste would do, what it cannot do, and the edits behind it."""

    findings: tuple[Finding, ...]
    edits: tuple[Edit, ...]
    notes: tuple[Message, ...] = ()
    is_one_cell: bool = False

    @property
    def edit(self) -> Edit:
        """The one edit that does it all."""
        return self.edits[0] if len(self.edits) == 1 else PasteCells(self.edits)

    @property
    def refused(self) -> tuple[Finding, ...]:
        """What cannot be taken."""
        return tuple(f for f in self.findings if f.reason is not None)

    @property
    def cells(self) -> int:
        """How many cells of rows there are would change."""
        return sum(f.reason is None and not f.is_new_row for f in self.findings)

    @property
    def new_rows(self) -> int:
        """How many rows would be added."""
        return sum(f.reason is None and f.is_new_row for f in self.findings)

    def marks(self, words: Words) -> dict[tuple[str, int], Mark]:
        """Return what to mark in the table, by row and column."""
        return {
            (f.row, f.column): Mark(say(WOULD_BECOME).format(f.becomes))
            if f.reason is None
            else Mark(words.say(f.reason), is_refused=True)
            for f in self.findings
            if f.row
        }


def plan_paste(
    spec: TableSpec[Any], outlook: Outlook, aim: Aim, text: str, words: Words, is_filtered: bool
) -> PastePlan:
    """Return what pasting *text* would do; PlanError if it cannot be read as cells at all."""
    sheet = lay_out(text, spec.columns, aim, words)
    if sheet.lines and not any(spec.columns[n].parse for line in sheet.lines for n in line):
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "Nothing in these columns can be typed over."))
    trial = _Trial(spec, outlook, words)
    trial.paste(sheet, aim, is_filtered)
    return PastePlan(
        trial.findings(), tuple(trial.edits), (*sheet.notes, *trial.notes), sheet.is_one_cell
    )


class _Trial:
    """The project as it would be, cell after cell, column after column.

    Column by column, because a later column may be read by what an earlier one changed: a
    pace by the length of its section.
    """

    def __init__(self, spec: TableSpec[Any], outlook: Outlook, words: Words) -> None:
        self._spec, self._outlook, self._words = spec, outlook, words
        self._before = self._rows_of(outlook)
        self._rows = dict(self._before)
        self._changed: list[tuple[str, int]] = []
        self._new: dict[str, Cells] = {}
        self._refused: list[Finding] = []
        self.edits: list[Edit] = []
        self.notes: list[Message] = []

    def paste(self, sheet: Sheet, aim: Aim, is_filtered: bool) -> None:
        """Try every line on its row, and those past the last row as new ones."""
        jobs, over = self._matched(sheet.lines, aim.keys)
        self._add_lines([line for line in over if any(line.values())], is_filtered)
        jobs += self._new.items()
        for column in range(len(self._spec.columns)):
            wanted = [(key, line[column]) for key, line in jobs if line.get(column, "").strip()]
            if wanted and self._spec.columns[column].parse is not None:
                self._change(column, self._news(column, wanted))
        if self._leaves_blanks(jobs):
            self.notes.append(Message(BLANKS))

    def findings(self) -> tuple[Finding, ...]:
        """Return what cannot be taken, then what would change, both row after row."""
        cells = [self._cell(key, column) for key, column in self._changed if key not in self._new]
        new = [self._new_row(key, line) for key, line in self._new.items()]
        order = {key: number for number, key in enumerate(self._before)}

        def place(found: Finding) -> tuple[int, int]:
            return order.get(found.row, len(order)), found.column

        changed = sorted((f for f in cells if f.now != f.becomes), key=place)
        return (*sorted(self._refused, key=place), *changed, *new)

    # Which line goes where

    def _matched(
        self, lines: Iterable[Cells], keys: tuple[str, ...]
    ) -> tuple[list[tuple[str, Cells]], list[Cells]]:
        """Return the lines with the rows they go to, and those past the last row.

        A row nothing can be typed into, the finish, takes only the line that names it, or an
        empty one that comes to lie on it.
        """
        fixed = [row for row in self._before.values() if not self._is_typed_over(row)]
        jobs: list[tuple[str, Cells]] = []
        over: list[Cells] = []
        ahead = list(keys)
        for line in lines:
            if any(self._names(line, row) for row in fixed):
                continue
            is_empty = not any(text.strip() for text in line.values())
            while ahead and not self._is_typed_over(self._before[ahead[0]]):
                del ahead[0]
                if is_empty:
                    break
            else:
                if ahead:
                    jobs.append((ahead.pop(0), line))
                else:
                    over.append(line)
        return jobs, over

    def _is_typed_over(self, row: Keyed) -> bool:
        return any(spec.parse is not None and spec.can_edit(row) for spec in self._spec.columns)

    def _names(self, line: Cells, row: Keyed) -> bool:
        first = min(line, default=0)
        return line.get(first, "").strip() in filter(None, self._texts(row, first))

    def _add_lines(self, lines: list[Cells], is_filtered: bool) -> None:
        if not lines:
            return
        if self._spec.add_line is None or is_filtered or len(lines) > MOST_NEW_ROWS:
            can_add = self._spec.add_line is not None and is_filtered
            template = PAST_THE_FILTER if can_add else PAST_THE_END
            self.notes.append(Message(template, (self._words.number(len(lines)),)))
            return
        project = self._outlook.project
        for number, line in enumerate(lines):
            project = self._add_line(project, number, line)
        self._outlook = self._derived(project)
        self._rows = self._rows_of(self._outlook)

    def _add_line(self, project: Project, number: int, line: Cells) -> Project:
        """Return *project* with *line* as a row more, itself if it cannot be one."""
        assert self._spec.add_line is not None
        columns = self._spec.columns

        def cell(name: str) -> str:
            column = next(n for n, spec in enumerate(columns) if spec.name == name)
            return typed(columns[column], line.get(column, ""), self._words)

        try:
            for text in line.values():
                check_cell(text)
            edit = self._spec.add_line(replace(self._outlook, project=project), cell, self._words)
            after = edit.apply(project)
        except PlanError as error:
            said = _joined(text.strip() for _, text in sorted(line.items()))
            where = say(QT_TRANSLATE_NOOP("Tables", "new row {0}")).format(number + 1)
            self._refused.append(
                Finding(f"line-{number}", "", WHOLE_ROW, where, "", "", said, error.message)
            )
            return project
        # The figures are renewed once for all: which rows there are does not hang on them.
        rows = self._rows_of(replace(self._outlook, project=after, fuel=None))
        self._new[next(key for key in rows if key not in self._rows)] = line
        self._rows = rows
        self.edits.append(edit)
        return after

    # Cells

    def _news(self, column: int, wanted: list[tuple[str, str]]) -> list[tuple[str, str]]:
        """Return the cells that say something else than the table does, and can be read."""
        news = []
        for key, text in wanted:
            if key in self._before and text.strip() in self._texts(self._before[key], column):
                continue
            try:
                check_cell(text)
                self._check_editable(key, column, text)
            except PlanError as error:
                self._refuse(key, column, text, error)
                continue
            news.append((key, text))
        return news

    def _check_editable(self, key: str, column: int, text: str) -> None:
        """Raise PlanError for a cell that stays as it is, with the reason of its edit if any."""
        spec, row = self._spec.columns[column], self._rows[key]
        if spec.can_edit(row):
            return
        assert spec.parse is not None
        edit = spec.parse(row, typed(spec, text, self._words), self._words)
        if edit is not None:
            edit.apply(self._outlook.project)
        raise PlanError(STAYS)

    def _change(self, column: int, wanted: list[tuple[str, str]]) -> None:
        """Try the cells of one column, those again without which the table would read the same."""
        while wanted:
            project, edits, refused = self._typed_in(column, wanted)
            outlook = self._derived(project)
            rows = self._rows_of(outlook)
            same = {
                key
                for key in edits
                if key in self._before
                and key in rows
                and self._texts(rows[key], column) == self._texts(self._before[key], column)
            }
            if same:
                wanted = [(key, text) for key, text in wanted if key not in same]
                continue
            for key, text in wanted:
                if key in refused:
                    self._refuse(key, column, text, refused[key])
            self.edits += edits.values()
            self._changed += [(key, column) for key in edits]
            self._outlook, self._rows = outlook, rows
            return

    def _typed_in(
        self, column: int, wanted: list[tuple[str, str]]
    ) -> tuple[Project, dict[str, Edit], dict[str, PlanError]]:
        """Return the project with the cells in it, their edits, and what was refused why.

        What is refused is tried again after the others: a station can move on once the next
        one has.
        """
        spec, project = self._spec.columns[column], self._outlook.project
        assert spec.parse is not None
        edits: dict[str, Edit] = {}
        refused: dict[str, PlanError] = {}
        pending = wanted
        while pending:
            refused = {}
            for key, text in pending:
                try:
                    edit = spec.parse(self._rows[key], typed(spec, text, self._words), self._words)
                    after = project if edit is None else edit.apply(project)
                except PlanError as error:
                    refused[key] = error
                    continue
                if edit is not None and after != project:
                    project, edits[key] = after, edit
            left = [(key, text) for key, text in pending if key in refused]
            pending = left if len(left) < len(pending) else []
        return project, edits, refused

    def _refuse(self, key: str, column: int, text: str, error: PlanError) -> None:
        row = self._before.get(key) or self._rows[key]
        spec = self._spec.columns[column]
        now = edited_text(spec, row, self._words) if key in self._before else ""
        self._refused.append(
            Finding(
                f"{key}-{column}-refused",
                key if key in self._before else "",
                column,
                self._spec.title(row, self._words),
                self._head(column),
                now,
                _joined((text.strip(),)),
                error.message,
            )
        )

    def _cell(self, key: str, column: int) -> Finding:
        spec, before = self._spec.columns[column], self._before[key]
        after = self._rows.get(key, before)
        return Finding(
            f"{key}-{column}",
            key,
            column,
            self._spec.title(before, self._words),
            self._head(column),
            cell_text(spec, before, self._words),
            cell_text(spec, after, self._words),
        )

    def _new_row(self, key: str, line: Cells) -> Finding:
        row = self._rows[key]
        columns = [self._spec.columns[n] for n in sorted(line) if self._spec.columns[n].parse]
        said = _joined(edited_text(spec, row, self._words) for spec in columns)
        where = say(QT_TRANSLATE_NOOP("Tables", "new row"))
        return Finding(f"{key}-new", "", WHOLE_ROW, where, "", "", said)

    def _head(self, column: int) -> str:
        spec = self._spec.columns[column]
        return ", ".join(filter(None, (say(spec.name), spec.unit(self._words))))

    def _leaves_blanks(self, jobs: list[tuple[str, Cells]]) -> bool:
        return any(
            not text.strip()
            and spec.parse is not None
            and edited_text(spec, self._before[key], self._words)
            for key, line in jobs
            if key in self._before
            for column, text in line.items()
            for spec in (self._spec.columns[column],)
        )

    def _texts(self, row: Keyed, column: int) -> tuple[str, str]:
        spec = self._spec.columns[column]
        return edited_text(spec, row, self._words), copied_text(spec, row, self._words)

    def _derived(self, project: Project) -> Outlook:
        return derive(project, self._outlook, self._outlook.today)

    def _rows_of(self, outlook: Outlook) -> dict[str, Keyed]:
        return {row.key: row for row in self._spec.rows(outlook)}


def _joined(texts: Iterable[str]) -> str:
    """Return what cells say in one short line."""
    text = " · ".join(" ".join(text.split()) for text in texts if text.strip())
    return text if len(text) <= 160 else text[:159] + "…"

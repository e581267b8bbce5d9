"""A plain table of things that have a key: what is in it, typed over, sorted and filtered."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from itertools import groupby
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.table_column import (
    NO,
    YES,
    Column,
    Keyed,
    Mark,
    SortValue,
    cell_text,
    copied_text,
    edited_text,
    in_gesture,
    say,
    typed,
)
from ultraplanner_gui.widgets.table_filter import RowFilter
from ultraplanner_gui.wording.words import Words

#: From this length on a cell says its whole text as a tip.
LONG_TEXT = 24

Index = QModelIndex | QPersistentModelIndex
Role = Qt.ItemDataRole
Flag = Qt.ItemFlag

# Joined once: Qt asks for them at every cell it paints.
TO_READ = Flag.ItemIsEnabled | Flag.ItemIsSelectable | Flag.ItemNeverHasChildren
TO_TYPE = TO_READ | Flag.ItemIsEditable
TO_TICK = TO_READ | Flag.ItemIsUserCheckable


class TableModel(QAbstractTableModel):
    """Rows of one kind under `Column`s; typing into a cell performs an edit.

    `refused` carries the `Message` that says why a typed text cannot be used. Rows are told
    apart by their keys, so that what is selected stays selected when others come and go.
    `group` tells which rows belong together; a rule parts them in the rows' own order.
    """

    refused = Signal(object)

    def __init__(
        self,
        columns: Sequence[Column[Any]],
        words: Callable[[], Words],
        perform: Callable[[Edit], bool],
        group: Callable[[Any], object] | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.columns = tuple(columns)
        self.alignments = tuple(alignment(column) for column in self.columns)
        self._group = group
        self.was_refused = False
        self._words_now, self._perform = words, perform
        self._words = words()
        self.tip_of: Callable[[int], str] = no_tip
        self._given: tuple[Keyed, ...] = ()
        self._rows: list[Keyed] = []
        self._sorted_by, self._is_falling = -1, False
        self._filter = RowFilter(self._all_text)
        self._marks: dict[tuple[str, int], Mark] = {}

    # What is in it

    @property
    def rows(self) -> tuple[Keyed, ...]:
        """The rows in the order they stand in."""
        return tuple(self._rows)

    @property
    def given(self) -> tuple[Keyed, ...]:
        """All rows, those the filter hides too, in their own order."""
        return self._given

    @property
    def is_filtered(self) -> bool:
        """Whether there are words to filter by."""
        return self._filter.is_on

    @property
    def words(self) -> Words:
        """The units and language in use."""
        return self._words

    def thing(self, row: int) -> Keyed:
        """Return what stands in *row*."""
        return self._rows[row]

    def begins_group(self, row: int) -> bool:
        """Whether *row* is the first of a group, all rows being in sight in their own order."""
        is_in_order = self._sorted_by < 0 and not self.is_filtered
        if self._group is None or not is_in_order or not 0 < row < len(self._rows):
            return False
        return self._group(self._rows[row - 1]) != self._group(self._rows[row])

    def row_of(self, key: str) -> int:
        """Return where the row *key* stands, -1 if nowhere."""
        return next((n for n, row in enumerate(self._rows) if row.key == key), -1)

    def head(self, column: int) -> str:
        """Return the head of *column* with its unit: "Distance, km"."""
        name, unit = self.head_parts(column)
        return f"{name}, {unit}" if unit else name

    def head_parts(self, column: int) -> tuple[str, str]:
        """Return name and unit of *column*."""
        spec = self.columns[column]
        return say(spec.name), spec.unit(self._words)

    def text(self, row: int, column: int) -> str:
        """Return what the cell shows, "yes" or "no" for a tick."""
        return cell_text(self.columns[column], self._rows[row], self._words)

    def copied_head(self, column: int) -> str:
        """Return the head of *column* as it is copied."""
        name, unit = self.head_parts(column)
        unit = self.columns[column].copied_unit or unit
        return f"{name}, {unit}" if unit else name

    def copied_text(self, row: int, column: int) -> str:
        """Return the cell as a spreadsheet takes it: nothing for none, no marks for thousands."""
        return copied_text(self.columns[column], self._rows[row], self._words)

    def can_edit(self, row: int, column: int) -> bool:
        """Whether the cell can be typed over."""
        spec = self.columns[column]
        return spec.parse is not None and spec.can_edit(self._rows[row])

    def mark(self, row: int, column: int) -> Mark | None:
        """Return what a paste that is only looked at would do to the cell."""
        return self._marks.get((self._rows[row].key, column)) if self._marks else None

    def warns(self, row: int, column: int) -> bool:
        """Whether the cell is to be marked."""
        warns = self.columns[column].warns
        return warns is not None and warns(self._rows[row])

    # Changes

    def show_rows(self, rows: Iterable[Keyed]) -> None:
        """Show *rows* instead, touching no cell that stays as it is."""
        self._words = self._words_now()
        self._given = tuple(rows)
        self._arrange()

    def filter(self, text: str) -> None:
        """Show only rows whose cells hold every word of *text*."""
        self._filter.choose(text, self._given)
        self._arrange()

    def show_marks(self, marks: Mapping[tuple[str, int], Mark]) -> None:
        """Mark the cells, by key of the row and column, that a paste would change."""
        self._marks = dict(marks)
        if self._rows:
            corner = self.index(len(self._rows) - 1, len(self.columns) - 1)
            self.dataChanged.emit(self.index(0, 0), corner)

    def _arrange(self) -> None:
        wanted = self._in_order(self._filter.let_through(self._given))
        self._drop({row.key for row in wanted})
        there = {row.key for row in self._rows}
        self._put_in_order([row.key for row in wanted if row.key in there])
        self._insert(wanted)
        self._replace(wanted)

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Sort by *column*; -1 gives the rows' own order back."""
        self._sorted_by, self._is_falling = column, order is Qt.SortOrder.DescendingOrder
        self._arrange()

    def type_in(self, row: int, column: int, text: str, gesture: int = 0) -> bool:
        """Take *text* as typed into the cell; return whether it was taken or changed nothing.

        Edits of the same *gesture* other than 0 are one step of the undo list.
        """
        self.was_refused = False
        parse = self.columns[column].parse
        if parse is None or not self.can_edit(row, column):
            return False
        spec, thing = self.columns[column], self._rows[row]
        plain = typed(spec, text, self._words)
        if plain in (edited_text(spec, thing, self._words), self.copied_text(row, column)):
            return True
        try:
            edit = parse(thing, plain, self._words)
        except PlanError as error:
            self.was_refused = True
            self.refused.emit(error.message)
            return False
        if edit is None:
            return True
        self.was_refused = not self._perform(in_gesture(edit, gesture))
        return not self.was_refused

    def _all_text(self, row: Keyed) -> str:
        """Return all a row says, a ticked column by its name."""
        said = (
            say(spec.name) * spec.is_checked(row)
            if spec.is_checked is not None
            else spec.text(row, self._words)
            for spec in self.columns
        )
        return "\n".join(said)

    def _in_order(self, rows: tuple[Keyed, ...]) -> list[Keyed]:
        if self._sorted_by < 0:
            return list(rows)
        spec = self.columns[self._sorted_by]

        def value(row: Keyed) -> SortValue | None:
            if spec.is_checked is not None:
                return spec.is_checked(row)
            return spec.text(row, self._words).casefold() if spec.value is None else spec.value(row)

        valued = [(value(row), row) for row in rows]
        known = [pair for pair in valued if pair[0] is not None]
        known.sort(key=lambda pair: pair[0], reverse=self._is_falling)  # type: ignore[arg-type,return-value]
        return [row for _, row in known] + [row for v, row in valued if v is None]

    def _drop(self, keys: set[str]) -> None:
        for first, last in reversed(
            _runs(n for n, r in enumerate(self._rows) if r.key not in keys)
        ):
            self.beginRemoveRows(QModelIndex(), first, last)
            del self._rows[first : last + 1]
            self.endRemoveRows()

    def _put_in_order(self, keys: list[str]) -> None:
        if keys == [row.key for row in self._rows]:
            return
        self.layoutAboutToBeChanged.emit()
        old = self.persistentIndexList()
        place = {key: n for n, key in enumerate(keys)}
        new = [self.index(place[self._rows[i.row()].key], i.column()) for i in old]
        self._rows.sort(key=lambda row: place[row.key])
        self.changePersistentIndexList(old, new)
        self.layoutChanged.emit()

    def _insert(self, wanted: list[Keyed]) -> None:
        there = {row.key for row in self._rows}
        for first, last in _runs(n for n, row in enumerate(wanted) if row.key not in there):
            self.beginInsertRows(QModelIndex(), first, last)
            self._rows[first:first] = wanted[first : last + 1]
            self.endInsertRows()

    def _replace(self, wanted: list[Keyed]) -> None:
        for number, row in enumerate(wanted):
            before = self._rows[number]
            if before is row or before == row:
                continue
            self._rows[number] = row
            changed = (n for n, spec in enumerate(self.columns) if self._differs(spec, before, row))
            for first, last in _runs(changed):
                self.dataChanged.emit(self.index(number, first), self.index(number, last))

    def _differs(self, spec: Column[Any], before: Keyed, after: Keyed) -> bool:
        words = self._words
        return (
            spec.text(before, words) != spec.text(after, words)
            or (spec.is_checked is not None and spec.is_checked(before) != spec.is_checked(after))
            or (spec.warns is not None and spec.warns(before) != spec.warns(after))
            or spec.can_edit(before) != spec.can_edit(after)
        )

    # What Qt asks

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own default
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own default
        return 0 if parent.isValid() else len(self.columns)

    def data(self, index: Index, role: int = Role.DisplayRole) -> object:
        if not index.isValid():
            return None
        row, column = index.row(), index.column()
        spec = self.columns[column]
        if role == Role.DisplayRole:
            return None if spec.is_checked is not None else self.text(row, column)
        if role == Role.EditRole:
            return edited_text(spec, self._rows[row], self._words)
        if role == Role.CheckStateRole and spec.is_checked is not None:
            is_checked = spec.is_checked(self._rows[row])
            return Qt.CheckState.Checked if is_checked else Qt.CheckState.Unchecked
        if role == Role.TextAlignmentRole:
            return self.alignments[column]
        if role == Role.AccessibleTextRole:
            mark = self.mark(row, column)
            text = self.text(row, column)
            return text if mark is None else f"{text}, {mark.text}"
        if role == Role.ToolTipRole:
            mark = self.mark(row, column)
            text = self.text(row, column) if mark is None else mark.text
            return text if mark is not None or len(text) >= LONG_TEXT else None
        return None

    def setData(self, index: Index, value: object, role: int = Role.EditRole) -> bool:
        if not index.isValid() or role not in (Role.EditRole, Role.CheckStateRole):
            return False
        if role == Role.CheckStateRole:
            # Qt hands the state over as a number in some versions, as the enumerator in others.
            value = say(YES if Qt.CheckState(value) is Qt.CheckState.Checked else NO)
        return self.type_in(index.row(), index.column(), str(value))

    def flags(self, index: Index) -> Flag:
        if not index.isValid():
            return Flag.NoItemFlags
        if not self.can_edit(index.row(), index.column()):
            return TO_READ
        is_tick = self.columns[index.column()].is_checked is not None
        return TO_TICK if is_tick else TO_TYPE

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Role.DisplayRole
    ) -> object:
        if orientation is Qt.Orientation.Vertical:
            return section + 1 if role == Role.DisplayRole else None
        if not 0 <= section < len(self.columns):
            return None
        if role in (Role.DisplayRole, Role.AccessibleTextRole):
            return self.head(section)
        if role == Role.ToolTipRole:
            return say(self.columns[section].help_text) or self.tip_of(section) or None
        if role == Role.TextAlignmentRole:
            return self.alignments[section]
        return None


def no_tip(column: int) -> str:
    """Return no tip at all."""
    return ""


def alignment(spec: Column[Any]) -> Qt.AlignmentFlag:
    """Return how the cells and the head of a column are aligned."""
    align = Qt.AlignmentFlag
    if spec.is_checked is not None:
        return align.AlignCenter
    return align.AlignVCenter | (align.AlignRight if spec.is_figure else align.AlignLeft)


def _runs(numbers: Iterable[int]) -> list[tuple[int, int]]:
    """Return ascending *numbers* as runs of neighbours, first and last of each."""
    runs: list[tuple[int, int]] = []
    for _, group in groupby(enumerate(numbers), key=lambda pair: pair[1] - pair[0]):
        run = [number for _, number in group]
        runs.append((run[0], run[-1]))
    return runs

"""The runner's own lines for the days before the race."""

from __future__ import annotations

from datetime import time

from PySide6.QtWidgets import QHeaderView, QLabel, QVBoxLayout, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.head import SetOwnDays
from ultraplanner_gui.plan.logistics import OwnDay
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.widgets.edit_form import EditForm
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.line_fields import RowsField
from ultraplanner_gui.wording.words import Words

_WIDTH_PX, _HEIGHT_PX = 620.0, 260.0
_UNREAD = QT_TRANSLATE_NOOP(
    "Plan", "Line {0}: give days before the race as 3, a time as 18:00, and what to do."
)


class OwnDaysForm(EditForm):
    """A line each: how many days before, at what time, what; kept as one step."""

    def __init__(self, document: Document, words: Words, parent: QWidget | None = None) -> None:
        title = QT_TRANSLATE_NOOP("Forms", "Own lines for the last days")
        super().__init__(document, words, title, "before the start", parent)
        fields = QWidget(self)
        box = QVBoxLayout(fields)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(Space.NEAR)
        note = QLabel(
            self.tr("They join the table Before the start and the card of the last ten days."),
            fields,
        )
        note.setWordWrap(True)
        dress(note, Pt.LABEL, theme().colours.soft)
        heads = (self.tr("Days before"), self.tr("At"), self.tr("What"))
        own = document.project.logistics.own_days
        rows = [(words.number(d.days_before), _clock(d.at_s), d.text) for d in own]
        self.table = RowsField(heads, rows, fields)
        self.table.setAccessibleName(self.tr("Own lines"))
        set_topic(self.table, "before the start")
        for column in range(len(heads) - 1):
            fitted = QHeaderView.ResizeMode.ResizeToContents
            self.table.horizontalHeader().setSectionResizeMode(column, fitted)
        self.table.setMinimumHeight(round(theme().px(_HEIGHT_PX)))
        box.addWidget(note)
        box.addWidget(self.table)
        self.finish(fields, self.tr("&Keep"), _WIDTH_PX)

    def edit(self) -> Edit:
        return SetOwnDays(
            tuple(self._day(row, number) for number, row in enumerate(self.table.filled, 1))
        )

    def _day(self, row: tuple[str, ...], number: int) -> OwnDay:
        days, at, text = row
        before = self._words.parse_number(days)
        clock = self._words.parse_clock(at) if at else time(18)
        if before is None or before != round(before) or clock is None or not text:
            raise PlanError(_UNREAD, number)
        return OwnDay(int(before), clock.hour * 3600.0 + clock.minute * 60.0, text)


def _clock(at_s: float) -> str:
    hour, minute = divmod(round(at_s / 60.0), 60)
    return f"{hour:02d}:{minute:02d}"

"""This week at a glance: each day, planned and done side by side, marked by single keys."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.session_words import kept_sessions
from ultraplanner_gui.plan.block import Kind, Session, week_start
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table_heads import align_heads
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

WIDTH_PX, HEIGHT_PX = 660.0, 470.0
DAY, SESSION, PLANNED, DONE, LOAD = range(5)


class WeekPanel(QDialog):
    """Seven days with their sessions; D done, C changed, M missed, U neither.

    It stays open beside the sheet and follows it.
    """

    def __init__(
        self,
        document: Document,
        selection: Selection,
        deeds: SessionDeeds,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._selection = document, selection
        self._deeds, self._words = deeds, words
        self._start = week_start(document.before.today, document.project.first_weekday)
        self._keys: list[str] = []
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "this week")
        self.head = QLabel("", self)
        self.head.setWordWrap(True)
        self.table = _Table(self._on_key, self)
        self.foot = QLabel("", self)
        self.foot.setWordWrap(True)
        set_topic(self.head, "weekly distance")
        set_topic(self.table, "this week")
        set_topic(self.foot, "what to keep")
        self._lay_out()
        self.table.itemSelectionChanged.connect(self._on_row)
        self.table.itemDoubleClicked.connect(self._on_double_clicked)
        document.changed.connect(self._on_changed)
        theme().changed.connect(self.refresh)
        self.refresh()
        self._select_today()

    @Slot()
    def refresh(self) -> None:
        """Show the week anew."""
        words, outlook = self._words(), self._document.before
        block, start = outlook.project.block, self._start
        week = next((w for w in outlook.weeks if w.start == start), None)
        self.setWindowTitle(self.tr("Week of {0}").format(words.day(start)))
        keep = kept_sessions([s for s in block.sessions if 0 <= (s.day - start).days < 7])
        rows: list[tuple[date, Session | None]] = []
        for number in range(7):
            day = start + timedelta(days=number)
            rows += [(day, s) for s in block.on(day)] or [(day, None)]
        here = self.table.currentRow()
        self.table.blockSignals(True)
        self.table.setRowCount(len(rows))
        self._keys = ["" if s is None else s.key for _, s in rows]
        for row, (day, session) in enumerate(rows):
            is_first = row == 0 or rows[row - 1][0] != day
            self._fill(row, day if is_first else None, session, keep, outlook.today)
        self.table.blockSignals(False)
        self.table.resizeRowsToContents()
        if 0 <= here < len(rows):
            self.table.setCurrentCell(here, SESSION)
        look = theme()
        dress(self.head, Pt.TEXT, look.colours.ink)
        dress(self.foot, Pt.LABEL, look.colours.soft)
        self.head.setText("" if week is None else kinds.week_sentence(week, words))
        self.foot.setText(
            self.tr(
                "★ the two to keep if the week falls apart (common practice, no source). "
                "Keys: D done as planned, C changed, M missed, U neither."
            )
        )

    def _fill(
        self,
        row: int,
        day: date | None,
        session: Session | None,
        keep: tuple[str, ...],
        today: date,
    ) -> None:
        words = self._words()
        name = "" if day is None else words.day(day)
        if day == today:
            name = self.tr("{0}, today").format(name)
        texts = [name, self.tr("no session"), "", "", ""]
        if session is not None:
            kind = kinds.capital(kinds.say(kinds.FULL[session.kind]))
            star = "★ " if session.key in keep else ""
            texts[SESSION] = f"{star}{kind}"
            texts[PLANNED] = _figures(session.distance_m, session.duration_s, session.kind, words)
            texts[DONE] = self._how(session, today)
            actual = session.actual
            texts[LOAD] = words.number(actual.effort * actual.duration_s / 60.0)
        for column, text in enumerate(texts):
            item = QTableWidgetItem(text)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            if column == LOAD:
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            if session is None and column == SESSION:
                item.setForeground(theme().colours["soft"])
            if session is not None and column == DONE and session.is_open and session.day < today:
                item.setForeground(theme().colours["clay"])
            self.table.setItem(row, column, item)

    def _how(self, session: Session, today: date) -> str:
        words, done = self._words(), session.done
        if done is not None:
            text = _figures(done.distance_m, done.duration_s, session.kind, words)
            return self.tr("{0}, effort {1}").format(text, words.effort(done.effort))
        if session.missed:
            return kinds.say(kinds.MISSED)
        return kinds.say(kinds.PASSED) if session.day < today else ""

    def _lay_out(self) -> None:
        earlier = QPushButton(self.tr("Week &before"), self)
        later = QPushButton(self.tr("Week &after"), self)
        close = QPushButton(self.tr("Close"), self)
        earlier.clicked.connect(self.go_back)
        later.clicked.connect(self.go_on)
        close.clicked.connect(self.close)
        for button in (earlier, later, close):
            button.setAutoDefault(False)
        row = QHBoxLayout()
        for button in (earlier, later):
            row.addWidget(button)
        row.addStretch(1)
        row.addWidget(close)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(self.head)
        box.addWidget(self.table, 1)
        box.addWidget(self.foot)
        box.addLayout(row)
        heads = (
            self.tr("Day"),
            self.tr("Session"),
            self.tr("Planned"),
            self.tr("Done"),
            self.tr("Load"),
        )
        self.table.setColumnCount(len(heads))
        self.table.setHorizontalHeaderLabels(heads)
        align_heads(self.table, (LOAD,))
        for column in (DAY, SESSION, PLANNED, LOAD):
            self.table.horizontalHeader().setSectionResizeMode(
                column, QHeaderView.ResizeMode.ResizeToContents
            )
        self.table.horizontalHeader().setSectionResizeMode(DONE, QHeaderView.ResizeMode.Stretch)
        look = theme()
        self.resize(round(look.px(WIDTH_PX)), round(look.px(HEIGHT_PX)))

    @Slot()
    def go_back(self) -> None:
        """Show the week before."""
        self._turn(-7)

    @Slot()
    def go_on(self) -> None:
        """Show the week after."""
        self._turn(7)

    def _turn(self, days: int) -> None:
        self._start += timedelta(days=days)
        self.refresh()

    def _select_today(self) -> None:
        """Go to the first session that is not marked, up to today."""
        block, today = self._document.project.block, self._document.before.today
        for row, key in enumerate(self._keys):
            if key and (s := block.session(key)).is_open and s.day <= today:
                self.table.setCurrentCell(row, SESSION)
                return
        self.table.setCurrentCell(max(0, (today - self._start).days), SESSION)

    @Slot()
    def _on_row(self) -> None:
        key = self._key()
        if key:
            self._selection.choose("session", key)

    def _key(self) -> str:
        row = self.table.currentRow()
        return self._keys[row] if 0 <= row < len(self._keys) else ""

    def _on_key(self, key: Qt.Key) -> bool:
        """Act on a key pressed in the table; return whether it did."""
        deed = {
            Qt.Key.Key_D: self._deeds.mark_done,
            Qt.Key.Key_M: self._deeds.mark_missed,
            Qt.Key.Key_U: self._deeds.unmark,
            Qt.Key.Key_C: self._deeds.edit_done,
            Qt.Key.Key_Return: self._deeds.edit_done,
            Qt.Key.Key_Enter: self._deeds.edit_done,
        }.get(key)
        if deed is None:
            return False
        chosen = self._key()
        if not chosen:
            return True
        self._selection.choose("session", chosen)
        row = self.table.currentRow()
        deed()
        if key in (Qt.Key.Key_D, Qt.Key.Key_M):
            self._go_on_from(row)
        return True

    def _go_on_from(self, row: int) -> None:
        """Go to the next session; days without one are passed over."""
        after = [n for n in range(row + 1, len(self._keys)) if self._keys[n]]
        if after:
            self.table.setCurrentCell(after[0], SESSION)

    @Slot()
    def _on_double_clicked(self) -> None:
        self._on_key(Qt.Key.Key_C)

    @Slot(object, object)
    def _on_changed(self, before: object, after: object) -> None:
        if self._document.trial_outlook is None:
            self.refresh()


class _Table(QTableWidget):
    """The rows; keys that mark a session act, all others are those of a table."""

    def __init__(self, act: Callable[[Qt.Key], bool], parent: QWidget) -> None:
        super().__init__(parent)
        self._act = act
        self.setAccessibleName(self.tr("Sessions of the week"))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.verticalHeader().hide()
        self.horizontalHeader().setHighlightSections(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.modifiers() or not self._act(Qt.Key(event.key())):
            super().keyPressEvent(event)


def _figures(distance_m: float, duration_s: float, kind: Kind, words: Words) -> str:
    time = words.duration(duration_s)
    if not kind.is_run or distance_m <= 0.0:
        return time
    return f"{words.distance(distance_m, 1)}, {time}"

"""The ledger: the figures of what is selected or being dragged, before and now."""

from __future__ import annotations

import operator
from collections.abc import Callable
from datetime import date
from functools import partial

from PySide6.QtCore import QRect, QSignalBlocker, Qt, Signal, Slot
from PySide6.QtWidgets import QLabel, QPlainTextEdit, QScrollArea, QVBoxLayout, QWidget

from ultraplanner_gui.buildup.nearest_day import Offer, seeker_of
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.desk.typing_pause import TypingPause
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.block_moves import SwapSessions
from ultraplanner_gui.edits.course import NoteHardStretch
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.stations import SetStop
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.course import Course, Section
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.rows import Row, Rows, Rule
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window import ledger_buildup, ledger_race, ledger_station
from ultraplanner_gui.window.ledger_next import TABLE, Begun, Noticed, next_rows, noticed_rows
from ultraplanner_gui.window.ledger_week import ACTION
from ultraplanner_gui.wording.words import Words

#: What of an outlook changes with the build-up alone.
BUILD_UP_PARTS = frozenset(("project", "weeks", "checks", "runway", "asks"))


class Ledger(QScrollArea):
    """Build-up above, race day below: the last of each kind selected stays in view."""

    #: Which table a link leads to, by the kind of its rows and a column.
    table_wanted = Signal(str)

    def __init__(
        self,
        document: Document,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._selection, self._words = document, selection, words
        self._session = self._week = self._section = self._item = self._station = ""
        self._race_shown: tuple[object, ...] = ()
        self._build_up_shown: tuple[object, ...] = ()
        self._begun: Begun | None = None
        self._noticed: tuple[Noticed, ...] = ()
        self._next: tuple[Row, ...] = ()
        self._is_race_first = False
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        inside = QWidget(self)
        inside.setObjectName("ledger")
        self._upper = Rows(self.tr("Build-up figures"), inside)
        self._lower = Rows(self.tr("Race day figures"), inside)
        self._note_head = QLabel(self.tr("&When it gets hard here"), inside)
        self._note = QPlainTextEdit(inside)
        self._note.setTabChangesFocus(True)
        self._note.setAcceptDrops(False)  # so that a course dropped here reaches the window
        self._note.setPlaceholderText(self.tr("If …, then …"))
        self._note_head.setBuddy(self._note)
        self._note.setAccessibleName(self.tr("When it gets hard here"))
        self._box = QVBoxLayout(inside)
        self._box.setContentsMargins(Space.WIDE, Space.WIDE, Space.WIDE, Space.WIDE)
        self._box.setSpacing(Space.APART)
        for widget in (self._upper, self._lower, self._note_head, self._note):
            self._box.addWidget(widget)
        self._box.addStretch(1)
        self._inside = inside
        self.setWidget(inside)
        self._pause = TypingPause(self._note, self._note_edit, document.perform, self)
        self._seeker = seeker_of(document)
        self._seeker.found.connect(self._refresh)
        for rows in (self._upper, self._lower):
            rows.chosen.connect(self._on_chosen)
        for rows in (self._upper, self._lower):
            rows.reached.connect(partial(self._bring_into_sight, rows))
        set_topics({self: "ledger", self._note: "when it gets hard"})
        document.changed.connect(self._on_changed)
        selection.changed.connect(self._on_selected)
        theme().changed.connect(self._dress)
        self._dress()
        self._on_selected()

    def begin(self, notes: tuple[str, ...]) -> None:
        """Show first steps in a plan just made, and the *notes* of its making."""
        project = self._document.project
        self._begun = Begun(project)
        self.notice(project.block, self.tr("Noticed while making it"), notes)

    def notice(self, part: Block | Course, title: str, notes: tuple[str, ...]) -> None:
        """Show the *notes* on a *part* of the plan under *title*, as long as it stays as it is."""
        others = tuple(n for n in self._noticed if n.is_of(self._document.project))
        others = tuple(n for n in others if n.part is not part)
        self._noticed = (*others, Noticed(part, title, notes)) if notes else others
        self._refresh()

    def flush(self) -> None:
        """Keep what is still being typed."""
        self._pause.flush()

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        kept = self._document.before
        # The start of the race is dragged without being selected.
        is_race = after.race is not kept.race and after.project.block is kept.project.block
        if is_race and self._document.trial_outlook is not None:
            self._put_first(True)
        self._refresh()

    @Slot()
    def _on_selected(self) -> None:
        self.flush()
        kind, key = self._selection.kind, self._selection.key
        if kind == "session":
            self._session, self._week = key, ""
        elif kind == "week":
            self._session, self._week = "", key
        elif kind in ("section", "station", "item"):
            self._section = key if kind == "section" else ""
            self._station = key if kind == "station" else ""
            self._item = key if kind == "item" else ""
        elif not kind:
            self._session = self._week = self._section = self._item = self._station = ""
        if kind:
            self._put_first(kind not in ("session", "week"))
        self._refresh()

    def _bring_into_sight(self, rows: Rows, place: QRect) -> None:
        top, margin = rows.mapTo(self._inside, place.topLeft()), round(theme().px(8))
        for y in (top.y() + place.height(), top.y()):
            self.ensureVisible(0, y, 0, margin)

    @Slot(str)
    def _on_chosen(self, target: str) -> None:
        kind, _, key = target.partition(":")
        if kind == ledger_buildup.MEND:
            self._mend(key)
        elif kind == ledger_station.SET_STOP:
            station, _, stop_s = key.rpartition(":")
            self._document.perform(SetStop(station, float(stop_s)))
        elif kind == ACTION:
            table = getattr(self.window(), "table", None)
            if table is not None:
                table.by_name[key].trigger()
        elif kind == TABLE:
            self.table_wanted.emit(key)
        elif kind == ledger_buildup.TO_DAY:
            session, _, day = key.rpartition(":")
            self._document.perform(MoveSession(session, date.fromisoformat(day)))
        elif kind == ledger_buildup.SWAP:
            one, _, other = key.partition(":")
            self._document.perform(SwapSessions(one, other))
        else:
            keys = key.split(",")
            self._selection.choose_all(kind, keys, keys[0])

    def _mend(self, place: str) -> None:
        """Do what the check at *place* in the list of checks proposes."""
        checks = self._document.outlook.checks
        mend = checks[int(place)].mend if int(place) < len(checks) else None
        if mend is not None:
            from ultraplanner_gui.edits.training import MendBlock

            self._document.perform(MendBlock(mend))

    def _put_first(self, race_first: bool) -> None:
        if race_first == self._is_race_first:
            return
        self._is_race_first = race_first
        race: list[QWidget] = [self._lower, self._note_head, self._note]
        order = [*race, self._upper] if race_first else [self._upper, *race]
        for widget in order:
            self._box.removeWidget(widget)
        for place, widget in enumerate(order):
            self._box.insertWidget(place, widget)
        self.verticalScrollBar().setValue(0)

    @Slot()
    def _refresh(self) -> None:
        now, before, words = self._document.shown, self._document.before, self._words()
        # What hangs from the pointer comes first: a copy or a new one is not selected yet.
        session = self._seeker.held or self._session
        better = self._seeker.offer_for(session) if session else None
        is_young = not session and not self._week
        steps = next_rows(now, self._begun) if is_young else ()
        steps = (*steps, *noticed_rows(now, self._noticed))
        self._next = self._next if steps == self._next else steps
        chosen = (words, self._next, session, self._selected(), self._week, better, now is before)
        # A drag in one storey leaves the other alone: nothing is done about it then.
        parts = (*chosen, *_build_up_parts(now), *_build_up_parts(before))
        if not _are_same(parts, self._build_up_shown):
            self._build_up_shown = parts
            self._upper.show_rows(self._upper_rows(now, before, words, better))
        parts = (
            words,
            self._section,
            self._station,
            self._item,
            *_race_parts(now),
            *_race_parts(before),
        )
        if not _are_same(parts, self._race_shown):
            self._race_shown = parts
            self._lower.show_rows(self._lower_rows(now, before, words))
        self._show_note(now)

    def _upper_rows(
        self, now: Outlook, before: Outlook, words: Words, better: Offer | None
    ) -> tuple[Row, ...]:
        session = self._seeker.held or self._session
        if session:
            several = self._selected()
            rows = ledger_buildup.session_rows(now, before, session, words, better, several)
        else:
            rows = ledger_buildup.build_up_rows(now, before, words, self._week)
        is_chosen = bool(session or self._week)
        return (*rows, Rule(), *self._next) if is_chosen and self._next else (*self._next, *rows)

    def _selected(self) -> tuple[str, ...]:
        """Return the keys of all sessions selected, if nothing else hangs from the pointer."""
        is_session = self._selection.kind == "session"
        keys = self._selection.keys if is_session else ()
        return keys if (self._seeker.held or self._session) in keys else ()

    def _lower_rows(self, now: Outlook, before: Outlook, words: Words) -> tuple[Row, ...]:
        if self._section:
            return ledger_race.section_rows(now, before, self._section, words)
        if self._station:
            rows = ledger_station.station_rows(now, before, self._station, words)
            return rows or ledger_race.race_rows(now, before, words)
        return (
            *ledger_race.item_rows(now, self._item, words),
            *ledger_race.race_rows(now, before, words),
        )

    def _show_note(self, now: Outlook) -> None:
        section = self._noted(now)
        for widget in (self._note_head, self._note):
            widget.setVisible(section is not None)
        ahead = self.tr("&When it gets hard on the way from here")
        here = self.tr("&When it gets hard here")
        self._note_head.setText(ahead if self._station else here)
        if (
            section is not None
            and not self._pause.is_pending
            and self._note.toPlainText() != section.hard_note
        ):
            with QSignalBlocker(self._note):
                self._note.setPlainText(section.hard_note)

    def _noted(self, outlook: Outlook) -> Section | None:
        """Return the section the note is about: that selected, or the one a station leads to."""
        course = outlook.project.course
        key = self._section
        if course is not None and self._station:
            at_m = next(
                (s.at_m for s in course.stations if s.key == self._station), course.length_m
            )
            key = next((s.key for s in outlook.sections if s.end_m > at_m), "")
        sections = course.sections if course is not None else ()
        return next((s for s in sections if s.key == key), None)

    def _note_edit(self, text: str, gesture: int) -> Edit | None:
        section = self._noted(self._document.outlook)
        return NoteHardStretch(section.key, text, gesture) if section is not None else None

    def _dress(self) -> None:
        look = theme()
        self.setFixedWidth(round(look.px(296)))
        self._note.setFixedHeight(round(look.px(76)))
        self._race_shown = self._build_up_shown = ()
        c = look.colours
        dress(self._note_head, Pt.TEXT, c.ink, bold=True)
        self.setStyleSheet(
            f"QScrollArea {{ background: {c.panel}; border-left: 1px solid {c.line}; }}"
            f"QWidget#ledger {{ background: {c.panel}; }}"
        )


def _race_parts(outlook: Outlook) -> tuple[object, ...]:
    """Return what of *outlook* race day is made of."""
    project = outlook.project
    facts = (
        *(project.race, project.course, project.runner, project.fuel),
        *(project.conditions, project.pacing, project.logistics),
    )
    return (
        *(getattr(outlook, n) for n in outlook.__struct_fields__ if n not in BUILD_UP_PARTS),
        *facts,
    )


def _build_up_parts(outlook: Outlook) -> tuple[object, ...]:
    """Return what of *outlook* the figures of the build-up are made of.

    What the race asks is made anew every time, but no other figures follow from the same.
    """
    project = outlook.project
    facts = project.block, project.runner, project.race, project.first_weekday, project.fuel.foods
    return (outlook.weeks, outlook.checks, outlook.runway, outlook.today, *facts)


def _are_same(parts: tuple[object, ...], shown: tuple[object, ...]) -> bool:
    """Whether *parts* are those *shown*, each the very same."""
    return len(parts) == len(shown) and all(map(operator.is_, parts, shown))

"""For the head: what to picture, lines for hard hours, worries, three kinds of day."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QMenu,
    QPushButton,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.head import ChangeHead
from ultraplanner_gui.engine.head import Proposal, days_of, pictures, proposals
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.head import DayGoal, DayKind, Head, Worry
from ultraplanner_gui.plan.logistics import IfThen
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.widgets.edit_form import EditForm
from ultraplanner_gui.widgets.fields import DurationField
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table_column import say
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.line_fields import LinesField, RowsField
from ultraplanner_gui.wording.words import Words

_WIDTH_PX, _HEIGHT_PX = 780.0, 560.0
_LONGEST_S = 240 * 3600.0
DAYS = {
    DayKind.GOOD: QT_TRANSLATE_NOOP("Tables", "A good day"),
    DayKind.FAIR: QT_TRANSLATE_NOOP("Tables", "A fair day"),
    DayKind.HARD: QT_TRANSLATE_NOOP("Tables", "A hard day"),
}


_PLACE = 2
_NO_STATION = QT_TRANSLATE_NOOP(
    "Plan", "{0} is no aid station of this course. Leave it empty for anywhere."
)


class HeadForm(EditForm):
    """Four pages, kept as one step; what the plan proposes is taken line by line or not at all."""

    def __init__(self, document: Document, words: Words, parent: QWidget | None = None) -> None:
        title = QT_TRANSLATE_NOOP("Forms", "For the head")
        super().__init__(document, words, title, "head", parent)
        outlook = document.before
        head = outlook.project.head
        self.pictures = _Pictures(outlook, words, self)
        self.lines = _Lines(outlook, words, self)
        self.worries = _Worries(head, self)
        self.days = _Days(outlook, words, self)
        pages = QTabWidget(self)
        pages.addTab(self.pictures, self.tr("To &picture"))
        pages.addTab(self.lines, self.tr("&If … then"))
        pages.addTab(self.worries, self.tr("&Worries"))
        pages.addTab(self.days, self.tr("&Three kinds of day"))
        pages.setMinimumHeight(round(theme().px(_HEIGHT_PX)))
        self.pages = pages
        self.finish(pages, self.tr("&Keep"), _WIDTH_PX)

    def edit(self) -> Edit:
        head = Head(
            worries=self.worries.worries(),
            goals=self.days.goals(),
            pictures=self.pictures.own.lines,
        )
        return ChangeHead(head, self.lines.lines())


class _Pictures(QWidget):
    """What the plan makes to picture, and the runner's own lines under it."""

    def __init__(self, outlook: Outlook, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        set_topic(self, "to picture")
        self.list = QListWidget(self)
        self.list.setWordWrap(True)
        self.list.setAccessibleName(self.tr("To picture, from the plan"))
        self.list.setSpacing(Space.TIGHT)
        self.list.addItems([words.say(p.text) for p in pictures(outlook, words)])
        self.own = LinesField(outlook.project.head.pictures, self)
        self.own.setAccessibleName(self.tr("To picture, in your words"))
        self.own.setMaximumHeight(round(theme().px(110)))
        box = QVBoxLayout(self)
        box.addWidget(
            _note(
                self.tr(
                    "Ten minutes, quiet, at the pace it will have: where you are, what you see, "
                    "what you do. On days marked for it in the build-up."
                ),
                self,
            )
        )
        box.addWidget(self.list, 1)
        box.addWidget(_head(self.tr("In your words, one to a line"), self))
        box.addWidget(self.own)


class _Lines(QWidget):
    """The runner's lines, those the plan proposes beside them, and where each was tried."""

    def __init__(self, outlook: Outlook, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        set_topic(self, "if-then lines")
        project, course = outlook.project, outlook.project.course
        self._names = {s.key: s.name for s in course.stations} if course is not None else {}
        sessions = [s for s in project.block.sessions if _can_try(s)]
        self._words = words
        heads = (self.tr("If"), self.tr("then"), self.tr("on the way to"))
        rows = [(x.when, x.then, self._names.get(x.station, "")) for x in project.logistics.if_then]
        self.table = RowsField(heads, rows, self)
        self.table.setAccessibleName(self.tr("Lines for hard hours"))
        for row, line in enumerate(project.logistics.if_then):
            self._keep(row, 0, line.tried)
            self._keep(row, _PLACE, line.station)
        self.offers = QListWidget(self)
        self.offers.setWordWrap(True)
        self.offers.setSpacing(Space.TIGHT)
        self.offers.setAccessibleName(self.tr("Proposed by the plan"))
        for offer in proposals(outlook, words):
            self._offer(offer, {row[:2] for row in rows})
        self.take = QPushButton(self.tr("Take the &ticked"), self)
        self.take.setAutoDefault(False)
        self.take.clicked.connect(self._on_take)
        self.tried_in = QPushButton(self)
        self.tried_in.setAutoDefault(False)
        self.tried_in.setAccessibleName(self.tr("Sessions it was tried in"))
        menu = QMenu(self.tried_in)
        self.tried_in.setMenu(menu)
        self.runs = {s.key: menu.addAction(self._session(s)) for s in sessions}
        for action in self.runs.values():
            action.setCheckable(True)
        menu.triggered.connect(self._on_tried)
        self.table.currentCellChanged.connect(self._on_row)
        self.table.cellChanged.connect(self._on_row)
        self._lay_out()
        self._on_row()

    def lines(self) -> tuple[IfThen, ...]:
        """Return the lines, each with where it was tried; PlanError for a place unknown."""
        found = []
        for row in range(self.table.rowCount()):
            when, then, place = self._texts(row)
            if when or then or place:
                found.append(IfThen(when, then, self._station(row, place), self._tried(row)))
        return tuple(found)

    def _texts(self, row: int) -> tuple[str, str, str]:
        texts = []
        for column in range(self.table.columnCount()):
            item = self.table.item(row, column)
            texts.append(item.text().strip() if item is not None else "")
        return texts[0], texts[1], texts[2]

    def _station(self, row: int, place: str) -> str:
        """Return the key of a place: that of the row if its name stands there still."""
        item = self.table.item(row, _PLACE)
        key = str(item.data(Qt.ItemDataRole.UserRole) or "") if item is not None else ""
        wanted = place.casefold()
        # A station that is gone has no name; what is said of it stays with its key.
        if key and self._names.get(key, "").casefold() == wanted:
            return key
        if not wanted:
            return ""
        for other, name in self._names.items():
            if name.casefold() == wanted:
                return other
        raise PlanError(_NO_STATION, place[:60])

    def _tried(self, row: int) -> tuple[str, ...]:
        item = self.table.item(row, 0)
        kept = item.data(Qt.ItemDataRole.UserRole) if item is not None else None
        return tuple(str(key) for key in kept or ())

    def _keep(self, row: int, column: int, what: object) -> None:
        item = self.table.item(row, column)
        if item is not None:
            item.setData(Qt.ItemDataRole.UserRole, what)

    def _session(self, session: Session) -> str:
        return f"{self._words.day(session.day)}, {kinds.say(kinds.FULL[session.kind])}"

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        row.addWidget(QLabel(self.tr("The chosen line was tried in"), self))
        row.addWidget(self.tried_in)
        row.addStretch(1)
        box = QVBoxLayout(self)
        box.addWidget(self.table, 2)
        box.addLayout(row)
        box.addWidget(_head(self.tr("The plan proposes; tick what is yours"), self))
        box.addWidget(self.offers, 3)
        box.addWidget(self.take, 0, Qt.AlignmentFlag.AlignLeft)

    def _offer(self, offer: Proposal, there: set[tuple[str, ...]]) -> None:
        when, then = self._words.say(offer.when), self._words.say(offer.then)
        if (when, then) in there:
            return
        text = self.tr("If {0}, then {1}").format(when, then)
        item = QListWidgetItem(text, self.offers)
        place = self._names.get(offer.station, "")
        item.setData(Qt.ItemDataRole.UserRole, (when, then, place, offer.station))
        item.setCheckState(Qt.CheckState.Unchecked)

    @Slot()
    def _on_take(self) -> None:
        for number in reversed(range(self.offers.count())):
            item = self.offers.item(number)
            if item.checkState() is Qt.CheckState.Checked:
                self.table.append(item.data(Qt.ItemDataRole.UserRole)[:3])
                row = self.table.rowCount() - 2
                self._keep(row, _PLACE, item.data(Qt.ItemDataRole.UserRole)[3])
                self.offers.takeItem(number)

    @Slot()
    def _on_row(self) -> None:
        row = self.table.currentRow()
        tried = self._tried(row) if row >= 0 else ()
        self.tried_in.setEnabled(row >= 0 and any(self._texts(row)[:2]) and bool(self.runs))
        for key, action in self.runs.items():
            action.setChecked(key in tried)
        names = [action.text() for key, action in self.runs.items() if key in tried]
        text = "; ".join(names[:2]) or self.tr("not tried yet")
        self.tried_in.setText(f"{text} …" if len(names) > 2 else text)

    @Slot()
    def _on_tried(self) -> None:
        row = self.table.currentRow()
        if row >= 0:
            gone = tuple(key for key in self._tried(row) if key not in self.runs)
            now = tuple(key for key, action in self.runs.items() if action.isChecked())
            self._keep(row, 0, (*gone, *now))


class _Worries(QWidget):
    def __init__(self, head: Head, parent: QWidget) -> None:
        super().__init__(parent)
        set_topic(self, "worries")
        heads = (self.tr("I worry about"), self.tr("and this is done about it"))
        self.table = RowsField(heads, [(w.text, w.remedy) for w in head.worries], self)
        self.table.setAccessibleName(self.tr("Worries and what is done about them"))
        box = QVBoxLayout(self)
        box.addWidget(
            _note(
                self.tr(
                    "Written down, a worry is a thing to do: a call, a run in the dark, a spare "
                    "lamp. What cannot be changed gets a line of what you do if it comes."
                ),
                self,
            )
        )
        box.addWidget(self.table, 1)
        box.addWidget(
            _note(
                self.tr(
                    "Fear that stays, nights without sleep for weeks, no joy in anything: that is "
                    "for a doctor or therapist, not for a plan."
                ),
                self,
            )
        )

    def worries(self) -> tuple[Worry, ...]:
        """Return the worries."""
        return tuple(Worry(*row) for row in self.table.filled)


class _Days(QWidget):
    """Three goals; an empty finish is the one reckoned."""

    def __init__(self, outlook: Outlook, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        set_topic(self, "three kinds of day")
        head, reckoned = outlook.project.head, {d.kind: d for d in days_of(outlook)}
        self.fields: dict[DayKind, tuple[DurationField, QLineEdit]] = {}
        grid = QGridLayout(self)
        grid.setVerticalSpacing(Space.WIDE)
        grid.setHorizontalSpacing(Space.APART)
        grid.setColumnStretch(2, 1)
        for column, text in enumerate(("", self.tr("Finish"), self.tr("What counts"))):
            grid.addWidget(_head(text, self), 0, column)
        for row, (kind, name) in enumerate(DAYS.items(), 1):
            goal, day = head.goal(kind), reckoned.get(kind)
            finish = DurationField(words, 60.0, _LONGEST_S, optional=True, parent=self)
            finish.setAccessibleName(self.tr("{0}: finish").format(say(name)))
            if goal.finish_s is not None:
                finish.set_value(goal.finish_s)
            elif day is not None:
                finish.setPlaceholderText(words.duration(day.finish_s))
            counts = QLineEdit(goal.text, self)
            counts.setAccessibleName(self.tr("{0}: what counts").format(say(name)))
            if day is not None:
                counts.setPlaceholderText(words.say(day.text))
            self.fields[kind] = (finish, counts)
            grid.addWidget(QLabel(say(name), self), row, 0)
            grid.addWidget(finish, row, 1)
            grid.addWidget(counts, row, 2)
        note = self.tr(
            "Reckoned: of 10,000 simulated races a tenth is faster than the good day, half than "
            "the fair one, nine tenths than the hard one. No promise: whatever the day, to stop "
            "in time counts too."
        )
        grid.addWidget(_note(note, self), len(DAYS) + 1, 0, 1, 3)
        grid.setRowStretch(len(DAYS) + 2, 1)

    def goals(self) -> tuple[DayGoal, ...]:
        """Return the goals that were set; PlanError for a finish that cannot be read."""
        found = []
        for kind, (finish, text) in self.fields.items():
            finish.take_typed()
            if not finish.reads(finish.text()):
                raise PlanError(QT_TRANSLATE_NOOP("Plan", "Type a finish as 20 h 16, or nothing."))
            goal = DayGoal(kind, text.text().strip(), finish.value_s)
            if goal != DayGoal(kind):
                found.append(goal)
        return tuple(found)


def _can_try(session: Session) -> bool:
    return session.kind.is_run and session.kind is not Kind.RACE and session.duration_s >= 3600.0


def _note(text: str, parent: QWidget) -> QLabel:
    label = QLabel(text, parent)
    label.setWordWrap(True)
    dress(label, Pt.LABEL, theme().colours.soft)
    return label


def _head(text: str, parent: QWidget) -> QLabel:
    label = QLabel(text, parent)
    dress(label, Pt.TEXT, theme().colours.ink, bold=True)
    return label

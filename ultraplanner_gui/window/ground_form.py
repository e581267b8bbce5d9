"""Ground at hand: what there is at home, and sessions that stand in for a stretch of the race."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import partial

from PySide6.QtCore import QDate, Qt, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.edits.block import AddSession, ChangeSession
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.training import RemoveGround
from ultraplanner_gui.engine.stand_in import StandIn, as_session, stand_ins, stretch_of
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind, Repeat
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.fields import DateField, WholeField
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.rows import Figure, Heads, Row, Rows, Rule, Sentence, Title
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.ground_fields import GroundForm, ground_name, ground_sentence
from ultraplanner_gui.wording.words import Words

TOPIC = "ground at hand"
WIDTH_PX, HEIGHT_PX, COLUMN_PX, LEFT_PX = 980.0, 590.0, 262.0, 270.0
USUAL_MIN, MOST_MIN = 120, 480


class GroundPage(QDialog):
    """What there is on the left, the sessions it makes of a stretch side by side on the right."""

    def __init__(
        self,
        document: Document,
        words: Callable[[], Words],
        add_loop: Callable[[], None],
        section: str = "",
        day: date | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._words, self._add_loop = document, words, add_loop
        self.setWindowTitle(self.tr("Ground at hand"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, TOPIC)
        self._columns = QHBoxLayout()
        self._columns.setSpacing(Space.WIDE)
        box = QHBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(round(theme().px(26.0)))
        box.addWidget(self._left(section, day))
        box.addWidget(self._right(), 1)
        look = theme()
        self.resize(round(look.px(WIDTH_PX)), round(look.px(HEIGHT_PX)))
        self._shown: object = None
        document.changed.connect(self._on_changed)
        self.stretch.currentIndexChanged.connect(self.refresh)
        self.most.valueChanged.connect(self.refresh)
        self.day.dateChanged.connect(self.refresh)
        self.refresh()

    # What there is

    def _left(self, section: str, day: date | None) -> QWidget:
        left = QWidget(self)
        left.setFixedWidth(round(theme().px(LEFT_PX)))
        head = QLabel(self.tr("What there is"), left)
        dress(head, Pt.HEAD, theme().colours.ink, bold=True)
        self.list = QListWidget(left)
        self.list.setAccessibleName(self.tr("Grounds at hand"))
        self.list.setWordWrap(True)
        self.list.itemDoubleClicked.connect(self._on_change)
        buttons = QHBoxLayout()
        self.add = QPushButton(self.tr("&Add…"), left)
        loop = QPushButton(self.tr("Add a &loop…"), left)
        self.change = QPushButton(self.tr("C&hange…"), left)
        self.remove = QPushButton(self.tr("&Remove"), left)
        for button, slot in (
            (self.add, self._on_add),
            (loop, self._on_add_loop),
            (self.change, self._on_change),
            (self.remove, self._on_remove),
        ):
            button.setAutoDefault(False)
            button.clicked.connect(slot)
        for button in (self.add, loop):
            buttons.addWidget(button)
        more = QHBoxLayout()
        for button in (self.change, self.remove):
            more.addWidget(button)
        for row in (buttons, more):
            row.addStretch(1)
        box = QVBoxLayout(left)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(head)
        box.addWidget(self.list, 1)
        box.addLayout(buttons)
        box.addLayout(more)
        box.addSpacing(Space.APART)
        box.addWidget(self._asked(section, day))
        set_topics({self.list: TOPIC})
        return left

    def _asked(self, section: str, day: date | None) -> QWidget:
        fields = FormColumn(self)
        fields.add_head(self.tr("Stretch and day"))
        self.stretch = QComboBox(fields)
        self.stretch.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.stretch.setMinimumContentsLength(12)
        self.stretch.addItem(self.tr("the whole race"), "")
        for figures in self._document.outlook.sections:
            self.stretch.addItem(self.tr("to {0}").format(figures.name), figures.key)
        self.stretch.setCurrentIndex(max(0, self.stretch.findData(section)))
        self.most = WholeField(self._words(), 20, MOST_MIN, "min", 10, fields)
        self.most.setValue(USUAL_MIN)
        self.day = DateField(fields)
        wanted = day or self._document.before.today
        self.day.setDate(QDate(wanted.year, wanted.month, wanted.day))
        fields.add(self.tr("S&tretch"), self.stretch, TOPIC)
        fields.add(self.tr("At &most"), self.most, TOPIC)
        fields.add(self.tr("&Day"), self.day, TOPIC)
        fields.end()
        return fields

    def _right(self) -> QWidget:
        right = QWidget(self)
        self.asked = QLabel("", right)
        set_topic(self.asked, TOPIC)
        self.asked.setWordWrap(True)
        inside = QWidget(right)
        held = QVBoxLayout(inside)
        held.setContentsMargins(0, 0, 0, Space.NEAR)
        held.addLayout(self._columns)
        held.addStretch(1)
        area = QScrollArea(right)
        area.setWidget(inside)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        close = QPushButton(self.tr("Close"), right)
        close.setAutoDefault(False)
        close.clicked.connect(self.close)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(close)
        box = QVBoxLayout(right)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.asked)
        box.addWidget(area, 1)
        box.addLayout(foot)
        return right

    # What it makes

    @Slot()
    def refresh(self) -> None:
        """Show the grounds and the sessions they make of the stretch anew."""
        self._fill_list()
        while self._columns.count():
            item = self._columns.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        made = self.made()
        dress(self.asked, Pt.STRONG, theme().colours.ink)
        self.asked.setText(self._what_is_asked(bool(made)))
        for stand_in in made:
            self._columns.addWidget(self._column(stand_in))
        self._columns.addStretch(1)

    def made(self) -> tuple[StandIn, ...]:
        """Return the sessions that stand in for the stretch, the best match first."""
        outlook = self._document.outlook
        if outlook.profile is None or outlook.target is None:
            return ()
        start_m, end_m = self._ends()
        stretch = stretch_of(outlook.profile, outlook.target, start_m, end_m)
        runner = self._document.project.runner
        return stand_ins(stretch, runner.grounds, runner, 60.0 * self.most.value())

    def _ends(self) -> tuple[float, float]:
        outlook, key = self._document.outlook, self.stretch.currentData()
        section = next((s for s in outlook.sections if s.key == key), None)
        if section is not None:
            return section.start_m, section.end_m
        assert outlook.profile is not None
        return 0.0, outlook.profile.length_m

    def _what_is_asked(self, has_made: bool) -> str:
        outlook, words = self._document.outlook, self._words()
        if outlook.profile is None or outlook.target is None:
            return self.tr("There is no course yet, so no stretch to match.")
        start_m, end_m = self._ends()
        stretch = stretch_of(outlook.profile, outlook.target, start_m, end_m)
        text = self.tr("The stretch: {0}, {1} on feet, climb {2}, drop {3}.").format(
            words.distance(stretch.length_m, 1),
            words.duration(stretch.whole_s),
            words.height(sum(stretch.climb_m)),
            words.height(sum(stretch.drop_m)),
        )
        if not self._document.project.runner.grounds:
            nothing = self.tr("Say on the left what there is where you live.")
            return f"{text} {nothing}"
        unmatched = self.tr("Nothing of it can be matched here.")
        return text if has_made else f"{text} {unmatched}"

    def _column(self, stand_in: StandIn) -> QWidget:
        words, project = self._words(), self._document.project
        column = QWidget(self)
        name = grounds_named(stand_in, project.runner.grounds)
        rows = Rows(name, column)
        rows.show_rows(stand_in_rows(stand_in, project.runner.grounds, words))
        put = QPushButton(self._put_text(), column)
        put.setAccessibleName(self.tr("{0}: {1}").format(self._put_text(), name))
        set_topic(put, TOPIC)
        put.setAutoDefault(False)
        put.clicked.connect(partial(self._put_in, stand_in))
        box = QVBoxLayout(column)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(rows)
        box.addWidget(put, 0, Qt.AlignmentFlag.AlignLeft)
        column.setFixedWidth(max(round(theme().px(COLUMN_PX)), put.sizeHint().width()))
        box.addStretch(1)
        return column

    def _put_text(self) -> str:
        day = _day(self.day.date())
        run = run_on(self._document.project, day)
        if run is None:
            return self.tr("Put it on {0}").format(self._words().day(day))
        name = kinds.say(kinds.FULL[run.kind])
        return self.tr("Run the {0} of {1} so").format(name, self._words().day(day))

    def _put_in(self, stand_in: StandIn) -> None:
        self._document.perform(put_in(self._document.project, stand_in, _day(self.day.date())))

    # The list

    def _fill_list(self) -> None:
        words, row = self._words(), self.list.currentRow()
        self.list.clear()
        for ground in self._document.project.runner.grounds:
            item = QListWidgetItem(ground_sentence(ground, words))
            item.setData(Qt.ItemDataRole.UserRole, ground.key)
            self.list.addItem(item)
        self.list.setCurrentRow(min(max(row, 0), self.list.count() - 1))
        for button in (self.change, self.remove):
            button.setEnabled(self.list.count() > 0)

    def _chosen(self) -> GroundAtHand | None:
        item = self.list.currentItem()
        key = None if item is None else item.data(Qt.ItemDataRole.UserRole)
        grounds = self._document.project.runner.grounds
        return next((g for g in grounds if g.key == key), None)

    @Slot()
    def _on_add(self) -> None:
        GroundForm(self._document, None, self._words(), self).open()

    @Slot()
    def _on_add_loop(self) -> None:
        self._add_loop()

    @Slot()
    def _on_change(self) -> None:
        ground = self._chosen()
        if ground is not None:
            GroundForm(self._document, ground, self._words(), self).open()

    @Slot()
    def _on_remove(self) -> None:
        ground = self._chosen()
        if ground is not None:
            self._document.perform(RemoveGround(ground.key))

    @Slot(object, object)
    def _on_changed(self, before: object, after: object) -> None:
        project = self._document.project
        parts = (project.runner, project.block, project.course)
        if self._document.trial_outlook is None and parts != self._shown:
            self._shown = parts
            self.refresh()


def run_on(project: Project, day: date) -> Session | None:
    """Return the open run of *day* a stand-in would take the place of; None for none."""
    runs = (s for s in project.block.on(day) if s.kind.is_run and s.kind is not Kind.RACE)
    return next((s for s in runs if s.is_open and not s.locked), None)


def put_in(project: Project, stand_in: StandIn, day: date) -> Edit:
    """Return the edit that runs the session of *day* as *stand_in*, or adds one there."""
    run = run_on(project, day)
    if run is not None:
        return ChangeSession(as_session(stand_in, run))
    new = Session("", day, Kind.HILLS, 0.0, stand_in.time_s, effort=4)
    return AddSession(as_session(stand_in, new))


def grounds_named(stand_in: StandIn, grounds: tuple[GroundAtHand, ...]) -> str:
    """Return the grounds a session is run on, in words."""
    return ", ".join(ground_name(g) for g in grounds if g.key in stand_in.grounds)


def stand_in_rows(
    stand_in: StandIn, grounds: tuple[GroundAtHand, ...], words: Words
) -> tuple[Row, ...]:
    """Return what there is to say of one session: match, figures, parts, what is left out."""
    heights = words.climb_and_drop(stand_in.climb_m, stand_in.drop_m)
    rows: list[Row] = [
        Title(kinds.capital(grounds_named(stand_in, grounds)), topic=TOPIC),
        Figure(tr("Match"), words.percent(100.0 * stand_in.match), topic=TOPIC),
        Figure(tr("Of the stretch"), words.percent(100.0 * stand_in.share), topic=TOPIC),
        Figure(tr("On feet"), words.duration(stand_in.time_s), topic=TOPIC),
        Figure(tr("Distance"), words.distance(stand_in.distance_m, 1), topic=TOPIC),
        Figure(tr("Climb, drop"), heights, topic=TOPIC),
        Rule(),
        Heads(tr("Parts"), topic=TOPIC),
        *(Sentence(part_sentence(r, grounds, words), TOPIC) for r in stand_in.repeats),
    ]
    if stand_in.cannot:
        rows += [Rule(), Heads(tr("What it leaves out"), topic=TOPIC)]
        rows += [Sentence(words.say(text), TOPIC) for text in stand_in.cannot]
    return tuple(rows)


def part_sentence(repeat: Repeat, grounds: tuple[GroundAtHand, ...], words: Words) -> str:
    """Return "6 times 8 min at +11 % on the treadmill"."""
    place = next((g for g in grounds if g.key == repeat.place), None)
    name = tr("any ground") if place is None else ground_name(place)
    time = words.duration(round(repeat.each_s / 60.0) * 60.0)
    if repeat.each_s < 60.0:
        time = tr("{0} s").format(words.number(repeat.each_s))
    if place is not None and place.kind is GroundKind.LOOP:
        return tr("{0} times round {1}, {2} each").format(repeat.count, name, time)
    percent = words.percent(abs(100.0 * repeat.gradient), 1)
    if abs(repeat.gradient) < 0.0005:
        slope = tr("on the level")
    else:
        slope = tr("up {0}") if repeat.gradient > 0 else tr("down {0}")
        slope = slope.format(percent)
    if repeat.count == 1:
        return tr("{0} {1}, {2}").format(time, slope, name)
    return tr("{0} times {1} {2}, {3}").format(repeat.count, time, slope, name)


def _day(day: QDate) -> date:
    return date(day.year(), day.month(), day.day())

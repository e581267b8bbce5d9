"""A race or rehearsal looked back on: planned beside real, where the minutes went, what to keep."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.looking_back import Cause, LookBack, Minutes, SectionBack, look_back
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.rows import Figure, Heads, Row, Rows, Rule, Sentence, Title
from ultraplanner_gui.widgets.table_column import say
from ultraplanner_gui.widgets.table_heads import align_heads
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.window.look_back_food import FoodTaken
from ultraplanner_gui.window.look_back_words import OwnWords
from ultraplanner_gui.window.section_words import end_name
from ultraplanner_gui.window.small_charts import Fill, PileChart, Scale, ticks_between
from ultraplanner_gui.wording.words import NONE, Words

TOPIC = "looking back"
_SIZE_PX = (1120.0, 740.0)
_ROWS_PX = 300.0

CAUSES: dict[Cause, tuple[str, Fill]] = {
    Cause.SPEED: (
        QT_TRANSLATE_NOOP("Tables", "speed throughout"),
        ("teal", Qt.BrushStyle.SolidPattern),
    ),
    Cause.GROUND: (
        QT_TRANSLATE_NOOP("Tables", "climbs and descents"),
        ("ochre", Qt.BrushStyle.BDiagPattern),
    ),
    Cause.FADE: (QT_TRANSLATE_NOOP("Tables", "fade"), ("clay", Qt.BrushStyle.SolidPattern)),
    Cause.DARK: (QT_TRANSLATE_NOOP("Tables", "dark"), ("indigo", Qt.BrushStyle.Dense3Pattern)),
    Cause.STOPS: (QT_TRANSLATE_NOOP("Tables", "stops"), ("stone", Qt.BrushStyle.SolidPattern)),
    Cause.REST: (
        QT_TRANSLATE_NOOP("Tables", "the rest"),
        ("soft", Qt.BrushStyle.DiagCrossPattern),
    ),
}
"""What the causes are called, and how they are filled."""


class Looked(Value, frozen=True):
    """A recording beside its plan; `back` is None where it is not of the course, and `why` says
    so.
    """

    kept: KeptRecording
    outlook: Outlook
    back: LookBack | None
    why: Message | None = None


def looked_back(token: Token, kept: KeptRecording, outlook: Outlook) -> Looked:
    """Return *kept* beside the plan; CourseError if its file can no longer be read."""
    from ultraplanner_gui.exchange.kept_recording import recording_of

    recording = recording_of(kept)
    token.progress(0.4)
    if not kept.is_race:
        return Looked(kept, outlook, None)
    try:
        return Looked(kept, outlook, look_back(outlook, recording))
    except PlanError as error:
        return Looked(kept, outlook, None, error.message)


class LookBackView(QDialog):
    """Everything on one run; what is typed in it is kept at once and can be undone."""

    def __init__(
        self, looked: Looked, document: Document, words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._looked, self._document, self._words = looked, document, words
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        name = looked.kept.name or looked.kept.file
        self.setWindowTitle(self.tr("Looking back: {0}").format(name))
        set_topic(self, TOPIC)
        self.rows = Rows(self.tr("In short"), self)
        self.rows.setFixedWidth(round(theme().px(_ROWS_PX)))
        self.rows.show_rows(tuple(self._summary(name)))
        side = QVBoxLayout()
        side.setContentsMargins(Space.NEAR, 0, 0, 0)
        side.addWidget(self.rows)
        side.addStretch(1)
        self.tabs = QTabWidget(self)
        if looked.back is not None:
            self._add_course(looked.back)
        self.food = FoodTaken(document, looked.kept, looked.outlook, words, self)
        self.tabs.addTab(self.food, self.tr("&Food and drink"))
        self.own = OwnWords(document, looked.kept, words, self)
        self.tabs.addTab(self.own, self.tr("&In your words"))
        row = QHBoxLayout()
        row.setSpacing(Space.WIDE)
        row.addLayout(side)
        row.addWidget(self.tabs, 1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.WIDE, Space.WIDE, Space.WIDE, Space.WIDE)
        box.addLayout(row, 1)
        box.addWidget(buttons)
        width, height = (round(theme().px(size)) for size in _SIZE_PX)
        self.resize(width, height)
        self.tabs.setFocus()

    def done(self, result: int) -> None:
        """Close, keeping what is still being typed."""
        self.own.done()
        super().done(result)

    def _add_course(self, back: LookBack) -> None:
        self.chart = PileChart(self.tr("Minutes lost, by section"), TOPIC, self)
        self.sections = self._table(self._section_heads(), self._section_rows(back))
        self.sections.setAccessibleName(self.tr("Planned and real, by section"))
        self.causes = self._table(self._cause_heads(), self._cause_rows(back))
        self.causes.setAccessibleName(self.tr("Where the minutes went, by section"))
        for table in (self.sections, self.causes):
            table.currentCellChanged.connect(self._on_section)
        self._show_piles(back)
        where = QWidget(self)
        box = QVBoxLayout(where)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(Space.NEAR)
        box.addWidget(self.chart, 3)
        box.addWidget(self._legend())
        box.addWidget(self.causes, 4)
        self.tabs.addTab(where, self.tr("&Where the minutes went"))
        self.tabs.addTab(self.sections, self.tr("&Planned and real"))

    @Slot(int, int, int, int)
    def _on_section(self, row: int, *_others: int) -> None:
        self.chart.choose(row)
        for table in (self.sections, self.causes):
            if table.currentRow() != row:
                table.selectRow(row)

    def _show_piles(self, back: LookBack) -> None:
        words = self._words
        piles = [
            (s.start_m, s.end_m, tuple(s.minutes.of(cause) / 60.0 for cause in Cause))
            for s in back.sections
        ]
        above = [sum(p for p in parts if p > 0.0) for _, _, parts in piles]
        below = [sum(p for p in parts if p < 0.0) for _, _, parts in piles]
        high, low = max([5.0, *above]) * 1.05, min([-5.0, *below]) * 1.05
        step = _step(high - low)
        up = Scale(low, high, tuple((t, words.number(t)) for t in ticks_between(low, high, step)))
        first, last = float(back.edge_m[0]), float(back.edge_m[-1])
        ends = tuple((s.end_m, words.distance_bare(s.end_m)) for s in back.sections)
        across = Scale(first, last, ends)
        self.chart.show_piles(piles, [fill for _, fill in CAUSES.values()], across, up)

    def _legend(self) -> QWidget:
        from ultraplanner_gui.window.look_back_legend import Legend

        return Legend([(say(name), fill) for name, fill in CAUSES.values()], self)

    def _summary(self, name: str) -> list[Row]:
        looked, words = self._looked, self._words
        kept, back = looked.kept, looked.back
        rows: list[Row] = [Title(name, self._day(), TOPIC)]
        if back is None:
            rows += self._beside_session()
            if looked.why is not None:
                rows.append(Sentence(words.say(looked.why), TOPIC))
            return rows
        planned, real = (float(c[-1] - c[0]) for c in (back.planned_s, back.real_s))
        rows += [
            Heads("", self.tr("planned"), self.tr("real"), topic=TOPIC),
            self._both(self.tr("Time"), words.duration(planned), words.duration(real)),
            self._both(
                self.tr("From, to"),
                "",
                f"{words.distance_bare(float(back.edge_m[0]))}, "
                f"{words.distance(float(back.edge_m[-1]))}",
            ),
            self._both(self.tr("Standing"), "", words.duration(kept.elapsed_s - kept.moving_s)),
            Rule(),
            Heads(self.tr("Minutes more than planned"), topic=TOPIC),
        ]
        rows += [
            Figure(say(CAUSES[cause][0]), _minutes(back.minutes, cause, words), topic=TOPIC)
            for cause in Cause
        ]
        total = words.signed(words.number(back.minutes.total_s / 60.0))
        rows.append(Figure(self.tr("In all"), total, topic=TOPIC))
        rows += [Sentence(text, TOPIC) for text in self._remarks(back)]
        return rows

    def _remarks(self, back: LookBack) -> list[str]:
        words, said = self._words, []
        if not back.is_whole:
            said.append(self.tr("Part of the course is recorded; only that is compared."))
        if back.has_hole:
            said.append(self.tr("The recording has a hole; times within it are a straight line."))
        if back.off_share > 0.02:
            off = words.percent(100.0 * back.off_share)
            said.append(self.tr("{0} of the way was off the line of the course.").format(off))
        said.append(
            self.tr(
                "Causes are told apart by a model: read them as a hint, not as a verdict. Heat, "
                "stomach and mood are in speed, fade and the rest."
            )
        )
        return said

    def _beside_session(self) -> list[Row]:
        kept, words = self._looked.kept, self._words
        sessions = self._looked.outlook.project.block.sessions
        session = next((s for s in sessions if s.key == kept.session), None)
        planned_m = session.distance_m if session else None
        planned_s = session.duration_s if session else None
        planned_up = session.climb_m if session else None
        return [
            Heads("", self.tr("planned"), self.tr("real"), topic=TOPIC),
            self._both(
                self.tr("Distance"),
                words.distance(planned_m, 1),
                words.distance(kept.distance_m, 1),
            ),
            self._both(self.tr("Moving"), words.duration(planned_s), words.duration(kept.moving_s)),
            self._both(self.tr("Standing"), "", words.duration(kept.elapsed_s - kept.moving_s)),
            self._both(self.tr("Climb"), words.height(planned_up), words.height(kept.climb_m)),
        ]

    def _both(self, label: str, planned: str, real: str) -> Figure:
        return Figure(label, real, planned, shows_both=True, topic=TOPIC)

    def _day(self) -> str:
        start = self._looked.kept.start
        if start is None:
            return ""
        zone = self._looked.outlook.project.race.start.tzinfo
        return self._words.day_and_year(start.astimezone(zone).date())

    def _section_heads(self) -> list[str]:
        return [
            *(self.tr("To"), self.tr("Planned\narrival"), self.tr("Real"), self.tr("Late,\nmin")),
            *(self.tr("Planned\ntime"), self.tr("Real"), self.tr("Planned\nstop")),
            *(self.tr("Real"), self.tr("Planned\npace"), self.tr("Real")),
            *(self.tr("In\nhand"), self.tr("To\ncutoff")),
        ]

    def _section_rows(self, back: LookBack) -> list[list[str]]:
        return [self._section_row(section) for section in back.sections]

    def _section_row(self, section: SectionBack) -> list[str]:
        words, race = self._words, self._looked.outlook.project.race
        real_s = section.real_arrive_s
        late_s = None if real_s is None else real_s - section.planned_arrive_s
        return [
            self._end(section),
            words.clock(race.clock(section.planned_arrive_s)),
            NONE if real_s is None else words.clock(race.clock(real_s)),
            NONE if late_s is None else words.signed(words.number(late_s / 60.0)),
            words.duration(section.planned_s),
            words.duration(section.real_s),
            words.duration(section.planned_stop_s),
            words.duration(section.real_stop_s),
            words.pace(section.planned_s_per_m),
            words.pace(section.real_s_per_m),
            words.duration(section.in_hand_s),
            words.duration(section.to_cutoff_s),
        ]

    def _end(self, section: SectionBack) -> str:
        outlook = self._looked.outlook
        course = outlook.project.course
        figures = next(s for s in outlook.sections if s.key == section.key)
        if course is None:
            return figures.name
        name = end_name(course.section(section.key), figures, self._words, self.tr("Finish"))
        if section.share > 0.99:
            return name
        share = self._words.percent(100.0 * section.share)
        return self.tr("{0} ({1} of it)").format(name, share)

    def _cause_heads(self) -> list[str]:
        names = (say(name) for name, _ in CAUSES.values())
        return [self.tr("To"), self.tr("In all, min"), *names]

    def _cause_rows(self, back: LookBack) -> list[list[str]]:
        words = self._words
        rows = []
        for section in back.sections:
            minutes = section.minutes
            total = words.signed(words.number(minutes.total_s / 60.0))
            rows.append([self._end(section), total, *(_minutes(minutes, c, words) for c in Cause)])
        return rows

    def _table(self, heads: Sequence[str], rows: Sequence[Sequence[str]]) -> QTableWidget:
        table = QTableWidget(len(rows), len(heads), self)
        table.setHorizontalHeaderLabels(list(heads))
        for number, texts in enumerate(rows):
            for column, text in enumerate(texts):
                item = QTableWidgetItem(text)
                if column:
                    side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
                    item.setTextAlignment(side)
                item.setToolTip(text)
                table.setItem(number, column, item)
        align_heads(table, range(1, len(heads)))
        table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        table.setSelectionBehavior(QTableWidget.SelectionBehavior.SelectRows)
        table.setSelectionMode(QTableWidget.SelectionMode.SingleSelection)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.setWordWrap(False)
        table.verticalHeader().hide()
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        header.setMinimumSectionSize(round(theme().px(46)))
        set_topic(table, TOPIC)
        return table


def _minutes(minutes: Minutes, cause: Cause, words: Words) -> str:
    return words.signed(words.number(minutes.of(cause) / 60.0))


def _step(span: float) -> float:
    return next((s for s in (1.0, 2.0, 5.0, 10.0, 20.0, 30.0, 60.0) if span / s <= 6.0), 120.0)

"""The form that predicts the finish from races and long runs, typed in or recorded."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from msgspec.structs import replace
from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.pace import SetPastRuns, UseAsGoal
from ultraplanner_gui.edits.race import check_past_runs
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.prediction import Prediction, predict, result_of_run
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.pacing import PastRun, ResultKind
from ultraplanner_gui.widgets.fields import describe
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table_heads import align_heads
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.recordings_read import ReadRuns
from ultraplanner_gui.wording.words import Words

WIDTH_PX, TABLE_PX = 640.0, 170.0
NAME, DISTANCE, CLIMB, TIME, KIND = range(5)

_UNREAD = QT_TRANSLATE_NOOP(
    "Plan", "Line {0}: give a distance, a climb and a time, as 50 km, 1900 m, 6 h 40."
)


class RunTable(QTableWidget):
    """Past runs, one to a line; the last line is always empty, ready to be filled."""

    def __init__(
        self, runs: Sequence[PastRun], words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(0, 5, parent)
        self._words = words
        self.setHorizontalHeaderLabels(
            [
                self.tr("Name"),
                self.tr("Distance, {0}").format(words.distance_unit),
                self.tr("Climb, {0}").format(words.height_unit),
                self.tr("Running time"),
                self.tr("Kind"),
            ]
        )
        heads = self.horizontalHeader()
        heads.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        heads.setSectionResizeMode(NAME, QHeaderView.ResizeMode.Stretch)
        self.setWordWrap(False)
        heads.setHighlightSections(False)
        align_heads(self, range(NAME + 1, KIND))
        self.verticalHeader().hide()
        self.setTabKeyNavigation(False)
        triggers = QTableWidget.EditTrigger
        self.setEditTriggers(
            triggers.DoubleClicked
            | triggers.SelectedClicked
            | triggers.AnyKeyPressed
            | triggers.EditKeyPressed
        )
        self.setAccessibleName(self.tr("Past runs"))
        describe(self, self.tr("One run to a line: distance, climb, and time without long stops"))
        for run in runs:
            self._add(run)
        self._add(None)
        self.cellChanged.connect(self._on_changed)

    def runs(self) -> tuple[PastRun, ...]:
        """Return the runs typed in; PlanError naming the line that cannot be read."""
        found = []
        for row in range(self.rowCount()):
            texts = [self._text(row, column) for column in (DISTANCE, CLIMB, TIME)]
            if not any(texts):
                continue
            distance_m = self._words.parse_distance(texts[0])
            climb_m = self._words.parse_height(texts[1] or "0")
            time_s = self._words.parse_duration(texts[2], 3600.0)
            if distance_m is None or climb_m is None or time_s is None:
                raise PlanError(_UNREAD, row + 1)
            kind = ResultKind(self.kind_at(row).currentData())
            typed = PastRun(distance_m, climb_m, time_s, kind, self._text(row, NAME))
            found.append(self._as_recorded(row, typed))
        check_past_runs(tuple(found))
        return tuple(found)

    def take(self, runs: Sequence[PastRun]) -> None:
        """Put *runs* in where the empty line is."""
        self.blockSignals(True)
        self.removeRow(self.rowCount() - 1)
        for run in (*runs, None):
            self._add(run)
        self.blockSignals(False)
        self.cellChanged.emit(0, KIND)

    def _as_recorded(self, row: int, typed: PastRun) -> PastRun:
        """Return *typed*, or what the line was filled with where its figures still stand."""
        item = self.item(row, NAME)
        of = None if item is None else item.data(Qt.ItemDataRole.UserRole)
        texts = tuple(self._text(row, column) for column in (DISTANCE, CLIMB, TIME))
        if isinstance(of, PastRun) and texts == self._texts(of)[DISTANCE:]:
            return replace(of, kind=typed.kind, name=typed.name)
        return typed

    def _texts(self, run: PastRun) -> tuple[str, str, str, str]:
        words = self._words.plain()
        return (
            run.name,
            words.distance_bare(run.distance_m, 1),
            words.height_bare(run.climb_m),
            words.duration(run.time_s),
        )

    def kind_at(self, row: int) -> QComboBox:
        """Return the choice of kind in a line."""
        widget = self.cellWidget(row, KIND)
        assert isinstance(widget, QComboBox)
        return widget

    def _add(self, run: PastRun | None) -> None:
        row = self.rowCount()
        texts = ("", "", "", "") if run is None else self._texts(run)
        self.insertRow(row)
        for column, text in enumerate(texts):
            item = QTableWidgetItem(text)
            if column != NAME:
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            elif run is not None:
                item.setData(Qt.ItemDataRole.UserRole, run)
            self.setItem(row, column, item)
        kind = QComboBox(self)
        kind.addItem(self.tr("race"), ResultKind.RACE)
        kind.addItem(self.tr("long run"), ResultKind.LONG_RUN)
        kind.setCurrentIndex(0 if run is None else list(ResultKind).index(run.kind))
        kind.setAccessibleName(self.tr("Kind of run {0}").format(row + 1))
        kind.currentIndexChanged.connect(self._on_kind_changed)
        self.setCellWidget(row, KIND, kind)

    def _text(self, row: int, column: int) -> str:
        item = self.item(row, column)
        return item.text().strip() if item is not None else ""

    @Slot(int, int)
    def _on_changed(self, row: int, column: int) -> None:
        if row == self.rowCount() - 1 and self._text(row, column):
            self._add(None)

    @Slot()
    def _on_kind_changed(self) -> None:
        self.cellChanged.emit(0, KIND)


class PredictForm(QDialog):
    """Predicts the finish of the race in *outlook*; nothing is changed unless it is asked for."""

    def __init__(
        self,
        outlook: Outlook,
        words: Words,
        sent: Callable[[Edit], str],
        pick: Callable[[Callable[[ReadRuns], None]], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._outlook, self._words, self._sent, self._pick = outlook, words, sent, pick
        self.prediction: Prediction | None = None
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Predict the finish"))
        set_topic(self, "predicted finish")
        self.table = RunTable(outlook.project.runner.past_runs, words, self)
        self.table.setMinimumHeight(round(theme().px(TABLE_PX)))
        set_topic(self.table, "past runs")
        self.left_out = QLabel("", self)
        self.left_out.setWordWrap(True)
        dress(self.left_out, Pt.LABEL, theme().colours.clay)
        self.left_out.hide()
        self.window_line = QLabel("", self)
        self.why = QLabel("", self)
        self.window_line.setAccessibleName(self.tr("Predicted finish"))
        self.why.setAccessibleName(self.tr("Why"))
        for label in (self.window_line, self.why):
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        role = QDialogButtonBox.ButtonRole.ActionRole
        self.add = buttons.addButton(self.tr("Add &recordings…"), role)
        self.keep = buttons.addButton(self.tr("&Keep the runs"), role)
        self.use = buttons.addButton(self.tr("&Use as goal"), role)
        # Enter ends what is typed into a cell and does nothing else, least of all cancel.
        cancel = buttons.button(QDialogButtonBox.StandardButton.Cancel)
        for button in (self.add, self.keep, self.use, cancel):
            button.setAutoDefault(False)
        self.add.clicked.connect(self._on_add)
        self.keep.clicked.connect(self._on_keep)
        self.use.clicked.connect(self._on_use)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(self._intro())
        box.addWidget(self.table, 1)
        for label in (self.left_out, self.window_line, self.why):
            box.addWidget(label)
        box.addWidget(buttons)
        self.resize(round(theme().px(WIDTH_PX)), round(theme().px(2.6 * TABLE_PX)))
        self.table.cellChanged.connect(self.reckon)
        self.reckon()

    @Slot()
    def reckon(self) -> None:
        """Predict anew from what is typed, or say why it cannot be done."""
        race, words = self._outlook.race, self._words
        self.prediction, trouble = None, ""
        try:
            runs = self.table.runs()
            if race is not None and runs:
                results = [result_of_run(run) for run in runs]
                stops, runner = race.forecast.stops, self._outlook.project.runner
                self.prediction = predict(race.profile, results, stops, runner)
        except PlanError as error:
            trouble = words.say(error.message)
        self.use.setEnabled(self.prediction is not None)
        self.keep.setEnabled(not trouble)
        look = theme().colours
        if self.prediction is None:
            dress(self.window_line, Pt.TEXT, look.clay if trouble else look.soft)
            self.window_line.setText(
                trouble or self.tr("Type in a race or a long run, or add recordings.")
            )
            self.why.setText("")
            return
        dress(self.window_line, Pt.HEAD, look.ink, bold=True)
        self.window_line.setText(self._window_text(self.prediction))
        dress(self.why, Pt.LABEL, look.soft)
        self.why.setText("\n".join(words.say(reason) for reason in self.prediction.reasons))

    @Slot()
    def _on_add(self) -> None:
        self._pick(self.take_recordings)

    def take_recordings(self, found: ReadRuns) -> None:
        """Add what was read from recordings; say which could not be used, and why."""
        self.table.take(found.runs)
        if found.left_out:
            words = self._words
            self.left_out.setText(
                "\n".join(
                    self.tr("Left out: {0}. {1}").format(name, words.say(why))
                    for name, why in found.left_out
                )
            )
            self.left_out.show()
        box = self.layout()
        if box is not None:
            box.activate()
            wanted = box.totalHeightForWidth(self.width())
            self.resize(self.width(), max(self.height(), wanted))

    def _window_text(self, found: Prediction) -> str:
        words = self._words
        return self.tr("{0}, on 8 of 10 days between {1} and {2}. Aimed for now: {3}.").format(
            words.duration(found.middle_s),
            words.duration(found.low_s),
            words.duration(found.high_s),
            words.duration(self._outlook.project.race.goal_s),
        )

    def _intro(self) -> QLabel:
        label = QLabel(
            self.tr(
                "What you have run lately, the longer and the more like this race the better. "
                "Nothing in the plan changes until you say so."
            ),
            self,
        )
        label.setWordWrap(True)
        dress(label, Pt.TEXT, theme().colours.ink)
        return label

    @Slot()
    def _on_keep(self) -> None:
        self._send(SetPastRuns(self.table.runs()))

    @Slot()
    def _on_use(self) -> None:
        found = self.prediction
        if found is not None:
            goal_s = round(found.middle_s / 60.0) * 60.0
            self._send(UseAsGoal(goal_s, round(found.spread, 4), self.table.runs()))

    def _send(self, edit: Edit) -> None:
        trouble = self._sent(edit)
        if not trouble:
            self.accept()
            return
        dress(self.window_line, Pt.TEXT, theme().colours.clay)
        self.window_line.setText(trouble)

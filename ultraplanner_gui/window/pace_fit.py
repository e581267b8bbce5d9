"""Fit from my runs: what recordings say beside the defaults, taken only if the user says so."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QSizePolicy,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.pace import TakeFit
from ultraplanner_gui.engine.calibration import Estimate
from ultraplanner_gui.engine.held_out import TriedFit, tried_fit
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table_heads import align_heads
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.recordings_read import LeftOut, read_kept
from ultraplanner_gui.wording.words import NONE, Words

WIDTH_PX, HEIGHT_PX = 960.0, 520.0
TOPIC = "fit from my runs"


class ReadFit(Value, frozen=True):
    """What was read and fitted; `left_out` are those that could not be used, and why."""

    tried: TriedFit
    left_out: LeftOut


def fit_kept(token: Token, kept: Sequence[KeptRecording], runner: Runner) -> ReadFit:
    """Read the recordings *kept* and fit them; PlanError if none can be used."""
    recordings, left_out = read_kept(token, kept, 0.5)
    tried = tried_fit(
        [recording for _, recording in recordings],
        runner,
        lambda share: token.progress(0.5 + 0.5 * share),
    )
    return ReadFit(tried, left_out)


class FitForm(QDialog):
    """Shows the fit; `Use these figures` is the only thing in it that changes the plan."""

    def __init__(
        self,
        found: ReadFit,
        runner: Runner,
        words: Words,
        send: Callable[[Edit], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._found, self._runner, self._words, self._send = found, runner, words, send
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Fit from my runs"))
        set_topic(self, TOPIC)
        self.figures = self._filled(self._figure_heads(), self._figure_rows())
        self.figures.setAccessibleName(self.tr("Fitted figures"))
        self.figures.setSizeAdjustPolicy(QTableWidget.SizeAdjustPolicy.AdjustToContents)
        self.figures.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.figures.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.runs = self._filled(self._run_heads(), self._run_rows())
        self.runs.setAccessibleName(self.tr("Runs fitted"))
        self.verdict = self._label(self._verdict())
        set_topic(self.verdict, TOPIC)
        self.trouble = self._label("")
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(self.figures)
        box.addWidget(self.verdict)
        box.addWidget(self.runs, 1)
        for name, message in found.left_out:
            reason = words.say(message)
            box.addWidget(self._label(self.tr("Left out: {0}. {1}").format(name, reason)))
        box.addWidget(self.trouble)
        box.addWidget(self._buttons())
        self.resize(round(theme().px(WIDTH_PX)), round(theme().px(HEIGHT_PX)))

    @Slot()
    def accept(self) -> None:
        """Put the fitted figures into the plan."""
        fit = self._found.tried.fit
        wrong = self._send(TakeFit(fit.fade.value, fit.uphill.value, fit.descent.value))
        if wrong:
            self.trouble.setText(wrong)
            self.trouble.show()
            return
        super().accept()

    def _buttons(self) -> QDialogButtonBox:
        fit = self._found.tried.fit
        buttons = QDialogButtonBox(self)
        self.use = buttons.addButton(
            self.tr("&Use these figures"), QDialogButtonBox.ButtonRole.AcceptRole
        )
        self.use.setAutoDefault(False)
        self.use.setEnabled(any(e.is_fitted for e in (fit.fade, fit.uphill, fit.descent)))
        close = buttons.addButton(QDialogButtonBox.StandardButton.Close)
        close.setDefault(True)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        return buttons

    def _figure_heads(self) -> list[str]:
        return [
            *(self.tr("Figure"), self.tr("In the plan"), self.tr("Usual")),
            *(self.tr("From my runs"), self.tr("Give or take")),
        ]

    def _figure_rows(self) -> list[list[str]]:
        fit, runner = self._found.tried.fit, self._runner
        return [
            self._figure(self.tr("Fade over the hours"), runner.fade, fit.fade, False),
            self._figure(
                self.tr("Cost of climbing, of the usual"),
                *(runner.uphill_share, fit.uphill, True),
            ),
            self._figure(
                self.tr("Downhill, of the usual speed"), runner.descent_speed, fit.descent, True
            ),
        ]

    def _figure(self, name: str, now: float, found: Estimate, is_share: bool) -> list[str]:
        def said(value: float) -> str:
            hundredfold = 100.0 * value
            if is_share:
                return self._words.percent(hundredfold)
            return self._words.number(hundredfold, 1)

        fitted = said(found.value) if found.is_fitted else self.tr("too little to tell")
        spread = said(found.spread) if found.is_fitted else NONE
        return [name, said(now), said(found.default), fitted, spread]

    def _verdict(self) -> str:
        error, default = self._found.tried.error_percent, self._found.tried.default_percent
        if error is None or default is None:
            return self.tr(
                "These figures could not be tried on a run left out: the other runs are too few. "
                "Choose several long runs of different days."
            )
        sentence = self.tr(
            "Tried on runs they were not made from, these figures are off by {0} of the time of "
            "each tenth of a run, the usual ones by {1}."
        ).format(self._words.percent(error, 1), self._words.percent(default, 1))
        if error > default:
            sentence += " " + self.tr("The usual ones do better; keep them unless you know why.")
        return sentence

    def _run_heads(self) -> list[str]:
        return [
            *(self.tr("Day"), self.tr("Run"), self.tr("Distance"), self.tr("Climb")),
            *(self.tr("Moving"), self.tr("Standing")),
            *(self.tr("Off, by the others"), self.tr("Off, as usual")),
        ]

    def _run_rows(self) -> list[list[str]]:
        words, tried = self._words, self._found.tried
        return [
            [
                NONE if run.start is None else words.day_and_year(run.start.date()),
                run.name,
                words.distance(run.length_m, 1),
                words.height(run.climb_m),
                words.duration(run.moving_s),
                words.duration(run.standing_s),
                words.percent(held.fitted, 1),
                NONE if held.default != held.default else words.percent(held.default, 1),
            ]
            for run, held in zip(tried.fit.runs, tried.held_out, strict=True)
        ]

    def _filled(self, heads: Sequence[str], rows: Sequence[Sequence[str]]) -> QTableWidget:
        table = QTableWidget(len(rows), len(heads), self)
        table.setHorizontalHeaderLabels(list(heads))
        for row, texts in enumerate(rows):
            for column, text in enumerate(texts):
                item = QTableWidgetItem(text)
                if text[:1].isdigit():
                    side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
                    item.setTextAlignment(side)
                item.setToolTip(text)
                table.setItem(row, column, item)
        figures = {c for texts in rows for c, text in enumerate(texts) if text[:1].isdigit()}
        align_heads(table, figures)
        table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        table.setTabKeyNavigation(False)
        table.verticalHeader().hide()
        table.setShowGrid(False)
        table.horizontalHeader().setHighlightSections(False)
        table.setWordWrap(False)
        table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        widest = max(range(len(heads)), key=lambda c: max(len(row[c]) for row in rows))
        table.horizontalHeader().setSectionResizeMode(widest, QHeaderView.ResizeMode.Stretch)
        set_topic(table, TOPIC)
        return table

    def _label(self, text: str) -> QLabel:
        label = QLabel(text, self)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setVisible(bool(text))
        dress(label, Pt.TEXT, theme().colours.ink)
        return label

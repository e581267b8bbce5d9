"""The table that lays the plan's splits beside those of plain rules."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.engine.compare import Rule, beside
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import NONE, Words

WIDTH_PX, HEIGHT_PX = 1040.0, 460.0


class BesideTable(QDialog):
    """Arrivals of the target and the forecast, and how far plain rules lie from the target."""

    def __init__(self, outlook: Outlook, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Beside other rules"))
        set_topic(self, "beside other rules")
        self._outlook, self._words = outlook, words
        assert outlook.profile is not None
        assert outlook.target is not None
        ends_m = [section.end_m for section in outlook.sections]
        rules = beside(outlook.profile, outlook.target, ends_m)
        self.table = self._filled(rules)
        note = QLabel(
            self.tr(
                "Target and forecast by race time; the others earlier (-) or later (+) than the "
                "target, all made to finish with it. Last line: the finish a rule names by itself."
            ),
            self,
        )
        note.setWordWrap(True)
        dress(note, Pt.LABEL, theme().colours.soft)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(note)
        box.addWidget(self.table, 1)
        box.addWidget(buttons)
        self.resize(round(theme().px(WIDTH_PX)), round(theme().px(HEIGHT_PX)))

    def _filled(self, rules: Sequence[Rule]) -> QTableWidget:
        words, sections = self._words, self._outlook.sections
        heads = [self.tr("Section to"), self.tr("Target"), self.tr("Forecast")]
        heads += [words.say(rule.name).replace(" (", "\n(") for rule in rules]
        table = QTableWidget(len(sections) + 1, len(heads), self)
        table.setHorizontalHeaderLabels(heads)
        for row, section in enumerate(sections):
            name = section.name or (
                self.tr("Finish") if row == len(sections) - 1 else words.distance(section.end_m, 1)
            )
            texts = [name, words.duration(section.arrive_s), words.duration(section.forecast_s)]
            texts += [self._apart(rule.arrivals_s[row] - section.arrive_s) for rule in rules]
            self._put(table, row, texts)
        own = [NONE if r.own_finish_s is None else words.duration(r.own_finish_s) for r in rules]
        self._put(table, len(sections), [self.tr("Finish by itself"), NONE, NONE, *own])
        self._dress(table)
        return table

    def _apart(self, seconds: float) -> str:
        return self._words.signed(self._words.duration(seconds))

    def _put(self, table: QTableWidget, row: int, texts: Sequence[str]) -> None:
        for column, text in enumerate(texts):
            item = QTableWidgetItem(text)
            if column:
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            table.setItem(row, column, item)

    def _dress(self, table: QTableWidget) -> None:
        table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        table.setTabKeyNavigation(False)
        table.setAccessibleName(self.tr("Splits beside other rules"))
        set_topic(table, "beside other rules")
        table.verticalHeader().hide()
        table.setShowGrid(False)
        table.setAlternatingRowColors(True)
        heads = table.horizontalHeader()
        heads.setHighlightSections(False)
        heads.setDefaultAlignment(
            Qt.AlignmentFlag.AlignCenter | Qt.AlignmentFlag(Qt.TextFlag.TextWordWrap)
        )
        heads.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        metrics = table.fontMetrics()
        heads.setFixedHeight(4 * metrics.height() + 2 * Space.NEAR)

"""A template block laid into the plan on trial: how long it is, and which rules it strains."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QComboBox, QDialog, QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.template import ApplyTemplate
from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.template import Laid, fitting_scale, laid_in
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.template import Template
from ultraplanner_gui.widgets.edit_form import EditForm
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.rows import CheckRow, Row, Rows, Sentence
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

_WIDTH_PX = 620.0
_RULES_PX = 150.0
#: What the frame of the system takes of the height, about.
_TITLE_BAR_PX = 30.0
TOPIC = "template block"


class TemplateForm(EditForm):
    """Shows *template* in the sheet, as it is or scaled to what the runner runs now, on trial."""

    def __init__(
        self, document: Document, template: Template, words: Words, parent: QWidget | None = None
    ) -> None:
        title = QT_TRANSLATE_NOOP("Forms", "Adjust a template to this race")
        super().__init__(document, words, title, TOPIC, parent)
        self._template, self._today = template, document.outlook.today
        self._base = document.project
        self.scale = QComboBox(self)
        self.scale.setAccessibleName(self.tr("Distances"))
        self.scale.addItem(self.tr("Distances as they are in the template"), 1.0)
        scale = fitting_scale(template, document.project)
        if scale != 1.0:
            text = self.tr("Distances times {0}, to begin at this runner's usual week")
            self.scale.addItem(text.format(words.number(scale, 2)), scale)
            self.scale.setCurrentIndex(1)
        self.facts = QLabel("", self)
        self.facts.setWordWrap(True)
        dress(self.facts, Pt.TEXT, theme().colours.ink)
        self.count = QLabel("", self)
        dress(self.count, Pt.STRONG, theme().colours.ink, bold=True)
        self.rules = Rows(self.tr("Rules it would strain or break"), self)
        set_topics(dict.fromkeys((self.scale, self.facts, self.count), TOPIC))
        self.finish(self._fields(), self.tr("&Put it in"), _WIDTH_PX)
        self.scale.currentIndexChanged.connect(self._on_scaled)
        document.changed.connect(self._on_changed)
        self.finished.connect(self._on_finished)
        self._on_scaled()

    def edit(self) -> Edit:
        return ApplyTemplate(self._lay().block)

    def showEvent(self, event: QShowEvent) -> None:
        # At the foot of the window, so that the day grid above shows what it would be.
        parent = self.parentWidget()
        if parent is not None:
            around = parent.window().geometry()
            self.move(
                around.left() + (around.width() - self.width()) // 2,
                around.bottom() - self.height() - round(theme().px(_TITLE_BAR_PX)),
            )
        super().showEvent(event)

    def _fields(self) -> QWidget:
        fields = QWidget(self)
        box = QVBoxLayout(fields)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(Space.APART)
        name = QLabel(self._template.name, fields)
        name.setWordWrap(True)
        dress(name, Pt.HEAD, theme().colours.ink, bold=True)
        caution = QLabel(
            self.tr(
                "A template knows neither this runner's health nor their days. The rules are "
                "checked again below; what breaks them should be changed before it is run."
            ),
            fields,
        )
        caution.setWordWrap(True)
        dress(caution, Pt.LABEL, theme().colours.soft)
        for widget in (name, self.scale, self.facts, caution, self.count):
            box.addWidget(widget)
        box.addWidget(self._scrolled(), 1)
        return fields

    def _scrolled(self) -> QScrollArea:
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setMinimumHeight(round(theme().px(_RULES_PX)))
        inside = QWidget(area)
        held = QVBoxLayout(inside)
        held.setContentsMargins(0, 0, Space.NEAR, 0)
        held.addWidget(self.rules)
        held.addStretch(1)
        area.setWidget(inside)
        return area

    @Slot()
    def _on_scaled(self) -> None:
        self.trouble.hide()
        try:
            laid = self._lay()
        except PlanError as error:
            self._document.drop_trial()
            for label in (self.facts, self.count):
                label.setText("")
            self.rules.show_rows(())
            self._on_refused(error.message)
            self.keep.setEnabled(False)
            return
        self.keep.setEnabled(True)
        self.facts.setText(self._facts(laid))
        self.count.setText(self._count(laid))
        rows = tuple(_row(check, self._words, self.tr("{0} to go")) for check in laid.loose)
        self.rules.show_rows(rows or (Sentence(self.tr("Every rule holds."), TOPIC),))
        self._document.try_edit(ApplyTemplate(laid.block))

    def _facts(self, laid: Laid) -> str:
        words = self._words
        ahead = [w for w in laid.outlook.weeks if w.start > self._today]
        peak = max((w.distance_m for w in ahead if w.to_go), default=0.0)
        text = self.tr("%n weeks ahead, the largest {0}.", "", len(ahead))
        said = [text.format(words.distance(peak))]
        if laid.left_out:
            said.append(
                self.tr(
                    "%n sessions are left out: they fall before today, or on what stays.",
                    "",
                    laid.left_out,
                )
            )
        return " ".join(said)

    def _count(self, laid: Laid) -> str:
        broken = sum(check.state is State.BREAKS for check in laid.loose)
        parts = []
        if broken:
            parts.append(self.tr("%n rules break", "", broken))
        if strained := len(laid.loose) - broken:
            parts.append(self.tr("%n rules strain", "", strained))
        return ", ".join(parts)

    def _lay(self) -> Laid:
        scale = float(self.scale.currentData())
        return laid_in(self._template, self._base, self._today, scale)

    @Slot(object, object)
    def _on_changed(self, before: object, after: object) -> None:
        # Changed by anything else, what is shown no longer fits what is there.
        if self._document.project is not self._base and self.result() == 0:
            self.reject()

    @Slot(int)
    def _on_finished(self, result: int) -> None:
        if result == QDialog.DialogCode.Rejected:
            self._document.drop_trial()


def _row(check: Check, words: Words, to_go: str) -> Row:
    """Return *check* with the week it is about, so that it is found in the grid above."""
    text = words.say(check.text)
    if len(check.weeks) == 1:
        text = f"{to_go.format(words.number(check.weeks[0]))}: {text}"
    return CheckRow(check.state, text, words.say(check.source), topic=check.rule)

"""A template block laid into the plan on trial: how long it is, and which rules it strains."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QComboBox, QLabel, QListWidget, QVBoxLayout, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.template import ApplyTemplate
from ultraplanner_gui.engine.template import Laid, fitting_scale, laid_in
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.template import Template
from ultraplanner_gui.widgets.edit_form import EditForm
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

_WIDTH_PX = 540.0


class TemplateForm(EditForm):
    """Lays *template* in as it is, or scaled to what the runner runs now; the user chooses."""

    def __init__(
        self, document: Document, template: Template, words: Words, parent: QWidget | None = None
    ) -> None:
        title = QT_TRANSLATE_NOOP("Forms", "Apply a template")
        super().__init__(document, words, title, "template block", parent)
        self._template, self._today = template, document.outlook.today
        self._laid: Laid | None = None
        self.scale = QComboBox(self)
        self.scale.setAccessibleName(self.tr("Distances"))
        self.scale.addItem(self.tr("Distances as they are in the template"), 1.0)
        scale = fitting_scale(template, document.project)
        if scale != 1.0:
            text = self.tr("Distances times {0}, to begin at your usual week")
            self.scale.addItem(text.format(words.number(scale, 2)), scale)
            self.scale.setCurrentIndex(1)
        self.facts = QLabel("", self)
        self.facts.setWordWrap(True)
        dress(self.facts, Pt.TEXT, theme().colours.ink)
        self.rules = QListWidget(self)
        self.rules.setWordWrap(True)
        self.rules.setAccessibleName(self.tr("Rules it would strain or break"))
        set_topics(dict.fromkeys((self.scale, self.facts, self.rules), "template block"))
        self.finish(self._fields(), self.tr("Apply"), _WIDTH_PX)
        self.scale.currentIndexChanged.connect(self._on_scaled)
        self._on_scaled()

    def edit(self) -> Edit:
        return ApplyTemplate(self._lay().block)

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
        for widget in (name, self.scale, self.facts, self.rules, caution):
            box.addWidget(widget)
        return fields

    @Slot()
    def _on_scaled(self) -> None:
        self.rules.clear()
        self.trouble.hide()
        try:
            laid = self._lay()
        except PlanError as error:
            self.facts.setText("")
            self._on_refused(error.message)
            self.keep.setEnabled(False)
            return
        self.keep.setEnabled(True)
        words, weeks = self._words, laid.outlook.weeks
        ahead = [w for w in weeks if w.start > self._today]
        peak = max((w.distance_m for w in ahead if w.to_go), default=0.0)
        text = self.tr("{0} weeks, the largest {1}. Sessions left out: {2}.")
        self.facts.setText(text.format(len(ahead), words.distance(peak), laid.left_out))
        self.rules.addItems([words.say(said) for said in laid.loose])
        if not laid.loose:
            self.rules.addItem(self.tr("Every rule holds."))

    def _lay(self) -> Laid:
        scale = float(self.scale.currentData())
        return laid_in(self._template, self._document.project, self._today, scale)

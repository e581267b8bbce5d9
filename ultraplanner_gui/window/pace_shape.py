"""The form for the shape of the target, and for how the runner fades, climbs and walks."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.pace import MOST_FADE_SHARE, SetPace
from ultraplanner_gui.edits.race import RUNNER_RANGES
from ultraplanner_gui.plan.pacing import USUAL_FADE_SHARE, Pacing
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.fields import WholeField
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 480.0


class ShapeForm(QDialog):
    """How the target of *project* is shaped; *sent* takes the edit and says what is wrong."""

    def __init__(
        self,
        project: Project,
        words: Words,
        sent: Callable[[SetPace], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._project, self._sent = project, sent
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Pace of target and runner"))
        set_topic(self, "shape of the target")
        self.even = QRadioButton(self.tr("&Even effort from start to finish"), self)
        self.half = QRadioButton(self.tr("&Half of the forecast's fade, the usual"), self)
        self.own = QRadioButton(self.tr("Own amount of &fade"), self)
        self.share = WholeField(words, 0, 100 * MOST_FADE_SHARE, "%", 5, self)
        for field in (self.even, self.half, self.own, self.share):
            set_topic(field, "shape of the target")
        self.share.setAccessibleName(self.tr("Part of the forecast's fade kept"))
        self.holds = QCheckBox(self.tr("Hold the fi&nish when a section is changed"), self)
        set_topic(self.holds, "fixed target")
        self.figures: dict[str, WholeField] = {}
        for name, unit, step, topic in (
            ("fade", "", 1, "fade"),
            ("uphill_share", "%", 5, "gradient and pace"),
            ("descent_speed", "%", 5, "downhill speed"),
            ("tired_walk", "%", 5, "walk-in limit"),
        ):
            low, high = RUNNER_RANGES[name]
            field = WholeField(words, 100 * low, 100 * high, unit, step, self)
            set_topic(field, topic)
            self.figures[name] = field
        self._trouble = QLabel("", self)
        self._trouble.setWordWrap(True)
        self._trouble.hide()
        self._lay_out()
        self._fill()
        self.own.toggled.connect(self.share.setEnabled)

    def pacing(self) -> Pacing:
        """Return the shape as the fields have it."""
        share = self.share.value() / 100.0
        if self.even.isChecked():
            share = 0.0
        elif self.half.isChecked():
            share = USUAL_FADE_SHARE
        return Pacing(share, self.holds.isChecked())

    def edit(self) -> SetPace:
        """Return the edit for what is in the fields; figures nobody touched keep their digits."""
        return SetPace(
            self.pacing(),
            fade=self._figure("fade"),
            uphill_share=self._figure("uphill_share"),
            descent_speed=self._figure("descent_speed"),
            tired_walk=self._figure("tired_walk"),
        )

    def _figure(self, name: str) -> float:
        shown, now = self.figures[name].value(), float(getattr(self._project.runner, name))
        return now if shown == round(100.0 * now) else shown / 100.0

    def accept(self) -> None:
        """Hand over what was chosen; stay open and say why if it cannot be taken."""
        edit = self.edit()
        trouble = "" if edit.apply(self._project) is self._project else self._sent(edit)
        if trouble:
            dress(self._trouble, Pt.TEXT, theme().colours.clay)
            self._trouble.setText(trouble)
            self._trouble.show()
            return
        super().accept()

    def _lay_out(self) -> None:
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(self._head(self.tr("The target keeps")))
        for choice in (self.even, self.half, self.own):
            box.addWidget(choice)
        form = QFormLayout()
        form.addRow(self.tr("&Part of the forecast's fade"), self.share)
        box.addLayout(form)
        box.addWidget(
            self._small(
                self.tr(
                    "100 % is the forecast itself: start fast, slow down. The night and the ground "
                    "slow every shape."
                ),
                "shape of the target",
            )
        )
        box.addWidget(self.holds)
        box.addWidget(self._head(self.tr("How you run")))
        own = QFormLayout()
        for text, name in (
            (self.tr("Fa&de over the hours"), "fade"),
            (self.tr("Cost of &uphill, of the usual"), "uphill_share"),
            (self.tr("&Downhill, of the usual speed"), "descent_speed"),
            (self.tr("Tired walking, of a fresh hiker's &speed"), "tired_walk"),
        ):
            own.addRow(text, self.figures[name])
            self.figures[name].setAccessibleName(text.replace("&", ""))
        box.addLayout(own)
        box.addWidget(
            self._small(
                self.tr(
                    "Fade: 0 never, 8 front runners, 10 the usual, 20 strong. Your own recordings "
                    "tell better than a guess."
                ),
                "fade",
            )
        )
        box.addWidget(self._trouble)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        buttons.addButton(self.tr("Se&t"), QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        box.addWidget(buttons)
        at_least(self, theme().px(WIDTH_PX))

    def _fill(self) -> None:
        pacing = self._project.pacing
        self.share.setValue(round(100.0 * pacing.fade_share))
        choice = {0.0: self.even, USUAL_FADE_SHARE: self.half}.get(pacing.fade_share, self.own)
        choice.setChecked(True)
        self.share.setEnabled(choice is self.own)
        self.holds.setChecked(pacing.holds_finish)
        for name, field in self.figures.items():
            field.setValue(round(100.0 * getattr(self._project.runner, name)))

    def _head(self, text: str) -> QLabel:
        label = QLabel(text, self)
        dress(label, Pt.HEAD, theme().colours.ink, bold=True)
        return label

    def _small(self, text: str, topic: str) -> QLabel:
        label = QLabel(text, self)
        set_topic(label, topic)
        label.setWordWrap(True)
        dress(label, Pt.LABEL, theme().colours.soft)
        return label

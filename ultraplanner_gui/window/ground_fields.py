"""The short form of one place to train, and what places are called."""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QComboBox,
    QLineEdit,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.edits.training import AddGround, ChangeGround
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.widgets.edit_form import EditForm
from ultraplanner_gui.widgets.fields import DistanceField, HeightField, WholeField, describe
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.wording.words import Words

TITLE = QT_TRANSLATE_NOOP("Forms", "A place to train")
TOPIC = "ground at hand"
NAMES: dict[GroundKind, str] = {
    GroundKind.TREADMILL: QT_TRANSLATE_NOOP("Ground", "treadmill"),
    GroundKind.HILL: QT_TRANSLATE_NOOP("Ground", "hill"),
    GroundKind.STAIRS: QT_TRANSLATE_NOOP("Ground", "stairs"),
    GroundKind.RAMP: QT_TRANSLATE_NOOP("Ground", "car-park ramp"),
    GroundKind.PATH: QT_TRANSLATE_NOOP("Ground", "flat path"),
    GroundKind.LOOP: QT_TRANSLATE_NOOP("Ground", "loop"),
}
SLOPES = (GroundKind.HILL, GroundKind.STAIRS, GroundKind.RAMP)
#: Length and height to begin with; our own choice.
USUAL = {
    GroundKind.HILL: (500.0, 40.0),
    GroundKind.STAIRS: (30.0, 15.0),
    GroundKind.RAMP: (120.0, 8.0),
    GroundKind.LOOP: (5_000.0, 100.0),
}
MOST_M, MOST_CLIMB_M, WIDTH_PX = 100_000.0, 5_000.0, 380.0


class GroundForm(EditForm):
    """Adds a place, or changes *ground*; only the fields of its kind can be filled in."""

    def __init__(
        self,
        document: Document,
        ground: GroundAtHand | None,
        words: Words,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(document, words, TITLE, TOPIC, parent)
        self._of = ground
        of = ground or GroundAtHand("", GroundKind.TREADMILL, most_gradient=0.12)
        fields = FormColumn(self)
        self.kind = QComboBox(fields)
        for kind, name in NAMES.items():
            self.kind.addItem(_capital(tr(name)), kind)
        self.kind.setCurrentIndex(list(NAMES).index(of.kind))
        self.name = QLineEdit(of.name, fields)
        describe(self.name, self.tr("What you call it"))
        self.length = DistanceField(words, 0.0, MOST_M, 2, fields)
        self.climb, self.drop = (HeightField(words, MOST_CLIMB_M, fields) for _ in range(2))
        self.length.set_metres(of.length_m)
        self.climb.set_metres(of.climb_m)
        self.drop.set_metres(of.drop_m)
        self.least, self.most = (WholeField(words, -30, 60, "%", parent=fields) for _ in range(2))
        self.least.setValue(round(100.0 * of.least_gradient))
        self.most.setValue(round(100.0 * of.most_gradient))
        for label, field in (
            (self.tr("&Kind"), self.kind),
            (self.tr("&Name"), self.name),
            (self.tr("Len&gth, one way or round"), self.length),
            (self.tr("&Climb over it"), self.climb),
            (self.tr("D&rop over it"), self.drop),
            (self.tr("&Least gradient"), self.least),
            (self.tr("&Most gradient"), self.most),
        ):
            fields.add(label, field, TOPIC)
        fields.end()
        self.finish(fields, self.tr("K&eep"), WIDTH_PX)
        self.kind.currentIndexChanged.connect(self._on_kind)
        self._on_kind()

    def ground(self) -> GroundAtHand:
        """Return what the fields of the kind say."""
        kind = GroundKind(self.kind.currentData())
        of = self._of if self._of is not None and self._of.kind is kind else None
        base = of or GroundAtHand("" if self._of is None else self._of.key, kind)
        is_mill, has_length = kind is GroundKind.TREADMILL, kind in USUAL
        return replace(
            base,
            name=self.name.text().strip(),
            length_m=self.length.metres if has_length else 0.0,
            climb_m=self.climb.metres if has_length else 0.0,
            drop_m=self.drop.metres if kind is GroundKind.LOOP else 0.0,
            least_gradient=self.least.value() / 100.0 if is_mill else 0.0,
            most_gradient=self.most.value() / 100.0 if is_mill else 0.0,
        )

    @Slot()
    def _on_kind(self) -> None:
        kind = GroundKind(self.kind.currentData())
        for field in (self.least, self.most):
            field.setEnabled(kind is GroundKind.TREADMILL)
        for measure in (self.length, self.climb):
            measure.setEnabled(kind in USUAL)
        self.drop.setEnabled(kind is GroundKind.LOOP)
        if kind in USUAL and self.length.metres == 0.0:
            length_m, climb_m = USUAL[kind]
            self.length.set_metres(length_m)
            self.climb.set_metres(climb_m)
            self.drop.set_metres(climb_m if kind is GroundKind.LOOP else 0.0)

    def edit(self) -> AddGround | ChangeGround:
        ground = self.ground()
        return AddGround(ground) if self._of is None else ChangeGround(ground)


def ground_name(ground: GroundAtHand) -> str:
    """Return what a place is called."""
    return ground.name or tr(NAMES[ground.kind])


def ground_sentence(ground: GroundAtHand, words: Words) -> str:
    """Return a place and its figures in words."""
    kind = _capital(tr(NAMES[ground.kind]))
    name = f"{kind}, {ground.name}" if ground.name else kind
    if ground.kind is GroundKind.TREADMILL:
        low, high = (
            words.percent(100.0 * g) for g in (ground.least_gradient, ground.most_gradient)
        )
        return tr("{0}: {1} to {2}").format(name, low, high)
    if ground.kind is GroundKind.PATH:
        return name
    length = words.distance(ground.length_m, 2)
    if ground.kind is GroundKind.LOOP:
        climb, drop = words.height_bare(ground.climb_m), words.height(ground.drop_m)
        return tr("{0}: {1}, climb and drop {2}, {3}").format(name, length, climb, drop)
    gradient = words.percent(100.0 * ground.climb_m / ground.length_m if ground.length_m else 0.0)
    height = words.height(ground.climb_m)
    return tr("{0}: {1}, {2} high, {3}").format(name, length, height, gradient)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]

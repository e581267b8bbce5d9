"""One short form for the race and the runner, with sensible values in it."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, QSize, Qt, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QBoxLayout,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.plan.block import weeks_to_go
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Health, Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.fields import describe
from ultraplanner_gui.widgets.form_column import SMALL_PT
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.race_column import RaceColumn
from ultraplanner_gui.window.runner_column import RunnerColumn
from ultraplanner_gui.wording.cautions import BEFORE_BLOCK
from ultraplanner_gui.wording.words import Words

#: Of the screen, so that the window's own frame has room.
SCREEN_SHARE = 0.94
GAP_PX = 26.0
SPARE_PX = 4


class Answers(Value, frozen=True):
    """What the form holds when sent; `is_shifted` asks that the build-up move with the race."""

    race: Race
    runner: Runner
    first_weekday: int
    path: Path | None
    is_shifted: bool = False


class PlanForm(QDialog):
    """Race on the left, runner on the right; one over the other where the screen is narrow.

    `sent` is called with the answers; it returns a sentence on what is wrong with them, which
    stays in the form, or nothing, which closes it. `likely_s` gives the likely finish of a
    runner on the course, None where there is no course. The form of a new plan, which has a
    path, begins with guesses, of the runner too unless *guesses* says that they are known.
    """

    def __init__(
        self,
        race: Race,
        runner: Runner,
        first_weekday: int,
        words: Words,
        sent: Callable[[Answers], str],
        facts: str = "",
        path: Path | None = None,
        where: Callable[[Path, Callable[[Path], None]], None] | None = None,
        likely_s: Callable[[Runner], float] | None = None,
        parent: QWidget | None = None,
        has_block: bool = False,
        guesses: bool = True,
    ) -> None:
        super().__init__(parent)
        self._race_day, self._has_block = race.day, has_block
        self._sent, self._path, self._where = sent, path, where
        self.setWindowTitle(self.tr("New plan") if path is not None else self.tr("Race and runner"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "welcome")
        self._words = words
        self.runner = RunnerColumn(runner, words, self)
        self.race = RaceColumn(race, first_weekday, words, likely_s, self.runner.runner, self)
        at = self.race
        self.name, self.day, self.start, self.zone = at.name, at.day, at.start, at.zone
        self.goal, self.limit, self.weekly = at.goal, at.limit, self.runner.weekly
        self._lay_out(facts)
        self._set_tab_order()
        if path is not None and guesses:
            self.runner.guess_all()
        if path is not None:
            self.race.guess_all()
        self.runner.easy.timeChanged.connect(self._on_pace_changed)
        self.race.changed.connect(self._grow)
        self.day.dateChanged.connect(self._offer_shift)
        self.runner.changed.connect(self._grow)
        self._is_fitted = False
        self._begin()

    def complain(self, sentence: str) -> None:
        """Say in the form why the answers cannot be used."""
        self._trouble.setText(sentence)
        self._trouble.show()

    def answers(self) -> Answers:
        """Return what is in the fields now, typed to the end or not."""
        for spin in self.findChildren(QAbstractSpinBox):
            spin.interpretText()
        for field in (self.goal, self.limit):
            field.take_typed()
        weekday = self.race.first_weekday.currentData()
        is_shifted = self.shift.isVisibleTo(self) and self.shift.isChecked()
        runner = self.runner.runner()
        if self._path is not None:
            runner = replace(runner, health=Health(self.health.currentData()))
        return Answers(self.race.race(), runner, weekday, self._path, is_shifted)

    def showEvent(self, event: QShowEvent) -> None:
        # Only now does every label have its font, and so its size.
        if not self._is_fitted:
            self._is_fitted = True
            self._fit()
        super().showEvent(event)

    def _begin(self) -> None:
        """Begin at the first thing the course file has not said: the day, unless without a name."""
        if self._path is not None and self.name.text():
            self.day.setFocus(Qt.FocusReason.ShortcutFocusReason)
        else:
            self.name.setFocus()
            self.name.selectAll()

    def _lay_out(self, facts: str) -> None:
        self._columns_box = QWidget(self)
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight, self._columns_box)
        self._columns.setContentsMargins(0, 0, 0, 0)
        self._columns.setSpacing(round(theme().px(GAP_PX)))
        self._columns.addWidget(self.race, 4)
        self._columns.addWidget(self.runner, 5)
        self._scroll = _Scroll(self._columns_box, self)
        self._box = box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        if facts:
            head = QLabel(facts, self)
            head.setWordWrap(True)
            set_topic(head, "course")
            dress(head, Pt.STRONG, theme().colours.ink, bold=True)
            box.addWidget(head)
        box.addWidget(self._scroll, 1)
        self.shift = QCheckBox("", self)
        self.shift.setChecked(True)
        set_topic(self.shift, "race date")
        self.shift.hide()
        box.addWidget(self.shift)
        caution = self._small(QCoreApplication.translate("Caution", BEFORE_BLOCK))
        if self._path is None:
            box.addWidget(caution)
        else:
            box.addLayout(self._health_row(caution))
            box.addLayout(self._place_row())
        self._trouble = QLabel("", self)
        self._trouble.setWordWrap(True)
        dress(self._trouble, Pt.TEXT, theme().colours.clay)
        self._trouble.hide()
        box.addWidget(self._trouble)
        box.addWidget(self._buttons(is_new=self._path is not None))

    def _health_row(self, caution: QLabel) -> QHBoxLayout:
        """Return the row that asks whether any of the *caution* applies; only that is kept."""
        self.health = QComboBox(self)
        self.health.setAccessibleName(self.tr("Does any of this apply to you?"))
        describe(
            self.health,
            self.tr("Kept in your project file alone. PAR-Q+ asks more; search for its name."),
        )
        for text, health in (
            (self.tr("Applies to me? Later"), Health.NOT_ASKED),
            (self.tr("No, none of this"), Health.CLEAR),
            (self.tr("Yes: I ask a doctor first"), Health.ASK_FIRST),
        ):
            self.health.addItem(text, health)
        set_topic(self.health, "health")
        row = QHBoxLayout()
        row.setSpacing(Space.WIDE)
        row.addWidget(caution, 1)
        row.addWidget(self.health)
        return row

    def _place_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self._place = QLabel("", self)
        self._place.setWordWrap(True)
        change = QPushButton(self.tr("Keep it &elsewhere…"), self)
        change.setAutoDefault(False)
        change.clicked.connect(self._on_elsewhere)
        row.addWidget(self._place, 1)
        row.addWidget(change)
        self._show_place()
        return row

    def _buttons(self, is_new: bool) -> QDialogButtonBox:
        buttons = QDialogButtonBox(self)
        text = self.tr("&Make the plan") if is_new else self.tr("C&hange")
        send = buttons.addButton(text, QDialogButtonBox.ButtonRole.AcceptRole)
        send.setDefault(True)
        buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self._on_sent)
        buttons.rejected.connect(self.reject)
        return buttons

    def _set_tab_order(self) -> None:
        for first, then in pairwise((*self.race.order, *self.runner.order)):
            QWidget.setTabOrder(first, then)

    def _fit(self) -> None:
        """Take the size all fields need, as far as the screen has it."""
        most, columns = self._room(), self._columns_box
        frame = self.sizeHint().width() - columns.sizeHint().width()
        if columns.minimumSizeHint().width() + frame > most.width():
            self._columns.setDirection(QBoxLayout.Direction.TopToBottom)
        width = min(self.sizeHint().width(), most.width())
        self.resize(width, min(self._wanted_height(width), most.height()))

    @Slot()
    def _grow(self) -> None:
        """Make room for a line that came in under a field, as far as the screen has it."""
        wanted = min(self._wanted_height(self.width()), self._room().height())
        if wanted > self.height():
            self.resize(self.width(), wanted)

    def _wanted_height(self, width: int) -> int:
        """Return the height at which nothing is scrolled."""
        # The layout remembers what the scroller asked for before its fields changed.
        self._scroll.updateGeometry()
        margins = self._box.contentsMargins()
        inside = width - margins.left() - margins.right() - self._scroll.bar_width
        rest = _height(self._box, width) - self._scroll.sizeHint().height()
        return rest + _height(self._columns, inside) + SPARE_PX

    def _room(self) -> QSize:
        room = self.screen().availableSize()
        parent = self.parentWidget()
        if parent is not None:
            room = room.expandedTo(parent.window().size())
        return room * SCREEN_SHARE

    @Slot()
    def _on_sent(self) -> None:
        if not self.name.text().strip():
            self.complain(self.tr("The race needs a name."))
        elif not self.goal.reads(self.goal.text()):
            self.complain(
                self.tr("The finish aimed for reads like 20 h 16 and lies within 240 hours.")
            )
        elif trouble := self._sent(self.answers()):
            self.complain(trouble)
        else:
            self.accept()

    @Slot()
    def _on_pace_changed(self) -> None:
        self.race.renew_finish()

    @Slot()
    def _offer_shift(self) -> None:
        """Offer to move the build-up by as many weeks as the race has moved."""
        day = self.day.date()
        weekday = self.race.first_weekday.currentData()
        weeks = weeks_to_go(
            self._race_day, self._race_day.replace(day.year(), day.month(), day.day()), weekday
        )
        self.shift.setVisible(self._has_block and weeks != 0)
        if weeks > 0:
            self.shift.setText(self.tr("Mo&ve what lies ahead %n weeks later too", "", weeks))
        elif weeks < 0:
            self.shift.setText(self.tr("Mo&ve what lies ahead %n weeks earlier too", "", -weeks))
        self._grow()

    @Slot()
    def _on_elsewhere(self) -> None:
        if self._where is not None and self._path is not None:
            self._where(self._path, self._take_place)

    def _take_place(self, path: Path) -> None:
        self._path = path
        self._show_place()

    def _show_place(self) -> None:
        self._place.setText(self.tr("Kept in {0}").format(self._words.path(self._path)))

    def _small(self, text: str) -> QLabel:
        label = QLabel(text, self)
        label.setWordWrap(True)
        dress(label, SMALL_PT, theme().colours.soft)
        return label


def _height(layout: QLayout, width: int) -> int:
    """Return the height *layout* takes at *width*, with what wraps in it wrapped."""
    layout.activate()
    has_wrapped = layout.hasHeightForWidth()
    return layout.totalHeightForWidth(width) if has_wrapped else layout.totalSizeHint().height()


class _Scroll(QScrollArea):
    """Scrolls the fields where the screen is too small, and asks for room for all of them."""

    def __init__(self, fields: QWidget, parent: QWidget) -> None:
        super().__init__(parent)
        self._fields = fields
        self.setWidget(fields)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    @property
    def bar_width(self) -> int:
        """How much of the width a scroll bar takes."""
        return self.verticalScrollBar().sizeHint().width()

    def sizeHint(self) -> QSize:
        return self._fields.sizeHint() + QSize(self.bar_width, 0)

"""The header: race, runway, finish, tightest cutoff, and when the work was last kept."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.widgets.help_topic import ask, set_topic, set_topics
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words


class HeaderFigure(QWidget):
    """A small caption over a bold figure; a click, or Enter, has it explained."""

    def __init__(self, caption: str, topic: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._topic = topic
        self._name = caption
        set_topic(self, topic)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.WhatsThisCursor)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(Space.HAIR)
        self._caption = QLabel(caption, self)
        self._value = QLabel("", self)
        box.addWidget(self._caption)
        box.addWidget(self._value)

    def show_value(self, value: str, warns: bool = False, tip: str = "", was: str = "") -> None:
        """Show *value*; *warns* sets it in clay with a sign, *was* is what it is before a trial."""
        look = theme()
        self._caption.setText(
            self.tr("{0}, was {1}").format(self._name, was) if was else self._name
        )
        dress(self._caption, Pt.SMALL, look.colours.soft)
        dress(self._value, Pt.STRONG, look.colours.clay if warns else look.colours.ink, bold=True)
        self._value.setText(value + (" !" if warns else ""))
        self.setToolTip(tip)
        self.setAccessibleName(f"{self._name}: {value}")

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            ask(self, self._topic)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            ask(self, self._topic)
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.hasFocus():
            with QPainter(self) as painter:
                painter.setPen(theme().colours["teal"])
                painter.drawRect(self.rect().adjusted(0, 0, -1, -1))


class _OneLine(QLabel):
    """A line of text that ends in an ellipsis where it does not fit; the whole is its tip."""

    _whole = ""

    def show_whole(self, text: str) -> None:
        """Show *text*, as much of it as there is room for."""
        self._whole = text
        # A name in another script than the language's still stands where its place is.
        side = Qt.AlignmentFlag.AlignRight if self.isRightToLeft() else Qt.AlignmentFlag.AlignLeft
        middle = Qt.AlignmentFlag.AlignVCenter
        self.setAlignment(side | middle | Qt.AlignmentFlag.AlignAbsolute)
        self.setToolTip(text)
        self.setAccessibleName(text)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def whole_px(self) -> int:
        """Return how wide the whole text is."""
        return self.fontMetrics().horizontalAdvance(self._whole)

    def _fit(self) -> None:
        self.ensurePolished()
        right = Qt.TextElideMode.ElideRight
        self.setText(self.fontMetrics().elidedText(self._whole, right, self.width()))


class Header(QWidget):
    """One line over the sheet. Shows the outlook in force, trial or kept."""

    def __init__(
        self,
        words: Callable[[], Words],
        switch: Sequence[QAction],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._words = words
        self._name = _OneLine("", self)
        self._facts = _OneLine("", self)
        self._name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._facts.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        title = QVBoxLayout()
        title.setSpacing(Space.HAIR)
        title.addWidget(self._name)
        title.addWidget(self._facts)
        self._runway = HeaderFigure(self.tr("Runway"), "runway", self)
        self._finish = HeaderFigure(self.tr("Planned finish"), "finish window", self)
        self._tightest = HeaderFigure(self.tr("Tightest cutoff"), "least in hand", self)
        self._kept = HeaderFigure(self.tr("Kept"), "kept", self)
        set_topics({self: "sheet", self._name: "race name", self._facts: "race facts"})
        self._figures = QHBoxLayout()
        self._figures.setSpacing(Space.EDGE)
        for figure in (self._runway, self._finish, self._tightest, self._kept):
            self._figures.addWidget(figure, 0, Qt.AlignmentFlag.AlignVCenter)
        self._rows = QGridLayout(self)
        self._rows.setContentsMargins(Space.WIDE, Space.CLOSE, Space.WIDE, Space.CLOSE)
        self._rows.setHorizontalSpacing(Space.EDGE)
        self._rows.setVerticalSpacing(Space.CLOSE)
        self._rows.setColumnStretch(0, 1)
        self._rows.addLayout(title, 0, 0)
        self._rows.addLayout(self._places(switch), 0, 2)
        self._is_folded: bool | None = None
        self._fold()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fold()

    def _fold(self) -> None:
        """Put the figures under the race where its name would not have room beside them."""
        self._name.ensurePolished()
        figures_px = self._figures.sizeHint().width()
        switch = self._rows.itemAtPosition(0, 2)
        others_px = figures_px + (switch.sizeHint().width() if switch is not None else 0)
        is_folded = self.width() - others_px - 4 * Space.EDGE < self._name.whole_px()
        if is_folded == self._is_folded:
            return
        self._is_folded = is_folded
        self._rows.removeItem(self._figures)
        if is_folded:
            start = Qt.AlignmentFlag.AlignLeft
            self._rows.addLayout(self._figures, 1, 0, 1, 3, start)
        else:
            self._rows.addLayout(self._figures, 0, 1)

    def _places(self, switch: Sequence[QAction]) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(Space.HAIR)
        for action in switch:
            button = QToolButton(self)
            button.setDefaultAction(action)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            row.addWidget(button)
        return row

    def show_outlook(self, outlook: Outlook, before: Outlook | None = None) -> None:
        """Show the race and its headline figures, on trial with what they were *before*."""
        words, race, look = self._words(), outlook.project.race, theme()
        dress(self._name, Pt.TITLE, look.colours.ink, bold=True)
        self._name.show_whole(race.name or self.tr("Unnamed race"))
        dress(self._facts, Pt.NOTE, look.colours.soft)
        facts = [words.day_and_year(race.day)]
        if outlook.profile is not None:
            facts.append(words.distance(outlook.profile.length_m, 1))
            facts.append(
                self.tr("climb {0}, drop {1}").format(
                    words.height(outlook.profile.ascent_m), words.height(outlook.profile.descent_m)
                )
                if outlook.profile.has_elevation
                else self.tr("no heights: paced as flat")
            )
        if race.limit_s is not None:
            facts.append(self.tr("limit {0}").format(words.duration(race.limit_s)))
        self._facts.show_whole("  ·  ".join(facts))
        self._show_runway(outlook)
        was = before if before is not None else outlook
        self._show_finish(outlook, was)
        self._show_tightest(outlook, was)
        self._fold()

    def _show_tightest(self, outlook: Outlook, was: Outlook) -> None:
        words, tightest = self._words(), outlook.tightest
        before_s = was.tightest.to_cutoff_s if was.tightest is not None else None
        self._tightest.setVisible(tightest is not None)
        if tightest is not None and tightest.to_cutoff_s is not None:
            place, spare_s = tightest.name or self.tr("Finish"), tightest.to_cutoff_s
            said = self.tr("{0}, {1} to spare") if spare_s >= 0 else self.tr("{0}, {1} too late")
            self._tightest.show_value(
                said.format(place, words.duration(abs(spare_s))),
                spare_s < 0,
                self.tr(
                    "The cutoff that leaves the least time, with the later of target and forecast"
                ),
                _before(words, before_s, spare_s),
            )

    def show_kept(self, at: datetime | None, place: str, trouble: str = "") -> None:
        """Show when and where the work was kept last, or why it was not."""
        if trouble:
            self._kept.show_value(self.tr("not kept"), True, trouble)
        elif at is not None:
            self._kept.show_value(self._words().clock(at.astimezone(), weekday=False), False, place)

    def _show_runway(self, outlook: Outlook) -> None:
        way = outlook.runway
        self._runway.setVisible(way is not None)
        if way is not None:
            self._runway.show_value(
                self.tr("{0} full weeks, {1} needed").format(way.weeks_there, way.weeks_needed),
                way.state is State.BREAKS,
                self._words().say(way.reason),
            )

    def _show_finish(self, outlook: Outlook, was: Outlook) -> None:
        self._finish.setVisible(bool(outlook.sections))
        if outlook.sections and outlook.target is not None:
            words, last = self._words(), outlook.sections[-1]
            low, high = last.window_s
            self._finish.show_value(
                self.tr("{0}, likely {1} – {2}").format(
                    words.duration(outlook.target.finish_s),
                    words.duration(low),
                    words.duration(high),
                ),
                outlook.trouble is not None,
                self._finish_tip(outlook, low, high),
                _before(
                    words,
                    was.target.finish_s if was.target is not None else None,
                    outlook.target.finish_s,
                ),
            )

    def _finish_tip(self, outlook: Outlook, low_s: float, high_s: float) -> str:
        words = self._words()
        if outlook.trouble is not None:
            return words.say(outlook.trouble)
        low, high = (words.clock(outlook.project.race.clock(s)) for s in (low_s, high_s))
        said = self.tr("On 8 of 10 days like the one planned you finish between {0} and {1}.")
        return said.format(low, high)


def _before(words: Words, before_s: float | None, now_s: float) -> str:
    """Return what a duration was, empty where it reads the same."""
    was = words.duration(before_s)
    return "" if before_s is None or was == words.duration(now_s) else was

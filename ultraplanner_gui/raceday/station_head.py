"""The names of aid stations and their cutoffs, over their lines."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Slot
from PySide6.QtGui import QMouseEvent, QPainter
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane import HEAD_PX, LABEL_PT, RIGHT_PX, UNIT_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt
from ultraplanner_gui.wording.words import Words

GAP_PX = 8.0
REACH_PX = 60.0


@dataclass(frozen=True, slots=True)
class _Label:
    """A name at *x* and the clock under it, a cutoff or not; `short` is the clock alone.

    `wish` is the width it would like to have.
    """

    x: float
    name: str
    under: str = ""
    short: str = ""
    is_cutoff: bool = True
    wish: float = 0.0

    def clock_in(self, width: float) -> str:
        """Return as much of the clock as fits: a time cut short would be another time."""
        metrics = theme().metrics(UNIT_PT)
        texts = (self.under, self.short)
        return next((t for t in texts if metrics.horizontalAdvance(t) <= width + 1.0), "")


class StationHead(RaceLane):
    """Names over their lines; where they would meet, every other one stands a row lower, and
    what still does not fit is shortened and said in full under the pointer.
    """

    topic = "aid station"

    def __init__(
        self,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", "", 28.0, document, selection, axis, words, parent)
        self.setAccessibleName(self.tr("Aid stations"))
        self._rows = 1
        self._texts_of: object = None
        self._texts: dict[tuple[str, float | None, bool], _Label] = {}
        self._is_strip = False
        self._crowd: tuple[Outlook | None, tuple[object, ...], int] = (None, (), 1)

    def set_strip(self, is_strip: bool) -> None:
        """Keep to one row, and name the storey, whose title is out of sight."""
        self._is_strip = is_strip
        self.update()

    @property
    def title_middle(self) -> float:
        """The middle of the storey's name, as far down as it is written in a strip."""
        return theme().metrics(Pt.LABEL, bold=True).height() / 2

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height of one row of names, or of two where one is too crowded.

        The whole race decides, so that nothing jumps under a zoom.
        """
        self._rows = self._rows_in(float(width))
        return round(self._rows * _row_height() + 2)

    def sizeHint(self) -> QSize:
        return QSize(400, self.heightForWidth(self.width()))

    @Slot()
    def fit(self) -> None:
        """Ask for another height if the names need another number of rows."""
        if self._rows_in(float(self.width())) != self._rows:
            self.updateGeometry()

    def _rows_in(self, width: float) -> int:
        if self._is_strip:
            return 1
        # Layouts ask a hundred times while the window opens.
        axis, look = self.axis, theme()
        at_one = axis.share_of_race(1.0, width)
        ground = (width, look.px(1.0), axis.measure, at_one, axis.folds, self.words())
        if self._crowd[0] is not self.shown or self._crowd[1] != ground:
            self._crowd = (self.shown, ground, self._rows_anew(width))
        return self._crowd[2]

    def _rows_anew(self, width: float) -> int:
        left, right = theme().px(HEAD_PX), theme().px(RIGHT_PX)

        wide = max(1.0, width - left - right)

        def x_of(at_m: float) -> float:
            return left + self.axis.share_of_race(at_m, wide) * wide

        return 2 if _is_crowded(self._labels(x_of)) else 1

    def renew(self, before: Outlook, after: Outlook) -> None:
        if self.has_ground_changed(before, after):
            self.update()
        # Under a drag the rows stay as they are, else everything below would jump.
        if after is self.document.before:
            self.fit()

    def paint_head(self, painter: QPainter) -> None:
        if self._is_strip:
            look, left = theme(), theme().px(12.0)
            rect = QRectF(
                left, 0.0, look.px(HEAD_PX) - left, look.metrics(Pt.LABEL, bold=True).height()
            )
            font = look.font(Pt.LABEL, bold=True)
            draw_text(painter, rect, self.tr("RACE DAY"), look.colours["soft"], font)

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_station_lines(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        look = theme()
        c, bold, small = look.colours, look.metrics(LABEL_PT, bold=True), look.metrics(UNIT_PT)
        seen = self._seen(body)
        for label, rect in self._places(_thinned(seen) if self._is_strip else seen, body):
            name = shortened(label.name, rect.width() + 1, bold.horizontalAdvance)
            top = QRectF(rect.left(), rect.top(), rect.width(), bold.height())
            draw_text(
                painter, top, name, c["ink"], look.font(LABEL_PT, bold=True), Align.AlignHCenter
            )
            under = label.clock_in(rect.width())
            foot = QRectF(rect.left(), top.bottom(), rect.width(), small.height())
            colour = c["clay" if label.is_cutoff else "soft"]
            draw_text(painter, foot, under, colour, look.font(UNIT_PT), Align.AlignHCenter)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Select the aid station whose line is nearest."""
        course, body = self.shown.project.course, self.body()
        if event.button() is not Qt.MouseButton.LeftButton or course is None:
            return
        x, reach = event.position().x(), theme().px(REACH_PX)
        away = [(abs(self.x_of(s.at_m, body) - x), s.key) for s in course.stations]
        gap, key = min(away, default=(reach, ""))
        if gap < reach:
            self.selection.choose("station", key)

    def readout(self, at: QPointF) -> str:
        near = [
            (abs(label.x - at.x()), f"{label.name}  {label.under}".strip())
            for label in self._seen(self.body())
            if abs(label.x - at.x()) < theme().px(REACH_PX)
        ]
        return min(near)[1] if near else ""

    def _places(self, labels: list[_Label], body: QRectF) -> list[tuple[_Label, QRectF]]:
        """Return where each label goes: over its line as far as its neighbours let it."""
        gap = theme().px(GAP_PX)
        left, right = body.left() - theme().px(REACH_PX), self.width() + gap / 2 - 2.0
        placed = []
        for row in range(self._rows):
            stand = labels[row :: self._rows]
            if not stand:
                continue
            walls = [left, *(_wall(a, b) for a, b in pairwise(stand)), right]
            for label, (low, high) in zip(stand, pairwise(walls), strict=True):
                low, high = low + gap / 2, high - gap / 2
                width = min(label.wish, high - low)
                x = min(max(label.x - width / 2, low), high - width)
                placed.append((label, QRectF(x, row * _row_height(), width, _row_height())))
        return placed

    def _seen(self, body: QRectF) -> list[_Label]:
        labels = self._labels(partial(self.x_of, body=body))
        return [one for one in labels if body.left() - 1 <= one.x <= body.right() + 1]

    def _labels(self, x_of: Callable[[float], float]) -> list[_Label]:
        shown, words = self.shown, self.words()
        course = shown.project.course
        if course is None or shown.profile is None:
            return []
        race = shown.project.race
        # On every move of a drag the same texts are asked for, at other places.
        texts_of = (race, words, theme().scale)
        if texts_of != self._texts_of:
            self._texts_of, self._texts = texts_of, {}
        ends = [(s.at_m, s.name, s.cutoff_s) for s in course.stations]
        ends.append((course.length_m, self.tr("Finish"), race.limit_s))
        start = replace(self._label(self.tr("Start"), 0.0, is_cutoff=False), x=x_of(0.0))
        return [start, *(replace(self._label(name, s), x=x_of(at_m)) for at_m, name, s in ends)]

    def _label(self, name: str, elapsed_s: float | None, is_cutoff: bool = True) -> _Label:
        """Return the label of a place, its x left open."""
        key = (name, elapsed_s, is_cutoff)
        label = self._texts.get(key)
        if label is None:
            look, words, under, short = theme(), self.words(), "", ""
            if elapsed_s is not None:
                clock = self.shown.project.race.clock(elapsed_s)
                under, short = words.clock(clock), words.clock(clock, weekday=False)
                under = self.tr("by {0}").format(under) if is_cutoff else under
            wish = max(
                look.metrics(LABEL_PT, bold=True).horizontalAdvance(name),
                look.metrics(UNIT_PT).horizontalAdvance(under),
            )
            label = self._texts[key] = _Label(0.0, name, under, short, is_cutoff, wish)
        return label


def shortened(name: str, width: float, advance: Callable[[str], float]) -> str:
    """Return as much of *name* as fits and still tells it from its like.

    Names of one place differ at their end ("Hollow Bridge 7"), so the first words lose letters
    before a number or the last word does; what fits in no other way is cut in its middle.
    """
    if advance(name) <= width:
        return name
    *first, last = name.split() or [""]
    for letters in (4, 3, 2, 1):
        if not first:
            break
        words = [word if len(word) <= letters else word[:letters] for word in first]
        between = " " if letters > 1 else ""
        mark = "." if letters > 1 else ""
        begun = between.join(
            w + (mark if w != o else "") for w, o in zip(words, first, strict=True)
        )
        for end in (last, last if last.isdigit() else last[:letters]):
            short = f"{begun} {end}" if end.isdigit() or letters > 1 else f"{begun}{end}"
            if advance(short) <= width:
                return short
    if last.isdigit() and advance(last) <= width:
        return last
    for kept in range(len(name) - 1, 1, -1):
        short = f"{name[: (kept + 1) // 2]}…{name[len(name) - kept // 2 :]}"
        if advance(short) <= width:
            return short
    return "…" if advance("…") <= width else ""


def _thinned(labels: list[_Label]) -> list[_Label]:
    """Return those that stand clear in one row: start, finish, then those with a cutoff first."""
    gap, kept = theme().px(GAP_PX), labels[:1] + labels[1:][-1:]
    for label in sorted(labels[1:-1], key=lambda one: not one.under):
        if all(abs(label.x - other.x) >= (label.wish + other.wish) / 2 + gap for other in kept):
            kept.append(label)
    return sorted(kept, key=lambda one: one.x)


def _row_height() -> float:
    look = theme()
    return look.metrics(LABEL_PT, bold=True).height() + look.metrics(UNIT_PT).height()


def _wall(a: _Label, b: _Label) -> float:
    """Return where the room of *a* ends and that of *b*, right of it, begins.

    Halfway, unless one of them leaves some of its half to the other.
    """
    gap = theme().px(GAP_PX)
    half = (b.x - a.x - gap) / 2
    of_a, of_b = a.wish / 2, b.wish / 2
    if of_a <= half:
        return a.x + max(of_a, 2 * half - of_b) + gap / 2 if of_b > half else (a.x + b.x) / 2
    return b.x - max(of_b, 2 * half - of_a) - gap / 2 if of_b <= half else (a.x + b.x) / 2


def _is_crowded(labels: list[_Label]) -> bool:
    gap = theme().px(GAP_PX)
    return any(b.x - a.x < (a.wish + b.wish) / 2 + gap for a, b in pairwise(labels))

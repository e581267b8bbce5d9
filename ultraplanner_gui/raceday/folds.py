"""Which legs of the race are folded away, and the pleats that stand for them."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QObject, Signal, Slot

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.engine.legs import Leg, legs_of
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.raceday.pleat import Pleat
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane_stack import LaneStack
from ultraplanner_gui.wording.words import Words


class Folds(QObject):
    """Folds legs of the axis and keeps a pleat over each; one leg always stays open.

    They are kept by the key of the station at their end, so a station that is moved takes its
    fold with it. *top* and *foot* are the parts between which pleats lie.
    """

    changed = Signal()

    def __init__(
        self,
        stack: LaneStack,
        document: Document,
        axis: RaceAxis,
        words: Callable[[], Words],
        top: RaceLane,
        foot: RaceLane,
    ) -> None:
        super().__init__(stack)
        self._stack, self._document, self._axis, self._words = stack, document, axis, words
        self._top, self._foot = top, foot
        self._keys: frozenset[str] = frozenset()
        self._pleats: dict[str, Pleat] = {}
        self._said: frozenset[str] = frozenset()
        axis.changed.connect(self.lay_out)
        stack.laid_out.connect(self.lay_out)

    @property
    def keys(self) -> frozenset[str]:
        """The keys of the stations at the end of what is folded, empty for the last leg.

        A station that was removed counts no more, and again once that is undone.
        """
        return frozenset(leg.key for leg in self._legs(self._document.shown))

    def toggle(self, key: str) -> None:
        """Fold the leg that ends at *key* away, or unfold it."""
        self.choose(self.keys ^ {key})

    def choose(self, keys: Iterable[str]) -> None:
        """Fold exactly the legs that end at *keys*, as far as there are such."""
        there = [leg.key for leg in legs_of(self._document.shown)]
        chosen = frozenset(keys) & set(there)
        if len(chosen) == len(there):
            chosen -= {next((key for key in there if key not in self._keys), there[-1])}
        if chosen != self.keys:
            self._keys = chosen
            self.follow(self._document.shown)

    def follow(self, outlook: Outlook) -> None:
        """Lay the axis out for *outlook*, its folded legs folded."""
        legs = self._legs(outlook)
        self._axis.show(outlook, tuple((leg.start_m, leg.end_m) for leg in legs))
        self.lay_out()
        if frozenset(leg.key for leg in legs) != self._said:
            self._said = frozenset(leg.key for leg in legs)
            self.changed.emit()

    @Slot()
    def lay_out(self) -> None:
        """Put every pleat where its leg is."""
        legs = [] if self._stack.is_strip else self._legs(self._document.shown)
        for key in set(self._pleats) - {leg.key for leg in legs}:
            pleat = self._pleats.pop(key)
            pleat.hide()
            pleat.deleteLater()
        for leg in legs:
            self._put(leg)

    def _legs(self, outlook: Outlook) -> list[Leg]:
        return [leg for leg in legs_of(outlook) if leg.key in self._keys] if self._keys else []

    def _put(self, leg: Leg) -> None:
        pleat = self._pleats.get(leg.key)
        if pleat is None:
            pleat = self._pleats[leg.key] = Pleat(leg.key, self._stack)
            pleat.opened.connect(self.toggle)
            pleat.pointed.connect(self._on_pointed)
            pleat.wheeled.connect(self._on_wheeled)
        body = self._top.body()
        x_of_start = self._axis.x_of_time if self._axis.measure == "clock" else None
        target = self._document.shown.target
        left = self._top.x_of(leg.start_m, body)
        if x_of_start is not None and target is not None:
            left = body.left() + x_of_start(target.departure_s(leg.start_m), body.width())
        right = round(min(self._top.x_of(leg.end_m, body), body.right()))
        left = round(max(left, body.left()))
        top, foot = self._top.geometry().bottom() + 1, self._foot.geometry().top()
        self._say(pleat, leg)
        pleat.setGeometry(left, top, max(right - left, 1), max(foot - top, 1))
        pleat.setVisible(right - left >= 2)
        self._stack.put_under_cursor(pleat)

    def _say(self, pleat: Pleat, leg: Leg) -> None:
        words = self._words()
        begins = leg.begins if leg.begins is not None else self.tr("Start")
        ends = leg.ends if leg.ends is not None else self.tr("Finish")
        name = self.tr("{0} to {1}").format(begins, ends)
        figures = f"{words.distance(leg.length_m, 1)}, {words.duration(leg.running_s)}"
        tip = self.tr("Folded away: {0}, {1}. Click to unfold it.").format(name, figures)
        pleat.say(name, figures, tip)

    @Slot(object)
    def _on_pointed(self, x: float | None) -> None:
        if x is None:
            self._stack.leave()
        else:
            self._stack.point(x)

    @Slot(object)
    def _on_wheeled(self, event: object) -> None:
        pleat = self.sender()
        if isinstance(pleat, Pleat):
            self._top.wheel(event, pleat.x())  # type: ignore[arg-type]

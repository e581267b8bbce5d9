"""Which lanes of a storey are shown, in what order and how high: the user's choice as a value."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from ultraplanner_gui.plan.value import Value

HIDDEN = "-"
BEFORE_HEIGHT = ":"
HIGHEST_PX = 2000


class LaneChoice(Value, frozen=True):
    """One lane: `height_px` is that at the usual text size, 0 for whatever there is room for."""

    name: str
    is_shown: bool = True
    height_px: int = 0


class Arrangement(Value, frozen=True):
    """The lanes of a storey, top to bottom, the hidden ones too. Every change gives another."""

    lanes: tuple[LaneChoice, ...]

    @classmethod
    def usual(cls, names: Sequence[str]) -> Arrangement:
        """Return all of *names* shown, in this order, as high as there is room."""
        return cls(tuple(LaneChoice(name) for name in names))

    @classmethod
    def read(cls, texts: Sequence[str], names: Sequence[str]) -> Arrangement:
        """Return what `written` gave: "name", "name:height", hidden ones with a minus in front.

        What is not among *names* is passed over, what is missing comes where it usually is.
        """
        read: list[LaneChoice] = []
        for text in texts:
            name, _, height = text.removeprefix(HIDDEN).partition(BEFORE_HEIGHT)
            px = min(int(height[:5]), HIGHEST_PX) if height.isdecimal() else 0
            if name in names and all(name != lane.name for lane in read):
                read.append(LaneChoice(name, not text.startswith(HIDDEN), px))
        for place, name in enumerate(names):
            if all(name != lane.name for lane in read):
                read.insert(place, LaneChoice(name))
        if not any(lane.is_shown for lane in read):
            return cls.usual(names)
        return cls(tuple(read))

    def written(self) -> tuple[str, ...]:
        """Return a text for each lane, for the settings."""
        return tuple(
            ("" if lane.is_shown else HIDDEN)
            + lane.name
            + (f"{BEFORE_HEIGHT}{lane.height_px}" if lane.height_px else "")
            for lane in self.lanes
        )

    @property
    def shown(self) -> tuple[str, ...]:
        """The names of the lanes shown, top to bottom."""
        return tuple(lane.name for lane in self.lanes if lane.is_shown)

    def of(self, name: str) -> LaneChoice:
        """Return the choice for *name*."""
        return next(lane for lane in self.lanes if lane.name == name)

    def can_hide(self, name: str) -> bool:
        """Whether another lane would be left."""
        return any(shown != name for shown in self.shown)

    def can_move(self, name: str, by: int) -> bool:
        """Whether there is a lane shown to pass in that direction."""
        return self.moved(name, by) != self

    def with_shown(self, name: str, is_shown: bool) -> Arrangement:
        """Show or hide *name*; the last one shown stays."""
        if not is_shown and not self.can_hide(name):
            return self
        return self._with(replace(self.of(name), is_shown=is_shown))

    def sized(self, name: str, height_px: float) -> Arrangement:
        """Give *name* a height of its own, 0 for whatever there is room for."""
        px = min(max(round(height_px), 0), HIGHEST_PX)
        return self._with(replace(self.of(name), height_px=px))

    def moved(self, name: str, by: int) -> Arrangement:
        """Move *name* one lane down, or for a negative *by* up, past hidden ones."""
        shown = self.shown
        if name not in shown:
            return self
        place = shown.index(name) + (1 if by > 0 else -1)
        if not 0 <= place < len(shown):
            return self
        return self.placed(name, shown[place], is_after=by > 0)

    def placed(self, name: str, beside: str, is_after: bool) -> Arrangement:
        """Put *name* right before or after the lane *beside*."""
        if name == beside:
            return self
        lanes = [lane for lane in self.lanes if lane.name != name]
        place = next(k for k, lane in enumerate(lanes) if lane.name == beside)
        lanes.insert(place + int(is_after), self.of(name))
        return Arrangement(tuple(lanes))

    def _with(self, choice: LaneChoice) -> Arrangement:
        return Arrangement(
            tuple(choice if lane.name == choice.name else lane for lane in self.lanes)
        )

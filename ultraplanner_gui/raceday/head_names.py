"""Names over the lines of stations: how wide they are, what is cut of them, who gives way."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.lane import LABEL_PT, UNIT_PT
from ultraplanner_gui.widgets.theme import theme

GAP_PX = 8.0
#: So much of a name stays beside one in the hand.
LEAST_NAME_PX = 30.0


class Label(Value, frozen=True):
    """A name at *x* and the clock under it, a cutoff or not; `shorter` are briefer words for it.

    `wish` is the width it would like to have, `key` the station, None for the finish. What is
    in the hand `is_held`: neighbours give way to what it says.
    """

    x: float
    name: str
    under: str = ""
    shorter: tuple[str, ...] = ()
    is_cutoff: bool = True
    wish: float = 0.0
    key: str | None = None
    is_held: bool = False

    def at(self, x: float, key: str | None) -> Label:
        """Return the same at another place, of the station *key*."""
        held = self.is_held
        return Label(x, self.name, self.under, self.shorter, self.is_cutoff, self.wish, key, held)

    def clock_in(self, width: float) -> str:
        """Return as much of the clock as fits: a time cut short would be another time."""
        look, texts = theme(), (self.under, *self.shorter)
        return next((t for t in texts if look.width(t, UNIT_PT) <= width + 0.01), "")


def wish_of(name: str, under: str) -> float:
    """Return the width a name and what stands under it would like to have."""
    look = theme()
    return max(look.width(name, LABEL_PT, bold=True), look.width(under, UNIT_PT))


def bold_width(text: str) -> float:
    """Return how wide a name is set."""
    return theme().width(text, LABEL_PT, bold=True)


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


def thinned(labels: list[Label]) -> list[Label]:
    """Return those that stand clear in one row: start, finish, then those with a cutoff first."""
    gap, kept = theme().px(GAP_PX), labels[:1] + labels[1:][-1:]
    for label in sorted(labels[1:-1], key=lambda one: not one.under):
        if all(abs(label.x - other.x) >= (label.wish + other.wish) / 2 + gap for other in kept):
            kept.append(label)
    return sorted(kept, key=lambda one: one.x)


def row_height() -> float:
    """Return the height of one row of names, each with its clock."""
    look = theme()
    return look.metrics(LABEL_PT, bold=True).height() + look.metrics(UNIT_PT).height()


def wall_between(a: Label, b: Label) -> float:
    """Return where the room of *a* ends and that of *b*, right of it, begins.

    Halfway, unless one of them leaves some of its half to the other.
    """
    gap = theme().px(GAP_PX)
    half = (b.x - a.x - gap) / 2
    of_a, of_b = a.wish / 2, b.wish / 2
    least = theme().px(LEAST_NAME_PX) / 2
    if a.is_held or b.is_held:
        of_a, of_b = (of_a, min(of_b, least)) if a.is_held else (min(of_a, least), of_b)
    if of_a <= half:
        return a.x + max(of_a, 2 * half - of_b) + gap / 2 if of_b > half else (a.x + b.x) / 2
    return b.x - max(of_b, 2 * half - of_a) - gap / 2 if of_b <= half else (a.x + b.x) / 2


def is_crowded(labels: list[Label]) -> bool:
    """Whether some of *labels* would meet in one row."""
    gap = theme().px(GAP_PX)
    return any(b.x - a.x < (a.wish + b.wish) / 2 + gap for a, b in pairwise(labels))

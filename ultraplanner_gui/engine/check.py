"""One rule at one place, and where the rules are from."""

from __future__ import annotations

from collections.abc import Callable

from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, message
from ultraplanner_gui.plan.value import Value


class Mend(Value, frozen=True):
    """What would put a rule right: open sessions as they would be, and the planned cutback weeks
    where those change (None: as they are).
    """

    text: Message
    changed: tuple[Session, ...] = ()
    cutbacks: tuple[int, ...] | None = None


MakeMend = Callable[[], "Mend | None"]


class Check(Value, frozen=True, eq=False):
    """One rule at one place: how it stands, in one sentence, and where the rule is from.

    `sessions` are the keys of the sessions concerned, `weeks` the numbers to go. `make_mend` makes
    the mend; it is called only where one is looked at, for checks are renewed on every drag.
    """

    rule: str
    state: State
    text: Message
    source: Message
    sessions: tuple[str, ...] = ()
    weeks: tuple[int, ...] = ()
    make_mend: MakeMend | None = None

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Check) and self._said() == other._said()

    def __hash__(self) -> int:
        return hash(self._said())

    def _said(self) -> tuple[object, ...]:
        """Return what it says; how it is mended is another function each time."""
        return self.rule, self.state, self.text, self.source, self.sessions, self.weeks

    @property
    def mend(self) -> Mend | None:
        """What would put it right; None if it holds or no one way is plainly best."""
        return None if self.make_mend is None else self.make_mend()


def limit_state(value: float, holds_to: float, strains_to: float) -> State:
    """Return how *value* stands against two upper limits."""
    if value <= holds_to:
        return State.HOLDS
    return State.STRAINS if value <= strains_to else State.BREAKS


def band_state(value: float, holds: tuple[float, float], strains: tuple[float, float]) -> State:
    """Return how *value* stands against a band and the wider one round it."""
    if holds[0] <= value <= holds[1]:
        return State.HOLDS
    return State.STRAINS if strains[0] <= value <= strains[1] else State.BREAKS


RAMP_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks",
        "Custom, weakly supported: a trial in 532 beginners found no benefit of the 10 % limit "
        "(Buist et al. 2008, Am J Sports Med 36:33).",
    )
)
SINGLE_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks",
        "Supported by observation of 5205 runners, no trial: Frandsen et al. 2025, "
        "Br J Sports Med 59:1203.",
    )
)
TAPER_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks",
        "Supported in shorter events: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358; "
        "here the mean over the taper days, race day left out.",
    )
)
DOWNHILL_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks",
        "That earlier descents protect is supported (Bontemps et al. 2020, Sports Med 50:2083); "
        "the spacing is our own choice.",
    )
)
CARB_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks",
        "Supported over two weeks in runners (Costa et al. 2017, Appl Physiol Nutr Metab 42:547); "
        "the limit is our own choice.",
    )
)
FASTED_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks",
        "Muscle changes are shown, faster running is not (Van Proeyen et al. 2011, J Appl Physiol "
        "110:236; Impey et al. 2018, Sports Med 48:1031); the limits are our own.",
    )
)
CUSTOM = message(QT_TRANSLATE_NOOP("Checks", "Common practice, no source."))

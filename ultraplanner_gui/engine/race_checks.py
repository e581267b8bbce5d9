"""Checks of race day: cutoffs, their odds, the dark against the lamp, heat."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ultraplanner_gui.engine.check import CUSTOM, Check
from ultraplanner_gui.engine.light import LightSpan
from ultraplanner_gui.engine.odds import IN_TWENTY
from ultraplanner_gui.engine.sections import SectionFigures, tightest
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.warmth import Warmth
from ultraplanner_gui.plan.conditions import Conditions
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Quantity, message

CUTOFF, ODDS, LAMP, HEAT = "least in hand", "odds", "lamp", "heat"

# OWN: less than this to a cutoff is soon lost at one station.
LITTLE_S = 1800.0
# OWN: a cutoff made on fewer days than these strains, or breaks.
ODDS_HOLD, ODDS_STRAIN = 18, 10
# OWN: cells give less in the cold, and one gets lost; so much of the run-time is counted on.
LAMP_SPARE = 0.8
# WBGT from which runners are told to slow down, those at risk to stop, and all to stop; bands for
# distance races of the American College of Sports Medicine (2007, Med Sci Sports Exerc 39:556).
WARM_C, HOT_C, TOO_HOT_C = 18.0, 23.0, 28.0

OWN_CHOICE = message(QT_TRANSLATE_NOOP("Checks", "Our own choice."))
ODDS_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks", "10,000 simulated races about the forecast; an estimate of our own."
    )
)
_HEAT_SOURCE = message(
    QT_TRANSLATE_NOOP(
        "Checks",
        "Bands for distance races: American College of Sports Medicine 2007, Med Sci Sports "
        "Exerc 39:556 (read in secondary sources). The value is an estimate that assumes sun and "
        "a light wind.",
    )
)


def race_checks(
    sections: Sequence[SectionFigures],
    light: Sequence[LightSpan],
    warm: Warmth | None,
    conditions: Conditions,
) -> tuple[Check, ...]:
    """Return how cutoffs, odds, lamp and heat stand, the worst first."""
    found = [
        *_cutoff_checks(sections),
        *_lamp_checks(light, conditions.lamp_s),
        *_heat_checks(warm),
    ]
    order = [State.BREAKS, State.STRAINS, State.HOLDS]
    return tuple(sorted(found, key=lambda check: order.index(check.state)))


def dark_s(light: Sequence[LightSpan]) -> float:
    """Return how long it is dark during the race."""
    return sum(span.end_s - span.start_s for span in light if span.kind == "dark")


def _cutoff_checks(sections: Sequence[SectionFigures]) -> Iterator[Check]:
    worst = tightest(sections)
    if worst is None or worst.to_cutoff_s is None:
        return
    place = _place(worst)
    spare = Quantity(abs(worst.to_cutoff_s), "s")
    late = worst.forecast_s > worst.arrive_s
    yield Check(
        CUTOFF,
        margin_state(worst.to_cutoff_s),
        message(_cutoff_words(worst.to_cutoff_s < 0.0, late), place, spare),
        OWN_CHOICE,
    )
    with_chance = [s for s in sections if s.chance is not None]
    if with_chance:
        least = min(with_chance, key=lambda s: s.chance.share if s.chance else 1.0)
        assert least.chance is not None
        days = least.chance.twentieths
        state = odds_state(days)
        text = QT_TRANSLATE_NOOP("Checks", "{0} is made in time on about {1} of {2} days.")
        yield Check(ODDS, state, message(text, _place(least), days, IN_TWENTY), ODDS_SOURCE)


def odds_state(days: int) -> State:
    """Return how a cutoff stands that is made on so many days of twenty."""
    if days >= ODDS_HOLD:
        return State.HOLDS
    return State.STRAINS if days >= ODDS_STRAIN else State.BREAKS


def margin_state(spare_s: float) -> State:
    """Return how a cutoff stands with so much time to spare, below zero where it is missed."""
    if spare_s < 0.0:
        return State.BREAKS
    return State.STRAINS if spare_s < LITTLE_S else State.HOLDS


def _cutoff_words(is_missed: bool, by_forecast: bool) -> str:
    if is_missed and by_forecast:
        return QT_TRANSLATE_NOOP(
            "Checks", "The forecast misses the cutoff at {0} by {1}; the target is earlier."
        )
    if is_missed:
        return QT_TRANSLATE_NOOP(
            "Checks",
            "The target misses the cutoff at {0} by {1}: run faster before it or stop less.",
        )
    if by_forecast:
        return QT_TRANSLATE_NOOP("Checks", "Tightest cutoff, by the forecast: {0}, {1} to spare.")
    return QT_TRANSLATE_NOOP("Checks", "Tightest cutoff, by the target: {0}, {1} to spare.")


def _lamp_checks(light: Sequence[LightSpan], lamp_s: float | None) -> Iterator[Check]:
    dark = dark_s(light)
    if lamp_s is None or dark <= 0.0:
        return
    both = Quantity(dark, "s"), Quantity(lamp_s, "s")
    if dark > lamp_s:
        text = QT_TRANSLATE_NOOP(
            "Checks", "Dark for {0}, and the lamp burns {1}: carry cells or a second lamp."
        )
        yield Check(LAMP, State.BREAKS, message(text, *both), CUSTOM)
    elif dark > LAMP_SPARE * lamp_s:
        text = QT_TRANSLATE_NOOP(
            "Checks", "Dark for {0} of the {1} the lamp burns: little is left for cold or delay."
        )
        yield Check(LAMP, State.STRAINS, message(text, *both), CUSTOM)
    else:
        text = QT_TRANSLATE_NOOP("Checks", "Dark for {0}, the lamp burns {1}.")
        yield Check(LAMP, State.HOLDS, message(text, *both), CUSTOM)


def _heat_checks(warm: Warmth | None) -> Iterator[Check]:
    hottest = warm.hottest if warm is not None else None
    if hottest is None or hottest[2] < WARM_C:
        return
    at_m, _, wbgt_c = hottest
    state = State.BREAKS if wbgt_c >= TOO_HOT_C else State.STRAINS
    if wbgt_c >= TOO_HOT_C:
        text = QT_TRANSLATE_NOOP(
            "Checks",
            "Very high heat near {0}, WBGT about {1}: at this races are stopped; ask whether to "
            "start.",
        )
    elif wbgt_c >= HOT_C:
        text = QT_TRANSLATE_NOOP(
            "Checks",
            "High heat near {0}, WBGT about {1}: slow down, cool down, and do not start if you are "
            "not well.",
        )
    else:
        text = QT_TRANSLATE_NOOP(
            "Checks", "Moderate heat near {0}, WBGT about {1}: slower if you take heat badly."
        )
    yield Check(
        HEAT, state, message(text, Quantity(at_m, "m"), Quantity(wbgt_c, "celsius")), _HEAT_SOURCE
    )


def _place(section: SectionFigures) -> str | Quantity:
    return section.name or Quantity(section.end_m, "m")

"""Sweat, fluid and sodium: what one loses and how much to have with one.

The lead rule: drink to thirst, never more than is sweated, never gain weight.
"""

from __future__ import annotations

from enum import StrEnum

MG_PER_MMOL_SODIUM = 22.99
#: Outside these a sweat rate, L/h, is taken for a slip of the pen (OWN).
LEAST_SWEAT_L_PER_H, MOST_SWEAT_L_PER_H = 0.1, 3.5
# OWN: have 70 % of the sweat at hand, 300 to 750 mL/h.
_SHARE_AT_HAND = 0.7
_LEAST_AT_HAND_ML, _MOST_AT_HAND_ML = 300.0, 750.0
# Sawka et al. 2007, Med Sci Sports Exerc 39:377-390 (figures from memory).
BEFORE_ML_PER_KG = (5.0, 7.0)


class MassChange(StrEnum):
    """What a change of body mass over a race means."""

    GAIN = "gain"
    USUAL = "usual"
    LOW = "low"
    UNUSUAL = "unusual"


def sweat_l_per_h(
    before_kg: float, after_kg: float, drunk_l: float, passed_l: float, hours: float
) -> float:
    """Return the sweat rate, masses undressed and dry.

    Sawka et al. 2007, Med Sci Sports Exerc 39:377-390 (formula from memory). Holds for runs of
    one to two hours.
    """
    return (before_kg - after_kg + drunk_l - passed_l) / hours


def fluid_to_plan_ml_per_h(sweat_l_per_hour: float) -> float:
    """Return what to have at hand: 70 % of the sweat, 300 to 750 mL/h, never above it (OWN)."""
    sweat_ml = 1000.0 * sweat_l_per_hour
    at_hand = min(max(_SHARE_AT_HAND * sweat_ml, _LEAST_AT_HAND_ML), _MOST_AT_HAND_ML)
    return min(at_hand, sweat_ml)


def mass_change_percent(before_kg: float, after_kg: float) -> float:
    """Return the change of body mass in per cent, negative for a loss."""
    return 100.0 * (after_kg - before_kg) / before_kg


def mass_change(percent: float) -> MassChange:
    """Return what a change of body mass means.

    Classes of Hoffman et al. 2013, Med Sci Sports Exerc 45:784-791; unusual from 5 % down is OWN.
    """
    if percent > 0.0:
        return MassChange.GAIN
    if percent >= -3.0:
        return MassChange.USUAL
    return MassChange.LOW if percent >= -5.0 else MassChange.UNUSUAL


def sodium_mg_per_l(mmol_per_l: float) -> float:
    """Return a sodium concentration in mg/L."""
    return mmol_per_l * MG_PER_MMOL_SODIUM


def drink_before_ml(body_kg: float) -> tuple[float, float]:
    """Return least and most to drink at least four hours before the start."""
    low, high = BEFORE_ML_PER_KG
    return low * body_kg, high * body_kg

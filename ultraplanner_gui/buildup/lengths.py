"""Lengths of sessions in steps: half a unit of distance, or five minutes."""

from __future__ import annotations

import math

from ultraplanner_gui.edits.block_moves import length_of
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.wording.words import Words

STEP_OF_UNIT = 0.5
STEP_S = 300.0


def step_of(session: Session, words: Words) -> float:
    """Return one step, in metres or, for what has no distance, in seconds."""
    has_metres = session.kind.is_run and session.distance_m > 0.0
    return STEP_OF_UNIT * words.unit_m if has_metres else STEP_S


def snapped(length: float, session: Session, words: Words) -> float:
    """Return *length* on the nearest step; the length it has is one of the steps."""
    step, own = step_of(session, words), length_of(session)
    if abs(length - own) < step / 2:
        return own
    return max(1, round(length / step)) * step


def next_length(session: Session, steps: int, words: Words) -> float:
    """Return the length so many *steps* on, each on a whole step."""
    step, own = step_of(session, words), length_of(session)
    places = own / step
    here = math.floor(places + 1e-6) if steps > 0 else math.ceil(places - 1e-6)
    return max(1, here + steps) * step

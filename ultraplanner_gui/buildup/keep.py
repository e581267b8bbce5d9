"""Which two sessions of a week to keep if it falls apart."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.plan.block import Kind, Session

#: After the long run, in this order; common practice, no source.
_NEXT = (Kind.DOWNHILL, Kind.HILLS, Kind.TEMPO, Kind.INTERVALS, Kind.SECOND_LONG)


def two_to_keep(sessions: Sequence[Session]) -> tuple[str, ...]:
    """Return the keys of the two sessions of a week to keep: the long run and the one after it.

    The long run first, then what is specific to the race, else the longest of the others (common
    practice, no source).
    """
    runs = [s for s in sessions if s.kind.is_run and s.kind is not Kind.RACE and not s.missed]
    if not runs:
        return ()
    longest = max(runs, key=lambda s: (s.kind.is_long, s.distance_m))
    others = [s for s in runs if s is not longest]
    if not others:
        return (longest.key,)

    def rank(session: Session) -> tuple[int, float]:
        place = _NEXT.index(session.kind) if session.kind in _NEXT else len(_NEXT)
        return place, -session.distance_m

    return (longest.key, min(others, key=rank).key)

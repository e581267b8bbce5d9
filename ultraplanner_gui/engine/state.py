"""How a check stands."""

from __future__ import annotations

from enum import StrEnum


class State(StrEnum):
    """Holds, strains or breaks, in that order."""

    HOLDS = "holds"
    STRAINS = "strains"
    BREAKS = "breaks"

"""Mending a block after missed days: fewest changes, nothing made up for."""

from __future__ import annotations

from ultraplanner_gui.engine.repair_request import Absence, Cause, Repair, RepairRequest
from ultraplanner_gui.plan.block import Block

__all__ = ["Absence", "Cause", "Repair", "RepairRequest", "repair_block"]


def repair_block(block: Block, request: RepairRequest) -> Repair:
    """Return ways to mend *block*; takes seconds, so call it off the GUI thread."""
    raise NotImplementedError

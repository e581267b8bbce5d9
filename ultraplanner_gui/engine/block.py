"""Building a block: weeks counted back from the race, sessions placed on the days there are."""

from __future__ import annotations

from msgspec.structs import replace

from ultraplanner_gui.engine.block_dress import dressed
from ultraplanner_gui.engine.block_layout import Layout, laid_out
from ultraplanner_gui.engine.block_notes import notes_of
from ultraplanner_gui.engine.block_others import left_out
from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.runway import Runway
from ultraplanner_gui.plan.block import Block, Kind, Session
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.value import Value

__all__ = ["BlockPlan", "BlockRequest", "build_block", "finished"]


class BlockPlan(Value, frozen=True):
    """A built block, its runway, and what the builder could not give, in words."""

    block: Block
    runway: Runway
    notes: tuple[Message, ...] = ()


def build_block(request: BlockRequest) -> BlockPlan:
    """Return a block for *request* by the rules; the same request gives the same block.

    Raises PlanError if there is no day to run on or no race ahead.
    """
    return finished(laid_out(request))


def finished(layout: Layout) -> BlockPlan:
    """Return the block of *layout* with everything its sessions carry."""
    weeks = layout.weeks
    sessions = _with_locked(dressed(layout.filled.runs, layout.rules), layout.request)
    block = Block(sessions, weeks.first_week, weeks.cutbacks, weeks.taper_weeks)
    notes = (*notes_of(layout), *left_out(sessions, layout.request))
    return BlockPlan(block, layout.way, notes)


def _with_locked(sessions: tuple[Session, ...], request: BlockRequest) -> tuple[Session, ...]:
    """Return *sessions* with the locked ones as they were instead of what stands in for them."""
    if not request.locked:
        return sessions
    days = {s.day for s in request.locked if s.kind.is_run}
    keys = {s.key for s in request.locked}
    free = [
        replace(s, key=f"{s.key}-new") if s.key in keys else s
        for s in sessions
        if s.day not in days or not s.kind.is_run or s.kind is Kind.RACE
    ]
    return tuple(sorted((*free, *request.locked), key=lambda s: s.day))

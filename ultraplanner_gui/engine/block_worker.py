"""The other end of a search in a process of its own: requests in, news and a result out."""

from __future__ import annotations

from typing import Protocol

from ultraplanner_gui.engine.block_exact import ExactPlan, Progress, Search, best_block
from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.repair import repair_block
from ultraplanner_gui.engine.repair_request import Repair, RepairRequest
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.plan.value import Value


class Line(Protocol):
    """The sending end of a pipe."""

    def send(self, value: object) -> None:
        """Send *value* to whoever listens."""

    def close(self) -> None:
        """Say that nothing more comes."""


class Failure(Value, frozen=True):
    """A request that cannot be met: the sentence for the user, None for a fault, and its text."""

    message: Message | None
    text: str


News = Progress | ExactPlan | Repair | Failure


def search_block(line: Line, request: BlockRequest, search: Search) -> None:
    """Send the progress of a search for *request* through *line*, then its `ExactPlan`."""
    try:
        line.send(best_block(request, search, line.send))
    except PlanError as error:
        line.send(Failure(error.message, str(error)))
    except Exception as error:
        line.send(Failure(None, repr(error)))
    finally:
        line.close()


def mend_block(line: Line, block: Block, request: RepairRequest) -> None:
    """Send the `Repair` of *block* through *line*."""
    try:
        line.send(repair_block(block, request))
    except PlanError as error:
        line.send(Failure(error.message, str(error)))
    except Exception as error:
        line.send(Failure(None, repr(error)))
    finally:
        line.close()

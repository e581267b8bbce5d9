"""Searching and mending a block in a process of its own, which can be ended at any moment.

`ExactBlock` and `MendBlock` are jobs for `desk.jobs.JobBench`: called with a `Token` they tell how
far they are, give what they find, and end their process within a tenth of a second of a cancel.
"""

from __future__ import annotations

import multiprocessing
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from multiprocessing.connection import Connection

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.block_exact import USUAL_SEARCH, ExactPlan, Progress, Search
from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.block_worker import Failure, News, mend_block, search_block
from ultraplanner_gui.engine.repair_request import Repair, RepairRequest
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value

LOOK_S = 0.05
GRACE_S = 0.2

Hear = Callable[[Progress], None]


class ExactBlock(Value, frozen=True):
    """A search for the best block. `hear` is called on the thread of the job with its progress:
    the cost so far, its gap, the share of the time gone.
    """

    request: BlockRequest
    search: Search = USUAL_SEARCH
    hear: Hear | None = None

    def __call__(self, token: Token) -> ExactPlan:
        with _process(search_block, self.request, self.search) as line:
            for news in _heard(line, token):
                if isinstance(news, Progress):
                    token.progress(news.share)
                    if self.hear is not None:
                        self.hear(news)
                elif isinstance(news, ExactPlan):
                    return news
        raise _ended()


class MendBlock(Value, frozen=True):
    """The ways to mend a block after missed days."""

    block: Block
    request: RepairRequest

    def __call__(self, token: Token) -> Repair:
        with _process(mend_block, self.block, self.request) as line:
            for news in _heard(line, token):
                if isinstance(news, Repair):
                    return news
        raise _ended()


def _ended() -> PlanError:
    """Return the error that says that the process was stopped by something else."""
    return PlanError(
        QT_TRANSLATE_NOOP(
            "Plan",
            "The search was stopped from outside, perhaps for want of memory; the block stays as "
            "it is. Try again.",
        )
    )


@contextmanager
def _process(work: Callable[..., None], *args: object) -> Iterator[Connection]:
    """Run *work* with a line to talk back on; whatever happens here, nothing is left running."""
    context = multiprocessing.get_context("spawn")
    here, there = context.Pipe(duplex=False)
    process = context.Process(target=work, args=(there, *args), daemon=True)
    process.start()
    there.close()
    try:
        yield here
    except BaseException:
        # Before its end of the pipe breaks, or the process would complain of that.
        process.terminate()
        raise
    finally:
        process.join(GRACE_S)
        if process.is_alive():
            process.kill()
            process.join()
        process.close()
        here.close()


def _heard(line: Connection, token: Token) -> Iterator[News]:
    """Yield what comes through *line*; raises Cancelled when the token says so."""
    while True:
        token.check()
        if not line.poll(LOOK_S):
            continue
        try:
            news: News = line.recv()
        except EOFError:
            return
        if isinstance(news, Failure):
            if news.message is not None:
                raise PlanError(news.message.template, *news.message.args)
            raise RuntimeError(news.text)
        yield news

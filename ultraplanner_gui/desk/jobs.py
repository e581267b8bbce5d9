"""Slow work off the GUI thread: plain functions in, values out, in order and cancellable."""

from __future__ import annotations

import logging
import sys
import threading
import time
from collections.abc import Callable
from functools import partial
from typing import Concatenate, NewType, ParamSpec

from PySide6.QtCore import QObject, Qt, QThreadPool, Signal, Slot

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError
from ultraplanner_gui.plan.value import Value

P = ParamSpec("P")
Ticket = NewType("Ticket", int)

# A parser in a thread otherwise holds the interpreter for 5 ms at a time, a third of a frame.
BUSY_SWITCH_S = 0.0005
PROGRESS_EVERY_S = 0.05

FAULT = Message(
    QT_TRANSLATE_NOOP(
        "Jobs",
        "This failed through a fault in the program; nothing was changed. The log has the details.",
    )
)

NO_MEMORY = Message(
    QT_TRANSLATE_NOOP(
        "Jobs",
        "There was not enough memory for this; nothing was changed. Close other programs and try "
        "again.",
    )
)

_log = logging.getLogger(__name__)


class Cancelled(Exception):
    """The user no longer wants the result."""


class Token:
    """What a job gets as its first argument: tells how far it is and learns if it is to stop."""

    def __init__(self, report: Callable[[float], None]) -> None:
        self._report = report
        self._cancel = threading.Event()
        self._reported_at = -PROGRESS_EVERY_S

    @property
    def is_cancelled(self) -> bool:
        """Whether the result is no longer wanted."""
        return self._cancel.is_set()

    def cancel(self) -> None:
        """Ask the job to stop."""
        self._cancel.set()

    def check(self) -> None:
        """Raise Cancelled if the job is to stop; call it in every long loop."""
        if self.is_cancelled:
            raise Cancelled

    def progress(self, fraction: float) -> None:
        """Say that *fraction* of the work is done; raises Cancelled like `check`."""
        self.check()
        now = time.monotonic()
        if now - self._reported_at >= PROGRESS_EVERY_S:
            self._reported_at = now
            self._report(fraction)


class _News(Value, frozen=True):
    ticket: Ticket
    kind: str
    value: object


class JobBench(QObject):
    """Runs jobs on threads of its own; all signals arrive on the GUI thread.

    A cancelled job is never heard of again. A late result is told from the newest by its
    ticket, which rises from job to job.
    """

    done = Signal(object, object)
    """Ticket and result."""
    failed = Signal(object, object)
    """Ticket and the `Message` that says why."""
    progressed = Signal(object, object)
    """Ticket and the fraction done."""

    _arrived = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._tokens: dict[object, Token] = {}
        self._running: set[Ticket] = set()
        self._last = 0
        self._usual_switch_s = sys.getswitchinterval()
        # the bench owns the signal: a runnable would take its own along when the pool deletes it
        self._arrived.connect(self._on_arrived, Qt.ConnectionType.QueuedConnection)

    @property
    def is_busy(self) -> bool:
        """Whether a job is at work whose result is wanted."""
        return bool(self._tokens)

    def submit(
        self, function: Callable[Concatenate[Token, P], object], *args: P.args, **named: P.kwargs
    ) -> Ticket:
        """Start *function* with a `Token` and *args*; return the ticket of its signals."""
        self._last += 1
        ticket = Ticket(self._last)
        token = Token(partial(self._tell, ticket, "progress"))
        if not self._running:
            self._usual_switch_s = sys.getswitchinterval()
            sys.setswitchinterval(BUSY_SWITCH_S)
        self._tokens[ticket] = token
        self._running.add(ticket)
        self._pool.start(partial(self._run, ticket, partial(function, token, *args, **named)))
        return ticket

    def cancel(self, ticket: object) -> None:
        """Stop the job of *ticket* as soon as it looks; nothing more is heard of it."""
        token = self._tokens.pop(ticket, None)
        if token is not None:
            token.cancel()

    def close(self) -> None:
        """Cancel everything and wait until no thread is left."""
        for ticket in list(self._tokens):
            self.cancel(ticket)
        self._pool.clear()
        self._pool.waitForDone()
        self._running.clear()
        sys.setswitchinterval(self._usual_switch_s)

    def _run(self, ticket: Ticket, work: Callable[[], object]) -> None:
        """Do the work, on a thread of the pool."""
        try:
            self._tell(ticket, "done", work())
        except Cancelled:
            self._tell(ticket, "cancelled", None)
        except PlanError as error:
            self._tell(ticket, "failed", error.message)
        except MemoryError:
            self._tell(ticket, "failed", NO_MEMORY)
        except Exception:
            _log.exception("job %d failed", ticket)
            self._tell(ticket, "failed", FAULT)

    def _tell(self, ticket: Ticket, kind: str, value: object) -> None:
        self._arrived.emit(_News(ticket, kind, value))

    @Slot(object)
    def _on_arrived(self, news: _News) -> None:
        if news.kind == "progress":
            if news.ticket in self._tokens:
                self.progressed.emit(news.ticket, news.value)
            return
        self._running.discard(news.ticket)
        if not self._running:
            sys.setswitchinterval(self._usual_switch_s)
        if self._tokens.pop(news.ticket, None) is None:
            return
        if news.kind == "done":
            self.done.emit(news.ticket, news.value)
        elif news.kind == "failed":
            self.failed.emit(news.ticket, news.value)

"""What escapes from the program: written to the log in full, said to the user in one sentence."""

from __future__ import annotations

import contextlib
import faulthandler
import logging
import sys
import threading
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from ultraplanner_gui.desk import places
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message

LOG_BYTES = 256 * 1024
LOGS_HELD = 3

_log = logging.getLogger(__name__)


def install(tell: Callable[[Message], object], folder: Path | None = None) -> Callable[[], None]:
    """Send every escaped exception to the log and, once for each place in the program, to *tell*.

    Returns what puts everything back as it was.
    """
    folder = folder or places.logs()
    path = folder / "ultraplanner.log"
    handler = _LogFile(path)
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    root = logging.getLogger("ultraplanner_gui")
    root.addHandler(handler)
    # faulthandler writes to it when nothing else works any more, so it stays open
    faults = (folder / "faults.log").open("a", encoding="utf-8")
    faulthandler.enable(faults)
    hooks = sys.excepthook, threading.excepthook
    hook = _Hook(tell, path)
    sys.excepthook = hook
    threading.excepthook = hook.on_thread

    def restore() -> None:
        sys.excepthook, threading.excepthook = hooks
        faulthandler.disable()
        faults.close()
        root.removeHandler(handler)
        handler.close()

    return restore


class _LogFile(logging.Handler):
    """Writes to a log that is begun anew when it is full; made when there is something to write."""

    def __init__(self, path: Path) -> None:
        super().__init__()
        self._path = path
        self._file: logging.Handler | None = None

    def emit(self, record: logging.LogRecord) -> None:
        if self._file is None:
            # It brings sockets and more with it, which every start would wait for.
            from logging.handlers import RotatingFileHandler

            self._file = RotatingFileHandler(
                self._path, maxBytes=LOG_BYTES, backupCount=LOGS_HELD, encoding="utf-8"
            )
            self._file.setFormatter(self.formatter)
        self._file.emit(record)

    def close(self) -> None:
        if self._file is not None:
            self._file.close()
        super().close()


class _Hook:
    """Takes the place of `sys.excepthook`."""

    def __init__(self, tell: Callable[[Message], object], log: Path) -> None:
        self._tell = tell
        self._path = log
        self._told: set[tuple[str, int]] = set()

    def __call__(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        _log.error("escaped", exc_info=(kind, error, trace))
        sys.__excepthook__(kind, error, trace)
        place = _place(trace)
        # a painter that fails does so at every frame, and no widget may be touched from a thread
        if place in self._told or threading.current_thread() is not threading.main_thread():
            return
        self._told.add(place)
        with contextlib.suppress(Exception):
            self._tell(
                Message(
                    QT_TRANSLATE_NOOP(
                        "Crash",
                        "A fault in the program stopped this; your work is kept. "
                        "The details are in {0}.",
                    ),
                    (str(self._path),),
                )
            )

    def on_thread(self, args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None:
            self(args.exc_type, args.exc_value, args.exc_traceback)


def _place(trace: TracebackType | None) -> tuple[str, int]:
    place = ("", 0)
    while trace is not None:
        place = (trace.tb_frame.f_code.co_filename, trace.tb_lineno)
        trace = trace.tb_next
    return place

"""Slow work of one window: one job at a time, its progress and Cancel at the foot."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any, Concatenate, ParamSpec

from PySide6.QtCore import Slot

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.window.view_deeds import ViewDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.window.main_window import MainWindow

P = ParamSpec("P")


class JobDeeds(ViewDeeds):
    """Starts the jobs of one window and takes what they make."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._job: object = None
        self._then: Callable[[Any], None] = _nothing
        window.jobs.done.connect(self._on_job_done)
        window.jobs.failed.connect(self._on_job_failed)
        window.jobs.progressed.connect(self._on_job_progressed)

    @Slot()
    def cancel_job(self) -> None:
        if self._job is not None:
            self._window.jobs.cancel(self._job)
            self._job = None
            self._window.hide_progress()

    def _start(
        self,
        then: Callable[[Any], None],
        job: Callable[Concatenate[Token, P], object],
        *args: P.args,
        **named: P.kwargs,
    ) -> None:
        """Start *job* with its progress in place; *then* takes what it makes."""
        self.cancel_job()
        self._then = then
        self._job = self._window.jobs.submit(job, *args, **named)
        self._window.show_progress(0.0)

    @Slot(object, object)
    def _on_job_done(self, ticket: object, result: object) -> None:
        if ticket == self._job:
            self._job = None
            self._window.hide_progress()
            self._then(result)

    @Slot(object, object)
    def _on_job_failed(self, ticket: object, message: object) -> None:
        if ticket == self._job:
            self._job = None
            self._window.hide_progress()
            sentence = self._window.settings.words().say(message)  # type: ignore[arg-type]
            self._window.ask.tell(self.tr("That did not work"), sentence)

    @Slot(object, object)
    def _on_job_progressed(self, ticket: object, fraction: float) -> None:
        if ticket == self._job:
            self._window.show_progress(fraction)


def _nothing(result: object) -> None:
    """Do nothing with *result*."""

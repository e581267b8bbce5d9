"""How well a fit holds on runs it has not seen."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime, timedelta

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.calibration import Estimate, Fit, error_of, fit
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value


class HeldOut(Value, frozen=True):
    """Median error over tenths of one run, in percent of their time, its own fresh speed apart.

    `fitted` with the figures fitted to the other runs, None where they are too few for a fit;
    `default` with the defaults.
    """

    fitted: float | None
    default: float


class TriedFit(Value, frozen=True):
    """A fit and what it is worth: `held_out` has one for each of its runs."""

    fit: Fit
    held_out: tuple[HeldOut, ...]

    @property
    def error_percent(self) -> float | None:
        """The median error of the fits on the runs they left out; None without any."""
        return _median([h.fitted for h in self.held_out])

    @property
    def default_percent(self) -> float | None:
        """The median error of the defaults on the same runs."""
        return _median([None if h.fitted is None else h.default for h in self.held_out])


def tried_fit(
    recordings: Sequence[Recording],
    runner: Runner,
    progress: Callable[[float], None] = lambda share: None,
) -> TriedFit:
    """Return the fit to *recordings*, and its errors on each when that is left out.

    Fade and uphill share of *runner* do not count: a fit taken before is no default. Two devices
    on one run are left out together. PlanError when there is too little to fit.
    """
    usual = Runner()
    runner = replace(runner, fade=usual.fade, uphill_share=usual.uphill_share)
    whole = fit(recordings, runner)
    default = _defaults(whole)
    held_out: list[HeldOut] = []
    for number, recording in enumerate(recordings):
        progress((number + 1) / (len(recordings) + 1))
        others = [r for r in recordings if r is not recording and not overlap(r, recording)]
        try:
            error = error_of(recording, fit(others, runner), runner)
        except PlanError:
            error = np.nan
        usual_error = error_of(recording, default, runner)
        held_out.append(HeldOut(None if np.isnan(error) else error, usual_error))
    return TriedFit(whole, tuple(held_out))


def overlap(one: Recording, other: Recording) -> bool:
    """Whether two recordings were under way at the same time."""
    if one.start is None or other.start is None:
        return False
    return one.start < _end(other.start, other) and other.start < _end(one.start, one)


def _end(start: datetime, recording: Recording) -> datetime:
    return start + timedelta(seconds=float(recording.elapsed_s[-1]))


def _defaults(whole: Fit) -> Fit:
    def plain(estimate: Estimate) -> Estimate:
        return replace(estimate, value=estimate.default)

    fade, uphill, descent = map(plain, (whole.fade, whole.uphill, whole.descent))
    return replace(whole, fade=fade, uphill=uphill, descent=descent)


def _median(values: list[float | None]) -> float | None:
    known = [value for value in values if value is not None]
    return float(np.median(known)) if known else None

"""Fit a runner on some recordings and try it on one left out; and two devices on one run.

Printed by bench_pace.py. The recordings are of several runners, so a finish predicted from the
run of another tells how far runners lie apart rather than how good the prediction is; runs of one
runner are marked.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.calibration import Fit, fit
from ultraplanner_gui.engine.environment import Effects
from ultraplanner_gui.engine.pacing import pace_for_finish
from ultraplanner_gui.engine.prediction import predict, result_of
from ultraplanner_gui.engine.profile import Profile, build_profile, line_distance
from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner

TENTHS = np.linspace(0.1, 1.0, 10)
_NAME = 26

SameRun = Callable[[str, str], bool]


@dataclass(frozen=True, slots=True)
class Tried:
    """Errors in percent of one recording at nine places and in ten parts, and the finish there
    was, beside the one predicted with its 10th and 90th percentile.
    """

    cumulative: FloatArray
    section: FloatArray
    real_s: float
    predicted_s: tuple[float, float, float]

    @property
    def finish_percent(self) -> float:
        """How far the predicted finish lies off, in percent of the real one."""
        return 100.0 * (self.predicted_s[1] / self.real_s - 1.0)


def tried(others: Sequence[Recording], left_out: Recording) -> Tried | None:
    """Return how a runner fitted on *others* meets *left_out*; None where they bear no fit."""
    try:
        found = fit(others)
        finish = predict(_profile(left_out), [result_of(r) for r in others])
    except PlanError:
        return None
    cumulative, section = _errors(left_out, *_of_fit(found))
    middle = (finish.low_s, finish.middle_s, finish.high_s)
    return Tried(cumulative, section, _last_s(left_out), middle)


def each_left_out(recordings: Mapping[str, Recording], same_run: SameRun) -> Iterator[str]:
    """Yield a line for every recording: fitted on all others, and the default beside it."""
    head = "left out, fitted on the others"
    yield f"{head:30s} cum. med/90   sect. med/90   default sect. med/90"
    pooled: list[Tried] = []
    usual: list[tuple[FloatArray, FloatArray]] = []
    for name, recording in recordings.items():
        others = [r for n, r in recordings.items() if n != name and not same_run(n, name)]
        found = tried(others, recording)
        if found is None:
            yield f"{name:30.30s} the others bear no fit"
            continue
        default = _errors(recording, Runner(), Effects())
        pooled.append(found)
        usual.append(default)
        errors = (found.cumulative, found.section, default[1])
        yield f"{name:30.30s} " + "   ".join(map(_two, errors))
    if pooled:
        together = (
            np.concatenate([t.cumulative for t in pooled]),
            np.concatenate([t.section for t in pooled]),
            np.concatenate([section for _, section in usual]),
        )
        yield f"{'all':30s} " + "   ".join(map(_two, together))


def each_pair(
    recordings: Mapping[str, Recording], same_run: SameRun, same_runner: SameRun
) -> Iterator[str]:
    """Yield a line for every pair: fitted on one, tried on the other."""
    heads = f"{'fitted on':{_NAME}s} {'tried on':{_NAME}s}"
    yield f"{heads}  cum.  sect.   finish predicted (8 of 10)  real     off"
    for one, other in ((a, b) for a in recordings for b in recordings):
        if one == other or same_run(one, other):
            continue
        pair = f"{one:{_NAME}.{_NAME}s} {other:{_NAME}.{_NAME}s}"
        found = tried([recordings[one]], recordings[other])
        if found is None:
            yield f"{pair} too little for a fit"
            continue
        low, middle, high = map(_clock, found.predicted_s)
        errors = "  ".join(f"{float(np.median(e)):5.2f}" for e in (found.cumulative, found.section))
        finish = (
            f"{middle} ({low} to {high})   {_clock(found.real_s)} {found.finish_percent:+5.1f} %"
        )
        mark = "  one runner" if same_runner(one, other) else ""
        yield f"{pair} {errors}   {finish}{mark}"


def devices_agree(first: Recording, second: Recording) -> Iterator[str]:
    """Yield how far what is made of two devices on one run lies apart."""
    tenths, worst = apart_percent(first, second)
    yield f"two devices on one run: targets at most {tenths:.2f} % of the finish apart at tenths,"
    yield f"  {worst:.2f} % at the worst point of all"
    one, other = _profile(first), _profile(second)
    for name, a, b in (
        ("distance", one.length_m, other.length_m),
        ("climb", one.ascent_m, other.ascent_m),
    ):
        yield f"  {name} {a:.0f} and {b:.0f} m, {100.0 * abs(b / a - 1.0):.1f} % apart"
    fits = [fit([recording]) for recording in (first, second)]
    for name in ("fade", "uphill", "descent"):
        a, b = (getattr(f, name).value for f in fits)
        yield f"  fitted {name} {a:.3f} and {b:.3f}"


def apart_percent(first: Recording, second: Recording) -> tuple[float, float]:
    """Return how far targets lie apart at the tenths, and at the worst of 1,000 places, in percent
    of the finish time.
    """
    finish_s = _last_s(first)
    places = np.linspace(0.001, 1.0, 1_000)
    both = []
    for recording in (first, second):
        profile = _profile(recording)
        plan = pace_for_finish(profile, finish_s, shape="target", start=first.start)
        both.append(np.array(plan.arrivals_s((places * profile.length_m).tolist())))
    apart = np.abs(both[0] - both[1]) / finish_s * 100.0
    return float(apart[99::100].max()), float(apart.max())


def _of_fit(found: Fit) -> tuple[Runner, Effects]:
    runner = replace(found.runner, descent_speed=found.descent.value)
    return runner, Effects(descent_speed=found.descent.value)


def _errors(
    recording: Recording, runner: Runner, effects: Effects
) -> tuple[FloatArray, FloatArray]:
    """Return the errors at nine places and in ten parts; the finish is given, as to a plan."""
    profile = _profile(recording)
    along_m = line_distance(recording.line)
    at_m = TENTHS * profile.length_m
    clock_s = recording.elapsed_s - recording.elapsed_s[0]
    real_s = np.interp(at_m, along_m, clock_s)
    real_s[-1] = clock_s[-1]
    plan = pace_for_finish(
        profile, float(clock_s[-1]), runner, start=recording.start, effects=effects
    )
    error_s = np.interp(at_m, profile.distance_m, plan.elapsed_s) - real_s
    cumulative = np.abs(error_s[:-1]) / clock_s[-1] * 100.0
    parts = np.abs(np.diff(error_s, prepend=0.0)) / np.diff(real_s, prepend=0.0) * 100.0
    return cumulative, parts


def _profile(recording: Recording) -> Profile:
    return build_profile(Course(recording.line, float(line_distance(recording.line)[-1])))


def _last_s(recording: Recording) -> float:
    return float(recording.elapsed_s[-1] - recording.elapsed_s[0])


def _two(errors: FloatArray) -> str:
    median, ninth = np.percentile(errors, (50, 90))
    return f"{median:5.2f} /{ninth:6.2f}"


def _clock(seconds: float) -> str:
    minutes = math.floor(seconds / 60.0 + 0.5)
    return f"{minutes // 60:2d}:{minutes % 60:02d}"

"""Fit and prediction on real recordings left out; the bounds are our own measurement's, widened."""

import sys
from pathlib import Path

import numpy as np
import pytest
from msgspec.structs import replace

from tests.engine.test_calibration import made_run

ROOT = Path(__file__).resolve().parents[2]
DATA = ROOT.parent / "shared" / "data" / "recordings"
needs_data = pytest.mark.skipif(not DATA.is_dir(), reason="real recordings are not at hand")


@pytest.fixture(scope="module")
def bench():
    sys.path.insert(0, str(ROOT / "packaging"))
    import bench_pace

    yield bench_pace
    sys.path.remove(str(ROOT / "packaging"))


@pytest.fixture(scope="module")
def held_out(bench):
    import bench_held_out

    return bench_held_out


@pytest.fixture(scope="module")
def recordings(bench):
    return bench.recordings_in(DATA)


def test_a_runner_fitted_on_one_run_meets_another_of_the_same_runner(held_out):
    one, other = (made_run(km=45.0, fade=0.2, uphill=0.8, noise=0.02, seed=n) for n in (1, 2))
    found = held_out.tried([one], other)
    assert np.median(found.cumulative) < 1.0
    assert np.median(found.section) < 3.0
    low_s, middle_s, high_s = found.predicted_s
    assert low_s < middle_s < high_s


def test_a_run_says_nothing_where_the_others_bear_no_fit(held_out):
    assert held_out.tried([made_run(km=2.0)], made_run(km=45.0)) is None


def test_the_same_run_twice_lies_nowhere_apart(held_out):
    run = made_run(km=30.0)
    assert held_out.apart_percent(run, replace(run, name="again")) == (0.0, 0.0)


@needs_data
def test_each_real_recording_left_out_is_met(bench, held_out, recordings):
    found = []
    for name, recording in recordings.items():
        others = [r for n, r in recordings.items() if n != name and not bench.same_run(n, name)]
        found.append(held_out.tried(others, recording))
    assert len(found) >= 7
    cumulative = np.concatenate([t.cumulative for t in found])
    section = np.concatenate([t.section for t in found])
    assert (np.percentile(cumulative, (50, 90)) < (1.15, 2.8)).all()
    assert (np.percentile(section, (50, 90)) < (6.0, 15.5)).all()
    assert all(np.median(t.section) < 15.0 for t in found)


@needs_data
def test_runs_of_one_runner_lie_within_the_predicted_spread_doubled(bench, held_out, recordings):
    pairs = [
        held_out.tried([one], other)
        for a, one in recordings.items()
        for b, other in recordings.items()
        if a != b and bench.same_runner(a, b) and not bench.same_run(a, b)
    ]
    assert len(pairs) == 2
    for found in pairs:
        low_s, middle_s, high_s = found.predicted_s
        assert abs(found.real_s - middle_s) < 2.0 * (high_s - low_s) / 2.0


@needs_data
def test_two_devices_on_one_run_give_one_plan(held_out, recordings):
    first, second = (
        next(r for n, r in recordings.items() if n.startswith(w))
        for w in ("timed-03-", "timed-03b-")
    )
    tenths, worst = held_out.apart_percent(first, second)
    assert tenths < 1.0
    assert worst < 1.25


@needs_data
def test_the_report_names_every_pair(bench, recordings):
    lines = list(bench.held_out(recordings))
    count = len(recordings)
    assert sum("(" in line and " to " in line for line in lines) == count * (count - 1) - 2

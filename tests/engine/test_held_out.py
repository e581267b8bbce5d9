from datetime import UTC, datetime, timedelta

import pytest
from msgspec.structs import replace

from tests.engine.test_calibration import _recording, made_run, needs_data
from ultraplanner_gui.engine.calibration import fit
from ultraplanner_gui.engine.held_out import overlap, tried_fit
from ultraplanner_gui.engine.prediction import predict, result_of
from ultraplanner_gui.engine.recorded_pace import recorded_pace
from ultraplanner_gui.plan.runner import Runner

MORNING = datetime(2026, 6, 1, 6, tzinfo=UTC)


def runs(count):
    """Runs of one runner who fades and climbs unlike the defaults."""
    return [
        replace(
            made_run(km=45.0, fade=0.25, uphill=1.2, noise=0.02, seed=n),
            start=MORNING + timedelta(days=7 * n),
        )
        for n in range(count)
    ]


def test_runs_left_out_are_told_better_than_by_the_defaults():
    tried = tried_fit(runs(3), Runner())

    assert all(held.fitted < held.default for held in tried.held_out)
    assert tried.error_percent < tried.default_percent


def test_what_is_left_out_does_not_help_its_own_figure():
    first, second, third = runs(3)
    spoilt = replace(first, elapsed_s=first.elapsed_s * (1.0 + first.elapsed_s / 40_000.0))
    held = tried_fit([first, second, third], Runner()).held_out[0].fitted
    worse = tried_fit([spoilt, second, third], Runner()).held_out[0].fitted

    assert worse > held + 1.0


def test_one_run_alone_is_held_against_nothing():
    tried = tried_fit(runs(1), Runner())

    assert tried.held_out[0].fitted is None
    assert tried.error_percent is None


def test_two_devices_on_one_run_are_left_out_together():
    (run,) = runs(1)
    later = replace(run, start=MORNING + timedelta(minutes=3))
    assert overlap(run, later)
    assert not overlap(run, replace(run, start=MORNING + timedelta(days=1)))

    assert tried_fit([run, later], Runner()).error_percent is None


def test_a_fit_taken_before_is_no_default():
    taken = Runner(fade=0.3, uphill_share=1.3)

    assert tried_fit(runs(2), taken).fit == fit(runs(2), Runner())


@needs_data
def test_recorded_runs_fit_and_foretell_each_other(tmp_path):
    names = ("timed-03-", "timed-06a-", "timed-06b-", "timed-09-", "timed-10-")
    recordings = [_recording(tmp_path, name) for name in names]
    tried = tried_fit(recordings, Runner())
    assert all(held.fitted < 15.0 for held in tried.held_out)

    first, second = recordings[-2:]
    pace = recorded_pace(second)
    found = predict(pace.profile, [result_of(first)])
    assert found.low_s < found.middle_s < found.high_s
    assert found.middle_s == pytest.approx(float(pace.moving_s.sum()), rel=0.15)

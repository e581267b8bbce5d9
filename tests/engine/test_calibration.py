import gzip
from datetime import UTC, datetime
from pathlib import Path

import numpy as np
import pytest
from msgspec.structs import replace

from ultraplanner_gui.engine.calibration import fit
from ultraplanner_gui.engine.effort_clock import Fading
from ultraplanner_gui.engine.profile import line_distance
from ultraplanner_gui.engine.recorded_pace import recorded_pace
from ultraplanner_gui.exchange.gpx_in import read_recording
from ultraplanner_gui.plan.course import Line
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.science.gradient_cost import pace_cost

HOUR_S = 3600.0
DATA = Path(__file__).resolve().parents[3] / "shared" / "data" / "recordings"
needs_data = pytest.mark.skipif(not DATA.is_dir(), reason="real recordings are not at hand")


def made_run(
    km=50.0,
    fade=0.10,
    uphill=0.9,
    descent=1.0,
    fresh_mps=3.0,
    steepness=0.12,
    noise=0.0,
    stops=(),
    seed=1,
):
    """A recording run as the pace model says, a point each 10 m; stops at (metres, seconds)."""
    along = np.arange(0.0, km * 1000.0 + 1.0, 10.0)
    slope = steepness * np.sign(np.sin(along / 700.0)) * (1.0 + np.sin(along / 9000.0)) / 2.0
    height = 500.0 + np.concatenate(([0.0], np.cumsum(slope[:-1] * 10.0)))
    cost = pace_cost(slope[:-1], uphill) / np.where(slope[:-1] < -0.05, descent, 1.0)
    rng = np.random.default_rng(seed)
    wobble = np.exp(np.repeat(rng.normal(0.0, noise, len(cost) // 15 + 1), 15)[: len(cost)])
    elapsed = np.zeros(len(along))
    onset_s = Runner().fade_onset_h * HOUR_S
    now = 0.0
    waits = dict(stops)
    points = [(0.0, 0.0)]
    for k, step in enumerate(cost * wobble):
        now += 10.0 * step / fresh_mps * (1.0 + now / onset_s) ** fade
        points.append((along[k + 1], now))
        if along[k + 1] in waits:
            now += waits[along[k + 1]]
            points.append((along[k + 1], now))
    places, elapsed = np.array(points).T
    line = Line(
        46.0 + places / 111_149.0, np.full(len(places), 7.0), np.interp(places, along, height)
    )
    return Recording(line, elapsed, None, "Made run")


def test_a_run_made_by_the_model_gives_its_parameters_back_but_for_the_drawing_in():
    found = fit([made_run(fade=0.22, uphill=0.75, descent=1.10)])
    n = found.uphill.pieces
    assert found.uphill.value == pytest.approx(0.9 + n / (n + 20) * (0.75 - 0.9), abs=0.02)
    n = found.descent.pieces
    assert found.descent.value == pytest.approx(1 + n / (n + 20) * 0.10, abs=0.02)
    # One day's fade counts as much as the default.
    assert found.fade.value == pytest.approx(0.16, abs=0.015)
    assert found.runs[0].fresh_mps == pytest.approx(3.0, rel=0.08)
    assert found.runner == replace(Runner(), fade=found.fade.value, uphill_share=found.uphill.value)


def test_more_days_say_more_about_the_fade():
    one = fit([made_run(fade=0.2)]).fade
    many = fit([made_run(fade=0.2, seed=n, km=45.0 + n, noise=0.05) for n in range(5)]).fade
    assert abs(many.value - 0.2) < abs(one.value - 0.2)
    assert many.spread < one.spread


def test_noise_is_told_as_spread():
    calm, rough = (fit([made_run(uphill=0.8, noise=noise)]) for noise in (0.03, 0.15))
    assert rough.uphill.spread > 2.0 * calm.uphill.spread
    assert rough.error_percent > calm.error_percent
    assert abs(rough.uphill.value - 0.8) < 3.0 * rough.uphill.spread + 0.03


def test_spoilt_pieces_do_not_move_the_fit():
    # A tenth of the pieces run at a third of the speed: a queue, a photograph.
    plain = made_run(uphill=0.8, noise=0.04)
    rng = np.random.default_rng(5)
    step = np.diff(plain.elapsed_s)
    spoilt = np.repeat(rng.random(len(step) // 15 + 1) < 0.1, 15)[: len(step)]
    elapsed = np.concatenate(([0.0], np.cumsum(np.where(spoilt, 3.0 * step, step))))
    found, clean = fit([replace(plain, elapsed_s=elapsed)]), fit([plain])
    assert found.uphill.value == pytest.approx(clean.uphill.value, abs=0.06)
    assert found.runs[0].fresh_mps == pytest.approx(clean.runs[0].fresh_mps, rel=0.04)


def test_standing_time_is_set_apart():
    stops = ((20_000.0, 300.0), (35_000.0, 1200.0))
    moving = made_run(noise=0.03)
    found = fit([made_run(noise=0.03, stops=stops)]).runs[0]
    assert found.stops_s == pytest.approx((300.0, 1200.0), abs=20.0)
    assert found.standing_s == pytest.approx(1500.0, abs=40.0)
    assert found.moving_s == pytest.approx(float(moving.elapsed_s[-1]), rel=0.02)
    assert found.stop_share == pytest.approx(found.standing_s / (found.moving_s + found.standing_s))


def test_a_turn_on_the_spot_is_no_stop():
    there = made_run(km=10.0)
    back = Line(
        *(
            np.concatenate((a, a[-2::-1]))
            for a in (
                there.line.latitude_deg,
                there.line.longitude_deg,
                there.line.elevation_m,
            )
        )
    )
    elapsed = np.concatenate(
        (there.elapsed_s, there.elapsed_s[-1] + np.cumsum(np.diff(there.elapsed_s)))
    )
    assert recorded_pace(Recording(back, elapsed)).stops_s == ()


def test_a_level_short_run_teaches_nothing_about_hills_and_fade():
    found = fit([made_run(km=15.0, steepness=0.0)])
    estimates = (found.fade, found.uphill, found.descent)
    assert [e.is_fitted for e in estimates] == [False, False, False]
    assert found.runner == Runner()
    assert found.runs[0].power_w_per_kg == pytest.approx(3.6 * found.runs[0].fresh_mps)


def test_the_defaults_are_those_of_the_runner_given():
    own = Runner(fade=0.05, uphill_share=1.1)
    found = fit([made_run(km=15.0, steepness=0.0)], own)
    assert (found.fade.value, found.uphill.value) == (0.05, 1.1)


def test_the_night_is_not_taken_for_fade():
    start = datetime(2026, 8, 28, 14, tzinfo=UTC)
    day = made_run(km=60.0, fade=0.10)
    dark = Fading(0.0, 1.0, 0.10, start, (46.0, 7.0)).power(day.elapsed_s)
    step = np.diff(day.elapsed_s) / dark[:-1]
    night = replace(day, elapsed_s=np.concatenate(([0.0], np.cumsum(step))), start=start)
    assert dark.min() < 0.91
    assert fit([night]).fade.value == pytest.approx(fit([day]).fade.value, abs=0.01)


def test_too_little_is_refused_with_a_sentence():
    for recordings in ([], [made_run(km=5.0)]):
        with pytest.raises(PlanError) as refusal:
            fit(recordings)
        assert len(str(refusal.value)) <= 200


def test_a_gap_is_no_fast_piece():
    run = made_run(km=20.0)
    gapped = replace(run, line=replace(run.line, gaps=(700,)))
    pace = recorded_pace(gapped)
    assert not pace.is_sound.all()
    assert line_distance(gapped.line)[-1] < line_distance(run.line)[-1]
    assert fit([gapped]).runs[0].fresh_mps == pytest.approx(3.0, rel=0.1)


def _recording(tmp_path, name):
    packed = next(DATA.glob(f"{name}*.gpx.gz"))
    path = tmp_path / packed.name.removesuffix(".gz")
    path.write_bytes(gzip.decompress(packed.read_bytes()))
    return read_recording(path)


@needs_data
def test_two_devices_on_one_run_give_one_runner(tmp_path):
    first, second = (fit([_recording(tmp_path, n)]) for n in ("timed-03-", "timed-03b-"))
    assert first.fade.value == pytest.approx(second.fade.value, abs=0.02)
    assert first.uphill.value == pytest.approx(second.uphill.value, abs=0.05)
    assert first.descent.value == pytest.approx(second.descent.value, abs=0.06)


@needs_data
def test_real_ultras_fit_within_a_tenth(tmp_path):
    for name in ("timed-03-", "timed-06a-", "timed-06b-"):
        assert fit([_recording(tmp_path, name)]).error_percent < 10.0

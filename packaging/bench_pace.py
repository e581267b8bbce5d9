"""Score the pace model against real runs, beside plain rules: time at 10 to 90 % of the distance.

Run it with the interpreter of the program:

    python packaging/bench_pace.py [FOLDER] [--race-start ISO-TIME] [--race-limit HOURS]

FOLDER holds `recordings/*.gpx.gz` and `splits/` (default: `shared/data` beside the checkout).
The model gets the profile, the finish time and the start, nothing else of the run. Below the
scores stand the choice of the fade on all runners but one, how many real arrivals the windows
hold that are drawn from the first check alone, every recording left out and met by a fit on the
others, every pair, and how far two devices on one run lie apart.
"""

from __future__ import annotations

import argparse
import csv
import gzip
import itertools
import math
import re
import sys
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import numpy as np
from msgspec.structs import replace

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
sys.path.insert(0, str(Path(__file__).resolve().parent))

from bench_held_out import devices_agree, each_left_out, each_pair

from ultraplanner_gui.engine.compare import split
from ultraplanner_gui.engine.odds import Passed, Scatter, odds
from ultraplanner_gui.engine.pacing import PacePlan, pace_for_finish
from ultraplanner_gui.engine.prediction import plan_from_passing
from ultraplanner_gui.engine.profile import Profile, build_profile, line_distance
from ultraplanner_gui.exchange.gpx_in import read_recording
from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner

DATA = Path(__file__).resolve().parents[2] / "shared" / "data"
# Halves of one race; the second clock runs on from the first.
HALVES = {"timed-06a": "timed-06b"}
# Recordings that lost their times, one point a second.
BARE = "onehz-"
# Runs of one runner, by how their names begin; and two devices on one run.
ONE_RUNNER = {"the night run, twice": ("timed-03",), "the half race": ("timed-09", "timed-10")}
TWO_DEVICES = {"timed-03-": "timed-03b-"}
# The race of the splits starts at five in the morning at midsummer and is closed after 30 h.
RACE_START = datetime(2026, 6, 27, 12, tzinfo=UTC)
RACE_PLACE_DEG = (39.197, -120.2357)
RACE_LIMIT_H = 30.0
# What is tried when a runner is left out.
FADES = (0.08, 0.09, 0.10, 0.11, 0.12, 0.14)
ONSETS_H = (0.5, 0.75, 1.0, 1.5)

Model = Callable[[Profile, float, datetime | None], FloatArray]


@dataclass(frozen=True, slots=True)
class Run:
    """A real run: its profile, and when it passed which places."""

    name: str
    profile: Profile
    at_m: FloatArray
    elapsed_s: FloatArray
    start: datetime | None

    @property
    def finish_s(self) -> float:
        """The real finish time."""
        return float(self.elapsed_s[-1])


@dataclass(frozen=True, slots=True)
class Score:
    """Errors in percent: of the finish time at each place, of the real time in each part."""

    cumulative: FloatArray
    section: FloatArray

    def __str__(self) -> str:
        parts = (np.percentile(errors, (50, 90)) for errors in (self.cumulative, self.section))
        return "  ".join(f"{median:5.2f} /{ninth:6.2f}" for median, ninth in parts)


def forecast(profile: Profile, finish_s: float, start: datetime | None) -> FloatArray:
    """Return the elapsed time at each point by the program's own model."""
    return pace_for_finish(profile, finish_s, start=start).elapsed_s


def by_rule(rule: str) -> Model:
    """Return the model that splits the course by a plain rule of `engine.compare`."""

    def model(profile: Profile, finish_s: float, start: datetime | None) -> FloatArray:
        plan = PacePlan(profile.distance_m, profile.distance_m / profile.length_m * finish_s)
        return split(profile, plan, rule)

    return model


MODELS: dict[str, Model] = {
    "even pace": by_rule("even"),
    "1 m climb = 8 m (Scarf)": by_rule("climb"),
    "Naismith": by_rule("naismith"),
    "Tobler speed": by_rule("tobler"),
    "median hiker (Campbell 2022)": by_rule("hikers"),
    "constant power, laboratory cost": by_rule("power"),
    "this model": forecast,
}


def score(model: Model, run: Run) -> Score:
    """Return the errors of *model* at the places of *run*; the last place is the finish."""
    elapsed_s = model(run.profile, run.finish_s, run.start)
    error_s = np.interp(run.at_m, run.profile.distance_m, elapsed_s) - run.elapsed_s
    sections_s = np.diff(run.elapsed_s, prepend=0.0)
    return Score(
        np.abs(error_s[:-1]) / run.finish_s * 100.0,
        np.abs(np.diff(error_s, prepend=0.0)) / sections_s * 100.0,
    )


def pooled(scores: list[Score]) -> Score:
    """Return all errors of *scores* together."""
    return Score(
        np.concatenate([s.cumulative for s in scores]), np.concatenate([s.section for s in scores])
    )


def recorded_runs(folder: Path) -> Iterator[Run]:
    """Yield every run in *folder*, two halves of one race as one."""
    for name, recording in recordings_in(folder).items():
        yield _run(name, recording)


def recordings_in(folder: Path) -> dict[str, Recording]:
    """Return every recording in *folder* by its name, two halves of one race as one."""
    with tempfile.TemporaryDirectory() as unpacked:
        recordings = {}
        for packed in sorted(folder.glob("*.gpx.gz")):
            path = Path(unpacked) / packed.name.removesuffix(".gz")
            text = gzip.decompress(packed.read_bytes()).decode("utf-8")
            is_bare = packed.name.startswith(BARE)
            path.write_text(_stamped(text) if is_bare else text, encoding="utf-8")
            recording = read_recording(path)
            if is_bare:
                recording = replace(recording, start=None)
            recordings[packed.name.removesuffix(".gpx.gz")] = recording
    for first, second in HALVES.items():
        names = [next((n for n in recordings if n.startswith(h)), "") for h in (first, second)]
        if all(names):
            recordings[names[0]] = _joined(recordings[names[0]], recordings.pop(names[1]))
    return recordings


def same_run(one: str, other: str) -> bool:
    """Whether two recordings are of one run, by how their names begin."""
    pairs = (*TWO_DEVICES.items(), *((b, a) for a, b in TWO_DEVICES.items()))
    return any(one.startswith(a) and other.startswith(b) for a, b in pairs)


def same_runner(one: str, other: str) -> bool:
    """Whether two recordings are known to be of one runner."""
    return any(one.startswith(s) and other.startswith(s) for s in ONE_RUNNER.values())


def race_runs(
    folder: Path, start: datetime | None, place_deg: tuple[float, float], every: int = 1
) -> Iterator[Run]:
    """Yield every finisher of the race in *folder*, or each *every*-th."""
    table = np.loadtxt(next(folder.glob("*-profile.csv")), delimiter=",", skiprows=1)
    profile = _bare_profile(table[:, 0] * 1000.0, table[:, 1], place_deg)
    with gzip.open(next(folder.glob("*-finishers.csv.gz")), "rt", encoding="utf-8") as lines:
        rows = csv.reader(lines)
        at_m = np.array([float(name.removeprefix("km_")) * 1000.0 for name in next(rows)[1:]])
        for row in list(rows)[::every]:
            is_known = np.array([bool(cell) for cell in row[1:]])
            if is_known[-1]:
                elapsed_s = np.array([float(cell) for cell in row[1:] if cell])
                yield Run(f"finisher {row[0]}", profile, at_m[is_known], elapsed_s, start)


def windows(race: list[Run], limit_s: float) -> Iterator[str]:
    """Yield how honest and how sharp arrival windows are when only the first check is known.

    The table holds finishers only, so only simulated races inside the limit count. The baseline
    goes on at the speed so far and has the spread of the very table it is held against.
    """
    real = np.array([run.elapsed_s for run in race])
    at_m = race[0].at_m
    drawn = np.array([_drawn(run, limit_s) for run in race])
    onward = real[:, :1] * at_m / at_m[0]
    low, high = np.percentile(real / onward, (10, 90), axis=0)
    plain = np.stack((low * onward, high * onward), axis=2)[:, 1:]
    yield f"{'windows from the first check on':46s}  held of 100   width, h   plain width, h"
    later = real[:, 1:]
    held = (later >= drawn[:, :, 0]) & (later <= drawn[:, :, 1])
    for k, at in enumerate(at_m[1:]):
        ours, theirs = (float(np.median(w[:, k, 1] - w[:, k, 0])) / 3600.0 for w in (drawn, plain))
        share = 100.0 * held[:, k].mean()
        yield f"{f'  km {at / 1000.0:.1f}':46s}  {share:11.0f}  {ours:9.2f}  {theirs:15.2f}"
    ours, theirs = (float(np.median(w[:, :, 1] - w[:, :, 0])) / 3600.0 for w in (drawn, plain))
    yield f"{'  all':46s}  {100.0 * held.mean():11.0f}  {ours:9.2f}  {theirs:15.2f}"


def _drawn(run: Run, limit_s: float) -> FloatArray:
    """Return the windows of a run at all checks but the first, shape (checks, 2)."""
    passed = Passed(float(run.at_m[0]), float(run.elapsed_s[0]))
    plan = plan_from_passing(run.profile, passed.at_m, passed.elapsed_s, start=run.start)
    drawn = odds(
        plan,
        run.at_m[1:].tolist(),
        [(run.profile.length_m, limit_s)],
        scatter=Scatter(ability=math.inf),
        passed=passed,
        races=2_000,
        made_all=True,
    )
    return np.array(drawn.windows_s)


def left_out(runs: list[Run], race: list[Run]) -> Iterator[str]:
    """Yield the score on each runner of the fade that is best for all the others."""
    groups = {**_by_runner(runs), "the race": race}
    scores = {
        (fade, onset_h): {name: _scored(group, fade, onset_h) for name, group in groups.items()}
        for fade, onset_h in itertools.product(FADES, ONSETS_H)
    }
    usual = {
        name: pooled([score(forecast, run) for run in group]) for name, group in groups.items()
    }
    chosen = []
    for name in groups:
        others = [other for other in groups if other != name]
        best = min(scores, key=lambda pair: sum(_loss(scores[pair][o]) for o in others))
        chosen.append(scores[best][name])
        title = f"without {name}: fade {best[0]:.2f} from {best[1]:.2f} h"
        yield f"{title:46.46s} {chosen[-1]}   default {usual[name]}"
    runners = len(groups) - 1
    yield f"{'recordings, each by the others':46s} {pooled(chosen[:runners])}"
    yield f"{'recordings, default':46s} {pooled(list(usual.values())[:runners])}"


def _by_runner(runs: list[Run]) -> dict[str, list[Run]]:
    groups: dict[str, list[Run]] = {}
    for run in runs:
        key = next((k for k, same in ONE_RUNNER.items() if run.name.startswith(same)), run.name)
        groups.setdefault(key, []).append(run)
    return groups


def _scored(group: list[Run], fade: float, onset_h: float) -> Score:
    runner = Runner(fade=fade, fade_onset_h=onset_h)

    def model(profile: Profile, finish_s: float, start: datetime | None) -> FloatArray:
        return pace_for_finish(profile, finish_s, runner, start=start).elapsed_s

    return pooled([score(model, run) for run in group])


def _loss(tried: Score) -> float:
    """Return the mean errors in units of what recordings and race usually give, about 1.3 and 8.

    Absolute, so that a run the default meets by luck does not rule the choice.
    """
    return float(tried.cumulative.mean() / 1.3 + tried.section.mean() / 8.0)


def main(arguments: list[str] | None = None) -> int:
    """Print the scores of every model on the recordings and on the race."""
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("folder", type=Path, nargs="?", default=DATA)
    parser.add_argument("--race-start", type=datetime.fromisoformat, default=RACE_START)
    parser.add_argument("--race-place", type=float, nargs=2, default=RACE_PLACE_DEG)
    parser.add_argument("--race-limit", type=float, default=RACE_LIMIT_H, help="hours")
    chosen = parser.parse_args(arguments)
    if not (chosen.folder / "recordings").is_dir():
        print(f"There are no recordings in {chosen.folder}.", file=sys.stderr)
        return 2
    recordings = recordings_in(chosen.folder / "recordings")
    runs = [_run(name, recording) for name, recording in recordings.items()]
    race = list(race_runs(chosen.folder / "splits", chosen.race_start, tuple(chosen.race_place)))
    for line in report(runs, race, chosen.race_limit * 3600.0):
        print(line)
    for line in held_out(recordings):
        print(line, flush=True)
    return 0


def held_out(recordings: dict[str, Recording]) -> Iterator[str]:
    """Yield how fits and predictions hold on recordings left out, and how two devices agree."""
    yield "\nFitted and predicted on recordings left out"
    yield from each_left_out(recordings, same_run)
    yield ""
    yield from each_pair(recordings, same_run, same_runner)
    yield ""
    for first, second in TWO_DEVICES.items():
        pair = [
            next((r for n, r in recordings.items() if n.startswith(w)), None)
            for w in (first, second)
        ]
        if pair[0] is not None and pair[1] is not None:
            yield from devices_agree(pair[0], pair[1])


def report(runs: list[Run], race: list[Run], limit_s: float) -> Iterator[str]:
    """Yield all lines of the report."""
    for run in runs:
        yield f"{run.name:46.46s} {score(forecast, run)}"
    yield f"\n{'median / 90th percentile, %':46s}  cumulative       section"
    for title, group in (("recordings", runs), (f"race, {len(race)} finishers", race)):
        for name, model in MODELS.items():
            total = pooled([score(model, run) for run in group])
            yield f"{title + ': ' + name:46.46s} {total}"
    yield "\nFade chosen on all runners but one"
    yield from left_out(runs, race[::7])
    yield ""
    yield from windows(race, limit_s)


def _stamped(gpx: str) -> str:
    """Return *gpx* with the number of each point as its second, on a day that means nothing."""
    seconds = itertools.count()

    def with_time(match: re.Match[str]) -> str:
        clock = datetime(2000, 1, 1, tzinfo=UTC) + timedelta(seconds=next(seconds))
        return f"<time>{clock:%Y-%m-%dT%H:%M:%SZ}</time></trkpt>"

    return re.sub("</trkpt>", with_time, gpx)


def _run(name: str, recording: Recording) -> Run:
    along_m = line_distance(recording.line)
    profile = build_profile(Course(recording.line, float(along_m[-1])))
    at_m = np.linspace(0.1, 1.0, 10) * profile.length_m
    elapsed_s = np.interp(at_m, along_m, recording.elapsed_s - recording.elapsed_s[0])
    elapsed_s[-1] = recording.elapsed_s[-1] - recording.elapsed_s[0]
    return Run(name, profile, at_m, elapsed_s, recording.start)


def _joined(first: Recording, second: Recording) -> Recording:
    """Return two halves as one run; the pause between them counts when both clocks are known."""
    pause_s = 0.0
    if first.start is not None and second.start is not None:
        pause_s = (second.start - first.start).total_seconds() - float(first.elapsed_s[-1])
    line = replace(
        first.line,
        latitude_deg=np.concatenate((first.line.latitude_deg, second.line.latitude_deg)),
        longitude_deg=np.concatenate((first.line.longitude_deg, second.line.longitude_deg)),
        elevation_m=np.concatenate((first.line.elevation_m, second.line.elevation_m)),
        gaps=(*first.line.gaps, *(len(first.line) + g for g in second.line.gaps)),
    )
    later_s = second.elapsed_s + first.elapsed_s[-1] + pause_s
    return replace(first, line=line, elapsed_s=np.concatenate((first.elapsed_s, later_s)))


def _bare_profile(
    distance_m: FloatArray, elevation_m: FloatArray, place_deg: tuple[float, float]
) -> Profile:
    gradient = np.diff(elevation_m) / np.diff(distance_m)
    gradient = np.append(gradient, gradient[-1])
    level = np.zeros_like(distance_m)
    return Profile(
        distance_m=distance_m,
        elevation_m=elevation_m,
        gradient=gradient,
        climb_m=level,
        drop_m=level,
        surface_cost=np.ones_like(distance_m),
        ascent_m=0.0,
        descent_m=0.0,
        has_elevation=True,
        latitude_deg=place_deg[0],
        longitude_deg=place_deg[1],
        method=message("{0}", "as given"),
    )


if __name__ == "__main__":
    sys.exit(main())

"""Score the pace model against real runs, beside plain rules: time at 10 to 90 % of the distance.

Run it with the interpreter of the program:

    python packaging/bench_pace.py [FOLDER] [--race-start ISO-TIME]

FOLDER holds `recordings/*.gpx.gz` and `splits/` (default: `shared/data` beside the checkout).
The model gets the profile, the finish time and the start, nothing else of the run.
"""

from __future__ import annotations

import argparse
import csv
import gzip
import itertools
import re
import sys
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from ultraplanner_gui.engine.pacing import pace_for_finish
from ultraplanner_gui.engine.profile import Profile, build_profile, line_distance
from ultraplanner_gui.exchange.gpx_in import read_recording
from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.recording import Recording

DATA = Path(__file__).resolve().parents[2] / "shared" / "data"
# Halves of one race; the second clock runs on from the first.
HALVES = {"timed-06a": "timed-06b"}
# Recordings that lost their times, one point a second.
BARE = "onehz-"

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


def even_pace(profile: Profile, finish_s: float, start: datetime | None) -> FloatArray:
    """Return the elapsed time at one pace throughout."""
    return profile.distance_m / profile.length_m * finish_s


def climb_as_distance(profile: Profile, finish_s: float, start: datetime | None) -> FloatArray:
    """Return the elapsed time when 1 m of climb counts as 7.92 m of distance (Scarf 2007)."""
    return _shared_out(profile, 1.0 + 7.92 * np.maximum(profile.gradient, 0.0), finish_s)


def hiking_speed(profile: Profile, finish_s: float, start: datetime | None) -> FloatArray:
    """Return the elapsed time in proportion to Tobler's hiking speed (1993, NCGIA report 93-1)."""
    return _shared_out(profile, np.exp(3.5 * np.abs(profile.gradient + 0.05)), finish_s)


MODELS: dict[str, Model] = {
    "even pace": even_pace,
    "1 m climb = 7.92 m": climb_as_distance,
    "Tobler speed": hiking_speed,
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
    for name, recording in recordings.items():
        yield _run(name, recording)


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


def main(arguments: list[str] | None = None) -> int:
    """Print the scores of every model on the recordings and on the race."""
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("folder", type=Path, nargs="?", default=DATA)
    parser.add_argument("--race-start", type=datetime.fromisoformat, help="aware, for the night")
    parser.add_argument("--race-place", type=float, nargs=2, default=(0.0, 0.0))
    chosen = parser.parse_args(arguments)
    if not (chosen.folder / "recordings").is_dir():
        print(f"There are no recordings in {chosen.folder}.", file=sys.stderr)
        return 2
    runs = list(recorded_runs(chosen.folder / "recordings"))
    for run in runs:
        print(f"{run.name:46.46s} {score(forecast, run)}")
    print(f"\n{'median / 90th percentile, %':46s}  cumulative       section")
    race = list(race_runs(chosen.folder / "splits", chosen.race_start, tuple(chosen.race_place)))
    for title, group in (("recordings", runs), (f"race, {len(race)} finishers", race)):
        for name, model in MODELS.items():
            total = pooled([score(model, run) for run in group])
            print(f"{title + ': ' + name:46s} {total}")
    return 0


def _shared_out(profile: Profile, cost: FloatArray, finish_s: float) -> FloatArray:
    share = np.concatenate(([0.0], np.cumsum(cost[:-1] * np.diff(profile.distance_m))))
    return np.asarray(share / share[-1] * finish_s, dtype=np.float64)


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

"""How time grows with the work: each at 1x, 4x and 16x, and the exponent of the fit.

The least of several runs counts: what disturbs a run only ever makes it longer.
"""

from __future__ import annotations

import math
import tempfile
from collections.abc import Callable, Iterator, Sequence
from contextlib import ExitStack
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

from bench_files import import_course
from bench_measure import Work, timed
from bench_plans import GOAL_S, TODAY, block, course, fuel, large_project, write_gpx
from msgspec.structs import replace

from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.course import SetSectionTarget
from ultraplanner_gui.edits.fuel import MoveItem
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.store.project_file import ProjectFile

TIMES = (1, 4, 16)
MOST = 1.1
LONGEST_MS, RUNS = 1500.0, 25


@dataclass(frozen=True, slots=True)
class Growth:
    """The least times at each size."""

    what: str
    of: str
    sizes: tuple[int, ...]
    ms: tuple[float, ...]

    @property
    def exponent(self) -> float:
        """The slope of the straight line through the logarithms."""
        return slope(self.sizes, self.ms)

    @property
    def steepest(self) -> float:
        """The slope of the last step alone, where what does not grow weighs least."""
        return slope(self.sizes[-2:], self.ms[-2:])


def slope(sizes: Sequence[float], figures: Sequence[float]) -> float:
    """Return the exponent of the power law that fits best, by least squares of logarithms."""
    x, y = [math.log(size) for size in sizes], [math.log(figure) for figure in figures]
    mean_x, mean_y = sum(x) / len(x), sum(y) / len(y)
    across = sum((a - mean_x) * (b - mean_y) for a, b in zip(x, y, strict=True))
    return across / sum((a - mean_x) ** 2 for a in x)


def least(work: Work) -> float:
    """Return the least time of *work*, milliseconds; fewer runs where one takes long."""
    first = timed(work)
    runs = max(3, min(RUNS, int(LONGEST_MS / max(first, 0.01))))
    return min(timed(work) for _ in range(runs))


def grown(what: str, of: str, base: int, work: Callable[[int], Work]) -> Growth:
    """Measure *work* made for each size."""
    sizes = tuple(base * times for times in TIMES)
    return Growth(what, of, sizes, tuple(least(work(size)) for size in sizes))


def growths(folder: Path) -> Iterator[Growth]:
    """Measure whatever can grow in a project."""
    yield grown("GPX import", "points", 6_250, lambda n: _import(folder / f"{n}.gpx", n))
    yield grown("whole outlook, nothing known before", "points", 4_000, _course_anew)
    yield grown("target moved", "points", 4_000, lambda n: _target(_with_points(n)))
    yield grown("target moved", "stations", 5, lambda n: _target(_with_stations(n)))
    yield grown("whole outlook, nothing known before", "stations", 5, _stations_anew)
    yield grown("session moved", "sessions", 75, lambda n: _session(24, n))
    yield grown("session moved", "weeks, 12 sessions each", 13, lambda n: _session(n, 12 * n))
    yield grown("token moved", "items", 50, _token)
    yield from _edits_kept(folder)
    yield grown(
        "open a project", "edits in the history", 50, lambda n: _reopen(folder / f"r{n}", n)
    )
    yield grown("open a project", "points", 4_000, lambda n: _open(folder, _with_points(n)))
    yield grown("open a project", "sessions", 75, lambda n: _open(folder, _with_sessions(n)))


def _edits_kept(folder: Path) -> Iterator[Growth]:
    with ExitStack() as open_files:

        def of_sessions(count: int) -> Work:
            return _keep(open_files, folder / f"s{count}", _with_sessions(count))

        def after_edits(count: int) -> Work:
            return _keep(open_files, folder / f"e{count}", large_project(), count)

        yield grown("one kept edit", "sessions", 75, of_sessions)
        yield grown("one kept edit", "edits in the history", 50, after_edits)


def _import(path: Path, points: int) -> Work:
    write_gpx(path, points)
    return lambda: import_course(path)


def _with_points(points: int) -> Project:
    return replace(large_project(), course=course(points, 160_000.0 / points))


def _with_stations(stations: int) -> Project:
    return replace(large_project(), course=course(16_001, 10.0, stations))


def _with_sessions(sessions: int) -> Project:
    return replace(large_project(), block=block(count=sessions))


def _course_anew(points: int) -> Work:
    project = _with_points(points)
    return lambda: derive(project, None, TODAY)


def _stations_anew(stations: int) -> Work:
    project = _with_stations(stations)
    return lambda: derive(project, None, TODAY)


def _target(project: Project) -> Work:
    outlook = derive(project, None, TODAY)
    section = outlook.sections[2]
    slower = SetSectionTarget(section.key, section.moving_s + 60.0).apply(project)
    return lambda: derive(slower, outlook, TODAY)


def _session(weeks: int, sessions: int) -> Work:
    project = replace(large_project(), block=block(weeks, sessions))
    outlook = derive(project, None, TODAY)
    later = [s for s in project.block.sessions if s.day > TODAY][2]
    moved = MoveSession(later.key, later.day + timedelta(days=9)).apply(project)
    return lambda: derive(moved, outlook, TODAY)


def _token(items: int) -> Work:
    project = replace(large_project(), fuel=fuel(items))
    outlook = derive(project, None, TODAY)
    item = project.fuel.items[items // 2]
    eaten = MoveItem(item.key, min(item.at_s + 2400.0, GOAL_S)).apply(project)
    return lambda: derive(eaten, outlook, TODAY)


def _keep(open_files: ExitStack, path: Path, project: Project, edits: int = 0) -> Work:
    """Return a further edit of a file with *edits* in its history."""
    file = open_files.enter_context(ProjectFile.create(path, project, overwrite=True))
    keep = _edits(file, project)
    for _ in range(edits):
        keep()
    return keep


def _edits(file: ProjectFile, project: Project) -> Work:
    metres = [7000.0]

    def keep() -> None:
        metres[0] += 1.0
        first, *others = project.block.sessions
        changed = replace(first, distance_m=metres[0])
        block_now = replace(project.block, sessions=(changed, *others))
        file.keep(replace(project, block=block_now), "Change session")

    return keep


def _reopen(path: Path, edits: int) -> Work:
    with ExitStack() as open_files:
        _keep(open_files, path, large_project(), edits)
    return lambda: ProjectFile.open(path).close()


def _open(folder: Path, project: Project) -> Work:
    path = folder / "open.ultraplan"
    ProjectFile.create(path, project, overwrite=True).close()
    return lambda: ProjectFile.open(path).close()


def table(rows: Sequence[Growth]) -> str:
    """Return the times at each size and the exponents."""
    lines = [
        f"{'what':38}{'of':28}{'sizes':>24}{'ms':>28}{'exponent':>10}{'last step':>11}",
    ]
    for row in rows:
        sizes = " ".join(f"{size:,}" for size in row.sizes)
        times = " ".join(f"{ms:.3g}" for ms in row.ms)
        verdict = "ok" if row.exponent <= MOST else f"MISSED: above {MOST}"
        lines.append(
            f"{row.what:38}{row.of:28}{sizes:>24}{times:>28}"
            f"{row.exponent:>10.2f}{row.steepest:>11.2f}  {verdict}"
        )
    return "\n".join(lines)


def main() -> int:
    """Measure and print."""
    from bench import BUILD

    BUILD.mkdir(exist_ok=True)
    # On the disk of the checkout: a folder in memory would flatter every commit.
    with tempfile.TemporaryDirectory(prefix="growth-", dir=BUILD) as folder:
        print(table(list(growths(Path(folder)))))
    print("The optimisers are left out: their limits are their brakes.")
    return 0

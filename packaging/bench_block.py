"""Blocks and repairs for random requests, held against the referee of the tests, and their times.

python packaging/bench.py block [COUNT]   COUNT requests and as many repairs, 300 without a number

The requests and the referee are those of the test command; it runs the first thirty of each.
Exit code 0 whether anything is found or not: this is a measurement.
"""

from __future__ import annotations

import sys
import threading
import time
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from functools import partial
from typing import TypeVar

from bench_measure import percentile

from tests.engine.block_referee import Referee
from tests.engine.block_requests import random_absence, random_request
from tests.engine.repair_referee import RepairReferee
from tests.engine.test_block_exact import QUICK
from ultraplanner_gui.desk.block_process import ExactBlock
from ultraplanner_gui.desk.jobs import Cancelled, Token
from ultraplanner_gui.engine.block import build_block
from ultraplanner_gui.engine.block_exact import best_block
from ultraplanner_gui.engine.repair import repair_block

T = TypeVar("T")

COUNT = 300
WEEKS = (24, 24)
TIMED = 6
CANCEL_AFTER_S = 1.5


@dataclass(slots=True)
class Tally:
    """What was found, and how long each took, in seconds."""

    found: Counter[str] = field(default_factory=Counter)
    seconds: list[float] = field(default_factory=list)
    gaps: list[float] = field(default_factory=list)
    faults: list[str] = field(default_factory=list)

    def time(self, work: Callable[[], T]) -> T:
        """Do *work*, timed."""
        begin = time.perf_counter()
        result = work()
        self.seconds.append(time.perf_counter() - begin)
        return result


def blocks(count: int) -> Tally:
    """Build and search *count* random blocks."""
    tally = Tally()
    for seed in range(count):
        request = random_request(seed)
        begin = time.perf_counter()
        exact = best_block(request, QUICK)
        tally.seconds.append(time.perf_counter() - begin)
        tally.gaps.append(exact.gap)
        tally.found["better than by the rules"] += exact.is_better
        tally.found["stopped by the time limit"] += exact.is_braked
        tally.found["no plan found by the search"] += exact.searched is None
        for name, plan in (("rules", build_block(request)), ("search", exact.plan)):
            referee = Referee(request, plan.block, plan.notes)
            faults = [f"{rule} {at}" for rule, at in referee.unnamed()]
            if referee.falls_short(plan.runway.asks.peak_week_m):
                faults.append("peak under 97 % of the closed form, unsaid")
            if referee.leaves_days():
                faults.append("days unused, unsaid")
            tally.found[f"violations not named ({name})"] += len(faults)
            tally.faults += [f"block {seed} {name}: {fault}" for fault in faults]
        _note(f"block {seed + 1} of {count}")
    return tally


def repairs(count: int) -> Tally:
    """Mend *count* random blocks."""
    tally = Tally()
    for seed in range(count):
        request = random_request(seed, weeks=(8, 28))
        block = build_block(request).block
        absence = random_absence(seed, request)
        begin = time.perf_counter()
        choices = repair_block(block, absence).choices
        tally.seconds.append(time.perf_counter() - begin)
        tally.found["choices"] += len(choices)
        tally.found["choices proven"] += sum(c.is_proven for c in choices)
        tally.found["repairs without a choice"] += not choices
        for choice in choices:
            faults = RepairReferee(block, absence, choice).broken()
            tally.found["violations not named (repair)"] += len(faults)
            name = choice.name.template
            tally.faults += [f"repair {seed} {name}: {rule} {at}" for rule, at in faults]
        _note(f"repair {seed + 1} of {count}")
    return tally


def _note(text: str) -> None:
    print(f"\r{text}   ", end="", file=sys.stderr, flush=True)


def _token() -> Token:
    return Token(lambda fraction: None)


def times() -> list[str]:
    """Return lines on how long blocks of 24 weeks take, in a process as in the program."""
    lines = []
    standing, whole, mending = Tally(), Tally(), Tally()
    for seed in range(1000, 1000 + TIMED):
        request = random_request(seed, weeks=WEEKS)
        block = build_block(request).block
        standing.time(partial(build_block, request))
        exact = whole.time(partial(ExactBlock(request), _token()))
        whole.gaps.append(exact.gap)
        absence = random_absence(seed, request)
        mending.time(partial(repair_block, block, absence))
    lines.append(_line("24 weeks: a plan stands", standing.seconds, 0.2))
    lines.append(_line("24 weeks: the best found, in its process", whole.seconds, 10.0))
    gaps = ", ".join(f"{100 * gap:.1f} %" for gap in whole.gaps)
    lines.append(f"  gaps {gaps}")
    lines.append(_line("24 weeks: repair", mending.seconds, 6.0))
    lines.append(_line("cancel", [cancelled() for _ in range(3)], 0.5))
    return lines


def cancelled() -> float:
    """Return how many seconds a search goes on after it was cancelled."""
    token = _token()
    at: list[float] = []

    def cancel() -> None:
        at.append(time.perf_counter())
        token.cancel()

    timer = threading.Timer(CANCEL_AFTER_S, cancel)
    timer.start()
    try:
        ExactBlock(random_request(3, weeks=(40, 40)))(token)
    except Cancelled:
        return time.perf_counter() - at[0]
    timer.cancel()
    return 0.0


def _line(name: str, seconds: Sequence[float], limit: float) -> str:
    worst = max(seconds)
    verdict = "ok" if worst <= limit else "MISSED"
    middle = percentile(seconds, 0.5)
    return f"{name}: median {middle:.2f} s, worst {worst:.2f} s, goal {limit:g} s: {verdict}"


def _summary(title: str, tally: Tally, count: int) -> list[str]:
    lines = [f"{count} random {title}"]
    lines += [f"  {name}: {number}" for name, number in sorted(tally.found.items())]
    p95 = percentile(tally.seconds, 0.95)
    lines.append(f"  median {percentile(tally.seconds, 0.5):.2f} s, p95 {p95:.2f} s")
    if tally.gaps:
        middle, high = percentile(tally.gaps, 0.5), percentile(tally.gaps, 0.9)
        lines.append(f"  gap median {100 * middle:.1f} %, p90 {100 * high:.1f} % (quick search)")
    return [*lines, *(f"  {fault}" for fault in tally.faults)]


def main(words: Sequence[str]) -> int:
    """Measure and print."""
    count = int(words[0]) if words else COUNT
    built, mended = blocks(count), repairs(count)
    print(file=sys.stderr)
    for line in (*_summary("blocks", built, count), *_summary("repairs", mended, count)):
        print(line)
    for line in times():
        print(line)
    worst = timedelta(seconds=round(sum(built.seconds) + sum(mended.seconds)))
    print(f"searching and mending took {worst}")
    return 0

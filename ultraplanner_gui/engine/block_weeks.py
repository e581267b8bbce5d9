"""The weeks of a block, counted back from the race, and the curves they follow."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.runway import taper_weeks, whole_weeks
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import week_start, weeks_to_go
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.training import rest_days_after, taper_shares

TUNE_UP_DAYS_APART = 14
TUNE_UP_DAYS_BEFORE = 7


class Frame(Value, frozen=True):
    """One week of the block: its role and the days that may hold sessions, both included.

    An opening part-week is not `whole`; it only carries on what the runner does.
    """

    to_go: int
    role: Role
    first: date
    last: date
    whole: bool = True

    @property
    def days(self) -> tuple[date, ...]:
        """Every day that may hold a session."""
        count = (self.last - self.first).days + 1
        return tuple(self.first + timedelta(days=n) for n in range(max(0, count)))


class Calendar(Value, frozen=True):
    """All weeks in order, the number to go of the first whole one, its cutbacks and taper."""

    frames: tuple[Frame, ...]
    first_week: int
    cutbacks: tuple[int, ...]
    taper_weeks: int

    @property
    def loading(self) -> tuple[Frame, ...]:
        """The whole loading weeks, in order."""
        return tuple(f for f in self.frames if f.whole and f.role is Role.LOADING)


def calendar(request: BlockRequest, low: frozenset[int] = frozenset()) -> Calendar:
    """Return the weeks from the first day to the race.

    The week after a long tune-up race is a cutback, and so are the weeks *low*.
    """
    first = whole_weeks(request.first_day, request.race_day, request.first_weekday)
    taper = taper_weeks(request.race_s, request.race_day, request.first_weekday)
    taper = min(taper, first + 1)
    forced = _after_tune_ups(request)
    forced |= {n for n in low if n > taper and forced.isdisjoint((n - 1, n + 1))}
    cutbacks = cutback_weeks(first, taper, request.cutback_every, forced)
    race_week = week_start(request.race_day, request.first_weekday)
    count = weeks_to_go(request.first_day, request.race_day, request.first_weekday)
    frames = []
    for to_go in range(count, -1, -1):
        start = race_week - timedelta(weeks=to_go)
        last = min(start + timedelta(days=6), request.race_day - timedelta(days=1))
        role = Role.LOADING
        if to_go < taper:
            role = Role.RACE if to_go == 0 else Role.TAPER
        elif to_go in cutbacks:
            role = Role.CUTBACK
        frames.append(Frame(to_go, role, max(start, request.first_day), last, to_go <= first))
    return Calendar(tuple(frames), first, cutbacks, taper)


def cutback_weeks(
    first: int, last: int, every: int, forced: frozenset[int] = frozenset()
) -> tuple[int, ...]:
    """Return the cutbacks among the weeks *first* down to *last* to go, the last one loading.

    Every *every*-th week counted back from *last*; *forced* weeks are cutbacks too. Where that
    would leave a single loading week at the start or two cutbacks side by side, the cutback
    comes one week later; rather than open with a cutback, the first ones come every third week.
    """
    cutbacks: set[int] = set()
    loads = 0
    for to_go in range(last, first + 1):
        if to_go in forced:
            cutbacks.add(to_go)
            loads = 0
        elif loads < every - 1:
            loads += 1
        elif loads > 1 and (to_go + 1 in forced or to_go + 1 == first):
            cutbacks.add(to_go - 1)
            loads = 1
        else:
            cutbacks.add(to_go)
            loads = 0
    in_order = sorted(cutbacks, reverse=True)
    if not forced and every > 3 and in_order[:1] == [first]:
        in_order[0] -= 2
        if len(in_order) > 1:
            in_order[1] -= 1
    return tuple(in_order)


def tune_up_s(request: BlockRequest, distance_m: float) -> float:
    """Return the predicted time of a tune-up race on ground like the race's.

    Riegel 1981, American Scientist 69:285-290, exponent 1.06 (from memory).
    """
    return float(request.race_s * (distance_m / request.race_m) ** 1.06)


def tune_ups(request: BlockRequest) -> tuple[tuple[date, float, float], ...]:
    """Return day, distance and predicted time of the tune-up races that find a place.

    They lie within the block, a week or more before the race and two from each other.
    """
    placed: list[tuple[date, float, float]] = []
    for day, distance_m in sorted(request.tune_ups):
        apart = not placed or (day - placed[-1][0]).days >= TUNE_UP_DAYS_APART
        early = (request.race_day - day).days >= TUNE_UP_DAYS_BEFORE
        if request.first_day <= day and early and apart and distance_m > 0:
            placed.append((day, distance_m, tune_up_s(request, distance_m)))
    return tuple(placed)


def _after_tune_ups(request: BlockRequest) -> frozenset[int]:
    weeks = set()
    taper = taper_weeks(request.race_s, request.race_day, request.first_weekday)
    for day, _, race_s in tune_ups(request):
        to_go = weeks_to_go(day, request.race_day, request.first_weekday) - 1
        if rest_days_after(race_s) > 1 and to_go > taper:
            weeks.add(to_go)
    return frozenset(weeks)


def growth_curve(start_m: float, peak_m: float, loads: int, hold: int) -> tuple[float, ...]:
    """Return *loads* values from *start_m* to *peak_m*, rising evenly by 10 % or less.

    The peak is held for up to *hold* weeks where the ramp leaves time for it; a start above
    the peak is kept.
    """
    if peak_m <= start_m or loads < 2:
        return (start_m,) * loads
    for held in range(hold, 0, -1):
        steps = loads - held
        if steps >= 1 and peak_m <= start_m * 1.1**steps:
            factor = (peak_m / start_m) ** (1.0 / steps)
            break
    else:
        factor = 1.1
    return tuple(min(peak_m, start_m * factor**n) for n in range(loads))


def taper_targets(days: Sequence[int], race_s: float) -> tuple[float, ...]:
    """Return the share of the last loading week for each taper week, race week last.

    *days* are the days before the race in each of them; the race week's share is cut to them.
    """
    shares = taper_shares(race_s)
    whole = list(shares[-len(days) :])
    if len(days) > len(shares):
        whole = [*shares, shares[-1]]
    return (*whole[:-1], whole[-1] * days[-1] / 6.0)

"""Random requests and absences, the same for the same seed."""

from datetime import date, timedelta
from random import Random

from ultraplanner_gui.engine.block import BlockRequest
from ultraplanner_gui.engine.repair_request import Absence, Cause, RepairRequest
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.plan.wishes import Away, Wishes

HOUR = 3600.0
RACE_DAY = date(2027, 4, 12)


def random_request(seed, weeks=(8, 40)):
    """A request of 8 to 40 weeks, 3 to 7 days and 20 to 140 km a week; some with days away, a
    tune-up race, a locked run.
    """
    draw = Random(seed)
    race_day = RACE_DAY + timedelta(days=draw.randrange(7))
    first_day = race_day - timedelta(days=draw.randint(7 * weeks[0], 7 * weeks[1]))
    run_days = draw.sample(range(7), draw.randint(3, 7))
    long_day = draw.choice(run_days)
    free = [draw.randint(40, 180) * 60.0 if day in run_days else 0.0 for day in range(7)]
    free[long_day] = draw.randint(3, 10) * HOUR
    weekly_m = draw.randint(20, 140) * 1000.0
    wishes = Wishes(
        cutback_every=draw.choice((3, 4)),
        back_to_back=draw.random() < 0.7,
        long_days=tuple(draw.sample(run_days, 1)) if draw.random() < 0.2 else (),
    )
    runner = Runner(
        weekly_m=weekly_m,
        longest_m=round(weekly_m * draw.uniform(0.2, 0.6), -2),
        easy_mps=draw.uniform(2.0, 3.6),
        available_s=tuple(free),
        long_day=long_day,
        level=draw.choice(list(Level)),
        carb_g_per_h=float(draw.randint(0, 90)),
        wishes=wishes,
        away=_away(draw, first_day, race_day),
    )
    race_m = draw.randint(30, 170) * 1000.0
    climb_m = race_m * draw.uniform(0.0, 0.07)
    return BlockRequest(
        first_day,
        race_day,
        race_m,
        climb_m,
        climb_m,
        race_m / draw.uniform(1.2, 3.0),
        runner,
        first_weekday=draw.randrange(7),
        dark_s=draw.choice((0.0, 3 * HOUR, 9 * HOUR)),
        cutback_every=wishes.cutback_every,
        carb_target_g_per_h=float(draw.randint(0, 100)),
        tune_ups=_tune_ups(draw, race_day, race_m),
        locked=_locked(draw, first_day, race_day),
    )


def _away(draw, first_day, race_day):
    if draw.random() > 0.3:
        return ()
    first = first_day + timedelta(days=draw.randrange((race_day - first_day).days - 14))
    return (Away(first, first + timedelta(days=draw.randrange(6)), draw.choice((0.0, 2400.0))),)


def _tune_ups(draw, race_day, race_m):
    if draw.random() > 0.3:
        return ()
    return ((race_day - timedelta(days=draw.randint(20, 60)), round(race_m * 0.4, -3)),)


def _locked(draw, first_day, race_day):
    if draw.random() > 0.2:
        return ()
    day = first_day + timedelta(days=draw.randrange((race_day - first_day).days - 14))
    kind = draw.choice((Kind.EASY, Kind.TEMPO))
    return (Session("locked", day, kind, 8_000.0, 3_000.0, locked=True),)


def random_absence(seed, request):
    """Days missed somewhere in the block of *request*, for one cause or another."""
    draw = Random(seed)
    whole = (request.race_day - request.first_day).days
    days = draw.choice((1, 2, 3, 4, 6, 9, 13, 18, 25, 32))
    days = min(days, whole - 21)
    first = request.first_day + timedelta(days=draw.randint(7, max(7, whole - days - 10)))
    last = first + timedelta(days=days - 1)
    cause = draw.choice(list(Cause))
    absence = Absence(first, last, cause, is_cleared=True)
    return RepairRequest(request, absence, last + timedelta(days=1))

"""The rules over weeks that a mended block keeps: ramp, cutbacks, share of the long run, taper."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from ultraplanner_gui.engine.block_rows import Term
from ultraplanner_gui.engine.repair_fates import Mend, RepairModel, metres_of
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Block, Kind, weeks_to_go
from ultraplanner_gui.plan.value import Value

# Costs and shares are own choices.
#: What a metre costs that a rule gives way by.
BREACH = 20.0
#: A released cutback should come to so much of the week before, and what each metre short costs.
RELEASED_SHARE = 1.05
RELEASED_SHORT = 0.2
LOW_SHARE = 0.8
#: The long run in hundredths of its week, usually and in weeks of so few runs.
SHARE, SHARE_OF_FEW, FEW_RUNS = 50, 60, 3
#: Least cut of the daily mean in the taper: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358-1365.
TAPER_KEPT = 59.0


class _Volume(Value, frozen=True):
    """The volume of a week as terms and a constant."""

    terms: tuple[Term, ...]
    fixed_m: float

    def times(self, factor: float) -> list[Term]:
        return [(c, factor * f) for c, f in self.terms]


def _volumes(model: RepairModel) -> dict[int, _Volume]:
    terms: dict[int, list[Term]] = {}
    fixed: dict[int, float] = {}
    for session in model.mend.block.sessions:
        to_go = model.mend.to_go(session)
        terms.setdefault(to_go, [])
        fate = model.fates.get(session.key)
        if fate is not None:
            terms[to_go].extend(fate.metres)
        else:
            fixed[to_go] = fixed.get(to_go, 0.0) + metres_of(session)
    return {n: _Volume(tuple(t), fixed.get(n, 0.0)) for n, t in terms.items()}


def planned_volumes(block: Block, mend: Mend) -> dict[int, int]:
    """Return the whole metres of every week of *block*."""
    sums: dict[int, int] = {}
    for session in block.sessions:
        to_go = mend.to_go(session)
        sums[to_go] = sums.get(to_go, 0) + metres_of(session)
    return sums


def keep_weeks(model: RepairModel) -> dict[int, _Volume]:
    """Keep ramp, cutbacks and the share of the long run; return the volume of every week."""
    mend = model.mend
    volumes = _volumes(model)
    before = planned_volumes(mend.planned, mend)
    references = _references(mend, before)
    reference = _Volume((), float(mend.yardstick_m))
    growth = mend.first_growth
    was = mend.yardstick_m
    returned = date.fromordinal(mend.returned)
    first = weeks_to_go(returned, mend.race.day, mend.first_weekday)
    for to_go in range(first, mend.block.taper_weeks - 1, -1):
        volume = volumes.get(to_go, _Volume((), 0.0))
        role = mend.roles.get(to_go, Role.LOADING)
        share = growth if role is Role.LOADING else 80
        usual = 1.1 if role is Role.LOADING else 0.8
        excess = max(0.0, float(before.get(to_go, 0)) - usual * references.get(to_go, 0.0))
        _under(model, volume, reference, share / 100.0, excess)
        if to_go == mend.released:
            least = [*volume.times(1.0), *reference.times(-RELEASED_SHARE)]
            target = RELEASED_SHARE * reference.fixed_m - volume.fixed_m
            model.rows.shortfall(least, target, RELEASED_SHORT)
        if role is Role.LOADING:
            _share(model, to_go)
            most = volume.fixed_m + most_m(model, to_go)
            if sets_yardstick(model, to_go, most, was):
                reference, growth, was = volume, 110, round(most)
            elif not _is_broken(mend, to_go):
                model.rests.append(to_go)
    return volumes | {-1: reference}


def sets_yardstick(model: RepairModel, to_go: int, most: float, before: float) -> bool:
    """Return whether the loading week, of *most* metres at most, measures those after it.

    Not if days were missed in it, or eased after them, and it comes to less than 80 % of *before*.
    """
    mend = model.mend
    if to_go == mend.released:
        return True
    eased = any(mend.to_go(s) == to_go for s in mend.block.sessions if s.key in mend.eased)
    return not (eased or _is_broken(mend, to_go)) or most >= LOW_SHARE * before


def _references(mend: Mend, before: Mapping[int, int]) -> dict[int, float]:
    """Return what each week was measured by before the days were missed."""
    broken = {mend.to_go(s) for s in mend.planned.sessions if s.missed}
    reference = float(mend.start_m)
    found: dict[int, float] = {}
    for to_go in range(mend.planned.first_week, -1, -1):
        found[to_go] = reference
        metres = float(before.get(to_go, 0))
        loads = to_go >= mend.planned.taper_weeks and to_go not in mend.planned.cutbacks
        if loads and metres and not (to_go in broken and metres < LOW_SHARE * reference):
            reference = metres
    return found


def _is_broken(mend: Mend, to_go: int) -> bool:
    return any(s.missed and mend.to_go(s) == to_go for s in mend.block.sessions)


def most_m(model: RepairModel, to_go: int) -> float:
    """Return the most that what may change of a week can come to, as planned at best."""
    most, total = model.rows.most, 0.0
    for fate in model.fates.values():
        if model.mend.to_go(fate.session) == to_go:
            kept = min(most[fate.kept], float(fate.steps)) * fate.step_m + fate.offset_m
            easy = 0.0 if fate.easy_steps is None else most[fate.easy_steps] * fate.easy_m
            total += max(kept * most[fate.keep], easy)
    return total


def _under(
    model: RepairModel, volume: _Volume, reference: _Volume, share: float, excess: float
) -> None:
    """Keep *volume* to *share* of *reference*, or as far above it as it was."""
    if not volume.terms and not volume.fixed_m:
        return
    terms = [*volume.times(10.0), *reference.times(-10.0 * share)]
    if volume.fixed_m:
        over = model.rows.column(cost=BREACH)
        model.breaches.append(over)
        terms.append((over, -10.0))
    most = 10.0 * (share * reference.fixed_m - volume.fixed_m + excess)
    model.rows.row(terms, most=most)


def _share(model: RepairModel, to_go: int) -> None:
    """Keep the long run to its share of a week that nothing was missed in."""
    mend = model.mend
    week = [s for s in mend.block.sessions if mend.to_go(s) == to_go and s.kind.is_run]
    fates = [model.fates[s.key] for s in week if s.key in model.fates]
    longs = [f for f in fates if f.session.kind is Kind.LONG]
    if not longs or len(fates) < len(week):
        return
    share = SHARE_OF_FEW if len(week) <= FEW_RUNS else SHARE
    total = sum(round(s.distance_m) for s in week)
    excess = max(0.0, 100.0 * longs[0].session.distance_m - share * total)
    long_terms = [(c, 100.0 * f) for c, f in longs[0].metres]
    others = [(c, -share * f) for fate in fates for c, f in fate.metres]
    model.rows.row([*long_terms, *others], most=excess)


def keep_taper(model: RepairModel, volumes: Mapping[int, _Volume]) -> None:
    """Cut the daily mean by 41 % of the last loading week or more."""
    mend = model.mend
    weeks = [volumes[n] for n in range(mend.block.taper_weeks) if n in volumes]
    last, days = volumes[-1], mend.taper_days
    if not weeks or not days:
        return
    before = planned_volumes(mend.planned, mend)
    total = sum(before.get(n, 0) for n in range(mend.block.taper_weeks))
    excess = max(0.0, 700.0 * total - TAPER_KEPT * days * _references(mend, before).get(0, 0.0))
    terms = [t for w in weeks for t in w.times(700.0)] + last.times(-TAPER_KEPT * days)
    most = TAPER_KEPT * days * last.fixed_m - 700.0 * sum(w.fixed_m for w in weeks) + excess
    over = model.rows.column(cost=BREACH)
    model.breaches.append(over)
    model.rows.row([*terms, (over, -700.0)], most=most)

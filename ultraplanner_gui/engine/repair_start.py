"""A plain way to mend a block, week by week, for the exact search to begin with."""

from __future__ import annotations

from dataclasses import dataclass, field

from ultraplanner_gui.engine.repair_model import (
    LONG_KINDS,
    Fate,
    RepairModel,
    fixed_longest,
    metres_of,
    most_m,
    sets_yardstick,
)
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.science.training import WINDOW_DAYS

TAPER_SHARE = 0.58
CUTBACK_SHARE = 0.78
LITTLE = 0.995
LONG_SHARE = 0.45


def start_of(model: RepairModel) -> dict[int, float]:
    """Return values for what becomes of each session, most of them within the rules."""
    return _Start(model).values()


@dataclass(slots=True)
class _Start:
    model: RepairModel
    run_m: dict[str, float] = field(default_factory=dict)
    found: dict[int, float] = field(default_factory=dict)

    def values(self) -> dict[int, float]:
        mend = self.model.mend
        weeks: dict[int, list[Fate]] = {}
        for fate in self.model.fates.values():
            weeks.setdefault(mend.to_go(fate.session), []).append(fate)
        reference, growth = float(mend.yardstick_m), mend.first_growth / 100.0
        planned, was = 0.0, reference
        for to_go in sorted(weeks, reverse=True):
            fates = weeks[to_go]
            role = mend.roles.get(to_go, Role.LOADING)
            fixed = self._fixed_m(to_go)
            if role is Role.LOADING:
                room = growth * reference - fixed
            elif role is Role.CUTBACK:
                room = CUTBACK_SHARE * reference - fixed
            else:
                room = self._taper_room(to_go, fates, reference, planned) - fixed
            total = self._week(fates, LITTLE * room) + fixed
            most = most_m(self.model, to_go) + fixed
            if role is Role.LOADING and sets_yardstick(self.model, to_go, most, was):
                reference, growth, planned, was = total, 1.1, most, most
        return self.found

    def _fixed_m(self, to_go: int) -> float:
        mend, fates = self.model.mend, self.model.fates
        return float(
            sum(
                metres_of(s)
                for s in mend.block.sessions
                if s.key not in fates and mend.to_go(s) == to_go
            )
        )

    @staticmethod
    def _taper_room(to_go: int, fates: list[Fate], reference: float, planned: float) -> float:
        """Return a taper week in proportion to what is left of the last loading week."""
        usual = sum(f.session.distance_m for f in fates)
        return usual * min(1.0, reference / planned) if planned else TAPER_SHARE * reference

    def _week(self, fates: list[Fate], room: float) -> float:
        """Fill a week that may hold *room* metres; return what it comes to."""
        caps = {f.session.key: self._cap(f) for f in fates}
        total = sum(caps.values())
        share = max(0.0, min(1.0, room / total)) if total else 0.0
        placed = 0.0
        for fate in sorted(fates, key=lambda f: f.session.day):
            most = caps[fate.session.key] * share
            if fate.session.kind is Kind.LONG:
                most = min(most, LONG_SHARE * share * total)
            placed += self._place(fate, most, room - placed)
        return placed

    def _cap(self, fate: Fate) -> float:
        """Return the longest that the runs of the 30 days before allow."""
        mend, at = self.model.mend, fate.session.day.toordinal()
        days = {s.key: s.day.toordinal() for s in mend.block.sessions}
        behind = [m for key, m in self.run_m.items() if 1 <= at - days[key] <= WINDOW_DAYS]
        longest = max([fixed_longest(mend, self.model.fates, at), *behind])
        return min(fate.session.distance_m, 1.1 * longest)

    def _place(self, fate: Fate, most_m: float, room: float) -> float:
        """Keep the session, shorter if need be, else run easy, else drop it; return its metres."""
        rows = self.model.rows
        most_m = min(most_m, room)
        limit = int(rows.most[fate.kept])
        steps = min(limit, fate.steps, int((most_m - fate.offset_m) // fate.step_m))
        least = fate.least
        if fate.easy is not None and fate.session.kind not in LONG_KINDS:
            least = max(least, fate.steps // 2)
        keeps = rows.most[fate.keep] > 0 and steps >= least
        self.found[fate.keep], self.found[fate.kept] = float(keeps), float(steps * keeps)
        metres = float(steps * fate.step_m + fate.offset_m) if keeps else 0.0
        if fate.easy is not None and fate.easy_steps is not None:
            easy = 0 if keeps else min(int(rows.most[fate.easy_steps]), int(most_m // fate.easy_m))
            runs = easy >= fate.easy_least
            self.found[fate.easy], self.found[fate.easy_steps] = float(runs), float(easy * runs)
            metres += float(easy * runs * fate.easy_m)
        self.run_m[fate.session.key] = metres
        return metres

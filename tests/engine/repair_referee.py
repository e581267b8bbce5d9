"""What a mended block must keep to, from its sessions alone and a table of its own."""

from datetime import timedelta

from tests.engine.block_referee import HEAVY, metres, start_of_week
from ultraplanner_gui.engine import repair
from ultraplanner_gui.engine.repair_request import Cause
from ultraplanner_gui.plan.block import Kind

#: Days off, yardstick left in hundredths, easy runs first, their share, days without anything
#: hard, share of the long run: common practice, no source; the long breaks are our own.
TABLE = (
    (29, 45, 8, 70, 21, 45),
    (22, 50, 5, 70, 14, 50),
    (15, 65, 4, 70, 10, 65),
    (8, 80, 3, 70, 7, 80),
    (4, 100, 2, 90, 3, 100),
    (1, 100, 0, 100, 0, 110),
)


class RepairReferee:
    """All that is wrong with one way to mend *planned* after an absence."""

    def __init__(self, planned, request, choice):
        self.planned, self.request, self.choice = planned, request, choice
        self.built, self.block = request.built, choice.block
        self.returned = request.absence.last_day + timedelta(days=1)
        days = request.absence.days
        if request.absence.cause is Cause.ILLNESS:
            days = max(days, 4)
        self.row = next(row for row in TABLE if row[0] <= days)
        self.race_week = start_of_week(self.built.race_day, self.built.first_weekday)
        self.before = {s.key: s for s in planned.sessions}
        self.names = {n.template for n in choice.notes}
        self.released = set(planned.cutbacks) - set(self.block.cutbacks)

    def to_go(self, day):
        return (self.race_week - start_of_week(day, self.built.first_weekday)).days // 7

    def volumes(self, block):
        sums = {}
        for session in block.sessions:
            to_go = self.to_go(session.day)
            sums[to_go] = sums.get(to_go, 0) + metres(session)
        return sums

    def broken(self):
        # What is locked or raced may hold a week over its limit, if the choice says so.
        weeks = [] if repair.STILL_OVER in self.names else self.weeks()
        return [
            *self.changes(),
            *self.return_to_running(),
            *self.single_runs(),
            *weeks,
            *self.hard_days(),
        ]

    def ahead(self):
        return [
            s for s in self.block.sessions if s.day >= self.returned and s.kind is not Kind.RACE
        ]

    def changes(self):
        told = {c.session: c.after for c in self.choice.changes}
        after = {s.key: s for s in self.block.sessions}
        absence = self.request.absence
        for key, session in self.before.items():
            now = after.get(key)
            if absence.first_day <= session.day <= absence.last_day:
                if now is None or not now.missed:
                    yield "missed day not marked", key
            elif session.day < self.returned or session.locked or session.kind is Kind.RACE:
                if now != session:
                    yield "past or locked changed", key
            elif now != session and told.get(key, session) != now:
                yield "change not told", key
        for key, now in after.items():
            was = self.before.get(key)
            if was is None or now.day != was.day:
                yield "added or moved", key
            elif metres(now) > metres(was) and self.to_go(now.day) not in self.released:
                yield "made longer", key

    def return_to_running(self):
        _, _, easy, share, hard, _ = self.row
        runs = [s for s in self.planned.sessions if s.kind.is_run]
        days = sorted({s.day for s in runs if s.day >= self.returned})[:easy]
        for session in self.ahead():
            was = self.before[session.key]
            if session.kind is Kind.TUNE_UP or session.locked:
                continue
            if session.kind is Kind.STRENGTH and (session.day - self.returned).days < hard:
                yield "strength too soon", session.key
            if session.kind.is_run and session.day in days:
                if session.kind in HEAVY:
                    yield "first days hard", session.key
                # A fifth of an hour is the least there is.
                if session.duration_s > max(1200, was.duration_s * share // 100 + 150):
                    yield "first days long", session.key
            if session.kind in HEAVY and (session.day - self.returned).days < hard:
                yield "hard too soon", session.key

    def single_runs(self):
        long_limit = self.row[5]
        longest = max(5_000, round(self.built.runner.longest_m))
        first = self.planned.sessions[0].day
        runs = [(first - timedelta(days=1), longest)]
        away = self.request.absence.first_day
        longs = [
            metres(s)
            for s in self.block.sessions
            if s.kind.is_long and 0 < (away - s.day).days <= 21 and metres(s)
        ]
        anew = max(longs, default=longest) * long_limit // 100
        for session in self.block.sessions:
            far = metres(session)
            if not far:
                continue
            window = [m for day, m in runs if 1 <= (session.day - day).days <= 30]
            if self.names & {repair.STARTS_ANEW} and (session.day - self.returned).days < 30:
                window.append(max(5_000, anew))
            stays = session.kind is Kind.TUNE_UP or session.locked
            if stays and repair.STAYS_FAR in self.names:
                window.append(far)
            worse = far > metres(self.before[session.key])
            if 10 * far > 11 * max(window, default=0) and session.day >= self.returned:
                old = [
                    metres(s)
                    for s in self.planned.sessions
                    if 1 <= (session.day - s.day).days <= 30
                ]
                broke = 10 * metres(self.before[session.key]) > 11 * max(old, default=0)
                if worse or not broke:
                    yield "single run", session.key
            runs.append((session.day, far))
        if long_limit < 110:
            behind = [m for day, m in runs if day < self.returned]
            longest = max(behind, default=longest)
            first_long = next((s for s in self.ahead() if s.kind is Kind.LONG), None)
            limit = longest if long_limit == 100 else longest * long_limit * 11 // 1000
            if first_long is not None and first_long.locked:
                return
            if first_long is not None:
                since = [m for day, m in runs if self.returned <= day < first_long.day]
                limit = max(limit, 11 * max(since, default=0) // 10)
            soon = first_long is not None and (first_long.day - self.returned).days < 14
            if soon and metres(first_long) > max(5_500, limit):
                yield "first long run", first_long.key

    def weeks(self):
        was, now = self.volumes(self.planned), self.volumes(self.block)
        back = self.to_go(self.returned)
        missed = {self.to_go(s.day) for s in self.block.sessions if s.missed}
        reference = old = max(10_000, round(self.built.runner.weekly_m))
        share = 100
        for to_go in range(self.planned.first_week, self.block.taper_weeks - 1, -1):
            metres_now, metres_was = now.get(to_go, 0), was.get(to_go, 0)
            # What was above its limit before may stay as far above it.
            if to_go <= back:
                share = self.row[1] if reference_is_old(to_go, back, share) else share
            if to_go in self.block.cutbacks:
                excess = max(0, 10 * metres_was - 8 * old)
                if to_go <= back and 10 * metres_now > 8 * reference * share / 100 + excess + 10:
                    yield "cutback", to_go
                if to_go not in self.planned.cutbacks and metres_was:
                    old = metres_was
                continue
            excess = max(0, 10 * metres_was - 11 * old)
            if to_go < back and 10 * metres_now > 11 * reference * share / 100 + excess + 10:
                yield "ramp", to_go
            broken = to_go in missed and 10 * metres_now < 8 * reference * share / 100
            if metres_now and not broken:
                reference = metres_now
                share = 100 if to_go <= back else share
            if to_go not in self.planned.cutbacks and metres_was:
                old = metres_was
        days = (self.built.race_day - self.race_week).days + 7 * (self.block.taper_weeks - 1)
        total_now = sum(now.get(n, 0) for n in range(self.block.taper_weeks))
        total_was = sum(was.get(n, 0) for n in range(self.block.taper_weeks))
        limit = 59 * days * reference * share / 100 + max(0, 700 * total_was - 59 * days * old)
        if 700 * total_now > limit + 700:
            yield "taper", total_now

    def hard_days(self):
        for block, sink in ((self.planned, set()), (self.block, None)):
            kinds = {s.day: s.kind for s in block.sessions if s.kind.is_run and not s.missed}
            meet = {
                day
                for day, kind in kinds.items()
                if kind in HEAVY
                and kinds.get(day + timedelta(days=1)) in HEAVY - {Kind.SECOND_LONG}
            }
            if sink is not None:
                before = meet
            else:
                for day in meet - before:
                    yield "hard days", day


def reference_is_old(to_go, back, share):
    """Whether the week is the first since the return, measured by what was run before."""
    return to_go == back and share == 100

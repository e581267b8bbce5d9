"""The rules of a block once more, on whole metres, minutes and days, from its sessions alone.

Nothing here is taken from the engine but the sentences by which a block names what it breaks.
"""

from datetime import timedelta

from ultraplanner_gui.engine import block_notes as notes
from ultraplanner_gui.plan.block import Kind

HARD = {
    *(Kind.LONG, Kind.REHEARSAL, Kind.HILLS, Kind.DOWNHILL, Kind.TEMPO, Kind.INTERVALS),
    *(Kind.TUNE_UP, Kind.RACE),
}
HEAVY = HARD | {Kind.SECOND_LONG}
NO_RUN = {Kind.STRENGTH, Kind.CROSS, Kind.RACE}
#: Which sentences name which rule.
NAMES = {
    "ramp": {notes.TUNE_UP_WEEK, notes.LOCKED_WEEK},
    "part-week": {notes.TUNE_UP_WEEK, notes.LOCKED_WEEK},
    "cutback": {notes.TUNE_UP_WEEK, notes.CUTBACK_OFF, notes.USUAL_UNFIT},
    "single run": {notes.TUNE_UP_FAR, notes.LOCKED_FAR},
    "hard days": {notes.LOCKED_HARD},
    "taper": {notes.TAPER_OFF},
    "peak": {notes.DAYS_HOLD, notes.TOO_NEAR, notes.USUAL_UNFIT, notes.RAMP_HOLDS},
    "days": {notes.DAYS_LEFT},
    "downhill": {notes.NO_DOWNHILL},
}


def start_of_week(day, first_weekday):
    return day - timedelta(days=(day.weekday() - first_weekday) % 7)


def metres(session):
    if session.missed or session.kind in NO_RUN:
        return 0
    return round(session.distance_m if session.done is None else session.done.distance_m)


def free_minutes(request, day):
    seconds = request.runner.available_s[day.weekday()]
    for away in request.runner.away:
        if away.first <= day <= away.last:
            seconds = min(seconds, away.free_s)
    return int(seconds // 60)


class Referee:
    """All that is wrong with a block for a request, as (rule, where) pairs."""

    def __init__(self, request, block, names=frozenset()):
        self.request, self.block = request, block
        self.names = {n.template for n in names}
        self.race_week = start_of_week(request.race_day, request.first_weekday)
        self.weeks = {}
        for session in block.sessions:
            self.weeks.setdefault(self.to_go(session.day), []).append(session)
        self.volume = {n: sum(map(metres, week)) for n, week in self.weeks.items()}
        self.start_m = max(10_000, round(request.runner.weekly_m))
        self.locked = {s.key for s in request.locked}

    def to_go(self, day):
        return (self.race_week - start_of_week(day, self.request.first_weekday)).days // 7

    def unnamed(self):
        """What is broken and not said to be."""
        return [(rule, at) for rule, at in self.broken() if not NAMES.get(rule, set()) & self.names]

    def broken(self):
        return [
            *self.ramp_and_cutbacks(),
            *self.single_runs(),
            *self.hard_days(),
            *self.taper(),
            *self.days(),
            *self.downhill(),
        ]

    def loads(self):
        """The loading weeks that hold something, by number to go, first one first."""
        weeks = range(self.block.first_week, self.block.taper_weeks - 1, -1)
        return [n for n in weeks if n not in self.block.cutbacks and self.volume.get(n)]

    def raced(self, to_go):
        return any(s.kind is Kind.TUNE_UP for n in (0, 1) for s in self.weeks.get(to_go + n, ()))

    def ramp_and_cutbacks(self):
        reference, loads, cut = self.start_m, 0, False
        for to_go in range(self.block.first_week, self.block.taper_weeks - 1, -1):
            now = self.volume.get(to_go, 0)
            if to_go in self.block.cutbacks:
                if cut:
                    yield "two cutbacks", to_go
                low = 0 if self.raced(to_go) else 6
                if not low * reference <= 10 * now <= 8 * reference:
                    yield "cutback", to_go
                loads, cut = 0, True
                continue
            if 10 * now > 11 * reference:
                yield "ramp", to_go
            loads, cut = loads + 1, False
            if loads >= self.request.cutback_every:
                yield "cutback due", to_go
            reference = now or reference
        for to_go in self.weeks:
            if to_go > self.block.first_week and 10 * self.volume[to_go] > 11 * self.start_m:
                yield "part-week", to_go

    def single_runs(self):
        before = self.request.first_day - timedelta(days=1)
        runs = [(before, max(5_000, round(self.request.runner.longest_m)))]
        for session in self.block.sessions:
            far = metres(session)
            if not far:
                continue
            window = [m for day, m in runs if 1 <= (session.day - day).days <= 30]
            if 10 * far > 11 * max(window, default=0):
                yield "single run", session.key
            runs.append((session.day, far))

    def hard_days(self):
        kinds = {}
        for session in self.block.sessions:
            if session.kind not in (Kind.STRENGTH, Kind.CROSS) and not session.missed:
                kinds[session.day] = session.kind
        for day, kind in kinds.items():
            after = kinds.get(day + timedelta(days=1))
            if kind in HEAVY and after in HARD:
                yield "hard days", day
            if after is Kind.SECOND_LONG and kind not in (Kind.LONG, Kind.REHEARSAL):
                yield "second long run alone", day
            if kind in HEAVY and 0 < (self.request.race_day - day).days < 5:
                yield "hard before the race", day

    def taper(self):
        loads = self.loads()
        days = (self.request.race_day - self.race_week).days + 7 * (self.block.taper_weeks - 1)
        if not loads or days < 1:
            return
        total = 700 * sum(self.volume.get(n, 0) for n in range(self.block.taper_weeks))
        last = days * self.volume[loads[-1]]
        if not 40 * last <= total <= 59 * last:
            yield "taper", round(1 - total / last / 100, 3)

    def days(self):
        for to_go, week in self.weeks.items():
            runs = [s.day for s in week if s.kind.is_run]
            if len(set(runs)) != len(runs) or len(runs) == 7:
                yield "no rest day", to_go
        for session in self.block.sessions:
            if session.kind in (Kind.RACE, Kind.TUNE_UP) or not session.kind.is_run:
                continue
            fits = session.duration_s <= 60 * free_minutes(self.request, session.day)
            if not fits and session.key not in self.locked:
                yield "no time", session.key
            if not self.request.first_day <= session.day < self.request.race_day:
                yield "outside", session.key
        for locked in self.request.locked:
            if locked not in self.block.sessions:
                yield "locked", locked.key

    def downhill(self):
        falls = [s.day for s in self.block.sessions if s.kind is Kind.DOWNHILL]
        tune_ups = [s.day for s in self.block.sessions if s.kind is Kind.TUNE_UP]
        if any((self.request.race_day - day).days < 10 for day in falls):
            yield "downhill too late", falls[-1]
        if self.request.drop_m > 1000 and not falls and len(self.loads()) > 3 and not tune_ups:
            yield "downhill", None

    def falls_short(self, asked_m):
        """Whether the greatest week is under 97 % of what 10 % a week reaches by the race: one
        step fewer than there are loading weeks, those in the last three weeks not counted.
        """
        loads = [n for n in self.loads() if n >= 3] or self.loads()
        if not loads:
            return notes.TOO_NEAR not in self.names
        reach = self.start_m
        for _ in loads[1:]:
            reach = reach * 11 // 10
        reach = min(max(reach, self.start_m), max(round(asked_m), self.start_m))
        peak = max(self.volume[n] for n in self.loads())
        return 100 * peak < 97 * reach and not NAMES["peak"] & self.names

    def leaves_days(self):
        """Whether under 90 % of the days with time to run in loading weeks hold a run, unsaid."""
        free = used = 0
        for to_go in self.loads():
            if self.raced(to_go):
                continue
            start = self.race_week - timedelta(weeks=to_go)
            week = [start + timedelta(days=n) for n in range(7)]
            free += min(6, sum(free_minutes(self.request, day) >= 20 for day in week))
            used += len({s.day for s in self.weeks[to_go] if s.kind.is_run})
        return 10 * used < 9 * free and notes.DAYS_LEFT not in self.names

"""What the exact search may choose from: days with kinds of session, weeks with their bounds."""

from __future__ import annotations

from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import HARD_KINDS, Kind
from ultraplanner_gui.plan.value import Value

LONG_KINDS = (Kind.LONG, Kind.REHEARSAL)
SHARP_KINDS = (Kind.HILLS, Kind.TEMPO, Kind.INTERVALS, Kind.DOWNHILL)
HEAVY_KINDS = HARD_KINDS | {Kind.SECOND_LONG}


class Option(Value, frozen=True):
    """One kind of session a day may hold: metres of one step of time, fewest and most steps.

    `cap` is how many steps the kind may take where the day has time enough; `cost` what choosing
    it costs.
    """

    kind: Kind
    step_m: int
    least: int
    most: int
    cap: int
    cost: int = 0
    step_s: int = 300


class Day(Value, frozen=True):
    """One day, by its number in the calendar; `fixed` are kind and metres of what is there."""

    at: int
    options: tuple[Option, ...] = ()
    fixed: tuple[Kind, int] | None = None

    @property
    def weekday(self) -> int:
        """Monday 0."""
        return (self.at + 6) % 7


class Week(Value, frozen=True):
    """One week: its role, its days, and what it should come to.

    `target_m` and `long_m` are what week and long run should be (in the taper `target_m` is a
    share of the last loading week in thousandths), `fewest` and `most` how many runs, `sharp` how
    many harder ones between the long runs, `ceiling` how many hundredths of its yardstick a
    loading week may reach. A week that is not `whole` sets no yardstick; `after_race` says that a
    race leaves it no least volume. Shares of the long run are hundredths of the week.
    """

    to_go: int
    role: Role
    days: tuple[Day, ...]
    target_m: int
    long_m: int = 0
    fewest: int = 0
    most: int = 6
    sharp: int = 0
    whole: bool = True
    after_race: bool = False
    usual_share: int = 40
    most_share: int = 50
    ceiling: int = 110

    @property
    def fixed_m(self) -> int:
        """Metres of what stands already."""
        return sum(day.fixed[1] for day in self.days if day.fixed is not None)


class Task(Value, frozen=True):
    """A block to search: its weeks in order, where the runner stands, what is aimed for.

    `peak` and `longest` are the places in `weeks` of the greatest week and the longest run;
    `taper_days` the days before the race that the taper counts; `downhill` the first and the
    last day (numbers in the calendar) between which downhill runs keep their spacing.
    """

    weeks: tuple[Week, ...]
    start_m: int
    longest_m: int
    goal_m: int
    goal_long_m: int
    peak: int
    longest: int
    taper_days: int
    two_days_m: int = 0
    pairs: int = 0
    downhill: tuple[int, int] | None = None
    step_s: int = 300

    @property
    def last_load(self) -> int | None:
        """The place of the last loading week; None if there is none."""
        loads = [n for n, w in enumerate(self.weeks) if w.whole and w.role is Role.LOADING]
        return loads[-1] if loads else None

    def yardstick(self, place: int) -> int | None:
        """Return the place of the week that the week at *place* is measured by; None: the start."""
        for n in range(place - 1, -1, -1):
            if self.weeks[n].whole and self.weeks[n].role is Role.LOADING:
                return n
        return None


class Chosen(Value, frozen=True):
    """One session of a searched block: a day, a kind, steps of time (0: fixed) and metres."""

    at: int
    kind: Kind
    steps: int
    metres: int

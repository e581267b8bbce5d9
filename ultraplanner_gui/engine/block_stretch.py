"""How much more time, and on which weekdays, what the race asks would need."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec.structs import replace

from ultraplanner_gui.engine.block_model import BlockModel, block_model
from ultraplanner_gui.engine.block_solver import Limits, solve
from ultraplanner_gui.engine.block_task import Chosen, Task
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message

MOST_DAYS = 2
TIME_S = 1.0


def time_needed(task: Task, chosen: tuple[Chosen, ...], free_s: tuple[float, ...]) -> list[Message]:
    """Return which weekdays would have to hold how much for the greatest week and the longest run.

    The kinds of the days stay as they are *chosen*; *free_s* is what was given, Monday to Sunday.
    """
    stretched = replace(
        task,
        weeks=tuple(
            replace(
                w,
                days=tuple(
                    replace(d, options=tuple(replace(o, most=o.cap) for o in d.options))
                    for d in w.days
                ),
            )
            for w in task.weeks
        ),
    )
    model = block_model(stretched)
    kinds = {c.at: c.kind for c in chosen}
    given = {(d.at, o.kind): o.most for w in task.weeks for d in w.days for o in d.options}
    more = _more(model, kinds, given)
    found = solve(model.rows, Limits(0, TIME_S))
    if not found.values:
        return []
    needed = {
        weekday: free_s[weekday] + task.step_s * -int(-found.values[column] // 1)
        for weekday, column in more.items()
        if found.values[column] > 0.05
    }
    order = sorted(needed, key=lambda d: free_s[d] - needed[d])[:MOST_DAYS]
    return [message(NEEDS[d], Quantity(needed[d], "s"), Quantity(free_s[d], "s")) for d in order]


def _more(
    model: BlockModel, kinds: Mapping[int, Kind], given: Mapping[tuple[int, Kind], int]
) -> dict[int, int]:
    """Turn *model* into the question of how much more time the goals need; return the columns of
    more steps by weekday.
    """
    rows = model.rows
    rows.is_whole = [False] * len(rows.is_whole)
    rows.cost = [cost if c in model.goals else 0.0 for c, cost in enumerate(rows.cost)]
    rows.constant = 0.0
    more: dict[int, int] = {}
    for pick in model.picks:
        kept = kinds.get(pick.day.at) is pick.option.kind
        rows.least[pick.is_chosen] = rows.most[pick.is_chosen] = float(kept)
        weekday = pick.day.weekday
        if kept and weekday not in more:
            more[weekday] = rows.column(cost=1.0)
        if kept:
            most = float(given[pick.day.at, pick.option.kind])
            share = pick.option.step_s / model.task.step_s
            rows.row([(pick.steps, share), (more[weekday], -1.0)], most=share * most)
    return more


#: Monday to Sunday.
NEEDS = (
    QT_TRANSLATE_NOOP("Block", "What the race asks needs {0} on Mondays; {1} are free."),
    QT_TRANSLATE_NOOP("Block", "What the race asks needs {0} on Tuesdays; {1} are free."),
    QT_TRANSLATE_NOOP("Block", "What the race asks needs {0} on Wednesdays; {1} are free."),
    QT_TRANSLATE_NOOP("Block", "What the race asks needs {0} on Thursdays; {1} are free."),
    QT_TRANSLATE_NOOP("Block", "What the race asks needs {0} on Fridays; {1} are free."),
    QT_TRANSLATE_NOOP("Block", "What the race asks needs {0} on Saturdays; {1} are free."),
    QT_TRANSLATE_NOOP("Block", "What the race asks needs {0} on Sundays; {1} are free."),
)

"""Random edits through a real document: undo, file and figures agree all the way."""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Iterator
from datetime import date, timedelta
from pathlib import Path

import numpy as np
from msgspec.structs import replace
from PySide6.QtWidgets import QApplication
from trust_memory import held
from trust_parts import Part

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits import block, course, fuel, project
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.race import ChangeRace
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.store.project_file import ProjectFile

WARM_UP = 0.4
#: What says by NaN that there is none: the one speed of a plan whose sections have their own.
_NO_FIGURE = frozenset(("target.fresh_mps",))
_PARTS = ("sections", "weeks", "fuel", "asks", "runway", "target", "forecast")


def soak(folder: Path, count: int, luck: random.Random) -> Part:
    """Perform *count* random edits and look after each group of them."""
    part = Part("random edits")
    app = QApplication.instance() or QApplication(["trust"])
    path = folder / "soak.ultraplan"
    first = demo_project(date.today())
    document = Document(ProjectFile.create(path, first))
    look_every = 250 if count > 2_000 else 50
    before = held()
    for number in range(count):
        edit = luck.choice(DEEDS)(document.project, luck)
        part.attempt(type(edit).__name__, lambda edit=edit: _performed(document, edit))
        if number % 10 == 9 and not _undoes_and_redoes(document, luck):
            part.faults.append(f"edit {number}: undo then redo is not the same")
        if number % look_every == look_every - 1:
            app.sendPostedEvents()
            part.faults += [f"edit {number}: {fault}" for fault in faults_of(document, path)]
        if number == int(count * WARM_UP):
            before = held()
    growth = before.growth_to(held())
    part.name = f"random edits, {growth}"
    # a short run is over before the undo list is full, so its memory says nothing
    if count >= 5_000 and growth.is_leak:
        part.faults.append(f"{growth} after the warm-up")
    document.close()
    return part


def _performed(document: Document, edit: Edit) -> bool:
    """Perform *edit* and return whether it is kept; PlanError if the document refuses it."""
    said: list[Message] = []
    document.refused.connect(said.append)
    document.perform(edit)
    document.refused.disconnect(said.append)
    if said:
        raise PlanError(said[0].template, *said[0].args)
    return document.is_kept


def _undoes_and_redoes(document: Document, luck: random.Random) -> bool:
    stack = document.undo_stack
    steps = luck.randint(1, min(6, stack.count())) if stack.count() else 0
    after = document.project
    for _ in range(steps):
        stack.undo()
    for _ in range(steps):
        stack.redo()
    return document.project == after


def faults_of(document: Document, path: Path) -> Iterator[str]:
    """Yield what is wrong with a document: its file, its figures, its sums."""
    with ProjectFile.look(path) as file:
        if file.project != document.project:
            yield "the file is not what is in memory"
    fresh = document.outlook
    for name in _PARTS:
        for place in _wrong_figures(getattr(fresh, name), name):
            if place not in _NO_FIGURE:
                yield f"{place} is no figure"
    again = Document(None, document.project).outlook
    for mine, new in zip(fresh.weeks, again.weeks, strict=True):
        if mine != new:
            yield "the weeks are not those reckoned anew"
            break


def _wrong_figures(value: object, name: str, depth: int = 0) -> Iterator[str]:
    if isinstance(value, float):
        if not math.isfinite(value):
            yield name
    elif isinstance(value, np.ndarray):
        if value.dtype.kind == "f" and not np.isfinite(value).all():
            yield name
    elif isinstance(value, tuple):
        for item in value:
            yield from _wrong_figures(item, name, depth + 1)
    elif isinstance(value, Value) and not isinstance(value, Project) and depth < 4:
        for field in value.__struct_fields__:
            yield from _wrong_figures(getattr(value, field), f"{name}.{field}", depth + 1)


# ---------------------------------------------------------------- what a hand may do

_ODD = (0.0, -1.0, 1e-9, 1e9, float("nan"), float("inf"))


def _figure(luck: random.Random, least: float, most: float) -> float:
    """Return a figure of that range, one time in twelve one that nobody should type."""
    return luck.choice(_ODD) if luck.random() < 1 / 12 else luck.uniform(least, most)


def _day(plan: Project, luck: random.Random) -> date:
    return plan.race.start.date() - timedelta(days=luck.randrange(-10, 170))


def _key(values: tuple[object, ...], luck: random.Random) -> str:
    return luck.choice(values).key if values else "none"  # type: ignore[attr-defined]


def _session(plan: Project, luck: random.Random) -> str:
    return _key(plan.block.sessions, luck)


def _add_or_remove_session(plan: Project, luck: random.Random) -> Edit:
    sessions = plan.block.sessions
    if len(sessions) > 160 or (sessions and luck.random() < 0.45):
        return block.RemoveSession(_session(plan, luck))
    seed = luck.choice(sessions)
    new = replace(seed, key=f"n{luck.getrandbits(40)}", day=_day(plan, luck), done=None)
    return block.AddSession(new)


def _change_session(plan: Project, luck: random.Random) -> Edit:
    session = luck.choice(plan.block.sessions)
    figures = _figure(luck, 1_000.0, 60_000.0), _figure(luck, 600.0, 30_000.0)
    return block.ChangeSession(replace(session, distance_m=figures[0], duration_s=figures[1]))


def _race(plan: Project, luck: random.Random) -> Edit:
    race = replace(
        plan.race,
        goal_s=_figure(luck, 40_000.0, 170_000.0),
        limit_s=luck.choice((None, _figure(luck, 60_000.0, 190_000.0))),
    )
    return ChangeRace(race)


def _add_or_remove_item(plan: Project, luck: random.Random) -> Edit:
    items = plan.fuel.items
    if len(items) > 120 or (items and luck.random() < 0.45):
        return fuel.RemoveItem(_key(items, luck))
    return fuel.AddItem(
        _key(plan.fuel.foods, luck), _figure(luck, 0.0, 90_000.0), _figure(luck, 0.5, 3.0)
    )


def _add_or_remove_station(plan: Project, luck: random.Random) -> Edit:
    assert plan.course is not None
    stations = plan.course.stations
    if len(stations) > 25 or (stations and luck.random() < 0.45):
        return course.RemoveStation(_key(stations, luck))
    at_m = _figure(luck, 0.0, plan.course.length_m)
    return course.AddStation(f"S{luck.randrange(99)}", at_m, None, _figure(luck, 0.0, 1_800.0))


def _station(plan: Project, luck: random.Random) -> Edit:
    assert plan.course is not None
    if not plan.course.stations:
        return project.WriteNotes("no station")
    station = luck.choice(plan.course.stations)
    cutoff_s = luck.choice((None, _figure(luck, 3_600.0, 150_000.0)))
    return course.ChangeStation(
        replace(station, cutoff_s=cutoff_s, stop_s=_figure(luck, 0.0, 3_600.0))
    )


def _section(plan: Project, luck: random.Random) -> str:
    assert plan.course is not None
    return _key(plan.course.sections, luck)


def _length_m(plan: Project) -> float:
    assert plan.course is not None
    return plan.course.length_m


DEEDS: tuple[Callable[[Project, random.Random], Edit], ...] = (
    lambda plan, luck: block.MoveSession(_session(plan, luck), _day(plan, luck)),
    lambda plan, luck: block.MarkMissed(_session(plan, luck)),
    _add_or_remove_session,
    _change_session,
    _race,
    _add_or_remove_item,
    lambda plan, luck: fuel.MoveItem(_key(plan.fuel.items, luck), _figure(luck, 0.0, 90_000.0)),
    lambda plan, luck: fuel.SetFuelRates(
        _figure(luck, 20.0, 100.0),
        _figure(luck, 200.0, 900.0),
        _figure(luck, 100.0, 1_200.0),
        _figure(luck, 600.0, 3_600.0),
        _figure(luck, 600.0, 3_600.0),
    ),
    _add_or_remove_station,
    _station,
    lambda plan, luck: course.SetSectionTarget(
        _section(plan, luck), luck.choice((None, _figure(luck, 600.0, 20_000.0)))
    ),
    lambda plan, luck: course.MoveSectionEnd(
        _section(plan, luck), _figure(luck, 0.0, _length_m(plan))
    ),
    lambda plan, luck: course.NoteHardStretch(_section(plan, luck), f"note {luck.random()}"),
    lambda plan, luck: project.SetFirstWeekday(luck.randrange(-1, 8)),
    lambda plan, luck: project.WriteNotes("x" * luck.randrange(2_000)),
)

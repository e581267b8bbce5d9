"""What the ledger says of an aid station: arrival, cutoff, stop, leg ahead, what waits there."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.legs import Leg, leg_at, light_in, surfaces_in
from ultraplanner_gui.engine.odds import IN_TWENTY, Chance
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_checks import ODDS_HOLD
from ultraplanner_gui.engine.station_figures import (
    StationFigures,
    StopMend,
    checks_at,
    station_figures,
    stop_mend,
)
from ultraplanner_gui.plan.course import AidStation, CutoffKind, StopKind, Surface
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Heads, Link, Row, Rule, Sentence, Title
from ultraplanner_gui.window.ledger_pairs import Pairs, each
from ultraplanner_gui.wording import course_names
from ultraplanner_gui.wording.words import NONE, Words

if TYPE_CHECKING:
    from ultraplanner_gui.engine.fuel_bags import BagPlan, Pack

#: What a click on a mend of a stop does: the station and its stop in seconds follow.
SET_STOP = "stop"
BETWEEN = ", "
MOST_SURFACES = 4


def station_rows(now: Outlook, before: Outlook, key: str, words: Words) -> tuple[Row, ...]:
    """Return the rows for the station *key*, none if there is no such station.

    What is packed is that of the plan as kept: it is settled once the station is put down.
    """
    figures = station_figures(now, key)
    if figures is None:
        return ()
    was = station_figures(before, key) or figures
    changes = before is not now
    pairs = Pairs(tr("Aid station"), changes, "aid station")
    _add_arrival(pairs, (before, now), (was, figures), words)
    _add_cutoff(pairs, (before, now), (was, figures), words)
    _add_stop(pairs, (before, now), (was, figures), words)
    ahead = Pairs(_ahead_title(now, figures), changes, "next leg")
    _add_leg(ahead, (before, now), (was, figures), words)
    rows: list[Row] = [_title(figures, words), *pairs.rows, Rule(), *ahead.rows]
    rows += _carry_rows((before, now), (was, figures), words)
    rows += check_rows(checks_at(now, key), words, None if changes else stop_mend(now, key))
    rows += _waiting_rows(before, figures.station, words)
    rows += _note_rows(figures.station)
    return tuple(rows)


def check_rows(checks: Sequence[Check], words: Words, mend: StopMend | None = None) -> list[Row]:
    """Return *checks* under a rule, and what would put them right."""
    rows: list[Row] = [Rule()] if checks else []
    rows += [
        CheckRow(c.state, words.say(c.text), words.say(c.source), topic=c.rule) for c in checks
    ]
    if mend is not None:
        target = f"{SET_STOP}:{mend.station}:{mend.stop_s:g}"
        rows.append(Link(words.say(mend.text), target, topic="planned stop"))
    return rows


def _title(figures: StationFigures, words: Words) -> Title:
    station = figures.station
    there = [_name(course_names.OFFERS[offer]) for offer in station.offers]
    return Title(station.name, BETWEEN.join(there), "what is there")


Both = tuple[StationFigures, StationFigures]
Looks = tuple[Outlook, Outlook]


def _add_arrival(pairs: Pairs, looks: Looks, both: Both, words: Words) -> None:
    at = each(lambda f: words.distance(f.station.at_m, 1), *both)
    pairs.add(tr("At"), "aid station", at)
    pairs.add(tr("Arrive"), "arrive", _clocks(looks, both, words, lambda f: f.arrive_s))
    pairs.add(tr("Window"), "arrival window", _windows(looks, both, words))


def _windows(looks: Looks, both: Both, words: Words) -> tuple[str, str]:
    said = []
    for look, figures in zip(looks, both, strict=True):
        low, high = (look.project.race.clock(s) for s in figures.window_s)
        other_day = low.date() != high.date()
        said.append(f"{words.clock(low)} – {words.clock(high, weekday=other_day)}")
    # Two windows side by side leave no room for either: the one in force is shown.
    return said[1], said[1]


def _add_cutoff(pairs: Pairs, looks: Looks, both: Both, words: Words) -> None:
    was, now = both
    station = now.station
    if station.cutoff_s is not None:
        is_out = station.cutoff_kind is CutoffKind.DEPARTURE
        label = tr("Cutoff, out by") if is_out else tr("Cutoff, in by")
        pairs.add(label, "cutoff", _clocks(looks, both, words, lambda f: f.station.cutoff_s))
    if now.to_cutoff_s is not None:
        both_s = each(words.duration, was.to_cutoff_s, now.to_cutoff_s)
        pairs.add(tr("To this cutoff"), "to this cutoff", both_s, now.to_cutoff_s < 0)
    if now.in_hand_s is not None:
        both_s = each(words.duration, was.in_hand_s, now.in_hand_s)
        pairs.add(tr("Time in hand"), "time in hand", both_s, now.in_hand_s < 0)
    add_odds(pairs, (was.chance, now.chance))


def add_odds(pairs: Pairs, chances: tuple[Chance | None, Chance | None]) -> None:
    """Add on how many days a cutoff is made, before and now; nothing without a chance now."""
    now = chances[1]
    if now is None:
        return
    said = tr("{0} of {1} days")
    days = [NONE if c is None else said.format(c.twentieths, IN_TWENTY) for c in chances]
    pairs.add(tr("Makes it, about"), "odds", (days[0], days[1]), now.twentieths < ODDS_HOLD)


def _add_stop(pairs: Pairs, looks: Looks, both: Both, words: Words) -> None:
    stop = each(lambda f: words.duration(f.station.stop_s), *both)
    station = both[1].station
    label = tr("Stop: {0}").format(_name(course_names.stops(station.stop_s)[station.stop_kind]))
    if station.stop_s > 0.0 and station.stop_kind is StopKind.PASS:
        label = tr("Stop")
    pairs.add(label, "planned stop", stop)
    pairs.add(tr("Leave"), "planned stop", _clocks(looks, both, words, lambda f: f.leave_s))
    if both[1].walk_leave_by_s is not None:
        by = _clocks(looks, both, words, lambda f: f.walk_leave_by_s)
        pairs.add(tr("Leave by, to walk in"), "walk-in limit", by)


def _ahead_title(now: Outlook, figures: StationFigures) -> str:
    leg = leg_at(now, figures.station.at_m)
    ends = leg.ends if leg is not None and leg.ends is not None else tr("Finish")
    return tr("Ahead, to {0}").format(ends)


def _add_leg(pairs: Pairs, looks: Looks, both: Both, words: Words) -> None:
    """Add the leg ahead: how long, how steep, when, in what light, over what ground."""
    legs = [leg_at(look, f.station.at_m) for look, f in zip(looks, both, strict=True)]
    now_leg = legs[1]
    if now_leg is None:
        return
    old_leg = legs[0] or now_leg
    pairs.add(
        tr("Length"), "next leg", each(lambda g: words.distance(g.length_m, 1), old_leg, now_leg)
    )
    heights = [
        _heights(look, leg, words) for look, leg in zip(looks, (old_leg, now_leg), strict=True)
    ]
    pairs.add(tr("Climb, drop"), "climb and drop", (heights[0], heights[1]))
    pairs.add(
        tr("Running time"),
        "running time",
        each(lambda g: words.duration(g.running_s), old_leg, now_leg),
    )
    race = looks[1].project.race
    leave, arrive = race.clock(now_leg.leave_s), race.clock(now_leg.arrive_s)
    other_day = leave.date() != arrive.date()
    when = f"{words.clock(leave)} – {words.clock(arrive, weekday=other_day)}"
    pairs.rows.append(Figure(tr("When"), when, topic="arrive"))
    _add_light(pairs, looks, (old_leg, now_leg), words)
    ground = surfaces_in(looks[1], now_leg)
    if len(ground) > 1 or (ground and ground[0][0] is not Surface.UNKNOWN):
        for surface, share in ground[:MOST_SURFACES]:
            said = words.percent(100.0 * share)
            label = tr("Underfoot: {0}").format(_name(course_names.SURFACES[surface]))
            pairs.rows.append(Figure(label, said, topic="surface"))


def _add_light(pairs: Pairs, looks: Looks, legs: tuple[Leg, Leg], words: Words) -> None:
    """Add how long the leg is run in each light there is in the race, those of no time too.

    So that rows do not come and go while a station is dragged into the night.
    """
    there = list(dict.fromkeys(span.kind for span in looks[1].light))
    was, now = dict.fromkeys(there, 0.0), dict.fromkeys(there, 0.0)
    for sums, look, leg in zip((was, now), looks, legs, strict=True):
        for kind, long_s in light_in(look, leg):
            sums[kind] = sums.get(kind, 0.0) + long_s
    labels = {"day": tr("By day"), "twilight": tr("In twilight"), "dark": tr("In the dark")}
    for light in now:
        pairs.add(labels[light], "light", each(words.duration, was.get(light, 0.0), now[light]))


def _heights(look: Outlook, leg: Leg, words: Words) -> str:
    if look.profile is None or not look.profile.has_elevation:
        return NONE
    climb_m, drop_m = look.profile.climb_drop(leg.start_m, leg.end_m)
    return words.climb_and_drop(climb_m, drop_m)


def _carry_rows(looks: Looks, both: Both, words: Words) -> list[Row]:
    """Return what to carry out, and what food and bottles weigh in the plan as kept."""
    now = _fuel_leg(looks[1], both[1].station)
    if now is None:
        return []
    was = _fuel_leg(looks[0], both[0].station) or now
    pairs = Pairs(tr("Carry out"), looks[0] is not looks[1], "carry")
    pairs.add(tr("Carbs, 15 % spare"), "carry", each(words.grams, was[0], now[0]))
    pairs.add(tr("Fluid, 15 % spare"), "carry", each(words.litres, was[1], now[1]))
    plan, key = _bags(looks[0]), both[0].station.key
    carry = next((c for c in plan.carries if c.station == key), None) if plan else None
    if carry is not None:
        said = words.kilograms(carry.weight_g / 1000.0)
        pairs.rows.append(Figure(tr("Food and bottles"), said, topic="carried"))
        if carry.short_ml > 0.0:
            pairs.rows.append(Sentence(_short(carry.short_ml, words), "carried"))
    return [Rule(), *pairs.rows]


def _waiting_rows(kept: Outlook, station: AidStation, words: Words) -> list[Row]:
    """Return what waits in the bag, with the crew and on the table, and who comes."""
    plan = _bags(kept)
    packs = [p for p in plan.packs if p.station == station.key] if plan else []
    rows = _bag_rows(kept.project, station, packs, words)
    return [*rows, *_crew_rows(kept.project, station)]


def _short(short_ml: float, words: Words) -> str:
    said = tr("Your bottles hold {0} less than you would drink to the next tap.")
    return said.format(words.litres(short_ml))


def _fuel_leg(kept: Outlook, station: AidStation) -> tuple[float, float] | None:
    """Return carbohydrate and fluid to carry out of *station*, g and mL."""
    if kept.fuel is None or kept.target is None:
        return None
    at_s = kept.target.departure_s(station.at_m)
    leg = next((g for g in kept.fuel.legs if g.start_s - 1.0 <= at_s < g.end_s), None)
    return None if leg is None else (leg.carry_carb_g, leg.carry_fluid_ml)


@lru_cache(maxsize=2)
def _bags(kept: Outlook) -> BagPlan | None:
    """Return what is packed where; reckoned once for an outlook, not on every move of a drag."""
    course, fuel, target = kept.project.course, kept.fuel, kept.target
    if course is None or fuel is None or target is None:
        return None
    from ultraplanner_gui.engine.fuel_bags import bag_plan

    return bag_plan(fuel.plan, course, kept.sections, target.finish_s)


def _bag_rows(
    project: Project, station: AidStation, packs: Sequence[Pack], words: Words
) -> list[Row]:
    from ultraplanner_gui.engine.fuel_bags import Source

    packed = {
        Source.BAG: tr("Drop bag"),
        Source.CREW: tr("From the crew"),
        Source.TABLE: tr("From the table"),
    }
    rows: list[Row] = []
    for pack in packs:
        counts = pack.servings if pack.source is Source.TABLE else pack.whole()
        if pack.source in packed and counts:
            rows += [Rule(), Heads(packed[pack.source], topic="bags")]
            rows += [_food_row(project.fuel, food, n, words) for food, n in counts]
    kit = [_name(course_names.KIT[one]) for one in station.kit]
    lines = project.logistics.bag(station.key)
    if kit:
        rows.append(Sentence(tr("To change: {0}.").format(BETWEEN.join(kit)), "bags"))
    if lines:
        rows.append(Sentence(tr("In the bag: {0}.").format(BETWEEN.join(lines)), "bags"))
    return rows


def _food_row(fuel: FuelPlan, food: str, servings: float, words: Words) -> Figure:
    return Figure(fuel.food(food).name, words.servings(servings), topic="bags")


def _crew_rows(project: Project, station: AidStation) -> list[Row]:
    visit, said = project.logistics.visit(station.key), []
    if visit.who:
        said.append(tr("Comes: {0}.").format(visit.who))
    if visit.hand_over:
        said.append(tr("Hands over: {0}.").format(BETWEEN.join(visit.hand_over)))
    if visit.ask:
        said.append(tr("Asks: {0}.").format(BETWEEN.join(visit.ask)))
    if station.access:
        said.append(tr("How to get there: {0}").format(station.access))
    if station.pacer_from:
        said.append(tr("A pacer may come along from here."))
    rows: list[Row] = [Rule(), Heads(tr("Crew"), topic="crew and lists")] if said else []
    return [*rows, *(Sentence(text, "crew and lists") for text in said)]


def _note_rows(station: AidStation) -> list[Row]:
    """Return the runner's own words on the place, and what happens if they stop there."""
    stop = station.if_stop
    said = [station.note] if station.note else []
    parts = [part for part in (stop.way_out, stop.fetched_by, stop.takes, stop.number) if part]
    if parts:
        said.append(tr("If you end here: {0}.").format(BETWEEN.join(parts)))
    rows: list[Row] = [Rule()] if said else []
    return [*rows, *(Sentence(text, "aid station") for text in said)]


def _clocks(
    looks: Looks, both: Both, words: Words, of: Callable[[StationFigures], float | None]
) -> tuple[str, str]:
    said = []
    for look, figures in zip(looks, both, strict=True):
        at_s = of(figures)
        said.append(NONE if at_s is None else words.clock(look.project.race.clock(at_s)))
    return said[0], said[1]


def _name(text: str) -> str:
    return QCoreApplication.translate(course_names.CONTEXT, text)

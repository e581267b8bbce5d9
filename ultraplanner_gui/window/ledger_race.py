"""What the ledger says of race day: a section, what to carry into it, a fuel item, the whole."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.engine.fuelling import FuelFigures
from ultraplanner_gui.engine.gait import walked_between, walked_m
from ultraplanner_gui.engine.glycogen import GlycogenLedger, ledger_of, left_g
from ultraplanner_gui.engine.lessons import lessons_of_food, lessons_of_section
from ultraplanner_gui.engine.mind import finishes
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_checks import dark_s
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.station_figures import end_checks, stop_mend
from ultraplanner_gui.plan.head import DayKind
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Heads, Link, Row, Rule, Sentence, Title
from ultraplanner_gui.window.ledger_lessons import lesson_rows
from ultraplanner_gui.window.ledger_pairs import Pairs, each
from ultraplanner_gui.window.ledger_station import add_odds, check_rows
from ultraplanner_gui.window.ledger_week import ACTION
from ultraplanner_gui.window.section_words import end_name, section_name
from ultraplanner_gui.wording.words import NONE, Words

MOST_CHECKS = 6


def section_rows(now: Outlook, before: Outlook, key: str, words: Words) -> tuple[Row, ...]:
    """Return the rows for the section *key*: target, arrival, cutoff, what to carry."""
    section = _section(now, key)
    if section is None:
        return race_rows(now, before, words)
    was = _section(before, key) or section
    index = now.sections.index(section)
    start = _end(now, now.sections[index - 1], words) if index else tr("Start")
    pairs = Pairs(tr("Section"), was is not section and was != section, "section")
    _add_ground(pairs, was, section, words)
    race, old_race = now.project.race, before.project.race
    arrival = words.clock(race.clock(section.arrive_s))
    arrived = words.clock(old_race.clock(was.arrive_s))
    pairs.add(tr("Arrive"), "arrive", (arrived, arrival))
    low, high = (race.clock(s) for s in section.window_s)
    window = f"{words.clock(low)} – {words.clock(high, weekday=low.date() != high.date())}"
    pairs.rows.append(
        Figure(
            tr("Window"),
            window,
            help_text=tr(
                "Where 8 of 10 arrivals fall in 10,000 simulated races; an estimate of our own."
            ),
            topic="arrival window",
        )
    )
    _add_curves(pairs, was, section, words)
    _add_walked(pairs, before, now, was, section, words)
    _add_cutoff(pairs, was, section, words)
    _add_latest(pairs, (before, now), (was, section), words)
    title = Title(
        tr("{0} to {1}").format(start, _end(now, section, words)),
        _own(now, key, words),
        "section",
    )
    learnt = lesson_rows(lessons_of_section(now, section))
    carry = _carry_rows(now, section.start_m, start, words)
    mend = stop_mend(now, section.station) if section.station and now is before else None
    return (title, *pairs.rows, *carry, *check_rows(end_checks(section), words, mend), *learnt)


def _end(now: Outlook, figures: SectionFigures, words: Words) -> str:
    """Return the name of the place where a section ends."""
    course = now.project.course
    assert course is not None
    return end_name(course.section(figures.key), figures, words, tr("Finish"))


def _own(now: Outlook, key: str, words: Words) -> str:
    """Return the runner's own name of a section, or which climb it is."""
    course, figures = now.project.course, _section(now, key)
    if course is None or figures is None:
        return ""
    return section_name(course.section(key), figures, words)


def item_rows(now: Outlook, key: str, words: Words) -> tuple[Row, ...]:
    """Return the rows for the fuel item *key*."""
    fuel = now.project.fuel
    item = next((i for i in now.items if i.key == key), None)
    if item is None or now.target is None:
        return ()
    food, n = fuel.food(item.food), item.servings
    clock = words.clock(now.project.race.clock(item.at_s))
    place = words.distance(now.target.distance_at(item.at_s), 1)
    return (
        Title(
            food.name,
            tr("{0} at {1}, {2}").format(words.duration(item.at_s), place, clock),
            "fuel item",
        ),
        Figure(tr("Servings"), words.servings(n), topic="servings"),
        Figure(tr("Carbs"), words.grams(food.carb_g * n), topic="net carbs"),
        Figure(tr("Fluid"), words.millilitres(food.fluid_ml * n), topic="fluid"),
        Figure(tr("Sodium"), words.milligrams(food.sodium_mg * n), topic="sodium"),
        Figure(tr("Caffeine"), words.milligrams(food.caffeine_mg * n), topic="caffeine"),
        *lesson_rows(lessons_of_food(now.project, food)),
        Rule(),
    )


def race_rows(now: Outlook, before: Outlook, words: Words) -> tuple[Row, ...]:
    """Return the rows for the race as a whole."""
    rows: list[Row] = [Title(tr("Race day"))]
    course = now.project.course
    if course is None or now.target is None or now.fuel is None:
        read = Link(tr("Open a course file"), f"{ACTION}:open_course", "race day")
        return (*rows, Sentence(tr("No course yet. Drop a GPX file on the window.")), read)
    if now.trouble is not None:
        rows.append(CheckRow(State.BREAKS, words.say(now.trouble), topic="fixed target"))
    rows += _race_checks(now, words)
    rows += _day_rows(now, before, words)
    stores = (ledger_of(before), ledger_of(now))
    hours = now.target.finish_s / 3600.0
    rows += _fuel_rows(now.fuel, before.fuel or now.fuel, stores, hours, words)
    rows += [Sentence(words.say(repair), "mended file") for repair in course.repairs]
    return tuple(rows)


def _section(outlook: Outlook, key: str) -> SectionFigures | None:
    return next((s for s in outlook.sections if s.key == key), None)


def _add_ground(pairs: Pairs, was: SectionFigures, section: SectionFigures, words: Words) -> None:
    length = words.distance(was.length_m, 1), words.distance(section.length_m, 1)
    pairs.add(tr("Length"), "section", length)
    heights = _heights(was, words), _heights(section, words)
    pairs.add(tr("Climb, drop"), "climb and drop", heights)
    running = each(words.duration, was.moving_s, section.moving_s)
    pairs.add(tr("Running time"), "running time", running)
    label = tr("Target, fixed") if section.is_fixed else tr("Target")
    topic = "fixed target" if section.is_fixed else "target"
    pairs.add(label, topic, (_pace(was, words), _pace(section, words)))


def _add_cutoff(pairs: Pairs, was: SectionFigures, section: SectionFigures, words: Words) -> None:
    if section.to_cutoff_s is not None:
        pairs.add(
            tr("To this cutoff, leaving") if section.cutoff_is_departure else tr("To this cutoff"),
            "to this cutoff",
            each(words.duration, was.to_cutoff_s, section.to_cutoff_s),
            section.to_cutoff_s < 0,
        )
    if section.in_hand_s is not None:
        pairs.add(
            tr("Time in hand"),
            "time in hand",
            each(words.duration, was.in_hand_s, section.in_hand_s),
            section.in_hand_s < 0,
            tr("So much later, every later cutoff is still met at planned speed."),
        )


def _add_curves(pairs: Pairs, was: SectionFigures, section: SectionFigures, words: Words) -> None:
    """Add what the forecast takes for the section, and how far that lies from the target."""

    def apart(figures: SectionFigures) -> str:
        more_s = figures.forecast_moving_s - figures.moving_s
        return (
            f"{words.duration(figures.forecast_moving_s)}, {words.signed(words.duration(more_s))}"
        )

    pairs.add(tr("Forecast takes"), "forecast", each(apart, was, section))


def _add_walked(
    pairs: Pairs,
    before: Outlook,
    now: Outlook,
    was: SectionFigures,
    section: SectionFigures,
    words: Words,
) -> None:
    """Add how much of the section is walked, and how fast."""
    both = [
        walked_between(look.walked, figures.start_m, figures.end_m)
        for look, figures in ((before, was), (now, section))
    ]
    far = [words.distance(far_m, 1) for far_m, _ in both]
    pairs.add(tr("At walking pace"), "walking", (far[0], far[1]))
    if both[1][0] >= 1.0:
        pace = [words.pace_with_unit(long_s / max(far_m, 1.0)) for far_m, long_s in both]
        pairs.add(tr("Pace there"), "walking", (pace[0], pace[1]))


def _add_latest(
    pairs: Pairs,
    looks: tuple[Outlook, Outlook],
    both: tuple[SectionFigures, SectionFigures],
    words: Words,
) -> None:
    """Add the odds and the latest times at the end of the section."""

    def clocks(of: Callable[[SectionFigures], float | None]) -> tuple[str, str]:
        was, now = (
            NONE
            if of(figures) is None
            else words.clock(look.project.race.clock(of(figures) or 0.0))
            for look, figures in zip(looks, both, strict=True)
        )
        return was, now

    section = both[1]
    if section.chance is not None:
        add_odds(pairs, (both[0].chance, section.chance))
    if section.leave_by_s is not None:
        help_text = tr("Leave later, and a cutoff is missed even at planned speed.")
        pairs.add(tr("Leave by"), "leave by", clocks(lambda s: s.leave_by_s), help_text=help_text)
    if section.walk_leave_by_s is not None:
        help_text = tr("Leave by then and the rest can be walked in, only if you are well.")
        walk = clocks(lambda s: s.walk_leave_by_s if s.can_walk_in else None)
        was, now = (tr("not from here") if text == NONE else text for text in walk)
        pairs.add(tr("Leave by, to walk in"), "walk-in limit", (was, now), help_text=help_text)


def _race_checks(now: Outlook, words: Words) -> list[Row]:
    return [
        CheckRow(c.state, words.say(c.text), words.say(c.source), topic=c.rule)
        for c in now.race_checks
    ]


def _day_rows(now: Outlook, before: Outlook, words: Words) -> list[Row]:
    """Return what there is to say of the whole day: dark, walking, where the rest is a walk."""
    race, old = now.race, before.race or now.race
    if race is None or old is None:
        return []
    pairs = Pairs(tr("The day"), before is not now, "race day")
    starts = (words.clock(before.project.race.start), words.clock(now.project.race.start))
    pairs.add(tr("Start"), "moving the start", starts)
    finishes = [
        words.clock(look.project.race.clock(figures.target.finish_s))
        for look, figures in ((before, old), (now, race))
    ]
    pairs.add(tr("Finish"), "finish aimed for", (finishes[0], finishes[1]))
    _add_days(pairs, before, now, words)
    pairs.add(tr("Dark"), "lamp", each(words.duration, dark_s(old.light), dark_s(race.light)))
    far = each(lambda look: words.distance(walked_m(look.walked), 1), before, now)
    pairs.add(tr("At walking pace"), "walking", far)
    if race.walk.cutoffs:
        from_m = each(lambda figures: words.distance(figures.walk_in_from_m, 1), old, race)
        pairs.add(tr("Rest can be walked in from"), "walk-in limit", from_m)
    if race.warmth is not None:
        low_c, high_c = (float(f(race.warmth.temperature_c)) for f in (min, max))
        said = f"{words.temperature_bare(low_c)} – {words.temperature(high_c)}"
        pairs.rows.append(Figure(tr("Air on your way"), said, topic="warmth"))
    return pairs.rows


def _add_days(pairs: Pairs, before: Outlook, now: Outlook, words: Words) -> None:
    """Add the finish of a good, a fair and a hard day."""
    was, reckoned = finishes(before), finishes(now)
    names = {
        DayKind.GOOD: tr("Good day"),
        DayKind.FAIR: tr("Fair day"),
        DayKind.HARD: tr("Hard day"),
    }
    for kind, finish_s in reckoned.items():
        both = each(words.duration, was.get(kind, finish_s), finish_s)
        pairs.add(names[kind], "three kinds of day", both)


def _carry_rows(now: Outlook, start_m: float, start: str, words: Words) -> list[Row]:
    """Return what to carry out of the place where the section begins."""
    if now.fuel is None or now.target is None:
        return []
    at_s = now.target.departure_s(start_m)
    leg = next((g for g in now.fuel.legs if g.start_s - 1.0 <= at_s < g.end_s), None)
    if leg is None:
        return []
    return [
        Rule(),
        Heads(tr("Carry out of {0}").format(start), topic="carry"),
        Figure(tr("Carbs, 15 % spare"), words.grams(leg.carry_carb_g), topic="carry"),
        Figure(tr("Fluid, 15 % spare"), words.litres(leg.carry_fluid_ml), topic="carry"),
        Figure(
            tr("Planned per hour"), words.grams_per_hour(leg.carb_g_per_h), topic="carbs per hour"
        ),
        Figure(tr("Sodium"), words.milligrams(leg.intake.sodium_mg), topic="sodium"),
        Figure(tr("Caffeine"), words.milligrams(leg.intake.caffeine_mg), topic="caffeine"),
    ]


Stores = tuple[GlycogenLedger | None, GlycogenLedger | None]


def _add_stores(pairs: Pairs, stores: Stores, words: Words) -> None:
    """Add the least glycogen of the race, before and now."""
    was, now = stores
    if now is None:
        return
    least = each(partial(_least, words), was or now, now)
    pairs.add(tr("Glycogen at least"), "glycogen", least)
    gut = each(words.grams, *(float(x.usual.gut_g.max()) for x in (was or now, now)))
    pairs.add(tr("In the gut at most"), "gut load", gut)


def _least(words: Words, ledger: GlycogenLedger) -> str:
    low, high = float(left_g(ledger.fast).min()), float(left_g(ledger.usual).min())
    return f"{words.number(low)} – {words.grams(high)}"


def _fuel_rows(
    fuel: FuelFigures, old: FuelFigures, stores: Stores, hours: float, words: Words
) -> list[Row]:
    pairs = Pairs(tr("Fuel"), old is not fuel, "fuel")
    was, now = old.total, fuel.total
    pairs.add(tr("Carbs"), "race carbs", each(words.grams, was.carb_g, now.carb_g))
    rates = each(words.grams_per_hour, was.carb_g / hours, now.carb_g / hours)
    pairs.add(tr("Per hour"), "carbs per hour", rates)
    pairs.add(tr("Fluid"), "fluid", each(words.litres, was.fluid_ml, now.fluid_ml))
    pairs.add(tr("Sodium"), "sodium", each(words.milligrams, was.sodium_mg, now.sodium_mg))
    caffeine = each(words.milligrams, was.caffeine_mg, now.caffeine_mg)
    pairs.add(tr("Caffeine"), "caffeine", caffeine)
    if was.caffeine_mg or now.caffeine_mg:
        most = each(words.milligrams, float(old.caffeine_mg.max()), float(fuel.caffeine_mg.max()))
        pairs.add(tr("In the body at most"), "caffeine in the body", most)
    salt = each(words.milligrams, old.sodium_mg_per_l, fuel.sodium_mg_per_l)
    pairs.add(tr("Sodium a litre"), "sodium", salt)
    pairs.add(
        tr("Energy"), "food energy", each(words.kilocalories, was.energy_kcal, now.energy_kcal)
    )
    _add_stores(pairs, stores, words)
    ledger = stores[1]
    found = (*(ledger.checks if ledger is not None else ()), *fuel.checks)
    # The gravest first: there is room for few.
    loose = [c for c in found if c.state is State.BREAKS]
    loose += [c for c in found if c.state is State.STRAINS]
    checks = [
        CheckRow(c.state, words.say(c.text), words.say(c.source), topic=c.rule) for c in loose
    ]
    return [*pairs.rows, *checks[:MOST_CHECKS]]


def _heights(section: SectionFigures, words: Words) -> str:
    return words.climb_and_drop(section.climb_m, section.drop_m)


def _pace(section: SectionFigures, words: Words) -> str:
    return words.pace_with_unit(section.pace_s_per_m)

"""What the ledger says of a session and its week, and of a section: before, and now."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.engine.checks import Check
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import WeekFigures
from ultraplanner_gui.plan.block import Session, weeks_to_go
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Heads, Row, Rule, Sentence, Title
from ultraplanner_gui.wording.words import Words

MOST_CHECKS = 6
_URGENCY = {State.BREAKS: 0, State.STRAINS: 1, State.HOLDS: 2}


def _tr(text: str) -> str:
    return QCoreApplication.translate("Ledger", text)


def session_rows(now: Outlook, before: Outlook, key: str, words: Words) -> tuple[Row, ...]:
    """Return the rows for the session *key*, its week and the checks it touches."""
    session = _session(now, key)
    if session is None:
        return build_up_rows(now, words)
    earlier = _session(before, key) or session
    rows: list[Row] = [Title(_capital(session.kind), _where(session, earlier, now, words))]
    rows += _session_figures(session, words)
    week = _week_of(now, session)
    if week is not None:
        rows += [Rule(), *week_rows(now, before, week, words)]
    rows += _checks(now, key, week, words)
    return tuple(rows)


def build_up_rows(now: Outlook, words: Words) -> tuple[Row, ...]:
    """Return the rows for the build-up as a whole."""
    rows: list[Row] = [
        Title(_tr("Build-up"), words.say(now.runway.reason) if now.runway is not None else "")
    ]
    if not now.project.block.sessions:
        rows.append(Sentence(_tr("No sessions yet. Build-up menu, Build the block.")))
        return tuple(rows)
    this = weeks_to_go(now.today, now.project.race.day, now.project.first_weekday)
    week = next((w for w in now.weeks if w.to_go == this), None)
    if week is not None:
        rows += week_rows(now, now, week, words)
    if now.asks is not None:
        peak = max((w.distance_m for w in now.weeks), default=0.0)
        longest = max((w.longest_m for w in now.weeks), default=0.0)
        rows += [
            Rule(),
            Heads(_tr("What the race asks"), _tr("asked"), _tr("planned")),
            _asked(_tr("Largest week"), now.asks.peak_week_m, peak, words),
            _asked(_tr("Longest run"), now.asks.longest_m, longest, words),
            Sentence(_tr("Ranges coaches use; no trial sets them.")),
        ]
    rows.append(Rule())
    rows += _loose_checks(now, words)
    rows.append(
        Sentence(_tr("This plan is arithmetic on what you typed. It does not examine you."))
    )
    return tuple(rows)


def week_rows(now: Outlook, before: Outlook, week: WeekFigures, words: Words) -> list[Row]:
    """Return the rows for one week, before and now."""
    was = next((w for w in before.weeks if w.start == week.start), week)
    changes = was is not week and was != week
    name = (
        _tr("Race week")
        if week.to_go == 0
        else _tr("{0} to go, {1} week").format(week.to_go, _tr(week.role))
    )
    over = week.ceiling_m is not None and week.distance_m > week.ceiling_m + 0.5
    rows: list[Row] = [Heads(name, _tr("before") if changes else "", _tr("now") if changes else "")]

    def figure(label: str, old: str, new: str, warns: bool = False, help_text: str = "") -> None:
        rows.append(Figure(label, new, old if changes else "", warns, help_text))

    figure(
        _tr("Distance"),
        words.distance(was.distance_m, 0),
        words.distance(week.distance_m, 0),
        over,
        _tr("Clay: more than 10 % above the last loading week. A custom, weakly supported."),
    )
    if week.last_loading_m:
        figure(
            _tr("Of last loading week"),
            words.percent(100 * was.distance_m / was.last_loading_m) if was.last_loading_m else "",
            words.percent(100 * week.distance_m / week.last_loading_m),
        )
    figure(_tr("Longest, share"), _share(was, words), _share(week, words))
    figure(_tr("On feet"), words.duration(was.on_feet_s), words.duration(week.on_feet_s))
    figure(_tr("Climb"), words.height(was.climb_m), words.height(week.climb_m))
    figure(_tr("Drop"), words.height(was.drop_m), words.height(week.drop_m))
    figure(_tr("Practice carbs"), words.grams(was.carb_g), words.grams(week.carb_g))
    figure(
        _tr("Load"),
        words.number(was.load),
        words.number(week.load),
        help_text=_tr(
            "Effort times minutes, added up (Foster 1998). Compare only with your own weeks."
        ),
    )
    return rows


def section_rows(now: Outlook, before: Outlook, key: str, words: Words) -> tuple[Row, ...]:
    """Return the rows for the section *key*: target, arrival, cutoff, what to carry."""
    section = _section(now, key)
    if section is None or now.profile is None:
        return race_rows(now, before, words)
    was = _section(before, key) or section
    race, old_race = now.project.race, before.project.race
    index = now.sections.index(section)
    start = now.sections[index - 1].name if index else _tr("Start")
    changes = was is not section and was != section
    rows: list[Row] = [
        Title(_tr("{0} to {1}").format(start or _tr("here"), section.name or _tr("Finish"))),
        Heads(_tr("Section"), _tr("before") if changes else "", _tr("now") if changes else ""),
    ]

    def figure(label: str, old: str, new: str, warns: bool = False, help_text: str = "") -> None:
        rows.append(Figure(label, new, old if changes else "", warns, help_text))

    figure(_tr("Length"), words.distance(was.length_m, 1), words.distance(section.length_m, 1))
    figure(
        _tr("Climb, drop"),
        f"{words.height_bare(was.climb_m)}, {words.height(was.drop_m)}",
        f"{words.height_bare(section.climb_m)}, {words.height(section.drop_m)}",
    )
    figure(_tr("Running time"), words.duration(was.moving_s), words.duration(section.moving_s))
    figure(
        _tr("Target, fixed") if section.is_fixed else _tr("Target"),
        f"{words.pace(was.pace_s_per_m)} {words.pace_unit[3:]}",
        f"{words.pace(section.pace_s_per_m)} {words.pace_unit[3:]}",
    )
    figure(
        _tr("Arrive"),
        words.clock(old_race.clock(was.arrive_s)),
        words.clock(race.clock(section.arrive_s)),
    )
    low, high = (race.clock(s) for s in section.window_s)
    rows.append(
        Figure(
            _tr("Window"),
            f"{words.clock(low)} – {words.clock(high, weekday=low.date() != high.date())}",
            help_text=_tr(
                "Where 8 of 10 arrivals fall, about the forecast; an estimate of our own."
            ),
        )
    )
    if section.to_cutoff_s is not None:
        figure(
            _tr("To this cutoff"),
            words.duration(was.to_cutoff_s),
            words.duration(section.to_cutoff_s),
            section.to_cutoff_s < 0,
        )
    if section.in_hand_s is not None:
        figure(
            _tr("Time in hand"),
            words.duration(was.in_hand_s),
            words.duration(section.in_hand_s),
            section.in_hand_s < 0,
            _tr("So much later, every later cutoff is still met at planned speed."),
        )
    rows += carry_rows(now, section.start_m, start, words)
    return tuple(rows)


def carry_rows(now: Outlook, start_m: float, start: str, words: Words) -> list[Row]:
    """Return what to carry out of the aid station before the section that begins at *start_m*."""
    if now.fuel is None or now.target is None:
        return []
    at_s = now.target.departure_s(start_m)
    leg = next((g for g in now.fuel.legs if g.start_s - 1.0 <= at_s < g.end_s), None)
    if leg is None:
        return []
    return [
        Rule(),
        Heads(_tr("Carry out of {0}").format(start or _tr("here")), "", ""),
        Figure(_tr("Carbs, 15 % spare"), words.grams(leg.carry_carb_g)),
        Figure(_tr("Fluid, 15 % spare"), words.litres(leg.carry_fluid_ml)),
        Figure(_tr("Planned per hour"), words.grams_per_hour(leg.carb_g_per_h)),
        Figure(_tr("Sodium"), words.milligrams(leg.intake.sodium_mg)),
        Figure(_tr("Caffeine"), words.milligrams(leg.intake.caffeine_mg)),
    ]


def item_rows(now: Outlook, key: str, words: Words) -> tuple[Row, ...]:
    """Return the rows for the fuel item *key*."""
    fuel = now.project.fuel
    item = next((i for i in fuel.items if i.key == key), None)
    if item is None or now.target is None:
        return ()
    food = fuel.food(item.food)
    n = item.servings
    clock = words.clock(now.project.race.clock(item.at_s))
    place = words.distance(now.target.distance_at(item.at_s), 1)
    return (
        Title(food.name, _tr("{0} at {1}, {2}").format(words.duration(item.at_s), place, clock)),
        Figure(_tr("Servings"), words.servings(n)),
        Figure(_tr("Carbs"), words.grams(food.carb_g * n)),
        Figure(_tr("Fluid"), words.millilitres(food.fluid_ml * n)),
        Figure(_tr("Sodium"), words.milligrams(food.sodium_mg * n)),
        Figure(_tr("Caffeine"), words.milligrams(food.caffeine_mg * n)),
        Rule(),
    )


def race_rows(now: Outlook, before: Outlook, words: Words) -> tuple[Row, ...]:
    """Return the rows for the race as a whole."""
    rows: list[Row] = [Title(_tr("Race day"))]
    if now.profile is None or now.target is None:
        rows.append(Sentence(_tr("No course yet. Drop a GPX file on the window.")))
        return tuple(rows)
    if now.trouble is not None:
        rows.append(CheckRow(State.BREAKS, words.say(now.trouble)))
    fuel, old = now.fuel, before.fuel
    if fuel is not None:
        changes = old is not None and old is not fuel
        rows.append(
            Heads(_tr("Fuel"), _tr("before") if changes else "", _tr("now") if changes else "")
        )
        hours = now.target.finish_s / 3600.0
        old_total = old.total if old is not None and changes else fuel.total
        for label, was, value in (
            (_tr("Carbs"), words.grams(old_total.carb_g), words.grams(fuel.total.carb_g)),
            (
                _tr("Per hour"),
                words.grams_per_hour(old_total.carb_g / hours),
                words.grams_per_hour(fuel.total.carb_g / hours),
            ),
            (_tr("Fluid"), words.litres(old_total.fluid_ml), words.litres(fuel.total.fluid_ml)),
            (
                _tr("Sodium"),
                words.milligrams(old_total.sodium_mg),
                words.milligrams(fuel.total.sodium_mg),
            ),
            (
                _tr("Caffeine"),
                words.milligrams(old_total.caffeine_mg),
                words.milligrams(fuel.total.caffeine_mg),
            ),
        ):
            rows.append(Figure(label, value, was if changes else ""))
        loose = [c for c in fuel.checks if c.state is not State.HOLDS]
        rows += [
            CheckRow(c.state, words.say(c.text), words.say(c.source)) for c in loose[:MOST_CHECKS]
        ]
    rows += [
        Sentence(words.say(repair))
        for repair in (now.project.course.repairs if now.project.course else ())
    ]
    return tuple(rows)


def _session(outlook: Outlook, key: str) -> Session | None:
    return next((s for s in outlook.project.block.sessions if s.key == key), None)


def _section(outlook: Outlook, key: str) -> SectionFigures | None:
    return next((s for s in outlook.sections if s.key == key), None)


def _week_of(outlook: Outlook, session: Session) -> WeekFigures | None:
    to_go = weeks_to_go(session.day, outlook.project.race.day, outlook.project.first_weekday)
    return next((w for w in outlook.weeks if w.to_go == to_go), None)


def _where(session: Session, earlier: Session, now: Outlook, words: Words) -> str:
    race_day, first = now.project.race.day, now.project.first_weekday

    def day(of: Session) -> str:
        to_go = weeks_to_go(of.day, race_day, first)
        return f"{words.day(of.day)}, " + (
            _tr("race week") if to_go == 0 else _tr("{0} to go").format(to_go)
        )

    if earlier.day != session.day:
        return _tr("from {0}, to {1}").format(day(earlier), day(session))
    return day(session)


def _session_figures(session: Session, words: Words) -> list[Row]:
    done = session.done
    rows: list[Row] = []
    if done is not None:
        rows.append(Heads("", _tr("planned"), _tr("done")))

    def figure(label: str, planned: str, real: str | None) -> None:
        rows.append(
            Figure(label, planned if real is None else real, "" if real is None else planned)
        )

    if session.kind.is_run:
        figure(
            _tr("Distance"),
            words.distance(session.distance_m, 1),
            done and words.distance(done.distance_m, 1),
        )
        figure(
            _tr("Climb, drop"),
            f"{words.height_bare(session.climb_m)}, {words.height(session.drop_m)}",
            done and f"{words.height_bare(done.climb_m)}, {words.height(done.drop_m)}",
        )
    figure(
        _tr("Time"), words.duration(session.duration_s), done and words.duration(done.duration_s)
    )
    figure(_tr("Effort"), words.effort(session.effort), done and words.effort(done.effort))
    if session.kind.is_run:
        rows.append(Figure(_tr("Ground"), _capital(session.ground)))
    if session.carb_g_per_h or (done and done.carb_g):
        rate = session.carb_g_per_h
        eaten = done and words.grams(done.carb_g)
        planned = words.grams(session.carb_g_per_h * session.duration_s / 3600.0)
        rows.append(Figure(_tr("Practice"), words.grams_per_hour(rate)))
        figure(_tr("Carbs"), planned, eaten)
    if session.missed:
        rows.append(Sentence(_tr("Missed. What is missed is not made up later.")))
    if session.note:
        rows.append(Sentence(session.note))
    return rows


def _loose_checks(now: Outlook, words: Words) -> list[Row]:
    """Return one row to each rule that does not hold, its worst place first."""
    loose: dict[str, list[Check]] = {}
    for check in now.checks:
        if check.state is not State.HOLDS:
            loose.setdefault(check.rule, []).append(check)
    if not loose:
        return [Heads(_tr("Every check holds"))]
    rows: list[Row] = [Heads(_tr("Checks that do not hold"))]
    for checks in sorted(loose.values(), key=lambda g: min(_URGENCY[c.state] for c in g)):
        worst = min(checks, key=lambda c: _URGENCY[c.state])
        row = _check_row(worst, words)
        others = len(checks) - 1
        if others:
            more = (
                _tr("{0} Likewise in {1} other places.")
                if others > 1
                else _tr("{0} Likewise once more.")
            )
            row = replace(row, text=more.format(row.text, others))
        rows.append(row)
    return rows


def _checks(now: Outlook, key: str, week: WeekFigures | None, words: Words) -> list[Row]:
    touched = [
        c
        for c in now.checks
        if key in c.sessions or (week is not None and not c.sessions and week.to_go in c.weeks)
    ]
    if not touched:
        return []
    touched.sort(key=lambda c: _URGENCY[c.state])
    return [
        Rule(),
        Heads(_tr("Checks it touches")),
        *(_check_row(c, words) for c in touched[:MOST_CHECKS]),
    ]


def _check_row(check: Check, words: Words) -> CheckRow:
    target = f"session:{check.sessions[0]}" if check.sessions else ""
    return CheckRow(check.state, words.say(check.text), words.say(check.source), target)


def _asked(label: str, asked_m: float, planned_m: float, words: Words) -> Figure:
    asked, planned = words.distance(asked_m, 0), words.distance(planned_m, 0)
    return Figure(label, planned, asked, shows_both=True)


def _share(week: WeekFigures, words: Words) -> str:
    return words.percent(100 * week.longest_m / week.distance_m) if week.distance_m else "–"


def _capital(text: str) -> str:
    shown = _tr(text)
    return shown[:1].upper() + shown[1:]

"""An invented race, its figures put down by hand so that the cards are tested alone."""

from datetime import date, datetime
from zoneinfo import ZoneInfo

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.fuelling import Eaten, FuelFigures, Intake, LegFuel
from ultraplanner_gui.engine.light import LightSpan
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan, Stop
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.cards import DEFAULT_CARDS
from ultraplanner_gui.plan.course import AidStation, Course, Line, Offer, sections_between
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Shape
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

H, KM = 3600.0, 1000.0
START = datetime(2027, 6, 19, 6, 0, tzinfo=ZoneInfo("Europe/London"))

# name, km, climb m, drop m, arrival h after the start, planned stop min, cutoff h
PLACES = (
    ("Mill Ford", 12.4, 410, 220, 2.0, 0, None),
    ("Col Hut", 25.1, 760, 180, 4 + 20 / 60, 0, None),
    ("Ash Green", 38.6, 310, 820, 6 + 52 / 60, 5, 8.5),
    ("Halfway Barn", 52.2, 520, 410, 9.6, 12, 11.25),
    ("Long Ridge", 68.3, 890, 610, 13 + 7 / 60, 0, 14.5),
    ("Old Quarry", 81.7, 240, 930, 16.0, 10, None),
    ("Weir", 92.0, 180, 410, 18 + 17 / 60, 0, 21.5),
    ("", 101.4, 920, 650, 20 + 16 / 60, 0, 24.0),
)
OFFERS = {"halfway-barn": (Offer.WATER, Offer.DROP_BAG, Offer.CREW), "weir": (Offer.CREW,)}

GEL = Food("gel", "Gel", "1 sachet", 32.0, 25.0, shape=Shape.GEL)
COFFEE = Food("coffee", "Coffee gel", "1 sachet", 32.0, 25.0, caffeine_mg=75.0, shape=Shape.GEL)
BANANA = Food("banana", "Banana", "1 fruit", 120.0, 25.0, shape=Shape.SOLID)
MIX = Food("mix", "Drink mix", "500 mL", 530.0, 30.0, fluid_ml=500.0, shape=Shape.DRINK)
FOODS = (GEL, COFFEE, BANANA, MIX)


def outlook(places=PLACES, fuelled=True, has_elevation=True, cards=DEFAULT_CARDS):
    """Return the outlook of the invented race through *places*."""
    course = _course(places)
    sections = _sections(places, course)
    fuel = _fuel_plan(sections) if fuelled else FuelPlan(foods=FOODS)
    finish_s = sections[-1].arrive_s
    limit_s = places[-1][6] and places[-1][6] * H
    race = Race("Fellside Hundred", START, finish_s, limit_s)
    project = Project(race, course, fuel=fuel, cards=cards)
    target = _target(sections)
    return Outlook(
        project=project,
        today=date(2027, 4, 1),
        profile=_profile(sections, has_elevation),
        forecast=target,
        target=target,
        sections=sections,
        light=_light(finish_s),
        fuel=_fuel_figures(fuel, sections),
        weeks=(),
        asks=None,
        runway=None,
        checks=(),
    )


def without_cutoffs():
    return outlook(tuple((*place[:6], None) for place in PLACES))


def many(count):
    """Return places enough for *count* sections."""
    return tuple(
        (f"Post {k}" if k < count else "", 3.3 * k, 100 + k, 90 + k, 0.66 * k, 0, 0.66 * k + 2.0)
        for k in range(1, count + 1)
    )


def _course(places):
    stations = tuple(
        AidStation(_key(name), name, km * KM, cutoff and cutoff * H, stop * 60.0, _offers(name))
        for name, km, _, _, _, stop, cutoff in places
        if name
    )
    points = np.linspace(54.0, 54.5, 5)
    line = Line(points, points - 56.0, np.full(5, 400.0))
    return Course(line, places[-1][1] * KM, stations, sections_between(stations))


def _key(name):
    return name.lower().replace(" ", "-")


def _offers(name):
    return OFFERS.get(_key(name), (Offer.WATER,))


def _sections(places, course):
    figures, start_m, leave_s = [], 0.0, 0.0
    margins = [None if p[6] is None else (p[6] - p[4]) * H for p in places]
    for k, (name, km, climb, drop, arrive, stop, cutoff) in enumerate(places):
        arrive_s, later = arrive * H, [m for m in margins[k:] if m is not None]
        figures.append(
            SectionFigures(
                key=course.sections[k].key,
                station=_key(name) or None,
                name=name,
                start_m=start_m,
                end_m=km * KM,
                climb_m=climb,
                drop_m=drop,
                moving_s=arrive_s - leave_s,
                arrive_s=arrive_s,
                leave_s=arrive_s + stop * 60.0,
                forecast_s=arrive_s,
                window_s=(arrive_s - 900.0, arrive_s + 900.0),
                cutoff_s=cutoff and cutoff * H,
                to_cutoff_s=margins[k],
                in_hand_s=min(later, default=None),
                is_fixed=False,
            )
        )
        start_m, leave_s = km * KM, arrive_s + stop * 60.0
    return tuple(figures)


def _target(sections):
    distance_m = np.array([0.0, *(s.end_m for s in sections)])
    elapsed_s = np.array([0.0, *(s.arrive_s for s in sections)])
    stops = tuple(Stop(s.end_m, s.leave_s - s.arrive_s) for s in sections if s.leave_s > s.arrive_s)
    return PacePlan(distance_m, elapsed_s, stops)


def _profile(sections, has_elevation):
    distance_m = np.linspace(0.0, sections[-1].end_m, 2001)
    x = distance_m / distance_m[-1]
    height = 560 + 220 * np.sin(9 * x + 0.6) + 130 * np.sin(23 * x) + 90 * np.cos(5 * x)
    elevation_m = height if has_elevation else np.zeros_like(height)
    flat = np.zeros_like(x)
    return Profile(
        distance_m=distance_m,
        elevation_m=elevation_m,
        gradient=flat,
        climb_m=flat,
        drop_m=flat,
        surface_cost=flat + 1.0,
        ascent_m=4230.0,
        descent_m=4230.0,
        has_elevation=has_elevation,
        latitude_deg=54.0,
        longitude_deg=-2.0,
        method=message("by hand"),
    )


def _light(finish_s):
    spans = (
        LightSpan(0.0, 15.7 * H, "day"),
        LightSpan(15.7 * H, 16.5 * H, "twilight"),
        LightSpan(16.5 * H, 21.5 * H, "dark"),
        LightSpan(21.5 * H, 60 * H, "day"),
    )
    return tuple(
        replace(span, end_s=min(span.end_s, finish_s)) for span in spans if span.start_s < finish_s
    )


def _fuel_plan(sections):
    items, at_s, number = [], 1800.0, 0
    while at_s < sections[-1].arrive_s - 900.0:
        food = "mix" if number % 4 == 3 else "banana" if number % 8 == 5 else "gel"
        food = "coffee" if number == 36 else food
        items.append(FuelItem(f"item-{number}", food, at_s))
        at_s, number = at_s + 1200.0, number + 1
    return FuelPlan(foods=FOODS, items=tuple(items))


def _fuel_figures(fuel, sections):
    legs, start_s = [], 0.0
    for section in sections:
        items = [i for i in fuel.items if start_s <= i.at_s < section.leave_s]
        counts = {}
        for item in items:
            counts[item.food] = counts.get(item.food, 0.0) + item.servings
        intake = _intake(fuel, counts)
        legs.append(
            LegFuel(
                section.station,
                section.name,
                start_s,
                section.leave_s,
                intake,
                tuple(counts.items()),
                tuple(i.key for i in items),
                1.15 * intake.carb_g,
                1.15 * intake.fluid_ml,
            )
        )
        start_s = section.leave_s
    total = Intake(sum(leg.intake.carb_g for leg in legs), sum(leg.intake.fluid_ml for leg in legs))
    none = np.zeros(2)
    eaten = Eaten(Runner(), start_s, none, none)
    return FuelFigures(
        *(total, (), tuple(legs), none, none, (50.0, 70.0), ()), fuel, none, none, none, eaten
    )


def _intake(fuel, counts):
    foods = [(fuel.food(key), servings) for key, servings in counts.items()]
    return Intake(
        carb_g=sum(f.carb_g * n for f, n in foods), fluid_ml=sum(f.fluid_ml * n for f, n in foods)
    )

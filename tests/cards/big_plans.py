"""Plans as different as cards have to carry: 30 stations and a sleep, 330 km, three stations."""

from datetime import date, datetime
from functools import cache
from zoneinfo import ZoneInfo

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.fuel_placing import place_by_clock
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    CutoffKind,
    IfStop,
    Kit,
    Line,
    Offer,
    StopKind,
    sections_between,
)
from ultraplanner_gui.plan.logistics import BagLine, CrewMember, Identity, IfThen, Logistics, Visit
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.science.geodesy import distance_along

TODAY = date(2027, 4, 5)
NAMES = (
    *("Alp", "Col du Lac Blanc", "Refuge Nord", "Pont", "Grand Plateau des Moulins", "Tal"),
    *("Hüttenweg", "Croix", "Fontaine", "Saint-Bernard-le-Haut"),
)
SHAPES = {"demo": None, "170 km": (30, 170, 46), "330 km": (45, 330, 120), "50 km": (3, 50, 7)}


@cache
def plan(name):
    """Return the outlook of one of SHAPES."""
    project = demo_project(TODAY)
    if SHAPES[name] is None:
        return derive(project, None, TODAY)
    count, km, hours = SHAPES[name]
    course = _course(count, km, hours)
    start = datetime(2027, 6, 19, 6 if count < 5 else 18, tzinfo=ZoneInfo("Europe/Paris"))
    race = Race(
        f"Around {name}",
        start,
        hours * 3600.0,
        hours * 1.15 * 3600.0,
        ("waterproof", "lamp"),
        "112",
    )
    project = replace(project, course=course, race=race, logistics=_logistics(course.stations))
    outlook = derive(project, None, TODAY)
    items = place_by_clock(project.fuel, outlook.target.finish_s)
    return derive(replace(project, fuel=project.fuel.with_items(items)), outlook, TODAY)


def _course(count, km, hours):
    steps = np.linspace(0.0, 1.0, 6000)
    height = 1200.0 + 600.0 * np.sin(steps * count * 1.3) + 250.0 * np.sin(steps * count * 4.1)
    line = Line(45.0 + steps * km / 111.2, np.full(6000, 7.0), height)
    length_m = float(distance_along(line.latitude_deg, line.longitude_deg)[-1])
    stations = tuple(_station(k, count, length_m, hours) for k in range(count))
    return Course(line, length_m, stations, sections_between(stations))


def _station(k, count, length_m, hours):
    share = (k + 1) / (count + 1)
    sleeps = count > 5 and k == count // 2
    bag, crew = k % 7 == 4 or count < 5, k % 3 == 1
    offers = (Offer.WATER, Offer.FOOD) + (Offer.DROP_BAG,) * bag + (Offer.CREW,) * crew
    name = NAMES[k % 10] + (f" {k // 10 + 1}" if k >= 10 else "")
    return AidStation(
        *(f"s{k}", name, share * length_m),
        cutoff_s=(share * hours * 1.1 + 1.5) * 3600.0 if k % 2 else None,
        stop_s=5400.0 if sleeps else 600.0 if k % 4 == 0 else 180.0,
        offers=offers,
        cutoff_kind=CutoffKind.DEPARTURE if k % 4 == 3 else CutoffKind.ARRIVAL,
        stop_kind=StopKind.SLEEP if sleeps else StopKind.EAT if k % 4 == 0 else StopKind.PASS,
        kit=(Kit.SOCKS, Kit.LAMP) if bag else (),
        pacer_from=sleeps,
        if_stop=IfStop("shuttle", "race bus", "2 h", "112") if k % 5 == 0 else IfStop(),
        access="Road to the car park, 400 m on foot" if crew else "",
    )


def _logistics(stations):
    return Logistics(
        Identity("Alex Example", "417", "1984", "Sam, 01632 960 001", ("No penicillin",)),
        (
            CrewMember("Sam", "01632 960 001", "drives"),
            CrewMember("Kim", "01632 960 002", "sleeps first"),
        ),
        (Visit(stations[1].key, "Sam", ("dry socks",), ("Eaten?",)),),
        "Kim",
        ("Warm enough?",),
        (BagLine(stations[0].key, "long tights"), BagLine("", "dry clothes")),
        ("cap",),
        ("tape",),
        (IfThen("I want to stop", "I walk on and ask again", stations[1].key),),
        ("Short steps.",),
    )

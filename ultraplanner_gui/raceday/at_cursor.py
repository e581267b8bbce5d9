"""What there is at one place of the race, in words: for the figures at the cursor."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.engine.light import Light
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import Surface
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.raceday.surface_looks import surface_name
from ultraplanner_gui.wording.words import Words

LIGHTS: dict[Light, str] = {
    "day": QT_TRANSLATE_NOOP("AtCursor", "day"),
    "twilight": QT_TRANSLATE_NOOP("AtCursor", "twilight"),
    "dark": QT_TRANSLATE_NOOP("AtCursor", "dark"),
}


def figures(outlook: Outlook, place_m: float, moment_s: float, words: Words) -> tuple[str, ...]:
    """Return distance, clock, race time, height, gradient, surface, light, air and fuel."""
    profile = outlook.profile
    said = [words.distance(place_m, 1), words.clock(outlook.project.race.clock(moment_s))]
    said.append(words.duration(moment_s))
    if profile is not None and profile.has_elevation:
        said.append(words.height(profile.elevation_at(place_m)))
        said.append(words.signed(words.percent(100.0 * gradient_at(profile, place_m))))
    surface = surface_at(outlook, place_m)
    if surface is not Surface.UNKNOWN:
        said.append(surface_name(surface))
    light = next((s.kind for s in outlook.light if s.start_s <= moment_s < s.end_s), None)
    if light is not None:
        said.append(QCoreApplication.translate("AtCursor", LIGHTS[light]))
    if outlook.race is not None and outlook.race.warmth is not None:
        said.append(words.temperature(outlook.race.warmth.at(place_m)[0]))
    fuel = outlook.fuel
    if fuel is not None and len(fuel.rolling_s):
        rate = float(np.interp(moment_s, fuel.rolling_s, fuel.rolling_g_per_h))
        said.append(words.grams_per_hour(rate))
    return tuple(said)


def surface_at(outlook: Outlook, place_m: float) -> Surface:
    """Return what is underfoot at a place, unknown where nobody has said."""
    course = outlook.project.course
    spans = course.surfaces if course is not None else ()
    found = (s.surface for s in spans if s.start_m <= place_m < s.end_m)
    return next(found, Surface.UNKNOWN)


def gradient_at(profile: Profile, place_m: float) -> float:
    """Return the gradient at a place."""
    k = int(np.searchsorted(profile.distance_m, place_m, side="right")) - 1
    return float(profile.gradient[min(max(k, 0), len(profile.gradient) - 1)])

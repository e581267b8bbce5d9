"""Make the demo's course: an invented hundred kilometres of hills, the same at every run.

Writes `resources/demo/course.gpx`. The ground is a sum of smooth hills; nothing of it is real.
"""

from __future__ import annotations

import math
import random
from itertools import pairwise
from pathlib import Path
from xml.sax.saxutils import escape

TARGET = Path(__file__).resolve().parents[1] / "resources" / "demo" / "course.gpx"
LENGTH_M = 101_400.0
STEP_M = 30.0
CENTRE = (54.62, -2.58)
BASE_M = 182.0
RELIEF = 1.35
M_PER_DEGREE = 111_320.0

#: Places and how high they lie: the profile passes through them.
KNOTS_KM_M = (
    (0.0, 182), (2.0, 190), (5.5, 410), (7.4, 352), (9.2, 505), (12.4, 238), (15.5, 420),
    (17.5, 395), (21.0, 655), (23.0, 560), (25.1, 742), (27.8, 590), (30.0, 640), (33.5, 330),
    (36.0, 385), (38.6, 176), (41.0, 205), (44.5, 470), (46.5, 405), (49.5, 560), (52.2, 348),
    (55.0, 520), (57.0, 455), (60.5, 760), (62.5, 655), (65.5, 840), (68.3, 735), (71.0, 815),
    (73.5, 610), (75.5, 665), (78.5, 395), (81.7, 452), (84.0, 560), (86.0, 430), (88.5, 470),
    (92.0, 198), (94.0, 290), (96.0, 215), (98.5, 300), (101.4, 182),
)  # fmt: skip
STATIONS_KM = (
    ("Mill Ford", 12.4), ("Col Hut", 25.1), ("Ash Green", 38.6), ("Halfway Barn", 52.2),
    ("Long Ridge", 68.3), ("Old Quarry", 81.7), ("Weir", 92.0),
)  # fmt: skip


def height_m(at_km: float) -> float:
    """Return the height at a place: smooth between the knots, with small bumps."""
    for (a_km, a_m), (b_km, b_m) in pairwise(KNOTS_KM_M):
        if at_km <= b_km:
            share = (at_km - a_km) / (b_km - a_km)
            smooth = a_m + (b_m - a_m) * (1 - math.cos(math.pi * share)) / 2
            return (
                BASE_M
                + RELIEF * (smooth - BASE_M)
                + sum(
                    size * math.sin(2 * math.pi * at_km / wave + phase)
                    for size, wave, phase in ((5.0, 1.31, 0.3), (2.6, 0.57, 1.9), (1.2, 0.23, 4.0))
                )
            )
    return KNOTS_KM_M[-1][1]


def line() -> list[tuple[float, float, float]]:
    """Return latitude, longitude and height of the points, a winding loop of the right length."""
    rng = random.Random(100)
    winds = [(rng.uniform(0.02, 0.075), k, rng.uniform(0, 2 * math.pi)) for k in range(2, 11)]
    count = 40_000

    def place(turn: float) -> tuple[float, float]:
        radius = 1.0 + sum(a * math.sin(k * turn + p) for a, k, p in winds)
        return radius * math.cos(turn), radius * math.sin(turn)

    loop = [place(2 * math.pi * k / count) for k in range(count + 1)]
    steps = [math.dist(a, b) for a, b in pairwise(loop)]
    scale = LENGTH_M / sum(steps)
    points, walked, due = [], 0.0, 0.0
    for (x, y), step in zip(loop, [*steps, 0.0], strict=True):
        if walked >= due - 1e-6 or step == 0.0:
            north, east = x * scale, y * scale
            latitude = CENTRE[0] + north / M_PER_DEGREE
            longitude = CENTRE[1] + east / (M_PER_DEGREE * math.cos(math.radians(CENTRE[0])))
            points.append((latitude, longitude, height_m(min(walked / 1000.0, LENGTH_M / 1000.0))))
            due += STEP_M
        walked += step * scale
    return points


def gpx(points: list[tuple[float, float, float]]) -> str:
    """Return the course as GPX 1.1 with the aid stations as waypoints."""
    rows = ['<?xml version="1.0" encoding="UTF-8"?>']
    rows.append(
        '<gpx version="1.1" creator="Ultraplanner" xmlns="http://www.topografix.com/GPX/1/1">'
    )
    rows.append("<metadata><name>Fellside Hundred</name></metadata>")
    for name, at_km in STATIONS_KM:
        lat, lon, ele = points[round(at_km * 1000.0 / STEP_M)]
        rows.append(f'<wpt lat="{lat:.6f}" lon="{lon:.6f}"><ele>{ele:.1f}</ele>')
        rows.append(f"<name>{escape(name)}</name></wpt>")
    rows.append("<trk><name>Fellside Hundred</name><trkseg>")
    rows += [f'<trkpt lat="{a:.6f}" lon="{o:.6f}"><ele>{e:.1f}</ele></trkpt>' for a, o, e in points]
    rows.append("</trkseg></trk></gpx>")
    return "\n".join(rows) + "\n"


if __name__ == "__main__":
    TARGET.parent.mkdir(parents=True, exist_ok=True)
    TARGET.write_text(gpx(line()), encoding="utf-8")
    print(TARGET)

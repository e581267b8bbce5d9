"""Three invented runners and their races."""

from datetime import date

from ultraplanner_gui.engine.block import BlockRequest
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.plan.runner import Level, Runner

HOUR = 3600.0

#: First 50 km from 30 km a week on three days; rolling ground, seven hours of daylight.
FIRST_50 = BlockRequest(
    date(2026, 11, 30),
    date(2027, 4, 24),
    50e3,
    900,
    900,
    7 * HOUR,
    Runner(
        weekly_m=30e3,
        longest_m=13e3,
        easy_mps=2.5,
        available_s=(0, 4500, 0, 5400, 0, 5 * HOUR, 0),
        carb_g_per_h=30,
    ),
)
#: 100 km with 4200 m of climb into the night, with a job and four days.
WORKING_100 = BlockRequest(
    date(2026, 11, 30),
    date(2027, 5, 22),
    100e3,
    4200,
    4200,
    17.5 * HOUR,
    Runner(
        weekly_m=48e3,
        longest_m=20e3,
        easy_mps=2.7,
        available_s=(0, 5400, 0, 5400, 0, 7 * HOUR, 3 * HOUR),
    ),
    dark_s=7 * HOUR,
    carb_target_g_per_h=80,
)
#: 161 km with 8000 m in the mountains, from a flat town with a treadmill.
FLAT_TOWN_160 = BlockRequest(
    date(2026, 11, 30),
    date(2027, 7, 3),
    161e3,
    8000,
    8000,
    33 * HOUR,
    Runner(
        weekly_m=60e3,
        longest_m=26e3,
        easy_mps=2.7,
        available_s=(0, 5400, 5400, 5400, 3600, 9 * HOUR, 4 * HOUR),
        level=Level.USUAL,
        carb_g_per_h=50,
        grounds=(
            GroundAtHand("mill", GroundKind.TREADMILL, "Treadmill", most_gradient=0.15),
            GroundAtHand("path", GroundKind.PATH, "Canal path", 10_000.0),
            GroundAtHand("car-park", GroundKind.RAMP, "Car park", 140.0, 9.0),
        ),
    ),
    dark_s=9 * HOUR,
    carb_target_g_per_h=90,
)
INVENTED = {
    "first 50 km": FIRST_50,
    "100 km with a job": WORKING_100,
    "100 miles from a flat town": FLAT_TOWN_160,
}

"""What a week comes to, in words: for the figures at the cursor."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.engine.weeks import WeekFigures
from ultraplanner_gui.wording.words import Words


def figures(week: WeekFigures, words: Words) -> tuple[str, ...]:
    """Return name, distance, longest run, climb and drop, and practice carbohydrate."""
    longest = QCoreApplication.translate("AtCursor", "longest {0}")
    climb = QCoreApplication.translate("AtCursor", "climb {0}, drop {1}")
    said = [
        kinds.week_name(week, words),
        words.distance(week.distance_m),
        longest.format(words.distance(week.longest_m)),
        climb.format(words.height(week.climb_m), words.height(week.drop_m)),
    ]
    if week.carb_g > 0.0:
        carbs = QCoreApplication.translate("AtCursor", "{0} practice carbs")
        said.append(carbs.format(words.grams(week.carb_g)))
    return tuple(said)

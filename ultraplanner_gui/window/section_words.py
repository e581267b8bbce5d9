"""What a section and the place where it ends are called."""

from __future__ import annotations

from ultraplanner_gui.engine.climbs import slope_name
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import Section, Slope
from ultraplanner_gui.wording.words import Words


def section_name(section: Section, figures: SectionFigures, words: Words) -> str:
    """Return the runner's own name of a section, else which climb it is; empty for neither."""
    if section.name or section.slope is None:
        return section.name
    height_m = figures.climb_m if section.slope is Slope.CLIMB else figures.drop_m
    return words.say(slope_name(section.slope, section.number, figures.length_m, height_m))


def end_name(section: Section, figures: SectionFigures, words: Words, finish: str) -> str:
    """Return the aid station a section ends at, *finish*, or how far it is from the start."""
    if section.station is None and section.end_m is None:
        return finish
    return figures.name or words.distance(figures.end_m, 1)

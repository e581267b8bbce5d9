"""Surfaces along a course: painted, merged, and what each costs on this course."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from ultraplanner_gui.plan.course import Course, Surface, SurfaceFactors, SurfaceSpan
from ultraplanner_gui.science.surface import COST_FACTOR, DESCENT_FACTOR


def surface_factors_of(course: Course) -> dict[Surface, SurfaceFactors]:
    """Return cost and descent factor of every surface: the user's where set, else the usual."""
    usual = {s: SurfaceFactors(s, COST_FACTOR[s], DESCENT_FACTOR[s]) for s in Surface}
    return usual | {factors.surface: factors for factors in course.surface_factors}


def painted(
    spans: Iterable[SurfaceSpan], start_m: float, end_m: float, surface: Surface
) -> tuple[SurfaceSpan, ...]:
    """Return *spans* with *surface* between two places; unknown erases what was there."""
    kept: list[SurfaceSpan] = []
    for span in spans:
        if span.start_m < start_m:
            kept.append(replace(span, end_m=min(span.end_m, start_m)))
        if span.end_m > end_m:
            kept.append(replace(span, start_m=max(span.start_m, end_m)))
    return merged((*kept, SurfaceSpan(start_m, end_m, surface)))


def merged(spans: Iterable[SurfaceSpan]) -> tuple[SurfaceSpan, ...]:
    """Return *spans* in course order, neighbours of one surface as one, unknown and empty left
    out.
    """
    result: list[SurfaceSpan] = []
    for span in sorted(spans, key=lambda s: s.start_m):
        if span.surface is Surface.UNKNOWN or span.end_m <= span.start_m:
            continue
        if result and result[-1].surface is span.surface and result[-1].end_m >= span.start_m:
            result[-1] = replace(result[-1], end_m=max(result[-1].end_m, span.end_m))
        else:
            result.append(span)
    return tuple(result)


def surface_at(course: Course, at_m: float) -> Surface:
    """Return what is underfoot at a place; unknown where nobody said."""
    for span in course.surfaces:
        if span.start_m <= at_m < span.end_m:
            return span.surface
    return Surface.UNKNOWN

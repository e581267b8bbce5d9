"""Edits of what is underfoot: surfaces painted on stretches, and what each costs."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import check_factors, course_of
from ultraplanner_gui.engine.surface_spans import painted
from ultraplanner_gui.plan.course import Surface, SurfaceFactors
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

SHORTEST_SPAN_M = 10.0


class PaintSurface(Value, frozen=True):
    """The user said what is underfoot between two places; unknown erases it."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Paint surface")
    start_m: float
    end_m: float
    surface: Surface
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        if not 0.0 <= self.start_m < self.end_m <= course.length_m:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A surface lies between the start and the finish.")
            )
        if self.end_m - self.start_m < SHORTEST_SPAN_M:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A stretch of surface is 10 m or longer."))
        surfaces = painted(course.surfaces, self.start_m, self.end_m, self.surface)
        if surfaces == course.surfaces:
            return project
        return replace(project, course=replace(course, surfaces=surfaces))


class SetSurfaceFactors(Value, frozen=True):
    """The user set what a surface costs and how fast one comes down on it; None: as is usual."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set surface factors")
    surface: Surface
    cost: float | None
    descent: float | None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        before = {f.surface: f for f in course.surface_factors}
        after = dict(before)
        after.pop(self.surface, None)
        if self.cost is not None and self.descent is not None:
            factors = SurfaceFactors(self.surface, self.cost, self.descent)
            check_factors(factors)
            after = {f: before.get(f) or factors for f in (*before, self.surface)}
            after[self.surface] = factors
        elif (self.cost, self.descent) != (None, None):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "Give both factors of a surface, or neither.")
            )
        if after == before:
            return project
        return replace(project, course=replace(course, surface_factors=tuple(after.values())))

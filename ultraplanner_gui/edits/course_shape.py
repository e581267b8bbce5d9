"""Edits of the line itself: trimmed, turned round, run in laps, joined, stretched, pinned."""

from __future__ import annotations

import math
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import (
    HIGHEST_CLIMB_M,
    LONGEST_COURSE_M,
    check_course,
    course_of,
)
from ultraplanner_gui.engine.course_lines import LONGEST_BRIDGE_M, way_between
from ultraplanner_gui.engine.course_scale import (
    knots_of,
    line_length_m,
    line_place,
    rescaled,
)
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.engine.reread import carried_over
from ultraplanner_gui.engine.reshape import in_a_row, min_bridge, trimmed, turned_round
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    Pin,
    Repair,
    RepairKind,
    fresh_key,
)
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.elevation import M_PER_FOOT

SHORTEST_COURSE_M = 1_000.0
MOST_LAPS = 100
MOST_POINTS = 1_000_000
#: OWN: stretched or squeezed further than that, a figure is mistyped or the line another one.
MOST_STRETCH = 3.0
#: OWN: as far off as heights in feet that nobody noticed, and a little more.
MOST_HEIGHT_STRETCH = 4.0

LAP = QT_TRANSLATE_NOOP("Edit", "{0} (lap {1})")
WAY_BACK = QT_TRANSLATE_NOOP("Edit", "{0} (way back)")


class TrimCourse(Value, frozen=True):
    """The user cut off what lies before one place and after another.

    Cutoffs of the stations that are left stay: they are times of the race, whose start the user
    can move. Official climb and drop become those of the part that is left.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Trim course")
    start_m: float
    end_m: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        if not 0.0 <= self.start_m < self.end_m <= course.length_m:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "Trim the course between its start and its finish.")
            )
        if self.end_m - self.start_m < SHORTEST_COURSE_M:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "Leave at least 1 km of the course."))
        if (self.start_m, self.end_m) == (0.0, course.length_m):
            return project
        return replace(project, course=_with_heights_of_part(course, self.start_m, self.end_m))


class ReverseCourse(Value, frozen=True):
    """The user turned the course round.

    Cutoffs and fixed targets go, for they were those of the other direction.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Reverse course, cutoffs dropped")
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        return replace(project, course=turned_round(course_of(project)))


class RunLaps(Value, frozen=True):
    """The user made laps of the course.

    Stations come by in every lap, from the second on under the name *names* makes of theirs and
    the lap, without cutoffs: those are for the user to say. *base* names a station at the end
    of each lap but the last; empty for none.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Run course in laps")
    laps: int
    base: str = ""
    names: str = LAP
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        lap = course_of(project)
        if not 1 <= self.laps <= MOST_LAPS:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A course has between 1 and 100 laps."))
        if self.laps == 1:
            return project
        way_m = way_between(lap.line, lap.line)
        if way_m > LONGEST_BRIDGE_M:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit", "The line ends {0} from its start, so it is no lap. Go out and back."
                ),
                Quantity(way_m, "m"),
            )
        _check_size(len(lap.line) * self.laps, lap.length_m * self.laps)
        later = [_again(lap, self.names, n) for n in range(2, self.laps + 1)]
        course = in_a_row([lap, *later])
        if self.base.strip():
            step_m = lap.length_m + min_bridge(lap, lap)
            for n in range(1, self.laps):
                name = _named(self.names, self.base.strip(), n)
                course = _with_station(course, name, n * step_m - min_bridge(lap, lap))
        return replace(project, course=course)


class GoOutAndBack(Value, frozen=True):
    """The user made a course of it that goes to the end of the line and the same way back.

    Stations come by twice, on the way back under the name *names* makes of theirs and without
    a cutoff. *turn* names a station where it turns; empty for none.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Go out and back")
    turn: str = ""
    names: str = WAY_BACK
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        out = course_of(project)
        _check_size(2 * len(out.line), 2 * out.length_m)
        course = in_a_row([out, _again(turned_round(out), self.names, 2)])
        if self.turn.strip():
            course = _with_station(course, self.turn.strip(), out.length_m)
        return replace(project, course=course)


class JoinCourse(Value, frozen=True):
    """The user put another leg behind the course.

    Its stations lose their cutoffs and its sections their targets, for they counted from its
    own start.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Put another leg behind")
    leg: Course
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        check_course(self.leg)
        _check_size(len(course.line) + len(self.leg.line), course.length_m + self.leg.length_m)
        return replace(project, course=in_a_row([course, _again(self.leg, "{0}", 2)]))


class SetOfficialDistance(Value, frozen=True):
    """The user said how long the course is, or that the line counts as measured (None).

    The line is stretched evenly, between pins as they say; all that lies along it stays on its
    ground.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set official distance")
    length_m: float | None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        if self.length_m is not None and not 0.0 < self.length_m <= LONGEST_COURSE_M:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A course is at most 2,000 km long."))
        if self.length_m == course.official_m:
            return project
        length_m = self.length_m or line_length_m(course.line)
        _check_pins(course, length_m, course.pins)
        changed = rescaled(course, length_m, self.length_m, course.pins)
        return replace(project, course=course.checked(changed))


class SetOfficialHeights(Value, frozen=True):
    """The user said how much climb and drop the course has; None: as the heights of the line.

    The heights are scaled so that their climb and drop come to these.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set official climb and drop")
    climb_m: float | None
    drop_m: float | None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        for height_m in (self.climb_m, self.drop_m):
            if height_m is not None and not 0.0 <= height_m <= HIGHEST_CLIMB_M:
                raise PlanError(
                    QT_TRANSLATE_NOOP(
                        "Edit", "Official climb and drop lie between 0 and 100,000 m."
                    )
                )
        if (self.climb_m, self.drop_m) == (course.official_climb_m, course.official_drop_m):
            return project
        measured = build_profile(replace(course, official_climb_m=None, official_drop_m=None))
        if measured.has_elevation:
            _check_height(self.climb_m, measured.ascent_m)
            _check_height(self.drop_m, measured.descent_m)
        changed = replace(course, official_climb_m=self.climb_m, official_drop_m=self.drop_m)
        return replace(project, course=changed)


class TakeHeightsAsFeet(Value, frozen=True):
    """The user said that the heights of the file are in feet, where the reader did not notice."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Take heights as feet")
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        if not course.line.has_elevation:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "The line has no heights to be in feet."))
        if any(isinstance(r, Repair) and r.kind is RepairKind.FEET for r in course.repairs):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The heights were made metres already when it was read.")
            )
        line = replace(course.line, elevation_m=course.line.elevation_m * M_PER_FOOT)
        return replace(project, course=replace(course, line=line))


class PinStation(Value, frozen=True):
    """The user said how far from the start a station lies that stays where it is on the ground,
    as the handbook has it; None frees it. The line is stretched before and after it.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Pin aid station to its distance")
    station: str
    at_m: float | None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        station = course.station(self.station)
        if self.at_m is None and not course.is_pinned(station):
            return project
        if self.at_m is not None and self.at_m == station.at_m and course.is_pinned(station):
            return project
        pins = [pin for pin in course.pins if pin.at_m != station.at_m]
        if self.at_m is not None:
            if not 0.0 < self.at_m < course.length_m:
                raise PlanError(
                    QT_TRANSLATE_NOOP("Plan", "{0} must lie between the start and the finish."),
                    station.name,
                )
            pins.append(Pin(self.at_m, line_place(course, station.at_m)))
        ordered = tuple(sorted(pins, key=lambda pin: pin.line_m))
        _check_pins(course, course.length_m, ordered)
        changed = rescaled(course, course.length_m, course.official_m, ordered)
        return replace(project, course=course.checked(_exactly_at(changed, station, self.at_m)))


class ReadAgain(Value, frozen=True):
    """The user had the file of the course read another way: other repairs, or another line.

    What the user has said stays: where the line is as long as before all of it, otherwise what
    has its point of the file in the other line too (see `engine.reread`). Of a course without a
    reading nothing stays.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Read course another way")
    course: Course
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        before, read = course_of(project), self.course
        check_course(read)
        if read == before:
            return project
        same_m = math.isclose(
            line_length_m(before.line), line_length_m(read.line), rel_tol=0.0, abs_tol=1.0
        )
        was, now = before.reading, read.reading
        if was is None or now is None:
            return replace(project, course=read)
        if same_m:
            read = replace(
                before,
                line=read.line,
                length_m=before.official_m or read.length_m,
                repairs=read.repairs,
                reading=now,
            )
        elif was.file == now.file:
            read = carried_over(before, read)
        check_course(read)
        return replace(project, course=read)


def _with_heights_of_part(course: Course, start_m: float, end_m: float) -> Course:
    part = trimmed(course, start_m, end_m)
    if course.official_climb_m is None and course.official_drop_m is None:
        return part
    climb_m, drop_m = build_profile(course).climb_drop(start_m, end_m)
    return replace(
        part,
        official_climb_m=None if course.official_climb_m is None else climb_m,
        official_drop_m=None if course.official_drop_m is None else drop_m,
    )


def _again(course: Course, names: str, number: int) -> Course:
    """Return *course* as it is run later: other names, no cutoffs, no targets."""
    return replace(
        course,
        stations=tuple(
            replace(s, name=_named(names, s.name, number), cutoff_s=None) for s in course.stations
        ),
        sections=tuple(
            replace(s, name=_named(names, s.name, number) if s.name else "", target_s=None)
            for s in course.sections
        ),
    )


def _named(names: str, name: str, number: int) -> str:
    return names.replace("{0}", name).replace("{1}", str(number))


def _with_station(course: Course, name: str, at_m: float) -> Course:
    """Return *course* with a station where a section ends."""
    key = fresh_key("station", {s.key for s in course.stations})
    station = AidStation(key, name, at_m)
    stations = tuple(sorted((*course.stations, station), key=lambda s: s.at_m))
    sections = tuple(
        replace(s, station=key, end_m=None)
        if s.end_m is not None and abs(s.end_m - at_m) < 1.0
        else s
        for s in course.sections
    )
    return replace(course, stations=stations, sections=sections)


def _exactly_at(course: Course, station: AidStation, at_m: float | None) -> Course:
    """Return *course* with a pinned station at its very pin, which rounding may have missed."""
    if at_m is None:
        return course
    stations = tuple(replace(s, at_m=at_m) if s.key == station.key else s for s in course.stations)
    return replace(course, stations=stations)


def _check_size(points: int, length_m: float) -> None:
    if points > MOST_POINTS or length_m > LONGEST_COURSE_M:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "That makes more than 2,000 km or 1,000,000 points. Make it shorter."
            )
        )


def _check_height(official_m: float | None, measured_m: float) -> None:
    if official_m is None or max(official_m, measured_m) < 50.0:
        return
    most = MOST_HEIGHT_STRETCH
    if not measured_m / most <= official_m <= measured_m * most:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "{0} is too far from the {1} of the line. Check the figure and its unit."
            ),
            Quantity(official_m, "height_m"),
            Quantity(measured_m, "height_m"),
        )


def _check_pins(course: Course, length_m: float, pins: tuple[Pin, ...]) -> None:
    """Raise PlanError if a piece between pins is stretched or squeezed more than threefold."""
    line_m, at_m = knots_of(line_length_m(course.line), length_m, pins)
    for n in range(1, len(at_m)):
        place_m, run_m = float(at_m[n] - at_m[n - 1]), float(line_m[n] - line_m[n - 1])
        if run_m / MOST_STRETCH <= place_m <= run_m * MOST_STRETCH and run_m > 0.0:
            continue
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit",
                "Between {0} and {1} the line would be stretched or squeezed more than "
                "threefold. Check the distances.",
            ),
            Quantity(float(at_m[n - 1]), "m"),
            Quantity(float(at_m[n]), "m"),
        )

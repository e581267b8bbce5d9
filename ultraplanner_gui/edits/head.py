"""The head: worries, three kinds of day, lines for hard hours; and kit that is ticked."""

from __future__ import annotations

import math
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.logistics import LONGEST_LINE, MOST_LINES
from ultraplanner_gui.plan.head import Head
from ultraplanner_gui.plan.logistics import IfThen, KitPlace, OwnDay, PackedKit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

LONGEST_FINISH_S = 240.0 * 3600.0
MOST_DAYS_BEFORE = 30
DAY_S = 86_400.0


class ChangeHead(Value, frozen=True):
    """The user changed what is for the head; lines for hard hours go with it."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change what is for the head")
    head: Head
    if_then: tuple[IfThen, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        head = self.head
        texts = [text for w in head.worries for text in (w.text, w.remedy)]
        texts += [*head.pictures, *(goal.text for goal in head.goals)]
        texts += [text for line in self.if_then for text in (line.when, line.then)]
        _check_lines(texts, max(len(head.worries), len(head.pictures), len(self.if_then)))
        for goal in head.goals:
            finish_s = goal.finish_s
            if finish_s is not None and not 0.0 < finish_s <= LONGEST_FINISH_S:
                raise PlanError(
                    QT_TRANSLATE_NOOP("Edit", "A finish lies between 1 min and 240 hours.")
                )
        logistics = project.logistics
        if self.if_then != logistics.if_then:
            logistics = replace(logistics, if_then=self.if_then)
        if head == project.head and logistics is project.logistics:
            return project
        return replace(
            project,
            head=project.head if head == project.head else head,
            logistics=logistics,
        )


class TickKit(Value, frozen=True):
    """The user ticked a piece of kit and said where it is, or took the tick away."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Tick kit")
    item: str
    is_packed: bool
    place: KitPlace = KitPlace.VEST
    station: str = ""
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if self.item not in project.race.mandatory_kit:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "{0} is not on the list of mandatory kit."),
                self.item[:60],
            )
        course = project.course
        stations = course.stations if course is not None else ()
        if self.station and all(station.key != self.station for station in stations):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "That aid station is no longer on the course.")
            )
        others = tuple(p for p in project.logistics.packed if p.item != self.item)
        mine = (PackedKit(self.item, self.place, self.station),) if self.is_packed else ()
        order = {item: number for number, item in enumerate(project.race.mandatory_kit)}
        packed = tuple(sorted((*others, *mine), key=lambda p: order.get(p.item, len(order))))
        if packed == project.logistics.packed:
            return project
        return replace(project, logistics=replace(project.logistics, packed=packed))


class SetOwnDays(Value, frozen=True):
    """The user wrote lines of their own for the days before the race."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change own lines of the countdown")
    days: tuple[OwnDay, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        _check_lines([day.text for day in self.days], len(self.days))
        for day in self.days:
            is_sound = 0 <= day.days_before <= MOST_DAYS_BEFORE and 0.0 <= day.at_s < DAY_S
            if not is_sound or not math.isfinite(day.at_s):
                raise PlanError(
                    QT_TRANSLATE_NOOP(
                        "Edit", "A line lies 0 to {0} days before the race, at a time of day."
                    ),
                    MOST_DAYS_BEFORE,
                )
        ordered = tuple(sorted(self.days, key=lambda d: (-d.days_before, d.at_s, d.text)))
        if ordered == project.logistics.own_days:
            return project
        return replace(project, logistics=replace(project.logistics, own_days=ordered))


def _check_lines(texts: list[str], count: int) -> None:
    if any(len(text) > LONGEST_LINE for text in texts):
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A line has at most {0} letters. Make two of it."),
            LONGEST_LINE,
        )
    if count > MOST_LINES:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "A list has at most {0} lines."), MOST_LINES)

"""From the form of a course table to a new plan: proposals, the place of its light, its limit."""

from __future__ import annotations

from datetime import date, datetime, tzinfo
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QObject

from ultraplanner_gui.desk.zones import local_zone, place_of
from ultraplanner_gui.engine.first_plan import likely_finish_s, likely_start
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.exchange.course_rows import (
    NOWHERE,
    CourseTable,
    Place,
    limit_of,
    proposed_start,
)
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.window.plan_form import Answers

if TYPE_CHECKING:
    from ultraplanner_gui.window.course_table_form import CourseTableForm
    from ultraplanner_gui.window.deeds import Deeds
    from ultraplanner_gui.window.main_window import MainWindow


class TableCourse(QObject):
    """Makes new plans from course tables; what was typed stays in the form until a plan is made."""

    def __init__(self, window: MainWindow, deeds: Deeds) -> None:
        super().__init__(deeds)
        self._window, self._deeds = window, deeds
        self._form: CourseTableForm | None = None

    @property
    def form(self) -> CourseTableForm:
        """The form, made when it is first asked for."""
        # Most sittings need no table: what reads and shows one stays out of the start.
        from ultraplanner_gui.window.course_table_form import CourseTableForm

        if self._form is None:
            self._form = CourseTableForm(
                self._window.settings.words, self._start_of, parent=self._window
            )
            self._form.gone_on.connect(self._propose)
        return self._form

    def open(self) -> None:
        """Open the form with what was last in it."""
        self.form.show()
        self.form.raise_()
        self.form.activateWindow()

    def open_file(self, path: Path) -> None:
        """Open the form with the table in the text file at *path*."""
        from ultraplanner_gui.exchange.table_file import read_text

        try:
            text = read_text(path)
        except PlanError as error:
            sentence = self._window.settings.words().say(error.message)
            self._window.ask.tell(self.tr("Cannot open the course table"), sentence)
            return
        self.open()
        self.form.take_text(text)

    def _start_of(self, table: CourseTable) -> datetime:
        return proposed_start(table, likely_start(date.today(), local_zone()))

    def _propose(self, table: CourseTable, course: Course, profile: Profile) -> None:
        start = self._start_of(table)
        race = Race(table.name, start, likely_finish_s(profile, Runner()), limit_of(table, start))
        self._deeds.open_plan_form(
            race, course, profile, partial(self._make, table, race), self.form
        )

    def _make(self, table: CourseTable, proposed: Race, answers: Answers) -> str:
        """Make the plan for the start and zone that were answered; return what is wrong."""
        from ultraplanner_gui.exchange.course_table import course_of

        race = answers.race
        try:
            if race.limit_s == proposed.limit_s:
                # A limit by the clock moves with the start, one that was typed over stays.
                race = replace(race, limit_s=limit_of(table, race.start))
            named = replace(table, name=race.name)
            course = course_of(named, race.start, _place_of(race.start.tzinfo))
        except PlanError as error:
            return self._window.settings.words().say(error.message)
        trouble = self._deeds.make_plan(course, replace(answers, race=race))
        if not trouble:
            self.form.hide()
            self.form.clear()
        return trouble


def _place_of(zone: tzinfo | None) -> Place:
    """Return the place a time zone is named after."""
    name = getattr(zone, "key", "")
    there = place_of(name)
    return Place(name.rpartition("/")[2].replace("_", " "), *there) if there else NOWHERE

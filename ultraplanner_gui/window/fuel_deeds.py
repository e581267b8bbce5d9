"""What the actions of the fuel plan do. Forms are imported where they are opened."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import Slot

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.plan.fuel import FuelPlan, Keep
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError
from ultraplanner_gui.window.job_deeds import JobDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.edits.edit import Edit
    from ultraplanner_gui.engine.fuel_fill import Fill
    from ultraplanner_gui.engine.fuel_fill_cells import Cell
    from ultraplanner_gui.plan.project import Project


def fill_fuel_job(
    token: Token, fuel: FuelPlan, cells: tuple[Cell, ...], foods: tuple[str, ...]
) -> Fill | Message:
    """Fill the race to its targets: the slow part; a sentence where that cannot be done."""
    from ultraplanner_gui.engine.fuel_fill import fill_to_target

    try:
        return fill_to_target(fuel, cells, foods, token.check)
    except PlanError as error:
        return error.message


class FuelDeeds(JobDeeds):
    """The slots for how the race is fuelled."""

    @Slot()
    def fill_fuel(self) -> None:
        document = self._window.document
        if document is None or document.outlook.target is None:
            return
        from ultraplanner_gui.engine.fuel_fill_cells import fill_cells
        from ultraplanner_gui.window.fuel_fill_form import FillForm

        outlook, words = document.outlook, self._window.settings.words()
        base, course, target = outlook.project, outlook.project.course, outlook.target
        if course is None or target is None:
            return

        def start(fuel: FuelPlan, foods: tuple[str, ...]) -> None:
            body_kg = base.runner.body_kg
            cells = fill_cells(fuel, course, outlook.sections, target.finish_s, body_kg)
            self._window.name_work(self.tr("Filling fuel to target"))
            self._start(done, fill_fuel_job, fuel, cells, foods)

        def done(result: Fill | Message) -> None:
            if isinstance(result, Message):
                form.show_failure(words.say(result))
            else:
                form.show_fill(result)

        def take(fill: Fill, fuel: FuelPlan) -> None:
            self._put_fill_in(base, fill, fuel)

        form = FillForm(outlook, words, start, take, self.cancel_job, self._window)
        form.open()

    @Slot()
    def repeat_food(self) -> None:
        document = self._window.document
        if document is not None and document.outlook.target is not None:
            from ultraplanner_gui.window.fuel_rule_form import RepeatForm

            words = self._window.settings.words()
            RepeatForm(document.outlook, words, self._take_fuel, self._window).open()

    @Slot()
    def station_foods(self) -> None:
        document = self._window.document
        if document is None:
            return
        course = document.project.course
        if course is None or not course.stations:
            self._window.say(
                Message(QT_TRANSLATE_NOOP("Fuel", "There is no aid station yet; add one first."))
            )
            return
        from ultraplanner_gui.window.fuel_station_form import StationFoodsForm

        words = self._window.settings.words()
        StationFoodsForm(document.project, words, self._take_fuel, self._window).open()

    @Slot()
    def fuel_habits(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.fuel_habits_form import HabitsForm

            words = self._window.settings.words()
            HabitsForm(document.project.fuel, words, self._take_fuel, self._window).open()

    @Slot()
    def sweat_test(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.fuel_sweat_form import SweatForm

            project, words = document.project, self._window.settings.words()
            fuel, body_kg, today = project.fuel, project.runner.body_kg, date.today()
            SweatForm(fuel, body_kg, today, words, self._take_fuel, self._window).open()

    @Slot()
    def fuel_cautions(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.fuel_cautions_view import FuelCautions

            FuelCautions(document.outlook, self._window.settings.words(), self._window).open()

    @Slot()
    def keep_clock(self) -> None:
        self._keep(Keep.CLOCK)

    @Slot()
    def keep_place(self) -> None:
        self._keep(Keep.PLACE)

    @Slot()
    def clear_fuel(self) -> None:
        from ultraplanner_gui.edits.fuel import ClearItems

        if self._window.document is not None:
            self._window.document.perform(ClearItems())

    @Slot()
    def practice_food(self) -> None:
        """Put the food to practise with on every session still to come."""
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.edits.block import ChangeSession
        from ultraplanner_gui.edits.fuel_habits import PutPracticeFood
        from ultraplanner_gui.engine.fuel_practice import practice_portions

        project, today = document.project, document.outlook.today
        edits = tuple(
            ChangeSession(replace(s, foods=foods))
            for s in project.block.sessions
            if s.is_open and s.day >= today and s.carb_g_per_h
            if (foods := practice_portions(project.fuel, s)) != s.foods
        )
        if edits:
            document.perform(PutPracticeFood(edits))
        else:
            self._window.say(
                Message(
                    QT_TRANSLATE_NOOP(
                        "Fuel", "No session to come has carbohydrate to practise that lacks food."
                    )
                )
            )

    @Slot()
    def take_tolerated(self) -> None:
        """Offer the rate that training has shown; it is never taken silently."""
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.edits.race import ChangeSetup
        from ultraplanner_gui.engine.fuel_practice import tolerated_rate

        project, words = document.project, self._window.settings.words()
        shown = tolerated_rate(project.block)
        if shown is None:
            self._window.say(
                Message(
                    QT_TRANSLATE_NOOP(
                        "Fuel",
                        "Not enough yet: two runs of an hour or more, eaten on, that sat well.",
                    )
                )
            )
            return
        runner = replace(project.runner, carb_g_per_h=round(shown.g_per_h))
        edit = ChangeSetup(project.race, runner, project.first_weekday)
        text = self.tr(
            "{0} sat well on {1}; the plan counts on {2}. Count on the new figure from now on?"
        )
        days = ", ".join(words.short_day(day) for day in shown.days)
        now = words.grams_per_hour(project.runner.carb_g_per_h)
        said = text.format(words.grams_per_hour(shown.g_per_h), days, now)
        self._window.offer.propose(document, edit, said)

    def _keep(self, keep: Keep) -> None:
        document = self._window.document
        if document is None or document.outlook.target is None:
            return
        from ultraplanner_gui.engine.fuel_clock import kept

        outlook = document.outlook
        from ultraplanner_gui.edits.fuel import KeepItems

        document.perform(KeepItems(kept(outlook.items, keep, document.outlook.target), keep=keep))

    def _put_fill_in(self, base: Project, fill: Fill, fuel: FuelPlan) -> None:
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.edits.fuel import FillToTarget
        from ultraplanner_gui.edits.fuel_habits import SetCaffeine, SetFuelHabits

        edit: Edit = FillToTarget(fill.items)
        if fuel.caffeine != base.fuel.caffeine:
            edit = SetFuelHabits((SetCaffeine(fuel.caffeine), edit))
        self._window.offer.deliver(document, base, edit, self.tr("The filling is ready."))

    def _take_fuel(self, edit: Edit) -> str:
        """Perform *edit*; return what is wrong with it, nothing if it was done."""
        document = self._window.document
        if document is None:
            return ""
        try:
            edit.apply(document.project)
        except PlanError as error:
            return self._window.settings.words().say(error.message)
        document.perform(edit)
        return ""

"""What each action does: one slot per row of the action table.

What most sittings do not need is imported where it is used, so that the window opens sooner.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import cached_property, partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.demo_file import demo_file
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block_moves import ShiftWithRace
from ultraplanner_gui.edits.course import FreeAllTargets, ReplaceCourse, SetSectionTarget
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.race import ChangeSetup, check_runner
from ultraplanner_gui.engine.fuelling import place_by_clock
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.window.block_deeds import BlockDeeds
from ultraplanner_gui.window.buildup_deeds import BuildUpDeeds
from ultraplanner_gui.window.card_deeds import CardDeeds
from ultraplanner_gui.window.course_deeds import (
    CourseDeeds,
    CourseTaken,
    mended_notes,
    read_for_plan,
)
from ultraplanner_gui.window.export_deeds import ExportDeeds
from ultraplanner_gui.window.fit_deeds import FitDeeds
from ultraplanner_gui.window.fuel_deeds import FuelDeeds
from ultraplanner_gui.window.head_deeds import HeadDeeds
from ultraplanner_gui.window.program_deeds import ProgramDeeds
from ultraplanner_gui.window.recording_deeds import RecordingDeeds
from ultraplanner_gui.window.recording_files import ENDINGS, has_times
from ultraplanner_gui.window.template_deeds import TemplateDeeds
from ultraplanner_gui.window.trust_deeds import TrustDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.plan.project import Project
    from ultraplanner_gui.window.plan_form import Answers
    from ultraplanner_gui.window.table_course import TableCourse

#: Files that hold a table and no line.
TABLE_SUFFIXES = frozenset((".csv", ".tsv", ".tab", ".txt"))


class Deeds(
    CardDeeds,
    BlockDeeds,
    BuildUpDeeds,
    CourseDeeds,
    FitDeeds,
    FuelDeeds,
    TrustDeeds,
    ExportDeeds,
    HeadDeeds,
    ProgramDeeds,
    RecordingDeeds,
    TemplateDeeds,
):
    """The slots behind the actions of one window."""

    @cached_property
    def _table_course(self) -> TableCourse:
        from ultraplanner_gui.window.table_course import TableCourse

        return TableCourse(self._window, self)

    # Files

    @Slot()
    def new(self) -> None:
        last = self._window.settings.last_folder
        folder = Path(last) if last else places.downloads()
        self._window.ask.which_course(folder, self.open_any)

    @Slot()
    def open(self) -> None:
        self._window.ask.which_project(self._folder(), self.open_project_file)

    @Slot()
    def type_course(self) -> None:
        self._table_course.open()

    def open_any(self, path: Path) -> None:
        """Open a project, or start a new one from a course, by what the file is called."""
        if path.suffix.lower() in TABLE_SUFFIXES:
            self._table_course.open_file(path)
            return
        if path.suffix.lower() == ".ultraplan":
            self.open_project_file(path)
        elif path.suffix.lower() == ".ultrablock":
            self.open_template(path)
        else:
            self._read_course(path, self._propose)

    def take_dropped(self, paths: tuple[Path, ...]) -> None:
        """Take files dropped on the window: recordings into an open plan, else as they open."""
        folders = tuple(p for p in paths if p.is_dir())
        files = (p for p in paths if p.name.lower().endswith(ENDINGS) and p.is_file())
        runs = tuple(p for p in files if has_times(p))
        if self._window.document is not None and (folders or len(runs) > 1):
            self.keep_recordings((*runs, *folders))
        elif self._window.document is not None and runs == paths:
            self.ask_what_dropped(runs[0])
        else:
            self.open_any(paths[0])

    def _open_course_file(self, path: Path) -> None:
        self._read_course(path, self._propose)

    @Slot()
    def demo(self) -> None:
        try:
            path = demo_file(date.today())
        except PlanError as error:
            self._window.say(error.message)
            return
        self.open_project_file(path)

    @Slot()
    def save_copy(self) -> None:
        document = self._window.document
        if document is not None and document.path is not None:
            proposed = document.path.with_name(f"{document.path.stem} copy.ultraplan")
            self._window.ask.where_to_keep(proposed, self._save_copy_to)

    @Slot()
    def history(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window import dialogs

            dialogs.open_history(self._window, document, self._window.settings.words())

    @Slot()
    def write_pdf(self) -> None:
        self._window.go("cards")
        if self._window.workplace is not None:
            self._window.workplace.cards.write_pdf()

    @Slot()
    def print_cards(self) -> None:
        self._window.go("cards")
        if self._window.workplace is not None:
            self._window.workplace.cards.print_cards()

    @Slot()
    def close_project(self) -> None:
        self._window.close_document()

    @Slot()
    def quit(self) -> None:
        self._window.close()

    @Slot()
    def open_course(self) -> None:
        self._window.ask.which_course(
            self._folder(), partial(self._read_course, then=self._replacement())
        )

    # The plan

    @Slot()
    def race_form(self) -> None:
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.engine.first_plan import likely_finish_s
        from ultraplanner_gui.window.plan_form import PlanForm

        project, profile = document.project, document.outlook.profile
        form = PlanForm(
            project.race,
            project.runner,
            project.first_weekday,
            self._window.settings.words(),
            self._change_setup,
            likely_s=None if profile is None else partial(likely_finish_s, profile),
            parent=self._window,
            has_block=any(s.is_open for s in project.block.sessions),
        )
        form.open()

    @Slot()
    def steps(self) -> None:
        if self._window.document is not None:
            from ultraplanner_gui.window.undo_list import UndoList

            UndoList.show_beside(self._window, self._window.document)

    @Slot()
    def find(self) -> None:
        self._window.finder.start()

    @Slot()
    def notes(self) -> None:
        if self._window.document is not None:
            from ultraplanner_gui.window import dialogs

            dialogs.open_notes(self._window, self._window.document)

    @Slot()
    def add_session(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.add_session()

    @Slot()
    def edit_session(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.edit_session()

    @Slot()
    def pick_up(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.pick_up()

    @Slot()
    def mark_done(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.mark_done()

    @Slot()
    def mark_missed(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.mark_missed()

    @Slot()
    def unmark(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.unmark()

    @Slot()
    def remove_session(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.remove_session()

    @Slot()
    def add_station(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.raceday.add_station()

    @Slot()
    def free_target(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is not None and document is not None and place.selection.kind == "section":
            document.perform(SetSectionTarget(place.selection.key, None))

    @Slot()
    def free_targets(self) -> None:
        if self._window.document is not None:
            self._window.document.perform(FreeAllTargets())

    @Slot()
    def fuel_rates(self) -> None:
        if self._window.document is not None:
            from ultraplanner_gui.window import dialogs

            dialogs.open_fuel_rates(self._window, self._window.document)

    @Slot()
    def place_fuel(self) -> None:
        document = self._window.document
        if document is None or document.outlook.target is None:
            return
        try:
            items = place_by_clock(document.project.fuel, document.outlook.target.finish_s)
        except PlanError as error:
            self._window.say(error.message)
            return
        from ultraplanner_gui.edits.fuel import PlaceItems

        document.perform(PlaceItems(items))

    @Slot()
    def add_item(self) -> None:
        document = self._window.document
        if document is None or document.outlook.target is None:
            return
        foods = document.project.fuel.foods
        if foods:
            from ultraplanner_gui.edits.fuel import AddItem

            last = max((i.at_s for i in document.outlook.items), default=0.0)
            every_s = document.project.fuel.every_s
            food = next((f for f in foods if f.carb_g > 0), foods[0])
            had = {item.key for item in document.project.fuel.items}
            document.perform(
                AddItem(food.key, min(last + every_s, document.outlook.target.finish_s))
            )
            new = next((i.key for i in document.project.fuel.items if i.key not in had), "")
            if new and self._window.workplace is not None:
                self._window.workplace.selection.choose("item", new)

    @Slot()
    def remove_item(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is not None and document is not None and place.selection.kind == "item":
            from ultraplanner_gui.edits.fuel import RemoveItem

            document.perform(RemoveItem(place.selection.key))
            place.selection.clear()

    # Behind the slots

    def _save_copy_to(self, path: Path) -> None:
        document = self._window.document
        if document is None:
            return
        try:
            document.save_copy(path)
        except PlanError as error:
            self._window.ask.tell(
                self.tr("The copy was not written"),
                self._window.settings.words().say(error.message),
            )

    def _read_course(self, path: Path, then: CourseTaken) -> None:
        self._window.settings.last_folder = str(path.parent)
        self._window.name_work(self.tr("Reading {0}").format(path.name))
        self.remember_course_file(path)
        self._start(partial(self.ask_line, path, then), read_for_plan, path)

    def _propose(self, result: tuple[Course, Profile]) -> None:
        from ultraplanner_gui.desk.zones import nearest_zone
        from ultraplanner_gui.engine.first_plan import likely_finish_s, likely_start

        course, profile = result
        zone = nearest_zone(profile.latitude_deg, profile.longitude_deg)
        start = likely_start(date.today(), zone)
        race = Race(course.name, start, likely_finish_s(profile, Runner()))
        self.open_plan_form(race, course, profile, partial(self.make_plan, course), self._window)

    def open_plan_form(
        self,
        race: Race,
        course: Course,
        profile: Profile,
        sent: Callable[[Answers], str],
        parent: QWidget,
        runner: Runner | None = None,
    ) -> None:
        """Open the form of a new plan with *race* proposed in it, and *runner* where known."""
        from ultraplanner_gui.engine.first_plan import likely_finish_s
        from ultraplanner_gui.window.plan_form import PlanForm

        words = self._window.settings.words()
        facts = self.tr("{0}, {1} aid stations proposed").format(
            words.distance(profile.length_m, 1), len(course.stations)
        )
        facts += (
            self.tr(", climb {0}, drop {1}").format(
                words.height(profile.ascent_m), words.height(profile.descent_m)
            )
            if profile.has_elevation
            else self.tr(", no heights: paced as flat")
        )
        form = PlanForm(
            race,
            Runner() if runner is None else runner,
            self._window.settings.first_weekday(),
            words,
            sent,
            facts=facts,
            path=places.free_project_path(race.name),
            where=self._window.ask.where_to_keep,
            likely_s=partial(likely_finish_s, profile),
            parent=parent,
            guesses=runner is None,
        )
        form.open()

    @Slot()
    def next_project(self) -> None:
        document = self._window.document
        if document is not None:
            then = partial(self._propose_next, document.project)
            self._window.ask.which_course(self._folder(), partial(self._read_course, then=then))

    def _propose_next(self, old: Project, result: tuple[Course, Profile]) -> None:
        from ultraplanner_gui.desk.zones import nearest_zone
        from ultraplanner_gui.engine.first_plan import likely_finish_s, likely_start

        course, profile = result
        zone = nearest_zone(profile.latitude_deg, profile.longitude_deg)
        start, likely_s = likely_start(date.today(), zone), likely_finish_s(profile, old.runner)
        make = partial(self._make_next, old, course)
        race = Race(course.name, start, likely_s)
        self.open_plan_form(race, course, profile, make, self._window, old.runner)

    def _make_next(self, old: Project, course: Course, answers: Answers) -> str:
        from ultraplanner_gui.engine.next_plan import next_plan

        assert answers.path is not None
        try:
            check_runner(answers.runner)
            project, notes = next_plan(
                old, course, answers.race, answers.runner, answers.first_weekday, date.today()
            )
            file = ProjectFile.create(answers.path, project)
        except PlanError as error:
            return self._window.settings.words().say(error.message)
        self._show(file)
        self._begin((*notes, *mended_notes(course)))
        return ""

    def make_plan(self, course: Course, answers: Answers) -> str:
        """Make and open the plan answered for; return what is wrong, nothing if it was made."""
        from ultraplanner_gui.desk.shipped_foods import shipped_foods
        from ultraplanner_gui.engine.first_plan import first_plan

        assert answers.path is not None
        try:
            check_runner(answers.runner)
            foods = shipped_foods()
            project, notes = first_plan(
                course, answers.race, answers.runner, foods, answers.first_weekday, date.today()
            )
            file = ProjectFile.create(answers.path, project)
        except PlanError as error:
            return self._window.settings.words().say(error.message)
        self._show(file)
        self._begin((*notes, *mended_notes(course)))
        return ""

    def _begin(self, notes: Sequence[Message]) -> None:
        """Say that a plan is made, and beside it what comes next."""
        place, words = self._window.workplace, self._window.settings.words()
        if place is not None:
            place.ledger.begin(tuple(words.say(note) for note in notes))
            self._window.inform(
                self.tr("The plan is made and kept. At the right: what comes next.")
            )

    def _replacement(self) -> Callable[[tuple[Course, Profile]], None]:
        """Return what puts a course that was read into the project open now."""
        document = self._window.document
        assert document is not None
        return partial(self._replace_course, document, document.project)

    def _replace_course(
        self, document: Document, base: Project, result: tuple[Course, Profile]
    ) -> None:
        if document is self._window.document:
            text = self.tr("The other course is read.")
            self._window.offer.deliver(document, base, ReplaceCourse(result[0]), text)
            for note in mended_notes(result[0]):
                self._window.inform(self._window.settings.words().say(note))

    def _change_setup(self, answers: Answers) -> str:
        document = self._window.document
        if document is None:
            return ""
        edit: Edit = ChangeSetup(answers.race, answers.runner, answers.first_weekday)
        if answers.is_shifted:
            change = ChangeSetup(answers.race, answers.runner, answers.first_weekday)
            edit = ShiftWithRace(change, document.before.today)
        try:
            edit.apply(document.project)
        except PlanError as error:
            return self._window.settings.words().say(error.message)
        document.perform(edit)
        return ""

    def _folder(self) -> Path:
        last = self._window.settings.last_folder
        return Path(last) if last else places.documents()

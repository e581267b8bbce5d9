"""What the actions of the course do. Forms are imported where they are opened."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.profile import Profile, build_profile
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError, message
from ultraplanner_gui.plan.reading import Repair, RepairKind
from ultraplanner_gui.window.job_deeds import JobDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.desk.document import Document
    from ultraplanner_gui.exchange.gpx_in import CourseChoice
    from ultraplanner_gui.plan.project import Project
    from ultraplanner_gui.wording.words import Words


def read_for_plan(token: Token, path: Path, choice: str = "") -> tuple[Course, Profile]:
    """Read a course and build its profile: the slow part of a new plan."""
    from ultraplanner_gui.exchange.gpx_in import read_course

    course = read_course(path, choice, progress=lambda share: token.progress(0.95 * share))
    return course, build_profile(course)


def list_lines(token: Token, path: Path) -> tuple[CourseChoice, ...]:
    """List the lines in the file at *path*."""
    from ultraplanner_gui.exchange.gpx_in import course_choices

    return course_choices(path)


def lines_if_any(token: Token, path: Path) -> tuple[CourseChoice, ...]:
    """List the lines in the file at *path*, none where it cannot be read any more."""
    try:
        return list_lines(token, path)
    except PlanError:
        return ()


def read_leg(token: Token, path: Path) -> Course:
    """Read a course that is to be put behind another."""
    from ultraplanner_gui.exchange.gpx_in import read_course

    return read_course(path, progress=token.progress)


def mended_notes(course: Course) -> tuple[Message, ...]:
    """Return a sentence that says where to see what was mended, nothing if nothing was."""
    mended = sum(isinstance(repair, Repair) for repair in course.repairs)
    return (message(MENDED, mended),) if mended else ()


def read_another_way(
    token: Token, path: Path, choice: str, without: tuple[RepairKind, ...]
) -> Course:
    """Read the file of a course again, with another choice or other repairs."""
    from ultraplanner_gui.exchange.gpx_in import read_course

    return read_course(path, choice, without, lambda share: token.progress(0.95 * share))


#: Takes a course that was read, with its profile.
CourseTaken = Callable[[tuple[Course, Profile]], None]
MENDED = QT_TRANSLATE_NOOP(
    "Course", "Mended in the file: {0}. Each can be undone in Course, What was mended."
)


class CourseDeeds(JobDeeds):
    """The slots for the ground: how it is cut, shaped, surfaced, read and seen."""

    _course_files: dict[str, Path] | None = None

    def remember_course_file(self, path: Path) -> None:
        """Know where the file of a course is for as long as the program runs."""
        if self._course_files is None:
            self._course_files = {}
        self._course_files[path.name] = path

    def course_file(self, name: str) -> Path | None:
        """Return where the file *name* was opened in this sitting, None if it was not."""
        return (self._course_files or {}).get(name)

    def words(self) -> Words:
        """Return how numbers read."""
        return self._window.settings.words()

    def ask_line(self, path: Path, then: CourseTaken, result: tuple[Course, Profile]) -> None:
        """Ask which line is meant where the file holds several, then go on with that."""
        repairs = (r for r in result[0].repairs if isinstance(r, Repair))
        if all(repair.kind is not RepairKind.JOINED for repair in repairs):
            then(result)
            return

        def choose(choices: tuple[CourseChoice, ...]) -> None:
            # The first is what was read: all of them in order.
            def taken(key: str) -> None:
                if key == choices[0].key:
                    then(result)
                else:
                    self._start(then, read_for_plan, path, key)

            self._window.ask.which_line(path.name, choices, self.words(), taken)

        self._start(choose, list_lines, path)

    @Slot()
    def plan_view(self) -> None:
        place = self._window.workplace
        if place is not None:
            self._window.go("sheet")
            is_wanted = not place.raceday.is_plan_shown
            self._window.settings.plan_view = is_wanted
            place.raceday.show_plan(is_wanted)

    @Slot()
    def cut_by_stations(self) -> None:
        from ultraplanner_gui.edits.sections import CutSections
        from ultraplanner_gui.engine.section_cuts import CutBy

        self._perform(CutSections(CutBy.STATIONS))

    @Slot()
    def cut_by_climbs(self) -> None:
        from ultraplanner_gui.edits.sections import CutSections
        from ultraplanner_gui.engine.section_cuts import CutBy

        self._perform(CutSections(CutBy.CLIMBS))

    @Slot()
    def cut_by_distance(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.course_small_forms import open_cut_every

            open_cut_every(self._window, document, self._window.settings.words())

    @Slot()
    def split_section(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is None or document is None:
            return
        from ultraplanner_gui.edits.sections import SplitSection

        at_m = place.raceday.place_of_cursor()
        if at_m is None:
            at_m = self._middle_of_choice(document)
        if at_m is not None:
            document.perform(SplitSection(at_m))

    @Slot()
    def merge_section(self) -> None:
        place = self._window.workplace
        if place is not None and place.selection.kind == "section":
            from ultraplanner_gui.edits.sections import MergeSections

            self._perform(MergeSections(place.selection.key))

    @Slot()
    def name_section(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is not None and document is not None and place.selection.kind == "section":
            from ultraplanner_gui.window.course_small_forms import open_section_name

            open_section_name(self._window, document, place.selection.key)

    @Slot()
    def change_station(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is None or document is None or document.project.course is None:
            return
        stations = document.project.course.stations
        chosen = next((s.key for s in stations if s.key == place.selection.key), "")
        chosen = chosen or self._station_ahead(document)
        if not chosen:
            self._window.say(self.tr("There is no aid station yet. Add one first."))
            return
        from ultraplanner_gui.window.station_form import StationForm

        StationForm(document, chosen, self._window.settings.words(), self._window).open()

    @Slot()
    def course_shape(self) -> None:
        document = self._window.document
        if document is not None and document.project.course is not None:
            from ultraplanner_gui.window.course_form import CourseForm

            form = CourseForm(document, self._window.settings.words(), self._pick_leg, self._window)
            # What is still being read then has nowhere to go.
            form.finished.connect(self.cancel_job)
            form.open()

    @Slot()
    def surface_factors(self) -> None:
        document = self._window.document
        if document is not None and document.project.course is not None:
            from ultraplanner_gui.window.course_small_forms import open_surface_factors

            open_surface_factors(self._window, document, self._window.settings.words())

    @Slot()
    def what_was_mended(self) -> None:
        document = self._window.document
        course = document.project.course if document is not None else None
        if document is None or course is None:
            return
        path = self.course_file(course.reading.file) if course.reading is not None else None
        if path is None:
            self._open_mended(document, ())
        else:
            self._window.name_work(self.tr("Looking through {0}").format(path.name))
            self._start(partial(self._open_mended, document), lines_if_any, path)

    def read_again(self, choice: str, without: tuple[RepairKind, ...]) -> None:
        """Read the file of the course another way; the result is one edit."""
        document = self._window.document
        course = document.project.course if document is not None else None
        if document is None or course is None or course.reading is None:
            return
        path = self.course_file(course.reading.file)
        if path is None:
            return
        base = document.project

        def done(read: Course) -> None:
            self._put_reading_in(document, base, read)

        self._window.name_work(self.tr("Reading {0}").format(path.name))
        self._start(done, read_another_way, path, choice, without)

    # Behind the slots

    def _put_reading_in(self, document: Document, base: Project, read: Course) -> None:
        from ultraplanner_gui.edits.course_shape import ReadAgain

        if document is self._window.document:
            text = self.tr("The course is read the other way.")
            self._window.offer.deliver(document, base, ReadAgain(read), text)

    def _open_mended(self, document: Document, lines: tuple[CourseChoice, ...]) -> None:
        if document is self._window.document:
            from ultraplanner_gui.window.course_small_forms import open_mended

            open_mended(self._window, document, self, lines)

    def _pick_leg(self, taken: Callable[[Course], None]) -> None:
        last = self._window.settings.last_folder
        folder = Path(last) if last else Path.home()
        self._window.ask.which_course(folder, partial(self.read_leg_from, taken))

    def read_leg_from(self, taken: Callable[[Course], None], path: Path) -> None:
        """Read the course at *path* off the GUI thread and hand it to *taken*."""
        self._window.name_work(self.tr("Reading {0}").format(path.name))
        self._start(taken, read_leg, path)

    def _perform(self, edit: object) -> None:
        if self._window.document is not None:
            self._window.document.perform(edit)  # type: ignore[arg-type]

    def _middle_of_choice(self, document: Document) -> float | None:
        """Return the middle of the chosen section, or of the longest."""
        sections, place = document.outlook.sections, self._window.workplace
        if not sections or place is None:
            return None
        chosen = next((s for s in sections if s.key == place.selection.key), None)
        section = chosen or max(sections, key=lambda s: s.length_m)
        return round((section.start_m + section.end_m) / 2.0, -1)

    def _station_ahead(self, document: Document) -> str:
        """Return the station the chosen section ends at, else the first."""
        course, place = document.project.course, self._window.workplace
        if course is None or place is None:
            return ""
        section = next((s for s in course.sections if s.key == place.selection.key), None)
        if section is not None and section.station is not None:
            return section.station
        return course.stations[0].key if course.stations else ""

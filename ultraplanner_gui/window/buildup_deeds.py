"""What the actions on sessions, weeks, missed days, health and wishes do."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.widgets.motion import Motion
from ultraplanner_gui.window.job_deeds import JobDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.buildup.deeds import SessionDeeds
    from ultraplanner_gui.engine.repair_request import Absence, Repair
    from ultraplanner_gui.plan.project import Project
    from ultraplanner_gui.window.main_window import MainWindow


#: So many points of a loop are kept.
LOOP_POINTS = 400


def read_loop(token: Token, path: Path) -> GroundAtHand:
    """Read the recording of a loop and thin it to what its gradients need."""
    import numpy as np

    from ultraplanner_gui.engine.profile import build_profile
    from ultraplanner_gui.exchange.gpx_in import read_course

    course = read_course(path)
    token.progress(0.6)
    profile = build_profile(course)
    along = np.linspace(0.0, profile.length_m, min(LOOP_POINTS, len(profile.distance_m)))
    heights = np.interp(along, profile.distance_m, profile.elevation_m)
    return GroundAtHand(
        "",
        GroundKind.LOOP,
        course.name or path.stem,
        profile.length_m,
        profile.ascent_m,
        profile.descent_m,
        distance_m=tuple(float(m) for m in along),
        elevation_m=tuple(float(m) for m in heights),
    )


class BuildUpDeeds(JobDeeds):
    """The slots of the build-up menu beyond single sessions."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        Motion.wished = window.settings.motion

    @Slot()
    def motion(self) -> None:
        settings = self._window.settings
        settings.motion = Motion.wished = not settings.motion
        said = self.tr("Tiles settle and changed figures are marked.")
        still = self.tr("Nothing moves by itself any more.")
        if settings.motion and Motion.is_stilled:
            said = self.tr("Nothing moves as long as your system asks programs to keep still.")
        self._window.inform(said if settings.motion else still)

    @Slot()
    def cut_sessions(self) -> None:
        if (deeds := self._sessions()) is not None:
            deeds.cut()

    @Slot()
    def copy_sessions(self) -> None:
        if (deeds := self._sessions()) is not None:
            deeds.copy()

    @Slot()
    def paste_sessions(self) -> None:
        place = self._window.workplace
        if place is not None and place.buildup.grid.day is not None:
            place.buildup.deeds.paste(place.buildup.grid.day)

    @Slot()
    def select_ahead(self) -> None:
        if (deeds := self._sessions()) is not None:
            deeds.select_all()

    @Slot()
    def lock_sessions(self) -> None:
        if (deeds := self._sessions()) is not None:
            deeds.lock()

    @Slot()
    def swap_sessions(self) -> None:
        if (deeds := self._sessions()) is None:
            return
        if len(deeds.all_chosen()) != 2:
            self._window.say(self.tr("Select two sessions first: click one, Ctrl and click one."))
            return
        deeds.swap()

    @Slot()
    def swap_week_earlier(self) -> None:
        if (deeds := self._sessions()) is not None:
            deeds.swap_weeks(-1)

    @Slot()
    def swap_week_later(self) -> None:
        if (deeds := self._sessions()) is not None:
            deeds.swap_weeks(1)

    @Slot()
    def repeat_weekly(self) -> None:
        deeds = self._sessions()
        if deeds is not None and deeds.all_chosen():
            from ultraplanner_gui.buildup.repeat_form import RepeatForm

            RepeatForm(deeds, self._window).open()

    @Slot()
    def add_of_kind(self) -> None:
        place = self._window.workplace
        if place is None:
            return
        self._window.go("sheet")
        if not place.buildup.isVisible():
            place.show_storeys(True, True)
        place.open_storey("buildup")
        place.buildup.open_shelf()

    @Slot()
    def how_it_went(self) -> None:
        if (deeds := self._sessions()) is not None:
            deeds.edit_done()

    @Slot()
    def this_week(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is None or document is None:
            return
        from ultraplanner_gui.buildup.week_panel import WeekPanel

        panel = WeekPanel(
            document,
            place.selection,
            place.buildup.deeds,
            self._window.settings.words,
            place,
        )
        panel.show()
        panel.table.setFocus()

    @Slot()
    def missed_days(self) -> None:
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.window.repair_form import RepairForm, likely_missed

        words = self._window.settings.words()
        form = RepairForm(likely_missed(document), words, self._window)
        form.asked.connect(partial(self._mend, document))
        form.open()

    @Slot()
    def health(self) -> None:
        if self._window.document is not None:
            from ultraplanner_gui.window.health_form import HealthForm

            document = self._window.document
            HealthForm(document, self.red_flags, parent=self._window).open()

    @Slot()
    def wishes(self) -> None:
        if self._window.document is not None:
            from ultraplanner_gui.window.wishes_form import WishesForm

            words = self._window.settings.words()
            WishesForm(self._window.document, words, self._window).open()

    @Slot()
    def tune_up(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is not None and document is not None:
            from ultraplanner_gui.buildup.tune_up_form import TuneUpForm

            day = place.buildup.grid.day or document.before.today
            words = self._window.settings.words()
            TuneUpForm(document, max(day, document.before.today), words, self._window).open()

    @Slot()
    def candidates(self) -> None:
        if self._window.document is not None:
            from ultraplanner_gui.window.candidates_page import CandidatesPage

            words = self._window.settings.words
            CandidatesPage(self._window.document, words, self._window).show()

    @Slot()
    def ground_at_hand(self) -> None:
        place, document = self._window.workplace, self._window.document
        if place is None or document is None:
            return
        from ultraplanner_gui.window.ground_form import GroundPage

        chosen = place.selection
        GroundPage(
            document,
            self._window.settings.words,
            self.add_loop,
            chosen.key if chosen.kind == "section" else "",
            place.buildup.grid.day,
            self._window,
        ).show()

    def add_loop(self) -> None:
        """Ask for the recording of a loop and add it to the ground at hand."""
        if self._window.document is not None:
            last = self._window.settings.last_folder
            folder = Path(last) if last else places.documents()
            self._window.ask.which_course(folder, self._read_loop)

    def _read_loop(self, path: Path) -> None:
        document = self._window.document
        if document is not None:
            self._window.name_work(self.tr("Reading {0}").format(path.name))
            self._start(partial(self._put_loop_in, document), read_loop, path)

    def _put_loop_in(self, document: Document, ground: GroundAtHand) -> None:
        from ultraplanner_gui.edits.training import AddGround

        if document is self._window.document:
            document.perform(AddGround(ground))

    def _sessions(self) -> SessionDeeds | None:
        place = self._window.workplace
        return None if place is None else place.buildup.deeds

    def _mend(self, document: Document, absence: Absence) -> None:
        """Look for ways to mend the block of *document* in a process of its own."""
        from ultraplanner_gui.desk.block_process import MendBlock
        from ultraplanner_gui.engine.first_plan import request_of
        from ultraplanner_gui.engine.repair_request import RepairRequest
        from ultraplanner_gui.plan.message import PlanError

        base, outlook = document.project, document.outlook
        try:
            built = request_of(base, outlook, outlook.today)
        except PlanError as error:
            self._window.say(error.message)
            return
        request = RepairRequest(built, absence, outlook.today)
        self._window.name_work(self.tr("Looking for ways to mend the build-up"))
        self._start(partial(self._show_ways, document, base), MendBlock(base.block, request))

    def _show_ways(self, document: Document, base: Project, repair: Repair) -> None:
        if document is not self._window.document:
            return
        if document.project is not base:
            self._window.say(
                self.tr("The plan has changed meanwhile; ask again for ways to mend it.")
            )
            return
        from ultraplanner_gui.window.repair_form import ChoicesForm

        words = self._window.settings.words()
        ChoicesForm(document, repair, words, self.red_flags, self._window).show()

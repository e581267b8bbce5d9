"""What belongs to the program and to no plan: its settings, its handbook."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QLocale, Slot

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.language import plain_figures
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.widgets.motion import Motion
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.job_deeds import JobDeeds


class ProgramDeeds(JobDeeds):
    """The slots of the settings and the handbook."""

    @Slot()
    def settings(self) -> None:
        from ultraplanner_gui.window.settings_form import SettingsForm

        self._shown = _shown(self._window.settings)
        SettingsForm(self._window.settings, self._apply, self._window).open()

    @Slot()
    def another_window(self) -> None:
        """Start the program a second time: each window has a project, and a coach sees two."""
        from ultraplanner_gui.desk.further_windows import open_another

        open_another()

    @Slot()
    def handbook(self) -> None:
        from ultraplanner_gui.window.handbook_view import HandbookView

        HandbookView(self._ask_for_handbook, self._window).show()

    def _ask_for_handbook(self) -> None:
        folder = Path(self._window.settings.last_folder or places.documents())
        proposed = folder / self.tr("Ultraplanner handbook.pdf")
        self._window.ask.where_to_export(proposed, self._write_handbook)

    def _write_handbook(self, path: Path) -> None:
        from ultraplanner_gui.window.handbook_pdf import usual_paper, write_handbook

        words = self._window.settings.words()
        self._window.name_work(self.tr("Writing {0}").format(path.name))
        self._start(self._on_handbook, write_handbook, path, usual_paper(words.locale))

    def _on_handbook(self, path: Path) -> None:
        self._window.inform(self.tr("Written: {0}").format(path.name))

    def _apply(self) -> None:
        """Bring the window up to what is chosen in the settings, and do only what that asks."""
        window, settings = self._window, self._window.settings
        (look, words), self._shown = self._shown, _shown(settings)
        Motion.wished = settings.motion
        if look != self._shown[0]:
            theme().choose(settings.theme, settings.text_percent)
        if words != self._shown[1]:
            QLocale.setDefault(plain_figures(QLocale(settings.words().locale)))
            window.reopen_views()
        elif window.workplace is not None:
            window.workplace.raceday.choose_measure(settings.race_axis)
            window.workplace.raceday.show_plan(settings.plan_view)


def _shown(settings: Settings) -> tuple[object, object]:
    """Return what all text on screen depends on: colours and size; units and locale."""
    return (settings.theme, settings.text_percent), settings.words()

"""Keeping the block as a template, and applying one."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Slot

from ultraplanner_gui.desk import places
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.window.view_deeds import ViewDeeds


class TemplateDeeds(ViewDeeds):
    """The slots of templates."""

    @Slot()
    def save_template(self) -> None:
        from ultraplanner_gui.store.template_file import SUFFIX

        document = self._window.document
        if document is not None:
            name = places.file_name(document.project.race.name) + SUFFIX
            self._window.ask.where_to_keep_template(
                self._template_folder() / name, self._write_template
            )

    @Slot()
    def apply_template(self) -> None:
        if self._window.document is not None:
            self._window.ask.which_template(self._template_folder(), self.open_template)

    def _template_folder(self) -> Path:
        """Return where a template was last kept or taken from: they go from plan to plan."""
        last = Path(self._window.settings.template_folder)
        return last if last.name and last.is_dir() else places.documents()

    def _write_template(self, path: Path) -> None:
        from ultraplanner_gui.engine.template import template_of
        from ultraplanner_gui.exchange.safe_write import write_bytes
        from ultraplanner_gui.store.template_file import template_bytes

        document = self._window.document
        if document is None:
            return
        try:
            write_bytes(path, template_bytes(template_of(document.project, path.stem)))
        except PlanError as error:
            self._tell(error)
            return
        self._window.settings.template_folder = str(path.parent)
        self._window.inform(self.tr("Kept as a template: {0}").format(path.name))

    def open_template(self, path: Path) -> None:
        """Show the template in the file *path* in the open plan, on trial."""
        from ultraplanner_gui.store.template_file import read_template
        from ultraplanner_gui.window.template_form import TemplateForm

        document = self._window.document
        if document is None:
            self._window.ask.tell(
                self.tr("A template needs a plan"),
                self.tr("Open the plan it is for, or start one, and drop the template then."),
            )
            return
        try:
            template = read_template(path)
        except PlanError as error:
            self._tell(error)
            return
        self._window.settings.template_folder = str(path.parent)
        TemplateForm(document, template, self._window.settings.words(), self._window).open()

    def _tell(self, error: PlanError) -> None:
        sentence = self._window.settings.words().say(error.message)
        self._window.ask.tell(self.tr("That did not work"), sentence)

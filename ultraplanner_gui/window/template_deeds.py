"""Keeping the block as a template, and applying one."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Slot

from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.window.view_deeds import ViewDeeds


class TemplateDeeds(ViewDeeds):
    """The slots of templates."""

    @Slot()
    def save_template(self) -> None:
        document = self._window.document
        if document is not None and document.path is not None:
            proposed = document.path.with_suffix(".ultrablock")
            self._window.ask.where_to_export(proposed, self._write_template)

    @Slot()
    def apply_template(self) -> None:
        document = self._window.document
        if document is not None:
            folder = document.path.parent if document.path is not None else Path()
            self._window.ask.which_template(folder, self._open_template)

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
        self._window.inform(self.tr("Written: {0}").format(path.name))

    def _open_template(self, path: Path) -> None:
        from ultraplanner_gui.store.template_file import read_template
        from ultraplanner_gui.window.template_form import TemplateForm

        document = self._window.document
        if document is None:
            return
        try:
            template = read_template(path)
        except PlanError as error:
            self._tell(error)
            return
        TemplateForm(document, template, self._window.settings.words(), self._window).open()

    def _tell(self, error: PlanError) -> None:
        sentence = self._window.settings.words().say(error.message)
        self._window.ask.tell(self.tr("That did not work"), sentence)

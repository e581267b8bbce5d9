import re
from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.widgets.rows import CheckRow
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.template_form import TemplateForm

TODAY = date(2027, 4, 5)


@pytest.fixture
def window(qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(window)
    window.show()
    window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return window


def another(project, weekly_share):
    race = replace(project.race, start=project.race.start + timedelta(weeks=30))
    runner = replace(project.runner, weekly_m=weekly_share * project.runner.weekly_m)
    return replace(project, race=race, runner=runner, block=Block())


def test_a_coach_takes_a_block_from_one_runner_to_another(window, tmp_path):
    file = tmp_path / "mine.ultrablock"
    window.deeds._write_template(file)
    weaker = another(window.document.project, 0.6)
    window.show_document(Document(None, weaker, lambda: TODAY))
    window.deeds.open_template(file)
    (form,) = window.findChildren(TemplateForm)
    assert form.scale.currentData() == pytest.approx(0.6)
    assert "break" in form.count.text()
    assert window.document.project is weaker
    assert len(window.document.shown.project.block.sessions) > 50, "not shown on trial"
    form.keep.click()
    assert len(window.document.project.block.sessions) > 50
    window.document.undo_stack.undo()
    assert window.document.project == weaker


def test_a_template_that_does_not_fit_says_so_and_changes_nothing(window, tmp_path):
    file = tmp_path / "mine.ultrablock"
    window.deeds._write_template(file)
    project = window.document.project
    start = project.race.start - timedelta(weeks=40)
    past = replace(project, race=replace(project.race, start=start), block=Block())
    window.show_document(Document(None, past, lambda: TODAY))
    window.deeds.open_template(file)
    (form,) = window.findChildren(TemplateForm)
    assert not form.keep.isEnabled()
    assert "Nothing of this template" in form.trouble.text()


def opened(window, tmp_path):
    file = tmp_path / "mine.ultrablock"
    window.deeds._write_template(file)
    weaker = another(window.document.project, 0.6)
    window.show_document(Document(None, weaker, lambda: TODAY))
    window.deeds.open_any(file)
    return window.findChildren(TemplateForm)[0]


def test_a_template_that_is_not_taken_leaves_the_sheet_as_it_was(window, tmp_path):
    form = opened(window, tmp_path)
    form.reject()
    assert not window.document.shown.project.block.sessions
    assert window.document.undo_stack.isClean()


def test_each_scale_is_shown_with_its_own_checks(window, tmp_path):
    form = opened(window, tmp_path)
    scaled = window.document.shown.project.block
    scaled_says = form.facts.text(), form.count.text()
    form.scale.setCurrentIndex(0)
    assert window.document.shown.project.block != scaled
    assert (form.facts.text(), form.count.text()) != scaled_says
    form.reject()


def test_every_rule_that_is_named_says_its_week(window, tmp_path):
    form = opened(window, tmp_path)
    rows = [row for row in form.rules.rows if isinstance(row, CheckRow)]
    of_a_week = [row for row in rows if re.match(r"\d+ to go: ", row.text)]
    assert len(of_a_week) > 3
    assert rows[0].state is State.BREAKS
    form.reject()


def test_what_is_changed_meanwhile_closes_the_form(window, tmp_path):
    form = opened(window, tmp_path)
    window.document.perform(WriteNotes("meanwhile"))
    assert not form.isVisible()
    assert window.document.project.notes == "meanwhile"
    assert not window.document.shown.project.block.sessions


class Places(Ask):
    proposed = None

    def where_to_keep_template(self, proposed, taken):
        self.proposed = proposed
        taken(self.place)

    def which_template(self, folder, taken):
        self.proposed = folder

    def tell(self, title, sentence):
        self.told = sentence


def test_a_template_is_sought_where_the_last_one_was_kept(window, tmp_path):
    ask = window.ask = Places(window)
    folder = tmp_path / "templates"
    folder.mkdir()
    ask.place = folder / "hilly.ultrablock"
    window.deeds.save_template()
    assert ask.proposed.name == f"{window.document.project.race.name}.ultrablock"
    window.deeds.apply_template()
    assert ask.proposed == folder
    window.deeds.save_template()
    assert ask.proposed.parent == folder


def test_a_template_dropped_without_a_plan_says_what_to_do(window, tmp_path):
    file = tmp_path / "mine.ultrablock"
    window.deeds._write_template(file)
    window.close_document()
    window.ask = Places(window)
    window.deeds.open_any(file)
    assert window.ask.told.startswith("Open the plan it is for")

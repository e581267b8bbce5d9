from dataclasses import replace
from datetime import date, timedelta

import pytest

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.block import Block
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
    window.deeds._open_template(file)
    (form,) = window.findChildren(TemplateForm)
    assert form.scale.currentData() == pytest.approx(0.6)
    assert form.rules.count() > 0
    assert window.document.project is weaker
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
    window.deeds._open_template(file)
    (form,) = window.findChildren(TemplateForm)
    assert not form.keep.isEnabled()
    assert "Nothing of this template" in form.trouble.text()

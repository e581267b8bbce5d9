from datetime import date
from pathlib import Path

import pytest

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.engine.mailing import LeftOut
from ultraplanner_gui.plan.runner import Health
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.mailing_form import MailingForm
from ultraplanner_gui.window.main_window import MainWindow

TODAY = date(2027, 4, 5)


class Silent(Ask):
    place = None

    def where_to_keep(self, proposed, taken):
        taken(self.place)


@pytest.fixture
def settings(tmp_path):
    return Settings(tmp_path / "settings.ini")


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "demo.ultraplan"
    ProjectFile.create(path, demo_project(TODAY)).close()
    return path


def new_window(qtbot, settings):
    window = MainWindow(settings)
    window.ask = Silent(window)
    qtbot.addWidget(window)
    window.show()
    return window


def test_after_a_fault_one_goes_on_where_one_was(qtbot, settings, path):
    window = new_window(qtbot, settings)
    window.deeds.open_project_file(path)
    key = window.document.project.block.sessions[5].key
    window.go("tables")
    window.workplace.selection.choose("session", key)
    window.document.perform(WriteNotes("kept"))
    window.sitting._note()
    left = settings.sitting
    window.close()
    assert settings.sitting == ()
    settings.sitting = left  # as if the program had not come so far
    again = new_window(qtbot, settings)
    again.deeds.go_on()
    assert again.document.project.notes == "kept"
    assert again.workplace.place == "tables"
    assert (again.workplace.selection.kind, again.workplace.selection.key) == ("session", key)
    assert "did not end by itself" in again._message.text()


def test_a_sitting_that_ended_leaves_nothing(qtbot, settings, path):
    window = new_window(qtbot, settings)
    window.deeds.open_project_file(path)
    window.sitting._note()
    window.close_document()
    window.deeds.go_on()
    assert window.document is None
    assert not window._message.text()


def test_what_is_open_in_another_window_is_left_there(qtbot, settings, path):
    with ProjectFile.open(path):
        settings.sitting = (str(path), "sheet", "", "")
        window = new_window(qtbot, settings)
        window.deeds.go_on()
        assert window.document is None


@pytest.mark.parametrize("left", [("x",), ("gone.ultraplan", "sheet", "", ""), ("", "", "", "")])
def test_what_makes_no_sense_is_passed_over(qtbot, settings, left):
    settings.sitting = left
    window = new_window(qtbot, settings)
    window.deeds.go_on()
    assert window.document is None


def test_a_copy_to_send_has_nothing_private(qtbot, settings, path, tmp_path):
    window = new_window(qtbot, settings)
    window.deeds.open_project_file(path)
    window.document.perform(WriteNotes("nobody's business"))
    before = window.document.project
    window.ask.place = tmp_path / "sent.ultraplan"
    window.deeds.mail_copy()
    (form,) = window.findChildren(MailingForm)
    form.write.click()
    with ProjectFile.open(window.ask.place) as file:
        sent, history = file.project, file.history()
    assert window.document.project is before
    assert history == []
    assert sent.runner.health is Health.NOT_ASKED
    assert (sent.notes, sent.recordings, sent.lessons) == ("", (), ())
    assert not sent.logistics.who.full_name
    assert [s.day for s in sent.block.sessions] == [s.day for s in before.block.sessions]
    raw = window.ask.place.read_bytes()
    assert b"nobody's business" not in raw
    assert before.logistics.who.full_name.encode() not in raw


def test_what_is_unticked_goes_along(qtbot, settings, path, tmp_path):
    window = new_window(qtbot, settings)
    window.deeds.open_project_file(path)
    target = tmp_path / "all.ultraplan"
    window.deeds.write_mail_copy(LeftOut(False, False, False), target)
    with ProjectFile.open(target) as file:
        assert file.project == window.document.project


def test_a_copy_over_the_open_file_is_refused(qtbot, settings, path):
    window = new_window(qtbot, settings)
    told = []
    window.ask.tell = lambda title, sentence: told.append(sentence)
    window.deeds.open_project_file(path)
    before = path.read_bytes()
    window.deeds.write_mail_copy(LeftOut(), path)
    assert len(told) == 1
    assert path.read_bytes() == before


def test_closing_leaves_what_another_window_has_noted(qtbot, settings, path):
    window = new_window(qtbot, settings)
    window.deeds.open_project_file(path)
    window.sitting._note()
    # Another process, by the file of the settings alone.
    other = Settings(Path(settings.store.fileName()))
    other.sitting = noted = ("/elsewhere/other.ultraplan", "sheet", "", "")
    other.store.sync()
    window.close()
    settings.store.sync()
    assert settings.sitting == noted

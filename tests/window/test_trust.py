"""A file that is hurt or open elsewhere: what is offered, and what it leaves alone."""

from datetime import date

import pytest
from msgspec.structs import replace
from PySide6.QtWidgets import QListWidget, QMessageBox

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.block import ReplaceBlock
from ultraplanner_gui.edits.course import ReplaceCourse
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.store.project_file import MOST_NAMED, ProjectFile, read_project
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.name_form import NameForm


class Offered(Ask):
    """Takes every offer but asks nobody."""

    def __init__(self, target=None):
        self.target, self.told, self.deeds = target, [], []

    def tell(self, title, sentence):
        self.told.append(sentence)

    def offer(self, title, sentence, deed, taken):
        self.told.append(sentence)
        self.deeds.append(deed)
        taken()

    def where_to_keep(self, proposed, taken):
        assert not proposed.exists()
        taken(self.target or proposed)


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "hundred.ultraplan"
    ProjectFile.create(path, demo_project(date.today())).close()
    return path


@pytest.fixture
def window(qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"), Offered())
    qtbot.addWidget(window)
    window.show()
    yield window
    window.close_document()


@pytest.fixture
def hurt(path):
    raw = path.read_bytes()
    assert raw.count(b'"weight_kg"') <= 1
    at = raw.index(b'{"project":[')
    path.write_bytes(raw[:at] + b"{" + bytes(11) + raw[at + 12 :])
    return path


def test_a_damaged_file_is_rescued_into_a_new_one(window, hurt):
    before = hurt.read_bytes()
    window.deeds.open_any(hurt)
    assert window.ask.deeds == ["&Rescue what can be read…"]
    assert "list of contents" in window.ask.told[-1]
    assert hurt.read_bytes() == before
    document = window.document
    assert document.path == hurt.with_name("hundred rescued.ultraplan")
    assert not document.is_read_only
    assert document.perform(WriteNotes("goes on"))
    assert read_project_after_closing(window).notes == "goes on"


def read_project_after_closing(window):
    path = window.document.path
    window.close_document()
    return read_project(path)


def test_a_text_is_no_project_and_nothing_is_offered(window, tmp_path):
    path = tmp_path / "letter.ultraplan"
    path.write_text("Dear runner, the course follows by post. " * 400)
    window.deeds.open_any(path)
    assert window.ask.deeds == []
    assert "is not an Ultraplanner project" in window.ask.told[0]


def test_a_rescue_that_fails_leaves_open_what_was_open(window, hurt, tmp_path):
    taken = tmp_path / "taken.ultraplan"
    ProjectFile.create(taken, demo_project(date.today())).close()
    window.ask.target = taken
    window.deeds.open_any(hurt)
    assert "already a file" in window.ask.told[-1]
    assert window.document is None


def test_one_looks_at_a_file_open_elsewhere_and_saves_a_copy(window, path, tmp_path):
    with ProjectFile.open(path) as file:
        window.deeds.open_any(path)
        assert window.ask.deeds == ["&Look at it without changing it"]
        assert "already open in another window" in window.ask.told[0]
        document = window.document
        assert document.is_read_only
        assert document.project == file.project
        document.perform(WriteNotes("not there"))
        assert not document.is_kept
        document.save_copy(tmp_path / "mine.ultraplan")
        window.close_document()
        assert file.project.notes != "not there"
    assert read_project(tmp_path / "mine.ultraplan").notes == "not there"
    assert read_project(path).notes != "not there"


def test_the_offer_stands_on_a_button(qtbot, window):
    done = []
    ask = Ask(window)
    ask.offer("Cannot open", "It is damaged.", "&Rescue…", lambda: done.append(True))
    box = window.findChild(QMessageBox)
    button = next(b for b in box.buttons() if b.text() == "&Rescue…")
    assert box.defaultButton() is not button
    button.click()
    assert done == [True]


@pytest.fixture
def document(path):
    document = Document(ProjectFile.open(path))
    yield document
    document.close()


@pytest.mark.parametrize("kind", ["block", "course"])
def test_the_state_before_a_large_change_is_a_point(document, kind):
    before = document.project
    edit = ReplaceBlock(Block()) if kind == "block" else ReplaceCourse(before.course)
    if kind == "course":
        document.perform(WriteNotes("first"))
        edit = ReplaceCourse(_other(before.course))
        before = document.project
    assert document.perform(edit)
    point = document.history()[0]
    assert point.label == f"Before: {edit.label}"
    assert document.go_back(point.id)
    assert document.project == before


def _other(course):
    return replace(course, name="Another one")


def test_small_changes_make_no_points(document):
    document.perform(WriteNotes("one"))
    count = len(document.history())
    document.perform(WriteNotes("two"))
    assert len(document.history()) == count


def test_a_state_is_named_and_found_again(qtbot, window, path):
    window.deeds.open_any(path)
    window.document.perform(WriteNotes("as named"))
    window.deeds.name_state()
    form = window.findChild(NameForm)
    form._on_accepted()
    assert form.isVisible()
    assert form._trouble.text()
    form.name.setText("  before the   camp ")
    form._on_accepted()
    assert not form.isVisible()
    window.document.perform(WriteNotes("later"))
    window.deeds.history()
    points = window.findChild(QListWidget)
    assert any("before the camp" in points.item(row).text() for row in range(points.count()))
    point = next(p for p in window.document.history() if p.label == "before the camp")
    window.document.go_back(point.id)
    assert window.document.project.notes == "as named"


def test_too_many_names_are_refused_in_the_form(qtbot, window, path):
    window.deeds.open_any(path)
    for number in range(MOST_NAMED):
        window.document.mark(f"state {number}")
    window.deeds.name_state()
    form = window.findChild(NameForm)
    form.name.setText("one more")
    form._on_accepted()
    assert str(MOST_NAMED) in form._trouble.text()

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from tests.store.projects import full_project, small_project
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.open_note import note_beside, read_note
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.store.troubles import Elsewhere

ROOT = Path(__file__).resolve().parents[2]

HOLDER = """
import sys
from msgspec.structs import replace
from ultraplanner_gui.store.project_file import ProjectFile
file = ProjectFile.open(sys.argv[1])
file.leave_note()
print("open", flush=True)
count = 0
while sys.argv[2] == "keeps" or sys.stdin.readline():
    count += 1
    file.keep(replace(file.project, notes=str(count) * 400), "Write notes")
"""


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "hill.ultraplan"
    ProjectFile.create(path, full_project(sessions=30, points=300)).close()
    return path


@pytest.fixture
def elsewhere(path):
    """Have *path* open in another process, which waits or keeps all the time."""
    runs = []

    def start(how):
        run = subprocess.Popen(
            [sys.executable, "-c", HOLDER, str(path), how],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            cwd=ROOT,
        )
        runs.append(run)
        assert run.stdout.readline() == "open\n"
        return run

    yield start
    for run in runs:
        run.kill()
        run.communicate()


def test_the_message_says_who_and_since_when(path, elsewhere):
    run = elsewhere("waits")
    holder = read_note(path)
    assert holder.pid == run.pid
    with pytest.raises(Elsewhere) as caught:
        ProjectFile.open(path)
    sentence = str(caught.value)
    assert holder.user in sentence
    assert holder.host in sentence
    assert f"since {holder.since.astimezone():%Y-%m-%d %H:%M}" in sentence
    assert len(sentence) <= 200


def test_the_note_goes_when_the_file_is_closed(path):
    with ProjectFile.open(path) as file:
        assert not note_beside(path).exists()
        file.leave_note()
        assert note_beside(path).exists()
    assert not note_beside(path).exists()


def test_a_note_left_by_a_stopped_program_is_in_nobodys_way(path, elsewhere):
    run = elsewhere("waits")
    run.kill()
    run.communicate()
    assert note_beside(path).exists()
    assert read_note(path).is_gone
    with ProjectFile.open(path) as file:
        file.leave_note()
        assert read_note(path).pid == os.getpid()
    assert not note_beside(path).exists()


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"\xff\xfe",
        b"[" * 4000,
        b"{}",
        b"7",
        json.dumps({"user": "a", "host": "b", "pid": "c", "since": "d"}).encode(),
        json.dumps({"user": "a", "host": "b", "pid": 1, "since": "2027-01-01"}).encode(),
        json.dumps({"user": "a", "host": "b", "pid": 10**30, "since": "2027-01-01Z"}).encode(),
    ],
)
def test_a_note_that_makes_no_sense_is_ignored(path, elsewhere, content):
    elsewhere("waits")
    note_beside(path).write_bytes(content)
    assert read_note(path) is None
    with pytest.raises(Elsewhere, match="already open in another window"):
        ProjectFile.open(path)


def test_long_words_in_a_note_leave_room_for_the_sentence(path, elsewhere):
    run = elsewhere("waits")
    since = "2027-01-01T06:00:00+00:00"
    words = {"user": "u\n" * 900, "host": "h" * 1000, "pid": run.pid, "since": since}
    note_beside(path).write_text(json.dumps(words))
    with pytest.raises(Elsewhere) as caught:
        ProjectFile.open(path)
    assert len(str(caught.value)) <= 200
    assert "\n" not in str(caught.value)


def test_a_note_that_cannot_be_written_is_in_nobodys_way(path):
    note_beside(path).mkdir()
    with ProjectFile.open(path) as file:
        file.leave_note()
        file.keep(small_project("kept"), "Start over")
    with ProjectFile.open(path) as file:
        assert file.project.notes == "kept"


def test_one_may_look_at_a_file_open_elsewhere(path, elsewhere):
    run = elsewhere("waits")
    with ProjectFile.look(path) as look:
        assert look.project == full_project(sessions=30, points=300)
        assert look.is_read_only
        with pytest.raises(StoreError, match="read-only"):
            look.keep(small_project(), "Start over")
    run.stdin.write("\n")
    run.stdin.flush()
    run.communicate(timeout=20)
    with ProjectFile.open(path) as file:
        assert file.project.notes == "1" * 400


def test_looking_while_it_is_being_written_shows_a_whole_state(path, elsewhere):
    elsewhere("keeps")
    for _ in range(20):
        with ProjectFile.look(path) as look:
            assert len(look.project.block.sessions) == 30
            notes = look.project.notes
            assert notes == notes[: len(notes) // 400] * 400 or notes.startswith("Line one")


def test_looking_gives_up_no_lock_of_the_same_process(path):
    with ProjectFile.open(path) as file:
        file.keep(replace(file.project, notes="now"), "Write notes")
        with ProjectFile.look(path) as look:
            assert look.project.notes == "now"
        with pytest.raises(Elsewhere):
            ProjectFile.open(path)
        code = "import sys; from ultraplanner_gui.store.project_file import *; "
        code += "ProjectFile.open(sys.argv[1])"
        done = subprocess.run(
            [sys.executable, "-c", code, str(path)], cwd=ROOT, capture_output=True, text=True
        )
        assert "already open in another window" in done.stderr
        file.keep(small_project("later"), "Start over")


def test_a_copy_of_what_is_looked_at_can_be_saved(path, elsewhere, tmp_path):
    elsewhere("waits")
    with ProjectFile.look(path) as look:
        look.save_copy(tmp_path / "mine.ultraplan")
        whole = look.project
    with ProjectFile.open(tmp_path / "mine.ultraplan") as file:
        assert file.project == whole


def test_a_damaged_file_is_refused_to_a_look(path):
    raw = bytearray(path.read_bytes())
    raw[len(raw) // 2 :] = bytes(len(raw) - len(raw) // 2)
    path.write_bytes(raw)
    with pytest.raises(StoreError):
        ProjectFile.look(path)


def test_unnamed_points_go_and_named_ones_stay(path):
    with ProjectFile.open(path) as file:
        file.mark("before the camp")
        for number in range(40):
            file.mark(f"Before: {number}", is_named=False)
        labels = [point.label for point in file.history()]
    assert "before the camp" in labels
    assert len(labels) == 31
    assert labels[0] == "Before: 39"

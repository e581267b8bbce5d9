import itertools
import os
import sqlite3
import stat
import subprocess
import sys
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import HealthCheck, given, settings
from msgspec.structs import replace

from tests.store.projects import full_project, projects, small_project
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.plan.course import Line
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store import parts, project_file
from ultraplanner_gui.store.project_file import OPENINGS_HELD, ProjectFile


@pytest.fixture
def path(tmp_path):
    return tmp_path / "hill.ultraplan"


def rows(path, sql="SELECT count(*) FROM part"):
    with sqlite3.connect(path) as connection:
        found = connection.execute(sql).fetchall()
    connection.close()
    return found


def test_reopened_project_is_the_same(path):
    project = full_project()
    ProjectFile.create(path, project).close()
    with ProjectFile.open(path) as file:
        assert file.project == project
        assert file.project.race.start.tzinfo is project.race.start.tzinfo
        assert not file.project.course.line.latitude_deg.flags.writeable


@given(projects, projects)
@settings(
    max_examples=60,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
def test_any_project_is_read_back_as_kept(tmp_path, first, second):
    path = tmp_path / "any.ultraplan"
    with ProjectFile.create(path, first, overwrite=True) as file:
        assert file.project == first
        file.keep(second, "Change")
    with ProjectFile.open(path) as file:
        assert file.project == second
        assert [file.at(point.id) for point in file.history()] == [first] or first == second


def test_kept_at_is_now_and_aware(path):
    with ProjectFile.create(path, small_project()) as file:
        file.keep(small_project("x"), "Write notes")
        assert timedelta(0) <= datetime.now(UTC) - file.kept_at < timedelta(seconds=30)


def test_moved_session_writes_one_week_and_drops_the_old(path):
    project = full_project()
    with ProjectFile.create(path, project) as file:
        file.keep(replace(project, notes="x"), "Write notes")
        session = project.block.sessions[100]
        moved = MoveSession(session.key, session.day + timedelta(days=1)).apply(file.project)
        before = path.stat().st_size
        file.keep(moved, "Move session")
        again = MoveSession(session.key, session.day).apply(moved)
        file.keep(again, "Move session")
        assert path.stat().st_size - before < 20_000
    with ProjectFile.open(path) as file:
        assert file.project == again
    digests, states = rows(path)[0][0], rows(path, "SELECT count(*) FROM state")[0][0]
    assert states == 2
    with ProjectFile.create(path.with_name("fresh.ultraplan"), again) as file:
        pass
    assert digests - rows(path.with_name("fresh.ultraplan"))[0][0] <= 3


def test_part_that_did_not_change_is_not_made_again(path, monkeypatch):
    project = full_project(sessions=30, points=60)
    ProjectFile.create(path, project).close()
    made = []
    encode = parts.encode
    monkeypatch.setattr(parts, "encode", lambda *args: made.append(args[2]) or encode(*args))
    monkeypatch.setattr(parts, "pack_line", None)
    with ProjectFile.open(path) as file:
        project = file.project
        moved = replace(project.block.sessions[20], distance_m=1.0)
        file.keep(replace(project, block=project.block.with_session(moved)), "Change session")
        assert made == ["sessions"]
        course = replace(file.project.course, name="Other")
        file.keep(replace(file.project, course=course), "Change course")
        assert made == ["sessions", "course"]


def test_course_line_is_held_once_for_all_states(path):
    project = full_project(sessions=2)
    ProjectFile.create(path, project).close()
    for number in range(3):
        with ProjectFile.open(path) as file:
            file.keep(replace(file.project, notes=f"{number}"), "Write notes")
    bodies = [body for (body,) in rows(path, "SELECT body FROM part") if body[:4] == b"cols"]
    assert len(bodies) == 1


def test_history_leads_back_to_each_opening(path):
    ProjectFile.create(path, small_project("0")).close()
    for number in range(1, 4):
        with ProjectFile.open(path) as file:
            file.keep(small_project(f"{number} first"), "Write notes")
            file.keep(small_project(f"{number}"), "Write notes")
    with ProjectFile.open(path) as file:
        assert [file.at(number).notes for number, _, _ in file.history()] == ["2", "1", "0"]
        assert file.history()[0].label == "Write notes"
        assert file.project.notes == "3"


def test_opening_and_looking_writes_nothing(path):
    ProjectFile.create(path, full_project(4, 50)).close()
    before = path.read_bytes()
    with ProjectFile.open(path) as file:
        file.history()
        file.keep(file.project, "Nothing")
    assert path.read_bytes() == before
    assert [p.name for p in path.parent.iterdir()] == [path.name]


def test_history_is_bounded_and_its_leavings_removed(path):
    ProjectFile.create(path, small_project()).close()
    for number in range(OPENINGS_HELD + 3):
        with ProjectFile.open(path) as file:
            file.keep(small_project(f"{number}"), "Write notes")
            if number == 0:
                file.mark("Before the taper")
    with ProjectFile.open(path) as file:
        history = file.history()
        assert len(history) == OPENINGS_HELD + 1
        assert history[-1].label == "Before the taper"
        assert file.at(history[-1].id).notes == "0"
        assert file.at(history[0].id).notes == f"{OPENINGS_HELD + 1}"
    # project and manifest differ in each state, five parts are shared by all
    assert rows(path)[0][0] <= 2 * (OPENINGS_HELD + 2) + 7


def test_copy_is_complete_and_the_original_goes_on(path, tmp_path):
    with ProjectFile.create(path, small_project("0")) as file:
        file.keep(small_project("1"), "Write notes")
        file.save_copy(tmp_path / "copy.ultraplan")
        file.keep(small_project("2"), "Write notes")
        with ProjectFile.open(tmp_path / "copy.ultraplan") as copy:
            assert copy.project.notes == "1"
            assert copy.at(copy.history()[0].id).notes == "0"
        assert file.project.notes == "2"
        assert stat.S_IMODE((tmp_path / "copy.ultraplan").stat().st_mode) == stat.S_IMODE(
            path.stat().st_mode
        )


def test_copy_takes_along_what_could_not_be_kept(path, tmp_path):
    with ProjectFile.create(path, small_project("kept")) as file:
        path.unlink()
        with pytest.raises(StoreError, match="moved or removed"):
            file.keep(small_project("not kept"), "Write notes")
        file.save_copy(tmp_path / "saved.ultraplan", small_project("not kept"))
    with ProjectFile.open(tmp_path / "saved.ultraplan") as saved:
        assert saved.project.notes == "not kept"


def test_copy_over_an_open_file_is_refused(path, tmp_path):
    other = tmp_path / "other.ultraplan"
    with (
        ProjectFile.create(path, small_project("a")) as file,
        ProjectFile.create(other, small_project("b")),
    ):
        for target in (path, other):
            with pytest.raises(StoreError, match="already open"):
                file.save_copy(target)


def test_new_file_does_not_overwrite(path):
    path.write_text("mine")
    with pytest.raises(StoreError, match="already a file"):
        ProjectFile.create(path, small_project())
    assert path.read_text() == "mine"


def test_new_file_in_a_missing_folder_is_refused(tmp_path):
    with pytest.raises(StoreError, match="could not be written"):
        ProjectFile.create(tmp_path / "away" / "a.ultraplan", small_project())


def test_second_window_of_the_same_program_is_refused(path):
    with ProjectFile.create(path, small_project()) as file:
        with pytest.raises(StoreError, match="already open in another window"):
            ProjectFile.open(path)
        file.keep(small_project("still locked"), "Write notes")
        assert open_elsewhere(path) == "refused"
    assert open_elsewhere(path) == "still locked"


def open_elsewhere(path):
    code = """
import sys
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.project_file import ProjectFile
try:
    print(ProjectFile.open(sys.argv[1]).project.notes, end="")
except StoreError as error:
    assert "already open in another window" in str(error), error
    print("refused", end="")
"""
    run = [sys.executable, "-c", code, str(path)]
    return subprocess.run(run, check=True, capture_output=True, text=True).stdout


def test_moved_file_is_said_and_keeping_goes_on_when_it_is_back(path):
    with ProjectFile.create(path, small_project()) as file:
        away = path.rename(path.with_name("elsewhere.ultraplan"))
        with pytest.raises(StoreError, match="moved or removed while open"):
            file.keep(small_project("x"), "Write notes")
        away.rename(path)
        file.keep(small_project("x"), "Write notes")
        assert file.project.notes == "x"


def test_protected_file_opens_and_refuses_to_keep(path, monkeypatch):
    ProjectFile.create(path, small_project("as it was")).close()
    # permission bits do not bind root, under which tests may run
    monkeypatch.setattr(project_file.os, "access", lambda place, mode: False)
    before = path.read_bytes()
    with ProjectFile.open(path) as file:
        assert file.is_read_only
        for _ in range(2):
            with pytest.raises(StoreError, match="read-only"):
                file.keep(small_project("x"), "Write notes")
        with pytest.raises(StoreError, match="read-only"):
            file.mark("x")
        assert file.project.notes == "as it was"
    assert path.read_bytes() == before


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="needs binding permission bits")
def test_folder_without_write_permission_opens_read_only(path):
    ProjectFile.create(path, small_project()).close()
    path.parent.chmod(0o500)
    try:
        with ProjectFile.open(path) as file:
            assert file.is_read_only
    finally:
        path.parent.chmod(0o700)


def test_what_could_not_be_read_back_is_not_kept(path):
    project = full_project(4, 50)
    course = project.course
    broken = (
        replace(project, notes="x" * 300_000),
        replace(project, race=replace(project.race, goal_s=float("nan"))),
        replace(project, first_weekday=9),
        replace(project, fuel=replace(project.fuel, foods=())),
        replace(project, course=replace(course, stations=())),
        replace(
            project,
            course=replace(
                course, line=Line(course.line.latitude_deg + 90.0, *[course.line.longitude_deg] * 2)
            ),
        ),
    )
    with ProjectFile.create(path, project) as file:
        for unfit in broken:
            with pytest.raises(StoreError, match="cannot be kept"):
                file.keep(unfit, "Break")
        assert file.project is not None
    with ProjectFile.open(path) as file:
        assert file.project == project


def test_every_sentence_is_short(path):
    sentences = []
    for spoil in (lambda: path.write_bytes(b""), lambda: path.unlink()):
        spoil()
        with pytest.raises(StoreError) as caught:
            ProjectFile.open(path)
        sentences.append(str(caught.value))
    assert all(len(sentence) <= 200 for sentence in sentences)


def test_disk_that_fills_up_loses_nothing_kept(path):
    """A limit on the size of files stands for the disk's."""
    pytest.importorskip("resource")
    code = """
import resource, signal, sys
from msgspec.structs import replace
from tests.store.projects import small_project
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.project_file import ProjectFile
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
with ProjectFile.create(sys.argv[1], small_project("0")) as file:
    resource.setrlimit(resource.RLIMIT_FSIZE, (60_000, 60_000))
    kept = 0
    try:
        for number in range(1, 30):
            file.keep(small_project(f"{number} " + "x" * 4_000 * number), "Write notes")
            kept = number
    except StoreError as error:
        assert "not kept" in str(error) or "could not be written" in str(error), error
    else:
        raise AssertionError("the disk never filled up")
    assert file.project.notes.startswith(f"{kept} ")
    file.keep(small_project("small"), "Write notes")
    print(kept)
"""
    run = subprocess.run(
        [sys.executable, "-c", code, str(path)], capture_output=True, text=True, check=False
    )
    assert run.returncode == 0, run.stderr
    assert int(run.stdout) > 0
    with ProjectFile.open(path) as file:
        assert file.project.notes == "small"


def test_numbers_of_points_are_never_used_again_while_held(path):
    with ProjectFile.create(path, small_project()) as file:
        for number in range(4):
            file.keep(small_project(f"{number}"), "Write notes")
            file.mark(f"mark {number}")
        numbers = [point.id for point in file.history()]
    assert all(a > b for a, b in itertools.pairwise(numbers))

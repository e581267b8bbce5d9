import random
import sqlite3
import tracemalloc
import zipfile
from contextlib import closing

import pytest
from msgspec.structs import replace

from tests.store.hostile_files import (
    FORGED,
    SCHEMAS,
    deflated,
    fields,
    first,
    forged,
    line_with,
)
from tests.store.projects import full_project, small_project
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.database import VERSION
from ultraplanner_gui.store.header import APPLICATION_ID
from ultraplanner_gui.store.project_file import ProjectFile


@pytest.fixture
def path(tmp_path):
    """A file with a course, a block and one earlier state."""
    path = tmp_path / "hill.ultraplan"
    project = full_project(sessions=20, points=120)
    with ProjectFile.create(path, project) as file:
        file.keep(replace(project, notes="later"), "Write notes")
    return path


def contents(path):
    with ProjectFile.open(path) as file:
        earlier = []
        for number, when, label in file.history():
            try:
                earlier.append((when, label, file.at(number)))
            except StoreError:
                earlier.append(None)
        return file.project, earlier


def is_sound(path, whole):
    """Whether what opens is what was kept; an earlier state may be missing, never different."""
    try:
        project, earlier = contents(path)
    except StoreError as error:
        return 0 < len(str(error)) <= 200
    return project == whole[0] and all(state in (None, *whole[1]) for state in earlier)


def test_no_flipped_byte_goes_unseen(path):
    whole, raw = contents(path), path.read_bytes()
    places = random.Random(4).sample(range(len(raw)), 240)
    found = 0
    for place in [*range(100), *places]:
        spoilt = bytearray(raw)
        spoilt[place] ^= 1 << (place % 8)
        path.write_bytes(spoilt)
        assert is_sound(path, whole), place
        if not opens(path):
            found += 1
            assert path.read_bytes() == spoilt
    assert found > 100


@pytest.mark.parametrize("counted", ["change", "valid for"])
def test_a_size_in_the_header_that_sqlite_would_put_right_is_refused_and_left(path, counted):
    # SQLite file format, 1.3.7: the size counts only if both counts of changes are the same
    raw = path.read_bytes()
    for place in [*range(24, 32), *range(92, 100)]:
        spoilt = bytearray(raw)
        spoilt[27 if counted == "change" else 95] ^= 8
        spoilt[place] ^= 1
        path.write_bytes(spoilt)
        assert not opens(path)
        assert path.read_bytes() == spoilt
    no_size = raw[:28] + bytes(4) + raw[32:]
    path.write_bytes(no_size)
    assert not opens(path)
    assert path.read_bytes() == no_size


def opens(path):
    try:
        ProjectFile.open(path).close()
    except StoreError:
        return False
    return True


def test_no_cut_goes_unseen(path):
    raw = path.read_bytes()
    for size in (1, 15, 99, 100, 511, 4095, 4096, len(raw) // 2, len(raw) - 4096, len(raw) - 1):
        path.write_bytes(raw[:size])
        with pytest.raises(StoreError):
            ProjectFile.open(path)
        assert path.read_bytes() == raw[:size]


def test_appended_bytes_are_refused(path):
    path.write_bytes(path.read_bytes() + b"x")
    with pytest.raises(StoreError):
        ProjectFile.open(path)


def write_zip(path):
    with zipfile.ZipFile(path, "w") as archive:
        archive.writestr("project", "x" * 200)


@pytest.mark.parametrize(
    "write",
    [
        lambda path: path.write_bytes(b""),
        lambda path: path.write_text("<gpx/>" * 100),
        lambda path: path.write_bytes(b"\x89PNG\r\n\x1a\n" + bytes(200)),
        lambda path: path.write_bytes(b"SQLite format 3\x00"),
        write_zip,
        lambda path: sqlite3.connect(path).execute("CREATE TABLE t (a)").connection.close(),
    ],
    ids=["empty", "text", "picture", "stump", "archive", "other database"],
)
def test_file_of_another_kind_is_refused_and_left_alone(tmp_path, write):
    path = tmp_path / "other.ultraplan"
    write(path)
    before = path.read_bytes()
    with pytest.raises(StoreError, match="is not an Ultraplanner project"):
        ProjectFile.open(path)
    assert path.read_bytes() == before
    assert [p.name for p in tmp_path.iterdir()] == [path.name]


def test_folder_and_missing_file_are_refused(tmp_path):
    with pytest.raises(StoreError, match="is not an Ultraplanner project"):
        ProjectFile.open(tmp_path)
    with pytest.raises(StoreError, match=r"no file away\.ultraplan any more"):
        ProjectFile.open(tmp_path / "away.ultraplan")


@pytest.mark.parametrize(
    "statement",
    SCHEMAS,
)
def test_file_with_other_tables_views_or_triggers_is_refused(path, statement):
    with closing(sqlite3.connect(path)) as connection:
        connection.executescript(statement)
    before = path.read_bytes()
    with pytest.raises(StoreError, match="damaged and was left as it is"):
        ProjectFile.open(path)
    assert path.read_bytes() == before


@pytest.mark.parametrize(
    ("version", "says"), [(VERSION + 1000, "newer Ultraplanner"), (999, "never wrote")]
)
def test_other_versions_are_refused_in_words(path, version, says):
    with closing(sqlite3.connect(path)) as connection:
        connection.execute(f"PRAGMA user_version = {version}")
    before = path.read_bytes()
    with pytest.raises(StoreError, match=says):
        ProjectFile.open(path)
    assert path.read_bytes() == before


def test_write_ahead_log_is_refused(path):
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA journal_mode = WAL")
    with pytest.raises(StoreError):
        ProjectFile.open(path)


@pytest.mark.parametrize(
    ("name", "change"),
    FORGED,
)
def test_forged_part_is_refused_by_name(path, name, change):
    forged(path, name, change)
    with pytest.raises(StoreError, match=r"^The part .* is not as it should be"):
        ProjectFile.open(path)


@pytest.mark.parametrize(
    ("name", "change"),
    [
        ("race", fields(unheard=1)),
        ("fuel", fields(items=[{"key": "more"}])),
        ("sessions", first(mood="fine")),
    ],
)
def test_fields_that_are_not_known_are_passed_over(path, name, change):
    whole = contents(path)
    forged(path, name, change)
    assert contents(path)[0] == whole[0]


def test_line_of_the_first_files_is_read(path):
    with ProjectFile.open(path) as file:
        line = file.project.course.line
    forged(path, "line", line_with(pack=deflated))
    with ProjectFile.open(path) as file:
        assert file.project.course.line == line


def test_body_that_swells_is_not_unpacked(path):
    forged(path, "line", line_with(swell=200_000_000, pack=deflated))
    tracemalloc.start()
    try:
        with pytest.raises(StoreError):
            ProjectFile.open(path)
        assert tracemalloc.get_traced_memory()[1] < 20_000_000
    finally:
        tracemalloc.stop()


def test_forged_numbers_in_other_dress_are_read(path):
    """A whole number where a figure is meant is the same figure."""
    forged(path, "race", fields(goal_s=40_000))
    with ProjectFile.open(path) as file:
        assert file.project.race.goal_s == 40_000.0


def test_file_of_a_newer_minor_version_opens_and_loses_nothing_untouched(path):
    forged(path, "runner", fields(resting_pulse=48))
    with closing(sqlite3.connect(path)) as connection:
        connection.execute(f"PRAGMA user_version = {VERSION + 1}")
    with ProjectFile.open(path) as file:
        file.keep(replace(file.project, notes="older program"), "Write notes")
    with closing(sqlite3.connect(path)) as connection:
        bodies = [body for (body,) in connection.execute("SELECT body FROM part")]
        assert any(b'"resting_pulse": 48' in body for body in bodies)
        assert connection.execute("PRAGMA user_version").fetchone() == (VERSION + 1,)


def test_damaged_earlier_state_does_not_lock_out_the_project(path):
    whole = contents(path)
    with closing(sqlite3.connect(path)) as connection, connection:
        connection.execute("UPDATE state SET seal = zeroblob(20) WHERE id = 1")
    with ProjectFile.open(path) as file:
        assert file.project == whole[0]
        assert file.history() == []
        file.keep(small_project(), "Start over")
    with ProjectFile.open(path) as file:
        assert [file.at(point.id) for point in file.history()] == [whole[0]]


def test_application_id_is_ours(path):
    assert int.from_bytes(path.read_bytes()[68:72], "big") == APPLICATION_ID


def test_schema_that_is_no_text_is_refused_in_words(path):
    """SQLite quotes it in its own message, which Python then cannot decode."""
    raw = path.read_bytes()
    at = raw.index(b"CREATE TABLE part (digest")
    path.write_bytes(raw[:at] + b"CREATE TABLE part (\xa4\xa4\xa4\xa4" + raw[at + 23 :])
    with pytest.raises(StoreError, match="damaged and was left as it is"):
        ProjectFile.open(path)

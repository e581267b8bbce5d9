import json
import random
import sqlite3
import struct
import tracemalloc
import zipfile
import zlib
from contextlib import closing
from dataclasses import replace

import numpy as np
import pytest

from tests.store.projects import full_project, small_project
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.database import APPLICATION_ID, VERSION, Database
from ultraplanner_gui.store.line_body import pack_line, unpack_line
from ultraplanner_gui.store.parts import digest_of
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
    [
        "CREATE TRIGGER t AFTER UPDATE ON state BEGIN DELETE FROM part; END",
        "CREATE TRIGGER t BEFORE INSERT ON part BEGIN DELETE FROM state; END",
        "CREATE VIEW v AS SELECT hex(zeroblob(400000000))",
        "CREATE TABLE extra (a)",
        "CREATE INDEX i ON state (body)",
        "ALTER TABLE state ADD COLUMN more BLOB",
        "DROP TABLE state",
        "DROP TABLE part; CREATE VIEW part AS WITH RECURSIVE n (digest, body) AS "
        "(SELECT 1, 2 UNION ALL SELECT digest + 1, body FROM n) SELECT * FROM n",
    ],
)
def test_file_with_other_tables_views_or_triggers_is_refused(path, statement):
    with closing(sqlite3.connect(path)) as connection:
        connection.executescript(statement)
    before = path.read_bytes()
    with pytest.raises(StoreError, match="damaged and was left as it is"):
        ProjectFile.open(path)
    assert path.read_bytes() == before


@pytest.mark.parametrize(("version", "says"), [(2000, "newer Ultraplanner"), (999, "never wrote")])
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


def forged(path, name, change):
    """Rewrite the parts *name* with right checksums, as someone would who means harm."""
    with closing(Database.take(path)) as database, database.transaction():
        state = json.loads(database.states()[0])
        manifest = json.loads(database.body(state["root"]))
        bodies = [change(database.body(digest)) for digest in manifest[name]]
        manifest[name] = [digest_of(body) for body in bodies]
        root = json.dumps(manifest).encode()
        state["root"] = digest_of(root)
        database.put_parts({digest_of(body): body for body in (*bodies, root)})
        database.put_state(0, json.dumps(state).encode())


def fields(**changes):
    return lambda body: json.dumps({**json.loads(body), **changes}).encode()


def first(**changes):
    def change(body):
        rows = json.loads(body)
        return json.dumps([{**rows[0], **changes}, *rows[1:]]).encode()

    return change


def line_with(points=None, swell=0, pack=pack_line, **columns):
    def change(body):
        line = unpack_line(body)
        for name, value in columns.items():
            column = getattr(line, name).copy()
            column[3] = value
            line = replace(line, **{name: column})
        if pack is deflated:
            return deflated(line, points, swell)
        body = pack_line(line)
        return body[:4] + (points or len(line)).to_bytes(4, "little") + body[8:] + bytes(swell)

    return change


def deflated(line, points=None, swell=0):
    """Return *line* as the first files held it."""
    raw = np.array(line.gaps, "<u4").tobytes() + b"".join(
        column.astype("<f8").tobytes()
        for column in (line.latitude_deg, line.longitude_deg, line.elevation_m)
    )
    head = struct.pack("<4sII", b"line", points or len(line), len(line.gaps))
    return head + zlib.compress(raw + bytes(swell))


def decimals(number):
    return lambda body: body[:12] + bytes((number,)) + body[13:]


@pytest.mark.parametrize(
    ("name", "change"),
    [
        ("race", fields(goal_s=1e400)),
        ("race", fields(goal_s=-5)),
        ("race", fields(goal_s=10**30)),
        ("race", fields(goal_s=True)),
        ("race", fields(name=7)),
        ("race", fields(name="x" * 300_000)),
        ("race", fields(start="2027-06-19T06:00:00")),
        ("race", fields(start="2027-06-19T06:00:00+01:00[../../etc/localtime]")),
        ("race", fields(start="2027-06-19T06:00:00+01:00[Nowhere/Land]")),
        ("race", fields(start="0001-01-01T00:00:00+14:00")),
        ("race", fields(unheard=1)),
        ("race", lambda body: b'{"name":NaN}'),
        ("race", lambda body: b"[" * 200_000),
        ("race", lambda body: b"\xff\xfe"),
        ("race", lambda body: b"{}"),
        ("runner", fields(available_s=[1.0])),
        ("runner", fields(level="superhuman")),
        ("project", fields(first_weekday=7)),
        ("project", fields(first_weekday=1.5)),
        ("block", fields(cutbacks=[1] * 30_000)),
        ("sessions", first(day="2027-02-30")),
        ("sessions", first(day="1777-02-03")),
        ("sessions", first(done={"distance_m": 1.0})),
        ("sessions", first(key="s3")),
        ("items", first(food="nothing")),
        ("fuel", fields(items=[])),
        ("course", fields(length_m=0.0)),
        ("course", fields(stations=[])),
        ("course", fields(sections=[])),
        ("course", fields(official_m=51_000.0)),
        (
            "course",
            fields(pins=[{"at_m": 900.0, "line_m": 900.0}, {"at_m": 800.0, "line_m": 950.0}]),
        ),
        ("course", fields(pins=[{"at_m": 60_000.0, "line_m": 900.0}])),
        ("course", fields(surface_factors=[{"surface": "rock", "cost": 0.0, "descent": 1.0}])),
        ("course", fields(repairs=[{"template": "{0}", "args": [[1]]}])),
        ("line", lambda body: b""),
        ("line", lambda body: b"line" + bytes(50)),
        ("line", line_with(latitude_deg=91.0)),
        ("line", line_with(longitude_deg=float("nan"))),
        ("line", line_with(elevation_m=float("inf"))),
        ("line", line_with(points=1_000_000)),
        ("line", line_with(swell=1)),
        ("line", line_with(points=1_000_000, pack=deflated)),
        ("line", line_with(swell=1, pack=deflated)),
        ("line", decimals(8)),
        ("line", lambda body: body[:13]),
    ],
)
def test_forged_part_is_refused_by_name(path, name, change):
    forged(path, name, change)
    with pytest.raises(StoreError, match=r"^The part .* is not as it should be"):
        ProjectFile.open(path)


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

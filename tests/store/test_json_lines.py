import io
import json
import shutil

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.store.old.make import earlier, present, sample
from tests.store.projects import full_project, projects, small_project
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.json_lines import dump, lines_of, restore
from ultraplanner_gui.store.project_file import ProjectFile

SAME_FOLDER = [HealthCheck.function_scoped_fixture, HealthCheck.too_slow]


@pytest.fixture(scope="module")
def told(tmp_path_factory):
    """The lines of a project with something in every field and one earlier state."""
    path = tmp_path_factory.mktemp("told") / "full.ultraplan"
    with ProjectFile.create(path, small_project("as it was")) as file:
        file.keep(full_project(sessions=12, points=40), "Build the block")
        file.mark("before the taper")
    return list(dump(path))


def read(path):
    with ProjectFile.open(path) as file:
        points = file.history()
        return file.project, points, [file.at(point.id) for point in points]


def test_every_line_is_json_and_the_first_says_what_it_is(told):
    first, *others = map(json.loads, told)
    assert first == {"ultraplanner": "project", "version": 2000}
    assert {"body", "state"} == {next(iter(line)) for line in others}


def test_a_full_project_comes_back_with_its_history(tmp_path, told):
    path = tmp_path / "back.ultraplan"
    restore(told, "full.jsonl", path)
    project, points, states = read(path)
    assert project == full_project(sessions=12, points=40)
    assert [point.label for point in points] == ["before the taper", "New project"]
    assert states == [project, small_project("as it was")]
    assert list(dump(path)) == told


@given(projects, projects)
@settings(max_examples=40, suppress_health_check=SAME_FOLDER)
def test_any_project_comes_back_equal(tmp_path, first, second):
    path, back = tmp_path / "any.ultraplan", tmp_path / "back.ultraplan"
    with ProjectFile.create(path, first, overwrite=True) as file:
        file.keep(second, "Change")
    back.unlink(missing_ok=True)
    restore(dump(path), "any.jsonl", back)
    assert read(back) == read(path)


def test_coordinates_come_back_to_the_last_bit(tmp_path):
    project = full_project(sessions=1, points=40)
    line = project.course.line
    line = replace(line, latitude_deg=line.latitude_deg + 1.0 / 3.0)
    project = replace(project, course=replace(project.course, line=line))
    ProjectFile.create(tmp_path / "a.ultraplan", project).close()
    restore(dump(tmp_path / "a.ultraplan"), "a.jsonl", tmp_path / "b.ultraplan")
    back = read(tmp_path / "b.ultraplan")[0].course.line
    assert back.latitude_deg.tobytes() == line.latitude_deg.tobytes()
    assert back.elevation_m.tobytes() == line.elevation_m.tobytes()


@pytest.mark.parametrize("version", [1000, 1001, 1002])
def test_a_file_of_an_older_version_is_left_alone_and_comes_back_in_this_one(tmp_path, version):
    old, back = tmp_path / "old.ultraplan", tmp_path / "back.ultraplan"
    shutil.copyfile(sample(version), old)
    lines = list(dump(old))
    assert json.loads(lines[0])["version"] == version
    assert old.read_bytes() == sample(version).read_bytes()
    restore(lines, "old.jsonl", back)
    project, _, states = read(back)
    assert (project, states) == (present(version), [earlier()])


def test_an_open_project_can_be_dumped(tmp_path):
    path = tmp_path / "open.ultraplan"
    with ProjectFile.create(path, small_project("busy")):
        restore(dump(path), "open.jsonl", tmp_path / "back.ultraplan")
    assert read(tmp_path / "back.ultraplan")[0] == small_project("busy")


def test_a_file_that_is_there_is_not_written_over(tmp_path, told):
    path = tmp_path / "mine.ultraplan"
    path.write_text("precious")
    with pytest.raises(StoreError, match="already"):
        restore(told, "full.jsonl", path)
    assert path.read_text() == "precious"


def changed(told, which, change):
    lines = [json.loads(line) for line in told]
    index = next(i for i, line in enumerate(lines) if which in (line.get("part"), *line))
    change(lines[index])
    return [json.dumps(line).encode() for line in lines], index + 1


@pytest.mark.parametrize(
    ("which", "change"),
    [
        ("ultraplanner", lambda line: line.update(version=9000)),
        ("ultraplanner", lambda line: line.update(version="2000")),
        ("line", lambda line: line["value"]["latitude_deg"].pop()),
        ("line", lambda line: line["value"].update(elevation_m=["high"] * 40)),
        ("line", lambda line: line["value"].update(gaps=[40])),
        ("line", lambda line: line["value"].update(longitude_deg=[10**400] * 40)),
        ("tracks", lambda line: line.update(value="&&&")),
        ("sessions", lambda line: line.update(body=1)),
        ("sessions", lambda line: line.update(more=1)),
        ("state", lambda line: line["parts"].update(sessions=[99_999])),
        ("state", lambda line: line["parts"].update(line=[1])),
        ("state", lambda line: line.update(kept_at="yesterday")),
        ("state", lambda line: line.update(state=True)),
    ],
)
def test_a_hostile_line_is_named(tmp_path, told, which, change):
    lines, number = changed(told, which, change)
    with pytest.raises(StoreError, match=rf"^Line {number} of x\.jsonl") as refusal:
        restore(lines, "x.jsonl", tmp_path / "x.ultraplan")
    assert len(str(refusal.value)) <= 200
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("part", "change"),
    [
        ("runner", lambda value: value.update(weight_kg="heavy")),
        ("runner", lambda value: value.update(wings=2)),
        ("race", lambda value: value.update(goal_s=-1.0)),
        ("sessions", lambda value: value.append(value[0])),
        ("line", lambda value: value.update(latitude_deg=[91.0] * 40)),
        ("project", lambda value: value.update(first_weekday=9)),
    ],
)
def test_a_part_that_does_not_fit_is_named(tmp_path, told, part, change):
    lines, _ = changed(told, part, lambda line: change(line["value"]))
    with pytest.raises(StoreError, match="not as it should be") as refusal:
        restore(lines, "x.jsonl", tmp_path / "x.ultraplan")
    assert part.rstrip("s") in str(refusal.value)
    assert list(tmp_path.iterdir()) == []


def test_a_number_beyond_all_numbers_is_refused(tmp_path, told):
    lines = [line.replace(b'"goal_s":46800.0', b'"goal_s":1e999') for line in told]
    with pytest.raises(StoreError, match="race"):
        restore(lines, "x.jsonl", tmp_path / "x.ultraplan")


@pytest.mark.parametrize("keep", [0, 1, -1])
def test_lines_cut_off_are_no_project(tmp_path, told, keep):
    with pytest.raises(StoreError, match=r"x\.jsonl"):
        restore(told[:keep], "x.jsonl", tmp_path / "x.ultraplan")


@given(st.data())
@settings(max_examples=150, suppress_health_check=SAME_FOLDER)
def test_any_garbled_lines_are_refused_or_read(tmp_path, told, data):
    raw = bytearray(b"".join(told))
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(raw) - 1))
        raw[at : at + data.draw(st.integers(0, 30))] = data.draw(st.binary(max_size=6))
    path = tmp_path / "x.ultraplan"
    path.unlink(missing_ok=True)
    try:
        restore(lines_of(io.BytesIO(bytes(raw))), "x.jsonl", path)
    except StoreError:
        assert list(tmp_path.iterdir()) == []
    else:
        read(path)


def test_more_states_than_a_file_holds_are_refused(tmp_path, told):
    state = json.loads(told[-1])
    more = [json.dumps({**state, "state": number}).encode() for number in range(1, 200)]
    lines = [*(line for line in told if b'"state"' not in line[:10]), *more, told[-1]]
    with pytest.raises(StoreError, match=r"^Line \d+ of"):
        restore(lines, "x.jsonl", tmp_path / "x.ultraplan")


def test_nesting_without_end_is_refused(tmp_path, told):
    with pytest.raises(StoreError, match="Line 2"):
        restore([told[0], b"[" * 200_000], "x.jsonl", tmp_path / "x.ultraplan")

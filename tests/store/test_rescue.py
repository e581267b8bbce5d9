import random
import time

import pytest
from msgspec.structs import replace

from tests.store.old.make import sample
from tests.store.projects import full_project, small_project
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.store.pages import PAGE_BYTES, records
from ultraplanner_gui.store.parts import pieces
from ultraplanner_gui.store.project_file import ProjectFile, read_project
from ultraplanner_gui.store.rescue import NAMES, has_something_left, read_what_is_left, rescue
from ultraplanner_gui.store.soundness import unsound_part


@pytest.fixture
def path(tmp_path):
    """A file with a course, a block and one earlier state."""
    path = tmp_path / "hill.ultraplan"
    project = full_project(sessions=60, points=900)
    with ProjectFile.create(path, project) as file:
        moved = replace(project.block.sessions[7], note="on the far side")
        block = project.block.with_session(moved)
        file.keep(replace(project, notes="later", block=block), "Write notes")
    return path


def heads(project):
    """Return what can be compared part by part, by the name of the part."""
    return {
        "race": project.race,
        "runner": project.runner,
        "sessions": project.block.sessions,
        "block": replace(project.block, sessions=()),
        "foods": project.fuel.foods,
        "items": project.fuel.items,
        "fuel": replace(project.fuel, foods=(), items=()),
        "cards": project.cards,
        "candidates": project.candidates,
        "project": (project.notes, project.first_weekday, project.conditions, project.logistics),
        "line": project.course and project.course.line,
        "surfaces": project.course and project.course.surfaces,
        "course": project.course and (project.course.stations, project.course.sections),
    }


def is_honest(rescued, whole):
    """Whether all that is not named as lost is what was kept last."""
    lost = set(rescued.lost)
    assert lost <= NAMES.keys()
    assert unsound_part(rescued.project) is None
    if "contents" in lost:
        return True
    mine, theirs = heads(rescued.project), heads(whole)
    return all(mine[name] == theirs[name] for name in mine if name not in lost)


def test_a_whole_file_is_rescued_whole(path, tmp_path):
    rescued = rescue(path, tmp_path / "new.ultraplan")
    assert rescued.lost == ()
    assert rescued.project == read_project(path) == read_project(tmp_path / "new.ultraplan")


def test_every_zeroed_page_costs_only_what_is_named(path, tmp_path):
    whole, raw = read_project(path), path.read_bytes()
    hurt = tmp_path / "hurt.ultraplan"
    complete = 0
    for page in range(len(raw) // PAGE_BYTES):
        spoilt = bytearray(raw)
        spoilt[page * PAGE_BYTES : (page + 1) * PAGE_BYTES] = bytes(PAGE_BYTES)
        hurt.write_bytes(spoilt)
        rescued = read_what_is_left(hurt)
        assert is_honest(rescued, whole), page
        assert len(rescued.lost) < len(NAMES) // 2, page
        complete += not rescued.lost
        assert hurt.read_bytes() == spoilt
    assert complete >= 2  # the first page and the index hold nothing of the plan


def test_no_flipped_byte_comes_back_as_a_figure(path, tmp_path):
    whole, raw = read_project(path), path.read_bytes()
    hurt = tmp_path / "hurt.ultraplan"
    for place in random.Random(3).sample(range(len(raw)), 150):
        spoilt = bytearray(raw)
        spoilt[place] ^= 1 << (place % 8)
        hurt.write_bytes(spoilt)
        assert is_honest(read_what_is_left(hurt), whole), place


def test_a_file_cut_in_half_gives_what_stands_before_the_cut(path, tmp_path):
    whole, raw = read_project(path), path.read_bytes()
    hurt = tmp_path / "hurt.ultraplan"
    for share in (0.9, 0.5, 0.25):
        hurt.write_bytes(raw[: int(share * len(raw))])
        assert is_honest(read_what_is_left(hurt), whole)


def test_a_lost_part_is_taken_from_an_earlier_state(tmp_path):
    path = tmp_path / "hill.ultraplan"
    first = replace(full_project(sessions=4, points=60), runner=Runner("R.", 60.0))
    with ProjectFile.create(path, first) as file:
        file.keep(replace(first, runner=Runner("R.", 72.5)), "Change runner")
    raw = path.read_bytes()
    path.write_bytes(raw.replace(b":72.5,", b":99.5,"))
    rescued = read_what_is_left(path)
    assert rescued.lost == ("runner",)
    assert rescued.project == first


def test_only_the_week_that_is_lost_is_missing(tmp_path):
    path = tmp_path / "hill.ultraplan"
    project = full_project(sessions=60, points=60)
    ProjectFile.create(path, project).close()
    victim = project.block.sessions[20]
    raw = path.read_bytes()
    assert raw.count(b'"key":"s20"') == 1
    path.write_bytes(raw.replace(b'"key":"s20"', b'"key":"s99"'))
    rescued = read_what_is_left(path)
    assert rescued.lost == ("sessions",)
    week = victim.day.toordinal() // 7
    left = [s for s in project.block.sessions if s.day.toordinal() // 7 != week]
    assert list(rescued.project.block.sessions) == left


def test_stations_stay_where_the_line_is_lost(tmp_path):
    path = tmp_path / "hill.ultraplan"
    project = full_project(sessions=4, points=60)
    ProjectFile.create(path, project).close()
    raw = path.read_bytes()
    at = raw.index(b"cols") + 400
    path.write_bytes(raw[:at] + bytes(4) + raw[at + 4 :])
    rescued = read_what_is_left(path)
    assert rescued.lost == ("line",)
    assert rescued.project.course.stations == project.course.stations
    assert rescued.project.course.sections == project.course.sections


def test_a_plan_without_a_course_stays_without(tmp_path):
    path = tmp_path / "plain.ultraplan"
    ProjectFile.create(path, small_project("by heart")).close()
    raw = path.read_bytes()
    path.write_bytes(bytes(PAGE_BYTES) + raw[PAGE_BYTES:])
    rescued = read_what_is_left(path)
    assert rescued.lost == ()
    assert rescued.project == small_project("by heart")


def test_the_list_of_contents_lost_costs_the_order_not_the_parts(tmp_path):
    path = tmp_path / "hill.ultraplan"
    project = full_project(sessions=30, points=60)
    ProjectFile.create(path, project).close()
    raw = path.read_bytes()
    assert raw.count(b'{"project":[') == 1
    path.write_bytes(raw.replace(b'{"project":[', b'{"pr0ject":['))
    rescued = read_what_is_left(path)
    assert rescued.lost == ("contents",)
    assert {s.key for s in rescued.project.block.sessions} == {
        s.key for s in project.block.sessions
    }
    assert rescued.project.race == project.race
    assert rescued.project.runner == project.runner
    assert rescued.project.course == project.course


def test_every_part_of_a_project_has_a_name_when_lost():
    named = {piece.name for piece in pieces(full_project(sessions=4, points=20))}
    assert named <= NAMES.keys()


def test_older_files_are_rescued_too():
    for version in (1000, 1001, 1002):
        rescued = read_what_is_left(sample(version))
        assert rescued.lost == ()
        assert rescued.project.block != Block()


def test_a_taken_name_is_not_written_over(path, tmp_path):
    other = tmp_path / "other.ultraplan"
    other.write_bytes(b"mine")
    with pytest.raises(StoreError):
        rescue(path, other)
    assert other.read_bytes() == b"mine"


@pytest.mark.parametrize("content", [b"", b"text " * 9_000, b"SQLite format 3\x00" + bytes(9_000)])
def test_nothing_is_made_of_nothing(tmp_path, content):
    path = tmp_path / "text.ultraplan"
    path.write_bytes(content)
    assert not has_something_left(path)
    with pytest.raises(StoreError, match="Nothing in text"):
        read_what_is_left(path)


def test_noise_in_the_dress_of_pages_ends_soon():
    """Pages full of cells that all claim the longest chains there are."""
    luck = random.Random(5)
    pages = [
        b"\x0d\x00\x00\x03\xff\x00\x00\x00" + luck.randbytes(PAGE_BYTES - 8) for _ in range(60)
    ]
    begin = time.process_time()
    assert sum(1 for _ in records(b"".join(pages))) < 60 * 1024
    assert time.process_time() - begin < 10.0

import sqlite3
from contextlib import closing

import pytest

from tests.store.projects import full_project, small_project
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.database import VERSION, Database
from ultraplanner_gui.store.migrations import Migration, rewrite
from ultraplanner_gui.store.project_file import ProjectFile


def age(parts):
    """Make of today's parts what an imagined version 998 had: notes under another name."""
    project = dict(parts["project"][0])
    project["remarks"] = project.pop("notes")
    return {**parts, "project": [project]}


def rename_remarks(parts):
    project = dict(parts["project"][0])
    project["notes"] = project.pop("remarks")
    return {**parts, "project": [project]}


def shout(parts):
    return {**parts, "project": [{**parts["project"][0], "notes": "!"}]}


TABLE = {998: Migration(999, rename_remarks), 999: Migration(VERSION, lambda parts: parts)}


@pytest.fixture
def old(tmp_path):
    """A file of version 998 with an earlier state in it."""
    new, path = tmp_path / "new.ultraplan", tmp_path / "hill.ultraplan"
    with ProjectFile.create(new, small_project("first")) as file:
        file.keep(full_project(10, 60), "Build the block")
    with closing(Database.look_into(new)) as database:
        rewrite(database, path, path, 998, [age])
    new.unlink()
    return path


def test_old_file_is_brought_up_and_the_original_laid_aside(old):
    before = old.read_bytes()
    with ProjectFile.open(old, migrations=TABLE) as file:
        assert file.project == full_project(10, 60)
        assert [file.at(point.id) for point in file.history()] == [small_project("first")]
        assert file.original == old.with_name("hill.before-v998.ultraplan")
        assert file.original.read_bytes() == before
        file.keep(small_project("goes on"), "Write notes")
    with closing(sqlite3.connect(old)) as connection:
        assert connection.execute("PRAGMA user_version").fetchone() == (VERSION,)
    with ProjectFile.open(old) as file:
        assert file.original is None
        assert file.project.notes == "goes on"


def test_original_laid_aside_earlier_is_not_overwritten(old):
    taken = old.with_name("hill.before-v998.ultraplan")
    taken.write_text("mine")
    with ProjectFile.open(old, migrations=TABLE) as file:
        assert file.original.name == "hill.before-v998-2.ultraplan"
    assert taken.read_text() == "mine"


def test_failing_migration_leaves_everything_as_it_was(old):
    before = old.read_bytes()
    broken = {998: Migration(VERSION, lambda parts: {**parts, "race": [{}]})}
    for table in ({}, {998: Migration(999, shout)}, broken):
        with pytest.raises(StoreError):
            ProjectFile.open(old, migrations=table)
        assert old.read_bytes() == before
        assert [p.name for p in old.parent.iterdir()] == [old.name]

import shutil

import pytest

from tests.store.old.make import FOLDER, describe, earlier, outline, present, sample
from ultraplanner_gui.store.database import VERSION
from ultraplanner_gui.store.project_file import ProjectFile

RELEASED = [1000, 1001, 1002, 1003, 2000]


@pytest.mark.parametrize("version", RELEASED)
def test_file_of_every_version_opens(tmp_path, version):
    path = tmp_path / "old.ultraplan"
    shutil.copyfile(sample(version), path)
    with ProjectFile.open(path) as file:
        assert file.project == present(version)
        assert [file.at(point.id) for point in file.history()] == [earlier()]
        file.keep(earlier(), "Start over")


def test_every_version_has_a_sample():
    assert VERSION in RELEASED
    assert sorted(FOLDER.glob("*.ultraplan")) == sorted(map(sample, RELEASED))


def test_changed_fields_come_with_a_new_version():
    """Else raise VERSION, add a migration, and run `python -m tests.store.old.make`."""
    assert describe() == outline(VERSION).read_text("utf-8").splitlines()


@pytest.mark.parametrize("version", RELEASED)
def test_a_look_at_an_older_file_leaves_it_as_it_is(tmp_path, version):
    path = tmp_path / "old.ultraplan"
    shutil.copyfile(sample(version), path)
    before = path.read_bytes()
    with ProjectFile.look(path) as file:
        assert file.project == present(version)
        assert file.is_read_only
    assert path.read_bytes() == before
    assert sorted(tmp_path.iterdir()) == [path]

import errno
import os
import stat

import pytest

from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.plan.message import StoreError

OLD, NEW = b"old", b"new" * 1000


@pytest.fixture
def target(tmp_path):
    path = tmp_path / "plan.gpx"
    path.write_bytes(OLD)
    return path


def only_file(target):
    return [p.name for p in target.parent.iterdir()] == [target.name]


def test_new_file_is_written_whole(tmp_path):
    write_bytes(tmp_path / "a.gpx", NEW)
    assert (tmp_path / "a.gpx").read_bytes() == NEW
    assert only_file(tmp_path / "a.gpx")


def test_old_file_is_replaced_whole(target):
    write_bytes(str(target), NEW)
    assert target.read_bytes() == NEW
    assert only_file(target)


@pytest.mark.parametrize(
    ("step", "code", "word"),
    [
        ("fsync", errno.ENOSPC, "no room"),
        ("fsync", errno.EIO, "could not be written"),
        ("replace", errno.EACCES, "not allowed"),
        ("replace", errno.EIO, "untouched"),
        ("open", errno.EROFS, "not allowed"),
    ],
)
def test_failure_leaves_the_old_file_and_no_litter(target, monkeypatch, step, code, word):
    def fail(*args, **kwargs):
        raise OSError(code, os.strerror(code))

    monkeypatch.setattr(os, step, fail)
    with pytest.raises(StoreError, match=word) as caught:
        write_bytes(target, NEW)
    monkeypatch.undo()
    assert target.read_bytes() == OLD
    assert only_file(target)
    assert target.name in str(caught.value)
    assert len(str(caught.value)) <= 200


def test_file_that_grows_beyond_what_is_allowed_is_refused(target):
    resource = pytest.importorskip("resource", reason="needs limits on the size of files")
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (1024, before[1]))
    try:
        with pytest.raises(StoreError, match="no room"):
            write_bytes(target, NEW)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
    assert target.read_bytes() == OLD
    assert only_file(target)


posix = pytest.mark.skipif(os.name != "posix", reason="needs POSIX permissions and links")


@posix
@pytest.mark.parametrize("mode", [0o600, 0o644, 0o664])
def test_permissions_stay(target, mode):
    target.chmod(mode)
    write_bytes(target, NEW)
    assert stat.S_IMODE(target.stat().st_mode) == mode


@posix
def test_new_file_gets_the_usual_permissions(tmp_path):
    (tmp_path / "usual").touch()
    write_bytes(tmp_path / "new", NEW)
    assert (tmp_path / "new").stat().st_mode == (tmp_path / "usual").stat().st_mode


@posix
def test_link_is_written_through(target):
    link = target.with_name("link.gpx")
    link.symlink_to(target)
    write_bytes(link, NEW)
    assert link.is_symlink()
    assert target.read_bytes() == NEW


@posix
@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() == 0, reason="needs a user whom permissions bind"
)
def test_write_protected_file_is_refused(target):
    target.chmod(0o444)
    with pytest.raises(StoreError, match="not allowed"):
        write_bytes(target, NEW)
    assert target.read_bytes() == OLD


def test_folder_in_place_of_the_file_is_refused(tmp_path):
    (tmp_path / "plan.gpx").mkdir()
    with pytest.raises(StoreError):
        write_bytes(tmp_path / "plan.gpx", NEW)
    assert only_file(tmp_path / "plan.gpx")


@posix
def test_file_and_folder_are_on_disk_before_it_returns(target, monkeypatch):
    synced = []

    def note(handle):
        synced.append("folder" if stat.S_ISDIR(os.fstat(handle).st_mode) else target.read_bytes())

    monkeypatch.setattr(os, "fsync", note)
    write_bytes(target, NEW)
    assert synced == [OLD, "folder"]

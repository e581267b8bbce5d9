"""The release list and the set-up script, run by a Python without packages."""

import json
import shutil
import subprocess
import sys

import pytest

from tests.rules import source

PACKAGING = source.ROOT / "packaging"


@pytest.fixture(scope="module")
def release():
    sys.path.insert(0, str(PACKAGING))
    import dev_release

    yield dev_release
    sys.path.remove(str(PACKAGING))


@pytest.fixture
def checkout(tmp_path):
    """A small checkout with what the list looks at."""
    for name in (
        "ultraplanner_gui/__init__.py",
        "packaging/CHANGELOG.md",
        "packaging/share/ultraplanner-gui.1",
        "packaging/share/org.ultraplanner.Ultraplanner.metainfo.xml",
    ):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(source.ROOT / name, tmp_path / name)
    git(tmp_path, "init", "--quiet")
    git(tmp_path, "add", ".")
    git(tmp_path, "commit", "--quiet", "--message", "Begin")
    return tmp_path


def git(folder, *args):
    who = ["-c", "user.name=Test", "-c", "user.email=test@localhost"]
    subprocess.run(["git", "-C", folder, *who, *args], check=True)


def change(path, old, new):
    text = path.read_text("utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), "utf-8")


def test_this_checkout_has_one_version_and_a_changelog(release, checkout):
    release.clean_tree(checkout)
    release.one_version(checkout)
    release.change_lines(checkout)


def test_what_is_not_committed_stops_a_release(release, checkout):
    (checkout / "forgotten.txt").write_text("x")
    with pytest.raises(release.Refusal, match=r"forgotten\.txt"):
        release.clean_tree(checkout)


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("CHANGELOG.md", "the changelog says 9.9.9"),
        ("share/ultraplanner-gui.1", "the man page says 9.9.9"),
        ("share/org.ultraplanner.Ultraplanner.metainfo.xml", "the metainfo says 9.9.9"),
    ],
)
def test_a_file_of_another_version_stops_a_release(release, checkout, name, told):
    version = release.version()
    old = f"Ultraplanner {version}" if name.endswith(".1") else version
    change(checkout / "packaging" / name, old, old.replace(version, "9.9.9"))
    with pytest.raises(release.Refusal, match=told):
        release.one_version(checkout)


def test_a_version_released_before_stops_a_release(release, checkout):
    git(checkout, "tag", f"v{release.version()}")
    with pytest.raises(release.Refusal, match="raise __version__"):
        release.one_version(checkout)


@pytest.mark.parametrize("line", ["Mended things", "- mended things", "- Mended things."])
def test_a_change_that_is_no_line_stops_a_release(release, checkout, line):
    change(checkout / "packaging" / "CHANGELOG.md", "- Start", f"{line}\n- Start")
    with pytest.raises(release.Refusal, match="one line"):
        release.change_lines(checkout)


def test_a_version_without_changes_stops_a_release(release, checkout):
    change(checkout / "packaging" / "CHANGELOG.md", "## ", "## 9.9.9\n\n## ")
    with pytest.raises(release.Refusal, match="nothing to say"):
        release.change_lines(checkout)


def test_the_walk_stops_at_what_fails_and_says_how_to_go_on(release, capsys):
    gone = []

    def refuse():
        raise release.Refusal("Not today.")

    checks = [
        release.Check("first", "passes", lambda: gone.append("first")),
        release.Check("second", "fails", refuse),
        release.Check("third", "is not reached", lambda: gone.append("third")),
    ]
    assert release.walk(checks) == 1
    assert gone == ["first"]
    assert capsys.readouterr().out.endswith(
        "Not today.\nMend that, then: dev.py release --from second\n"
    )
    assert release.walk([checks[0], checks[2]]) == 0
    assert gone == ["first", "first", "third"]


def measured(ratio):
    from bench_measure import Goal, Row

    return [Row("opening", "reading", [ratio], [1.0], (Goal("ratio", 5.0),))]


def test_what_got_slower_by_more_than_a_fifth_stops_a_release(release, tmp_path, monkeypatch):
    """By the file that is kept and the report, both as bench writes them."""
    for name in ("QT_QPA_PLATFORM", "PYTHONPATH", "LC_ALL", "OPENBLAS_NUM_THREADS"):
        monkeypatch.setenv(name, "")  # put back afterwards: importing it sets them
    monkeypatch.setattr(sys, "path", sys.path[:])
    import bench
    import bench_kept

    monkeypatch.setattr(bench, "read_kept", lambda: bench_kept.read_kept(tmp_path / "kept.json"))
    bench_kept.keep(measured(3.0), tmp_path / "kept.json")
    path = tmp_path / "report.json"

    def giving(*ratios):
        left = list(ratios)
        return lambda: path.write_text(json.dumps(bench.report(measured(left.pop(0)), 1.0)))

    release.nothing_slower(giving(3.59), path)
    release.nothing_slower(giving(3.61, 3.7, 3.59), path)
    with pytest.raises(release.Refusal, match=r"opening: ratio 3 -> 3\.61"):
        release.nothing_slower(giving(3.7, 3.8, 3.61), path)


@pytest.mark.parametrize(("code", "left"), [(1, "numpy==1\n"), (0, "numpy==2\n")])
def test_new_versions_stay_only_if_the_tests_pass_with_them(
    release, tmp_path, monkeypatch, code, left
):
    import dev_lock

    (tmp_path / "requirements.txt").write_text("numpy==1\n")
    asked = []
    monkeypatch.setattr(dev_lock.subprocess, "call", lambda command: asked.append(command) or code)
    assert dev_lock._tried(tmp_path, {"requirements.txt": "numpy==2\n"}) == code
    assert asked[0][-1] == "test"
    assert (tmp_path / "requirements.txt").read_text() == left


def test_a_change_of_versions_is_told_line_by_line(release, tmp_path):
    import dev_lock

    path = tmp_path / "requirements.txt"
    path.write_text("numpy==1 \\\n  --hash=a\nold==3\n")
    assert dev_lock._changes(path, "numpy==2 \\\n  --hash=b\nnew==1\n") == [
        "requirements.txt: new - -> 1",
        "requirements.txt: numpy 1 -> 2",
        "requirements.txt: old 3 -> -",
    ]
    assert dev_lock._changes(path, path.read_text()) == []


def test_every_command_is_there_for_a_python_without_packages():
    """`-s -S`: no site-packages, as a system's own Python may be."""
    command = [sys.executable, "-E", "-s", "-S", str(PACKAGING / "dev.py"), "--help"]
    told = subprocess.run(command, capture_output=True, text=True, check=False)
    assert told.returncode == 0, told.stderr
    for name in ("run", "test", "bundle", "wheel", "deb", "lock", "release", "bench", "trust"):
        assert f"\n  {name} " in told.stdout


@pytest.mark.parametrize("command", ["bundle", "wheel", "deb", "lock", "release", "lint"])
def test_an_argument_unknown_is_refused_in_one_sentence(command):
    told = subprocess.run(
        [sys.executable, str(PACKAGING / "dev.py"), command, "--wrong"],
        capture_output=True,
        text=True,
        check=False,
    )
    assert told.returncode == 1
    assert told.stderr.count("\n") == 1
    assert f"{command} knows only" in told.stderr

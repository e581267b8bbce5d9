"""What the program does from a command line, without a window."""

import argparse
import inspect
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QCoreApplication, QObject, QUrl
from PySide6.QtGui import QFileOpenEvent

from tests.store.projects import full_project, small_project
from ultraplanner_gui import __version__, app, options
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.store.project_file import ProjectFile, read_project
from ultraplanner_gui.window.handed_over import HandedOver

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def folder(tmp_path, qapp):
    """A coach's folder: two runners, a file that is hurt, and something else."""
    folder = tmp_path / "my runners"
    folder.mkdir()
    for name in ("anna", "ben"):
        ProjectFile.create(folder / f"{name}.ultraplan", full_project(6, 60)).close()
    (folder / "hurt.ultraplan").write_bytes((folder / "anna.ultraplan").read_bytes()[:9_000])
    (folder / "notes.txt").write_text("not a project")
    return folder


def pages(path):
    return len(PdfReader(path).pages)


def test_a_folder_gives_a_pdf_for_each_project_and_goes_on_past_a_hurt_one(folder, capsys):
    out = folder / "cards"
    assert app.main(["--cards", str(out), str(folder)]) == 2
    lines = capsys.readouterr().out.splitlines()
    assert lines[0] == "anna.ultraplan: anna.pdf"
    assert lines[1] == "ben.ultraplan: ben.pdf"
    assert lines[2].startswith("hurt.ultraplan: hurt.ultraplan is damaged")
    assert len(lines) == 3
    assert sorted(path.name for path in out.iterdir()) == ["anna.pdf", "ben.pdf"]
    assert pages(out / "anna.pdf") == pages(out / "ben.pdf") >= 1


def test_a_folder_of_whole_projects_ends_well(folder, capsys):
    (folder / "hurt.ultraplan").unlink()
    assert app.main(["--cards", str(folder), str(folder)]) == 0
    assert len(capsys.readouterr().out.splitlines()) == 2
    assert (folder / "anna.pdf").exists()


def test_a_project_open_in_a_window_is_printed_as_it_was_last_kept(folder, capsys):
    with ProjectFile.open(folder / "anna.ultraplan"):
        assert app.main(["--cards", str(folder / "a.pdf"), str(folder / "anna.ultraplan")]) == 0
    assert pages(folder / "a.pdf") >= 1


def test_old_files_are_printed_and_left_as_they_are(tmp_path, qapp, capsys):
    old = sorted((ROOT / "tests/store/old").glob("*.ultraplan"))
    for path in old:
        shutil.copyfile(path, tmp_path / path.name)
    shutil.copyfile(old[0], tmp_path / "hill.before-v1000-2.ultraplan")
    before = {path.name: path.read_bytes() for path in tmp_path.iterdir()}
    assert app.main(["--cards", str(tmp_path / "out"), str(tmp_path)]) == 0
    assert len(capsys.readouterr().out.splitlines()) == len(old), "what was laid aside too"
    after = {path.name: path.read_bytes() for path in tmp_path.iterdir() if path.is_file()}
    assert after == before


def test_a_folder_without_projects_says_so(tmp_path, qapp, capsys):
    assert app.main(["--cards", str(tmp_path / "out"), str(tmp_path)]) == 2
    assert "no project" in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []


def test_a_file_in_the_place_of_the_folder_to_write_to_is_left_alone(folder, capsys):
    assert app.main(["--cards", str(folder / "notes.txt"), str(folder)]) == 2
    assert "no folder" in capsys.readouterr().err
    assert (folder / "notes.txt").read_text() == "not a project"


@pytest.mark.parametrize("option", [["--cards", "x.pdf"], ["--dump"], ["--restore", "x.jsonl"]])
def test_without_a_project_one_sentence_says_what_is_missing(qapp, capsys, option):
    assert app.main(option) == 2
    assert capsys.readouterr().err.count("\n") == 1


def test_a_dumped_project_is_restored_equal(folder, capsysbinary):
    lines, back = folder / "anna.jsonl", folder / "back.ultraplan"
    assert app.main(["--dump", str(folder / "anna.ultraplan")]) == 0
    lines.write_bytes(capsysbinary.readouterr().out)
    assert all(json.loads(line) for line in lines.read_bytes().splitlines())
    assert app.main(["--restore", str(lines), str(back)]) == 0
    assert read_project(back) == full_project(6, 60)


def test_lines_that_are_none_are_refused_in_one_sentence(folder, capsys):
    target = folder / "new.ultraplan"
    assert app.main(["--restore", str(folder / "notes.txt"), str(target)]) == 2
    assert capsys.readouterr().err.startswith("Line 1 of notes.txt is not as --dump writes it.")
    assert not target.exists()


def started(*arguments, **named):
    command = [sys.executable, "-m", "ultraplanner_gui", *map(str, arguments)]
    return subprocess.run(command, cwd=ROOT, capture_output=True, check=False, **named)


def test_dump_and_restore_go_through_a_pipe(tmp_path):
    ProjectFile.create(tmp_path / "a.ultraplan", small_project("piped")).close()
    told = started("--dump", tmp_path / "a.ultraplan")
    back = started("--restore", "-", tmp_path / "b.ultraplan", input=told.stdout)
    assert (told.returncode, back.returncode, told.stderr, back.stderr) == (0, 0, b"", b"")
    assert read_project(tmp_path / "b.ultraplan") == small_project("piped")


@pytest.mark.skipif(sys.platform == "win32", reason="there are no such pipes")
def test_a_reader_that_leaves_early_is_no_fault(tmp_path):
    ProjectFile.create(tmp_path / "a.ultraplan", full_project(300, 16_000)).close()
    dump = f'"{sys.executable}" -m ultraplanner_gui --dump "{tmp_path}/a.ultraplan" | head -c 9'
    ended = subprocess.run(["sh", "-c", dump], cwd=ROOT, capture_output=True, check=False)
    assert (ended.stdout, ended.stderr) == (b'{"ultrapl', b"")


def test_version_and_help_need_no_qt():
    """They answer also where Qt cannot start, which is when one asks."""
    hidden = "import sys; sys.modules['PySide6'] = None; from ultraplanner_gui.app import main; "
    for option, told in (("--version", f"Ultraplanner {__version__}"), ("--help", "--restore")):
        command = [sys.executable, "-c", f"{hidden}main(['{option}'])"]
        ended = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
        assert told in ended.stdout
        assert ended.returncode == 0


GERMAN = {"LC_ALL": "de_DE.UTF-8", "PYTHONUTF8": "1"}


@pytest.mark.parametrize(
    ("arguments", "code", "told"),
    [
        (["--help"], 0, "Plane einen Ultramarathon"),
        (["--help"], 0, "DATEI"),
        (["--cards"], 2, "Fehler: Argument --cards: braucht eine Angabe dahinter"),
        (["--dump", "--cards", "x"], 2, "geht nicht zusammen mit --dump"),
        (["a", "b"], 2, "unbekannte Argumente: b"),
        (["--dump=x"], 2, "nimmt keine Angabe"),
        (["--dump"], 2, "Nenne eine Projektdatei"),
    ],
)
def test_it_answers_in_the_language_of_the_system(tmp_path, arguments, code, told):
    ended = started(*arguments, env=environment(tmp_path) | GERMAN, text=True, encoding="utf-8")
    assert told in ended.stdout + ended.stderr
    assert ended.returncode == code


def test_the_language_of_the_window_is_that_of_the_help(tmp_path):
    home = tmp_path / "home"
    settings = Settings(places_of(home) / "settings.ini")
    settings.language = "de"
    settings.store.sync()
    env = environment(tmp_path) | {"ULTRAPLANNER_HOME": str(home), "PYTHONUTF8": "1"}
    assert "Optionen:" in started("--help", env=env, text=True, encoding="utf-8").stdout


def places_of(home):
    folder = home / "settings"
    folder.mkdir(parents=True)
    return folder


@pytest.mark.parametrize(
    "arguments",
    [[], ["--demo"], ["a b.gpx"], ["--throw-away", "--demo"], ["x.ultraplan", "--throw-away"]],
)
def test_the_usual_arguments_need_no_parser(arguments):
    assert options._usual(arguments) == options.parsed(arguments)


@pytest.mark.parametrize("arguments", [["a", "b"], ["--dump"], ["--dem"], ["-"], [""], ["--"]])
def test_all_others_are_left_to_it(arguments):
    assert options._usual(arguments) is None


def test_help_makes_no_folder(tmp_path):
    started("--help", env=environment(tmp_path) | GERMAN)
    assert list(tmp_path.iterdir()) == []


def test_what_is_translated_for_argparse_is_what_it_says():
    written = inspect.getsource(argparse)
    for text in options.OF_ARGPARSE:
        assert repr(text) in written, text


def test_signs_a_terminal_does_not_know_end_nothing(tmp_path):
    env = environment(tmp_path) | GERMAN | {"PYTHONUTF8": "0", "PYTHONIOENCODING": "ascii"}
    ended = started("--help", env=env)
    assert ended.returncode == 0
    assert b"pr?fen" in ended.stdout


def test_self_test_goes_through_the_whole_job(tmp_path):
    ended = started("--self-test", env=environment(tmp_path))
    lines = ended.stdout.decode().splitlines()
    assert ended.returncode == 0, (lines, ended.stderr)
    assert [line.split()[0] for line in lines] == ["ok"] * 5
    assert list(tmp_path.iterdir()) == [], "something was left outside the folder thrown away"


def test_self_test_speaks_the_language_of_the_system(tmp_path):
    """And names what is missing in it."""
    program = (
        "from ultraplanner_gui import self_test; self_test._has_resources = lambda: 'da'; "
        "self_test._shows_demo = lambda window, app: exec('raise RuntimeError(1)'); "
        "raise SystemExit(self_test.self_test())"
    )
    ended = subprocess.run(
        [sys.executable, "-c", program],
        cwd=ROOT,
        env=environment(tmp_path) | GERMAN,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    first, second, *others = ended.stdout.splitlines()
    assert first.startswith("gut     Dateien des Programms: da (0,")
    assert second == "FEHLER  Fenster: 1"
    # Nothing waits for a demo that is not there.
    assert [line.endswith(": Die Demo ging nicht auf.") for line in others] == [True] * 3
    assert ended.returncode == 2


def test_self_test_names_what_does_not_work(tmp_path):
    """As if the food table had been left out of the installation."""
    program = (
        "from ultraplanner_gui import self_test; self_test.FACTS = ('gone.csv',); "
        "raise SystemExit(self_test.self_test())"
    )
    ended = subprocess.run(
        [sys.executable, "-c", program],
        cwd=ROOT,
        env=environment(tmp_path),
        capture_output=True,
        text=True,
        check=False,
    )
    assert ended.returncode == 2
    assert ended.stdout.startswith("FAILED  resources:")


def environment(home):
    kept = {name: os.environ[name] for name in ("PATH", "LC_ALL") if name in os.environ}
    return {"LC_ALL": "C.UTF-8", **kept, "HOME": str(home), "QT_QPA_PLATFORM": "offscreen"}


def test_a_file_handed_over_by_the_system_is_opened(qapp):
    taken = []
    keeper = QObject()
    hand = HandedOver(taken.append, keeper)
    keeper.installEventFilter(hand)
    QCoreApplication.sendEvent(keeper, QFileOpenEvent(QUrl.fromLocalFile("/race day/a.ultraplan")))
    assert taken == [Path("/race day/a.ultraplan")]


def test_a_profile_that_is_thrown_away_is_gone_after_the_window(monkeypatch):
    homes = []

    def window(file, demo, translation):
        homes.append(Path(os.environ["ULTRAPLANNER_HOME"]))
        (homes[0] / "new.ultraplan").write_text("tried")
        return 0

    monkeypatch.setenv("ULTRAPLANNER_HOME", "before")
    monkeypatch.setattr(app, "_run_window", window)
    assert app.main(["--throw-away", "--demo"]) == 0
    assert homes
    assert not homes[0].exists()

"""What a Linux desktop reads of the program, held to the tools of freedesktop.org.

Desktop Entry Specification 1.5, Shared MIME-info Database 0.21, AppStream 1.0, icon theme
specification 0.13.
"""

import os
import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
from datetime import date

import pytest
from PySide6.QtGui import QImage, QImageReader

from tests.rules import source
from tests.store.projects import small_project
from ultraplanner_gui import __version__
from ultraplanner_gui.app import _give_icon
from ultraplanner_gui.store.header import APPLICATION_ID
from ultraplanner_gui.store.project_file import ProjectFile

SHARE = source.ROOT / "packaging" / "share"
DESKTOP = SHARE / "org.ultraplanner.Ultraplanner.desktop"
METAINFO = SHARE / "org.ultraplanner.Ultraplanner.metainfo.xml"
MIME = SHARE / "ultraplanner-mime.xml"
PAGE = SHARE / "ultraplanner-gui.1"


def checked(tool, *arguments, **named):
    """What *tool* says; the test is skipped where it is not installed."""
    if not shutil.which(tool):
        pytest.skip(f"{tool} is not installed; packaging/dev.py test installs it on Debian")
    command = [tool, *map(str, arguments)]
    return subprocess.run(command, capture_output=True, text=True, check=False, **named)


def entry():
    lines = DESKTOP.read_text("utf-8").split("\n\n")[0].splitlines()[1:]
    return dict(line.split("=", 1) for line in lines)


def test_the_desktop_file_is_valid():
    ended = checked("desktop-file-validate", DESKTOP)
    assert (ended.returncode, ended.stdout) == (0, "")


def test_the_metainfo_is_valid():
    ended = checked("appstreamcli", "validate", "--no-net", "--no-color", METAINFO)
    assert ended.returncode == 0, ended.stdout


def test_the_man_page_is_free_of_faults():
    ended = checked("mandoc", "-T", "lint", "-W", "warning", PAGE)
    assert (ended.returncode, ended.stdout) == (0, "")


def test_the_man_page_can_be_read():
    env = {**os.environ, "MANWIDTH": "80", "LC_ALL": "C.UTF-8"}
    ended = checked("man", "-l", "--warnings", PAGE, env=env)
    assert ended.stderr == ""
    assert "plan an ultramarathon" in re.sub(r".\x08", "", ended.stdout)


def test_the_man_page_has_every_option_of_the_help():
    command = [sys.executable, "-m", "ultraplanner_gui", "--help"]
    told = subprocess.run(command, cwd=source.ROOT, capture_output=True, text=True, check=True)
    offered = set(re.findall(r"--[a-z][a-z-]+", told.stdout))
    described = set(re.findall(r"--[a-z][a-z-]+", PAGE.read_text("utf-8").replace("\\-", "-")))
    assert offered == described


def test_every_file_tells_the_same_version():
    releases = ET.parse(METAINFO).getroot().iter("release")
    assert next(releases).get("version") == __version__
    assert f'"Ultraplanner {__version__}"' in PAGE.read_text("utf-8").splitlines()[0]


def test_a_double_click_hands_the_file_over():
    assert entry()["Exec"] == "ultraplanner-gui %f"
    assert entry()["MimeType"].split(";")[0] == ET.parse(MIME).getroot()[0].get("type")
    assert ET.parse(METAINFO).getroot().findtext("launchable") == DESKTOP.name
    app = (source.ROOT / "ultraplanner_gui" / "app.py").read_text("utf-8")
    assert f'setDesktopFileName("{DESKTOP.stem}")' in app


@pytest.fixture
def mime_folder(tmp_path):
    folder = tmp_path / "data" / "mime"
    (folder / "packages").mkdir(parents=True)
    shutil.copy2(MIME, folder / "packages")
    ended = checked("update-mime-database", "-V", folder)
    assert ended.returncode == 0, ended.stderr
    assert "error" not in (ended.stdout + ended.stderr).lower()
    return folder


def test_a_desktop_knows_a_project_by_its_name_and_by_its_content(tmp_path, mime_folder):
    named, nameless = tmp_path / "race.ultraplan", tmp_path / "race"
    ProjectFile.create(named, small_project()).close()
    shutil.copy2(named, nameless)
    ask = (
        "import sys; from PySide6.QtCore import QMimeDatabase as D, QCoreApplication; "
        "db = D(); print(*(db.mimeTypeForFile(f).name() for f in sys.argv[1:]))"
    )
    env = {**os.environ, "XDG_DATA_HOME": str(mime_folder.parent)}
    command = [sys.executable, "-c", ask, str(named), str(nameless)]
    told = subprocess.run(command, env=env, capture_output=True, text=True, check=True)
    assert told.stdout.split() == ["application/x-ultraplan"] * 2


def test_the_mark_in_the_content_is_the_one_the_store_writes():
    magic = {m.get("offset"): m.get("value") for m in ET.parse(MIME).iter() if m.get("offset")}
    assert bytes(magic["68"], "ascii") == APPLICATION_ID.to_bytes(4, "big")


@pytest.fixture(scope="module")
def icons(tmp_path_factory):
    folder = tmp_path_factory.mktemp("icons")
    script = source.ROOT / "packaging" / "make_icons.py"
    subprocess.run([sys.executable, str(script), str(folder)], check=True)
    return folder


@pytest.mark.parametrize("size_px", [16, 22, 24, 32, 48, 64, 128, 256, 512])
def test_the_icon_is_there_in_every_size(icons, size_px):
    for kind, name in (("apps", entry()["Icon"]), ("mimetypes", "application-x-ultraplan")):
        picture = QImage(str(icons / "hicolor" / f"{size_px}x{size_px}" / kind / f"{name}.png"))
        assert (picture.width(), picture.height()) == (size_px, size_px)
        colours = {picture.pixelColor(x, y).name() for x in range(size_px) for y in range(size_px)}
        assert len(colours) > 8, "next to nothing is drawn"
        assert picture.pixelColor(0, 0).alpha() == 0


@pytest.mark.parametrize(("name", "count"), [("ultraplanner.ico", 7), ("ultraplanner.icns", 6)])
def test_windows_and_macos_have_theirs(icons, name, count):
    reader = QImageReader(str(icons / name))
    assert reader.imageCount() == count
    for index in range(count):
        assert reader.jumpToImage(index)
        assert not reader.read().isNull()


def test_the_icon_is_drawn_in_the_colours_of_the_program():
    from ultraplanner_gui.widgets.theme import LIGHT

    drawing = (source.ROOT / "resources" / "icons" / "ultraplanner.svg").read_text("utf-8")
    used = set(re.findall(r"#[0-9a-f]{6}", drawing))
    own = {getattr(LIGHT, name) for name in LIGHT.__slots__}
    assert used <= own


def test_the_windows_have_the_icon(qapp):
    before = qapp.windowIcon()
    try:
        _give_icon(qapp)
        drawn = qapp.windowIcon().pixmap(32, 32).toImage()
        assert {drawn.pixelColor(x, y).name() for x in range(32) for y in range(32)} >= {"#ae3c2a"}
    finally:
        qapp.setWindowIcon(before)


@pytest.fixture
def bundle_folder(tmp_path, icons):
    """A folder laid out as the bundle is, with a stand-in for the program."""
    folder = tmp_path / "my $programs & 100 % more"
    places = {
        "applications": DESKTOP,
        "metainfo": METAINFO,
        "mime/packages": MIME,
        "man/man1": PAGE,
    }
    for place, file in places.items():
        (folder / "share" / place).mkdir(parents=True)
        shutil.copy2(file, folder / "share" / place)
    shutil.copytree(icons / "hicolor", folder / "share" / "icons" / "hicolor")
    shutil.copy2(SHARE / "install-for-me.sh", folder)
    program = folder / "ultraplanner"
    program.write_text('#!/bin/sh\necho "$@"\n')
    program.chmod(0o755)
    return folder


@pytest.mark.skipif(sys.platform == "win32", reason="for Linux desktops")
def test_a_bundle_enters_the_menu_of_its_user_and_leaves_it(tmp_path, bundle_folder):
    data = tmp_path / "home" / "data"
    env = {**os.environ, "XDG_DATA_HOME": str(data)}
    script = str(bundle_folder / "install-for-me.sh")
    subprocess.run([script], env=env, check=True, capture_output=True)
    installed = data / "applications" / DESKTOP.name
    assert checked("desktop-file-validate", installed).stdout == ""
    started = re.search(r"^Exec=(.+) %f$", installed.read_text("utf-8"), re.MULTILINE)[1]
    # The quoting rule of the Desktop Entry Specification: what a backslash precedes is itself.
    read = re.sub(r"\\\\?(.)", r"\1", started.strip('"')).replace("%%", "%")
    assert read == str(bundle_folder / "ultraplanner")
    assert (data / "icons/hicolor/48x48/apps/ultraplanner.png").exists()
    subprocess.run([script, "--remove"], env=env, check=True, capture_output=True)
    left = [path for path in data.rglob("*.*") if "ultraplan" in path.name]
    assert left == []


def test_the_day_of_the_release_is_no_day_to_come():
    release = next(ET.parse(METAINFO).getroot().iter("release"))
    assert date.fromisoformat(release.get("date")) <= date.today()

"""The script that makes the README's pictures still does, and they stay small."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtGui import QImage

ROOT = Path(__file__).resolve().parents[2]
SCRIPT = ROOT / "packaging" / "pictures.py"
MOST_BYTES = 250_000
WALK = {
    *("1-welcome", "2-form", "3-sheet", "4-next", "5-cutoffs", "6-run", "7-longest"),
    *("8-target", "9-stop", "10-food", "11-cards"),
}
NAMES = {"sheet", "sheet-dark", "dragging", "tables", "desk", "cards", "welcome", "form"}


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    folder = tmp_path_factory.mktemp("pictures")
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    command = [sys.executable, str(SCRIPT), "--today", "2027-04-07", "--to", str(folder)]
    subprocess.run(command, check=True, env=env, capture_output=True, timeout=100)
    return {path.stem: QImage(str(path)) for path in folder.glob("*.png")}, folder


def test_every_picture_is_made_and_small(made):
    images, folder = made
    assert set(images) == NAMES
    assert [p.name for p in folder.iterdir() if p.stat().st_size > MOST_BYTES] == []


def test_the_window_is_taken_at_its_size_in_all_its_colours(made):
    images, _ = made
    for name in ("sheet", "sheet-dark", "dragging", "tables", "desk"):
        assert (images[name].width(), images[name].height()) == (1440, 900)
        assert images[name].colorCount() > 60
    assert images["sheet"].pixelColor(4, 60).lightness() > 200
    assert images["sheet-dark"].pixelColor(4, 60).lightness() < 60
    assert images["dragging"] != images["sheet"]


def test_the_pictures_of_the_readme_are_there():
    kept = {path.stem for path in (SCRIPT.parent / "pictures").glob("*.png")}
    assert kept == NAMES


def test_the_page_of_the_first_plan_shows_every_picture_of_it(tmp_path):
    page = (SCRIPT.parent / "first-plan.md").read_text("utf-8")
    shown = re.findall(r"!\[[^]]+\]\(pictures/first-plan/([^)]+)\.png\)", page)
    folder = SCRIPT.parent / "pictures" / "first-plan"
    sizes = {path.stem: path.stat().st_size for path in folder.glob("*.png")}
    assert sorted(shown) == sorted(sizes) == sorted(WALK)
    assert max(sizes.values()) <= 120_000
    assert sum(sizes.values()) <= 1_000_000


def test_pictures_of_the_first_plan_are_made_anew(tmp_path):
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    command = [sys.executable, str(SCRIPT), "--today", "2026-11-25", "--walk", "--to"]
    subprocess.run([*command, str(tmp_path)], check=True, env=env, capture_output=True, timeout=100)
    assert {path.stem for path in tmp_path.glob("*.png")} == WALK
    assert max(path.stat().st_size for path in tmp_path.glob("*.png")) <= 120_000


def test_a_state_is_taken_as_it_is_asked_for(tmp_path):
    sizes = {
        "empty": (1280, 720),
        "text-200": (1920, 1080),
        "25-stations": (1440, 900),
        "52-weeks": (1440, 900),
        "held-token": (1440, 900),
        "long-work": (1440, 900),
        "paste": (1440, 900),
        "form-course-table": (1280, 720),
    }
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    command = [sys.executable, str(SCRIPT), "--today", "2027-04-07", "--all", str(tmp_path)]
    subprocess.run([*command, *sizes], check=True, env=env, capture_output=True, timeout=100)
    images = {path.stem: QImage(str(path)) for path in tmp_path.glob("*.png")}
    assert {name: (im.width(), im.height()) for name, im in images.items()} == sizes

"""What README, handbook and DEVELOPERS.md name is there: menus, tables, commands, modules."""

import importlib
import re
import subprocess
import sys
from xml.etree import ElementTree

from tests.rules import source
from ultraplanner_gui.window.action_table import MENUS, TABLE
from ultraplanner_gui.window.tables import SPECS

ROOT = source.ROOT
README = (ROOT / "README.md").read_text("utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text("utf-8")
MAN_PAGE = (ROOT / "packaging/share/ultraplanner-gui.1").read_text("utf-8")


def plain(text):
    return text.replace("&", "").rstrip("…")


def told_ways():
    """Every "Menu, Action" in what users read: README, help, handbook, sentences."""
    titles = [*(plain(text) for _, text in MENUS), "Tables"]
    way = re.compile(rf"\b({'|'.join(map(re.escape, titles))}), (?=[A-Z])")
    texts = [" ".join(README.split())]
    for message in ElementTree.parse(ROOT / "resources/translations/ultraplanner_de.ts").iter(
        "source"
    ):
        texts.append(message.text or "")
    return [(found[1], text[found.end() :]) for text in texts for found in way.finditer(text)]


def test_every_way_through_the_menus_that_is_told_leads_there():
    menus = {key: plain(text) for key, text in MENUS}
    ends = {title: set() for title in menus.values()}
    for row in TABLE:
        ends[menus[row.menu]].add(plain(row.text))
    ends["Tables"] = {spec.name for spec in SPECS}
    ways = told_ways()
    assert len(ways) > 20
    assert [way for way in ways if not way[1].startswith(tuple(ends[way[0]]))] == []


def test_the_readme_names_options_and_commands_that_there_are():
    options = set(re.findall(r"ultraplanner-gui (--[\w-]+)", README + DEVELOPERS))
    assert options >= {"--cards", "--dump", "--restore", "--self-test", "--throw-away"}
    assert {one for one in options if one.replace("-", r"\-") not in MAN_PAGE} == set()
    told = set(re.findall(r"dev\.py ([a-z]+)", README + DEVELOPERS))
    command = [sys.executable, ROOT / "packaging/dev.py", "--help"]
    known = subprocess.run(command, capture_output=True, text=True, check=True).stdout
    assert {one for one in told if not re.search(rf"^  {one} ", known, re.MULTILINE)} == set()


def named():
    """Every file and dotted name between backticks in DEVELOPERS.md."""
    return sorted(set(re.findall(r"`([\w./-]+)`", DEVELOPERS)))


FILES = [one for one in named() if re.search(r"/|\.(py|md|json|spec)$", one)]
MODULES = [
    one for one in named() if re.match(r"(plan|engine|edits|store|exchange|desk|cards)\.\w", one)
]
TO_BE_MADE = {"tests/window/test_week_slope.py"}


def test_files_that_contributors_are_sent_to_are_there():
    places = [ROOT / place for place in ("", "ultraplanner_gui", "packaging")]
    parts = [ROOT / part for part in ("ultraplanner_gui", "packaging", "tests")]

    def is_there(name):
        if "/" not in name:
            return any(next(part.rglob(name), None) for part in parts)
        return any((p / name).exists() or (p / f"{name}.py").exists() for p in places)

    assert len(FILES) > 50
    assert {one for one in FILES if not is_there(one)} <= TO_BE_MADE


def test_names_that_contributors_are_sent_to_are_there():
    for name in MODULES:
        parts = name.split(".")
        found = importlib.import_module(f"ultraplanner_gui.{'.'.join(parts[:2])}")
        for part in parts[2:]:
            found = getattr(found, part)
    assert len(MODULES) > 10

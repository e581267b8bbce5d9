"""What the program is made of: that it fits together, may be handed on, and is really used."""

import ast
import re
import subprocess
import sys
import tomllib

import pytest

from tests.rules import source

PACKAGING = source.ROOT / "packaging"
PROJECT = tomllib.loads((source.ROOT / "pyproject.toml").read_text("utf-8"))["project"]


def ran(*arguments):
    return subprocess.run(
        [sys.executable, *map(str, arguments)], capture_output=True, text=True, check=False
    )


def test_the_installed_packages_fit_together():
    ended = ran("-m", "pip", "check")
    assert ended.returncode == 0, ended.stdout


@pytest.mark.parametrize("name", ["requirements.txt", "requirements-dev.txt"])
def test_every_licence_allows_what_is_done_with_it(name):
    ended = ran(PACKAGING / "licences.py", name)
    assert ended.returncode == 0, ended.stdout
    assert len(ended.stdout.splitlines()) >= len(PROJECT["dependencies"])


def test_the_texts_of_the_licences_go_into_the_bundle(tmp_path):
    ran(PACKAGING / "licences.py", "requirements.txt", tmp_path / "LICENCES.txt")
    text = (tmp_path / "LICENCES.txt").read_text("utf-8")
    for package, words in {
        "numpy": "Redistribution and use in source and binary forms",
        "highspy": "Permission is hereby granted",
        "tzdata": "Apache Software License",
        "PySide6_Essentials": "LGPL-3.0-only",
    }.items():
        part = re.split(r"^=+$", text, flags=re.MULTILINE)
        heads = [i for i, one in enumerate(part) if one.strip().startswith(f"{package} ")]
        assert len(heads) == 1
        assert words in part[heads[0]] + part[heads[0] + 1]
    assert "Version 3, 29 June 2007" in (PACKAGING / "share/licences/LGPL-3.txt").read_text("utf-8")


def left_out():
    """What the spec of the bundle leaves out, read from it."""
    for node in ast.walk(ast.parse((PACKAGING / "ultraplanner.spec").read_text("utf-8"))):
        if isinstance(node, ast.Assign) and getattr(node.targets[0], "id", "") == "EXCLUDED":
            found = {c.value for c in ast.walk(node) if isinstance(c, ast.Constant)}
            return {one for one in found if isinstance(one, str)}
    raise AssertionError("the spec has no EXCLUDED")


def imported():
    """Every module that the program imports, at its top or later."""
    for path in source.modules():
        for node in ast.walk(source.tree(path)):
            if isinstance(node, ast.Import):
                yield from (alias.name for alias in node.names)
            elif isinstance(node, ast.ImportFrom) and node.module:
                yield node.module
                yield from (f"{node.module}.{alias.name}" for alias in node.names)


def test_the_bundle_leaves_out_nothing_that_is_imported():
    out = left_out()
    parts = {f"PySide6.Qt{name}" for name in out if name[0].isupper()} | out
    assert {"scipy", "PySide6.QtQml"} <= parts
    used = set(imported())
    assert {name for name in used if name in parts or name.split(".")[0] in parts} == set()


def test_what_is_imported_and_what_is_asked_for_are_the_same():
    asked = {re.split(r"[<>=]", one)[0].split("-")[0].lower() for one in PROJECT["dependencies"]}
    used = {name.split(".")[0].lower() for name in imported()}
    own = {"ultraplanner_gui", *map(str.lower, sys.stdlib_module_names)}
    data = {"tzdata"}  # read by zoneinfo where the system has no time zones
    assert used - own == asked - data


def test_the_list_for_bundles_holds_to_the_list_for_running():
    def locked(name):
        text = (PACKAGING / name).read_text("utf-8")
        return dict(re.findall(r"^([\w.-]+)==(\S+)", text, re.MULTILINE))

    assert locked("requirements.txt").items() <= locked("requirements-bundle.txt").items()
    assert "pyinstaller" in locked("requirements-bundle.txt")

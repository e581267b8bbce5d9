"""What the wheel carries, and which versions the locks name."""

import re
import tomllib

import pytest

from tests.rules import source
from ultraplanner_gui.desk import resources

PROJECT = tomllib.loads((source.ROOT / "pyproject.toml").read_text("utf-8"))


def _locked(name: str) -> dict[str, str]:
    text = (source.ROOT / "packaging" / name).read_text("utf-8")
    return dict(re.findall(r"^([\w.-]+)==(\S+)", text, re.MULTILINE))


def test_every_package_is_in_the_wheel():
    there = {p.parent.relative_to(source.ROOT).as_posix() for p in source.modules()}
    shipped = {name.replace(".", "/") for name in PROJECT["tool"]["setuptools"]["packages"]}
    assert shipped - {"ultraplanner_gui/resources"} == there


def test_the_bindings_are_locked_to_a_release_that_keeps_none_alive():
    locked = _locked("requirements.txt")
    assert locked["pyside6-essentials"] == locked["shiboken6"] == "6.11.3"
    assert "PySide6-Essentials>=6.10,<6.12" in PROJECT["project"]["dependencies"]


def test_the_lock_for_testing_holds_the_lock_for_running():
    assert _locked("requirements.txt").items() <= _locked("requirements-dev.txt").items()


def test_every_dependency_is_locked():
    wanted = {re.split(r"[<>=]", d)[0].lower() for d in PROJECT["project"]["dependencies"]}
    assert wanted <= _locked("requirements.txt").keys()


def test_a_resource_is_found():
    assert resources.path("fonts/B612-Regular.otf").stat().st_size > 10_000


def test_a_missing_resource_is_said_to_be_missing():
    with pytest.raises(FileNotFoundError, match="nothing-here"):
        resources.path("nothing-here.svg")

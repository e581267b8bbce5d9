"""The project's own source text, as the rules look at it."""

import ast
import subprocess
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "ultraplanner_gui"
QT_FREE = (
    "plan/",
    "science/",
    "wording/",
    "engine/",
    "edits/",
    "store/",
    "exchange/",
)


@cache
def tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"), filename=str(path))


def name(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def modules() -> list[Path]:
    """Return the modules of the program."""
    return sorted(PACKAGE.rglob("*.py"))


def qt_free_modules() -> list[Path]:
    """Return the modules below Qt, and those of the cards that do without it."""
    cards = [m for m in (PACKAGE / "cards").rglob("*.py") if "PySide6" not in m.read_text("utf-8")]
    below = [m for m in modules() if m.relative_to(PACKAGE).as_posix().startswith(QT_FREE)]
    return sorted([*below, *cards])


def all_python() -> list[Path]:
    """Return the modules of the program, its tests and its packaging."""
    folders = (PACKAGE, ROOT / "tests", ROOT / "packaging")
    return sorted(path for folder in folders for path in folder.rglob("*.py"))


def tracked() -> list[Path]:
    """Return every file under version control; skip the test where there is none."""
    listing = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=False
    )
    if listing.returncode:
        pytest.skip("not a git checkout")
    paths = (ROOT / line for line in listing.stdout.split("\0") if line)
    return [path for path in paths if path.is_file()]


def called_name(call: ast.Call) -> str:
    """Return the last part of what *call* calls: `tr` for `self.tr("...")`."""
    match call.func:
        case ast.Name(id=word) | ast.Attribute(attr=word):
            return word
    return ""


def literal(node: ast.expr) -> str | None:
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None

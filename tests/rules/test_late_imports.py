"""What is slow to import is imported where it is used, so that the window is there at once."""

import ast
import subprocess
import sys
from collections.abc import Iterator

from tests.rules import source

LATE = {"highspy", "gpxpy", "icalendar", "xlsxwriter"}


def _run_at_import(node: ast.AST) -> Iterator[ast.AST]:
    """Give what runs when the module is imported: all but bodies of functions and type checks."""
    for child in ast.iter_child_nodes(node):
        if isinstance(child, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda):
            continue
        if isinstance(child, ast.If) and "TYPE_CHECKING" in ast.unparse(child.test):
            continue
        yield child
        yield from _run_at_import(child)


def _imported(node: ast.AST) -> set[str]:
    match node:
        case ast.Import(names=names):
            return {alias.name.split(".")[0] for alias in names}
        case ast.ImportFrom(module=str(module), level=0):
            return {module.split(".")[0]}
    return set()


def test_slow_packages_are_imported_inside_functions_only():
    early = [
        f"{source.name(path)}:{node.lineno} {name}"
        for path in source.modules()
        for node in _run_at_import(source.tree(path))
        for name in _imported(node) & LATE
    ]
    assert early == []


def test_the_first_window_loads_no_slow_package():
    start = "import sys, ultraplanner_gui.app, ultraplanner_gui.window.main_window"
    loaded = subprocess.run(
        [sys.executable, "-c", f"{start}; print(*sys.modules)"],
        capture_output=True,
        text=True,
        check=False,
        cwd=source.ROOT,
    )
    assert loaded.returncode == 0, loaded.stderr
    assert LATE & {name.split(".")[0] for name in loaded.stdout.split()} == set()

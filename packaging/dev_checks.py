"""The steps of the checks: ruff, mypy, import contracts, the tests; one table at the end."""

from __future__ import annotations

import contextlib
import subprocess
import sys
import time
from collections.abc import Callable, Sequence

from dev_screen import virtual_screen
from dev_setup import BUILD, ROOT, Refusal, environment

IMPORT_LINTER = "from importlinter.cli import lint_imports_command as run; run(['--no-logo'])"
Step = tuple[str, Callable[[], int]]


def static_steps(python: str, fix: bool) -> list[Step]:
    """Return the checks that run nothing of the program; *fix* mends what ruff can."""
    env = environment()

    def step(name: str, *args: str) -> Step:
        return name, lambda: subprocess.call([python, *args], cwd=ROOT, env=env)

    layout = step("ruff format", "-m", "ruff", "format", "--quiet", *([] if fix else ["--check"]))
    return [
        # A line that is too long only until it is laid out is no fault.
        *([layout] if fix else []),
        step("ruff check", "-m", "ruff", "check", "--quiet", *(["--fix"] if fix else [])),
        layout,
        step("mypy", "-m", "mypy"),
        step("lint-imports", "-c", IMPORT_LINTER),
    ]


def _pytest(python: str, kind: str, extra: Sequence[str], env: dict[str, str]) -> int:
    report = BUILD / f"tests-{kind}.xml"
    report.unlink(missing_ok=True)
    marked = "screen" if kind == "screen" else "not screen"
    command = [python, "-m", "pytest", "-q", "-m", marked, f"--junitxml={report}", *extra]
    code = subprocess.call(command, cwd=ROOT, env={**environment(), **env})
    # A choice of tests may hold none of one kind; a whole suite must hold both.
    return 0 if code == 5 and extra else code


def test_steps(python: str, extra: Sequence[str]) -> list[Step]:
    """Return the two runs of pytest, with *extra* arguments for it."""

    def plain() -> int:
        return _pytest(python, "plain", extra, {"QT_QPA_PLATFORM": "offscreen"})

    def screen() -> int:
        if sys.platform != "linux":
            return _pytest(python, "screen", extra, {})
        with virtual_screen() as env:
            return _pytest(python, "screen", extra, env)

    return [("pytest without a screen", plain), ("pytest on a screen", screen)]


def go_through(steps: Sequence[Step]) -> int:
    """Take every step, whatever fails before it; sum up at the end."""
    lines: list[str] = []
    failed = 0
    for name, step in steps:
        print(f"\n== {name}", flush=True)
        begin = time.monotonic()
        try:
            code = step()
        except Refusal as refusal:
            print(refusal, flush=True)
            code = 1
        failed += code != 0
        spent = time.monotonic() - begin
        lines.append(f"  {'FAILED' if code else 'ok':6}  {name} ({spent:.0f} s)")
    print("\n== summary", *lines, sep="\n", flush=True)
    return 1 if failed else 0


def test_counts() -> str:
    """Sum up the reports of both test runs in one line."""
    from xml.etree import ElementTree

    total = {"tests": 0, "failures": 0, "errors": 0, "skipped": 0}
    for kind in ("plain", "screen"):
        report = BUILD / f"tests-{kind}.xml"
        with contextlib.suppress(OSError, ElementTree.ParseError):
            for suite in ElementTree.parse(report).iter("testsuite"):
                for name in total:
                    total[name] += int(suite.get(name, "0"))
    bad = total["failures"] + total["errors"]
    passed = total["tests"] - bad - total["skipped"]
    return f"{passed} passed, {bad} failed, {total['skipped']} skipped"

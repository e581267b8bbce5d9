"""The list that every release goes through; it stops at the first thing that does not hold."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from dev_bundle import APP_ID, version
from dev_setup import BUILD, LOCK_DEV, ROOT, Refusal, environment, prepare

#: How often what seems slower is measured.
MEASURED = 3


@dataclass(frozen=True)
class Check:
    """One line of the list: its name, what it asks for, and the work, which raises Refusal."""

    name: str
    what: str
    work: Callable[[], None]


def release(args: Sequence[str]) -> int:
    """Walk through the list before a release; --list shows it, --from NAME begins further down."""
    checks = _checks()
    if list(args) == ["--list"]:
        for check in checks:
            print(f"  {check.name:9} {check.what}")
        return 0
    if args and (len(args) != 2 or args[0] != "--from"):
        raise Refusal("release knows only --list and --from NAME.")
    return walk(_from(checks, args[1]) if args else checks)


def walk(checks: Sequence[Check]) -> int:
    """Go through *checks*; say where it stopped and how to go on from there."""
    for check in checks:
        print(f"\n== {check.name}: {check.what}", flush=True)
        try:
            check.work()
        except Refusal as refusal:
            print(f"{refusal}\nMend that, then: dev.py release --from {check.name}")
            return 1
    print(
        f"\nEverything holds. What is left for you: look at the pictures in {BUILD / 'pictures'},\n"
        f"then  git tag -a v{version()} -m 'Ultraplanner {version()}'"
    )
    return 0


def _checks() -> list[Check]:
    return [
        Check("tree", "nothing that is not committed", lambda: clean_tree(ROOT)),
        Check("version", "one version everywhere, not released yet", lambda: one_version(ROOT)),
        Check("changelog", "a line for each visible change", lambda: change_lines(ROOT)),
        Check("lock", "the lists of exact versions fit pyproject.toml", _dev("lock", "--check")),
        Check("licences", "all of them allow what is done", _script("licences.py")),
        Check("tests", "every check and test", _dev("test")),
        Check("bench", "nothing slower by more than a fifth", _bench),
        Check("pictures", "every state of the window, to look at", _pictures),
        Check("bundle", "the folder and its archive, tried out", _dev("bundle", "--check")),
        Check("wheel", "installed and tried out", _dev("wheel", "--check")),
        Check("deb", "the Debian package, looked into", _dev("deb", "--check")),
        Check("tree", "still nothing that is not committed", lambda: clean_tree(ROOT)),
    ]


def _from(checks: Sequence[Check], name: str) -> list[Check]:
    names = [check.name for check in checks]
    if name not in names:
        raise Refusal(f"There is no {name} in the list; choose one of {', '.join(names[:-1])}.")
    return list(checks[names.index(name) :])


def clean_tree(root: Path) -> None:
    """Refuse if something in *root* is not committed."""
    left = _git(root, "status", "--porcelain")
    if left:
        raise Refusal(f"Not committed yet:\n{left}")


def one_version(root: Path) -> None:
    """Refuse if a file in *root* names another version, or there is a tag of this one."""
    named = _version_in(root / "ultraplanner_gui" / "__init__.py", r'^__version__ = "(.+)"')
    share = root / "packaging" / "share"
    found = {
        "the metainfo": _version_in(
            share / f"{APP_ID}.metainfo.xml", r'<release version="([^"]+)"'
        ),
        "the man page": _version_in(share / "ultraplanner-gui.1", r'"Ultraplanner ([^"]+)"'),
        "the changelog": _version_in(root / "packaging" / "CHANGELOG.md", r"^## (\S+)"),
    }
    wrong = [f"{where} says {what}" for where, what in found.items() if what != named]
    if wrong:
        raise Refusal(f"The program is {named}, but {'; '.join(wrong)}.")
    if f"v{named}" in _git(root, "tag", "--list").split():
        raise Refusal(f"There is a tag v{named} already; raise __version__.")
    print(f"version {named}")


def change_lines(root: Path) -> None:
    """Refuse if the changelog of *root* says nothing of the newest version, or not in lines."""
    text = (root / "packaging" / "CHANGELOG.md").read_text("utf-8")
    newest = re.split(r"^## .*$", text, flags=re.MULTILINE)[1].strip()
    lines = newest.splitlines()
    strange = [line for line in lines if not re.fullmatch(r"- [A-Z].*[^.]", line)]
    if strange:
        raise Refusal("A change is one line, '- Verb what', without a full stop:\n" + strange[0])
    if not lines:
        raise Refusal("The changelog has nothing to say of this version.")
    print(f"{len(lines)} changes")


def nothing_slower(measure: Callable[[], None], report: Path) -> None:
    """Refuse if a row of *report*, as *measure* writes it, is slower than kept by over a fifth.

    Once may be bad luck: it has to be slower every time.
    """
    worse: dict[str, str] = {}
    for number in range(MEASURED):
        measure()
        said: list[str] = json.loads(report.read_text("utf-8"))["slower"]
        now = {line.split(": ")[0]: line for line in said}
        worse = {name: line for name, line in now.items() if not number or name in worse}
        if not worse:
            return
    raise Refusal("Slower by more than a fifth:\n" + "\n".join(worse.values()))


def _bench() -> None:
    nothing_slower(_dev("bench"), BUILD / "bench.json")


def _pictures() -> None:
    python = prepare(LOCK_DEV, ())
    command = [python, str(ROOT / "packaging" / "pictures.py"), "--all", str(BUILD / "pictures")]
    _ran(["xvfb-run", "-a", *command] if sys.platform == "linux" else command)


def _dev(*args: str) -> Callable[[], None]:
    return lambda: _ran([sys.executable, str(ROOT / "packaging" / "dev.py"), *args])


def _script(name: str) -> Callable[[], None]:
    return lambda: _ran([prepare(LOCK_DEV, ()), str(ROOT / "packaging" / name)])


def _ran(command: Sequence[str]) -> None:
    try:
        code = subprocess.call(command, cwd=ROOT, env=environment())
    except FileNotFoundError as error:
        raise Refusal(f"{command[0]} is not installed.") from error
    if code:
        raise Refusal(f"It ended with {code}, see above.")


def _git(root: Path, *args: str) -> str:
    command = ["git", "-C", str(root), *args]
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout.strip()


def _version_in(path: Path, pattern: str) -> str:
    found = re.search(pattern, path.read_text("utf-8"), re.MULTILINE)
    return found[1] if found else "nothing"

"""The lists of exact versions with the hashes of all their files: renewed, tried, checked."""

from __future__ import annotations

import contextlib
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Sequence
from pathlib import Path

from dev_setup import LOCK_BUNDLE, LOCK_DEV, LOCK_RUN, PYTHON, ROOT, VENV, Refusal

# Each list with what it asks for beyond the first, which all of them hold to.
LISTS: tuple[tuple[str, ...], ...] = (
    (LOCK_RUN,),
    (LOCK_DEV, "--extra=dev", f"-c={LOCK_RUN}"),
    (LOCK_BUNDLE, "--extra=bundle", f"-c={LOCK_RUN}"),
)


def lock(args: Sequence[str]) -> int:
    """Renew the lists of exact versions and test with them; --check only asks if they still fit."""
    if set(args) - {"--check"}:
        raise Refusal("lock knows only --check.")
    folder = ROOT / "packaging"
    with _resolver() as choose, tempfile.TemporaryDirectory() as aside:
        made = _resolved(choose, folder, Path(aside), is_upgrade="--check" not in args)
        changes = [line for name, text in made.items() for line in _changes(folder / name, text)]
        if not changes:
            print("The lists fit pyproject.toml and are as they would be made now.")
            return 0
        print("\n".join(changes), flush=True)
        if "--check" in args:
            print("The lists do not fit pyproject.toml any more: run dev.py lock.")
            return 1
        return _tried(folder, made)


def _tried(folder: Path, made: dict[str, str]) -> int:
    """Put the lists *made* in place and test with them; put the old ones back if that fails."""
    old = {name: (folder / name).read_text("utf-8") for name in made if (folder / name).exists()}
    for name, text in made.items():
        (folder / name).write_text(text, "utf-8")
    code = subprocess.call([sys.executable, str(folder / "dev.py"), "test"])
    if code:
        for name, text in old.items():
            (folder / name).write_text(text, "utf-8")
        print("The tests fail with these versions, so the lists are as they were before.")
    return code


@contextlib.contextmanager
def _resolver() -> Iterator[list[str]]:
    """Give the command that chooses versions, from an environment of its own."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([sys.executable, "-m", "venv", folder], check=True)
        python = str(Path(folder) / Path(PYTHON).relative_to(VENV))
        pip = [python, "-m", "pip"]
        subprocess.run([*pip, "install", "--quiet", "uv"], check=True)
        yield [
            *(python, "-m", "uv", "pip", "compile", "--quiet", "--universal"),
            *("--python-version=3.11", "--generate-hashes", "--no-header"),
            *("--no-emit-index-url", "--annotation-style=line", "--no-config"),
            *_index_arguments(pip),
        ]


def _resolved(choose: Sequence[str], folder: Path, aside: Path, is_upgrade: bool) -> dict[str, str]:
    """Return the lists as they would be made now; the present ones bind unless *is_upgrade*."""
    (aside / "packaging").mkdir()
    shutil.copy2(ROOT / "pyproject.toml", aside)
    for name, *_more in LISTS:
        if (folder / name).exists() and not is_upgrade:
            shutil.copy2(folder / name, aside / "packaging")
    for name, *more in LISTS:
        command = [*choose, "../pyproject.toml", *more, "-o", name]
        subprocess.run(command, check=True, cwd=aside / "packaging")
    return {name: (aside / "packaging" / name).read_text("utf-8") for name, *_ in LISTS}


def _changes(path: Path, text: str) -> list[str]:
    """Return a line for each version that *text* names other than the list at *path*."""
    before = _versions(path.read_text("utf-8") if path.exists() else "")
    after = _versions(text)
    changed = sorted(n for n in before.keys() | after.keys() if before.get(n) != after.get(n))
    lines = [f"{path.name}: {n} {before.get(n, '-')} -> {after.get(n, '-')}" for n in changed]
    if not lines and path.exists() and text != path.read_text("utf-8"):
        lines = [f"{path.name}: other files of the same versions"]
    return lines


def _versions(text: str) -> dict[str, str]:
    return dict(re.findall(r"^([\w.-]+)==(\S+)", text, re.MULTILINE))


def _index_arguments(pip: Sequence[str]) -> list[str]:
    """Return the user's own package index as uv wants it, if pip was told of one."""
    ask = [*pip, "config", "get", "global.index-url"]
    index = subprocess.run(ask, capture_output=True, text=True, check=False).stdout.strip()
    return ["--default-index", index] if index else []

"""The lists of exact versions with the hashes of all their files, made anew."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

from dev_setup import LOCK_DEV, LOCK_RUN, PYTHON, ROOT, VENV, Refusal


def _index_arguments(pip: Sequence[str]) -> list[str]:
    """Return the user's own package index as uv wants it, if pip was told of one."""
    ask = [*pip, "config", "get", "global.index-url"]
    index = subprocess.run(ask, capture_output=True, text=True, check=False).stdout.strip()
    return ["--default-index", index] if index else []


def lock(args: Sequence[str]) -> int:
    """Renew the two lists of exact versions with the hashes of all their files."""
    import tempfile

    if args:
        raise Refusal("lock takes no arguments.")
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([sys.executable, "-m", "venv", folder], check=True)
        python = str(Path(folder) / Path(PYTHON).relative_to(VENV))
        pip = [python, "-m", "pip"]
        subprocess.run([*pip, "install", "--quiet", "uv"], check=True)
        choose = [
            python,
            "-m",
            "uv",
            "pip",
            "compile",
            "--quiet",
            "--universal",
            "--python-version=3.11",
        ]
        choose += ["--generate-hashes", "--no-header", "--no-emit-index-url", "--upgrade"]
        choose += ["--annotation-style=line", "--no-config", *_index_arguments(pip)]
        for name, *more in ([LOCK_RUN], [LOCK_DEV, "--extra=dev", f"-c={LOCK_RUN}"]):
            command = [*choose, "../pyproject.toml", *more, "-o", name]
            subprocess.run(command, check=True, cwd=ROOT / "packaging")
    return 0

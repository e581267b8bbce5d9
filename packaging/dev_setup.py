"""Set up what a checkout needs: Debian's packages, the venv, the environment of the program.

Needs nothing but Python's own library, as `dev.py` that uses it.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import NoReturn

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
BUILD = ROOT / "build"
PYTHON = str(VENV / ("Scripts/python.exe" if sys.platform == "win32" else "bin/python"))
READY = VENV / "ready.json"
UNFINISHED = VENV / "unfinished"
LOCK_RUN = "requirements.txt"
LOCK_DEV = "requirements-dev.txt"
LOCK_BUNDLE = "requirements-bundle.txt"

# What Qt's wheels leave to the system: the first six for every start, the rest for a window.
QT_PACKAGES = (
    "libegl1",
    "libgl1",
    "libdbus-1-3",
    "libfontconfig1",
    "libglib2.0-0",
    "libxkbcommon0",
    "libxcb-cursor0",
    "libxcb-icccm4",
    "libxcb-keysyms1",
    "libxcb-shape0",
    "libxcb-xkb1",
    "libxkbcommon-x11-0",
)
TEST_PACKAGES = (
    *QT_PACKAGES,
    "xvfb",
    "xdotool",
    "openbox",
    "poppler-utils",
    "fonts-dejavu-core",
    # what checks the files that a desktop reads
    "appstream",
    "desktop-file-utils",
    "shared-mime-info",
    "mandoc",
    "man-db",
)


class Refusal(Exception):
    """The set-up cannot go on; carries the sentence to show."""


# ---------------------------------------------------------------- system packages


def _missing_debian(wanted: Sequence[str]) -> list[str]:
    """Return those of *wanted* that are neither installed nor provided; none off Debian."""
    if not wanted or not shutil.which("dpkg-query"):
        return []
    listing = subprocess.run(
        ["dpkg-query", "-W", "-f", "${db:Status-Status}\t${Package}, ${Provides}\n"],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    there: set[str] = set()
    for line in listing.splitlines():
        status, _, names = line.partition("\t")
        if status == "installed":
            there.update(name.split("(")[0].strip() for name in names.split(","))
    return [name for name in wanted if name not in there]


def _venv_package() -> list[str]:
    """Return the package that lets Debian's own Python make a venv, if it is not there."""
    with contextlib.suppress(ImportError):
        import ensurepip  # noqa: F401
        import venv  # noqa: F401

        return []
    if shutil.which("dpkg-query"):
        return [f"python{sys.version_info.major}.{sys.version_info.minor}-venv"]
    raise Refusal("This Python has no venv and ensurepip modules; install a complete Python.")


def _root_prefix() -> list[str] | None:
    """Return what to put before a command to run it as root, None if that is not allowed."""
    if os.geteuid() == 0:
        return []
    if not shutil.which("sudo"):
        return None
    allowed = subprocess.run(["sudo", "-n", "true"], capture_output=True, check=False)
    return ["sudo", "-n"] if allowed.returncode == 0 else None


def _install_debian(missing: Sequence[str]) -> None:
    install = ["apt-get", "install", "-y", "--no-install-recommends", *missing]
    prefix = _root_prefix()
    if prefix is None or not shutil.which("apt-get"):
        raise Refusal(
            "Debian packages are missing and may not be installed from here. Run\n"
            f"    sudo apt-get update && sudo {' '.join(install)}\nand then this again."
        )
    print(f"Installing Debian packages: {' '.join(missing)}", flush=True)
    patient = ["-q", "-o", "DPkg::Lock::Timeout=300"]
    calm = [*prefix, "env", "DEBIAN_FRONTEND=noninteractive", "apt-get", *patient]
    none = subprocess.DEVNULL
    if subprocess.call([*calm, *install[1:]], stdin=none, stdout=none, stderr=none) == 0:
        return
    # Lists that were never fetched, or are old: fetch them and try once more, faults aloud.
    subprocess.call([*calm, "update"], stdin=none, stdout=none)
    if subprocess.call([*calm, *install[1:]], stdin=none, stdout=none):
        raise Refusal(f"apt-get failed, see above. It was asked to\n    {' '.join(install)}")


def _key(*parts: str | bytes) -> str:
    digest = hashlib.sha256()
    for part in parts:
        digest.update(part if isinstance(part, bytes) else part.encode())
        digest.update(b"\0")
    return digest.hexdigest()


def _python_key(lock: str) -> str:
    # The interpreter behind the venv goes in: after an upgrade of it the venv is an empty shell.
    return _key(os.path.realpath(PYTHON), (ROOT / "packaging" / lock).read_bytes())


def _stamps() -> dict[str, str]:
    """Return what the finished venv says was set up; nothing while one is unfinished."""
    try:
        stamps = json.loads(READY.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    usable = isinstance(stamps, dict) and not UNFINISHED.exists() and Path(PYTHON).exists()
    return stamps if usable else {}


def _has_lock(stamps: dict[str, str], lock: str) -> bool:
    # The packages for testing include those for running.
    return any(stamps.get(name) == _python_key(name) for name in {lock, LOCK_DEV})


@contextlib.contextmanager
def _alone() -> Iterator[None]:
    """Hold the set-up lock: two set-ups in one checkout go one after the other."""
    BUILD.mkdir(exist_ok=True)
    with (BUILD / "set-up.lock").open("a+b") as file:
        if sys.platform == "win32":
            import msvcrt

            while True:
                with contextlib.suppress(OSError):
                    msvcrt.locking(file.fileno(), msvcrt.LK_LOCK, 1)
                    break
        else:
            import fcntl

            fcntl.flock(file, fcntl.LOCK_EX)
        yield


def _make_venv() -> None:
    """Make the venv afresh unless a whole one is there; it counts as unfinished until filled."""
    works = Path(PYTHON).exists() and not UNFINISHED.exists()
    ask = [PYTHON, "-c", "import pip"]
    if works and subprocess.call(ask, stderr=subprocess.DEVNULL) == 0:
        return
    if VENV.exists():
        if not (UNFINISHED.exists() or READY.exists()):
            raise Refusal("There is a .venv without pip that is not ours; move it away first.")
        shutil.rmtree(VENV)
    print("Making .venv", flush=True)
    VENV.mkdir()
    UNFINISHED.touch()
    # The base interpreter, so that a venv is never made from another one.
    base = getattr(sys, "_base_executable", None) or sys.executable
    if subprocess.call([base, "-m", "venv", str(VENV)]):
        raise Refusal("Python could not make .venv, see above.")


def _install_locked(lock: str) -> None:
    was_whole = not UNFINISHED.exists()
    UNFINISHED.touch()
    READY.unlink(missing_ok=True)
    print(f"Installing the Python packages of packaging/{lock}", flush=True)
    pip = [PYTHON, "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
    failed = subprocess.call([*pip, "--require-hashes", "-r", str(ROOT / "packaging" / lock)])
    if not failed:
        return
    if was_whole:  # pip fetches everything before it changes anything
        UNFINISHED.unlink()
    raise Refusal("pip could not install the packages, see above; is there a network?")


def prepare(lock: str, debian: Sequence[str]) -> str:
    """Set up what is missing of *lock* and *debian*; return the venv's Python."""
    debian_key = _key(*debian)
    stamps = _stamps()
    if _has_lock(stamps, lock) and (not debian or debian_key in stamps):
        return PYTHON
    with _alone():
        stamps = _stamps()
        need_python = not _has_lock(stamps, lock)
        missing = _missing_debian(debian) + (_venv_package() if need_python else [])
        if missing:
            _install_debian(missing)
        if need_python:
            _make_venv()
            _install_locked(lock)
            stamps[lock] = _python_key(lock)
        if debian:
            stamps[debian_key] = "installed"
        new = READY.with_suffix(".new")
        new.write_text(json.dumps(stamps), encoding="utf-8")
        new.replace(READY)
        UNFINISHED.unlink(missing_ok=True)
    return PYTHON


# ---------------------------------------------------------------- running


def environment() -> dict[str, str]:
    """Return the environment for the program and its tests: this checkout, a UTF-8 locale."""
    env = dict(os.environ)
    env["PYTHONPATH"] = os.pathsep.join(filter(None, [str(ROOT), env.get("PYTHONPATH")]))
    spoken = env.get("LC_ALL") or env.get("LC_CTYPE") or env.get("LANG") or "C"
    if sys.platform == "linux" and spoken in ("C", "POSIX"):
        env["LC_ALL"] = "C.UTF-8"  # Qt warns about any other encoding
    return env


def has_screen() -> bool:
    """Whether a window can be shown here."""
    if sys.platform != "linux":
        return True
    return any(os.environ.get(n) for n in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"))


def become(command: list[str], env: dict[str, str]) -> NoReturn:
    """Run *command* in place of this process, or as a child where Windows cannot do that."""
    sys.stdout.flush()
    if sys.platform == "win32":
        sys.exit(subprocess.call(command, env=env))
    os.execve(command[0], command, env)

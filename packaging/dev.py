"""Set up a checkout, then run, test, check or measure Ultraplanner: python3 packaging/dev.py.

Needs nothing but Python's own library. Everything goes into `.venv` and `build`; on Debian and
its kin the system packages Qt needs are installed too, where that is allowed.
"""

from __future__ import annotations

import sys

if sys.version_info < (3, 11):
    sys.exit("Ultraplanner needs Python 3.11 or newer; start this script with a newer python3.")

import contextlib
import hashlib
import json
import os
import shutil
import signal
import subprocess
import time
from collections.abc import Callable, Iterator, Sequence
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
OWN_FILES = (".gpx", ".ultraplan")

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
)
IMPORT_LINTER = "from importlinter.cli import lint_imports_command as run; run(['--no-logo'])"


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


# ---------------------------------------------------------------- Python packages


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


def _environment() -> dict[str, str]:
    """Return the environment for the program and its tests: this checkout, a UTF-8 locale."""
    env = dict(os.environ)
    env["PYTHONPATH"] = os.pathsep.join(filter(None, [str(ROOT), env.get("PYTHONPATH")]))
    spoken = env.get("LC_ALL") or env.get("LC_CTYPE") or env.get("LANG") or "C"
    if sys.platform == "linux" and spoken in ("C", "POSIX"):
        env["LC_ALL"] = "C.UTF-8"  # Qt warns about any other encoding
    return env


def _has_screen() -> bool:
    if sys.platform != "linux":
        return True
    return any(os.environ.get(n) for n in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"))


def _become(command: list[str], env: dict[str, str]) -> NoReturn:
    """Run *command* in place of this process, or as a child where Windows cannot do that."""
    sys.stdout.flush()
    if sys.platform == "win32":
        sys.exit(subprocess.call(command, env=env))
    os.execve(command[0], command, env)


def run(args: Sequence[str]) -> int:
    """Open the demo project, or a FILE; other arguments are passed on."""
    python = prepare(LOCK_RUN, QT_PACKAGES if sys.platform == "linux" else ())
    own_file = any(arg.lower().endswith(OWN_FILES) for arg in args)
    what = [*args] if own_file or "--demo" in args else ["--demo", *args]
    program = [python, "-m", "ultraplanner_gui"]
    if _has_screen():
        _become([*program, *what], _environment())
    env = {**_environment(), "QT_QPA_PLATFORM": "offscreen"}
    if "--cards" in args:
        _become([*program, *what], env)
    BUILD.mkdir(exist_ok=True)
    cards = BUILD / "demo-cards.pdf"
    code = subprocess.call([*program, "--cards", str(cards), *what], env=env)
    if code == 0:
        print(
            f"There is no display here, so the cards were written to\n    {cards}\n"
            "To see the window, run this in a desktop session, or on a virtual screen (Debian\n"
            "packages xvfb and xauth): xvfb-run -a python3 packaging/dev.py run"
        )
    return code


# ---------------------------------------------------------------- checking

Step = tuple[str, Callable[[], int]]


def _static_steps(python: str, fix: bool) -> list[Step]:
    env = _environment()

    def step(name: str, *args: str) -> Step:
        return name, lambda: subprocess.call([python, *args], cwd=ROOT, env=env)

    return [
        step("ruff check", "-m", "ruff", "check", "--quiet", *(["--fix"] if fix else [])),
        step("ruff format", "-m", "ruff", "format", "--quiet", *([] if fix else ["--check"])),
        step("mypy", "-m", "mypy"),
        step("lint-imports", "-c", IMPORT_LINTER),
    ]


def _background(
    command: Sequence[str], env: dict[str, str], *handles: int
) -> subprocess.Popen[bytes]:
    return subprocess.Popen(
        command,
        env=env,
        pass_fds=handles,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        start_new_session=True,
    )


@contextlib.contextmanager
def _virtual_screen() -> Iterator[dict[str, str]]:
    """Run an X server and a window manager of our own; give the environment to use them."""
    started: list[subprocess.Popen[bytes]] = []
    reader, writer = os.pipe()
    try:
        server = ["Xvfb", "-displayfd", str(writer), "-screen", "0", "1600x1200x24"]
        server += ["-nolisten", "tcp", "-noreset"]
        started.append(_background(server, _environment(), writer))
        os.close(writer)
        with os.fdopen(reader) as answer:
            number = answer.readline().strip()
        if not number:
            raise Refusal("Xvfb did not start.")
        # A config folder of its own keeps the user's key bindings out of the tests.
        env = {"DISPLAY": f":{number}", "QT_QPA_PLATFORM": "xcb"}
        desk = {**_environment(), **env, "XDG_CONFIG_HOME": str(BUILD / "no-config")}
        started.append(_background(["openbox", "--sm-disable"], desk))
        _wait_for_window_manager(desk)
        yield env
    except FileNotFoundError as error:
        raise Refusal(f"The tests of whole windows need {error.filename}; install it.") from error
    finally:
        for process in reversed(started):
            process.terminate()
            process.wait()


def _wait_for_window_manager(env: dict[str, str]) -> None:
    # Asking for desktops succeeds as soon as a manager has announced itself.
    ask = ["xdotool", "get_num_desktops"]
    for _ in range(100):
        if subprocess.run(ask, env=env, capture_output=True, check=False).returncode == 0:
            return
        time.sleep(0.1)
    raise Refusal("The window manager of the tests did not start.")


def _pytest(python: str, kind: str, extra: Sequence[str], env: dict[str, str]) -> int:
    report = BUILD / f"tests-{kind}.xml"
    report.unlink(missing_ok=True)
    marked = "screen" if kind == "screen" else "not screen"
    command = [python, "-m", "pytest", "-q", "-m", marked, f"--junitxml={report}", *extra]
    code = subprocess.call(command, cwd=ROOT, env={**_environment(), **env})
    # A choice of tests may hold none of one kind; a whole suite must hold both.
    return 0 if code == 5 and extra else code


def _test_steps(python: str, extra: Sequence[str]) -> list[Step]:
    def plain() -> int:
        return _pytest(python, "plain", extra, {"QT_QPA_PLATFORM": "offscreen"})

    def screen() -> int:
        if sys.platform != "linux":
            return _pytest(python, "screen", extra, {})
        with _virtual_screen() as env:
            return _pytest(python, "screen", extra, env)

    return [("pytest without a screen", plain), ("pytest on a screen", screen)]


def _go_through(steps: Sequence[Step]) -> int:
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


def _test_counts() -> str:
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


def test(args: Sequence[str]) -> int:
    """Check and test everything; pytest's own arguments choose tests and leave the checks out."""
    python = prepare(LOCK_DEV, TEST_PACKAGES if sys.platform == "linux" else ())
    BUILD.mkdir(exist_ok=True)
    for kind in ("plain", "screen"):
        (BUILD / f"tests-{kind}.xml").unlink(missing_ok=True)
    # So that the screen of the tests is taken down when this process is told to end.
    signal.signal(signal.SIGTERM, lambda number, _frame: sys.exit(128 + number))
    steps = [] if args else _static_steps(python, fix=False)
    code = _go_through([*steps, *_test_steps(python, args)])
    print(_test_counts())
    return code


def lint(args: Sequence[str]) -> int:
    """Run ruff, mypy and the import contracts; --fix mends what ruff can."""
    unknown = set(args) - {"--fix"}
    if unknown:
        raise Refusal(f"lint knows only --fix, not {' '.join(sorted(unknown))}.")
    python = prepare(LOCK_DEV, ())
    return _go_through(_static_steps(python, fix="--fix" in args))


def bench(args: Sequence[str]) -> int:
    """Measure speed and memory against their floors."""
    script = ROOT / "packaging" / "bench.py"
    if not script.exists():
        raise Refusal("There is no packaging/bench.py yet, so nothing to measure.")
    python = prepare(LOCK_DEV, TEST_PACKAGES if sys.platform == "linux" else ())
    _become([python, str(script), *args], _environment())


def trust(args: Sequence[str]) -> int:
    """Try to lose something: kills, damage, hostile files, random edits; --short for a minute."""
    python = prepare(LOCK_DEV, TEST_PACKAGES if sys.platform == "linux" else ())
    _become([python, str(ROOT / "packaging" / "trust.py"), *args], _environment())


# ---------------------------------------------------------------- locking


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


COMMANDS: dict[str, Callable[[Sequence[str]], int]] = {
    "run": run,
    "test": test,
    "lint": lint,
    "bench": bench,
    "trust": trust,
    "lock": lock,
}


def main(args: Sequence[str]) -> int:
    """Run the command named by the first argument; return the exit code."""
    if not args or args[0] in ("-h", "--help"):
        print("usage: python3 packaging/dev.py COMMAND [ARGUMENTS]\n")
        for name, command in COMMANDS.items():
            print(f"  {name:6} {command.__doc__}")
        return 0 if args else 2
    if args[0] not in COMMANDS:
        print(f"There is no command {args[0]}; choose one of {', '.join(COMMANDS)}.")
        return 2
    try:
        return COMMANDS[args[0]](args[1:])
    except Refusal as refusal:
        print(refusal, file=sys.stderr)
        return 1
    except subprocess.CalledProcessError as error:
        return error.returncode
    except KeyboardInterrupt:
        return 130


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

"""Set up a checkout, then run, test, check or measure Ultraplanner: python3 packaging/dev.py.

Needs nothing but Python's own library. Everything goes into `.venv` and `build`; on Debian and
its kin the system packages Qt needs are installed too, where that is allowed.
"""

from __future__ import annotations

import sys

if sys.version_info < (3, 11):
    sys.exit("Ultraplanner needs Python 3.11 or newer; start this script with a newer python3.")

import signal
import subprocess
from collections.abc import Callable, Sequence

from dev_bundle import bundle, deb, wheel
from dev_checks import go_through, static_steps, test_counts, test_steps
from dev_lock import lock
from dev_release import release
from dev_setup import (
    BUILD,
    LOCK_DEV,
    LOCK_RUN,
    QT_PACKAGES,
    ROOT,
    TEST_PACKAGES,
    Refusal,
    become,
    environment,
    has_screen,
    prepare,
)

OWN_FILES = (".gpx", ".ultraplan")


def run(args: Sequence[str]) -> int:
    """Open the demo project, or a FILE; other arguments are passed on."""
    python = prepare(LOCK_RUN, QT_PACKAGES if sys.platform == "linux" else ())
    own_file = any(arg.lower().endswith(OWN_FILES) for arg in args)
    what = [*args] if own_file or "--demo" in args else ["--demo", *args]
    program = [python, "-m", "ultraplanner_gui"]
    if has_screen():
        become([*program, *what], environment())
    env = {**environment(), "QT_QPA_PLATFORM": "offscreen"}
    if "--cards" in args:
        become([*program, *what], env)
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


def test(args: Sequence[str]) -> int:
    """Check and test everything; pytest's own arguments choose tests and leave the checks out."""
    python = prepare(LOCK_DEV, TEST_PACKAGES if sys.platform == "linux" else ())
    BUILD.mkdir(exist_ok=True)
    for kind in ("plain", "screen"):
        (BUILD / f"tests-{kind}.xml").unlink(missing_ok=True)
    # So that the screen of the tests is taken down when this process is told to end.
    signal.signal(signal.SIGTERM, lambda number, _frame: sys.exit(128 + number))
    steps = [] if args else static_steps(python, fix=False)
    code = go_through([*steps, *test_steps(python, args)])
    print(test_counts())
    return code


def lint(args: Sequence[str]) -> int:
    """Run ruff, mypy and the import contracts; --fix mends what ruff can."""
    unknown = set(args) - {"--fix"}
    if unknown:
        raise Refusal(f"lint knows only --fix, not {' '.join(sorted(unknown))}.")
    python = prepare(LOCK_DEV, ())
    return go_through(static_steps(python, fix="--fix" in args))


def bench(args: Sequence[str]) -> int:
    """Measure speed and memory against their floors."""
    script = ROOT / "packaging" / "bench.py"
    if not script.exists():
        raise Refusal("There is no packaging/bench.py yet, so nothing to measure.")
    python = prepare(LOCK_DEV, TEST_PACKAGES if sys.platform == "linux" else ())
    become([python, str(script), *args], environment())


def trust(args: Sequence[str]) -> int:
    """Try to lose something: kills, damage, hostile files, random edits; --short for a minute."""
    python = prepare(LOCK_DEV, TEST_PACKAGES if sys.platform == "linux" else ())
    # every byte by one allocator, so that what is in use can be told from the gaps
    held_by_one = {**environment(), "PYTHONMALLOC": "malloc"}
    become([python, str(ROOT / "packaging" / "trust.py"), *args], held_by_one)


def translate(args: Sequence[str]) -> int:
    """Bring the translations up to the code; pseudo DIR makes a longer, accented language."""
    become([prepare(LOCK_DEV, ()), str(ROOT / "packaging" / "translate.py"), *args], environment())


COMMANDS: dict[str, Callable[[Sequence[str]], int]] = {
    "run": run,
    "test": test,
    "lint": lint,
    "bench": bench,
    "trust": trust,
    "translate": translate,
    "lock": lock,
    "bundle": bundle,
    "wheel": wheel,
    "deb": deb,
    "release": release,
}


def main(args: Sequence[str]) -> int:
    """Run the command named by the first argument; return the exit code."""
    if not args or args[0] in ("-h", "--help"):
        print("usage: python3 packaging/dev.py COMMAND [ARGUMENTS]\n")
        for name, command in COMMANDS.items():
            print(f"  {name:9} {command.__doc__}")
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

"""The short form of `dev.py trust`: all of it in small, each part with a table row."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


@pytest.mark.skipif(sys.platform == "win32", reason="no kill -9 there")
def test_nothing_is_lost_in_the_short_form():
    run = [sys.executable, str(ROOT / "packaging" / "trust.py"), "--short"]
    done = subprocess.run(run, capture_output=True, text=True, cwd=ROOT, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "FAULTS" not in done.stdout
    assert done.stdout.count("nothing") == 13

import random
import signal
import subprocess
import sys
import time

import pytest
from msgspec.structs import replace

from tests.store.projects import full_project
from ultraplanner_gui.store.project_file import ProjectFile

KEEPER = """
import sys
from msgspec.structs import replace
from datetime import timedelta
from ultraplanner_gui.store.project_file import ProjectFile

file = ProjectFile.open(sys.argv[1])
count = int(file.project.notes or 0)
while True:
    count += 1
    project = file.project
    session = project.block.sessions[count % len(project.block.sessions)]
    moved = replace(session, day=session.day + timedelta(days=1), distance_m=float(count))
    block = project.block.with_session(moved)
    file.keep(replace(project, notes=str(count), block=block), "Move session")
    print(count, flush=True)
"""


@pytest.mark.skipif(sys.platform == "win32", reason="no kill -9 there")
def test_killed_program_loses_no_acknowledged_edit(tmp_path):
    path = tmp_path / "hill.ultraplan"
    project = replace(full_project(sessions=40, points=500), notes="0")
    ProjectFile.create(path, project).close()
    luck = random.Random()
    journals = 0
    for _ in range(12):
        run = subprocess.Popen(
            [sys.executable, "-c", KEEPER, str(path)], stdout=subprocess.PIPE, text=True
        )
        acknowledged = int(run.stdout.readline())
        time.sleep(luck.uniform(0.0, 0.15))
        run.send_signal(signal.SIGKILL)
        rest = run.stdout.read().splitlines(keepends=True)
        run.wait()
        run.stdout.close()
        acknowledged = max(acknowledged, *(int(n) for n in rest if n.endswith("\n")), 0)
        journals += path.with_name(f"{path.name}-journal").exists()
        with ProjectFile.open(path) as file:
            kept = int(file.project.notes)
            assert kept in (acknowledged, acknowledged + 1)
            assert any(s.distance_m == kept for s in file.project.block.sessions)
    assert journals, "no run was stopped while it had the file open"


def test_half_written_transaction_is_undone_at_the_next_opening(tmp_path):
    """The process dies in the middle of a commit, pages of it already in the file."""
    path = tmp_path / "hill.ultraplan"
    project = full_project(sessions=40, points=500)
    ProjectFile.create(path, project).close()
    code = """
import os, sqlite3, sys
connection = sqlite3.connect(sys.argv[1], isolation_level=None)
connection.execute("PRAGMA cache_size = 1")
connection.execute("PRAGMA cache_spill = 1")
connection.execute("BEGIN IMMEDIATE")
connection.execute("UPDATE state SET body = zeroblob(20000)")
connection.execute("UPDATE part SET body = zeroblob(9000)")
os.kill(os.getpid(), 9)
"""
    before = path.read_bytes()
    subprocess.run([sys.executable, "-c", code, str(path)], check=False)
    assert path.read_bytes() != before
    assert path.with_name(f"{path.name}-journal").stat().st_size > 0
    with ProjectFile.open(path) as file:
        assert file.project == project

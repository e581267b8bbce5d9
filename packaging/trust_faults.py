"""What goes wrong around a program: each fault in a process of its own, and what is left after it.

The old file must be whole, the reason said in one sentence, and the program go on or end clean.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

from trust_parts import Part

from tests.store.projects import full_project
from ultraplanner_gui.store.project_file import ProjectFile

_LIMIT_S = 60.0

# What every child begins with: a document on the file named, and what it says of refused edits.
_BEGIN = """
import json, os, resource, signal, sys, time
sys.path[:0] = [{root!r}]
from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, QTimer
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.store.project_file import ProjectFile
app = QCoreApplication([])
said = []
document = Document(ProjectFile.open({path!r}))
document.refused.connect(lambda why: said.append(str(why)))
document.keep_failed.connect(lambda why: said.append(str(why)))

def tell(**more):
    kept = document.is_kept
    print(json.dumps(dict(said=said, kept=kept, notes=document.project.notes[:20], **more)))
"""

_FAULTS: dict[str, str] = {
    "file-size limit": """
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
size = os.path.getsize({path!r})
resource.setrlimit(resource.RLIMIT_FSIZE, (size + 4096, resource.RLIM_INFINITY))
document.perform(WriteNotes("x" * 150_000))
resource.setrlimit(resource.RLIMIT_FSIZE, (resource.RLIM_INFINITY, resource.RLIM_INFINITY))
document.perform(WriteNotes("after"))
tell()
""",
    "file moved away": """
os.rename({path!r}, {path!r} + ".moved")
document.perform(WriteNotes("after"))
tell(there=os.path.exists({path!r}))
""",
    "file replaced by a sync tool": """
import shutil
shutil.copy({path!r}, {path!r} + ".other")
os.replace({path!r} + ".other", {path!r})
document.perform(WriteNotes("after"))
tell()
""",
    "file deleted": """
os.unlink({path!r})
document.perform(WriteNotes("after"))
tell()
""",
    "clock set back": """
import ultraplanner_gui.store.project_file as store
from datetime import datetime, timedelta
class Past(datetime):
    @classmethod
    def now(cls, tz=None):
        return datetime.now(tz) - timedelta(days=400)
store.datetime = Past
document.perform(WriteNotes("in the past"))
document.mark("named in the past")
store.datetime = datetime
document.perform(WriteNotes("after"))
document.undo_stack.undo(); document.undo_stack.redo()
tell(points=len(document.history()))
""",
    "time zone and locale changed": """
import locale
from PySide6.QtCore import QLocale
os.environ["TZ"] = "Pacific/Kiritimati"; time.tzset()
QLocale.setDefault(QLocale("ar_EG"))
document.perform(WriteNotes("far away"))
os.environ["TZ"] = "America/Adak"; time.tzset()
QLocale.setDefault(QLocale("de_DE"))
document.perform(WriteNotes("after"))
tell()
""",
    "out of memory in a job": """
from ultraplanner_gui.desk.jobs import JobBench
bench = JobBench()
heard = []
bench.failed.connect(lambda ticket, why: (heard.append(str(why)), app.quit()))
def eats(token):
    held = []
    while True:
        held.append(bytearray(64 * 1024 * 1024))
soft = int(open("/proc/self/statm").read().split()[0]) * 4096 + 400 * 1024 * 1024
resource.setrlimit(resource.RLIMIT_AS, (soft, resource.RLIM_INFINITY))
bench.submit(eats)
QTimer.singleShot(20_000, app.quit)
app.exec()
resource.setrlimit(resource.RLIMIT_AS, (resource.RLIM_INFINITY, resource.RLIM_INFINITY))
document.perform(WriteNotes("after"))
said += heard
tell()
""",
    "fault in a job": """
from ultraplanner_gui.desk.jobs import JobBench
bench = JobBench()
heard = []
bench.failed.connect(lambda ticket, why: (heard.append(str(why)), app.quit()))
bench.submit(lambda token: 1 / 0)
QTimer.singleShot(20_000, app.quit)
app.exec()
document.perform(WriteNotes("after"))
said += heard
tell()
""",
    "fault in a slot": """
import ultraplanner_gui.desk.crash as crash
heard = []
crash.install(lambda why: heard.append(str(why)))
QTimer.singleShot(0, lambda: 1 / 0)
QTimer.singleShot(50, app.quit)
app.exec()
document.perform(WriteNotes("after"))
said += heard
tell()
""",
}
#: What the user must have heard in the end, a word of it; nothing where nothing is wrong.
_HEARD: dict[str, str] = {
    "file-size limit": "full",
    "file moved away": "",
    "file replaced by a sync tool": "",
    "file deleted": "",
    "clock set back": "",
    "time zone and locale changed": "",
    "out of memory in a job": "memory",
    "fault in a job": "fault",
    "fault in a slot": "fault",
}


def faults(folder: Path) -> Part:
    """Try every fault once, the display and a killed worker among them."""
    part = Part("faults around it", limit_s=_LIMIT_S)
    for name, script in _FAULTS.items():
        path = _fresh(folder)
        part.attempt(name, partial(_is_told_and_kept, name, script, path))
    part.attempt("read-only file", partial(_is_read_only, _fresh(folder)))
    if shutil.which("Xvfb"):
        part.attempt("display removed", partial(_display_removed, folder))
    part.attempt("worker killed", partial(_worker_killed, folder))
    return part


def _fresh(folder: Path) -> Path:
    path = folder / "fault.ultraplan"
    for old in folder.glob("fault.ultraplan*"):
        old.unlink()
    ProjectFile.create(path, full_project(sessions=20, points=200)).close()
    return path


def _is_told_and_kept(name: str, script: str, path: Path) -> bool:
    """Run *script* on *path*; what was done after the fault must be kept, or said not to be."""
    root = str(Path(__file__).resolve().parents[1])
    before = path.read_bytes()
    code = (_BEGIN + script).replace("{root!r}", repr(root)).replace("{path!r}", repr(str(path)))
    told = _child(code)
    if told is None:
        return False
    said, wanted = " ".join(told["said"]), _HEARD[name]
    if wanted and wanted not in said:
        raise AssertionError(f"said {said!r}")
    for place in (path, path.with_name(f"{path.name}.moved")):
        if place.exists():
            with ProjectFile.look(place) as file:
                if told["kept"]:
                    return file.project.notes == told["notes"]
    # what could not be kept was said, and there is the old file or none because it was taken away
    return bool(said) and (not path.exists() or path.read_bytes()[:100] == before[:100])


def _child(code: str) -> dict[str, object] | None:
    done = subprocess.run(
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        timeout=_LIMIT_S,
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
        check=False,
    )
    lines = done.stdout.strip().splitlines()
    if done.returncode or not lines:
        raise AssertionError(f"ended with {done.returncode}: {done.stderr[-200:]}")
    found: dict[str, object] = json.loads(lines[-1])
    return found


def _is_read_only(path: Path) -> bool:
    """Look at a file on read-only media, which says that nothing is kept."""
    path.chmod(0o444)
    before = path.read_bytes()
    with ProjectFile.look(path) as file:
        is_right = file.is_read_only and file.project.notes == full_project(1, 20).notes
    path.chmod(0o644)
    return is_right and path.read_bytes() == before


def _display_removed(folder: Path) -> bool:
    """Take the screen away while the program runs: it ends, and what was kept is whole."""
    number = 90 + os.getpid() % 9
    screen = subprocess.Popen(
        ["Xvfb", f":{number}", "-screen", "0", "1280x800x24", "-nolisten", "tcp"],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    home = folder / "display"
    env = {
        **os.environ,
        "DISPLAY": f":{number}",
        "QT_QPA_PLATFORM": "xcb",
        "ULTRAPLANNER_HOME": str(home),
    }
    try:
        time.sleep(1.0)
        program = subprocess.Popen(
            [sys.executable, "-m", "ultraplanner_gui", "--demo"],
            cwd=Path(__file__).resolve().parents[1],
            env=env,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        found = _waited(lambda: list(home.rglob("demo-*.ultraplan")))
        time.sleep(2.0)
        screen.kill()
        screen.wait()
        program.wait(timeout=20.0)
    finally:
        screen.kill()
    with ProjectFile.open(found[0]) as file:
        return bool(file.project.block.sessions)


def _worker_killed(folder: Path) -> bool:
    """Kill the process that searches a block: one sentence, and the plan stands."""
    code = _WORKER.replace("{root!r}", repr(str(Path(__file__).resolve().parents[1])))
    told = _child(code)
    return told is not None and bool(told["said"]) and bool(told["kept"])


_WORKER = """
import json, os, signal, sys, threading, time
sys.path[:0] = [{root!r}]
from datetime import date
import multiprocessing
from ultraplanner_gui.desk.block_process import ExactBlock
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.first_plan import request_of
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.message import PlanError

if __name__ == "__main__":
    plan = demo_project(date.today())
    request = request_of(plan, derive(plan), date.today())
    def kill():
        end = time.monotonic() + 20.0
        while time.monotonic() < end:
            for child in multiprocessing.active_children():
                os.kill(child.pid, signal.SIGKILL)
                return
            time.sleep(0.01)
    threading.Thread(target=kill, daemon=True).start()
    said = []
    try:
        ExactBlock(request)(Token(lambda share: None))
    except PlanError as error:
        said.append(str(error))
    print(json.dumps(dict(said=said, kept=bool(plan.block.sessions))))
"""


def _waited(found: Callable[[], list[Path]], seconds: float = 20.0) -> list[Path]:
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if paths := found():
            return paths
        time.sleep(0.1)
    raise AssertionError("the program did not open its demo")

"""A whole sitting opens no connection: neither Python nor Qt, seen from inside and outside."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]

# Python tells an audit hook of every socket; what Qt opens in C++ shows in /proc.
SITTING = """
import os, socket, sys
opened = []

def hook(event, args):
    if event == "socket.__new__" and args[1] in (socket.AF_INET, socket.AF_INET6):
        opened.append((event, args[1:]))
    elif event in ("socket.connect", "socket.bind", "socket.sendto", "socket.getaddrinfo",
                   "socket.gethostbyname"):
        if not isinstance(args[1], (str, bytes)) or event.startswith("socket.get"):
            opened.append((event, args[1:]))

sys.addaudithook(hook)

from datetime import date
from pathlib import Path
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication, QDialog
from ultraplanner_gui.desk.demo_file import demo_file
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.widgets.theme import register_fonts, theme
from ultraplanner_gui.window.main_window import MainWindow

app = QApplication([])
register_fonts()
theme().choose("light", 100)
window = MainWindow(Settings())
window.show()
window.deeds.open_any(demo_file(date.today()))

def internet():
    found = []
    for table in ("tcp", "tcp6", "udp", "udp6"):
        lines = Path(f"/proc/self/net/{table}").read_text().splitlines()[1:]
        inodes = {line.split()[9] for line in lines}
        for handle in os.listdir("/proc/self/fd"):
            try:
                target = os.readlink(f"/proc/self/fd/{handle}")
            except OSError:
                continue
            if target.startswith("socket:[") and target[8:-1] in inodes:
                found.append((table, target))
    return found

seen = []
for place in ("sheet", "tables", "cards", "sheet"):
    window.go(place)
    app.processEvents()
    seen += internet()
for deed in ("race_form", "notes", "history", "fuel_rates", "crew_form", "wishes", "candidates",
             "ground_at_hand", "health", "conditions", "red_flags", "about", "shortcuts", "find",
             "name_state"):
    slot = getattr(window.deeds, deed, None)
    if slot is None:
        continue
    slot()
    app.processEvents()
    seen += internet()
    for dialog in window.findChildren(QDialog):
        dialog.close()
    app.sendPostedEvents(None, QEvent.Type.DeferredDelete)
window.document.perform(WriteNotes("no line out"))
window.document.save_copy(Path(sys.argv[1]) / "copy.ultraplan")
from ultraplanner_gui.cards.pdf import write_cards
write_cards(window.document.outlook, window.settings.words(), Path(sys.argv[1]) / "cards.pdf")
seen += internet()
assert (Path(sys.argv[1]) / "cards.pdf").stat().st_size > 1000
if len(sys.argv) > 2:
    probe = socket.socket(socket.AF_INET, socket.SOCK_DGRAM)
    probe.bind(("127.0.0.1", 0))
    seen += internet()
window.close()
print("SEEN", sorted(set(map(str, opened + seen))))
"""


def sitting(tmp_path, *more):
    env = {
        **os.environ,
        "QT_QPA_PLATFORM": "offscreen",
        "ULTRAPLANNER_HOME": str(tmp_path / "home"),
    }
    done = subprocess.run(
        [sys.executable, "-c", SITTING, str(tmp_path), *more],
        cwd=ROOT,
        env=env,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return next(line for line in done.stdout.splitlines() if line.startswith("SEEN"))


linux = pytest.mark.skipif(sys.platform != "linux", reason="reads /proc")


@linux
def test_a_sitting_opens_no_internet_socket(tmp_path):
    assert sitting(tmp_path) == "SEEN []"


@linux
def test_a_socket_would_be_seen_both_ways(tmp_path):
    seen = sitting(tmp_path, "probe")
    assert "socket.__new__" in seen
    assert "'udp'" in seen

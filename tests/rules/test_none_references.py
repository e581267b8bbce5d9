"""A release of the bindings took a reference from None at each call that returns nothing.

Under Python 3.11, where None can die, the program then ends after some thousand calls.
"""

import os
import subprocess
import sys

import pytest

COUNT = """
import sys
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QApplication, QWidget

class Painted(QWidget):
    def paintEvent(self, event):
        painter = QPainter(self)
        painter.setPen(QColor("black"))
        painter.drawLine(0, 0, 9, 9)

def update(times):
    for _ in range(times):
        widget.update()

def paint(times):
    painter = QPainter(image)
    for _ in range(times):
        painter.save()
        painter.setPen(QColor("black"))
        painter.drawLine(0, 0, 9, 9)
        painter.restore()
    painter.end()

def repaint(times):
    for _ in range(times):
        widget.repaint()

app = QApplication([])
image = QImage(10, 10, QImage.Format.Format_ARGB32)
widget = Painted()
widget.show()
app.processEvents()
for work, times in ((update, 500), (paint, 500), (repaint, 2000)):
    work(5)
    before = sys.getrefcount(None)
    work(times)
    print(work.__name__, before - sys.getrefcount(None))
"""


@pytest.fixture(scope="module")
def losses():
    """Count in a process of its own: a count gone wrong would end this one."""
    counted = subprocess.run(
        [sys.executable, "-c", COUNT],
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        check=False,
    )
    assert counted.returncode == 0, counted.stderr
    return {name: int(lost) for name, lost in map(str.split, counted.stdout.splitlines())}


@pytest.mark.parametrize("work", ["update", "paint", "repaint"])
def test_calls_into_qt_leave_the_references_of_none_alone(losses, work):
    assert losses[work] <= 50

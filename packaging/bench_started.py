"""The process that is measured by `bench_start`; it says on its output how far it is.

Imports next to nothing itself: what it would import counted for neither or both sides.
"""

from __future__ import annotations

import sys
import time
from importlib.machinery import PathFinder
from types import ModuleType

SIZE = (1440, 900)


def _empty(idle_s: float) -> None:
    from PySide6.QtWidgets import QApplication, QMainWindow

    class Window(QMainWindow):
        is_painted = False

        def paintEvent(self, event: object) -> None:
            if not self.is_painted:
                self.is_painted = True
                print("painted", flush=True)
                _leave(idle_s)

    app = QApplication([])
    window = Window()
    window.resize(*SIZE)
    window.show()
    app.exec()


SIGHT = "ultraplanner_gui.window.first_sight"
LANE = "ultraplanner_gui.widgets.lane"


class _Hook(PathFinder):
    """Lets the first sight and the lanes tell of their paints once the program imports them."""

    idle_s = 0.0

    @classmethod
    def find_spec(cls, name: str, path: object = None, target: object = None) -> object:
        if name not in (SIGHT, LANE):
            return None
        spec = super().find_spec(name, path, target)  # type: ignore[arg-type]
        run = spec.loader.exec_module

        def run_and_hook(module: ModuleType) -> None:
            run(module)
            if name == LANE:
                _tell_of_paints(module.Lane, cls.idle_s)
            else:
                _tell_of_first_paint(module.FirstSight)

        spec.loader.exec_module = run_and_hook
        return spec


def _demo(idle_s: float) -> None:
    _Hook.idle_s = idle_s
    sys.meta_path.insert(0, _Hook)

    from ultraplanner_gui import app

    app.main(["--demo"])


def _tell_of_first_paint(sight_type: type) -> None:
    """Say when the window itself is painted, with the race named in it where that is known."""
    paint = sight_type.paintEvent
    is_told = False

    def paint_and_tell(sight: object, event: object) -> None:
        nonlocal is_told
        paint(sight, event)
        if not is_told:
            is_told = True
            print("painted", flush=True)

    sight_type.paintEvent = paint_and_tell


def _tell_of_paints(lane_type: type, idle_s: float) -> None:
    painted: set[object] = set()

    def tell(lane: object) -> None:
        if lane in painted:
            return
        painted.add(lane)
        if type(lane).__name__ == "DayGrid":
            print("build-up", flush=True)
        lanes = [one for one in lane.window().findChildren(lane_type) if one.isVisible()]
        if painted.issuperset(lanes):
            _leave(idle_s)

    def hook(of: type) -> None:
        paint = of.paintEvent

        def paint_and_tell(lane: object, event: object) -> None:
            paint(lane, event)
            # Once the whole of it is painted, not what it has from its bases.
            if type(lane).paintEvent is paint_and_tell:
                tell(lane)

        of.paintEvent = paint_and_tell

    hook(lane_type)
    lane_type.__init_subclass__ = classmethod(
        lambda of: hook(of) if "paintEvent" in vars(of) else None
    )


def _leave(idle_s: float) -> None:
    """Say what was needed as soon as the window takes events again, and quit."""
    from PySide6.QtCore import QTimer

    QTimer.singleShot(0, _tell)
    if idle_s:
        begin: list[float] = []
        QTimer.singleShot(1000, lambda: begin.append(time.process_time()))
        QTimer.singleShot(1000 + round(1000 * idle_s), lambda: _quit_idle(begin[0]))
    else:
        QTimer.singleShot(0, _quit)


def _tell() -> None:
    print("usable", flush=True)
    print(f"peak {_peak_mib()}", flush=True)


def _peak_mib() -> float:
    # Not getrusage: its figure starts with the peak of the process this one was forked from.
    try:
        with open("/proc/self/status", encoding="ascii") as lines:
            return next(int(line.split()[1]) / 1024.0 for line in lines if "VmHWM" in line)
    except OSError:
        return float("nan")


def _quit_idle(begin_s: float) -> None:
    print(f"idle {(time.process_time() - begin_s) * 1000.0}", flush=True)
    _quit()


def _quit() -> None:
    from PySide6.QtWidgets import QApplication

    QApplication.quit()


if __name__ == "__main__":
    {"empty": _empty, "demo": _demo}[sys.argv[1]](float(sys.argv[2]))

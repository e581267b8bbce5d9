"""Everything that shows a figure, in every place of the window and in every dialog there is."""

from __future__ import annotations

import importlib
import pkgutil
import re
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

from msgspec.structs import replace
from PySide6.QtCore import QAbstractListModel, QEvent, QModelIndex, QObject, QPoint, QRectF
from PySide6.QtGui import QFontMetricsF, QImage, QPixmap
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QGroupBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QSlider,
    QWidget,
)

import ultraplanner_gui
from tests.engine.made_recordings import run_of
from tests.engine.test_calibration import made_run
from tests.window.test_every_window import VIEWS, _editor, _ways
from tests.window.test_recordings import as_gpx
from tests.window.text_drawn import TextWatch, _ink, _owner, settle
from ultraplanner_gui.cards.desk_view import CardsDesk
from ultraplanner_gui.engine.held_out import tried_fit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.exchange.gpx_in import CourseChoice
from ultraplanner_gui.exchange.kept_recording import kept_of
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.widgets.help_topic import PROPERTY, topic_of
from ultraplanner_gui.wording.help.topics import TOPICS

FIGURE = re.compile(r"\d")
#: Keys, paths, versions and tags have digits and are no figures.
NO_FIGURE = re.compile(
    r"<[^>]*>|&\w+;|&|(Ctrl|Alt|Shift)\+\S+|\bF\d+\b|/\S+|\b\d+\.\d+\.\d+\b|VO2max"
)
FIELDS = (QLineEdit, QPlainTextEdit, QAbstractSpinBox, QComboBox, QSlider)
#: Topics of whole places: of a figure in one of them they say nothing.
PLACES = {"sheet", "build-up", "race day", "ledger", "tables", "cards", "welcome", "help"}
#: Bases of other dialogs: nobody sees one of them itself.
BASES = {"EditForm", "FuelForm"}
ICS = """BEGIN:VCALENDAR
VERSION:2.0
PRODID:-//x//x//EN
BEGIN:VEVENT
UID:1@x
DTSTAMP:20270401T080000Z
DTSTART;VALUE=DATE:20270420
SUMMARY:Easy run 8 km
END:VEVENT
END:VCALENDAR
"""


def every_dialog() -> set[type[QDialog]]:
    """Return every class of dialog the program has, found by reading all of its modules."""
    for module in pkgutil.walk_packages(ultraplanner_gui.__path__, "ultraplanner_gui."):
        if not module.name.endswith("__main__"):
            importlib.import_module(module.name)
    found, ahead = set(), list(QDialog.__subclasses__())
    while ahead:
        one = ahead.pop()
        ahead += one.__subclasses__()
        if one.__module__.startswith("ultraplanner_gui.") and one.__name__ not in BASES:
            found.add(one)
    return found


class Painted(TextWatch):
    """Notes of every text that is painted which widget painted it, and where."""

    def __init__(self, monkeypatch) -> None:
        super().__init__(monkeypatch)
        self.seen: dict[tuple[int, str], tuple[QWidget, str, QPoint]] = {}

    def forget(self) -> None:
        super().forget()
        self.seen = {}

    def _note(self, painter, args, font=None) -> None:
        text = next(a for a in args if isinstance(a, str))
        if not has_figure(text):
            return
        device, owner = painter.device(), _owner()
        if isinstance(device, QWidget):
            owner = device
        metrics = QFontMetricsF(font or painter.font(), device)
        ink: QRectF = painter.worldTransform().mapRect(_ink(metrics, args, text))
        is_picture = isinstance(device, QPixmap | QImage)
        if is_picture and device.size() != owner.size() * device.devicePixelRatioF():
            ink = QRectF(owner.rect())
        self.seen[id(owner), text] = (owner, text, ink.center().toPoint())


# ---------------------------------------------------------------- what has no topic


def is_explained(widget: QWidget, at: QPoint | None = None) -> bool:
    """Whether the help has something on *widget* that is not merely on all of its dialog."""
    top = widget.window()
    key = topic_of(widget, at)
    if key not in TOPICS:
        return False
    return _names_one(widget, at, top) if isinstance(top, QDialog) else key not in PLACES


def has_figure(text: str) -> bool:
    """Whether *text* says a number that means something."""
    return bool(FIGURE.search(NO_FIGURE.sub(" ", text)))


def _names_one(widget: QWidget, at: QPoint | None, top: QWidget) -> bool:
    while widget is not top:
        topic_at = getattr(widget, "topic_at", None)
        if widget.property(PROPERTY) or (topic_at is not None and topic_at(at)):
            return True
        if isinstance(widget, QLabel) and widget.buddy() is not None:
            return _names_one(widget.buddy(), None, top)
        at = None if at is None else widget.mapToParent(at)
        widget = widget.parentWidget()
    return False


def figures_of(top: QWidget) -> Iterator[tuple[QWidget, str]]:
    """Give every field of *top*, and every label, button and list in it that says a figure."""
    for widget in top.findChildren(QWidget):
        # What stands on a page that is not in front is asked about as well.
        if widget.window() is not top:
            continue
        name = widget.accessibleName() or widget.objectName()
        if isinstance(widget, FIELDS):
            if not isinstance(
                widget.parentWidget(), QAbstractSpinBox | QComboBox | QAbstractItemView
            ):
                yield widget, name
        elif isinstance(widget, QLabel | QAbstractButton | QGroupBox):
            said = widget.title() if isinstance(widget, QGroupBox) else widget.text()
            if has_figure(said) and not isinstance(widget.parentWidget(), QDialogButtonBox):
                yield widget, said
        elif isinstance(widget, QAbstractItemView) and (text := _figure_in(widget)):
            yield widget, f"{name}: {text}"


def _figure_in(view: QAbstractItemView) -> str:
    """Return a figure of a list; cells of a table that knows its columns are painted."""
    model, root = view.model(), QModelIndex()
    if model is None or isinstance(view, QHeaderView) or getattr(view, "topics", ()):
        return ""
    texts = (
        str(model.index(row, column).data() or "")
        for row in range(min(model.rowCount(root), 40))
        for column in range(1 if isinstance(model, QAbstractListModel) else model.columnCount(root))
    )
    return next((text for text in texts if has_figure(text)), "")


# ---------------------------------------------------------------- how to get there


class Silent(QObject):
    """Stands for the questions about files: none of them is answered. `asked` names them."""

    def __init__(self) -> None:
        super().__init__()
        self.asked: set[str] = set()

    def __getattr__(self, name: str) -> Callable[..., None]:
        return lambda *args, **kwargs: self.asked.add(name)


def new_dialog(window, show: Callable[[], object]) -> QDialog | None:
    """Return the dialog that *show* brings up over *window*, if it does."""
    show()
    settle()
    tops = [d for d in window.findChildren(QDialog) if d.isVisible()]
    return tops[-1] if tops else None


def dispose(top: QWidget) -> None:
    """Close a dialog and have it gone."""
    top.close()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def race_run(outlook: Outlook) -> KeptRecording:
    """Return the race of *outlook* as run, somewhat slower than planned."""
    text = as_gpx(run_of(outlook, slower=1.05))
    return replace(kept_of(text.encode("ascii"), Path("race.gpx")), is_race=True)


def _fit(window):
    from ultraplanner_gui.window.pace_fit import FitForm, ReadFit

    first = datetime(2026, 6, 1, 6, tzinfo=UTC)
    runs = [
        replace(made_run(km=45.0, fade=0.25, seed=n), start=first + timedelta(days=n))
        for n in range(2)
    ]
    runner, words = window.document.project.runner, window.settings.words()
    found = ReadFit(tried_fit(runs, runner), ())
    FitForm(found, runner, words, lambda edit: "", window).open()


def _line(window):
    from ultraplanner_gui.window.line_choice import LineChoice

    choices = [CourseChoice(f"track {n}", "", "track", 1, 3e4, 900, 400.0) for n in (1, 2)]
    words = window.settings.words()
    LineChoice("two.gpx", choices, words, lambda key: None, window).open()


def _left_out(window):
    from ultraplanner_gui.window.left_out import LeftOutView

    why = message("There is no time in it.")
    LeftOutView([("run.gpx", why)], "One", window.settings.words(), window).open()


def _import(window):
    path = window.document.path.with_name("week.ics")
    path.write_text(ICS, "utf-8")
    window.deeds._import(path)


def _template(window):
    path = window.document.path.with_name("mine.ultrablock")
    window.deeds._write_template(path)
    window.deeds.open_template(path)


def _match_screen(window):
    window.go("cards")
    window.findChildren(CardsDesk)[0].match_screen()


def _of_page(module, name):
    def show(window):
        form = getattr(importlib.import_module(f"ultraplanner_gui.window.{module}"), name)
        form(window.document, None, window.settings.words(), window).open()

    return show


def _look_at_recording(window):
    place, recordings = window.workplace, window.document.project.recordings
    place.selection.choose("recording", recordings[0].key)
    window.deeds.look_at_recording()


#: How dialogs come up that no action brings at once.
MORE = {
    "Calibration": _match_screen,
    "CandidateForm": _of_page("candidate_form", "CandidateForm"),
    "ChoicesForm": _ways,
    "FitForm": _fit,
    "GroundForm": _of_page("ground_fields", "GroundForm"),
    "ImportForm": _import,
    "LeftOutView": _left_out,
    "LineChoice": _line,
    "PlanForm": VIEWS["new plan"],
    "CourseTableForm": VIEWS["course table"],
    "RecordingView": _look_at_recording,
    "SessionEditor": _editor(Kind.RACE),
    "TemplateForm": _template,
}

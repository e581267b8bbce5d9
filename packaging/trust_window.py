"""Random hands on the real window: actions, drags, keys, forms, tables; what must hold after each.

A state machine over one seed: what is open decides what a hand may do next.
"""

from __future__ import annotations

import itertools
import random
import sys
import traceback
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

from PySide6.QtCore import QDate, QEvent, QPoint, Qt, QtMsgType, qInstallMessageHandler
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QApplication,
    QCheckBox,
    QComboBox,
    QDateEdit,
    QDialog,
    QDialogButtonBox,
    QDoubleSpinBox,
    QLineEdit,
    QPlainTextEdit,
    QSpinBox,
    QTableWidget,
    QTimeEdit,
    QWidget,
)
from shiboken6 import isValid
from trust_memory import Held, held
from trust_parts import Part
from trust_soak import faults_of

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.theme import register_fonts, theme
from ultraplanner_gui.window.action_table import TABLE
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.tables import SPECS

WARM_UP = 0.5
WINDOW_SIZES = ((1280, 720), (1440, 900), (1920, 1080))
TEXT_SIZES = (80, 100, 150)
#: What the offscreen platform says of itself, and Qt of the fonts that the machine lacks.
_HARMLESS = ("propagateSizeHints", "does not support raise", "OpenType support missing")
#: They end the sitting, leave the machine, or work for longer than a hand waits.
_LEFT_OUT = frozenset(
    (
        *("quit", "close_project", "print_cards", "demo", "help_point", "build_block"),
        *("fill_fuel", "another_window"),
    )
)
_TEXTS = ("", "0", "-1", "1e9", "nan", "∞", "99:99", "7 h 30", "12.5", "soup", "=1+1", "x" * 400)
_KEYS = (
    *(Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Return),
    *(Qt.Key.Key_Escape, Qt.Key.Key_Tab, Qt.Key.Key_Delete, Qt.Key.Key_H, Qt.Key.Key_5),
    *(Qt.Key.Key_Home, Qt.Key.Key_End, Qt.Key.Key_PageDown, Qt.Key.Key_F2, Qt.Key.Key_Space),
)
_MODIFIERS = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.AltModifier,
)


def _doable() -> list[str]:
    return [row.name for row in TABLE if row.name not in _LEFT_OUT]


class _Silent(Ask):
    """Answers no question: where a file would be asked for, nothing comes of it."""

    def __init__(self) -> None:
        pass

    def __getattribute__(self, name: str) -> object:
        return _nothing


def _nothing(*_args: object, **_named: object) -> None:
    """Do nothing."""


class _Hand:
    """Does one thing after another to a window."""

    def __init__(self, window: MainWindow, luck: random.Random) -> None:
        self._window, self._luck = window, luck
        self._names = _doable()

    def act(self) -> str:
        """Do something that can be done now and return its name."""
        dialog = next((d for d in self._window.findChildren(QDialog) if d.isVisible()), None)
        if dialog is not None:
            return self._in_dialog(dialog)
        deeds: tuple[tuple[int, Callable[[], str]], ...] = (
            (6, self._action),
            (6, self._drag),
            (5, self._key),
            (4, self._cell),
            (2, self._undo),
            (2, self._select),
            (1, self._paste),
            (1, self._resize),
        )
        weights = [weight for weight, _ in deeds]
        (deed,) = self._luck.choices([deed for _, deed in deeds], weights)
        return deed()

    def _action(self) -> str:
        name = self._luck.choice(self._names)
        action = self._window.table.by_name[name]
        if action.isEnabled():
            action.trigger()
        return f"action {name}"

    def _drag(self) -> str:
        widget = self._painted()
        if widget is None:
            return "no lane"
        luck, size = self._luck, widget.size()
        at = QPoint(luck.randrange(max(1, size.width())), luck.randrange(max(1, size.height())))
        button = Qt.MouseButton.LeftButton
        modifier = luck.choice(_MODIFIERS)
        QTest.mousePress(widget, button, modifier, at)
        for _ in range(luck.randrange(4)):
            at += QPoint(luck.randrange(-160, 161), luck.randrange(-60, 61))
            QTest.mouseMove(widget, at)
        if luck.random() < 0.15:
            QTest.keyClick(widget, Qt.Key.Key_Escape)
        QTest.mouseRelease(widget, button, modifier, at)
        return f"drag in {type(widget).__name__}"

    def _painted(self) -> QWidget | None:
        place = self._window.workplace
        if place is None:
            return None
        lanes = [w for w in place.findChildren(Lane) if w.isVisible()]
        lanes += [w for w in (place.buildup.grid, place.raceday.plan) if w.isVisible()]
        return self._luck.choice(lanes) if lanes else None

    def _key(self) -> str:
        widget = QApplication.focusWidget() or self._window
        key, modifier = self._luck.choice(_KEYS), self._luck.choice(_MODIFIERS)
        QTest.keyClick(widget, key, modifier)
        return f"key {key.name} in {type(widget).__name__}"

    def _cell(self) -> str:
        place = self._window.workplace
        if place is None:
            return "no table"
        self._window.go("tables")
        number = self._luck.randrange(len(SPECS))
        place.tables.list.choose(number)
        table = place.tables.page.table
        if not table.rowCount():
            return f"empty {SPECS[number].name}"
        row = self._luck.randrange(table.rowCount())
        column = self._luck.randrange(table.columnCount())
        table.setData(table.index(row, column), self._luck.choice(_TEXTS))
        return f"cell of {SPECS[number].name}"

    def _paste(self) -> str:
        place = self._window.workplace
        if place is None:
            return "no table"
        self._window.go("tables")
        place.tables.list.choose(self._luck.randrange(len(SPECS)))
        lines = ("\t".join(self._luck.choices(_TEXTS, k=3)) for _ in range(3))
        QGuiApplication.clipboard().setText("\n".join(lines))
        place.tables.page.view.paste()
        return "paste"

    def _undo(self) -> str:
        document = self._window.document
        if document is None:
            return "no document"
        stack = document.undo_stack
        (stack.undo if self._luck.random() < 0.7 else stack.redo)()
        return "undo or redo"

    def _select(self) -> str:
        place, document = self._window.workplace, self._window.document
        if place is None or document is None:
            return "nothing to select"
        project = document.project
        things = [("session", s.key) for s in project.block.sessions]
        things += [("item", i.key) for i in project.fuel.items]
        if project.course is not None:
            things += [("section", s.key) for s in project.course.sections]
            things += [("station", s.key) for s in project.course.stations]
        things += [("recording", r.key) for r in project.recordings]
        place.selection.choose(*self._luck.choice(things))
        return "select"

    def _resize(self) -> str:
        self._window.resize(*self._luck.choice(WINDOW_SIZES))
        theme().choose(self._luck.choice(("light", "dark")), self._luck.choice(TEXT_SIZES))
        return "resize"

    def _in_dialog(self, dialog: QDialog) -> str:
        """Fill some fields with anything, then accept, cancel or close it."""
        fields = [w for w in dialog.findChildren(QWidget) if w.isVisible() and w.isEnabled()]
        for widget in self._luck.sample(fields, min(len(fields), 6)):
            if isValid(widget):  # what was filled before may have taken it away
                self._fill(widget)
        roles = QDialogButtonBox.ButtonRole
        wish = self._luck.choice((roles.AcceptRole, roles.RejectRole))
        for box in dialog.findChildren(QDialogButtonBox):
            for button in box.buttons():
                if box.buttonRole(button) == wish and button.isEnabled() and button.isVisible():
                    button.click()
                    break
        if dialog.isVisible() and self._luck.random() < 0.6:
            dialog.reject()
        return f"in {type(dialog).__name__}"

    def _fill(self, widget: QWidget) -> None:
        luck = self._luck
        if isinstance(widget, QLineEdit) and not isinstance(
            widget.parent(), QAbstractSpinBox | QComboBox
        ):
            widget.setText(luck.choice(_TEXTS))
        elif isinstance(widget, QPlainTextEdit):
            widget.setPlainText(luck.choice(_TEXTS))
        elif isinstance(widget, QSpinBox | QDoubleSpinBox):
            widget.setValue(luck.choice((widget.minimum(), widget.maximum())))
        elif isinstance(widget, QComboBox) and widget.count():
            # Each of the hundreds of languages has data of its own, held once it was chosen: of a
            # long list a dozen, all of them met before the memory is measured.
            widget.setCurrentIndex(luck.choice(range(0, widget.count(), 1 + widget.count() // 12)))
            widget.activated.emit(widget.currentIndex())
        elif isinstance(widget, QCheckBox):
            widget.toggle()
        elif isinstance(widget, QDateEdit):
            days = luck.randrange(-400, 900)
            widget.setDate(QDate.currentDate().addDays(days))
        elif isinstance(widget, QTimeEdit):
            widget.setTime(widget.maximumTime())
        elif isinstance(widget, QTableWidget) and widget.rowCount() and widget.columnCount():
            row, column = luck.randrange(widget.rowCount()), luck.randrange(widget.columnCount())
            item = widget.item(row, column)
            if item is not None and item.flags() & Qt.ItemFlag.ItemIsEditable:
                item.setText(luck.choice(_TEXTS))


class _Listening:
    """Collects what Qt warns of and what escapes from a slot."""

    def __init__(self) -> None:
        self.heard: list[str] = []
        self._hook = sys.excepthook

    def __enter__(self) -> _Listening:
        self._before = qInstallMessageHandler(self._on_message)
        sys.excepthook = self._on_escaped
        return self

    def __exit__(self, *_error: object) -> None:
        qInstallMessageHandler(self._before)
        sys.excepthook = self._hook

    def taken(self) -> Iterator[str]:
        """Yield what was heard since the last call."""
        heard, self.heard = self.heard, []
        yield from heard

    def _on_message(self, kind: QtMsgType, _context: object, text: str) -> None:
        if not any(word in text for word in _HARMLESS):
            self.heard.append(f"Qt: {text}"[:200])

    def _on_escaped(self, kind: type[BaseException], error: BaseException, trace: object) -> None:
        last = traceback.extract_tb(trace)[-1] if trace is not None else None  # type: ignore[arg-type]
        where = f" at {Path(last.filename).name}:{last.lineno}" if last is not None else ""
        self.heard.append(f"{kind.__name__}: {error}{where}"[:200])


def window_soak(folder: Path, count: int, luck: random.Random) -> Part:
    """Do *count* things to the window of the demo and look after each group of them."""
    part = Part("hands on the window")
    app = QApplication.instance() or QApplication(["trust"])
    assert isinstance(app, QApplication)
    app.setStyle("Fusion")
    register_fonts()
    window = MainWindow(Settings(folder / "window.ini"), _Silent())
    window.resize(1440, 900)
    window.show()
    document, path = _anew(window, folder, "first")
    _everything_once(window, app)
    hand, before = _Hand(window, luck), held()
    look_every = 200 if count > 2_000 else 40
    with _Listening() as listening:
        for number in range(count):
            done = "?"

            def deed() -> bool:
                nonlocal done
                done = hand.act()
                app.processEvents()
                # As its own loop does: what was closed is gone before the next hand.
                app.sendPostedEvents(None, QEvent.Type.DeferredDelete)
                return True

            part.attempt("a hand", deed)
            part.faults += [f"{number} {done}: {said}" for said in listening.taken()]
            if number % look_every == look_every - 1:
                _close_dialogs(window, app)
                part.faults += [f"{number}: {fault}" for fault in faults_of(document, path)]
            if number == int(count * WARM_UP):
                document, path = _anew(window, folder, "second")
                before = _held_settled(window, app)
        _anew(window, folder, "third")
        growth = before.growth_to(_held_settled(window, app))
        part.name = f"hands on the window, {growth}"
        if count >= 5_000 and growth.is_leak:
            part.faults.append(f"{growth} after the warm-up")
        _close_dialogs(window, app)
        window.close()
        app.processEvents()
        part.faults += list(listening.taken())
    theme().choose("light", 100)
    # Without a screen Qt lets go of what was copied only after Python, which made it, is gone.
    QApplication.clipboard().clear()
    return part


def _everything_once(window: MainWindow, app: QApplication) -> None:
    """Do every action and take every size once: what is made at first use is made, and no leak."""
    for name in _doable():
        action = window.table.by_name[name]
        if action.isEnabled():
            action.trigger()
        app.processEvents()
        _close_dialogs(window, app)
    for colours, per_cent in itertools.product(("light", "dark"), TEXT_SIZES):
        theme().choose(colours, per_cent)
        for size in WINDOW_SIZES:
            window.resize(*size)
            app.processEvents()


def _anew(window: MainWindow, folder: Path, name: str) -> tuple[Document, Path]:
    """Open the demo as it is at first: what was planned and undone is let go of."""
    path = folder / f"{name}.ultraplan"
    document = Document(ProjectFile.create(path, demo_project(date.today())))
    window.show_document(document)
    return document, path


def _held_settled(window: MainWindow, app: QApplication) -> Held:
    """Return the memory held with the window as it always is when that is asked."""
    _close_dialogs(window, app)
    theme().choose("light", 100)
    window.resize(1440, 900)
    for place in ("tables", "cards", "sheet"):  # each is made when one first goes there
        window.go(place)
        app.processEvents()
    return held()


def _close_dialogs(window: MainWindow, app: QApplication) -> None:
    for dialog in window.findChildren(QDialog):
        dialog.reject()
    window.deeds.cancel_job()
    app.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    app.processEvents()

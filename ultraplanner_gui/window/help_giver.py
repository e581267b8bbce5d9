"""Who gives the help: finds what is meant, opens the panel beside it, gives the keys back."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import shiboken6
from PySide6.QtCore import QEvent, QObject, QPoint, QRect, Qt, Slot
from PySide6.QtGui import QGuiApplication, QKeyEvent, QMouseEvent, QShortcut
from PySide6.QtWidgets import QApplication, QDialog, QVBoxLayout, QWidget

from ultraplanner_gui.widgets.help_topic import topic_of
from ultraplanner_gui.widgets.theme import theme

if TYPE_CHECKING:
    from ultraplanner_gui.window.help_panel import HelpPanel
    from ultraplanner_gui.window.main_window import MainWindow

WIDTH_PX = 350.0
DIALOG_HEIGHT_PX = 520.0
OFFERED = "offersHelp"
SELECTED = {
    "week": "weekly distance",
    "section": "section",
    "item": "fuel item",
    "station": "aid station",
}


class HelpGiver(QObject):
    """Gives help in one window and in every dialog of it."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._panel: HelpPanel | None = None
        self._dialog: QDialog | None = None
        self._dialog_panel: HelpPanel | None = None
        self._return_to: QWidget | None = None
        self._near: QWidget | None = None
        self._pointing = Pointing(self.explain_at, self)
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.focusChanged.connect(self._on_focus_changed)

    # What is asked

    def explain_here(self) -> None:
        """Explain what has the keys, else what is selected, else the place in view."""
        focus = QApplication.focusWidget() or self._window
        self.explain(topic_of(focus) or self._fallback(), focus)

    def explain_at(self, widget: QWidget, at: QPoint) -> None:
        """Explain what lies at a place in *widget*."""
        self.explain(topic_of(widget, at) or self._place(), widget)

    def explain(self, key: str, near: QWidget) -> None:
        """Open the topic *key* beside *near*, in its window or beside its dialog."""
        panel = self._panel_for(near)
        if panel.isAncestorOf(near):
            panel.show_topic(key)
            return
        self._show_beside(near, panel)
        panel.start_at(key)

    def list_all(self) -> None:
        """Open the list of every topic."""
        focus = QApplication.focusWidget() or self._window
        panel = self._panel_for(focus)
        if not panel.isAncestorOf(focus):
            self._show_beside(focus, panel)
        panel.list_all()

    def point(self) -> None:
        """Let the next click say what is to be explained."""
        self._pointing.start()

    # Where it is shown

    @property
    def panel(self) -> HelpPanel | None:
        """The panel that is open, if one is."""
        if self._dialog is not None:
            return self._dialog_panel
        return self._panel if self._panel is not None and self._panel.isVisible() else None

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Resize:
            self._put_in_place()
        return False

    @Slot()
    def close(self) -> None:
        """Take the panel away and give the keys back to what had them."""
        target, self._return_to = self._return_to, None
        dialog, self._dialog, self._dialog_panel = self._dialog, None, None
        if dialog is not None:
            dialog.close()
        elif self._panel is not None:
            self._panel.hide()
        if target is not None and shiboken6.isValid(target) and target.isVisible():
            target.activateWindow()
            target.setFocus(Qt.FocusReason.OtherFocusReason)

    def _panel_for(self, near: QWidget) -> HelpPanel:
        top = near.window()
        if self._dialog_panel is not None and top is self._dialog:
            return self._dialog_panel
        return self._own_panel() if top is self._window else self._panel_beside(top)

    def _own_panel(self) -> HelpPanel:
        # Nobody needs the texts before the first question: they stay out of the start.
        from ultraplanner_gui.window.help_panel import HelpPanel

        if self._panel is None:
            self._panel = HelpPanel(self._window)
            self._panel.hide()
            self._panel.closed.connect(self.close)
            self._window.installEventFilter(self)
        return self._panel

    def _panel_beside(self, top: QWidget) -> HelpPanel:
        from ultraplanner_gui.window.help_panel import HelpPanel

        if self._dialog is not None:
            self.close()
        dialog = QDialog(top)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(self.tr("Help"))
        panel = HelpPanel(dialog)
        box = QVBoxLayout(dialog)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(panel)
        panel.closed.connect(self.close)
        dialog.finished.connect(self._on_dialog_finished)
        dialog.destroyed.connect(self._on_dialog_destroyed)
        dialog.setGeometry(_place_beside(top.frameGeometry()))
        self._dialog, self._dialog_panel = dialog, panel
        return panel

    def _show_beside(self, near: QWidget, panel: HelpPanel) -> None:
        """Show *panel* for a question about *near*, which has the keys or was clicked."""
        focus = QApplication.focusWidget()
        if focus is None or not panel.isAncestorOf(focus):
            self._return_to = focus or near
        self._near = near
        if self._dialog is not None:
            self._dialog.show()
            return
        self._put_in_place()
        panel.show()
        panel.raise_()

    def _put_in_place(self) -> None:
        """Lay the panel over the right edge, or left of what was asked about if that is there."""
        panel, window = self._panel, self._window
        if panel is None:
            return
        room = self._room()
        width = min(round(theme().px(WIDTH_PX)), room.width())
        place = QRect(room.right() - width + 1, room.top(), width, room.height())
        near = self._near
        if near is not None and shiboken6.isValid(near) and near.window() is window:
            asked = QRect(near.mapTo(window, QPoint(0, 0)), near.size())
            if place.contains(asked.center()):
                place.moveRight(min(asked.left(), self._ledger_left()) - 1)
                place.moveLeft(max(place.left(), room.left()))
        panel.setGeometry(place)

    def _room(self) -> QRect:
        """Return where the panel may lie: under the header, over the foot of the window."""
        central = self._window.centralWidget() or self._window
        room = QRect(central.mapTo(self._window, QPoint(0, 0)), central.size())
        if self._window.workplace is not None:
            room.setTop(room.top() + self._window.workplace.header.height())
        return room

    def _ledger_left(self) -> int:
        place = self._window.workplace
        if place is None or not place.ledger.isVisible():
            return self._window.width()
        return place.ledger.mapTo(self._window, QPoint(0, 0)).x()

    def _fallback(self) -> str:
        """Return the topic of what is selected, else of the place in view."""
        place = self._window.workplace
        if place is None or place.place != "sheet":
            return self._place()
        selection, project = place.selection, place.document.project
        if selection.kind == "session":
            return str(project.block.session(selection.key).kind)
        return SELECTED.get(selection.kind, "sheet")

    def _place(self) -> str:
        return "welcome" if self._window.workplace is None else self._window.workplace.place

    # In dialogs

    @Slot("QWidget*", "QWidget*")
    def _on_focus_changed(self, old: QWidget | None, now: QWidget | None) -> None:
        """Give a dialog that comes up the keys of the help, which are the main window's."""
        top = now.window() if now is not None else None
        if not isinstance(top, QDialog) or top is self._dialog or top.property(OFFERED):
            return
        if self._is_over_window(top):
            top.setProperty(OFFERED, True)
            for name, slot in (("help_here", self.explain_here), ("help_point", self.point)):
                keys = self._window.table.by_name[name].shortcut()
                QShortcut(keys, top).activated.connect(slot)

    def _is_over_window(self, dialog: QWidget) -> bool:
        above: QWidget | None = dialog
        while above is not None and above is not self._window:
            above = above.parentWidget()
        return above is not None

    @Slot()
    def _on_dialog_finished(self) -> None:
        if self._dialog is not None:
            self.close()

    @Slot()
    def _on_dialog_destroyed(self) -> None:
        # It goes with the dialog it stands beside.
        if self._dialog is not None and not shiboken6.isValid(self._dialog):
            self._dialog = self._dialog_panel = None


class Pointing(QObject):
    """While it is on, a click asks about what is under it and does nothing else; Esc ends it."""

    def __init__(self, explain_at: Callable[[QWidget, QPoint], None], parent: QObject) -> None:
        super().__init__(parent)
        self._explain_at = explain_at
        self._is_on = False

    @property
    def is_on(self) -> bool:
        """Whether the next click asks."""
        return self._is_on

    def start(self) -> None:
        """Wait for a click."""
        app = QApplication.instance()
        if app is not None and not self._is_on:
            self._is_on = True
            QGuiApplication.setOverrideCursor(Qt.CursorShape.WhatsThisCursor)
            app.installEventFilter(self)

    def stop(self) -> None:
        """Leave clicks alone again."""
        app = QApplication.instance()
        if app is not None and self._is_on:
            self._is_on = False
            QGuiApplication.restoreOverrideCursor()
            app.removeEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kind = event.type()
        if kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonDblClick):
            return True
        if kind is QEvent.Type.MouseButtonRelease and isinstance(event, QMouseEvent):
            self._on_clicked(event)
            return True
        if kind is QEvent.Type.ApplicationDeactivate:
            self.stop()
        is_key = kind in (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride)
        if is_key and isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Escape:
            self.stop()
            return True
        return False

    def _on_clicked(self, event: QMouseEvent) -> None:
        at = event.globalPosition().toPoint()
        widget = QApplication.widgetAt(at)
        self.stop()
        if widget is not None and event.button() is Qt.MouseButton.LeftButton:
            self._explain_at(widget, widget.mapFromGlobal(at))


def _place_beside(frame: QRect) -> QRect:
    """Return where a window stands right of *frame*, left of it, or over it, all on the screen."""
    screen = QGuiApplication.screenAt(frame.center()) or QGuiApplication.primaryScreen()
    room, look = screen.availableGeometry(), theme()
    width = min(round(look.px(WIDTH_PX)), room.width())
    height = min(round(look.px(DIALOG_HEIGHT_PX)), room.height())
    top = max(room.top(), min(frame.top(), room.bottom() + 1 - height))
    for left in (frame.right() + 1, frame.left() - width):
        if room.left() <= left and left + width <= room.right() + 1:
            return QRect(left, top, width, height)
    return QRect(room.right() + 1 - width, top, width, height)

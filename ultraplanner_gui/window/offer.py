"""What a job made is put in as one step, or offered where the plan has changed meanwhile."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space


class OfferBar(QFrame):
    """A bar in the line at the foot, in sight only while something waits for an answer."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document: Document | None = None
        self._edit: Edit | None = None
        self.ways: list[QPushButton] = []
        #: What the line at the foot leaves for it; it is higher only where its text needs that.
        self.least_px = 0
        self.setObjectName("offer")
        self._text = QLabel("", self)
        self._text.setWordWrap(True)
        self._text.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)
        self.put_in = QPushButton(self.tr("&Put it in"), self)
        self.leave = QPushButton(self.tr("&Leave it"), self)
        self.put_in.clicked.connect(self._on_put_in)
        self.leave.clicked.connect(self.withdraw)
        row = QHBoxLayout(self)
        row.setContentsMargins(Space.NEAR, 0, Space.NEAR, 0)
        row.addWidget(self._text, 1)
        self._row = row
        row.addWidget(self.put_in)
        row.addWidget(self.leave)
        set_topic(self, "history")
        theme().changed.connect(self._dress)
        self._dress()
        self.hide()

    @property
    def text(self) -> str:
        """What is offered, in words."""
        return self._text.text()

    def deliver(self, document: Document, base: Project, edit: Edit, text: str) -> None:
        """Perform *edit* on *document* if it still holds *base*; else offer it with *text*."""
        if document.project is base:
            self.withdraw()
            document.perform(edit)
            return
        self.withdraw()
        self._document, self._edit = document, edit
        since = self.tr("The plan has changed since. Put in, it can be undone like any step.")
        self._show(f"{text} {since}")
        self.put_in.setFocus(Qt.FocusReason.OtherFocusReason)

    def propose(self, document: Document, edit: Edit, text: str) -> None:
        """Offer *edit* with *text*; it is performed only if the user says so."""
        self.withdraw()
        self._document, self._edit = document, edit
        self._show(text)

    def ask(self, text: str, *ways: tuple[str, Callable[[], None]]) -> None:
        """Ask *text*, with a button for each of *ways*, in place of anything offered."""
        self.withdraw()
        self.put_in.hide()
        for number, (name, do) in enumerate(ways):
            button = QPushButton(name, self)
            button.clicked.connect(self.withdraw)
            button.clicked.connect(do)
            self._row.insertWidget(1 + number, button)
            self.ways.append(button)
        self._show(text)
        self.ways[0].setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def withdraw(self) -> None:
        """Forget what is offered or asked."""
        self._document = self._edit = None
        for button in self.ways:
            button.hide()
            button.deleteLater()
        self.ways.clear()
        self.put_in.show()
        self.hide()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _show(self, text: str) -> None:
        self._text.setText(text)
        self._fit()
        self.show()

    def _fit(self) -> None:
        """Be as high as the text is in the width there is for it."""
        buttons = self.ways or [self.put_in, self.leave]
        beside = sum(button.sizeHint().width() + self._row.spacing() for button in buttons)
        if self.ways:
            beside += self.leave.sizeHint().width() + self._row.spacing()
        window = self.window().width() - 2 * Space.WIDE
        width = (self.width() if self.isVisible() else window) - 2 * Space.NEAR - beside
        high = self._text.heightForWidth(max(1, width)) + 2  # its border
        self.setFixedHeight(max(self.least_px, high, buttons[0].sizeHint().height()))

    @Slot()
    def _on_put_in(self) -> None:
        document, edit = self._document, self._edit
        self.withdraw()
        if document is not None and edit is not None:
            document.perform(edit)

    @Slot()
    def _dress(self) -> None:
        c = theme().colours
        dress(self._text, Pt.TEXT, c.ink)
        self.setStyleSheet(
            f"QFrame#offer {{ background: {c.lane}; border: 1px solid {c.strong_line}; }}"
        )

"""The help panel: one topic with its source and what to see besides, and a search over all."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, QUrl, Signal, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QStackedWidget,
    QTextBrowser,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.help_html import as_html, said
from ultraplanner_gui.wording.help.topic import Topic
from ultraplanner_gui.wording.help.topics import TOPICS, search

TITLE_PT = Pt.TITLE
TEXT_PT = Pt.STRONG
FIRST = "help"
KEY_ROLE = Qt.ItemDataRole.UserRole


class HelpPanel(QFrame):
    """Shows one topic at a time; `closed` says that it is to go away.

    Keys: Esc closes, Alt+Left goes back, Tab goes from link to link; typing in the field above
    lists the topics that fit, Enter opens the first or, with the arrow keys, another.
    """

    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._key = ""
        self._trail: list[str] = []
        self.setObjectName("helpPanel")
        set_topic(self, FIRST)
        self.field = QLineEdit(self)
        self.field.setPlaceholderText(self.tr("Search all topics"))
        self.field.setAccessibleName(self.tr("Search all topics"))
        self.back = self._button(self.tr("Back"), self.tr("To the topic before (Alt+Left)"))
        self.close_button = self._button(self.tr("Close"), self.tr("Close the help (Esc)"))
        self.title = QLabel("", self)
        self.title.setWordWrap(True)
        self.text = QTextBrowser(self)
        self.text.setOpenLinks(False)
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.document().setDocumentMargin(0)
        self.found = QListWidget(self)
        self.found.setFrameShape(QFrame.Shape.NoFrame)
        self.found.setAccessibleName(self.tr("Topics found"))
        self._pages = QStackedWidget(self)
        self._lay_out()
        self._connect()
        self._dress()

    @property
    def key(self) -> str:
        """The key of the topic shown, empty while the list is."""
        return "" if self._pages.currentWidget() is self.found else self._key

    def show_topic(self, key: str) -> None:
        """Show the topic *key*, with the way back to the one before."""
        topic = TOPICS.get(key, TOPICS[FIRST])
        if self._key and topic.key != self._key:
            self._trail.append(self._key)
        self._show(topic)

    def start_at(self, key: str) -> None:
        """Show the topic *key* as asked anew, with no way back, and take the keys."""
        self._trail.clear()
        self._key = ""
        self.field.clear()
        self.show_topic(key)
        self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def list_all(self) -> None:
        """List every topic and take the keys to the search field."""
        self.field.clear()
        self._list("")
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def eventFilter(self, watched: object, event: QEvent) -> bool:
        # In the search field the keys up and down mean the list under it.
        is_down = (
            isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up)
        )
        if is_down and self.found.isVisible() and self.found.count():
            self.found.setFocus(Qt.FocusReason.OtherFocusReason)
            return True
        return False

    @Slot()
    def go_back(self) -> None:
        """Show the topic before this one."""
        if self._pages.currentWidget() is self.found and self._key:
            self._show(TOPICS[self._key])
        elif self._trail:
            self._show(TOPICS[self._trail.pop()])
        self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show(self, topic: Topic) -> None:
        self._key = topic.key
        self.title.setText(said(topic.title))
        self.title.show()
        self.text.setHtml(as_html(topic))
        self.text.setAccessibleName(said(topic.title))
        self.setAccessibleName(self.tr("Help: {0}").format(said(topic.title)))
        self._pages.setCurrentWidget(self.text)
        self.back.setEnabled(bool(self._trail))

    def _list(self, query: str) -> None:
        self.found.clear()
        for topic in search(query, said):
            item = QListWidgetItem(said(topic.title), self.found)
            item.setData(KEY_ROLE, topic.key)
        if self.found.count():
            self.found.setCurrentRow(0)
        else:
            item = QListWidgetItem(self.tr("Nothing fits. Try one word of it."), self.found)
            item.setFlags(Qt.ItemFlag.NoItemFlags)
        self.title.hide()
        self._pages.setCurrentWidget(self.found)
        self.back.setEnabled(bool(self._key))

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.setSpacing(Space.TIGHT)
        for widget, stretch in ((self.field, 1), (self.back, 0), (self.close_button, 0)):
            head.addWidget(widget, stretch)
        for page in (self.text, self.found):
            self._pages.addWidget(page)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.WIDE, Space.APART, Space.NEAR, Space.NEAR)
        box.setSpacing(Space.NEAR)
        box.addLayout(head)
        box.addWidget(self.title)
        box.addWidget(self._pages, 1)

    def _connect(self) -> None:
        self.field.textEdited.connect(self._list)
        self.field.returnPressed.connect(self._open_current)
        self.field.installEventFilter(self)
        self.found.itemActivated.connect(self._on_item)
        self.found.itemClicked.connect(self._on_item)
        self.text.anchorClicked.connect(self._on_link)
        self.back.clicked.connect(self.go_back)
        self.close_button.clicked.connect(self.closed)
        context = Qt.ShortcutContext.WidgetWithChildrenShortcut
        for keys, slot in ((Qt.Key.Key_Escape, self.closed), ("Alt+Left", self.go_back)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(context)
            shortcut.activated.connect(slot)
        theme().changed.connect(self._dress)

    def _button(self, text: str, tip: str) -> QToolButton:
        button = QToolButton(self)
        button.setText(text)
        button.setToolTip(tip)
        button.setAccessibleDescription(tip)
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        return button

    @Slot()
    def _open_current(self) -> None:
        item = self.found.currentItem()
        if item is not None and self._pages.currentWidget() is self.found:
            self._on_item(item)

    @Slot(QListWidgetItem)
    def _on_item(self, item: QListWidgetItem) -> None:
        key = item.data(KEY_ROLE)
        if key:
            self.show_topic(key)
            self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(QUrl)
    def _on_link(self, link: QUrl) -> None:
        self.show_topic(link.path())
        self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _dress(self) -> None:
        look, c = theme(), theme().colours
        dress(self.title, TITLE_PT, c.ink, bold=True)
        self.setStyleSheet(
            f"QFrame#helpPanel {{ background: {c.panel}; border: 1px solid {c.strong_line}; }}"
            "QTextBrowser, QListWidget { background: transparent; border: 0; }"
            f"QListWidget {{ color: {c.ink}; }}"
            f"QListWidget::item {{ padding: {round(look.px(3))}px; }}"
            "QListWidget::item:selected "
            f"{{ background: {c.pale_teal}; color: {c.ink}; }}"
        )
        self.found.setFont(look.font(TEXT_PT))
        self.text.setFont(look.font(TEXT_PT))
        if self.key:
            self.text.setHtml(as_html(TOPICS[self.key]))

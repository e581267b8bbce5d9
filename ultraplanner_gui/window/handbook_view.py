"""The handbook in a window: contents and a search over them at the left, the text beside."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, Qt, QUrl, Slot
from PySide6.QtGui import QKeyEvent, QTextDocument
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QTextBrowser,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.handbook_html import PICTURE, Entry, contents, handbook_html
from ultraplanner_gui.window.handbook_pdf import picture
from ultraplanner_gui.window.help_html import on_screen

_SIZE_PX = (1040.0, 720.0)
_CONTENTS_PX = 280.0
_PICTURE_PX = 640.0
_ANCHOR = Qt.ItemDataRole.UserRole


class _Text(QTextBrowser):
    """Takes its pictures from what travels with the program."""

    def loadResource(self, kind: int, name: QUrl | str) -> object:
        url = QUrl(name)
        if kind == QTextDocument.ResourceType.ImageResource and url.scheme() == PICTURE:
            return picture(url.path())
        return None


class HandbookView(QDialog):
    """Typing in the field leaves the entries that hold every word; *write* makes the PDF."""

    def __init__(self, write: Callable[[], None], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Handbook"))
        set_topic(self, "handbook")
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(self.tr("Search the handbook"))
        self.search.setAccessibleName(self.tr("Search the handbook"))
        set_topic(self.search, "handbook")
        self.search.setClearButtonEnabled(True)
        self.tree = QTreeWidget(self)
        self.tree.setHeaderHidden(True)
        self.tree.setAccessibleName(self.tr("Contents"))
        self.tree.setFrameShape(QFrame.Shape.NoFrame)
        self.text = _Text(self)
        self.text.setOpenLinks(False)
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setAccessibleName(self.tr("Handbook"))
        self.pdf = QPushButton(self.tr("Write as &PDF…"), self)
        self.pdf.setAutoDefault(False)
        self.pdf.clicked.connect(write)
        self._texts: dict[str, str] = {}
        self._tops: list[tuple[QTreeWidgetItem, list[QTreeWidgetItem]]] = []
        self._fill(contents())
        self._lay_out()
        self.search.textChanged.connect(self._on_searched)
        self.search.installEventFilter(self)
        self.tree.currentItemChanged.connect(self._on_chosen)
        self.text.anchorClicked.connect(self._on_link)
        theme().changed.connect(self._dress)
        self._dress()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        # In the search field Enter and Down mean the contents under it.
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            if event.key() == Qt.Key.Key_Down:
                self.tree.setFocus(Qt.FocusReason.OtherFocusReason)
                return True
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self._show_first()
                return True
        return False

    def go_to(self, anchor: str) -> None:
        """Show what stands at *anchor*: a topic's key, a step or a chapter."""
        self.text.scrollToAnchor(anchor)

    def found(self) -> list[str]:
        """Return the anchors of the entries in sight."""
        leaves = [item for top, under in self._tops for item in under or [top]]
        return [item.data(0, _ANCHOR) for item in leaves if not item.isHidden()]

    def _fill(self, entries: tuple[Entry, ...]) -> None:
        for entry in entries:
            top, under = self._item(entry), [self._item(one) for one in entry.under]
            self.tree.addTopLevelItem(top)
            top.addChildren(under)
            self._tops.append((top, under))
        self._tops[0][0].setExpanded(True)

    def _item(self, entry: Entry) -> QTreeWidgetItem:
        item = QTreeWidgetItem([entry.title])
        item.setData(0, _ANCHOR, entry.anchor)
        item.setToolTip(0, entry.title)
        self._texts[entry.anchor] = f"{entry.title} {entry.text}".casefold()
        return item

    def _lay_out(self) -> None:
        look = theme()
        left = QVBoxLayout()
        left.setSpacing(Space.NEAR)
        for widget in (self.search, self.tree, self.pdf):
            left.addWidget(widget)
        side = QWidget(self)
        side.setLayout(left)
        left.setContentsMargins(0, 0, 0, 0)
        side.setFixedWidth(round(look.px(_CONTENTS_PX)))
        row = QHBoxLayout(self)
        row.setContentsMargins(Space.WIDE, Space.WIDE, Space.WIDE, Space.WIDE)
        row.setSpacing(Space.WIDE)
        row.addWidget(side)
        row.addWidget(self.text, 1)
        width, height = (round(look.px(size)) for size in _SIZE_PX)
        self.resize(width, height)

    @Slot(str)
    def _on_searched(self, query: str) -> None:
        wanted = query.casefold().split()
        for number, (top, under) in enumerate(self._tops):
            for item in under:
                item.setHidden(not self._holds(item, wanted))
            some = any(not item.isHidden() for item in under)
            top.setHidden(not some and not self._holds(top, wanted))
            top.setExpanded(bool(wanted) or number == 0)

    def _holds(self, item: QTreeWidgetItem, wanted: list[str]) -> bool:
        text = self._texts[item.data(0, _ANCHOR)]
        return all(word in text for word in wanted)

    def _show_first(self) -> None:
        first = next(iter(self.found()), None)
        if first is not None:
            self.go_to(first)

    @Slot(QTreeWidgetItem, QTreeWidgetItem)
    def _on_chosen(self, now: QTreeWidgetItem | None, _before: object) -> None:
        if now is not None:
            self.go_to(now.data(0, _ANCHOR))

    @Slot(QUrl)
    def _on_link(self, link: QUrl) -> None:
        self.go_to(link.path())

    @Slot()
    def _dress(self) -> None:
        look = theme()
        self.text.setFont(look.font(Pt.STRONG))
        self.tree.setFont(look.font(Pt.STRONG))
        self.text.document().setDocumentMargin(Space.APART)
        self.text.setHtml(handbook_html(on_screen(), round(look.px(_PICTURE_PX))))

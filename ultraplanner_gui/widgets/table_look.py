"""How a table is drawn: heads of two lines, cells, ticks, and the fields to type in."""

from __future__ import annotations

from PySide6.QtCore import QAbstractItemModel, QEvent, QModelIndex, QPointF, QRectF, QSize, Qt, Slot
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHeaderView,
    QLineEdit,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from ultraplanner_gui.widgets.lane import draw_text
from ultraplanner_gui.widgets.table import Index, TableModel
from ultraplanner_gui.widgets.table_column import Mark
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke

TEXT_PT = Pt.TEXT
HEAD_PT = Pt.NOTE
UNIT_PT = Pt.SMALL
PAD_PX = 7.0
#: Text on the left keeps this much more from the figures before it.
GAP_PX = 8.0
ROW_PX = 25.0
TICK_PX = 12.0
ARROW_PX = 7.0
MARK_PX = 8.0
#: A field to type in is at least this wide.
FIELD_PX = 92.0

Align = Qt.AlignmentFlag


def inner_box(model: TableModel, column: int, box: QRectF) -> QRectF:
    """Return the part of a cell or head that its text stands in."""
    look = theme()
    is_text = not model.alignments[column] & Align.AlignRight
    gap = look.px(GAP_PX) if column and is_text else 0.0
    return box.adjusted(look.px(PAD_PX) + gap, 0, -look.px(PAD_PX), 0)


def padding(model: TableModel, column: int) -> float:
    """Return the width of a column that its text does not have."""
    return -inner_box(model, column, QRectF()).width()


def mixed(one: QColor, other: QColor, share: float) -> QColor:
    """Return *one* with a *share* of *other*."""
    pairs = zip(one.getRgb()[:3], other.getRgb()[:3], strict=True)  # type: ignore[index]
    return QColor(*(round(a + share * (b - a)) for a, b in pairs))


class TableHead(QHeaderView):
    """Heads with their unit under them in small type."""

    def __init__(self, model: TableModel, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._table = model
        self.setSectionsClickable(True)
        self.setHighlightSections(False)
        self.setSortIndicatorShown(True)
        self.setSortIndicatorClearable(True)

    def sizeHint(self) -> QSize:
        height = theme().metrics(HEAD_PT, bold=True).height() + theme().px(9)
        if any(self._table.head_parts(column)[1] for column in range(self.count())):
            height += theme().metrics(UNIT_PT).height()
        return QSize(super().sizeHint().width(), round(height))

    def wanted_width(self, column: int) -> float:
        """Return the width at which head and unit of *column* are whole."""
        look = theme()
        name, unit = self._table.head_parts(column)
        text = max(
            look.metrics(HEAD_PT, bold=True).horizontalAdvance(name),
            look.metrics(UNIT_PT).horizontalAdvance(unit),
        )
        return text + padding(self._table, column) + look.px(ARROW_PX)

    def paintSection(self, painter: QPainter, rect: QRectF, section: int) -> None:  # type: ignore[override]
        look = theme()
        c, box = look.colours, QRectF(rect)
        painter.save()
        painter.fillRect(box, c["lane"])
        painter.fillRect(QRectF(box.left(), box.bottom() - 1, box.width(), 1), c["strong_line"])
        name, unit = self._table.head_parts(section)
        side = leading(self, self._table.alignments[section]) & Align.AlignHorizontal_Mask
        inner = inner_box(self._table, section, box).adjusted(0, look.px(3), 0, -look.px(5))
        is_sorted = self.sortIndicatorSection() == section
        elided, room = Qt.TextElideMode.ElideRight, inner.width() + 1
        name = look.metrics(HEAD_PT, bold=True).elidedText(name, elided, room)
        unit = look.metrics(UNIT_PT).elidedText(unit, elided, room)
        draw_text(
            painter, inner, name, c["ink"], look.font(HEAD_PT, bold=True), side | Align.AlignTop
        )
        draw_text(painter, inner, unit, c["soft"], look.font(UNIT_PT), side | Align.AlignBottom)
        if is_sorted:
            self._paint_arrow(painter, inner, bool(side & Align.AlignRight))
        painter.restore()

    def _paint_arrow(self, painter: QPainter, inner: QRectF, is_right: bool) -> None:
        """Draw the mark of sorting on the line of the unit, where the text is not."""
        look = theme()
        size = look.px(ARROW_PX)
        left = inner.left() if is_right else inner.right() - size
        bottom = inner.bottom() - look.px(2)
        falls = self.sortIndicatorOrder() is Qt.SortOrder.DescendingOrder
        base, tip = (bottom - size * 0.6, bottom) if falls else (bottom, bottom - size * 0.6)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(look.colours["teal"])
        painter.drawPolygon(
            QPolygonF(
                [QPointF(left, base), QPointF(left + size, base), QPointF(left + size / 2, tip)]
            )
        )


class TableCells(QStyledItemDelegate):
    """Cells: what can be typed over in ink, what follows from it in soft, warnings in clay."""

    def __init__(self, model: TableModel, parent: QAbstractItemView) -> None:
        super().__init__(parent)
        self._table, self._view = model, parent

    def wanted_width(self, column: int, text: str) -> float:
        """Return the width at which *text* is whole in a cell of *column*."""
        return theme().metrics(TEXT_PT).horizontalAdvance(text) + padding(self._table, column) + 2

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        look, table = theme(), self._table
        c, box = look.colours, QRectF(option.rect)
        row, column = index.row(), index.column()
        is_selected = bool(option.state & QStyle.StateFlag.State_Selected)
        current = self._view.currentIndex()
        painter.save()
        painter.fillRect(box, self._ground(row, is_selected, current))
        if table.begins_group(row):
            painter.fillRect(QRectF(box.left(), box.top(), box.width(), 1), c["strong_line"])
        spec = table.columns[column]
        is_in_ink = spec.is_main or table.can_edit(row, column)
        colour = "clay" if table.warns(row, column) else "ink" if is_in_ink else "soft"
        if spec.is_checked is not None:
            self._paint_tick(painter, box, spec.is_checked(table.thing(row)), colour)
        else:
            inner = inner_box(table, column, box)
            elide, room = Qt.TextElideMode.ElideRight, inner.width() + 1
            text = look.metrics(TEXT_PT).elidedText(table.text(row, column), elide, room)
            side = leading(self._view, table.alignments[column])
            draw_text(painter, inner, text, c[colour], look.font(TEXT_PT), side)
        mark = table.mark(row, column)
        if mark is not None:
            self._paint_mark(painter, box, mark)
        if row == current.row() and column == current.column():
            self._paint_frame(painter, box)
        painter.restore()

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: Index) -> QWidget:
        choices = self._table.columns[index.column()].choices
        editor: QComboBox | QLineEdit
        if choices is None:
            editor = QLineEdit(parent)
            editor.setAlignment(self._table.alignments[index.column()])
        else:
            editor = QComboBox(parent)
            editor.addItems(list(choices(self._table.thing(index.row()), self._table.words)))
            editor.activated.connect(self._on_activated)
            editor.setMaxVisibleItems(20)
        editor.setFont(theme().font(TEXT_PT))
        editor.setStyleSheet(_editor_style())
        editor.setAccessibleName(self._table.head(index.column()))
        return editor

    def setEditorData(self, editor: QWidget, index: Index) -> None:
        text = str(index.data(Qt.ItemDataRole.EditRole))
        if isinstance(editor, QComboBox):
            editor.setCurrentIndex(editor.findText(text))
        elif isinstance(editor, QLineEdit):
            editor.setText(text)

    def setModelData(self, editor: QWidget, model: QAbstractItemModel, index: Index) -> None:
        text = editor.currentText() if isinstance(editor, QComboBox) else editor.text()  # type: ignore[attr-defined]
        model.setData(index, text)

    def updateEditorGeometry(
        self, editor: QWidget, option: QStyleOptionViewItem, index: Index
    ) -> None:
        rect = option.rect
        # A list of names needs its longest name and its arrow, a figure room for its unit.
        is_list = isinstance(editor, QComboBox)
        width = editor.sizeHint().width() if is_list else round(theme().px(FIELD_PX))
        more = max(width - rect.width(), 0)
        is_right = bool(self._table.alignments[index.column()] & Align.AlignRight)
        editor.setGeometry(rect.adjusted(-more if is_right else 0, 0, 0 if is_right else more, 0))

    def editorEvent(
        self,
        event: QEvent,
        model: QAbstractItemModel,
        option: QStyleOptionViewItem,
        index: Index,
    ) -> bool:
        is_tick = self._table.columns[index.column()].is_checked is not None
        if is_tick and isinstance(event, QMouseEvent):
            # Anywhere in the cell will do; a second click of a pair is a click of its own.
            is_click = event.button() is Qt.MouseButton.LeftButton
            if is_click and event.type() is QEvent.Type.MouseButtonRelease:
                return self._toggle(model, index)
            return event.type() is QEvent.Type.MouseButtonDblClick
        return super().editorEvent(event, model, option, index)

    def _toggle(self, model: QAbstractItemModel, index: Index) -> bool:
        role = Qt.ItemDataRole.CheckStateRole
        is_on = Qt.CheckState(index.data(role)) is Qt.CheckState.Checked
        return model.setData(
            index, Qt.CheckState.Unchecked if is_on else Qt.CheckState.Checked, role
        )

    @Slot()
    def _on_activated(self) -> None:
        editor = self.sender()
        if isinstance(editor, QWidget):
            self.commitData.emit(editor)
            self.closeEditor.emit(editor, QStyledItemDelegate.EndEditHint.NoHint)

    def _ground(self, row: int, is_selected: bool, current: QModelIndex) -> QColor:
        c = theme().colours
        if is_selected:
            return c["pale_teal"]
        usual = c["lane" if row % 2 else "panel"]
        return mixed(usual, c["pale_teal"], 0.4) if row == current.row() else usual

    def _paint_mark(self, painter: QPainter, box: QRectF, mark: Mark) -> None:
        """Turn down the corner of a cell a paste would change; bar one it cannot change."""
        look = theme()
        size = look.px(MARK_PX)
        colour = look.colours["clay" if mark.is_refused else "teal"]
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if mark.is_refused:
            painter.fillRect(QRectF(box.left(), box.top() + 1, size / 3, box.height() - 2), colour)
            return
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        corner = box.topRight()
        across, down = QPointF(size, 0), QPointF(0, size)
        painter.drawPolygon(QPolygonF([corner - across, corner, corner + down]))

    def _paint_frame(self, painter: QPainter, box: QRectF) -> None:
        has_focus = self._view.hasFocus()
        colour = theme().colours["teal" if has_focus else "strong_line"]
        width = 2.0 if has_focus else 1.0
        painter.setPen(QPen(colour, width))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        inset = width / 2
        painter.drawRect(box.adjusted(inset, inset, -inset, -inset))

    def _paint_tick(self, painter: QPainter, box: QRectF, is_on: bool, colour: str) -> None:
        look = theme()
        size = look.px(TICK_PX)
        square = QRectF(0, 0, size, size)
        square.moveCenter(box.center())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        # Empty boxes stand back, so that the few ticks in a long table are seen.
        painter.setPen(QPen(look.colours[colour if is_on else "stone"], Stroke.HAIR))
        painter.setBrush(look.colours["panel"])
        painter.drawRoundedRect(square, 2, 2)
        if is_on:
            painter.setPen(QPen(look.colours[colour], Stroke.HEAVY))
            x, y = square.left(), square.top()
            painter.drawPolyline(
                QPolygonF(
                    [
                        QPointF(x + 0.22 * size, y + 0.52 * size),
                        QPointF(x + 0.43 * size, y + 0.74 * size),
                        QPointF(x + 0.80 * size, y + 0.26 * size),
                    ]
                )
            )


def leading(widget: QWidget, align: Align) -> Align:
    """Return *align* as *widget* is read; figures stay right, where their last places line up."""
    if not widget.isRightToLeft() or align & Align.AlignHorizontal_Mask != Align.AlignLeft:
        return align
    return align & ~Align.AlignLeft | Align.AlignRight


def _editor_style() -> str:
    c, pad = theme().colours, round(theme().px(PAD_PX)) - 2
    return (
        f"QLineEdit, QComboBox {{ background: {c.panel}; color: {c.ink}; padding: 0 {pad}px;"
        f" border: 2px solid {c.teal}; border-radius: 0; }}"
    )

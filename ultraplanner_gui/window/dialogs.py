"""The small dialogs: notes, history, fuel per hour, keys, red flags, about."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPlainTextEdit,
    QSpinBox,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui import __version__
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.desk.points import shown_label
from ultraplanner_gui.desk.typing_pause import TypingPause
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel import (
    HIGHEST_CARB_G_PER_H,
    HIGHEST_FLUID_ML_PER_H,
    HIGHEST_SODIUM_MG_PER_H,
    SetFuelRates,
)
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.widgets.fields import align_text, describe
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording import cautions
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.window.actions import Actions


def _dialog(
    parent: QWidget, title: str, width_px: float, height_px: float = 0.0
) -> tuple[QDialog, QVBoxLayout]:
    dialog = QDialog(parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setWindowTitle(title)
    look = theme()
    dialog.resize(round(look.px(width_px)), round(look.px(height_px or 10)))
    box = QVBoxLayout(dialog)
    box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
    box.setSpacing(Space.APART)
    return dialog, box


def _open(dialog: QDialog, box: QVBoxLayout) -> None:
    """Open *dialog*, no smaller than its wrapped lines of text need."""
    width = dialog.width()
    dialog.setMinimumSize(width, max(box.totalHeightForWidth(width), 0))
    dialog.open()


def _close_button(dialog: QDialog) -> QDialogButtonBox:
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, dialog)
    buttons.rejected.connect(dialog.reject)
    return buttons


def _paragraph(text: str, parent: QWidget, bold: bool = False) -> QLabel:
    label = QLabel(text, parent)
    label.setWordWrap(True)
    label.setFont(theme().font(Pt.STRONG, bold))
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label


def open_notes(parent: QWidget, document: Document) -> QDialog:
    """Open the project's notes; they are kept as one types."""
    dialog, box = _dialog(parent, tr("Notes"), 520, 360)
    set_topic(dialog, "notes")
    text = QPlainTextEdit(document.project.notes, dialog)
    text.setTabChangesFocus(True)
    text.setAccessibleName(tr("Notes"))
    set_topic(text, "notes")

    def edit(value: str, gesture: int) -> Edit:
        return WriteNotes(value, gesture)

    pause = TypingPause(text, edit, document.perform, dialog)
    dialog.finished.connect(pause.flush)
    box.addWidget(text)
    box.addWidget(_close_button(dialog))
    dialog.open()
    return dialog


def open_history(parent: QWidget, document: Document, words: Words) -> QDialog:
    """Open the list of earlier states; going back is one step that can be undone."""
    dialog, box = _dialog(parent, tr("Go back to an earlier state"), 460, 340)
    set_topic(dialog, "history")
    box.addWidget(
        _paragraph(tr("The plan becomes what it was then. Undo brings today's back."), dialog)
    )
    points = QListWidget(dialog)
    points.setAccessibleName(tr("Earlier states"))
    for point in document.history():
        at = point.kept_at.astimezone()
        when = f"{words.day_and_year(at.date())}, {words.clock(at, weekday=False)}"
        item = QListWidgetItem(f"{when}   {shown_label(point.label, words.translate)}")
        item.setData(Qt.ItemDataRole.UserRole, point.id)
        points.addItem(item)
    points.setCurrentRow(0)
    if points.count() == 0:
        nothing = tr("Nothing lies behind yet. Name this state, and you find it here.")
        box.addWidget(_paragraph(nothing, dialog))
    box.addWidget(points)
    buttons = _close_button(dialog)
    back = buttons.addButton(tr("Go &back to it"), QDialogButtonBox.ButtonRole.AcceptRole)
    back.setEnabled(points.count() > 0)
    box.addWidget(buttons)

    def go() -> None:
        item = points.currentItem()
        if item is not None:
            document.go_back(item.data(Qt.ItemDataRole.UserRole))
        dialog.accept()

    buttons.accepted.connect(go)
    dialog.open()
    return dialog


def open_fuel_rates(parent: QWidget, document: Document) -> QDialog:
    """Open the form for what is taken per hour and how it is spread."""
    fuel = document.project.fuel
    dialog, box = _dialog(parent, tr("Fuel per hour"), 420)
    form = QFormLayout()

    def field(value: float, low: float, high: float, suffix: str, step: int) -> QSpinBox:
        box = QSpinBox(dialog)
        box.setRange(round(low), round(high))
        box.setSingleStep(step)
        box.setSuffix(suffix)
        box.setValue(round(value))
        align_text(box)
        describe(box, tr("From {0} to {1}").format(round(low), f"{round(high)}{suffix}"))
        return box

    carbs = field(fuel.carb_g_per_h, 0, HIGHEST_CARB_G_PER_H, " g/h", 5)
    fluid = field(fuel.fluid_ml_per_h, 0, HIGHEST_FLUID_ML_PER_H, " mL/h", 50)
    sodium = field(fuel.sodium_mg_per_h, 0, HIGHEST_SODIUM_MG_PER_H, " mg/h", 50)
    first = field(fuel.first_s / 60, 0, 360, " min", 5)
    every = field(fuel.every_s / 60, 5, 180, " min", 5)
    set_topics({dialog: "fuel", carbs: "carbs per hour", fluid: "fluid", sodium: "sodium"})
    set_topics({first: "first bite", every: "placing fuel"})
    form.addRow(tr("&Carbohydrate"), carbs)
    form.addRow(tr("&Fluid to have with you"), fluid)
    form.addRow(tr("&Sodium"), sodium)
    form.addRow(tr("First &bite after"), first)
    form.addRow(tr("Then &every"), every)
    box.addLayout(form)
    caution = QCoreApplication.translate("Caution", cautions.OVER_DRINKING)
    box.addWidget(_paragraph(caution, dialog))
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, dialog)
    buttons.addButton(tr("&Set"), QDialogButtonBox.ButtonRole.AcceptRole)
    buttons.rejected.connect(dialog.reject)
    box.addWidget(buttons)

    def send() -> None:
        edit = SetFuelRates(
            float(carbs.value()),
            float(fluid.value()),
            float(sodium.value()),
            first.value() * 60.0,
            every.value() * 60.0,
        )
        if document.perform(edit) or edit.apply(document.project) == document.project:
            dialog.accept()

    buttons.accepted.connect(send)
    _open(dialog, box)
    return dialog


def open_keys(parent: QWidget, actions: Actions) -> QDialog:
    """Open the list of every action and its keys."""
    dialog, box = _dialog(parent, tr("Keys"), 520, 560)
    set_topic(dialog, "help")
    from ultraplanner_gui.window.actions import name_of

    rows = [
        (
            name_of(action).rstrip("…"),
            action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
            or action.text().partition("\t")[2],
        )
        for action in actions.by_name.values()
    ]
    rows += [
        (tr("In the day grid and the race lanes: choose"), tr("arrow keys")),
        (tr("Pick up, put down"), tr("Enter")),
        (tr("Move what is picked up"), tr("arrow keys")),
        (tr("Put it back"), tr("Esc")),
        (tr("While dragging on race day: snap to nothing"), "Alt"),
        (tr("Over race day: fold the leg ahead of a station, or behind"), "F, Shift+F"),
        (tr("Move a lane up or down"), "Ctrl+Shift+Up, Ctrl+Shift+Down"),
        (tr("Make a lane higher or lower"), "Alt+Down, Alt+Up"),
        (tr("In other lanes: move the line with the figures"), tr("left and right, Shift: ten")),
        (tr("In other lanes: what can be done"), tr("Enter")),
    ]
    table = QTableWidget(len(rows), 2, dialog)
    table.setHorizontalHeaderLabels([tr("Action"), tr("Keys")])
    table.verticalHeader().hide()
    table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
    table.setTabKeyNavigation(False)
    table.setAccessibleName(tr("Keys"))
    for row, (text, keys) in enumerate(rows):
        table.setItem(row, 0, QTableWidgetItem(text))
        table.setItem(row, 1, QTableWidgetItem(keys))
    table.setShowGrid(False)
    table.setAlternatingRowColors(True)
    table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
    table.horizontalHeader().setHighlightSections(False)
    table.setColumnWidth(0, round(theme().px(320)))
    table.horizontalHeader().setStretchLastSection(True)
    box.addWidget(table)
    box.addWidget(_close_button(dialog))
    dialog.open()
    return dialog


def open_red_flags(parent: QWidget) -> QDialog:
    """Open the lines on when to stop and get help."""
    dialog, box = _dialog(parent, tr("When to stop and get help"), 560)
    set_topic(dialog, "red flags")
    for text in cautions.RED_FLAGS:
        box.addWidget(_paragraph(QCoreApplication.translate("Caution", text), dialog))
    box.addWidget(_close_button(dialog))
    _open(dialog, box)
    return dialog


def open_about(parent: QWidget) -> QDialog:
    """Open what this program is."""
    dialog, box = _dialog(parent, tr("About Ultraplanner"), 460)
    box.addWidget(_paragraph(tr("Ultraplanner {0}").format(__version__), dialog, bold=True))
    box.addWidget(
        _paragraph(
            tr("Plans an ultramarathon from the first week of training to the card in the pocket."),
            dialog,
        )
    )
    box.addWidget(
        _paragraph(
            tr("This plan is arithmetic on what you typed. It does not examine you."), dialog
        )
    )
    box.addWidget(_close_button(dialog))
    _open(dialog, box)
    return dialog

"""Small dialogs of the course: cut every so far, what surfaces cost, what was mended."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QDoubleSpinBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.edits.compound import DescribeSection, SetSurfaceCosts
from ultraplanner_gui.edits.course import NoteHardStretch
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.sections import LONGEST_NAME, CutSections, RenameSection
from ultraplanner_gui.edits.surfaces import SetSurfaceFactors
from ultraplanner_gui.engine.section_cuts import CutBy
from ultraplanner_gui.engine.surface_spans import surface_factors_of
from ultraplanner_gui.plan.course import Reading, Repair, Surface
from ultraplanner_gui.raceday.surface_looks import surface_name
from ultraplanner_gui.science.surface import COST_FACTOR, DESCENT_FACTOR
from ultraplanner_gui.widgets.fields import DistanceField, align_text
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.exchange.gpx_in import CourseChoice
    from ultraplanner_gui.window.course_deeds import CourseDeeds

LEAST_FACTOR, MOST_COST, MOST_DESCENT = 0.1, 3.0, 1.5


def _dialog(parent: QWidget, title: str, topic: str, wide: float) -> tuple[QDialog, QVBoxLayout]:
    dialog = QDialog(parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setWindowTitle(title)
    set_topic(dialog, topic)
    box = QVBoxLayout(dialog)
    box.addStrut(round(theme().px(wide)) - 2 * Space.EDGE)
    box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
    box.setSpacing(Space.APART)
    return dialog, box


def _line(text: str, parent: QWidget) -> QLabel:
    label = QLabel(text, parent)
    label.setWordWrap(True)
    label.setFont(theme().font(Pt.TEXT))
    return label


def _send(dialog: QDialog, text: str) -> QDialogButtonBox:
    buttons = QDialogButtonBox(dialog)
    buttons.addButton(text, QDialogButtonBox.ButtonRole.AcceptRole).setDefault(True)
    buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
    buttons.rejected.connect(dialog.reject)
    return buttons


def _close(dialog: QDialog) -> QDialogButtonBox:
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, dialog)
    buttons.rejected.connect(dialog.reject)
    return buttons


def open_cut_every(parent: QWidget, document: Document, words: Words) -> QDialog:
    """Ask how long sections are to be; cutting is one step that can be undone."""
    dialog, box = _dialog(parent, tr("Cut sections every so far"), "cutting sections", 340)
    every = DistanceField(words, 500.0, 500_000.0, 1, dialog)
    every.set_metres(10.0 * words.unit_m)
    every.setAccessibleName(tr("Length of a section"))
    set_topic(every, "cutting sections")
    label = QLabel(tr("&Length of a section"), dialog)
    label.setBuddy(every)
    at_stations = QCheckBox(tr("End them at aid &stations too"), dialog)
    at_stations.setChecked(True)
    row = QHBoxLayout()
    row.addWidget(label)
    row.addWidget(every, 1)
    box.addLayout(row)
    box.addWidget(at_stations)
    box.addWidget(_line(tr("A section always ends where there is a cutoff."), dialog))
    buttons = _send(dialog, tr("&Cut"))
    box.addWidget(buttons)

    def send() -> None:
        every.interpretText()
        document.perform(CutSections(CutBy.DISTANCE, every.metres, at_stations.isChecked()))
        dialog.accept()

    buttons.accepted.connect(send)
    dialog.open()
    return dialog


def open_section_name(parent: QWidget, document: Document, key: str) -> QDialog:
    """Ask what a section is called and what to do when it gets hard there."""
    course = document.project.course
    assert course is not None
    section = course.section(key)
    dialog, box = _dialog(parent, tr("Name the section"), "cutting sections", 380)
    name, note = QLineEdit(section.name, dialog), QPlainTextEdit(section.hard_note, dialog)
    name.setMaxLength(LONGEST_NAME)
    note.setTabChangesFocus(True)
    note.setPlaceholderText(tr("If …, then …"))
    note.setFixedHeight(5 * note.fontMetrics().height())
    for text, field in ((tr("&Name"), name), (tr("When it gets &hard here"), note)):
        label = QLabel(text, dialog)
        label.setBuddy(field)
        field.setAccessibleName(text.replace("&", ""))
        box.addWidget(label)
        box.addWidget(field)
    set_topics({name: "section", note: "when it gets hard"})
    buttons = _send(dialog, tr("&Set"))
    box.addWidget(buttons)

    def send() -> None:
        words = note.toPlainText().strip()
        renamed = RenameSection(key, name.text().strip())
        document.perform(DescribeSection((renamed, NoteHardStretch(key, words))))
        dialog.accept()

    buttons.accepted.connect(send)
    dialog.open()
    return dialog


def open_surface_factors(parent: QWidget, document: Document, words: Words) -> QDialog:
    """Show and change what each surface costs and how fast one comes down on it."""
    dialog, box = _dialog(parent, tr("What surfaces cost"), "surface", 440)
    course = document.project.course
    assert course is not None
    text = tr(
        "Energy on each surface over that on firm ground, and speed downhill over that on firm "
        "ground. What is usual stands beside it: sand and smooth trail come from measurements, "
        "the rest is our own estimate. Help names the sources."
    )
    box.addWidget(_line(text, dialog))
    grid = QGridLayout()
    for column, head in enumerate((tr("Surface"), tr("Energy"), tr("Downhill"), tr("Usual"))):
        grid.addWidget(QLabel(head, dialog), 0, column)
    fields: dict[Surface, tuple[QDoubleSpinBox, QDoubleSpinBox]] = {}
    now = surface_factors_of(course)
    for row, surface in enumerate((s for s in Surface if s is not Surface.UNKNOWN), start=1):
        name = surface_name(surface)
        cost = _factor(dialog, now[surface].cost, MOST_COST)
        descent = _factor(dialog, now[surface].descent, MOST_DESCENT)
        cost.setAccessibleName(tr("Energy on {0}").format(name))
        descent.setAccessibleName(tr("Speed downhill on {0}").format(name))
        fields[surface] = cost, descent
        usual = f"{words.number(COST_FACTOR[surface], 2)}, "
        usual += words.number(DESCENT_FACTOR[surface], 2)
        for column, part in enumerate((QLabel(name, dialog), cost, descent, QLabel(usual, dialog))):
            set_topic(part, "surface")
            grid.addWidget(part, row, column)
    box.addLayout(grid)
    buttons = _send(dialog, tr("&Set"))
    usual_button = buttons.addButton(tr("As &usual"), QDialogButtonBox.ButtonRole.ResetRole)
    box.addWidget(buttons)

    def reset() -> None:
        for surface, (cost, descent) in fields.items():
            cost.setValue(COST_FACTOR[surface])
            descent.setValue(DESCENT_FACTOR[surface])

    def send() -> None:
        edits: list[Edit] = []
        for surface, (cost, descent) in fields.items():
            cost.interpretText()
            descent.interpretText()
            pair = round(cost.value(), 2), round(descent.value(), 2)
            usual = COST_FACTOR[surface], DESCENT_FACTOR[surface]
            is_usual = pair == usual
            edits.append(SetSurfaceFactors(surface, *((None, None) if is_usual else pair)))
        document.perform(SetSurfaceCosts(tuple(edits)))
        dialog.accept()

    usual_button.clicked.connect(reset)
    buttons.accepted.connect(send)
    dialog.open()
    return dialog


def _factor(parent: QWidget, value: float, most: float) -> QDoubleSpinBox:
    field = QDoubleSpinBox(parent)
    field.setRange(LEAST_FACTOR, most)
    field.setDecimals(2)
    field.setSingleStep(0.05)
    field.setKeyboardTracking(False)
    field.setValue(value)
    align_text(field)
    return field


def _add_lines(
    dialog: QDialog,
    box: QVBoxLayout,
    deeds: CourseDeeds,
    choices: Sequence[CourseChoice],
    reading: Reading,
) -> None:
    """List the lines of the file, each to be read instead."""
    words = deeds.words()
    box.addWidget(_line(tr("The file holds several lines. Read another instead:"), dialog))
    for choice in choices:
        row = QHBoxLayout()
        said = tr("{0}: {1}, {2} points").format(
            choice.name or tr("all in order"),
            words.distance(choice.length_m, 1),
            words.number(choice.points),
        )
        row.addWidget(_line(said, dialog), 1)
        read = QPushButton(tr("Read this"), dialog)
        read.setAccessibleName(tr("Read this: {0}").format(said))
        read.setEnabled(choice.key != reading.choice)
        read.clicked.connect(partial(deeds.read_again, choice.key, reading.without))
        read.clicked.connect(dialog.accept)
        row.addWidget(read)
        box.addLayout(row)


def open_mended(
    parent: QWidget, document: Document, deeds: CourseDeeds, lines: Sequence[CourseChoice]
) -> QDialog:
    """List what was mended in the file of the course, each with its way back.

    Where the file holds several *lines*, each can be read instead.
    """
    dialog, box = _dialog(parent, tr("What was mended"), "course", 520)
    course, words = document.project.course, deeds.words()
    assert course is not None
    reading = course.reading
    path = deeds.course_file(reading.file) if reading is not None else None
    if not course.repairs:
        box.addWidget(_line(tr("Nothing had to be mended in this course."), dialog))
    for repair in course.repairs:
        row = QHBoxLayout()
        said = words.say(repair)
        row.addWidget(_line(said, dialog), 1)
        if isinstance(repair, Repair):
            undo = QPushButton(tr("Undo this"), dialog)
            undo.setAccessibleName(tr("Undo this: {0}").format(said))
            undo.setEnabled(path is not None and reading is not None)
            if reading is not None:
                kinds = tuple(dict.fromkeys((*reading.without, repair.kind)))
                undo.clicked.connect(partial(deeds.read_again, reading.choice, kinds))
                undo.clicked.connect(dialog.accept)
            row.addWidget(undo)
        box.addLayout(row)
    if reading is not None and len(lines) > 1:
        _add_lines(dialog, box, deeds, lines, reading)
    if reading is not None and reading.without and path is not None:
        again = QPushButton(tr("&Mend all again"), dialog)
        again.clicked.connect(partial(deeds.read_again, reading.choice, ()))
        again.clicked.connect(dialog.accept)
        box.addWidget(again)
    if course.repairs and path is None:
        why = tr("To undo one, open the file of the course again: it was not read in this sitting.")
        box.addWidget(_line(why, dialog))
    box.addWidget(_close(dialog))
    dialog.open()
    return dialog

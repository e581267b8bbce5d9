"""The form for the shape of the course: each deed is seen in a small profile before it is taken."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QSpinBox,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.compound import SetOfficialFigures
from ultraplanner_gui.edits.course_shape import (
    GoOutAndBack,
    JoinCourse,
    ReverseCourse,
    RunLaps,
    SetOfficialDistance,
    SetOfficialHeights,
    TrimCourse,
)
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.course_scale import line_length_m
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.fields import DistanceField, HeightField, align_text
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.schematic_view import SchematicView
from ultraplanner_gui.wording.words import Words

SIZE_PX = (640.0, 560.0)
MOST_LAPS = 50
LONGEST_M = 2_000_000.0
MOST_HEIGHT_M = 100_000.0
FIGURES, TRIM, REVERSE, LAPS, BACK, JOIN = range(6)


class CourseForm(QDialog):
    """One deed at a time, looked at before it is taken; taken, it is one step to undo."""

    def __init__(
        self,
        document: Document,
        words: Words,
        pick_leg: Callable[[Callable[[Course], None]], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._words, self._pick_leg = document, words, pick_leg
        course, profile = document.project.course, document.outlook.profile
        assert course is not None
        assert profile is not None
        self._course = course
        self._leg: Course | None = None
        self.setWindowTitle(self.tr("Shape of the course"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(*(round(theme().px(side)) for side in SIZE_PX))
        set_topic(self, "course")
        self.deed = QComboBox(self)
        self.deed.addItems(
            [
                self.tr("Official distance, climb and drop"),
                self.tr("Trim start and finish"),
                self.tr("Run it the other way round"),
                self.tr("Run it in laps"),
                self.tr("Go out and back"),
                self.tr("Put another file behind it"),
            ]
        )
        self.deed.setAccessibleName(self.tr("What to do"))
        self.pages = QStackedWidget(self)
        self._make_pages()
        self.profile = SchematicView(self)
        self._said = QLabel("", self)
        self._said.setWordWrap(True)
        self._lay_out()
        set_topics({self.deed: "course shape", self.profile: "profile", self._said: "course shape"})
        set_topics(dict.fromkeys((self.start, self.end, self.laps), "course shape"))
        set_topics({self.official: "official distance"})
        set_topics(dict.fromkeys((self.climb, self.drop), "official climb and drop"))
        self.deed.currentIndexChanged.connect(self._on_deed)
        self._on_deed()

    def edit(self) -> Edit | None:
        """Return the edit as chosen, None where a file is missing."""
        number = self.deed.currentIndex()
        for spin in (self.start, self.end, self.official, self.climb, self.drop, self.laps):
            spin.interpretText()
        if number == TRIM:
            end_m = min(self.end.metres, self._course.length_m)
            return TrimCourse(self.start.metres, end_m)
        if number == REVERSE:
            return ReverseCourse()
        if number == LAPS:
            return RunLaps(self.laps.value(), self.tr("Lap {0}"))
        if number == BACK:
            return GoOutAndBack(self.tr("Turn"))
        if number == JOIN:
            return JoinCourse(self._leg) if self._leg is not None else None
        distance_m, climb_m, drop_m = (
            field.metres if field.value() > 0.0 else None
            for field in (self.official, self.climb, self.drop)
        )
        heights = SetOfficialHeights(climb_m, drop_m)
        return SetOfficialFigures((SetOfficialDistance(distance_m), heights))

    @Slot()
    def take(self) -> None:
        """Perform the edit, or say what is wrong."""
        edit = self.edit()
        if edit is None:
            self._pick_leg(self.take_leg)
            return
        try:
            edit.apply(self._document.project)
        except PlanError as error:
            self._complain(self._words.say(error.message))
            return
        self._document.perform(edit)
        self.accept()

    @Slot()
    def look(self) -> None:
        """Show what the course would be."""
        edit = self.edit()
        if edit is None:
            self.profile.show_nothing(self.tr("Take asks for the file of the next leg."))
            self._said.setText("")
            return
        try:
            course = edit.apply(self._document.project).course
        except PlanError as error:
            self._complain(self._words.say(error.message))
            self.profile.show_nothing(self.tr("This makes no course."))
            return
        assert course is not None
        profile, words = build_profile(course), self._words
        self.profile.show_profile(profile, course.stations, words)
        dress(self._said, Pt.TEXT, theme().colours.ink)
        text = self.tr("Then {0} with climb {1} and drop {2}; now {3}.").format(
            words.distance(course.length_m, 1),
            words.height(profile.ascent_m),
            words.height(profile.descent_m),
            words.distance(self._course.length_m, 1),
        )
        self._said.setText(text)

    def _complain(self, text: str) -> None:
        dress(self._said, Pt.TEXT, theme().colours.clay)
        self._said.setText(text)

    def take_leg(self, leg: Course) -> None:
        """Show the course with *leg* behind it."""
        self._leg = leg
        self.look()

    @Slot()
    def _on_deed(self) -> None:
        self.pages.setCurrentIndex(self.deed.currentIndex())
        self.look()

    def _make_pages(self) -> None:
        words, course = self._words, self._course
        length_m = course.length_m
        self.start = DistanceField(words, 0.0, length_m, 2, self)
        self.end = DistanceField(words, 0.0, length_m, 2, self)
        self.end.set_metres(length_m)
        self.official = DistanceField(words, 0.0, LONGEST_M, 2, self)
        self.climb = HeightField(words, MOST_HEIGHT_M, self)
        self.drop = HeightField(words, MOST_HEIGHT_M, self)
        none = self.tr("as measured")
        for field in (self.official, self.climb, self.drop):
            field.setSpecialValueText(none)
        self.official.set_metres(course.official_m or 0.0)
        self.climb.set_metres(course.official_climb_m or 0.0)
        self.drop.set_metres(course.official_drop_m or 0.0)
        self.laps = QSpinBox(self)
        self.laps.setRange(2, MOST_LAPS)
        align_text(self.laps)
        measured = build_profile(course)
        line = self.tr("Measured on the line: {0}; climb {1}, drop {2} as they count now.").format(
            words.distance(line_length_m(course.line), 2),
            words.height(measured.ascent_m),
            words.height(measured.descent_m),
        )
        pages: list[tuple[list[tuple[str, QWidget]], str]] = [
            (
                [
                    (self.tr("Official &distance"), self.official),
                    (self.tr("Official &climb"), self.climb),
                    (self.tr("Official d&rop"), self.drop),
                ],
                line,
            ),
            ([(self.tr("From"), self.start), (self.tr("To"), self.end)], ""),
            ([], self.tr("Cutoffs are dropped: they belong to the way it was.")),
            ([(self.tr("Laps"), self.laps)], self.tr("Aid stations come again in every lap.")),
            ([], self.tr("Back the same way from the finish to the start.")),
            ([], self.tr("The next leg begins where this course ends.")),
        ]
        for rows, note in pages:
            self.pages.addWidget(self._page(rows, note))
        for spin in (self.start, self.end, self.official, self.climb, self.drop, self.laps):
            spin.valueChanged.connect(self.look)

    def _page(self, rows: list[tuple[str, QWidget]], note: str) -> QWidget:
        page = QWidget(self)
        form = QFormLayout(page)
        form.setContentsMargins(0, 0, 0, 0)
        for text, field in rows:
            field.setAccessibleName(text.replace("&", ""))
            form.addRow(text, field)
        if note:
            label = QLabel(note, page)
            set_topic(label, "course shape")
            label.setWordWrap(True)
            form.addRow(label)
        return page

    def _lay_out(self) -> None:
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(self.deed)
        box.addWidget(self.pages)
        box.addWidget(self.profile, 1)
        box.addWidget(self._said)
        buttons = QDialogButtonBox(self)
        take = buttons.addButton(self.tr("&Take it"), QDialogButtonBox.ButtonRole.AcceptRole)
        take.setDefault(True)
        buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self.take)
        buttons.rejected.connect(self.reject)
        box.addWidget(buttons)

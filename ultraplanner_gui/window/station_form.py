"""The form of one aid station: where it is, its cutoff, the stop there, and the way out."""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, Qt, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.compound import ChangePinnedStation
from ultraplanner_gui.edits.course import LONGEST_STOP_S, ChangeStation
from ultraplanner_gui.edits.course_shape import PinStation
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.course import AidStation, CutoffKind, IfStop, Kit, Offer, StopKind
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.fields import DistanceField, DurationField
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.wording import course_names
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 760.0


def _name(text: str) -> str:
    return QCoreApplication.translate(course_names.CONTEXT, text)


class StationForm(QDialog):
    """All there is to say of one station; sent, it is one step that can be undone."""

    def __init__(
        self, document: Document, key: str, words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._document, self._words = document, words
        course = document.project.course
        assert course is not None
        self._station = course.station(key)
        self._was_pinned = course.is_pinned(self._station)
        self.setWindowTitle(self.tr("Aid station"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "aid station")
        self._make_fields(course.length_m)
        left, right = FormColumn(self), FormColumn(self)
        self._fill_left(left)
        self._fill_right(right)
        columns = QHBoxLayout()
        columns.setSpacing(round(theme().px(Space.EDGE)))
        columns.addWidget(left, 1)
        columns.addWidget(right, 1)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addLayout(columns)
        note = QLabel(self.tr("N&ote"), self)
        note.setBuddy(self.note)
        self.note.setAccessibleName(self.tr("Note"))
        set_topic(self.note, "aid station")
        box.addWidget(note)
        box.addWidget(self.note)
        self._trouble = QLabel("", self)
        self._trouble.setWordWrap(True)
        dress(self._trouble, Pt.TEXT, theme().colours.clay)
        box.addWidget(self._trouble)
        buttons = QDialogButtonBox(self)
        buttons.addButton(self.tr("C&hange"), QDialogButtonBox.ButtonRole.AcceptRole).setDefault(
            True
        )
        buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self.send)
        buttons.rejected.connect(self.reject)
        box.addWidget(buttons)
        at_least(self, theme().px(WIDTH_PX))
        self.stop_kind.currentIndexChanged.connect(self._on_stop_kind)
        self._on_stop_kind()

    def changed(self) -> AidStation:
        """Return the station as the fields have it; PlanError if one cannot be read."""
        for field in (self.at,):
            field.interpretText()
        self.stop.take_typed()
        race, text = self._document.project.race, self.cutoff.text().strip()
        cutoff_s = reading.read_race_time(text, race, self._words) if text else None
        shown_s = self._station.cutoff_s
        if shown_s is not None and text == self._words.plain().clock(race.clock(shown_s)):
            cutoff_s = shown_s
        at_m = self._station.at_m if self.at.value() == self._shown_at else self.at.metres
        ends = (self.way_out, self.fetched_by, self.takes, self.number)
        return replace(
            self._station,
            name=self.name.text().strip(),
            at_m=at_m,
            cutoff_s=cutoff_s,
            cutoff_kind=CutoffKind(self.cutoff_kind.currentData()),
            stop_s=self.stop.value_s or 0.0,
            stop_kind=StopKind(self.stop_kind.currentData()),
            offers=tuple(o for o in Offer if self.offers[o].isChecked()),
            kit=tuple(k for k in Kit if self.kit[k].isChecked()),
            pacer_from=self.pacer.isChecked(),
            access=self.access.text().strip(),
            if_stop=IfStop(*(field.text().strip() for field in ends)),
            note=self.note.toPlainText().strip(),
        )

    @Slot()
    def send(self) -> None:
        """Change the station, or say what is wrong."""
        try:
            edit = self._edit(self.changed())
            edit.apply(self._document.project)
        except PlanError as error:
            self._trouble.setText(self._words.say(error.message))
            return
        self._document.perform(edit)
        self.accept()

    def _edit(self, station: AidStation) -> Edit:
        """Return the one edit; a pinned place keeps its ground and takes the distance typed."""
        is_pinned = self.pinned.isChecked()
        if not is_pinned and not self._was_pinned:
            return ChangeStation(station)
        stays = replace(station, at_m=self._station.at_m)
        edits: list[Edit] = [ChangeStation(stays)]
        if is_pinned:
            edits.append(PinStation(station.key, station.at_m))
        else:
            edits.append(PinStation(station.key, None))
        return ChangePinnedStation(tuple(edits))

    def _make_fields(self, length_m: float) -> None:
        station, words = self._station, self._words
        self.name = QLineEdit(station.name, self)
        self.at = DistanceField(words, 0.0, length_m, 2, self)
        self.at.set_metres(station.at_m)
        self._shown_at = self.at.value()
        self.pinned = QCheckBox(self.tr("&Pinned: the handbook says so, the ground stays"), self)
        self.pinned.setChecked(self._was_pinned)
        self.cutoff = QLineEdit(self)
        if station.cutoff_s is not None:
            race = self._document.project.race
            self.cutoff.setText(words.plain().clock(race.clock(station.cutoff_s)))
        self.cutoff.setPlaceholderText(self.tr("Sat 20:30, 14 h 30, or none"))
        self.cutoff_kind = self._choice(course_names.CUTOFFS, station.cutoff_kind)
        self.stop = DurationField(words, 0.0, LONGEST_STOP_S, True, self)
        self.stop.set_value(station.stop_s or None)
        self.stop_kind = self._choice(course_names.stops(station.stop_s), station.stop_kind)
        self.stop.value_changed.connect(self._on_stop)
        self.offers = {o: QCheckBox(_name(t), self) for o, t in course_names.OFFERS.items()}
        self.kit = {k: QCheckBox(_name(t), self) for k, t in course_names.KIT.items()}
        for offer, tick in self.offers.items():
            tick.setChecked(offer in station.offers)
        for kit, tick in self.kit.items():
            tick.setChecked(kit in station.kit)
        self.pacer = QCheckBox(self.tr("A pace&r may come along from here"), self)
        self.pacer.setChecked(station.pacer_from)
        self.access = QLineEdit(station.access, self)
        out = station.if_stop
        self.way_out, self.fetched_by = (
            QLineEdit(out.way_out, self),
            QLineEdit(out.fetched_by, self),
        )
        self.takes, self.number = QLineEdit(out.takes, self), QLineEdit(out.number, self)
        self.note = QPlainTextEdit(station.note, self)
        self.note.setTabChangesFocus(True)
        self.note.setFixedHeight(4 * self.note.fontMetrics().height())

    def _choice(self, names: dict[CutoffKind, str] | dict[StopKind, str], now: object) -> QComboBox:
        field = QComboBox(self)
        for value, text in names.items():
            field.addItem(_name(text), value)
            if value is now:
                field.setCurrentIndex(field.count() - 1)
        return field

    def _fill_left(self, column: FormColumn) -> None:
        column.add_head(self.tr("Place, cutoff and stop"))
        column.add(self.tr("&Name"), self.name, "aid station")
        column.add(self.tr("&At"), self.at, "aid station")
        column.add_ticks(self.pinned)
        column.add(self.tr("C&utoff"), self.cutoff, "cutoff")
        column.add(self.tr("The cutoff &is"), self.cutoff_kind, "cutoff")
        column.add(self.tr("S&top"), self.stop, "planned stop")
        column.add(self.tr("&Stop to"), self.stop_kind, "planned stop")
        self._sleep = column.add_note("")
        dress(self._sleep, Pt.LABEL, theme().colours.clay)
        column.add_note(self.tr("What is there"))
        offers = list(self.offers.values())
        column.add_ticks(*offers[:3])
        column.add_ticks(*offers[3:])
        column.end()

    def _fill_right(self, column: FormColumn) -> None:
        column.add_head(self.tr("Crew, kit, and if I stop here"))
        column.add_note(self.tr("Changed or taken up here"))
        kit = list(self.kit.values())
        column.add_ticks(*kit[:3])
        column.add_ticks(*kit[3:])
        column.add_ticks(self.pacer)
        column.add(self.tr("How the cre&w gets here"), self.access, "aid station")
        column.add_note(self.tr("If I stop here"))
        column.add(self.tr("Wa&y out"), self.way_out, "aid station")
        column.add(self.tr("Who &fetches me"), self.fetched_by, "aid station")
        column.add(self.tr("How &long it takes"), self.takes, "aid station")
        column.add(self.tr("Nu&mber to call"), self.number, "aid station")
        column.end()

    @Slot(object)
    def _on_stop(self, stop_s: float | None) -> None:
        """Name the kinds as they are called with the stop now typed."""
        for place, text in enumerate(course_names.stops(stop_s or 0.0).values()):
            self.stop_kind.setItemText(place, _name(text))

    @Slot()
    def _on_stop_kind(self) -> None:
        is_sleep = self.stop_kind.currentData() == StopKind.SLEEP
        self._sleep.setText(
            self.tr(
                "Tell your crew when to wake you, keep warm, and do not drive afterwards without "
                "having slept. Lying down and getting going again take time too."
            )
            if is_sleep
            else ""
        )
        self._sleep.setVisible(is_sleep)

"""One form for everything beside running: who I am, the crew, stations, lists, hard stretches."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace
from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QLineEdit,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.logistics import LONGEST_LINE, ChangeLogistics
from ultraplanner_gui.plan.course import AidStation, IfStop
from ultraplanner_gui.plan.logistics import (
    BagLine,
    CrewMember,
    Identity,
    IfThen,
    Logistics,
    PlaceNotes,
)
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.line_fields import LinesField, RowsField

WIDTH_PX, HEIGHT_PX = 720.0, 620.0


class CrewForm(QDialog):
    """Crew and lists of *project*; *sent* takes the edit and returns what is wrong with it."""

    def __init__(
        self,
        project: Project,
        sent: Callable[[ChangeLogistics], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._sent, self._project = sent, project
        stations = project.course.stations if project.course is not None else ()
        self.setWindowTitle(self.tr("Crew and lists"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "crew and lists")
        plan = project.logistics
        self.who = _WhoPage(project, self)
        self.crew = _CrewPage(plan, self)
        self.places = _PlacesPage(plan, stations, self)
        self.lists = _ListsPage(project, self)
        self.hard = _HardPage(plan, stations, self)
        self.pages = QTabWidget(self)
        self.pages.addTab(self.who, self.tr("Who I am"))
        self.pages.addTab(self.crew, self.tr("Crew"))
        self.pages.addTab(self.places, self.tr("At the stations"))
        self.pages.addTab(self.lists, self.tr("Kit and lists"))
        self.pages.addTab(self.hard, self.tr("Hard stretches"))
        self._trouble = QLabel(self)
        self._trouble.setWordWrap(True)
        dress(self._trouble, Pt.TEXT, theme().colours.clay)
        buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.addWidget(self.pages, 1)
        box.addWidget(self._trouble)
        box.addWidget(buttons)
        self._trouble.hide()
        self.resize(round(theme().px(WIDTH_PX)), round(theme().px(HEIGHT_PX)))

    def edit(self) -> ChangeLogistics:
        """Return what is in the fields."""
        self.places.take()
        places = self.places.logistics
        plan = replace(
            places,
            who=self.who.identity(),
            crew=self.crew.members(),
            drives_home=self.crew.home.text().strip(),
            ask=self.crew.ask.lines,
            bag_lines=(
                *(line for line in places.bag_lines if line.station),
                *(BagLine("", text) for text in self.lists.finish_bag.lines),
            ),
            packing=self.lists.packing.lines,
            shopping=self.lists.shopping.lines,
            if_then=self.hard.lines(),
            cues=self.hard.cues.lines,
        )
        return ChangeLogistics(
            plan, self.lists.kit.lines, self.who.emergency.text().strip(), self.places.notes()
        )

    def accept(self) -> None:
        """Hand over what was written; stay open and say why if it cannot be taken."""
        trouble = self._sent(self.edit())
        self._trouble.setText(trouble)
        self._trouble.setVisible(bool(trouble))
        if not trouble:
            super().accept()


class _Page(QWidget):
    def __init__(self, topic: str, parent: QWidget) -> None:
        super().__init__(parent)
        set_topic(self, topic)
        self.rows = QFormLayout(self)
        self.rows.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        self.rows.setVerticalSpacing(Space.NEAR)

    def add(self, label: str, field: QWidget) -> None:
        """Add *field* behind its label."""
        field.setAccessibleName(label.replace("&", ""))
        self.rows.addRow(label, field)

    def line(self, text: str) -> QLineEdit:
        """Return a field for one line with *text* in it."""
        field = QLineEdit(text, self)
        field.setMaxLength(LONGEST_LINE)
        return field


class _WhoPage(_Page):
    def __init__(self, project: Project, parent: QWidget) -> None:
        super().__init__("who I am", parent)
        who = project.logistics.who
        self.name, self.number = self.line(who.full_name), self.line(who.number)
        self.born, self.call = self.line(who.born), self.line(who.call)
        self.emergency = self.line(project.race.emergency)
        self.medical = LinesField(who.medical, self)
        self.call.setPlaceholderText(self.tr("name and number of someone at home"))
        self.medical.setPlaceholderText(self.tr("allergies, medicines, blood group, one to a line"))
        self.add(self.tr("&Full name"), self.name)
        self.add(self.tr("Race &number"), self.number)
        self.add(self.tr("&Born"), self.born)
        self.add(self.tr("&Call"), self.call)
        self.add(self.tr("Race &emergency"), self.emergency)
        self.add(self.tr("&Medical"), self.medical)

    def identity(self) -> Identity:
        """Return who the runner is."""
        return Identity(
            full_name=self.name.text().strip(),
            number=self.number.text().strip(),
            born=self.born.text().strip(),
            call=self.call.text().strip(),
            medical=self.medical.lines,
        )


class _CrewPage(_Page):
    def __init__(self, plan: Logistics, parent: QWidget) -> None:
        super().__init__("crew sheet", parent)
        heads = (self.tr("Name"), self.tr("Number"), self.tr("What they do"))
        self.team = RowsField(heads, [(h.name, h.number, h.role) for h in plan.crew], self)
        self.home = self.line(plan.drives_home)
        self.ask = LinesField(plan.ask, self)
        self.home.setPlaceholderText(self.tr("who has slept"))
        self.add(self.tr("&Crew"), self.team)
        self.add(self.tr("&Drives home"), self.home)
        self.add(self.tr("&Ask everywhere"), self.ask)

    def members(self) -> tuple[CrewMember, ...]:
        """Return the crew."""
        return tuple(CrewMember(*row) for row in self.team.filled)


class _PlacesPage(_Page):
    """One station at a time; what is typed is taken when another is chosen."""

    def __init__(self, plan: Logistics, stations: tuple[AidStation, ...], parent: QWidget) -> None:
        super().__init__("crew sheet", parent)
        self.logistics = plan
        self._stations = {station.key: station for station in stations}
        self._key = stations[0].key if stations else ""
        self.which = QComboBox(self)
        for station in stations:
            self.which.addItem(station.name, station.key)
        self.access, self.who = self.line(""), self.line("")
        self.hand_over, self.ask, self.bag = (LinesField((), self) for _ in range(3))
        self.way_out, self.fetched_by = self.line(""), self.line("")
        self.takes, self.number = self.line(""), self.line("")
        self.add(self.tr("&Station"), self.which)
        self.add(self.tr("&Way there"), self.access)
        self.add(self.tr("Wh&o comes"), self.who)
        self.add(self.tr("&Hand over"), self.hand_over)
        self.add(self.tr("&Ask here"), self.ask)
        self.add(self.tr("In the &bag"), self.bag)
        self.add(self.tr("If I stop: wa&y out"), self.way_out)
        self.add(self.tr("&Fetched by"), self.fetched_by)
        self.add(self.tr("&Takes"), self.takes)
        self.add(self.tr("&Number"), self.number)
        self.setEnabled(bool(stations))
        self._show()
        self.which.currentIndexChanged.connect(self._on_chosen)

    def take(self) -> None:
        """Take over what stands in the fields for the station shown."""
        if not self._key:
            return
        visit = replace(
            self.logistics.visit(self._key),
            who=self.who.text().strip(),
            hand_over=self.hand_over.lines,
            ask=self.ask.lines,
        )
        others = tuple(line for line in self.logistics.bag_lines if line.station != self._key)
        bag = tuple(BagLine(self._key, text) for text in self.bag.lines)
        if bag != tuple(x for x in self.logistics.bag_lines if x.station == self._key):
            self.logistics = replace(self.logistics, bag_lines=(*others, *bag))
        if visit != self.logistics.visit(self._key):
            self.logistics = self.logistics.with_visit(visit)
        fields = (self.way_out, self.fetched_by, self.takes, self.number)
        self._stations[self._key] = replace(
            self._stations[self._key],
            access=self.access.text().strip(),
            if_stop=IfStop(*(field.text().strip() for field in fields)),
        )

    def notes(self) -> tuple[PlaceNotes, ...]:
        """Return the notes on every station."""
        return tuple(PlaceNotes(s.key, s.access, s.if_stop) for s in self._stations.values())

    def _show(self) -> None:
        station = self._stations.get(self._key)
        if station is None:
            return
        visit, stop = self.logistics.visit(self._key), station.if_stop
        texts = (
            (self.access, station.access),
            (self.who, visit.who),
            (self.way_out, stop.way_out),
            (self.fetched_by, stop.fetched_by),
            (self.takes, stop.takes),
            (self.number, stop.number),
        )
        for field, text in texts:
            field.setText(text)
        self.hand_over.set_lines(visit.hand_over)
        self.ask.set_lines(visit.ask)
        self.bag.set_lines(self.logistics.bag(self._key))

    @Slot()
    def _on_chosen(self) -> None:
        self.take()
        self._key = str(self.which.currentData())
        self._show()


class _ListsPage(_Page):
    def __init__(self, project: Project, parent: QWidget) -> None:
        super().__init__("shopping and packing", parent)
        plan = project.logistics
        self.kit = LinesField(project.race.mandatory_kit, self)
        self.packing, self.shopping = (
            LinesField(plan.packing, self),
            LinesField(plan.shopping, self),
        )
        self.finish_bag = LinesField(plan.bag(""), self)
        self.kit.setPlaceholderText(self.tr("what the race rules ask for, one to a line"))
        self.add(self.tr("&Mandatory kit"), self.kit)
        self.add(self.tr("To &pack besides"), self.packing)
        self.add(self.tr("To &buy besides food"), self.shopping)
        self.add(self.tr("Bag at the &finish"), self.finish_bag)


class _HardPage(_Page):
    def __init__(self, plan: Logistics, stations: tuple[AidStation, ...], parent: QWidget) -> None:
        super().__init__("hard stretches", parent)
        self._names = {station.key: station.name for station in stations}
        self._tried = {(line.when, line.then): line.tried for line in plan.if_then}
        heads = (self.tr("If"), self.tr("then"), self.tr("on the way to"))
        rows = [(x.when, x.then, self._names.get(x.station, "")) for x in plan.if_then]
        self.table = RowsField(heads, rows, self)
        self.cues = LinesField(plan.cues, self)
        self.add(self.tr("&If … then"), self.table)
        self.add(self.tr("&Words to myself"), self.cues)

    def lines(self) -> tuple[IfThen, ...]:
        """Return the lines; a place that is no station counts as anywhere."""
        keys = {name.casefold(): key for key, name in self._names.items()}
        return tuple(
            IfThen(when, then, keys.get(place.casefold(), ""), self._tried.get((when, then), ()))
            for when, then, place in self.table.filled
        )

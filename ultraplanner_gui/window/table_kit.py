"""The table of the mandatory kit, ticked with where it is."""

from __future__ import annotations

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.head import TickKit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.logistics import KitPlace, PackedKit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, is_yes, say
from ultraplanner_gui.window.table_spec import TableSpec
from ultraplanner_gui.wording.words import NONE, Words

PLACES = {
    KitPlace.BODY: QT_TRANSLATE_NOOP("Tables", "on the body"),
    KitPlace.VEST: QT_TRANSLATE_NOOP("Tables", "in the vest"),
    KitPlace.BAG: QT_TRANSLATE_NOOP("Tables", "in a drop bag"),
}


class KitRow(Value, frozen=True):
    """One piece of kit; `packed` None until it is ticked."""

    key: str
    item: str
    packed: PackedKit | None
    project: Project

    def tick(self, is_packed: bool, place: KitPlace | None = None, station: str = "") -> TickKit:
        """Return the edit that ticks it, where it was unless said."""
        now = self.packed or PackedKit(self.item)
        at = now.place if place is None else place
        where = station if at is KitPlace.BAG else ""
        return TickKit(self.item, is_packed, at, where)


def kit_rows(outlook: Outlook) -> tuple[KitRow, ...]:
    """Return the mandatory kit in the order of its list."""
    packed = {p.item: p for p in outlook.project.logistics.packed}
    return tuple(
        KitRow(f"kit-{number}", item, packed.get(item), outlook.project)
        for number, item in enumerate(dict.fromkeys(outlook.project.race.mandatory_kit))
    )


def _tick(row: KitRow, text: str, words: Words) -> Edit | None:
    is_packed = is_yes(text)
    if is_packed is None:
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "Type yes or no."))
    return row.tick(is_packed, station=row.packed.station if row.packed else "")


def where_text(row: KitRow, words: Words) -> str:
    """Return where a piece of kit is, "–" until it is ticked."""
    if row.packed is None:
        return NONE
    if row.packed.place is not KitPlace.BAG:
        return say(PLACES[row.packed.place])
    course = row.project.course
    names = {s.key: s.name for s in course.stations} if course is not None else {}
    return names.get(row.packed.station, say(PLACES[KitPlace.BAG]))


def _choices(row: KitRow, words: Words) -> tuple[str, ...]:
    course = row.project.course
    names = [s.name for s in course.stations] if course is not None else []
    return tuple(dict.fromkeys((*map(say, PLACES.values()), *names)))


def _place(row: KitRow, text: str, words: Words) -> Edit | None:
    wanted = text.strip().casefold()
    if wanted in ("", NONE):
        return row.tick(False)
    for place, name in PLACES.items():
        if say(name).casefold() == wanted:
            return row.tick(True, place)
    course = row.project.course
    for station in course.stations if course is not None else ():
        if station.name.casefold() == wanted:
            return row.tick(True, KitPlace.BAG, station.key)
    raise PlanError(
        QT_TRANSLATE_NOOP("Plan", "Kit is on the body, in the vest, or in the bag of a station.")
    )


KIT: TableSpec[KitRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Mandatory kit"),
    kind="",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Kit"),
            text=lambda row, words: row.item,
            is_wide=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Packed"),
            text=lambda row, words: "",
            value=lambda row: row.packed is not None,
            parse=_tick,
            is_checked=lambda row: row.packed is not None,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Where it is"),
            text=where_text,
            parse=_place,
            choices=_choices,
        ),
    ),
    rows=kit_rows,
    empty=lambda outlook: QT_TRANSLATE_NOOP(
        "Tables", "No kit is on the list. Edit menu, Crew and lists, Kit and lists."
    ),
    hint=QT_TRANSLATE_NOOP(
        "Tables",
        "Tick what is packed and say where it is. The rules of the race count, not this list.",
    ),
    title=lambda row, words: row.item,
)

"""The table of aid stations: where they are, their cutoffs, planned stops and what is there."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.edits.course import AddStation, ChangeStation, RemoveStation
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import AidStation, Offer, StopKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import NO, YES, Column, say
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_sections import FINISH, NO_COURSE
from ultraplanner_gui.window.table_spec import CellOf, TableSpec, distance_unit, one_line, unit
from ultraplanner_gui.wording import course_names
from ultraplanner_gui.wording.words import NONE, Words

#: No station has an empty key, so that the finish can stand in the same table.
FINISH_KEY = ""
NAME = QT_TRANSLATE_NOOP("Tables", "Aid station")
AT = QT_TRANSLATE_NOOP("Tables", "At")


class StationRow(Value, frozen=True):
    """One aid station, or the finish, and the race time of arrival there."""

    key: str
    station: AidStation
    race: Race
    length_m: float
    arrive_s: float | None

    @property
    def is_finish(self) -> bool:
        """Whether this is the finish, which stands here for reading only."""
        return self.key == FINISH_KEY


def station_rows(outlook: Outlook) -> tuple[StationRow, ...]:
    """Return every aid station in course order, the finish last."""
    course, race, target = outlook.project.course, outlook.project.race, outlook.target
    if course is None:
        return ()
    finish = AidStation(FINISH_KEY, "", course.length_m, race.limit_s)
    return tuple(
        StationRow(
            station.key,
            station,
            race,
            course.length_m,
            None if target is None else target.arrival_s(station.at_m),
        )
        for station in (*course.stations, finish)
    )


def _change(
    field: str, read: Callable[[str, Words], object]
) -> Callable[[StationRow, str, Words], Edit | None]:
    def parse(row: StationRow, text: str, words: Words) -> Edit | None:
        return ChangeStation(replace(row.station, **{field: read(text, words)}))

    return parse


def _read_place(row: StationRow, text: str, words: Words) -> Edit | None:
    at_m = reading.check_within(reading.read_distance(text, words), row.length_m)
    return ChangeStation(replace(row.station, at_m=at_m))


def _read_cutoff(duration_first: bool) -> Callable[[StationRow, str, Words], Edit | None]:
    def parse(row: StationRow, text: str, words: Words) -> Edit | None:
        cutoff_s = reading.read_race_time(text, row.race, words, duration_first) if text else None
        return ChangeStation(replace(row.station, cutoff_s=cutoff_s))

    return parse


def _text(text: str, words: Words) -> str:
    return text


def _offers(text: str, words: Words) -> tuple[Offer, ...]:
    return reading.read_offers(text)


def _stop_names(stop_s: float) -> dict[str, str]:
    return {
        kind.value: QCoreApplication.translate(course_names.CONTEXT, text)
        for kind, text in course_names.stops(stop_s).items()
    }


def _stop_kind(row: StationRow, words: Words) -> str:
    station = row.station
    return NONE if row.is_finish else _stop_names(station.stop_s)[station.stop_kind]


def _read_stop_kind(row: StationRow, text: str, words: Words) -> Edit | None:
    names, none = _stop_names(row.station.stop_s), StopKind.PASS.value
    # Copied from a row without a stop into one with it, or the other way round.
    others = {_stop_names(stop_s)[none].casefold() for stop_s in (0.0, 1.0)}
    kind = StopKind(none if text.casefold() in others else reading.read_choice(text, names))
    return ChangeStation(replace(row.station, stop_kind=kind))


def _read_pacer(row: StationRow, text: str, words: Words) -> Edit | None:
    return ChangeStation(replace(row.station, pacer_from=reading.read_tick(text)))


def _is_station(row: StationRow) -> bool:
    return not row.is_finish


def _title(row: StationRow, words: Words) -> str:
    return say(FINISH) if row.is_finish else one_line(row.station.name)


def _clock(row: StationRow, at_s: float | None, words: Words) -> str:
    return NONE if at_s is None else words.clock(row.race.clock(at_s))


def _stop(row: StationRow, words: Words) -> str:
    minutes = row.station.stop_s / reading.S_PER_MIN
    has_none = row.is_finish or not minutes
    return NONE if has_none else words.number(minutes, 0 if minutes == round(minutes) else 1)


COLUMNS: tuple[Column[StationRow], ...] = (
    Column(
        NAME,
        text=_title,
        parse=_change("name", _text),
        can_edit=_is_station,
    ),
    Column(
        AT,
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.station.at_m, 1),
        value=lambda row: row.station.at_m,
        parse=_read_place,
        can_edit=_is_station,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Arrive"),
        text=lambda row, words: _clock(row, row.arrive_s, words),
        value=lambda row: row.arrive_s,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "When the target brings you there."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Cutoff"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "clock")),
        text=lambda row, words: _clock(row, row.station.cutoff_s, words),
        value=lambda row: row.station.cutoff_s,
        parse=_read_cutoff(duration_first=False),
        can_edit=_is_station,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables",
            "Sat 20:30, or 20:30 for the first after the start, or 14 h 30 of race time; empty "
            "for none. The limit at the finish is set under Race and runner.",
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Cutoff after"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "race time")),
        text=lambda row, words: words.duration(row.station.cutoff_s),
        value=lambda row: row.station.cutoff_s,
        parse=_read_cutoff(duration_first=True),
        can_edit=_is_station,
        copied=lambda row: reading.hours_and_minutes(row.station.cutoff_s),
        copied_unit="h:mm",
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "The same, counted from the start."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Planned stop"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "min")),
        text=_stop,
        value=lambda row: None if row.is_finish else row.station.stop_s,
        parse=_change("stop_s", reading.read_minutes),
        can_edit=_is_station,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Stop to"),
        text=_stop_kind,
        parse=_read_stop_kind,
        choices=lambda row, words: tuple(_stop_names(row.station.stop_s).values()),
        can_edit=_is_station,
        help_text=QT_TRANSLATE_NOOP("Tables", "What the stop is for."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Pacer"),
        text=lambda row, words: "",
        is_checked=lambda row: row.station.pacer_from,
        copied=lambda row: "" if row.is_finish else say(YES if row.station.pacer_from else NO),
        parse=_read_pacer,
        can_edit=_is_station,
        help_text=QT_TRANSLATE_NOOP("Tables", "Whether a pacer may come along from here."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "What is there"),
        text=lambda row, words: reading.offers_text(row.station.offers),
        parse=_change("offers", _offers),
        can_edit=_is_station,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "Water, food, drop bag, crew, medical, with commas between."
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Note"),
        text=lambda row, words: one_line(row.station.note),
        parse=_change("note", _text),
        can_edit=_is_station,
        is_wide=True,
    ),
)


def _add(outlook: Outlook, current: StationRow | None) -> Edit | None:
    """Return the edit that adds a station after the current one, else in the longest section."""
    course = outlook.project.course
    if course is None:
        return None
    gaps = list(pairwise((0.0, *course.section_ends())))
    start_m = current.station.at_m if current is not None and not current.is_finish else None
    low, high = next((g for g in gaps if g[0] == start_m), max(gaps, key=lambda g: g[1] - g[0]))
    return AddStation(
        say(QT_TRANSLATE_NOOP("Tables", "New station")), round((low + high) / 200.0) * 100.0
    )


def _add_line(outlook: Outlook, cell: CellOf, words: Words) -> Edit:
    """Return the edit that adds the station *cell* tells of where it lies."""
    course = outlook.project.course
    if course is None or not (cell(NAME) and cell(AT)):
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "A new aid station needs its name and where it is.")
        )
    at_m = reading.check_within(reading.read_distance(cell(AT), words), course.length_m)
    return AddStation(cell(NAME), at_m)


def _remove(row: StationRow) -> Edit | None:
    return None if row.is_finish else RemoveStation(row.key)


def _empty(outlook: Outlook) -> str:
    return NO_COURSE


STATIONS: TableSpec[StationRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Aid stations"),
    kind="station",
    columns=COLUMNS,
    rows=station_rows,
    empty=_empty,
    hint=QT_TRANSLATE_NOOP(
        "Tables", "A cutoff is typed as Sat 20:30, 20:30 or 14 h 30 of race time; empty for none."
    ),
    title=_title,
    add=_add,
    add_tip=QT_TRANSLATE_NOOP("Tables", "Add an aid station after the current one"),
    add_line=_add_line,
    remove=_remove,
    needs_course=True,
)

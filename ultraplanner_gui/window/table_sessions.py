"""The table of training sessions: what is planned, and what was done."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.deeds import easy_run
from ultraplanner_gui.edits.block import (
    AddSession,
    ChangeSession,
    MarkDone,
    MarkMissed,
    MoveSession,
    RemoveSession,
)
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Done, Ground, Kind, Session, weeks_to_go
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_spec import (
    CellOf,
    RowDeed,
    TableSpec,
    distance_unit,
    height_unit,
    one_line,
    unit,
)
from ultraplanner_gui.wording.words import NONE, Words

PLANNED = QT_TRANSLATE_NOOP("Tables", "planned")
DONE = QT_TRANSLATE_NOOP("Tables", "done")
MISSED = QT_TRANSLATE_NOOP("Tables", "missed")
STATES = (PLANNED, DONE, MISSED)
DATE = QT_TRANSLATE_NOOP("Tables", "Date")
KIND = QT_TRANSLATE_NOOP("Tables", "Kind")
DISTANCE = QT_TRANSLATE_NOOP("Tables", "Distance")
TIME = QT_TRANSLATE_NOOP("Tables", "Time")


class SessionRow(Value, frozen=True):
    """One session and the weeks from its week to the race week."""

    key: str
    session: Session
    to_go: int

    @property
    def state(self) -> str:
        """Whether it is planned, done or missed."""
        if self.session.done is not None:
            return DONE
        return MISSED if self.session.missed else PLANNED

    @property
    def done_m(self) -> float | None:
        """The distance done."""
        return self.session.done.distance_m if self.session.done is not None else None

    @property
    def done_s(self) -> float | None:
        """The time it took."""
        return self.session.done.duration_s if self.session.done is not None else None


def session_rows(outlook: Outlook) -> tuple[SessionRow, ...]:
    """Return every session in order of days."""
    project = outlook.project
    race_day, first = project.race.day, project.first_weekday
    return tuple(
        SessionRow(s.key, s, weeks_to_go(s.day, race_day, first)) for s in project.block.sessions
    )


Read = Callable[[str, Words], object]


def _change(field: str, read: Read) -> Callable[[SessionRow, str, Words], Edit | None]:
    """Return a way to parse one figure of what is planned."""

    def parse(row: SessionRow, text: str, words: Words) -> Edit | None:
        return ChangeSession(replace(row.session, **{field: read(text, words)}))

    return parse


def _change_done(field: str, read: Read) -> Callable[[SessionRow, str, Words], Edit | None]:
    """Return a way to parse one figure of what was done; the first one makes the record."""

    def parse(row: SessionRow, text: str, words: Words) -> Edit | None:
        session = row.session
        if not text:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Tables", "Type what was done, or choose planned or missed under State."
                )
            )
        figure = {field: read(text, words)}
        return MarkDone(session.key, replace(_record(session), **figure))

    return parse


def _record(session: Session) -> Done:
    """Return what was done: the record there is, else one as planned."""
    return replace(session, missed=False).actual


def _read_day(row: SessionRow, text: str, words: Words) -> Edit | None:
    return MoveSession(row.key, reading.read_date(text, row.session.day, words))


def _kind_names(is_race: bool) -> dict[str, str]:
    wanted = [kind for kind in Kind if (kind is Kind.RACE) == is_race]
    return {kind: kinds.say(kinds.FULL[kind]) for kind in wanted}


def _read_kind(row: SessionRow, text: str, words: Words) -> Edit | None:
    names = _kind_names(row.session.kind is Kind.RACE)
    kind = Kind(reading.read_choice(text, names))
    return ChangeSession(replace(row.session, kind=kind))


def _ground_names() -> dict[str, str]:
    return {ground: kinds.say(kinds.GROUNDS[ground]) for ground in Ground}


def _read_ground(text: str, words: Words) -> Ground:
    return Ground(reading.read_choice(text, _ground_names()))


def _read_tick(text: str, words: Words) -> bool:
    return reading.read_tick(text)


def _read_note(text: str, words: Words) -> str:
    return text


def _read_state(row: SessionRow, text: str, words: Words) -> Edit | None:
    state = reading.read_choice(text, {name: say(name) for name in STATES})
    if state == row.state:
        return None
    if state == MISSED:
        return MarkMissed(row.key)
    return MarkDone(row.key, _record(row.session) if state == DONE else None)


def _is_movable(row: SessionRow) -> bool:
    return row.session.kind is not Kind.RACE and row.session.done is None


def _is_training(row: SessionRow) -> bool:
    return row.session.kind is not Kind.RACE


def _distance(row: SessionRow, words: Words) -> str:
    session = row.session
    has_none = not session.distance_m and not session.kind.is_run
    return NONE if has_none else words.distance_bare(session.distance_m, 1)


def _carbs(row: SessionRow, words: Words) -> str:
    return words.number(row.session.carb_g_per_h) if row.session.carb_g_per_h else NONE


def _ticks(name: str, help_text: str, field: str) -> Column[SessionRow]:
    return Column(
        name,
        text=lambda row, words: "",
        is_checked=lambda row: getattr(row.session, field),
        parse=_change(field, _read_tick),
        help_text=help_text,
    )


COLUMNS: tuple[Column[SessionRow], ...] = (
    Column(
        DATE,
        text=lambda row, words: row.session.day.isoformat(),
        value=lambda row: row.session.day.toordinal(),
        parse=_read_day,
        can_edit=_is_movable,
        help_text=QT_TRANSLATE_NOOP("Tables", "Year, month, day. 14 Feb or 14/2 will do as well."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Day"),
        text=lambda row, words: words.weekday(row.session.day.weekday()),
        value=lambda row: row.session.day.weekday(),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "To go"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "weeks")),
        text=lambda row, words: words.number(row.to_go),
        value=lambda row: row.to_go,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Weeks to the race; 0 is the race week."),
    ),
    Column(
        KIND,
        text=lambda row, words: kinds.say(kinds.FULL[row.session.kind]),
        parse=_read_kind,
        can_edit=_is_training,
        choices=lambda row, words: tuple(_kind_names(is_race=False).values()),
    ),
    Column(
        DISTANCE,
        unit=distance_unit,
        text=_distance,
        value=lambda row: row.session.distance_m,
        parse=_change("distance_m", reading.read_distance),
        is_figure=True,
    ),
    Column(
        TIME,
        text=lambda row, words: words.duration(row.session.duration_s),
        value=lambda row: row.session.duration_s,
        parse=_change("duration_s", reading.read_duration),
        copied=lambda row: reading.hours_and_minutes(row.session.duration_s),
        copied_unit="h:mm",
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Climb"),
        unit=height_unit,
        text=lambda row, words: words.height_bare(row.session.climb_m),
        value=lambda row: row.session.climb_m,
        parse=_change("climb_m", reading.read_height),
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Drop"),
        unit=height_unit,
        text=lambda row, words: words.height_bare(row.session.drop_m),
        value=lambda row: row.session.drop_m,
        parse=_change("drop_m", reading.read_height),
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Ground"),
        text=lambda row, words: kinds.say(kinds.GROUNDS[row.session.ground]),
        parse=_change("ground", _read_ground),
        choices=lambda row, words: tuple(_ground_names().values()),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Effort"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "of 10")),
        text=lambda row, words: words.number(row.session.effort),
        value=lambda row: row.session.effort,
        parse=_change("effort", reading.read_whole),
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Practice"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "carbs g/h")),
        text=_carbs,
        value=lambda row: row.session.carb_g_per_h,
        parse=_change("carb_g_per_h", reading.read_number),
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Carbohydrate to be taken, to train the gut."),
    ),
    _ticks(
        QT_TRANSLATE_NOOP("Tables", "Fasted"),
        QT_TRANSLATE_NOOP("Tables", "Run before breakfast; easy and short only."),
        "fasted",
    ),
    _ticks(
        QT_TRANSLATE_NOOP("Tables", "Dark"), QT_TRANSLATE_NOOP("Tables", "Run by lamp."), "dark"
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "State"),
        text=lambda row, words: say(row.state),
        value=lambda row: STATES.index(row.state),
        parse=_read_state,
        choices=lambda row, words: tuple(say(state) for state in STATES),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Done"),
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.done_m, 1),
        value=lambda row: row.done_m,
        parse=_change_done("distance_m", reading.read_distance),
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Distance really run; typing one marks it done."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Done in"),
        text=lambda row, words: words.duration(row.done_s),
        value=lambda row: row.done_s,
        parse=_change_done("duration_s", reading.read_duration),
        copied=lambda row: reading.hours_and_minutes(row.done_s),
        copied_unit="h:mm",
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Time really taken; typing one marks it done."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Note"),
        text=lambda row, words: one_line(row.session.note),
        parse=_change("note", _read_note),
        is_wide=True,
    ),
)


def _add(outlook: Outlook, current: SessionRow | None) -> Edit:
    day = outlook.today if current is None else current.session.day
    return AddSession(easy_run(outlook.project, day))


def _add_line(outlook: Outlook, cell: CellOf, words: Words) -> Edit:
    """Return the edit that adds a session on the day of *cell*, an easy run if it says no more."""
    if not cell(DATE):
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "A new session needs its date."))
    day = reading.read_date(cell(DATE), outlook.today, words)
    names = _kind_names(is_race=False)
    kind = Kind(reading.read_choice(cell(KIND), names)) if cell(KIND) else Kind.EASY
    session = replace(easy_run(outlook.project, day), kind=kind)
    if cell(DISTANCE) or cell(TIME):
        session = replace(session, distance_m=0.0, duration_s=0.0)
    return AddSession(session)


def _title(row: SessionRow, words: Words) -> str:
    kind = kinds.say(kinds.FULL[row.session.kind])
    return f"{words.day(row.session.day)}, {kind}"


def _mark_done(row: SessionRow) -> Edit | None:
    return None if row.session.done is not None else MarkDone(row.key, _record(row.session))


def _mark_missed(row: SessionRow) -> Edit | None:
    return None if row.session.missed else MarkMissed(row.key)


def _remove(row: SessionRow) -> Edit:
    return RemoveSession(row.key)


def _first_ahead(outlook: Outlook) -> str:
    sessions = outlook.project.block.sessions
    return next((s.key for s in sessions if s.day >= outlook.today), "")


def _empty(outlook: Outlook) -> str:
    if outlook.project.course is None:
        return QT_TRANSLATE_NOOP(
            "Tables", "No sessions yet. Add one here, or drop a GPX file first."
        )
    return QT_TRANSLATE_NOOP(
        "Tables", "No sessions yet. Add one here, or build the block from the Build-up menu."
    )


SESSIONS: TableSpec[SessionRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Sessions"),
    kind="session",
    columns=COLUMNS,
    rows=session_rows,
    empty=_empty,
    hint=QT_TRANSLATE_NOOP(
        "Tables", "What stands in full ink can be typed over. Ctrl+C copies cells with their heads."
    ),
    title=_title,
    add=_add,
    add_tip=QT_TRANSLATE_NOOP("Tables", "Add an easy run on the day of the current row"),
    add_line=_add_line,
    remove=_remove,
    group=lambda row: row.to_go,
    opens_at=_first_ahead,
    deeds=(
        RowDeed(
            QT_TRANSLATE_NOOP("Tables", "Done"),
            QT_TRANSLATE_NOOP("Tables", "Mark the selected sessions done as planned"),
            _mark_done,
        ),
        RowDeed(
            QT_TRANSLATE_NOOP("Tables", "Missed"),
            QT_TRANSLATE_NOOP("Tables", "Mark the selected sessions missed"),
            _mark_missed,
        ),
    ),
)

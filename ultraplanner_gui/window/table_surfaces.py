"""The table of surfaces: from where to where the course is on what."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.edits.compound import MoveSurface
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.surfaces import PaintSurface
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import Surface, SurfaceSpan
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_sections import NO_COURSE
from ultraplanner_gui.window.table_spec import CellOf, TableSpec, distance_unit
from ultraplanner_gui.wording import course_names
from ultraplanner_gui.wording.words import Words

FROM = QT_TRANSLATE_NOOP("Tables", "From")
TO = QT_TRANSLATE_NOOP("Tables", "To")
SURFACE = QT_TRANSLATE_NOOP("Tables", "Surface")


class SurfaceRow(Value, frozen=True):
    """One stretch of known surface."""

    key: str
    span: SurfaceSpan
    length_m: float


def surface_rows(outlook: Outlook) -> tuple[SurfaceRow, ...]:
    """Return every stretch of known surface in course order."""
    course = outlook.project.course
    if course is None:
        return ()
    return tuple(
        SurfaceRow(f"surface-{number}", span, course.length_m)
        for number, span in enumerate(course.surfaces)
    )


def _named(surface: Surface) -> str:
    return QCoreApplication.translate(course_names.CONTEXT, course_names.SURFACES[surface])


def _names() -> dict[str, str]:
    return {surface.value: _named(surface) for surface in Surface}


def _place(text: str, length_m: float, words: Words) -> float:
    """Return the place typed; the finish as it is written counts as the finish."""
    at_m = reading.read_distance(text, words)
    if text == words.distance_bare(length_m, 1):
        return length_m
    return at_m


def _moved(row: SurfaceRow, start_m: float, end_m: float) -> Edit:
    """Return the edit that puts a stretch elsewhere: what it leaves is unknown."""
    span = row.span
    paint = PaintSurface(start_m, end_m, span.surface)
    return MoveSurface((PaintSurface(span.start_m, span.end_m, Surface.UNKNOWN), paint))


def _read_start(row: SurfaceRow, text: str, words: Words) -> Edit | None:
    if text == words.distance_bare(row.span.start_m, 1):
        return None
    return _moved(row, reading.read_distance(text, words), row.span.end_m)


def _read_end(row: SurfaceRow, text: str, words: Words) -> Edit | None:
    if text == words.distance_bare(row.span.end_m, 1):
        return None
    return _moved(row, row.span.start_m, _place(text, row.length_m, words))


def _read_surface(row: SurfaceRow, text: str, words: Words) -> Edit | None:
    surface = Surface(reading.read_choice(text, _names()))
    return PaintSurface(row.span.start_m, row.span.end_m, surface)


COLUMNS: tuple[Column[SurfaceRow], ...] = (
    Column(
        FROM,
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.span.start_m, 1),
        value=lambda row: row.span.start_m,
        parse=_read_start,
        is_figure=True,
    ),
    Column(
        TO,
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.span.end_m, 1),
        value=lambda row: row.span.end_m,
        parse=_read_end,
        is_figure=True,
    ),
    Column(
        SURFACE,
        text=lambda row, words: _named(row.span.surface),
        parse=_read_surface,
        choices=lambda row, words: tuple(_names().values()),
        is_wide=True,
    ),
)


def _add(outlook: Outlook, current: SurfaceRow | None) -> Edit | None:
    """Return the edit that paints the first stretch of which nothing is known as gravel."""
    course = outlook.project.course
    if course is None:
        return None
    start_m = current.span.end_m if current is not None else 0.0
    for span in course.surfaces:
        if span.start_m <= start_m < span.end_m:
            start_m = span.end_m
    if start_m >= course.length_m:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "The surface is known to the finish. Change a row instead.")
        )
    ahead = (span.start_m for span in course.surfaces if span.start_m > start_m)
    end_m = min(next(ahead, course.length_m), start_m + 1000.0)
    # Not the surface of the stretch before, else the two would be one row.
    before = {span.surface for span in course.surfaces if span.end_m == start_m}
    surface = Surface.SMOOTH_TRAIL if Surface.GRAVEL in before else Surface.GRAVEL
    return PaintSurface(start_m, end_m, surface)


def _add_line(outlook: Outlook, cell: CellOf, words: Words) -> Edit:
    course = outlook.project.course
    if course is None or not (cell(FROM) and cell(TO) and cell(SURFACE)):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Tables", "A stretch needs where it begins, where it ends and on what."
            )
        )
    surface = Surface(reading.read_choice(cell(SURFACE), _names()))
    start_m = reading.read_distance(cell(FROM), words)
    return PaintSurface(start_m, _place(cell(TO), course.length_m, words), surface)


def _remove(row: SurfaceRow) -> Edit | None:
    return PaintSurface(row.span.start_m, row.span.end_m, Surface.UNKNOWN)


def _empty(outlook: Outlook) -> str:
    if outlook.project.course is None:
        return NO_COURSE
    return QT_TRANSLATE_NOOP("Tables", "No surface is known yet. Add a stretch, or paste a table.")


def _title(row: SurfaceRow, words: Words) -> str:
    return f"{_named(row.span.surface)}, {words.distance(row.span.start_m, 1)}"


SURFACES: TableSpec[SurfaceRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Surfaces"),
    kind="",
    columns=COLUMNS,
    rows=surface_rows,
    empty=_empty,
    hint=QT_TRANSLATE_NOOP("Tables", "Unknown ground costs what firm ground does."),
    title=_title,
    add=_add,
    add_tip=QT_TRANSLATE_NOOP("Tables", "Add a stretch of surface after the current one"),
    add_line=_add_line,
    remove=_remove,
    needs_course=True,
)

"""Weeks from afar: each one strip of figures over ground lines, one per run, in the order of days.

A figure is the whole distance, bold for long runs, after the letter of the kind, or over it where
columns are narrow; where even two digits have no room the lines speak alone. A line is the longer
the longer the run, the heavier the harder; behind today what was done is filled, what was missed is
faint.
"""

from __future__ import annotations

import math

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.cells import Tile
from ultraplanner_gui.buildup.tile import MARK_PT, Stage, ground_colour
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.widgets.ground import ink_px, silhouette
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.wording.words import Words

SIDE_PX = 1.5
INK_SHARE = 0.75
LEAST_LINE_PX = 4.0
HIGHEST_LINE_PX = 12.0
ROOMY_PX = 24.0
FAINT = 0.4
#: A lower rest of a cell shows no shape.
LEAST_GROUND_PX = 8.0
TWO_DIGITS = "88"
#: Above and below a figure where three stand one over the other.
TIGHT_PX = 1.0
WIDE_LETTER = "H"
#: Kinds whose figures stand out from afar.
BOLD = (Kind.LONG, Kind.SECOND_LONG, Kind.REHEARSAL, Kind.TUNE_UP, Kind.RACE)


def paint_strip(painter: QPainter, week: QRectF, role: Role) -> None:
    """Draw the ground of one week in its column; weeks that do not load stay empty."""
    c = theme().colours
    strip = week.adjusted(1.0, 1.5, -1.0, -1.5)
    painter.setPen(QPen(c["strong_line" if role is Role.LOADING else "line"], Stroke.HAIR))
    painter.setBrush(c["tile"] if role is Role.LOADING else Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(strip, 2.5, 2.5)


def paint_line(
    painter: QPainter,
    tile: Tile,
    week: QRectF,
    longest_m: float,
    stage: Stage,
    words: Words,
) -> None:
    """Draw one session across the strip of its *week*, *longest_m* as long as that is wide."""
    session, c = tile.session, theme().colours
    room = QRectF(week.left() + 1.5, tile.rect.top(), week.width() - 3.0, tile.rect.height())
    if session.kind is Kind.RACE:
        painter.setPen(QPen(c["clay"], Stroke.THIN))
        painter.setBrush(c["pale_clay"])
        painter.drawRect(room.adjusted(0.5, 0.0, -0.5, 0.0))
    elif session.done is not None:
        painter.fillRect(room, c["pale_teal"])
    if stage.is_landing:
        painter.setPen(QPen(c["teal"], Stroke.THIN, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(room.adjusted(0.5, 0.5, -0.5, -0.5))
        return
    if stage.is_carried:
        painter.setPen(QPen(c["clay"], Stroke.LINE))
        painter.setBrush(c["tile"])
        painter.drawRect(room.adjusted(0.5, 0.5, -0.5, -0.5))
    rest = _paint_figure(painter, session, room, words)
    if _has_letter_below(room) and _whole(session, words):
        rest = _paint_letter(painter, session, rest)
    if rest.height() >= LEAST_GROUND_PX:
        _paint_ground_line(painter, session, rest, longest_m)
    if stage.is_past and session.is_open and session.kind is not Kind.RACE:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(c["clay"])
        painter.drawEllipse(QRectF(room.right() - 3.5, room.top() + 1.5, 3.0, 3.0))


def _paint_figure(painter: QPainter, session: Session, room: QRectF, words: Words) -> QRectF:
    """Write the whole distance, with the letter of the kind if that fits; return what is left.

    What is no run has its letter alone.
    """
    look, c = theme(), theme().colours
    bold = session.kind in BOLD
    metrics = look.metrics(MARK_PT, bold=bold)
    high = metrics.capHeight() + (2.0 if room.height() >= metrics.capHeight() + 2.0 else TIGHT_PX)
    # Letters beside figures of one digit would be a riddle: two fit, or nothing is said.
    least = look.metrics(MARK_PT, bold=True).horizontalAdvance(TWO_DIGITS)
    if high > room.height() or least > room.width() + 1.0:
        return room
    letters, figure = kinds.letters(session.kind), _whole(session, words)
    both = (f"{letters}\N{HAIR SPACE}{figure}", f"{letters}{figure}", figure, letters)
    texts = (figure,) if _has_letter_below(room) else both
    texts = texts if figure else (letters,)
    # Bold says long run by itself: there a letter has to leave room beside it.
    widest = [
        room.width() - 2.0 if bold and len(t) > len(figure) else room.width() + 1.0 for t in texts
    ]
    fits = zip(texts, widest, strict=True)
    text = next((t for t, width in fits if t and metrics.horizontalAdvance(t) <= width), "")
    if not text:
        return room
    rest = QRectF(room)
    if room.height() - high >= LEAST_GROUND_PX:
        others = high if _has_letter_below(room) else 0.0
        spare = min(room.height() - high - others - LEAST_GROUND_PX, 4.0) / 2
        rest.setTop(room.top() + high + spare)
    else:
        rest.setTop(room.bottom())
    line = QRectF(room.left(), room.top() + 1.0, room.width(), rest.top() - room.top() - 1.0)
    is_race, is_faint = session.kind is Kind.RACE, session.missed or not session.kind.is_run
    ink = c["clay"] if is_race else c["soft"] if is_faint else c["ink"]
    draw_text(painter, line, text, ink, look.font(MARK_PT, bold=bold), Align.AlignCenter)
    return rest


def _has_letter_below(room: QRectF) -> bool:
    """Whether a cell is too narrow for a letter before two digits, but high enough for lines.

    The widest of them decide, so that the runs of all weeks are written alike.
    """
    look = theme()
    bold = look.metrics(MARK_PT, bold=True)
    two = bold.horizontalAdvance(TWO_DIGITS)
    is_high = room.height() - 2 * (bold.capHeight() + 2.0) >= LEAST_GROUND_PX
    is_narrow = bold.horizontalAdvance(WIDE_LETTER) + two > room.width() - 2.0
    return is_high and is_narrow and two <= room.width() + 1.0


def _paint_letter(painter: QPainter, session: Session, rest: QRectF) -> QRectF:
    """Write the letter of the kind under its figure; return what is left.

    The race has none: its colour tells it.
    """
    look, letters = theme(), kinds.letters(session.kind)
    high = look.metrics(MARK_PT).capHeight() + 2.0
    line = QRectF(rest.left(), rest.top(), rest.width(), high)
    if letters:
        ink = look.colours["soft" if session.missed else "ink"]
        draw_text(painter, line, letters, ink, look.font(MARK_PT), Align.AlignCenter)
    return rest.adjusted(0.0, high, 0.0, 0.0)


def _whole(session: Session, words: Words) -> str:
    actual = session.done if session.done is not None else session
    has_metres = session.kind.is_run and actual.distance_m > 0.0
    return words.distance_bare(actual.distance_m, 0) if has_metres else ""


def _paint_ground_line(painter: QPainter, session: Session, room: QRectF, longest_m: float) -> None:
    width = room.width() - 2 * SIDE_PX
    height = max(1.0, min(HIGHEST_LINE_PX, room.height() * 0.45, width))
    actual = session.actual if session.done is not None else session
    colour = ground_colour(session)
    if session.missed:
        colour.setAlphaF(FAINT)
    length = max(LEAST_LINE_PX, width * line_share(session, longest_m))
    # A copy: shapes are shared.
    line = QPolygonF(silhouette(session.ground, round(length), round(height)))
    line.translate(room.left() + SIDE_PX, room.center().y() - height / 2)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    share = 1.0 if room.width() >= ROOMY_PX else INK_SHARE
    pen = QPen(colour, share * ink_px(actual.effort))
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.drawPolyline(line)


def line_share(session: Session, longest_m: float) -> float:
    """Return how much of the strip the line of *session* takes, 0 to 1.

    As the square root of the distance, so that short runs can still be seen.
    """
    if not session.kind.is_run or longest_m <= 0.0:
        return 0.0
    distance_m = session.done.distance_m if session.done is not None else session.distance_m
    return min(1.0, math.sqrt(distance_m / longest_m))

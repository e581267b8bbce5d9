"""A session as a tile.

What does not fit is left out in this order: climb and time, marks, the kind's full word down to its
letters, the figure; the ground line stays.
"""

from __future__ import annotations

from typing import NamedTuple

from msgspec.structs import replace
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.plan.block import Done, Ground, Kind, Session
from ultraplanner_gui.widgets.ground import draw_ground
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.wording.words import Words

KIND_PT = Pt.SMALL
FIGURE_PT = Pt.TEXT
MARK_PT = Pt.MARK
ROUND_PX = 3.0
PAD_PX = 4.0
#: A shorter ground line shows no shape.
LEAST_GROUND_PX = 9.0
ROOMY_PX = 52.0
#: Narrower tiles keep their text off their edge by a hair only.
NARROW_PX = 28.0
#: Least width for the kind over the figure.
OVER_PX = 21.0
#: Lower tiles are lines of a list: they share the lines between them.
LIST_PX, TIGHT_PX = 10.0, 8.9
#: Tiles with so much room write the unit of their figure, time and climb too.
WIDE_PX = 74.0
#: Less climb or drop is not worth a word.
TELLING_M = 100.0
FLAT_PX = 2.5
LOW_PX = 18.0
#: Of more effort the ink would be too heavy for a low tile.
MOST_LOW_INK = 5
FOOT_PX, LEAST_FOOT_PX = 7.0, 2.0
LINES_TOP_PX, LINES_FOOT_PX = 1.25, 1.5
#: Share of the room under a line that tails of letters take.
TAIL = 0.8
USUAL_FIGURE = "8.8"
ALMOST_AS_PLANNED = 0.05


class Stage(NamedTuple):
    """Where a session stands: behind today, in the hand, or drawn as its landing place."""

    is_past: bool = False
    is_carried: bool = False
    is_landing: bool = False


def ground_colour(session: Session) -> QColor:
    """Return the hue of the ground line: clay for races, ochre up, sky down, else teal."""
    c = theme().colours
    if session.kind in (Kind.RACE, Kind.TUNE_UP):
        return c["clay"]
    if not session.kind.is_run:
        return c["soft"]
    if session.ground in (Ground.RISING, Ground.STAIRS):
        return c["ochre"]
    return c["sky"] if session.ground is Ground.FALLING else c["teal"]


def paint_tile(
    painter: QPainter,
    rect: QRectF,
    session: Session,
    stage: Stage,
    words: Words,
    spare_px: float = 0.0,
) -> None:
    """Draw *session* in *rect*, text without *spare_px* of its width."""
    look = theme()
    if rect.height() < look.px(LIST_PX):
        box = rect.adjusted(0.5, -0.5, -0.5, 0.5)
    else:
        box = rect.adjusted(0.75, 0.75, -0.75, -0.75)
    paint_box(painter, box, session, stage)
    if stage.is_landing:
        return
    inset = _inset(box.width() - spare_px)
    if box.height() < look.metrics(KIND_PT).ascent() + FLAT_PX:
        flat = box.adjusted(inset, 0.0, -inset - spare_px, 0.0)
        _paint_flat(painter, flat, session, stage, words)
        return
    foot = _foot(box.height())
    line = QRectF(box.left() + inset, box.bottom() - 1.5 - foot, box.width() - 2 * inset, foot)
    room = QRectF(line.left(), box.top(), line.width() - spare_px, line.top() - box.top())
    if room.height() >= _two_lines(KIND_PT) and box.width() >= look.px(OVER_PX):
        _paint_ground_line(painter, line, session)
        _paint_two_lines(painter, room, session, stage, words)
        return
    effort = _effort(session)
    if session.ground is Ground.LEVEL:
        room.setBottom(box.bottom() - 2.0)
    elif box.height() < look.px(LOW_PX):
        # Figures as high up as they go, the ground line as low: else it runs through them.
        line.translate(0.0, 0.5)
        effort = min(effort, MOST_LOW_INK)
        metrics = look.metrics(KIND_PT)
        top = box.top() + LINES_TOP_PX - (metrics.ascent() - metrics.capHeight())
        room = QRectF(room.left(), top, room.width(), metrics.height())
    _paint_ground_line(painter, line, session, effort)
    _paint_one_line(painter, room, session, stage, words)


def _foot(height: float) -> float:
    """Return how high the ground line of a tile so *height* is: less where two lines need it."""
    usual = min(theme().px(FOOT_PX), height * 0.15)
    for_two = height - 1.5 - _two_lines(KIND_PT)
    return for_two if LEAST_FOOT_PX <= for_two < usual else usual


def _inset(width: float) -> float:
    """Return how far the text of a tile so wide stands off its edges."""
    look = theme()
    if width > look.px(ROOMY_PX):
        return look.px(PAD_PX)
    return 2.0 if width >= look.px(NARROW_PX) else 1.0


def _effort(session: Session) -> int:
    return session.actual.effort if session.done is not None else session.effort


def _paint_ground_line(
    painter: QPainter, line: QRectF, session: Session, effort: int | None = None
) -> None:
    colour = ground_colour(session)
    if session.missed:
        colour.setAlphaF(0.45)
    shown = _effort(session) if effort is None else effort
    draw_ground(painter, line, session.ground, shown, colour)


def _paint_flat(
    painter: QPainter, room: QRectF, session: Session, stage: Stage, words: Words
) -> None:
    """Draw a tile too flat for a line under its text: figure and ground line side by side."""
    look, used = theme(), 0.0
    if room.height() >= look.metrics(MARK_PT, bold=True).capHeight() + 1.0:
        used = _paint_one_line(painter, room, session, stage, words)
    foot = min(look.px(FOOT_PX), room.height() * 0.45)
    line = QRectF(room.left() + used, room.bottom() - 2.0 - foot, room.width() - used, foot)
    if line.width() >= look.px(LEAST_GROUND_PX):
        _paint_ground_line(painter, line, session)


def paint_box(painter: QPainter, box: QRectF, session: Session, stage: Stage) -> None:
    """Draw outline and ground of a tile."""
    look = theme()
    c, radius = look.colours, min(look.px(ROUND_PX), box.height() / 4)
    # Of lines that touch letters only a hint is left.
    is_tight = box.height() < look.px(TIGHT_PX)
    pen = QPen(c["line" if is_tight else "strong_line"], Stroke.HAIR)
    fill = QBrush(c["tile"])
    if session.kind is Kind.RACE:
        pen = QPen(c["clay"], Stroke.LINE)
        fill = QBrush(c["pale_clay"] if session.done is not None else c["tile"])
    if stage.is_landing:
        pen = QPen(c["teal"], Stroke.THIN, Qt.PenStyle.DashLine)
        fill = QBrush(Qt.BrushStyle.NoBrush)
    elif stage.is_carried:
        pen = QPen(c["clay"], Stroke.HEAVY)
    elif session.missed:
        pen = QPen(c["line"], Stroke.HAIR)
        fill = QBrush(c["strong_line"], Qt.BrushStyle.BDiagPattern)
    painter.setPen(pen)
    painter.setBrush(fill)
    if session.done is not None and session.kind is not Kind.RACE:
        _paint_done_box(painter, box, radius, session)
        return
    if session.missed and not stage.is_landing:
        painter.setBrush(c["paper"])
        painter.drawRoundedRect(box, radius, radius)
        painter.setBrush(fill)
    painter.drawRoundedRect(box, radius, radius)


def _paint_done_box(painter: QPainter, box: QRectF, radius: float, session: Session) -> None:
    """Fill as much of the tile as was done of what was planned."""
    c = theme().colours
    share = _share_done(session)
    path = QPainterPath()
    path.addRoundedRect(box, radius, radius)
    short = share < 1.0 - ALMOST_AS_PLANNED
    painter.setPen(QPen(c["teal"], Stroke.HAIR) if short else Qt.PenStyle.NoPen)
    painter.setBrush(c["tile"] if short else c["pale_teal"])
    painter.drawPath(path)
    if short:
        painter.save()
        painter.setClipRect(
            QRectF(box.left(), box.top(), box.width() * share, box.height()),
            Qt.ClipOperation.IntersectClip,
        )
        painter.setBrush(c["pale_teal"])
        painter.drawPath(path)
        painter.restore()
    elif share > 1.0 + ALMOST_AS_PLANNED:
        # More than planned: the outline of the plan ends inside the fill.
        planned = QRectF(box.left(), box.top(), box.width() / share, box.height())
        painter.setPen(QPen(c["teal"], Stroke.HAIR))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(planned, radius, radius)


def _share_done(session: Session) -> float:
    done = session.done
    assert done is not None
    if session.kind.is_run and session.distance_m > 0.0:
        return done.distance_m / session.distance_m
    return done.duration_s / session.duration_s if session.duration_s > 0.0 else 1.0


def differs_from_plan(session: Session) -> bool:
    """Whether what was done is clearly more or less than what was planned."""
    return session.done is not None and abs(_share_done(session) - 1.0) > ALMOST_AS_PLANNED


def _two_lines(figure_pt: float) -> float:
    """Return the least height of kind over figure, the tails of the one clear of the other."""
    kind, figure = theme().metrics(KIND_PT), theme().metrics(figure_pt, bold=True)
    tails = kind.descent() * TAIL
    return LINES_TOP_PX + kind.capHeight() + tails + figure.capHeight() + LINES_FOOT_PX


def _paint_two_lines(
    painter: QPainter, room: QRectF, session: Session, stage: Stage, words: Words
) -> None:
    look = theme()
    c = look.colours
    figure_pt = FIGURE_PT if room.height() >= _two_lines(FIGURE_PT) else KIND_PT
    kind_m, figure_m = look.metrics(KIND_PT), look.metrics(figure_pt, bold=True)
    free = max(0.0, room.height() - _two_lines(figure_pt))
    baseline = room.top() + LINES_TOP_PX + free * 0.3 + kind_m.capHeight()
    kind_rect = QRectF(room.left(), baseline - kind_m.ascent(), room.width(), kind_m.height())
    word = _kind_word(session, kind_rect.width())
    used = _paint_symbols(painter, kind_rect, session, word)
    _paint_climb(painter, kind_rect.adjusted(0.0, 0.0, -used, 0.0), session, word, words)
    is_race = session.kind is Kind.RACE
    ink = c["clay"] if is_race else c["soft"] if session.missed else c["ink"]
    draw_text(painter, kind_rect, word, ink, look.font(KIND_PT, bold=is_race))
    baseline += kind_m.descent() * TAIL + free * 0.3 + figure_m.capHeight()
    top = baseline - figure_m.ascent()
    figure_rect = QRectF(room.left(), top, room.width(), figure_m.height())
    _paint_figure(painter, figure_rect, session, stage, words, (ink, figure_pt))


def _paint_figure(
    painter: QPainter,
    rect: QRectF,
    session: Session,
    stage: Stage,
    words: Words,
    pen: tuple[QColor, float],
) -> None:
    look, (ink, size) = theme(), pen
    font, metrics = look.font(size, bold=True), look.metrics(size, bold=True)
    is_wide = rect.width() >= look.px(WIDE_PX)
    text = kinds.figure(session, words)
    if is_wide and session.kind.is_run and _actual(session).distance_m > 0.0:
        text = f"{text}\N{NO-BREAK SPACE}{words.distance_unit}"
    if metrics.horizontalAdvance(text) > rect.width():
        font, metrics = look.font(KIND_PT), look.metrics(KIND_PT)
    if metrics.horizontalAdvance(text) > rect.width() + 1.0:
        text = kinds.brief_figure(session, words)
    width = metrics.horizontalAdvance(text)
    if width > rect.width() + 1.0:
        return
    draw_text(painter, rect, text, ink, font)
    if session.missed:
        y = rect.center().y() + 0.5
        painter.setPen(QPen(ink, Stroke.THIN))
        painter.drawLine(QPointF(rect.left() - 1, y), QPointF(rect.left() + width + 1, y))
    # As if every figure were this wide, so that neighbours write their notes alike.
    taken = max(width, metrics.horizontalAdvance(USUAL_FIGURE)) + look.px(4.0)
    note = _paint_note(painter, rect.adjusted(taken, 0, 0, 0), session, stage, words)
    if is_wide:
        _paint_time(painter, rect.adjusted(taken, 0, -note, 0), session, words)


def _paint_time(painter: QPainter, room: QRectF, session: Session, words: Words) -> None:
    """Write how long a run takes, after its distance."""
    look, time_s = theme(), _actual(session).duration_s
    if not session.kind.is_run or _actual(session).distance_m <= 0.0 or time_s <= 0.0:
        return
    text, room = words.duration(time_s), room.adjusted(look.px(3.0), 0.0, 0.0, 0.0)
    if look.metrics(KIND_PT).horizontalAdvance(text) + look.px(4.0) <= room.width():
        draw_text(painter, room, text, look.colours["soft"], look.font(KIND_PT))


def _paint_climb(
    painter: QPainter, room: QRectF, session: Session, word: str, words: Words
) -> None:
    """Write climb, or drop on falling ground, at the right of the kind's *word*."""
    look, actual = theme(), _actual(session)
    is_down = session.ground is Ground.FALLING
    metres = actual.drop_m if is_down else actual.climb_m
    if room.width() < look.px(WIDE_PX) or metres < TELLING_M:
        return
    text = kinds.say(kinds.DROP if is_down else kinds.CLIMB).format(words.height(metres))
    used = look.metrics(KIND_PT).horizontalAdvance(word) + look.px(6.0)
    if used + look.metrics(MARK_PT).horizontalAdvance(text) <= room.width():
        font = look.font(MARK_PT)
        draw_text(
            painter, room, text, look.colours["soft"], font, Align.AlignRight | Align.AlignVCenter
        )


def _actual(session: Session) -> Done:
    return session.actual if session.done is not None else replace(session, missed=False).actual


def _paint_note(
    painter: QPainter, room: QRectF, session: Session, stage: Stage, words: Words
) -> float:
    """Write the most telling note that fits at the right of *room*; return its width."""
    look = theme()
    for note, colour, bold in _notes(session, stage, words):
        width = look.metrics(MARK_PT, bold=bold).horizontalAdvance(note)
        if width <= room.width():
            _clear_note(painter, room, width, session)
            font = look.font(MARK_PT, bold=bold)
            draw_text(painter, room, note, colour, font, Align.AlignRight | Align.AlignVCenter)
            return width
    return 0.0


def _clear_note(painter: QPainter, room: QRectF, width: float, session: Session) -> None:
    """Keep the outline of the plan out of a note where more was done."""
    if session.done is not None and _share_done(session) > 1.0 + ALMOST_AS_PLANNED:
        height = theme().metrics(MARK_PT).capHeight() + 3.0
        rect = QRectF(room.right() - width - 1.0, 0.0, width + 1.0, height)
        rect.moveTop(room.center().y() - height / 2)
        painter.fillRect(rect, theme().colours["pale_teal"])


def _notes(session: Session, stage: Stage, words: Words) -> list[tuple[str, QColor, bool]]:
    """Return what may stand at the right of the figure, most telling first."""
    c = theme().colours
    notes: list[tuple[str, QColor, bool]] = []
    if stage.is_past and session.is_open and session.kind is not Kind.RACE:
        notes.append(("?", c["clay"], True))
    if session.missed:
        notes.append((kinds.say(kinds.MISSED), c["soft"], False))
    if differs_from_plan(session):
        of = kinds.say(kinds.OF_PLANNED).format(kinds.planned_figure(session, words))
        notes.append((of, c["soft"], False))
    if session.carb_g_per_h > 0.0 and not session.missed:
        notes.append((words.grams_per_hour(session.carb_g_per_h), c["plum"], True))
        notes.append((words.number(session.carb_g_per_h), c["plum"], True))
    return notes


def _paint_symbols(painter: QPainter, rect: QRectF, session: Session, word: str) -> float:
    """Draw lock, moon and empty plate right of the kind, as far as its *word* leaves room.

    Returns what they take.
    """
    look = theme()
    size = look.px(7.0)
    x, y = rect.right() - size, rect.center().y() - size / 2
    used = look.metrics(KIND_PT).horizontalAdvance(word) + 2.0
    for is_shown, draw in (
        (session.locked, draw_lock),
        (session.dark, draw_moon),
        (session.fasted, draw_empty_plate),
    ):
        if is_shown and used + size <= rect.width():
            draw(painter, QRectF(x, y, size, size))
            x -= size + 3.0
            used += size + 3.0
    return rect.right() - size - x


def draw_moon(painter: QPainter, rect: QRectF) -> None:
    """Draw the mark of a session in the dark."""
    disc, bite = QPainterPath(), QPainterPath()
    disc.addEllipse(rect)
    bite.addEllipse(rect.translated(rect.width() * 0.38, -rect.height() * 0.14))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme().colours["indigo"])
    painter.drawPath(disc.subtracted(bite))


def draw_lock(painter: QPainter, rect: QRectF) -> None:
    """Draw the mark of a session that stays as it is."""
    ink = theme().colours["ink"]
    body = QRectF(rect.left() + 0.5, rect.center().y() - 0.5, rect.width() - 1.0, rect.height() / 2)
    painter.setPen(QPen(ink, Stroke.THIN))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    bow = QRectF(body.left() + 1.2, rect.top(), body.width() - 2.4, rect.height())
    painter.drawArc(bow, 0, 180 * 16)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ink)
    painter.drawRoundedRect(body, 1.0, 1.0)


def draw_empty_plate(painter: QPainter, rect: QRectF) -> None:
    """Draw the mark of a fasted session."""
    painter.setPen(QPen(theme().colours["soft"], Stroke.THIN))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    ring = rect.adjusted(0.8, 0.8, -0.8, -0.8)
    painter.drawEllipse(ring)
    painter.drawLine(ring.bottomLeft(), ring.topRight())


def _kind_word(session: Session, room: float) -> str:
    """Return the fullest name of the kind that fits into *room*, or nothing."""
    metrics = theme().metrics(KIND_PT, bold=session.kind is Kind.RACE)
    names = kinds.names(session.kind)
    return next((n for n in names if metrics.horizontalAdvance(n) <= room + 1.0), "")


def _one_line(session: Session, room: float, words: Words) -> tuple[str, str, float]:
    """Return kind and figure as full as fit side by side into *room*, and what is between them.

    One of them if need be.
    """
    look = theme()
    bold, is_run = look.metrics(KIND_PT, bold=True), session.kind.is_run
    figures = (kinds.figure(session, words), kinds.brief_figure(session, words))
    letters = kinds.letters(session.kind)
    for word, gap in (*((n, _gap_after(n)) for n in kinds.names(session.kind)), (letters, 0.5)):
        left = room - gap - look.metrics(KIND_PT).horizontalAdvance(word) + 1.0
        # As if every distance were this wide, so that like kinds are called alike.
        least = bold.horizontalAdvance(USUAL_FIGURE) if is_run and len(word) > 2 else 0.0
        for figure in figures:
            if figure and max(least, bold.horizontalAdvance(figure)) <= left:
                return word, figure, gap if word else 0.0
    # Minutes alone would be read as those of a run.
    figure = kinds.figure(session, words) if is_run else ""
    if not figure or bold.horizontalAdvance(figure) > room + 2.5:
        return _kind_word(session, room), "", 0.0
    return "", figure, 0.0


def _gap_after(word: str) -> float:
    """Return the room between a kind and its figure: less after a letter, as in "S 30′"."""
    return theme().px(4.0 if len(word) > 2 else 2.0)


def _paint_one_line(
    painter: QPainter, room: QRectF, session: Session, stage: Stage, words: Words
) -> float:
    """Draw kind and figure on one line, as full as fit, or nothing; return what it took."""
    look = theme()
    c = look.colours
    ink = c["clay"] if session.kind is Kind.RACE else c["soft"] if session.missed else c["ink"]
    word, figure, between = _one_line(session, room.width(), words)
    if not word and not figure:
        return 0.0
    metrics, gap = look.metrics(KIND_PT, bold=True), look.px(4.0)
    width = metrics.horizontalAdvance(figure)
    draw_text(painter, room, word, ink, look.font(KIND_PT))
    at = QRectF(room)
    if word:
        before = look.metrics(KIND_PT).horizontalAdvance(word)
        at.setLeft(room.left() + before + between)
    draw_text(painter, at, figure, ink, look.font(KIND_PT, bold=True))
    end = at.left() + width
    if session.missed:
        painter.setPen(QPen(ink, Stroke.HAIR))
        painter.drawLine(QPointF(room.left(), room.center().y()), QPointF(end, room.center().y()))
    note = QRectF(room)
    note.setLeft(end + gap)
    has_note = _paint_note(painter, note, session, stage, words) > 0.0
    return room.width() if has_note else end + gap - room.left()

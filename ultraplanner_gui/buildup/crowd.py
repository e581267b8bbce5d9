"""A day with more sessions than can be told one by one: their letters, and what they come to."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.cells import Tile
from ultraplanner_gui.buildup.tile import KIND_PT, Stage, ground_colour, paint_box
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.widgets.lane import Align, draw_level, draw_rects, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

STROKE_PX = 2.5


def paint_crowd(
    painter: QPainter,
    rect: QRectF,
    staged: Sequence[tuple[Tile, Stage]],
    words: Words,
    has_boxes: bool,
) -> None:
    """Draw a day in *rect*: over a rule each session, with a box round it near by; under it all."""
    look, rects = theme(), parts_of(rect, len(staged))
    rect = _on_pixels(rect)
    foot = rect.bottom() - rects[0].bottom()
    parts = [(part, *one) for part, one in zip(rects, staged, strict=True)]
    if has_boxes:
        for part, tile, stage in parts:
            paint_box(painter, part.adjusted(0.5, 0.5, -0.5, -0.5), tile.session, stage)
    _paint_kinds(painter, parts)
    total = QRectF(rect.left(), rect.bottom() - foot, rect.width(), foot)
    painter.fillRect(total.adjusted(0.5, 0.0, -0.5, 0.0), look.colours["tile"])
    draw_level(painter, (rect.left() + 1.0, rect.right() - 1.0), total.top(), look.colours["soft"])
    text_room = total.adjusted(0.0, 2.0, 0.0, 0.0)
    sessions = [tile.session for tile, _ in staged]
    for text in _totals(sessions, words):
        if look.width(text, KIND_PT, bold=True) <= total.width() - 1.0:
            font = look.font(KIND_PT, bold=True)
            draw_text(painter, text_room, text, look.colours["ink"], font, Align.AlignCenter)
            return


def parts_of(rect: QRectF, count: int) -> list[QRectF]:
    """Return where each of *count* sessions stands over the rule in a day drawn in *rect*."""
    look, rect = theme(), _on_pixels(rect)
    foot = round(look.metrics(KIND_PT, bold=True).capHeight() + look.px(4.0))
    high = rect.height() - min(foot, rect.height() / 2)
    wide = rect.width() / count
    return [QRectF(rect.left() + k * wide, rect.top(), wide, high) for k in range(count)]


def _on_pixels(rect: QRectF) -> QRectF:
    return QRectF(rect.toAlignedRect().adjusted(1, 1, 0, 0))


def _paint_kinds(painter: QPainter, parts: Sequence[tuple[QRectF, Tile, Stage]]) -> None:
    """Write the letter of each session if all of them fit, else draw a stroke for each."""
    look = theme()
    letters = [kinds.letters(tile.session.kind) for _, tile, _ in parts]
    height = look.metrics(KIND_PT).capHeight() + 1.0
    widest = max(look.width(text, KIND_PT) for text in letters)
    is_written = widest <= parts[0][0].width() - 2.0 and height <= parts[0][0].height()
    for text, (part, tile, stage) in zip(letters, parts, strict=True):
        if stage.is_landing:
            continue
        if is_written:
            ink = look.colours["soft" if tile.session.missed else "ink"]
            draw_text(painter, part, text, ink, look.font(KIND_PT), Align.AlignCenter)
            continue
        top = part.center().y() - STROKE_PX / 2
        stroke = QRectF(part.left() + 0.75, top, max(1.0, part.width() - 1.5), STROKE_PX)
        draw_rects(painter, [stroke], ground_colour(tile.session))


def _totals(sessions: Sequence[Session], words: Words) -> tuple[str, ...]:
    """Return what *sessions* come to, the fullest first: the distance run, else the time."""
    actual = [session.actual for session in sessions]
    metres, time_s = sum(a.distance_m for a in actual), sum(a.duration_s for a in actual)
    if metres > 0.0:
        return words.distance(metres, 0), words.distance_bare(metres, 0)
    minutes = kinds.minutes_by_sign(time_s)
    return words.duration(time_s), minutes

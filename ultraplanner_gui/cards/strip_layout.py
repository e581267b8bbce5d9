"""Strips: places side by side on the wrist, or a concertina with a leg to each fold."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from functools import partial

from ultraplanner_gui.cards.flow import Frame
from ultraplanner_gui.cards.page import (
    BAND,
    BLACK,
    RULE,
    Line,
    Op,
    Page,
    Polygon,
    Rect,
    Strokes,
    Text,
)
from ultraplanner_gui.cards.setting import Setting, em_mm
from ultraplanner_gui.cards.sketch import BAND_GAP_MM, BAND_MM, light_band
from ultraplanner_gui.cards.strip_content import Concertina, Leg, WristStrip
from ultraplanner_gui.plan.fuel import Shape
from ultraplanner_gui.plan.value import Value

CELL_PAD_EM = 0.35
LEAST_LEG_EM = 8.5
LEAST_GROUND_MM, MOST_GROUND_MM = 9.0, 40.0
MARK_MM = 2.0
MARK_STEP_MM = 2.3
FOLD_MM = 3.0
LEVEL_EVERY_MM, STEEP_EVERY_MM = 2.8, 0.6
"""How far hachures lie apart on nearly level ground and on the steepest."""

LEAST_GRADIENT, STEEPEST = 0.02, 0.25
SLANT = 0.45
_RING = tuple(
    (math.cos(turn), math.sin(turn)) for turn in (2.0 * math.pi * k / 12 for k in range(13))
)


class Laid(Value, frozen=True):
    """A strip that finds room: on how many pages, and how they are drawn."""

    total: int
    draw: Callable[[], tuple[Page, ...]]


# On the wrist


class _Wrist(Value, frozen=True):
    """Names in lines and the widths of head and cells."""

    names: Sequence[Sequence[str]]
    head_mm: float
    cell_mm: tuple[float, ...]
    height_mm: float


def set_wrist(strip: WristStrip, setting: Setting, frame: Frame) -> Laid | None:
    """Return the strip on as few pages as it needs, None if it is too high or too narrow."""
    wrist = _wrist(strip, setting)
    if wrist.height_mm > frame.bottom_mm - frame.margin_mm:
        return None
    parts = list(_parts(wrist, frame.inner_mm))
    if not parts:
        return None

    def draw() -> tuple[Page, ...]:
        return tuple(
            _wrist_page(strip, wrist, part, number, len(parts), setting, frame)
            for number, part in enumerate(parts)
        )

    return Laid(len(parts), draw)


def _wrist(strip: WristStrip, setting: Setting) -> _Wrist:
    pad = 2.0 * CELL_PAD_EM * em_mm(setting.body_pt)
    cells = []
    for k, name in enumerate(strip.names):
        figures = max(
            setting.width_mm(row.cells[k], _row_pt(row.is_figure, setting), row.is_figure)
            for row in strip.rows
        )
        cells.append(max(figures, _name_mm(name, setting)) + pad)
    names = [
        setting.wrap(name, wide - pad, setting.small_pt, bold=True)
        for name, wide in zip(strip.names, cells, strict=True)
    ]
    head = setting.widest_mm((row.head for row in strip.rows), setting.label_pt)
    most = max(len(lines) for lines in names)
    height = most * setting.line_mm(setting.small_pt) + sum(
        setting.line_mm(_row_pt(row.is_figure, setting)) for row in strip.rows
    )
    return _Wrist(names, head + pad, tuple(cells), height)


def _name_mm(name: str, setting: Setting) -> float:
    """Return the least width in which *name* takes no more than two lines."""
    size = setting.small_pt
    words = name.split(" ")
    breaks = (
        max(setting.width_mm(" ".join(part), size, True) for part in (words[:k], words[k:]))
        for k in range(1, len(words))
    )
    return min(breaks, default=setting.width_mm(name, size, True))


def _row_pt(is_figure: bool, setting: Setting) -> float:
    return setting.figure_pt if is_figure else setting.body_pt


def _parts(wrist: _Wrist, inner_mm: float) -> Iterator[tuple[int, int]]:
    """Yield the first place of each strip and the one after its last, evened out."""
    room = inner_mm - wrist.head_mm
    if max(wrist.cell_mm) > room:
        return
    strips = list(_filled(wrist.cell_mm, room))
    low, high = 0.0, room
    for _ in range(10):
        middle = 0.5 * (low + high)
        fits = middle >= max(wrist.cell_mm) and len(list(_filled(wrist.cell_mm, middle))) == len(
            strips
        )
        low, high = (low, middle) if fits else (middle, high)
    yield from _filled(wrist.cell_mm, high)


def _filled(cells: Sequence[float], room: float) -> Iterator[tuple[int, int]]:
    first, used = 0, 0.0
    for k, wide in enumerate(cells):
        if used + wide > room + 1e-9 and k > first:
            yield first, k
            first, used = k, 0.0
        used += wide
    yield first, len(cells)


def _wrist_page(
    strip: WristStrip,
    wrist: _Wrist,
    part: tuple[int, int],
    number: int,
    total: int,
    setting: Setting,
    frame: Frame,
) -> Page:
    first, last = part
    spare = frame.inner_mm - wrist.head_mm - sum(wrist.cell_mm[first:last])
    share = spare / (last - first)
    top = 0.5 * (frame.height_mm - wrist.height_mm)
    most = max(len(lines) for lines in wrist.names)
    small = setting.line_mm(setting.small_pt)
    ops: list[Op] = []
    x = frame.margin_mm + wrist.head_mm
    for k in range(first, last):
        wide = wrist.cell_mm[k] + share
        if (k - first) % 2 == 0:
            ops.append(Rect(x, 1.2, wide, frame.height_mm - 2.4, BAND))
        middle = x + 0.5 * wide
        lead = (most - len(wrist.names[k])) * small
        ops += setting.stacked(
            wrist.names[k], middle, top + lead, setting.small_pt, bold=True, align="centre"
        )
        ops += _cells(strip, k, middle, top + most * small, setting)
        x += wide
    ops += _wrist_heads(strip, wrist, top + most * small, setting, frame)
    page_of = strip.turning.page.format(number + 1, total) if total > 1 else ""
    if page_of:
        baseline = top + em_mm(setting.label_pt)
        ops.append(Text(frame.margin_mm, baseline, page_of, setting.label_pt))
    name = f"{strip.title}, {page_of}" if page_of else strip.title
    return Page(
        frame.width_mm,
        frame.height_mm,
        tuple(sorted(ops, key=lambda op: not isinstance(op, Rect))),
        name,
        is_shrunk=setting.body_pt <= setting.least_pt,
    )


def _cells(strip: WristStrip, k: int, x: float, top: float, setting: Setting) -> Iterator[Op]:
    for row in strip.rows:
        size = _row_pt(row.is_figure, setting)
        if row.cells[k]:
            yield Text(x, top + em_mm(size), row.cells[k], size, row.is_figure, "centre")
        top += setting.line_mm(size)


def _wrist_heads(
    strip: WristStrip, wrist: _Wrist, top: float, setting: Setting, frame: Frame
) -> Iterator[Op]:
    right = frame.margin_mm + wrist.head_mm - CELL_PAD_EM * em_mm(setting.body_pt)
    for row in strip.rows:
        size = _row_pt(row.is_figure, setting)
        if row.head:
            yield Text(right, top + em_mm(size), row.head, setting.label_pt, align="right")
        top += setting.line_mm(size)


# Folded by the leg


class _Folds(Value, frozen=True):
    """How many legs lie across, how wide each is, how high its texts and its ground."""

    across: int
    fold_mm: float
    pad_mm: float
    tallest_mm: float
    ground_mm: float


def set_concertina(strip: Concertina, setting: Setting, frame: Frame) -> Laid | None:
    """Return the strip on as few pages as it needs, None if a leg finds no room."""
    pad = 2.0 * CELL_PAD_EM * em_mm(setting.body_pt)
    least = max(
        LEAST_LEG_EM * em_mm(setting.body_pt),
        *(_least_leg(leg, setting) + pad for leg in strip.legs),
    )
    foot = setting.line_mm(setting.label_pt) + BAND_MM + 2.0 * BAND_GAP_MM
    room = frame.height_mm - 2.0 * frame.margin_mm - foot
    totals = {
        math.ceil(len(strip.legs) / across): None
        for across in range(int(frame.width_mm / least), 0, -1)
    }
    for total in totals:
        across = math.ceil(len(strip.legs) / total)
        fold = frame.width_mm / across
        tallest = max(_texts_mm(leg, setting, fold - pad) for leg in strip.legs)
        if room - tallest >= LEAST_GROUND_MM:
            folds = _Folds(across, fold, pad, tallest, min(room - tallest, MOST_GROUND_MM))
            return Laid(total, partial(_folded_pages, strip, folds, total, setting, frame))
    return None


def _folded_pages(
    strip: Concertina, folds: _Folds, total: int, setting: Setting, frame: Frame
) -> tuple[Page, ...]:
    return tuple(_folded_page(strip, folds, k, total, setting, frame) for k in range(total))


def _folded_page(
    strip: Concertina, folds: _Folds, number: int, total: int, setting: Setting, frame: Frame
) -> Page:
    ops: list[Op] = []
    first = number * folds.across
    for place, leg in enumerate(strip.legs[first : first + folds.across]):
        left = place * folds.fold_mm
        texts = _texts(leg, setting, folds.fold_mm - folds.pad_mm)
        ops += [op.moved(left + 0.5 * folds.pad_mm, frame.margin_mm) for op in texts]
        base = frame.margin_mm + folds.tallest_mm + folds.ground_mm
        ops += [op.moved(left, base) for op in _ground(leg, folds.fold_mm, folds.ground_mm)]
        if place:
            ops += _fold(left, frame)
    page_of = strip.turning.page.format(number + 1, total) if total > 1 else ""
    ops += _foot(strip, page_of, setting, frame)
    name = f"{strip.title}, {page_of}" if page_of else strip.title
    is_shrunk = setting.body_pt <= setting.least_pt
    return Page(frame.width_mm, frame.height_mm, tuple(ops), name, is_shrunk=is_shrunk)


def _least_leg(leg: Leg, setting: Setting) -> float:
    words = (word for text in (leg.name, *leg.lines, *leg.foods) for word in text.split(" "))
    return max(
        setting.widest_mm(words, setting.name_pt, bold=True),
        setting.width_mm(leg.on_plan, setting.figure_pt, True),
    )


def _runs(
    leg: Leg, setting: Setting, width_mm: float
) -> Iterator[tuple[Sequence[str], float, bool]]:
    """Yield what stands above the ground: lines, their size, whether they are bold."""
    small = setting.small_pt
    yield setting.wrap(leg.name, width_mm, setting.name_pt, True), setting.name_pt, True
    yield (leg.on_plan,), setting.figure_pt, True
    for parts in (leg.lines, leg.foods):
        yield setting.wrap_parts(parts, width_mm, small, joint=" · "), small, False


def _texts_mm(leg: Leg, setting: Setting, width_mm: float) -> float:
    lines = (len(run) * setting.line_mm(size) for run, size, _ in _runs(leg, setting, width_mm))
    return sum(lines) + 0.3 * em_mm(setting.body_pt)


def _texts(leg: Leg, setting: Setting, width_mm: float) -> list[Op]:
    ops: list[Op] = []
    y = 0.0
    for lines, size, bold in _runs(leg, setting, width_mm):
        ops += setting.stacked(lines, 0.0, y, size, bold=bold)
        y += len(lines) * setting.line_mm(size)
    return ops


def _ground(leg: Leg, width_mm: float, height_mm: float) -> list[Op]:
    """Return the ground over a base at 0, hachures under it, foods above it, light below."""
    tall = height_mm - 2.0 * MARK_MM - 1.5
    ops: list[Op] = [Line((0.0, 0.0), (width_mm, 0.0), 0.2, RULE)]
    line = tuple((x * width_mm, -y * tall) for x, y in leg.ground)
    if line:
        ops.append(Polygon(line, BLACK, outline_mm=0.35))
        ops.append(Strokes(tuple(hachures(line, leg.gradients, width_mm)), 0.2))
    last, above = -MARK_MM, MARK_STEP_MM
    for bite in leg.bites:
        x = min(max(bite.at * width_mm, MARK_MM), width_mm - MARK_MM)
        # Taken together, two stand on one another and the next two beside them.
        is_close = x - last < MARK_STEP_MM
        if is_close:
            x = last if above == 0.0 else last + MARK_STEP_MM
        above = MARK_STEP_MM if is_close and above == 0.0 else 0.0
        last = x
        ops += mark(bite.shape, x, _height_at(line, x) - 0.5 * MARK_MM - 0.6 - above)
    return ops + light_band(leg.shades, width_mm, BAND_GAP_MM)


def hachures(
    line: Sequence[tuple[float, float]], gradients: Sequence[float], width_mm: float
) -> Iterator[tuple[tuple[float, float], tuple[float, float]]]:
    """Yield slanted strokes under *line*, denser and longer where it is steeper.

    A climb leans to the left at its foot, a drop to the right.
    """
    phase = 0.0
    for (x, y), (x2, _), gradient in zip(line, line[1:], gradients, strict=False):
        steep = abs(gradient)
        if steep < LEAST_GRADIENT:
            continue
        share = min(1.0, (steep - LEAST_GRADIENT) / (STEEPEST - LEAST_GRADIENT))
        phase += (x2 - x) / (LEVEL_EVERY_MM * (STEEP_EVERY_MM / LEVEL_EVERY_MM) ** share)
        while phase >= 1.0:
            phase -= 1.0
            long = min(1.2 + 4.0 * share, -y)
            lean = SLANT * long * (-1.0 if gradient > 0.0 else 1.0)
            if long > 0.3:
                yield (x, y), (min(max(x + lean, 0.0), width_mm), y + long)


def _height_at(line: Sequence[tuple[float, float]], x_mm: float) -> float:
    if not line:
        return 0.0
    share = x_mm / (line[-1][0] or 1.0) * (len(line) - 1)
    return line[min(len(line) - 1, max(0, round(share)))][1]


def mark(shape: Shape, x: float, y: float) -> list[Op]:
    """Return the black shape of a food about a place: bar, ring, square or lozenge."""
    half = 0.5 * MARK_MM
    match shape:
        case Shape.GEL:
            return [Rect(x - 0.35 * half, y - half, 0.7 * half, MARK_MM)]
        case Shape.SOLID:
            return [Rect(x - 0.75 * half, y - 0.75 * half, 1.5 * half, 1.5 * half)]
        case Shape.DRINK:
            ring = tuple((x + 0.75 * half * a, y + 0.75 * half * b) for a, b in _RING)
            return [Polygon(ring, BLACK, outline_mm=0.35)]
        case Shape.SALT:
            return [Polygon(((x - half, y), (x, y - half), (x + half, y), (x, y + half)))]


def _fold(x: float, frame: Frame) -> list[Op]:
    """Return the marks at which the strip is folded, and a line between them."""
    dashes = (0.6, 0.9)
    return [
        Line((x, 0.0), (x, FOLD_MM), 0.25, BLACK),
        Line((x, FOLD_MM), (x, frame.height_mm - FOLD_MM), 0.15, RULE, dashes),
        Line((x, frame.height_mm - FOLD_MM), (x, frame.height_mm), 0.25, BLACK),
    ]


def _foot(strip: Concertina, page_of: str, setting: Setting, frame: Frame) -> list[Op]:
    """Return what the shapes are, and which strip this is."""
    size = setting.label_pt
    baseline = frame.height_mm - frame.margin_mm
    ops: list[Op] = []
    x = frame.margin_mm
    for shape, name in strip.marks:
        ops += mark(shape, x + 0.5 * MARK_MM, baseline - 0.3 * em_mm(size))
        ops.append(Text(x + 1.5 * MARK_MM, baseline, name, size))
        x += 1.5 * MARK_MM + setting.width_mm(name, size) + setting.gap_mm
    if page_of:
        right = frame.width_mm - frame.margin_mm
        ops.append(Text(right, baseline, page_of, size, align="right"))
    return ops

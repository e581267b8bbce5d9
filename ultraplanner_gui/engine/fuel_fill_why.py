"""Why a filling does not meet a band, in sentences: where, by how much, what would help."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from ultraplanner_gui.engine.fuel_fill_cells import Cell
from ultraplanner_gui.engine.fuel_kit import FillFood, most_fluid_ml_per_h
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message

Band = tuple[float, float]
_HAIR = 1e-6
# OWN: what rounding hides is not worth a sentence.
_SLACK = 0.01


def reasons(
    fuel: FuelPlan,
    cells: Sequence[Cell],
    kit: Sequence[FillFood],
    counts: Sequence[Mapping[int, int]],
    bands: tuple[Band, Band, Band],
) -> tuple[Message, ...]:
    """Return a sentence for every leg and figure outside its band; empty if all are met."""
    dry = set(_too_dry(cells, kit, counts))
    found: list[Message] = []
    for leg in legs(cells):
        hours = sum(cells[c].hours for c in leg)
        rows = (
            ("carb_g", fuel.carb_g_per_h, bands[0], _CARBS),
            ("fluid_ml", fuel.fluid_ml_per_h, bands[1], _DRY if leg in dry else _FLUID),
            ("sodium_mg", fuel.sodium_mg_per_h, bands[2], _SODIUM),
        )
        for of, per_h, (low, high), texts in rows:
            got = sum(getattr(kit[f], of) * n for c in leg for f, n in counts[c].items()) / hours
            slack = _SLACK * per_h + _HAIR
            if got < low * per_h - slack or got > high * per_h + slack:
                units = {"carb_g": "g_per_h", "fluid_ml": "ml", "sodium_mg": "mg"}
                args = tuple(Quantity(v, units[of]) for v in (got, low * per_h, high * per_h))  # type: ignore[arg-type]
                text = texts[got > high * per_h]
                found.append(message(text, Quantity(cells[leg[0]].start_s, "s"), *args))
    return (*_asked_too_much(fuel), *found)


def legs(cells: Sequence[Cell]) -> list[tuple[int, ...]]:
    """Return the cells of each leg, by their numbers."""
    found: list[list[int]] = [[]]
    for c, cell in enumerate(cells):
        found[-1].append(c)
        if cell.place_m is not None:
            found.append([])
    return [tuple(leg) for leg in found if leg]


def _too_dry(
    cells: Sequence[Cell],
    kit: Sequence[FillFood],
    counts: Sequence[Mapping[int, int]],
) -> Iterator[tuple[int, ...]]:
    """Yield the legs whose bottles are drunk empty."""
    smallest = min((f.fluid_ml for f in kit if f.is_bottled and f.fluid_ml), default=0.0)
    for leg in legs(cells):
        drunk = sum(
            kit[f].fluid_ml * n
            for c in leg
            for f, n in counts[c].items()
            if kit[f].is_bottled and kit[f].is_carried
        )
        room_ml = sum(cells[c].bottle_ml for c in leg)
        if drunk > room_ml - len(leg) * smallest - _HAIR:
            yield leg


def _asked_too_much(fuel: FuelPlan) -> Iterator[Message]:
    most = most_fluid_ml_per_h(fuel)
    if fuel.fluid_ml_per_h > most:
        yield message(
            QT_TRANSLATE_NOOP(
                "Fuel",
                "{0} an hour are asked, but never more than {1} are planned: you sweat less.",
            ),
            Quantity(fuel.fluid_ml_per_h, "ml"),
            Quantity(most, "ml"),
        )


_CARBS = (
    QT_TRANSLATE_NOOP(
        "Fuel", "From {0} on: {1} of {2} to {3}; no more fits with these foods. Add one with more."
    ),
    QT_TRANSLATE_NOOP(
        "Fuel",
        "From {0} on: {1}, asked {2} to {3}; the portions are too large. Add a smaller food.",
    ),
)
_FLUID = (
    QT_TRANSLATE_NOOP(
        "Fuel", "From {0} on: {1} an hour of {2} to {3}; add water or a drink to the foods."
    ),
    QT_TRANSLATE_NOOP(
        "Fuel",
        "From {0} on: {1} an hour, asked {2} to {3}; the drink gives the carbohydrate. Add solids.",
    ),
)
_DRY = (
    QT_TRANSLATE_NOOP(
        "Fuel", "From {0} on: {1} an hour of {2} to {3}; the bottles hold no more. Carry another."
    ),
    _FLUID[1],
)
_SODIUM = (
    QT_TRANSLATE_NOOP(
        "Fuel", "From {0} on: {1} an hour of {2} to {3}; add salt capsules or salty food."
    ),
    QT_TRANSLATE_NOOP(
        "Fuel", "From {0} on: {1} an hour, asked {2} to {3}; swap salty food for something else."
    ),
)

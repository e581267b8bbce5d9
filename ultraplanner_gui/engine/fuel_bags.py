"""Where the food comes from: what is packed at the start and into bags, taken from tables, carried
out of each station, and bought.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from enum import StrEnum

from ultraplanner_gui.engine.fuel_fill_cells import has_tap
from ultraplanner_gui.engine.fuel_kit import dry_weight_g
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Shape
from ultraplanner_gui.plan.station import AidStation, Kit, Offer
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.fuelling import dose

# OWN: how near a table an item counts as eaten there.
NEAR_TABLE_S = 300.0
_HAIR = 1e-9
# OWN: what is asked but not placed is spared for only so far.
_MOST_ASKED = 1.1
Counts = tuple[tuple[str, float], ...]


class Source(StrEnum):
    """Where food comes from."""

    START = "start"
    BAG = "bag"
    CREW = "crew"
    TABLE = "table"
    TAP = "tap"


class Pack(Value, frozen=True):
    """What comes from one place. *servings* are those of the plan, `spare` whole ones on top.

    `kit` is what the station's stop says to change there. `weight_g` is what is packed, drinks as
    powder; 0 for what stands on a table.
    """

    source: Source
    station: str | None
    name: str
    at_m: float
    arrive_s: float
    servings: Counts
    spare: Counts
    weight_g: float
    kit: tuple[Kit, ...] = ()

    def weight_of(self, food: Food, servings: float) -> float:
        """Return what so many servings weigh packed; 0 for what stands on a table."""
        is_packed = self.source not in (Source.TABLE, Source.TAP)
        return dry_weight_g(food) * servings if is_packed else 0.0

    def whole(self) -> Counts:
        """Return what to pack: whole servings, spare ones among them."""
        counts = {food: float(math.ceil(n - _HAIR)) for food, n in self.servings}
        for food, n in self.spare:
            counts[food] = counts.get(food, 0.0) + n
        return tuple(counts.items())


class Carry(Value, frozen=True):
    """What is on the runner when leaving a place: *food_g* of food for as long as it has to last,
    and `fluid_ml` to the next tap with the spare, in so many `bottles`; `short_ml` is what the
    bottles cannot hold.
    """

    station: str | None
    name: str
    at_s: float
    carb_g: float
    food_g: float
    fluid_ml: float
    bottles: int
    short_ml: float

    @property
    def weight_g(self) -> float:
        """Food and full bottles together."""
        return self.food_g + self.fluid_ml - self.short_ml


class Bought(Value, frozen=True):
    """What to buy of one food: `servings` are packed, spare among them, in `packs` whole packs;
    `left` servings are over in the end if the race goes as planned.
    """

    food: Food
    servings: float
    packs: int
    left: float


class BagPlan(Value, frozen=True):
    """Everything that is packed, taken, carried and bought. `astray` are items of table food
    eaten where no table has it.
    """

    packs: tuple[Pack, ...]
    carries: tuple[Carry, ...]
    shopping: tuple[Bought, ...]
    astray: tuple[FuelItem, ...]


class _Place(Value, frozen=True):
    """The start or an aid station, with when one is there."""

    station: AidStation | None
    at_m: float
    arrive_s: float
    leave_s: float

    @property
    def refill(self) -> Source | None:
        if self.station is None:
            return Source.START
        offers = self.station.offers
        if Offer.DROP_BAG in offers:
            return Source.BAG
        return Source.CREW if Offer.CREW in offers else None

    @property
    def has_tap(self) -> bool:
        return self.station is None or has_tap(self.station)

    def has(self, food: Food) -> bool:
        return self.station is not None and food.key in self.station.foods


def bag_plan(
    fuel: FuelPlan, course: Course, sections: Sequence[SectionFigures], finish_s: float
) -> BagPlan:
    """Return where each item of *fuel* (on the clock) comes from, and what follows from it.

    Items after the finish count for nothing.
    """
    places = _places(course, sections)
    items = [item for item in fuel.items if item.at_s <= finish_s]
    found = [(item, *_source(fuel.food(item.food), item, places)) for item in items]
    packs = tuple(_packs(fuel, places, found, finish_s))
    return BagPlan(
        packs=packs,
        carries=tuple(_carries(fuel, places, found, finish_s)),
        shopping=tuple(_shopping(fuel, packs, items)),
        astray=tuple(i for i, source, n in found if _is_astray(fuel.food(i.food), source)),
    )


Found = tuple[FuelItem, Source, int]


def _places(course: Course, sections: Sequence[SectionFigures]) -> list[_Place]:
    places = [_Place(None, 0.0, 0.0, 0.0)]
    for section in sections[:-1]:
        if section.station is not None:
            station = course.station(section.station)
            places.append(_Place(station, section.end_m, section.arrive_s, section.leave_s))
    return places


def is_water(food: Food) -> bool:
    """Whether *food* comes from any tap."""
    return food.shape is Shape.DRINK and food.is_carried and not food.energy_kcal + food.sodium_mg


def _source(food: Food, item: FuelItem, places: Sequence[_Place]) -> tuple[Source, int]:
    """Return where *item* comes from: source and number of the place."""
    passed = [n for n, place in enumerate(places) if place.arrive_s <= item.at_s + _HAIR]
    if is_water(food):
        return Source.TAP, max(n for n in passed if places[n].has_tap)
    for n, place in enumerate(places):
        is_there = place.arrive_s - NEAR_TABLE_S <= item.at_s <= place.leave_s + NEAR_TABLE_S
        if place.has(food) and is_there:
            return Source.TABLE, n
    if food.is_carried and places[passed[-1]].has(food):
        return Source.TABLE, passed[-1]
    n = max(n for n in passed if places[n].refill is not None)
    return places[n].refill or Source.START, n


def _is_astray(food: Food, source: Source) -> bool:
    return not food.is_carried and source is not Source.TABLE


def _packs(
    fuel: FuelPlan, places: Sequence[_Place], found: Sequence[Found], finish_s: float
) -> Iterator[Pack]:
    refills = [n for n, place in enumerate(places) if place.refill is not None]
    for n, place in enumerate(places):
        for source in Source:
            mine = [item for item, of, k in found if of is source and k == n]
            is_refill = source is place.refill
            if not mine and not (is_refill and place.station is not None and place.station.kit):
                continue
            later = [places[k].arrive_s for k in refills if k > n]
            until_s = min([*later, finish_s])
            servings = _counted(mine)
            spare = _spare(fuel, servings, until_s - place.arrive_s) if is_refill else ()
            pack = Pack(
                source=source,
                station=place.station.key if place.station is not None else None,
                name=place.station.name if place.station is not None else "",
                at_m=place.at_m,
                arrive_s=place.arrive_s,
                servings=servings,
                spare=spare,
                weight_g=0.0,
                kit=place.station.kit if is_refill and place.station is not None else (),
            )
            yield _weighed(fuel, pack)


def _weighed(fuel: FuelPlan, pack: Pack) -> Pack:
    if pack.source in (Source.TABLE, Source.TAP):
        return pack
    grams = sum(dry_weight_g(fuel.food(food)) * n for food, n in pack.whole())
    return Pack(
        *(pack.source, pack.station, pack.name, pack.at_m, pack.arrive_s),
        *(pack.servings, pack.spare, grams, pack.kit),
    )


def _counted(items: Sequence[FuelItem]) -> Counts:
    counts: dict[str, float] = {}
    for item in items:
        counts[item.food] = counts.get(item.food, 0.0) + item.servings
    return tuple(counts.items())


def _spare(fuel: FuelPlan, servings: Counts, s: float) -> Counts:
    """Return whole servings of what is packed most, so that the carbohydrate is spared for."""
    carb = {food: fuel.food(food).carb_g for food, _ in servings}
    solid = [
        (n, food)
        for food, n in servings
        if carb[food] > 0.0 and fuel.food(food).shape is not Shape.DRINK
    ]
    fed = solid or [(n, food) for food, n in servings if carb[food] > 0.0]
    if not fed:
        return ()
    most = max(fed, key=lambda pair: pair[0])[1]
    planned = sum(carb[food] * n for food, n in servings)
    packed = sum(carb[food] * math.ceil(n - _HAIR) for food, n in servings)
    asked = min(dose(fuel.carb_g_per_h, s), _MOST_ASKED * planned)
    short = max(asked, planned) * (1.0 + fuel.carrying.spare) - packed
    count = math.ceil(short / carb[most] - _HAIR)
    return ((most, float(count)),) if count > 0 else ()


def _carries(
    fuel: FuelPlan, places: Sequence[_Place], found: Sequence[Found], finish_s: float
) -> Iterator[Carry]:
    c = fuel.carrying
    for n, place in enumerate(places):
        on_board = [
            item
            for item, source, k in found
            if k <= n
            and item.at_s >= place.leave_s
            and source is not Source.TAP
            and (fuel.food(item.food).is_carried or source is not Source.TABLE)
        ]
        tap_s = min((p.arrive_s for p in places[n + 1 :] if p.has_tap), default=finish_s)
        drunk = [
            fuel.food(item.food).fluid_ml * item.servings
            for item, source, k in found
            if place.leave_s <= item.at_s < tap_s + _HAIR
            and fuel.food(item.food).shape is Shape.DRINK
            and fuel.food(item.food).is_carried
        ]
        fluid = sum(drunk) * (1.0 + c.spare)
        room = c.bottles * c.bottle_ml
        yield Carry(
            station=place.station.key if place.station is not None else None,
            name=place.station.name if place.station is not None else "",
            at_s=place.leave_s,
            carb_g=sum(fuel.food(i.food).carb_g * i.servings for i in on_board),
            food_g=sum(dry_weight_g(fuel.food(i.food)) * i.servings for i in on_board),
            fluid_ml=fluid,
            bottles=math.ceil(fluid / c.bottle_ml - _HAIR),
            short_ml=max(fluid - room, 0.0),
        )


def _shopping(fuel: FuelPlan, packs: Sequence[Pack], items: Sequence[FuelItem]) -> Iterator[Bought]:
    packed: dict[str, float] = {}
    eaten: dict[str, float] = {}
    for pack in packs:
        if pack.source in (Source.TABLE, Source.TAP):
            continue
        for key, n in pack.whole():
            packed[key] = packed.get(key, 0.0) + n
        for key, n in pack.servings:
            eaten[key] = eaten.get(key, 0.0) + n
    for food in fuel.foods:
        if n := packed.get(food.key, 0.0):
            count = math.ceil(n / food.per_pack - _HAIR)
            yield Bought(food, n, count, count * food.per_pack - eaten.get(food.key, 0.0))

"""The fuel plan: foods and where on the race clock each is taken."""

from __future__ import annotations

from datetime import date
from enum import StrEnum

from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Kept, Number, Whole


class Tolerance(StrEnum):
    """What the runner's own stomach says of a food."""

    TOLERATED = "tolerated"
    NOT_TRIED = "not tried"
    AVOID = "avoid"


class Allergen(StrEnum):
    """What has to be named on a packet: Regulation (EU) 1169/2011, Annex II."""

    GLUTEN = "gluten"
    CRUSTACEANS = "crustaceans"
    EGGS = "eggs"
    FISH = "fish"
    PEANUTS = "peanuts"
    SOYA = "soya"
    MILK = "milk"
    NUTS = "nuts"
    CELERY = "celery"
    MUSTARD = "mustard"
    SESAME = "sesame"
    SULPHITES = "sulphites"
    LUPIN = "lupin"
    MOLLUSCS = "molluscs"


class Keep(StrEnum):
    """What an item keeps when the pace changes: its time or its place."""

    CLOCK = "clock"
    PLACE = "place"


class CaffeineLimit(StrEnum):
    """Which limit of a day counts; only what follows is kept, never why."""

    USUAL = "usual"
    LOWER = "200 mg"
    BY_WEIGHT = "3 mg/kg"


class Effort(StrEnum):
    """How hard the race is run, where the VO2max is not known."""

    EASY = "easy"
    STEADY = "steady"
    HARD = "hard"


class Sugars(StrEnum):
    """Whether a food's carbohydrate is of one kind or glucose and fructose together."""

    SINGLE = "single"
    MIXED = "mixed"


class Shape(StrEnum):
    """What a food is to hold, which is also the shape of its token."""

    GEL = "gel"
    DRINK = "drink"
    SOLID = "solid"
    SALT = "salt"


class Food(Kept, frozen=True):
    """One food, per serving. `carb_g` is net of fibre; `mark` says where the figures are from
    ("published", "from memory", "from the packet").

    `fructose_g` is None where the packet does not say; then `sugars` says. A food that is not
    `is_carried` is eaten at a table only. `per_pack` servings are bought at once.
    """

    key: str
    name: str
    serving: str
    weight_g: Number
    carb_g: Number
    sodium_mg: Number = 0.0
    fluid_ml: Number = 0.0
    caffeine_mg: Number = 0.0
    energy_kcal: Number = 0.0
    sugars: Sugars = Sugars.SINGLE
    shape: Shape = Shape.SOLID
    source: str = ""
    mark: str = ""
    protein_g: Number = 0.0
    fructose_g: Number | None = None
    tolerance: Tolerance = Tolerance.NOT_TRIED
    allergens: tuple[Allergen, ...] = ()
    is_carried: bool = True
    per_pack: Number = 1.0


class FuelItem(Kept, frozen=True):
    """*servings* of a food taken at *at_s* seconds of race time.

    With `at_m` it is taken there instead, metres from the start, whenever that is reached.
    """

    key: str
    food: str
    at_s: Number
    servings: Number = 1.0
    at_m: Number | None = None


class Portion(Kept, frozen=True):
    """*servings* of a food, in training, at no given time."""

    food: str
    servings: Number = 1.0


class Carrying(Kept, frozen=True):
    """What the runner carries drink in, and how much more than planned is packed."""

    bottles: Whole = 2
    bottle_ml: Number = 500.0
    spare: Number = 0.15


class Caffeine(Kept, frozen=True):
    """Whether filling may use caffeine, and which limit of a day counts."""

    is_used: bool = False
    limit: CaffeineLimit = CaffeineLimit.USUAL


class Tank(Kept, frozen=True):
    """What the glycogen ledger starts from.

    `vo2max` in mL/kg/min, None where not known: then `effort` says how hard the race is.
    `leg_share` is leg muscle over body mass, `legs_g_per_kg` glycogen in it at the start,
    `liver_g` that in the liver.
    """

    vo2max: Number | None = None
    effort: Effort = Effort.EASY
    leg_share: Number = 0.21
    legs_g_per_kg: Number = 20.0
    liver_g: Number = 90.0


class Before(Kept, frozen=True):
    """How the last days are eaten: loading, the last meal, caffeine before the start."""

    loading_days: Whole = 2
    loading_g_per_kg: Number = 10.0
    meal_h: Number = 3.0
    caffeine_mg: Number = 0.0


class SweatTest(Kept, frozen=True):
    """A run weighed before and after; masses undressed and dry. *hours* long."""

    day: date
    before_kg: Number
    after_kg: Number
    drunk_l: Number
    passed_l: Number
    hours: Number
    note: str = ""


class FuelPlan(Kept, frozen=True):
    """What is asked per hour, the foods at hand and the items placed on the race clock.

    Items are by time. `first_s` and `every_s` are the rule by which items are placed; new ones
    keep what `keep` says. `allergens` are what the runner must not eat.
    """

    carb_g_per_h: Number = 60.0
    fluid_ml_per_h: Number = 500.0
    sodium_mg_per_h: Number = 400.0
    first_s: Number = 1800.0
    every_s: Number = 1200.0
    foods: tuple[Food, ...] = ()
    items: tuple[FuelItem, ...] = ()
    keep: Keep = Keep.CLOCK
    carrying: Carrying = Carrying()
    caffeine: Caffeine = Caffeine()
    tank: Tank = Tank()
    before: Before = Before()
    allergens: tuple[Allergen, ...] = ()
    sweat_tests: tuple[SweatTest, ...] = ()

    def food(self, key: str) -> Food:
        """Return the food *key*; PlanError if there is none."""
        for food in self.foods:
            if food.key == key:
                return food
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "There is no food {0} in this project."), key)

    def item(self, key: str) -> FuelItem:
        """Return the item *key*; PlanError if there is none."""
        for item in self.items:
            if item.key == key:
                return item
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "That item is no longer in the fuel plan."))

    def with_item(self, changed: FuelItem) -> FuelPlan:
        """Return a copy with the item of the same key replaced, kept in order of time."""
        self.item(changed.key)
        return self.with_items(tuple(changed if i.key == changed.key else i for i in self.items))

    def with_items(self, items: tuple[FuelItem, ...]) -> FuelPlan:
        """Return a copy with *items* in order of time."""
        return replace(self, items=tuple(sorted(items, key=lambda i: i.at_s)))

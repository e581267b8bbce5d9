import pytest
from msgspec.structs import replace

from tests.cards import invented
from ultraplanner_gui.cards.content import card_contents
from ultraplanner_gui.cards.fuel_content import fuel_card
from ultraplanner_gui.cards.pace_content import Clock, pace_card
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.plan.message import PlanError, message
from ultraplanner_gui.wording.cautions import STANDING
from ultraplanner_gui.wording.words import Words

WORDS = Words()

PACE = """
Mill Ford    | 12.4  | 410 · 220 | 9:41  | Sat 08:00 |        | 1 h 23 | 08:30 | 09:23     | –
Col Hut      | 25.1  | 760 · 180 | 11:01 | Sat 10:20 |        | 1 h 23 | 10:50 | 11:43     | –
Ash Green    | 38.6  | 310 · 820 | 11:16 | Sat 12:52 | 5 min  | 1 h 23 | 13:22 | 14:15     | 14:30
Halfway Barn | 52.2  | 520 · 410 | 11:41 | Sat 15:36 | 12 min | 1 h 23 | 16:06 | 16:59     | 17:15
Long Ridge   | 68.3  | 890 · 610 | 12:22 | Sat 19:07 |        | 1 h 23 | 19:37 | 20:30     | 20:30
Old Quarry   | 81.7  | 240 · 930 | 12:55 | Sat 22:00 | 10 min | 3 h 13 | 22:30 | Sun 01:13 | –
Weir         | 92.0  | 180 · 410 | 12:20 | Sun 00:17 |        | 3 h 13 | 00:47 | 03:30     | 03:30
Finish       | 101.4 | 920 · 650 | 12:40 | Sun 02:16 |        | 3 h 44 | 02:46 | 06:00     | 06:00
"""

FUEL = """
Start → Mill Ford |          | 2 h 00 | 4 × Gel, 1 × Drink mix | 130 g | 65 g/h | 0.5 L
→ Col Hut         |          | 2 h 20 | 1 × Banana, 4 × Gel, 2 × Drink mix | 185 g | 79 g/h | 1.0 L
→ Ash Green       |          | 2 h 37 | 5 × Gel, 1 × Banana, 2 × Drink mix | 210 g | 80 g/h | 1.0 L
→ Halfway Barn    | BAG CREW | 2 h 51 | 5 × Gel, 1 × Banana, 2 × Drink mix | 210 g | 74 g/h | 1.0 L
→ Long Ridge      |          | 3 h 19 | 5 × Gel, 2 × Banana, 2 × Drink mix, \
1 × Coffee gel at Sat 18:30 | 260 g | 78 g/h | 1.0 L
→ Old Quarry      |          | 3 h 03 | 6 × Gel, 2 × Drink mix, 1 × Banana | 235 g | 77 g/h | 1.0 L
→ Weir            | CREW     | 2 h 07 | 2 × Drink mix, 4 × Gel, 1 × Banana | 185 g | 87 g/h | 1.0 L
→ Finish          |          | 1 h 59 | 4 × Gel, 1 × Drink mix | 130 g | 66 g/h | 0.5 L
"""


def _table(text):
    return [[cell.strip() for cell in line.split("|")] for line in text.strip().splitlines()]


def _day_time(clock):
    return f"{clock.day} {clock.time}".strip()


def test_pace_rows_read_as_the_plan_says():
    rows = [
        [r.name, r.distance, r.climb_drop, r.pace, r.on_plan, r.stop, r.in_hand]
        + [_day_time(clock) for clock in (r.late, r.last, r.cutoff)]
        for r in pace_card(invented.outlook(), WORDS).rows
    ]
    assert rows == _table(PACE)


def test_pace_card_says_start_and_target():
    card = pace_card(invented.outlook(), WORDS)
    assert (card.title, card.subtitle) == (
        "Fellside Hundred",
        "start Sat 06:00 · target 20 h 16",
    )
    assert card.warnings == ()
    assert card.notes == ("last: every cutoff from here on is still met at planned speed",)


def test_heads_name_the_units_chosen():
    heads = pace_card(invented.outlook(), Words("imperial")).heads
    assert (heads.distance, heads.climb_drop, heads.pace) == (
        "mi",
        "climb · drop\u00a0ft",
        "min/mi",
    )


def test_no_cutoffs_no_columns_for_them():
    card = pace_card(invented.without_cutoffs(), WORDS)
    assert (card.heads.in_hand, card.heads.last, card.heads.cutoff) == ("", "", "")
    assert card.heads.late == "30 late"
    assert card.notes == ()


def test_no_heights_no_climb_and_no_profile():
    card = pace_card(invented.outlook(has_elevation=False), WORDS)
    assert card.heads.climb_drop == ""
    assert card.sketch.line == ()
    assert len(card.sketch.stations) == 7
    assert card.warnings[0] == "The course has no heights: paced as level ground."


def test_profile_keeps_its_highest_and_lowest_point():
    card = pace_card(invented.outlook(), WORDS)
    heights = [y for _, y in card.sketch.line]
    assert (min(heights), max(heights)) == (0.0, 1.0)
    assert [x for x, _ in card.sketch.line] == sorted(x for x, _ in card.sketch.line)
    assert (card.sketch.lowest, card.sketch.highest) == ("148 m", "983 m")


def test_dark_lies_where_the_runner_is_in_the_dark():
    twilight, dark = pace_card(invented.outlook(), WORDS).sketch.shades
    assert (twilight.kind, dark.kind) == ("twilight", "dark")
    # 16.5 h: 20 min after leaving Old Quarry, at 740 s per km.
    km = 81.7 + (16.5 - 16 - 10 / 60) * 3600 / 740
    assert dark.start * 101.4 == pytest.approx(km, abs=0.1)
    assert (twilight.end, dark.end) == (dark.start, 1.0)


def test_latest_times_are_never_rounded_up():
    places = list(invented.PLACES)
    places[4] = (*places[4][:4], 13 + 7 / 60 + 40 / 3600, 0, 14.5)
    row = pace_card(invented.outlook(tuple(places)), WORDS).rows[3]
    # 1 h 22 min 20 s in hand from 15:36 on: 16:58:20.
    assert row.last == Clock("16:58")


def test_a_plan_that_misses_a_cutoff_says_so():
    places = list(invented.PLACES)
    places[6] = (*places[6][:6], 18.0)
    card = pace_card(invented.outlook(tuple(places)), WORDS)
    assert card.warnings[0] == "This plan misses the cutoff at Weir."
    assert card.rows[6].in_hand == "-17 min"


def test_a_cutoff_missed_by_a_late_half_hour_is_named():
    places = list(invented.PLACES)
    places[2] = (*places[2][:6], 7.0)
    card = pace_card(invented.outlook(tuple(places)), WORDS)
    assert card.warnings[0] == "30 min late misses the cutoff at Ash Green."


def test_a_section_that_ends_at_no_station_goes_by_its_distance():
    outlook = invented.outlook()
    free = replace(outlook.sections[2], station=None, name="")
    outlook = replace(outlook, sections=(*outlook.sections[:2], free, *outlook.sections[3:]))
    rows = pace_card(outlook, WORDS).rows
    assert (rows[2].name, rows[-1].name) == ("38.6 km", "Finish")


def test_trouble_of_the_plan_stands_on_the_card():
    outlook = replace(invented.outlook(), trouble=message("Give the section less."))
    assert pace_card(outlook, WORDS).warnings == ("Give the section less.",)


def test_fuel_rows_read_as_the_plan_says():
    rows = [
        [r.name, " ".join(r.marks), r.time, ", ".join(r.foods), r.carbs, r.rate, r.fluid]
        for r in fuel_card(invented.outlook(), WORDS).rows
    ]
    assert rows == _table(FUEL)


def test_fuel_total_is_the_sum_of_the_legs():
    card = fuel_card(invented.outlook(), WORDS)
    grams = sum(int(row.carbs.removesuffix(" g")) for row in card.rows)
    assert card.total.carbs == f"{grams:,} g"
    assert (card.total.time, card.total.rate, card.total.fluid) == ("20 h 16", "76 g/h", "7.0 L")


def test_every_fuel_card_carries_the_standing_caution():
    for fuelled in (True, False):
        assert fuel_card(invented.outlook(fuelled=fuelled), WORDS).notes[-1] == STANDING


def test_one_of_each_loose_food_is_explained():
    assert fuel_card(invented.outlook(), WORDS).notes[0] == "1 × Drink mix: 500 mL; Banana: 1 fruit"


def _with_foods(*names):
    outlook = invented.outlook()
    foods = tuple(replace(f, name=n) for f, n in zip(invented.FOODS, names, strict=True))
    fuel = replace(outlook.project.fuel, foods=foods)
    return replace(outlook, project=replace(outlook.project, fuel=fuel))


def test_a_long_food_name_stands_in_full_at_the_foot():
    outlook = _with_foods("Gel, two sugars", "Coffee gel", "Banana", "Mix, 6 %, two sugars")
    card = fuel_card(outlook, WORDS)
    assert card.rows[0].foods == ("4 × Gel", "1 × Mix")
    assert card.notes[0] == (
        "1 × Gel, two sugars: 1 sachet; Mix, 6 %, two sugars: 500 mL; Banana: 1 fruit"
    )


def test_foods_that_a_short_name_would_confuse_keep_theirs():
    card = fuel_card(_with_foods("Gel, plain", "Gel, coffee", "Banana", "Mix"), WORDS)
    assert card.rows[0].foods == ("4 × Gel, plain", "1 × Mix")


def test_an_empty_fuel_plan_says_so():
    card = fuel_card(invented.outlook(fuelled=False), WORDS)
    assert card.notes[0] == "No food is placed yet. Place some on the race day lanes."
    assert {row.foods for row in card.rows} == {("nothing planned",)}
    assert {row.carbs for row in card.rows} == {"0 g"}


NEEDS_A_COURSE = sorted({*CardKind} - {CardKind.WHO, CardKind.WALL, CardKind.WEEKS})


@pytest.mark.parametrize("kind", NEEDS_A_COURSE)
def test_without_a_course_a_card_asks_for_one(kind):
    outlook = replace(invented.outlook(), profile=None, target=None, sections=(), fuel=None)
    with pytest.raises(PlanError) as refused:
        card_contents(Card(kind), outlook, WORDS)
    assert WORDS.say(refused.value.message) == (
        "There is no course yet. Open a GPX file, then make the cards."
    )

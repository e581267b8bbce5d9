from itertools import pairwise

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt

from ultraplanner_gui.plan.course import AidStation
from ultraplanner_gui.plan.fuel import FuelItem
from ultraplanner_gui.raceday.clock_lanes import InHandLane
from ultraplanner_gui.raceday.light_lane import LightLane
from ultraplanner_gui.raceday.station_head import StationHead
from ultraplanner_gui.widgets.lane import UNIT_PT
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words


def many_stations(course_of, count=25):
    names = ("Hut", "The long white bridge", "Well", "Old mill at the falls", "Gate")
    return course_of(
        tuple(
            AidStation(f"s{k}", f"{names[k % 5]} {k}", 2_000.0 * (k + 1), 1_800.0 * (k + 1))
            for k in range(count)
        )
    )


def many_items(base, count=300):
    foods = [f.key for f in base.fuel.foods]
    items = (FuelItem(f"i{k}", foods[k % len(foods)], k * 108.0, 0.5) for k in range(count))
    return base.fuel.with_items(tuple(items))


PARTS = {
    "usual": lambda base, course_of: {},
    "no course": lambda base, course_of: {"course": None},
    "no stations": lambda base, course_of: {"course": course_of(())},
    "no cutoffs": lambda base, course_of: {
        "course": replace(
            base.course,
            stations=tuple(replace(s, cutoff_s=None) for s in base.course.stations),
        ),
        "race": replace(base.race, limit_s=None),
    },
    "cutoffs that cannot be made": lambda base, course_of: {
        "race": replace(base.race, limit_s=6 * 3600.0)
    },
    "no heights": lambda base, course_of: {
        "course": course_of(base.course.stations, heights=False)
    },
    "25 stations": lambda base, course_of: {"course": many_stations(course_of)},
    "300 items": lambda base, course_of: {"fuel": many_items(base)},
    "nothing to eat": lambda base, course_of: {"fuel": base.fuel.with_items(())},
}


@pytest.mark.parametrize("size", [(300, 160), (1389, 380), (1900, 460)], ids=str)
@pytest.mark.parametrize("parts", PARTS)
def test_any_race_is_painted_without_a_warning(stage_of, base, course_of, parts, size):
    stage = stage_of(size=size, **PARTS[parts](base, course_of))
    for measure in ("distance", "clock"):
        stage.storey.choose_measure(measure)
        stage.wheel(stage.storey.profile, QPoint(200, 10), 3)
        for lane in (stage.storey.profile, stage.target, stage.fuel):
            lane.setFocus()
            for x in range(0, size[0], 97):
                lane.readout(QPoint(x, 12).toPointF())
        assert not stage.storey.grab().isNull()


@pytest.fixture
def _light_again():
    yield
    theme().choose("light", 100)


@pytest.mark.usefixtures("_light_again")
def test_theme_changes_under_an_open_storey(stage):
    theme().choose("light", 100)
    light = stage.storey.grab().toImage()

    theme().choose("dark", 100)
    dark = stage.storey.grab().toImage()
    theme().choose("light", 100)

    assert dark != light
    assert stage.storey.grab().toImage() == light


@pytest.mark.usefixtures("_light_again")
def test_larger_text_keeps_the_lanes_apart(stage):
    theme().choose("light", 200)
    stage.storey.resize(1600, 900)
    stage.storey.grab()

    seen = [lane for lane in stage.storey.lanes if lane.isVisible()]
    assert len(seen) > 7
    for above, below in pairwise(seen):
        assert above.geometry().bottom() < below.geometry().top()


def head(stage):
    return stage.storey.findChild(StationHead)


def test_names_and_cutoffs_stand_over_their_lines(stage):
    labels = {one.name: one for one in head(stage)._seen(head(stage).body())}

    # three and a half hours after 18:00
    assert labels["Ford"].under == "by Sat 21:30"
    assert labels["Ridge"].under == ""
    assert labels["Finish"].under == "by Sun 06:00"
    assert labels["Start"].under == "Sat 18:00"
    assert not labels["Start"].is_cutoff
    assert labels["Barn"].x == pytest.approx(stage.target.x_of(30_000.0, stage.target.body()))


@pytest.mark.parametrize("width", [700, 1000, 1389, 1900])
@pytest.mark.parametrize("count", [1, 3, 9, 25])
def test_names_never_cover_each_other(stage_of, course_of, width, count):
    stage = stage_of(size=(width, 400), course=many_stations(course_of, count))
    lane = head(stage)

    rects = [rect for _, rect in lane._places(lane._seen(lane.body()), lane.body())]

    assert len(rects) == count + 2
    for k, rect in enumerate(rects):
        assert rect.right() <= lane.width() + 1.0
        for other in rects[k + 1 :]:
            assert not rect.adjusted(0.5, 0.5, -0.5, -0.5).intersects(other)


@pytest.mark.parametrize("width", [400, 700, 1389])
def test_a_cutoff_is_never_cut_short(stage_of, course_of, width):
    stage = stage_of(size=(width, 400), course=many_stations(course_of))
    lane, metrics = head(stage), theme().metrics(UNIT_PT)

    for label, rect in lane._places(lane._seen(lane.body()), lane.body()):
        said = label.clock_in(rect.width())
        assert metrics.horizontalAdvance(said) <= rect.width() + 1.0
        clock = label.under[-5:]
        assert said in ("", label.under, f"by {clock}", clock)


def test_a_cutoff_without_its_weekday_still_says_by(stage_of):
    label = head(stage_of())._label("Finish", 24 * 3600.0)
    width = theme().metrics(UNIT_PT).horizontalAdvance
    assert label.under.startswith("by ")
    assert label.clock_in(width(label.under) - 1.0) == f"by {label.under[-5:]}"
    assert label.clock_in(width(label.under[-5:])) == label.under[-5:]


def test_crowded_names_take_a_second_row_and_give_it_back(stage_of):
    stage = stage_of(size=(320, 400))
    two = head(stage).height()

    stage.storey.resize(1400, 400)
    stage.storey.grab()

    assert head(stage).height() < two


def test_nothing_jumps_under_a_zoom(stage_of, course_of):
    stage = stage_of(course=many_stations(course_of, 9))
    stage.storey.grab()
    before = [lane.geometry() for lane in stage.storey.lanes]

    stage.wheel(stage.storey.profile, QPoint(600, 20), 12)
    stage.keys(stage.target, Qt.Key.Key_Space, Qt.Key.Key_Up, Qt.Key.Key_Space)
    stage.storey.grab()

    assert [lane.geometry() for lane in stage.storey.lanes] == before


def test_name_that_was_cut_short_is_said_in_full(stage_of, course_of):
    stage = stage_of(course=many_stations(course_of))
    lane = head(stage)
    x = stage.target.x_of(4_000.0, stage.target.body())

    said = lane.readout(QPoint(round(x), 5).toPointF())
    assert said.startswith("The long white bridge 1, 4.0 km, cutoff Sat 19:00")


def test_cutoff_that_cannot_be_made_is_said_to_be_late(stage_of, base):
    stage = stage_of(race=replace(base.race, limit_s=6 * 3600.0))
    lane = stage.storey.findChild(InHandLane)

    said = lane.readout(QPoint(round(lane.body().right()) - 5, 5).toPointF())

    # nine hours are asked, six are given; the forecast ends with the target
    assert said == "3 h 00 too late for a cutoff from here on"


def test_in_hand_follows_a_drag(stage):
    lane = stage.storey.findChild(InHandLane)
    at = QPoint(round(lane.body().left()) + 5, 5).toPointF()
    before = lane.readout(at)

    stage.drag(stage.target, stage.top("to-ford"), stage.top("to-ford") + QPoint(0, 6))

    assert lane.readout(at) != before


def test_light_is_said_with_its_hours(stage):
    lane = stage.storey.findChild(LightLane)

    said = lane.readout(lane.body().center() + QPoint(150, 0).toPointF())

    # midsummer night at 54 degrees north: dark only for a few hours (from memory)
    assert said.startswith("Dark from Sat 22:")


def test_profile_says_place_height_gradient_and_clock(stage):
    lane = stage.storey.profile
    x = lane.x_of(30_000.0, lane.body())

    parts = lane.readout(QPoint(round(x), 20).toPointF()).split(", ")

    assert parts[0] in ("30.0 km", "30.1 km")
    assert parts[2].startswith("gradient")
    assert parts[3].startswith("Sat ")


def test_readouts_are_in_the_users_units(stage_of):
    stage = stage_of(words=Words(units="imperial"))
    lane = stage.storey.profile

    said = lane.readout(QPoint(round(lane.x_of(16_093.44, lane.body())), 20).toPointF())

    assert said.startswith("10.0 mi")
    assert " ft," in said


def test_picture_of_the_profile_is_kept_while_targets_are_dragged(stage):
    stage.storey.grab()
    kept = stage.storey.profile._picture

    stage.drag(stage.target, stage.top("to-ford"), stage.top("to-ford") + QPoint(0, -4))
    stage.storey.grab()

    assert stage.storey.profile._picture is kept


def test_station_is_added_in_the_middle_of_the_chosen_section(stage):
    stage.selection.choose("section", "to-barn")

    stage.storey.add_station()

    assert stage.kept("to-station").end_m == 22_000.0
    assert stage.undo.count() == 1


def test_station_is_added_in_the_longest_section_if_none_is_chosen(stage):
    stage.storey.add_station()

    assert stage.kept("to-station").end_m == 22_000.0


def test_without_a_course_there_is_no_station_to_add(stage_of):
    stage = stage_of(course=None)

    stage.storey.add_station()

    assert stage.refused == []
    assert stage.undo.count() == 0


def test_every_lane_that_takes_keys_has_a_name(stage):
    for lane in (stage.target, stage.fuel):
        assert lane.accessibleName()

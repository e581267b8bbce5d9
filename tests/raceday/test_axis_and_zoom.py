import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from ultraplanner_gui.raceday.clock_lanes import FootLane

Key = Qt.Key


def axis(stage):
    return stage.target.axis


def place(stage, x):
    lane = stage.storey.profile
    return axis(stage).distance_at(x - lane.body().left(), lane.body().width())


@pytest.mark.parametrize("measure", ["distance", "clock"])
@pytest.mark.parametrize("turns", [1, 3, -1])
def test_zoom_keeps_the_point_under_the_pointer(stage, measure, turns):
    lane = stage.storey.profile
    stage.storey.choose_measure(measure)
    at = QPoint(round(lane.body().left() + 0.7 * lane.body().width()), 20)
    stage.wheel(lane, at, 4)
    under = place(stage, at.x())
    span = axis(stage).high - axis(stage).low

    stage.wheel(lane, at, turns)

    assert place(stage, at.x()) == pytest.approx(under, abs=1.0)
    assert (axis(stage).high - axis(stage).low < span) is (turns > 0)


def test_zoom_out_ends_at_the_whole_race(stage):
    lane, whole = stage.storey.profile, (axis(stage).low, axis(stage).high)
    at = QPoint(600, 20)
    stage.wheel(lane, at, 5)
    stage.wheel(lane, at, -20)

    assert (axis(stage).low, axis(stage).high) == whole


def test_zoom_in_ends_at_a_hundredth_of_the_race(stage):
    whole = axis(stage).high
    stage.wheel(stage.storey.profile, QPoint(600, 20), 100)

    assert axis(stage).high - axis(stage).low == pytest.approx(whole / 100)


def test_wheel_alone_pans_while_zoomed_and_stays_on_the_course(stage):
    lane, none = stage.storey.profile, Qt.KeyboardModifier.NoModifier
    stage.wheel(lane, QPoint(600, 20), 3)
    low = axis(stage).low
    stage.wheel(lane, QPoint(600, 20), -1, none)
    assert axis(stage).low > low
    stage.wheel(lane, QPoint(600, 20), -50, none)
    assert axis(stage).high == pytest.approx(stage.document.shown.profile.length_m)


def test_keys_zoom_about_what_is_chosen_and_back(stage):
    whole = (axis(stage).low, axis(stage).high)
    stage.selection.choose("section", "to-ridge")
    middle_m = 37_500.0
    lane = stage.target
    x = lane.x_of(middle_m, lane.body())

    stage.target.setFocus()
    QTest.keyClicks(stage.target, "++")
    assert axis(stage).high - axis(stage).low == pytest.approx((whole[1]) / 1.25**2)
    assert lane.x_of(middle_m, lane.body()) == pytest.approx(x, abs=1.0)
    QTest.keyClicks(stage.target, "0")

    assert (axis(stage).low, axis(stage).high) == whole


def test_choosing_by_keys_brings_the_section_into_view(stage):
    stage.wheel(stage.target, QPoint(round(stage.target.body().left()) + 5, 20), 8)
    assert stage.target.x_of(14_000.0, stage.target.body()) > stage.target.width()

    stage.keys(stage.target, Key.Key_Right, Key.Key_Right)

    assert axis(stage).low <= stage.kept("to-ridge").end_m <= axis(stage).high + 1e-6


def test_view_stays_through_an_edit(stage):
    stage.selection.choose("section", "to-barn")
    stage.wheel(stage.target, QPoint(600, 20), 3)
    view = axis(stage).low, axis(stage).high

    stage.keys(stage.target, Key.Key_Space, Key.Key_Up, Key.Key_Space)

    assert stage.undo.count() == 1
    assert (axis(stage).low, axis(stage).high) == view


def test_trial_that_leaves_the_view_alone_moves_no_axis(stage):
    moved = []
    axis(stage).changed.connect(lambda: moved.append(1))

    stage.drag(stage.target, stage.edge("to-ford"), stage.edge("to-ford") + QPoint(30, 0))

    assert moved == []


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_many_at_once_agree_with_one_by_one(stage, measure):
    stage.storey.choose_measure(measure)
    race, width = axis(stage), 1000.0
    times = np.linspace(0.0, 9 * 3600.0, 500)
    xs = np.linspace(0.0, width, 500)

    one_by_one = [race.x_of_time(float(t), width) for t in times]
    assert race.x_of_times(times, width) == pytest.approx(one_by_one, abs=1e-6)
    places = [race.distance_at(float(x), width) for x in xs]
    assert race.distances_at(xs, width) == pytest.approx(places, abs=1e-6)


def test_buttons_switch_between_distance_and_clock(stage):
    distance, clock = stage.storey.title.buttons.values()

    QTest.mouseClick(clock, Qt.MouseButton.LeftButton)
    assert axis(stage).measure == "clock"
    assert axis(stage).high == pytest.approx(9 * 3600.0)
    QTest.mouseClick(distance, Qt.MouseButton.LeftButton)

    assert axis(stage).measure == "distance"
    assert axis(stage).high == pytest.approx(stage.document.shown.profile.length_m)


def test_stop_takes_width_by_clock_and_none_by_distance(stage):
    arrive = stage.kept("to-barn").arrive_s
    stop_px = []
    for measure in ("distance", "clock"):
        stage.storey.choose_measure(measure)
        stop_px.append(
            axis(stage).x_of_time(arrive + 600.0, 1000.0) - axis(stage).x_of_time(arrive, 1000.0)
        )

    assert stop_px == [pytest.approx(0.0, abs=0.1), pytest.approx(600.0 / 32.4, abs=0.1)]


def foot(stage):
    return stage.storey.findChild(FootLane)


def test_foot_counts_the_distance(stage):
    texts = [text for _, text in foot(stage)._marks(foot(stage).body())]

    assert texts[0] == "0"
    assert texts[-1] == "60"


def test_foot_says_the_weekday_where_it_changes(stage):
    stage.storey.choose_measure("clock")

    texts = [text for _, text in foot(stage)._marks(foot(stage).body())]

    # start on a Saturday at 18:00, nine hours ahead
    assert texts[0] == "Sat 18:00"
    assert texts[-1] == "03:00"
    assert [text for text in texts if " " in text] == ["Sat 18:00", "Sun 00:00"]


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_marks_of_the_foot_never_repeat_however_deep_the_zoom(stage, measure):
    stage.storey.choose_measure(measure)
    for _ in range(20):
        stage.wheel(stage.storey.profile, QPoint(640, 20), 1)
        marks = foot(stage)._marks(foot(stage).body())
        texts = [text for _, text in marks]
        assert len(set(texts)) == len(texts) > 1

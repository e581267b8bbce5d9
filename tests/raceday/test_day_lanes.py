import math
from itertools import pairwise

import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPointF

from ultraplanner_gui.edits.course import AddStation, ChangeStation
from ultraplanner_gui.plan.conditions import Conditions, ValleyForecast
from ultraplanner_gui.raceday import clock_lanes, race_lane, warmth_lane

WEATHER = ValleyForecast(8.0, 24.0, 60.0, 50.0)


def warm(base, **changes):
    return replace(base, conditions=Conditions(replace(WEATHER, **changes)))


def at(lane, place_m):
    return QPointF(lane.x_of(place_m, lane.body()), lane.body().center().y())


def test_warmth_is_read_where_one_passes_by_day_and_by_night(stage_of, base):
    stage = stage_of(project=warm(base))
    lane = stage.storey.warmth
    evening = lane.readout(at(lane, 2_000.0))
    night = lane.readout(at(lane, 45_000.0))

    assert "WBGT about" in evening
    assert "too high under cloud" in evening
    assert "in the dark" in night
    assert "WBGT" not in night


def test_warmth_without_weather_says_where_to_type_it(stage):
    assert stage.storey.warmth.readout(QPointF(300, 10)) == ""


def test_other_weather_repaints_the_warmth_alone_of_the_sky(stage_of, base, qtbot):
    stage = stage_of(project=warm(base), size=(1200, 700))
    lane = stage.storey.warmth
    before = lane.grab().toImage()
    hotter = warm(stage.document.project, warmest_c=38.0)
    from ultraplanner_gui.edits.pace import SetConditions

    edit = SetConditions(hotter.conditions, stage.document.project.runner.night_loss)
    assert stage.document.perform(edit)

    assert lane.grab().toImage() != before


def test_walk_in_limit_is_said_beside_the_time_in_hand(stage):
    lane = stage.storey.in_hand
    spare_s = stage.document.shown.race.walk_spare_s([1_000.0, 59_000.0])
    first, last = (lane.readout(at(lane, m)) for m in (1_000.0, 59_000.0))

    assert ("cannot be walked in" in first) is bool(spare_s[0] < 0)
    assert ("only if well" in last) is bool(spare_s[1] >= 0)


@pytest.mark.parametrize("width", range(900, 1900, 125))
def test_the_name_of_the_walk_in_limit_ends_where_its_line_comes_up(stage_of, monkeypatch, width):
    stage = stage_of(size=(width, 900))
    lane, named = stage.storey.in_hand, []
    lines = []
    monkeypatch.setattr(
        clock_lanes,
        "draw_text",
        lambda _p, rect, text, *more: named.append(rect) if "walk-in" in text else None,
    )
    monkeypatch.setattr(clock_lanes, "QPolygonF", lambda points: lines.append(points) or [])
    lane.update()
    lane.grab()
    line = lines[-1]
    inside = [p for p in line if p.y() < lane.body().bottom()]
    assert named
    assert all(rect.right() <= min(p.x() for p in inside) for rect in named)


def test_walk_in_limit_follows_a_target_that_is_dragged(stage):
    before = stage.document.shown.race.walk_spare_s([20_000.0])[0]
    end = stage.top("to-ford")
    end.setY(end.y() + 5)
    stage.drag(stage.target, stage.top("to-ford"), end)

    assert stage.document.shown.race.walk_spare_s([20_000.0])[0] < before


def test_walked_stretches_are_said_in_the_target_lane(stage):
    part = next(p for p in stage.document.shown.walked if p.is_walked)
    lane = stage.target
    said = lane.readout(at(lane, (part.start_m + part.end_m) / 2))

    assert "At walking pace here" in said
    walked = np.array([p.length_m for p in stage.document.shown.walked])
    assert walked.sum() == pytest.approx(stage.document.shown.profile.length_m)


@pytest.mark.parametrize("width", range(700, 1900, 150))
def test_names_of_the_lines_of_warmth_stay_clear_of_them(stage_of, base, monkeypatch, width):
    # From dawn on it grows warmer: the lines rise under their names.
    race = replace(base.race, start=base.race.start.replace(hour=2))
    stage = stage_of(project=replace(warm(base, warmest_c=40.0), race=race), size=(width, 900))
    lane, written = stage.storey.warmth, {}
    monkeypatch.setattr(
        warmth_lane, "draw_text", lambda _p, rect, text, *more: written.__setitem__(text, rect)
    )
    lane.update()
    lane.grab()
    assert written
    scale = lane._scale(lane._warmth, lane.body())
    for text, rect in written.items():
        for x in range(round(rect.left()), round(rect.right())):
            air_c, wbgt_c = lane._warmth.at(lane.place_at(x))
            own_c = air_c if text == "air" else wbgt_c
            assert math.isnan(own_c) or not rect.top() < scale.y(own_c) < rect.bottom()


@pytest.mark.parametrize("height", [330, 500, 900])
@pytest.mark.parametrize("measure", ["distance", "clock"])
@pytest.mark.parametrize("width", range(900, 1900, 250))
def test_nothing_runs_through_the_figures_of_time_in_hand(
    stage_of, base, monkeypatch, width, height, measure
):
    many = base
    for number in range(1, 12):
        many = AddStation(f"Gate {number}", 5_300.0 * number, None, 0.0).apply(many)
    stage = stage_of(project=many, size=(width, height))
    stage.storey.choose_measure(measure)
    lane, figures, lines = stage.storey.in_hand, [], []
    words = {stage.words.duration(s.in_hand_s) for s in stage.document.shown.sections}
    monkeypatch.setattr(
        clock_lanes,
        "draw_text",
        lambda _p, rect, text, *more: figures.append(rect) if text in words else None,
    )
    polygon = clock_lanes.QPolygonF
    monkeypatch.setattr(
        clock_lanes, "QPolygonF", lambda points: (lines.append(points), polygon(points))[1]
    )
    lane.update()
    lane.grab()
    body = lane.body()
    stations = [
        body.left() + x
        for x in lane.axis.xs_of_stations(
            stage.document.shown.project.course.stations, body.width()
        )
    ]
    scale = lane._scale(body)
    steps = [
        (left, right, scale.y(s))
        for left, right, s in lane._steps(stage.document.shown.sections, body)
    ]
    assert figures
    for rect in figures:
        assert not any(rect.left() < x < rect.right() for x in stations)
        for a, b in pairwise(lines[-1]):
            middle = (a + b) / 2
            assert not any(rect.contains(p) for p in (a, middle, b))
        (y,) = {y for left, right, y in steps if left <= rect.left() < right}
        assert rect.bottom() <= y


def test_lines_of_stations_run_round_the_sentence_of_an_empty_lane(stage_of, base, monkeypatch):
    course = base.course
    open_all = tuple(replace(s, cutoff_s=None) for s in course.stations)
    bare = replace(
        base,
        course=replace(course, stations=open_all),
        race=replace(base.race, limit_s=None),
    )
    stage = stage_of(project=bare, size=(700, 400))
    lane, lines = stage.storey.in_hand, []
    line = race_lane.QLineF
    monkeypatch.setattr(race_lane, "QLineF", lambda *ends: (lines.append(ends), line(*ends))[1])
    lane.update()
    lane.grab()
    said = lane._sentence
    crossing = [ends for ends in lines if said.left() <= ends[0] <= said.right()]
    assert crossing
    assert all(top >= said.bottom() or foot <= said.top() for _, top, _, foot in crossing)
    assert {ends[0] for ends in lines} > {ends[0] for ends in crossing}
    first = stage.document.project.course.stations[0]
    assert stage.document.perform(ChangeStation(replace(first, cutoff_s=4.0 * 3600.0)))
    lane.grab()
    assert lane._sentence is None

"""A fit that was taken shows in the target, the windows and the predicted finish."""

from datetime import date

import pytest

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.pace import TakeFit
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.prediction import Result, predict

TODAY = date(2027, 4, 5)
LONG_RUN = Result(40_000.0, 600.0, 5.0 * 3600.0, "long run")


@pytest.fixture(scope="module")
def before():
    return derive(demo_project(TODAY), None, TODAY)


def after(before, fade=None, uphill=None, descent=None):
    runner = before.project.runner
    fit = TakeFit(
        runner.fade if fade is None else fade,
        runner.uphill_share if uphill is None else uphill,
        runner.descent_speed if descent is None else descent,
    )
    return derive(fit.apply(before.project), before, TODAY)


def half_way_s(outlook, curve):
    return getattr(outlook.race, curve).arrival_s(0.5 * outlook.project.course.length_m)


@pytest.mark.parametrize("curve", ["forecast", "target"])
def test_a_stronger_fade_is_earlier_half_way_for_the_same_finish(before, curve):
    fading = after(before, fade=before.project.runner.fade + 0.1)
    assert half_way_s(fading, curve) < half_way_s(before, curve)
    assert getattr(fading.race, curve).finish_s == pytest.approx(
        getattr(before.race, curve).finish_s
    )


def test_windows_move_with_the_fade(before):
    fading = after(before, fade=before.project.runner.fade + 0.1)
    middle = len(before.race.odds.windows_s) // 2
    assert fading.race.odds.windows_s[middle] != before.race.odds.windows_s[middle]


def test_a_weaker_climber_is_predicted_later_on_a_course_of_hills(before):
    weak = after(before, uphill=before.project.runner.uphill_share + 0.3)

    def finish_s(outlook):
        return predict(outlook.race.profile, [LONG_RUN], (), outlook.project.runner).middle_s

    assert finish_s(weak) > finish_s(before)

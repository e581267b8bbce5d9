"""The profile keeps a fair height, spare lanes make room for it, and say so."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.widgets.room import Wish, share_out
from ultraplanner_gui.widgets.theme import theme

FAIR_PX = 90
#: A profile, what stays beside it, what is spare.
PROFILE = Wish(44, 110, 420, 1, fair=FAIR_PX)
KEPT = (Wish(36, 58, 110, 2), Wish(66, 92, 150, 7))
SPARE = (Wish(26, 34, 80, 8, is_spare=True), Wish(34, 46, 110, 9, is_spare=True))
WISHES = (PROFILE, *KEPT, *SPARE)


@pytest.fixture
def shown(stage_of):
    def make(height):
        return stage_of(size=(1144, height)).storey

    return make


@given(st.floats(60, 1500))
def test_shares_keep_to_the_room_there_is(height):
    heights = share_out(height, WISHES)
    assert sum(heights) <= height + 1e-6
    assert all(h == 0 or h >= int(w.least) for h, w in zip(heights, WISHES, strict=True))


@given(st.floats(60, 1500))
def test_nothing_spare_is_seen_before_the_profile_has_its_fair_height(height):
    profile, *_, warmth, fluid = share_out(height, WISHES)
    if warmth or fluid:
        assert profile >= FAIR_PX
    assert warmth or not fluid


@given(st.floats(FAIR_PX + 36 + 66, 1500))
def test_lanes_that_are_not_spare_stay_beside_a_fair_profile(height):
    profile, target, fuel, *_ = share_out(height, WISHES)
    assert profile >= FAIR_PX
    assert target
    assert fuel


@pytest.mark.parametrize("height", [350, 424, 488, 800])
def test_the_profile_has_its_fair_height_in_windows_of_two_storeys(shown, height):
    storey = shown(height)
    assert storey.profile.height() >= FAIR_PX
    for name in ("target", "in_hand", "light", "fuel"):
        assert getattr(storey, name).isVisible()
    parts = sorted((lane for lane in storey.lanes if lane.isVisible()), key=lambda lane: lane.y())
    assert all(a.geometry().bottom() < b.y() for a, b in pairwise(parts))
    assert parts[-1].geometry().bottom() < storey.stack.height()


def test_lanes_without_room_are_named_and_can_be_had(shown):
    storey = shown(350)
    title = storey.title
    assert title.more.isVisible()
    assert title.more.text() == "4 more lanes"
    assert "Glycogen" in title.more.toolTip()
    by_text = {action.text(): action for action in title.more.menu().actions()}
    for name in ("glycogen", "warmth"):
        lane = getattr(storey, name)
        by_text = {action.text(): action for action in title.more.menu().actions()}
        by_text[f"Show {lane.name}"].trigger()
        assert lane.isVisible()
        assert storey.fuel.isVisible()
    assert not storey.glycogen.isVisible()


def test_what_the_user_gave_a_height_is_not_taken_for_the_profile(shown):
    storey = shown(350)
    storey.stack.size_lane("glycogen", 40.0)
    assert storey.glycogen.isVisible()
    assert storey.profile.height() < FAIR_PX


def test_a_profile_the_user_made_low_lets_the_others_back_in(shown):
    storey = shown(350)
    storey.stack.size_lane("profile", 48.0)
    assert storey.profile.height() == 48
    assert storey.glycogen.isVisible()


def test_hidden_lanes_are_not_offered(shown):
    storey = shown(350)
    for name in ("surface", "warmth", "fluid"):
        storey.stack.show_lane(name, False)
    assert storey.title.more.text() == "1 more lane"
    storey.stack.show_lane("glycogen", False)
    assert not storey.title.more.isVisible()


def test_the_whole_window_is_asked_for_with_all_lanes(shown):
    storey, asked = shown(350), []
    storey.alone_wanted.connect(lambda: asked.append(True))
    storey.title.more.menu().actions()[-1].trigger()
    assert asked == [True]
    storey.resize(1144, 800)
    assert not storey.title.more.isVisible()


def test_figures_at_the_cursor_begin_right_of_the_offer(shown):
    storey = shown(350)
    assert storey.title.free_left > storey.title.more.geometry().right()


def test_a_fair_height_grows_with_the_text(shown):
    storey = shown(800)
    theme().choose("light", 150)
    try:
        assert storey.profile.height() >= 1.5 * FAIR_PX - 1
    finally:
        theme().choose("light", 100)

"""The user's choice of lanes as a value."""

from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.widgets.arrangement import Arrangement

NAMES = ["profile", "target", "in hand", "light", "fuel"]
USUAL = Arrangement.usual(NAMES)
deeds = st.lists(
    st.one_of(
        st.tuples(st.just("with_shown"), st.sampled_from(NAMES), st.booleans()),
        st.tuples(st.just("moved"), st.sampled_from(NAMES), st.sampled_from([-1, 1])),
        st.tuples(st.just("sized"), st.sampled_from(NAMES), st.floats(-10, 3000)),
        st.tuples(st.just("placed"), st.sampled_from(NAMES), st.sampled_from(NAMES), st.booleans()),
    ),
    max_size=20,
)


@given(deeds)
def test_every_lane_stays_one_is_shown_and_all_is_read_back(done):
    choice = USUAL
    for name, *arguments in done:
        choice = getattr(choice, name)(*arguments)
    assert sorted(lane.name for lane in choice.lanes) == sorted(NAMES)
    assert choice.shown
    assert Arrangement.read(choice.written(), NAMES) == choice


def test_what_is_unknown_is_passed_over_and_what_is_new_comes_in_its_place():
    read = Arrangement.read(["fuel:120", "glycogen", "-light", "profile", "profile"], NAMES)
    assert [lane.name for lane in read.lanes] == ["fuel", "target", "in hand", "light", "profile"]
    assert read.of("fuel").height_px == 120
    assert not read.of("light").is_shown


def test_all_hidden_counts_as_never_chosen():
    assert Arrangement.read([f"-{name}" for name in NAMES], NAMES) == USUAL

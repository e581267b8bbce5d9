from hypothesis import given
from hypothesis import strategies as st

from tests.cards.font_widths import measure
from ultraplanner_gui.cards.setting import Setting, Widths

PARTS = st.lists(st.text("abcW 5", min_size=1, max_size=12).filter(str.strip), max_size=6).map(
    tuple
)
ROOMS = st.lists(st.floats(3.0, 120.0), min_size=1, max_size=6)


@given(PARTS, ROOMS, st.sampled_from((" ", " · ")), st.booleans())
def test_lines_are_the_same_whatever_was_broken_before(parts, rooms, joint, bold):
    widths = Widths(measure)
    for room in rooms:
        lines = Setting(9.0, widths).wrap_parts(parts, room, 9.0, bold, joint)
        fresh = Setting(9.0, Widths(measure)).wrap_parts(parts, room, 9.0, bold, joint)
        assert list(lines) == list(fresh)


@given(PARTS, st.floats(8.0, 120.0))
def test_no_line_is_wider_than_its_room_and_none_could_take_the_next_part(parts, room):
    setting = Setting(9.0, Widths(measure))
    lines = setting.wrap_parts(parts, room, 9.0, joint=" · ")
    assert all(setting.width_mm(line, 9.0) <= room + 1e-6 for line in lines)
    if all(setting.width_mm(part, 9.0) <= room for part in parts):
        assert " · ".join(lines) == " · ".join(parts)
        firsts = [line.split(" · ")[0] for line in lines[1:]]
        fuller = [f"{line} · {first}" for line, first in zip(lines, firsts, strict=False)]
        assert all(setting.width_mm(line, 9.0) > room for line in fuller)


def test_a_column_as_wide_as_its_widest_text_takes_it_on_one_line():
    text = "Halfway Barn 12.4"
    for size in (7.9, 8.3, 9.1, 10.7, 11.3):
        setting = Setting(size, Widths(measure))
        assert setting.wrap(text, setting.width_mm(text, size), size) == [text]

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from PySide6.QtCore import Qt

from tests.widgets.hut_table import HUTS, SOME_KEYS, Hut, Key, Owner, put, texts
from ultraplanner_gui.widgets.table_filter import FilterField
from ultraplanner_gui.wording.words import Words


def test_rows_that_hold_every_word_in_any_cell_are_left(owner):
    owner.model.filter("turf BARN")
    assert texts(owner.model) == ["Ash Barn"]
    owner.model.filter("hut barn")
    assert texts(owner.model) == []
    owner.model.filter("")
    assert len(texts(owner.model)) == 3


def test_accents_and_case_do_not_matter(owner):
    owner.model.show_rows((Hut("é", "Refuge des Éclaireurs"), HUTS[0]))
    owner.model.filter("eclai")
    assert texts(owner.model) == ["Refuge des Éclaireurs"]


def test_a_tick_is_found_by_the_name_of_its_column(owner):
    owner.model.filter("open")
    assert texts(owner.model) == ["Ash Barn"]


def test_a_filter_does_not_take_the_row_one_types_in(owner):
    owner.model.filter("barn")
    assert owner.model.type_in(0, 0, "Ash House")
    assert texts(owner.model) == ["Ash House"]
    owner.model.filter("barn")
    assert texts(owner.model) == []


def test_rows_that_come_later_and_those_that_fit_by_now_are_seen(owner):
    owner.model.filter("barn")
    owner.model.show_rows((*HUTS[:2], replace(HUTS[2], name="Weir Barn"), Hut("n", "New")))
    assert texts(owner.model) == ["Ash Barn", "Weir Barn", "New"]


def test_filtered_rows_are_sorted_and_keep_their_selection(owner, view):
    put(view, 2, 1)
    owner.model.sort(1, Qt.SortOrder.DescendingOrder)
    owner.model.filter("i")
    assert texts(owner.model) == ["Weir"]
    assert view.chosen_keys() == ("c",)
    owner.model.filter("")
    assert texts(owner.model) == ["Col Hut", "Weir", "Ash Barn"]
    assert view.chosen_keys() == ("c",)


words = st.text(st.sampled_from("aehtu 15"), max_size=4)
steps = st.one_of(
    st.tuples(st.just("filter"), words),
    st.tuples(st.just("sort"), st.integers(-1, 4), st.booleans()),
    st.tuples(st.just("type"), st.integers(0, 4), st.text("aeht15", min_size=1, max_size=3)),
    st.tuples(st.just("rows"), SOME_KEYS),
)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(steps, max_size=8))
def test_filter_sort_and_edits_compose(qapp, taken):
    """However they follow each other: no row twice, all in order, nothing hidden that fits."""
    held = Owner()
    model, text, by, falls = held.model, "", -1, False
    for step in taken:
        if step[0] == "filter":
            text = step[1]
            model.filter(text)
        elif step[0] == "sort":
            by, falls = step[1:]
            order = Qt.SortOrder.DescendingOrder if falls else Qt.SortOrder.AscendingOrder
            model.sort(by, order)
        elif step[0] == "rows":
            held.huts = tuple(Hut(k, k * 2, float(ord(k))) for k in step[1])
            model.show_rows(held.huts)
        elif step[1] < model.rowCount():
            model.type_in(step[1], 0, step[2])
    seen = [row.key for row in model.rows]
    assert len(set(seen)) == len(seen)
    assert set(seen) <= {hut.key for hut in held.huts}
    said = {
        hut.key: f"{hut.name} {model.words.height_bare(hut.height_m)} {hut.roof} {len(hut.name)}"
        + " open" * hut.is_open
        for hut in held.huts
    }
    fits = [
        key for key, all_text in said.items() if all(w in all_text.lower() for w in text.split())
    ]
    assert set(fits) <= set(seen)
    if by == 0:
        names = [row.name.casefold() for row in model.rows]
        assert names == sorted(names, reverse=falls)


def test_the_field_counts_and_gives_the_keys_back(qapp, qtbot):
    field = FilterField("Filter huts", Words)
    qtbot.addWidget(field)
    field.show()
    field.start()
    with qtbot.waitSignal(field.words_changed):
        qtbot.keyClicks(field.field, "barn")
    field.show_count(12, 1096)
    assert field.count.text() == "12 of 1,096"
    with qtbot.waitSignal(field.left):
        qtbot.keyClick(field.field, Key.Key_Escape)
    assert field.field.text() == ""
    field.show_count(1096, 1096)
    assert field.count.text() == ""

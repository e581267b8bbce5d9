import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from PySide6.QtCore import QItemSelectionModel, QPersistentModelIndex, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QComboBox, QLineEdit

from tests.widgets.hut_table import (
    COLUMNS,
    HUTS,
    SOME_KEYS,
    ChangeHut,
    Current,
    Hut,
    Key,
    editor,
    put,
    texts,
    type_into,
)
from ultraplanner_gui.widgets.table import TableModel
from ultraplanner_gui.widgets.table_column import Aim, Mark
from ultraplanner_gui.wording.words import NONE, Words

# The model


def test_the_model_keeps_the_rules_of_qt(owner, qtmodeltester):
    qtmodeltester.check(owner.model)
    owner.model.show_rows((HUTS[2], Hut("d", "New"), replace(HUTS[0], height_m=5.0)))
    owner.model.sort(0)
    owner.model.show_rows(HUTS)


def test_cells_are_finished_text(owner):
    model = owner.model
    assert model.index(0, 1).data() == "1,500"
    assert model.index(1, 1).data() == NONE
    assert model.index(0, 2).data() is None
    assert model.index(1, 2).data(Qt.ItemDataRole.AccessibleTextRole) == "yes"
    assert model.headerData(1, Qt.Orientation.Horizontal) == "Height, m"


def test_typing_performs_the_edit_of_the_column(owner):
    assert owner.model.setData(owner.model.index(2, 1), "402 m")
    assert owner.edits == [ChangeHut(replace(HUTS[2], height_m=402.0))]
    assert owner.model.text(2, 1) == "402"


def test_text_left_as_it_was_is_no_edit(owner):
    for row in range(3):
        for column in (0, 1, 3):
            index = owner.model.index(row, column)
            assert owner.model.setData(index, index.data(Qt.ItemDataRole.EditRole))
    assert owner.edits == []


def test_text_that_cannot_be_read_is_refused_and_the_value_kept(owner, qtbot):
    with qtbot.waitSignal(owner.model.refused) as said:
        assert not owner.model.setData(owner.model.index(0, 1), "high")
    assert str(said.args[0]) == "high is no height."
    assert owner.model.was_refused
    assert (owner.edits, owner.model.text(0, 1)) == ([], "1,500")


def test_an_edit_that_is_refused_leaves_the_cell(owner):
    assert not owner.model.setData(owner.model.index(0, 0), "forbidden")
    assert owner.model.was_refused
    assert owner.model.text(0, 0) == "Col Hut"


def test_a_cell_without_a_parser_or_excepted_cannot_be_edited(owner):
    owner.model.show_rows((Hut("fixed", "Top", 9.0),))
    editable = Qt.ItemFlag.ItemIsEditable
    flags = [bool(owner.model.flags(owner.model.index(0, c)) & editable) for c in range(5)]
    assert flags == [True, False, False, True, False]
    assert not owner.model.setData(owner.model.index(0, 1), "10")


def test_ticking_performs_the_edit(owner):
    index = owner.model.index(0, 2)
    assert owner.model.setData(index, Qt.CheckState.Checked, Qt.ItemDataRole.CheckStateRole)
    assert owner.huts[0].is_open
    checked = index.data(Qt.ItemDataRole.CheckStateRole)
    assert Qt.CheckState(checked) is Qt.CheckState.Checked


def test_only_cells_that_changed_are_told(owner):
    told = []
    owner.model.dataChanged.connect(
        lambda a, b, roles: told.append((a.row(), a.column(), b.row(), b.column()))
    )
    owner.model.show_rows((replace(HUTS[0], name="Col House", roof="tin"), *HUTS[1:]))
    assert told == [(0, 0, 0, 0), (0, 3, 0, 4)]


def test_equal_rows_tell_nothing(owner):
    told = []
    for signal in ("dataChanged", "layoutChanged", "rowsInserted", "rowsRemoved", "modelReset"):
        getattr(owner.model, signal).connect(lambda *args, name=signal: told.append(name))
    owner.model.show_rows(tuple(replace(hut) for hut in HUTS))
    assert told == []


def test_rows_come_and_go_without_a_reset(owner, qtbot):
    with qtbot.assertNotEmitted(owner.model.modelReset):
        owner.model.show_rows((Hut("n", "First"), HUTS[2], HUTS[0], Hut("z", "Last")))
    assert texts(owner.model) == ["First", "Weir", "Col Hut", "Last"]


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(SOME_KEYS, SOME_KEYS, st.sampled_from([-1, 0, 1, 4]), st.booleans())
def test_a_kept_index_stays_on_its_row(qapp, before, after, column, is_falling):
    model = TableModel(COLUMNS, Words, lambda edit: True)
    model.show_rows([Hut(k, k * (1 + ord(k) % 3), float(ord(k) * 7 % 5)) for k in before])
    held = {k: QPersistentModelIndex(model.index(model.row_of(k), 0)) for k in before}
    order = Qt.SortOrder.DescendingOrder if is_falling else Qt.SortOrder.AscendingOrder
    model.sort(column, order)
    model.show_rows([Hut(k, k * (1 + ord(k) % 2), float(ord(k) * 3 % 5)) for k in after])
    assert {row.key for row in model.rows} == set(after)
    if column < 0:
        assert [row.key for row in model.rows] == after
    for key, index in held.items():
        assert index.isValid() == (key in after)
        if index.isValid():
            assert model.thing(index.row()).key == key


def test_sorting_goes_by_value_and_puts_nothing_last(owner):
    rising, falling = Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder
    owner.model.sort(1, rising)
    assert texts(owner.model, 1) == ["310", "1,500", NONE]
    owner.model.sort(1, falling)
    assert texts(owner.model, 1) == ["1,500", "310", NONE]
    owner.model.sort(0, rising)
    assert texts(owner.model) == ["Ash Barn", "Col Hut", "Weir"]
    owner.model.sort(-1)
    assert texts(owner.model) == ["Col Hut", "Ash Barn", "Weir"]


# The view


def test_clicking_a_head_sorts_and_a_third_click_does_not(view, qtbot):
    head = view.horizontalHeader()
    spot = head.viewport().rect().center()
    spot.setX(head.sectionViewportPosition(1) + 10)
    orders = []
    for _ in range(3):
        qtbot.mouseClick(head.viewport(), Qt.MouseButton.LeftButton, pos=spot)
        orders.append(texts(view.model(), 1))
    assert orders[0] == ["310", "1,500", NONE]
    assert orders[1] == ["1,500", "310", NONE]
    assert orders[2] == ["1,500", NONE, "310"]


def test_enter_takes_the_text_and_goes_down(owner, view, qtbot):
    type_into(qtbot, view, 0, 1, "1600")
    assert owner.huts[0].height_m == 1600.0
    assert (view.currentIndex().row(), view.currentIndex().column()) == (1, 1)


def test_a_refused_text_leaves_the_cursor_on_its_cell(owner, view, qtbot):
    type_into(qtbot, view, 0, 1, "high")
    assert (view.currentIndex().row(), owner.edits) == (0, [])


def test_escape_leaves_the_value(owner, view, qtbot):
    type_into(qtbot, view, 0, 1, "1600", Key.Key_Escape)
    assert owner.edits == []


def test_tab_while_typing_goes_on_to_the_next_cell_to_type(owner, view, qtbot):
    type_into(qtbot, view, 0, 0, "Col House", Key.Key_Tab)
    assert owner.huts[0].name == "Col House"
    assert view.currentIndex().column() == 1
    assert isinstance(editor(view), QLineEdit)


def test_tab_leaves_the_table(owner, view, qtbot):
    put(view, 0, 0)
    qtbot.keyClick(view, Key.Key_Tab)
    assert owner.window.focusWidget() is owner.button


def test_typing_a_letter_starts_to_edit(owner, view, qtbot):
    put(view, 2, 0)
    qtbot.keyClick(view, "X")
    assert editor(view).text() == "X"


@pytest.mark.qt_log_ignore("grabbing the keyboard")  # the offscreen platform cannot
def test_a_choice_is_made_from_a_list(owner, view, qtbot):
    put(view, 0, 3)
    qtbot.keyClick(view, Key.Key_F2)
    box = editor(view)
    assert isinstance(box, QComboBox)
    assert [box.itemText(n) for n in range(box.count())] == ["slate", "turf", "tin"]
    assert box.currentText() == "slate"
    assert box.accessibleName() == "Roof"
    box.setCurrentIndex(2)
    box.activated.emit(2)
    assert owner.huts[0].roof == "tin"


@pytest.mark.qt_log_ignore("grabbing the keyboard")
def test_a_double_click_opens_the_list(owner, view, qtbot):
    spot = view.visualRect(view.model().index(0, 3)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    qtbot.mouseDClick(view.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    qtbot.mouseRelease(view.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert editor(view).view().isVisible()
    editor(view).hidePopup()
    assert owner.edits == []


def test_the_menu_copies_pastes_and_sorts(owner, view, qtbot):
    put(view, 0, 1)
    menu = view._menu(1)
    done = {action.text(): action for action in menu.actions() if action.text()}
    done["Copy"].trigger()
    assert QGuiApplication.clipboard().text() == "1500"
    done["Sort by Height, rising"].trigger()
    assert texts(owner.model, 1) == ["310", "1,500", NONE]
    done["Sort by Height, falling"].trigger()
    assert texts(owner.model, 1) == ["1,500", "310", NONE]
    done["Do not sort"].trigger()
    assert texts(owner.model, 1) == ["1,500", NONE, "310"]
    with qtbot.waitSignal(view.pasted) as told:
        done["Paste…"].trigger()
    assert told.args == ["1500"]
    menu.close()


def test_space_and_a_click_tick(owner, view, qtbot):
    put(view, 0, 2)
    qtbot.keyClick(view, Key.Key_Space)
    assert owner.huts[0].is_open
    spot = view.visualRect(view.model().index(2, 2)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert owner.huts[2].is_open


def test_going_to_a_row_is_told_but_not_what_the_program_does(owner, view, qtbot):
    with qtbot.waitSignal(view.row_chosen) as told:
        put(view, 2, 0)
    assert told.args == ["c"]
    with qtbot.assertNotEmitted(view.row_chosen):
        view.show_row("a")
        view.show_rows(HUTS[:1])


def test_selection_stays_with_its_row_when_others_come(owner, view):
    put(view, 2, 1)
    owner.model.sort(1)
    view.show_rows((Hut("n", "New", 1.0), *HUTS))
    assert owner.model.thing(view.currentIndex().row()).key == "c"
    assert view.chosen_keys() == ("c",)


def test_copied_cells_have_heads_and_plain_figures(view, qtbot):
    view.selectAll()
    qtbot.keyClick(view, Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text().split("\n") == [
        "Hut\tHeight, m\tOpen\tRoof\tLetters",
        "Col Hut\t1500\tno\tslate\t7",
        "Ash Barn\t\tyes\tturf\t8",
        "Weir\t310\tno\tslate\t4",
    ]


def test_one_cell_is_copied_without_its_head(view):
    put(view, 0, 1)
    assert view.copied() == "1500"


def test_cells_not_selected_between_others_are_copied_empty(view):
    model, selection = view.model(), view.selectionModel()
    selection.select(model.index(0, 0), Current)
    selection.select(model.index(2, 1), QItemSelectionModel.SelectionFlag.Select)
    assert view.copied().split("\n") == ["Hut\tHeight, m", "Col Hut\t", "\t310"]


def test_odd_cells_are_copied_in_quotes(owner, view):
    owner.model.show_rows((replace(HUTS[0], name='"Top" hut'), replace(HUTS[1], name="a;b")))
    put(view, 0, 0)
    view.selectionModel().select(owner.model.index(1, 0), QItemSelectionModel.SelectionFlag.Select)
    assert view.copied().split("\n") == ["Hut", '"""Top"" hut"', '"a;b"']


def test_pasting_tells_the_text_and_where_it_goes(owner, view, qtbot):
    owner.model.sort(0)
    QGuiApplication.clipboard().setText("900\n910")
    put(view, 1, 1)
    with qtbot.waitSignal(view.pasted) as told:
        qtbot.keyClick(view, Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert told.args == ["900\n910"]
    assert view.paste_aim() == Aim(("b", "c"), 1, (0, 1, 2, 3, 4), (1, 1))
    assert owner.edits == []


def test_a_selected_block_is_told_if_it_is_whole(owner, view):
    model, selection = owner.model, view.selectionModel()
    more = QItemSelectionModel.SelectionFlag.Select
    for row, column in ((0, 1), (0, 2), (1, 1)):
        selection.select(model.index(row, column), more)
    assert view.paste_aim() == Aim(("b", "a", "c"), 1, (0, 1, 2, 3, 4), (1, 1))
    selection.select(model.index(1, 2), more)
    assert view.paste_aim().block == (2, 2)


def test_an_empty_table_takes_a_paste(owner, view, qtbot):
    view.show_rows(())
    with qtbot.waitSignal(view.pasted):
        view.paste()
    assert view.paste_aim().keys == ()


def test_a_marked_cell_says_what_would_become_of_it(owner, view):
    plain = view.grab().toImage()
    owner.model.show_marks({("a", 1): Mark("would become 900"), ("c", 1): Mark("No.", True)})
    read = Qt.ItemDataRole.AccessibleTextRole
    assert owner.model.index(1, 1).data(read) == f"{NONE}, would become 900"
    assert owner.model.index(2, 1).data(Qt.ItemDataRole.ToolTipRole) == "No."
    assert view.grab().toImage() != plain
    owner.model.show_marks({})
    assert view.grab().toImage() == plain


def test_delete_asks_for_removal(view, qtbot):
    put(view, 1, 0)
    with qtbot.waitSignal(view.removal_asked):
        qtbot.keyClick(view, Key.Key_Delete)


def test_heads_are_never_clipped(view):
    head = view.horizontalHeader()
    for column in range(head.count()):
        assert view.columnWidth(column) >= head.wanted_width(column) - 1


def test_an_empty_table_says_why(owner, view):
    view.show_rows(())
    view.set_empty_text("No huts yet.")
    assert view.accessibleDescription() == "No huts yet."
    blank = view.grab().toImage()
    view.set_empty_text("")
    assert view.grab().toImage() != blank


def test_a_column_grows_with_what_is_typed_into_it(view, owner):
    long = "A hut on a far shoulder"
    before = view.columnWidth(0)
    owner.perform(ChangeHut(replace(owner.huts[0], name=long)))
    assert view.columnWidth(0) > before
    row = owner.model.row_of("b")
    assert view._cells.wanted_width(0, owner.model.text(row, 0)) <= view.columnWidth(0) + 1
    grown = view.columnWidth(0)
    owner.perform(ChangeHut(replace(owner.huts[0], name="Hut")))
    assert view.columnWidth(0) == grown

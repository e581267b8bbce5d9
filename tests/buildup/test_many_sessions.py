"""Several sessions at once: chosen, copied, drawn out, typed over, cut and pasted."""

from datetime import timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.buildup.conftest import RACE_DAY, TODAY, make_block, run
from ultraplanner_gui.buildup.gridhand import STEP_PX
from ultraplanner_gui.buildup.typein import TypeIn, as_typed, bare_unit, retyped
from ultraplanner_gui.edits.block_moves import CopySessions, LengthenSession, MoveSessions
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.wording.words import Words

Key, Modifier = Qt.Key, Qt.KeyboardModifier
LEFT = Qt.MouseButton.LeftButton
WEEK = timedelta(days=7)


def _drag(stage, start, end, modifiers=Modifier.NoModifier):
    QTest.mousePress(stage.grid, LEFT, modifiers, start)
    for part in range(1, 9):
        # QTest's moves carry no modifiers: the key itself is what the grid hears.
        stage.move(start + (end - start) * part / 8)
    stage.move(end)


def _keys_on_offer(stage):
    return set(stage.selection.keys)


def test_a_box_drawn_over_empty_ground_selects_what_it_touches(stage):
    a, b = stage.grid.cells.tile("easy5").rect, stage.grid.cells.tile("hills6").rect
    start = stage.spot_of(stage.session("easy5").day - timedelta(days=1))
    end = b.center().toPoint()

    _drag(stage, start, end)
    QTest.mouseRelease(stage.grid, LEFT, Modifier.NoModifier, end)

    assert _keys_on_offer(stage) == {"easy5", "hills5", "easy6", "hills6"}
    assert stage.document.tried == []
    assert a.isValid()


def test_ctrl_click_adds_and_takes_away(stage):
    stage.choose("easy5")
    for _ in range(2):
        QTest.mouseClick(stage.grid, LEFT, Modifier.ControlModifier, stage.spot("hills6"))
        chosen = _keys_on_offer(stage)
        if len(chosen) == 2:
            assert chosen == {"easy5", "hills6"}
    assert chosen == {"easy5"}


def test_shift_click_selects_all_days_between(stage):
    QTest.mouseClick(stage.grid, LEFT, Modifier.NoModifier, stage.spot("easy5"))
    QTest.mouseClick(stage.grid, LEFT, Modifier.ShiftModifier, stage.spot("easy6"))
    assert _keys_on_offer(stage) == {"easy5", "hills5", "long5", "easy6"}


def test_several_move_together_in_one_step(stage):
    stage.selection.choose_all("session", ("easy5", "hills5"), "easy5")
    home = stage.session("easy5").day, stage.session("hills5").day
    target = home[0] + WEEK + timedelta(days=2)

    stage.drag("easy5", target)
    assert stage.week_m(3) == pytest.approx(30_000.0)
    stage.release(stage.spot_of(target))

    assert [type(e) for e in stage.document.performed] == [MoveSessions]
    assert stage.session("hills5").day == home[1] + WEEK + timedelta(days=2)
    stage.document.undo_stack.undo()
    assert (stage.session("easy5").day, stage.session("hills5").day) == home


def test_a_click_on_one_of_several_selects_it_alone(stage):
    stage.selection.choose_all("session", ("easy5", "hills5"), "easy5")
    stage.press(stage.spot("hills5"))
    stage.release(stage.spot("hills5"))
    assert stage.selection.keys == ("hills5",)


def test_what_is_dragged_with_ctrl_is_copied(stage):
    kept = stage.session("easy5")
    target = kept.day + WEEK + timedelta(days=2)
    stage.choose("easy5")
    start = stage.spot("easy5")
    QTest.mousePress(stage.grid, LEFT, Modifier.NoModifier, start)
    stage.move(start + QPoint(15, 15))
    stage.move(stage.spot_of(target))
    QTest.keyPress(stage.grid, Key.Key_Control)
    stage.release(stage.spot_of(target))

    assert [type(e) for e in stage.document.performed] == [CopySessions]
    assert stage.session("easy5") == kept
    new = stage.document.project.block.session(stage.selection.key)
    assert (new.day, new.distance_m) == (target, kept.distance_m)


def test_ctrl_let_go_in_mid_drag_moves_after_all(stage):
    target = stage.session("easy5").day + WEEK
    stage.drag("easy5", target)
    QTest.keyPress(stage.grid, Key.Key_Control)
    assert len(stage.document.shown.project.block.sessions) == 26
    QTest.keyRelease(stage.grid, Key.Key_Control)
    stage.release(stage.spot_of(target))
    assert stage.session("easy5").day == target
    assert len(stage.document.project.block.sessions) == 25


def test_the_edge_of_a_tile_draws_its_session_out_in_one_step(stage):
    rect = stage.grid.cells.tile("long6").rect
    before = stage.session("long6")
    start = QPoint(round(rect.right()) - 2, round(rect.center().y()))
    end = QPoint(round(rect.left() + 1.5 * rect.width()), start.y())

    _drag(stage, start, end)
    assert stage.document.performed == []
    assert stage.week_m(2) > 14_000 + 10_000 + before.distance_m
    steps = (end.x() - start.x()) / STEP_PX
    QTest.mouseRelease(stage.grid, LEFT, Modifier.NoModifier, end)

    after = stage.session("long6")
    assert [type(e) for e in stage.document.performed] == [LengthenSession]
    assert after.distance_m == pytest.approx(before.distance_m + steps * 500.0, abs=500.0)
    assert after.distance_m % 500.0 == 0.0
    assert after.duration_s / after.distance_m == pytest.approx(
        before.duration_s / before.distance_m
    )


@pytest.mark.parametrize("weeks", [9, 20])
def test_every_length_can_be_met_by_its_edge(stage_of, weeks):
    stage = stage_of(block=make_block(weeks))
    key = f"long{weeks - 3}"
    rect = stage.grid.cells.tile(key).rect
    start = QPoint(round(rect.right()) - 2, round(rect.center().y()))
    stage.press(start)
    met = set()
    for x in range(40):
        stage.move(start + QPoint(x, 0))
        shown = stage.document.shown.project.block.session(key)
        met.add(round(shown.distance_m))
    own = stage.session(key).distance_m
    assert {round(own + 500.0 * k) for k in range(8)} <= met
    stage.keys(Key.Key_Escape)


def test_a_copy_of_what_was_not_selected_comes_alone(stage):
    stage.choose("hills5")
    key, target = "easy5", stage.session("easy5").day + timedelta(days=2)
    start, end = stage.spot(key), stage.spot_of(target)
    _drag(stage, start, end, Modifier.ControlModifier)
    QTest.keyPress(stage.grid, Key.Key_Control)
    QTest.mouseRelease(stage.grid, LEFT, Modifier.ControlModifier, end)
    before = {s.key for s in make_block().sessions}
    new = [s for s in stage.document.project.block.sessions if s.key not in before]
    assert [(s.day, s.kind) for s in new] == [(target, Kind.EASY)]


def test_escape_leaves_a_drawn_out_session_as_long_as_it_was(stage):
    rect = stage.grid.cells.tile("long6").rect
    start = QPoint(round(rect.right()) - 2, round(rect.center().y()))
    _drag(stage, start, start + QPoint(60, 0))
    assert stage.document.shown is not stage.document.before
    stage.keys(Key.Key_Escape)
    assert stage.document.shown is stage.document.before
    assert stage.document.performed == []


def test_cut_and_pasted_sessions_keep_their_gaps(stage):
    stage.selection.choose_all("session", ("easy5", "hills5"), "easy5")
    gap = stage.session("hills5").day - stage.session("easy5").day
    day = stage.session("easy6").day + WEEK + timedelta(days=1)
    stage.grid.setFocus()
    QTest.keyClick(stage.grid, Key.Key_X, Modifier.ControlModifier)
    assert {"easy5", "hills5"}.isdisjoint({s.key for s in stage.document.project.block.sessions})
    stage.grid.day = day
    QTest.keyClick(stage.grid, Key.Key_V, Modifier.ControlModifier)

    new = [stage.session(key) for key in stage.selection.keys]
    assert [s.kind for s in new] == [Kind.EASY, Kind.HILLS]
    assert [s.day for s in new] == [day, day + gap]


def test_copied_sessions_are_rows_for_a_spreadsheet(stage):
    stage.choose("easy5")
    stage.grid.setFocus()
    QTest.keyClick(stage.grid, Key.Key_C, Modifier.ControlModifier)
    text = QApplication.clipboard().text()
    assert text.split("\t")[:3] == [stage.session("easy5").day.isoformat(), "easy run", "13.0"]


def test_text_from_elsewhere_is_not_pasted(stage):
    QApplication.clipboard().setText("12 km")
    stage.grid.setFocus()
    QTest.keyClick(stage.grid, Key.Key_V, Modifier.ControlModifier)
    assert stage.document.performed == []


def test_arrows_with_ctrl_move_at_once_and_melt_into_one_step(stage):
    stage.choose("easy5")
    home = stage.session("easy5").day
    stage.grid.setFocus()
    for key in (Key.Key_Down, Key.Key_Down, Key.Key_Right):
        QTest.keyClick(stage.grid, key, Modifier.ControlModifier)
    assert stage.session("easy5").day == home + timedelta(days=9)
    assert stage.document.undo_stack.count() == 1


def test_arrows_with_alt_lengthen_step_by_step(stage):
    stage.choose("easy5")
    stage.grid.setFocus()
    for key in (Key.Key_Right, Key.Key_Right, Key.Key_Left):
        QTest.keyClick(stage.grid, key, Modifier.AltModifier)
    assert stage.session("easy5").distance_m == 13_500.0
    assert stage.document.undo_stack.count() == 1


def test_arrows_with_shift_select_on(stage):
    stage.choose("easy5")
    stage.grid.setFocus()
    QTest.keyClick(stage.grid, Key.Key_Down, Modifier.ShiftModifier)
    QTest.keyClick(stage.grid, Key.Key_Right, Modifier.ShiftModifier)
    assert stage.selection.keys == ("easy5", "hills5", "hills6")


def test_typing_a_figure_changes_the_session(stage):
    stage.choose("easy5")
    before = stage.session("easy5")
    stage.keys(Key.Key_1)
    field = stage.grid.findChild(TypeIn)
    assert field is not None
    QTest.keyClicks(field, "6")
    QTest.keyClick(field, Key.Key_Return)
    after = stage.session("easy5")
    assert after.distance_m == 16_000.0
    assert after.duration_s == pytest.approx(before.duration_s * 16 / 13)
    assert len(stage.document.performed) == 1


@pytest.mark.parametrize(
    ("text", "metres", "seconds", "kind"),
    [
        ("16", 16_000, 6_400, Kind.EASY),
        ("1 h 30", 13_500, 5_400, Kind.EASY),
        ("1:30", 13_500, 5_400, Kind.EASY),
        ("90 min", 13_500, 5_400, Kind.EASY),
        ("long 28", 28_000, 11_200, Kind.LONG),
        ("tempo", 8_000, 3_200, Kind.TEMPO),
        ("10 mi", 16_093.44, 6_437.376, Kind.EASY),
    ],
)
def test_typed_figures_are_read_as_a_runner_means_them(text, metres, seconds, kind):
    session = run("easy", RACE_DAY - WEEK)
    if "h" in text or ":" in text or "min" in text:
        session = replace(session, distance_m=8_000.0, duration_s=3_200.0)
    after = retyped(session, text, Words())
    assert after.kind is kind
    assert after.distance_m == pytest.approx(metres)
    assert after.duration_s == pytest.approx(seconds)


@pytest.mark.parametrize("kind", [k for k in Kind if k is not Kind.RACE])
def test_a_session_written_as_it_is_typed_is_read_back(kind):
    session = run("easy", RACE_DAY - WEEK, kind, 36.5 if kind.is_run else 0)
    session = replace(session, duration_s=5_400.0)
    after = retyped(session, as_typed(session, Words()), Words())
    assert (after.kind, after.distance_m) == (kind, pytest.approx(session.distance_m))
    assert after.duration_s == pytest.approx(5_400.0)


def test_t_opens_the_field_so_that_a_kind_can_be_typed(stage):
    stage.choose("easy5")
    stage.keys(Key.Key_T)
    field = stage.grid.findChild(TypeIn)
    assert field.selectedText() == field.text()
    QTest.keyClick(field, Key.Key_Return)
    assert stage.document.performed == []
    stage.keys(Key.Key_T)
    field = next(f for f in stage.grid.findChildren(TypeIn) if f.isVisible())
    QTest.keyClicks(field, "long 28")
    QTest.keyClick(field, Key.Key_Return)
    assert stage.session("easy5").kind is Kind.LONG
    assert stage.session("easy5").distance_m == 28_000.0
    assert stage.document.undo_stack.count() == 1


@pytest.mark.parametrize("text", ["swim 3", "0", "x", "1x2"])
def test_what_cannot_be_read_changes_nothing(text):
    assert retyped(run("easy", RACE_DAY - WEEK), text, Words()) is None


def test_two_sessions_change_places(stage):
    one, other = stage.session("easy5").day, stage.session("hills6").day
    stage.selection.choose_all("session", ("easy5", "hills6"))
    stage.keys(Key.Key_S)
    assert (stage.session("easy5").day, stage.session("hills6").day) == (other, one)


def test_a_locked_session_says_so_and_stays(stage):
    stage.choose("easy5")
    stage.keys(Key.Key_L)
    assert stage.session("easy5").locked
    stage.drag("easy5", stage.session("easy5").day + WEEK)
    assert stage.refused != []
    assert not stage.grid.is_carrying
    stage.keys(Key.Key_L)
    assert not stage.session("easy5").locked


def test_weeks_change_places(stage):
    stage.choose("easy5")
    stage.storey.deeds.swap_weeks(1)
    assert stage.session("easy5").day - stage.session("easy6").day == WEEK


@pytest.mark.parametrize(
    ("kind", "typed", "unit"),
    [
        (Kind.EASY, "35", "km"),
        (Kind.EASY, "12.5", "km"),
        (Kind.EASY, "long 28", "km"),
        (Kind.EASY, "1 h 30", ""),
        (Kind.EASY, "30 min", ""),
        (Kind.EASY, "strength 30", "min"),
        (Kind.STRENGTH, "40", "min"),
        (Kind.EASY, "long", ""),
        (Kind.EASY, "", ""),
        (Kind.EASY, "nonsense 12", ""),
    ],
)
def test_a_bare_number_says_what_it_counts(kind, typed, unit):
    session = replace(run("a", TODAY, kind, 8 if kind.is_run else 0), duration_s=1_800.0)
    assert bare_unit(session, typed, Words()) == unit
    if unit:
        said = retyped(session, f"{typed} {unit}", Words())
        assert retyped(session, typed, Words()) == said


def test_a_bare_number_counts_miles_where_those_are_used():
    assert bare_unit(run("a", TODAY), "20", Words("imperial")) == "mi"

"""A stack of lanes: chosen, ordered and sized by mouse and by keys, never one over another."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec import structs
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from ultraplanner_gui.widgets.arrangement import Arrangement
from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.lane_cursor import Spot
from ultraplanner_gui.widgets.lane_stack import LaneStack, Place
from ultraplanner_gui.widgets.room import Wish
from ultraplanner_gui.widgets.theme import theme

NAMES = ("hills", "pace", "sky", "food")
LEFT = Qt.MouseButton.LeftButton
MOVE = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
ALT = Qt.KeyboardModifier.AltModifier


class Plain(Lane):
    """A lane that counts how often its body is painted."""

    painted = 0

    def paint_body(self, painter, body):
        self.painted += 1


class Stage:
    def __init__(self, qtbot, height=400):
        theme().choose("light", 100)
        self.stack = LaneStack()
        qtbot.addWidget(self.stack)
        self.head = Plain("", "", 20.0, self.stack)
        self.lanes = {name: Plain(name.title(), "m", 40.0, self.stack) for name in NAMES}
        self.chosen = []
        self.stack.fill(
            above=(Place(self.head, Wish(20, 20, 20, 0), strip_rank=0, is_core=True),),
            lanes=[
                Place(
                    lane,
                    Wish(30, 50, 100, rank),
                    name,
                    name.title(),
                    "Sections",
                    strip_rank=1 if name == "hills" else None,
                    is_core=name == "hills",
                    choose=self.chosen.append,
                )
                for rank, (name, lane) in enumerate(self.lanes.items(), start=1)
            ],
            below=(),
        )
        self.stack.follow(self.head, self._spot, self._step, lambda: 0)
        self.arranged = []
        self.stack.arranged.connect(lambda: self.arranged.append(self.stack.arrangement.written()))
        self.stack.resize(800, height)
        with qtbot.waitExposed(self.stack):
            self.stack.show()

    def _spot(self, x):
        return Spot(x, x, (f"at {x:.0f}", "second")) if x >= 118 else None

    def _step(self, x, by):
        return (400.0 if x is None else x) + 10.0 * by

    @property
    def seen(self):
        parts = [lane for lane in self.lanes.values() if lane.isVisible()]
        return [lane.name for lane in sorted(parts, key=lambda lane: lane.y())]

    def drag_head(self, name, y):
        lane = self.lanes[name]
        end = lane.mapFrom(self.stack, QPoint(20, y))
        QTest.mousePress(lane, LEFT, pos=QPoint(20, 10))
        QTest.mouseMove(lane, QPoint(20, 25))
        QTest.mouseMove(lane, end)
        QTest.mouseRelease(lane, LEFT, pos=end)

    def drag_edge(self, name, by):
        edge = self.stack._edges[name]
        QTest.mousePress(edge, LEFT, pos=QPoint(300, 2))
        QTest.mouseMove(edge, QPoint(300, 2 + by))
        QTest.mouseRelease(edge, LEFT, pos=QPoint(300, 2))

    def menu(self, name, reason=QContextMenuEvent.Reason.Mouse, at=None):
        lane = self.lanes[name]
        at = at or QPoint(300, 5)
        QApplication.sendEvent(lane, QContextMenuEvent(reason, at, lane.mapToGlobal(at)))
        return lane.findChild(QMenu)


@pytest.fixture
def stage(qtbot, monkeypatch):
    # The offscreen platform cannot grab the keyboard for a menu.
    monkeypatch.setattr(QMenu, "popup", lambda menu, at: None)
    return Stage(qtbot)


def texts(menu):
    return [action.text() for action in menu.actions()]


# ---------------------------------------------------------------- the arrangement as a value

choices = st.lists(
    st.tuples(st.sampled_from(["show", "hide", "up", "down", "size"]), st.sampled_from(NAMES)),
    max_size=12,
)


def changed(changes):
    arrangement = Arrangement.usual(NAMES)
    for kind, name in changes:
        if kind in ("show", "hide"):
            arrangement = arrangement.with_shown(name, kind == "show")
        elif kind == "size":
            arrangement = arrangement.sized(name, 77.4)
        else:
            arrangement = arrangement.moved(name, 1 if kind == "down" else -1)
    return arrangement


@given(choices)
def test_what_is_written_is_read_again(changes):
    arrangement = changed(changes)
    assert Arrangement.read(arrangement.written(), NAMES) == arrangement


@given(choices)
def test_no_lane_is_ever_lost_and_one_is_always_shown(changes):
    arrangement = changed(changes)
    assert sorted(lane.name for lane in arrangement.lanes) == sorted(NAMES)
    assert arrangement.shown


@given(choices, st.sampled_from(NAMES))
def test_a_lane_moved_down_and_up_again_passes_the_same_lane(changes, name):
    arrangement = changed(changes)
    down = arrangement.moved(name, 1)
    if down != arrangement:
        assert down.moved(name, -1).shown == arrangement.shown


@given(st.lists(st.text(max_size=12), max_size=8))
def test_anything_in_the_settings_file_gives_an_arrangement(rows):
    arrangement = Arrangement.read(rows, NAMES)
    assert sorted(lane.name for lane in arrangement.lanes) == sorted(NAMES)
    assert arrangement.shown


def test_a_lane_that_came_with_a_later_release_stands_where_it_usually_does():
    older = Arrangement.read(("food", "-hills:60"), ("hills", "pace", "food"))
    assert older.shown == ("pace", "food") or older.shown == ("food", "pace")
    assert older.of("hills").height_px == 60


# ---------------------------------------------------------------- by mouse


def test_a_head_is_dragged_to_where_the_lane_shall_stand(stage):
    stage.drag_head("food", stage.lanes["hills"].y() + 2)
    assert stage.seen == ["Food", "Hills", "Pace", "Sky"]
    assert stage.arranged == [("food", "hills", "pace", "sky")]


def test_a_click_on_a_head_moves_nothing_and_takes_the_keys(stage):
    QTest.mouseClick(stage.lanes["sky"], LEFT, pos=QPoint(20, 10))
    assert stage.arranged == []
    assert stage.stack.current == "sky"


def test_escape_leaves_a_dragged_lane_where_it_was(stage):
    lane = stage.lanes["food"]
    QTest.mousePress(lane, LEFT, pos=QPoint(20, 10))
    QTest.mouseMove(lane, QPoint(20, -100))
    QTest.keyClick(lane, Qt.Key.Key_Escape)
    QTest.mouseRelease(lane, LEFT, pos=QPoint(20, -100))
    assert stage.arranged == []


def test_a_lower_edge_is_dragged_and_a_double_click_undoes_it(stage):
    usual = stage.lanes["pace"].height()
    stage.drag_edge("pace", 25)
    assert stage.lanes["pace"].height() == usual + 25
    assert len(stage.arranged) == 1
    QTest.mouseDClick(stage.stack._edges["pace"], LEFT, pos=QPoint(300, 2))
    assert stage.lanes["pace"].height() == usual
    assert stage.arranged[-1] == NAMES


@pytest.mark.parametrize("by", [-1000, 1000])
def test_sizing_pushes_no_lane_out(stage, by):
    stage.drag_edge("pace", by)
    assert stage.seen == ["Hills", "Pace", "Sky", "Food"]
    assert all(lane.height() >= 30 for lane in stage.lanes.values())
    assert max(lane.geometry().bottom() for lane in stage.lanes.values()) < stage.stack.height()


# ---------------------------------------------------------------- by keys and menus


def test_keys_move_and_size_the_lane_in_focus(stage):
    lane = stage.lanes["pace"]
    lane.setFocus()
    QTest.keyClick(lane, Qt.Key.Key_Up, MOVE)
    assert stage.seen[:2] == ["Pace", "Hills"]
    QTest.keyClick(lane, Qt.Key.Key_Down, MOVE)
    assert stage.seen[:2] == ["Hills", "Pace"]
    height = lane.height()
    QTest.keyClick(lane, Qt.Key.Key_Down, ALT)
    assert lane.height() == height + 8
    QTest.keyClick(lane, Qt.Key.Key_Up, ALT)
    assert lane.height() == height


def test_every_lane_is_reached_by_tab(stage):
    reached = set()
    stage.lanes["hills"].setFocus()
    for _ in range(8):
        reached.add(QApplication.focusWidget())
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    assert reached >= set(stage.lanes.values())


def test_tab_follows_the_order_the_user_gave(stage):
    stage.stack.move_lane("food", -1)
    stage.stack.place("sky", "hills", is_after=False)
    stage.lanes["sky"].setFocus()
    passed = []
    for _ in NAMES:
        passed.append(QApplication.focusWidget().name)
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    assert passed == stage.seen == ["Sky", "Hills", "Pace", "Food"]


def test_the_menu_of_a_lane_hides_it_and_shows_it_again(stage):
    menu = stage.menu("sky")
    next(a for a in menu.actions() if a.text() == "Hide Sky").trigger()
    assert stage.seen == ["Hills", "Pace", "Food"]
    checks = QMenu()
    stage.stack.menus.fill(checks)
    sky = next(action for action in checks.actions() if action.text() == "Sky")
    assert not sky.isChecked()
    sky.trigger()
    assert stage.seen == ["Hills", "Pace", "Sky", "Food"]


def test_enter_opens_the_menu_of_a_lane_without_keys_of_its_own(stage):
    stage.lanes["sky"].setFocus()
    QTest.keyClick(stage.lanes["sky"], Qt.Key.Key_Return)
    assert "Show as a table" in texts(stage.lanes["sky"].findChild(QMenu))


@pytest.mark.parametrize(("at", "x"), [(QPoint(300, 5), 300.0), (QPoint(10, 5), None)])
def test_a_lane_leads_to_its_table_with_the_row_under_the_pointer(stage, qtbot, at, x):
    menu = stage.menu("pace", at=at)
    with qtbot.waitSignal(stage.stack.table_wanted) as wanted:
        next(a for a in menu.actions() if a.text() == "Show as a table").trigger()
    assert wanted.args == ["Sections"]
    assert stage.chosen == [x]


def test_the_menu_says_of_a_lane_that_there_is_no_room_for_it(stage):
    stage.stack.resize(800, 140)
    menu = QMenu()
    stage.stack.menus.fill(menu)
    assert texts(menu)[:4] == ["Hills", "Pace", "Sky", "Food (no room now)"]


# ---------------------------------------------------------------- room


@pytest.mark.parametrize("height", range(20, 420, 13))
def test_lanes_go_from_the_highest_rank_and_lie_apart(stage, height):
    stage.stack.resize(800, height)
    assert stage.seen == ["Hills", "Pace", "Sky", "Food"][: len(stage.seen)]
    parts = [stage.head, *(lane for lane in stage.lanes.values() if lane.isVisible())]
    for above, below in pairwise(parts):
        assert above.geometry().bottom() < below.geometry().top()
    assert all(lane.height() >= 30 for lane in stage.lanes.values() if lane.isVisible())
    if height >= stage.stack.minimumSizeHint().height():
        assert parts[-1].geometry().bottom() < height


def test_a_strip_opens_on_a_click_and_on_its_button(stage, qtbot):
    stage.stack.set_strip(True)
    stage.stack.resize(800, stage.stack.strip_height(200))
    assert stage.seen == ["Hills"]
    with qtbot.waitSignal(stage.stack.open_wanted):
        QTest.mouseClick(stage.lanes["hills"], LEFT, pos=QPoint(300, 10))
    with qtbot.waitSignal(stage.stack.open_wanted):
        QTest.keyClick(stage.stack._open, Qt.Key.Key_Space)
    stage.stack._open.setFocus()
    with qtbot.waitSignal(stage.stack.open_wanted):
        stage.lanes["hills"].setFocus(Qt.FocusReason.TabFocusReason)


def test_strip_keeps_to_the_height_it_is_given_if_it_can(stage):
    stage.stack.set_strip(True)
    assert stage.stack.strip_height(200) == 20 + 4 + 30 + 4
    assert stage.stack.strip_height(40) == 20 + 4


# ---------------------------------------------------------------- the cursor


def test_one_line_runs_through_all_lanes_and_what_is_there_is_said(stage):
    QTest.mouseMove(stage.lanes["sky"], QPoint(500, 5))
    line = stage.stack._cursor.line
    assert (line.x(), line.width()) == (500, 1)
    assert line.geometry().bottom() == stage.stack.height() - 1
    assert stage.stack._cursor.readout.text == "at 500   second"
    QApplication.sendEvent(stage.lanes["sky"], QEvent(QEvent.Type.Leave))
    assert not line.isVisible()
    assert stage.stack._cursor.readout.text == ""


def test_over_a_head_there_is_no_cursor(stage):
    QTest.mouseMove(stage.lanes["sky"], QPoint(50, 5))
    assert not stage.stack._cursor.line.isVisible()


def test_the_readout_drops_figures_where_it_is_narrow_and_never_leaves_the_stack(stage):
    stage.stack.resize(300, 400)
    width = theme().metrics(7.5, bold=True).horizontalAdvance("at 200   second")
    stage.stack._cursor._free_left = lambda: round(300 - width)
    QTest.mouseMove(stage.lanes["sky"], QPoint(200, 5))
    readout = stage.stack._cursor.readout
    assert readout.text == "at 200"
    assert readout.geometry().right() < 300


def test_arrows_step_the_cursor_and_say_where_it_is(stage):
    lane = stage.lanes["sky"]
    lane.setFocus()
    QTest.keyClick(lane, Qt.Key.Key_Right)
    assert lane.accessibleDescription() == "at 410, second"
    QTest.keyClick(lane, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert lane.accessibleDescription() == "at 310, second"


def test_a_stack_forgets_nothing_when_the_text_grows(stage):
    stage.stack.size_lane("pace", 60)
    stage.stack.resize(800, 900)
    try:
        theme().choose("light", 150)
        assert stage.lanes["pace"].height() == pytest.approx(90, abs=1)
    finally:
        theme().choose("light", 100)
    assert stage.lanes["pace"].height() == pytest.approx(60, abs=1)


def test_the_point_a_menu_is_asked_at_is_given_to_the_lane(stage):
    seen = []
    structs.force_setattr(stage.stack.lane("sky"), "deeds", lambda menu, at: seen.append(at))
    stage.menu("sky")
    stage.menu("sky", QContextMenuEvent.Reason.Keyboard)
    assert seen == [QPointF(300, 5), None]

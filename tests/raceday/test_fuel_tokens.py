import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent, QPainter, QPixmap
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from ultraplanner_gui.plan.fuel import FuelItem, Shape
from ultraplanner_gui.raceday import tokens
from ultraplanner_gui.widgets.theme import theme

Key = Qt.Key
SHIFT = Qt.KeyboardModifier.ShiftModifier


def eaten(stage):
    """Return the key of a solid food in the middle of the race."""
    fuel = stage.document.project.fuel
    items = [i for i in fuel.items if 3 * 3600.0 < i.at_s < 5 * 3600.0]
    return next(i.key for i in items if fuel.food(i.food).carb_g > 0)


def test_drag_moves_the_line_while_it_goes(stage):
    key = eaten(stage)
    lines = []
    stage.document.changed.connect(
        lambda *_: lines.append(stage.document.shown.fuel.rolling_g_per_h.copy())
    )

    stage.drag(stage.fuel, stage.token(key), stage.token(key) + QPoint(200, 0))

    assert len(lines) == 10
    assert len({tuple(line) for line in lines}) > 5
    assert not np.array_equal(lines[-1], stage.document.before.fuel.rolling_g_per_h)


def test_drag_is_one_undo_step(stage):
    key = eaten(stage)
    was_s = stage.item(key).at_s
    end = stage.token(key) + QPoint(120, 0)

    stage.drag(stage.fuel, stage.token(key), end)
    there_s = stage.item(key).at_s
    stage.release(stage.fuel, end)

    assert stage.undo.count() == 1
    assert stage.item(key).at_s == there_s > was_s
    assert there_s % 60.0 == 0.0
    stage.undo.undo()
    assert stage.item(key).at_s == was_s


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_token_stays_under_the_pointer(stage, measure):
    stage.storey.choose_measure(measure)
    key = eaten(stage)
    end = stage.token(key) + QPoint(90, 0)

    stage.drag(stage.fuel, stage.token(key), end)

    # a minute is about two pixels here
    assert abs(stage.token(key).x() - end.x()) <= 3


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_every_token_is_hit_where_it_is_drawn(stage, measure):
    stage.storey.choose_measure(measure)
    lane = stage.fuel
    hit = {
        item.key: lane._item_at(stage.token(item.key).toPointF())
        for item in stage.document.project.fuel.items
    }

    assert {key: item.key for key, item in hit.items() if item} == {key: key for key in hit}


def test_token_is_drawn_where_it_is_hit(stage):
    key = eaten(stage)
    stage.selection.choose("item", key)
    at = stage.token(key)

    picture = stage.fuel.grab().toImage()

    hues = {picture.pixelColor(at + QPoint(dx, 0)).name() for dx in (-2, 0, 2)}
    tokens = {theme().colours.plum, theme().colours.ochre, theme().colours.sky}
    assert hues & tokens


def test_food_drink_and_salt_of_one_moment_do_not_cover_each_other(stage_of, base):
    fuel = base.fuel
    shapes = {}
    for food in fuel.foods:
        shapes.setdefault(food.shape, food.key)
    at_once = tuple(
        FuelItem(shape, key, 7_200.0) for shape, key in shapes.items() if shape != "gel"
    )
    stage = stage_of(fuel=fuel.with_items(at_once))

    ys = [stage.token(item.key).y() for item in at_once]

    assert len(at_once) == 3
    assert min(abs(a - b) for a in ys for b in ys if a != b) >= 9
    assert len(set(ys)) == 3


def test_token_keeps_its_row_under_a_drag(stage):
    key = eaten(stage)
    rows = {i.key: stage.token(i.key).y() for i in stage.document.project.fuel.items}

    stage.drag(stage.fuel, stage.token(key), stage.token(key) + QPoint(150, 0))

    assert {k: stage.token(k).y() for k in rows} == rows


def test_escape_puts_a_drag_back(stage):
    key = eaten(stage)
    was_s = stage.item(key).at_s
    stage.drag(stage.fuel, stage.token(key), stage.token(key) + QPoint(80, 0))

    QTest.keyClick(stage.fuel, Key.Key_Escape)

    assert stage.item(key).at_s == was_s
    assert stage.undo.count() == 0


def test_token_dragged_out_of_the_lane_stays_in_the_race(stage):
    key = eaten(stage)
    for far in (QPoint(5_000, 0), QPoint(-5_000, 0)):
        stage.drag(stage.fuel, stage.token(key), stage.token(key) + far)
        stage.release(stage.fuel, stage.token(key) + far)

        assert 0.0 <= stage.item(key).at_s <= 9 * 3600.0


def test_keys_carry_a_token_by_the_minute_and_by_ten(stage):
    stage.keys(stage.fuel, Key.Key_Right, Key.Key_Right)
    key = stage.selection.key
    was_s = stage.item(key).at_s

    stage.keys(stage.fuel, Key.Key_Return, Key.Key_Right)
    assert stage.item(key).at_s == was_s + 60.0
    stage.keys(stage.fuel, Key.Key_Right, modifier=SHIFT)
    stage.keys(stage.fuel, Key.Key_Return)

    assert stage.item(key).at_s == was_s + 660.0
    assert stage.undo.count() == 1


def test_keys_carry_the_same_token_past_another(stage):
    stage.keys(stage.fuel, Key.Key_Right)
    key = stage.selection.key
    order = [i.key for i in stage.document.project.fuel.items]

    stage.keys(stage.fuel, Key.Key_Return, *[Key.Key_Right] * 3, modifier=SHIFT)
    stage.keys(stage.fuel, Key.Key_Return)

    assert stage.selection.key == key
    assert [i.key for i in stage.document.project.fuel.items] != order


def test_delete_removes_and_chooses_the_next(stage):
    stage.keys(stage.fuel, Key.Key_Right)
    keys = [i.key for i in stage.document.project.fuel.items]

    stage.keys(stage.fuel, Key.Key_Delete, Key.Key_Delete)

    assert [i.key for i in stage.document.project.fuel.items] == [keys[0], *keys[3:]]
    assert stage.selection.key == keys[3]


def test_last_item_removed_leaves_nothing_chosen(stage_of, base):
    stage = stage_of(fuel=base.fuel.with_items(base.fuel.items[:1]))
    stage.selection.choose("item", base.fuel.items[0].key)

    stage.keys(stage.fuel, Key.Key_Delete)

    assert stage.document.project.fuel.items == ()
    assert stage.selection.kind == ""


def test_food_is_added_where_the_menu_was_opened(stage, monkeypatch):
    # The offscreen platform cannot grab the keyboard for a menu.
    monkeypatch.setattr(QMenu, "popup", lambda menu, at: None)
    lane = stage.fuel
    at = QPoint(round(lane.x_of_time(7_200.0, lane.body())), 5)
    before = {i.key for i in stage.document.project.fuel.items}

    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, lane.mapToGlobal(at))
    QApplication.sendEvent(lane, event)
    menu = lane.findChild(QMenu)
    add = menu.actions()[0].menu()
    add.actions()[0].trigger()

    new = [i for i in stage.document.project.fuel.items if i.key not in before]
    assert [i.at_s for i in new] == [pytest.approx(7_200.0, abs=120.0)]
    assert len(add.actions()) == len(stage.document.project.fuel.foods)


def test_readout_names_the_food_its_carbs_and_its_clock_time(stage):
    key = eaten(stage)
    item = stage.item(key)
    food = stage.document.project.fuel.food(item.food)

    said = stage.fuel.readout(stage.token(key).toPointF())

    assert food.name in said
    assert stage.words.grams(food.carb_g * item.servings) in said
    assert stage.words.clock(stage.document.project.race.clock(item.at_s)) in said


def test_screen_reader_is_told_what_is_chosen_and_where_it_goes(stage):
    stage.keys(stage.fuel, Key.Key_Right)
    said = stage.fuel.accessibleDescription()
    assert said == stage.fuel.readout(stage.token(stage.selection.key).toPointF())

    stage.keys(stage.fuel, Key.Key_Return)
    stage.keys(stage.fuel, Key.Key_Right, modifier=SHIFT)

    assert stage.fuel.accessibleDescription() != said


def test_item_after_the_finish_does_not_trouble_the_lane(stage_of, base):
    late = FuelItem("late", base.fuel.items[0].food, 20 * 3600.0)
    stage = stage_of(fuel=base.fuel.with_items((*base.fuel.items, late)))

    stage.selection.choose("item", "late")
    stage.fuel.grab()

    assert stage.document.shown.fuel.total.carb_g > 0


def test_line_of_before_is_drawn_only_where_it_differs(stage):
    key = eaten(stage)
    stage.drag(stage.fuel, stage.token(key), stage.token(key) + QPoint(100, 0))
    before = stage.document.before.fuel

    marks = stage.fuel._has_changed(before)

    off = np.abs(before.rolling_g_per_h - stage.document.shown.fuel.rolling_g_per_h) > 0.5
    assert marks[off].all()
    assert 0 < marks.sum() < len(marks) / 2


def test_changed_rates_keep_the_items(stage_of, base):
    stage = stage_of(fuel=replace(base.fuel, carb_g_per_h=0.0))

    stage.fuel.grab()

    assert stage.document.shown.fuel.band_g_per_h == (0.0, 0.0)


def test_the_head_says_what_each_shape_is(stage, monkeypatch):
    written = {}
    monkeypatch.setattr(
        tokens, "draw_text", lambda _p, rect, text, *more: written.__setitem__(text, rect)
    )
    stage.fuel.update()
    stage.fuel.grab()
    assert set(written) == {"salt", "gel", "food", "drink"}
    rows = {round(rect.center().y()) for rect in written.values()}
    assert len(rows) == 3
    spots = {round(y) for y in stage.fuel._spots(stage.fuel.body())[1]}
    assert spots <= {y + off for y in rows for off in (-1, 0, 1)}


def test_names_without_room_are_left_out_of_the_key(stage, monkeypatch):
    written = []
    monkeypatch.setattr(tokens, "draw_text", lambda _p, _r, text, *more: written.append(text))
    picture = QPixmap(80, 40)
    with QPainter(picture) as painter:
        long = (Shape.GEL, "something to be squeezed"), (Shape.SOLID, "something to be chewed")
        tokens.paint_key(painter, 80.0, [(10.0, long), (30.0, ((Shape.DRINK, "drink"),))])
    assert written == ["drink"]

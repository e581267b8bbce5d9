import pytest
from msgspec.structs import replace
from PySide6.QtWidgets import QAbstractSpinBox, QCheckBox, QComboBox, QLabel, QLineEdit

from tests.buildup.conftest import make_block
from ultraplanner_gui.buildup.session_editor import is_too_much_fasted
from ultraplanner_gui.edits.block import ChangeSession, MarkDone, MarkMissed
from ultraplanner_gui.plan.block import Gut, Kind, Mind
from ultraplanner_gui.widgets.guess import GuessField
from ultraplanner_gui.wording.words import Words


@pytest.fixture
def editor_of(stage_of, qtbot):
    def make(key="easy5", **how):
        stage = stage_of(**how)
        stage.choose(key)
        opened = []
        stage.storey.editor_opened.connect(opened.append)
        stage.storey.edit_session()
        (editor,) = opened
        qtbot.addWidget(editor)
        return stage, editor

    return make


def _save(editor):
    editor.buttons.accepted.emit()


def test_saving_untouched_changes_nothing(editor_of):
    block = make_block()
    odd = replace(block.session("easy5"), distance_m=8_123.4, duration_s=3_011.7, climb_m=12.3)
    stage, editor = editor_of(block=block.with_session(odd), words=Words("imperial"))
    _save(editor)
    assert stage.document.performed == []
    assert not editor.isVisible()


def test_one_figure_changed_leaves_the_others_exact(editor_of):
    block = make_block()
    odd = replace(block.session("easy5"), distance_m=8_123.4, duration_s=3_011.7)
    stage, editor = editor_of(block=block.with_session(odd))
    editor.planned.climb.setValue(210)
    _save(editor)
    assert stage.document.performed == [ChangeSession(replace(odd, climb_m=210.0))]


def test_miles_are_kept_as_metres(editor_of):
    stage, editor = editor_of(words=Words("imperial"))
    editor.planned.distance.setValue(10.0)
    _save(editor)
    assert stage.session("easy5").distance_m == pytest.approx(16_093.44)


def test_done_alone_is_marked_done(editor_of):
    stage, editor = editor_of()
    editor.done_box.state.setCurrentIndex(1)
    editor.done_box.distance.setValue(9.5)
    editor.done_box.gut.setCurrentIndex(editor.done_box.gut.findData(Gut.UNEASY))
    _save(editor)
    (edit,) = stage.document.performed
    assert isinstance(edit, MarkDone)
    assert (edit.done.distance_m, edit.done.gut) == (9_500.0, Gut.UNEASY)


def test_plan_and_record_together_are_one_step(editor_of):
    stage, editor = editor_of()
    editor.planned.effort.setValue(5)
    editor.done_box.state.setCurrentIndex(1)
    _save(editor)
    (edit,) = stage.document.performed
    assert isinstance(edit, ChangeSession)
    assert (edit.session.effort, edit.session.done is None) == (5, False)


def test_missed_is_marked_missed(editor_of):
    stage, editor = editor_of()
    editor.done_box.state.setCurrentIndex(2)
    _save(editor)
    assert stage.document.performed == [MarkMissed("easy5")]


def test_cancel_keeps_nothing(editor_of):
    stage, editor = editor_of()
    editor.planned.effort.setValue(9)
    editor.buttons.rejected.emit()
    assert stage.document.performed == []


def test_a_refused_change_says_why_and_stays_open(editor_of, monkeypatch):
    stage, editor = editor_of()
    monkeypatch.setattr(
        editor, "edit", lambda: ChangeSession(replace(stage.session("easy5"), effort=11))
    )
    _save(editor)
    assert editor.isVisible()
    assert editor.refusal.text() == "Effort lies between 0 and 10."


def test_ticking_fasted_brings_the_caution(editor_of):
    _, editor = editor_of()
    assert not editor.caution.isVisible()
    editor.planned.fasted.setChecked(True)
    assert editor.caution.isVisible()
    assert "ask a doctor" in editor.caution.text()
    editor.planned.kind.setCurrentIndex(editor.planned.kind.findData(Kind.INTERVALS))
    assert editor.caution.text().startswith("Too hard or too long")


def test_long_hard_or_strained_runs_are_too_much_to_run_fasted():
    easy = make_block().session("easy5")
    assert not is_too_much_fasted(replace(easy, duration_s=5400.0))
    assert is_too_much_fasted(replace(easy, duration_s=5401.0))
    assert is_too_much_fasted(replace(easy, effort=4))
    assert is_too_much_fasted(replace(easy, kind=Kind.TEMPO))


def test_the_race_keeps_its_day_and_kind(editor_of):
    _, editor = editor_of("race")
    assert not editor.planned.day.isEnabled()
    assert editor.planned.kind.count() == 1


def test_hour_heat_and_mental_rehearsal_are_kept(editor_of):
    stage, editor = editor_of()
    editor.planned.hour.setText("6:30")
    editor.planned.heat.setChecked(True)
    editor.planned.mind.setCurrentIndex(editor.planned.mind.findData(Mind.PICTURE))
    _save(editor)
    session = stage.session("easy5")
    assert (session.at_s, session.heat, session.mind) == (6.5 * 3600, True, Mind.PICTURE)


def test_an_emptied_hour_is_any_and_a_wrong_one_leaves_the_one_before(editor_of):
    block = make_block()
    odd = replace(block.session("easy5"), at_s=23_417.0, mind=Mind.GOALS)
    stage, editor = editor_of(block=block.with_session(odd))
    assert editor.planned.session() == odd
    editor.planned.hour.setText("at dawn")
    assert editor.planned.session() == odd
    editor.planned.hour.clear()
    editor.planned.mind.setCurrentIndex(0)
    _save(editor)
    assert stage.session("easy5") == replace(odd, at_s=None, mind=None)


def test_every_field_has_a_label_and_a_name(editor_of):
    _, editor = editor_of()
    buddies = {label.buddy() for label in editor.findChildren(QLabel) if label.buddy()}
    for box in (editor.planned, editor.done_box):
        fields = [
            w
            for kind in (QLineEdit, QAbstractSpinBox, QComboBox)
            for w in box.findChildren(kind)
            if w.parent() is box or isinstance(w.parent(), GuessField)
        ]
        assert len(fields) >= 9
        for field in fields:
            assert field.accessibleName()
            assert field in buddies
        assert all(tick.text() for tick in box.findChildren(QCheckBox))

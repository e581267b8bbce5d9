"""The race moves to another week, and the build-up with it if wanted."""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import QDate

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.window.plan_form import PlanForm

TODAY = date(2026, 11, 25)


@pytest.fixture
def window(bare_window):
    bare_window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return bare_window


@pytest.mark.parametrize("is_wanted", [True, False])
def test_a_later_race_takes_what_lies_ahead_along_if_wanted(window, is_wanted):
    document = window.document
    before = {s.key: s for s in document.project.block.sessions}
    race_day = document.project.race.day + timedelta(weeks=2)
    window.table.by_name["race_form"].trigger()
    (form,) = window.findChildren(PlanForm)
    assert not form.shift.isVisible()
    form.day.setDate(QDate(race_day.year, race_day.month, race_day.day))
    assert form.shift.isVisible()
    form.shift.setChecked(is_wanted)
    form._on_sent()

    after = {s.key: s for s in document.project.block.sessions}
    assert document.project.race.day == race_day
    assert document.undo_stack.count() == 1
    for key, session in before.items():
        moves = session.kind is Kind.RACE or (
            is_wanted and session.is_open and session.day >= TODAY
        )
        assert after[key].day - session.day == timedelta(weeks=2 if moves else 0)


def test_a_race_moved_within_its_week_offers_nothing(window):
    window.table.by_name["race_form"].trigger()
    (form,) = window.findChildren(PlanForm)
    form.day.setDate(form.day.date().addDays(1))
    assert not form.shift.isVisible()

"""Races to pick from, side by side."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtWidgets import QApplication, QPushButton

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.training import AddCandidate
from ultraplanner_gui.plan.candidates import Candidate, CandidateStop
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.rows import Rows
from ultraplanner_gui.window.candidate_form import CandidateForm, read_stops
from ultraplanner_gui.window.candidates_page import CandidatesPage
from ultraplanner_gui.wording.words import Words

TODAY = date(2026, 11, 25)
FIFTY = Candidate("", "Lowland", TODAY + timedelta(weeks=20), 52_000.0, 600.0, 600.0, 36_000.0)


@pytest.fixture
def page(qtbot):
    project = replace(demo_project(TODAY), candidates=())
    document = Document(None, project, lambda: TODAY)
    page = CandidatesPage(document, Words)
    qtbot.addWidget(page)
    page.show()
    return page


def _spoken(page):
    QApplication.processEvents()
    return [r.accessibleDescription() for r in page.findChildren(Rows) if r.isVisible()]


def test_without_a_race_the_page_says_what_to_do(page):
    assert page.empty.isVisible()
    assert _spoken(page) == []


def test_races_stand_side_by_side_and_go_one_by_one(page):
    page._document.perform(AddCandidate(FIFTY))
    page._document.perform(AddCandidate(FIFTY))
    said = _spoken(page)
    assert len(said) == 2
    assert all("Lowland" in text and "Weeks needed" in text for text in said)
    remove = next(
        b for b in page.findChildren(QPushButton) if b.text() == "Remove" and b.isVisible()
    )
    remove.click()
    assert len(_spoken(page)) == 1


def test_a_race_added_in_the_form_keeps_what_was_typed(page, qtbot):
    form = CandidateForm(page._document, None, Words(), page)
    qtbot.addWidget(form)
    form.name.setText("Ridge")
    form.distance.set_metres(102_000.0)
    form.climb.set_metres(5_200.0)
    form.limit.setText("26 h")
    form.stops.setPlainText("64 km; 15 h; 3300 m\n30 km; 6 h")
    form.keep.click()
    (race,) = page._document.project.candidates
    assert (race.name, race.limit_s) == ("Ridge", 26 * 3600.0)
    assert race.stops == (
        CandidateStop(30_000.0, 6 * 3600.0),
        CandidateStop(64_000.0, 15 * 3600.0, 3_300.0),
    )


def test_a_race_without_a_name_stays_in_the_form(page, qtbot):
    form = CandidateForm(page._document, None, Words(), page)
    qtbot.addWidget(form)
    form.keep.click()
    assert page._document.project.candidates == ()
    assert form.trouble.text()


@pytest.mark.parametrize("text", ["30 km", "half way; 6 h", "30 km; soon"])
def test_a_cutoff_that_cannot_be_read_is_named(text):
    with pytest.raises(PlanError, match="cannot be read"):
        read_stops(text, Words())

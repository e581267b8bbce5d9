"""From the ground at home to a session in the build-up."""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import QDate
from PySide6.QtWidgets import QApplication, QPushButton

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.edits.training import AddGround, RemoveGround
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.window.buildup_deeds import LOOP_POINTS, read_loop
from ultraplanner_gui.window.ground_fields import GroundForm, ground_sentence
from ultraplanner_gui.window.ground_form import GroundPage, part_sentence, run_on
from ultraplanner_gui.wording.words import Words

TODAY = date(2026, 11, 25)
MILL = GroundAtHand("", GroundKind.TREADMILL, most_gradient=0.15)
HILL = GroundAtHand("", GroundKind.HILL, "Mill hill", 600.0, 66.0)


@pytest.fixture
def document():
    document = Document(None, demo_project(TODAY), lambda: TODAY)
    for ground in document.project.runner.grounds:
        document.perform(RemoveGround(ground.key))
    return document


@pytest.fixture
def page_of(qtbot, document):
    def make(*grounds, day=TODAY):
        for ground in grounds:
            document.perform(AddGround(ground))
        page = GroundPage(document, Words, lambda: None, day=day)
        qtbot.addWidget(page)
        page.show()
        return page

    return make


def _put_buttons(page):
    QApplication.processEvents()
    wanted = ("Put it on", "Run the")
    buttons = page.findChildren(QPushButton)
    return [b for b in buttons if b.isVisible() and b.text().startswith(wanted)]


def test_without_ground_the_page_asks_for_it(page_of):
    page = page_of()
    assert page.made() == ()
    assert "where you live" in page.asked.text()


def test_the_open_run_of_the_day_is_run_as_the_stand_in(page_of, document):
    run = next(s for s in document.project.block.sessions if s.is_open and s.kind is Kind.LONG)
    page = page_of(MILL, HILL, day=run.day)
    best = page.made()[0]
    _put_buttons(page)[0].click()
    after = document.project.block.session(run.key)
    assert (after.kind, after.day) == (run.kind, run.day)
    assert after.repeats == best.repeats
    assert after.climb_m == best.climb_m
    assert document.undo_stack.undoText() == "Change session"


def test_on_a_free_day_a_session_is_added(page_of, document):
    block = document.project.block
    day = next(day for day in (TODAY + timedelta(days=n) for n in range(60)) if not block.on(day))
    page = page_of(HILL, day=day)
    assert run_on(document.project, day) is None
    _put_buttons(page)[0].click()
    (new,) = document.project.block.on(day)
    assert new.kind is Kind.HILLS
    assert new.repeats


def test_a_shorter_session_stands_for_less_of_the_stretch(page_of):
    page = page_of(MILL, HILL)
    longer = page.made()[0]
    page.most.setValue(40)
    shorter = page.made()[0]
    assert shorter.share < longer.share
    assert shorter.time_s < longer.time_s


def test_what_a_treadmill_cannot_match_is_said(page_of):
    page = page_of(MILL)
    (made,) = page.made()
    assert made.cannot
    assert made.drop_m == 0.0


def test_day_names_the_button(page_of):
    page = page_of(HILL)
    page.day.setDate(QDate(2027, 1, 4))
    assert all("4 Jan" in b.text() for b in _put_buttons(page))


@pytest.mark.parametrize("kind", list(GroundKind))
def test_each_kind_of_ground_can_be_added_as_the_form_proposes_it(qtbot, document, kind):
    form = GroundForm(document, None, Words())
    qtbot.addWidget(form)
    form.kind.setCurrentIndex(form.kind.findData(kind))
    form.keep.click()
    (ground,) = document.project.runner.grounds
    assert ground.kind is kind
    assert ground_sentence(ground, Words())


def test_parts_are_said_with_times_and_gradient(page_of):
    page = page_of(HILL)
    grounds = page._document.project.runner.grounds
    up, down = page.made()[0].repeats[:2]
    assert "times" in part_sentence(up, grounds, Words())
    assert "up 11" in part_sentence(up, grounds, Words())
    assert "down 11" in part_sentence(down, grounds, Words())


def test_a_recorded_loop_is_thinned_and_can_be_kept(document):
    ground = read_loop(Token(lambda fraction: None), resources.path("demo/course.gpx"))
    assert len(ground.distance_m) <= LOOP_POINTS
    assert ground.climb_m > 100.0
    if ground.length_m <= 100_000.0:
        assert document.perform(AddGround(ground))

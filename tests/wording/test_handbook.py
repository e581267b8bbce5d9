import pytest

from ultraplanner_gui.desk import resources
from ultraplanner_gui.wording import cautions, handbook
from ultraplanner_gui.wording.help.topic import Mark
from ultraplanner_gui.wording.help.topics import TOPICS


def as_written(_context, text):
    return text


def test_the_job_is_ten_steps_each_with_a_picture():
    assert len(handbook.STEPS) == 10
    for step in handbook.STEPS:
        assert resources.path(f"handbook/{step.picture}.png").stat().st_size < 250_000
        assert step.texts
        assert step.see


def test_the_steps_lead_to_topics():
    assert {key for step in handbook.STEPS for key in step.see} <= TOPICS.keys()


def test_every_topic_stands_in_one_chapter():
    keys = [t.key for chapter in handbook.chapters(as_written) for t in chapter.topics]
    assert sorted(keys) == sorted(TOPICS)


def test_every_figure_is_placed_by_what_supports_it():
    order = [mark for mark, _ in handbook.SUPPORT]
    placed = [topic.key for mark in order for topic in handbook.supported_by(mark)]
    assert len(placed) == len(set(placed))
    only_own = {k for k, t in TOPICS.items() if {s.mark for s in t.sources} <= {Mark.PLAN}}
    assert TOPICS.keys() - only_own == set(placed)


@pytest.mark.parametrize("text", [*cautions.RED_FLAGS, *cautions.ALL, cautions.ALLERGY])
def test_no_caution_is_left_out(text):
    assert handbook.every_caution().count(text) == 1

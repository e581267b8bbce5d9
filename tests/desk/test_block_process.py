"""The search runs in a process of its own: it tells how far it is, and can be ended."""

import multiprocessing
import threading
from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.desk.block_process import ExactBlock, MendBlock
from ultraplanner_gui.desk.jobs import Cancelled, Token
from ultraplanner_gui.engine.block import BlockRequest, build_block
from ultraplanner_gui.engine.block_exact import Search
from ultraplanner_gui.engine.repair_request import Absence, RepairRequest
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.runner import Runner

RACE_DAY = date(2027, 4, 17)
REQUEST = BlockRequest(
    RACE_DAY - timedelta(days=68), RACE_DAY, 50e3, 900.0, 900.0, 7 * 3600.0, Runner()
)


def token():
    return Token(lambda fraction: None)


def test_progress_and_a_block_come_back():
    heard = []
    exact = ExactBlock(REQUEST, Search(50, 5.0), heard.append)(token())
    assert heard
    assert all(0.0 <= news.share <= 1.0 for news in heard)
    assert exact.plan.block.sessions[-1].day == RACE_DAY
    assert 0.0 <= exact.gap < 1.0
    assert multiprocessing.active_children() == []


def test_a_cancelled_search_leaves_no_process():
    stop = token()
    job = ExactBlock(REQUEST, Search(10**6, 60.0), lambda news: stop.cancel())
    with pytest.raises(Cancelled):
        job(stop)
    assert multiprocessing.active_children() == []


def test_one_cancelled_before_it_says_anything_leaves_none_either():
    stop = token()
    threading.Timer(0.05, stop.cancel).start()
    with pytest.raises(Cancelled):
        ExactBlock(REQUEST)(stop)
    assert multiprocessing.active_children() == []


def test_what_cannot_be_built_is_said_in_words():
    with pytest.raises(PlanError, match="easy pace"):
        ExactBlock(replace(REQUEST, runner=replace(Runner(), easy_mps=0.0)))(token())


def test_a_repair_comes_back():
    day = RACE_DAY - timedelta(days=40)
    missed = RepairRequest(REQUEST, Absence(day, day), day + timedelta(days=1))
    repair = MendBlock(build_block(REQUEST).block, missed)(token())
    assert repair.choices
    assert repair.refusal is None

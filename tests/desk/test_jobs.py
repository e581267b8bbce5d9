import logging
import sys
import threading

import pytest
from PySide6.QtCore import QThread

from ultraplanner_gui.desk.jobs import BUSY_SWITCH_S, FAULT, JobBench
from ultraplanner_gui.plan.message import CourseError, Message


@pytest.fixture
def bench(qtbot):
    bench = JobBench()
    yield bench
    bench.close()
    bench.deleteLater()


@pytest.fixture
def heard(bench):
    events = []
    for name in ("done", "failed", "progressed"):
        getattr(bench, name).connect(
            lambda ticket, value, name=name: events.append(
                (name, ticket, value, threading.current_thread() is threading.main_thread())
            )
        )
    return events


def test_result_arrives_on_the_gui_thread(qtbot, bench, heard):
    def add(token, a, b):
        assert QThread.currentThread() is not bench.thread()
        return a + b

    ticket = bench.submit(add, 2, b=3)
    qtbot.waitUntil(lambda: not bench.is_busy)
    assert heard == [("done", ticket, 5, True)]


def test_tickets_rise(qtbot, bench, heard):
    tickets = [bench.submit(lambda token, n: n, n) for n in range(5)]
    qtbot.waitUntil(lambda: not bench.is_busy)
    assert tickets == sorted(set(tickets))
    assert {(event[1], event[2]) for event in heard} == set(zip(tickets, range(5), strict=True))


def test_trouble_with_the_input_is_said_in_its_own_words(qtbot, bench, heard):
    def refuse(token):
        raise CourseError("{0} has no points.", "a.gpx")

    ticket = bench.submit(refuse)
    qtbot.waitUntil(lambda: not bench.is_busy)
    assert heard == [("failed", ticket, Message("{0} has no points.", ("a.gpx",)), True)]


def test_fault_is_logged_and_said_plainly(qtbot, bench, heard, caplog):
    ticket = bench.submit(lambda token: 1 // 0)
    with caplog.at_level(logging.ERROR):
        qtbot.waitUntil(lambda: not bench.is_busy)
    assert heard == [("failed", ticket, FAULT, True)]
    assert "ZeroDivisionError" in caplog.text


def test_cancelled_job_stops_and_is_not_heard_of_again(qtbot, bench, heard):
    started, stopped = threading.Event(), threading.Event()

    def endless(token):
        started.set()
        try:
            while True:
                token.check()
        finally:
            stopped.set()

    ticket = bench.submit(endless)
    assert started.wait(5)
    bench.cancel(ticket)
    assert stopped.wait(5)
    again = bench.submit(lambda token: "next")
    qtbot.waitUntil(lambda: bool(heard))
    assert heard == [("done", again, "next", True)]


def test_job_that_does_not_look_is_cancelled_all_the_same(qtbot, bench, heard):
    go = threading.Event()
    ticket = bench.submit(lambda token: go.wait(5))
    bench.cancel(ticket)
    go.set()
    qtbot.wait(50)
    assert heard == []


def test_progress_is_told_before_the_result_and_not_too_often(qtbot, bench, heard):
    def count(token):
        for step in range(1000):
            token.progress(step / 1000)

    ticket = bench.submit(count)
    qtbot.waitUntil(lambda: not bench.is_busy)
    names = [event[0] for event in heard]
    assert names[0] == "progressed"
    assert names[-1] == "done"
    assert heard[0][1:3] == (ticket, 0.0)
    assert len(names) < 100


def test_interpreter_switches_faster_only_while_busy(qtbot, bench):
    usual = sys.getswitchinterval()
    seen = []
    for _ in range(2):
        bench.submit(lambda token: seen.append(sys.getswitchinterval()))
    qtbot.waitUntil(lambda: not bench.is_busy)
    assert seen == pytest.approx([BUSY_SWITCH_S] * 2)
    assert sys.getswitchinterval() == usual


def test_closing_waits_for_what_is_running(qtbot):
    bench, ended = JobBench(), []

    def slow(token):
        while not token.is_cancelled:
            pass
        ended.append(True)

    running = threading.Event()
    bench.submit(lambda token: (running.set(), slow(token)))
    running.wait(5)
    bench.done.connect(lambda *_: ended.append("heard"))
    bench.close()
    assert ended == [True]
    qtbot.wait(10)
    assert ended == [True]
    bench.deleteLater()

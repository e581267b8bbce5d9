"""Figures of a measurement held against those kept before."""

import sys

import pytest

from tests.rules import source


@pytest.fixture(scope="module")
def bench():
    sys.path.insert(0, str(source.ROOT / "packaging"))
    import bench_kept

    yield bench_kept
    sys.path.remove(str(source.ROOT / "packaging"))


@pytest.fixture
def row(bench):
    def made(name="open", ours=(20.0, 30.0), floor=(10.0, 10.0)):
        return bench.Row(name, "floor", ours, floor, (goal("ratio", 5.0),))

    from bench_measure import Goal as goal

    return made


def test_a_fifth_slower_is_shown_and_less_is_not(bench, row, tmp_path):
    kept = tmp_path / "bench.json"
    bench.keep([row()], kept)
    just_so = row(ours=(23.9, 35.9))
    assert "None of 1 rows" in bench.compared([just_so], kept)
    slow = row(ours=(24.5, 36.5))
    assert "open: ratio 2.5 -> 3.05 (+22 %)" in bench.compared([slow], kept)


def test_a_slower_machine_is_not_a_slower_program(bench, row, tmp_path):
    kept = tmp_path / "bench.json"
    bench.keep([row()], kept)
    assert "None of 1 rows" in bench.compared([row(ours=(60.0, 90.0), floor=(30.0, 30.0))], kept)


def test_keeping_some_rows_leaves_the_others(bench, row, tmp_path):
    kept = tmp_path / "bench.json"
    bench.keep([row(), row("zoom")], kept)
    bench.keep([row("zoom", ours=(70.0, 70.0))], kept)
    assert bench.read_kept(kept)["open"]["ratio"] == 2.5
    assert bench.read_kept(kept)["zoom"]["ratio"] == 7.0


def test_a_row_without_a_kept_figure_is_named(bench, row, tmp_path):
    assert "Not kept yet: open." in bench.compared([row()], tmp_path / "bench.json")

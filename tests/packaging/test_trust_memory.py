"""The measure by which the trust run tells a leak: it sees one, and no more than that."""

import ctypes
import sys

import pytest

from tests.rules import source

BYTES = 32 * 1024 * 1024


@pytest.fixture(scope="module")
def memory():
    if not hasattr(ctypes.CDLL(None), "mallinfo2"):
        pytest.skip("the C library does not tell what is in use")
    sys.path.insert(0, str(source.ROOT / "packaging"))
    import trust_memory

    yield trust_memory
    sys.path.remove(str(source.ROOT / "packaging"))


def test_what_is_kept_counts_and_what_is_let_go_does_not(memory):
    before = memory.held()
    kept = bytearray(BYTES)
    with_it = memory.held()
    assert with_it.in_use - before.in_use == pytest.approx(BYTES, rel=0.05)
    kept.clear()
    assert memory.held().in_use - before.in_use < BYTES / 20


def test_a_twentieth_more_is_a_leak(memory):
    before = memory.Held(100_000_000, 200_000_000)
    assert not before.growth_to(memory.Held(104_000_000, 260_000_000)).is_leak
    assert before.growth_to(memory.Held(106_000_000, 200_000_000)).is_leak

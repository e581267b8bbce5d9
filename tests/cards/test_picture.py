"""Cards for a lock screen, and what happens when nothing can be written."""

import errno
import os
import struct

import pytest

from tests.cards.big_plans import plan
from ultraplanner_gui.cards.pdf import write_cards
from ultraplanner_gui.cards.picture import CLOCK_SHARE, Screen, pictures, write_pictures
from ultraplanner_gui.exchange import safe_write
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.wording.words import Words

pytestmark = pytest.mark.usefixtures("qapp")

WORDS = Words()
PACE = Card(CardKind.PACE)


def _png_size(data):
    """Return width and height from the header of a PNG (ISO/IEC 15948, 11.2.2)."""
    assert data[:8] == b"\x89PNG\r\n\x1a\n"
    return struct.unpack(">II", data[16:24])


@pytest.mark.parametrize("size", [(1080, 2340), (750, 1334), (1440, 3120)])
def test_a_picture_has_exactly_the_pixels_of_the_screen(tmp_path, size):
    screen = Screen(*size)
    for path in write_pictures(PACE, plan("demo"), WORDS, screen, tmp_path / "lock.png"):
        assert _png_size(path.read_bytes()) == size


def test_the_clock_has_its_room_and_night_is_dark():
    (first, *_) = pictures(PACE, plan("demo"), WORDS, Screen(540, 1170))
    rows = range(0, int(CLOCK_SHARE * 1170) - 2, 5)
    assert {first.pixelColor(x, y).lightness() for x in range(0, 540, 9) for y in rows} == {0}
    light = pictures(PACE, plan("demo"), WORDS, Screen(540, 1170, is_dark=False))[0]
    assert light.pixelColor(2, 2).lightness() == 255


def test_what_goes_on_is_written_beside_with_a_number(tmp_path):
    paths = write_pictures(PACE, plan("170 km"), WORDS, Screen(), tmp_path / "lock.png")
    assert len(paths) > 1
    assert [p.name for p in paths[:2]] == ["lock.png", "lock 2.png"]


def _write_pdf(path):
    write_cards(plan("demo"), WORDS, path)


def _write_png(path):
    write_pictures(PACE, plan("demo"), WORDS, Screen(), path)


@pytest.mark.parametrize("write", [_write_pdf, _write_png])
@pytest.mark.parametrize("code", [errno.ENOSPC, errno.EACCES, errno.EIO])
def test_a_write_that_fails_says_one_sentence_and_leaves_the_old_file(
    tmp_path, monkeypatch, write, code
):
    path = tmp_path / "old"
    path.write_bytes(b"as it was")

    def fail(*args, **kwargs):
        raise OSError(code, os.strerror(code))

    monkeypatch.setattr(safe_write.os, "fsync", fail)
    with pytest.raises(PlanError) as refused:
        write(path)
    said = WORDS.say(refused.value.message)
    assert said.endswith(".")
    assert "old" in said
    assert path.read_bytes() == b"as it was"
    assert [p.name for p in tmp_path.iterdir()] == ["old"]

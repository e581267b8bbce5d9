import json
from dataclasses import astuple, dataclass
from datetime import UTC, date, datetime
from enum import StrEnum
from typing import Literal
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.course import Line
from ultraplanner_gui.plan.message import Message, Quantity, StoreError
from ultraplanner_gui.plan.reading import Repair, RepairKind
from ultraplanner_gui.store.codec import decode, decode_rows, encode
from ultraplanner_gui.store.line_body import pack_line, unpack_line

LONDON = ZoneInfo("Europe/London")


class Hue(StrEnum):
    TEAL = "teal"


@dataclass(frozen=True, slots=True)
class Bead:
    name: str
    size_m: float
    hue: Hue = Hue.TEAL
    pair: tuple[int, str] | None = None
    side: Literal["left", "right"] = "left"


def back(kind, value):
    return decode(kind, encode(kind, value, "bead"), "bead")


@pytest.mark.parametrize("fold", [0, 1])
def test_hour_that_occurs_twice_keeps_its_side(fold):
    # British summer time ended on 31 October 2027 at 02:00; from memory
    clock = datetime(2027, 10, 31, 1, 30, tzinfo=LONDON, fold=fold)
    assert back(datetime, clock).astimezone(UTC) == clock.astimezone(UTC)
    assert back(datetime, clock).tzinfo is LONDON


def test_wall_clock_stays_when_the_rules_of_a_zone_have_changed():
    read = decode(datetime, b'"2027-06-19T06:00:00+05:00[Europe/London]"', "race")
    assert (read.hour, read.tzinfo) == (6, LONDON)


def test_zone_is_written_by_name():
    clock = datetime(2027, 6, 19, 6, tzinfo=LONDON)
    assert encode(datetime, clock, "race") == b'"2027-06-19T06:00:00+01:00[Europe/London]"'


@given(st.floats(-1e12, 1e12))
def test_figures_come_back_to_the_last_bit(figure):
    assert back(float, figure).hex() == figure.hex()


def test_whole_number_where_a_figure_is_meant_becomes_one():
    read = back(Bead, Bead("a", 3))
    assert (read.size_m, type(read.size_m)) == (3.0, float)


def test_message_keeps_its_quantities_apart_from_its_text():
    message = Message("{0} of {1}, {2}", (Quantity(3.5, "m"), 7, "seven"))
    assert back(Message, message) == message


def test_missing_field_takes_its_default_and_a_needed_one_is_named():
    assert decode(Bead, b'{"name":"a","size_m":1}', "bead") == Bead("a", 1.0)
    with pytest.raises(StoreError, match=r"bead\.size_m"):
        decode(Bead, b'{"name":"a"}', "bead")


def test_place_of_a_fault_is_named_down_to_the_field():
    with pytest.raises(StoreError, match=r"beads 2\.pair 1"):
        decode(
            tuple[Bead, ...],
            b'[{"name":"a","size_m":1},{"name":"b","size_m":1,"pair":["x","y"]}]',
            "beads",
        )


@pytest.mark.parametrize(
    "bead",
    [
        Bead("a", float("inf")),
        Bead("a", 1e13),
        Bead("a", "1"),
        Bead("a", 1.0, "red"),
        Bead("a", 1.0, pair=(True, "x")),
        Bead("a", 1.0, pair=(1, "x", 2)),
        Bead("a", 1.0, side="up"),
        Bead("x" * 200_001, 1.0),
        None,
    ],
)
def test_what_would_not_be_read_is_not_written(bead):
    with pytest.raises(StoreError, match="cannot be kept"):
        encode(Bead, bead, "bead")


def test_time_without_zone_and_time_for_a_day_are_not_written():
    for kind, value in ((datetime, datetime(2027, 1, 1)), (date, datetime(2027, 1, 1))):
        with pytest.raises(StoreError):
            encode(kind, value, "race")


@pytest.mark.parametrize("lenient", [False, True])
def test_repair_and_plain_sentence_are_told_apart(lenient):
    said = (Message("a"), Repair("b", (), RepairKind.SPIKES), Repair("c", (2,), RepairKind.FEET))
    kind = tuple[Message | Repair, ...]
    read = decode(kind, encode(kind, said, "course"), "course", lenient)
    assert read == said
    assert list(map(type, read)) == [Message, Repair, Repair]


def test_repair_of_a_kind_not_known_yet_is_still_said():
    body = b'[{"template":"a","args":[],"kind":"moonlight"}]'
    assert decode(tuple[Message | Repair, ...], body, "course", True) == (Message("a"),)


def test_unknown_field_is_passed_over_only_where_asked():
    body = b'{"name":"a","size_m":1,"weight_kg":2}'
    assert decode(Bead, body, "bead", lenient=True) == Bead("a", 1.0)
    with pytest.raises(StoreError, match=r"bead\.weight_kg"):
        decode(Bead, body, "bead")


DECIMALS = st.one_of(
    st.integers(-(2**31), 2**31).map(lambda number: number / 1e6), st.just(float("nan"))
)


@given(st.integers(2, 60), st.data())
def test_line_comes_back_to_the_last_bit(points, data):
    value = data.draw(st.sampled_from((st.floats(width=64), DECIMALS, st.just(-0.0))))
    column = st.lists(value, min_size=points, max_size=points).map(np.array)
    gaps = data.draw(st.sets(st.integers(1, points - 1), max_size=3).map(sorted).map(tuple))
    line = Line(data.draw(column), data.draw(column), data.draw(column), gaps)
    read = unpack_line(pack_line(line))
    assert read.gaps == gaps
    for name in ("latitude_deg", "longitude_deg", "elevation_m"):
        assert getattr(read, name).tobytes() == getattr(line, name).tobytes()


def test_coordinates_of_six_decimals_take_half_the_room():
    column = np.arange(1000) / 1e6 + 45.0
    raw = np.sqrt(np.arange(1000.0))
    assert len(pack_line(Line(column, column, column))) < 12_100
    assert len(pack_line(Line(raw, raw, column))) > 20_000


@dataclass(frozen=True, slots=True)
class Even:
    count: int

    def __post_init__(self):
        if self.count % 2:
            raise ValueError


def test_rows_that_check_themselves_are_checked():
    assert decode_rows(Even, [b'[{"count":2},{"count":4}]'], "even") == (Even(2), Even(4))
    with pytest.raises(StoreError, match="even 2"):
        decode_rows(Even, [b'[{"count":2},{"count":3}]'], "even")


@dataclass(frozen=True, slots=True)
class Pearl(Bead):
    weight_g: float = 0.0


def test_rows_of_a_kind_of_a_kind_have_all_their_fields():
    pearls = (Pearl("a", 1.0, weight_g=2.0), Pearl("b", 2.0, pair=(1, "x"), weight_g=3.0))
    body = encode(tuple[Pearl, ...], pearls, "pearls")
    assert decode_rows(Pearl, [body], "pearls") == pearls


BEAD = {"name": "a", "size_m": 1.0, "hue": "teal", "pair": [1, "b"], "side": "left"}
ODD = st.sampled_from(
    (
        None,
        True,
        1,
        -1e300,
        1e300,
        0.5,
        "a",
        "teal",
        "left",
        "x" * 200_001,
        [],
        [1, 2],
        [True, ""],
        {},
    )
)


@given(
    st.lists(
        st.builds(
            lambda field, odd, drop: {
                k: odd if k == field else v for k, v in BEAD.items() if k != drop
            },
            st.sampled_from((*BEAD, "none")),
            ODD,
            st.sampled_from((*BEAD, "none", "none", "none")),
        ),
        min_size=1,
        max_size=4,
    ),
    st.booleans(),
)
def test_rows_read_at_once_are_those_read_one_by_one(beads, lenient):
    body = json.dumps(beads).encode()
    try:
        singly = tuple(decode(Bead, json.dumps(b).encode(), "bead", lenient) for b in beads)
    except StoreError:
        with pytest.raises(StoreError):
            decode_rows(Bead, [body], "beads", lenient)
        with pytest.raises(StoreError):
            decode(tuple[Bead, ...], body, "beads", lenient)
        return
    for read in (
        decode_rows(Bead, [body], "beads", lenient),
        decode(tuple[Bead, ...], body, "beads", lenient),
    ):
        assert read == singly
        assert [tuple(map(type, astuple(b))) for b in read] == [
            tuple(map(type, astuple(b))) for b in singly
        ]

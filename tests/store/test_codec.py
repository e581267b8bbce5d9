import json
from datetime import UTC, date, datetime
from enum import StrEnum
from typing import Literal, get_args
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec import structs, to_builtins
from msgspec.structs import replace

from ultraplanner_gui.plan.course import Course, Line
from ultraplanner_gui.plan.message import Message, Quantity, StoreError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.reading import Repair, RepairKind
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.template import Template
from ultraplanner_gui.plan.value import Number, Value, Whole
from ultraplanner_gui.store.codec import check, encode, hints_of, is_kind
from ultraplanner_gui.store.decoding import decode, decode_rows, knows, maker_of
from ultraplanner_gui.store.line_body import pack_line, unpack_line
from ultraplanner_gui.store.migrations import State
from ultraplanner_gui.store.parts import KINDS

LONDON = ZoneInfo("Europe/London")


class Hue(StrEnum):
    TEAL = "teal"


class Bead(Value, frozen=True):
    name: str
    size_m: Number
    hue: Hue = Hue.TEAL
    pair: tuple[Whole, str] | None = None
    side: Literal["left", "right"] = "left"


class Start(Value, frozen=True):
    clock: datetime
    others: tuple[datetime | None, ...] = ()


class Told(Value, frozen=True):
    said: tuple[Message | Repair, ...]


def back(kind, value):
    return decode(kind, encode(kind, value, "bead"), "bead")


@pytest.mark.parametrize("fold", [0, 1])
def test_hour_that_occurs_twice_keeps_its_side(fold):
    # British summer time ended on 31 October 2027 at 02:00; from memory
    clock = datetime(2027, 10, 31, 1, 30, tzinfo=LONDON, fold=fold)
    start = back(Start, Start(clock, (None, clock)))
    for read in (start.clock, start.others[1]):
        assert read.astimezone(UTC) == clock.astimezone(UTC)
        assert read.tzinfo is LONDON


def test_wall_clock_stays_when_the_rules_of_a_zone_have_changed():
    read = decode(Start, b'{"clock":"2027-06-19T06:00:00+05:00[Europe/London]"}', "race")
    assert (read.clock.hour, read.clock.tzinfo) == (6, LONDON)


def test_zone_is_written_by_name():
    clock = datetime(2027, 6, 19, 6, tzinfo=LONDON)
    assert encode(datetime, clock, "race") == b'"2027-06-19T06:00:00+01:00[Europe/London]"'


@given(st.floats(-1e12, 1e12))
def test_figures_come_back_to_the_last_bit(figure):
    assert back(Bead, Bead("a", figure)).size_m.hex() == figure.hex()


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
        decode_rows(
            Bead,
            [b'[{"name":"a","size_m":1},{"name":"b","size_m":1,"pair":["x","y"]}]'],
            "beads",
        )
    with pytest.raises(StoreError, match=r"beads 2\.size_m"):
        decode_rows(Bead, [b'[{"name":"a","size_m":1},{"name":"b","size_m":1e13}]'], "beads")
    with pytest.raises(StoreError, match=r"start\.others"):
        decode(Start, b'{"clock":"2027-06-19T06:00:00+01:00","others":["now"]}', "start")


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


def test_repair_and_plain_sentence_are_told_apart():
    said = (Message("a"), Repair("b", (), RepairKind.SPIKES), Repair("c", (2,)))
    read = back(Told, Told(said))
    assert read.said == said
    assert list(map(type, read.said)) == [Message, Repair, Repair]


def test_repair_of_a_kind_not_known_yet_is_still_said():
    body = b'{"said":[{"template":"a","args":[],"kind":"moonlight"}]}'
    assert decode(Told, body, "course") == Told((Message("a"),))


@pytest.mark.parametrize("said", ["{}", '"a"', "[7]", '[{"args":[]}]'])
def test_what_is_no_sentence_is_refused_by_name(said):
    with pytest.raises(StoreError, match=r"course\.said"):
        decode(Told, b'{"said":%s}' % said.encode(), "course")


def test_unknown_field_is_passed_over():
    body = b'{"name":"a","size_m":1,"weight_kg":[2]}'
    assert decode(Bead, body, "bead") == Bead("a", 1.0)
    assert decode_rows(Bead, [b"[%s]" % body], "beads") == (Bead("a", 1.0),)


@pytest.mark.parametrize(
    ("body", "is_known"),
    [
        ('[{"name":"a","size_m":1,"pair":[1,"x"]}]', True),
        ('[{"name":"a","weight_kg":1}]', False),
        ('[{"name":"a"},{"name":"a","pair":[1,{"x":2}]}]', False),
        ("[]", True),
    ],
)
def test_fields_that_are_not_known_can_be_told(body, is_known):
    assert knows(tuple[Bead, ...], json.loads(body)) is is_known


def test_name_of_a_file_that_is_no_text_comes_back():
    """On Linux such a name has half a pair of surrogates in it, which msgspec does not read."""
    assert back(Bead, Bead("run-\udcff.gpx", 1.0)).name == "run-\udcff.gpx"
    beads = (Bead("\ud800", 1.0, pair=(1, "\udcff")),)
    assert decode_rows(Bead, [encode(tuple[Bead, ...], beads, "b")], "b") == beads


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


class Even(Value, frozen=True):
    count: Whole

    def __post_init__(self):
        if self.count % 2:
            raise ValueError


def test_rows_that_check_themselves_are_checked():
    assert decode_rows(Even, [b'[{"count":2},{"count":4}]'], "even") == (Even(2), Even(4))
    with pytest.raises(StoreError, match="even 2"):
        decode_rows(Even, [b'[{"count":2},{"count":3}]'], "even")


class Pearl(Bead, frozen=True):
    weight_g: Number = 0.0


def test_rows_of_a_kind_of_a_kind_have_all_their_fields():
    pearls = (Pearl("a", 1.0, weight_g=2.0), Pearl("b", 2.0, pair=(1, "x"), weight_g=3.0))
    body = encode(tuple[Pearl, ...], pearls, "pearls")
    assert decode_rows(Pearl, [body], "pearls") == pearls


def classes_within(hint):
    """Every dataclass that a value of type *hint* may hold."""
    if is_kind(hint):
        yield hint
        for of in hints_of(hint).values():
            yield from classes_within(of)
    for of in get_args(hint):
        yield from classes_within(of)


@pytest.mark.parametrize("head", [*KINDS.values(), State, Template])
def test_what_msgspec_cannot_read_stands_only_in_the_heads(head):
    """It would read a time its own way, and knows no union of classes."""
    apart = {Course, KeptRecording, Race, Project} - {head}
    found = {kind for kind in classes_within(head) if kind is not Line} - {head} - apart
    for kind in found:
        assert [name for name, of in hints_of(kind).items() if maker_of(of)] == [], kind


WHOLE = st.integers() | st.sampled_from((10**12, 10**12 + 1, -(10**13), 10**30, -(10**400)))
NUMBER = WHOLE | st.floats(allow_nan=False, allow_infinity=False) | st.sampled_from((1e12, -2e12))


class Chain(Value, frozen=True):
    beads: tuple[Bead, ...] = ()
    lock: Bead | None = None
    sizes_m: tuple[Number, ...] = ()
    args: tuple[str | Whole | Quantity, ...] = ()
    count: Whole | None = None
    even: tuple[Even, ...] | None = None


def chains(number):
    bead = st.builds(Bead, st.just("a"), number, pair=st.none() | st.tuples(WHOLE, st.just("x")))
    return st.builds(
        Chain,
        st.lists(bead, max_size=2).map(tuple),
        st.none() | bead,
        st.lists(number, max_size=3).map(tuple),
        st.lists(
            st.one_of(st.just("x"), WHOLE, st.builds(Quantity, number, st.just("m"))), max_size=2
        ).map(tuple),
        st.none() | WHOLE,
        st.none() | st.lists(st.builds(Even, st.just(2)), max_size=1).map(tuple),
    )


def all_numbers(value):
    if type(value) in (int, float):
        yield value
    elif isinstance(value, tuple):
        for one in value:
            yield from all_numbers(one)
    elif isinstance(value, Value):
        yield from all_numbers(structs.astuple(value))


@given(st.lists(chains(NUMBER), max_size=3))
def test_what_reaches_too_far_is_refused_wherever_it_stands(found):
    farthest = max((abs(number) for chain in found for number in all_numbers(chain)), default=0)
    body = json.dumps([to_builtins(chain) for chain in found]).encode()
    read = value_or_refused(lambda: decode_rows(Chain, [body], "chains"))
    assert read == (tuple(found) if farthest <= 1e12 else None)


@pytest.mark.parametrize("kind", [float, int, tuple[float, ...], float | None])
def test_a_number_without_an_end_is_no_part_of_a_plan(kind):
    with pytest.raises(TypeError, match="no way to keep"):
        encode(kind, 1.0, "bead")


def value_or_refused(read):
    try:
        return read()
    except StoreError:
        return None


def slowly(body):
    """Return the bead in *body* as it is read value by value, None if it is not as it should be."""
    coded = json.loads(body)
    try:
        bead = Bead(**{name: of for name, of in coded.items() if name in Bead.__struct_fields__})
        if isinstance(bead.size_m, int) and type(bead.size_m) is not bool:
            bead = replace(bead, size_m=float(bead.size_m))
        bead = replace(bead, hue=Hue(bead.hue))
        if isinstance(bead.pair, list):
            bead = replace(bead, pair=tuple(bead.pair))
        check(Bead, bead, "bead")
    except (StoreError, ValueError, TypeError, OverflowError):
        return None
    return bead


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


BEADS = st.builds(
    lambda field, odd, drop: {k: odd if k == field else v for k, v in BEAD.items() if k != drop},
    st.sampled_from((*BEAD, "none")),
    ODD,
    st.sampled_from((*BEAD, "none", "none", "none")),
)


@given(st.lists(BEADS, min_size=1, max_size=4))
def test_rows_are_what_their_values_are_one_by_one(beads):
    bodies = [json.dumps(bead).encode() for bead in beads]
    singly = tuple(map(slowly, bodies))
    rows = b"[" + b",".join(bodies) + b"]"
    expected = None if None in singly else singly
    for read in (
        lambda: tuple(decode(Bead, body, "bead") for body in bodies),
        lambda: decode_rows(Bead, [rows], "beads"),
    ):
        found = value_or_refused(read)
        assert found == expected
        if found is not None:
            assert [tuple(map(type, structs.astuple(b))) for b in found] == [
                tuple(map(type, structs.astuple(b))) for b in singly
            ]

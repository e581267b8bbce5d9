from contextlib import closing

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.database import Database
from ultraplanner_gui.store.parts import digest_of, is_whole

BODIES = {digest_of(body): body for body in (b"[%d]" % number for number in range(1_200))}


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "many.ultraplan"
    with closing(Database.make(path, path)) as database, database.transaction():
        database.put_parts(BODIES)
    return path


def exchange(path, statement, *values):
    with closing(Database.take(path)) as database, database.transaction():
        database._connection.execute(statement, values)


def test_bodies_come_in_the_order_asked_for(path):
    digests = [*reversed(BODIES), next(iter(BODIES))]
    with closing(Database.take(path)) as database:
        assert database.bodies(digests) == BODIES
        assert database.bodies(()) == {}


@pytest.mark.parametrize("odd", ["", "zz", "00" * 20, next(iter(BODIES)).upper()])
def test_a_body_that_is_not_there_is_told(path, odd):
    with closing(Database.take(path)) as database, pytest.raises(StoreError, match="damaged"):
        database.bodies([*BODIES, odd])


def test_bodies_in_each_others_place_are_told(path):
    first, second, third = list(BODIES)[:3]
    change = "UPDATE part SET body = ? WHERE digest = ?"
    exchange(path, change, BODIES[first], bytes.fromhex(second))
    with closing(Database.take(path)) as database:
        assert database.bodies((first, third)) == {first: BODIES[first], third: BODIES[third]}
        for wish in ((second,), (first, second)):
            with pytest.raises(StoreError, match="damaged"):
                database.bodies(wish)


def test_a_digest_ends_in_the_checksum_that_zip_and_png_have():
    # The check value of CRC-32 in R. Williams, A Painless Guide to CRC Error Detection (1993)
    assert digest_of(b"123456789").endswith("cbf43926")


@given(st.binary(min_size=4, max_size=5_000), st.data())
def test_every_change_within_four_bytes_is_told(body, data):
    at = data.draw(st.integers(0, len(body) - 4))
    change = data.draw(st.binary(min_size=4, max_size=4))
    changed = body[:at] + change + body[at + 4 :]
    assert is_whole(changed, bytes.fromhex(digest_of(body))) is (changed == body)

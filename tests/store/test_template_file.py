import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.store.projects import full_project
from ultraplanner_gui.engine.template import template_of
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.template_file import HEAD, read_template, template_bytes

TEMPLATE = template_of(full_project(sessions=40, points=20), "Forty days")


def test_a_template_is_read_back_equal(tmp_path):
    path = tmp_path / "a.ultrablock"
    path.write_bytes(template_bytes(TEMPLATE))
    assert read_template(path) == TEMPLATE


@given(st.binary(max_size=300))
def test_what_is_no_template_is_said_so(tmp_path_factory, tail):
    path = tmp_path_factory.mktemp("t") / "b.ultrablock"
    for body in (tail, HEAD + tail):
        path.write_bytes(body)
        with pytest.raises(StoreError, match="no template"):
            read_template(path)


@given(st.data())
def test_a_changed_byte_is_refused_or_gives_a_sound_template(tmp_path_factory, data):
    body = bytearray(template_bytes(TEMPLATE))
    body[data.draw(st.integers(0, len(body) - 1))] = data.draw(st.integers(0, 255))
    path = tmp_path_factory.mktemp("t") / "c.ultrablock"
    path.write_bytes(bytes(body))
    try:
        read = read_template(path)
    except StoreError:
        return
    assert read.easy_mps > 0.0
    assert len({s.key for s in read.block.sessions}) == len(read.block.sessions)

"""packaging/file-format.md, held to the code and enough to read a project by."""

import hashlib
import importlib.util
import json
import re
import sqlite3
import struct
import zlib
from datetime import datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from tests.rules import source
from tests.store.old.make import describe
from tests.store.projects import full_project, small_project
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.store import database, header, line_body
from ultraplanner_gui.store.parts import DIGEST_BYTES, pieces
from ultraplanner_gui.store.project_file import ProjectFile

DOCUMENT = source.ROOT / "packaging" / "file-format.md"
TEXT = DOCUMENT.read_text("utf-8")


def test_every_class_and_field_is_as_the_code_has_it():
    """Else run `python packaging/file_format.py`."""
    script = source.ROOT / "packaging" / "file_format.py"
    spec = importlib.util.spec_from_file_location("file_format", script)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    assert module.renewed(TEXT) == TEXT


def test_no_class_that_the_store_keeps_is_missing():
    kept = {line.split(".")[0].split(":")[0] for line in describe()} - {"Line"}
    assert kept | {"State"} == set(re.findall(r"^### (\w+)$", TEXT, re.MULTILINE))


def test_every_part_is_in_the_table():
    written = {piece.name for piece in pieces(full_project(3, 20))}
    assert written == set(re.findall(r"^\| `(\w+)` \| (?!`|the version)", TEXT, re.MULTILINE)) - {
        "application_id"
    }


def test_the_figures_of_the_file_are_those_of_the_code():
    assert f"now `{database.VERSION}`" in TEXT
    assert f"`{header.APPLICATION_ID:#X}`".replace("0X", "0x") in TEXT
    assert all(statement in TEXT for statement in database.TABLES)
    assert f"with {DIGEST_BYTES} bytes" in TEXT
    assert f"{line_body._DOUBLES} is doubles" in TEXT
    assert f"{line_body._MISSING} for a missing" in TEXT


class Reader:
    """Reads a file by the page alone; nothing of the program's own store is used."""

    def __init__(self, path):
        with sqlite3.connect(path) as connection:
            self.states = {
                number: (body, seal)
                for number, body, seal in connection.execute("SELECT id, body, seal FROM state")
            }
            self.bodies = dict(connection.execute("SELECT digest, body FROM part"))
        connection.close()

    def state(self, number):
        body, seal = self.states[number]
        salt = struct.pack(">q", number)
        assert hashlib.blake2b(body, digest_size=20, salt=salt).digest() == seal
        return json.loads(body)

    def body(self, digest):
        body = self.bodies[bytes.fromhex(digest)]
        name = hashlib.blake2b(body, digest_size=16).digest()
        assert (name + struct.pack(">I", zlib.crc32(body))).hex() == digest
        return body

    def parts(self, number):
        manifest = json.loads(self.body(self.state(number)["root"]))
        return {name: list(map(self.body, row)) for name, row in manifest.items()}


def columns(body):
    magic, points, gaps = struct.unpack_from("<4sII", body)
    assert magic == b"cols"
    kinds, at = body[12:15], 15 + 4 * gaps
    read = []
    for kind in kinds:
        if kind == 255:
            read.append(np.frombuffer(body, "<f8", points, at))
            at += 8 * points
        else:
            whole = np.frombuffer(body, "<i4", points, at)
            read.append(np.where(whole == -2147483648, np.nan, whole / 10.0**kind))
            at += 4 * points
    assert at == len(body)
    return struct.unpack_from(f"<{gaps}I", body, 15), read


@pytest.fixture
def reader(tmp_path):
    path = tmp_path / "a.ultraplan"
    with ProjectFile.create(path, small_project("as it was")) as file:
        file.keep(full_project(60, 80), "Build the block")
    assert path.read_bytes()[68:72] == b"Ultr"
    return Reader(path)


def test_the_states_are_read_by_the_page(reader):
    assert reader.state(0)["label"] == "Build the block"
    assert json.loads(reader.parts(1)["project"][0])["notes"] == "as it was"


def test_the_sessions_are_read_by_the_page(reader):
    weeks = [json.loads(body) for body in reader.parts(0)["sessions"]]
    read = [session for week in weeks for session in week]
    kept = full_project(60, 80).block.sessions
    assert len(weeks) > 1
    assert [s["key"] for s in read] == [s.key for s in kept]
    assert [s["distance_m"] for s in read] == [s.distance_m for s in kept]
    assert [s["day"] for s in read] == [s.day.isoformat() for s in kept]
    assert set(read[0]) == set(Session.__struct_fields__)


def test_the_start_is_read_by_the_page(reader):
    text = json.loads(reader.parts(0)["race"][0])["start"]
    clock, zone = re.fullmatch(r"(.+)\[(.+)\]", text).groups()
    start = full_project(1, 20).race.start
    assert datetime.fromisoformat(clock) == start
    assert ZoneInfo(zone) is start.tzinfo


def test_the_line_is_read_by_the_page(reader):
    line = full_project(60, 80).course.line
    gaps, (latitude, longitude, height) = columns(reader.parts(0)["line"][0])
    assert gaps == line.gaps
    np.testing.assert_array_equal(latitude, line.latitude_deg)
    np.testing.assert_array_equal(longitude, line.longitude_deg)
    np.testing.assert_array_equal(height, line.elevation_m)


def test_a_recording_comes_out_as_it_went_in(reader):
    parts = reader.parts(0)
    assert len(parts["tracks"]) == len(parts["recordings"])
    assert parts["tracks"][0] == full_project(1, 20).recordings[0].packed

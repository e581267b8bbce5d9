"""Project files made by someone who means harm: other tables, and parts with right checksums."""

import json
import struct
import zlib
from contextlib import closing

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.store.database import Database
from ultraplanner_gui.store.line_body import pack_line, unpack_line
from ultraplanner_gui.store.parts import digest_of


def forged(path, name, change):
    """Rewrite the parts *name* with right checksums, as someone would who means harm."""
    with closing(Database.take(path)) as database, database.transaction():
        state = json.loads(database.states()[0])
        manifest = json.loads(database.body(state["root"]))
        bodies = [change(database.body(digest)) for digest in manifest[name]]
        manifest[name] = [digest_of(body) for body in bodies]
        root = json.dumps(manifest).encode()
        state["root"] = digest_of(root)
        database.put_parts({digest_of(body): body for body in (*bodies, root)})
        database.put_state(0, json.dumps(state).encode())


def fields(**changes):
    return lambda body: json.dumps({**json.loads(body), **changes}).encode()


def first(**changes):
    def change(body):
        rows = json.loads(body)
        return json.dumps([{**rows[0], **changes}, *rows[1:]]).encode()

    return change


def line_with(points=None, swell=0, pack=pack_line, **columns):
    def change(body):
        line = unpack_line(body)
        for name, value in columns.items():
            column = getattr(line, name).copy()
            column[3] = value
            line = replace(line, **{name: column})
        if pack is deflated:
            return deflated(line, points, swell)
        body = pack_line(line)
        return body[:4] + (points or len(line)).to_bytes(4, "little") + body[8:] + bytes(swell)

    return change


def deflated(line, points=None, swell=0):
    """Return *line* as the first files held it."""
    raw = np.array(line.gaps, "<u4").tobytes() + b"".join(
        column.astype("<f8").tobytes()
        for column in (line.latitude_deg, line.longitude_deg, line.elevation_m)
    )
    head = struct.pack("<4sII", b"line", points or len(line), len(line.gaps))
    return head + zlib.compress(raw + bytes(swell))


def decimals(number):
    return lambda body: body[:12] + bytes((number,)) + body[13:]


#: Statements that make another database of a project file.
SCHEMAS = (
    "CREATE TRIGGER t AFTER UPDATE ON state BEGIN DELETE FROM part; END",
    "CREATE TRIGGER t BEFORE INSERT ON part BEGIN DELETE FROM state; END",
    "CREATE VIEW v AS SELECT hex(zeroblob(400000000))",
    "CREATE TABLE extra (a)",
    "CREATE INDEX i ON state (body)",
    "ALTER TABLE state ADD COLUMN more BLOB",
    "DROP TABLE state",
    "DROP TABLE part; CREATE VIEW part AS WITH RECURSIVE n (digest, body) AS "
    "(SELECT 1, 2 UNION ALL SELECT digest + 1, body FROM n) SELECT * FROM n",
)

#: A part and what is done to its body.
FORGED = (
    ("race", fields(goal_s=1e400)),
    ("race", fields(goal_s=-5)),
    ("race", fields(goal_s=10**30)),
    ("race", fields(goal_s=True)),
    ("race", fields(name=7)),
    ("race", fields(name="x" * 300_000)),
    ("race", fields(start="2027-06-19T06:00:00")),
    ("race", fields(start="2027-06-19T06:00:00+01:00[../../etc/localtime]")),
    ("race", fields(start="2027-06-19T06:00:00+01:00[Nowhere/Land]")),
    ("race", fields(start="0001-01-01T00:00:00+14:00")),
    ("race", lambda body: b'{"name":NaN}'),
    ("race", lambda body: b"[" * 200_000),
    ("race", lambda body: b"\xff\xfe"),
    ("race", lambda body: b"{}"),
    ("runner", fields(available_s=[1.0])),
    ("runner", fields(level="superhuman")),
    ("project", fields(first_weekday=7)),
    ("project", fields(first_weekday=1.5)),
    ("block", fields(cutbacks=[1] * 30_000)),
    ("sessions", first(day="2027-02-30")),
    ("sessions", first(day="1777-02-03")),
    ("sessions", first(done={"distance_m": 1.0})),
    ("sessions", first(key="s3")),
    ("items", first(food="nothing")),
    ("course", fields(length_m=0.0)),
    ("course", fields(stations=[])),
    ("course", fields(sections=[])),
    ("course", fields(official_m=51_000.0)),
    (
        "course",
        fields(pins=[{"at_m": 900.0, "line_m": 900.0}, {"at_m": 800.0, "line_m": 950.0}]),
    ),
    ("course", fields(pins=[{"at_m": 60_000.0, "line_m": 900.0}])),
    ("course", fields(surface_factors=[{"surface": "rock", "cost": 0.0, "descent": 1.0}])),
    ("course", fields(repairs=[{"template": "{0}", "args": [[1]]}])),
    ("line", lambda body: b""),
    ("line", lambda body: b"line" + bytes(50)),
    ("line", line_with(latitude_deg=91.0)),
    ("line", line_with(longitude_deg=float("nan"))),
    ("line", line_with(elevation_m=float("inf"))),
    ("line", line_with(points=1_000_000)),
    ("line", line_with(swell=1)),
    ("line", line_with(points=1_000_000, pack=deflated)),
    ("line", line_with(swell=1, pack=deflated)),
    ("line", decimals(8)),
    ("line", lambda body: body[:13]),
)

"""A project taken apart into bodies that change alone, and put together again."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import partial
from hashlib import blake2b
from itertools import chain, groupby
from typing import Any, TypeVar
from zlib import crc32

from ultraplanner_gui.plan.block import Block, Session
from ultraplanner_gui.plan.candidates import Candidate
from ultraplanner_gui.plan.cards import Card
from ultraplanner_gui.plan.course import Course, SurfaceSpan
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.recording import MOST_PACKED_BYTES, MOST_RECORDINGS, KeptRecording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.store.codec import Json, encode
from ultraplanner_gui.store.decoding import decode, decode_lists, decode_rows
from ultraplanner_gui.store.line_body import pack_line, unpack_line
from ultraplanner_gui.store.soundness import is_sound_line
from ultraplanner_gui.store.troubles import damaged, unfit

T = TypeVar("T")

DIGEST_BYTES = 20
_CHECK_BYTES = 4
MOST_BODIES = 20_000
HOURS_TOGETHER = 4

_PROJECT_APART = frozenset(
    ("race", "course", "runner", "block", "fuel", "cards", "candidates", "recordings")
)
_COURSE_APART = frozenset(("line", "surfaces"))
_BLOCK_APART = frozenset(("sessions",))
_FUEL_APART = frozenset(("foods", "items"))
_RECORDING_APART = frozenset(("packed",))
LINE = "line"
TRACKS = "tracks"

KINDS: dict[str, Any] = {
    "project": Project,
    "race": Race,
    "runner": Runner,
    "block": Block,
    "sessions": tuple[Session, ...],
    "fuel": FuelPlan,
    "foods": tuple[Food, ...],
    "items": tuple[FuelItem, ...],
    "cards": tuple[Card, ...],
    "candidates": tuple[Candidate, ...],
    "recordings": KeptRecording,
    "course": Course,
    "surfaces": tuple[SurfaceSpan, ...],
}
"""What the bodies of each part that is JSON are, but for what stands in a part of its own."""

Manifest = dict[str, tuple[str, ...]]


def digest_of(body: bytes) -> str:
    """Return the name of *body* in hexadecimal digits: its BLAKE2b and behind it its CRC-32.

    The one tells bodies apart (RFC 7693). The other (RFC 1952, section 8) is looked at when a body
    is read, in a fifth of the time: it finds every change within four bytes, and of all others
    but one in four thousand million.
    """
    name = blake2b(body, digest_size=DIGEST_BYTES - _CHECK_BYTES).digest()
    return (name + crc32(body).to_bytes(_CHECK_BYTES, "big")).hex()


def is_whole(body: bytes, digest: bytes) -> bool:
    """Whether *body* is what it was when *digest* was made of it, also in a file before 2000."""
    return (
        digest[-_CHECK_BYTES:] == crc32(body).to_bytes(_CHECK_BYTES, "big")
        or blake2b(body, digest_size=DIGEST_BYTES).digest() == digest
    )


class Piece(Value, frozen=True):
    """One part of a project: its name, the values it is made of, and how to write it."""

    name: str
    made_of: tuple[object, ...]
    write: Callable[[], bytes]


def pieces(project: Project) -> Iterator[Piece]:
    """Yield the parts of *project*; those of one name in their order.

    Sessions go by the week and fuel items by four hours, so that one moved session writes a
    page or two and not the whole block.
    """
    yield _head("project", project, _PROJECT_APART)
    yield _head("race", project.race)
    yield _head("runner", project.runner)
    yield _head("block", project.block, _BLOCK_APART)
    for week in _together(project.block.sessions, lambda s: s.day.toordinal() // 7):
        yield _row("sessions", week)
    yield _head("fuel", project.fuel, _FUEL_APART)
    yield _row("foods", project.fuel.foods)
    for hours in _together(project.fuel.items, lambda i: i.at_s // (3600 * HOURS_TOGETHER)):
        yield _row("items", hours)
    yield _row("cards", project.cards)
    yield _row("candidates", project.candidates)
    for recording in project.recordings:
        yield _head("recordings", recording, _RECORDING_APART)
        yield Piece(TRACKS, (recording.packed,), partial(_write_track, recording))
    if project.course is not None:
        yield _head("course", project.course, _COURSE_APART)
        yield _row("surfaces", project.course.surfaces)
        yield Piece(LINE, (project.course.line,), partial(_write_line, project.course))


def digests_in(manifest: Manifest) -> list[str]:
    """Return the digests of every body that `assemble` asks for."""
    known = (row for name, row in manifest.items() if name in KINDS or name in (LINE, TRACKS))
    return list(chain.from_iterable(known))


def assemble(manifest: Manifest, bodies: Mapping[str, bytes]) -> Project:
    """Return the project whose parts *manifest* names, found in *bodies* by their digests.

    StoreError names the part that is unfit.
    """
    read = _Reader(manifest, bodies)
    return read.one(
        "project",
        Project,
        {
            "race": read.one("race", Race),
            "course": _course(read) if manifest.get("course") else None,
            "runner": read.one("runner", Runner),
            "block": read.one("block", Block, {"sessions": read.rows("sessions", Session)}),
            "fuel": read.one(
                "fuel",
                FuelPlan,
                {
                    "foods": read.rows("foods", Food),
                    "items": read.rows("items", FuelItem),
                },
            ),
            "cards": read.rows("cards", Card),
            "candidates": read.rows("candidates", Candidate),
            "recordings": _recordings(read),
        },
    )


class Layout:
    """Which body each part of the last written project went into.

    Parts are recognised by the identity of their values, which are held here meanwhile.
    """

    def __init__(self, pairs: Iterable[tuple[Piece, str]] = ()) -> None:
        self._known = {_identity(piece): (piece.made_of, digest) for piece, digest in pairs}

    @classmethod
    def of(cls, project: Project, manifest: Manifest) -> Layout:
        """Return the layout of a project just read from the bodies in *manifest*."""
        split: dict[str, list[Piece]] = {}
        for piece in pieces(project):
            split.setdefault(piece.name, []).append(piece)
        return cls(
            pair
            for name, digests in manifest.items()
            # a file split by another rule is written anew
            if len(found := split.get(name, [])) == len(digests)
            for pair in zip(found, digests, strict=True)
        )

    def written(self, project: Project) -> tuple[Layout, Manifest, dict[str, bytes]]:
        """Return the next layout, its manifest, and the bodies that were not known before."""
        pairs: list[tuple[Piece, str]] = []
        new: dict[str, bytes] = {}
        manifest: dict[str, list[str]] = {}
        for piece in pieces(project):
            known = self._known.get(_identity(piece))
            if known is not None:
                digest = known[1]
            else:
                body = piece.write()
                digest = digest_of(body)
                new[digest] = body
            pairs.append((piece, digest))
            manifest.setdefault(piece.name, []).append(digest)
        return Layout(pairs), {name: tuple(row) for name, row in manifest.items()}, new


def write_manifest(manifest: Manifest) -> dict[str, Json]:
    """Return *manifest* as JSON."""
    return {name: list(digests) for name, digests in manifest.items()}


def read_manifest(body: bytes) -> Manifest:
    """Return the manifest in *body*; StoreError if it is none."""
    manifest = decode_lists(body, "contents")
    if any(len(digests) > MOST_BODIES for digests in manifest.values()):
        raise damaged("contents")
    return manifest


class _Reader(Value, frozen=True):
    manifest: Manifest
    bodies: Mapping[str, bytes]

    def one(self, name: str, kind: type[T], given: Mapping[str, object] | None = None) -> T:
        return decode(kind, self.only(name), name, given)

    def rows(self, name: str, kind: type[T]) -> tuple[T, ...]:
        return decode_rows(kind, [self.body(d) for d in self.manifest.get(name, ())], name)

    def body(self, digest: str) -> bytes:
        return self.bodies[digest]

    def only(self, name: str) -> bytes:
        digests = self.manifest.get(name, ())
        if len(digests) != 1:
            raise damaged(name)
        return self.body(digests[0])


def _course(read: _Reader) -> Course:
    line = unpack_line(read.only(LINE))
    if not is_sound_line(line):
        raise damaged(LINE)
    surfaces = read.rows("surfaces", SurfaceSpan)
    return read.one("course", Course, {"line": line, "surfaces": surfaces})


def _recordings(read: _Reader) -> tuple[KeptRecording, ...]:
    heads, tracks = read.manifest.get("recordings", ()), read.manifest.get(TRACKS, ())
    if len(heads) != len(tracks) or len(heads) > MOST_RECORDINGS:
        raise damaged("recordings")
    return tuple(
        read_recording(read.body(head), read.body(track))
        for head, track in zip(heads, tracks, strict=True)
    )


def read_recording(head: bytes, track: bytes) -> KeptRecording:
    """Return the recording of the figures in *head* whose file is *track*."""
    if len(track) > MOST_PACKED_BYTES:
        raise damaged(TRACKS)
    return decode(KeptRecording, head, "recordings", {"packed": track})


def _write_track(recording: KeptRecording) -> bytes:
    if len(recording.packed) > MOST_PACKED_BYTES:
        raise unfit(TRACKS)
    return recording.packed


def _write_line(course: Course) -> bytes:
    if not is_sound_line(course.line):
        raise unfit(LINE)
    return pack_line(course.line)


def _identity(piece: Piece) -> tuple[str | int, ...]:
    return (piece.name, *(id(value) for value in piece.made_of))


def _head(
    name: str,
    value: Project | Race | Runner | Block | FuelPlan | Course | KeptRecording,
    apart: frozenset[str] = frozenset(),
) -> Piece:
    made_of = tuple(getattr(value, name) for name in value.__struct_fields__ if name not in apart)
    return Piece(name, made_of, partial(encode, type(value), value, name, apart))


def _row(name: str, values: tuple[object, ...]) -> Piece:
    return Piece(name, values, partial(encode, KINDS[name], values, name))


def _together(values: Sequence[T], key: Callable[[T], float]) -> Iterator[tuple[T, ...]]:
    for _, run in groupby(values, key):
        yield tuple(run)

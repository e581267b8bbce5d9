"""GPX made to do harm, cut, spoilt and mutated: a course on the globe or one sentence."""

from __future__ import annotations

import gzip
import random
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from trust_files import mutated
from trust_parts import Part, write

from tests.exchange.gpx_samples import document, eastward, track
from ultraplanner_gui.exchange.gpx_in import read_course

LINE = eastward(40)
GOOD = document(track(LINE, name="MARK"))
_NUMBERS = (
    *("NaN", "inf", "-inf", "1e400", "4_5.1", "45,1", "", "4 5", "0x2D", "é", "1" * 500, "--4"),
    *("1e", ".", "+", "90.0001", "-1e9", "\u0664\u0665", "4\u00a05", "1/2"),
)
_ENCODINGS = ("utf-7", "rot13", "utf-32", "no-such", "hex", "gb18030", "utf-16", "cp037")


def hostile() -> Iterator[tuple[str, bytes]]:
    """Yield the name and content of every hostile course."""
    for declaration in (
        '<!DOCTYPE gpx SYSTEM "http://example.org/gpx.dtd">',
        '<!DOCTYPE gpx PUBLIC "-//x//y" "file:///etc/hostname">',
        '<!DOCTYPE gpx [<!ENTITY here "45.0">]>',
        '<!DOCTYPE gpx [<!ENTITY here SYSTEM "file:///etc/hostname">]>',
        '<!DOCTYPE gpx [<!ENTITY % away SYSTEM "http://127.0.0.1:9/"> %away;]>',
        "<!DOCTYPE gpx [<!ENTITY a0 'x'>"
        + "".join(f"<!ENTITY a{i + 1} '{f'&a{i};' * 10}'>" for i in range(12))
        + "<!ENTITY here '&a12;'>]>",
        "<!DOCTYPE gpx [<!ENTITY here '" + "x" * 200_000 + "'>]>",
        "<!DOCTYPE gpx [<!ATTLIST trkpt lat CDATA '45.0'>]>",
    ):
        head = '<?xml version="1.0"?>' + declaration
        yield declaration[:40], document(track(LINE, name="&here;"), head=head).encode()
    for number in _NUMBERS:
        for was in ('lat="45.0"', 'lon="7.0"'):
            yield f"{was[:3]} {number[:9]}", _put(was, f'{was[:3]}="{number}"')
        yield f"ele {number[:9]}", _put("<ele>500.0<", f"<ele>{number}<")
    for share in np.linspace(0.01, 0.999, 25):
        yield f"cut at {share:.2f}", GOOD.encode()[: int(share * len(GOOD))]
    for encoding in _ENCODINGS:
        yield f"says {encoding}", _put("UTF-8", encoding)
    for depth in (100, 5_000, 200_000):
        nest = "<extensions>" * depth
        yield f"{depth} deep", _put("<name>MARK</name>", nest)
        yield f"{depth} deep, closed", _put("<name>", nest + "</extensions>" * depth + "<name>")
    for size in (10_000, 1_000_000, 8_000_000):
        yield f"attribute of {size}", _put("<trkseg>", f'<trkseg a="{"x" * size}">')
        yield f"text of {size}", _put("MARK", "x" * size)
    for count in (100, 50_000):
        attributes = " ".join(f'a{i}="1"' for i in range(count))
        yield f"{count} attributes", _put("<trkseg>", f"<trkseg {attributes}>")
        spaces = " ".join(f'xmlns:n{i}="http://example.org/{i}"' for i in range(count))
        yield f"{count} name spaces", _put("<trkseg>", f"<trkseg {spaces}>")
    yield "twice the same", _put('lat="45.0"', 'lat="45.0" lat="46.0"')
    yield "another name space", _put("http://www.topografix.com/GPX/1/1", "http://example.org/")
    yield "control letters", _put("MARK", "\x01\x02\x08")
    yield "NUL", _put("MARK", "a\x00b")
    yield "half a letter", GOOD.encode().replace(b"MARK", b"\xff\xfe\xc3")
    yield "html", b"<!DOCTYPE html><html><body>Log in first</body></html>"
    yield "packed cut", gzip.compress(GOOD.encode())[:-20]
    yield "packed zeros", gzip.compress(bytes(300_000_000), compresslevel=1)
    yield "packed twice", gzip.compress(gzip.compress(GOOD.encode()))
    yield "many empty tracks", document("<trk/>" * 200_000, track(LINE)).encode()
    yield "many empty segments", document("<trk>" + "<trkseg/>" * 200_000 + "</trk>").encode()
    yield "leads nowhere", document(track([(45.0, 7.0, 5.0)] * 500)).encode()
    yield "round the globe", document(track(eastward(300, start=-150.0, step=1.0))).encode()


def _put(was: str, put: str) -> bytes:
    assert was in GOOD
    return GOOD.replace(was, put, 1).encode()


def _is_course(path: Path) -> bool:
    course = read_course(path)
    line = course.line
    return bool(
        (np.abs(line.latitude_deg) <= 90.0).all()
        and (np.abs(line.longitude_deg) <= 180.0).all()
        and not np.isinf(line.elevation_m).any()
        and np.isfinite(course.length_m)
        and course.length_m > 0.0
    )


def hostile_courses(folder: Path) -> Part:
    """Read every hostile course."""
    part = Part("hostile GPX")
    for name, content in hostile():
        path = write(folder / "hostile.gpx", content)
        part.attempt(name, lambda path=path: _is_course(path))
    return part


def fuzz(folder: Path, seconds: float, luck: random.Random) -> Part:
    """Mutate a course at random until the time is over."""
    part = Part("GPX mutated")
    good = GOOD.encode()
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        path = write(folder / "mutated.gpx", mutated(good, luck))
        part.attempt(f"mutation {part.tried}", lambda path=path: _is_course(path))
    return part


# Each reads one file in a process of its own and tells how long and how much memory that took.
_READ = """
import sys, time
sys.path[:0] = [{root!r}]
from pathlib import Path
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.plan.message import PlanError
def kb(name):
    lines = Path("/proc/self/status").read_text().splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith(name))
read_course(Path({warm!r}))
Path("/proc/self/clear_refs").write_text("5")  # the peak so far is that of the parent
before = kb("VmRSS:")
begin = time.process_time()
try:
    read_course(Path({path!r}))
    word = "read"
except PlanError:
    word = "refused"
print(time.process_time() - begin)
print(kb("VmHWM:") - before)
print(word)
"""
TIMES, SPARE_S = 3.0, 0.05
TIMES_MEMORY, SPARE_KB = 3.0, 32 * 1024


def bounds(folder: Path, size: int) -> Part:
    """Hold what hostile courses of *size* bytes cost against a valid one of the same size."""
    part = Part("hostile GPX, time and memory", limit_s=120.0)
    warm = write(folder / "warm.gpx", GOOD.encode())
    valid = _sized(size)
    times = [_cost(warm, write(folder / "valid.gpx", valid)) for _ in range(3)]
    usual_s, usual_kb = sorted(t for t, _ in times)[1], max(kb for _, kb in times)
    for name, content in _large(size, valid):
        path = write(folder / "large.gpx", content)
        # a packed file is held against a valid one of the size it unpacks to
        kb = usual_kb * (len(gzip.decompress(content)) / size if name.startswith("packed") else 1)
        part.attempt(name, lambda path=path, kb=kb: _is_bounded(warm, path, usual_s, kb))
    return part


def _is_bounded(warm: Path, path: Path, usual_s: float, usual_kb: float) -> bool:
    took_s, grew_kb = _cost(warm, path)
    if took_s > TIMES * usual_s + SPARE_S:
        raise AssertionError(f"{took_s:.2f} s against {usual_s:.2f} s of a valid file")
    if grew_kb > TIMES_MEMORY * usual_kb + SPARE_KB:
        raise AssertionError(f"{grew_kb / 1024:.0f} MB against {usual_kb / 1024:.0f} MB")
    return True


def _cost(warm: Path, path: Path) -> tuple[float, float]:
    root = str(Path(__file__).resolve().parents[1])
    code = _READ.format(root=root, warm=str(warm), path=str(path))
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, timeout=100.0, check=True
    )
    took_s, grew_kb, _word = done.stdout.split()
    return float(took_s), float(grew_kb)


def _sized(size: int) -> bytes:
    points = eastward(max(40, size // 90), step=1e-5)
    return document(track(points, name="MARK")).encode()


def _large(size: int, valid: bytes) -> Iterator[tuple[str, bytes]]:
    """Yield hostile courses of about *size* bytes."""
    yield "entities", valid.replace(b"<gpx", b'<!DOCTYPE gpx [<!ENTITY a "x">]><gpx', 1)
    yield "deep", _put("<name>MARK</name>", "<a>" * (size // 3))
    yield "one attribute", _put("<trkseg>", f'<trkseg a="{"x" * size}">')
    many = " ".join(f'a{n}="1"' for n in range(size // 10))
    yield "many attributes", _put("<trkseg>", f"<trkseg {many}>")
    yield "one text", _put("MARK", "x" * size)
    yield "no number at the end", valid[::-1].replace(b'"'[::-1], b'"x', 1)[::-1]
    yield "cut at the end", valid[:-40]
    yield "latin in utf-8", valid.replace(b"MARK", b"M\xe9RK", 1)
    yield "all heights empty", valid.replace(b"<ele>500.0</ele>", b"<ele></ele>")
    yield "one place", document(track([(45.0, 7.0, 5.0)] * (size // 90))).encode()
    yield "empty tracks", document("<trk/>" * (size // 6), track(LINE)).encode()
    yield "comments", _put("<trkseg>", "<trkseg>" + "<!--x-->" * (size // 8))
    extensions = "<extensions>" + "<b/>" * (size // 4) + "</extensions>"
    yield "extensions", _put("<trkseg>", f"{extensions}<trkseg>")
    yield "packed zeros", gzip.compress(bytes(20 * size), compresslevel=9)

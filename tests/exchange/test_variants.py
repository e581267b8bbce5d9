"""Real files in other encodings, dialects and states; nothing of them is kept here."""

import gzip
import re

import numpy as np
import pytest

from ultraplanner_gui.exchange.gpx_in import course_choices, read_course
from ultraplanner_gui.plan.course import RepairKind
from ultraplanner_gui.plan.message import CourseError

FILES = ("course-05", "course-06", "course-07", "course-12", "course-15")
M_PER_FOOT = 0.3048


@pytest.fixture(params=FILES)
def original(request, shared):
    (path,) = shared.glob(f"courses/{request.param}*")
    return path, gzip.decompress(path.read_bytes()).decode("utf-8-sig")


def same_course(path, original):
    course, expected = read_course(path), read_course(original)
    assert course.line == expected.line
    assert course.stations == expected.stations
    assert course.repairs == expected.repairs


def with_head(text, encoding):
    body = re.sub(r"^\s*<\?xml.*?\?>", "", text, flags=re.DOTALL)
    return f'<?xml version="1.0" encoding="{encoding}"?>{body}'


@pytest.mark.parametrize(
    ("codec", "named"),
    [
        ("utf-8", "UTF-8"),
        ("utf-8-sig", "UTF-8"),
        ("utf-16", "UTF-16"),
        ("utf-16-le", "UTF-16"),
        ("utf-16-be", "UTF-16"),
        ("latin-1", "ISO-8859-1"),
        ("cp1252", "windows-1252"),
        ("ascii", "US-ASCII"),
    ],
)
def test_encodings(write, original, codec, named):
    path, text = original
    plain = text.encode("ascii", "ignore").decode()
    mark = {"utf-16-le": b"\xff\xfe", "utf-16-be": b"\xfe\xff"}.get(codec, b"")
    same_course(
        write(mark + with_head(plain, named).encode(codec)), write(plain.encode(), "plain.gpx")
    )
    assert len(read_course(path).line) == len(read_course(write(plain.encode())).line)


def test_packed_and_unpacked(write, original):
    path, text = original
    same_course(write(text.encode()), path)
    same_course(write(gzip.compress(text.encode()) + gzip.compress(b"\n")), path)


def test_prefixed(write, original):
    path, text = original
    names = "gpx|metadata|trk|trkseg|trkpt|rte|rtept|wpt|ele|time|name"
    prefixed = re.sub(rf"<(/?)({names})(?=[\s>/])", r"<\1g:\2", text)
    prefixed = re.sub(r'xmlns="(http://www\.topografix\.com[^"]*)"', r'xmlns:g="\1"', prefixed)
    same_course(write(prefixed.encode()), path)


def test_other_versions_and_addresses_of_the_schema(write, original):
    path, text = original
    spoken = re.search(r'xmlns="(http://www\.topografix\.com[^"]*)"', text).group(1)
    for other in (
        "http://www.topografix.com/GPX/1/0",
        "http://www.topografix.com/GPX/1/1",
        "https://www.topografix.com/GPX/1/1",
        "http://www.topografix.com/GPX/1/1/",
    ):
        same_course(write(text.replace(f'xmlns="{spoken}"', f'xmlns="{other}"').encode()), path)


@pytest.mark.parametrize("share", [0.0005, 0.01, 0.3, 0.7, 0.99, 0.9999])
def test_truncations_are_refused(write, original, share):
    data = original[1].rstrip().encode()
    with pytest.raises(CourseError) as caught:
        read_course(write(data[: int(share * len(data))]))
    assert str(caught.value).endswith(".")
    packed = gzip.compress(data)
    with pytest.raises(CourseError, match="packed and damaged"):
        read_course(write(packed[: max(20, int(share * len(packed)) - 5)]))


def test_line_breaks_and_tabs(write, original):
    path, text = original
    same_course(write(text.replace("><", ">\r\n\t<").encode()), path)


def test_tracks_as_routes(write, original):
    path, text = original
    if "<trkpt" not in text or "<rte" in text or text.count("<trkseg") != text.count("<trk>"):
        pytest.skip("not a file of whole tracks alone")
    routes = text.replace("trkpt", "rtept").replace("<trk>", "<rte>").replace("</trk>", "</rte>")
    routes = re.sub(r"</?trkseg\s*/?>", "", routes)
    assert read_course(write(routes.encode())).line == read_course(path).line


def test_track_and_the_same_again_as_route(write, original):
    path, text = original
    lines = read_course(path)
    points = zip(lines.line.latitude_deg[::3], lines.line.longitude_deg[::3], strict=True)
    again = "".join(f'<rtept lat="{lat}" lon="{lon}"/>' for lat, lon in points)
    doubled = text.replace("</gpx>", f"<rte>{again}</rte></gpx>")
    course = read_course(write(doubled.encode()))
    assert course.length_m == pytest.approx(lines.length_m, rel=1e-6)
    assert {r.kind for r in course.repairs if hasattr(r, "kind")} & {
        RepairKind.ROUTE,
        RepairKind.DOUBLED,
    }


def test_heights_in_feet_in_the_mountains(write, shared):
    (path,) = shared.glob("courses/course-06*")
    text = gzip.decompress(path.read_bytes()).decode("utf-8-sig")
    feet = re.sub(
        r"<ele>([^<]+)</ele>", lambda m: f"<ele>{float(m[1]) / M_PER_FOOT:.2f}</ele>", text
    )
    course, expected = read_course(write(feet.encode())), read_course(path)
    assert RepairKind.FEET in [getattr(r, "kind", None) for r in course.repairs]
    np.testing.assert_allclose(course.line.elevation_m, expected.line.elevation_m, atol=0.01)


def test_no_real_file_is_taken_for_feet_or_loses_points(shared):
    for path in sorted(shared.glob("*/*.gpx.gz")):
        kinds = {getattr(r, "kind", None) for r in read_course(path).repairs}
        assert not kinds & {RepairKind.FEET, RepairKind.STRAY, RepairKind.DOUBLED}, path.name


def test_fillers_in_real_heights(write, original):
    path, text = original
    count = iter(range(10**6))
    spoilt = re.sub(
        r"<ele>[^<]+</ele>",
        lambda m: "<ele>-32768</ele>" if next(count) % 7 == 0 else m[0],
        text,
    )
    course, expected = read_course(write(spoilt.encode())), read_course(path)
    assert course.length_m == pytest.approx(expected.length_m, rel=1e-6)
    if expected.line.has_elevation:
        assert np.nanmin(course.line.elevation_m) > -500.0


def test_choices_of_real_files(shared):
    (five,) = shared.glob("courses/course-07*")
    keys = [c.key for c in course_choices(five)]
    assert keys == ["tracks", *(f"track-{n}" for n in range(1, 6))]
    for path in sorted(shared.glob("*/*.gpx.gz")):
        assert course_choices(path)

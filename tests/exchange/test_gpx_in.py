import gzip
import math
from itertools import pairwise

import gpxpy
import numpy as np
import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import given
from hypothesis import strategies as st

from tests.exchange.gpx_samples import (
    GPX_10,
    document,
    eastward,
    point,
    route,
    segment,
    track,
    waypoint,
)
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.exchange.gpx_parse import parse_gpx
from ultraplanner_gui.plan.course import Section

LINE = eastward(20)


def said(course):
    return " ".join(map(str, course.repairs))


def test_track_becomes_a_line(write):
    course = read_course(write(document(track(LINE, name="Lake loop"))))
    assert course.line.latitude_deg.tolist() == [p[0] for p in LINE]
    assert course.line.longitude_deg.tolist() == [p[1] for p in LINE]
    assert course.line.elevation_m.tolist() == [p[2] for p in LINE]
    assert course.name == "Lake loop"
    assert course.repairs == ()
    assert course.sections == (Section("finish"),)


def test_length_is_the_sum_of_geodesics(write):
    course = read_course(write(document(track(LINE))))
    steps = [Geodesic.WGS84.Inverse(a[0], a[1], b[0], b[1])["s12"] for a, b in pairwise(LINE)]
    assert course.length_m == pytest.approx(sum(steps), rel=1e-5)


def test_a_plain_string_is_a_path(write):
    assert len(read_course(str(write(document(track(LINE))))).line) == 20


@pytest.mark.parametrize(
    ("head", "encoding"),
    [
        ('<?xml version="1.0" encoding="UTF-8"?>', "utf-8"),
        ('<?xml version="1.0" encoding="UTF-8"?>', "utf-8-sig"),
        ("", "utf-8"),
        ('<?xml version="1.0" encoding="UTF-16"?>', "utf-16"),
        ('<?xml version="1.0" encoding="ISO-8859-1"?>', "latin-1"),
        ('<?xml version="1.0" encoding="windows-1252"?>', "cp1252"),
    ],
)
def test_encodings_are_read(write, head, encoding):
    text = document(track(LINE, name="Höhenweg"), head=head)
    course = read_course(write(text.encode(encoding)))
    assert course.name == "Höhenweg"
    assert len(course.line) == 20


@pytest.mark.parametrize("namespace", [GPX_10, ""])
def test_older_and_missing_namespaces_are_read(write, namespace):
    assert len(read_course(write(document(track(LINE), namespace=namespace))).line) == 20


def test_prefixed_elements_are_read(write):
    text = document(track(LINE)).replace("xmlns=", "xmlns:g=")
    text = text.replace("<trk", "<g:trk").replace("</trk", "</g:trk").replace("<ele", "<g:ele")
    text = text.replace("</ele", "</g:ele").replace("<gpx", "<g:gpx").replace("</gpx", "</g:gpx")
    course = read_course(write(text))
    assert course.line.elevation_m.tolist() == [p[2] for p in LINE]


def test_elements_of_other_namespaces_are_passed_over(write):
    inner = '<extensions xmlns:x="urn:x"><x:ele>9</x:ele><x:trkpt lat="0" lon="0"/></extensions>'
    text = document(track(LINE)).replace("</trkpt>", inner + "</trkpt>")
    assert read_course(write(text)).line.elevation_m.tolist() == [p[2] for p in LINE]


def test_packed_files_are_read(write):
    packed = gzip.compress(document(track(LINE)).encode())
    assert len(read_course(write(packed, "course.gpx")).line) == 20
    course = read_course(write(packed, "Round the lake.gpx.gz"))
    assert course.name == "Round the lake"


def test_comments_and_sections_of_plain_text_within_numbers_are_read(write):
    text = document(track(LINE)).replace("<ele>500.0", "<ele>5<!-- x --><![CDATA[00.0]]>")
    assert read_course(write(text)).line.elevation_m[0] == 500.0


def test_own_reader_agrees_with_a_gpx_library(write):
    noise = np.random.default_rng(2).normal(0.0, 1e-4, (200, 2))
    points = [
        (
            round(45 + 1e-3 * i + noise[i, 0], 7),
            round(7 + noise[i, 1], 7),
            round(500 + 3 * i / 7, 2),
        )
        for i in range(200)
    ]
    text = document(track(points[:90], points[90:]), waypoint(45.1, 7, "Hut"))
    read = parse_gpx(write(text))
    library = gpxpy.parse(text)
    expected = list(library.walk(only_points=True))
    assert read.latitude_deg.tolist() == [p.latitude for p in expected]
    assert read.longitude_deg.tolist() == [p.longitude for p in expected]
    assert read.elevation_m.tolist() == [p.elevation for p in expected]
    assert [w.name for w in read.waypoints] == [w.name for w in library.waypoints]


numbers = st.floats(-90, 90).flatmap(
    lambda x: st.sampled_from([repr(x), f"{x:.9f}", f"{x:+.3f}", f" {x:.6e}\n", f"{int(x)}."])
)


@given(st.lists(st.tuples(numbers, numbers), min_size=2, max_size=8))
def test_numbers_mean_what_they_say(tmp_path_factory, pairs):
    path = tmp_path_factory.getbasetemp() / "numbers.gpx"
    path.write_text(document(track(pairs)))
    read = parse_gpx(path)
    assert read.latitude_deg.tolist() == [float(lat) for lat, _ in pairs]
    assert read.longitude_deg.tolist() == [float(lon) for _, lon in pairs]


def test_the_date_line_may_be_written_as_180(write):
    line = [(60.0, 179.99, 5.0), (60.0, 180, 5.0), (60.0, -179.99, 5.0)]
    assert read_course(write(document(track(line)))).length_m == pytest.approx(1_116, abs=2)


def test_route_is_taken_where_there_is_no_track(write):
    course = read_course(write(document(route(LINE, name="By the map"))))
    assert len(course.line) == 20
    assert course.name == "By the map"


def test_track_is_preferred_to_the_route_of_the_same_line(write):
    course = read_course(write(document(route(LINE[::2]), track(LINE))))
    assert len(course.line) == 20
    assert course.length_m == pytest.approx(read_course(write(document(track(LINE)))).length_m)
    assert "route as well" in said(course)


def test_empty_tracks_and_segments_do_not_hide_the_route(write):
    course = read_course(write(document("<trk><trkseg/></trk><trk/>", route(LINE))))
    assert len(course.line) == 20


def test_tracks_are_joined_in_order_and_it_is_said(write):
    parts = track(LINE[:8], name="One"), track(LINE[8:], name="Two")
    course = read_course(write(document(*parts), "Both.gpx"))
    whole = read_course(write(document(track(LINE))))
    assert course.length_m == whole.length_m
    assert course.line == whole.line
    assert course.line.gaps == ()
    assert "tracks were joined" in said(course)
    assert course.name == "Both"


def test_short_way_between_segments_is_run_straight_and_said(write):
    course = read_course(write(document(track(LINE[:8], LINE[12:]))))
    whole = read_course(write(document(track(LINE))))
    assert course.length_m == pytest.approx(whole.length_m, rel=1e-6)
    assert course.line.gaps == ()
    assert "bridged straight" in said(course)


def test_long_way_between_segments_is_a_gap_that_does_not_count(write):
    far = eastward(12, start=7.5)
    course = read_course(write(document(track(LINE), track(far))))
    alone = [read_course(write(document(track(part)))).length_m for part in (LINE, far)]
    assert course.line.gaps == (20,)
    assert course.length_m == pytest.approx(sum(alone))
    assert "missing and not counted" in said(course)


def test_repeated_points_are_dropped_and_gaps_keep_their_place(write):
    twice = [p for p in LINE for _ in range(2)]
    far = [p for p in eastward(5, start=7.5) for _ in range(3)]
    course = read_course(write(document(track(twice, far))))
    assert len(course.line) == 25
    assert course.line.gaps == (20,)


def test_missing_heights_are_said_and_left_open(write):
    flat = [p[:2] for p in LINE]
    course = read_course(write(document(track(flat))))
    assert not course.line.has_elevation
    assert "no heights" in said(course)
    partly = read_course(write(document(track(LINE[:5] + flat[5:]))))
    assert np.isnan(partly.line.elevation_m).sum() == 15
    assert "Height missing at 15" in said(partly)


@pytest.mark.parametrize("filler", ["0", "0.0", "-32768", "-9999", ""])
def test_fillers_are_no_heights(write, filler):
    course = read_course(write(document(track([(*p[:2], filler) for p in LINE]))))
    assert not course.line.has_elevation
    assert "no heights" in said(course)


def test_fillers_among_heights_are_left_open(write):
    line = [(*p[:2], -32768 if i in (3, 4) else p[2]) for i, p in enumerate(LINE)]
    course = read_course(write(document(track(line))))
    assert np.flatnonzero(np.isnan(course.line.elevation_m)).tolist() == [3, 4]


def test_spikes_are_dropped_and_said(write):
    line = [(*p[:2], 1200 if i == 9 else p[2]) for i, p in enumerate(LINE)]
    course = read_course(write(document(track(line))))
    assert math.isnan(course.line.elevation_m[9])
    assert np.isfinite(np.delete(course.line.elevation_m, 9)).all()
    assert "jump" in said(course)


def test_thin_points_are_said(write):
    assert "apart on average" in said(read_course(write(document(track(LINE[::4])))))


def test_name_of_the_file_as_a_whole_comes_first(write):
    course = read_course(
        write(document("<metadata><name>Night\n  race</name></metadata>", track(LINE, name="x")))
    )
    assert course.name == "Night race"


@pytest.mark.parametrize("name", ["track", "Track 01", "New route", "COURSE_3", "untitled", " - "])
def test_a_name_that_says_nothing_gives_way_to_the_name_of_the_file(write, name):
    course = read_course(write(document(track(LINE, name=name)), "Round the lake.gpx"))
    assert course.name == "Round the lake"


@pytest.mark.parametrize("name", ["Lake track", "Track of tears", "Route 66 ultra", "Trackless"])
def test_a_name_with_such_a_word_in_it_stays(write, name):
    assert read_course(write(document(track(LINE, name=name)))).name == name


def test_names_are_cleaned(write):
    course = read_course(write(document(track(LINE, name="A&#x202E;B&#x7F;" + "c" * 100))))
    assert course.name.startswith("A B c")
    assert len(course.name) <= 60


def test_points_outside_their_parents_are_no_points(write):
    stray = point("trkpt", 1, 1) + f"<extensions>{segment(LINE)}</extensions>"
    assert len(read_course(write(document(stray, track(LINE)))).line) == 20

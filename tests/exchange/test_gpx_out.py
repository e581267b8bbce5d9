import gpxpy
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.exchange.gpx_samples import document, eastward, track, waypoint
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.exchange.gpx_out import write_course
from ultraplanner_gui.plan.course import AidStation, Course, Line, Pin
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.science.geodesy import distance_along


def course_of(latitude, longitude, elevation, gaps=(), stations=()):
    line = Line(np.array(latitude), np.array(longitude), np.array(elevation), gaps)
    along = distance_along(line.latitude_deg, line.longitude_deg, gaps)
    return Course(line, float(along[-1]), stations, name="Round & <about>")


def test_course_written_and_read_is_the_same(write, tmp_path):
    text = document(
        waypoint(45.0, 7.02, "Lake"), waypoint(45.0, 7.05, "Pass &amp; hut"), track(eastward(100))
    )
    course = read_course(write(text))
    out = tmp_path / "out.gpx"
    write_course(course, out)
    again = read_course(out)
    assert again.line == course.line
    assert [(s.name, round(s.at_m)) for s in again.stations] == [
        (s.name, round(s.at_m)) for s in course.stations
    ]
    assert again.name == "out"  # the file says just "course", so it is called by its file


@settings(max_examples=40)
@given(
    st.lists(
        st.tuples(
            st.floats(-89, 89), st.floats(-3, 3), st.one_of(st.just(np.nan), st.floats(1, 4000))
        ),
        min_size=3,
        max_size=30,
        unique_by=lambda p: (round(p[0], 4), round(p[1], 4)),
    )
)
def test_points_survive_to_a_millionth_of_a_degree(tmp_path_factory, points):
    course = course_of(*zip(*points, strict=True))
    path = tmp_path_factory.getbasetemp() / "written.gpx"
    write_course(course, path)
    read = list(gpxpy.parse(path.read_text("utf-8")).walk(only_points=True))
    assert [p.latitude for p in read] == pytest.approx(course.line.latitude_deg, abs=1e-6)
    assert [p.longitude for p in read] == pytest.approx(course.line.longitude_deg, abs=1e-6)
    heights = [np.nan if p.elevation is None else p.elevation for p in read]
    assert heights == pytest.approx(course.line.elevation_m, abs=0.01, nan_ok=True)


def test_written_file_is_gpx_1_1_with_a_segment_to_each_piece(tmp_path):
    course = course_of([45, 45.1, 45.5, 45.6], [7.0] * 4, [1.0] * 4, gaps=(2,))
    write_course(course, tmp_path / "out.gpx")
    text = (tmp_path / "out.gpx").read_text("utf-8")
    assert 'xmlns="http://www.topografix.com/GPX/1/1"' in text
    assert 'version="1.1"' in text
    library = gpxpy.parse(text)
    assert [len(s.points) for s in library.tracks[0].segments] == [2, 2]
    assert library.tracks[0].name == "Round & <about>"


def test_stations_lie_on_the_line_even_across_the_date_line(tmp_path):
    middle = AidStation("a", "Mid\x00way\x1b", 1_113.2)
    course = course_of([0.0, 0.0], [179.99, -179.99], [0.0, 0.0], stations=(middle,))
    write_course(course, tmp_path / "out.gpx")
    (station,) = gpxpy.parse((tmp_path / "out.gpx").read_text("utf-8")).waypoints
    assert station.longitude == pytest.approx(-180.0, abs=1e-4)
    assert station.name == "Mid way"


def test_pinned_station_is_written_where_it_lies_on_the_ground(tmp_path):
    plain = course_of([45.0 + 0.001 * i for i in range(101)], [7.0] * 101, [1.0] * 101)
    along_m = distance_along(plain.line.latitude_deg, plain.line.longitude_deg)
    pinned = replace(
        plain,
        stations=(AidStation("hut", "Hut", 6_000.0),),
        pins=(Pin(6_000.0, float(along_m[50])),),
    )
    write_course(pinned, tmp_path / "out.gpx")
    (hut,) = gpxpy.parse((tmp_path / "out.gpx").read_text("utf-8")).waypoints
    assert hut.latitude == pytest.approx(45.05, abs=1e-6)


def test_folder_that_is_not_there_is_said(tmp_path):
    course = course_of([45, 45.1], [7.0, 7.0], [1.0, 1.0])
    with pytest.raises(StoreError, match="folder"):
        write_course(course, tmp_path / "none" / "out.gpx")

"""The race as GPX. Order, cardinality and types are those of gpx.xsd, topografix.com/GPX/1/1."""

import re
import xml.etree.ElementTree as ET
from datetime import date

import pytest

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.exchange.gpx_out import Mark, course_gpx, race_marks, write_course
from ultraplanner_gui.wording.words import Words

NS = "{http://www.topografix.com/GPX/1/1}"
POINT = (
    *("ele", "time", "magvar", "geoidheight", "name", "cmt", "desc", "src", "link", "sym", "type"),
    *("fix", "sat", "hdop", "vdop", "pdop", "ageofdgpsdata", "dgpsid", "extensions"),
)
# Each complexType as its xsd:sequence; MANY are the elements with maxOccurs unbounded.
SEQUENCES = {
    "gpx": ("metadata", "wpt", "rte", "trk", "extensions"),
    "metadata": (
        *("name", "desc", "author", "copyright", "link", "time", "keywords", "bounds"),
        "extensions",
    ),
    "wpt": POINT,
    "trkpt": POINT,
    "trk": (*("name", "cmt", "desc", "src", "link", "number", "type", "extensions", "trkseg"),),
    "trkseg": ("trkpt", "extensions"),
}
MANY = {"wpt", "rte", "trk", "trkseg", "trkpt", "link"}
DECIMAL = re.compile(r"[+-]?(\d+(\.\d*)?|\.\d+)")  # xsd:decimal: no exponent


def check(element):
    """Fail where *element* breaks the schema."""
    assert element.tag.startswith(NS), element.tag
    name = element.tag.removeprefix(NS)
    if name in ("wpt", "trkpt"):
        assert set(element.attrib) == {"lat", "lon"}
        assert all(DECIMAL.fullmatch(value) for value in element.attrib.values())
        assert -90 <= float(element.get("lat")) <= 90
        assert -180 <= float(element.get("lon")) < 180
    if name == "ele":
        assert DECIMAL.fullmatch(element.text)
    if name not in SEQUENCES:
        assert len(element) == 0, name
        return
    order = SEQUENCES[name]
    children = [child.tag.removeprefix(NS) for child in element]
    places = [order.index(child) for child in children]
    assert places == sorted(places), children
    for child in set(children) - MANY:
        assert children.count(child) == 1, child
    for child in element:
        check(child)


def check_gpx(data):
    root = ET.fromstring(data)
    assert root.tag == f"{NS}gpx"
    assert root.get("version") == "1.1"
    assert root.get("creator")
    check(root)
    return root


@pytest.fixture(scope="module")
def outlook():
    return derive(demo_project(date(2026, 11, 25)), None, date(2026, 11, 25))


def test_race_is_valid_against_the_schema(outlook):
    check_gpx(course_gpx(outlook.project.course, race_marks(outlook, Words())))


def test_the_check_sees_elements_out_of_order(outlook):
    data = course_gpx(outlook.project.course, race_marks(outlook, Words())).decode()
    swapped = re.sub(r"(<name>[^<]*</name>)\s*(<desc>[^<]*</desc>)", r"\2\1", data)
    assert swapped != data
    with pytest.raises(AssertionError):
        check_gpx(swapped)


def test_arrivals_stand_at_stations_and_at_the_finish(outlook):
    words = Words()
    root = check_gpx(course_gpx(outlook.project.course, race_marks(outlook, words)))
    notes = {w.find(f"{NS}name").text: w.find(f"{NS}desc").text for w in root.iter(f"{NS}wpt")}
    race = outlook.project.race
    for section in outlook.sections:
        name = section.name or "Finish"
        assert words.clock(race.clock(section.arrive_s)) in notes[name]
        assert words.duration(section.arrive_s) in notes[name]


def test_race_reads_back_as_the_same_course(outlook, tmp_path):
    course = outlook.project.course
    end = Mark(course.length_m / 3, "End of section 2", is_station=False)
    write_course(course, tmp_path / "race.gpx", (*race_marks(outlook, Words()), end))
    again = read_course(tmp_path / "race.gpx")
    assert again.line == course.line
    assert [s.name for s in again.stations] == [s.name for s in course.stations]
    for mine, theirs in zip(course.stations, again.stations, strict=True):
        assert theirs.at_m == pytest.approx(mine.at_m, abs=1.0)


def test_station_where_no_section_ends_has_its_arrival(outlook):
    project = AddStation("Spring", outlook.project.course.length_m / 7).apply(outlook.project)
    renewed = derive(project, None, outlook.today)
    assert all(mark.note for mark in race_marks(renewed, Words()))
    assert len(race_marks(renewed, Words())) == len(race_marks(outlook, Words())) + 1

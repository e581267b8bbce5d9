import gzip
import os

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.exchange.gpx_samples import document, eastward, track
from ultraplanner_gui.exchange import gpx_parse, safe_read
from ultraplanner_gui.exchange.gpx_in import read_course, read_recording
from ultraplanner_gui.plan.message import CourseError

LINE = eastward(20)
GOOD = document(track(LINE))
NAME = "course.gpx"


def refused(path):
    """Return the sentence both readers refuse the file with."""
    sentences = set()
    for read in (read_course, read_recording):
        with pytest.raises(CourseError) as caught:
            read(path)
        sentence = str(caught.value)
        assert path.name[:10] in sentence
        assert len(sentence) <= 200
        assert sentence.endswith(".")
        sentences.add(sentence)
    assert len(sentences) == 1
    return sentences.pop()


def outcome(path):
    """Return how reading ends; anything but a course on the globe or a short sentence raises."""
    try:
        course = read_course(path)
    except CourseError as error:
        return "refused" if len(str(error)) <= 200 else str(error)
    on_globe = abs(course.line.latitude_deg).max() <= 90 and (
        abs(course.line.longitude_deg).max() <= 180
    )
    return "read" if on_globe else "off the globe"


def test_missing_file_is_refused(tmp_path):
    assert "cannot be found" in refused(tmp_path / NAME)
    assert "cannot be found" in refused(tmp_path / NAME / "below.gpx")


def test_folder_is_refused(tmp_path):
    (tmp_path / NAME).mkdir()
    assert "not a file" in refused(tmp_path / NAME)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="needs named pipes")
def test_pipe_is_refused_without_waiting(tmp_path):
    os.mkfifo(tmp_path / NAME)
    assert "not a file" in refused(tmp_path / NAME)


@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() == 0, reason="needs a user whom permissions bind"
)
def test_unreadable_file_is_refused(write):
    path = write(GOOD)
    path.chmod(0)
    assert "not allowed" in refused(path)


def test_name_no_file_can_have_is_refused(tmp_path):
    with pytest.raises(CourseError, match="not a name"):
        read_course(tmp_path / "a\0b.gpx")


@pytest.mark.parametrize("content", ["", "  \n", b"\xef\xbb\xbf"])
def test_empty_file_is_refused(write, content):
    refused(write(content))


@pytest.mark.parametrize(
    "content",
    [
        "Latitude;Longitude\n45;7\n",
        "<!DOCTYPE html><html><body>Log in first</body></html>",
        "<html><body>Log in first</body></html>",
        '<kml xmlns="http://www.opengis.net/kml/2.2"><Document/></kml>',
        b"\x89PNG\r\n\x1a\n" + bytes(100),
        b"PK\x03\x04" + bytes(100),
        b"\xff\xfe\x00\x00<\x00\x00\x00",
        '<gpx xmlns="http://example.org/GPX/1/1"/>',
    ],
)
def test_other_files_are_refused(write, content):
    refused(write(content))


@pytest.mark.parametrize("share", [0.2, 0.5, 0.9, 0.99])
def test_file_cut_off_is_refused(write, share):
    assert "cut off" in refused(write(GOOD[: int(share * len(GOOD))]))


@pytest.mark.parametrize(
    "declaration",
    [
        '<!DOCTYPE gpx SYSTEM "http://example.org/gpx.dtd">',
        '<!DOCTYPE gpx [<!ENTITY here "45.0">]>',
        '<!DOCTYPE gpx [<!ENTITY away SYSTEM "file:///etc/hostname">]>',
        '<!DOCTYPE gpx [<!ENTITY % away SYSTEM "file:///etc/hostname"> %away;]>',
        "<!DOCTYPE gpx [<!ENTITY a '"
        + "x" * 1000
        + "'>"
        + "".join(f"<!ENTITY a{i} '{'&a;' * 10}'>" for i in range(9))
        + "]>",
    ],
)
def test_document_type_is_refused_before_anything_is_looked_up(write, declaration):
    head = '<?xml version="1.0"?>' + declaration
    assert "document type" in refused(write(document(track(LINE, name="&here;"), head=head)))


def test_entity_without_declaration_is_refused(write):
    refused(write(document(track(LINE, name="&here;"))))


@pytest.mark.parametrize(
    "number",
    [
        "NaN",
        "nan",
        "inf",
        "-inf",
        "1e400",
        "4_5.1",
        "٤٥",
        "45,1",
        "",
        "4 5",
        "0x2D",
        "1" * 500,
        "é",
    ],
)
@pytest.mark.parametrize("place", ["lat", "lon", "ele"])
def test_what_is_no_number_is_refused(write, number, place):
    text = {
        "lat": GOOD.replace('lat="45.0"', f'lat="{number}"', 1),
        "lon": GOOD.replace('lon="7.0"', f'lon="{number}"', 1),
        "ele": GOOD.replace("<ele>500.0<", f"<ele>{number}<", 1),
    }[place]
    assert text != GOOD
    if place == "ele" and number.lower() in ("", "nan"):
        assert len(read_course(write(text)).line) == 20
    else:
        assert "line 1" in refused(write(text))


def test_decimal_comma_is_named(write):
    assert "comma" in refused(write(GOOD.replace('lat="45.0"', 'lat="45,0"')))


@pytest.mark.parametrize(
    ("was", "put"),
    [
        ('lat="45.0"', 'lat="90.01"'),
        ('lat="45.0"', 'lat="-91"'),
        ('lon="7.0"', 'lon="180.01"'),
        ('lon="7.0"', 'lon="-1e9"'),
    ],
)
def test_places_off_the_globe_are_refused(write, was, put):
    assert "globe" in refused(write(GOOD.replace(was, put, 1)))


def test_point_without_a_place_is_refused(write):
    assert "without latitude" in refused(write(GOOD.replace(' lat="45.0"', "", 1)))


def test_deep_nesting_is_refused(write):
    deep = "<a>" * 100_000 + "</a>" * 100_000
    assert "no GPX file" in refused(write(document(deep)))


def test_many_attributes_are_refused(write):
    crowd = " ".join(f'a{i}="1"' for i in range(200))
    assert "no GPX file" in refused(write(document(f"<extensions {crowd}/>", track(LINE))))


def test_endless_text_is_refused_where_it_would_be_kept(write):
    assert "no GPX file" in refused(write(document(track(LINE, name="x" * 5_000))))
    described = document(f"<metadata><desc>{'x' * 50_000}</desc></metadata>", track(LINE))
    assert len(read_course(write(described)).line) == 20


def test_many_empty_tracks_are_refused(write):
    assert "no GPX file" in refused(write(document("<trk/>" * 20_000, track(LINE))))


def test_too_many_points_are_refused(write, monkeypatch):
    monkeypatch.setattr(gpx_parse, "MOST_POINTS", 19)
    assert "1,000,000 points" in refused(write(GOOD))


def test_too_large_a_file_is_refused(write, monkeypatch):
    monkeypatch.setattr(safe_read, "LARGEST_BYTES", 500)
    assert "256 MB" in refused(write(GOOD))


def test_small_file_that_unpacks_to_a_huge_one_is_refused(write):
    bomb = gzip.compress(bytes(safe_read.LARGEST_BYTES + 1000), compresslevel=1)
    assert len(bomb) < 2_000_000
    assert "256 MB" in refused(write(bomb))


def test_damaged_packing_is_refused(write):
    packed = gzip.compress(GOOD.encode())
    assert "damaged" in refused(write(packed[:-20]))
    assert "damaged" in refused(write(packed[:40] + bytes(40) + packed[80:]))


@pytest.mark.parametrize("encoding", ["utf-7", "rot13", "utf-32", "no-such", "hex", "gb18030"])
def test_encodings_that_cannot_be_read_are_refused(write, encoding):
    refused(write(GOOD.replace("UTF-8", encoding)))


def test_bytes_that_are_no_text_are_refused(write):
    refused(write(document(track(LINE, name="MARK")).encode().replace(b"MARK", b"\xff\xfe\x00")))


@pytest.mark.parametrize("parts", [(), ('<wpt lat="1" lon="2"/>',), (track(LINE[:1]),)])
def test_file_without_a_line_is_refused(write, parts):
    assert "no track and no route" in refused(write(document(*parts)))


def test_line_that_leads_nowhere_is_refused(write):
    with pytest.raises(CourseError, match="leads nowhere"):
        read_course(write(document(track([(45.0, 7.0, 5.0)] * 5))))


def test_line_longer_than_any_race_is_refused(write):
    with pytest.raises(CourseError, match="more than any race"):
        read_course(write(document(track(eastward(50, step=1.0)))))


def test_long_names_of_files_leave_room_for_the_sentence(write):
    refused(write("no", "x" * 200 + ".gpx"))


@given(st.data())
def test_any_damage_is_read_or_refused_in_a_sentence(tmp_path_factory, data):
    content = bytearray(GOOD.encode())
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(content) - 1))
        content[at : at + data.draw(st.integers(0, 5))] = data.draw(st.binary(max_size=5))
    path = tmp_path_factory.getbasetemp() / "damaged.gpx"
    path.write_bytes(bytes(content))
    assert outcome(path) in ("read", "refused")

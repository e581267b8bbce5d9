import codecs

import pytest

from ultraplanner_gui.exchange.table_file import read_text
from ultraplanner_gui.plan.message import CourseError

TEXT = "Place;km\nMühle;12\n"


@pytest.mark.parametrize(
    "data",
    [
        TEXT.encode(),
        TEXT.encode("utf-8-sig"),
        codecs.BOM_UTF16_LE + TEXT.encode("utf-16-le"),
        codecs.BOM_UTF16_BE + TEXT.encode("utf-16-be"),
        TEXT.encode("cp1252"),
    ],
    ids=["utf-8", "utf-8 with a mark", "utf-16 le", "utf-16 be", "windows-1252"],
)
def test_text_is_read_in_the_encodings_spreadsheets_write(tmp_path, data):
    path = tmp_path / "course.csv"
    path.write_bytes(data)
    assert read_text(path) == TEXT


@pytest.mark.parametrize(
    ("data", "says"),
    [(b"\x00\x01" * 50, "not a text file"), (b"a;1\n" * 300_000, "too large"), (b"", "empty")],
)
def test_what_is_no_table_is_refused(tmp_path, data, says):
    path = tmp_path / "course.csv"
    path.write_bytes(data)
    with pytest.raises(CourseError, match=says):
        read_text(path)

"""Text files of unknown encoding, as spreadsheets write them."""

from __future__ import annotations

import codecs
from pathlib import Path

from ultraplanner_gui.exchange.safe_read import read_bytes, shown_name
from ultraplanner_gui.exchange.table_text import LONGEST_TEXT
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError

_MARKS = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)


def read_text(path: Path) -> str:
    """Return the text in the file at *path*: UTF-8, UTF-16 with a mark, else Windows-1252.

    Raises CourseError with a sentence for the user if it cannot be read or is no text.
    """
    data = read_bytes(path)
    if len(data) > 4 * LONGEST_TEXT:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "{0} is too large for the table of a course. Keep its rows alone."
            ),
            shown_name(path),
        )
    encoding = next((name for mark, name in _MARKS if data.startswith(mark)), "utf-8")
    try:
        text = data.decode(encoding)
    except UnicodeDecodeError:
        text = data.decode("cp1252", errors="replace")
    if "\0" in text:
        raise CourseError(
            QT_TRANSLATE_NOOP("Course", "{0} is not a text file. Save the table as CSV."),
            shown_name(path),
        )
    return text

"""Every table of the plan as one workbook (Office Open XML, ISO/IEC 29500)."""

from __future__ import annotations

import io
import re

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.widgets.table_column import Column, R, copied_text, say
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.words import Words

#: What a sheet's name may not hold, and how long it may be.
_FORBIDDEN = re.compile(r"[\[\]:*?/\\']")
_LONGEST_NAME = 31
_DURATION = re.compile(r"(\d+):([0-5]\d)")
_WIDEST, _NARROWEST = 60, 8
_MINUTES_A_DAY = 1440.0
_CLOCK = "h:mm"


def tables_xlsx(outlook: Outlook, words: Words) -> bytes:
    """Return a workbook with a sheet for each table: numbers as numbers, durations as durations,
    the unit behind each head. No cell is a formula, whatever its text.
    """
    import xlsxwriter

    data = io.BytesIO()
    options = {
        "in_memory": True,
        "strings_to_formulas": False,
        "strings_to_urls": False,
        "strings_to_numbers": False,
    }
    book = xlsxwriter.Workbook(data, options)
    head = book.add_format({"bold": True, "bottom": 1, "text_wrap": True})
    duration = book.add_format({"num_format": "[h]:mm"})
    for spec in SPECS:
        sheet = book.add_worksheet(_sheet_name(say(spec.name)))
        sheet.freeze_panes(1, 0)
        rows = spec.rows(outlook)
        for at, column in enumerate(spec.columns):
            unit = column.copied_unit or column.unit(words)
            name = say(column.name)
            texts = [copied_text(column, row, words) for row in rows]
            sheet.write_string(0, at, f"{name}, {unit}" if unit else name, head)
            for line, text in enumerate(texts, 1):
                value = _value(column, text, words)
                if isinstance(value, float):
                    is_time = column.copied_unit == _CLOCK
                    sheet.write_number(line, at, value, duration if is_time else None)
                elif value:
                    sheet.write_string(line, at, value)
            longest = max((len(text) for text in (*texts, name)), default=0)
            sheet.set_column(at, at, min(_WIDEST, max(_NARROWEST, longest + 1)))
    book.close()
    return data.getvalue()


def _value(column: Column[R], text: str, words: Words) -> float | str:
    """Return a cell as a number where it is one, a duration in days as spreadsheets count it."""
    if column.copied_unit == _CLOCK and (found := _DURATION.fullmatch(text)):
        return (60 * int(found[1]) + int(found[2])) / _MINUTES_A_DAY
    number = words.parse_number(text) if column.is_figure else None
    return text if number is None else number


def _sheet_name(name: str) -> str:
    return _FORBIDDEN.sub(" ", name)[:_LONGEST_NAME].strip() or "Table"

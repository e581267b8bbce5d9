"""Tables as CSV files that a spreadsheet opens as they are.

UTF-8 with a byte order mark, which spreadsheets need to know it; lines and quotes as RFC 4180.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Sequence

BOM = "\ufeff"
_FORMULA = ("=", "+", "-", "@", "\t", "\r")
_FIGURE = re.compile(r"[-+]?\d[\d.,:\s%]*")


def csv_bytes(heads: Sequence[str], lines: Iterable[Sequence[str]]) -> bytes:
    """Return a table as the bytes of a CSV file."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow([guarded(head) for head in heads])
    writer.writerows([guarded(cell) for cell in line] for line in lines)
    return (BOM + text.getvalue()).encode("utf-8")


def guarded(cell: str) -> str:
    """Return *cell* with an apostrophe before what a spreadsheet would take for a formula.

    Figures with a sign stay. A cell that begins with an apostrophe before such a sign gets one
    more, so that `unguarded` gives back any text. OWASP, "CSV Injection".
    """
    bare = cell.lstrip("'")
    if bare.startswith(_FORMULA) and not _FIGURE.fullmatch(cell):
        return f"'{cell}"
    return cell


def unguarded(cell: str) -> str:
    """Return the text that `guarded` made *cell* of."""
    is_guarded = cell.startswith("'") and cell.lstrip("'").startswith(_FORMULA)
    return cell[1:] if is_guarded else cell

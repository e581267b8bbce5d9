"""Tables of the plan as CSV: one, or all of them in one archive."""

from __future__ import annotations

import io
import zipfile
from typing import Any

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.exchange.csv_out import csv_bytes
from ultraplanner_gui.widgets.table_column import copied_text, say
from ultraplanner_gui.window.table_spec import TableSpec
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.words import Words

_EPOCH = (1980, 1, 1, 0, 0, 0)


def table_csv(spec: TableSpec[Any], outlook: Outlook, words: Words) -> bytes:
    """Return all rows and columns as they are copied, the unit behind each head."""
    units = [column.copied_unit or column.unit(words) for column in spec.columns]
    heads = [
        f"{say(column.name)}, {unit}" if unit else say(column.name)
        for column, unit in zip(spec.columns, units, strict=True)
    ]
    rows = spec.rows(outlook)
    return csv_bytes(heads, ([copied_text(c, row, words) for c in spec.columns] for row in rows))


def tables_zip(outlook: Outlook, words: Words) -> bytes:
    """Return an archive with every table, each a CSV file of its name."""
    data = io.BytesIO()
    with zipfile.ZipFile(data, "w", zipfile.ZIP_DEFLATED) as archive:
        for spec in SPECS:
            member = zipfile.ZipInfo(f"{say(spec.name)}.csv", _EPOCH)
            archive.writestr(member, table_csv(spec, outlook, words), zipfile.ZIP_DEFLATED)
    return data.getvalue()

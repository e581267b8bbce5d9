"""Reading a course, keeping and opening a project, and the cards as a PDF."""

from __future__ import annotations

import io
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing
from datetime import date
from itertools import cycle
from pathlib import Path
from xml.parsers import expat

from bench_measure import Goal, Row, by_turns, memory
from bench_plans import large_project, write_gpx
from msgspec.structs import replace
from PySide6.QtCore import QBuffer, QIODevice, QPointF
from PySide6.QtGui import QFont, QPainter, QPdfWriter

from ultraplanner_gui.cards.page import Page, Text
from ultraplanner_gui.cards.pdf import card_pages, cards_pdf
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.theme import FONT_FAMILY
from ultraplanner_gui.wording.words import Words

GPX_POINTS = 100_000


def gpx_file(folder: Path) -> Path:
    """Return the large track in *folder*, written at the first call."""
    path = folder / "large.gpx"
    if not path.exists():
        write_gpx(path, GPX_POINTS)
    return path


def import_course(path: Path) -> None:
    """Do what the program does when a course is opened: read it and build its profile."""
    from ultraplanner_gui.window.course_deeds import read_for_plan

    read_for_plan(Token(lambda _fraction: None), path)


def parse_only(path: Path) -> None:
    """Run expat over the file with handlers that do nothing."""
    parser = expat.ParserCreate()
    parser.StartElementHandler = lambda _name, _attributes: None
    parser.EndElementHandler = lambda _name: None
    parser.CharacterDataHandler = lambda _text: None
    parser.Parse(path.read_bytes(), True)


def import_rows(folder: Path) -> Iterator[Row]:
    """Measure time and memory of a course of 100,000 points."""
    path = gpx_file(folder)
    megabytes = path.stat().st_size / 1e6
    yield Row(
        f"GPX import, {GPX_POINTS:,} points",
        "expat with empty handlers",
        *by_turns(lambda: import_course(path), lambda: parse_only(path), 9, warm=1),
        (Goal("ratio", 4.0),),
        note=f"file of {megabytes:.1f} MB, read, repaired, measured, profile built",
    )
    grown = [(_growth("course", path), _growth("bare", path)) for _ in range(3)]
    yield Row(
        "memory growth of that import",
        "expat with empty handlers",
        [a for a, _ in grown],
        [b for _, b in grown],
        (Goal("max", 40.0),),
        unit="MiB",
    )


def _growth(how: str, path: Path) -> float:
    command = [sys.executable, __file__, how, str(path)]
    out = subprocess.run(command, capture_output=True, text=True, check=True).stdout
    return float(out)


def keep_rows(folder: Path) -> Iterator[Row]:
    """Measure one kept edit and opening, on the large project."""
    project = large_project()
    path = folder / "bench.ultraplan"
    file = ProjectFile.create(path, project, overwrite=True)
    sessions = project.block.sessions
    changed = [
        replace(
            project,
            block=replace(
                project.block, sessions=(replace(sessions[0], distance_m=metres), *sessions[1:])
            ),
        )
        for metres in (7100.0, 7200.0)
    ]
    edits, values = cycle(changed), cycle("ab")
    bare = sqlite3.connect(folder / "bare.sqlite", isolation_level=None)
    for statement in ("journal_mode = DELETE", "synchronous = FULL"):
        bare.execute(f"PRAGMA {statement}")
    bare.execute("CREATE TABLE one (id INTEGER PRIMARY KEY, body TEXT)")
    bare.execute("INSERT INTO one VALUES (1, '')")

    def keep() -> None:
        file.keep(next(edits), "Change session")

    def commit() -> None:
        bare.execute("UPDATE one SET body = ? WHERE id = 1", (next(values) * 200,))

    with closing(bare), file:
        kept = by_turns(keep, commit, 80)
    yield Row("one kept edit", "one row committed, DELETE and FULL", *kept, (Goal("ratio", 3.0),))
    yield Row(
        "open a project, checks included",
        "connect and read all rows",
        *by_turns(lambda: ProjectFile.open(path).close(), lambda: _read_all(path), 60),
        (Goal("ratio", 5.0),),
        note=f"{path.stat().st_size / 1000:.0f} kB",
    )


def _read_all(path: Path) -> int:
    with closing(sqlite3.connect(path)) as connection:
        return sum(
            len(connection.execute(f"SELECT * FROM {name}").fetchall())
            for name in ("part", "state")
        )


def card_rows() -> Iterator[Row]:
    """Measure all cards of the demo as one PDF."""
    outlook, words = derive(demo_project(date.today())), Words()
    pages = card_pages(outlook, words)
    draws = sum(isinstance(op, Text) for page in pages for op in page.ops)
    yield Row(
        "all cards of the demo as PDF",
        "as many bare text draws",
        *by_turns(
            lambda: cards_pdf(card_pages(outlook, words), "Demo"), lambda: _bare_pdf(pages), 15
        ),
        (Goal("ratio", 4.0),),
        note=f"{len(pages)} pages, {draws} texts of {sum(len(p.ops) for p in pages)} marks",
    )


def _bare_pdf(pages: tuple[Page, ...]) -> int:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    painter = QPainter(writer)
    painter.setFont(QFont(FONT_FAMILY, 9))
    for number, page in enumerate(pages):
        if number:
            writer.newPage()
        for op in page.ops:
            if isinstance(op, Text):
                painter.drawText(QPointF(op.x_mm * 40.0, op.baseline_mm * 40.0), op.text)
    painter.end()
    return io.BytesIO(buffer.data().data()).getbuffer().nbytes


def main(how: str, path: Path) -> None:
    """Print by how many MiB reading *path* raised the peak over what was in use before."""
    if how == "course":
        import ultraplanner_gui.window.deeds  # noqa: F401
    before = memory("VmRSS")
    (import_course if how == "course" else parse_only)(path)
    print(memory("VmHWM") - before)


if __name__ == "__main__":
    main(sys.argv[1], Path(sys.argv[2]))

"""What the File menu hands over, from the demo in the real window."""

import csv
import io
import xml.etree.ElementTree as ET
import zipfile
from datetime import date, time, timedelta

import icalendar
import openpyxl
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.exchange.csv_out import unguarded
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.table_column import Aim
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.import_form import ImportForm
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.table_clipboard import lay_out
from ultraplanner_gui.window.table_export import table_csv
from ultraplanner_gui.window.table_sessions import SESSIONS
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.words import Words


class Answers(Ask):
    """Takes what is proposed, or another place, and keeps what is told."""

    place = None

    def __init__(self, window):
        super().__init__(window)
        self.asked, self.told = [], []

    def where_to_export(self, proposed, taken):
        self.asked.append(self.place or proposed)
        taken(self.asked[-1])

    def which_sessions(self, folder, taken):
        taken(self.place)

    def tell(self, title, sentence):
        self.told.append(sentence)


@pytest.fixture
def window(qtbot, tmp_path):
    path = tmp_path / "demo.ultraplan"
    ProjectFile.create(path, demo_project(date.today())).close()
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    window.ask = Answers(window)
    qtbot.addWidget(window)
    window.show()
    window.deeds.open_project_file(path)
    yield window
    window.close()


def exported(window, qtbot, deed):
    getattr(window.deeds, deed)()
    (path,) = window.ask.asked
    qtbot.waitUntil(path.exists, timeout=10_000)
    return path


def imported(window, qtbot):
    window.deeds.import_sessions()
    qtbot.waitUntil(lambda: bool(window.findChildren(ImportForm)), timeout=10_000)
    (form,) = window.findChildren(ImportForm)
    return form


def test_course_goes_out_with_its_stations(window, qtbot):
    path = exported(window, qtbot, "export_gpx")
    assert path.name == "demo race.gpx"
    course = window.document.project.course
    assert [s.name for s in read_course(path).stations] == [s.name for s in course.stations]


def test_sessions_go_out_as_a_calendar(window, qtbot):
    path = exported(window, qtbot, "export_calendar")
    calendar = icalendar.Calendar.from_ical(path.read_bytes())
    assert len(calendar.walk("VEVENT")) == len(window.document.project.block.sessions)


def test_every_table_goes_out_with_units_in_its_heads(window, qtbot):
    path = exported(window, qtbot, "export_tables")
    with zipfile.ZipFile(path) as archive:
        assert archive.namelist() == [f"{spec.name}.csv" for spec in SPECS]
        for spec in SPECS:
            text = archive.read(f"{spec.name}.csv").decode("utf-8-sig")
            heads, *lines = csv.reader(io.StringIO(text, newline=""))
            units = [column.copied_unit or column.unit(Words()) for column in spec.columns]
            assert all(head.endswith(unit) for head, unit in zip(heads, units, strict=True))
            assert len(lines) == len(spec.rows(window.document.before))


def test_every_table_is_a_sheet_with_numbers_as_numbers(window, qtbot):
    path = exported(window, qtbot, "export_xlsx")
    book = openpyxl.load_workbook(path)
    assert len(book.sheetnames) == len(SPECS)
    words = window.settings.words()
    for spec, sheet in zip(SPECS, book.worksheets, strict=True):
        text = table_csv(spec, window.document.before, words).decode("utf-8-sig")
        heads, *lines = csv.reader(io.StringIO(text, newline=""))
        assert [cell.value for cell in sheet[1]] == heads
        assert sheet.max_row == len(lines) + 1
        for number, line in enumerate(lines, 2):
            cells = [sheet.cell(number, at + 1) for at in range(len(line))]
            for cell, said, column in zip(cells, line, spec.columns, strict=True):
                assert cell.data_type != "f"
                found = as_said(cell, column)
                same = words.parse_number(said) if isinstance(found, float | int) else said
                assert found == (unguarded(same) if isinstance(same, str) else same)


def as_said(cell, column):
    """What a cell of the workbook is as the CSV has it."""
    value = cell.value
    if value is None:
        return ""
    if isinstance(value, timedelta | time):
        minutes = round(
            value.total_seconds() / 60
            if isinstance(value, timedelta)
            else 60 * value.hour + value.minute + value.second / 60
        )
        return f"{minutes // 60}:{minutes % 60:02d}"
    if isinstance(value, int | float):
        assert column.is_figure
        return value
    return str(value)


def test_sessions_as_csv_can_be_pasted_back_and_mean_the_same(window):
    outlook, words = window.document.before, Words()
    text = table_csv(SESSIONS, outlook, words).decode("utf-8-sig")
    rows = SESSIONS.rows(outlook)
    aim = Aim(tuple(r.key for r in rows), 0, tuple(range(len(SESSIONS.columns))))
    sheet = lay_out(text, SESSIONS.columns, aim, words)
    assert len(sheet.lines) == len(rows)
    assert not sheet.notes


def test_png_is_twice_the_size_of_the_sheet_and_shows_the_targets(window, qtbot):
    image = QImage(str(exported(window, qtbot, "export_png")))
    assert image.width() == 3200
    colours = {image.pixel(x, y) for x in range(0, 3200, 7) for y in range(0, image.height(), 7)}
    assert len(colours) > 20


def test_svg_names_every_station_in_view(window, qtbot):
    path = exported(window, qtbot, "export_svg")
    root = ET.fromstring(path.read_bytes())
    assert root.tag == "{http://www.w3.org/2000/svg}svg"
    text = " ".join(t for e in root.iter() for t in (e.text or "",))
    assert all(s.name.split()[0] in text for s in window.document.project.course.stations)


@pytest.mark.parametrize("deed", ["export_gpx", "export_calendar", "export_tables", "export_svg"])
def test_place_that_cannot_be_written_is_one_sentence(window, qtbot, tmp_path, deed):
    window.ask.place = tmp_path / "gone" / "file.x"
    getattr(window.deeds, deed)()
    qtbot.waitUntil(lambda: bool(window.ask.told), timeout=10_000)
    assert window.ask.told == ["The folder for file.x does not exist. Choose another place."]


def test_calendar_is_shown_first_and_one_step_when_taken(window, qtbot, tmp_path):
    before = window.document.project
    day = before.race.day - timedelta(days=20)
    event = f"UID:1@x\r\nDTSTART:{day:%Y%m%d}\r\nSUMMARY:Easy run 5 km"
    window.ask.place = tmp_path / "club.ics"
    window.ask.place.write_text(
        f"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//\r\nBEGIN:VEVENT\r\n{event}\r\n"
        "END:VEVENT\r\nEND:VCALENDAR\r\n",
        newline="",
    )
    form = imported(window, qtbot)
    assert form.list.count() == 1
    assert window.document.project is before
    form.take.click()
    assert len(window.document.project.block.sessions) == len(before.block.sessions) + 1
    window.document.undo_stack.undo()
    assert window.document.project == before


def changed_csv(window, tmp_path, change):
    text = table_csv(SESSIONS, window.document.before, window.settings.words())
    heads, *lines = csv.reader(io.StringIO(text.decode("utf-8-sig"), newline=""))
    change(heads, lines)
    path = tmp_path / "sessions.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows([heads, *lines])
    return path


def test_a_table_of_sessions_that_was_exported_changes_nothing(window, qtbot, tmp_path):
    window.ask.place = changed_csv(window, tmp_path, lambda heads, lines: None)
    form = imported(window, qtbot)
    assert not form.take.isEnabled()
    assert form._plan.left_out == ()
    assert form._plan.untouched == len(window.document.project.block.sessions)


def test_only_ticked_changes_of_a_table_are_taken_as_one_step(window, qtbot, tmp_path):
    ahead = [s for s in window.document.project.block.sessions if s.is_open and s.kind.is_run][:2]
    day = ahead[0].day + timedelta(days=1)

    def change(heads, lines):
        at = next(n for n, head in enumerate(heads) if head.startswith("Distance"))
        for line in lines:
            if line[0] in {s.day.isoformat() for s in ahead}:
                line[at] = "7"
        fresh = [""] * len(heads)
        fresh[0], fresh[heads.index("Kind")], fresh[at] = day.isoformat(), "hill run", "9"
        lines.append(fresh)

    window.ask.place = changed_csv(window, tmp_path, change)
    form = imported(window, qtbot)
    before = window.document.project
    texts = [form.list.item(n).text() for n in range(form.list.count())]
    assert sum("→ 7" in text for text in texts) >= 1
    assert any(text.startswith("Add hill run") for text in texts), texts
    changes = form._plan.changes
    for number in range(len(changes) - 1):
        form.list.item(number).setCheckState(Qt.CheckState.Unchecked)
    form.take.click()
    after = window.document.project
    new = [s for s in after.block.sessions if s not in before.block.sessions]
    assert [(s.day, s.kind, s.distance_m) for s in new] == [(day, Kind.HILLS, 9_000.0)]
    window.document.undo_stack.undo()
    assert window.document.project == before


def test_lines_that_cannot_be_read_are_left_out_and_said(window, qtbot, tmp_path):
    def change(heads, lines):
        bad = [""] * len(heads)
        bad[0] = "the day after"
        lines[:] = [bad]

    window.ask.place = changed_csv(window, tmp_path, change)
    form = imported(window, qtbot)
    assert "Left out: line 2" in form.list.item(0).text()
    assert not form.take.isEnabled()


@pytest.mark.parametrize(
    "data",
    [b"", b"x", b"a,b\n", b'Date,Kind\n"open', b"Name,Km\n1,2\n", b"\0\0\0\0", b"a,b\n" * 9_000],
)
def test_what_is_no_table_of_sessions_is_one_sentence(window, qtbot, tmp_path, data):
    window.ask.place = tmp_path / "bad.csv"
    window.ask.place.write_bytes(data)
    window.deeds.import_sessions()
    qtbot.waitUntil(lambda: bool(window.ask.told), timeout=10_000)
    assert len(window.ask.told) == 1
    assert not window.findChildren(ImportForm)

"""What the File menu hands over, from the demo in the real window."""

import csv
import io
import xml.etree.ElementTree as ET
import zipfile
from datetime import date, timedelta

import icalendar
import pytest
from PySide6.QtGui import QImage

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.exchange.gpx_in import read_course
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

    def which_calendar(self, folder, taken):
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
    window.deeds.import_sessions()
    (form,) = window.findChildren(ImportForm)
    assert form.list.count() == 1
    assert window.document.project is before
    form.take.click()
    assert len(window.document.project.block.sessions) == len(before.block.sessions) + 1
    window.document.undo_stack.undo()
    assert window.document.project == before

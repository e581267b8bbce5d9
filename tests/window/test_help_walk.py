"""Every figure on the screen can be asked what it means; no list says which dialogs are asked."""

from datetime import date
from functools import partial

import pytest
from msgspec.structs import replace
from PySide6.QtWidgets import QDialog, QLabel, QSpinBox

from tests.rules import source
from tests.window import help_walk as walk
from tests.window.text_drawn import settle
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.help_topic import set_topic, topic_of
from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Rows, Sentence, topic_of_row
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.action_table import TABLE
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.header import HeaderFigure
from ultraplanner_gui.window.job_deeds import JobDeeds
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.table_topics import column_topics
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.help.topics import TOPICS

TODAY = date(2027, 4, 5)
#: What leaves the plan or the program, takes over the pointer, or asks Qt's own dialog.
ELSEWHERE = {"quit", "close_project", "another_window", "demo", "help_point", "print_cards"}


@pytest.fixture(scope="module")
def project():
    demo = demo_project(TODAY)
    run = walk.race_run(derive(demo, None, TODAY))
    return replace(demo, recordings=(*demo.recordings, run))


@pytest.fixture
def window(qapp, qtbot, tmp_path, project, monkeypatch):
    qapp.setStyle("Fusion")
    theme().choose("light", 100)
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "en_GB"
    at_once = lambda _, then, job, *args: then(job(Token(lambda _: None), *args))  # noqa: E731
    monkeypatch.setattr(JobDeeds, "_start", at_once)
    window = MainWindow(settings)
    window.ask = walk.Silent()
    qtbot.addWidget(window)
    window.resize(1920, 1080)
    file = ProjectFile.create(tmp_path / "demo.ultraplan", project)
    window.show_document(Document(file, file.project, lambda: TODAY))
    window.show()
    settle()
    yield window
    window.close()
    theme().choose("light", 100)


def lost(top, painted=()):
    """Return what of *top* shows a figure and has no topic, and how much shows one."""
    shown = [(widget, text, None) for widget, text in walk.figures_of(top)]
    shown += [p for p in painted if p[0].window() is top and p[0].isVisibleTo(top)]
    found = {
        f"{type(widget).__name__}: {text}"
        for widget, text, at in shown
        if not walk.is_explained(widget, at)
    }
    return sorted(found), len(shown)


def repainted(watch, top):
    watch.forget()
    theme().changed.emit()
    top.repaint()
    settle()
    return list(watch.seen.values())


def dialogs(window):
    """Give every dialog that an action or a row of `MORE` brings up."""
    document, project = window.document, window.document.project
    long = next(s for s in project.block.sessions if s.is_open and s.kind.is_long)
    rows = [row for row in TABLE if row.name not in ELSEWHERE]
    shows = {f"action {row.name}": window.table.by_name[row.name].trigger for row in rows}
    shows |= {name: partial(show, window) for name, show in walk.MORE.items()}
    for name, show in shows.items():
        window.go("sheet")
        window.workplace.selection.choose("session", long.key)
        top = walk.new_dialog(window, show)
        if top is not None:
            yield name, top
            walk.dispose(top)
        while document.undo_stack.index():
            document.undo_stack.undo()


def test_every_figure_of_every_dialog_is_explained(window, monkeypatch):
    watch = walk.Painted(monkeypatch)
    met, missing, count = set(), [], 0
    for name, top in dialogs(window):
        met.add(type(top))
        names, shown = lost(top, repainted(watch, top))
        count += shown
        missing += [f"{name}: {text}" for text in names]
    assert {d.__name__ for d in walk.every_dialog() - met} == set()
    assert missing == []
    assert count > 500
    # What can be undone is done, not asked about: all questions are for a file.
    assert {name for name in window.ask.asked if not name.startswith(("which_", "where_"))} == set()
    assert window.ask.asked


SAID = ("text", "under", "label", "title", "now", "before")
PLACES = ("sheet", "buildup", "raceday", "cards", "find", *(spec.name for spec in SPECS))


def show_place(window, name):
    if name in ("buildup", "raceday"):
        window.go("sheet")
        window.workplace.open_storey(name)
    elif name == "find":
        window.deeds.find()
        window.finder.search("1")
    elif name in ("sheet", "cards"):
        window.go(name)
    else:
        window.go("tables")
        window.workplace.tables.show_table(name)


def test_every_figure_of_every_place_is_explained(window, monkeypatch):
    watch, missing = walk.Painted(monkeypatch), []
    for name in PLACES:
        show_place(window, name)
        names, count = lost(window, repainted(watch, window))
        missing += [f"{name}: {text}" for text in names]
        assert count > 0
    assert missing == []


def test_every_figure_of_the_welcome_is_explained(window, monkeypatch):
    watch = walk.Painted(monkeypatch)
    window.close_document()
    assert lost(window, repainted(watch, window))[0] == []


def selections(project):
    """Give every kind of selection with every key it can have."""
    course = project.course
    weeks = derive(project, None, TODAY).weeks
    yield "", ()
    yield from (("session", (s.key,)) for s in project.block.sessions)
    yield "session", tuple(s.key for s in project.block.sessions[20:24])
    yield from (("week", (week.start.isoformat(),)) for week in weeks)
    yield from (("section", (s.key,)) for s in course.sections)
    yield from (("station", (s.key,)) for s in course.stations)
    yield from (("item", (i.key,)) for i in project.fuel.items)
    yield from (("recording", (r.key,)) for r in project.recordings)


def unexplained(rows):
    """Return what *rows* say in figures that the help has nothing on."""
    return [
        text
        for row in rows
        for text in [" ".join(getattr(row, name) for name in row.__struct_fields__ if name in SAID)]
        if (isinstance(row, Figure | CheckRow) or walk.has_figure(text))
        and topic_of_row(row) not in TOPICS
    ]


def test_every_figure_of_the_ledger_is_explained_whatever_is_selected(window, project):
    place, missing, count = window.workplace, set(), 0
    for kind, keys in selections(project):
        place.selection.choose_all(kind, keys)
        for rows in place.ledger.findChildren(Rows):
            missing |= set(unexplained(rows.rows))
            count += sum(isinstance(row, Figure | CheckRow) for row in rows.rows)
    assert missing == set()
    assert count > 5_000


def test_a_figure_without_a_topic_would_be_found(window):
    dialog = QDialog(window)
    field, label = QSpinBox(dialog), QLabel("12 km", dialog)
    field.setAccessibleName("Distance")
    set_topic(dialog, "race day")
    assert lost(dialog)[0] == ["QLabel: 12 km", "QSpinBox: Distance"]
    set_topic(field, "session distance")
    label.setBuddy(field)
    assert lost(dialog)[0] == []
    assert unexplained([Figure("Speed", "1"), Sentence("Two"), Sentence("2 km")]) == [
        "Speed 1 ",
        "2 km",
    ]


#: What the user or the race says: nothing is reckoned, so there is no source to give.
GIVEN = {"aid station", "cutoff", "lessons", "session day"}


def reckoned(window, project):
    """Give the topics of every figure of ledger, header, lanes and columns that are not typed."""
    place = window.workplace
    for kind, keys in selections(project):
        place.selection.choose_all(kind, keys)
        for rows in place.ledger.findChildren(Rows):
            yield from (row.topic for row in rows.rows if isinstance(row, Figure | CheckRow))
    yield from (topic_of(figure) for figure in place.header.findChildren(HeaderFigure))
    yield from (lane.topic_at(None) for lane in window.findChildren(Lane))
    for spec in SPECS:
        columns = zip(spec.columns, column_topics(spec), strict=True)
        yield from (topic for column, topic in columns if column.parse is None)


def test_every_figure_that_is_reckoned_says_its_source(window, project):
    topics = set(reckoned(window, project))
    assert len(topics) > 80
    assert {key for key in topics if not TOPICS[key].sources} - GIVEN == set()
    assert {key for key in GIVEN if TOPICS[key].sources} == set()


def test_nothing_but_files_and_failures_is_asked_about_in_a_box():
    boxes = {
        source.name(path)
        for path in source.PACKAGE.rglob("*.py")
        if "QMessageBox" in path.read_text("utf-8")
    }
    assert boxes == {"ultraplanner_gui/window/ask.py"}
    asks = {name for name in vars(Ask) if not name.startswith(("_", "which_", "where_"))}
    assert asks - {"staticMetaObject"} == {"tell", "offer"}

"""The form that shows what recordings say, and the job behind it."""

from datetime import UTC, date, datetime, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialogButtonBox

from tests.engine.test_calibration import made_run
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.jobs import Cancelled, Token
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.held_out import tried_fit
from ultraplanner_gui.exchange.kept_recording import keep_recording
from ultraplanner_gui.plan.message import PlanError, message
from ultraplanner_gui.plan.pacing import ResultKind
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.pace_fit import FitForm, ReadFit, fit_kept
from ultraplanner_gui.window.pace_predict import PredictForm
from ultraplanner_gui.window.recordings_read import kept_runs
from ultraplanner_gui.window.run_choice import RunChoice
from ultraplanner_gui.wording.words import Words

TODAY = date(2026, 11, 25)
DEMO = demo_project(TODAY)
START = datetime(2026, 6, 1, 6, tzinfo=UTC)
TRACK = (
    '<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Run</name><trkseg>'
    "{}</trkseg></trk></gpx>"
)


@pytest.fixture
def document():
    return Document(None, DEMO, lambda: TODAY)


def form_of(qtbot, document, count=2, left_out=()):
    runs = [
        replace(made_run(km=45.0, fade=0.25, seed=n), start=START + timedelta(days=n))
        for n in range(count)
    ]
    runner = document.project.runner

    def send(edit):
        document.perform(edit)
        return ""

    found = ReadFit(tried_fit(runs, runner), left_out)
    form = FitForm(found, runner, Words(), send)
    form.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
    qtbot.addWidget(form)
    form.show()
    return form


def write_run(path, run):
    points = "".join(
        f'<trkpt lat="{lat:.7f}" lon="{lon:.7f}"><ele>{height:.2f}</ele>'
        f"<time>{(START + timedelta(seconds=float(s))).isoformat()}</time></trkpt>"
        for lat, lon, height, s in zip(
            run.line.latitude_deg,
            run.line.longitude_deg,
            run.line.elevation_m,
            run.elapsed_s,
            strict=True,
        )
    )
    path.write_text(TRACK.format(points), "utf-8")
    return path


def test_figures_are_taken_only_when_asked_and_as_one_step(qtbot, document):
    form = form_of(qtbot, document)
    assert document.project is DEMO
    form.use.click()

    fitted = form._found.tried.fit
    assert document.project.runner.fade == fitted.fade.value
    assert document.project.runner.descent_speed == fitted.descent.value
    assert document.undo_stack.count() == 1


def test_closing_changes_nothing(qtbot, document):
    form = form_of(qtbot, document)
    form.findChild(QDialogButtonBox).button(QDialogButtonBox.StandardButton.Close).click()

    assert document.project is DEMO


def test_every_run_has_a_line_and_the_errors_left_out_are_said(qtbot, document):
    form = form_of(qtbot, document)
    tried = form._found.tried

    assert form.runs.rowCount() == 2
    assert Words().percent(tried.error_percent, 1) in form.verdict.text()
    assert Words().percent(tried.default_percent, 1) in form.verdict.text()


def test_a_run_alone_is_said_to_be_untried(qtbot, document):
    assert "could not be tried" in form_of(qtbot, document, count=1).verdict.text()


def kept(path, run):
    return keep_recording(write_run(path, run))


def torn(tmp_path):
    whole = kept(tmp_path / "whole.gpx", made_run(km=2.0))
    return replace(whole, key="torn", file="torn.gpx", packed=whole.packed[:200])


def test_a_file_no_longer_legible_is_named_and_the_rest_fitted(tmp_path):
    good = kept(tmp_path / "good.gpx", made_run(km=20.0))

    found = fit_kept(Token(lambda share: None), (good, torn(tmp_path)), DEMO.runner)
    assert len(found.tried.fit.runs) == 1
    assert [name for name, _ in found.left_out] == ["torn.gpx"]


def test_recordings_become_past_runs_without_their_standing_time(tmp_path):
    run = made_run(km=20.0)
    good = kept(tmp_path / "good.gpx", run)

    found = kept_runs(Token(lambda share: None), (good, torn(tmp_path)), DEMO.runner)
    (past,) = found.runs
    assert [name for name, _ in found.left_out] == ["torn.gpx"]
    assert past.distance_m == pytest.approx(20_000.0, rel=0.01)
    assert 0.0 < past.time_s <= run.elapsed_s[-1] + 1.0
    assert past.flat_m is not None
    assert past.kind is ResultKind.LONG_RUN


@pytest.fixture
def window(qtbot, tmp_path, monkeypatch):
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(window)
    window.show()
    file = ProjectFile.create(tmp_path / "plan.ultraplan", DEMO)
    window.show_document(Document(file, file.project, lambda: TODAY))
    good = write_run(tmp_path / "good.gpx", made_run(km=20.0))
    bad = tmp_path / "bad.gpx"
    bad.write_text("no run", "utf-8")
    monkeypatch.setattr(window.ask, "which_recordings", lambda folder, taken: taken((good, bad)))
    yield window
    window.close()


def with_files(window, qtbot):
    """The choice of runs with the good file read into it, and what it says of the bad one."""
    (choice,) = window.findChildren(RunChoice)
    for number in range(choice.list.count()):
        choice.list.item(number).setCheckState(Qt.CheckState.Unchecked)
    choice.files.click()
    qtbot.waitUntil(lambda: len(choice.chosen()) == 1, timeout=20_000)
    assert "bad.gpx" in choice.read.text()
    return choice


def test_files_go_into_the_predicted_finish_and_are_not_kept(window, qtbot):
    window.table.by_name["predict_form"].trigger()
    (form,) = window.findChildren(PredictForm)
    before = window.document.project
    form.add.click()
    with_files(window, qtbot).use.click()
    qtbot.waitUntil(lambda: form.prediction is not None, timeout=20_000)

    assert form.table.runs()[0].flat_m is not None
    assert window.document.project is before
    form.reject()


def test_files_are_kept_with_the_plan_on_request_as_one_step(window, qtbot):
    before = window.document.project
    window.table.by_name["fit_runs"].trigger()
    choice = with_files(window, qtbot)
    choice.keep.click()
    choice.use.click()
    qtbot.waitUntil(lambda: bool(window.findChildren(FitForm)), timeout=20_000)

    after = window.document.project
    assert {r.file for r in after.recordings} - {r.file for r in before.recordings} == {"good.gpx"}
    assert after.runner == before.runner
    window.document.undo_stack.undo()
    assert window.document.project == before
    window.findChildren(FitForm)[0].reject()


def test_nothing_legible_is_refused_in_a_sentence(tmp_path):
    with pytest.raises(PlanError):
        fit_kept(Token(lambda share: None), (torn(tmp_path),), DEMO.runner)


def test_a_cancelled_fit_stops(tmp_path):
    token = Token(lambda share: None)
    token.cancel()

    with pytest.raises(Cancelled):
        fit_kept(token, (torn(tmp_path),), DEMO.runner)


def test_a_file_left_out_is_shown(qtbot, document):
    form = form_of(qtbot, document, left_out=(("bad.gpx", message("It holds no times.")),))
    texts = [label.text() for label in form.findChildren(type(form.verdict))]

    assert any("bad.gpx" in text and "no times" in text for text in texts)

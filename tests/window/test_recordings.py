from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from tests.engine.made_recordings import run_of
from tests.exchange.recording_files import walk
from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MarkDone
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.fuel import Portion
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import MOST_RECORDINGS
from ultraplanner_gui.plan.review import PinnedTo
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.window.left_out import LeftOutView
from ultraplanner_gui.window.look_back_view import LookBackView
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.window.recording_files import files_in, has_times
from ultraplanner_gui.window.recording_view import RecordingView
from ultraplanner_gui.window.run_choice import RunChoice
from ultraplanner_gui.window.table_recordings import RECORDINGS

TODAY = date(2027, 4, 5)


@pytest.fixture
def window(bare_window, tmp_path):
    path = tmp_path / "demo.ultraplan"
    project = replace(demo_project(TODAY), recordings=(), lessons=())
    file = ProjectFile.create(path, project)
    bare_window.show_document(Document(file, file.project, lambda: TODAY))
    return bare_window


def as_gpx(recording):
    rows = zip(
        recording.line.latitude_deg,
        recording.line.longitude_deg,
        recording.line.elevation_m,
        recording.elapsed_s,
        strict=True,
    )
    points = "".join(
        f'<trkpt lat="{a:.6f}" lon="{b:.6f}"><ele>{h:.1f}</ele>'
        f"<time>{recording.start + timedelta(seconds=float(s)):%Y-%m-%dT%H:%M:%S%z}</time></trkpt>"
        for a, b, h, s in rows
    ).replace("+0100</time>", "+01:00</time>")
    head = '<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1"><trk>'
    return f"{head}<trkseg>{points}</trkseg></trk></gpx>"


def session_of(window, kind=Kind.LONG):
    sessions = window.document.project.block.sessions
    return next(s for s in sessions if s.kind is kind and s.done is not None)


def kept(window, qtbot, *paths):
    count = len(window.document.project.recordings)
    window.deeds.keep_recordings(paths)
    qtbot.waitUntil(lambda: len(window.document.project.recordings) > count, timeout=20_000)
    return window.document.project.recordings


def a_run(window, tmp_path, name="run.gpx"):
    day = session_of(window).day
    start = window.document.project.race.start.replace(
        year=day.year, month=day.month, day=day.day, hour=9
    )
    path = tmp_path / name
    path.write_text(walk(points=700, start=start), "utf-8")
    return path


def test_a_recording_is_kept_matched_and_exported_unchanged(window, qtbot, tmp_path):
    path = a_run(window, tmp_path)
    (recording,) = kept(window, qtbot, path)
    assert recording.session == session_of(window).key
    window.deeds._write_recording(recording, tmp_path / "out.gpx")
    assert (tmp_path / "out.gpx").read_bytes() == path.read_bytes()
    window.document.undo_stack.undo()
    assert window.document.project.recordings == ()


def test_what_is_there_already_is_not_kept_twice(window, qtbot, tmp_path):
    path = a_run(window, tmp_path)
    kept(window, qtbot, path)
    steps = window.document.undo_stack.count()
    window.deeds.keep_recordings((path,))
    qtbot.waitUntil(lambda: "There already: 1" in window._message.text(), timeout=20_000)
    assert window.document.undo_stack.count() == steps


def test_a_session_is_marked_only_when_the_user_says_so(window, qtbot, tmp_path):
    kept(window, qtbot, a_run(window, tmp_path))
    eaten = replace(session_of(window).done, foods=(Portion("gel", 2.0),))
    window.document.perform(MarkDone(session_of(window).key, eaten))
    before = session_of(window)
    window.deeds.mark_from_recording()
    from ultraplanner_gui.buildup.done_form import DoneForm

    (form,) = window.findChildren(DoneForm)
    assert session_of(window) == before
    form.keep.click()
    done = window.document.project.block.session(before.key).done
    assert done.distance_m == pytest.approx(
        window.document.project.recordings[0].distance_m, abs=60
    )
    assert (done.effort, done.gut) == (before.done.effort, before.done.gut)
    assert done.foods == before.done.foods
    window.document.undo_stack.undo()
    assert session_of(window) == before


def test_another_match_is_chosen_in_the_table(window, qtbot, tmp_path):
    kept(window, qtbot, a_run(window, tmp_path))
    (row,) = RECORDINGS.rows(window.document.outlook)
    column = next(c for c in RECORDINGS.columns if c.name == "Is of")
    words = window.settings.words()
    for text in column.choices(row, words):
        edit = column.parse(row, text, words)
        after = edit.apply(window.document.project).recordings[0]
        assert column.text(replace(row, recording=after), words) == text
    with pytest.raises(PlanError, match="near this day"):
        column.parse(row, "someone else's run", words)


def test_a_folder_is_read_with_the_folders_in_it(tmp_path):
    (tmp_path / "a").mkdir()
    for name in ("a/one.gpx", "two.GPX", "three.gpx.gz", "notes.txt"):
        (tmp_path / name).write_text("x")
    files, is_cut = files_in((tmp_path, tmp_path / "two.GPX"))
    assert sorted(p.name for p in files) == ["one.gpx", "three.gpx.gz", "two.GPX"]
    assert not is_cut


def test_a_folder_too_full_is_read_as_far_as_a_project_holds(tmp_path):
    for number in range(MOST_RECORDINGS + 3):
        (tmp_path / f"{number}.gpx").touch()
    files, is_cut = files_in((tmp_path,))
    assert len(files) == MOST_RECORDINGS
    assert is_cut


def test_files_that_cannot_be_used_are_listed_with_why(window, qtbot, tmp_path):
    runs = tmp_path / "runs"
    runs.mkdir()
    a_run(window, runs)
    (runs / "line.gpx").write_text(walk(times=False), "utf-8")
    (runs / "torn.gpx").write_text(walk()[:900], "utf-8")
    kept(window, qtbot, runs)
    (view,) = window.findChildren(LeftOutView)
    listed = {view.table.item(r, 0).text(): view.table.item(r, 1).text() for r in range(2)}
    assert set(listed) == {"line.gpx", "torn.gpx"}
    assert "no times" in listed["line.gpx"]


def test_a_run_with_the_start_and_length_of_one_kept_is_not_added(window, qtbot, tmp_path):
    kept(window, qtbot, a_run(window, tmp_path))
    again = tmp_path / "again.gpx"
    again.write_text((tmp_path / "run.gpx").read_text("utf-8").replace("dyke", "canal"), "utf-8")
    window.deeds.keep_recordings((again,))
    qtbot.waitUntil(lambda: "There already: 1" in window._message.text(), timeout=20_000)
    assert len(window.document.project.recordings) == 1


def test_a_dropped_run_is_asked_about_in_place(window, qtbot, tmp_path):
    window.deeds.take_dropped((a_run(window, tmp_path),))
    assert "run.gpx" in window.offer.text
    keep, course = window.offer.ways
    assert window.document.project.recordings == ()
    keep.click()
    qtbot.waitUntil(lambda: bool(window.document.project.recordings), timeout=20_000)
    assert not window.offer.isVisible()
    assert course not in window.offer.ways


def test_a_dropped_folder_is_kept(window, qtbot, tmp_path):
    (tmp_path / "runs").mkdir()
    a_run(window, tmp_path / "runs")
    window.deeds.take_dropped((tmp_path / "runs",))
    qtbot.waitUntil(lambda: bool(window.document.project.recordings), timeout=20_000)


def test_what_a_project_cannot_hold_is_not_said_to_be_added(window, qtbot, tmp_path, monkeypatch):
    monkeypatch.setattr("ultraplanner_gui.edits.recordings.MOST_BYTES_IN_ALL", 10)
    window.deeds.keep_recordings((a_run(window, tmp_path),))
    qtbot.waitUntil(lambda: "200 MB" in window._message.text(), timeout=20_000)
    assert window.document.project.recordings == ()


def test_reading_is_cancelled_and_leaves_the_plan(window, qtbot, tmp_path):
    before = window.document.project
    window.deeds.keep_recordings((a_run(window, tmp_path),))
    window.deeds.cancel_job()
    qtbot.wait(400)
    assert window.document.project is before


def test_the_ledger_sets_a_recording_beside_its_session(window, qtbot, tmp_path):
    (recording,) = kept(window, qtbot, a_run(window, tmp_path))
    window.go("sheet")
    window.workplace.selection.choose("session", recording.session)
    words = window.settings.words()
    said = window.workplace.ledger._upper.accessibleDescription()
    assert words.distance(recording.distance_m, 1) in said
    assert "Flat-equivalent pace" in said


def test_a_file_with_times_is_told_from_a_course(tmp_path):
    (tmp_path / "run.gpx").write_text(walk(), "utf-8")
    (tmp_path / "line.gpx").write_text(walk(times=False), "utf-8")
    assert has_times(tmp_path / "run.gpx")
    assert not has_times(tmp_path / "line.gpx")
    assert not has_times(resources.path("demo/course.gpx"))


def test_a_recording_is_looked_at(window, qtbot, tmp_path):
    kept(window, qtbot, a_run(window, tmp_path))
    window.deeds.look_at_recording()
    qtbot.waitUntil(lambda: bool(window.findChildren(RecordingView)), timeout=20_000)
    (view,) = window.findChildren(RecordingView)
    assert "Flat-equivalent" in view.rows.accessibleDescription()


@pytest.fixture
def back(window, qtbot, tmp_path):
    run = run_of(window.document.outlook, slower=1.05)
    path = tmp_path / "race.gpx"
    path.write_text(as_gpx(run), "utf-8")
    (recording,) = kept(window, qtbot, path)
    assert recording.is_race
    window.deeds.look_back()
    qtbot.waitUntil(lambda: bool(window.findChildren(LookBackView)), timeout=20_000)
    (view,) = window.findChildren(LookBackView)
    return view


def column_sum(table, row, first):
    texts = [table.item(row, c).text() for c in range(first, table.columnCount())]
    return sum(float(t.replace("−", "-")) for t in texts)


def test_the_minutes_shown_add_up(back):
    table = back.causes
    assert table.rowCount() == len(back._looked.back.sections)
    for row in range(table.rowCount()):
        total = float(table.item(row, 1).text().replace("−", "-"))
        assert column_sum(table, row, 2) == pytest.approx(total, abs=3.1)


def test_a_section_chosen_in_one_table_is_chosen_in_all(back):
    back.causes.selectRow(3)
    assert back.sections.currentRow() == 3
    assert back.chart._chosen == 3


def test_food_is_planned_until_it_is_said_otherwise(back, window):
    food = back.food
    assert window.document.project.reviews == ()
    food.all.click()
    planned = window.document.project.reviews[0].taken
    assert len(planned) == food.table.rowCount()
    food.table.item(0, 3).setText("0")
    assert len(window.document.project.reviews[0].taken) == len(planned) - 1
    window.document.undo_stack.undo()
    assert window.document.project.reviews[0].taken == planned
    food.table.item(0, 3).setText("two")
    assert "servings" in food.trouble.text()


def test_a_remark_and_a_lesson_are_written(back, window):
    own = back.own
    own.remark_at.setText("62.5")
    own.remark.setText("hail")
    own.add_remark.click()
    (remark,) = window.document.project.reviews[0].remarks
    assert (remark.at_m, remark.text) == (62_500.0, "hail")
    own.lesson.setText("Walk the first climb")
    own.pin.setCurrentIndex(own.pin.findData(PinnedTo.CLIMB))
    own.which.setText("one")
    own.add_lesson.click()
    assert own.trouble.text()
    own.which.setText("1")
    own.add_lesson.click()
    (lesson,) = window.document.project.lessons
    assert (lesson.pin, lesson.climb) == (PinnedTo.CLIMB, 1)
    assert "Walk the first climb" in own.lessons.item(0).text()


def test_the_next_project_asks_for_answers_before_printing(window, qtbot, tmp_path):
    from ultraplanner_gui.edits.review import NewLesson

    old = window.document.path
    window.document.perform(NewLesson("Eat early", PinnedTo.HOUR, 7_200.0))
    kept_old = window.document.project
    then = lambda result: window.deeds._propose_next(kept_old, result)  # noqa: E731
    window.deeds._read_course(resources.path("demo/course.gpx"), then)
    qtbot.waitUntil(lambda: bool(window.findChildren(PlanForm)), timeout=20_000)
    (form,) = window.findChildren(PlanForm)
    form._path = tmp_path / "next.ultraplan"
    form.name.setText("Next")
    form._on_sent()
    qtbot.waitUntil(lambda: window.document.path != old, timeout=20_000)
    project = window.document.project
    assert project.runner.weekly_m == kept_old.runner.weekly_m
    (lesson,) = project.lessons
    assert lesson.is_open
    with ProjectFile.open(old) as file:
        assert file.project == kept_old


def test_fit_asks_which_of_the_recordings_kept(window, qtbot, tmp_path):
    kept(window, qtbot, a_run(window, tmp_path))
    window.deeds.fit_runs()
    (choice,) = window.findChildren(RunChoice)
    assert choice.list.count() == 1
    assert choice.use.isEnabled() == bool(choice.chosen())
    choice.reject()

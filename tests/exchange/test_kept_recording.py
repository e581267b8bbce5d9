import gzip

import pytest

from tests.exchange.recording_files import walk
from ultraplanner_gui.exchange.gpx_in import read_recording
from ultraplanner_gui.exchange.kept_recording import file_of, keep_recording, recording_of
from ultraplanner_gui.plan.message import CourseError


@pytest.fixture(params=["run.gpx", "run.gpx.gz"])
def path(request, tmp_path):
    path = tmp_path / request.param
    text = walk().encode()
    path.write_bytes(gzip.compress(text) if path.suffix == ".gz" else text)
    return path


def test_a_file_is_exported_as_it_came(path):
    kept = keep_recording(path)
    assert file_of(kept) == path.read_bytes()
    assert kept.file == path.name


def test_the_points_are_those_of_the_file(path):
    kept, read = recording_of(keep_recording(path)), read_recording(path)
    assert (kept.elapsed_s == read.elapsed_s).all()
    assert (kept.line.latitude_deg == read.line.latitude_deg).all()
    assert (kept.start, kept.name) == (read.start, read.name)


def test_the_same_run_has_the_same_key_packed_or_not(tmp_path):
    text = walk().encode()
    (tmp_path / "a.gpx").write_bytes(text)
    (tmp_path / "b.gpx.gz").write_bytes(gzip.compress(text))
    assert keep_recording(tmp_path / "a.gpx").key == keep_recording(tmp_path / "b.gpx.gz").key


def test_standing_is_no_moving_time(tmp_path):
    (tmp_path / "a.gpx").write_text(walk(stands_s=300), "utf-8")
    kept = keep_recording(tmp_path / "a.gpx")
    assert kept.elapsed_s - kept.moving_s == pytest.approx(300.0, abs=30.0)


def test_a_course_without_times_is_no_recording(tmp_path):
    (tmp_path / "a.gpx").write_text(walk(times=False), "utf-8")
    with pytest.raises(CourseError, match="no times"):
        keep_recording(tmp_path / "a.gpx")


def test_an_even_run_on_level_ground_drifts_by_nothing(tmp_path):
    (tmp_path / "a.gpx").write_text(walk(points=2_000), "utf-8")
    kept = keep_recording(tmp_path / "a.gpx")
    assert kept.flat_m == pytest.approx(kept.distance_m, rel=1e-3)
    assert kept.drift == pytest.approx(0.0, abs=5e-3)


def test_too_short_a_run_has_no_drift(tmp_path):
    (tmp_path / "a.gpx").write_text(walk(points=10), "utf-8")
    assert keep_recording(tmp_path / "a.gpx").drift is None

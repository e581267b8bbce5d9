"""Files to read, and the real courses where they are at hand."""

from pathlib import Path

import pytest

SHARED = Path(__file__).resolve().parents[3] / "shared" / "data"


@pytest.fixture
def write(tmp_path):
    def write_file(content, name="course.gpx"):
        path = tmp_path / name
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    return write_file


@pytest.fixture
def shared():
    if not SHARED.is_dir():
        pytest.skip("the real courses and recordings in ../shared/data are not here")
    return SHARED

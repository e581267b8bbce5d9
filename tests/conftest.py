"""What every test runs on: no screen unless asked, a throw-away home, the font of the program."""

import os
import sys
import tempfile

# Before anything imports Qt.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["LC_ALL"] = "C.UTF-8" if sys.platform == "linux" else "en_US.UTF-8"
_HOME = tempfile.TemporaryDirectory(prefix="ultraplanner-tests-", ignore_cleanup_errors=True)
os.environ["ULTRAPLANNER_HOME"] = _HOME.name

import hypothesis
import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QLocale
from PySide6.QtGui import QFontDatabase

hypothesis.settings.register_profile(
    "project", deadline=None, derandomize=bool(os.environ.get("CI"))
)
hypothesis.settings.load_profile("project")


def pytest_collection_modifyitems(items):
    no_screen = pytest.mark.skip(reason="needs a real screen: packaging/dev.py test tests/whole")
    for item in items:
        if "whole" in item.path.parts:
            item.add_marker("screen")
        if item.get_closest_marker("screen") and os.environ["QT_QPA_PLATFORM"] == "offscreen":
            item.add_marker(no_screen)


def pytest_unconfigure():
    _HOME.cleanup()


@pytest.fixture(scope="session")
def qapp(qapp):
    """The one application, with the fonts the program registers when it starts."""
    from ultraplanner_gui.widgets.theme import register_fonts

    QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedKingdom))
    register_fonts()
    assert QFontDatabase.families(), "without a font every width is that of an empty box"
    yield qapp
    # Without a screen Qt lets go of what was copied only after Python is gone, and crashes.
    qapp.clipboard().clear()


@pytest.fixture(autouse=True)
def _delete_what_is_due():
    """Carry out the deletions a test posted, so that none happens within the next one."""
    yield
    if QCoreApplication.instance() is not None:
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)

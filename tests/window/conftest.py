import pytest

from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.main_window import MainWindow


@pytest.fixture
def bare_window(qtbot, tmp_path):
    """A window of 1440x900 without a project, by day, in English and kilometres."""
    theme().choose("light", 100)
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "en_GB"
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.resize(1440, 900)
    window.show()
    return window


@pytest.fixture
def window(qapp, bare_window):
    """The same in the style of the program, the look put back afterwards."""
    qapp.setStyle("Fusion")
    yield bare_window
    theme().choose("light", 100)

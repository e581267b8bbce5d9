"""The system's wish to keep still is read where each desktop keeps it."""

import pytest

from ultraplanner_gui.desk import stillness
from ultraplanner_gui.desk.stillness import Stillness, is_still

KDE = "KDE"
GTK = "XFCE"


def answers(tmp_path, name, text, desktop):
    path = tmp_path / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")
    return is_still({"XDG_CONFIG_HOME": str(tmp_path), "XDG_CURRENT_DESKTOP": desktop})


@pytest.mark.parametrize(
    ("said", "still"), [("0", True), ("0.0", True), ("1", False), ("0.5", False), ("off", False)]
)
def test_kde_says_it_as_a_factor_of_durations(tmp_path, said, still):
    text = f"[$Version]\nupdate_info=a,b\n\n[KDE]\nAnimationDurationFactor={said}\n"
    assert answers(tmp_path, "kdeglobals", text, KDE) is still


@pytest.mark.parametrize("name", ["gtk-3.0/settings.ini", "gtk-4.0/settings.ini"])
@pytest.mark.parametrize(
    ("said", "still"), [("0", True), ("false", True), ("1", False), ("true", False)]
)
def test_gtk_desktops_say_whether_they_animate(tmp_path, name, said, still):
    text = f"[Settings]\ngtk-enable-animations={said}\n"
    assert answers(tmp_path, name, text, GTK) is still


@pytest.mark.parametrize("text", ["", "no section=1", "[KDE]\nOther=1", "\x00\xff[KDE"])
def test_a_file_that_says_nothing_of_it_stops_nothing(tmp_path, text):
    assert not answers(tmp_path, "kdeglobals", text, KDE)
    assert not answers(tmp_path, "gtk-3.0/settings.ini", text, GTK)


def test_without_any_file_nothing_is_stopped(tmp_path):
    assert not is_still({"XDG_CONFIG_HOME": str(tmp_path / "none")})


class OnScreen:
    @staticmethod
    def platformName():
        return "wayland"


@pytest.fixture
def gnome(tmp_path, monkeypatch):
    """Let a program of the name that GNOME's settings are read by answer what is given."""

    def say(text, code=0):
        program = tmp_path / "bin" / "gsettings"
        program.parent.mkdir()
        program.write_text(f"#!/bin/sh\necho {text}\nexit {code}\n")
        program.chmod(0o755)

    monkeypatch.setenv("PATH", f"{tmp_path / 'bin'}:/bin:/usr/bin")
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path))
    monkeypatch.setenv("XDG_CURRENT_DESKTOP", "GNOME")
    monkeypatch.setattr(stillness, "QGuiApplication", OnScreen)
    return say


@pytest.mark.parametrize(
    ("text", "code", "told"),
    [("false", 0, [False, True]), ("true", 0, [False, False]), ("false", 1, [False])],
)
def test_gnome_is_asked_without_waiting_for_it(qtbot, gnome, text, code, told):
    gnome(text, code)
    asker, heard = Stillness(), []
    asker.told.connect(heard.append)
    asker.ask()
    assert heard == [False]
    qtbot.waitUntil(lambda: asker._asked is None, timeout=5_000)
    assert heard == told


def test_who_is_closed_meanwhile_hears_nothing_more(qtbot, gnome):
    gnome("false; sleep 5")
    asker, heard = Stillness(), []
    asker.told.connect(heard.append)
    asker.ask()
    asker.stop()
    qtbot.wait(50)
    assert heard == [False]


def test_without_a_screen_nobody_is_asked(qtbot):
    asker, heard = Stillness(), []
    asker.told.connect(heard.append)
    asker.ask()
    assert heard == []

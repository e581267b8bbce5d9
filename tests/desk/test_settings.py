from pathlib import Path

import pytest
from PySide6.QtCore import QLocale

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.settings import RECENT_FILES, Setting, Settings


@pytest.fixture
def path(tmp_path):
    return tmp_path / "settings.ini"


DECLARED = {name: s for name, s in vars(Settings).items() if isinstance(s, Setting)}

OTHER = {
    "language": "de",
    "units": "imperial",
    "locale": "de_DE",
    "theme": "dark",
    "text_percent": 140,
    "race_axis": "clock",
    "last_folder": "/somewhere/with, comma",
    "template_folder": "/somewhere/else",
    "recent_names": ("/one only.ultraplan",),
    "window_geometry": b"\x00\x01\xff",
    "window_state": b"x",
    "sitting": ("a.ultraplan", "sheet", "", ""),
    "storey_split": b"y",
    "buildup_lanes": ("-climb", "distance:80"),
    "raceday_lanes": ("in hand:60",),
    "open_storey": "raceday",
    "plan_view": True,
    "card_paper": "A4",
    "card_both_sides": True,
    "card_light": "red",
    "card_screens": ("DP-1=4.2500",),
    "motion": False,
}


def test_every_setting_starts_at_its_default_and_says_what_it_is(path):
    settings = Settings(path)
    for name, setting in DECLARED.items():
        assert getattr(settings, name) == setting.default
        assert setting.allows(setting.default)
        assert setting.sentence
    assert len({setting.key for setting in DECLARED.values()}) == len(DECLARED)


@pytest.mark.parametrize("name", DECLARED)
def test_setting_is_found_again_in_the_next_run(path, name):
    setattr(Settings(path), name, OTHER[name])
    found = getattr(Settings(path), name)
    assert (found, type(found)) == (OTHER[name], type(OTHER[name]))


def test_switch_is_found_again_as_a_switch(path):
    class More(Settings):
        flag = Setting("flag", True, "A switch")

    More(path).flag = False
    assert More(path).flag is False


@pytest.mark.parametrize(
    ("name", "value"), [("units", "furlongs"), ("text_percent", 500), ("race_axis", 3)]
)
def test_value_that_is_not_allowed_is_not_set(path, name, value):
    with pytest.raises(ValueError):
        setattr(Settings(path), name, value)


def test_spoilt_file_counts_as_defaults(path):
    path.write_text(
        "[General]\nunits=furlongs\ntext_percent=large\nrecent_files={\n[window]\ngeometry=7\n"
    )
    settings = Settings(path)
    assert (settings.units, settings.text_percent) == ("system", 100)
    assert settings.recent_files == ()


def test_words_speak_the_units_and_language_chosen(path):
    settings = Settings(path)
    settings.units, settings.locale = "imperial", "de_DE"
    assert settings.words().distance(20_000.0) == "12,4 mi"
    settings.units = "metric"
    assert settings.words().distance(20_000.0) == "20,0 km"


@pytest.mark.parametrize(
    ("locale", "unit", "weekday"), [("en_US", "mi", 6), ("en_GB", "km", 0), ("de_DE", "km", 0)]
)
def test_system_proposes_units_and_first_weekday(qtbot, path, locale, unit, weekday):
    """Sunday in the United States, Monday in Europe: CLDR supplemental week data, from memory."""
    usual = QLocale()
    QLocale.setDefault(QLocale(locale))
    try:
        settings = Settings(path)
        assert settings.words().distance_unit == unit
        assert settings.first_weekday() == weekday
    finally:
        QLocale.setDefault(usual)


def test_recent_files_are_newest_first_without_doubles(path):
    settings = Settings(path)
    for number in [*range(RECENT_FILES + 2), 5]:
        settings.remember_file(Path(f"/runs/{number}.ultraplan"))
    recent = Settings(path).recent_files
    assert [p.stem for p in recent] == ["5", *map(str, (11, 10, 9, 8, 7, 6, 4, 3, 2))]
    assert settings.last_folder == str(Path("/runs"))


def test_the_demo_is_no_folder_to_look_in_next(path):
    settings = Settings(path)
    settings.remember_file(Path("/runs/own.ultraplan"))
    settings.remember_file(places.data() / "demo.ultraplan")
    assert settings.last_folder == str(Path("/runs"))
    assert settings.recent_files[0].name == "demo.ultraplan"


def test_throw_away_home_holds_everything(tmp_path, monkeypatch):
    monkeypatch.setenv(places.HOME_VARIABLE, str(tmp_path / "home"))
    made = (places.settings_file(), places.data(), places.logs(), places.documents())
    assert all(path.is_relative_to(tmp_path / "home") for path in made)
    Settings().units = "imperial"
    assert places.settings_file().exists()


@pytest.mark.parametrize(
    ("name", "stem"),
    [
        ("Hill round", "Hill round"),
        ("a/b\\c: d?", "a b c d"),
        ("..", "Race"),
        ("", "Race"),
        ("con", "Race con"),
        ("half \ud800", "half"),
        ("x" * 300, "x" * 60),
    ],
)
def test_new_project_gets_a_name_every_system_allows(tmp_path, monkeypatch, name, stem):
    monkeypatch.setenv(places.HOME_VARIABLE, str(tmp_path))
    path = places.free_project_path(name)
    assert (path.parent, path.name) == (places.documents(), f"{stem}.ultraplan")
    path.touch()
    assert places.free_project_path(name).name == f"{stem} 2.ultraplan"

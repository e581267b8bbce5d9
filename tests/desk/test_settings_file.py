import json

import pytest

from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.desk.settings_file import (
    asked_for,
    read_settings,
    reset_settings,
    write_settings,
)
from ultraplanner_gui.plan.message import StoreError


@pytest.fixture
def settings(tmp_path):
    return Settings(tmp_path / "one.ini")


def chosen(settings):
    return {name: getattr(settings, name) for name, _ in asked_for()}


def test_choices_go_to_another_computer(settings, tmp_path):
    settings.units, settings.text_percent, settings.motion = "imperial", 140, False
    write_settings(settings, tmp_path / "out.json")
    other = Settings(tmp_path / "two.ini")
    assert read_settings(other, tmp_path / "out.json") == ()
    assert chosen(other) == chosen(settings)


def test_what_was_only_remembered_stays_at_home(settings, tmp_path):
    settings.recent_names = ("secret.ultraplan",)
    write_settings(settings, tmp_path / "out.json")
    assert "secret" not in (tmp_path / "out.json").read_text("utf-8")


def test_unknown_and_impossible_choices_are_passed_over_and_named(settings, tmp_path):
    given = {"theme": "dark", "units": "furlongs", "text_percent": True, "colour": "red"}
    (tmp_path / "in.json").write_text(json.dumps(given), "utf-8")
    assert read_settings(settings, tmp_path / "in.json") == ("units", "text_percent", "colour")
    assert (settings.theme, settings.units, settings.text_percent) == ("dark", "system", 100)


@pytest.mark.parametrize("text", ["", "[1]", "nonsense", "[" * 90_000, '{"theme": "dark"'])
def test_no_settings_change_nothing(settings, tmp_path, text):
    (tmp_path / "in.json").write_text(text, "utf-8")
    before = chosen(settings)
    with pytest.raises(StoreError, match="holds no settings"):
        read_settings(settings, tmp_path / "in.json")
    assert chosen(settings) == before


def test_usual_values_are_those_of_a_new_user(settings, tmp_path):
    settings.units, settings.card_paper = "imperial", "A3"
    reset_settings(settings)
    assert chosen(settings) == chosen(Settings(tmp_path / "new.ini"))


def test_every_choice_has_a_name(settings):
    for _, setting in asked_for():
        assert len(setting.names) == len(setting.among)

"""The sentences beside every fuel plan."""

from ultraplanner_gui.wording import cautions


def test_standing_sentence_tells_what_it_must():
    for part in ("practise in training", "thirst", "confused", "faint", "vomiting", "Race rules"):
        assert part in cautions.STANDING


def test_cautions_are_short_enough_for_a_card():
    assert all(len(text) <= 200 for text in cautions.ALL)


def test_cautions_name_no_dose():
    assert not any(unit in text for text in cautions.ALL for unit in (" mg", " g ", "mL"))

"""Sizes of type, strokes and room stand in one place."""

import re

from tests.rules.source import ROOT

PLACES = ("widgets", "buildup", "raceday", "window")
RULES = {
    "a size of type": re.compile(r"\b(?:font|metrics)\(\d+\.\d|\bdress\([^,]+, \d|_PT = \d"),
    "a stroke": re.compile(r"QPen\((?:[^(),]|\([^()]*\))+, \d+\.\d+ *[,)]"),
    "room": re.compile(r"set(?:ContentsMargins|\w*Spacing)\([^)]*\b[1-9]\d*\b"),
}


def test_no_size_of_its_own():
    found = [
        f"{path.relative_to(ROOT)}:{number}: {what}"
        for place in PLACES
        for path in (ROOT / "ultraplanner_gui" / place).glob("*.py")
        if path.name != "tokens.py" or place != "widgets"
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), start=1)
        for what, rule in RULES.items()
        if rule.search(line)
    ]
    assert found == []


def test_the_rule_sees_what_it_forbids():
    lines = {
        "a size of type": "look.font(8.5, bold=True)",
        "a stroke": 'QPen(c["ink"], 1.3)',
        "room": "box.setContentsMargins(0, 6, 0, 0)",
    }
    assert all(RULES[what].search(line) for what, line in lines.items())

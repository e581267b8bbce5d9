"""What the help says of each column of the tables."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.window.table_spec import TableSpec

_INTAKE = {
    "From": "race axis",
    "Takes": "running time",
    "Carbs": "race carbs",
    "Carbs per hour": "carbs per hour",
    "Fluid": "fluid",
    "Fluid per hour": "fluid",
    "Sodium": "sodium",
    "Caffeine": "caffeine",
    "Energy": "food energy",
    "Weight": "food weight",
    "What": "food",
}
# By the name of the table and the head of the column, as they are marked for translation.
TOPICS: Mapping[str, Mapping[str, str]] = {
    "Recordings": {
        "Date": "recordings",
        "Start": "recordings",
        "Name": "recordings",
        "Is of": "recording matched",
        "Distance": "recordings",
        "Elapsed": "recordings",
        "Moving": "recordings",
        "Standing": "recordings",
        "Climb": "climb and drop",
        "Drop": "climb and drop",
        "Pace": "recordings",
        "Flat-equivalent pace": "recordings",
        "Slower later": "recordings",
    },
    "Mandatory kit": {
        "Kit": "mandatory kit",
        "Packed": "mandatory kit",
        "Where it is": "mandatory kit",
    },
    "Lessons": {
        "Lesson": "lessons",
        "Pinned to": "lessons",
        "Which": "lessons",
        "Learnt at": "lessons",
        "Answer": "lessons",
    },
    "Sessions": {
        "Date": "session day",
        "Day": "session day",
        "To go": "weeks to go",
        "Kind": "session kind",
        "Distance": "session distance",
        "Time": "session time",
        "Climb": "session climb",
        "Drop": "session climb",
        "Ground": "ground",
        "Effort": "effort",
        "Practice": "practice carbs",
        "Fasted": "fasted",
        "Dark": "dark",
        "State": "done or missed",
        "Done": "done or missed",
        "Done in": "done or missed",
        "Note": "session note",
    },
    "Weeks": {
        "To go": "weeks to go",
        "Begins": "weeks to go",
        "Week": "cutback",
        "Distance": "weekly distance",
        "Planned": "weekly distance",
        "Of last loading week": "of last loading week",
        "On feet": "time on feet",
        "Climb": "weekly climb",
        "Drop": "weekly climb",
        "Longest": "longest run of the week",
        "30 days before it": "longest run of the week",
        "Practice": "practice carbs",
        "Load": "load",
    },
    "Sections": {
        "Section to": "section",
        "From": "section",
        "To": "section",
        "Length": "section",
        "Climb": "climb and drop",
        "Drop": "climb and drop",
        "Target": "target",
        "Running": "running time",
        "Fixed": "fixed target",
        "Arrive": "arrive",
        "Window": "arrival window",
        "Cutoff": "cutoff",
        "To this cutoff": "to this cutoff",
        "Time in hand": "time in hand",
        "When it gets hard here": "when it gets hard",
    },
    "Cutoffs": {
        "Section to": "section",
        "Running": "running time",
        "Forecast takes": "forecast",
        "At walking pace": "walking",
        "Arrive": "arrive",
        "Forecast": "forecast",
        "Cutoff": "cutoff",
        "To this cutoff": "to this cutoff",
        "Time in hand": "time in hand",
        "Makes it": "odds",
        "Leave by": "leave by",
        "Leave by, to walk in": "walk-in limit",
    },
    "Surfaces": {"From": "surface", "To": "surface", "Surface": "surface"},
    "Aid stations": {
        "Aid station": "aid station",
        "At": "aid station",
        "Arrive": "arrive",
        "Cutoff": "cutoff",
        "Cutoff after": "cutoff",
        "Planned stop": "planned stop",
        "Stop to": "sleep stop",
        "Pacer": "aid station",
        "What is there": "what is there",
        "Note": "aid station",
    },
    "Fuel": {
        "Race time": "fuel item",
        "Clock": "fuel item",
        "At": "fuel item",
        "Keeps": "keeps",
        "Food": "food",
        "Servings": "servings",
        "Carbs": "net carbs",
        "Fluid": "fluid",
        "Sodium": "sodium",
        "Caffeine": "caffeine",
        "One serving is": "servings",
    },
    "By the hour": {"Hour": "race axis", **_INTAKE},
    "By the leg": {"Leg to": "carry", **_INTAKE},
    "Foods": {
        "Food": "food",
        "Serving": "servings",
        "Carbs": "net carbs",
        "Sodium": "sodium",
        "Fluid": "fluid",
        "Caffeine": "caffeine",
        "Energy": "food energy",
        "Weight": "food weight",
        "Sugars": "sugars",
        "Fructose": "sugars",
        "Your gut": "your gut",
        "Allergens": "allergens",
        "Carried": "carried food",
        "In a pack": "pack",
        "Form": "food form",
        "In the plan": "servings",
        "Figures are": "figures are",
        "Source": "figures are",
    },
    "Food at stations": {
        "Station": "food at stations",
        "At": "aid station",
        "On the table": "food at stations",
    },
    "Bags": dict.fromkeys(
        (
            *("Out of", "At", "There by", "From", "What", "Planned", "Spare", "Pack"),
            "Weight",
        ),
        "bags",
    ),
    "Carried": dict.fromkeys(
        (
            *("Leaving", "Clock", "Carbs", "Food", "Fluid to the next tap", "Bottles"),
            *("Short of room", "Weight"),
        ),
        "carried",
    ),
    "Shopping": dict.fromkeys(
        ("Food", "One serving is", "Servings", "In a pack", "Packs", "Left over"), "shopping"
    ),
    "Practice": {
        "Day": "session day",
        "Kind": "session kind",
        "Asked": "practice carbs",
        "To eat": "practice carbs",
        "Gives": "practice carbs",
        "Eaten": "done or missed",
        "That was": "carbs per hour",
        "Gut": "your gut",
    },
    "Before the start": dict.fromkeys(
        ("Day", "Clock", "To the start", "What", "Source"), "before the start"
    ),
    "After the race": dict.fromkeys(
        ("Day", "After the finish", "What", "Source"), "after the race"
    ),
}


def column_topics(spec: TableSpec[Any]) -> tuple[str, ...]:
    """Return the topic of each column of a table, empty where it has none."""
    known = TOPICS.get(spec.name, {})
    return tuple(known.get(column.name, "") for column in spec.columns)


def column_tip(spec: TableSpec[Any], column: int) -> str:
    """Return what a column is, in the words of the help."""
    # Only a pointer that rests on a head asks; until then the texts are not read.
    from ultraplanner_gui.wording.help.topics import TOPICS as TEXTS

    topic = TEXTS.get(column_topics(spec)[column])
    return "" if topic is None else QCoreApplication.translate("Help", topic.what)

"""Help on the days after the race, and on what is handed over to other programs."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help import papers
from ultraplanner_gui.wording.help.topic import CHOICE, PRACTICE, Topic, choice, published

TOPICS = (
    Topic(
        "after the race",
        QT_TRANSLATE_NOOP("Help", "After the race"),
        QT_TRANSLATE_NOOP(
            "Help",
            "How long to leave running alone, to run easy only, and to wait with hard sessions and "
            "the next race, by how long the race takes; and signs not to wait with.",
        ),
        sources=(
            choice(QT_TRANSLATE_NOOP("Help", "The days are our own, on the careful side.")),
            published(
                papers.MILLET_2011,
                QT_TRANSLATE_NOOP("Help", "9 to 16 days until strength was back after 166 km."),
            ),
            PRACTICE,
        ),
        caution=QT_TRANSLATE_NOOP(
            "Help", "Days on a calendar heal nothing: pain, fever or odd urine go first."
        ),
        see=("before the start", "hand over", "looking back"),
        words=QT_TRANSLATE_NOOP("Help", "recovery rest return running red flags"),
    ),
    Topic(
        "hand over",
        QT_TRANSLATE_NOOP("Help", "Export to other programs"),
        QT_TRANSLATE_NOOP(
            "Help",
            "In the File menu: the course with stations, section ends and target arrivals as GPX "
            "1.1; sessions and race as a calendar; every table as CSV or XLSX with units in the "
            "heads; the profile with targets as a picture, PNG or SVG. A calendar can be read "
            "back: what would change is shown first.",
        ),
        how=QT_TRANSLATE_NOOP(
            "Help",
            "A calendar that takes a second file changes what it has. Under another name of the "
            "race all entries are new, and what you removed from the plan stays until you delete "
            "it there. A text in a CSV that a spreadsheet could take for a formula has an "
            "apostrophe before it.",
        ),
        sources=(CHOICE,),
        caution=QT_TRANSLATE_NOOP(
            "Help", "A watch shows the waypoints, not your cutoffs: carry a card as well."
        ),
        see=("session day",),
        words=QT_TRANSLATE_NOOP("Help", "gpx ics icalendar csv svg png spreadsheet watch"),
    ),
)

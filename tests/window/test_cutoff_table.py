from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.course import CutoffKind
from ultraplanner_gui.window.table_cutoffs import COLUMNS, cutoff_rows
from ultraplanner_gui.wording.words import NONE, Words

TODAY = date(2026, 11, 25)
DEMO = demo_project(TODAY)


def texts(project):
    rows = cutoff_rows(derive(project, None, TODAY))
    return [{c.name: c.text(row, Words()) for c in COLUMNS} for row in rows]


def test_every_section_end_says_its_odds_and_latest_times():
    rows = texts(DEMO)

    barn = next(row for row in rows if row["Section to"] == "Halfway Barn")
    assert barn["Cutoff"] == "Sat 17:15"
    assert barn["Makes it"] == "about 19 of 20 days"
    assert barn["Leave by"] != NONE
    # Leaving the barn as planned is too late for a walk, leaving Long Ridge is not.
    assert barn["Leave by, to walk in"] == NONE
    ridge = next(row for row in rows if row["Section to"] == "Long Ridge")
    assert ridge["Leave by, to walk in"] != NONE
    assert rows[0]["Cutoff"] == NONE
    assert rows[-1]["Section to"] == "Finish"
    assert rows[-1]["Leave by"] == NONE


def test_cutoff_for_leaving_says_so():
    course = DEMO.course
    station = next(s for s in course.stations if s.name == "Weir")
    leaving = course.with_station(replace(station, cutoff_kind=CutoffKind.DEPARTURE))
    rows = texts(replace(DEMO, course=leaving))

    assert next(r for r in rows if r["Section to"] == "Weir")["Cutoff"].startswith("leave ")


def test_course_without_cutoffs_has_no_latest_times():
    stations = tuple(replace(s, cutoff_s=None) for s in DEMO.course.stations)
    free = replace(
        DEMO, course=replace(DEMO.course, stations=stations), race=replace(DEMO.race, limit_s=None)
    )

    for row in texts(free):
        assert {row[name] for name in ("Makes it", "Leave by", "Leave by, to walk in")} == {NONE}

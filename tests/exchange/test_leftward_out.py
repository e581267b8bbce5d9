"""What goes to a watch has no marks that say which way a text is read."""

from datetime import date

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.exchange.gpx_out import race_marks
from ultraplanner_gui.wording.words import Words


def test_waypoints_read_the_same_in_every_language():
    outlook = derive(demo_project(date(2026, 11, 25)))
    marks = race_marks(outlook, Words(leftward=True))
    assert marks == race_marks(outlook, Words())
    assert marks[0].note

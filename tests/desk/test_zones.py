"""Time zones proposed for a course."""

import pytest

from ultraplanner_gui.desk.zones import nearest_zone


# Places and their zones as listed in the IANA time zone database (zone1970.tab, backward).
@pytest.mark.parametrize(
    ("latitude", "longitude", "zone"),
    [
        (51.5083, -0.1253, "Europe/London"),
        (45.92, 6.87, "Europe/Zurich"),
        (35.68, 139.70, "Asia/Tokyo"),
        (-33.92, 18.42, "Africa/Johannesburg"),
        (-17.5, -179.9, "Pacific/Fiji"),
    ],
)
def test_the_nearest_place_gives_the_zone(latitude, longitude, zone):
    assert nearest_zone(latitude, longitude).key == zone

"""States of race day in the hand and folded, one picture each."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from pictures_studio import SIZE, Studio, held, hover, settle, taken
from PySide6.QtCore import QPoint
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.raceday.head_hand import START
from ultraplanner_gui.raceday.station_head import StationHead
from ultraplanner_gui.raceday.storey import RaceDay
from ultraplanner_gui.widgets.axis import Measure
from ultraplanner_gui.widgets.theme import ThemeWish, theme
from ultraplanner_gui.window.main_window import MainWindow

LARGE = (1920, 1080)
Take = Callable[[Studio], QImage]
#: Takes something into the hand; returns what puts it back.
Hold = Callable[[RaceDay], Callable[[], None]]


@contextmanager
def _race_day(
    studio: Studio, look: ThemeWish, size: tuple[int, int], measure: Measure
) -> Iterator[tuple[MainWindow, RaceDay]]:
    window = studio.demo_window(look, 100, size)
    assert window.workplace is not None
    desk = window.workplace
    desk.open_storey("raceday")
    desk.raceday.choose_measure(measure)
    settle()
    try:
        yield window, desk.raceday
    finally:
        window.close()
        theme().choose("light", 100)


def carried(
    hold: Hold,
    look: ThemeWish = "light",
    size: tuple[int, int] = SIZE,
    measure: Measure = "distance",
) -> Take:
    """Return what takes race day with something in the hand."""

    def take(studio: Studio) -> QImage:
        with _race_day(studio, look, size, measure) as (window, day):
            let_go = hold(day)
            assert window.document is not None
            if window.document.shown is window.document.before:
                raise RuntimeError("nothing was taken into the hand")
            image = taken(window, close=False)
            let_go()
            return image

    return take


def folded(
    legs: tuple[int, ...],
    look: ThemeWish = "light",
    size: tuple[int, int] = SIZE,
    measure: Measure = "distance",
) -> Take:
    """Return what takes race day with some legs folded away, counted from the start."""

    def take(studio: Studio) -> QImage:
        with _race_day(studio, look, size, measure) as (window, day):
            course = window.document.project.course if window.document is not None else None
            assert course is not None
            keys = [*(s.key for s in course.stations), ""]
            day.folds.choose({keys[k] for k in legs})
            return taken(window, close=False)

    return take


def chosen_station(look: ThemeWish = "light", size: tuple[int, int] = SIZE) -> Take:
    """Return what takes the sheet with a station selected."""

    def take(studio: Studio) -> QImage:
        with _race_day(studio, look, size, "distance") as (window, day):
            day.head.hand.choose(day.head.stations[3].key)
            return taken(window, close=False)

    return take


def station(day: RaceDay) -> Callable[[], None]:
    """Hold a station a little further along."""
    head = day.head
    start = _middle_of(head, head.stations[3].key)
    return held(head, start, start + QPoint(26, 0))


def stop(day: RaceDay) -> Callable[[], None]:
    """Hold a stop made longer."""
    head = day.head
    key = head.stations[3].key
    spot = next(s for s in head.stop_spots(head.body()) if s.station.key == key)
    start = QPoint(round(spot.right), round(head.bar_top) + 6)
    hover(head, start)
    return held(head, start, start + QPoint(34, 0))


def start(day: RaceDay) -> Callable[[], None]:
    """Hold the start, later."""
    at = _middle_of(day.head, START)
    return held(day.head, at, at + QPoint(60, 0))


def light(day: RaceDay) -> Callable[[], None]:
    """Hold the light, so that the start comes earlier."""
    middle: QWidget = day.light
    at = QPoint(round(day.light.body().center().x()), middle.height() // 2)
    return held(day.light, at, at + QPoint(70, 0))


def _middle_of(head: StationHead, key: str) -> QPoint:
    rect = next(rect for label, rect in head.placed(head.body()) if label.key == key)
    return rect.center().toPoint()


RACE_STATES: dict[str, Take] = {
    "held-station": carried(station),
    "held-station-dark-1920x1080": carried(station, "dark", LARGE),
    "held-stop": carried(stop),
    "held-stop-clock": carried(stop, "dark", LARGE, "clock"),
    "held-start": carried(start),
    "held-light-clock": carried(light, measure="clock"),
    "folded": folded((0, 2)),
    "folded-dark-1920x1080": folded((0, 2, 3), "dark", LARGE),
    "folded-clock": folded((1, 2), measure="clock"),
    "station": chosen_station(),
    "station-dark-1920x1080": chosen_station("dark", LARGE),
}

"""What the actions of the View and Help menus do."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Slot

from ultraplanner_gui.widgets.axis import Measure
from ultraplanner_gui.widgets.theme import ThemeWish, theme

if TYPE_CHECKING:
    from ultraplanner_gui.window.main_window import MainWindow


class ViewDeeds(QObject):
    """The slots that change what is seen and nothing in the plan."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window

    @Slot()
    def sheet(self) -> None:
        self._window.go("sheet")

    @Slot()
    def tables(self) -> None:
        self._window.go("tables")

    @Slot(str)
    def table_of(self, target: str) -> None:
        """Bring a table into view, the keys in it: *target* is "kind of its rows:column"."""
        kind, _, column = target.partition(":")
        place = self._window.workplace
        if place is not None:
            self._window.go("tables")
            place.tables.show_kind(kind)
            page = place.tables.page
            names = [c.name for c in page.spec.columns]
            if column in names:
                page.view.setCurrentIndex(page.table.index(0, names.index(column)))
            page.view.setFocus()

    @Slot()
    def cards(self) -> None:
        self._window.go("cards")

    @Slot()
    def both_storeys(self) -> None:
        self._storeys(True, True)

    @Slot()
    def buildup_alone(self) -> None:
        self._storeys(True, False)

    @Slot()
    def raceday_alone(self) -> None:
        self._storeys(False, True)

    @Slot()
    def by_distance(self) -> None:
        self._measure("distance")

    @Slot()
    def by_clock(self) -> None:
        self._measure("clock")

    @Slot()
    def fold_leg(self) -> None:
        """Fold the leg of what is chosen away, or unfold it."""
        if self._window.workplace is None:
            return
        day = self._window.workplace.raceday
        leg = day.leg_chosen()
        if leg is None:
            why = self.tr("Choose an aid station or a section, or point at the leg to fold.")
            self._window.say(why)
        else:
            day.folds.toggle(leg.key)

    @Slot()
    def unfold_legs(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.raceday.unfold_all()

    @Slot()
    def weeks_larger(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.grid.zoom_in()

    @Slot()
    def weeks_smaller(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.grid.zoom_out()

    @Slot()
    def all_weeks(self) -> None:
        if self._window.workplace is not None:
            self._window.workplace.buildup.grid.show_all()

    @Slot()
    def theme_system(self) -> None:
        self._look("system")

    @Slot()
    def theme_light(self) -> None:
        self._look("light")

    @Slot()
    def theme_dark(self) -> None:
        self._look("dark")

    @Slot()
    def text_larger(self) -> None:
        self._text(10)

    @Slot()
    def text_smaller(self) -> None:
        self._text(-10)

    @Slot()
    def units_metric(self) -> None:
        self._units("metric")

    @Slot()
    def units_imperial(self) -> None:
        self._units("imperial")

    @Slot()
    def help_here(self) -> None:
        self._window.help.explain_here()

    @Slot()
    def help_point(self) -> None:
        self._window.help.point()
        self._window.inform(self.tr("Click what is to be explained; Esc leaves it."))

    @Slot()
    def help_topics(self) -> None:
        self._window.help.list_all()

    @Slot()
    def shortcuts(self) -> None:
        from ultraplanner_gui.window import dialogs

        dialogs.open_keys(self._window, self._window.table)

    @Slot()
    def red_flags(self) -> None:
        from ultraplanner_gui.window import dialogs

        dialogs.open_red_flags(self._window)

    @Slot()
    def about(self) -> None:
        from ultraplanner_gui.window import dialogs

        dialogs.open_about(self._window)

    def _storeys(self, buildup: bool, raceday: bool) -> None:
        self._window.go("sheet")
        if self._window.workplace is not None:
            self._window.workplace.show_storeys(buildup, raceday)

    def _measure(self, measure: Measure) -> None:
        self._window.settings.race_axis = measure
        if self._window.workplace is not None:
            self._window.workplace.raceday.choose_measure(measure)

    def _look(self, wish: ThemeWish) -> None:
        settings = self._window.settings
        settings.theme = wish
        theme().choose(wish, settings.text_percent)

    def _text(self, by: int) -> None:
        settings = self._window.settings
        settings.text_percent = max(80, min(200, settings.text_percent + by))
        self._look(settings.theme)

    def _units(self, units: str) -> None:
        self._window.settings.units = units
        self._window.reopen_views()

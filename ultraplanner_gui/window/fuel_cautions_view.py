"""What to do when eating goes wrong, and the cautions this plan calls for."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QDialogButtonBox, QWidget

from ultraplanner_gui.engine.fuel_cautions import cautions_for
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.window.fuel_forms import FuelForm
from ultraplanner_gui.wording import cautions
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 560.0
HOT_C = 25.0


class FuelCautions(FuelForm):
    """Lines to read, and nothing to set."""

    def __init__(self, outlook: Outlook, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("When it goes wrong"), "fuel", WIDTH_PX, parent)
        self.box.addWidget(self.head(self.tr("When it goes wrong")))
        for text in cautions.FALLBACKS:
            line = self.line(_said(text), is_small=False)
            set_topic(line, "red flags")
            self.box.addWidget(line)
        fuel, target = outlook.fuel, outlook.target
        if fuel is not None and target is not None:
            weather = outlook.project.conditions.weather
            is_hot = weather is not None and weather.warmest_c >= HOT_C
            self.box.addWidget(self.head(self.tr("Cautions for this plan")))
            for text in cautions_for(fuel, target.finish_s, is_hot):
                line = self.line(_said(text), is_small=False)
                set_topic(line, "red flags")
                self.box.addWidget(line)
        self.box.addStretch(1)
        self.buttons.setStandardButtons(QDialogButtonBox.StandardButton.Close)
        self.box.addWidget(self.buttons)
        self.setMinimumWidth(self.width())


def _said(text: str) -> str:
    return QCoreApplication.translate("Caution", text)

"""The settings, made from their declarations: a name, a field, a sentence each; searched."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLocale, Qt, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QGridLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.language import SYSTEM
from ultraplanner_gui.desk.settings import Setting, Settings
from ultraplanner_gui.desk.settings_file import (
    Choice,
    asked_for,
    choose_settings,
    chosen_settings,
    read_settings,
    reset_settings,
    write_settings,
)
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.fields import align_text
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space

_WIDTH_PX = 520.0


class SettingsForm(QDialog):
    """Every choice takes effect at once; `apply` is called after each."""

    def __init__(
        self, settings: Settings, apply: Callable[[], None], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._settings, self._apply = settings, apply
        self._before: dict[str, Choice] = {}
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Settings"))
        set_topic(self, "settings")
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(self.tr("Search the settings"))
        self.search.setAccessibleName(self.tr("Search the settings"))
        set_topic(self.search, "settings")
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._on_searched)
        self.rows = [
            _SettingRow(name, s, settings, self._on_changed, self) for name, s in asked_for()
        ]
        grid = QGridLayout()
        grid.setHorizontalSpacing(Space.WIDE)
        grid.setVerticalSpacing(Space.APART)
        grid.setColumnStretch(1, 1)
        for number, row in enumerate(self.rows):
            grid.addWidget(row.label, number, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(row, number, 1)
        self.said = self._small("")
        file = settings.words().path(settings.store.fileName())
        place = self._small(self.tr("Kept in {0}").format(file))
        place.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.WIDE)
        box.addWidget(self.search)
        box.addLayout(grid)
        box.addStretch(1)
        for widget in (self.said, place, self._buttons()):
            box.addWidget(widget)
        at_least(self, theme().px(_WIDTH_PX), with_height=True)

    def _buttons(self) -> QDialogButtonBox:
        role = QDialogButtonBox.ButtonRole
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        made = [
            (buttons.addButton(text, role.ActionRole), do)
            for text, do in (
                (self.tr("&Usual values"), self._on_reset),
                (self.tr("&Take back"), self._on_taken_back),
                (self.tr("E&xport…"), self._on_export),
                (self.tr("&Import…"), self._on_import),
            )
        ]
        for button, do in made:
            button.clicked.connect(do)
        self.take_back = made[1][0]
        self.take_back.setEnabled(False)
        buttons.rejected.connect(self.reject)
        for each in buttons.findChildren(QPushButton):  # Enter in the search closes nothing
            each.setAutoDefault(False)
        return buttons

    def _small(self, text: str) -> QLabel:
        label = QLabel(text, self)
        label.setWordWrap(True)
        dress(label, Pt.LABEL, theme().colours.soft)
        return label

    @Slot(str)
    def _on_searched(self, query: str) -> None:
        found = [row for row in self.rows if row.holds(query)]
        for row in self.rows:
            for widget in (row, row.label):
                widget.setVisible(row in found)
        self._say("" if found else self.tr("No setting has this in its name or text."))

    def _on_changed(self) -> None:
        self._say("")
        self._apply()

    @Slot()
    def _on_reset(self) -> None:
        self._change(
            lambda: reset_settings(self._settings),
            self.tr("All settings are as a new user has them."),
        )

    @Slot()
    def _on_taken_back(self) -> None:
        before, self._before = self._before, {}
        self.take_back.setEnabled(False)
        choose_settings(self._settings, before)
        self._show_all(self.tr("All settings are as they were."))

    @Slot()
    def _on_export(self) -> None:
        dialog = self._dialog(self.tr("Export settings"))
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix("json")
        dialog.selectFile("ultraplanner-settings.json")
        dialog.fileSelected.connect(self.export_to)
        dialog.open()

    @Slot()
    def _on_import(self) -> None:
        dialog = self._dialog(self.tr("Import settings"))
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.fileSelected.connect(self.import_from)
        dialog.open()

    def _dialog(self, title: str) -> QFileDialog:
        kinds = self.tr("Settings (*.json)")
        dialog = QFileDialog(self, title, str(places.documents()), kinds)
        dialog.finished.connect(dialog.deleteLater)
        return dialog

    @Slot(str)
    def export_to(self, name: str) -> None:
        """Write what is chosen to the file *name*, and say so or why not."""
        try:
            write_settings(self._settings, Path(name))
        except PlanError as error:
            self._say(self._settings.words().say(error.message), is_wrong=True)
            return
        self._say(self.tr("Written: {0}").format(Path(name).name))

    @Slot(str)
    def import_from(self, name: str) -> None:
        """Choose what the file *name* says, and say what became of it."""
        unknown: list[str] = []
        try:
            self._change(lambda: unknown.extend(read_settings(self._settings, Path(name))), "")
        except PlanError as error:
            self._say(self._settings.words().say(error.message), is_wrong=True)
            return
        said = [self.tr("Taken from {0}.").format(Path(name).name)]
        if unknown:
            text = self.tr("Passed over, unknown here: {0}")
            said.append(text.format(", ".join(unknown)))
        self._say(" ".join(said))

    def _change(self, do: Callable[[], None], said: str) -> None:
        """Let *do* choose anew, in a way that can be taken back."""
        before = chosen_settings(self._settings)
        do()
        if before != chosen_settings(self._settings):
            self._before = before
            self.take_back.setEnabled(True)
        self._show_all(said)

    def _show_all(self, said: str) -> None:
        for row in self.rows:
            row.show_value()
        self._apply()
        self._say(said)

    def _say(self, text: str, is_wrong: bool = False) -> None:
        colours = theme().colours
        dress(self.said, Pt.LABEL, colours.clay if is_wrong else colours.ink)
        self.said.setText(text)


class _SettingRow(QWidget):
    """One setting: its field, and its sentence under it."""

    def __init__(
        self,
        attribute: str,
        setting: Setting[Choice],
        settings: Settings,
        changed: Callable[[], None],
        parent: QWidget,
    ) -> None:
        super().__init__(parent)
        self._attribute, self._setting = attribute, setting
        self._settings, self._changed = settings, changed
        self._is_shown = False
        self.field = self._made()
        self.field.setAccessibleName(_tr(setting.name))
        self.field.setAccessibleDescription(_tr(setting.sentence))
        set_topic(self.field, "settings")
        self.label = QLabel(_tr(setting.name), parent)
        self.label.setBuddy(self.field)
        self.label.setMinimumHeight(self.field.sizeHint().height())
        sentence = QLabel(_tr(setting.sentence), self)
        sentence.setWordWrap(True)
        dress(sentence, Pt.LABEL, theme().colours.soft)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(Space.HAIR)
        box.addWidget(self.field)
        box.addWidget(sentence)
        self.show_value()

    def holds(self, query: str) -> bool:
        """Whether every word of *query* stands in its name, its sentence or its choices."""
        setting = self._setting
        texts = (setting.name, setting.sentence, *setting.names)
        text = " ".join(map(_tr, texts)).casefold()
        return all(word in text for word in query.casefold().split())

    def show_value(self) -> None:
        """Show what is chosen."""
        self._is_shown = True
        value, field = getattr(self._settings, self._attribute), self.field
        if isinstance(field, QComboBox):
            field.setCurrentIndex(max(0, field.findData(value)))
        elif isinstance(field, QSpinBox):
            field.setValue(value)
        elif isinstance(field, QCheckBox):
            field.setChecked(value)
        self._is_shown = False

    def _made(self) -> QWidget:
        setting, default = self._setting, self._setting.default
        if isinstance(default, bool):
            box = QCheckBox(self.tr("on"), self)
            box.toggled.connect(self._keep)
            return box
        if isinstance(default, int):
            number = QSpinBox(self)
            number.setRange(setting.low, setting.high)
            number.setSingleStep(10)
            number.setSuffix(setting.unit)
            align_text(number)
            number.valueChanged.connect(self._keep)
            return number
        choice = QComboBox(self)
        choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        choice.setMinimumContentsLength(24)
        names = zip(setting.names, setting.among, strict=True) if setting.among else _locales()
        for text, value in names:
            choice.addItem(_tr(text), value)
        choice.currentIndexChanged.connect(self._on_chosen)
        return choice

    @Slot(int)
    def _on_chosen(self, index: int) -> None:
        if isinstance(self.field, QComboBox):
            self._keep(self.field.itemData(index))

    def _keep(self, value: object) -> None:
        if self._is_shown:
            return
        setattr(self._settings, self._attribute, value)
        self._changed()


@lru_cache(maxsize=1)
def _locales() -> tuple[tuple[str, str], ...]:
    """Return the locales there are, each by its own name, that of the system first."""
    every = QLocale.matchingLocales(
        QLocale.Language.AnyLanguage, QLocale.Script.AnyScript, QLocale.Country.AnyCountry
    )
    named = {
        locale.name(): f"{locale.nativeLanguageName()} – {locale.nativeTerritoryName()}"
        for locale in every
        if locale.nativeLanguageName() and locale.territory() != QLocale.Country.AnyCountry
    }
    rows = sorted(((text, name) for name, text in named.items()), key=lambda row: row[0].casefold())
    system = next(s for _, s in asked_for() if s.key == "units").names[0]
    return ((system, SYSTEM), *rows)


def _tr(text: str) -> str:
    return QCoreApplication.translate("Settings", text) if text else ""

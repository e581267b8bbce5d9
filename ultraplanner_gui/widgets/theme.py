"""Tokens of colour, type and measure: each named once, for a light and a dark screen."""

from __future__ import annotations

from typing import Literal

import shiboken6
from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontDatabase, QFontMetricsF, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication, QLabel

from ultraplanner_gui.desk import resources
from ultraplanner_gui.plan.value import Value

FONT_FAMILY = "B612"
FONT_FILES = ("fonts/B612-Regular.otf", "fonts/B612-Bold.otf")

RADIUS_PX = 4
#: So many widths of texts are kept at a time.
MOST_WIDTHS = 4096

ThemeWish = Literal["system", "light", "dark"]


class Colours(Value, frozen=True):
    """One meaning each: teal distance, ochre climb, sky descent, plum fuel, clay race and
    warnings, moss good margin, indigo night. `pale_*` is the same hue with less ink.
    """

    paper: str
    panel: str
    lane: str
    tile: str
    ink: str
    soft: str
    line: str
    strong_line: str
    teal: str
    pale_teal: str
    ochre: str
    pale_ochre: str
    sky: str
    pale_sky: str
    plum: str
    pale_plum: str
    clay: str
    pale_clay: str
    moss: str
    pale_moss: str
    indigo: str
    twilight: str
    night: str
    on_night: str
    daylight: str
    stone: str
    on_colour: str

    def __getitem__(self, name: str) -> QColor:
        return QColor(getattr(self, name))


LIGHT = Colours(
    paper="#faf8f3",
    panel="#ffffff",
    lane="#f2ede2",
    tile="#ffffff",
    ink="#1d2831",
    soft="#5d6770",
    line="#e0d9cb",
    strong_line="#b9b1a1",
    teal="#1a606d",
    pale_teal="#b9d6d4",
    ochre="#926204",
    pale_ochre="#e6cf9e",
    sky="#1b71a6",
    pale_sky="#b7d3e8",
    plum="#80315d",
    pale_plum="#dcb9d0",
    clay="#ae3c2a",
    pale_clay="#efc7bd",
    moss="#526f30",
    pale_moss="#ccd6b4",
    indigo="#323a67",
    twilight="#97a0cc",
    night="#343c68",
    on_night="#ffffff",
    daylight="#f3e3b3",
    stone="#d9d2c3",
    on_colour="#ffffff",
)

DARK = Colours(
    paper="#171b1f",
    panel="#20262b",
    lane="#232a2f",
    tile="#2b3339",
    ink="#ece8df",
    soft="#a5adb3",
    line="#353d43",
    strong_line="#59636b",
    teal="#45a8ac",
    pale_teal="#27535a",
    ochre="#daa441",
    pale_ochre="#5a471f",
    sky="#82bced",
    pale_sky="#274a66",
    plum="#ec91c4",
    pale_plum="#59304c",
    clay="#df8073",
    pale_clay="#673329",
    moss="#a7c371",
    pale_moss="#3f4d29",
    indigo="#8890d8",
    twilight="#434b7c",
    night="#2a3060",
    on_night="#ece8df",
    daylight="#6b5f38",
    stone="#454c50",
    on_colour="#14181b",
)


def register_fonts() -> None:
    """Make the shipped font family known to Qt; raises RuntimeError if a file is unusable."""
    if FONT_FAMILY in QFontDatabase.families():
        return
    for name in FONT_FILES:
        if QFontDatabase.addApplicationFont(str(resources.path(name))) < 0:
            raise RuntimeError(f"cannot load the font {name}")


class Theme(QObject):
    """The look in force: colours, fonts and measures at the chosen text size."""

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._wish: ThemeWish = "system"
        self._percent = 100
        self._fonts: dict[tuple[float, bool], QFont] = {}
        self._metrics: dict[tuple[float, bool], QFontMetricsF] = {}
        self._widths: dict[tuple[str, float, bool], float] = {}
        self.colours = LIGHT

    def choose(self, wish: ThemeWish, percent: int) -> None:
        """Take *wish* for light or dark and *percent* of the usual text size (80 to 200)."""
        self._wish = wish
        self._percent = max(80, min(200, percent))
        dark = wish == "dark" or (
            wish == "system" and QGuiApplication.styleHints().colorScheme() is Qt.ColorScheme.Dark
        )
        self.colours = DARK if dark else LIGHT
        self._fonts.clear()
        self._metrics.clear()
        self._widths.clear()
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.setFont(self.font())
            app.setPalette(self._palette())
            app.setStyleSheet(self._style_sheet())
        self.changed.emit()

    @property
    def is_dark(self) -> bool:
        """Whether the dark colours are in force."""
        return self.colours is DARK

    @property
    def scale(self) -> float:
        """Text size against the usual one."""
        return self._percent / 100.0

    def px(self, pixels: float) -> float:
        """Return a measure in device-independent pixels at the chosen text size."""
        return pixels * self.scale

    def font(self, size_pt: float = 8.5, bold: bool = False) -> QFont:
        """Return the family at *size_pt* points times the text size."""
        key = (size_pt, bold)
        font = self._fonts.get(key)
        if font is None:
            font = QFont(FONT_FAMILY)
            font.setPointSizeF(size_pt * self.scale)
            font.setBold(bold)
            self._fonts[key] = font
        return font

    def metrics(self, size_pt: float = 8.5, bold: bool = False) -> QFontMetricsF:
        """Return the metrics of `font` of the same arguments."""
        key = (size_pt, bold)
        metrics = self._metrics.get(key)
        if metrics is None:
            metrics = QFontMetricsF(self.font(size_pt, bold))
            self._metrics[key] = metrics
        return metrics

    def width(self, text: str, size_pt: float = 8.5, bold: bool = False) -> float:
        """Return how wide *text* is set in `font` of the same arguments; kept, as it is dear."""
        key = (text, size_pt, bold)
        wide = self._widths.get(key)
        if wide is None:
            if len(self._widths) >= MOST_WIDTHS:
                self._widths.clear()
            wide = self._widths[key] = self.metrics(size_pt, bold).horizontalAdvance(text)
        return wide

    def _palette(self) -> QPalette:
        c, palette = self.colours, QPalette()
        role = QPalette.ColorRole
        for name, colour in (
            (role.Window, c.paper),
            (role.Base, c.panel),
            (role.AlternateBase, c.lane),
            (role.Button, c.panel),
            (role.ToolTipBase, c.panel),
            (role.WindowText, c.ink),
            (role.Text, c.ink),
            (role.ButtonText, c.ink),
            (role.ToolTipText, c.ink),
            (role.PlaceholderText, c.soft),
            (role.Highlight, c.teal),
            (role.HighlightedText, c.on_colour),
            (role.Link, c.teal),
            (role.Light, c.panel),
            (role.Mid, c.strong_line),
            (role.Dark, c.strong_line),
        ):
            palette.setColor(name, QColor(colour))
        for name in (role.WindowText, role.Text, role.ButtonText):
            palette.setColor(QPalette.ColorGroup.Disabled, name, QColor(c.strong_line))
        return palette

    def _style_sheet(self) -> str:
        return "".join(
            (self._button_rules(), self._field_rules(), self._menu_rules(), self._view_rules())
        )

    def _button_rules(self) -> str:
        c, pad = self.colours, round(self.px(4))
        return f"""
        QDialogButtonBox {{ dialogbuttonbox-buttons-have-icons: 0; }}
        QToolTip {{
            background: {c.panel}; color: {c.ink};
            border: 1px solid {c.strong_line}; padding: 4px; }}
        QPushButton, QToolButton {{
            background: {c.panel}; color: {c.ink};
            border: 1px solid {c.strong_line}; border-radius: {RADIUS_PX}px;
            padding: {pad}px {2 * pad}px; }}
        QToolButton {{ border-color: transparent; background: transparent; }}
        QPushButton:flat {{ border-color: transparent; background: transparent; }}
        QPushButton:hover, QToolButton:hover {{
            background: {c.lane}; border-color: {c.strong_line}; }}
        QPushButton:focus, QToolButton:focus {{
            border: 2px solid {c.teal}; padding: {pad - 1}px {2 * pad - 1}px; }}
        QPushButton:default {{
            background: {c.teal}; color: {c.on_colour}; border-color: {c.teal}; }}
        QPushButton:default:focus {{ border-color: {c.ink}; }}
        QPushButton:default:disabled {{ background: {c.lane}; color: {c.strong_line}; }}
        QPushButton:disabled, QToolButton:disabled {{
            color: {c.strong_line}; border-color: {c.line}; }}
        QPushButton:flat:disabled {{ border-color: transparent; }}
        QPushButton:checked, QToolButton:checked {{
            background: {c.pale_teal}; color: {c.ink}; }}
        """

    def _field_rules(self) -> str:
        c, pad = self.colours, round(self.px(4))
        return f"""
        QLineEdit, QPlainTextEdit, QAbstractSpinBox, QComboBox {{
            background: {c.panel}; color: {c.ink};
            border: 1px solid {c.strong_line}; border-radius: {RADIUS_PX}px;
            padding: {pad - 1}px {pad}px;
            selection-background-color: {c.teal}; selection-color: {c.on_colour}; }}
        QLineEdit:focus, QPlainTextEdit:focus, QAbstractSpinBox:focus, QComboBox:focus {{
            border-color: {c.teal}; }}
        QAbstractSpinBox {{ padding: {pad - 3}px {pad}px {pad - 2}px {pad}px; }}
        QAbstractSpinBox QLineEdit {{ border: 0; background: transparent; }}
        QComboBox:!editable {{ padding-left: {pad + 2}px; }}
        QLineEdit[guessed="true"], QAbstractSpinBox[guessed="true"], QComboBox[guessed="true"] {{
            color: {c.soft}; }}
        QLineEdit:disabled, QAbstractSpinBox:disabled, QComboBox:disabled {{
            color: {c.soft}; background: {c.lane}; border-color: {c.line}; }}
        QComboBox::drop-down, QDateEdit::drop-down {{ border: 0; width: {4 * pad}px; }}
        QComboBox::down-arrow, QDateEdit::down-arrow {{ width: 0; height: 0;
            border-left: {pad}px solid {c.panel}; border-right: {pad}px solid {c.panel};
            border-top: {pad + 1}px solid {c.soft}; }}
        QSpinBox::up-button, QDoubleSpinBox::up-button,
        QTimeEdit::up-button {{ subcontrol-origin: border;
            subcontrol-position: top right; border: 0; width: {4 * pad}px; }}
        QSpinBox::down-button, QDoubleSpinBox::down-button,
        QTimeEdit::down-button {{ subcontrol-origin: border;
            subcontrol-position: bottom right; border: 0; width: {4 * pad}px; }}
        QSpinBox::up-arrow, QDoubleSpinBox::up-arrow,
        QTimeEdit::up-arrow {{ width: 0; height: 0;
            border-left: {pad - 1}px solid {c.panel}; border-right: {pad - 1}px solid {c.panel};
            border-bottom: {pad}px solid {c.soft}; }}
        QSpinBox::down-arrow, QDoubleSpinBox::down-arrow,
        QTimeEdit::down-arrow {{ width: 0; height: 0;
            border-left: {pad - 1}px solid {c.panel}; border-right: {pad - 1}px solid {c.panel};
            border-top: {pad}px solid {c.soft}; }}
        QComboBox::down-arrow:disabled, QDateEdit::down-arrow:disabled,
        QSpinBox::up-arrow:disabled, QDoubleSpinBox::up-arrow:disabled,
        QTimeEdit::up-arrow:disabled, QSpinBox::down-arrow:disabled,
        QDoubleSpinBox::down-arrow:disabled, QTimeEdit::down-arrow:disabled {{
            border-left-color: {c.lane}; border-right-color: {c.lane}; }}
        QCheckBox::indicator:unchecked, QGroupBox::indicator:unchecked,
        QListWidget::indicator:unchecked {{
            border: 1px solid {c.strong_line}; border-radius: 2px; background: {c.panel};
            width: {3 * pad}px; height: {3 * pad}px; }}
        QRadioButton::indicator {{
            width: {3 * pad}px; height: {3 * pad}px; border-radius: {3 * pad // 2 + 1}px;
            border: 1px solid {c.soft}; background: {c.panel}; }}
        QRadioButton::indicator:checked {{
            border: 1px solid {c.teal}; background: qradialgradient(
            cx: 0.5, cy: 0.5, radius: 0.5, fx: 0.5, fy: 0.5,
            stop: 0 {c.teal}, stop: 0.55 {c.teal}, stop: 0.65 {c.panel}, stop: 1 {c.panel}); }}
        QComboBox QAbstractItemView {{
            background: {c.panel}; color: {c.ink}; border: 1px solid {c.strong_line}; }}
        """

    def _menu_rules(self) -> str:
        c, pad = self.colours, round(self.px(4))
        return f"""
        QMenuBar {{ background: {c.panel}; color: {c.ink}; }}
        QMenuBar::item:selected, QMenu::item:selected {{
            background: {c.pale_teal}; color: {c.ink}; }}
        QMenu {{
            background: {c.panel}; color: {c.ink};
            border: 1px solid {c.strong_line}; padding: 4px; }}
        QMenu::item {{ padding: {pad}px {4 * pad}px; }}
        QMenu::item:disabled {{ color: {c.strong_line}; }}
        QMenu::separator {{ height: 1px; background: {c.line}; margin: 4px; }}
        """

    def _view_rules(self) -> str:
        c, pad = self.colours, round(self.px(4))
        return f"""
        QTableView {{
            background: {c.panel}; color: {c.ink}; gridline-color: {c.line};
            border: 1px solid {c.line}; alternate-background-color: {c.lane};
            selection-background-color: {c.pale_teal}; selection-color: {c.ink}; }}
        QHeaderView::section {{
            background: {c.lane}; color: {c.soft}; border: 0;
            border-bottom: 1px solid {c.strong_line}; padding: {pad}px; }}
        QTableCornerButton::section {{ background: {c.lane}; border: 0; }}
        QTabBar::tab {{
            background: transparent; color: {c.soft}; padding: {pad + 1}px {3 * pad}px;
            border-bottom: 2px solid transparent; }}
        QTabBar::tab:selected {{ color: {c.ink}; border-bottom: 2px solid {c.teal}; }}
        QTabBar::tab:focus {{ border-bottom: 2px solid {c.ink}; }}
        QTabBar::scroller {{ width: {6 * pad}px; }}
        QTabBar QToolButton {{ background: {c.paper}; border: 0; padding: 0; }}
        QTabWidget::pane {{ border: 0; }}
        QToolBar {{ background: {c.paper}; border: 0; padding: 2px 10px; spacing: 4px; }}
        QStatusBar {{ background: {c.paper}; }}
        QStatusBar::item {{ border: 0; }}
        QScrollArea {{ border: 0; background: transparent; }}
        QSplitter::handle {{ background: {c.line}; }}
        QSplitter::handle:hover {{ background: {c.teal}; }}
        QScrollBar {{ background: transparent; border: 0; width: 10px; height: 10px; }}
        QScrollBar::handle {{
            background: {c.strong_line}; border-radius: 4px; margin: 1px;
            min-height: 24px; min-width: 24px; }}
        QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
        QProgressBar {{
            background: {c.lane}; color: {c.ink};
            border: 1px solid {c.line}; border-radius: {RADIUS_PX}px; text-align: center; }}
        QProgressBar::chunk {{ background: {c.pale_teal}; }}
        """


_made: list[Theme] = []


def theme() -> Theme:
    """Return the theme of the running application, made at the first call."""
    # Asked for hundreds of times in every repaint, so the search for it is done once.
    if _made and shiboken6.isValid(_made[0]):
        return _made[0]
    app = QApplication.instance()
    if app is None:
        raise RuntimeError("there is no application yet")
    register_fonts()
    made = Theme(app)
    _made[:] = [made]
    made.choose("system", 100)
    return made


def dress(label: QLabel, size_pt: float, colour: str, bold: bool = False) -> None:
    """Set size, weight and colour of a label; its own style sheet, so that no other wins."""
    points = size_pt * theme().scale
    weight = "bold" if bold else "normal"
    sheet = f"color: {colour}; font-size: {points:.2f}pt; font-weight: {weight};"
    # Setting the same sheet again would polish and paint the label anew.
    if label.styleSheet() != sheet:
        label.setStyleSheet(sheet)

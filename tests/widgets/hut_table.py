"""A small table of huts, and hands on it."""

from typing import ClassVar

from hypothesis import strategies as st
from msgspec.structs import replace
from PySide6.QtCore import QItemSelectionModel, Qt

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table import TableModel
from ultraplanner_gui.widgets.table_column import Column
from ultraplanner_gui.wording.words import Words

Key = Qt.Key
SOME_KEYS = st.lists(st.sampled_from("abcdefgh"), unique=True)
Current = QItemSelectionModel.SelectionFlag.ClearAndSelect


class Hut(Value, frozen=True):
    key: str
    name: str
    height_m: float | None = None
    is_open: bool = False
    roof: str = "slate"


class ChangeHut(Value, frozen=True):
    label: ClassVar[str] = "Change hut"
    hut: Hut
    gesture: int = 0


def _height(hut, text, words):
    if not text:
        return ChangeHut(replace(hut, height_m=None))
    value = words.parse_height(text)
    if value is None:
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "{0} is no height."), text)
    return ChangeHut(replace(hut, height_m=value))


COLUMNS = (
    Column(
        "Hut",
        text=lambda hut, words: hut.name,
        parse=lambda hut, text, words: ChangeHut(replace(hut, name=text)),
    ),
    Column(
        "Height",
        unit=lambda words: words.height_unit,
        text=lambda hut, words: words.height_bare(hut.height_m),
        value=lambda hut: hut.height_m,
        parse=_height,
        can_edit=lambda hut: hut.key != "fixed",
        warns=lambda hut: (hut.height_m or 0.0) < 0.0,
        is_figure=True,
    ),
    Column(
        "Open",
        text=lambda hut, words: "",
        is_checked=lambda hut: hut.is_open,
        parse=lambda hut, text, words: ChangeHut(replace(hut, is_open=text == "yes")),
    ),
    Column(
        "Roof",
        text=lambda hut, words: hut.roof,
        parse=lambda hut, text, words: ChangeHut(replace(hut, roof=text)),
        choices=lambda hut, words: ("slate", "turf", "tin"),
    ),
    Column("Letters", text=lambda hut, words: str(len(hut.name)), value=lambda hut: len(hut.name)),
)
HUTS = (
    Hut("b", "Col Hut", 1500.0),
    Hut("a", "Ash Barn", None, True, "turf"),
    Hut("c", "Weir", 310.0),
)


class Owner:
    """Holds the huts and takes edits, as a document does."""

    def __init__(self, huts=HUTS):
        self.huts, self.edits = huts, []
        self.model = TableModel(COLUMNS, Words, self.perform)
        self.model.show_rows(huts)

    def perform(self, edit):
        if edit.hut.name == "forbidden":
            return False
        self.edits.append(edit)
        self.huts = tuple(edit.hut if h.key == edit.hut.key else h for h in self.huts)
        self.model.show_rows(self.huts)
        return True


def texts(model, column=0):
    return [model.text(row, column) for row in range(model.rowCount())]


def put(view, row, column):
    view.setCurrentIndex(view.model().index(row, column))


def editor(view):
    return view.indexWidget(view.currentIndex())


def type_into(qtbot, view, row, column, text, end=Key.Key_Return):
    put(view, row, column)
    qtbot.keyClick(view, Key.Key_F2)
    field = editor(view)
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, end)
    qtbot.wait(1)

"""A field over a tile: what is typed changes the session, "12", "1 h 30" or "long 28"."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace
from PySide6.QtCore import QRectF, Qt, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt
from ultraplanner_gui.wording.words import Words

LEAST_PX = 76.0
#: As `Words.duration` writes them.
MINUTES = "min"
AT_RIGHT = Align.AlignRight | Align.AlignVCenter


def retyped(session: Session, text: str, words: Words) -> Session | None:
    """Return *session* changed as *text* says: a kind, a distance or a time; None if unreadable.

    The other figures follow in proportion. A bare number is a distance where the session has one,
    else minutes.
    """
    kind, figure = _split(text.strip(), session.kind)
    if kind is None:
        return None
    changed = replace(session, kind=kind)
    if not figure:
        return changed
    has_metres = kind.is_run and (session.distance_m > 0.0 or not session.kind.is_run)
    is_time = any(sign in figure for sign in (":", "h", "'")) or "min" in figure
    metres = None if is_time or not has_metres else words.parse_distance(figure)
    if metres:
        if session.distance_m <= 0.0:
            return replace(changed, distance_m=metres)
        return _scaled(changed, metres / session.distance_m)
    seconds = words.parse_duration(figure)
    if not seconds:
        return None
    if session.duration_s <= 0.0:
        return replace(changed, duration_s=seconds)
    return _scaled(changed, seconds / session.duration_s)


def as_typed(session: Session, words: Words) -> str:
    """Return *session* as it would be typed: its kind and its figure."""
    has_metres = session.kind.is_run and session.distance_m > 0.0
    words = words.plain()
    exact = words.distance_bare(session.distance_m, 1)
    return f"{kinds.say(kinds.FULL[session.kind])} " + (
        exact if has_metres else words.duration(session.duration_s)
    )


def _split(text: str, kind: Kind) -> tuple[Kind | None, str]:
    """Part a kind from the figure after it; no kind stands for *kind*."""
    figure = text.lstrip("".join({c for c in text if not c.isdigit()}))
    name = text[: len(text) - len(figure)].strip().casefold()
    if not name:
        return kind, figure
    for known in Kind:
        if known is Kind.RACE:
            continue
        called = (kinds.say(kinds.FULL[known]), kinds.say(kinds.SHORT[known]))
        if any(word.casefold().startswith(name) for word in called):
            return known, figure
    return None, figure


def _scaled(session: Session, share: float) -> Session:
    return replace(
        session,
        distance_m=session.distance_m * share,
        duration_s=session.duration_s * share,
        climb_m=session.climb_m * share,
        drop_m=session.drop_m * share,
    )


def bare_unit(session: Session, text: str, words: Words) -> str:
    """Return what a number typed counts as, empty where the text says it or has none."""
    kind, figure = _split(text.strip(), session.kind)
    if kind is None or not figure or not figure.strip().replace(".", "").replace(",", "").isdigit():
        return ""
    has_metres = kind.is_run and (session.distance_m > 0.0 or not session.kind.is_run)
    return words.distance_unit if has_metres else MINUTES


class TypeIn(QLineEdit):
    """The field. Enter keeps, Esc and leaving it do not; what cannot be read stays in it."""

    def __init__(
        self,
        parent: QWidget,
        session: Session,
        text: str,
        words: Words,
        keep: Callable[[Session], bool],
    ) -> None:
        from ultraplanner_gui.widgets.fields import describe

        super().__init__(text or as_typed(session, words), parent)
        self._is_new = bool(text)
        self._session, self._words, self._keep = session, words, keep
        self._is_done = False
        name = kinds.capital(kinds.say(kinds.FULL[session.kind]))
        self.setAccessibleName(self.tr("{0}, new figure").format(name))
        describe(self, self.tr("A distance, a time such as 1 h 30, or a kind and one of them"))
        self.setFont(theme().font(Pt.TEXT, bold=True))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.returnPressed.connect(self._on_kept)

    def open_over(self, rect: QRectF) -> None:
        """Show it over a tile, no narrower than a figure takes."""
        look, parent = theme(), self.parentWidget()
        assert parent is not None
        width = max(rect.width(), look.px(LEAST_PX))
        height = max(rect.height(), self.sizeHint().height())
        left = min(rect.left(), parent.width() - width)
        top = min(rect.center().y() - height / 2, parent.height() - height)
        self.setGeometry(round(max(0.0, left)), round(max(0.0, top)), round(width), round(height))
        self.show()
        self.setFocus()
        if self._is_new:
            self.end(False)
        else:
            self.selectAll()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Say after a bare number what it counts."""
        super().paintEvent(event)
        look, unit = theme(), bare_unit(self._session, self.text(), self._words)
        room = QRectF(self.rect()).adjusted(0.0, 0.0, -look.px(6.0), 0.0)
        used = look.px(14.0) + self.fontMetrics().horizontalAdvance(self.text())
        if unit and used + look.width(unit, Pt.LABEL) <= room.width():
            with QPainter(self) as painter:
                draw_text(painter, room, unit, look.colours["soft"], look.font(Pt.LABEL), AT_RIGHT)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._leave()
        else:
            super().keyPressEvent(event)
            # Enter is done with: to the grid it would mean to pick the session up.
            event.accept()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() is not Qt.FocusReason.ActiveWindowFocusReason:
            self._leave()

    @Slot()
    def _on_kept(self) -> None:
        if self.text() == as_typed(self._session, self._words):
            self._leave()
            return
        changed = retyped(self._session, self.text(), self._words)
        if changed is None or not self._keep(changed):
            self.selectAll()
            return
        self._leave()

    def _leave(self) -> None:
        if self._is_done:
            return
        self._is_done = True
        parent = self.parentWidget()
        had_focus = self.hasFocus()
        self.close()
        if had_focus and parent is not None:
            parent.setFocus(Qt.FocusReason.OtherFocusReason)

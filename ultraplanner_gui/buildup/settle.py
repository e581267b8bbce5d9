"""A tile put down settles into its place, for about a tenth of a second."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEasingCurve, QObject, QRectF, QVariantAnimation, Slot

from ultraplanner_gui.buildup.gridmarks import Mark
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.widgets.motion import SETTLE_MS, moves


class Settling(QObject):
    """The way of one tile from the hand to its cell; *refresh* is called at each step of it."""

    def __init__(self, refresh: Callable[[], None], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._refresh = refresh
        self._session: Session | None = None
        self._way = QVariantAnimation(self)
        self._way.setDuration(SETTLE_MS)
        self._way.setEasingCurve(QEasingCurve.Type.OutCubic)
        self._way.valueChanged.connect(self._on_step)
        self._way.finished.connect(self._on_step)

    @property
    def key(self) -> str:
        """The key of the session that settles; empty for none."""
        is_on = self._way.state() is QVariantAnimation.State.Running
        return self._session.key if is_on and self._session is not None else ""

    def start(self, session: Session, hand: QRectF, cell: QRectF) -> None:
        """Let *session* settle from *hand* to *cell*, if things may move."""
        self._way.stop()
        if not moves():
            return
        self._session = session
        self._way.setStartValue(hand)
        self._way.setEndValue(cell)
        self._way.start()

    def stop(self) -> None:
        """Be there at once."""
        self._way.stop()

    def mark(self) -> Mark | None:
        """Return the tile on its way; None where nothing settles."""
        if not self.key:
            return None
        return Mark("hand", QRectF(self._way.currentValue()), session=self._session)

    @Slot()
    def _on_step(self) -> None:
        self._refresh()

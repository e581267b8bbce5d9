"""Sessions cut or copied: for the build-up as they are, for a spreadsheet as rows of text."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QMimeData
from PySide6.QtGui import QGuiApplication

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.plan.block import Block, Session
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.codec import encode
from ultraplanner_gui.store.decoding import decode
from ultraplanner_gui.wording.words import Words

FORMAT = "application/x-ultraplanner-sessions"


def put(sessions: Sequence[Session], words: Words) -> None:
    """Put *sessions* on the clipboard."""
    mime = QMimeData()
    mime.setData(FORMAT, encode(Block, Block(tuple(sessions)), "clipboard"))
    mime.setText("\n".join(_row(s, words) for s in sessions))
    QGuiApplication.clipboard().setMimeData(mime)


def taken() -> tuple[Session, ...]:
    """Return the sessions on the clipboard; none if something else is on it."""
    mime = QGuiApplication.clipboard().mimeData()
    if mime is None or not mime.hasFormat(FORMAT):
        return ()
    try:
        return decode(Block, bytes(mime.data(FORMAT).data()), "clipboard").sessions
    except StoreError:
        return ()


def _row(session: Session, words: Words) -> str:
    return "\t".join(
        (
            session.day.isoformat(),
            kinds.say(kinds.FULL[session.kind]),
            words.distance_bare(session.distance_m, 1),
            words.duration(session.duration_s),
            words.height_bare(session.climb_m),
            words.height_bare(session.drop_m),
        )
    )

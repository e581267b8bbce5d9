"""What the hand does over the day grid: lifts, copies, lengthens, boxes in and puts down."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt

from ultraplanner_gui.buildup.carry import LengthCarry, NewCarry, SessionCarry
from ultraplanner_gui.buildup.cells import Tile
from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.buildup.edgescroll import EdgeScroll
from ultraplanner_gui.buildup.gridpicture import GridPicture
from ultraplanner_gui.buildup.lengths import snapped, step_of
from ultraplanner_gui.buildup.nearest_day import seeker_of
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.block_moves import SwapSessions, length_of
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis

#: So far from its right edge a tile is taken by that edge.
EDGE_PX = 5.0
#: So far the pointer goes at least for one step of length.
STEP_PX = 4.0


class GridHand(GridPicture):
    """The day grid with a hand over it; subclasses turn events into what the hand does."""

    _document: Document
    _deeds: SessionDeeds
    _edge: EdgeScroll
    _axis: WeekAxis
    _selection: Selection
    _press: QPointF | None

    # Taking

    def take_new(self, session: Session) -> bool:
        """Take *session*, which is in no build-up yet, into the hand; the pointer has it."""
        if self._carry is not None or self.is_far:
            return False
        self._carry, self._by_mouse = NewCarry(self._document, session), True
        self._grab = QPointF(self._cells.cell_size.width() / 2, self._cells.row_height / 2)
        self._describe()
        self._refresh()
        return True

    def point_new(self, at: QPointF) -> None:
        """Hold what was taken with `take_new` over the place *at*."""
        self._pointer = at
        self._hold_over_pointer()

    def drop_new(self, at: QPointF) -> None:
        """Put down what was taken with `take_new` at the place *at*, or leave it out there."""
        self.point_new(at)
        if self._carry is None:
            return
        if self._carry.is_home:
            self._put_back()
        else:
            known = {s.key for s in self._document.project.block.sessions}
            self._put_down()
            self._choose_new(known)

    def _pick_up(self, by_mouse: bool, copies: bool = False) -> None:
        session = self._deeds.chosen()
        self._press = None
        if session is None:
            return
        others = self._movable_others(session) if not copies else self._selection.keys
        carry = SessionCarry(self._document, session, others, copies)
        if not carry.lift():
            self._point_at(self._pointer)
            return
        self._settling.stop()
        self._carry, self._by_mouse = carry, by_mouse
        if by_mouse:
            self.setCursor(self._carry_shape())
        self._describe()
        self._refresh()

    def _movable_others(self, session: Session) -> tuple[str, ...]:
        """Return the keys of what else is selected and may move with *session*."""
        keys = set(self._selection.keys) - {session.key}
        sessions = self._document.project.block.sessions
        return tuple(s.key for s in sessions if s.key in keys and is_movable(s))

    def _take_edge(self, session: Session, at: QPointF, edge: QRectF) -> None:
        length = LengthCarry(self._document, session)
        self._press, self._pointer = None, at
        self._grab = QPointF(edge.right() - at.x(), 0.0)
        if length.lift():
            self._settling.stop()
            self._length = length
            self.setCursor(Qt.CursorShape.SizeHorCursor)
        self._describe()
        self._refresh()

    def edge_at(self, at: QPointF) -> Tile | None:
        """Return the tile whose right edge lies at a place and may be drawn out."""
        if self.is_far:
            return None
        reach = theme().px(EDGE_PX)
        for x in (at.x(), at.x() - reach):
            tile = self._cells.tile_at(QPointF(x, at.y()))
            if tile is not None and abs(tile.rect.right() - at.x()) <= reach:
                return tile if can_lengthen(tile.session) else None
        return None

    # What would hold

    def _tell_seeker(self) -> None:
        """Let the seeker know what is in the hand, so that the ledger is about that."""
        seeker = seeker_of(self._document)
        if self._length is not None:
            session, words = self._length.session, self._words()
            seeker.hold(self._length.held(lambda to: snapped(to, session, words)))
        else:
            seeker.hold(None if self._carry is None else self._carry.held)

    def _offered_day(self) -> date | None:
        offer = seeker_of(self._document).offer if self._carry is not None else None
        return None if offer is None or offer.is_home else offer.day

    def _take_offer(self) -> None:
        """Do what was found to hold with what is in the hand."""
        carry, length, seeker = self._carry, self._length, seeker_of(self._document)
        offer = seeker.offer
        if offer is None:
            return
        if offer.is_home:
            self._put_back()
        elif length is not None and offer.length is not None:
            length.draw(offer.length)
            self._put_edge_down()
        elif carry is not None and offer.other:
            key = carry.session.key
            self._put_back()
            self._document.perform(SwapSessions(key, offer.other))
            self._selection.choose("session", key)
        elif carry is not None and carry.over(offer.day):
            self._by_mouse = False
            self._put_down()

    # Moving

    def _hold_over_pointer(self) -> None:
        """Try the day under the pointer; outside the grid the session is back home."""
        if self._carry is not None and self._by_mouse:
            seen = self._outlook
            self._carry.over(self._day_held_over(self._pointer))
            self._tell_seeker()
            # A trial on another day has it repainted already.
            if self._outlook is seen:
                self._refresh()

    def _draw_edge(self) -> None:
        """Try the length at which the edge lies under the pointer."""
        length = self._length
        tile = None if length is None else self._cells.tile(length.session.key)
        if length is None or tile is None:
            return
        seen, session, words = self._outlook, length.session, self._words()
        step, own = step_of(session, words), length_of(session)
        # Of a narrow tile the edge goes slower than the pointer: each step can still be met.
        step_px = max(theme().px(STEP_PX), tile.rect.width() * step / own)
        way = self._pointer.x() + self._grab.x() - tile.rect.right()
        length.draw(snapped(own + way / step_px * step, session, words))
        self._tell_seeker()
        self._describe()
        if self._outlook is seen:
            self._refresh()

    def _draw_box(self, start: QPointF) -> None:
        """Box in from *start* to the pointer and select what the box touches."""
        self._box = QRectF(start, self._pointer).normalized().intersected(self._cells.body)
        box = self._box
        self._selection.choose_all(
            "session", [t.session.key for t in self._cells.tiles if t.rect.intersects(box)]
        )
        self._refresh()

    def _set_copies(self, copies: bool) -> None:
        carry = self._carry
        if carry is not None and self._by_mouse and carry.copy(copies):
            self._tell_seeker()
            self.setCursor(self._carry_shape())
            self._describe()
            self._refresh()

    def _day_held_over(self, at: QPointF) -> date | None:
        return self._cells.day_at(self._edge.held_in(at, self._cells.body))

    # Letting go

    def _put_down(self) -> None:
        carry, hand = self._carry, None
        if carry is not None and self._by_mouse:
            hand = self._hand_rect(carry.session)
        known = {s.key for s in self._document.project.block.sessions}
        self._let_go()
        if carry is not None:
            self.day = carry.day
            is_done = carry.put_down()
            if is_done and carry.copies and carry.session.key:
                self._choose_new(known)
            if is_done and hand is not None:
                self._settle(hand)
        self._describe()

    def _settle(self, hand: QRectF) -> None:
        session = self._deeds.chosen()
        tile = None if session is None else self._cells.tile(session.key)
        if session is not None and tile is not None and not self.is_far:
            self._settling.start(session, hand, tile.rect)
            self._refresh()

    def _choose_new(self, known: set[str]) -> None:
        """Select the sessions that are not among *known* keys."""
        sessions = self._document.project.block.sessions
        new = [s.key for s in sessions if s.key not in known]
        if new:
            self._selection.choose_all("session", new, new[0])

    def _put_back(self) -> None:
        carry, length = self._carry, self._length
        self._let_go()
        if length is not None:
            length.put_back()
        if carry is not None:
            carry.put_back()
            self.day = carry.day or self.day
        self._describe()

    def _put_edge_down(self) -> None:
        length = self._length
        self._let_go()
        if length is not None:
            length.put_down()
        self._describe()

    def _let_go(self) -> None:
        self._carry, self._length, self._by_mouse, self._press = None, None, False, None
        self._box = None
        seeker_of(self._document).hold(None)
        self._edge.stop()
        self._point_at(self._pointer)
        self._refresh()

    # How it looks

    def _point_at(self, at: QPointF) -> None:
        if self.edge_at(at) is not None:
            self.setCursor(Qt.CursorShape.SizeHorCursor)
            return
        tile = None if self.is_far else self._cells.tile_at(at)
        can_move = tile is not None and is_movable(tile.session)
        self.setCursor(Qt.CursorShape.OpenHandCursor if can_move else Qt.CursorShape.ArrowCursor)

    def _carry_shape(self) -> Qt.CursorShape:
        copies = self._carry is not None and self._carry.copies
        return Qt.CursorShape.DragCopyCursor if copies else Qt.CursorShape.ClosedHandCursor

    def _describe(self) -> None:
        """Say to a screen reader where the cursor is and what is in the hand."""


def is_movable(session: Session) -> bool:
    """Whether a session may be picked up: not the race, not what is done, not what is locked."""
    return session.kind is not Kind.RACE and session.done is None and not session.locked


def can_lengthen(session: Session) -> bool:
    """Whether the edge of a session may be drawn: it lies ahead, and it is not the race."""
    return session.kind is not Kind.RACE and session.is_open and length_of(session) > 0.0

"""What is selected, shared by the storeys, the tables and the ledger."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QObject, Signal

from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.course import AidStation, Section
from ultraplanner_gui.plan.fuel import FuelItem
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import KeptRecording

#: What can go and come back; of several that come back at once, the first of these counts.
KINDS = ("session", "station", "item", "recording", "section")


class Selection(QObject):
    """What is selected: its `kind`, empty for none, and its `key`.

    Of sessions there may be several: `keys` are all of them, `key` the one the ledger is about.
    """

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._kind: str = ""
        self._key = ""
        self._keys: tuple[str, ...] = ()
        self._lost = ""

    @property
    def kind(self) -> str:
        """What it is: "session", "week", "section", "station", "item", "recording", or ""."""
        return self._kind

    @property
    def key(self) -> str:
        """Its key in the project, of a week its first day; empty for nothing."""
        return self._key

    @property
    def keys(self) -> tuple[str, ...]:
        """The keys of everything selected."""
        return self._keys

    def choose(self, kind: str, key: str) -> None:
        """Select the *kind* of thing that has this *key*, and nothing else."""
        self._set(kind, key, (key,) if kind else ())

    def choose_all(self, kind: str, keys: Iterable[str], key: str = "") -> None:
        """Select everything of *keys*; the ledger is about *key*, else about the last of them."""
        chosen = tuple(dict.fromkeys(keys))
        if not chosen:
            self.clear()
            return
        self._set(kind, key if key in chosen else chosen[-1], chosen)

    def toggle(self, kind: str, key: str) -> None:
        """Select *key* beside what of its *kind* is selected, or no longer."""
        chosen = self._keys if kind == self._kind else ()
        if key in chosen:
            self.choose_all(kind, [k for k in chosen if k != key])
        else:
            self.choose_all(kind, (*chosen, key))

    def clear(self) -> None:
        """Select nothing."""
        self.choose("", "")

    def forget_missing(self, project: Project) -> None:
        """Select no longer what *project* does not have."""
        if self._kind == "week" and project.block.sessions:
            return
        known = set(_keys_of(project, self._kind))
        left = [key for key in self._keys if key in known]
        if self._key not in known:
            self.choose_all(self._kind, left)
        elif len(left) < len(self._keys):
            self.choose_all(self._kind, left, self._key)

    def choose_returned(self, before: Project, now: Project) -> None:
        """Select what *now* has again and *before* had not, as after the undo of a removal.

        Where something went as well, or most of it is new, nothing is selected: that is a change
        of the whole rather than a return.
        """
        for kind in KINDS:
            were = set(_keys_of(before, kind))
            keys = _keys_of(now, kind)
            back = [key for key in keys if key not in were]
            if back and len(keys) == len(were) + len(back) and len(back) <= max(1, len(were)):
                self.choose_all(kind, back, self._lost)
                return

    def _set(self, kind: str, key: str, keys: tuple[str, ...]) -> None:
        if (kind, key, keys) != (self._kind, self._key, self._keys):
            self._lost = self._lost if kind else self._key
            self._kind, self._key, self._keys = kind, key, keys
            self.changed.emit()


def _keys_of(project: Project, kind: str) -> list[str]:
    """Return the keys of everything of this *kind* in *project*, in its order."""
    course = project.course
    there: dict[str, Iterable[Session | Section | AidStation | FuelItem | KeptRecording]] = {
        "session": project.block.sessions,
        "item": project.fuel.items,
        "recording": project.recordings,
        "section": course.sections if course is not None else (),
        "station": course.stations if course is not None else (),
    }
    return [thing.key for thing in there.get(kind, ())]

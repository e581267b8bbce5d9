"""What can be found by words: entries, and the search over them."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Iterable

from ultraplanner_gui.plan.value import Value

_WORD = re.compile(r"[^\W_]+(?:[.,:’'][^\W_]+)*")


class Entry(Value, frozen=True):
    """One thing to find. `kind` says what it is, `aside` stands at the right: keys, a week, or
    why it cannot be done now. `go` does it or goes there; `also` are words it is found by too.
    """

    kind: str
    text: str
    go: Callable[[], object]
    aside: str = ""
    is_enabled: bool = True
    also: str = ""


Source = Callable[[], Iterable[Entry]]


def words_of(text: str) -> list[str]:
    """Return the words of *text* in small letters without accents."""
    plain = unicodedata.normalize("NFKD", text.casefold())
    return _WORD.findall("".join(c for c in plain if not unicodedata.combining(c)))


class _Found(Value, frozen=True):
    entry: Entry
    text: str
    all: str


class EntryIndex:
    """Entries made ready to be searched."""

    def __init__(self, entries: Iterable[Entry]) -> None:
        self._rows = [
            _Found(e, _joined(e.text), _joined(f"{e.text} {e.kind} {e.aside} {e.also}"))
            for e in entries
        ]

    def found(self, query: str) -> list[Entry]:
        """Return the entries in which a word begins with each word of *query*, in any order.

        First those whose text begins as *query* does, then those that hold its words one behind
        another, then by how much of it is in their text; what can be done now before what cannot.
        """
        wanted = [f" {word}" for word in words_of(query)]
        if not wanted:
            return [row.entry for row in self._rows]
        phrase, ranked = "".join(wanted), []
        for place, row in enumerate(self._rows):
            if all(word in row.all for word in wanted):
                ranked.append((_rank(row, wanted, phrase), not row.entry.is_enabled, place))
        return [self._rows[place].entry for _, _, place in sorted(ranked)]


def _rank(row: _Found, wanted: list[str], phrase: str) -> int:
    if row.text.startswith(phrase):
        return 0
    if phrase in row.all:
        return 1
    if row.text.startswith(wanted[0]):
        return 2
    return 3 if all(word in row.text for word in wanted) else 4


def _joined(text: str) -> str:
    return "".join(f" {word}" for word in words_of(text))

"""What the heads of a course table mean, in the languages handbooks are written in."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from enum import Enum, auto

from msgspec.structs import replace

from ultraplanner_gui.exchange.table_text import TextLine
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.reading import M_PER_FOOT, M_PER_KM, M_PER_MILE


class Field(Enum):
    """What a column holds. Climb and drop are those of the leg that ends at the place."""

    NAME = auto()
    AT = auto()
    LEG = auto()
    CLIMB = auto()
    DROP = auto()
    HEIGHT = auto()
    CUTOFF = auto()
    STOP = auto()
    OFFERS = auto()
    NOTE = auto()


class Head(Value, frozen=True):
    """One column: what it holds and in what unit (None: the reader's own).

    `is_sum` says that climb or drop count from the start, `is_next` that the figures are of the
    leg that begins at the place. `is_clock` tells clock times from race times where the head
    does. A column of `offer` is ticked where the station has that.
    """

    field: Field
    unit_m: float | None = None
    is_sum: bool = False
    is_next: bool = False
    is_clock: bool | None = None
    offer: Offer | None = None


def _set(words: str) -> frozenset[str]:
    return frozenset(words.split())


# Heads as handbooks in English, German, French, Spanish and Italian have them; from memory. A
# field further up goes before one below: "distance to the next station" is a distance.
_WORDS: tuple[tuple[Field, str], ...] = (
    (
        Field.CUTOFF,
        "cutoff cutoffs cut closes closing deadline limit limite barriere barriera barrera"
        " zeitlimit cancello cierre corte schluss kontrollschluss fermeture chiusura",
    ),
    (Field.STOP, "stop stops rest pause halt arret parada sosta aufenthalt"),
    (
        Field.CLIMB,
        "climb climbs ascent gain up uphill aufstieg anstieg montee salita subida ascenso"
        " ascension d+ hm+ m+ + ↑ positif positivo bergauf",
    ),
    (
        Field.DROP,
        "drop drops descent loss down downhill abstieg gefalle descente discesa bajada descenso"
        " d- hm- m- - ↓ negatif negativo bergab",
    ),
    (Field.CLIMB, "denivele desnivel dislivello hohenmeter hm"),
    (
        Field.AT,
        "distance distances dist km kms mi mile miles kilometre kilometres kilometer kilometers"
        " kilometro kilometros chilometro at distanz distanza distancia strecke pk",
    ),
    (
        Field.HEIGHT,
        "height altitude elevation elev alt hohe seehohe quota altura altitud altitudine asl",
    ),
    (
        Field.OFFERS,
        "there offers offered services service provisions supplies facilities available"
        " ravitaillement verpflegung servicios servizi avituallamiento ristoro angebot",
    ),
    (
        Field.NAME,
        "name place places station stations checkpoint checkpoints cp point points location"
        " control where aid section leg lieu ort posten punkt lugar localita punto poste point",
    ),
    (Field.NOTE, "note notes remark remarks comment comments bemerkung remarque nota info"),
)
_SUM = _set(
    "total cumulative cumulated cum cumul cumule cumulee cumulado accumulated overall gesamt"
    " kumuliert acumulado progressive progressivo progr totale start depart inizio"
)
_LEG = _set(
    "leg section split stage segment interval etappe abschnitt troncon partial partiel parcial"
    " parziale tramo tratto length previous last inter"
)
_SIGNS = _set("+ -")
_ALTITUDE = _set("denivele desnivel dislivello hohenmeter elevation elev")
_NEXT = _set("next suivant suivante nachste nachster nachsten prossimo siguiente")
_CLOCK = _set("clock day heure uhr uhrzeit hora ora")
_RACE_TIME = _set("race start elapsed hours duration after hmm course carrera gara rennzeit")
_OFFERS: tuple[tuple[Offer, frozenset[str]], ...] = (
    (Offer.DROP_BAG, _set("bag bags dropbag dropbags sac sacs tasche bolsa bolsas sacca")),
    (Offer.CREW, _set("crew crews assistance support betreuung begleitung asistencia assistenza")),
    (Offer.MEDICAL, _set("medical medic medics doctor firstaid secours arzt sanitat medico")),
    (Offer.WATER, _set("water drink drinks fluids eau wasser getranke agua acqua")),
    (Offer.FOOD, _set("food meal meals hot solid repas essen comida cibo pasto")),
)
_UNITS_M: dict[str, float] = {
    **dict.fromkeys(("km", "kms", "kilometre", "kilometres", "kilometer", "kilometers"), M_PER_KM),
    **dict.fromkeys(("mi", "mile", "miles"), M_PER_MILE),
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters", "hm", "d+m", "d-m"), 1.0),
    **dict.fromkeys(("ft", "foot", "feet"), M_PER_FOOT),
}
_LENGTHS = frozenset((Field.AT, Field.LEG, Field.CLIMB, Field.DROP, Field.HEIGHT))
_TOKEN = re.compile(r"[a-z]+[+\-]?(?![a-z])|[+\-↑↓]")

_FIGURE = re.compile(r"[+\-\u2212~]?\s*\d[\d.,'’ ]*(?:km|mi|m|ft)?", re.IGNORECASE)
_TIME = re.compile(r"\d\s*[:h]\s*\d\d\b|\d\s*(?:[ap]m|h|min)\b", re.IGNORECASE)

START_NAMES = _set("start depart partenza salida inicio begin")
FINISH_NAMES = _set("finish arrivee arrivo ziel meta llegada end goal")
TOTAL_NAMES = _set("total totals totale gesamt sum summe somme suma")


def plain_words(text: str) -> tuple[str, ...]:
    """Return the words of *text* in small letters without accents, signs of up and down too."""
    text = unicodedata.normalize("NFKD", text.replace("\u2212", "-").replace("\u2013", "-"))
    text = "".join(c for c in text if not unicodedata.combining(c)).casefold()
    text = text.replace("cut-off", "cutoff").replace("cut off", "cutoff").replace("h:mm", "hmm")
    text = re.sub(r"\b(d|hm|m|up|down)\s+(?=[+\-](?:\W|$))", r"\1", text)
    # A hyphen between words joins them; only after a letter or alone does it mean down.
    text = re.sub(r"(?<=[a-z])-(?=[a-z])", " ", text)
    return tuple(_TOKEN.findall(text))


def head_of(text: str) -> Head | None:
    """Return what the head *text* says of its column, None if it is not known."""
    words = set(plain_words(text))
    if (offer := offer_of(text)) is not None:
        return Head(Field.OFFERS, offer=offer)
    if words - _SIGNS - _UNITS_M.keys() - _SUM - _ALTITUDE:
        words -= _SIGNS  # a dash between words, not a drop
    field = next((f for f, known in _WORDS if words & set(known.split())), None)
    if field is None:
        return Head(Field.LEG, _unit(words)) if words & _LEG else None
    if field is Field.NAME and words & _LEG and ("length" in words or _unit(words) is not None):
        field = Field.LEG
    if field is Field.AT and words & (_LEG | _NEXT) and not words & _SUM:
        field = Field.LEG
    head = Head(field, _unit(words) if field in _LENGTHS else None)
    if field in (Field.CLIMB, Field.DROP):
        head = replace(head, is_sum=bool(words & _SUM))
    if field in (Field.CLIMB, Field.DROP, Field.LEG):
        head = replace(head, is_next=bool(words & _NEXT))
    if field is Field.CUTOFF and words & (_CLOCK | _RACE_TIME):
        head = replace(head, is_clock=not words & _RACE_TIME)
    return head


def offer_of(text: str) -> Offer | None:
    """Return what *text* says is at a station, None if it names nothing known or more."""
    words = set(plain_words(text))
    found = [offer for offer, known in _OFFERS if words & known]
    return found[0] if len(found) == 1 else None


def _unit(words: set[str]) -> float | None:
    return next((_UNITS_M[word] for word in sorted(words) if word in _UNITS_M), None)


class Layout(Value, frozen=True):
    """Which column holds what, by its number, and the rows under the `width` heads; `title` is
    what stands alone in a line above them.
    """

    heads: dict[int, Head]
    rows: tuple[TextLine, ...]
    width: int
    title: str = ""


def layout_of(lines: Sequence[TextLine], most_titles: int = 4) -> Layout | None:
    """Return what the columns of *lines* hold, by their heads; None if there are no heads."""
    for place, line in enumerate(lines[:most_titles]):
        heads = {n: head for n, cell in enumerate(line.cells) if (head := head_of(cell))}
        fields = {head.field for head in heads.values()}
        if len(heads) < 2 or not fields & {Field.AT, Field.LEG} or _has_figures(line):
            continue
        rows = list(lines[place + 1 :])
        if rows and _is_units(rows[0]):
            both = _joined(line, rows.pop(0))
            heads = {n: head for n, cell in enumerate(both) if (head := head_of(cell))}
        rows = [row for row in rows if row.cells != line.cells]
        titles = [one.cells[0] for one in lines[:place] if sum(map(bool, one.cells)) == 1]
        heads = _each_once(_told_by_cells(heads, line, rows))
        return Layout(heads, tuple(rows), len(line.cells), titles[0] if titles else "")
    return None


def guessed_layout(lines: Sequence[TextLine]) -> Layout | None:
    """Return what the columns of *lines* hold by what is in them, None without a distance.

    The first texts are names, the first figures distances, then climb, then drop; times are
    cutoffs, other texts what is there.
    """
    rows = lines[1:] if len(lines) > 2 and not _has_figures(lines[0]) else lines
    figures, texts = [Field.AT, Field.CLIMB, Field.DROP], [Field.NAME, Field.OFFERS]
    times = [Field.CUTOFF]
    heads: dict[int, Head] = {}
    width = max(len(row.cells) for row in rows)
    for number in range(width):
        cells = [row.cells[number] for row in rows if number < len(row.cells)]
        cells = [cell for cell in cells if cell]
        is_figures = all(_FIGURE.fullmatch(cell) for cell in cells)
        is_times = all(_TIME.search(cell) for cell in cells)
        fields = figures if is_figures else times if is_times else texts
        if cells and fields:
            heads[number] = Head(fields.pop(0))
    has_distance = any(head.field is Field.AT for head in heads.values())
    return Layout(heads, tuple(rows), width) if has_distance else None


def _has_figures(line: TextLine) -> bool:
    return any(cell[:1].isdigit() for cell in line.cells)


def _told_by_cells(
    heads: dict[int, Head], line: TextLine, rows: Sequence[TextLine]
) -> dict[int, Head]:
    """Return *heads*; "leg" and "section" are names over texts, lengths over figures."""
    told: dict[int, Head] = {}
    for n, head in heads.items():
        is_either = head.field is Field.NAME and set(plain_words(line.cells[n])) & _LEG
        cells = [row.cells[n] for row in rows if n < len(row.cells) and row.cells[n]]
        is_figures = bool(cells) and all(cell[0].isdigit() for cell in cells)
        told[n] = replace(head, field=Field.LEG) if is_either and is_figures else head
    return told


def _is_units(line: TextLine) -> bool:
    words = [set(plain_words(cell)) for cell in line.cells if cell]
    known = set(_UNITS_M) | _CLOCK | _RACE_TIME | {"min", "h"}
    return bool(words) and all(cell and cell <= known for cell in words)


def _joined(line: TextLine, under: TextLine) -> list[str]:
    cells = [*under.cells, *[""] * (len(line.cells) - len(under.cells))]
    return [f"{text} {unit}" for text, unit in zip(line.cells, cells, strict=False)]


def _each_once(heads: dict[int, Head]) -> dict[int, Head]:
    """Return *heads* without columns that say again what one before them does.

    Of two distances the second is taken for the length of the leg.
    """
    kept: dict[int, Head] = {}
    for number, head in heads.items():
        taken = {one.field for one in kept.values()}
        if head.field is Field.AT and Field.AT in taken and Field.LEG not in taken:
            head = replace(head, field=Field.LEG)
        if head.field not in taken or head.field in (Field.OFFERS, Field.NOTE):
            kept[number] = head
    return kept

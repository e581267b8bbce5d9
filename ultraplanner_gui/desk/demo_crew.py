"""What the invented runner of the demo has arranged beside running, and which cards they print."""

from __future__ import annotations

from msgspec.structs import replace

from ultraplanner_gui.plan.cards import Card, CardForm, CardKind
from ultraplanner_gui.plan.course import AidStation, IfStop, Kit, StopKind
from ultraplanner_gui.plan.logistics import BagLine, CrewMember, Identity, IfThen, Logistics, Visit

MANDATORY_KIT = (
    "waterproof with taped seams",
    "head torch and spare battery",
    "whistle",
    "foil blanket",
    "0.5 L of water",
    "telephone, charged",
)
EMERGENCY = "01632 960 100, race control"
CARDS = (
    Card(CardKind.PACE),
    Card(CardKind.PACE, 200.0, 48.0, CardForm.WRIST),
    Card(CardKind.PACE, 280.0, 70.0, CardForm.CONCERTINA),
    Card(CardKind.FUEL),
    Card(CardKind.CREW, 210.0, 297.0),
    Card(CardKind.BAGS, 148.0, 105.0),
    Card(CardKind.LISTS, 210.0, 297.0),
    Card(CardKind.HARD),
    Card(CardKind.WHO),
    Card(CardKind.WALL, 297.0, 420.0),
    Card(CardKind.WEEKS, 148.0, 210.0),
)
ACCESS = {
    "Ash Green": "Village hall, car park behind it; the last 200 m on foot.",
    "Halfway Barn": "Lane to the farm, park on the left; no cars beyond the gate.",
    "Old Quarry": "Forest road, locked from 22:00: leave the car outside.",
}
IF_STOP = {
    "Halfway Barn": IfStop("farm lane to the road", "Kim", "30 min", "01632 960 222"),
    "Old Quarry": IfStop("minibus of the race", "race bus", "up to 2 h", "01632 960 100"),
}
HALFWAY_BAG = ("dry socks", "lamp, tested", "long-sleeved top")
LOGISTICS = Logistics(
    who=Identity(
        full_name="Demo Runner",
        number="117",
        call="Kim, 01632 960 222",
        medical=("No allergies known", "Asthma: inhaler in the right hip pocket"),
    ),
    crew=(
        CrewMember("Kim", "01632 960 222", "sleeps until midnight, drives home"),
        CrewMember("Jo", "01632 960 333", "hands over, asks"),
    ),
    drives_home="Kim",
    ask=("Eaten in the last hour?", "Passed water? What colour?", "Warm enough?"),
    packing=("head torch", "poles", "cap", "blister kit"),
    shopping=("spare batteries", "tape"),
    if_then=(
        IfThen("I want to stop", "I walk to the next station, sit, eat, and ask again there"),
        IfThen("my stomach turns", "I walk ten minutes, cool my head and sip"),
    ),
    cues=("Short steps.", "One gate at a time."),
)


def with_errands(station: AidStation) -> AidStation:
    """Return *station* with how the crew gets there and what is done there."""
    is_halfway = station.name == "Halfway Barn"
    return replace(
        station,
        access=ACCESS.get(station.name, ""),
        if_stop=IF_STOP.get(station.name, IfStop()),
        stop_kind=StopKind.CHANGE if is_halfway else station.stop_kind,
        kit=(Kit.SOCKS, Kit.LAMP) if is_halfway else station.kit,
        pacer_from=station.name == "Old Quarry",
    )


def logistics(stations: tuple[AidStation, ...]) -> Logistics:
    """Return what is arranged for *stations*."""
    keys = {station.name: station.key for station in stations}
    return replace(
        LOGISTICS,
        visits=(
            Visit(keys["Ash Green"], "Jo", ("bottles, filled", "cap, wet")),
            Visit(keys["Old Quarry"], "Jo and Kim", ("warm top", "lamp battery")),
        ),
        bag_lines=(
            *(BagLine(keys["Halfway Barn"], text) for text in HALFWAY_BAG),
            BagLine("", "dry clothes"),
            BagLine("", "shoes"),
        ),
    )

"""For the head: what to picture, lines for hard hours, three kinds of day; all from the plan.

Imagery is more use the nearer it is to the real thing: Holmes & Collins 2001, J Appl Sport Psychol
13:60-83. If-then plans: Gollwitzer & Sheeran 2006, Adv Exp Soc Psychol 38:69-119. The words are
our own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from itertools import pairwise

import numpy as np

from ultraplanner_gui.engine.climbs import Hill, hills_of
from ultraplanner_gui.engine.gait import walked_between
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_checks import WARM_C
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import Slope
from ultraplanner_gui.plan.head import DayKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import Words

#: How a race time reads on the clock.
Clock = Callable[[float], str]

#: A climb of less is no stretch to picture (own rule).
LEAST_CLIMB_M = 150.0
#: A stop as long as this makes one stiff and cold (own rule).
LONG_STOP_S = 600.0
#: Less in hand than this is on one's mind (own rule).
LITTLE_S = 2700.0
#: Hours of the night in which one is sleepiest (common practice, no source).
SLEEPY_H = (2, 5)


class Picture(Value, frozen=True):
    """One thing to picture, and where it begins, metres from the start."""

    text: Message
    at_m: float


class Proposal(Value, frozen=True):
    """A line for a hard hour that the plan suggests; `station` ends the stretch it is for."""

    when: Message
    then: Message
    station: str = ""


class DayFigures(Value, frozen=True):
    """One kind of day: the finish reckoned for it, race time, and what counts then."""

    kind: DayKind
    finish_s: float
    text: Message


def pictures(outlook: Outlook, words: Words) -> tuple[Picture, ...]:
    """Return what to picture of the race, in the order of the course; nothing without one.

    *words* tells how clock times read.
    """
    if outlook.race is None:
        return ()
    clock = partial(_clock, outlook, words)
    found = [*_easy(outlook), *_alone(outlook, words, clock), *_climbs(outlook, clock)]
    found += [*_dark(outlook, clock), *_heat(outlook, clock), *_last_third(outlook, clock)]
    return tuple(sorted(found, key=lambda picture: picture.at_m))


def _easy(outlook: Outlook) -> Iterator[Picture]:
    assert outlook.target is not None
    third_s = outlook.target.finish_s / 3.0
    yield Picture(
        message(
            QT_TRANSLATE_NOOP(
                "Head",
                "The first {0}, to about {1}: it should feel easy, with whole sentences and others "
                "passing. If it feels hard here, slow down.",
            ),
            Quantity(third_s, "s"),
            Quantity(outlook.target.distance_at(third_s), "m"),
        ),
        0.0,
    )


def _alone(outlook: Outlook, words: Words, clock: Clock) -> Iterator[Picture]:
    """Yield the stretch between two aid stations that takes longest."""
    leg = _longest_leg(outlook)
    if leg is None or outlook.target is None:
        return
    start_m, end_m = leg
    start_s, end_s = outlook.target.departure_s(start_m), outlook.target.arrival_s(end_m)
    yield Picture(
        message(
            QT_TRANSLATE_NOOP(
                "Head",
                "The longest stretch alone: {0}, to {1}, from about {2} to {3}. Nobody to ask; you "
                "carry food, light and the telephone, and one foot follows the other.",
            ),
            Quantity(end_m - start_m, "m"),
            place_at(outlook, end_m, words),
            clock(start_s),
            clock(end_s),
        ),
        start_m,
    )


def _longest_leg(outlook: Outlook) -> tuple[float, float] | None:
    course, target = outlook.project.course, outlook.target
    if course is None or target is None or not course.stations:
        return None
    places = (0.0, *(s.at_m for s in course.stations), course.length_m)
    legs = [(a, b) for a, b in pairwise(places) if b > a]
    return max(
        legs,
        key=lambda leg: target.arrival_s(leg[1]) - target.departure_s(leg[0]),
        default=None,
    )


def _climbs(outlook: Outlook, clock: Clock) -> Iterator[Picture]:
    """Yield the highest climb, and the highest one of the second half."""
    assert outlook.profile is not None
    found = [h for h in hills_of(outlook.profile) if h.slope is Slope.CLIMB]
    found = [h for h in found if h.height_m >= LEAST_CLIMB_M]
    half_m = outlook.profile.length_m / 2.0
    late = [h for h in found if h.start_m >= half_m]
    chosen = {max(group, key=lambda h: h.height_m) for group in (found, late) if group}
    for hill in sorted(chosen, key=lambda h: h.start_m):
        yield Picture(_climb_text(outlook, hill, clock), hill.start_m)


def _climb_text(outlook: Outlook, hill: Hill, clock: Clock) -> Message:
    assert outlook.target is not None
    start_s, end_s = (outlook.target.arrival_s(m) for m in (hill.start_m, hill.end_m))
    walked_m, _ = walked_between(outlook.walked, hill.start_m, hill.end_m)
    text = QT_TRANSLATE_NOOP(
        "Head",
        "Climb {0}, at {1}: {2} up in {3}, from about {4}, {5} long. Slower than you feel like, "
        "short steps, eat before it begins.",
    )
    if walked_m >= hill.length_m / 2.0:
        text = QT_TRANSLATE_NOOP(
            "Head",
            "Climb {0}, at {1}: {2} up in {3}, from about {4}, {5} long. Walked, as planned, hands "
            "on knees; eat before it begins.",
        )
    return message(
        text,
        hill.number,
        Quantity(hill.start_m, "m"),
        Quantity(hill.height_m, "height_m"),
        Quantity(hill.length_m, "m"),
        clock(start_s),
        Quantity(end_s - start_s, "s"),
    )


def _dark(outlook: Outlook, clock: Clock) -> Iterator[Picture]:
    assert outlook.target is not None
    for span in outlook.light:
        if span.kind != "dark":
            continue
        start_m, end_m = (outlook.target.distance_at(s) for s in (span.start_s, span.end_s))
        yield Picture(
            message(
                QT_TRANSLATE_NOOP(
                    "Head",
                    "The dark hours: {0} to {1}, from {2} to {3}. A small circle of light, cold "
                    "hands, slower than by day, and that is in the plan.",
                ),
                clock(span.start_s),
                clock(span.end_s),
                Quantity(start_m, "m"),
                Quantity(end_m, "m"),
            ),
            start_m,
        )


def _heat(outlook: Outlook, clock: Clock) -> Iterator[Picture]:
    at_m = _hottest_m(outlook)
    if at_m is None or outlook.target is None:
        return
    yield Picture(
        message(
            QT_TRANSLATE_NOOP(
                "Head",
                "The heat of the day: about {0}, near {1}. Slower by choice, wet head and arms, "
                "drink to thirst. Dizzy or confused: stop and get help.",
            ),
            clock(outlook.target.arrival_s(at_m)),
            Quantity(at_m, "m"),
        ),
        at_m,
    )


def _hottest_m(outlook: Outlook) -> float | None:
    """Return where it is hottest on the way; None if it is warm nowhere, or not known."""
    warm = outlook.race.warmth if outlook.race is not None else None
    if warm is None:
        return None
    wbgt = np.nan_to_num(warm.wbgt_c, nan=-99.0)
    hottest = int(np.argmax(wbgt))
    return float(warm.distance_m[hottest]) if wbgt[hottest] >= WARM_C else None


def _last_third(outlook: Outlook, clock: Clock) -> Iterator[Picture]:
    assert outlook.target is not None
    assert outlook.forecast is not None
    start_m = float(outlook.forecast.distance_m[-1] * 2.0 / 3.0)
    finish_s = outlook.forecast.finish_s
    yield Picture(
        message(
            QT_TRANSLATE_NOOP(
                "Head",
                "The last third, from {0}, about {1}: it feels easy to nobody. Runners of your "
                "finish slow down; it is likely to take {2} of {3}. Slow, steady, yours.",
            ),
            Quantity(start_m, "m"),
            clock(outlook.target.arrival_s(start_m)),
            Quantity(finish_s - outlook.forecast.arrival_s(start_m), "s"),
            Quantity(finish_s, "s"),
        ),
        start_m,
    )


def proposals(outlook: Outlook, words: Words) -> tuple[Proposal, ...]:
    """Return lines the plan suggests for its hard hours, in the order of the course; those for
    anywhere come last. Own words.
    """
    if outlook.race is None:
        return ()
    found = [line for section in outlook.sections for line in _for_section(outlook, section, words)]
    return (*found, *_ANYWHERE)


def _for_section(outlook: Outlook, section: SectionFigures, words: Words) -> Iterator[Proposal]:
    name = place_at(outlook, section.end_m, words)
    for is_so, when, then in _HARD_HOURS:
        if is_so(outlook, section):
            yield Proposal(message(when, name), message(then), section.station or "")
    station = section.station or ""
    if not station:
        return
    stop_s = _stop_s(outlook, station)
    if stop_s >= LONG_STOP_S:
        yield Proposal(
            message(QT_TRANSLATE_NOOP("Head", "I do not want to get up at {0}"), name),
            message(
                QT_TRANSLATE_NOOP("Head", "an alarm after {0}, and I walk out with food in hand"),
                Quantity(stop_s, "s"),
            ),
            station,
        )
    if section.in_hand_s is not None and section.in_hand_s < LITTLE_S:
        yield Proposal(
            message(QT_TRANSLATE_NOOP("Head", "I am late at {0}"), name),
            message(
                QT_TRANSLATE_NOOP(
                    "Head", "out again in two minutes, and look at the card, not at the watch"
                )
            ),
            station,
        )


def _has_great_climb(outlook: Outlook, section: SectionFigures) -> bool:
    assert outlook.profile is not None
    hills = [h for h in hills_of(outlook.profile) if h.slope is Slope.CLIMB]
    great = sorted(hills, key=lambda h: -h.height_m)[:2]
    return any(
        section.start_m <= (h.start_m + h.end_m) / 2.0 < section.end_m
        for h in great
        if h.height_m >= LEAST_CLIMB_M
    )


def _is_hottest(outlook: Outlook, section: SectionFigures) -> bool:
    at_m = _hottest_m(outlook)
    return at_m is not None and section.start_m <= at_m < section.end_m


def _turns_dark(outlook: Outlook, section: SectionFigures) -> bool:
    """Return whether a night begins on the way."""
    starts_s = section.arrive_s - section.moving_s
    nights = (span for span in outlook.light if span.kind == "dark")
    return any(starts_s <= span.start_s < section.arrive_s for span in nights)


def _is_sleepy(outlook: Outlook, section: SectionFigures) -> bool:
    race = outlook.project.race
    middle = race.clock(section.arrive_s - section.moving_s / 2.0)
    return SLEEPY_H[0] <= middle.hour < SLEEPY_H[1]


_HARD_HOURS: tuple[tuple[Callable[[Outlook, SectionFigures], bool], str, str], ...] = (
    (
        _has_great_climb,
        QT_TRANSLATE_NOOP("Head", "the climb before {0} does not end"),
        QT_TRANSLATE_NOOP("Head", "shorter steps, count to a hundred, sip, again"),
    ),
    (
        _is_hottest,
        QT_TRANSLATE_NOOP("Head", "the heat gets to me before {0}"),
        QT_TRANSLATE_NOOP(
            "Head", "walk, shade, wet head and arms, drink to thirst; dizzy means stop and get help"
        ),
    ),
    (
        _turns_dark,
        QT_TRANSLATE_NOOP("Head", "the dark before {0} makes me slow and small"),
        QT_TRANSLATE_NOOP(
            "Head", "lamp and jacket on before I am cold, eat, look as far as the light goes"
        ),
    ),
    (
        _is_sleepy,
        QT_TRANSLATE_NOOP("Head", "I fall asleep on my feet before {0}"),
        QT_TRANSLATE_NOOP(
            "Head", "caffeine as planned, sing, and sleep ten minutes at the station"
        ),
    ),
)

_ANYWHERE = (
    Proposal(
        message(QT_TRANSLATE_NOOP("Head", "I feel sick")),
        message(QT_TRANSLATE_NOOP("Head", "walk, cool down, small sips, nothing for half an hour")),
    ),
    Proposal(
        message(QT_TRANSLATE_NOOP("Head", "a shoe rubs")),
        message(QT_TRANSLATE_NOOP("Head", "stop now and tape it, five minutes save an hour")),
    ),
    Proposal(
        message(QT_TRANSLATE_NOOP("Head", "I want to stop")),
        message(
            QT_TRANSLATE_NOOP(
                "Head", "eat, dress, walk to the next station and decide there, not here"
            )
        ),
    ),
    Proposal(
        message(QT_TRANSLATE_NOOP("Head", "I am confused, faint, or my chest hurts")),
        message(QT_TRANSLATE_NOOP("Head", "I stop and call for help, whatever the plan says")),
    ),
)


def days_of(outlook: Outlook) -> tuple[DayFigures, ...]:
    """Return the finish of a good, a fair and a hard day; nothing without a course.

    The ends and the middle of the arrival window at the finish: 10th, 50th, 90th percentile.
    """
    if not outlook.sections or outlook.forecast is None:
        return ()
    low_s, high_s = outlook.sections[-1].window_s
    limit_s = outlook.project.race.limit_s
    hard = message(
        QT_TRANSLATE_NOOP("Head", "Arrive. Walk what has to be walked, stay well."),
    )
    if limit_s is not None:
        text = QT_TRANSLATE_NOOP(
            "Head", "Arrive within {0}. Walk what has to be walked, stay well."
        )
        if high_s > limit_s:
            text = QT_TRANSLATE_NOOP(
                "Head", "Get as far as it is wise. On such a day the limit, {0}, may come first."
            )
        hard = message(text, Quantity(limit_s, "s"))
    return (
        DayFigures(
            DayKind.GOOD,
            low_s,
            message(QT_TRANSLATE_NOOP("Head", "Keep the target, then see what is left.")),
        ),
        DayFigures(
            DayKind.FAIR,
            _middle_s(outlook),
            message(QT_TRANSLATE_NOOP("Head", "Eat and drink by the plan, lose no time standing.")),
        ),
        DayFigures(DayKind.HARD, high_s, hard),
    )


def _middle_s(outlook: Outlook) -> float:
    """Return the middle of the simulated finishes; the forecast where none were simulated."""
    assert outlook.forecast is not None
    if outlook.race is None or not outlook.race.odds.middle_s:
        return outlook.forecast.finish_s
    return outlook.race.odds.middle_s[-1]


def _stop_s(outlook: Outlook, station: str) -> float:
    course = outlook.project.course
    return course.station(station).stop_s if course is not None else 0.0


def place_at(outlook: Outlook, at_m: float, words: Words) -> str:
    """Return the name of the aid station at *at_m*, or that it is the finish."""
    course = outlook.project.course
    names = {s.at_m: s.name for s in course.stations} if course is not None else {}
    return names.get(at_m, words.translate(QT_TRANSLATE_NOOP("Head", "the finish")))


def _clock(outlook: Outlook, words: Words, elapsed_s: float) -> str:
    return words.clock(outlook.project.race.clock(elapsed_s))

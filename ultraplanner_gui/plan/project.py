"""The whole document: one value, never changed in place."""

from __future__ import annotations

from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.candidates import Candidate
from ultraplanner_gui.plan.cards import DEFAULT_CARDS, Card
from ultraplanner_gui.plan.conditions import Conditions
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.head import Head
from ultraplanner_gui.plan.logistics import Logistics
from ultraplanner_gui.plan.pacing import Pacing
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Lesson, Review
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Kept, Whole


class Project(Kept, frozen=True):
    """One race of one runner. `first_weekday` is the first day of the week, Monday 0."""

    race: Race
    course: Course | None = None
    runner: Runner = Runner()
    block: Block = Block()
    fuel: FuelPlan = FuelPlan()
    cards: tuple[Card, ...] = DEFAULT_CARDS
    notes: str = ""
    first_weekday: Whole = 0
    candidates: tuple[Candidate, ...] = ()
    conditions: Conditions = Conditions()
    pacing: Pacing = Pacing()
    logistics: Logistics = Logistics()
    head: Head = Head()
    recordings: tuple[KeptRecording, ...] = ()
    reviews: tuple[Review, ...] = ()
    lessons: tuple[Lesson, ...] = ()

"""A plan to be sent to somebody: without what is nobody's business but the runner's."""

from __future__ import annotations

from msgspec.structs import replace

from ultraplanner_gui.plan.block import Block, Session
from ultraplanner_gui.plan.logistics import Identity
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.runner import Health
from ultraplanner_gui.plan.value import Value


class LeftOut(Value, frozen=True):
    """What does not go along.

    `person` is who the runner is, medical lines, health and body mass; `recordings` where they
    were and when; `diary` notes, what is for the head, and what was said of runs.
    """

    person: bool = True
    recordings: bool = True
    diary: bool = True


def for_mailing(project: Project, left_out: LeftOut) -> Project:
    """Return *project* without what is *left_out*; everything the plan needs stays."""
    if left_out.person:
        usual = type(project.runner)()
        runner = replace(
            project.runner, name="", health=Health.NOT_ASKED, body_kg=usual.body_kg, past_runs=()
        )
        fuel = replace(project.fuel, sweat_tests=(), allergens=())
        logistics = replace(project.logistics, who=Identity(), crew=(), drives_home="")
        project = replace(project, runner=runner, fuel=fuel, logistics=logistics)
    if left_out.recordings:
        project = replace(project, recordings=(), reviews=())
    if left_out.diary:
        usual_head = type(project.head)()
        project = replace(
            project,
            notes="",
            head=usual_head,
            reviews=(),
            lessons=(),
            block=_without_notes(project.block),
        )
    return project


def _without_notes(block: Block) -> Block:
    return replace(block, sessions=tuple(map(_bare, block.sessions)))


def _bare(session: Session) -> Session:
    done = session.done
    if done is not None and (done.note or done.gut is not None):
        done = replace(done, note="", gut=None)
    if done is session.done and not session.note:
        return session
    return replace(session, note="", done=done)

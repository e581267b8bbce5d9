"""The demo's recordings: its last long runs, there and back along the course; and its lessons."""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta
from pathlib import Path

import numpy as np

from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.exchange.kept_recording import kept_of
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Lesson, PinnedTo
from ultraplanner_gui.science.gradient_cost import pace_cost

LESSONS = (
    Lesson(
        *("lesson-1", "Stopped eating at dusk, empty two hours later", PinnedTo.HOUR),
        hour_s=15.0 * 3600.0,
        learnt_at="Moor Sixty 2025",
        answer="Broth and rice at Long Ridge; alarm every half hour",
    ),
    Lesson(
        *("lesson-2", "Ran the first climb", PinnedTo.CLIMB),
        climb=1,
        learnt_at="Moor Sixty 2025",
        answer="Hands on knees from the first steep part",
    ),
)
_COUNT = 3
_STEP_M = 40.0
_STOP_S = 240.0


def recordings(project: Project) -> tuple[KeptRecording, ...]:
    """Return a recording of each of the last long runs that were done."""
    done = [s for s in project.block.sessions if s.done is not None and s.kind.is_long]
    return tuple(_recording(project, session, n) for n, session in enumerate(done[-_COUNT:]))


def _recording(project: Project, session: Session, number: int) -> KeptRecording:
    """Return *session* as a device would have recorded it, invented from the course and a pace."""
    assert session.done is not None
    zone = project.race.start.tzinfo
    start = datetime.combine(session.day, time(8, 10), tzinfo=zone).astimezone(UTC)
    latitude, longitude, height = _way(project, session.done.distance_m)
    clock_s = _clock(height, session.done.duration_s, number)
    rows = "".join(
        f'<trkpt lat="{a:.6f}" lon="{b:.6f}"><ele>{h:.1f}</ele>'
        f"<time>{start + timedelta(seconds=float(s)):%Y-%m-%dT%H:%M:%SZ}</time></trkpt>"
        for a, b, h, s in zip(latitude, longitude, height, clock_s, strict=True)
    )
    file = Path(f"long-run-{session.day.isoformat()}.gpx")
    head = '<gpx version="1.1" creator="Demo" xmlns="http://www.topografix.com/GPX/1/1">'
    text = f"{head}<trk><name>Long run</name><trkseg>{rows}</trkseg></trk></gpx>"
    kept = kept_of(text.encode("ascii"), file)
    return KeptRecording(
        *(kept.key, kept.file, kept.packed, kept.came_packed, kept.name, kept.start),
        *(kept.distance_m, kept.elapsed_s, kept.moving_s, kept.climb_m, kept.drop_m),
        session=session.key,
        flat_m=kept.flat_m,
        drift=kept.drift,
    )


def _way(project: Project, distance_m: float) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Return points out along the course for half of *distance_m*, and back."""
    course = project.course
    assert course is not None
    along, line = places_of_points(course), course.line
    out = np.arange(0.0, distance_m / 2.0, _STEP_M)
    places = np.concatenate((out, out[::-1]))
    columns = (line.latitude_deg, line.longitude_deg, line.elevation_m)
    latitude, longitude, height = (np.interp(places, along, c) for c in columns)
    return np.asarray(latitude), np.asarray(longitude), np.asarray(height)


def _clock(height: FloatArray, duration_s: float, number: int) -> FloatArray:
    """Return seconds at each point: by the slopes, a little slower with the hours, one stop."""
    cost = pace_cost(np.clip(np.diff(height) / _STEP_M, -0.4, 0.4))
    share = np.linspace(0.0, 1.0, len(cost))
    wave = 1.0 + 0.03 * np.sin(9.0 * share + number) + 0.08 * share
    took = cost * wave
    took *= duration_s / took.sum()
    took[len(took) // 2] += _STOP_S
    return np.asarray(np.round(np.concatenate(([0.0], np.cumsum(took)))), dtype=np.float64)

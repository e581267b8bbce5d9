from datetime import UTC, datetime

import pytest
from msgspec.structs import replace

from tests.edits.made import PROJECT
from ultraplanner_gui.edits.recordings import (
    AddRecordings,
    MatchRecording,
    RemoveRecording,
    RenameRecording,
)
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import MOST_PACKED_BYTES, KeptRecording
from ultraplanner_gui.plan.review import Review

RUN = KeptRecording(
    *("k1", "a.gpx", b"packed"),
    start=datetime(2027, 3, 6, 8, tzinfo=UTC),
    distance_m=12_000.0,
    elapsed_s=4_000.0,
    moving_s=3_900.0,
    climb_m=200.0,
    session="easy",
)
KEPT = AddRecordings((RUN,)).apply(PROJECT)


def test_a_recording_is_added_once():
    assert RUN in KEPT.recordings
    assert AddRecordings((RUN,)).apply(KEPT) is KEPT


def test_recordings_stand_in_the_order_of_their_start():
    older = replace(RUN, key="k0", start=datetime(2026, 1, 1, tzinfo=UTC), session="")
    kept = AddRecordings((older,)).apply(KEPT).recordings
    starts = [r.start for r in kept if r.start]
    assert starts == sorted(starts)


def test_what_was_said_of_a_recording_goes_with_it():
    looked_back = replace(KEPT, reviews=(Review("k1"),))
    assert RemoveRecording("k1").apply(looked_back).reviews == ()


@pytest.mark.parametrize(
    "edit",
    [
        RemoveRecording("gone"),
        MatchRecording("k1", "gone"),
        RenameRecording("k1", "x" * 300),
        AddRecordings((replace(RUN, key="k2", packed=b"x" * (MOST_PACKED_BYTES + 1)),)),
        AddRecordings((replace(RUN, key="k2", packed=b""),)),
        AddRecordings((replace(RUN, key="k2", distance_m=float("nan")),)),
    ],
    ids=lambda edit: type(edit).__name__,
)
def test_what_cannot_be_is_refused(edit):
    with pytest.raises(PlanError):
        edit.apply(KEPT)

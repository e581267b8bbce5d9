"""Makes the sample file of the present version: `python -m tests.store.old.make`.

And renews the list of fields in packaging/file-format.md.
"""

import inspect
import subprocess
import sys
import typing
from enum import Enum
from pathlib import Path

from msgspec import Struct, structs
from msgspec.structs import replace

from tests.store.projects import full_course, full_project, small_project
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.store.database import VERSION
from ultraplanner_gui.store.project_file import ProjectFile

FOLDER = Path(__file__).parent
ROOT = FOLDER.parents[2]


def sample(version):
    return FOLDER / f"v{version}.ultraplan"


def outline(version):
    return FOLDER / f"v{version}.fields"


def earlier():
    return small_project("as it was")


#: What each version added, by class; a file of an earlier one has the defaults there.
ADDED = {
    1001: {
        "Race": ("mandatory_kit", "emergency"),
        "AidStation": ("cutoff_kind", "stop_kind", "kit", "pacer_from", "if_stop", "access"),
        "Section": ("name", "slope", "number"),
        "Course": (
            *("official_m", "official_climb_m", "official_drop_m", "pins"),
            *("surface_factors", "reading", "repairs"),
        ),
    },
    1002: {
        "Session": ("at_s", "surface", "ends_on", "heat", "mind", "repeats", "locked", "foods"),
        "Done": ("foods",),
        "AidStation": ("foods",),
        "Food": (*("protein_g", "fructose_g", "tolerance", "allergens", "is_carried", "per_pack"),),
        "FuelItem": ("at_m",),
        "FuelPlan": (
            *("keep", "carrying", "caffeine", "tank", "before", "allergens", "sweat_tests"),
        ),
        "Runner": (
            *("health", "weekly_s", "longest_s", "longest_drop_m", "hill_m_per_h", "start_s"),
            *("wishes", "away", "grounds"),
            *("descent_speed", "finish_spread", "tired_walk", "past_runs"),
        ),
        "Project": ("candidates", "conditions", "pacing", "logistics"),
        "Card": ("form", "copies", "leaves_out", "units", "locale"),
    },
    1003: {
        "IfThen": ("tried",),
        "Logistics": ("packed", "own_days"),
        "Project": ("head", "recordings", "reviews", "lessons"),
    },
}
FIRST_REPAIRS = full_course(40).repairs[:1]


def present(version=VERSION):
    """The project in the sample of *version* as it must come out."""
    project = full_project(sessions=12, points=40)
    for later in (added for since, added in ADDED.items() if since > version):
        project = without(project, later)
    return project


def without(value, added):
    """A copy of *value* with the fields in *added* at their defaults, all the way down."""
    if isinstance(value, tuple):
        return tuple(without(item, added) for item in value)
    if not isinstance(value, Struct):
        return value
    gone = added.get(type(value).__name__, ())
    changes = {
        f.name: f.default if f.name in gone else without(getattr(value, f.name), added)
        for f in structs.fields(value)
    }
    if "repairs" in gone:
        changes["repairs"] = FIRST_REPAIRS
    return replace(value, **changes)


def describe(kind=Project, known=None):
    """Every class and field that is kept, a line each."""
    known = {} if known is None else known
    for part in typing.get_args(kind):
        describe(part, known)
    if isinstance(kind, type) and kind not in known:
        if issubclass(kind, Enum):
            known[kind] = [f"{kind.__name__}: {', '.join(member.value for member in kind)}"]
        elif issubclass(kind, Struct):
            types = {}
            for base in reversed(kind.__mro__):
                types |= inspect.get_annotations(base)
            known[kind] = [f"{kind.__name__}.{n}: {types[n]}" for n in kind.__struct_fields__]
            for field in structs.fields(kind):
                describe(field.type, known)
    return sorted(line for lines in known.values() for line in lines)


def make(version=VERSION):
    """Write a project with one earlier state; to be kept for good once the version is out."""
    with ProjectFile.create(sample(version), earlier(), overwrite=True) as file:
        file.keep(present(), "Build the block")
    outline(version).write_text("\n".join(describe()) + "\n", "utf-8")
    subprocess.run([sys.executable, ROOT / "packaging" / "file_format.py"], check=True)


if __name__ == "__main__":
    make()

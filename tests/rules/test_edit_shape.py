import importlib

import pytest
from msgspec import structs

from tests.rules import source
from ultraplanner_gui.plan.value import Value


def _edits():
    """Return every public class of the edit modules."""
    found = []
    for path in sorted((source.PACKAGE / "edits").glob("*.py")):
        if path.stem in ("__init__", "edit"):
            continue
        module = importlib.import_module(f"ultraplanner_gui.edits.{path.stem}")
        for name, value in vars(module).items():
            own = isinstance(value, type) and value.__module__ == module.__name__
            if own and not name.startswith("_"):
                found.append(value)
    return found


@pytest.mark.parametrize("edit", _edits(), ids=lambda edit: edit.__name__)
def test_an_edit_is_a_frozen_value_with_label_gesture_and_apply(edit):
    assert issubclass(edit, Value)
    assert edit.__struct_config__.frozen
    assert isinstance(edit.label, str)
    assert 0 < len(edit.label) <= 60
    gesture = {field.name: field for field in structs.fields(edit)}["gesture"]
    assert gesture.default == 0
    assert callable(edit.apply)


def test_no_two_edits_share_a_label():
    labels = [edit.label for edit in _edits()]
    assert len(labels) == len(set(labels))

import pytest

from ultraplanner_gui.plan.message import CourseError, PlanError, Quantity, StoreError, message


@pytest.mark.parametrize("kind", [PlanError, CourseError, StoreError])
def test_error_carries_its_sentence_and_numbers_apart(kind):
    error = kind("The section to {0} takes {1}.", "Weir", Quantity(90.0, "s"))

    assert error.message == message("The section to {0} takes {1}.", "Weir", Quantity(90.0, "s"))
    assert str(error) == "The section to Weir takes 90 s."
    assert isinstance(error, PlanError)

from msgspec.structs import replace

from tests.desk.plans import plan
from ultraplanner_gui.desk.selection import Selection


def test_choosing_says_so_once(qtbot):
    selection, heard = Selection(), []
    selection.changed.connect(lambda: heard.append((selection.kind, selection.key)))
    selection.choose("session", "long")
    selection.choose("session", "long")
    selection.clear()
    selection.clear()
    assert heard == [("session", "long"), ("", "")]


def test_what_is_gone_from_the_project_is_selected_no_longer(qtbot):
    selection, project = Selection(), plan()
    selection.choose("session", "long")
    selection.forget_missing(project)
    assert selection.key == "long"
    selection.forget_missing(replace(project, block=project.block.without("long")))
    assert selection.kind == ""
    selection.choose("section", "finish")
    selection.forget_missing(project)
    assert selection.kind == ""

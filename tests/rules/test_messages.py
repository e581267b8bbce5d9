"""Text for people: marked as literals the extraction tool can read, and short where it refuses."""

import ast

from tests.rules import source

ERRORS = {"PlanError", "CourseError", "StoreError"}
LONGEST = 200


def _calls(*names: str) -> list[tuple[str, ast.Module, ast.Call]]:
    return [
        (f"{source.name(path)}:{node.lineno}", source.tree(path), node)
        for path in source.modules()
        for node in ast.walk(source.tree(path))
        if isinstance(node, ast.Call) and source.called_name(node) in names
    ]


def _marked_text(node: ast.expr) -> str | None:
    """Return the text of QT_TRANSLATE_NOOP("Context", "text")."""
    if isinstance(node, ast.Call) and source.called_name(node) == "QT_TRANSLATE_NOOP":
        return source.literal(node.args[1]) if len(node.args) == 2 else None
    return None


def _constants(module: ast.Module) -> dict[str, ast.expr]:
    return {
        target.id: statement.value
        for statement in module.body
        if isinstance(statement, ast.Assign)
        for target in statement.targets
        if isinstance(target, ast.Name)
    }


def test_marked_text_is_a_literal():
    unreadable = [
        where
        for where, _, call in _calls("QT_TRANSLATE_NOOP")
        if len(call.args) != 2 or None in map(source.literal, call.args)
    ]
    assert unreadable == []


def test_translated_text_is_a_literal():
    unreadable = [
        where
        for where, _, call in _calls("tr")
        if ast.unparse(call.func) == "self.tr"
        and (not call.args or source.literal(call.args[0]) is None)
    ]
    assert unreadable == []


def test_no_text_is_translated_inside_an_f_string():
    hidden = [
        f"{source.name(path)}:{node.lineno}"
        for path in source.modules()
        for outer in ast.walk(source.tree(path))
        if isinstance(outer, ast.JoinedStr)
        for node in ast.walk(outer)
        if isinstance(node, ast.Call) and source.called_name(node) == "tr"
    ]
    assert hidden == []


def test_errors_for_people_carry_marked_text():
    bare = [
        where
        for where, _, call in _calls(*ERRORS)
        if not call.args or isinstance(call.args[0], ast.Constant | ast.JoinedStr | ast.BinOp)
    ]
    assert bare == []


def test_errors_for_people_are_short():
    long = []
    for where, module, call in _calls(*ERRORS):
        first = call.args[0]
        if isinstance(first, ast.Name):
            first = _constants(module).get(first.id, first)
        if len(_marked_text(first) or "") > LONGEST:
            long.append(where)
    assert long == []

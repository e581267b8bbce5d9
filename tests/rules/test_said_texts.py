"""A text that Words says is a marked one: a literal there is collected by nobody."""

import ast

from tests.rules import source


def test_words_translates_no_literal():
    found = [
        f"{source.name(path)}:{node.lineno}"
        for path in source.modules()
        for node in ast.walk(source.tree(path))
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Attribute)
        and node.func.attr == "translate"
        and isinstance(node.func.value, ast.Name)
        and node.func.value.id in ("self", "words")
        and any(isinstance(one, ast.Constant) for one in node.args)
    ]
    assert found == []

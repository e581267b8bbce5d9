import ast

from tests.rules import source


def test_every_module_says_what_it_is_for():
    silent = [
        source.name(path)
        for path in source.modules()
        if path.stem != "__init__" and not ast.get_docstring(source.tree(path))
    ]
    assert silent == []


def test_public_names_below_qt_say_what_they_do():
    silent = [
        f"{source.name(path)}:{node.lineno} {node.name}"
        for path in source.qt_free_modules()
        for node in source.tree(path).body
        if isinstance(node, ast.FunctionDef | ast.ClassDef)
        and not node.name.startswith("_")
        and not ast.get_docstring(node)
    ]
    assert silent == []

import ast

from tests.rules import source

MODULE_LINES = 600
FUNCTION_LINES = 60


def test_no_module_passes_the_hard_stop():
    lengths = {source.name(p): len(p.read_text("utf-8").splitlines()) for p in source.all_python()}
    assert {name: n for name, n in lengths.items() if n > MODULE_LINES} == {}


def test_no_function_passes_the_hard_stop():
    too_long = [
        f"{source.name(path)}:{node.lineno} {node.name}"
        for path in source.all_python()
        for node in ast.walk(source.tree(path))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
        and (node.end_lineno or node.lineno) - node.lineno >= FUNCTION_LINES
    ]
    assert too_long == []

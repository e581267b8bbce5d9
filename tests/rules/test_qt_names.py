"""An attribute named like a method of Qt hides it from whoever calls it next."""

import ast
from collections.abc import Iterator

from PySide6 import QtCore, QtGui, QtPrintSupport, QtSvg, QtSvgWidgets, QtWidgets

from tests.rules import source

QT = (QtWidgets, QtGui, QtCore, QtPrintSupport, QtSvg, QtSvgWidgets)


def _classes() -> dict[str, tuple[str, ast.ClassDef]]:
    return {
        node.name: (source.name(path), node)
        for path in source.modules()
        for node in ast.walk(source.tree(path))
        if isinstance(node, ast.ClassDef)
    }


def _qt_names(base: str, classes: dict[str, tuple[str, ast.ClassDef]]) -> set[str]:
    """Return what *base* inherits from Qt, through the project's own classes if need be."""
    for module in QT:
        if base.startswith("Q") and hasattr(module, base):
            return {name for name in dir(getattr(module, base)) if not name.startswith("__")}
    if base not in classes:
        return set()
    return _inherited(classes[base][1], classes)


def _inherited(node: ast.ClassDef, classes: dict[str, tuple[str, ast.ClassDef]]) -> set[str]:
    bases = [ast.unparse(base).split(".")[-1] for base in node.bases]
    return set().union(*(_qt_names(base, classes) for base in bases if base != node.name))


def _assigned(node: ast.ClassDef) -> Iterator[tuple[int, str]]:
    for part in ast.walk(node):
        match part:
            case ast.Attribute(value=ast.Name(id="self"), attr=name, ctx=ast.Store()):
                yield part.lineno, name
    for statement in node.body:
        match statement:
            case ast.Assign(targets=[ast.Name(id=name)]) | ast.AnnAssign(target=ast.Name(id=name)):
                yield statement.lineno, name


def _hidden(classes: dict[str, tuple[str, ast.ClassDef]]) -> list[str]:
    return [
        f"{where}:{line} {node.name}.{name}"
        for where, node in classes.values()
        for line, name in _assigned(node)
        if name in _inherited(node, classes)
    ]


def test_no_attribute_hides_a_method_of_qt():
    assert _hidden(_classes()) == []


def test_the_rule_sees_through_a_class_of_our_own():
    text = "class A(QtWidgets.QWidget): pass\nclass B(A):\n def f(self): self.parent = 1"
    nodes = [n for n in ast.walk(ast.parse(text)) if isinstance(n, ast.ClassDef)]
    assert _hidden({n.name: ("text", n) for n in nodes}) == ["text:3 B.parent"]

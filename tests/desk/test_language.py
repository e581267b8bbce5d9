import ast

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator

from tests.rules import source
from ultraplanner_gui.desk.language import CONTEXTS, translated


def test_every_context_a_message_may_come_from_is_searched():
    marked = {
        source.literal(node.args[0])
        for path in source.qt_free_modules()
        for node in ast.walk(source.tree(path))
        if isinstance(node, ast.Call)
        and source.called_name(node) == "QT_TRANSLATE_NOOP"
        and len(node.args) == 2
    }
    assert marked - {None} - set(CONTEXTS) == set()


class Latin(QTranslator):
    def translate(self, context, text, disambiguation=None, n=-1):
        return "Cursus deest." if (context, text) == ("Store", "No course.") else None

    def isEmpty(self):
        return False


@pytest.fixture
def latin(qtbot):
    translator = Latin()
    QCoreApplication.installTranslator(translator)
    yield
    QCoreApplication.removeTranslator(translator)


def test_sentence_is_found_in_whatever_context_it_was_marked(latin):
    assert translated("No course.") == "Cursus deest."
    assert translated("Unknown.") == "Unknown."

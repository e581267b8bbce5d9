import re
import subprocess
from shutil import which

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QPageSize
from PySide6.QtTest import QTest

from ultraplanner_gui.window.handbook_html import contents
from ultraplanner_gui.window.handbook_pdf import write_handbook
from ultraplanner_gui.window.handbook_view import HandbookView
from ultraplanner_gui.wording.help.topics import TOPICS


class Told:
    def progress(self, share):
        assert 0.0 <= share <= 1.0


@pytest.fixture
def view(qtbot):
    view = HandbookView(lambda: None)
    qtbot.addWidget(view)
    view.show()
    return view


def test_every_line_of_the_contents_leads_somewhere(view):
    names = set(re.findall(r'<a name="([^"]*)"', view.text.toHtml()))
    lines = [line for top in contents() for line in (top, *top.under)]
    assert {line.anchor for line in lines} <= names


def test_every_link_leads_to_a_place(view):
    page = view.text.toHtml()
    links = set(re.findall(r'href="topic:([^"]*)"', page))
    assert links
    assert links <= set(re.findall(r'<a name="([^"]*)"', page))


def test_search_leaves_what_holds_every_word(view):
    QTest.keyClicks(view.search, "glycogen start")
    assert "glycogen at the start" in view.found()
    assert len(view.found()) < len(TOPICS) // 4
    QTest.keyClick(view.search, Qt.Key.Key_Return)
    assert view.text.verticalScrollBar().value() > 0
    view.search.clear()
    assert len(view.found()) > len(TOPICS)


def test_pictures_are_shown(view):
    document = view.text.document()
    assert document.pageCount() == 1
    shown = view.text.loadResource(2, "picture:sheet")
    assert not shown.isNull()


@pytest.mark.skipif(which("pdftotext") is None, reason="pdftotext reads the PDF back")
def test_the_pdf_says_what_the_window_says(qapp, tmp_path):
    path = write_handbook(Told(), tmp_path / "book.pdf", QPageSize(QPageSize.PageSizeId.A4))
    read = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, check=True)
    text = " ".join(read.stdout.decode().split())
    for topic in TOPICS.values():
        assert topic.title in text

"""The handbook as one page of HTML, for the window and for paper."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.window.help_html import Inks, as_html, link_to, paragraph, said
from ultraplanner_gui.wording import handbook
from ultraplanner_gui.wording.help.topic import Topic
from ultraplanner_gui.wording.help.topics import TOPICS

PICTURE = "picture"
STEP, WORTH, CAUTIONS = "step-{0}", "worth", "cautions"


class Entry(Value, frozen=True):
    """A line of the contents: where it leads, its title, all it says, and what stands under it."""

    anchor: str
    title: str
    text: str = ""
    under: tuple[Entry, ...] = ()


def contents() -> tuple[Entry, ...]:
    """Return the contents, two levels deep."""
    steps = tuple(
        Entry(STEP.format(n), _say(step.title), " ".join(map(_say, step.texts)))
        for n, step in enumerate(handbook.STEPS)
    )
    chapters = (
        Entry(f"chapter-{c.key}", c.title, under=tuple(map(_entry, c.topics)))
        for c in handbook.chapters(QCoreApplication.translate)
    )
    return (
        Entry("job", _say(handbook.JOB), under=steps),
        *chapters,
        Entry(WORTH, _say(handbook.WORTH)),
        Entry(CAUTIONS, _say(handbook.CAUTIONS), " ".join(map(_caution, _cautions()))),
    )


def handbook_html(inks: Inks, width: int, is_printed: bool = False) -> str:
    """Return the whole handbook, its pictures *width* wide; on paper chapters begin a page."""
    return "".join(_parts(inks, width, is_printed))


def _parts(inks: Inks, width: int, is_printed: bool) -> Iterator[str]:
    yield f"<h1>{escape(_say(handbook.TITLE))}</h1>"
    yield paragraph(_say(handbook.FIRST))
    yield _chapter("job", _say(handbook.JOB), False)
    for number, step in enumerate(handbook.STEPS):
        yield _title(STEP.format(number), _say(step.title))
        yield from (paragraph(_say(text)) for text in step.texts)
        yield f'<p><img src="{PICTURE}:{step.picture}" width="{width}"></p>'
        yield paragraph(", ".join(link_to(TOPICS[key], inks) for key in step.see), is_html=True)
    for chapter in handbook.chapters(QCoreApplication.translate):
        yield _chapter(f"chapter-{chapter.key}", chapter.title, is_printed)
        for topic in chapter.topics:
            yield _title(topic.key, said(topic.title))
            yield as_html(topic, inks)
    yield _chapter(WORTH, _say(handbook.WORTH), is_printed)
    for mark, worth in handbook.SUPPORT:
        yield _title(f"mark-{mark.name}", said(mark.value))
        yield paragraph(_say(worth))
        links = (link_to(topic, inks) for topic in handbook.supported_by(mark))
        yield paragraph(", ".join(links), is_html=True)
    yield _chapter(CAUTIONS, _say(handbook.CAUTIONS), is_printed)
    yield from (paragraph(_caution(text)) for text in _cautions())


def _chapter(anchor: str, title: str, on_new_page: bool) -> str:
    breaks = ' style="page-break-before: always"' if on_new_page else ""
    return f'<h2{breaks}><a name="{escape(anchor)}"></a>{escape(title)}</h2>'


def _title(anchor: str, title: str) -> str:
    return f'<h3><a name="{escape(anchor)}"></a>{escape(title)}</h3>'


def _entry(topic: Topic) -> Entry:
    words = (topic.words, topic.what, topic.how, topic.caution)
    return Entry(topic.key, said(topic.title), " ".join(said(text) for text in words if text))


def _cautions() -> tuple[str, ...]:
    return handbook.every_caution()


def _caution(text: str) -> str:
    return QCoreApplication.translate("Caution", text)


def _say(text: str) -> str:
    return QCoreApplication.translate(handbook.CONTEXT, text)

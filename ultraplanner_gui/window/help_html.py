"""Topics of the help as the small HTML that Qt shows and prints."""

from __future__ import annotations

from html import escape

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.theme import LIGHT, Colours, theme
from ultraplanner_gui.widgets.tokens import Pt
from ultraplanner_gui.wording.help.topic import Source, Topic
from ultraplanner_gui.wording.help.topics import TOPICS

HOW = QT_TRANSLATE_NOOP("Help", "Where the figure comes from")
SOURCE = QT_TRANSLATE_NOOP("Help", "Source")
CAUTION = QT_TRANSLATE_NOOP("Help", "Caution")
SEE = QT_TRANSLATE_NOOP("Help", "See also")


class Inks(Value, frozen=True):
    """Colours of the text, the size of its small heads in points, what stands between links."""

    ink: str
    soft: str
    clay: str
    teal: str
    small_pt: float
    between: str = "<br>"


def on_screen() -> Inks:
    """Return the inks of the window as it is now."""
    return _inks(theme().colours, Pt.NOTE * theme().scale)


def on_paper() -> Inks:
    """Return the inks of a printed page."""
    return replace(_inks(LIGHT, Pt.NOTE), between=", ")


def _inks(colours: Colours, small_pt: float) -> Inks:
    return Inks(colours.ink, colours.soft, colours.clay, colours.teal, small_pt)


def said(text: str) -> str:
    """Return a text marked in the context "Help" in the user's language."""
    return QCoreApplication.translate("Help", text) if text else ""


def as_html(topic: Topic, inks: Inks | None = None) -> str:
    """Return *topic* without its title, with *inks* or those of the window."""
    inks = inks or on_screen()
    parts = [paragraph(said(topic.what))]
    if topic.how:
        parts += [_head(HOW, inks.soft, inks), paragraph(said(topic.how))]
    if topic.sources:
        parts += [_head(SOURCE, inks.soft, inks), *(_source(s, inks) for s in topic.sources)]
    if topic.caution:
        parts += [_head(CAUTION, inks.clay, inks), paragraph(said(topic.caution))]
    if topic.see:
        links = inks.between.join(link_to(TOPICS[key], inks) for key in topic.see)
        parts += [_head(SEE, inks.soft, inks), paragraph(links, is_html=True)]
    return "".join(parts)


def paragraph(text: str, is_html: bool = False) -> str:
    """Return *text* as a paragraph."""
    shown = text if is_html else escape(text).replace("\n", "<br>")
    # A percent sign never stands alone at the start of a line.
    shown = shown.replace(" %", "&nbsp;%")
    return f'<p style="margin: 0 0 6px 0">{shown}</p>'


def link_to(topic: Topic, inks: Inks) -> str:
    """Return a link that names *topic*."""
    style = f"color: {inks.teal}"
    return f'<a href="topic:{escape(topic.key)}" style="{style}">{escape(said(topic.title))}</a>'


def _head(text: str, colour: str, inks: Inks) -> str:
    style = f"color: {colour}; font-size: {inks.small_pt:.1f}pt;"
    return f'<p style="margin: 8px 0 2px 0; {style}"><b>{escape(said(text))}</b></p>'


def _source(source: Source, inks: Inks) -> str:
    parts = [f"<b>{escape(said(source.mark.value))}.</b>"]
    if source.says:
        parts.append(escape(said(source.says)))
    if source.cite:
        parts.append(f'<span style="color: {inks.soft}">{escape(source.cite)}.</span>')
    return paragraph(" ".join(parts), is_html=True)

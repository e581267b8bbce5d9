"""Make the pictures of the README from the program itself: window and cards, of the demo.

    .venv/bin/python packaging/pictures.py [--today 2027-04-05] [--to FOLDER] [NAME ...]
    .venv/bin/python packaging/pictures.py --handbook          # those of the handbook's steps
    .venv/bin/python packaging/pictures.py --walk              # those of first-plan.md
    .venv/bin/python packaging/pictures.py --all FOLDER        # every state of the window, to check

Runs without a screen too. What is shown moves with today's date unless one is given.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from collections.abc import Callable, Iterable
from datetime import date
from pathlib import Path

import numpy as np
from pictures_languages import states_of
from pictures_states import STATES
from pictures_studio import (
    ROOT,
    Studio,
    held_tile,
    settle,
    taken,
)
from pictures_walk import WALK, form_over
from PySide6.QtCore import QLocale
from PySide6.QtGui import QColor, QImage, QPainter, Qt
from PySide6.QtWidgets import QApplication, QDialog

from ultraplanner_gui.cards.make import pages_of as card_pages_of
from ultraplanner_gui.cards.paint import measure, paint_page
from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.widgets.theme import register_fonts, theme

FOLDER = ROOT / "packaging" / "pictures"
WALK_FOLDER = FOLDER / "first-plan"
HANDBOOK_FOLDER = ROOT / "resources" / "handbook"
SMALL_SIZE = (1180, 720)
MOST_BYTES = 250_000
COLOURS, FLAT_COLOURS = 256, 64
CARD_PX_PER_MM = 6.0


# ---------------------------------------------------------------- the pictures


def sheet(studio: Studio) -> QImage:
    """Take the sheet by day."""
    return taken(studio.demo_window())


def sheet_dark(studio: Studio) -> QImage:
    """Take the sheet in the dark colours."""
    image = taken(studio.demo_window("dark"))
    theme().choose("light", 100)
    return image


def dragging(studio: Studio) -> QImage:
    """Take the sheet while a long run hangs over the week after its own."""
    window = studio.demo_window()
    let_go = held_tile(studio, window)
    image = taken(window, close=False)
    let_go()
    window.close()
    return image


def tables(studio: Studio) -> QImage:
    """Take the table of sessions, a long run in it selected."""
    window = studio.demo_window()
    assert window.workplace is not None
    window.workplace.selection.choose("session", studio.long_run(window).key)
    window.go("tables")
    return taken(window)


def desk(studio: Studio) -> QImage:
    """Take the desk of the cards."""
    window = studio.demo_window()
    window.go("cards")
    return taken(window)


def cards(studio: Studio) -> QImage:
    """Take the printed pages side by side."""
    window = studio.demo_window()
    assert window.document is not None
    image = pages_of(window.document.outlook, studio.settings)
    window.close()
    return image


def welcome(studio: Studio) -> QImage:
    """Take the window without a project."""
    return taken(studio.empty_window(SMALL_SIZE))


def form(studio: Studio) -> QImage:
    """Take the form as it opens over a course that was dropped."""
    return form_over(studio, resources.path("demo/course.gpx"), "Europe/London")


PICTURES: dict[str, Callable[[Studio], QImage]] = {
    "sheet": sheet,
    "sheet-dark": sheet_dark,
    "dragging": dragging,
    "tables": tables,
    "desk": desk,
    "cards": cards,
    "welcome": welcome,
    "form": form,
}


def candidates(studio: Studio) -> QImage:
    """Take the races to pick from, side by side."""
    return _form_of(studio, "candidates")


def week(studio: Studio) -> QImage:
    """Take the form that marks the sessions of this week."""
    return _form_of(studio, "this_week")


def crew(studio: Studio) -> QImage:
    """Take the form of crew and lists."""
    return _form_of(studio, "crew_form")


def race(studio: Studio) -> QImage:
    """Take race day alone, a section of it selected."""
    return _race_day(studio, "section")


def fuel(studio: Studio) -> QImage:
    """Take race day alone, an item of the fuel selected."""
    return _race_day(studio, "item")


def _form_of(studio: Studio, action: str) -> QImage:
    window = studio.demo_window()
    window.table.by_name[action].trigger()
    settle()
    (asked,) = window.findChildren(QDialog)
    image = asked.grab().toImage()
    asked.reject()
    window.close()
    return image


def _race_day(studio: Studio, kind: str) -> QImage:
    window = studio.demo_window()
    assert window.workplace is not None
    assert window.document is not None
    project = window.document.project
    assert project.course is not None
    key = project.course.sections[4].key if kind == "section" else project.fuel.items[6].key
    window.table.by_name["raceday_alone"].trigger()
    window.workplace.selection.choose(kind, key)
    return taken(window)


HANDBOOK: dict[str, Callable[[Studio], QImage]] = {
    "form": form,
    "candidates": candidates,
    "sheet": sheet,
    "dragging": dragging,
    "week": week,
    "race": race,
    "fuel": fuel,
    "crew": crew,
    "cards": desk,
    "tables": tables,
}
"""The pictures of the handbook's ten steps, by the name it calls them."""

POCKET_CARDS = (Card(CardKind.PACE), Card(CardKind.FUEL), Card(CardKind.HARD))


def pages_of(outlook: Outlook, settings: Settings) -> QImage:
    """Return the pages of the flat pocket cards beside each other on grey, all at one scale."""
    pages = [
        page
        for card in POCKET_CARDS
        for page in card_pages_of(card, outlook, settings.words(), measure)
    ]
    gap, mm = 6.0, CARD_PX_PER_MM
    width = sum(page.width_mm + gap for page in pages) + gap
    height = max(page.height_mm for page in pages) + 2 * gap
    image = QImage(round(width * mm), round(height * mm), QImage.Format.Format_RGB32)
    image.fill(QColor("#d9d2c3"))
    painter = QPainter(image)
    x = gap
    for page in pages:
        painter.resetTransform()
        painter.translate(round(x * mm), round(gap * mm))
        painter.fillRect(0, 0, round(page.width_mm * mm), round(page.height_mm * mm), "white")
        paint_page(painter, page, mm)
        x += page.width_mm + gap
    painter.end()
    return image


# ---------------------------------------------------------------- small files


def shrunk(image: QImage) -> QImage:
    """Return *image* with the 256 colours it has most of: a third of the bytes, hardly seen."""
    rgb = image.convertToFormat(QImage.Format.Format_RGB32)
    pixels = np.frombuffer(rgb.constBits(), np.uint32).reshape(rgb.height(), -1) & 0xFFFFFF
    colours, counts = np.unique(pixels, return_counts=True)
    most = colours[np.argsort(-counts, kind="stable")]
    flags = Qt.ImageConversionFlag.AvoidDither | Qt.ImageConversionFlag.ThresholdDither
    table = [int(c) | 0xFF000000 for c in _spread(most)]
    return rgb.convertToFormat(QImage.Format.Format_Indexed8, table, flags)


def _spread(colours: np.ndarray) -> list[int]:
    """Return COLOURS of *colours*: the most frequent, then others unlike any that is taken."""
    channels = np.stack([(colours >> shift) & 0xFF for shift in (16, 8, 0)], axis=1).astype(int)
    for apart in (6, 10, 14, 20, 28, 255):
        chosen = list(range(min(FLAT_COLOURS, len(colours))))
        for number in range(len(chosen), len(colours)):
            if np.abs(channels[chosen] - channels[number]).max(axis=1).min() >= apart:
                chosen.append(number)
            if len(chosen) > COLOURS:
                break
        if len(chosen) <= COLOURS:
            return [int(colours[number]) for number in chosen]
    return []


def main() -> int:
    """Make the pictures named, or all; return 1 if one is too large for the repository."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("names", nargs="*", metavar="NAME", help=f"of {', '.join(PICTURES)}")
    parser.add_argument("--today", type=date.fromisoformat, default=date.today())
    parser.add_argument("--to", type=Path, default=FOLDER)
    parser.add_argument("--handbook", action="store_true", help="those of the handbook")
    parser.add_argument("--walk", action="store_true", help="those of first-plan.md")
    parser.add_argument("--all", type=Path, metavar="FOLDER", help="every state, to be looked at")
    options = parser.parse_args()
    every = {**STATES, **states_of(STATES)}
    poses, folder = (every, options.all) if options.all else (PICTURES, options.to)
    if options.handbook:
        poses, folder = HANDBOOK, HANDBOOK_FOLDER
    elif options.walk:
        poses, folder = WALK, WALK_FOLDER if options.to == FOLDER else options.to
    unknown = set(options.names) - set(poses)
    if unknown:
        parser.error(f"there is no picture {', '.join(sorted(unknown))}")
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(prefix="pictures-", ignore_cleanup_errors=True) as home:
        os.environ["ULTRAPLANNER_HOME"] = home
        QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedKingdom))
        app = QApplication(sys.argv[:1])
        app.setStyle("Fusion")
        register_fonts()
        studio = Studio(Path(home), options.today)
        images = ((name, poses[name](studio)) for name in options.names or poses)
        if options.all is None:
            return int(_kept_small(images, folder))
        for name, image in images:
            image.save(str(folder / f"{name}.png"))
            print(name)
    return 0


def _kept_small(images: Iterable[tuple[str, QImage]], folder: Path) -> bool:
    """Write *images* in few bytes; return whether one is too large for the repository."""
    too_large = False
    for name, image in images:
        path = folder / f"{name}.png"
        shrunk(image).save(str(path), "PNG", 0)
        size = path.stat().st_size
        too_large |= size > MOST_BYTES
        print(f"{path.name}: {size / 1000:.0f} kB{' TOO LARGE' if size > MOST_BYTES else ''}")
    return too_large


if __name__ == "__main__":
    sys.exit(main())

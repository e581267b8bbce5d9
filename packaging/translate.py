"""Collect the texts of the program, and make what it reads its translations from.

dev.py translate              renew resources/translations: .ts from the code, .qm of it
dev.py translate pseudo DIR [long|leftward|both]
                              a made-up language in DIR, complete: longer and accented; read from
                              right to left; or both. ultraplanner-gui --translation shows it

A translator edits the .ts (any editor of that format does) and runs the first again.
"""

from __future__ import annotations

import re
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
FOLDER = ROOT / "resources" / "translations"
PLURALS, TRANSLATED = "en", ("de",)
_TOOLS = Path(sys.executable).parent
_PLACEHOLDER = re.compile(r"(\{[^{}]*\}|<[^<>]+>|&\w|%n|%L?\d)")
_ACCENTS = str.maketrans("aeiouncyAEIOUNCY", "áéíöüñçýÁÉÍÖÜÑÇÝ")
_WORD = 7
#: The made-up languages, and the real one each is read like: its direction and plurals.
#: CLDR has the same two as en-XA and ar-XB.
PSEUDO = {"long": "en", "leftward": "he", "both": "he"}
#: Right-to-left override, what ends it, and the mark that makes a line start at the right.
_OVERRIDE, _END, _MARK = "\u202e", "\u202c", "\u200f"


def collect(target: Path, *options: str) -> None:
    """Bring the texts in the .ts file *target* up to the code; no text for a warning."""
    sources = sorted(str(path) for path in (ROOT / "ultraplanner_gui").rglob("*.py"))
    listed = target.with_suffix(".lst")
    listed.write_text("\n".join(sources), "utf-8")
    try:
        _run(
            *("pyside6-lupdate", f"@{listed}", "-no-obsolete", "-locations", "none", "-silent"),
            *(*options, "-ts", str(target)),
        )
    finally:
        listed.unlink()


def release(source: Path, target: Path) -> None:
    """Make the .qm file *target* of the .ts file *source*; unfinished texts are left out."""
    _run("pyside6-lrelease", "-silent", str(source), "-qm", str(target))


def unfinished(source: Path) -> list[str]:
    """Return the texts in the .ts file *source* that have no translation."""
    messages = ET.parse(source).getroot().iter("message")
    return [m.findtext("source") or "" for m in messages if _is_unfinished(m)]


def pseudo_text(text: str) -> str:
    """Return *text* with accents and a third longer; placeholders and tags stay as they are."""
    if not text.strip():
        return text
    shown = _each_part(text, lambda part: part.translate(_ACCENTS))
    more = "~" * max(1, round(0.3 * len(text)))
    # In words of their own where there is more than one: no language ends in a word that long.
    words = " ".join(more[n : n + _WORD] for n in range(0, len(more), _WORD))
    return f"⟦{shown}{' ' if len(more) > _WORD else ''}{words}⟧"


def leftward_text(text: str) -> str:
    """Return *text* as if its letters were written from right to left; no longer than it was."""
    if not text.strip():
        return text
    return f"{_MARK}{_each_part(text, _overridden)}{_MARK}"


def _overridden(part: str) -> str:
    """Return *part* with each word written from right to left, wherever lines are broken."""
    return re.sub(r"\S+", lambda word: f"{_MARK}{_OVERRIDE}{word[0]}{_END}", part)


def _each_part(text: str, change: Callable[[str], str]) -> str:
    """Return *text* with *change* made to what stands between placeholders and tags."""
    parts = _PLACEHOLDER.split(text)
    return "".join(part if n % 2 else change(part) for n, part in enumerate(parts))


FORMS: dict[str, Callable[[str], str]] = {
    "long": pseudo_text,
    "leftward": leftward_text,
    "both": lambda text: leftward_text(pseudo_text(text)),
}


def pseudo(folder: Path, form: str = "long") -> Path:
    """Write the made-up language *form* into *folder* and return its .qm file."""
    folder.mkdir(parents=True, exist_ok=True)
    source = folder / f"pseudo-{form}.ts"
    source.unlink(missing_ok=True)
    collect(source, "-target-language", PSEUDO[form])
    tree = ET.parse(source)
    for message in tree.getroot().iter("message"):
        _fill(message, FORMS[form](message.findtext("source") or ""))
    tree.write(source, "utf-8", xml_declaration=True)
    release(source, source.with_suffix(".qm"))
    return source.with_suffix(".qm")


def bring_up(source: Path, language: str) -> None:
    """Bring the .ts file *source* of *language* up to the code; English needs its plurals alone."""
    only = ("-pluralonly",) if language == PLURALS else ()
    collect(source, "-target-language", language, "-source-language", "en", *only)


def renew() -> None:
    """Renew every translation and say what is missing; one that is not whole is not made use of."""
    FOLDER.mkdir(parents=True, exist_ok=True)
    for language in (PLURALS, *TRANSLATED):
        source = FOLDER / f"ultraplanner_{language}.ts"
        bring_up(source, language)
        missing = len(unfinished(source))
        if not missing:
            release(source, source.with_suffix(".qm"))
        print(f"{source.name}: {missing} texts without a translation")


def _fill(message: ET.Element, text: str) -> None:
    translation = message.find("translation")
    if translation is None:
        return
    translation.attrib.pop("type", None)
    forms = translation.findall("numerusform")
    for form in forms:
        form.text = text
    if not forms:
        translation.text = text


def _is_unfinished(message: ET.Element) -> bool:
    translation = message.find("translation")
    return translation is None or translation.get("type") == "unfinished"


def _run(tool: str, *arguments: str) -> None:
    subprocess.run([str(_TOOLS / tool), *arguments], check=True, cwd=ROOT)


if __name__ == "__main__":
    if sys.argv[1:2] == ["pseudo"]:
        print(pseudo(Path(sys.argv[2]), *sys.argv[3:4]))
    else:
        renew()

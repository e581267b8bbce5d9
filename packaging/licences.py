"""The licences of what the program is made of: python packaging/licences.py [LIST [FILE]].

Prints a line for each package of packaging/LIST (requirements.txt) as it is installed here, and
writes their full texts to FILE, which goes into every bundle. Exit code 1 if one is not known to
allow that.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from importlib.metadata import Distribution, PackageNotFoundError, distribution
from pathlib import Path

FOLDER = Path(__file__).resolve().parent
ROOT = FOLDER.parent

# Each allows a bundle under any licence; those of Qt and its bindings ask that their libraries can
# be exchanged, which holds for a folder of files, and that their text goes along.
ALLOWED = re.compile(
    r"^(MIT|BSD|Apache|PSF|Python|ISC|0BSD|Zlib|CC0|LGPL|MPL|Mozilla|OFL|Public domain|Dual)",
    re.IGNORECASE,
)
_TEXTS = re.compile(r"(^|/)(licen[cs]es?|copying|notice)([^/]*)$|(^|/)licenses/", re.I)


def packages(name: str) -> Iterator[Distribution]:
    """Yield the packages that the list *name* has for this machine, by name."""
    text = (FOLDER / name).read_text("utf-8")
    for found in sorted(set(re.findall(r"^([\w.-]+)==", text, re.MULTILINE))):
        try:
            yield distribution(found)
        except PackageNotFoundError:
            continue  # for another system


def licence(package: Distribution) -> str:
    """Return the licence *package* says it has, in few words."""
    told = package.metadata
    if expression := told.get("License-Expression"):
        return str(expression)
    classified = [
        line.rpartition("::")[2].strip()
        for line in told.get_all("Classifier") or ()
        if line.startswith("License ::") and "OSI Approved" not in line.rpartition("::")[2]
    ]
    said = (told.get("License") or "").strip().splitlines()
    return said[0][:60] if said and len(said[0]) < 60 else (classified or ["unknown"])[0]


def texts(package: Distribution) -> Iterator[tuple[str, str]]:
    """Yield the files of *package* that hold its licence: their name and what they say."""
    for file in package.files or ():
        if _TEXTS.search(str(file)) and file.suffix in (
            "",
            ".txt",
            ".md",
            ".rst",
            ".APACHE",
            ".BSD",
        ):
            path = Path(str(file.locate()))
            if path.is_file():
                yield file.name, path.read_text("utf-8", "replace")


def document(name: str) -> str:
    """Return the licences of the packages in the list *name*, in full where they bring the text."""
    parts = [
        "Ultraplanner is under the MIT licence, see LICENSE; its font under the SIL Open Font\n"
        "License, see resources/fonts/OFL.txt. What else is in this folder:\n"
        "\n"
        "Python, under the PSF licence; Qt and its Python bindings, under the GNU LGPL 3: their\n"
        "libraries lie beside the program as files and may be exchanged for your own.\n"
        "The text of that licence, and of the GNU GPL 3 it refers to, is in LGPL-3.txt and\n"
        "GPL-3.txt.\n"
    ]
    for package in packages(name):
        head = f"{package.metadata['Name']} {package.version}: {licence(package)}"
        parts.append(f"\n{'=' * 80}\n{head}\n{'=' * 80}\n")
        parts += [f"\n--- {title}\n\n{text.strip()}\n" for title, text in texts(package)]
    return "".join(parts)


def main(words: list[str]) -> int:
    """Print the table; write the texts if a file is named."""
    name = words[0] if words else "requirements.txt"
    unknown = 0
    for package in packages(name):
        says = licence(package)
        is_allowed = bool(ALLOWED.match(says))
        unknown += not is_allowed
        print(f"{'ok  ' if is_allowed else 'ASK '} {package.metadata['Name']:24} {says}")
    if len(words) > 1:
        Path(words[1]).write_text(document(name), "utf-8")
    return 1 if unknown else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

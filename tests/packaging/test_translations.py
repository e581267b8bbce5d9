"""Translations are whole, of the texts as they are, and keep marks of values and tags."""

import re
import shutil
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
sys.path.append(str(ROOT / "packaging"))

import translate  # noqa: E402

NAMES = [f"ultraplanner_{name}" for name in (translate.PLURALS, *translate.TRANSLATED)]
MARKS = re.compile(r"\{[^{}]*\}|<[^<>]+>|%n|%L?\d")


def messages(path):
    """Return the texts of a .ts file by context and source: the forms of their translation."""
    return {
        (context.findtext("name"), message.findtext("source")): [
            "".join(form.itertext())
            for form in (message.findall("translation/numerusform") or message.iter("translation"))
        ]
        for context in ET.parse(path).getroot().iter("context")
        for message in context.iter("message")
    }


@pytest.fixture(scope="module", params=NAMES)
def kept(request):
    return translate.FOLDER / f"{request.param}.ts"


def test_translations_are_of_these_texts(kept, tmp_path):
    new = tmp_path / kept.name
    shutil.copy(kept, new)
    translate.bring_up(new, kept.stem.rpartition("_")[2])
    assert messages(new).keys() == messages(kept).keys()


def test_what_the_program_reads_is_made_of_them(kept, tmp_path):
    translate.release(kept, tmp_path / "made.qm")
    assert (tmp_path / "made.qm").read_bytes() == kept.with_suffix(".qm").read_bytes()


def test_every_text_has_its_translation(kept):
    assert translate.unfinished(kept) == []


def test_marks_of_values_and_tags_are_kept(kept):
    for (_, source), forms in messages(kept).items():
        wanted = sorted(MARKS.findall(source))
        for form in forms:
            found = sorted(MARKS.findall(form))
            # one form of a plural may say its number as a word
            assert found == wanted or (len(forms) > 1 and set(wanted) - set(found) <= {"%n"}), form


def test_an_entry_of_a_menu_keeps_its_letter():
    for (context, source), (form, *_) in messages(translate.FOLDER / "ultraplanner_de.ts").items():
        if context == "Actions":
            assert ("&" in source) == ("&" in form), form

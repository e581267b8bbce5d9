import re

from tests.rules import source

MACHINE_PATH = re.compile(r"(?<![\w.~-])(/(work|root|home|Users)/\w|[A-Za-z]:\\+Users\\)")
REGISTRY = re.compile(r"pypi\.(org|python)|python[h]osted\.|deb\.debian\.|registry\.npm")


def _lines_with(pattern: re.Pattern[str]) -> list[str]:
    found = []
    for path in source.tracked():
        data = path.read_bytes()
        if b"\0" in data:
            continue
        for number, line in enumerate(data.decode("utf-8").splitlines(), 1):
            if pattern.search(line):
                found.append(f"{source.name(path)}:{number}")
    return found


def test_no_file_knows_a_folder_of_one_machine():
    assert _lines_with(MACHINE_PATH) == []


def test_no_file_names_a_package_registry():
    assert _lines_with(REGISTRY) == []

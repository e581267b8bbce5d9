import csv
import io

from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.exchange.csv_out import csv_bytes, guarded, unguarded

CELLS = st.text(st.characters(exclude_categories=("Cs",), exclude_characters="\0"))


def test_lines_and_quotes_are_those_of_rfc_4180():
    data = csv_bytes(["Place", "Way, km"], [['The "Hut"', "12.4"], ["two\nlines", "0"]])
    assert data.decode("utf-8") == (
        '\ufeffPlace,"Way, km"\r\n"The ""Hut""",12.4\r\n"two\nlines",0\r\n'
    )


@given(st.lists(CELLS, min_size=2, max_size=5))
def test_every_text_comes_back_and_none_is_a_formula(cells):
    data = csv_bytes(["a"] * len(cells), [cells]).decode("utf-8").removeprefix("\ufeff")
    (_, line) = csv.reader(io.StringIO(data, newline=""))
    assert [unguarded(cell) for cell in line] == cells
    assert not any(cell.startswith(("=", "@")) for cell in line)


def test_signed_figures_stay_figures_and_sums_are_held():
    assert guarded("-12.5") == "-12.5"
    assert guarded("+0:10") == "+0:10"
    assert guarded("-2+3+cmd|' /C calc'!A0") == "'-2+3+cmd|' /C calc'!A0"
    assert guarded("=1+1") == "'=1+1"

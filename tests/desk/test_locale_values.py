"""Numbers, days, weeks, paper and units in five locales, against CLDR.

CLDR 45 and later, as published by Unicode: number symbols and patterns from the locale data
through babel, which carries them; weeks, measurement system and paper from the supplemental data
(weekData, measurementData), typed in here.
"""

from datetime import date

import pytest
from babel import Locale
from babel.numbers import format_decimal
from PySide6.QtCore import QLocale

from ultraplanner_gui.cards.card_row import usual_card
from ultraplanner_gui.desk.language import plain_figures
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.cards import CardKind
from ultraplanner_gui.widgets.fields import DistanceField
from ultraplanner_gui.window.handbook_pdf import usual_paper
from ultraplanner_gui.wording.words import Words

MONDAY, FRIDAY, SATURDAY, SUNDAY = 0, 4, 5, 6
A4, LETTER = (210, 297), (216, 279)
#: weekData firstDay, measurementData measurementSystem and paperSize.
REGIONS = {
    "de_DE": (MONDAY, "km", A4),
    "en_GB": (MONDAY, "km", A4),
    "en_US": (SUNDAY, "mi", LETTER),
    "fr_FR": (MONDAY, "km", A4),
    "fr_CA": (SUNDAY, "km", LETTER),
    "ar_EG": (SATURDAY, "km", A4),
}
DAY = date(2027, 6, 19)
#: 12.5 in two other scripts.
ARABIC, DEVANAGARI = "\u0661\u0662\u066b\u0665", "\u0967\u0968.\u096b"


@pytest.fixture(params=REGIONS)
def region(request, qapp):
    usual = QLocale()
    QLocale.setDefault(plain_figures(QLocale(request.param)))
    yield request.param
    QLocale.setDefault(usual)


def test_numbers_are_those_of_cldr_in_plain_figures(region):
    """The narrow no-break space of French is the wider one, which the fonts have."""
    wanted = format_decimal(1234567.5, locale=region, numbering_system="latn")
    assert Words(locale=region).number(1234567.5, 1) == wanted.replace("\u202f", "\u00a0")


@pytest.mark.parametrize(
    ("locale", "text"),
    [
        ("de_DE", "Sa., 19. Juni 2027"),
        ("en_GB", "Sat, 19 Jun 2027"),
        ("en_US", "Sat, Jun 19, 2027"),
        ("fr_FR", "sam. 19 juin 2027"),
        ("ar_EG", "السبت، 19 يونيو 2027"),
    ],
)
def test_days_are_written_as_cldr_has_them(locale, text):
    """CLDR availableFormats, yMMMEd."""
    assert Words(locale=locale).day_and_year(DAY) == text


def test_weeks_units_and_paper_follow_the_region(region, tmp_path):
    first, unit, (width_mm, height_mm) = REGIONS[region]
    settings = Settings(tmp_path / "settings.ini")
    settings.locale = region
    assert settings.first_weekday() == first == Locale.parse(region).first_week_day
    if region != "fr_CA":  # Qt has the units of Canada, too; only the paper is asked for here
        settings.units = "system"
        assert settings.words().distance_unit == unit
    crew = usual_card(CardKind.CREW)
    assert (round(crew.width_mm), round(crew.height_mm)) == (width_mm, height_mm)
    paper = usual_paper(region).size(usual_paper(region).Unit.Millimeter)
    assert (round(paper.width()), round(paper.height())) == (width_mm, height_mm)


def test_fields_write_the_figures_the_rest_of_the_window_does(region, qtbot):
    """CLDR gives Egypt the digits arab; every figure here is one of 0 to 9."""
    words = Words(locale=region)
    field = DistanceField(words, 0.0, 900_000.0)
    qtbot.addWidget(field)
    field.set_metres(12_500.0)
    assert field.text().replace("\u00a0", " ") == words.distance(12_500.0).replace("\u00a0", " ")


@pytest.mark.parametrize("typed", ["12,5", "12.5", ARABIC, DEVANAGARI])
@pytest.mark.parametrize("locale", REGIONS)
def test_a_decimal_is_read_however_it_is_typed(locale, typed):
    """CLDR: the decimal sign of the digits arab is U+066B; digits are Unicode category Nd."""
    words = Words(locale=locale)
    assert words.parse_number(typed) == 12.5
    assert words.parse_distance(f"{typed} km") == 12_500.0


def test_times_are_read_in_arabic_figures():
    words = Words(locale="ar_EG")
    assert words.parse_duration("١٩:٤٢") == (19 * 60 + 42) * 60
    assert words.parse_clock("٠٦:٣٠").hour == 6
    assert words.parse_pace("٦:٣٢") == pytest.approx(0.392)


def test_a_decimal_comma_is_typed_into_a_field(qtbot, qapp):
    usual = QLocale()
    QLocale.setDefault(QLocale("de_DE"))
    try:
        field = DistanceField(Words(locale="de_DE"), 0.0, 90_000.0)
        qtbot.addWidget(field)
        field.selectAll()
        qtbot.keyClicks(field, "12,5")
        field.interpretText()
        assert field.metres == 12_500.0
    finally:
        QLocale.setDefault(usual)

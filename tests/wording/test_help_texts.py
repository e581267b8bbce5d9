import re
from datetime import date

import pytest

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine import (
    checks_runs,
    checks_weeks,
    climbs,
    environment,
    first_plan,
    odds,
    prediction,
    race_checks,
    runway,
    sections,
)
from ultraplanner_gui.engine.block_days import MOST_RUN_DAYS
from ultraplanner_gui.engine.block_dress import DROP_GROWTH
from ultraplanner_gui.engine.block_request import LEAST_FREE_S
from ultraplanner_gui.engine.check import RAMP_SOURCE, SINGLE_SOURCE, TAPER_SOURCE
from ultraplanner_gui.engine.fuel_placing import LAST_BEFORE_FINISH_S
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.profile import GRID_M, THRESHOLD_M, WINDOW_M
from ultraplanner_gui.engine.weeks import AFTER_MISSED
from ultraplanner_gui.exchange import course_line, course_pieces
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.science import elevation, fuelling, training
from ultraplanner_gui.science.gradient_cost import pace_cost
from ultraplanner_gui.science.surface import COST_FACTOR
from ultraplanner_gui.wording.help import (
    papers,
)
from ultraplanner_gui.wording.help.topic import Mark, Topic
from ultraplanner_gui.wording.help.topics import MODULES, TOPICS, search

CITED = (Mark.PUBLISHED, Mark.MEMORY)
ALL = list(TOPICS.values())


def told(topic: Topic) -> str:
    says = [source.says for source in topic.sources]
    return " ".join((topic.what, topic.how, topic.caution, *says))


def cites(key: str) -> str:
    return " ".join(source.cite for source in TOPICS[key].sources)


# The topics as such


def test_no_two_topics_share_a_key():
    assert sum(len(module.TOPICS) for module in MODULES) == len(TOPICS)


def test_no_two_topics_share_a_title():
    titles = [topic.title for topic in ALL]
    assert sorted(titles) == sorted(set(titles))


@pytest.mark.parametrize("topic", ALL, ids=TOPICS)
def test_links_lead_to_other_topics(topic):
    assert set(topic.see) <= TOPICS.keys() - {topic.key}
    assert len(set(topic.see)) == len(topic.see)


def test_every_topic_can_be_reached_by_links():
    reached, ahead = set(), {"help"}
    while ahead:
        reached |= ahead
        ahead = {link for key in ahead for link in TOPICS[key].see} - reached
    assert TOPICS.keys() - reached == set()


@pytest.mark.parametrize("topic", ALL, ids=TOPICS)
def test_a_figure_says_its_source(topic):
    assert topic.sources or not topic.how


NUMBER = re.compile(
    r"\d|\b(two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|third|quarter|twice)\b",
    re.IGNORECASE,
)
#: How the program's own things are worked: what has a number there is a key or an example.
OF_THE_PROGRAM = {
    *("help", "sheet", "ledger", "tables", "race day", "cards", "handbook", "typing in a table"),
}


@pytest.mark.parametrize("topic", ALL, ids=TOPICS)
def test_a_figure_anywhere_in_a_text_says_its_source(topic):
    told = " ".join((topic.what, topic.how, topic.caution))
    assert topic.sources or not NUMBER.search(told) or topic.key in OF_THE_PROGRAM


@pytest.mark.parametrize("topic", ALL, ids=TOPICS)
def test_published_means_a_paper_and_nothing_else_does(topic):
    for source in topic.sources:
        assert bool(source.cite) == (source.mark in CITED)


@pytest.mark.parametrize("topic", ALL, ids=TOPICS)
def test_texts_are_whole_sentences_and_few(topic):
    for text in (topic.what, topic.how, topic.caution):
        assert not text or text.endswith(".")
    said_first = topic.what.partition("\n")[0]
    assert len(said_first) <= 460
    assert len(re.findall(r"[.;?:] |[.:]$", said_first)) <= 8


def test_every_paper_has_a_year_and_a_place_and_is_cited():
    known = {name: text for name, text in vars(papers).items() if name.isupper()}
    named = {text for text in known.values() if re.fullmatch(r"[^0-9]+ (19|20)\d\d, .+", text)}
    assert set(known.values()) - named == {papers.USDA_SR}
    cited = {source.cite for topic in ALL for source in topic.sources}
    assert cited - {""} == set(known.values())


# What there is a topic for


def test_every_kind_of_session_has_a_topic():
    assert {kind.value for kind in Kind} <= TOPICS.keys()


def test_every_rule_of_the_build_up_has_a_topic():
    named = {
        value
        for module in (checks_runs, checks_weeks)
        for name, value in vars(module).items()
        if name in ("SINGLE", "HARD", "DOWNHILL", "TUNE_UP", "RAMP", "CUTBACK", "LONG_SHARE",
                    "TAPER", "CARBS", "ASKED")
    }  # fmt: skip
    assert len(named) == 10
    assert named <= TOPICS.keys()


@pytest.fixture(scope="module")
def outlook():
    today = date(2027, 4, 5)
    return derive(demo_project(today), None, today)


def test_every_check_of_a_plan_cites_what_its_topic_cites(outlook):
    checks = (*outlook.checks, *outlook.fuel.checks)
    assert len({check.rule for check in checks}) > 12
    for check in checks:
        for paper in re.findall(r"[A-Z]\w+ (?:et al\. |& \w+ )?\d{4}", str(check.source)):
            author, year = paper.split()[0], paper.split()[-1]
            assert re.search(rf"{author}\b.*{year}", cites(check.rule)), (check.rule, paper)


@pytest.mark.parametrize(
    ("key", "source"),
    [("ramp", RAMP_SOURCE), ("single run", SINGLE_SOURCE), ("taper", TAPER_SOURCE)],
)
def test_a_rule_is_no_better_founded_in_the_help_than_in_its_check(key, source):
    assert re.search(r"\w+ et al\. \d{4}", str(source)).group() in cites(key)


# Figures in the texts are those of the program

RUNNER = Runner()


def percent(*shares):
    return [f"{100 * share:.0f}" for share in shares]


def asked(level, field):
    asks = runway.race_asks(100_000.0, 15 * 3600.0, level)
    return f"{getattr(asks, field) / 1000:.0f}"


@pytest.mark.parametrize(
    ("key", "template", "figures"),
    [
        ("cutback", "{} to {} %", percent(*training.CUTBACK_RANGE)),
        ("taper", "{} to {} %", percent(*training.TAPER_CUT_RANGE)),
        ("taper", "{} and {} %", percent(*training.SHORT_TAPER_SHARES)),
        ("taper", "{}, {} and {} %", percent(*training.LONG_TAPER_SHARES)),
        ("ramp", "1.10 times that of the last loading week; strains to {:.2f}",
         [checks_weeks.RAMP_STRAINS]),
        ("long-run share", "up to {} % holds, with four {} %, with five {} %, with more {} %",
         percent(*training.LONG_SHARES.values(), training.LONG_SHARE_OF_MANY)),
        ("long-run share", "{} % just enough, {} % usual, {} % ambitious",
         percent(*checks_weeks.LEVEL_SHARE.values())),
        ("long-run share", "{} % beyond strains", percent(training.LONG_SHARE_SLACK)),
        ("single run", "{} calendar days", [training.WINDOW_DAYS]),
        ("downhill", "no more than {} days", [checks_runs.DOWNHILL_GAP_DAYS]),
        ("downhill", "is {} to {} days before", checks_runs.DOWNHILL_LAST_DAYS),
        ("downhill", "more than {:.0f} m", [checks_runs.DOWNHILL_RACE_M]),
        ("downhill", "than {} times", [DROP_GROWTH]),
        ("of last loading week", "to {} %, three to {} %, four to {} %",
         percent(*AFTER_MISSED[2:])),
        ("missed training", "to {} %, three to {} %, four to {} %", percent(*AFTER_MISSED[2:])),
        ("what the race asks", "week of {}, {} or {} km",
         [asked(level, "peak_week_m") for level in Level]),
        ("what the race asks", "run of {}, {} or {} km",
         [asked(level, "longest_m") for level in Level]),
        ("what the race asks", "holds from {} % of what is asked, strains from {} %",
         percent(checks_weeks.ASKED_HOLDS, checks_weeks.ASKED_STRAINS)),
        ("runway", "at least {} % is reached, strains from {} %",
         percent(runway.REACHED, runway.NEARLY)),
        ("weekly climb", "to {} of it for just enough, {} for usual",
         [runway.CLIMB_SHARE[Level.FLOOR], runway.CLIMB_SHARE[Level.USUAL]]),
        ("tune-up race", "{} under three hours, {} under six, {} under twelve, {} under a day",
         [training.easy_days_after(h * 3600.0) for h in (2, 5, 11, 23)]),
        ("free minutes", "less than {:.0f} minutes", [LEAST_FREE_S / 60]),
        ("free minutes", "{} days are used at most", [{6: "Six"}[MOST_RUN_DAYS]]),
        ("finish aimed for", "at {} %", percent(first_plan.KEPT_SPEED)),
        ("pace model", "times {:g} in the dark", [1.0 - RUNNER.night_loss]),
        ("arrival window", "{} x T x (s x (1 - s)) to the power {}",
         [sections.WINDOW_AT_HALF, sections.WINDOW_POWER]),
        ("arrival window", "scatters by {} %", percent(odds.FINISH_SPREAD)),
        ("finish window", "{} times", [odds.NORMAL_90]),
        ("odds", "{:,} simulated races", [odds.RACES]),
        ("odds", "From {} on it holds, under {} it", [race_checks.ODDS_HOLD,
                                                      race_checks.ODDS_STRAIN]),
        ("heat", "from {:.0f}, high from {:.0f}, very high from {:.0f} degrees",
         [race_checks.WARM_C, race_checks.HOT_C, race_checks.TOO_HOT_C]),
        ("lamp", "from {} %", percent(race_checks.LAMP_SPARE)),
        ("walk-in limit", "times {}", [RUNNER.tired_walk]),
        ("night loss", "{} % on trails", percent(RUNNER.night_loss)),
        ("effects", "Heat: {:.1f} % per degree", [100.0 * environment.HEAT_LOSS]),
        ("predicted finish", "{:.2f} to {:.2f} up to {:.0f} h", [*prediction.EXPONENTS[0][1:],
                                                                prediction.EXPONENTS[0][0]]),
        ("predicted finish", "counts as {} % slower", percent(prediction.LONG_RUN_SLOWER)),
        ("profile", "averaged over {:.0f} m and read every {:.0f} m", [WINDOW_M, GRID_M]),
        ("climb and drop", "less than {:.0f} m", [THRESHOLD_M]),
        ("mended file", "up to {:.0f} km", [course_pieces.LONGEST_BRIDGE_M / 1000]),
        ("mended file", "jumps {:.0f} m or more", [course_line.STRAY_M]),
        ("mended file", "more than {:.0f} m, steeper", [elevation.SPIKE_HEIGHT_M]),
        ("mended file", "where {} % of the way would be steeper than {} %",
         percent(elevation.FEET_STEEP_SHARE, elevation.FEET_STEEP)),
        ("mended file", "above {:,.0f} m", [elevation.NO_RACE_ABOVE_M]),
        ("which line", "if 95 % of it lies within {:.0f} m", [course_pieces.SAME_GROUND_M]),
        ("surface",
         "gravel {:.2f}, smooth trail {:.2f}, grass {:.2f}, technical trail {:.2f}, rock {:.2f}, "
         "snow {:.2f}, sand {:.2f}",
         [COST_FACTOR[s] for s in ("gravel", "smooth trail", "grass", "technical trail", "rock",
                                   "snow", "sand")]),
        ("climbs and descents", "least {:.0f} m and at most {:.0f} m",
         [climbs.LEAST_HEIGHT_M, climbs.MOST_HEIGHT_M]),
        ("climbs and descents", "more than {0} % of its way",
         percent(climbs.LEVEL_GRADIENT)),
        ("climbs and descents", "{:.0f} km that rise less than 1 %",
         [climbs.SHORTEST_PLATEAU_M / 1000]),
        ("gradient and pace", "{:.2f} at -6 %, {:.2f} at -13 %, {:.2f} at -22 % and",
         [float(pace_cost(i)) for i in (-0.06, -0.13, -0.22)]),
        ("gradient and pace", "gravel {:.2f}, smooth trail {:.2f}, technical trail {:.2f}, rock",
         [COST_FACTOR[s] for s in ("gravel", "smooth trail", "technical trail")]),
        ("gut training", "From 40 to 80 g/h that is {}.",
         [{6: "six"}[fuelling.weeks_of_gut_training(40.0, 80.0)]]),
        ("carry", "times {:.2f}", [fuelling.carry_need(1.0, 3600.0)]),
        ("fluid", "{:.0f} mL an hour holds, up to {:.0f} strains",
         [fuelling.MUCH_FLUID_ML_PER_H, fuelling.MOST_FLUID_ML_PER_H]),
        ("sodium", "above {:.0f} mg an hour. One mmol is {} mg",
         [fuelling.MOST_SODIUM_MG_PER_H, fuelling.SODIUM_MG_PER_MMOL]),
        ("caffeine", "3 mg per kg and {:.0f} mg within an hour, and the lower of 6 mg per kg and "
         "{:.0f} mg", fuelling.caffeine_limits_mg(100.0)),
        ("carb ceiling", "Strains above {:.0f} g/h, of glucose alone or in all; breaks above "
         "{:.0f} on average or above {:.0f}",
         [fuelling.MOST_GLUCOSE_G_PER_H, fuelling.MOST_MIXED_G_PER_H,
          fuelling.MOST_STUDIED_G_PER_H]),
        ("carb advice", "{:.0f} to {:.0f} g/h from three hours on",
         fuelling.recommended_carb_g_per_h(3 * 3600.0)),
        ("placing fuel", "last {:.0f} minutes", [LAST_BEFORE_FINISH_S / 60]),
        ("load", "An hour at 4 of 10 is {:.0f}", [training.session_load(4, 3600.0)]),
    ],
)  # fmt: skip
def test_the_help_tells_the_figures_in_force(key, template, figures):
    assert template.format(*figures) in told(TOPICS[key])


# Search


def found(query):
    return [topic.key for topic in search(query, str)]


def test_a_search_for_nothing_lists_everything_by_title():
    titles = [topic.title.casefold() for topic in search("  ", str)]
    assert len(titles) == len(TOPICS)
    assert titles == sorted(titles)


def test_a_title_comes_before_a_word_in_passing():
    assert found("time in hand")[0] == "time in hand"
    assert found("ramp")[0] == "ramp"
    assert "weekly distance" in found("ceiling")


def test_words_people_use_find_what_the_program_calls_otherwise():
    assert found("salt")[0] == "sodium"
    assert "runway" in found("enough time")
    assert "arrival window" in found("probability")


def test_every_word_must_be_there():
    assert found("caffeine coffee") == ["caffeine"]
    assert found("caffeine zebra") == []


def test_search_reads_the_users_language():
    def german(text):
        return {"Sodium": "Natrium"}.get(text, text)

    assert [topic.key for topic in search("natrium", german)] == ["sodium"]

"""By whose rule is it due: every rule set tells its limits, where the tank stands, the room left, chance and date."""

from __future__ import annotations

import io
from datetime import timedelta

import pytest

from selfcheck.domain.verdict import Judgement
from selfcheck.loading import content_place
from selfcheck.plain.pages import show
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.report.rule_lines import RuleLine, rule_lines
from selfcheck.report.wording import verdict_screen
from tests.cases import TODAY, judged, verdict_words


def lines_of(found: Judgement) -> dict[str, RuleLine]:
    return {line.id: line for line in rule_lines(found, verdict_words(), "us")}


def test_every_rule_set_tells_each_of_its_limits() -> None:
    found = judged()
    for row, line in ((row, lines_of(found)[row.rule_set.id]) for row in found.by_rule_set):
        assert len(line.limits) == len(row.rule_set.limits)
        assert line.text.split("\n")[1:] == [*line.limits, line.source]
        for standing, told in zip(row.standings, line.limits, strict=True):
            if standing.margin is None:
                assert "no reading tells it" in told
            else:
                assert "limit " in told
                assert "chance over: " in told
                assert ("room " in told) == (standing.margin >= 0)
                assert ("±" in told) == (standing.limit.kind != "years")


def test_each_rule_set_says_whose_text_it_is_and_how_it_was_seen() -> None:
    found = {name: line.source.removeprefix("source: ") for name, line in lines_of(judged()).items()}
    by, day = "US Environmental Protection Agency", "compared November 25, 2026"
    assert found["mn-7080-2450"] == f"Minnesota Revisor of Statutes, 2024, Maintenance, own text read, {day}"
    assert found["nh-1023-01"] == f"State of New Hampshire, 1023.01, read where others print it, {day}"
    assert found["us-epa-2002"] == f"{by}, EPA/625/R-00/008, 2002, section 4.6, from memory, not looked up"
    assert found["common-practice"] == "habit of the trade, no text"


def test_the_figures_are_those_of_the_judgement() -> None:
    over = lines_of(judged(sludge=[26, 26]))["us-epa-homeowner"]
    assert "sludge to outlet 5 in, limit 12 in; past it by 7 ± 1 in; chance over: over 99%" in over.limits
    assert over.text.startswith("US EPA, advice to owners (your rule): pump it out")


def test_the_deciding_rule_set_comes_first_with_its_day() -> None:
    first = rule_lines(judged(), verdict_words(), "us")[0]
    assert first.own
    assert first.due
    assert f"due around {first.due}" in first.text


@pytest.mark.parametrize("case", [{"no_check": True}, {"seen": {"sludge": [], "scum_above": []}}])
def test_what_no_reading_tells_is_said_with_its_limit(case: dict[str, object]) -> None:
    own = lines_of(judged(case))["us-epa-homeowner"]
    assert "sludge to outlet: limit 12 in; no reading tells it" in own.limits


def test_figures_of_an_earlier_day_are_told_with_it() -> None:
    found = judged({"today": str(TODAY + timedelta(days=200))})
    assert lines_of(found)["us-epa-homeowner"].limits[-1] == "as read on May 18, 2026"


@pytest.mark.parametrize("units", ["us", "metric"])
def test_a_row_is_read_at_sixty_columns(units: str) -> None:
    page = verdict_screen(judged(sludge=[26, 26]), verdict_words(), units)  # type: ignore[arg-type]
    for line in page.rules:
        assert all(len(told) <= 118 for told in line.limits), line
        assert len(line.source) <= 177, line
    told = io.StringIO()
    show(page, Speaker(told, 60), Words(content_place(None)))
    assert max(map(len, told.getvalue().splitlines())) <= 60
    assert page.not_used[0] in " ".join(told.getvalue().split())

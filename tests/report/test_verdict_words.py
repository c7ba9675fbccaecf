"""The verdict in words: everything has words, they are short and plain, and the page says all it must."""

from __future__ import annotations

import itertools
import re
from typing import Any

import pytest
import textstat

from selfcheck.domain.limits import LENGTHS, SHARES
from selfcheck.domain.signs import OF_CHECK, SEVERAL
from selfcheck.errors import ContentProblem
from selfcheck.report.finding_text import Units, VerdictWords, chance_in_words, text_of
from selfcheck.report.summary import judgement_json
from selfcheck.report.wording import VerdictPage, verdict_screen
from tests.cases import all_signs, judged, verdict_words, written_cases

BANNED = re.compile(r"!|\b(invalid|please|sorry|oops|great|well done|perfect)\b", re.IGNORECASE)


def texts() -> list[tuple[str, str]]:
    """Every sentence in the three files with its place."""
    words = verdict_words()
    found: list[tuple[str, str]] = []
    for name, tables in (("findings", words.findings), ("signs", words.signs), ("verdicts", words.verdicts)):
        for ident, table in tables.items():
            for key, value in table.items():
                lines = value if isinstance(value, list) else [value]
                found += [(f"{name}.{ident}.{key}", line) for line in lines if line]
    return found


def page_text(page: VerdictPage) -> str:
    parts: list[str] = []
    for name in ("headline", "do", "by", "sure", "kind"):
        parts.append(getattr(page, name))
    for name in ("seen", "why", "when_next", "would_change", "always"):
        parts += getattr(page, name)
    return " ".join(part for part in parts if part)


def test_words_are_short_and_plain() -> None:
    for place, text in texts():
        assert not BANNED.search(text), place
        for sentence in re.split(r"(?<=[.:;])\s+", text):
            assert len(sentence.split()) <= 20, place


@pytest.mark.parametrize("case", written_cases(), ids=lambda case: case["id"])
def test_every_case_has_a_whole_page(case: dict[str, Any]) -> None:
    found = judged(case)
    page = verdict_screen(found, verdict_words())
    assert page.headline
    assert page.do
    assert page.sure
    assert page.when_next
    assert page.because
    assert all(one in judgement_json(found, verdict_words())["because"] for one in page.because)
    overdue = page.headline == verdict_words().say("headline", "time_to_look")
    assert bool(page.kind) == (found.verdict == "cannot_tell" and not overdue)
    ahead = found.look_again > found.today
    assert bool(page.by) == (found.verdict != "carry_on" or ahead)
    assert any("not an inspection" in line for line in page.always)
    assert any("local code" in line for line in page.always)
    assert len(page.rule_rows) == len(found.by_rule_set)
    assert "{" not in page_text(page)
    assert len(re.split(r"(?<=\.)\s+", page.headline)) <= 2


def test_a_page_reads_at_grade_six_or_under() -> None:
    for ident in ("low", "over", "tee", "backup", "unknown"):
        seen: dict[str, Any] = {
            "low": {},
            "over": {"sludge": [14, 14]},
            "tee": {"outlet_tee": "missing"},
            "backup": {"house": ["sewage_backup"]},
            "unknown": {"level": "unknown"},
        }[ident]
        page = verdict_screen(judged(**seen), verdict_words())
        told = " ".join([page.headline, page.do, *page.seen, *page.why, *page.would_change, *page.always])
        assert textstat.flesch_kincaid_grade(told) <= 6.0, (ident, textstat.flesch_kincaid_grade(told))


def test_every_sign_has_words_with_a_next_step() -> None:
    words = verdict_words()
    for sign in all_signs():
        table = words.signs[sign.id]
        assert table["seen"]
        assert table["do"]
        assert table["means"]
        assert (len(table["means"]) > 1) == bool(table.get("tell")), sign.id
        if sign.verdict == "cannot_tell":
            assert table["short"], sign.id
        if sign.verdict == "call_now":
            assert "today" in table["do"], sign.id
        if sign.verdict in ("call_soon", "call_now"):
            assert re.search(r"professional|service", table["do"]), sign.id
    assert set(words.signs) == {sign.id for sign in all_signs()}


def test_every_kind_of_limit_has_words() -> None:
    words = verdict_words()
    for kind in (*LENGTHS, *SHARES, "sludge_to_outlet_by_table", "years"):
        assert {"{now}", "{limit}", "{rule}"} <= set(re.findall(r"\{\w+\}", words.findings[kind]["text"]))


def test_nobody_is_told_to_open_or_enter_a_tank() -> None:
    for place, text in texts():
        assert not re.search(
            r"\b(climb|enter|lean over|reach in|lift the lid|take the lid off|open the (tank|lid))\b", text
        ), place


def test_figures_are_in_the_households_units() -> None:
    words = verdict_words()
    us = verdict_screen(judged(sludge=[14, 14]), words, "us")
    metric = verdict_screen(judged(sludge=[14, 14]), words, "metric")
    assert "14 ± ¾ in" in " ".join(us.seen)
    assert re.search(r"36 ± [0-9]+ cm", " ".join(metric.seen))
    assert "May 18, 2026" in us.seen[0]
    assert "18 May 2026" in metric.seen[0]


def test_two_faults_are_both_told() -> None:
    page = verdict_screen(judged(sludge=[14, 14], outlet_tee="missing"), verdict_words())
    assert "pump the tank out" in page.do
    assert "put in a new outlet tee" in page.do


def test_missing_words_are_named() -> None:
    words = verdict_words()
    fewer = VerdictWords(words.findings, {}, words.verdicts, words.sources)
    found = judged(lid="cracked")
    with pytest.raises(ContentProblem, match="lid_cracked"):
        text_of(found.findings[0], fewer, "us", {})


@pytest.mark.parametrize(
    ("chance", "said"), [(0.0, "under 1%"), (0.004, "under 1%"), (0.1, "10%"), (0.999, "over 99%")]
)
def test_chances_in_words(chance: float, said: str) -> None:
    assert chance_in_words(chance) == said


@pytest.mark.parametrize("case", written_cases()[::4], ids=lambda case: case["id"])
def test_the_json_has_its_form(case: dict[str, Any]) -> None:
    import json

    found = judged(case)
    told = json.loads(json.dumps(judgement_json(found, verdict_words())))
    assert told["verdict"] == found.verdict
    assert told["call_professional"] == (found.verdict in ("call_soon", "call_now", "danger"))
    assert set(told["layers"]) == {
        "liquid_depth_m", "sludge_m", "scum_m", "scum_below_m", "clear_zone_m", "solids_by_depth", "solids_by_volume",
        "sludge_to_outlet_m", "scum_to_outlet_m", "detention_days",
    }  # fmt: skip
    assert told["because"].endswith(".")
    assert all({"id", "verdict", "text", "source", "chance_over"} <= set(one) for one in told["findings"])
    assert all({"id", "title", "chance_over", "over", "due"} <= set(one) for one in told["by_rule_set"])
    assert {"litres_per_person_year", "due", "check_again_by"} <= set(told["forecast"])
    assert isinstance(told["missing"], list)
    assert isinstance(told["questionable"], list)


def test_the_json_layers_by_hand() -> None:
    # 4½ in of sludge, 1 in of crust above the water: 3 in whole, 2 in below; outlet edge 17 in under 48 in of liquid
    told = judgement_json(judged(), verdict_words())["layers"]
    inches = {name: value / 0.0254 for name, value in told.items() if name.endswith("_m")}
    assert inches == pytest.approx(
        {"liquid_depth_m": 48, "sludge_m": 4.5, "scum_m": 3, "scum_below_m": 2, "clear_zone_m": 41.5,
         "sludge_to_outlet_m": 26.5, "scum_to_outlet_m": 15}, abs=0.01
    )  # fmt: skip
    assert told["solids_by_depth"] == pytest.approx(7.5 / 48, abs=1e-3)


def test_what_to_do_says_each_thing_once() -> None:
    signs = [sign for sign in all_signs() if len(sign.when) == 1 and not sign.given]
    seen = {name: values for sign in signs if sign.verdict == "call_now" for name, values in sign.when.items()}
    answers = {name: [one[0]] if name in SEVERAL else one[0] for name, one in seen.items() if name not in OF_CHECK}
    pairs = [dict(pair) for pair in itertools.combinations(answers.items(), 2)]
    assert pairs
    for case in pairs:
        told = verdict_screen(judged(**case), verdict_words()).do
        sentences = re.split(r"(?<=\.)\s+", told)
        assert len(sentences) == len(set(sentences)), told
        assert not ("Stop using water" in told and "as little water" in told), told


def test_a_shared_call_ends_the_steps() -> None:
    told = verdict_screen(judged(house=["slow_all_drains", "gurgling"], yard=["wet_smelly"]), verdict_words()).do
    assert told.endswith("Call a licensed professional today.")
    assert told.count("Call a licensed professional today.") == 1
    assert "Keep children and pets off." in told


@pytest.mark.parametrize(
    ("units", "form"), [("us", r"about [\d.]+ gal \([\d.]+ (L|m³)\)"), ("metric", r"(L|m³) \([\d.]+ gal\)")]
)
def test_the_units_of_the_household_stand_first_in_its_rate(units: Units, form: str) -> None:
    page = verdict_screen(judged(), verdict_words(), units)
    (rate,) = (line for line in page.when_next if "solids a person" in line)
    assert re.search(form, rate), rate


def test_what_was_read_in_the_second_part_is_told_as_of_there() -> None:
    second = {"sludge": [{"m": 0.5}], "scum_total": [{"m": 0.03}]}
    found = judged({"set": {"check.seen.second_compartment": second, "household.tanks.0.compartments": 2}})
    page = verdict_screen(found, verdict_words())
    assert any(line.startswith("In the second part: sludge, what has sunk, ends") for line in page.why)
    assert "In the second part: scum 1¼ ± ½ in, sludge 19¾ ± ¾ in." in page.seen
    assert any(line.startswith("In the first part, this household leaves") for line in page.when_next)


RECKONED = [
    ({}, {}, "The crust was estimated from its top"),
    ({}, {"scum_above": [], "scum_below": [2]}, "The crust was estimated from its underside"),
    ({}, {"scum_above": [], "scum_total": [3]}, "How deep the crust hangs was estimated"),
    (
        {"household.tanks.0.outlet_bottom_below_surface_m": "null"},
        {},
        "hang 16¾ in (43 cm) below the full water line (WAC",
    ),
    (
        {"household.tanks.0.shape": {"kind": "unknown"}},
        {},
        "by the number of bedrooms, give or take 25%. It is the least of this table: Uniform Plumbing Code, "
        "septic tank capacity by bedrooms (read where others print it).",
    ),
    (
        {"household.tanks.0.shape": {"kind": "unknown"}, "household.bedrooms": "null"},
        {},
        "A common one is taken: 1,000",
    ),
]


@pytest.mark.parametrize(("facts", "seen", "said"), RECKONED)
def test_what_was_not_read_but_reckoned_is_said_with_its_source(
    facts: dict[str, object], seen: dict[str, object], said: str
) -> None:
    page = verdict_screen(judged({"set": facts, "seen": seen}), verdict_words())
    assert any(said in line for line in page.seen), page.seen


def test_an_outlet_that_was_assumed_is_not_said_to_be_read() -> None:
    assumed = verdict_screen(
        judged({"set": {"household.tanks.0.outlet_bottom_below_surface_m": "null"}}), verdict_words()
    )
    assert any("since the outlet's lower edge was not measured" in line for line in assumed.why)
    assert not any("lower edge exactly" in line for line in assumed.why)
    assert any("lower edge exactly" in line for line in verdict_screen(judged(), verdict_words()).why)


def test_nothing_is_said_to_be_reckoned_where_all_was_read() -> None:
    page = verdict_screen(judged(scum_below=[2]), verdict_words())
    assert not any("estimated" in line or "taken" in line or "guess" in line for line in page.seen)
    without = verdict_screen(judged(sludge=[]), verdict_words()).seen
    assert not any("runs in is" in line for line in without)

"""What the conversation says of the lid's weight and of the marks, against the domain's own figures."""

from __future__ import annotations

from datetime import date

import pytest

from selfcheck.domain.household import Household, Lid
from selfcheck.domain.lid import moving
from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Answered, Context
from selfcheck.interview.phrases import FILLS, filled
from selfcheck.interview.predicates import holds
from selfcheck.interview.routing import is_barred
from selfcheck.loading import content_place, rules, script

PLACE = content_place(own=False)
YEARLY = script(PLACE, "yearly")
TODAY = date(2026, 6, 1)
BOX = {"kind": "box", "length_m": 2.44, "width_m": 1.27}


def context(units: str = "us", **tank: object) -> Context:
    known = Household.model_validate({"units": units, "tanks": [{"id": "main", **tank}]})
    return Context(TODAY, known, rule_sets=rules(PLACE), units=units)  # type: ignore[arg-type]


def answered(**told: object) -> Answered:
    found = Answered()
    for name, value in told.items():
        found[name] = Answer(name, "value", value)  # type: ignore[arg-type]
    return found


LIDS = {
    "one_person": {"form": "round", "diameter_m": 0.5, "thickness_m": 0.02, "material": "plastic"},
    "two_people": {"form": "round", "diameter_m": 0.4, "thickness_m": 0.05, "material": "concrete"},
    "lever": {"form": "round", "diameter_m": 0.61, "thickness_m": 0.076, "material": "concrete"},
    "professional": {"form": "round", "diameter_m": 0.7, "thickness_m": 0.12, "material": "concrete"},
}
SAID = {
    "one_person": "is within that",
    "two_people": "it takes two",
    "lever": "from the far side",
    "professional": "leave it to a professional",
}


@pytest.mark.parametrize("advice", list(LIDS))
def test_the_weight_on_record_gives_one_advice(advice: str) -> None:
    about = context(lid=LIDS[advice])
    words = YEARLY.words_of("lid_weight")
    text = filled(f"{words.before} {words.ask}", YEARLY, Answered(), about)
    assert SAID[advice] in text
    assert not any(other in text for name, other in SAID.items() if name != advice)
    assert "NIOSH" in text
    assert "not for a pull or a bar" in text
    assert not holds("lid_size_wanted", Answered(), about)
    assert holds("lid_weighed", Answered(), about)


def test_what_is_told_now_counts_as_what_is_on_record() -> None:
    told = answered(lid_form="round", lid_diameter=0.6096, lid_thickness=0.0762, lid_material="concrete")
    assert FILLS["lid_weighs"](told, context()) == "114 to 118 lb (52 to 53 kg)"
    assert FILLS["lid_weighs"](told, context("metric")) == "52 to 53 kg (114 to 118 lb)"
    rectangle = answered(
        lid_form="rectangular", lid_side=0.6, lid_width=0.5, lid_thickness=0.05, lid_material="concrete"
    )
    assert FILLS["lid_weighs"](rectangle, context()) is not None


def test_without_a_thickness_no_weight_is_told() -> None:
    told = answered(lid_form="round", lid_diameter=0.6)
    assert not holds("lid_weighed", told, context())
    assert FILLS["lid_weighs"](told, context()) is None
    assert holds("lid_size_wanted", Answered(), context())
    assert not holds("lid_size_wanted", Answered(), context(lid={"form": "round"}))


def test_a_heavy_lid_called_light_is_questioned() -> None:
    for advice, choice, odd in (
        ("lever", "firm_light", True),
        ("lever", "firm_heavy", False),
        ("professional", "firm_light", True),
        ("one_person", "firm_light", False),
    ):
        assert holds("lid_heavier_than_said", answered(gate_lid=choice), context(lid=LIDS[advice])) is odd


@pytest.mark.parametrize("advice", list(LIDS))
@pytest.mark.parametrize("material", ["concrete", None])
def test_two_with_a_bar_do_not_open_what_is_for_a_professional(advice: str, material: str | None) -> None:
    lid = {**LIDS[advice], "material": material} if material is None else LIDS[advice]
    about = context(lid=lid)
    node, odd = YEARLY.nodes["gate_lid"], YEARLY.words_of("gate_lid").barred["lid_for_professional"]
    told = answered(gate_lid="firm_heavy")
    for_two = is_barred(node, "firm_heavy", told, about)
    assert for_two is (moving(Lid.model_validate(lid)).advice == "professional")
    if for_two:
        assert "may weigh" in filled(odd, YEARLY, told, about)
    assert for_two or advice != "professional"
    light = filled(YEARLY.words_of("gate_lid").barred["lid_not_light"], YEARLY, told, about)
    assert ("two of you and a bar" in light) is not for_two
    assert ("leave it shut" in light) is for_two


def test_a_lid_too_wide_to_be_lifted_at_all_is_not_said_to_be_good_for_nothing() -> None:
    wide = context(lid={"form": "round", "diameter_m": 0.9, "thickness_m": 0.12, "material": "concrete"})
    words = YEARLY.words_of("lid_weight")
    text = filled(f"{words.before} {words.ask}", YEARLY, Answered(), wide)
    assert "0 lb" not in text
    assert "leave it to a professional" in text


@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_marks_are_those_of_the_domain(units: str) -> None:
    from selfcheck.domain.marks import marks
    from selfcheck.domain.shapes import vessel
    from selfcheck.domain.showing import show_length

    about = context(units, shape=BOX, liquid_depth_m=1.22, outlet_bottom_below_surface_m=0.43)
    tank = about.household.tank()
    found = marks(about.rule_sets["us-epa-homeowner"], tank, vessel(tank), about.units)
    words = YEARLY.words_of("marks")
    text = filled(f"{words.before} {words.ask}", YEARLY, Answered(), about)
    for metres in (found.wet_line_m, found.book_sludge_m, found.outlet_edge_m, found.book_scum_m):
        assert metres is not None
        assert show_length(metres, about.units) in text
    assert "guess" not in text


def test_a_guessed_outlet_is_called_a_guess_and_an_unknown_tank_has_no_marks() -> None:
    words = YEARLY.words_of("marks")
    guessed = context(shape=BOX, liquid_depth_m=1.22)
    assert "which is a guess" in filled(words.ask, YEARLY, Answered(), guessed)
    assert not holds("marks_known", Answered(), context())

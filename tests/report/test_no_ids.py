"""No name that only programs use stands on anything a person reads: verdict, page, sheet, note, dates ahead."""

from __future__ import annotations

import html
import io
import json
import re
from pathlib import Path
from typing import Any, get_args

import pytest

from selfcheck.domain.check import Seen
from selfcheck.domain.household import Lid, Occupancy, Tank
from selfcheck.loading import sources
from selfcheck.plain.pages import show
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.report.wording import verdict_screen
from selfcheck.sitting import papers
from tests.cases import BASE, rule_sets, verdict_words
from tests.sitting.desks import PLACE, opened

ROUNDS = 7  # as many as the field with the most answers has
SHAPES: list[dict[str, Any]] = [
    {"kind": "box", "length_m": 2.4, "width_m": 1.3},
    {"kind": "upright", "diameter_m": 1.8},
    *({"kind": "drum", "diameter_m": 1.5, "length_m": 2.2, "ends": ends} for ends in ("flat", "dished", "round")),
    {"kind": "oval", "width_m": 1.5, "height_m": 1.5, "length_m": 2.2},
    {"kind": "table", "heights_m": [0.5, 1.5], "volumes_m3": [1.0, 4.0]},
    {"kind": "unknown"},
]


def choices(model: Any, name: str) -> list[Any]:
    """The words that a field may hold, "unknown" and several at once included."""
    found: list[Any] = []

    def look(kind: Any) -> None:
        for one in get_args(kind):
            found.append(one) if isinstance(one, str) else look(one)

    look(model.model_fields[name].annotation)
    return found


def record(folder: Path, turn: int) -> Path:
    """A household, with another word of each field in each turn."""
    house = json.loads(json.dumps(BASE["household"]))
    tank, check = house["tanks"][0], json.loads(json.dumps(BASE["check"]))

    def take(model: Any, name: str) -> Any:
        words = choices(model, name)
        return words[turn % len(words)]

    tank |= {"shape": SHAPES[turn % len(SHAPES)], "material": take(Tank, "material"), "compartments": 1 + turn % 2}
    tank["lid"] = {"form": take(Lid, "form"), "diameter_m": 0.6, "material": take(Lid, "material"), "thickness_m": 0.05}
    house["occupancy"][0]["disposal"] = take(Occupancy, "disposal")
    house |= {"units": ("us", "metric")[turn % 2], "rules": list(rule_sets())[turn]}
    for name in Seen.model_fields:
        if name in ("yard", "house"):
            check["seen"][name] = [one for one in choices(Seen, name) if one != "unknown"][turn % 5 :]
        elif name not in ("readings", "second_compartment", "people_hurt") and choices(Seen, name):
            check["seen"][name] = take(Seen, name)
    check["seen"]["readings"] = {
        name: [{"m": m * 0.0254} for m in found] for name, found in check["seen"]["readings"].items()
    }
    if turn % 2:
        check["seen"]["second_compartment"] = {"sludge": [{"m": 0.1 * turn}], "scum_total": [{"m": 0.02}]}
    for name, kind, data in (
        ("household.json", "household", house),
        ("checks/2026-05-18.json", "check", check),
        ("pump_outs/2024-05-20.json", "pump-out", BASE["pump_out"]),
    ):
        file = folder / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(json.dumps({"format": f"selfcheck-{kind}", "version": 1, **data}), encoding="utf-8")
    return folder


@pytest.mark.parametrize("turn", range(ROUNDS))
def test_no_id_is_shown(tmp_path: Path, turn: int) -> None:
    sitting = opened(record(tmp_path / "home", turn))
    assert not sitting.problems
    told = [*papers.sheet_lines(sitting), papers.note_text(sitting).decode()]
    page = papers.PAPERS["page"].make(sitting).decode()
    told.append(html.unescape(re.sub(r"<style.*?</style>|<[^>]+>", " ", page, flags=re.DOTALL)))
    out = io.StringIO()
    show(verdict_screen(sitting.judgement(), verdict_words()), Speaker(out, 80), Words(PLACE))
    shown = "\n".join((*told, out.getvalue()))
    ids = {*rule_sets(), *sources(PLACE), "fibreglass", "cast_iron"}
    raw = {word for word in re.findall(r"[A-Za-z0-9_-]+", shown) if word in ids or re.search("[a-z]_[a-z]", word)}
    assert not raw

"""Write the tables of `selfcheck/interview/hazard_weights.py` anew from the lines of the tests.

python -m tests.benchmarks.hazard_weights [--hold-out PART]

Two logistic regressions with a quadratic penalty: whether a line tells of a danger, by pairs of concepts; and of which,
by single concepts. The pairs that say most are kept. With --hold-out, nothing is written: one part of the lines is left
out, and what is found of it is printed.
"""

from __future__ import annotations

import argparse
import textwrap
import tomllib
from collections import Counter
from functools import partial
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize  # type: ignore[import-untyped]
from scipy.sparse import csr_matrix  # type: ignore[import-untyped]

from selfcheck.interview import hazard_weighing
from selfcheck.interview.hazard_sentences import Sentence
from selfcheck.interview.hazard_telling import told_as_so
from selfcheck.interview.hazard_weighing import ALONE, Feature, features
from selfcheck.interview.hazard_words import normal
from selfcheck.interview.hazards import VERDICTS, find

_LINES = Path(__file__).parents[1] / "interview" / "hazard_lines.toml"
_TABLES = Path(hazard_weighing.__file__).with_name("hazard_weights.py")
_LEAST_LINES = 3  # a pair in fewer lines says nothing
_PENALTY = 2.0
_PAIRS = 2600
_SINGLES = 700
_HARMLESS = "harmless"
_TENTHS = 10

Line = tuple[str, str]
Numbers = NDArray[np.float64]


def main() -> None:
    """Read the lines, learn, and write or print."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--hold-out", default="")
    left_out = parser.parse_args().hold_out
    parts = tomllib.loads(_LINES.read_text(encoding="utf-8"))
    learned = [line for name, part in parts.items() if name != left_out for line in _lines(part)]
    danger, hazard = _learn(learned)
    if not left_out:
        _TABLES.write_text(_module(danger, hazard), encoding="utf-8")
        return
    hazard_weighing._for_danger = partial(hazard_weighing._read, danger)  # type: ignore[assignment]
    hazard_weighing._for_hazard = partial(hazard_weighing._read, hazard)  # type: ignore[assignment]
    held = _lines(parts[left_out])
    told = [text for text, kind in held if kind != _HARMLESS]
    fired = [text for text, kind in held if kind == _HARMLESS and find(text) is not None]
    missed = [text for text in told if find(text) is None]
    print(f"missed {len(missed)} of {len(told)}, wrongly asked {len(fired)} of {len(held) - len(told)}")
    print("\n".join((*missed, "", *fired)))


def _lines(part: dict) -> list[Line]:  # type: ignore[type-arg]
    told = [(text, hazard) for hazard, lines in part["told"].items() for text in lines]
    return [*told, *((text, _HARMLESS) for text in part["harmless"])]


def _learn(lines: list[Line]) -> tuple[str, str]:
    """What each pair says of danger, and each concept of which danger."""
    rows, meant = [], []
    for text, hazard in dict(lines).items():
        line = normal(text)
        sentences = [sentence for part in line.split("||") if told_as_so(sentence := Sentence(part), line)]
        found = set().union(*(features(sentence) for sentence in sentences))
        if found:
            rows.append(found)
            meant.append(hazard)
    many = Counter(feature for row in rows for feature in row)
    known = [feature for feature, lines_with in many.items() if lines_with >= _LEAST_LINES]
    is_told = np.array([[hazard != _HARMLESS] for hazard in meant], dtype=float)
    first, _ = _fit(rows, known, is_told)
    said = np.abs(first[:, 0]) * np.sqrt([many[feature] for feature in known])
    kept = [known[place] for place in np.argsort(-said)[:_PAIRS]]
    pairs, base = _fit(rows, kept, is_told)

    told = [place for place, hazard in enumerate(meant) if hazard != _HARMLESS]
    singles = [feature for feature in known if feature[1] == ALONE]
    each = np.array([[meant[place] == hazard for hazard in VERDICTS] for place in told], dtype=float)
    by_hazard, bases = _fit([rows[place] for place in told], singles, each)
    least = np.sort(np.abs(by_hazard).ravel())[-_SINGLES]
    danger = _table([(ALONE, ALONE, base[0]), *((*kept[at], pairs[at, 0]) for at in range(len(kept)))])
    which = [(ALONE, hazard, bases[at]) for at, hazard in enumerate(VERDICTS)]
    for at, (concept, _) in enumerate(singles):
        which += [(concept, hazard, by_hazard[at, of]) for of, hazard in enumerate(VERDICTS)
                  if abs(by_hazard[at, of]) >= least]  # fmt: skip
    return danger, _table(which)


def _fit(rows: list[set[Feature]], known: list[Feature], meant: Numbers) -> tuple[Numbers, Numbers]:
    """Weights by feature and column of `meant`, and what is added to each column; each column is taken by itself."""
    place = {feature: at for at, feature in enumerate(known)}
    inside = [[place[feature] for feature in row if feature in place] for row in rows]
    ends = np.cumsum([0, *(len(row) for row in inside)])
    held = csr_matrix((np.ones(ends[-1]), [at for row in inside for at in row], ends), (len(rows), len(known)))
    turned = held.T.tocsr()
    sign = 2 * meant - 1
    shape = (len(known) + 1, meant.shape[1])

    def loss(flat: Numbers) -> tuple[float, Numbers]:
        weights = flat.reshape(shape)
        margin = sign * (held @ weights[:-1] + weights[-1])
        pull = -sign / (1 + np.exp(np.clip(margin, -50, 50)))
        slope = np.vstack([turned @ pull + _PENALTY * weights[:-1], pull.sum(axis=0)])
        return float(np.logaddexp(0, -margin).sum() + _PENALTY / 2 * (weights[:-1] ** 2).sum()), slope.ravel()

    fitted = minimize(loss, np.zeros(shape).ravel(), jac=True, method="L-BFGS-B", options={"maxiter": 300})
    weights = fitted.x.reshape(shape)
    return weights[:-1], weights[-1]


def _table(entries: list[tuple[str, str, float]]) -> str:
    table: dict[str, list[str]] = {}
    for concept, other, weight in sorted(entries):
        if tenths := round(_TENTHS * weight):
            table.setdefault(concept, []).append(f"{other} {tenths}")
    return "; ".join(f"{concept} {' '.join(listed)}" for concept, listed in table.items())


def _module(danger: str, hazard: str) -> str:
    head = (
        '"""What pairs of concepts say of danger, and single ones of which: tenths of a natural logarithm of odds.\n\n'
        "Written by `python -m tests.benchmarks.hazard_weights`; not to be edited by hand. How they are read\n"
        'stands in `hazard_weighing.py`.\n"""\n\nfrom __future__ import annotations\n'
    )
    return "\n".join((head, _written("FOR_DANGER", danger), _written("FOR_HAZARD", hazard)))


def _written(name: str, table: str) -> str:
    lines = textwrap.wrap(table, 112, break_long_words=False, break_on_hyphens=False)
    ends = [" "] * (len(lines) - 1) + [""]
    body = "\n".join(f'    "{line}{end}"' for line, end in zip(lines, ends, strict=True))
    return f"{name} = (\n{body}\n)\n"


if __name__ == "__main__":
    main()

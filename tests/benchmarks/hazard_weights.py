"""Write `selfcheck/loading/hazard_weights.tsv` anew from the lines of the tests.

python -m tests.benchmarks.hazard_weights [--without PART PART …]

Three logistic regressions: whether a line tells of a danger, and whether of one to life, by pairs of concepts and of
words, each weighed by how rare it is (tf-idf); and of which, by single concepts and words. The terms that say most are
kept. With --without, nothing is written: each of these parts of the lines is read by what all others teach, and what
comes out is printed. Needs scikit-learn, which neither the assistant nor its tests do.
"""

from __future__ import annotations

import argparse
import tomllib
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
from scipy.sparse import hstack
from sklearn.feature_extraction.text import TfidfVectorizer
from sklearn.linear_model import LogisticRegression
from sklearn.preprocessing import normalize

from selfcheck.interview import hazard_weighing
from selfcheck.interview.hazard_sentences import sentences_in
from selfcheck.interview.hazard_weighing import GROUPS, Terms, terms
from selfcheck.interview.hazard_words import normal
from selfcheck.interview.hazards import VERDICTS, find
from selfcheck.loading import hazard_weights

_LINES = Path(__file__).parents[1] / "interview" / "hazard_lines.toml"
_LEAST_LINES = 2  # a term in fewer lines says nothing
#: how little the weights are held back (the inverse of the penalty), chosen with --without
_FREE, _FREE_KINDS = 30.0, 1.0
_KEPT = {"concepts": 12000, "words": 12000}
_KINDS_KEPT = 2000
_HARMLESS = "harmless"

Line = tuple[str, str, str]


def main() -> None:
    """Read the lines, learn, and write or print."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--without", nargs="+", default=[], metavar="PART")
    without = parser.parse_args().without
    parts = tomllib.loads(_LINES.read_text(encoding="utf-8"))
    lines = [(name, text, hazard) for name, part in parts.items() for text, hazard in _lines(part)]
    found = [_terms(text) for _, text, _ in lines]
    told = np.array([hazard != _HARMLESS for *_, hazard in lines])
    if not without:
        hazard_weights.TABLES.write_text(_tables(lines, found, told), encoding="utf-8")
    with TemporaryDirectory() as place:
        for name in without:
            _print_across(name, lines, found, told, Path(place, "weights.tsv"))


def _tables(lines: list[Line], found: list[Terms], told: np.ndarray) -> str:
    hazards = [hazard for *_, hazard in lines]
    dangers = [one for one, yes in zip(found, told, strict=True) if yes]
    kinds = [hazard for hazard in hazards if hazard != _HARMLESS]
    life = np.array([VERDICTS.get(hazard) == "danger" for hazard in hazards])
    rows = [*_danger_rows(found, told, life), *_kind_rows(dangers, kinds)]
    return "".join("\t".join(map(str, row)) + "\n" for row in rows)


def _lines(part: dict) -> list[tuple[str, str]]:
    told = [(text, hazard) for hazard, lines in part["told"].items() for text in lines]
    return [*told, *((text, _HARMLESS) for text in part["harmless"])]


def _terms(text: str) -> Terms:
    return terms(sentences_in(normal(text)))


def _vectors(found: list[Terms], group: str) -> tuple[TfidfVectorizer, object]:
    vectorizer = TfidfVectorizer(analyzer=sorted, min_df=_LEAST_LINES)
    return vectorizer, vectorizer.fit_transform([one[group] for one in found])


def _fitted(matrices: list, told: np.ndarray) -> LogisticRegression:
    return LogisticRegression(C=_FREE, max_iter=1000).fit(hstack(matrices).tocsr(), told)


def _danger_rows(found: list[Terms], told: np.ndarray, life: np.ndarray) -> list[list[object]]:
    """The terms that say most of danger, learned once more by themselves; and what they say of a danger to life."""
    held = {group: _vectors(found, group) for group in GROUPS}
    first = _fitted([matrix for _, matrix in held.values()], told).coef_[0]
    kept, matrices, at = {}, [], 0
    for group, (_, matrix) in held.items():
        many = np.asarray((matrix > 0).sum(axis=0)).ravel()
        said = np.abs(first[at : at + len(many)]) * np.sqrt(many)
        at += len(many)
        kept[group] = np.sort(np.argsort(-said)[: _KEPT[group]])
        matrices.append(normalize(matrix[:, kept[group]]))
    models = [_fitted(matrices, told), _fitted([matrix[told] for matrix in matrices], life[told])]
    rows: list[list[object]] = [["bases", *(round(100 * model.intercept_[0]) for model in models)]]
    at = 0
    for group, (vectorizer, _) in held.items():
        names = vectorizer.get_feature_names_out()
        for place in kept[group]:
            says = (vectorizer.idf_[place], *(model.coef_[0][at] for model in models))
            rows.append([group, names[place], *(round(100 * figure) for figure in says)])
            at += 1
    return rows


def _kind_rows(found: list[Terms], hazards: list[str]) -> list[list[object]]:
    """What single concepts and words say of which danger it is."""
    singles = [
        {f"{group} {term}" for group in GROUPS for term in one[group] if not set(term) & {"+", " "}} for one in found
    ]
    vectorizer = TfidfVectorizer(analyzer=sorted, min_df=3, use_idf=False, norm=None)
    matrix = vectorizer.fit_transform(singles)
    order = list(VERDICTS)
    model = LogisticRegression(C=_FREE_KINDS, max_iter=1000).fit(matrix, [order.index(hazard) for hazard in hazards])
    rows: list[list[object]] = [["hazard", name, round(100 * model.intercept_[at])] for at, name in enumerate(order)]
    names = vectorizer.get_feature_names_out()
    for place in np.sort(np.argsort(-np.abs(model.coef_).max(axis=0))[:_KINDS_KEPT]):
        says = [f"{name}={round(100 * model.coef_[at, place])}" for at, name in enumerate(order)]
        rows.append(["kind", names[place], *(one for one in says if abs(int(one.split("=")[1])) >= 20)])
    return rows


def _print_across(name: str, lines: list[Line], found: list[Terms], told: np.ndarray, place: Path) -> None:
    """What comes of one part's lines when only the others have taught."""
    here = np.array([part == name for part, *_ in lines])
    rest = np.flatnonzero(~here)
    place.write_text(_tables([lines[at] for at in rest], [found[at] for at in rest], told[rest]), encoding="utf-8")
    hazard_weights.TABLES = place
    hazard_weighing._tables.cache_clear()
    own = [line for line, yes in zip(lines, here, strict=True) if yes]
    heard = {text: find(text) for _, text, _ in own}
    dangers = [(text, hazard) for _, text, hazard in own if hazard != _HARMLESS]
    missed = [text for text, _ in dangers if heard[text] is None]
    milder = [text for text, hazard in dangers if (one := heard[text]) and VERDICTS[hazard] == "danger" != one.verdict]
    wrongly = [text for _, text, hazard in own if hazard == _HARMLESS and heard[text]]
    print(f"{name}: missed {len(missed)} and milder {len(milder)} of {len(dangers)}, "
          f"wrongly {len(wrongly)} of {len(own) - len(dangers)}", flush=True)  # fmt: skip
    for kind, texts in (("missed", missed), ("milder", milder), ("wrongly", wrongly)):
        print("".join(f"  {kind}: {text}\n" for text in texts), end="")


if __name__ == "__main__":
    main()

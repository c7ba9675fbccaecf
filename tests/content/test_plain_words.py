"""The words that people read: easy, short, calm."""

from __future__ import annotations

import re

import textstat

from tests.content.texts import caution_text, flows, headed, screens, section_files, sentences, texts, word_count

HARDEST_GRADE = 6.0
LONGEST_SENTENCE = 20
MOST_BEFORE = 3
FORBIDDEN = re.compile(
    r"\b(invalid|please|sorry|oops|error|great job|well done|congratulations|awesome|easy|simply|obviously|user)\b",
    re.IGNORECASE,
)


def test_a_whole_screen_reads_at_grade_six_or_under() -> None:
    hard = [f"{place}: {text}" for place, text in screens() if textstat.flesch_kincaid_grade(text) > HARDEST_GRADE]
    assert not hard, "\n".join(hard)


def test_no_sentence_is_longer_than_twenty_words() -> None:
    long = [
        f"{place}: {one}" for place, text in texts() for one in sentences(text) if word_count(one) > LONGEST_SENTENCE
    ]
    assert not long, "\n".join(long)


def test_no_exclamation_marks_and_no_forbidden_words() -> None:
    wrong = [f"{place}: {text}" for place, text in texts() if "!" in text or FORBIDDEN.search(text)]
    assert not wrong, "\n".join(wrong)


def test_capitals_only_in_the_names_of_units_and_gases() -> None:
    """The signal word itself is set by the program; nothing in the content shouts."""
    shouting = [
        f"{place}: {word}"
        for place, text in texts()
        for word in re.findall(r"\b[A-Z]{2,}\b", text)
        if word not in ("IHS", "NIOSH", "EPA", "US")
    ]
    assert not shouting, "\n".join(shouting)


def test_at_most_three_sentences_before_a_question() -> None:
    words, cautions = section_files(), headed("cautions")
    wrong = []
    for name, flow in flows().items():
        for section in flow["sections"]:
            opening = words[section["id"]]["section"].get("opening", "")
            for node in section["nodes"]:
                said = words[section["id"]].get(node["id"], {})
                if node["kind"] in ("say", "stop"):
                    continue
                before = [opening, said.get("before", "")]
                before.append(caution_text(cautions[node["caution"]][0]) if node.get("caution") else "")
                opening = ""
                count = sum(len(sentences(part)) for part in before if part)
                if count > MOST_BEFORE:
                    wrong.append(f"{name} · {node['id']}: {count}")
    assert not wrong, "\n".join(wrong)


def test_every_question_gives_a_reason_an_example_and_other_words() -> None:
    words = section_files()
    bare = []
    for name, flow in flows().items():
        for section in flow["sections"]:
            for node in section["nodes"]:
                if node["kind"] in ("say", "stop"):
                    continue
                said = words[section["id"]][node["id"]]
                needed = ("short", "why", "again", "example")
                bare += [f"{name} · {node['id']} · {key}" for key in needed if not said.get(key)]
                assert said["again"] != said["ask"], node["id"]
    assert not bare, "\n".join(bare)


def test_no_option_is_named_like_a_command_or_like_another_option() -> None:
    """Typing an option's other words must lead to it alone, and never be taken for a command."""
    commands = {"why", "how", "back", "change", "leave", "help", "skip", "quit"}
    wrong = []
    for name, tables in section_files().items():
        for ident, said in tables.items():
            taken: dict[str, str] = {}
            for option, others in said.get("also", {}).items():
                for other in (*others, *filter(None, (said.get("options", {}).get(option),))):
                    key = other.casefold()
                    if key in commands or taken.get(key, option) != option:
                        wrong.append(f"{name} · {ident} · {option}: {other}")
                    taken[key] = option
    assert not wrong, "\n".join(wrong)


def test_numbers_carry_their_mark() -> None:
    """A measured figure in running text names its source or says how well it is founded."""
    marked = re.compile(r"\((common practice|our choice|from memory|[A-Z][^)]*|from its size|interval table)\)")
    unit = r"(inch|inches|in(?! the)|feet|foot|ft|pounds?|gallons?|liters?|percent|days?|weeks?|years?)"
    figure = re.compile(rf"\b\d[\d,./]*\s*{unit}\b")
    unmarked = [
        f"{place}: {one}"
        for place, text in texts()
        if not place.endswith((" · example", " · again"))
        for one in sentences(text)
        if figure.search(one) and not marked.search(one)
    ]
    assert not unmarked, "\n".join(unmarked)

"""A sentence knows where its concepts stand, what its verbs are told of, and how rules combine them."""

import pytest

from selfcheck.interview.hazard_fitting import GONE, LOST, ON_IT
from selfcheck.interview.hazard_lexicon import CONCEPTS
from selfcheck.interview.hazard_sentences import Rule, Sentence, sentences_in
from selfcheck.interview.hazard_words import normal
from selfcheck.interview.hazards import CUES, RULES

_COMPUTED = {"start", "end", "in_place", "in_place_self", "in_deep"}


def _subject(text: str, head: str) -> str:
    sentence = Sentence(text)
    return sentence.subject(sentence.words.index(head))


@pytest.mark.parametrize(
    ("text", "head", "subject"),
    [
        ("my husband fell in", "fell", "living"),
        ("the lid fell in", "fell", "lid"),
        ("the phone fell in", "fell", "thing"),
        ("fell in", "fell", "none"),
        ("the jeweller fell in", "fell", "unknown"),
        ("he dropped his keys and fell in", "fell", "living"),
        ("my wrench slipped and fell in", "fell", "thing"),
        ("it was 14 and then my aunt stumbled and fell in", "fell", "living"),
        ("the dirt around the lid is sinking", "sinking", "ground"),
        ("no kids | the lid cracked", "cracked", "lid"),
    ],
)
def test_the_subject_is_the_noun_that_the_verb_is_told_of(text: str, head: str, subject: str) -> None:
    assert _subject(text, head) == subject


def test_fillers_do_not_count_as_distance() -> None:
    rule = Rule("fell_in", "fall >1:in")
    assert list(rule.matches(Sentence("he fell right straight in")))
    assert not list(rule.matches(Sentence("he fell near it and went in")))


def test_a_clause_is_not_left() -> None:
    rule = Rule("lid_broken", "broken <8:lid")
    assert list(rule.matches(Sentence("the lid is cracked")))
    assert not list(rule.matches(Sentence("the lid is fine | my phone is cracked")))


def test_somebody_who_is_in_a_place_is_told_from_somebody_who_does_something_there() -> None:
    assert "in_place" in Sentence("the dog is in the tank").found
    assert "in_place" in Sentence("uncle ray is stuck in the tank").found
    assert "in_place" not in Sentence("she put the pole in the tank").found


def test_rules_and_concepts_fit_together() -> None:
    rules = (*RULES, *GONE, *LOST, *ON_IT)
    named = {concept for rule in rules for concept in rule.heads}
    named |= {concept for rule in rules for slot in rule.slots for concept in slot.concepts}
    computed_from = {"be", "deep", "inside", "from_inside", "foul", "liquid"}
    assert named - _COMPUTED <= set(CONCEPTS)
    assert CUES.keys() <= set(CONCEPTS)
    assert set(CONCEPTS) - named <= computed_from


@pytest.mark.parametrize(
    ("text", "filth"),
    [
        ("a pool of grey stinking water", "grey stinking water"),
        ("black liquid on the lawn", "black liquid"),
        ("clean water on the lawn", ""),
        ("the grey lid", ""),
    ],
)
def test_what_flows_and_is_called_foul_is_filth(text: str, filth: str) -> None:
    sentence = Sentence(text)
    spans = [" ".join(sentence.words[start:end]) for start, end in sentence.found.get("filth", ())]
    assert (filth in spans) if filth else not spans


def test_each_sentence_of_a_line_knows_what_follows_it() -> None:
    line = normal("The phone fell in. Just kidding! All is well. The phone fell in")
    found = sentences_in(line)
    assert [one.words[-1] for one in found] == ["in", "kidding", "well", "in"]
    assert "||".join(one.text for one in found) == line
    for place, one in enumerate(found):
        assert one.later.removeprefix("||") == "||".join(other.text for other in found[place + 1 :])


def test_of_a_long_line_the_rest_is_one_sentence() -> None:
    line = normal("all is well. " * 40 + "he fell in")
    assert len(sentences_in(line)) < 20
    assert "".join(one.text for one in sentences_in(line)).endswith("he fell in")

"""What was understood is said back as people would say it."""

from __future__ import annotations

import pytest

from selfcheck.loading import content_place, flow_ids, script
from tests.interview.toys import CONTEXT, at, talk, words
from tests.situations.test_half_understood import standing_at

PLACE = content_place(own=False)


def test_a_lone_word_or_figure_is_said_with_what_it_tells() -> None:
    assert "Eaters: 3." in words(talk(["white", "4 in", "3"]).messages, "echo")
    assert "Soaking: no." in words(talk(["rye", "no"]).messages, "echo")
    assert "Noted: white wheat flour." in words(talk(["white"]).messages, "echo")


def test_a_label_of_its_own_sentences_stands_in_quotes() -> None:
    from selfcheck.interview.dialogue import Conversation

    home = Conversation(script(PLACE, "look_ahead"), CONTEXT)
    home.start()
    labels = [choice.label for choice in home.prompt.choices] if home.prompt else []
    asking = [label for label in labels if "?" in label]
    for label in asking:
        home = Conversation(home.script, CONTEXT)
        home.start()
        assert f'"{label}"' in words(home.hear(label), "echo")


def test_an_answer_that_was_a_sentence_is_told_without_bending_it() -> None:
    talked = standing_at("alarm", "change how you do the check", "I have my sheet, filled in")
    said = "\n".join(one.text for one in talked.messages)
    assert "you said I have" not in said
    assert "it was I have" not in said
    assert "Before: outdoors with a helper" in said


def test_no_hint_gives_two_examples() -> None:
    for name in flow_ids(PLACE):
        for line in (talked := script(PLACE, name)).interface.phrases["hint_choose_several"]:
            assert line.count("such as") == 1, talked
    conversation = talk(["white", "4 in", "3", "2025"])
    assert conversation.prompt is not None
    assert conversation.prompt.hint.count("such as") == 1


@pytest.mark.parametrize("flow", flow_ids(PLACE))
def test_no_two_questions_of_a_conversation_have_one_name(flow: str) -> None:
    talked = script(PLACE, flow)
    names: dict[str, list[str]] = {}
    for _, node in talked.flow.nodes():
        if node.kind not in ("say", "stop", "confirm") and "verdict" in node.tags:
            names.setdefault(talked.name_of(node.id), []).append(node.writes or node.id)
    twice = {name: where for name, where in names.items() if len(set(where)) > 1}
    assert not twice


def test_not_knowing_where_nobody_is_at_risk_is_not_called_a_matter_of_safety() -> None:
    from tests.situations.playing import begin

    for line in ("I don't know", "skip"):
        conversation = begin("buyer")
        assert at(conversation) == "way_in"
        assert "safe" not in words(conversation.hear(line), "note")
    for line in ("outdoors", "outside", "with a helper"):
        conversation = begin("buyer")
        conversation.hear(line)
        assert conversation.state.given["way_in"].value == "guided"

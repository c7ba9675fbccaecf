"""Lines of people in a hurry, at whatever question they are typed."""

from __future__ import annotations

import pytest

from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.messages import Message
from tests.situations.playing import begin, says_of
from tests.situations.reaching import reach


def at(question: str, flow: str = "yearly", person: str = "teacher") -> Conversation:
    talk = begin(person, flow)
    reach(talk, question, says_of(person))
    return talk


def text_of(said: list[Message]) -> str:
    return " ".join(one.text for one in said if one.kind != "said")


@pytest.mark.parametrize("question", ["last_pump_out", "people", "size", "sheet_gate", "smell", "parts", "sludge_1"])
@pytest.mark.parametrize(
    "line",
    [
        "I do not remember", "I forgot", "no clue", "can't remember", "beats me", "no idea at all", "who knows",
        "I don't really remember", "we have forgotten the day", "Honestly no clue",
    ],
)  # fmt: skip
def test_not_remembering_is_not_knowing(question: str, line: str) -> None:
    talk = at(question)
    talk.hear(line)
    assert talk.state.given[question].state == "unknown"


@pytest.mark.parametrize(("line", "value"), [("I don't smell anything", "none"), ("forget it", None)])
def test_not_every_not_is_not_knowing(line: str, value: str | None) -> None:
    talk = at("smell")
    talk.hear(line)
    given = talk.state.given.get("smell")
    assert (given.value if given else None) == value

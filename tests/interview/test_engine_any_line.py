"""Whatever is typed, a conversation about bread goes on, and its state is what its answers make."""

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from selfcheck.interview.answers import TAKEN_BACK
from selfcheck.interview.commands import COMMANDS
from tests.interview.toys import CONTEXT, TO_END, TO_OVEN, at, talk

HOSTILE = [
    "",
    " ",
    "?",
    "\x00",
    "\x1b]52;c;aGk=\x07",
    "[@click=app.bell]x[/]",
    "[/]",
    "9**9**9**9",
    "1e999 in",
    "-1",
    "a" * 5000,
    "\u202e\u2066abc",
    "{rise} {flour}",
    "%s %d {0}",
    "'; DROP TABLE",
    "💧" * 50,
    "\ud800",
    "1, 2, 3, 4, 5, 6",
    "no no no",
    "change",
    "change " * 100,
    "what is " * 30,
    "back back",
    "1/0 in",
    "0x10",
    "١٢",
    "ⅷ in",
    "²",
    "①",
]


@pytest.mark.parametrize("line", HOSTILE)
def test_hostile_lines_get_a_plain_message_at_every_question(line: str) -> None:
    for place in range(len(TO_END) + 1):
        conversation = talk(TO_END[:place])
        said = conversation.hear(line)
        assert said
        assert all(message.text.replace("\n", "").isprintable() for message in said)
        assert not any("{" in message.text for message in said if message.kind not in ("said", "note"))
        assert conversation.prompt is not None or conversation.ending is not None


LINES = st.one_of(
    st.sampled_from([*TO_END, *HOSTILE[:12], *COMMANDS, "yes", "no", "1", "2", "5", "I don't know", "4", "6 in", "rye",
                     "no, it was 7 in", "there is a fire", "change flour", "not yet", "rise 3 in, sticky", "maybe"]),
    st.text(max_size=12),
)  # fmt: skip


@given(st.lists(LINES, max_size=25))
def test_nothing_that_can_be_typed_breaks_it_and_replay_is_the_state(lines: list[str]) -> None:
    from selfcheck.interview.replay import replay

    conversation = talk(TO_OVEN)
    for line in lines:
        said = conversation.hear(line)
        assert said or not line.strip()
        assert (conversation.prompt is None) == (conversation.ending is not None)
    again = replay(conversation.script, CONTEXT, conversation.answers)
    assert again.essence() == conversation.state.essence()
    json.dumps(conversation.draft())


@given(st.lists(LINES, max_size=12), st.sampled_from(sorted(COMMANDS)))
def test_commands_by_key_never_break_it(lines: list[str], command: str) -> None:
    conversation = talk([*TO_OVEN[:4], *lines])
    assert conversation.do(command)


def test_a_command_that_does_not_exist_is_refused() -> None:
    with pytest.raises(ValueError, match="no command"):
        talk().do("dance")


@given(st.integers(0, len(TO_END)))
def test_back_and_the_same_answer_again_is_the_same_state(place: int) -> None:
    conversation = talk(TO_END[:place])
    before = conversation.state
    asked = [one for one in conversation.answers if conversation.script.nodes[one.question].kind != "say"]
    last = asked[-1] if asked else None
    if last is None:
        return
    conversation.do("back")
    if conversation.answers[-1].question == TAKEN_BACK:
        conversation.accept(replace(last, at=""))
        while at(conversation) == "thanks" and before.node is not None and before.node.id != "thanks":
            conversation.hear("")
    after = conversation.state
    values = [{name: one.value for name, one in state.given.items()} for state in (before, after)]
    assert values[0] == values[1]
    assert after.node == before.node

"""What was said so far, rebuilt from the answers: for going on after a break, and for reading later."""

from __future__ import annotations

from collections.abc import Iterable

from selfcheck.interview.answers import NOTE, Answer
from selfcheck.interview.context import Context
from selfcheck.interview.messages import Message
from selfcheck.interview.phrases import filled
from selfcheck.interview.replay import begin, follow
from selfcheck.interview.script import Script
from selfcheck.interview.showing import show_answer


def transcript(script: Script, context: Context, answers: Iterable[Answer]) -> list[Message]:
    """Question, words and meaning of every answer that was given, in order; notes and hazards as they were told."""
    state = begin(script, context)
    messages: list[Message] = []
    for answer in answers:
        node = script.nodes.get(answer.question)
        if node is None:
            if answer.said:
                messages.append(Message("said", answer.said))
            elif answer.question == NOTE:
                messages.append(Message("said", str(answer.value)))
        elif node.kind not in ("say", "confirm"):
            messages.append(Message("ask", filled(script.words_of(node.id).ask, script, state.answered, context)))
            meant = show_answer(script, answer, context.units)
            if answer.said:
                messages.append(Message("said", answer.said))
            if meant != answer.said:
                messages.append(Message("echo", meant))
        state = follow(script, context, state, answer)
    return messages

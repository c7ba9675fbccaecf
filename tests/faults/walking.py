"""Lines that lead a person through a whole conversation, found by asking the conversation itself."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from selfcheck.interview.dialogue import Conversation
from selfcheck.loading.place import content_place
from selfcheck.sitting import Sitting

#: tried one after the other where a question comes again
OTHERWISE = ["yes", "1", "i don't know", "skip", "2"]

#: a lid of usual width that two with a bar may move
THIN = {"lid_thickness": "0.03 m"}


def lines_through(folder: Path, flow: str, today: date, choices: dict[str, str]) -> list[str]:
    """What to type from the start of a flow to its end. `choices`: option id wanted at a question, else the first."""
    sitting = Sitting.open(folder, content_place(own=False), today, begin=True, in_place=True)
    conversation = sitting.begin(flow)
    conversation.start()
    lines: list[str] = []
    tries = 0
    while conversation.ending is None and len(lines) < 120:
        prompt = conversation.prompt
        assert prompt is not None
        line = OTHERWISE[tries - 1] if tries else _fitting(conversation, choices)
        conversation.hear(line)
        lines.append(line)
        again = conversation.prompt is not None and conversation.prompt.question == prompt.question
        tries = (tries + 1) % (len(OTHERWISE) + 1) if again else 0
    sitting.close()
    assert conversation.ending is not None, f"no end in sight: {lines}"
    return lines


def _fitting(conversation: Conversation, choices: dict[str, str]) -> str:
    """A line that answers the open question."""
    prompt = conversation.prompt
    assert prompt is not None
    node = conversation.script.nodes.get(prompt.question)
    wanted = choices.get(prompt.question)
    for choice in prompt.choices:
        if choice.id == wanted:
            return str(choice.number)
    if prompt.kind == "choose_several":
        return "none"
    if prompt.question in THIN:
        return THIN[prompt.question]
    if prompt.kind == "length" and node is not None:
        least, most = node.usual_least or 0.0, node.usual_most or 1.0
        return f"{(least + most) / 2:.2f} m"
    return {
        "volume": "1000 gallons",
        "number": "3",
        "date": "last year",
        "note": "by the old oak",
        "confirm": "yes",
    }.get(prompt.kind, "1")

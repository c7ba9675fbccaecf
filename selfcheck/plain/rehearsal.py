"""A prepared conversation, played line by line: its transcript goes to standard output."""

from __future__ import annotations

import io
import re
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import TextIO

from selfcheck.interview.dialogue import Conversation
from selfcheck.interview.messages import Message
from selfcheck.loading.journeys import Journey, load
from selfcheck.loading.place import Place, content_place
from selfcheck.plain import pages
from selfcheck.plain.listening import Listener
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import WIDEST, Speaker
from selfcheck.plain.talking import Talk
from selfcheck.report.parts import PartedPage
from selfcheck.report.wording import VerdictPage
from selfcheck.sitting import Sitting
from selfcheck.sitting.rehearsing import sitting_for


@dataclass(frozen=True)
class Played:
    """How a journey went. `outcome`: id of the outcome that was reached, or "" when it was not. `page`: the verdict.

    `surprises`: where it went otherwise than the journey expects, in words.
    """

    outcome: str
    page: VerdictPage | PartedPage | None
    surprises: tuple[str, ...]


def rehearse(path: Path, content: Path | None = None) -> bool:
    """Play the journey in a file; its surprises go to standard error. True: there were none.

    Raises UsageProblem or ContentProblem when the journey cannot be used.
    """
    journey = load(path)
    played = play(journey, content_place(content), sys.stdout)
    sys.stdout.flush()
    for surprise in played.surprises:
        print(surprise, file=sys.stderr)
    return not played.surprises


def play(journey: Journey, place: Place, out: TextIO) -> Played:
    """Play a journey on a household of its own that is gone afterwards, and write its transcript."""
    speaker, words = Speaker(out, WIDEST), Words(place)
    speaker.say(journey.title)
    for line in (journey.person, journey.why):
        if line:
            speaker.say(line)
    with sitting_for(journey, place) as sitting:
        conversation = sitting.begin(journey.flow)
        talk = Talk(sitting, speaker, Listener(io.StringIO()), words)
        surprises: list[str] = []
        said = talk.open(conversation)
        for number, turn in enumerate(journey.typed, 1):
            if conversation.ending is not None:
                surprises.append(f"Turn {number}: the conversation was over before {turn.type!r} was typed.")
                break
            prompt = conversation.prompt
            asked = prompt.question if prompt is not None else ""
            if turn.expect_question and asked != turn.expect_question:
                surprises.append(f"Turn {number}: {asked} was asked, not {turn.expect_question}.")
            said = talk.hear(conversation, turn.type)
            if turn.expect and not _holds(turn.expect, said, conversation):
                surprises.append(f"Turn {number}: nothing said then fits {turn.expect!r}.")
        page = _conclude(sitting, conversation, speaker, words, surprises)
    outcome = conversation.ending.outcome if conversation.ending is not None else ""
    wanted = journey.expect
    if wanted.verdicts and (page is None or page.verdict not in wanted.verdicts):
        verdict = page.verdict if page is not None else "none"
        surprises.append(f"The verdict is {verdict}, not {' or '.join(wanted.verdicts)}.")
    if wanted.outcomes and outcome not in wanted.outcomes:
        surprises.append(f"The outcome is {outcome or 'none'}, not {' or '.join(wanted.outcomes)}.")
    return Played(outcome, page, tuple(surprises))


def _conclude(
    sitting: Sitting, conversation: Conversation, speaker: Speaker, words: Words, surprises: list[str]
) -> VerdictPage | PartedPage | None:
    if conversation.ending is None:
        prompt = conversation.prompt
        surprises.append(f"The lines ran out at the question {prompt.question if prompt else ''}.")
        speaker.line("")
        return None
    if conversation.ending.left:
        return None
    found = sitting.conclude(conversation)
    if sitting.trouble:
        surprises.append(sitting.trouble)
    if isinstance(found, str):
        return None
    pages.show(found, speaker, words)
    return found


def _holds(pattern: str, said: list[Message], conversation: Conversation) -> bool:
    """Whether the pattern fits anything said, or a choice that is offered."""
    offered = [choice.label for choice in conversation.prompt.choices] if conversation.prompt else []
    whole = "\n".join([*(f"{one.title} {one.text}" for one in said if one.kind != "said"), *offered])
    return re.search(pattern, whole, re.IGNORECASE | re.DOTALL) is not None

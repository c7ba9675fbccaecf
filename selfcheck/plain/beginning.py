"""Whether to begin a new household in a folder: asked before any record is open."""

from __future__ import annotations

import sys
from pathlib import Path

from selfcheck.domain.yes_no import read_yes_no
from selfcheck.errors import UsageProblem
from selfcheck.interview.hazard_fitting import fitting
from selfcheck.interview.hazards import find
from selfcheck.interview.phrases import Phrases
from selfcheck.interview.prompting import caution_message
from selfcheck.interview.script import Interface
from selfcheck.interview.typed_line import command_of, is_one_of, is_question
from selfcheck.loading.conversations import cautions, interface
from selfcheck.loading.place import Place
from selfcheck.plain.arguments import meant
from selfcheck.plain.phrases import Words
from selfcheck.plain.speaking import Speaker
from selfcheck.text import clean

#: so many lines that say nothing of it end the asking. Our choice.
MOST_ASKED = 3
#: commands that ask what this is about, and those that turn it down
_ASKING, _DECLINING = ("why", "how", "help", "repeat"), ("leave", "quit", "back", "skip")


def ask_to_begin(folder: Path, place: Place) -> None:
    """Returns when the person says yes. Raises UsageProblem when they do not want to, or there are no more lines."""
    words, out, known = Words(place), Speaker(sys.stdout), interface(place)
    named = clean(str(folder), 300)
    out.say(words("begin", "nothing_in" if folder.is_dir() else "not_there", folder=named))
    if not folder.is_dir() and (command := meant([str(folder)])):
        out.say(words("begin", "command_like", command=clean(command, 300)))
    misses = 0
    while misses < MOST_ASKED:
        out.say(words("begin", "ask"))
        out.ask()
        line = sys.stdin.readline()
        if not sys.stdin.isatty():
            out.heard(clean(line.strip(), 300))
        if danger := _in_danger(place, known, line.strip()):
            out.say(danger)
            continue
        meaning = _meaning(known, line.strip()) if line else "no"
        if meaning == "yes":
            return
        if meaning == "no":
            break
        misses += meaning == "unclear"
        out.say(words("begin", meaning))
    raise UsageProblem(words("begin", "not_made"), words("begin", "again"))


def _meaning(known: Interface, line: str) -> str:
    """What a line says: "yes", "no", "about" (what is this?), "unknown", or "unclear"."""
    heard, command = read_yes_no(line), command_of(known, line)
    for answer in ("yes", "no"):
        if heard == answer or is_one_of(known, answer, line):
            return answer
    if heard == "unknown" or command == "unknown":
        return "unknown"
    if command in _DECLINING:
        return "no"
    return "about" if command in _ASKING or is_question(known, line) else "unclear"


def _in_danger(place: Place, known: Interface, line: str) -> str:
    """What to do in the danger that a line tells of; whom to call where it only calls for help; "" for other lines."""
    hazard, phrases = find(line), Phrases(known)
    sure = hazard.id if hazard is not None and hazard.sure else ""
    caution = cautions(place).get(fitting(sure, line))
    if caution is not None:
        message = caution_message(caution, phrases, whole=True)
        return f"{message.title}: {message.text}"
    return phrases.say("what_now_tell") if sure or is_one_of(known, "calls_for_help", line) else ""

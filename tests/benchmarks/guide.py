"""What the guide makes of lines it has not seen: listed ways of asking held out, with and without slips of the pen.

    python -m tests.benchmarks.guide [--folds N]

In each fold one line in eight is taken out of every topic and of the lines about other things, and asked. Many of them
could as well stand in a topic close by, so the shares are lower than with questions of strangers. They are there to be
compared before and after a change.
"""

from __future__ import annotations

import argparse
import random
from collections.abc import Sequence
from dataclasses import replace

from selfcheck.interview.side_questions import Guide, lines_in
from selfcheck.loading.guide import guide_parts
from selfcheck.loading.place import content_place

_ONE_IN = 8
_LETTERS = "abcdefghijklmnopqrstuvwxyz"


def slipped(line: str, chance: random.Random) -> str:
    """The line with one slip in one of its longer words: letters swapped, left out, doubled or another one."""
    words = line.split()
    longer = [place for place, word in enumerate(words) if len(word) > 3]
    if not longer:
        return line
    place = chance.choice(longer)
    word = words[place]
    at = chance.randrange(len(word) - 1)
    head, one, two, tail = word[:at], word[at], word[at + 1], word[at + 2 :]
    words[place] = chance.choice(
        [
            head + two + one + tail,
            head + one + tail,
            head + one + one + two + tail,
            head + one + chance.choice(_LETTERS) + tail,
        ]
    )
    return " ".join(words)


def _kept(lines: Sequence[str], fold: int) -> tuple[str, ...]:
    return tuple(line for place, line in enumerate(lines) if place == 0 or place % _ONE_IN != fold)


def _out(lines: Sequence[str], fold: int) -> list[str]:
    return [line for place, line in enumerate(lines) if place and place % _ONE_IN == fold]


def _shares(book: Guide, asked: Sequence[tuple[str, str]], others: Sequence[str]) -> str:
    safety = {topic.id: topic.safety for topic in book.topics()}
    first = three = given = silent = harmful = 0
    for line, right in asked:
        near = [reply.topic for reply in book.nearest(line)]
        reply = book.answer(line)
        first += near[:1] == [right]
        three += right in near
        given += reply is not None and reply.topic == right
        silent += reply is None
        harmful += reply is not None and safety[right] and not safety[reply.topic]
    wrong = sum(book.answer(line) is not None for line in others)
    shares = {
        "first right": first, "one of three right": three, "right answer given": given, "none given": silent,
        "safety asked, another given": harmful,
    }  # fmt: skip
    told = ", ".join(f"{name} {count / len(asked):.1%}" for name, count in shares.items())
    return f"{told}; other things answered {wrong / len(others):.1%}"


def main() -> None:
    """Print the shares of each fold."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--folds", type=int, default=2)
    topics, listening = guide_parts(content_place(None))
    for fold in range(1, 1 + parser.parse_args().folds):
        book = Guide(
            [replace(topic, asked=_kept(topic.asked, fold)) for topic in topics],
            replace(
                listening, elsewhere=tuple("\n".join(_kept(lines_in(group), fold)) for group in listening.elsewhere)
            ),
        )
        asked = [(line, topic.id) for topic in topics for line in _out(topic.asked, fold)]
        others = [line for group in listening.elsewhere for line in _out(lines_in(group), fold)]
        chance = random.Random(fold)
        print(f"fold {fold}, {len(asked)} lines, as listed: {_shares(book, asked, others)}")
        slips = [(slipped(line, chance), right) for line, right in asked]
        print(f"fold {fold}, with one slip each: {_shares(book, slips, [slipped(line, chance) for line in others])}")


if __name__ == "__main__":
    main()

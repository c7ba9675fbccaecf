"""A node as a prompt, and the messages that introduce it."""

from __future__ import annotations

from selfcheck.interview.answers import Answer
from selfcheck.interview.context import Context
from selfcheck.interview.messages import Choice, Message, Prompt, Stage
from selfcheck.interview.nodes import Caution, Node
from selfcheck.interview.phrases import Phrases, filled
from selfcheck.interview.routing import reviewed
from selfcheck.interview.script import Script
from selfcheck.interview.showing import at_start, show_within
from selfcheck.interview.state import State

RIGHT = "_right"  # the choice that accepts a read-back
STILL, CHANGED = "_still", "_changed"  # the choices when a value on record is offered


def introduce(script: Script, state: State, context: Context, phrases: Phrases, section_before: str) -> list[Message]:
    """What is said before the question of the current node: its section's opening, its caution, what to do."""
    node = state.node
    if node is None:
        return []
    messages: list[Message] = []
    section = script.section_of[node.id]
    words = script.words_of(node.id)
    opening = script.words[section.id].opening if section.id in script.words else ""
    if opening and section.id != section_before:
        messages.append(Message("say", filled(opening, script, state.answered, context)))
    if node.caution in script.cautions:
        messages.append(caution_message(script.cautions[node.caution], phrases))
    before = filled(words.before, script, state.answered, context)
    if before:
        messages.append(Message("say", before))
    if node.kind == "confirm":
        messages.extend(Message("say", line) for line in review_lines(script, state, context, phrases))
    return [message for message in messages if message.text]


def caution_message(caution: Caution, phrases: Phrases, *, whole: bool = False) -> Message:
    """A caution with its signal word: what can hurt, what it does, how to stay safe; `whole` adds the rest."""
    text = phrases.say("caution", hazard=caution.hazard, harm=caution.harm, avoid=caution.avoid)
    return Message(
        "caution", f"{text}\n{caution.body}" if whole and caution.body else text, phrases.say(f"level_{caution.level}")
    )


def prompt_for(
    script: Script, state: State, context: Context, phrases: Phrases, on_record: Answer | None = None
) -> Prompt | None:
    """The prompt of the current node; None at the end. `on_record`: offered as "still true?"."""
    node = state.node
    if node is None:
        return None
    words = script.words_of(node.id)
    text = filled(words.ask, script, state.answered, context)
    choices = choices_for(script, state, context, phrases)
    kind: str = node.kind
    if on_record is not None:
        value = show_within(script, on_record, context.units)
        text = phrases.say("still_true", name=script.name_of(node.id), value=value)
        choices = numbered([(STILL, phrases.say("still_yes")), (CHANGED, phrases.say("still_no"))])
        kind = "choose"
    stage, stages = stages_of(script, node)
    return Prompt(
        question=node.id,
        kind=kind,
        text=text,
        choices=choices,
        hint=hint_for(kind, words.example if kind == node.kind else "", phrases),
        stage=stage,
        stages=stages,
        may_stand_open=state.open,
        unknown_allowed=node.unknown_allowed and kind not in ("say", "confirm"),
        can_go_back=bool(state.answered) or state.leaving,
    )


def choices_for(script: Script, state: State, context: Context, phrases: Phrases) -> tuple[Choice, ...]:
    """The answers to pick at the current node."""
    node = state.node
    if node is None:
        return ()
    if node.kind == "say":
        return numbered([("_go_on", phrases.say("go_on"))])
    if node.kind == "confirm":
        items = [
            (ident, phrases.say("review_item", name=script.name_of(ident), value=_shown(script, state, context, ident)))
            for ident in reviewed(script, state.answered)
        ]
        return numbered([(RIGHT, phrases.say("review_right")), *items])
    answered = state.answered
    return numbered(
        [(option, filled(script.label_of(node.id, option), script, answered, context)) for option in node.options]
    )


def review_lines(script: Script, state: State, context: Context, phrases: Phrases) -> list[str]:
    """The deciding answers read back, one a line."""
    return [
        phrases.say("review_line", name=at_start(script.name_of(ident)), value=_shown(script, state, context, ident))
        for ident in reviewed(script, state.answered)
    ]


def hint_for(kind: str, example: str, phrases: Phrases) -> str:
    """One line on what may be typed."""
    hint = phrases.say(f"hint_{kind}")
    if not example or kind in ("choose_several", "confirm"):  # their hints have examples of their own
        return hint
    return phrases.say("hint_example", hint=hint, example=example)


def numbered(pairs: list[tuple[str, str]]) -> tuple[Choice, ...]:
    """Choices with numbers from 1."""
    return tuple(Choice(number, ident, label) for number, (ident, label) in enumerate(pairs, 1))


def stages_of(script: Script, node: Node) -> tuple[str, tuple[Stage, ...]]:
    """The stage of a node, and the whole stage line. A section without a stage belongs to the one before it."""
    titles: dict[str, str] = {}
    now = ""
    current = ""
    for section in script.flow.sections:
        if section.stage:
            current = section.stage
            words = script.words.get(section.id)
            title = script.interface.stages.get(current) or (words.title if words else current)
            titles.setdefault(current, title)
        if node in section.nodes:
            now = current
    ids = list(titles)
    place = ids.index(now) if now in ids else 0
    return now, tuple(
        Stage(ident, titles[ident], "done" if at < place else "now" if at == place else "ahead")
        for at, ident in enumerate(ids)
    )


def _shown(script: Script, state: State, context: Context, ident: str) -> str:
    return show_within(script, state.answered[ident], context.units)

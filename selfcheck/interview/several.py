"""One line that answers several questions: "first rise 2 hours, sticky, baked 2019"."""

from __future__ import annotations

from dataclasses import dataclass, replace

from selfcheck.interview.answers import Answer
from selfcheck.interview.by_option import adds_on, of_a_sign, of_an_option, of_another_way, told_too_early
from selfcheck.interview.context import Context
from selfcheck.interview.measuring import names_unit
from selfcheck.interview.naming import answerable, by_names, measured, named_answer
from selfcheck.interview.nodes import Node
from selfcheck.interview.recorded import known as recorded_answers
from selfcheck.interview.recorded import same_as
from selfcheck.interview.replay import follow
from selfcheck.interview.script import Script
from selfcheck.interview.standing import raised
from selfcheck.interview.state import State
from selfcheck.interview.typed_line import normal, parts_of
from selfcheck.interview.understanding import CHOICES, MEASURES, covered, exact, loose, whole


@dataclass(frozen=True, slots=True)
class Several:
    """`answers`: what was understood, one a question. `rest`: parts that were not. `later`: parts told too early.

    `on_record`: what was understood and stands on record just so.
    """

    answers: tuple[Answer, ...] = ()
    rest: tuple[str, ...] = ()
    later: tuple[str, ...] = ()
    on_record: tuple[Answer, ...] = ()


def several(script: Script, state: State, text: str, context: Context) -> Several:
    """The answers in a line with more than one part, or one that is named. Safety items are never answered in passing.

    What belongs to something that is to be opened first is told too early, and is not taken.
    """
    parts = [piece for part in parts_of(script.interface, text) for piece in by_names(script, part)]
    if not 0 < len(parts) <= len(script.nodes):
        return Several()
    found = _Found(script, state, context)
    for part in parts:
        found.take(part, alone=len(parts) == 1)
    early, found.later = found.later, []
    for part in early:  # what was told before its time in the line may have had its time meanwhile
        found.take(part, alone=len(parts) == 1)
    if found.rest:  # with a part not understood, one that is only guessed at is not understood either
        found.rest = [part for part in parts if part in (*found.rest, *found.guessed.values())]
        found.answers = {name: one for name, one in found.answers.items() if name not in found.guessed}
    answers = _told_whole(script, found.answers)
    left = [answer.said for answer in found.answers.values() if answer not in answers]
    if len(answers) == 1:
        answers = _leading_to(script, state, answers[0])
    return Several(answers, (*found.rest, *left), tuple(found.later), tuple(found.on_record))


def elsewhere(script: Script, state: State, text: str, context: Context) -> Several:
    """The answer of a line that is just an option's words of another question, one to come or else one answered.

    Nothing while a safety item is open.
    """
    if state.node is not None and state.node.gate:
        return Several()
    found = _Found(script, state, context)
    answer = of_an_option(script, state, text, context) or of_another_way(script, state, text)
    answer = answer or of_a_sign(script, state, text, context)
    return Several(_leading_to(script, state, found.with_more(answer))) if answer else Several()


def _leading_to(script: Script, state: State, answer: Answer) -> tuple[Answer, ...]:
    """An answer, behind that to the open question by which one comes to it: "the tee is gone" tells which part too.

    A list of signs that comes right behind is asked for whole.
    """
    node = state.node
    if node is None or node.kind not in CHOICES or not answerable(node) or answer.question == node.id:
        return (answer,)
    for condition in script.nodes[answer.question].when:
        options = [option for option in condition.is_ if option in node.options]
        if condition.question == node.id and len(options) == 1:
            value = options[0] if node.kind == "choose" else tuple(options)
            led = Answer(node.id, "value", value, said=answer.said)
            return (led,) if adds_on(script.nodes[answer.question]) else (led, answer)
    return (answer,)


def _told_whole(script: Script, answers: dict[str, Answer]) -> tuple[Answer, ...]:
    """The answers without a list of signs that another part of the line only led to: that list is asked for whole."""
    kept: list[Answer] = []
    for answer in answers.values():
        node = script.nodes[answer.question]
        leading = [answers[one.question] for one in node.when if one.question in answers]
        if node.kind == "choose_several" and any(one.said != answer.said for one in leading):
            continue
        kept.append(answer)
    return tuple(kept)


def united(script: Script, one: Answer, other: Answer) -> Answer:
    """Two answers to a question of several options as one; the later one where they are not such."""
    if not isinstance(one.value, tuple) or not isinstance(other.value, tuple):
        return other
    chosen = {*one.value, *other.value}
    options = tuple(option for option in script.nodes[one.question].options if option in chosen)
    return replace(other, value=options, said=f"{one.said}, {other.said}")


class _Found:
    """What was understood of a line so far; each answer leads on, as if it had been given by itself."""

    def __init__(self, script: Script, state: State, context: Context) -> None:
        self.script, self.state, self.context = script, state, context
        self.answers: dict[str, Answer] = {}
        self.rest: list[str] = []
        self.later: list[str] = []
        self.on_record: list[Answer] = []
        self.guessed: dict[str, str] = {}  # question → part that holds only some words of the option it was taken for
        self._last: Node | None = None
        self._early: list[str] = []
        self._find_the_early()

    def take(self, part: str, *, alone: bool) -> None:
        """Takes in one part of the line."""
        answer = named = named_answer(self.script, part, self.context, self._open())
        if answer is None and not alone:
            answer = self._once_more(part) or self._nearest(part)
        answer = answer or self._only_volume(part)
        answer = self.with_more(answer) if answer is not None else None
        if answer is None and named_answer(self.script, part, self.context, self._early) is not None:
            self.later.append(part)
        elif answer is not None and self._stands(answer):
            self.on_record.append(answer)
        elif answer is not None and (old := self.answers.get(answer.question)) and isinstance(old.value, tuple):
            self.answers[answer.question] = united(self.script, old, answer)
        elif answer is None or answer.question in self.answers:
            self.rest.append(part)
        else:
            self.answers[answer.question] = answer
            node = self.script.nodes[answer.question]
            if named is None and node.kind in CHOICES and not whole(self.script, node, answer):
                self.guessed[answer.question] = part
            self._last = node
            self.state = follow(self.script, self.context, self.state, answer)
            self._find_the_early()

    def with_more(self, answer: Answer) -> Answer:
        """An answer with the signs that were told before it."""
        old = self.state.given.get(answer.question)
        if old is None or answer.question in self.answers or not adds_on(self.script.nodes[answer.question]):
            return answer
        return united(self.script, old, answer)

    def _stands(self, answer: Answer) -> bool:
        """Whether a fact that nothing asks for here is on record just so."""
        name, here = answer.question, self.state.node
        if name in self.state.given or (here is not None and here.id == name):
            return False
        known = recorded_answers(self.script.nodes[name], self.state.answered, self.context)
        return any(same_as(answer, one) for one in known)

    def _find_the_early(self) -> None:
        """Notes the questions that, with what is answered so far, it is too early to answer."""
        self._early = [
            name for name in self.script.nodes if told_too_early(self.script, self.state, self.context, name)
        ]

    def _open(self) -> list[str]:
        """The questions that a part may name: the open one first, then those to come, then those answered."""
        order, node = self.script.order, self.state.node
        now = order[node.id] if node is not None else -1
        taken = {*self.answers, *self._early}
        free = [ident for ident, one in self.script.nodes.items() if answerable(one) and ident not in taken]
        ahead = [
            ident
            for ident in free
            if ident not in self.state.given and (order[ident] >= now or self.script.nodes[ident].told_when)
        ]
        ahead.sort(key=lambda ident: (order[ident] != now, order[ident]))
        answered = (ident for ident in free if ident in self.state.answered or ident in self.state.aside)
        return [*ahead, *(ident for ident in answered if not raised(self.script, self.state, ident))]

    def _once_more(self, part: str) -> Answer | None:
        """A bare reading after another one: the next question that writes at the same place."""
        last = self._last
        if last is None or last.kind not in MEASURES or not last.writes or normal(part).isalpha():
            return None
        for node in self.script.nodes.values():
            if node.writes == last.writes and node.id not in self.answers and node.id not in self.state.given:
                return measured(node, part, self.context)
        return None

    def _only_volume(self, part: str) -> Answer | None:
        """A bare amount with its unit, "1000 gallons", where just one question asks for a volume."""
        able = [ident for ident in self._open() if self.script.nodes[ident].kind == "volume"]
        if len(able) != 1 or not names_unit(part, "volume"):
            return None
        return measured(self.script.nodes[able[0]], part, self.context)

    def _nearest(self, part: str) -> Answer | None:
        """The part as an answer to the open question, or to another one that has more of its words."""
        here, other = self._current(part), self._of_an_option(part)
        if here is None or other is None:
            return here or other
        return other if covered(self.script, other) > covered(self.script, here) else here

    def _current(self, part: str) -> Answer | None:
        """The part as an answer to the open question."""
        node = self.state.node
        if node is None or not answerable(node) or node.id in self.answers:
            return None
        if node.kind in MEASURES:
            return measured(node, part, self.context)
        return exact(self.script, node, part).answer or loose(self.script, node, part).answer

    def _of_an_option(self, part: str) -> Answer | None:
        return of_an_option(self.script, self.state, part, self.context) or of_an_option(
            self.script, self.state, part, self.context, loose
        )

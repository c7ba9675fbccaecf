"""One conversation with everything it says: the flow, its words, cautions, outcomes, glossary and the engine's own."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property

from selfcheck.interview.nodes import STRICT, Caution, Flow, Node, NodeWords, Outcome, Section, SectionWords, Term

_NO_WORDS = NodeWords()
#: a word in the options of so many questions tells nothing alone. Our choice.
COMMON = 5


@dataclass(frozen=True, slots=True)
class Interface:
    """The engine's own words in one language: what it says, and what it understands as commands."""

    phrases: Mapping[str, tuple[str, ...]] = field(default_factory=dict)  # name → variants, used in turn
    commands: Mapping[str, tuple[str, ...]] = field(default_factory=dict)  # command → lines that mean it
    #: "change", "what_is", … → how such a line begins
    openings: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    #: "yes", "no", "negations", "fillers", "questions" → words
    listen: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    stages: Mapping[str, str] = field(default_factory=dict)  # stage id → title

    __pydantic_config__ = STRICT


@dataclass(frozen=True)
class Script:
    """Flow and words of one conversation in one language."""

    flow: Flow
    words: Mapping[str, SectionWords]  # by section id
    interface: Interface
    cautions: Mapping[str, Caution] = field(default_factory=dict)
    outcomes: Mapping[str, Outcome] = field(default_factory=dict)
    glossary: Mapping[str, Term] = field(default_factory=dict)
    language: str = "en"

    @cached_property
    def nodes(self) -> dict[str, Node]:
        """Every node by id, in order."""
        return {node.id: node for _, node in self.flow.nodes()}

    @cached_property
    def steps(self) -> tuple[tuple[Section, Node], ...]:
        """Every node with its section, in order."""
        return tuple(self.flow.nodes())

    @cached_property
    def section_of(self) -> dict[str, Section]:
        """The section of every node, by node id."""
        return {node.id: section for section, node in self.flow.nodes()}

    @cached_property
    def order(self) -> dict[str, int]:
        """Place of every node in the flow, by id."""
        return {ident: place for place, ident in enumerate(self.nodes)}

    @cached_property
    def first_opening(self) -> Node | None:
        """The first step that opens something; None when there is none."""
        return next((node for node in self.nodes.values() if node.opens), None)

    @cached_property
    def asked_before_opening(self) -> frozenset[str]:
        """The questions that a step which opens something rests on."""
        openings = [node for node in self.nodes.values() if node.opens]
        return frozenset(one.question for node in openings for one in node.when if one.question)

    @cached_property
    def common_words(self) -> frozenset[str]:
        """Words that stand in the options of so many questions that one of them alone picks none."""
        found: Counter[str] = Counter()
        for node in self.nodes:
            labels = " ".join(self.words_of(node).options.values()).casefold()
            found.update({word.strip(".,:;?()") for word in labels.split()})
        return frozenset(word for word, times in found.items() if times >= COMMON)

    def words_of(self, node_id: str) -> NodeWords:
        """What is said at a node; empty words when it has none."""
        section = self.section_of.get(node_id)
        known = self.words.get(section.id) if section else None
        return known.nodes.get(node_id, _NO_WORDS) if known else _NO_WORDS

    def name_of(self, node_id: str) -> str:
        """A short name of a node for people: its `short`, else its first words."""
        words = self.words_of(node_id)
        return words.short or words.ask.partition("?")[0] or node_id

    def label_of(self, node_id: str, option: str) -> str:
        """The words of an option; the id itself when it has none."""
        return self.words_of(node_id).options.get(option, option)

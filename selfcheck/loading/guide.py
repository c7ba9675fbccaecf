"""The guide's topics and listening words from `help/*.md` and `guide.toml`."""

from __future__ import annotations

from dataclasses import dataclass

from selfcheck.domain.sources import Source
from selfcheck.interview.nodes import STRICT
from selfcheck.interview.side_questions import Guide, Listening, Topic
from selfcheck.loading.content import sources
from selfcheck.loading.files import read_markdown, read_toml
from selfcheck.loading.place import Place, content_place


@dataclass(frozen=True, slots=True)
class _Page:
    """A topic as its file has it: `asked` holds one way of asking on each line."""

    id: str
    asked: str
    body: str
    source: str = ""
    safety: bool = False

    __pydantic_config__ = STRICT


@dataclass(frozen=True, slots=True)
class _Ear:
    """`Listening` as its file has it: each group of `elsewhere` is one text with a line on each line."""

    same: tuple[tuple[str, ...], ...] = ()
    danger: tuple[str, ...] = ()
    mild: tuple[str, ...] = ()
    ignore: str = ""
    shape: str = ""
    everyday: str = ""
    common: str = ""
    elsewhere: tuple[str, ...] = ()

    __pydantic_config__ = STRICT


def _lines(text: str) -> tuple[str, ...]:
    return tuple(filter(None, map(str.strip, text.splitlines())))


def guide(place: Place, language: str = "en") -> Guide:
    """Every topic of one language. Raises ContentProblem on the first file that is wrong or names an unknown source."""
    topics, listening = guide_parts(place, language)
    return Guide(topics, listening, {ident: shown(source) for ident, source in sources(place).items()})


def guide_parts(place: Place, language: str = "en") -> tuple[list[Topic], Listening]:
    """What a guide is made of. Raises ContentProblem as `guide` does."""
    from selfcheck.errors import ContentProblem

    known = sources(place)
    folder = f"{language}/help"
    pages = [read_markdown(place, f"{folder}/{name}.md", _Page, id=name) for name in place.names(folder, ".md")]
    topics = [Topic(page.id, _lines(page.asked), page.body, page.source, page.safety) for page in pages]
    for topic in topics:
        if topic.source not in known:
            what = f'there is no source "{topic.source}".'
            raise ContentProblem(place.shown(f"{folder}/{topic.id}.md"), topic.id, "source", what)
    ear = read_toml(place, f"{language}/guide.toml", _Ear)
    others = tuple(_lines(group) for group in ear.elsewhere)
    return topics, Listening(ear.same, ear.danger, ear.mild, ear.ignore, ear.shape, ear.everyday, ear.common, others)


def shown(source: Source) -> str:
    """How a source is named under an answer: title, publisher and year, and how it was seen where that matters."""
    seen = {"reprint": "seen in a reprint", "memory": "from memory"}.get(source.seen, "")
    seen = "" if source.id == "from-memory" else seen
    head = ", ".join(part for part in (source.title, source.publisher, str(source.year or "")) if part)
    return f"{head} ({seen})" if seen else head


def default_guide() -> Guide:
    """The English guide that comes with the program."""
    return guide(content_place(None))

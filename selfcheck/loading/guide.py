"""The guide's topics and listening words from `help/*.md` and `guide.toml`."""

from __future__ import annotations

from dataclasses import dataclass

from selfcheck.domain.sources import Source
from selfcheck.interview.nodes import STRICT
from selfcheck.interview.side_questions import Guide, Listening, Topic, lines_in
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
    topics = [Topic(page.id, lines_in(page.asked), page.body, page.source, page.safety) for page in pages]
    for topic in topics:
        if topic.source not in known:
            what = f'there is no source "{topic.source}".'
            raise ContentProblem(place.shown(f"{folder}/{topic.id}.md"), topic.id, "source", what)
    return topics, read_toml(place, f"{language}/guide.toml", Listening)


def shown(source: Source) -> str:
    """How a source is named under an answer: title, publisher and year, and how it was seen where that matters."""
    seen = {"reprint": "seen in a reprint", "memory": "from memory"}.get(source.seen, "")
    seen = "" if source.id == "from-memory" else seen
    head = ", ".join(part for part in (source.title, source.publisher, str(source.year or "")) if part)
    return f"{head} ({seen})" if seen else head


def default_guide() -> Guide:
    """The English guide that comes with the program."""
    return guide(content_place(None))

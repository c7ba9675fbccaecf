"""The guide's topics and listening words from `help/*.md` and `guide.toml`."""

from __future__ import annotations

from selfcheck.domain.sources import Source
from selfcheck.interview.side_questions import Guide, Listening, Topic
from selfcheck.loading.content import sources
from selfcheck.loading.files import read_markdown, read_toml
from selfcheck.loading.place import Place, content_place


def guide(place: Place, language: str = "en") -> Guide:
    """Every topic of one language. Raises ContentProblem on the first file that is wrong or names an unknown source."""
    from selfcheck.errors import ContentProblem

    known = sources(place)
    folder = f"{language}/help"
    topics = [read_markdown(place, f"{folder}/{name}.md", Topic, id=name) for name in place.names(folder, ".md")]
    for topic in topics:
        if topic.source not in known:
            what = f'there is no source "{topic.source}".'
            raise ContentProblem(place.shown(f"{folder}/{topic.id}.md"), topic.id, "source", what)
    listening = read_toml(place, f"{language}/guide.toml", Listening)
    return Guide(topics, listening, {ident: shown(source) for ident, source in known.items()})


def shown(source: Source) -> str:
    """How a source is named under an answer: title, publisher and year, and how it was seen where that matters."""
    seen = {"reprint": "seen in a reprint", "memory": "from memory"}.get(source.seen, "")
    seen = "" if source.id == "from-memory" else seen
    head = ", ".join(part for part in (source.title, source.publisher, str(source.year or "")) if part)
    return f"{head} ({seen})" if seen else head


def default_guide() -> Guide:
    """The English guide that comes with the program."""
    return guide(content_place(None))

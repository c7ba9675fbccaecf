"""Asked back in other words: the guide answers rightly, keeps silent about other things, and never errs on safety."""

from __future__ import annotations

import re
import time
import tomllib
from itertools import product
from pathlib import Path

import pytest
import textstat

from selfcheck.errors import ContentProblem
from selfcheck.interview.guide_words import near, stem, words
from selfcheck.interview.side_questions import Guide, Listening, Reply, Topic, answer
from selfcheck.loading.guide import default_guide, guide
from selfcheck.loading.place import content_place

HERE = Path(__file__).parent
ASKED = tomllib.loads((HERE / "asked_back.toml").read_text(encoding="utf-8"))
OFF_TOPIC = tomllib.loads((HERE / "off_topic.toml").read_text(encoding="utf-8"))
DANGER = tomllib.loads((HERE / "asked_in_danger.toml").read_text(encoding="utf-8"))
HALVES = ("tuned", "unseen")
#: one question in so many is asked, to be quick
STRIDE = {"tuned": 6, "unseen": 1}
#: least share of first answers right, of one right among three, and of right answers given
TARGETS = {"tuned": (0.95, 0.98, 0.93), "unseen": (0.94, 0.98, 0.93)}
#: largest share of lines about other things that get an answer
OFF_TOPIC_MOST = {"tuned": 0.04, "unseen": 0.04}


@pytest.fixture(scope="module")
def book() -> Guide:
    return default_guide()


@pytest.fixture(scope="module")
def topics(book: Guide) -> dict[str, Topic]:
    return {topic.id: topic for topic in book.topics()}


@pytest.mark.parametrize("half", HALVES)
def test_questions_find_their_answer(book: Guide, half: str) -> None:
    """The aim is nine first answers in ten and one right of three in ninety-seven of a hundred.

    The weights of the guide never saw the unseen half. Ways of asking were listed with both in view, and strangers meet
    a few points less: nine in ten.
    """
    lines, least = ASKED[half][:: STRIDE[half]], TARGETS[half]
    first = three = given = 0
    for line in lines:
        right = set(line["topics"])
        found = [reply.topic for reply in book.nearest(line["text"], 3)]
        reply = book.answer(line["text"])
        first += found[:1] != [] and found[0] in right
        three += bool(right & set(found))
        given += reply is not None and reply.topic in right
    assert len(lines) >= 250
    assert first / len(lines) >= least[0]
    assert three / len(lines) >= least[1]
    assert given / len(lines) >= least[2]


@pytest.mark.parametrize("half", HALVES)
def test_other_things_get_no_answer(book: Guide, half: str) -> None:
    lines = OFF_TOPIC[half][::2]
    answered = [line for line in lines if book.answer(line) is not None]
    assert len(lines) >= 120
    assert len(answered) / len(lines) <= OFF_TOPIC_MOST[half], answered


@pytest.mark.parametrize("half", HALVES)
def test_safety_questions_get_a_safety_answer_or_none(book: Guide, topics: dict[str, Topic], half: str) -> None:
    """At most one in two hundred goes wrong where a slip hides the very word of danger, and none of the unseen."""
    lines = [line["text"] for line in ASKED[half] if line["topics"][0] in DANGER["topics_of_danger"]]
    replies = [(line, book.answer(line)) for line in lines]
    wrong = [line for line, reply in replies if reply is not None and not topics[reply.topic].safety]
    assert len(lines) >= 40
    assert len(wrong) <= {"tuned": len(lines) // 200, "unseen": 0}[half], wrong


def test_words_of_danger_get_a_safety_answer_or_none(book: Guide, topics: dict[str, Topic]) -> None:
    for line in DANGER["safety_or_none"]:
        reply = book.answer(line)
        assert reply is None or topics[reply.topic].safety, (line, reply)
        assert all(topics[near_by.topic].safety for near_by in book.nearest(line, 3)), line


@pytest.mark.parametrize(("who", "doing"), [("children", "work"), ("anyone", "peril")])
def test_who_wants_to_be_where_it_harms_gets_a_safety_answer_or_none(
    book: Guide, topics: dict[str, Topic], who: str, doing: str
) -> None:
    """One in thirteen of all that can be put together is asked, to be quick."""
    parts = DANGER["put_together"]
    every = [form.format(*pair) for form, *pair in product(parts["asked"], parts[who], parts[doing])]
    wrong = [line for line in every[::13] if (reply := book.answer(line)) and not topics[reply.topic].safety]
    assert len(every) > 1500
    assert wrong == []


def test_what_must_be_answered_with_a_plain_no(book: Guide) -> None:
    for line in DANGER["plain_no"]:
        reply = book.answer(line)
        assert reply is not None, line
        assert re.search(r"\b(no|never|not)\b", ".".join(reply.text.lower().split(".")[:2])), line
        assert not re.match(r"(?i)yes\b", reply.text), line


def test_every_topic_asked_in_its_own_words_is_found(book: Guide) -> None:
    """A listed way of asking (one in thirteen is tried) leads to its topic, save a few short ones with two meanings."""
    asked = [(topic.id, line) for topic in book.topics() for line in topic.asked][::13]
    lost = [(ident, line) for ident, line in asked if ident not in {reply.topic for reply in book.nearest(line, 2)}]
    assert len(lost) / len(asked) <= 0.02, lost[:20]


def test_no_way_of_asking_stands_in_two_topics_and_none_in_the_tests(book: Guide) -> None:
    owner: dict[str, str] = {}
    for topic in book.topics():
        assert len(topic.asked) >= 18, topic.id
        for line in topic.asked:
            key = " ".join(words(line))
            assert owner.setdefault(key, topic.id) == topic.id, (line, topic.id, owner[key])
    for half in HALVES:
        assert not [line["text"] for line in ASKED[half] if " ".join(words(line["text"])) in owner]


def test_the_halves_of_the_questions_do_not_overlap(topics: dict[str, Topic]) -> None:
    tuned, unseen = ({line["text"].lower() for line in ASKED[half]} for half in HALVES)
    assert not tuned & unseen
    assert not set(OFF_TOPIC["tuned"]) & set(OFF_TOPIC["unseen"])
    assert {ident for half in HALVES for line in ASKED[half] for ident in line["topics"]} <= set(topics)


def test_answers_are_plain_and_short(book: Guide) -> None:
    every = []
    for topic in book.topics():
        text = topic.body
        sentences = [part for part in re.split(r"(?<=[.?])\s+", text) if part]
        assert len(sentences) <= 3, topic.id
        assert max(len(part.split()) for part in sentences) <= 20, topic.id
        assert "!" not in text, topic.id
        assert not re.search(r"\b(please|sorry|invalid|oops)\b", text.lower()), topic.id
        assert textstat.flesch_kincaid_grade(text) <= 8, (topic.id, textstat.flesch_kincaid_grade(text))
        every.append(text)
    assert textstat.flesch_kincaid_grade(" ".join(every)) <= 6


def test_every_answer_names_where_it_comes_from(book: Guide) -> None:
    reply = book.answer("what if my dog falls in")
    assert reply is not None
    assert reply.topic == "pet_fell_in"
    assert "Confined-space fatalities" in reply.source
    told = {answer_to(book, topic).source for topic in book.topics()}
    assert "Common practice of the trade" in told
    assert all(told)


def answer_to(book: Guide, topic: Topic) -> Reply:
    """The reply for a topic, asked in its longest own words."""
    replies = book.nearest(max(topic.asked, key=len), 3)
    return next(reply for reply in replies if reply.topic == topic.id)


def test_hostile_text_gets_a_quick_and_plain_answer(book: Guide) -> None:
    book.answer("warm up the misspelling tabel")
    for text in ("", " ", "?", "\x00\x00", "9**9**9**9", "a" * 5000, "lid " * 2000, "‮lid", "' OR 1=1 --", "é" * 900):
        start = time.perf_counter()
        reply = book.answer(text)
        assert time.perf_counter() - start < 0.5
        assert reply is None or reply.text


def test_the_door_that_takes_text_only() -> None:
    reply = answer("what is sludge")
    assert reply is not None
    assert reply.topic == "sludge"
    assert answer("how do I do my taxes") is None


def test_a_wrong_source_is_named_with_its_file(tmp_path: Path) -> None:
    folder = tmp_path / "en" / "help"
    folder.mkdir(parents=True)
    text = '+++\nasked = "what is sludge"\nsource = "hearsay"\n+++\nIt sinks.\n'
    (folder / "sludge.md").write_text(text, encoding="utf-8")
    with pytest.raises(ContentProblem, match="hearsay") as caught:
        guide(content_place(tmp_path))
    assert "sludge" in str(caught.value)


def test_a_small_guide_of_other_things() -> None:
    """The engine knows no septic word: it answers from whatever topics it is given."""
    listening = Listening(
        same=(("bread", "loaf"),),
        danger=("hot oven",),
        ignore="the a is my",
        shape="how what can i",
        elsewhere=("fix a car",),
    )
    small = Guide(
        [
            Topic("rise", ("how long does bread rise", "bread will not rise"), "Two hours."),
            Topic("crust", ("how do I get a hard crust", "crust is soft"), "Steam it."),
            Topic("burn", ("can I touch the hot oven", "hot oven door"), "No, wear gloves.", safety=True),
        ],
        listening,
    )
    assert next(reply.topic for reply in small.nearest("my loaf won't rise")) == "rise"
    assert {reply.topic for reply in small.nearest("crust in a hot oven")} == {"burn"}
    assert small.answer("fix a car") is None
    assert small.answer("") is None


def test_a_mild_word_of_danger_leaves_the_answer_to_a_topic_that_lists_it() -> None:
    topics = [
        Topic("share", ("does a kid eat less bread", "how much bread for each kid"), "Half a loaf."),
        Topic("crust", ("how do I get a hard crust", "crust is soft"), "Steam it."),
        Topic("away", ("can my kid stand near the oven", "kid at the oven"), "No, keep back.", safety=True),
    ]
    mild = Guide(topics, Listening(danger=("kid", "burn"), mild=("kid",), ignore="the a is my", shape="how can i"))
    strict = Guide(topics, Listening(danger=("kid", "burn"), ignore="the a is my", shape="how can i"))

    def first(book: Guide, line: str) -> str:
        return book.nearest(line)[0].topic

    assert first(mild, "how much bread does each kid eat") == "share"
    assert first(strict, "how much bread does each kid eat") == "away"
    assert first(mild, "hard crust, kid") == "away"  # that topic does not list the word
    assert first(mild, "how much bread does each kid burn") == "away"  # another word of danger, not a mild one
    assert first(mild, "kid eats bread at the oven") == "away"  # not far ahead


@pytest.mark.parametrize(
    ("slip", "meant"),
    [("sluge", "sludge"), ("lids", "lid"), ("pmup", "pump"), ("baffel", "baffle"), ("septtic", "septic")],
)
def test_slips_of_the_pen(slip: str, meant: str) -> None:
    assert near(slip, meant)


def test_stems_and_words() -> None:
    assert stem("pumping") == stem("pumps") == stem("pump")
    assert words("What's the “Lid’s” weight?") == ["whats", "the", "lids", "weight"]
    assert not near("flight", "lid")

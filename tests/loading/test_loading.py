"""Finding, reading and overlaying content."""

import re
import subprocess
import sys
from pathlib import Path

import pytest

from selfcheck.errors import ContentProblem
from selfcheck.interview import phrases
from selfcheck.interview.hazard_fitting import ALL
from selfcheck.interview.phrases import PHRASES
from selfcheck.loading import (
    Place,
    cautions,
    check_all,
    content_place,
    flow_ids,
    interface,
    rules,
    script,
    signs,
    sources,
)
from selfcheck.loading.conversations import other_words
from selfcheck.loading.place import packaged
from selfcheck.loading.quick import home

PLACE = content_place(own=False)
PHRASE_TABLE = re.search(r"\nPHRASES.*?\n}", Path(phrases.__file__).read_text(encoding="utf-8"), re.S)[0]  # type: ignore[index]
SOURCE = Path(__file__).parent.parent.parent / "selfcheck"


def test_all_content_fits_together() -> None:
    check_all(PLACE)
    assert {"home", "yearly", "trouble"} <= set(flow_ids(PLACE))
    assert len(rules(PLACE)) >= 10
    assert signs(PLACE)
    assert sources(PLACE)


def test_every_hazard_that_can_be_heard_has_its_caution_at_its_level() -> None:
    known = cautions(PLACE)
    for hazard, verdict in ALL.items():
        assert known[hazard].told, hazard
        assert (known[hazard].level == "danger") == (verdict == "danger"), hazard


def test_every_phrase_that_is_said_is_listed_and_every_listed_one_is_said() -> None:
    code = "\n".join(path.read_text(encoding="utf-8") for path in (SOURCE / "interview").glob("*.py"))
    listed = set(PHRASES)
    direct = set(re.findall(r'(?:\bsay|_phrase)\((?:script, )?"([a-z_]+)"', code))
    assert direct <= listed
    made_up = {name for name in listed if name.startswith(("hint_", "level_"))}
    assert listed - made_up - set(re.findall(r'"([a-z_]+)"', code.replace(PHRASE_TABLE, ""))) == set()
    assert set(interface(PLACE).phrases) == listed


def test_commands_and_openings_are_written_as_they_are_compared() -> None:
    from selfcheck.interview.commands import COMMANDS
    from selfcheck.interview.typed_line import normal

    words = interface(PLACE)
    assert set(words.commands) == set(COMMANDS)
    for lines in (*words.commands.values(), *words.openings.values()):
        for line in lines:
            assert normal(line) == line
    spoken = [line for lines in words.commands.values() for line in lines]
    assert len(spoken) == len(set(spoken))


def test_an_educators_folder_is_laid_over_file_by_file(tmp_path: Path) -> None:
    (tmp_path / "en" / "words").mkdir(parents=True)
    ours = (packaged() / "en/words/home.toml").read_text(encoding="utf-8")
    theirs = ours.replace("title = ", 'title = "Our county" # ')
    (tmp_path / "en/words/home.toml").write_text(theirs, encoding="utf-8")
    place = content_place(tmp_path, own=False)
    assert script(place, "home").words["home"].title == "Our county"
    assert home(place)["section"]["title"] == "Our county"
    assert script(place, "yearly").flow == script(PLACE, "yearly").flow


def test_an_error_in_an_overlay_names_the_overlay(tmp_path: Path) -> None:
    (tmp_path / "flows").mkdir()
    (tmp_path / "flows/home.toml").write_text("broken", encoding="utf-8")
    with pytest.raises(ContentProblem, match=re.escape(str(tmp_path))):
        script(content_place(tmp_path, own=False), "home")


def test_an_overlay_that_is_no_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(ContentProblem, match="not a folder"):
        content_place(tmp_path / "nothing")


def test_a_missing_flow_and_a_huge_file_are_refused(tmp_path: Path) -> None:
    with pytest.raises(ContentProblem, match="no such file"):
        script(PLACE, "nothing")
    (tmp_path / "flows").mkdir()
    (tmp_path / "flows/big.toml").write_text("# " + "x" * 1_100_000, encoding="utf-8")
    with pytest.raises(ContentProblem, match="one million"):
        script(Place((tmp_path, packaged())), "big")


def test_the_first_words_need_no_models() -> None:
    code = (
        "import sys\n"
        "from selfcheck.loading import content_place\n"
        "from selfcheck.loading.quick import home\n"
        "assert home(content_place(own=False))['section']\n"
        "heavy = {'pydantic', 'pint', 'textual', 'rich'} & set(sys.modules)\n"
        "assert not heavy, heavy\n"
    )
    subprocess.run([sys.executable, "-c", code], check=True, cwd=SOURCE.parent)


def test_the_engine_needs_no_models_either() -> None:
    code = (
        "import sys\n"
        "import selfcheck.interview.dialogue\n"
        "heavy = {'pydantic', 'pint', 'textual', 'rich'} & set(sys.modules)\n"
        "assert not heavy, heavy\n"
    )
    subprocess.run([sys.executable, "-c", code], check=True, cwd=SOURCE.parent)


def test_the_engine_knows_no_word_of_the_trade() -> None:
    """The dialogue, its routing and its words could be about anything."""
    trade = re.compile(r"\b(?:septic|tank|sludge|scum|lid|outlet|inlet|sewage|pump(?:ed|ing)?)\b", re.IGNORECASE)
    others = {"side_questions", "nodes"}
    for path in (SOURCE / "interview").glob("[!_]*.py"):
        name = path.stem
        if name in others or name.startswith(("hazard", "guide", "septic")):
            continue
        assert not trade.search((SOURCE / "interview" / f"{name}.py").read_text(encoding="utf-8")), name
    spoken = (packaged() / "en/words/interface.toml").read_text(encoding="utf-8").partition("\n[stages]")[0]
    assert not trade.search(spoken)


def test_words_files_that_are_no_section_are_found_by_their_form() -> None:
    asked = {section.id for flow_id in flow_ids(PLACE) for section in script(PLACE, flow_id).flow.sections}
    others = other_words(PLACE)
    assert {"interface", "findings", "verdicts", "pictures", "screen", "record"} <= {*others}
    assert not asked & {*others}
    assert asked | {*others} == {*PLACE.names("en/words", ".toml")}


@pytest.mark.parametrize("name", ["pictures", "call_note", "findings"])
@pytest.mark.parametrize("broken", ['text = "a {place without an end"', "text = 3"])
def test_words_of_pages_and_pictures_are_checked(tmp_path: Path, name: str, broken: str) -> None:
    words = PLACE.text(f"en/words/{name}.toml") + f"\n[broken]\n{broken}\n"
    file = tmp_path / "en" / "words" / f"{name}.toml"
    file.parent.mkdir(parents=True)
    file.write_text(words, encoding="utf-8")
    with pytest.raises(ContentProblem) as caught:
        check_all(Place((tmp_path, *PLACE.folders)))
    assert "broken" in str(caught.value)
    assert f"{name}.toml" in str(caught.value)

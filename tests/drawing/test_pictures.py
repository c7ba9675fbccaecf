"""All pictures, by each of the three pens: what holds for every one of them."""

from __future__ import annotations

import os
import re
from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from typing import Any
from unicodedata import category

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from selfcheck.domain.check import Readings
from selfcheck.domain.findings import Dates
from selfcheck.domain.forecast import Band
from selfcheck.domain.household import Drum, Place
from selfcheck.domain.marks import marks
from selfcheck.domain.shapes import vessel
from selfcheck.domain.uncertain import Measure
from selfcheck.drawing import cloth, history, patches, section, sketch
from selfcheck.drawing.spans import ROLES, Grid, as_text, cells, wrapped
from selfcheck.errors import ContentProblem
from tests.content.test_plain_words import FORBIDDEN, LONGEST_SENTENCE
from tests.content.texts import sentences, word_count
from tests.drawing import households as given_
from tests.drawing.households import INCH
from tests.drawing.svg_checks import check, texts

SNAPSHOTS = Path(__file__).parent / "snapshots"
QUICK = settings(max_examples=45, deadline=None, suppress_health_check=list(HealthCheck))
SLOW = settings(max_examples=20, deadline=None, suppress_health_check=list(HealthCheck))
WORDS = given_.WORDS
PLACE = Place(corner_a="kitchen corner", corner_b="porch post", corners_apart_m=6.4008, from_a_m=5.207, from_b_m=4.0894,
              side="garden side", note="under the flat stone")  # fmt: skip


def the_cloth(read: Readings) -> cloth.ClothPicture:
    body = vessel(given_.TANK)
    return cloth.describe(read, WORDS["cloth"], marks(given_.EPA, given_.TANK, body))


def two_parts() -> section.SectionPicture:
    return given_.section(
        given_.TANK.model_copy(update={"compartments": 2}),
        given_.readings(liquid_depth=[48], sludge=[12], scum_total=[6]),
        given_.readings(sludge=[8], scum_total=[4]),
        given_.readings(liquid_depth=[48], sludge=[4], scum_total=[1]),
    )


def the_history() -> history.HistoryPicture:
    """A plain one: both layers grow evenly between pump-outs, and ever less surely from today on."""
    emptied, today, last = (date(2017, 6, 10), date(2023, 5, 22)), date(2026, 6, 1), date(2030, 6, 1)
    read = [(date(2019, 5, 11), 4.0, 1.5), (date(2023, 5, 6), 11.0, 4.0), (date(2025, 5, 17), 4.5, 1.75)]

    def band(day: date) -> Band:
        since = max(start for start in emptied if start < day or start == emptied[0])
        years = max(0, (day - since).days) / 365.25
        doubt = max(0.0, (day - today).days / 365.25) * 0.4
        thick = [tuple(INCH * rate * max(0.0, years + off) for off in (-doubt, 0.0, doubt)) for rate in (2.0, 0.75)]
        return Band(day, thick[0], thick[1])  # type: ignore[arg-type]

    days = sorted(emptied[0] + timedelta(days=step) for step in range(0, (last - emptied[0]).days + 1, 20))
    return history.HistoryPicture(
        first=emptied[0], today=today, last=last, liquid_depth=48 * INCH,
        readings=tuple(
            history.DatedReading(day, Measure(sludge * INCH, 0.75 * INCH), Measure(scum * INCH, 0.5 * INCH))
            for day, sludge, scum in read
        ),
        emptied=emptied, emptied_within=tuple((day, day) for day in emptied),
        people=((emptied[0], 2.0), (date(2022, 9, 1), 4.5)), bands=tuple(map(band, days)),
        due=Dates(date(2028, 2, 1), date(2028, 11, 1), date(2030, 1, 1)),
        limits=(section.LimitLine("crust limit", 37 * INCH), section.LimitLine("sludge limit", 11 * INCH)),
        words=WORDS["history"],
    )  # fmt: skip


#: every picture told in full, by name: its module and how it is described
PICTURES: dict[str, tuple[Any, Callable[[], Any]]] = {
    "section_two_parts": (section, two_parts),
    "section_drum": (
        section,
        lambda: given_.section(
            given_.TANK.model_copy(update={"shape": Drum(diameter_m=1.5, length_m=2.0, ends="dished")}),
            given_.readings(liquid_depth=[48], sludge=[12], scum_total=[8]),
        ),
    ),
    "cloth": (cloth, lambda: the_cloth(given_.readings(liquid_depth=[47], sludge=[8, 12, 9]))),
    "history": (history, the_history),
    "place": (sketch, lambda: sketch.describe(PLACE, WORDS["sketch"])),
    "place_either": (
        sketch,
        lambda: sketch.describe(PLACE.model_copy(update={"side": "", "note": ""}), WORDS["sketch"]),
    ),
    "surfaces": (patches, lambda: patches.describe("surface", WORDS["patches"], "brown")),
    "walls": (patches, lambda: patches.describe("wall", WORDS["patches"], "pitted")),
}


@pytest.mark.parametrize("name", PICTURES)
@pytest.mark.parametrize("units", ["us", "metric"])
def test_svg_is_whole_and_stands_alone(name: str, units: str) -> None:
    pen, picture = PICTURES[name]
    check(pen.as_svg(picture(), units, "one"), "one")


@pytest.mark.parametrize("name", PICTURES)
def test_two_pictures_on_one_page_share_no_id(name: str) -> None:
    pen, picture = PICTURES[name]
    ids = [set(re.findall(r' id="([^"]+)"', pen.as_svg(picture(), "us", prefix))) for prefix in ("a", "b")]
    assert ids[0]
    assert not ids[0] & ids[1]
    for bad in ("", "1a", "a b", 'a"', "a" * 60):
        with pytest.raises(ValueError, match="prefix"):
            pen.as_svg(picture(), "us", bad)


@pytest.mark.parametrize("name", PICTURES)
@pytest.mark.parametrize("size", [(60, 20), (80, 24), (40, 16), (24, 10), (5, 3), (1, 1)], ids=str)
def test_lines_fill_the_width_and_keep_the_height(name: str, size: tuple[int, int]) -> None:
    pen, picture = PICTURES[name]
    lines = pen.as_lines(picture(), *size)
    assert 0 < len(lines) <= size[1]
    for line in lines:
        assert sum(len(span.text) for span in line) == size[0]
        assert all(span.role in ROLES and span.text.isprintable() for span in line)


@pytest.mark.parametrize("name", PICTURES)
def test_pictures_look_as_they_did(name: str) -> None:
    """Run with SELFCHECK_SNAPSHOTS=write to take new pictures, then read them."""
    pen, picture = PICTURES[name]
    shown = picture()
    seen = "\n".join([*as_text(pen.as_lines(shown, 60, 22)), "", *pen.as_words(shown, "us")]) + "\n"
    file = SNAPSHOTS / f"{name}.txt"
    if os.environ.get("SELFCHECK_SNAPSHOTS") == "write":
        file.write_text(seen, encoding="utf-8")
    assert seen == file.read_text(encoding="utf-8")


@pytest.mark.parametrize("name", PICTURES)
@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_words_say_every_number_that_is_drawn(name: str, units: str) -> None:
    """Whoever hears the picture gets every length and every name in it; marks on an axis tell nothing of the tank."""
    pen, picture = PICTURES[name]
    shown = picture()
    drawn = texts(check(pen.as_svg(shown, units, "one"), "one"))
    spoken = " ".join(pen.as_words(shown, units)).lower().replace("give or take", "±")
    bare = re.sub(r" ± [\d¼½¾]+", "", spoken)
    for text in drawn:
        for number in re.findall(r"\d[\d¼½¾]*(?: ± [\d¼½¾]+)? (?:in|cm|ft|m)\b", text):
            assert number in spoken or number in bare, (number, spoken)


@pytest.mark.parametrize("name", PICTURES)
def test_the_description_is_the_words(name: str) -> None:
    pen, picture = PICTURES[name]
    shown = picture()
    root = check(pen.as_svg(shown, "us", "one"), "one")
    described = root.findtext("{http://www.w3.org/2000/svg}desc") or ""
    for line in pen.as_words(shown, "us"):
        assert line.rstrip(".") in described


@pytest.mark.parametrize("name", ["cloth", "history", "place", "surfaces"])
def test_a_missing_word_is_named(name: str) -> None:
    pen, picture = PICTURES[name]
    shown = picture()
    untitled = {key: word for key, word in shown.words.items() if not key.startswith("title")}
    with pytest.raises(ContentProblem, match="title"):
        pen.as_svg(replace(shown, words=untitled), "us", "one")


def test_every_picture_has_its_words_and_no_others() -> None:
    """Each phrase of the content is used by its picture, and each that a picture uses is there."""
    folder = Path(section.__file__).parent
    for name in ("cloth", "history", "sketch", "patches"):
        code = "".join(
            path.read_text("utf-8") for path in folder.glob("*.py") if path.stem.startswith((name, "section_picture"))
        )
        quoted = set(re.findall(r"[\"']([a-z_]+)[\"']", code))
        for phrase in WORDS[name]:
            stem = re.sub(r"_(means|is|surface|wall)$", "", phrase)
            assert phrase in quoted or stem in quoted or phrase.startswith("title_"), (name, phrase)
        for phrase in re.findall(r"say\([\w.]+, [\"']([a-z_]+)[\"']", code):
            assert phrase in WORDS[name], (name, phrase)
    assert set(WORDS["section"]) == set(section.SectionWords.__dataclass_fields__)
    for topic in patches.PATCHES:
        assert all(f"{ident}_means" in WORDS["patches"] for ident, _ in patches.PATCHES[topic])


def test_the_words_are_short_and_calm() -> None:
    said = [(f"{name} · {key}", text) for name, table in WORDS.items() for key, text in table.items()]
    said += [(name, line) for name, (pen, picture) in PICTURES.items() for line in pen.as_words(picture(), "us")]
    for place, text in said:
        assert not FORBIDDEN.search(text), place
        assert "!" not in text, place
        assert max(map(word_count, sentences(text)), default=0) <= LONGEST_SENTENCE, place


@QUICK
@given(given_.tanks, given_.any_readings, st.none() | given_.any_readings, st.none() | given_.any_readings,
       st.sampled_from(["us", "metric"]), st.integers(1, 100), st.integers(1, 40))  # fmt: skip
def test_any_tank_can_be_drawn(
    tank: Any, now: Any, last: Any, second: Any, units: Any, width: int, height: int
) -> None:
    picture = given_.section(tank, now, last, second)
    check(section.as_svg(picture, units, "any"), "any")
    lines = section.as_lines(picture, width, height, units)
    assert all(sum(len(span.text) for span in line) == width for line in lines)
    assert len(lines) <= height
    assert len(section.as_words(picture, units)) >= 3


@QUICK
@given(given_.any_readings, st.booleans(), st.sampled_from(["us", "metric"]), st.integers(1, 100), st.integers(1, 40))
def test_any_cloth_can_be_drawn(read: Any, marked: bool, units: Any, width: int, height: int) -> None:
    picture = the_cloth(read) if marked else cloth.describe(read, WORDS["cloth"])
    check(cloth.as_svg(picture, units, "any"), "any")
    lines = cloth.as_lines(picture, width, height, units)
    assert len(lines) <= height
    assert all(sum(len(span.text) for span in line) == width for line in lines)


@SLOW
@given(given_.houses, given_.checks, given_.pump_outs, st.sampled_from(["us", "metric"]), st.integers(1, 100),
       st.integers(1, 40))  # fmt: skip
def test_any_history_can_be_drawn(house: Any, checks: Any, emptied: Any, units: Any, width: int, height: int) -> None:
    picture = history.describe(given_.judged(house, checks, emptied), checks, emptied, WORDS["history"])
    check(history.as_svg(picture, units, "any"), "any")
    lines = history.as_lines(picture, width, height, units)
    assert len(lines) <= height
    assert all(sum(len(span.text) for span in line) == width for line in lines)
    assert history.as_words(picture, units)


@QUICK
@given(given_.places, st.sampled_from(["us", "metric"]), st.integers(1, 100), st.integers(1, 40))
def test_any_place_can_be_drawn(place: Any, units: Any, width: int, height: int) -> None:
    picture = sketch.describe(place, WORDS["sketch"])
    svg = sketch.as_svg(picture, units, "any")
    assert "<script" not in svg
    check(svg.replace("http://x", "x"), "any")
    lines = sketch.as_lines(picture, width, height, units)
    assert len(lines) <= height
    for line in lines:
        assert sum(cells(span.text) for span in line) == width
        assert not any(category(one) in ("Cc", "Cf", "Cs") for span in line for one in span.text)
    assert sketch.as_words(picture, units)


@QUICK
@given(st.text(max_size=60), st.integers(2, 30))
def test_wrapped_text_fits_and_loses_nothing(text: str, width: int) -> None:
    lines = wrapped(text, width)
    assert all(cells(line) <= width for line in lines)
    assert "".join("".join(lines).split()) == "".join(text.split())


def test_wide_letters_take_two_cells_and_leave_no_half_behind() -> None:
    grid = Grid(6, 1)
    grid.put(0, 0, "漢字e\u0301", "label")
    assert as_text(grid.lines()) == ["漢字e\u0301"]
    assert cells("漢字e\u0301") == 5
    grid.put(1, 0, "x", "label")
    assert as_text(grid.lines()) == [" x字e\u0301"]
    grid.put(2, 0, "y", "label")
    assert as_text(grid.lines()) == [" xy e\u0301"]
    grid.put(5, 0, "漢", "label")
    assert sum(cells(span.text) for span in grid.lines()[0]) == 6


def test_a_sketch_says_on_which_side_the_lid_is_and_that_it_always_draws_it_below() -> None:
    picture = sketch.describe(PLACE, WORDS["sketch"])
    lines = as_text(sketch.as_lines(picture, 70, 24, "us"))
    assert any(f"lid: {PLACE.side}" in line for line in lines)
    assert any("below the line, whichever side that is" in line for line in lines)
    assert f"lid: {PLACE.side}" in sketch.as_svg(picture, "us", "any")
    either = sketch.describe(PLACE.model_copy(update={"side": ""}), WORDS["sketch"])
    assert "lid:" not in " ".join(as_text(sketch.as_lines(either, 70, 24, "us")))


@pytest.mark.parametrize("inches", [7.0, 12.3, 13.375, 19.7])
def test_a_stain_at_the_booking_mark_is_not_above_it(inches: float) -> None:
    mark = inches * 0.0254
    at_it = (mark, round(mark, 5) + 1e-5, mark + 0.1 + 0.2 - 0.3)
    for height, above in (*((one, False) for one in at_it), (mark + 0.002, True)):
        stain = cloth.Stain(height, 0.01)
        assert cloth.ClothPicture((stain,), (None,), mark, None, WORDS["cloth"]).above(stain) is above


def test_a_long_record_is_thinned_and_the_picture_says_so() -> None:
    days = [date(1990, 1, 1) + timedelta(days=4 * step) for step in range(3000)]
    checks = [given_.check_on(str(day), 4, 1.5) for day in days]
    picture = history.describe(given_.judged(), checks, given_.PUMP_OUTS, WORDS["history"])
    drawn = [one.on for one in picture.readings]
    assert len(drawn) == history.MOST_DRAWN
    assert (drawn[0], drawn[-1]) == (days[0], days[-1])
    assert picture.left_out == 2900
    svg = history.as_svg(picture)
    assert len(svg) < 300_000
    assert "100 of 3000 drawn" in svg
    told = history.as_words(picture)
    assert told[1].startswith("30 of 3000 readings are told here.")
    assert sum("sludge 4 give or take" in line for line in told) == history.MOST_TOLD


@pytest.mark.parametrize("width", [60, 80, 120])
def test_in_a_terminal_readings_leave_the_layers_and_the_names_to_be_seen(width: int) -> None:
    days = [date(1990, 1, 1) + timedelta(days=30 * step) for step in range(400)]
    checks = [given_.check_on(str(day), 9, 1.5) for day in days]
    picture = history.describe(given_.judged(), checks, given_.PUMP_OUTS, WORDS["history"])
    lines = as_text(history.as_lines(picture, width, 20))
    said = re.search(r"\((\d+) of 400 drawn\)", "".join(lines))
    assert said is not None
    assert width // 4 <= int(said[1]) <= width // 3
    for name in ("crust limit", "sludge limit", "likely from here on"):
        assert any(name in line for line in lines), name


def test_a_short_record_is_drawn_whole() -> None:
    picture = history.describe(given_.judged(), given_.CHECKS, given_.PUMP_OUTS, WORDS["history"])
    assert picture.left_out == 0
    assert "drawn" not in " ".join([history.as_svg(picture), *history.as_words(picture)])


def test_a_sketch_without_the_distance_of_the_corners_says_which_length_is_missing_and_keeps_the_rest() -> None:
    corner = "the far north corner of the old stone barn by the orchard gate"
    place = Place(corner_a=corner, corner_b="gate post", from_a_m=15, from_b_m=3.5, side="up the hill", note="a stone")
    picture = sketch.describe(place, WORDS["sketch"])
    svg = " ".join(re.findall(r"<text[^>]*>([^<]*)", sketch.as_svg(picture)))
    for told in (svg, " ".join(sketch.as_words(picture))):
        assert WORDS["sketch"]["not_apart"] in told
        for part in (corner, "up the hill", "a stone"):
            assert part in told


def test_no_layers_are_drawn_for_the_time_before_the_first_known_pump_out() -> None:
    early = [given_.check_on("2012-05-01", 6, 2), *given_.CHECKS]
    picture = history.describe(given_.judged(checks=early), early, given_.PUMP_OUTS, WORDS["history"])
    assert picture.first == date(2012, 5, 1)
    assert picture.bands[0].day == given_.PUMP_OUTS[0].on
    lines = as_text(history.as_lines(picture, 80, 20))
    floor = next(line for line in lines if line.lstrip().startswith("0 in"))
    assert floor[8:20].strip(" ●┃") == ""

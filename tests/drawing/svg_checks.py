"""What every SVG picture must hold, whoever drew it."""

from __future__ import annotations

import re
from xml.etree import ElementTree as ET

SVG = "{http://www.w3.org/2000/svg}"
ALLOWED = {"svg", "title", "desc", "defs", "pattern", "clipPath", "g", "rect", "path", "circle", "text"}
SMALLEST_TEXT = 12.0

# Advance widths of DejaVu Sans, in thousandths of the size, for the characters 32 to 126: from the face itself, which
# is wider than most of its kind.
_WIDTHS = [
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636, 636,
    636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863,
    748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635,
    615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636,
    337, 636, 838,
]  # fmt: skip
_OTHERS = {"¼": 969, "½": 969, "¾": 969, "±": 838, "…": 1000, "·": 318, "←": 838, "→": 838, "—": 1000, "\ufffd": 1025}


def width(text: str, size: float) -> float:
    """Room that a text takes in DejaVu Sans; a full square for what is neither in that table nor a letter."""

    def one(character: str) -> int:
        if 32 <= ord(character) < 127:
            return _WIDTHS[ord(character) - 32]
        return _OTHERS.get(character, 660 if ord(character) < 0x250 else 1000)

    return size * sum(map(one, text)) / 1000


def parsed(svg: str) -> ET.Element:
    root = ET.fromstring(svg)
    assert root.tag == f"{SVG}svg"
    return root


def texts(root: ET.Element) -> list[str]:
    return [element.text or "" for element in root.iter(f"{SVG}text")]


def check(svg: str, prefix: str) -> ET.Element:
    """Valid XML, self-contained, told in words, ids its own, every text inside the frame. Returns the root."""
    root = parsed(svg)
    _, _, wide, high = map(float, root.attrib["viewBox"].split())
    assert wide == 360
    assert 0 < high < 2000
    elements = list(root.iter())
    assert {element.tag.removeprefix(SVG) for element in elements} <= ALLOWED
    title, description = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert title is not None
    assert description is not None
    assert title.text
    assert description.text
    ids = [element.attrib["id"] for element in elements if "id" in element.attrib]
    assert len(ids) == len(set(ids))
    assert all(ident.startswith(f"{prefix}-") for ident in ids)
    assert root.attrib["aria-labelledby"].split() == [title.attrib["id"], description.attrib["id"]]
    for element in elements:
        for name, value in element.attrib.items():
            assert name != "style"
            assert "href" not in name
            assert not name.startswith("on")
            for reference in re.findall(r"url\((.*?)\)", value):
                assert reference in [f"#{ident}" for ident in ids]
            assert not re.search(r"\b(nan|inf)\b", value)
    assert svg.count("http") == 1  # the name space, which nothing fetches
    for element in root.iter(f"{SVG}text"):
        size = float(element.attrib["font-size"])
        assert size >= SMALLEST_TEXT
        room = width(element.text or "", size) * (1.12 if "font-weight" in element.attrib else 1)
        x, y = float(element.attrib["x"]), float(element.attrib["y"])
        start = x - room * {"start": 0, "middle": 0.5, "end": 1}[element.attrib.get("text-anchor", "start")]
        assert start >= -0.5, element.text
        assert start + room <= wide + 0.5, element.text
        assert size * 0.7 <= y <= high - 2, element.text
    return root

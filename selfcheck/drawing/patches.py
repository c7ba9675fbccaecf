"""What healthy and unhealthy surfaces look like, described once: each with a texture, a name and a word, never by
colour alone."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from selfcheck.drawing.words import Words, say

if TYPE_CHECKING:
    from selfcheck.drawing.lengths import Units
    from selfcheck.drawing.spans import Line

Topic = Literal["surface", "wall"]
Mark = Literal["healthy", "look", "call"]

#: what each answer of a check looks like, in the order from sound to unsound, and what it asks for
PATCHES: dict[Topic, tuple[tuple[str, Mark], ...]] = {
    "surface": (("brown", "healthy"), ("no_crust", "look"), ("black", "look"), ("pale_grey", "call")),
    "wall": (
        ("sound", "healthy"), ("damp_white", "look"), ("pitted", "call"), ("crumbling", "call"),
        ("steel_showing", "call"),
    ),
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Patch:
    """One surface: `id` is the answer of the check that it shows; `seen` marks the one that was given."""

    id: str
    mark: Mark
    seen: bool = False


@dataclass(frozen=True, slots=True)
class PatchesPicture:
    """What is drawn, from sound to unsound."""

    topic: Topic
    patches: tuple[Patch, ...]
    words: Words


def describe(topic: Topic, words: Words, seen: str | None = None, acid_attacks: bool = True) -> PatchesPicture:
    """The surfaces of one topic; `seen` is the answer that was given, if any.

    `acid_attacks`: whether tank gas can eat this tank (concrete, steel, not known): only then is pale grey a reason to
    call; else it is one to ask.
    """
    patches = []
    for ident, mark in PATCHES[topic]:
        milder = ident == "pale_grey" and not acid_attacks
        patches.append(Patch(ident, "look" if milder else mark, ident == seen))
    return PatchesPicture(topic, tuple(patches), words)


def as_words(picture: PatchesPicture, units: Units = "us") -> list[str]:
    """Each surface in a line: its name, what it asks for, what it means."""
    words = picture.words
    return [
        say(
            words, "each_seen" if patch.seen else "each", name=say(words, patch.id), mark=say(words, patch.mark),
            means=say(words, f"{patch.id}_means"),
        ) + "."
        for patch in picture.patches
    ]  # fmt: skip


def as_lines(picture: PatchesPicture, width: int, height: int, units: Units = "us") -> list[Line]:
    """The surfaces as at most `height` lines of exactly `width` cells."""
    from selfcheck.drawing.patches_pens import as_lines as draw

    return draw(picture, width, height)


def as_svg(picture: PatchesPicture, units: Units = "us", prefix: str = "patches") -> str:
    """The surfaces as one SVG element; `prefix` begins its ids. ValueError for a prefix that is none."""
    from selfcheck.drawing.patches_pens import as_svg as draw

    return draw(picture, prefix)

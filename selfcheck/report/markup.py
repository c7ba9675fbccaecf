"""HTML made of elements. Whatever is not an element made here is cleaned and escaped on its way in."""

from __future__ import annotations

from html import escape

from selfcheck.text import clean

_VOID = frozenset({"meta", "br", "hr", "link"})
#: What the page tells a browser: run nothing, ask for nothing, use the style inside.
_NOTHING_ELSE = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"


class Html(str):
    """Text that is HTML already."""

    __slots__ = ()


Inside = str | None


def text(words: str, cap: int = 4000) -> Html:
    """Words of a person, a file or the content as HTML: harmless signs only, all marks escaped."""
    return words if isinstance(words, Html) else Html(escape(clean(words, cap), quote=True))


def tag(name: str, /, *inside: Inside, **attributes: str | None) -> Html:
    """One element. `class_` gives `class`, `data_label` gives `data-label`; an attribute that is None is left out."""
    given = "".join(
        f' {key.rstrip("_").replace("_", "-")}="{text(value)}"'
        for key, value in attributes.items()
        if value is not None
    )
    if name in _VOID:
        return Html(f"<{name}{given}>")
    return Html(f"<{name}{given}>{join(*inside)}</{name}>")


def join(*parts: Inside) -> Html:
    """Parts one after the other; None is nothing."""
    return Html("".join(text(part) for part in parts if part is not None))


def listing(lines: tuple[str, ...] | list[str], **attributes: str | None) -> Html:
    """A list with one point a line."""
    return tag("ul", *(tag("li", line) for line in lines), **attributes)


def document(title: str, style: str, *body: Inside, language: str = "en") -> str:
    """A whole page that asks nothing of anybody: one file, no script, its style inside.

    `style` is our own and holds no `</style`.
    """
    head = tag(
        "head",
        tag("meta", charset="utf-8"),
        tag("meta", name="viewport", content="width=device-width, initial-scale=1"),
        tag("meta", http_equiv="Content-Security-Policy", content=_NOTHING_ELSE),
        tag("meta", name="referrer", content="no-referrer"),
        tag("meta", name="color-scheme", content="light dark"),
        tag("title", title),
        tag("style", Html(style)),
    )
    page = tag("html", head, "\n", tag("body", *body), lang=language)
    return f"<!DOCTYPE html>\n{page}\n"

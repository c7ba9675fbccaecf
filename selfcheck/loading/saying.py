"""What a strict check found, in plain words."""

from __future__ import annotations

import dataclasses
import difflib
import types
import typing
from collections.abc import Mapping, Sequence
from typing import Any

_KINDS = {
    "string_type": "this must be words in quotes",
    "float_type": "this must be a number without quotes",
    "float_parsing": "this must be a number without quotes",
    "int_type": "this must be a whole number without quotes",
    "int_parsing": "this must be a whole number without quotes",
    "int_from_float": "this must be a whole number",
    "bool_type": "this must be true or false, without quotes",
    "bool_parsing": "this must be true or false, without quotes",
    "tuple_type": "this must be a list in square brackets",
    "list_type": "this must be a list in square brackets",
    "dict_type": "this must be a table of keys and values",
    "dataclass_type": "this must be a table of keys and values",
    "date_type": 'this must be a day such as "2026-05-18"',
    "date_parsing": 'this must be a day such as "2026-05-18"',
    "date_from_datetime_parsing": 'this must be a day such as "2026-05-18"',
    "missing": "this key is missing",
}
_UNKNOWN_KEY = {"extra_forbidden", "unexpected_keyword_argument"}


def plain_words(errors: Sequence[Any], data: Any, model: Any) -> tuple[str, str, str]:
    """(id of the thing, its key, what is wrong) for the most telling of `errors`."""
    error = _most_telling(errors)
    ident, keys = _place(error["loc"], data, error["type"] == "missing")
    key = ".".join(name.rstrip("_") for name in keys)
    return ident, key, _what(error, keys, model) + ("" if error["type"] in _UNKNOWN_KEY else ".")


def _most_telling(errors: Sequence[Any]) -> Any:
    """An unknown key often causes a missing one; it is named first."""
    return min(errors, key=lambda error: error["type"] not in _UNKNOWN_KEY)


def _place(loc: Sequence[str | int], data: Any, missing: bool) -> tuple[str, list[str]]:
    """Follows `loc` through the data: the innermost id met, and the keys below it."""
    ident, here = "", data
    keys: list[str] = []
    for step in loc:
        if isinstance(step, int):
            if not isinstance(here, list) or step >= len(here):
                continue
            here = here[step]
            if isinstance(here, Mapping) and isinstance(here.get("id"), str):
                ident, keys = here["id"], []
            elif isinstance(here, Mapping):
                keys.append(str(step + 1))
        elif isinstance(here, Mapping) and step in here:
            here = here[step]
            keys.append(step)
            if isinstance(here, Mapping) and isinstance(here.get("id"), str):
                ident, keys = here["id"], []
        elif missing and step == loc[-1]:
            keys.append(str(step))
    if not ident and isinstance(data, Mapping):
        ident = data["id"] if isinstance(data.get("id"), str) else ""
    return ident, keys


def _what(error: Any, keys: Sequence[str], model: Any) -> str:
    kind = error["type"]
    if kind in _UNKNOWN_KEY:
        near = difflib.get_close_matches(keys[-1] if keys else "", sorted(_known_keys(model)), n=1)
        return "there is no such key" + (f'; did you mean "{near[0].rstrip("_")}"?' if near else ".")
    if kind == "literal_error":
        return f'"{error["input"]}" is not one of {error["ctx"]["expected"]}'
    if kind == "union_tag_invalid":
        return f'"{error["ctx"]["tag"]}" is not one of {error["ctx"]["expected_tags"]}'
    if kind in _KINDS:
        return _KINDS[kind]
    message = str(error["msg"]).removeprefix("Value error, ")
    return message[:1].lower() + message[1:].rstrip(".")


def _known_keys(model: Any, seen: frozenset[Any] = frozenset()) -> set[str]:
    """Every key that may stand anywhere in a file of this model."""
    if model in seen:
        return set()
    names: set[str] = set()
    if dataclasses.is_dataclass(model) and isinstance(model, type):
        for name, hint in typing.get_type_hints(model).items():
            names |= {name} | _known_keys(hint, seen | {model})
        return {name for name in names if not name.startswith("__")}
    if isinstance(model, types.UnionType) or typing.get_args(model):
        for part in typing.get_args(model):
            if not isinstance(part, str):
                names |= _known_keys(part, seen)
    return names

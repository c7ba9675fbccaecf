"""Content files → strict dataclasses, with one error that names file, id and key in plain words."""

from __future__ import annotations

import json
import math
import re
import tomllib
from collections.abc import Hashable, Mapping
from datetime import date, time
from functools import lru_cache
from typing import TYPE_CHECKING, Any, TypeVar, cast

from selfcheck.content_words import placed
from selfcheck.errors import ContentProblem
from selfcheck.loading.place import Place

if TYPE_CHECKING:
    from pydantic import TypeAdapter

T = TypeVar("T")

#: keys that Python keeps for itself: written plainly in files, with a trailing underscore in the models
RESERVED = {"is": "is_", "from": "from_"}
_FORMAT = re.compile(r"#\s*selfcheck ([a-z_ ]+), format (\d+)\s*$")
#: the newest form of content files that this program reads
NEWEST_FORMAT = 1
_FENCE = "+++"


def read_table(place: Place, relative: str, kind: str = "", *, needs_first_line: bool = False) -> dict[str, Any]:
    """The TOML tables of a file as plain data. `kind` is what its first line, where it has one, must say.

    Words know where they stand, so that a place in them that nothing fills is told as an error of that file.
    """
    text, file = place.text(relative), place.shown(relative)
    _check_first_line(file, text, kind, needs_first_line)
    tables = _parse(file, text)
    return placed(tables, file) if "/words/" in relative else dict(tables)


def read_toml(place: Place, relative: str, model: type[T], kind: str = "", *, needs_first_line: bool = False) -> T:
    """The file as a `model`, checked strictly. Raises ContentProblem naming file, id and key."""
    return mould(read_table(place, relative, kind, needs_first_line=needs_first_line), model, place.shown(relative))


def read_markdown(place: Place, relative: str, model: type[T], **given: str) -> T:
    """A text file with a TOML head between `+++` lines: the head's keys, `given`, and the rest as `body`."""
    text, file = place.text(relative), place.shown(relative)
    if not text.startswith(_FENCE + "\n"):
        raise ContentProblem(file, "", "", "the first line must be +++, with the keys below it.")
    head, fence, body = text[len(_FENCE) + 1 :].partition("\n" + _FENCE)
    if not fence:
        raise ContentProblem(file, "", "", "the +++ line that ends the keys is missing.")
    table = _parse(file, head)
    for key in (*given, "body"):
        if key in table:
            raise ContentProblem(file, given.get("id", ""), key, "this is set by the file itself; take the key out.")
    filled = {"body": body.strip()} if body.strip() else {}
    return mould({**table, **filled, **given}, model, file, given.get("id", ""))


def mould(data: Mapping[str, Any], model: type[T], file: str, ident: str = "") -> T:
    """Plain data as a `model`: unknown keys, wrong kinds and missing keys are refused. `ident` names it in errors."""
    from pydantic import ValidationError

    renamed = _python_keys(data)
    for path, value in _numbers(renamed):
        if not math.isfinite(value):
            raise ContentProblem(file, ident, path, "this must be a finite number.")
    text = json.dumps(renamed, default=_as_text)
    try:
        return cast(T, _adapter(cast(Hashable, model)).validate_json(text, strict=True))
    except ValidationError as error:
        from selfcheck.loading.saying import plain_words

        found, key, what = plain_words(error.errors(include_url=False), renamed, model)
        raise ContentProblem(file, ident or found, key, what) from None


@lru_cache(maxsize=64)
def _adapter(model: Any) -> TypeAdapter[Any]:
    from pydantic import TypeAdapter

    return TypeAdapter(model)


@lru_cache(maxsize=1024)
def _parse(file: str, text: str) -> Mapping[str, Any]:
    """The tables of a text, read once however many conversations ask for them: whoever gets them changes a copy."""
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        what, mend = f"the file breaks off: {error}.", "Mend that line; quotes and brackets first."
        raise ContentProblem(file, "", "", what, mend) from None
    except RecursionError:
        raise ContentProblem(file, "", "", "brackets stand too deep inside each other.") from None


def _check_first_line(file: str, text: str, kind: str, needed: bool) -> None:
    first = text.partition("\n")[0]
    match = _FORMAT.match(first)
    if match is None:
        if needed:
            raise ContentProblem(file, "", "", f'the first line must be "# selfcheck {kind}, format {NEWEST_FORMAT}".')
        return
    if kind and match[1].strip() != kind:
        raise ContentProblem(file, "", "", f'the first line says "{match[1].strip()}", but "{kind}" belongs here.')
    if int(match[2][:9]) > NEWEST_FORMAT:
        what = f"it is written in format {match[2][:9]}, and this program reads up to {NEWEST_FORMAT}."
        raise ContentProblem(file, "", "", what, "Use a newer program, or an older file.")


def _python_keys(data: Any) -> Any:
    if isinstance(data, Mapping):
        return {RESERVED.get(key, key): _python_keys(value) for key, value in data.items()}
    if isinstance(data, list):
        return [_python_keys(item) for item in data]
    return data


def _numbers(data: Any, path: str = "") -> list[tuple[str, float]]:
    if isinstance(data, Mapping):
        below = [(f"{path}.{key}" if path else str(key), value) for key, value in data.items()]
        return [found for name, value in below for found in _numbers(value, name)]
    if isinstance(data, list):
        return [found for value in data for found in _numbers(value, path)]
    return [(path, data)] if isinstance(data, float) else []


def _as_text(value: object) -> str:
    if isinstance(value, (date, time)):
        return value.isoformat()
    raise TypeError(type(value).__name__)

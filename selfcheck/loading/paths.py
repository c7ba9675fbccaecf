"""Whether a path of an answer leads to a field that the records have."""

from __future__ import annotations

import difflib
import types
import typing
from typing import Any

from selfcheck.errors import ContentProblem


def check_path(file: str, ident: str, path: str, records: tuple[str, ...]) -> None:
    """Raises ContentProblem when a path begins outside of `records` (any record when empty), or leads to no field."""
    names = path.split(".")
    if records and names[0] not in records:
        what = f'"{path}" begins with none of the records of this conversation: {", ".join(records)}.'
        raise ContentProblem(file, ident, "writes", what)
    model = _models().get(names[0])
    if model is None:
        return
    here: list[Any] = [model]
    for place, name in enumerate(names[1:], 1):
        below = [found for one in here for found in _below(one, name)]
        if not below:
            so_far = ".".join(names[:place])
            if any(_is_list(one) for one in here):
                what = f'"{so_far}" is a list: name an item, such as {so_far}.0, or {so_far}.+ for a new one.'
            elif len(names) == 2 and not (near := _near(model, name)):
                return
            else:
                near = [guess for one in here for guess in _near(one, name)]
                what = f'"{so_far}" has no field "{name}"' + (f'; did you mean "{near[0]}"?' if near else ".")
            raise ContentProblem(file, ident, "writes", what)
        here = below


def _near(kind: Any, name: str) -> list[str]:
    """Fields that a misspelt name may mean. A record keeps fields of other names, so those may be new ones."""
    return difflib.get_close_matches(name, getattr(kind, "model_fields", {}), n=1, cutoff=0.75)


def _models() -> dict[str, Any]:
    from selfcheck.domain.check import Check, PumpOut
    from selfcheck.domain.household import Household

    return {"check": Check, "household": Household, "pump_out": PumpOut}


def _below(kind: Any, name: str) -> list[Any]:
    """What stands in a thing of this kind under a name: the kinds of a union each by itself."""
    fields = getattr(kind, "model_fields", None)
    if fields is not None:
        found = [field for key, field in fields.items() if name in (key, field.alias) and key != name.rstrip("_") + "_"]
        found += [field for key, field in fields.items() if field.alias == name and field not in found]
        return [part for field in found for part in _parts(field.annotation)]
    if _is_list(kind):
        is_place = name == "+" or name.removeprefix("-").isdecimal()
        return [part for inner in typing.get_args(kind) for part in _parts(inner)] if is_place else []
    return []


def _parts(kind: Any) -> list[Any]:
    if typing.get_origin(kind) in (typing.Union, types.UnionType):
        return [part for inner in typing.get_args(kind) for part in _parts(inner)]
    if typing.get_origin(kind) is typing.Annotated:
        return _parts(typing.get_args(kind)[0])
    return [kind]


def _is_list(kind: Any) -> bool:
    return typing.get_origin(kind) is list

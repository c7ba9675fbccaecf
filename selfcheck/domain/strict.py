"""What all models of content share: no unknown keys, and how a figure was seen."""

from __future__ import annotations

from typing import Literal

STRICT = {"extra": "forbid", "str_strip_whitespace": True}

#: How a figure was seen. `primary`: the publisher's own text; `reprint`: where somebody else prints it; `memory`: not
#: looked up; `none`: nothing to look up (habit of the trade).
Seen = Literal["primary", "reprint", "memory", "none"]

"""What a page is made of, and how many sheets it prints on in a real browser, where the machine has one."""

from __future__ import annotations

import re
import shutil
import subprocess
from functools import cache
from pathlib import Path

import html5lib

_NAMES = ("chromium", "chromium-browser")
_FLAGS = (
    "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync", "--no-pdf-header-footer",
)  # fmt: skip
_REACHING = {
    "script", "img", "link", "iframe", "object", "embed", "base", "form", "image", "use", "foreignObject", "video",
}  # fmt: skip


@cache
def browser() -> str | None:
    """The browser's path; None where there is none, or none that starts."""
    found = next((path for name in _NAMES if (path := shutil.which(name))), None)
    if found is None:
        return None
    try:
        run = subprocess.run([found, "--version"], capture_output=True, timeout=60, check=False)
    except (OSError, subprocess.TimeoutExpired):
        return None
    return found if run.returncode == 0 else None


def pages_of(found: str, file: Path) -> int:
    """How many sheets the browser prints a file on."""
    target = file.with_suffix(".pdf")
    profile = file.parent / "profile"
    command = [found, *_FLAGS, f"--user-data-dir={profile}", f"--print-to-pdf={target}", file.as_uri()]
    subprocess.run(command, capture_output=True, timeout=120, check=True)
    return len(re.findall(rb"/Type\s*/Page\b(?!s)", target.read_bytes()))


def reaching_out(page: str) -> list[str]:
    """What in a page, which must be valid, runs something or asks for something outside of it.

    A link that only a reader follows is no such thing.
    """
    tree = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(page)
    found = []
    for element in tree.iter():
        name = str(element.tag).rpartition("}")[2]
        if name in (
            "script",
            "img",
            "link",
            "iframe",
            "object",
            "embed",
            "base",
            "form",
            "image",
            "use",
            "foreignObject",
        ):
            found.append(name)
        for key, value in element.attrib.items():
            key = str(key).rpartition("}")[2]
            if key in ("src", "srcset", "data", "action", "ping", "background", "poster") or key.startswith("on"):
                found.append(f"{name} {key}")
            if key == "href" and not (name == "a" and value.startswith("https://")):
                found.append(f"{name} {key}={value}")
            if "url(" in value and not value.startswith("url(#"):
                found.append(f"{name} {key}={value}")
        if name == "style" and re.search(r"url\(|@import|@font-face", element.text or ""):
            found.append("style")
    return found

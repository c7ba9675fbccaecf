"""Where content stands: the packaged or checked-out folder, with an educator's own folders laid over it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from selfcheck.errors import ContentProblem

#: a content file is written by hand; anything larger is a mistake
LARGEST_FILE = 1_000_000


@dataclass(frozen=True, slots=True)
class Place:
    """Content folders, the one that counts most first."""

    folders: tuple[Path, ...]

    def find(self, relative: str) -> Path | None:
        """The file of that name in the first folder that has it; None when none has."""
        for folder in self.folders:
            candidate = folder / relative
            if candidate.is_file():
                return candidate
        return None

    def shown(self, relative: str) -> str:
        """How errors name a file: from the content folder down, or in full when it is a person's own."""
        path = self.find(relative)
        return relative if path is None or path == self.folders[-1] / relative else str(path)

    def names(self, folder: str, suffix: str) -> list[str]:
        """Names without suffix of all files in `folder`, over all content folders, sorted."""
        found: set[str] = set()
        for top in self.folders:
            inside = top / folder
            if inside.is_dir():
                found.update(path.stem for path in inside.iterdir() if path.suffix == suffix and path.is_file())
        return sorted(name for name in found if not name.startswith((".", "_")))

    def text(self, relative: str) -> str:
        """The words of a file. Raises ContentProblem when it is missing, too large or not UTF-8."""
        path = self.find(relative)
        if path is None:
            raise ContentProblem(relative, "", "", "there is no such file.", "Add the file, or mend its name.")
        try:
            raw = path.read_bytes()
        except OSError as error:
            raise ContentProblem(str(path), "", "", f"it cannot be read ({error.strerror}).", "Free it.") from error
        if len(raw) > LARGEST_FILE:
            raise ContentProblem(str(path), "", "", "it is over one million bytes.", "Split it into smaller files.")
        try:
            return raw.decode("utf-8-sig").replace("\r\n", "\n")
        except UnicodeDecodeError as error:
            what = f"byte {error.start + 1} is not UTF-8 text."
            raise ContentProblem(str(path), "", "", what, "Save the file as UTF-8.") from error


def packaged() -> Path:
    """The content that comes with the program: inside the package when installed, else the checkout's `content/`."""
    package = Path(__file__).resolve().parent.parent
    inside = package / "_content"
    return inside if inside.is_dir() else package.parent / "content"


def own_folder() -> Path:
    """Where a person may keep content of their own, laid over the program's."""
    import platformdirs

    return Path(platformdirs.user_config_dir("selfcheck", appauthor=False)) / "content"


def content_place(overlay: Path | None = None, *, own: bool = True) -> Place:
    """The folders content is read from: `overlay` over the person's own folder over the packaged content.

    `own=False` leaves the person's own folder out. Raises ContentProblem when `overlay` is not a folder.
    """
    folders: list[Path] = []
    if overlay is not None:
        if not overlay.is_dir():
            raise ContentProblem(str(overlay), "", "", "this is not a folder.", "Name a folder of content files.")
        folders.append(overlay)
    if own and (mine := own_folder()).is_dir():
        folders.append(mine)
    folders.append(packaged())
    return Place(tuple(folders))

"""Papers to print or to hand over, and the verdict with the papers that help at that moment."""

from __future__ import annotations

from functools import lru_cache, partial
from typing import TYPE_CHECKING

from selfcheck.errors import SelfcheckError
from selfcheck.loading.conversations import texts
from selfcheck.sitting import papers
from selfcheck.sitting.endings import page_words
from selfcheck.sitting.over import way_out
from selfcheck.sitting.steps import Go, Page, Part, Stay, Step, Way

if TYPE_CHECKING:
    from selfcheck.loading.place import Place
    from selfcheck.report.parts import PageWords, PartedPage
    from selfcheck.report.wording import VerdictPage
    from selfcheck.sitting.table import Sitting

#: what to do with each paper once it is made
NEXT = {
    "sheet": "print", "page": "print", "calendar": "open_calendar", "table": "open_table", "archive": "keep_archive",
}  # fmt: skip


class PaperPages:
    """The papers of one household."""

    def __init__(self, sitting: Sitting, words: PageWords) -> None:
        self._sitting = sitting
        self._words = words

    def root(self) -> Page:
        """Every paper, each as a file, and the two that are read here."""
        words = self._words
        ways = [
            Way(words("papers", "show_sheet"), lambda: Go(self.sheet), slow=True),
            Way(words("papers", "show_note"), lambda: Go(self.note), slow=True),
            *(self._making(paper) for paper in papers.PAPERS),
        ]
        return Page(words("papers", "title"), (Part((words("papers", "about"),)),), tuple(ways))

    def verdict(self, found: VerdictPage | PartedPage, first: tuple[Part, ...] = ()) -> Page:
        """A verdict just made, or another page in its place, with what helps to act on it. `first` stands above it."""
        words = self._words
        ways = [Way(words("papers", "show_note"), lambda: Go(self.note), ("call note", "phone"), slow=True)]
        ways += [self._making(paper) for paper in ("calendar", "sheet") if paper in papers.PAPERS]
        ways.append(Way(words("record", "history"), lambda: Go(self._history), ("history", "picture"), slow=True))
        not_so = way_out(self._sitting) if found.verdict == "danger" else ()
        if found.verdict == "danger" and not not_so:
            return Page(words("over", "title"), (Part((words("over", "kept"),)),), tuple(ways))
        title = self._sitting.household.name or words("record", "title")
        return Page(title, first, (*ways, *not_so), verdict=found, finds=partial(self._what_to_do, found))

    def _what_to_do(self, found: VerdictPage | PartedPage, line: str) -> Step | None:
        """What the verdict asks for, once more, where a line asks what to do; None for another line."""
        from selfcheck.interview.typed_line import is_one_of
        from selfcheck.loading.conversations import interface
        from selfcheck.report.wording import VerdictPage

        if not is_one_of(interface(self._sitting.place), "what_now", line):
            return None
        said = (found.do, found.by) if isinstance(found, VerdictPage) else (found.headline, *found.lead)
        return Stay(" ".join(part for part in said if part))

    def sheet(self) -> Page:
        """The sheet to read, and to make as a file."""
        lines = papers.sheet_to_read(self._sitting)
        return Page(self._words("papers", "sheet"), (Part(lines, kind="fixed"),), (self._making("sheet", "as_file"),))

    def note(self) -> Page:
        """What to say on the phone, to read, and to make as a file."""
        note = papers.note(self._sitting)
        said = tuple(self._words("papers", "row", label=label, said=what) for label, what in note.said)
        parts = (Part((note.first,) if note.first else (), kind="strong"), Part(said, kind="items"))
        return Page(note.title, parts, (self._making("note", "as_file"),))

    def _history(self) -> Page:
        from selfcheck.sitting.record_pages import RecordPages

        return RecordPages(self._sitting).history()

    def _making(self, paper: str, label: str = "") -> Way:
        return Way(self._words("papers", label or paper), partial(self.make, paper), (paper, "print"), slow=True)

    def make(self, paper: str) -> Step:
        """Make a paper as a file, and say where it is."""
        words = self._words
        made = papers.make(self._sitting, paper)
        said = words("papers", "made_before" if made.before else "made", path=str(made.path))
        return Stay(f"{said}\n{words('papers', NEXT[paper])}" if paper in NEXT else said)


def asks_for_sheet(sitting: Sitting, line: str) -> bool:
    """Whether a line asks for the sheet to print, and for nothing else."""
    return " ".join(line.split()).rstrip(".").casefold() in _asking(sitting.place)


def sheet_made(sitting: Sitting) -> str:
    """Make the sheet as a file; what is said to that."""
    try:
        return page_words(sitting, "record")("papers", "sheet_said", path=str(papers.make(sitting, "sheet").path))
    except SelfcheckError as error:
        return f"{error.what} {error.mend}"


@lru_cache(maxsize=4)
def _asking(place: Place) -> frozenset[str]:
    return frozenset(one.strip() for one in texts(place, "record")["asked"]["print"].split(";"))
